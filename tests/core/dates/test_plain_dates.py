"""Plain dates (rules of our own): they are what the assembly of the same senses comes to."""

from operator import attrgetter

from hypothesis import given
from hypothesis import strategies as st
from tests.drawn import drawn

from boxlore.core.dates.assembly import Assembly
from boxlore.core.dates.lexicon import Sense
from boxlore.core.dates.partial import Partial
from boxlore.core.dates.plain_dates import GOING_ON, PLAIN_ROWS, plain_date
from boxlore.core.dates.word_order import arranged

slots = attrgetter(*Partial.__slots__)
VALUES = {
    "day": st.tuples(st.integers(0, 99), st.sampled_from((0, 1, 2))),
    "ordinal": st.integers(0, 40),
    "month": st.integers(1, 12),
    "season": st.integers(21, 24),
    "feast": st.sampled_from(("christmas day", "easter", "whit sunday", "ve day", "advent", "midsummer eve")),
    "year": st.sampled_from(("1938", "1900", "193X", "19XX")),
    "short": st.sampled_from(("38", "00")),
}


@st.composite
def plain_senses(draw: st.DrawFn) -> list[Sense]:
    row = draw(st.sampled_from(sorted(PLAIN_ROWS)))
    return [Sense(kind, draw(VALUES[kind]), draw(st.sampled_from((-1, 1, 6)))) for kind in row]


@drawn(400)
@given(plain_senses())
def test_a_plain_date_is_what_its_assembly_comes_to(senses: list[Sense]) -> None:
    plain, (whole, at) = plain_date(senses), Assembly(senses).run(0)
    assert at == len(senses) or whole is None
    if plain is not None:
        assert whole is not None and whole.is_settled and slots(plain) == slots(whole)


@drawn(200)
@given(VALUES["year"], st.sampled_from(("before", "or", "and", "to", "between", "about_behind", "eve", "since_behind")))
def test_a_year_ends_where_no_word_goes_on_with_it(year: str, kind: str) -> None:
    senses = [Sense("year", year), Sense(kind), Sense("year", "1950")]
    plain, (whole, at) = plain_date(senses[:1]), Assembly(senses).run(0)
    assert kind not in GOING_ON and at == 1
    assert plain and whole and slots(plain) == slots(whole)


def test_the_rows_are_of_one_date_and_need_nothing_else() -> None:
    for row in PLAIN_ROWS:
        read = arranged(row)
        assert read and read.is_one_date and read.is_as_told and read.is_plain, row
