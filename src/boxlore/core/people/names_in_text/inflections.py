"""The forms of one word of a name: as it changes in sentences, and the key by which it is known in other scripts."""

import re
from collections.abc import Iterable
from functools import lru_cache

from boxlore.core.people.names_in_text.inflection_table import (
    CYRILLIC_INFLECTED,
    GREEK_INFLECTED,
    NAMES_IN_THE_PLURAL,
    NAMES_INFLECTED,
    NAMES_OF_THREE,
    SHORT_NAMES_INFLECTED,
)
from boxlore.core.people.names_in_text.scripts_table import (
    ARABIC_BEFORE,
    ARABIC_KEYS,
    ARMENIAN_BEHIND,
    ARMENIAN_SPELLED,
    CYRILLIC_KEYS,
    CYRILLIC_OF_LATIN,
    CYRILLIC_OF_LATIN_Y,
    GEORGIAN_BEHIND,
    GEORGIAN_SPELLED,
    GREEK_KEYS,
    GREEK_PAIRS,
    HEBREW_BEFORE,
    HEBREW_KEYS,
    LATIN_LEVELLED,
    LATIN_WAYS,
)
from boxlore.core.people.names_in_text.text_normalising import (
    ARABIC,
    ARMENIAN,
    CYRILLIC,
    GEORGIAN,
    GREEK,
    HEBREW,
    LATIN,
)

_VOWELS = "aeiouy"
_CONSONANTS = frozenset("бвгджзклмнпрстфхцчшщ")
_FALLS_OUT = re.compile(r"[aeiou]")
_HISSING = re.compile(r"sC|[td]?[sz]|C")
_BEFORE_A_VOWEL = re.compile(r"(?<=.)i(?=[aeiou])")
_LAST_OF_A_FAMILY = re.compile(r"[eo][vf](a?)$")
_CH = re.compile(r"(?<![st])ch")


def inflected(word: str, rows: Iterable[tuple[str, str, str]]) -> set[str]:
    """The forms of a folded word by rows of `inflection_table`, but itself."""
    forms: set[str] = set()
    for end, instead, endings in rows:
        if end in "*+":
            if (word[-1] in _VOWELS) is (end == "*"):
                continue
            stem = word + instead[1:]
        elif word.endswith(end) and (len(word) - len(end) > 1 or word == end):
            stem = word[: -len(end)] + instead
        else:
            continue
        forms.update(stem + ending.replace("=", "") for ending in endings.split())
    return forms - {word}


@lru_cache(65536)
def latin_forms(word: str) -> frozenset[str]:
    """Every form of a folded Latin word but itself."""
    rows = NAMES_INFLECTED if len(word) > 3 else SHORT_NAMES_INFLECTED
    return frozenset(inflected(word, (*rows, *NAMES_OF_THREE) if len(word) == 3 else rows))


def latin_plurals(word: str) -> set[str]:
    """What a folded Latin word of three letters and more may be in the plural, besides `latin_forms`."""
    return inflected(word, NAMES_IN_THE_PLURAL) if len(word) > 2 else set()


@lru_cache(65536)
def key_of(word: str, script: str) -> str:
    """The Latin letters by which a folded word is known in every script; only consonants of Hebrew and Arabic."""
    if script == CYRILLIC:
        word = word.translate(CYRILLIC_KEYS)
    elif script == GREEK:
        for pair, letters in GREEK_PAIRS:
            word = word.replace(pair, letters)
        word = word.translate(GREEK_KEYS)
    elif script in (HEBREW, ARABIC):
        first = "i" if word[0] in "יي" else "a" if word[0] in "אעاع" else ""
        letters = word.translate(HEBREW_KEYS if script == HEBREW else ARABIC_KEYS)
        return consonants_of(first + letters)
    else:
        if script == GEORGIAN:
            word = word.translate(GEORGIAN_SPELLED)
        elif script == ARMENIAN:
            word = word.replace("ու", "u").translate(ARMENIAN_SPELLED)
        if word.startswith(("ye", "je")):
            word = word[1:]  # Yekaterina, Jelena: Е
        for letters, level in LATIN_LEVELLED:
            word = word.replace(letters, level)
    return _without_doubles(word)


def loose_key(key: str) -> str:
    """What all romanisations of one Cyrillic word have in common, from its key: all hissing sounds are one, no `i` is
    written before a vowel, -ev is -ov and may end in f (`Sacharowa`, `Joukoff`, `Chruschtschow`)."""
    key = _HISSING.sub("s", key)
    key = _BEFORE_A_VOWEL.sub("", key)
    return _without_doubles(_LAST_OF_A_FAMILY.sub(r"ov\1", key))


@lru_cache(1 << 14)
def cyrillic_keys_of(word: str) -> frozenset[str]:
    """The keys of a folded Latin word as Cyrillic writes it by its sound, in each of the ways of `scripts_table`."""
    keys = {key_of(word, LATIN)}
    for way in LATIN_WAYS:
        said = word
        for letters, instead in way:
            said = said.replace(letters, instead)
        keys.add(key_of(said, LATIN))
    return frozenset(keys)


def latin_readings(word: str) -> set[str]:
    """What a folded Cyrillic word may stand for in Latin letters that Cyrillic has not, and for an h, as keys."""
    readings = {word}
    for letters in (CYRILLIC_OF_LATIN, CYRILLIC_OF_LATIN_Y):
        soft = "".join(
            letter.translate(letters) if before in _CONSONANTS else letter
            for before, letter in zip(f" {word}", word, strict=False)
        )
        readings |= {soft, soft[0].translate(letters) + soft[1:] if soft[0] in "юы" else soft}
    readings |= {reading.replace("е", "о", count) for reading in readings for count in (1, -1)}
    readings |= {reading.replace("г", "х") for reading in readings}
    return {key_of(reading, CYRILLIC) for reading in readings}


def skeleton(loose: str) -> str:
    """The consonants of a loose key: vowels are what systems differ in most (`Krasnoshchekov`, `Krasnoschtschokow`)."""
    return f"-{_FALLS_OUT.sub('', loose)}"


def loose_keys_of(word: str) -> set[str]:
    """The loose keys of a folded Latin word; `ch` and `j` are different letters in German and in French."""
    spellings = {word, _CH.sub("kh", word)}
    spellings |= {each.replace("c", "ts") for each in spellings if "ch" not in each}
    return {loose_key(key_of(each, LATIN)) for each in spellings | {each.replace("j", "zh") for each in spellings}}


def consonants_of(key: str) -> str:
    """What Hebrew and Arabic write of a key: its first letter, and the consonants."""
    first = "i" if key[:1] == "i" else "a" if key[:1] in _VOWELS else key[:1]
    rest = "".join(letter for letter in key[1:] if letter not in _VOWELS)
    if not key:
        return ""
    skeleton = (first + rest).replace("v", "b").replace("p", "f").replace("g", "z")
    return _without_doubles(skeleton[0] + skeleton[1:].removesuffix("h"))


def cyrillic_forms(key: str) -> frozenset[str]:
    """The forms of a name in Cyrillic sentences, as keys."""
    bare = key.removesuffix("e") if key[-2:-1] not in _VOWELS else key
    return frozenset({key, bare} | inflected(key, CYRILLIC_INFLECTED) | inflected(bare, CYRILLIC_INFLECTED))


def greek_forms(key: str) -> frozenset[str]:
    """The forms of a name in Greek sentences, as keys."""
    forms = {key} | inflected(key, GREEK_INFLECTED)
    return frozenset(forms | {form.replace("ei", "i") for form in forms})  # an accent parts ε and ι; it is taken off


def without_prefixes(word: str, script: str) -> list[str]:
    """A Hebrew or Arabic word, and what is left of it without the small words written together with it."""
    before = HEBREW_BEFORE if script == HEBREW else ARABIC_BEFORE
    return [word[len(small) :] for small in before if word.startswith(small) and len(word) - len(small) > 2]


def without_endings(word: str, script: str) -> list[str]:
    """A Georgian or Armenian word, and what is left of it without what may stand behind a name."""
    behind = GEORGIAN_BEHIND if script == GEORGIAN else ARMENIAN_BEHIND
    return [word.removesuffix(end) for end in behind if word.endswith(end) and len(word) - len(end) > 2]


def _without_doubles(word: str) -> str:
    return "".join(letter for at, letter in enumerate(word) if at == 0 or letter != word[at - 1])


def single_consonants(word: str) -> str:
    """A word of which no consonant stands twice in a row; of vowels two are one sound in many languages."""
    return "".join(letter for at, letter in enumerate(word) if not at or letter in _VOWELS or letter != word[at - 1])
