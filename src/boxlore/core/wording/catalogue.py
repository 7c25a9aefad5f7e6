"""Our own words in every output, in the language of who reads it: one message, one place, one translation.

Theory of operation. A message is written in English where it is said, by a call of a `Say`: `say("Told by {name}",
name=…)`, `say.counted(3, "{count} photograph", "{count} photographs")`. The English text is its key. A message that is
chosen from a table is marked there by `to_say("Places")` and said later. The translations are the .po files in
`po/` (GNU gettext, PO files); `tests/core/wording/make_translations.py` collects the messages with babel,
puts new ones into each .po and makes `translations.py` of them, so that nothing is read at run time, and a wheel needs
no other file. A test fails where a message has no translation. So: write the message, run the script, translate.

What is told is never a message: it stands in a message as a value. Numbers, lists and plurals are those of Unicode
CLDR (`translations.py` has them from babel), names of countries too (`countries_table.py`). What goes to archives and
what the keeper reads on the screen is said by ENGLISH.
"""

import re
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

from boxlore.core.wording.countries_table import COUNTRIES
from boxlore.core.wording.translations import LANGUAGE_WAYS, TRANSLATIONS

LANGUAGES = ("en", *TRANSLATIONS)
"""The languages in which all that a family reads is complete, by ISO 639."""

_IS_ONE = {"n != 1": lambda count: count == 1, "n > 1": lambda count: count < 2}
"""How a language's plurals are chosen, as a PO file writes it -> whether a count takes the first form."""

_NO_MARK_BEFORE_AND = ("et", "de")
"""Languages that set no semicolon before their and (from memory: Duden; Eesti õigekeelsus)."""

_SOUNDS_I = re.compile(r"h?[ií](?![aeo])|y(?![aeiouáéíóú])", re.IGNORECASE)
_DE = re.compile(r"\bde (\{(\w+)\})")
_VOWEL = re.compile(r"[aeiouhàâäéèêëîïôöùûüœæ]", re.IGNORECASE)
"""Letters before which French elides; a name's first h is mute (from memory: Grevisse, Le bon usage)."""
_ET_OF = "{kin} isikule {names}"
"""Whose kin somebody is, in Estonian, where a form of the name is not known."""
_ET_APART = re.compile(r"[,;] | ja ")
_ET_OWN_GENITIVE = re.compile(r"[aiouõäöü]\W*\Z", re.IGNORECASE)
"""The end of a name that is its own genitive: a vowel other than e, which may be mute in a foreign name (from memory:
Eesti õigekeelsuskäsiraamat).
"""
_SOUNDS_O = re.compile(r"h?[oó]|8", re.IGNORECASE)


def to_say(message: str) -> str:
    """The message itself: marks one that a table holds, so that it is collected for translation."""
    return message


@dataclass(frozen=True, slots=True)
class Say:
    """Says messages in one language, a member of LANGUAGES."""

    language: str = "en"

    def __call__(self, message: str, /, **values: object) -> str:
        """The message in this language, with the values in their places."""
        return self._filled(self.pattern(message), values)

    def counted(self, count: int, one: str, many: str, /, **values: object) -> str:
        """The message for that count; `{count}` in it is the number as the language writes it."""
        forms = TRANSLATIONS.get(self.language, {}).get(one, (one, many))
        words = forms[0] if _IS_ONE[LANGUAGE_WAYS[self.language][0]](count) else forms[-1]
        return self._filled(words, {"count": self.number(count), **values})

    def _filled(self, words: str, values: Mapping[str, object]) -> str:
        """The values in their places. French elides before a vowel: `photographie d’Anna`; in Estonian a name that ends
        in one is its own genitive: `Leida vanaema`, and of others the form of a name is not known.
        """
        if self.language == "fr":
            words = _DE.sub(lambda de: f"d’{de[1]}" if _VOWEL.match(_letters(str(values[de[2]]))) else de[0], words)
        if self.language == "et" and words == _ET_OF:
            names = _ET_APART.split(str(values["names"]))
            words = "{names} {kin}" if all(map(_ET_OWN_GENITIVE.search, names)) else words
        return words.format(**values)

    def number(self, count: int) -> str:
        """`1,234`, `1.234`, `1 234`: with the groups of this language."""
        _, group, least, _, _ = LANGUAGE_WAYS[self.language]
        return f"{count:,}".replace(",", group) if abs(count) >= 10 ** (2 + least) else str(count)

    def listed(self, names: Sequence[str]) -> str:
        """`A, B and C`; with semicolons if a name itself holds a comma (`A, b; and C`)."""
        if len(names) < 2:
            return "".join(names)
        holds_commas = any("," in name for name in names)
        mark = self._semicolon if holds_commas else ","
        before = mark if holds_commas and self.language not in _NO_MARK_BEFORE_AND else ""
        joining = f"{before} {self._and(names[-1])} "
        return f"{f'{mark} '.join(names[:-1])}{joining}{names[-1]}"

    def either(self, choices: Sequence[str]) -> str:
        """`A or B or C`."""
        said = "".join(choices[:1])
        for choice in choices[1:]:
            said += f" {self._or(choice)} {choice}"
        return said

    def apart(self, parts: Iterable[str]) -> str:
        """`A; B`: parts that are no list of one kind."""
        return f"{self._semicolon} ".join(parts)

    @property
    def _semicolon(self) -> str:
        """French sets a space before it."""
        return "\u00a0;" if self.language == "fr" else ";"

    def country(self, code: str, name: str) -> str:
        """A country of today by its code (ISO 3166-1); `name` is its English name."""
        return COUNTRIES.get(self.language, {}).get(code, name)

    def pattern(self, message: str) -> str:
        """The message in this language, with the places for its values open."""
        words = TRANSLATIONS.get(self.language, {}).get(message, message)
        return words if isinstance(words, str) else words[0]

    def _and(self, next_word: str) -> str:
        """Spanish says e before the sound of i (Ortografía de la lengua española, 2010; from memory)."""
        word = LANGUAGE_WAYS[self.language][3]
        return "e" if self.language == "es" and _SOUNDS_I.match(_letters(next_word)) else word

    def _or(self, next_word: str) -> str:
        """Spanish says u before the sound of o (the same)."""
        word = LANGUAGE_WAYS[self.language][4]
        return "u" if self.language == "es" and _SOUNDS_O.match(_letters(next_word)) else word


ENGLISH = Say()


def _letters(words: str) -> str:
    """The words from their first letter or figure on."""
    return re.sub(r"\A[\W_]+", "", words)


def say_in(tag: str) -> Say:
    """Says messages in the language of a BCP 47 tag, or in English where there is no catalogue for it."""
    base = tag.split("-")[0].lower()
    return Say(base) if base in LANGUAGES else ENGLISH
