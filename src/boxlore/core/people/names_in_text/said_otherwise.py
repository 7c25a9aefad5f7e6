"""What families make of a given name besides its fond forms: `Marijó` of María José, and `Shivaun` of Siobhán.

Two names are drawn together by their beginnings, as far as a vowel or whole, or the end of the second from a syllable
on (`Juanjo`, `Josemari`, `Maribel`, `Marisa`). An Irish name is written by its sound: what its letters stand for is
from memory of the school grammars of Irish (`bh` and `mh` are v, `s` beside `e` and `i` is sh, `dh`, `gh`, `fh` are
silent or y); an English spelling is read by its consonants, with a place for each run of vowels.

What always holds: it is a question, and never a word that we know.
"""

import re
from collections.abc import Iterable, Iterator, Mapping, Sequence, Set

from boxlore.core.people.names.tokens import CALLED
from boxlore.core.people.names_in_text.known_words import is_known_anywhere
from boxlore.core.people.names_in_text.ordinary_words import is_english

_SHORTEST, _FEWEST, _FEWEST_SOUNDS = 5, 2, 3
_AS_FAR_AS_A_VOWEL = re.compile(r"[aeiouy](?=[^aeiouy]|$)|(?<=i)[aeou]|i(?=[aeou])")
_FIRST_CLOSED = re.compile(r"[^aeiouy]+[aeiouy][^aeiouy]")
_FROM_A_SYLLABLE = re.compile(
    r"(?<=.)[^aeiouy][aeiouy]|(?<=[^aeiouy])[aeiouy]{2}|(?<=[^aeiouy])i(?=[^aeiouy]+[aeiouy])"
)
_LENITED = re.compile(r"[bmdgf]h|aoi|s(?=[ei])|[ei]s|ts")
_IRISH = (
    (re.compile(r"[ao]gh(?=a)|[ao]dh(?=a)|eogh"), "o"), (re.compile("aodh"), "i"),
    (re.compile("[bm]h"), "v"),
    (re.compile(r"(?<=[ei])s|s(?=[ei])"), "S"), (re.compile("[dgf]h"), ""), (re.compile("th"), "h"),
    (re.compile("ch"), "h"), (re.compile("c"), "k"), (re.compile("d(?=g)"), ""),
)  # fmt: skip
_ENGLISH = (
    (re.compile("sh|ch"), "S"), (re.compile("ph"), "f"), (re.compile("gh"), ""), (re.compile("ck|c|q"), "k"),
    (re.compile("(?<=[aeiou])w(?![aeiou])|(?<=[aeiou])y|(?<=n)y(?=[aeiou])"), "e"), (re.compile("w"), "v"),
)  # fmt: skip
_VOWELS = re.compile("[aeiouy]+")
_TWICE = re.compile(r"(.)\1")


class SaidOtherwise:
    """Looks words up as what is made of given names; `names` has those of each person, folded, by id."""

    def __init__(self, names: Mapping[str, Iterable[Sequence[str]]]) -> None:
        self._people: dict[str, set[str]] = {}
        self._sounds: dict[str, set[str]] = {}
        for ident, calls in names.items():
            for call in calls:
                for form in _drawn_together(call):
                    self._people.setdefault(form, set()).add(ident)
                for name in call:
                    if _LENITED.search(name):
                        self._sounds.setdefault(_sounds(name, _IRISH), set()).add(ident)

    def of(self, folded: str) -> Set[str]:
        """Whom a folded Latin word may be said for."""
        if is_known_anywhere(folded) or is_english(folded):
            return set()
        people = self._people.get(folded, set()) | self._people.get(folded.removesuffix("s"), set())
        if folded in CALLED:
            return people
        keys = {_sounds(folded, _ENGLISH), _sounds(folded.removesuffix("e"), _ENGLISH)}
        return people.union(*(self._sounds.get(key, ()) for key in keys if len(key) >= _FEWEST_SOUNDS))


def _drawn_together(call: Sequence[str]) -> Iterator[str]:
    if len(call) != _FEWEST:
        return
    first, second = call
    begins = {first, *(first[: vowel.end()] for vowel in _AS_FAR_AS_A_VOWEL.finditer(first))}
    ends = {second[: vowel.end()] for vowel in list(_AS_FAR_AS_A_VOWEL.finditer(second))[:2]}
    ends |= {closed[0] for closed in [_FIRST_CLOSED.match(second)] if closed}
    ends |= {second[part.start() :] for part in _FROM_A_SYLLABLE.finditer(second)}
    for form in (begin + end for begin in begins for end in ends if len(begin) >= _FEWEST <= len(end)):
        if len(form) >= _SHORTEST:
            yield form


def _sounds(folded: str, letters: Iterable[tuple[re.Pattern[str], str]]) -> str:
    """The consonants that are heard, `-` for vowels between: `S-v-n` of Siobhán and of Shivaun."""
    for written, heard in letters:
        folded = written.sub(heard, folded)
    return _VOWELS.sub("-", _TWICE.sub(r"\1", folded)).rstrip("-")
