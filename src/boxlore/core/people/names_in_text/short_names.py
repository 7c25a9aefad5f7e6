"""Whether a word is a given name of three to five letters with one slip: `Garnt` of Grant, `Bjön` of Björn.

Rule kept: a slip is a question, and only where the word is no other name and no word that we know in any language: a
short name is one letter from too many of these. Another name, and a word of another language than English, is one all
the same where it sounds the same: `Franck`. One letter written double is a slip of every such name, two swapped of
those of four letters and five; one letter left out, put in or changed are slips of those of five alone, and then the
first letter is right.
"""

from collections.abc import Iterable

from boxlore.core.people.names.short_forms_table import EVERYDAY
from boxlore.core.people.names.tokens import CALLED
from boxlore.core.people.names_in_text.inflections import key_of
from boxlore.core.people.names_in_text.known_words import is_known_anywhere, words_known
from boxlore.core.people.names_in_text.ordinary_words import is_english
from boxlore.core.people.names_in_text.small_words_table import SMALL_WORDS
from boxlore.core.people.names_in_text.text_normalising import LATIN, script_of
from boxlore.core.people.names_in_text.words_in_sentences import is_ordinary

_SHORTEST, _LONGEST = 3, 5


class ShortNames:
    """Looks words up as slips of those of `names`, folded given names, that are short and in Latin letters."""

    def __init__(self, names: Iterable[str]) -> None:
        self._slips: dict[str, set[str]] = {}
        for name in names:
            if _SHORTEST <= len(name) <= _LONGEST and script_of(name[0]) == LATIN:
                for slip in _slips_of(name):
                    self._slips.setdefault(slip, set()).add(name)

    def near(self, folded: str) -> set[str]:
        """The names that a folded word is a slip of, where it is nothing that we know."""
        names = set[str]().union(*(self._slips.get(key, ()) for key in _keys_of(folded)))
        if not names or _is_a_word(folded):
            return set()
        if folded in CALLED or is_known_anywhere(folded):
            return {name for name in names if key_of(name, LATIN) == key_of(folded, LATIN)}
        return names


def _slips_of(name: str) -> set[str]:
    """The slips of a name, `*` for any letter."""
    every = range(len(name))
    slips = {name[:at] + name[at] + name[at:] for at in every}
    if len(name) > _SHORTEST:
        slips |= {name[:at] + name[at + 1] + name[at] + name[at + 2 :] for at in every[:-1]}
    if len(name) == _LONGEST:
        slips |= {name[:at] + name[at + 1 :] for at in every[1:]}
        slips |= {f"{name[:at]}*{name[at + 1 :]}" for at in every[1:]}
        slips |= {f"{name[:at]}*{name[at:]}" for at in every[1:]}
    return slips - {name}


def _keys_of(folded: str) -> set[str]:
    return {folded} | {f"{folded[:at]}*{folded[at + 1 :]}" for at in range(1, len(folded))}


def _is_a_word(folded: str) -> bool:
    is_small = folded in EVERYDAY or folded in SMALL_WORDS
    return is_small or is_english(folded) or is_ordinary(folded) or folded in words_known("en")
