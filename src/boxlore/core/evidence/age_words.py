"""Whether words have one of ages or stages of a life, in all languages of the reader of dates."""

from collections.abc import Sequence
from functools import cache

from boxlore.core.dates.ages import AGE_WORDS, STAGES
from boxlore.core.dates.lexer import lex
from boxlore.core.dates.lexicon import trie
from boxlore.core.dates.pieces import normal, pieces_of

_OF_AGE = AGE_WORDS | STAGES | {"about", "about_behind", "doubt"}


def has_a_word_of_age(words: str) -> bool:
    """`words` must be in form NFC."""
    return _may_have_one(words) and any(token.is_any(_OF_AGE) for token in lex(words))


def _may_have_one(words: str) -> bool:
    """Whether a word, a sign or several are of ages or stages of a life: asked before a sentence is taken apart, which
    costs more."""
    told = [piece[0] for piece in pieces_of(normal(words))]
    return any(map(_is_of_age, told)) or any(_begins_one(told, at) for at in range(len(told)))


@cache
def _is_of_age(piece: str) -> bool:
    return piece == "s" or any(token.is_any(_OF_AGE) for token in lex(piece))  # a genitive is one behind an apostrophe


def _begins_one(told: Sequence[str], at: int) -> bool:
    node = trie()
    for piece in told[at:]:
        following = node.following.get(piece)
        if following is None:
            return False
        node = following
        if any(sense.kind in _OF_AGE for sense in node.senses):
            return True
    return False
