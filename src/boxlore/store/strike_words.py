"""When a text holds the words that are to be struck: as whole words, in any case, with or without accents."""

from boxlore.core.fields.table import FIELDS
from boxlore.core.statements import fold

LONG_ENOUGH = 5
"""So many words in a row are somebody's own sentence, and stand nowhere by chance."""

_CHOSEN_BY_SOMEBODY = frozenset({"label", "materials", "surroundings", "found_in", "set_aside", "asked", "embedded"})
"""Fields that nobody told, of words that somebody chose: what a container is called and made of, where a picture was
found, the keeper's own remarks, and what somebody wrote into a scan's file.
"""


def can_be_struck(field: str) -> bool:
    """Whether a field holds what somebody told or chose; the program needs the words of every other."""
    return FIELDS[field].told or field in _CHOSEN_BY_SOMEBODY


def tokens(words: str) -> list[str]:
    """The words of a text, folded, without what stands between them."""
    return "".join(letter if letter.isalnum() else " " for letter in fold(words)).split()


def holds(told: list[str], asked: list[str]) -> bool:
    """Whether the tokens asked for stand among those told, in their order and side by side."""
    return any(told[at : at + len(asked)] == asked for at in range(len(told) - len(asked) + 1))
