"""The words of a text as a search for names sees them: without what nobody sees, and each with where it stands.

Rule kept: what looks alike to a reader is the same here. Accents, points and the form of a letter (full width, of
mathematics) are taken off by the compatibility decomposition of the Unicode Standard (chapter 3.7); characters that
nobody sees (category Cf, and those of UAX #44 with Default_Ignorable_Code_Point that are letters or marks) are passed
over. A letter of another script that looks like a Latin one counts as that one, where Latin letters stand beside it.
"""

import re
import unicodedata
from collections.abc import Sequence
from dataclasses import dataclass, replace
from itertools import pairwise

from boxlore.core.people.names_in_text.scripts_table import CYRILLIC_LOOKALIKES, LOOKALIKES
from boxlore.core.statements import fold

_WORD = re.compile(r"[^\W\d_]+(?:['’‘ʼ´`′＇][^\W\d_]+)*|\d+")
_BROKEN = re.compile(r"(?<=[^\W\d_])[-‐‑¬\u00ad][ \t\u00ad]*\r?\n[ \t]*(?=[^\W\d_])")
"""Where a hyphen that was typed parts a word at the end of a line."""
_SPACED = re.compile(r"(?<![^\W_])[^\W\d_]([ .·\-])(?:[^\W\d_]\1){2,}[^\W\d_](?![^\W_])")
"""A word whose letters stand apart: `R u t h`, `R.u.t.h`."""
_HUMP = re.compile(r"(?<=[a-z]{3})(?=[A-Z][a-z]{2})")
APOSTROPHES = re.compile(r"['’‘ʼ´`′＇]")
ELIDED = frozenset("l d un qu c j n s dell dall all nell sull coll quell".split())
"""What French and Italian elide before a vowel, with an apostrophe."""
_VARIATION = (*range(0xFE00, 0xFE10), *range(0x180B, 0x1810), *range(0xE0100, 0xE01F0))
_UNSEEN = frozenset("\u034f\u115f\u1160\u17b4\u17b5\u3164\uffa0" + "".join(map(chr, _VARIATION)))

LATIN, CYRILLIC, GREEK, ARMENIAN, GEORGIAN, HEBREW, ARABIC, UNBROKEN, OTHER = (
    "latin", "cyrillic", "greek", "armenian", "georgian", "hebrew", "arabic", "unbroken", "other",
)  # fmt: skip
_RANGES = (
    (0x0370, 0x03FF, GREEK), (0x0400, 0x052F, CYRILLIC),
    (0x0530, 0x058F, ARMENIAN), (0x0590, 0x05FF, HEBREW), (0x0600, 0x06FF, ARABIC),
    (0x0750, 0x077F, ARABIC), (0x0E00, 0x0EFF, UNBROKEN), (0x1000, 0x109F, UNBROKEN),
    (0x10A0, 0x10FF, GEORGIAN), (0x1780, 0x17FF, UNBROKEN),
    (0x3040, 0x30FF, UNBROKEN), (0x3400, 0x4DBF, UNBROKEN), (0x4E00, 0x9FFF, UNBROKEN), (0x20000, 0x3FFFF, UNBROKEN),
)  # fmt: skip
"""Scripts by the blocks of the Unicode Standard; what is below them is Latin, what is between is `other`."""


def script_of(letter: str) -> str:
    """The script of one letter, of those that matter here."""
    point = ord(letter)
    if point < 0x0370:
        return LATIN
    return next((script for first, last, script in _RANGES if first <= point <= last), OTHER)


@dataclass(frozen=True, slots=True)
class Word:
    """One word: folded, as it is spelled (accents off), its script, where it begins and ends, what stands before it."""

    folded: str
    spelled: str
    script: str
    start: int
    end: int
    before: str

    @property
    def unelided(self) -> str:
        """The folded word without what is elided before it: `hiver` of `L’hiver`."""
        elided, *rest = APOSTROPHES.split(self.folded)
        return rest[0] if elided in ELIDED and len(rest) == 1 and len(rest[0]) > 1 else self.folded

    @property
    def is_small(self) -> bool:
        """Whether the word, without what is elided before it, is written small."""
        is_elided = self.unelided != self.folded
        return (APOSTROPHES.split(self.spelled)[-1] if is_elided else self.spelled)[0].islower()


@dataclass(frozen=True, slots=True)
class Text:
    """A text without what nobody sees: `clean`, and for each of its letters where it stands in the words as told."""

    clean: str
    places: tuple[int, ...] | range
    words: tuple[Word, ...]

    @property
    def is_ascii(self) -> bool:
        """Whether the words as told have letters of ASCII alone."""
        return isinstance(self.places, range)

    @property
    def is_one_case(self) -> bool:
        """Whether capitals tell nothing: all letters are small, or all are capitals."""
        return self.clean.islower() or self.clean.isupper() or self.clean.lower() == self.clean


def read_text(words: str) -> Text:
    """The words of a text. Raises nothing: any text can be read."""
    clean, places = (words, range(len(words))) if words.isascii() else _without_unseen(words)
    found: list[Word] = []
    last = 0
    for match in _WORD.finditer(clean):
        for start, end in _humps(match):
            found.append(_word(clean[start:end], places[start], places[end - 1] + 1, clean[last:start]))
            last = end
    return Text(clean, places, tuple(found))


Change = tuple[int, int, str]
"""(start, end, what stands there instead)."""


def breaks_in(words: str) -> list[Change]:
    """What parts a word, with nothing instead: a hyphen at the end of a line with the blanks behind it, and the blanks
    of a word whose letters stand apart."""
    parted = [match.span() for match in _BROKEN.finditer(words)] if "\n" in words else []
    spaced = [match.start() + at for match in _SPACED.finditer(words) for at in range(1, len(match[0]), 2)]
    return [(start, end, "") for start, end in sorted([*parted, *((at, at + 1) for at in spaced)])]


def read_changed(words: str, changes: Sequence[Change]) -> Text:
    """The words of a text with changes made, in the order of the text; their places are those in `words`."""
    letters: list[str] = []
    spans: list[tuple[int, int]] = []
    at = 0
    for start, end, instead in (*changes, (len(words), len(words), "")):
        letters += (*words[at:start], *instead)
        spans += [*((place, place + 1) for place in range(at, start)), *((start, end) for _ in instead)]
        at = end
    text = read_text("".join(letters))
    moved = tuple(replace(word, start=spans[word.start][0], end=spans[word.end - 1][1]) for word in text.words)
    return Text(text.clean, tuple(spans[place][0] for place in text.places), moved)


def as_seen(words: str) -> str:
    """A text as a reader sees it: without what nobody sees, without accents, a word of letters that look alike in the
    one script that has them all."""
    if words.isascii():
        return words
    clean, _ = _without_unseen(words)
    return _WORD.sub(lambda word: word[0] if word[0].isascii() else _in_its_script(word[0]), clean)


def is_unseen(letter: str) -> bool:
    """Whether nobody sees a character."""
    return letter in _UNSEEN or unicodedata.category(letter) == "Cf"


def _without_unseen(words: str) -> tuple[str, tuple[int, ...]]:
    letters: list[str] = []
    places: list[int] = []
    for at, letter in enumerate(words):
        if is_unseen(letter):
            continue
        for part in unicodedata.normalize("NFKD", letter):
            if not unicodedata.combining(part):
                letters.append(part)
                places.append(at)
    return "".join(letters), tuple(places)


def _humps(match: re.Match[str]) -> list[tuple[int, int]]:
    """Where the parts of a word begin and end: `RuthAndLeida` is three, `McDonald` and `O'Brien` are one."""
    if match[0][1:].islower():
        return [match.span()]
    cuts = [match.start(), *(match.start() + hump.start() for hump in _HUMP.finditer(match[0])), match.end()]
    return list(pairwise(cuts))


def _word(spelled: str, start: int, end: int, before: str) -> Word:
    if spelled.isascii():  # most words are
        return Word(spelled.lower(), spelled, OTHER if spelled.isdecimal() else LATIN, start, end, before)
    spelled = _in_its_script(spelled)
    scripts = _scripts_of(spelled)
    script = scripts.pop() if len(scripts) == 1 else UNBROKEN if UNBROKEN in scripts else OTHER
    return Word(fold(spelled), spelled, script, start, end, before)


def _scripts_of(spelled: str) -> set[str]:
    return {script_of(letter) for letter in spelled if letter.isalpha()}


def _in_its_script(spelled: str) -> str:
    """A word as it is spelled, of mixed letters that look alike in one script."""
    scripts = _scripts_of(spelled)
    is_mixed = LATIN in scripts and len(scripts) > 1 and scripts <= {LATIN, CYRILLIC, GREEK}
    return _in_one_script(spelled) if is_mixed else spelled


def _in_one_script(spelled: str) -> str:
    """A word of mixed letters in the script that has them all; Latin where more than one has."""
    latin = spelled.translate(LOOKALIKES)
    if all(script_of(letter) == LATIN for letter in latin):
        return latin
    return spelled.translate(CYRILLIC_LOOKALIKES)


def plain(folded: str) -> str:
    """A folded word without its apostrophes: `o'brien` → `obrien`."""
    return APOSTROPHES.sub("", folded)
