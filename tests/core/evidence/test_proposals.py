"""What was worked out, as EDTF (level 2, one of a set) and in the words of DACS 2.4."""

from dataclasses import replace

from tests.core.evidence.family import item, person, row, told, worked_out
from tests.every_row import every_row

from boxlore.core.dates.reading import DateReading
from boxlore.core.evidence.claims import of_birth, of_death
from boxlore.core.evidence.even_years import number_of
from boxlore.core.evidence.proposals import edtf_between, proposal

BETWEEN = (
    (None, None, ""),
    ("1912-05-12", "1912-05-12", "1912-05-12"),
    ("1921-03-01", "1926-08-31", "[1921..1926]"),
    ("1927-01-01", "1927-12-31", "1927"),
    ("1931-06-01", "1931-08-31", "[1931-06-01..1931-08-31]"),
    ("1916-02-01", "1916-02-29", "1916-02"),
    (None, "1932-05-01", "[..1932]"),
    ("1873-01-01", None, "[1873..]"),
)


@every_row(("first", "last", "edtf"), BETWEEN)
def test_between(first: str | None, last: str | None, edtf: str) -> None:
    assert edtf_between(_number(first), _number(last)) == edtf


def _number(day: str | None) -> int | None:
    return number_of(*map(int, day.split("-"))) if day else None


def test_a_proposal_has_its_reasons_and_what_cannot_all_be_so() -> None:
    twice = item("i", told("date", "1921"), told("date", "1925"), disputed=True)
    worked = worked_out([twice, item("k", told("date", "1930")), item("n")])
    disputed, plain, nothing = (proposal(worked, f"item {name}") for name in ("i", "k", "n"))
    assert len(disputed.circles) == 1 and disputed.edtf == "[1921..1925]"
    assert plain.display == "1930" and round(plain.years or 0) == 1 and len(plain.because) == 1 and not plain.circles
    assert plain.is_told("1930") and not plain.is_told("") and not disputed.is_told("1921")
    assert not plain.is_told("193X") and not plain.is_told("[1928..]"), "the year is more than was told"
    assert nothing.because == () and nothing.edtf == "" == nothing.display and nothing.years is None


@every_row(
    ("words", "edtf", "is_told"),
    (
        ("the thirties", "193X", True),
        ("1908 or 1909", "[1908,1909]", True),
        ("about 1871", "1871~", True),
        ("between 1921 and 1925", "[1922..1923]", True),  # what was worked out leaves more open
        ("between 1921 and 1925", "192X", False),
        ("before 1930", "[1921..1929]", True),  # it has no beginning
    ),
)
def test_what_a_told_date_says_already_is_no_news(words: str, edtf: str, is_told: bool) -> None:
    """Our own contract."""
    assert proposal(worked_out([item("i", told("date", words))]), "item i").is_told(edtf) is is_told


def test_what_the_keeper_has_settled_is_no_contradiction_any_more() -> None:
    worked = worked_out([item("i", told("date", "1921"), told("date", "1925"), told("date", "about 1921"))])
    assert not worked.circles and proposal(worked, "item i").edtf == "1921" and len(worked.because("item i")) == 1
    left_open = item("i", told("date", "1921"), told("date", "1925"), undecided=True)
    worked = worked_out([left_open])
    assert not worked.circles and proposal(worked, "item i").edtf == "[1921..1925]"


def test_a_year_that_is_a_slip_bounds_nothing_beyond_what_a_date_can_be() -> None:
    people = [person("Mari", died="1933"), person("Kadri", died="1990")]
    value = {year: DateReading.from_edtf(year) for year in ("0050", "9950")}
    rows = [
        replace(row("Mari", "died", "0050"), value=value["0050"]),
        replace(row("Kadri", "born", "9950"), value=value["9950"]),
    ]
    worked = worked_out([], people, rows)
    assert proposal(worked, of_birth("Mari")).edtf == "[..0050]"
    assert proposal(worked, of_death("Kadri")).edtf == "[9950..]"
