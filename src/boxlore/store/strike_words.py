"""When a text holds the words that are to be struck: as whole words, in any case, with or without accents.

Rule kept: what looks alike to a reader is the same, as in a search for names (`text_normalising`): signs that nobody
sees are passed over, and a word that the end of a line, a tag or a mark parts, or whose letters stand apart, is one. A
zero-width space may stand between two words or within one, so a text with some is read both ways.
"""

from collections.abc import Iterable
from itertools import permutations

from boxlore.core.fields.table import FIELDS
from boxlore.core.people.names_in_text.letters_otherwise import as_read, marks_in
from boxlore.core.people.names_in_text.text_normalising import as_seen, breaks_in, read_changed
from boxlore.core.statements import fold

_SPACE_UNSEEN = "\u200b"

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
    return "".join(letter if letter.isalnum() else " " for letter in fold(as_seen(words))).split()


def stands_in(text: str, asked: list[str]) -> bool:
    """Whether a text holds the tokens asked for, in one of the ways that it can be read."""
    return any(holds(told, asked) for told in ways(text))


def ways(text: str) -> list[list[str]]:
    """The tokens of a text in each way that it can be read."""
    read = [tokens(text)]
    if _SPACE_UNSEEN in text:
        read.append(tokens(text.replace(_SPACE_UNSEEN, " ")))
    seen = as_seen(text)
    for changes in (breaks_in(seen), as_read(seen), marks_in(seen)):
        if changes:
            read.append(tokens(read_changed(seen, changes).clean))
    return read


def holds(told: list[str], asked: list[str]) -> bool:
    """Whether the tokens asked for stand among those told, in their order and side by side."""
    return any(told[at : at + len(asked)] == asked for at in range(len(told) - len(asked) + 1))


PARTS_OF_A_NAME = frozenset(
    "name honorific given nickname patronymic family born_as married_as religious_name suffix".split()
)
"""Fields of a person whose words stand side by side in a name that is shown."""
_PARTS = 3


def parts_of_a_name(parts: Iterable[tuple[str, str, str]], asked: list[str]) -> set[str]:
    """The ids of statements that only together hold the tokens asked for, as a given name and a family name do, in any
    order. `parts` are the (id, subject, words) of PARTS_OF_A_NAME.
    """
    of_subject: dict[str, dict[str, list[str]]] = {}
    for ident, subject, words in parts:
        told = tokens(words)
        if not holds(told, asked) and not set(told).isdisjoint(asked):
            of_subject.setdefault(subject, {})[ident] = told
    together: set[str] = set()
    for told_of in of_subject.values():
        for count in range(2, _PARTS + 1):
            for idents in permutations(told_of, count):
                if holds([token for ident in idents for token in told_of[ident]], asked):
                    together.update(idents)
            if together.intersection(told_of):
                break
    return together
