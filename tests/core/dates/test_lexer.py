"""Tokens (rules of our own): the short way for what most pieces are gives what the long one gives."""

from hypothesis import given
from hypothesis import strategies as st
from tests.core.dates.test_pieces import PIECES
from tests.drawn import drawn

from boxlore.core.dates.lexer import lex
from boxlore.core.dates.lexicon import Node
from boxlore.core.dates.pieces import PIECE

BESIDE = (
    "no. 18 19 38 th 0915 sept august one sunday in dos jy war post- kesä- ja heinäkuu s ' i xix (maybe 45 go to later "
    "than the end of christmas eve de l'été 1. pinsedag st john's day pre- war ? ; three hundred tres “".split()
)
"""What hangs on what stands beside it, and what begins a longer entry."""


@drawn(400)
@given(st.lists(st.sampled_from((*PIECES, *BESIDE)), max_size=6).map(" ".join))
def test_simple_words_mean_what_they_mean_to_whoever_looks_beside_them(words: str) -> None:
    """A piece with which a name of the family begins is looked at with its neighbours, though nothing be named so."""
    begun = Node()
    begun.following.update((match[0], Node()) for match in PIECE.finditer(words))
    assert repr(lex(words)) == repr(lex(words, begun))
