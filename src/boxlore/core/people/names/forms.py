"""Names: every form a person goes by, and whether two names may be one person's.

Names are kept as told; the forms made here are for finding a name, never for writing it. Spelling is held
against spelling by the Soundex of the US National Archives (General Information Leaflet 55) and by edits;
pet forms come from `core.people.names.short_forms_table`, those only sought in words from `fond_forms_table` and
`nicknames_table` beside it.
"""

import re
from collections.abc import Mapping, Sequence
from functools import cache, lru_cache

from boxlore.core.people.names.fond_forms_table import FOND_FORMS
from boxlore.core.people.names.nicknames_table import NICKNAMES
from boxlore.core.people.names.short_forms_table import SHORT_FORMS
from boxlore.core.people.names.words_table import GENDERED_ENDINGS
from boxlore.core.people.names_in_text.inflections import key_of
from boxlore.core.people.names_in_text.text_normalising import CYRILLIC, script_of
from boxlore.core.statements import fold

WordForms = Mapping[str, Sequence[str]]

_WORD = re.compile(r"[^\W\d_]+")


def _every_short() -> dict[str, tuple[str, ...]]:
    rows_of_form: dict[str, dict[str, None]] = {}
    for row in SHORT_FORMS:
        for form in row:
            rows_of_form.setdefault(form, {}).update(dict.fromkeys(row))
    return {form: tuple(others) for form, others in rows_of_form.items()}


_ALIKE = _every_short()
_ROWS = {form: frozenset(at for at, row in enumerate(SHORT_FORMS) if form in row) for form in _ALIKE}


_CYRILLIC_BY_KEY: dict[str, list[int]] = {}
for _at, _row in enumerate(SHORT_FORMS):
    if not _row[0].isascii():
        _CYRILLIC_BY_KEY.setdefault(key_of(_row[0], CYRILLIC), []).append(_at)


@cache
def _said_for() -> dict[str, set[str]]:
    """What is said for full forms, by their keys: also what is only sought in words."""
    rows = [*SHORT_FORMS, *(row.split() for row in FOND_FORMS)]
    rows += [row.replace(":", "").split() for row in " ".join(NICKNAMES.split()).split(", ")]
    forms: dict[str, set[str]] = {}
    for full, *shorts in rows:
        forms.setdefault(key_of(full, script_of(full[0])), set()).update(shorts)
    return forms


def full_forms(words: WordForms) -> tuple[str, ...]:
    """Every full form of the name: as told, and each call name or initials with each family name."""
    surnames = [*words.get("family", []), *words.get("born_as", []), *words.get("married_as", [])]
    given = list(words.get("given", []))
    calls = [
        *given,
        *words.get("nickname", []),
        *(f"{first_name} {name}" for first_name in given for name in words.get("patronymic", [])),
    ]
    calls += [part for call in given for part in call.split() if len(part) > 1]
    forms = list(words.get("name", []))
    for surname in dict.fromkeys(surnames):
        for call in dict.fromkeys(calls):
            forms += [f"{call} {surname}", f"{surname}, {call}", f"{initials(call)} {surname}"]
        forms += [f"{title} {surname}" for title in words.get("honorific", [])]
    return tuple(dict.fromkeys(forms))


def gendered_forms(family: str) -> set[str]:
    """A folded family name as men and women bear it: `ivanov` and `ivanova`. More than one language may claim it."""
    forms = {family}
    for endings in GENDERED_ENDINGS:
        for ending in endings:
            if ending and family.endswith(ending):
                forms |= {f"{family.removesuffix(ending)}{also}" for also in endings}
    return forms


def initials(call: str) -> str:
    """`Leida Johanna` → `L. J.`"""
    return " ".join(f"{part[0]}." for part in call.replace("-", " ").split())


def pet_forms(call: str) -> set[str]:
    """What people say for a folded given name that is a full one, in any of its spellings."""
    forms = {form for at in _ROWS.get(call, ()) if close(SHORT_FORMS[at][0], call) for form in SHORT_FORMS[at]}
    return forms.union(*(_said_for().get(key, ()) for key in _keys_of(call))) - {call}


def pet_forms_in_another_script(call: str) -> set[str]:
    """The Cyrillic short forms of a folded given name in Latin letters: `yekaterina` → `катя`."""
    return {form for key in _keys_of(call) for at in _CYRILLIC_BY_KEY.get(key, ()) for form in SHORT_FORMS[at][1:]}


def _keys_of(call: str) -> set[str]:
    """The key of a folded given name, and that in which ё, which is folded to е, is not spelled out: `Pyotr`."""
    key = key_of(call, script_of(call[0]))
    return {key, key.replace("io", "e")}


def full_names_of(call: str) -> set[str]:
    """The full names that a folded short one is said for."""
    return {SHORT_FORMS[at][0] for at in _ROWS.get(call, ())} - {call}


def parts_of(name: str) -> list[str]:
    """The words of a name, folded."""
    return _WORD.findall(fold(name))


def may_be_called(name: str, other_name: str) -> bool:
    """Whether two given names can be one person's: the same, a pet form of the other, or an initial of it."""
    name, other_name = fold(name).strip(" ."), fold(other_name).strip(" .")
    if not name or not other_name:
        return False
    if name == other_name or (_ROWS.get(name, frozenset()) & _ROWS.get(other_name, frozenset())):
        return True
    if min(len(name), len(other_name)) == 1:
        return name[0] == other_name[0]
    return close(name, other_name)


def short_rows(given: str) -> frozenset[int]:
    """The rows of the table of pet forms that a folded name stands in."""
    return _ROWS.get(given, frozenset())


_CODES = {
    letter: code for code, letters in enumerate(("bfpv", "cgjkqsxz", "dt", "l", "mn", "r"), 1) for letter in letters
}


@lru_cache(maxsize=65536)
def soundex(name: str) -> str:
    """The code of the US National Archives: a letter and three digits; empty for a name without Latin letters.

    Letters of one code stand once, also across h or w; a vowel between them parts them. Prefixes are not
    taken off (the leaflet allows both).
    """
    letters = [letter for letter in fold(name) if "a" <= letter <= "z"]
    if not letters:
        return ""
    digits, last = "", _CODES.get(letters[0], 0)
    for letter in letters[1:]:
        code = _CODES.get(letter, 0)
        if code and code != last:
            digits += str(code)
        if letter not in "hw":
            last = code
    return f"{letters[0].upper()}{digits[:3]:0<3}"


@lru_cache(maxsize=65536)
def close(word: str, other_word: str) -> bool:
    """Whether two folded words are one slip apart (a letter more, less, other, or two changed about); four and up."""
    if word == other_word:
        return True
    if abs(len(word) - len(other_word)) > 1 or min(len(word), len(other_word)) < 4:
        return False
    at = 0
    while at < min(len(word), len(other_word)) and word[at] == other_word[at]:
        at += 1
    a, b = word[at:], other_word[at:]
    return a[1:] == b[1:] or a[1:] == b or a == b[1:] or (a[:2] == b[1::-1] and a[2:] == b[2:])
