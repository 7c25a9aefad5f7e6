"""Names in the form that a dictionary has, of those that a sentence gives them: `s dcerou Evou` is Eva.

    with somebody    ; Evou → Eva   Tõnuga → Tõnu   Ewą → Ewa   Annu → Anna   Олегом Крыловым → Олег Крылов
    a whole family   ; Зуевы → Зуев, Зуева   Dvořákovi → Dvořák, Dvořáková   Kowalscy → Kowalski, Kowalska

A given name is one only if the form found is known as one; a family name takes the form of a man or a woman, by the
given name before it. What is found is only ever a proposal. Grammars of the languages, from memory; no source.
"""

from collections.abc import Iterator

from boxlore.core.people.names.forms import full_names_of
from boxlore.core.people.names.lists_table import MEN, WOMEN
from boxlore.core.people.names.tokens import CALLED, Token, token_of
from boxlore.core.people.names.traditions import KnownNames
from boxlore.core.statements import fold

_GIVEN: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("ou", ("a",)), ("ií", ("ie",)), ("kem", ("ek",)), ("kiem", ("ek",)), ("iem", ("",)), ("em", ("", "o")),
    ("ym", ("y",)), ("e", ("ė",)), ("im", ("i",)), ("ą", ("a",)),
    ("iu", ("is", "ius", "ys")), ("imi", ("is",)), ("umi", ("us",)), ("u", ("a", "s", "as", "is")), ("i", ("is", "e")),
    ("ga", ("",)), ("iga", ("",)), ("uga", ("",)), ("ega", ("",)), ("aga", ("",)),
    ("val", ("",)), ("vel", ("",)),
)  # fmt: skip
"""An ending of `with` in Czech, Polish, Lithuanian, Latvian, Estonian and Hungarian -> those of the name itself."""

_FAMILY_WITH: tuple[tuple[str, str, str], ...] = (
    ("овыми", "ов", "ова"), ("евыми", "ев", "ева"), ("ёвыми", "ёв", "ёва"), ("иными", "ин", "ина"),
    ("скими", "ский", "ская"), ("цкими", "цкий", "цкая"), ("овым", "ов", ""), ("евым", "ев", ""), ("ёвым", "ёв", ""),
    ("иным", "ин", ""), ("ским", "ский", ""), ("цким", "цкий", ""), ("овой", "", "ова"), ("евой", "", "ева"),
    ("ёвой", "", "ёва"), ("иной", "", "ина"), ("ской", "", "ская"), ("цкой", "", "цкая"), ("ovou", "", "ová"),
    ("skim", "ski", ""), ("ckim", "cki", ""), ("ską", "", "ska"), ("cką", "", "cka"), ("iem", "", ""), ("em", "", ""),
)  # fmt: skip
"""An ending of `with` -> those of a man's and of a woman's family name; an empty one of a man is no ending at all where
both are empty."""

_WHOLE_FAMILY: tuple[tuple[str, str, str], ...] = (
    ("овых", "ов", "ова"), ("евых", "ев", "ева"), ("ёвых", "ёв", "ёва"), ("иных", "ин", "ина"),
    ("ских", "ский", "ская"), ("цких", "цкий", "цкая"), ("ových", "?", "ová"),
    ("skich", "ski", "ska"), ("ckich", "cki", "cka"), ("ów", "", ""), ("ých", "ý", "á"),
    ("овы", "ов", "ова"), ("евы", "ев", "ева"), ("ёвы", "ёв", "ёва"), ("ины", "ин", "ина"), ("ыны", "ын", "ына"),
    ("ские", "ский", "ская"), ("цкие", "цкий", "цкая"), ("scy", "ski", "ska"), ("ccy", "cki", "cka"),
    ("dzcy", "dzki", "dzka"), ("owie", "", ""),
    ("ákovi", "ák", "áková"), ("akovi", "ak", "aková"), ("íkovi", "ík", "íková"),
    ("ikovi", "ik", "iková"), ("čkovi", "ček", "čková"), ("jkovi", "jek", "jková"), ("pkovi", "pek", "pková"),
    ("škovi", "šek", "šková"), ("ňkovi", "něk", "ňková"), ("ovi", "?", "ová"), ("iņi", "iņš", "iņa"),
    *((f"{vowel}set", f"{vowel}nen", f"{vowel}nen") for vowel in "aiouyäö"),
)  # fmt: skip
"""An ending of a family as a whole -> those of a man and of a woman of it; `?` where it is not known which."""


def given_of(token: Token, known: KnownNames) -> str:
    """The one given name of which a word is the form behind `with`; empty where there is none, or more."""
    for ending, others in _GIVEN:
        stem = token.text.removesuffix(ending)
        if stem == token.text or len(stem) < 2:
            continue
        names = [stem + other for other in others]
        if called := [name for name in names if fold(name) in CALLED or known.is_given(fold(name))]:
            return called[0] if len(called) == 1 else ""
    return ""


def likely_given_of(word: str) -> tuple[str, ...]:
    """The names of which a word that nobody knows may be the form behind `with`, by its ending alone: `Jiříček` of
    `Jiříčkem`, `Kārlis` and `Kārle` of `Kārli`."""
    for ending, others in _GIVEN:
        stem = word.removesuffix(ending)
        if stem != word and len(stem) > 2:
            return tuple(dict.fromkeys(stem + other for other in others))[:2]
    return ()


def family_behind_with(word: str, given: str) -> str:
    """The family name of which a word is the form behind `with`; the word itself where none of the endings is there."""
    family = _of_endings(_FAMILY_WITH, word, given)
    return word if family in ("", UNKNOWN) else family


def family_of_one(word: str, given: str) -> str:
    """The family name of one of a family that is told as a whole (`Зуевы`); empty for any other word, and `?` where it
    may have several forms (`Havlovi`, of Havel)."""
    family = _of_endings(_WHOLE_FAMILY, word, given)
    return UNKNOWN if UNKNOWN in family else family


UNKNOWN = "?"


def both_of_a_family(word: str) -> tuple[str, ...]:
    """A man's and a woman's name of a family told as a whole: `Dvořák`, `Dvořáková`; empty for any other word."""
    return tuple(dict.fromkeys(form for form in _forms(_WHOLE_FAMILY, word) if UNKNOWN not in form))


def _of_endings(rows: tuple[tuple[str, str, str], ...], word: str, given: str) -> str:
    forms = list(_forms(rows, word))
    woman = is_woman(given)
    if woman is None and len(set(forms)) > 1:
        return UNKNOWN
    return forms[-1 if woman else 0] if forms else ""


def _forms(rows: tuple[tuple[str, str, str], ...], word: str) -> Iterator[str]:
    for ending, man, woman in rows:
        stem = word.removesuffix(ending)
        if stem != word and len(stem) > 1:
            endings = (man, woman) if man and woman else (man or woman,)
            yield from (stem + other for other in endings)
            return


def _ends_as_a_womans(plain: str) -> bool:
    return plain.endswith(("а", "я", "a"))


def is_woman(given: str) -> bool | None:
    """Whether a given name is a woman's: by the lists, by the full names that it is said for (`Коля`), by its ending;
    None where it may be of either (`Саша`)."""
    plain = token_of(given).plain
    if plain in WOMEN or plain in MEN:
        return None if plain in WOMEN & MEN else plain in WOMEN
    full = {_ends_as_a_womans(name) for name in full_names_of(plain)} or {_ends_as_a_womans(plain)}
    return full.pop() if len(full) == 1 else None
