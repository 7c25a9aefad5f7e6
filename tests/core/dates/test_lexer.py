"""Text in pieces (rules of our own): the short way for plain text gives what the whole pattern gives."""

from hypothesis import given
from hypothesis import strategies as st
from tests.drawn import drawn

from boxlore.core.dates.lexer import PIECE, _plain_pieces

PIECES = "june 1938 12 3 and am h 12th c1920 19380612 été июня o'clock 7/4/52 '38 12. 05 １２ x vi by".split()


@drawn(400)
@given(st.lists(st.sampled_from(PIECES), max_size=6).map(" ".join))
def test_plain_text_falls_into_the_same_pieces(words: str) -> None:
    pieces = _plain_pieces(words)
    assert pieces is None or pieces == [(match[0], match.lastgroup, *match.span()) for match in PIECE.finditer(words)]


def test_most_texts_are_plain() -> None:
    assert _plain_pieces("about 12 june 1938") and _plain_pieces("1938")
    assert not any(map(_plain_pieces, ("3 am", "12 06 1938", "june  1938", "1938?", "19380612", "")))
