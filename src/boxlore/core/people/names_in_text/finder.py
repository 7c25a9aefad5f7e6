"""A finder of names for one registry, kept while the registry is the same, with what it found in words before."""

from collections.abc import Sequence
from functools import lru_cache

from boxlore.core.people.names.forms import close, soundex
from boxlore.core.people.names_in_text.inflections import cyrillic_keys_of, key_of, latin_forms
from boxlore.core.people.names_in_text.name_index import NameIndex, forms_of
from boxlore.core.people.names_in_text.names_of_the_living import is_called, names_of_the_living
from boxlore.core.people.names_in_text.search import Hit, hits_in
from boxlore.core.people.person import Person

MOST_REMEMBERED = 1 << 15


class NameFinder:
    """Finds the names of `hidden` (ids) among those of everyone. The tables of names are made at the first question."""

    def __init__(self, everyone: tuple[Person, ...], hidden: frozenset[str]) -> None:
        self._everyone, self._hidden = everyone, hidden
        self._index: NameIndex | None = None
        self._found: dict[str, Sequence[Hit]] = {}

    def hits(self, words: str) -> Sequence[Hit]:
        """Every place of the words that names somebody hidden, or may."""
        hits = self._found.get(words)
        if hits is None:
            if self._index is None:
                self._index = NameIndex(self._everyone, self._hidden)
            if len(self._found) >= MOST_REMEMBERED:
                self._found.clear()
            hits = self._found[words] = hits_in(self._index, words)
        return hits


name_finder = lru_cache(8)(NameFinder)


def forget_finders() -> None:
    """Forget every name and all words that were looked through: a strike calls it."""
    for kept in (
        name_finder,
        names_of_the_living,
        is_called,
        forms_of,
        latin_forms,
        key_of,
        cyrillic_keys_of,
        close,
        soundex,
    ):
        kept.cache_clear()
