"""The names that a told form of a place may be a form of: `Narva-Jõesuus` → `narva joesuu`, `Zakopanem` → `zakopane`.

Every row of the table is tried, for the language of the words is not known. So most of what comes out is no name: which
of it is one, the gazetteer says. Of a name of several words each may change by one language, or stay
(`w Nowym Sączu` → `nowy sacz`, `v Hradci Králové` → `hradec kralove`).
"""

from collections.abc import Iterator, Mapping
from functools import lru_cache
from itertools import islice, product
from types import MappingProxyType

from boxlore.core.places.inflections_table import INFLECTIONS
from boxlore.core.places.taking_apart import fold_place

SHORTEST = 3
"""Letters of the shortest name that is made."""
MOST_WORDS, MOST_FORMS = 4, 100
"""How many words a name may have, and how many forms of it are tried for one language."""

_Row = tuple[tuple[str, ...], tuple[tuple[str, str], ...]]
"""Endings, and (end of the stem, end of the name); folded."""


def _stem(written: str) -> tuple[str, str]:
    told, _, name = written.strip("=").partition(">")
    return fold_place(told), fold_place(name)


_ROWS: tuple[tuple[frozenset[str], _Row], ...] = tuple(
    (
        frozenset(row.lands.split()),
        (
            tuple(fold_place(ending.strip("=")) for ending in row.endings.split()),
            tuple(map(_stem, row.stems.split())),
        ),
    )
    for row in INFLECTIONS.values()
)


@lru_cache(1024)
def uninflected(name: str) -> Mapping[str, frozenset[str]]:
    """Folded names of which a told name may be a form, each with the lands where its language is spoken.

    The name itself is none of them.
    """
    told = fold_place(name)
    words = told.split()
    made: dict[str, frozenset[str]] = {}
    for lands, row in _ROWS if len(words) <= MOST_WORDS else ():
        for form in islice(_forms(words, row), MOST_FORMS):
            made[form] = made.get(form, frozenset()) | lands
    made.pop(told, None)
    return MappingProxyType(made)


def _forms(words: list[str], row: _Row) -> Iterator[str]:
    return map(" ".join, product(*((word, *_names(word, row)) for word in words)))


def _names(word: str, row: _Row) -> Iterator[str]:
    endings, stems = row
    for ending in filter(word.endswith, endings):
        stem = word.removesuffix(ending)
        for told, name in stems:
            if stem.endswith(told) and len(stem) - len(told) + len(name) >= SHORTEST:
                yield stem.removesuffix(told) + name
