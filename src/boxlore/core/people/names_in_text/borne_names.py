"""What is borne as a name, by open data (`borne_names_table`): what speaks for a person, and what for something else.

Rule kept: a table says that somebody is called so, or a place, or a book; who is meant, `speaks_for_people` weighs.
"""

from collections.abc import Iterator
from functools import cache

from boxlore.core.people.names.given_names_table import GIVEN_OR_FAMILY
from boxlore.core.people.names.tokens import CALLED
from boxlore.core.people.names_in_text import borne_names_table as borne
from boxlore.core.people.names_in_text.inflections import cyrillic_forms, greek_forms, key_of, without_prefixes
from boxlore.core.people.names_in_text.known_words import is_known_anywhere, written_out
from boxlore.core.people.names_in_text.text_normalising import (
    APOSTROPHES,
    ARABIC,
    CYRILLIC,
    GREEK,
    HEBREW,
    LATIN,
    OTHER,
    UNBROKEN,
    read_text,
    script_of,
)
from boxlore.core.people.names_in_text.words_in_sentences import is_ordinary

_FORMS = {CYRILLIC: cyrillic_forms, GREEK: greek_forms}
_STEMS = {
    "": "", "s": "", "es": "", "n": "", "en": "", "in": "", "i": "", "a": "", "u": "", "e": "", "y": "", "ie": "a",
    "em": "", "om": "", "owi": "", "ow": "", "owie": "", "owa": "", "ego": "", "t": "", "le": "", "lt": "", "lle": "",
    "lla": "", "lta": "", "ga": "", "st": "", "ks": "", "nak": "", "nek": "", "ne": "", "sen": "nen", "set": "nen",
    "sten": "nen", "sia": "nen", "skich": "ski", "skiego": "ski", "scy": "ski", "kiem": "ek", "ka": "ek", "ki": "ka",
    "tri": "ter", "gi": "k", "di": "t", "bi": "p",
}  # fmt: skip
"""What names in Latin letters end in within sentences, and what they end in themselves: the commonest rows of
`inflection_table`, read the other way."""
_FAMILIES_IN_RUSSIAN = {
    "": "", "ы": "", "ых": "", "ым": "", "ыми": "", "у": "", "а": "", "ои": "", "ские": "скии", "ских": "скии",
    "ского": "скии", "скому": "скии", "ским": "скии", "скои": "скии",
}  # fmt: skip
_LONGEST_END = 6
_SHORTEST_STEM = 3
_SHORTEST_IN_RUSSIAN = 4


@cache
def families() -> frozenset[str]:
    """Family names that are no English words, folded."""
    return frozenset(written_out(borne.FAMILIES))


@cache
def given_too() -> frozenset[str]:
    """Given names that may be family names too, or are seldom."""
    return (frozenset(written_out(borne.GIVEN_TOO)) | frozenset(GIVEN_OR_FAMILY.split())) - CALLED


@cache
def places() -> frozenset[str]:
    """What places are called, the words of one with `_` between."""
    return frozenset(written_out(borne.PLACES))


@cache
def famous() -> frozenset[str]:
    """Of one word, whom all know."""
    return frozenset(written_out(borne.FAMOUS))


@cache
def makes() -> frozenset[str]:
    """Makes of cars, the first word."""
    return frozenset(written_out(borne.MAKES))


@cache
def _given_elsewhere() -> frozenset[str]:
    return frozenset(written_out(borne.GIVEN_ELSEWHERE)) | {name for name in CALLED if not name.isascii()}


@cache
def _forms_of(script: str) -> frozenset[str]:
    """The keys of all forms of given names in a script that inflects."""
    names = (name for name in _given_elsewhere() if script_of(name[0]) == script)
    return frozenset(form for name in names for form in _FORMS[script](key_of(name, script)))


def is_given_elsewhere(folded: str) -> bool:
    """Whether a word in other letters than the Latin ones is a given name, in any form."""
    script = script_of(folded[0])
    if script in _FORMS:
        return key_of(folded, script) in _forms_of(script)
    if script in (HEBREW, ARABIC):
        return any(word in _given_elsewhere() for word in without_prefixes(folded, script))
    return folded in _given_elsewhere()


def stems_of(folded: str) -> Iterator[str]:
    """What a word that ends as names do in sentences may be a form of, itself first."""
    if script_of(folded[0]) == CYRILLIC:
        rows, shortest = _FAMILIES_IN_RUSSIAN, _SHORTEST_IN_RUSSIAN
    else:
        rows, shortest = _STEMS, _SHORTEST_STEM
    for at in range(len(folded), max(len(folded) - _LONGEST_END, 0) - 1, -1):
        instead = rows.get(folded[at:])
        if instead is not None and at + len(instead) >= shortest:
            yield folded[:at] + instead


def _strengthened(stem: str) -> str:
    """`Peka` of `Pekan` is of Pekka: a Finnish consonant is doubled in the first form."""
    return f"{stem[:-1]}{stem[-2]}{stem[-1]}" if stem[-2] in "kpt" else stem


def family_of(folded: str) -> str:
    """The family name that a word is, or a form of; nothing where it is none."""
    return next((stem for stem in stems_of(folded) if stem in families()), "")


def given_of(folded: str) -> str:
    """The given name that a word is, or a form of; nothing where it is none."""
    if script_of(folded[0]) != LATIN:
        return folded if is_given_elsewhere(folded) else ""
    stems = list(stems_of(folded))
    return next((stem for stem in (*stems, *map(_strengthened, stems[1:])) if stem in CALLED), "")


def is_borne_whole(name: str) -> bool:
    """Whether words are a given name with a family name behind it, and no place; or an address, or in a script that
    parts no words."""
    words = [APOSTROPHES.split(word.folded)[0] for word in read_text(name).words]
    if "@" in name or script_of(name[0]) in (UNBROKEN, OTHER):
        return True
    is_family = words[-1] in families() or not (is_ordinary(words[-1]) or is_known_anywhere(words[-1]))
    return len(words) > 1 and words[0] in CALLED and is_family and "_".join(words) not in places()
