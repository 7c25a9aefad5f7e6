"""Whether a word is a part of a name that all know, and so of nobody here: `Guy Fawkes`, `Port Chalmers`, `Jack Frost`.

Rule kept: only the whole name, with a capital at its beginning and end. Which names these are, a dictionary and a
gazetteer say (`known_names_table`), and lists of books (`borne_names_table`).
"""

from collections.abc import Sequence
from functools import cache

from boxlore.core.people.names_in_text.borne_names_table import BOOKS
from boxlore.core.people.names_in_text.known_names_table import NAMES
from boxlore.core.people.names_in_text.text_normalising import APOSTROPHES, Word

_JOINS = frozenset((" ", "-", "\u00a0"))


@cache
def _names() -> dict[str, frozenset[tuple[str, ...]]]:
    """By the first word, the words behind it."""
    names: dict[str, set[tuple[str, ...]]] = {}
    for name in f"{NAMES},{BOOKS}".replace("\n", " ").split(","):
        first, *others = name.split()
        names.setdefault(first, set()).add(tuple(others))
    return {first: frozenset(others) for first, others in names.items()}


@cache
def _most_behind() -> int:
    """How many words stand behind the first of the longest name."""
    return max(len(others) for names in _names().values() for others in names)


def is_of_a_known_name(words: Sequence[Word], at: int) -> bool:
    """Whether a word stands in such a name."""
    return any(_end_of_a_name(words, first) >= at for first in range(max(0, at - _most_behind()), at + 1))


def _end_of_a_name(words: Sequence[Word], first: int) -> int:
    """The number of the last word of the longest name that begins with a word; -1 where none does."""
    names = _names().get(words[first].folded, ())
    if not names or words[first].is_small:
        return -1
    return max((_end(words, first, others) for others in names), default=-1)


def _end(words: Sequence[Word], first: int, others: tuple[str, ...]) -> int:
    last = first + len(others)
    behind = words[first + 1 : last + 1]
    if len(behind) < len(others) or any(word.before not in _JOINS for word in behind) or behind[-1].is_small:
        return -1
    told = [*(word.folded for word in behind[:-1]), APOSTROPHES.split(behind[-1].folded)[0]]
    return last if tuple(told) == others else -1
