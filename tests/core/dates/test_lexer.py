"""Text in pieces and tokens (rules of our own): the short ways for what most texts are give what the long ones give."""

from hypothesis import given
from hypothesis import strategies as st
from tests.drawn import drawn

from boxlore.core.dates.lexer import PIECE, _plain_pieces, lex
from boxlore.core.dates.lexicon import Node

PIECES = (
    "june 1938 12 3 and am h 12th c1920 19380612 été июня o'clock 7/4/52 '38 12. 05 １２ x vi by "
    "1950s 30er 8h 19xx 193x 21stc 1949, 12² s., d-day,"
).split()


@drawn(400)
@given(st.lists(st.sampled_from(PIECES), max_size=6).map(" ".join))
def test_plain_text_falls_into_the_same_pieces(words: str) -> None:
    pieces = _plain_pieces(words)
    assert pieces is None or pieces == [(match[0], match.lastgroup, *match.span()) for match in PIECE.finditer(words)]


BESIDE = (
    "no. 18 19 38 th 0915 sept august one sunday in dos jy war post- kesä- ja heinäkuu s ' i xix (maybe 45 go".split()
)
"""What hangs on what stands beside it."""


@drawn(400)
@given(st.lists(st.sampled_from((*PIECES, *BESIDE)), max_size=6).map(" ".join))
def test_simple_words_mean_what_they_mean_to_whoever_looks_beside_them(words: str) -> None:
    """A piece with which a name of the family begins is looked at with its neighbours, though nothing be named so."""
    begun = Node()
    begun.following.update((match[0], Node()) for match in PIECE.finditer(words))
    assert repr(lex(words)) == repr(lex(words, begun))


def test_most_texts_are_plain() -> None:
    assert all(map(_plain_pieces, ("about 12 june 1938", "1938", "the 5th of may 1927", "1949 and 1951")))
    assert not any(map(_plain_pieces, ("3 am", "12 06 1938", "june  1938", "1938?", "19380612", "")))
