"""Similar names are looked for by a piece that no slip has spoilt; against PyPI `rapidfuzz`, which counts slips."""

from hypothesis import assume, given
from hypothesis import strategies as st
from rapidfuzz.distance import OSA
from tests.drawn import drawn

from boxlore.gazetteer.guessing import LONGEST_OF_ONE_SLIP, _pieces

NAMES = st.text("abc ", min_size=4, max_size=14)


@drawn(400)
@given(NAMES, st.lists(st.tuples(st.sampled_from("+-=x"), st.integers(0, 13), st.sampled_from("abc")), max_size=2))
def test_one_piece_of_a_misspelled_name_stands_as_it_is(name: str, slips: list[tuple[str, int, str]]) -> None:
    told = name
    for kind, at, letter in slips:
        put = {"+": letter + told[at : at + 1], "-": "", "=": letter, "x": told[at + 1 : at + 2] + told[at : at + 1]}
        told = told[:at] + put[kind] + told[at + (2 if kind == "x" else 1) :]
    most_slips = 1 if len(name) <= LONGEST_OF_ONE_SLIP else 2
    assume(OSA.distance(name, told) <= most_slips)
    first, middle, last = _pieces(name, most_slips + 1)
    assert first and last
    assert told.startswith(first) or told.endswith(last) or (middle and middle in told)
