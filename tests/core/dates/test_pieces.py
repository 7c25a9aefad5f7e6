"""Text in pieces (rules of our own): the short way for what most texts are gives what the long one gives."""

from hypothesis import given
from hypothesis import strategies as st
from tests.drawn import drawn

from boxlore.core.dates.pieces import PIECE, plain_pieces

PIECES = (
    "june 1938 12 3 and am h 12th c1920 19380612 été июня o'clock 7/4/52 '38 12. 05 １２ x vi by "
    "1950s 30er 8h 19xx 193x 21stc 1949, 12² s., d-day, 24. 1922. 3. 30. ix ix. x, s. 20. 1930. 12th. vicar"
).split()


@drawn(400)
@given(st.lists(st.sampled_from(PIECES), max_size=6).map(" ".join))
def test_plain_text_falls_into_the_same_pieces(words: str) -> None:
    pieces = plain_pieces(words)
    assert pieces is None or pieces == [(match[0], match.lastgroup, *match.span()) for match in PIECE.finditer(words)]


def test_most_texts_are_plain() -> None:
    assert all(map(plain_pieces, ("about 12 june 1938", "1938", "the 5th of may 1927", "1949 and 1951")))
    assert not any(map(plain_pieces, ("3 am", "12 06 1938", "june  1938", "1938?", "19380612", "")))
