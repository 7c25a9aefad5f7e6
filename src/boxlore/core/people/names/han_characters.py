"""Names in Han characters: one form of each character, and how they are written in Latin letters.

Simplified, traditional and Japanese forms of one character count as one (`plainest`). A name told in characters alone
is found by its readings in Mandarin: in Hanyu Pinyin (ISO 7098) and in the spelling of Wade and Giles, whose rules are
from memory. A name told in Latin letters that are such readings is found in characters that are read so. Readings of
other Chinese languages and of Japan are many to one character, and must be told.
"""

from collections.abc import Iterator
from functools import cache
from itertools import islice, product

from boxlore.core.people.names.han_characters_table import OTHER_FORMS, PLAINEST_FORMS, READINGS

MOST_SPELLINGS = 8
_PLAINEST = str.maketrans(OTHER_FORMS, PLAINEST_FORMS)

Syllables = tuple[str, ...]


def plainest(text: str) -> str:
    """The text, letter for letter, with the plainest form of each character: `陳曉梅` → `陈晓梅`."""
    return text.translate(_PLAINEST)


@cache
def _readings() -> dict[str, tuple[str, ...]]:
    """Character → how it is read."""
    read: dict[str, tuple[str, ...]] = {}
    for line in READINGS.split("\n")[1:-1]:
        reading, _, letters = line.partition(" ")
        for letter in letters:
            read[letter] = (*read.get(letter, ()), reading)
    return read


@cache
def _syllables() -> frozenset[str]:
    return frozenset(reading for readings in _readings().values() for reading in readings)


def spelled(characters: str) -> list[Syllables]:
    """How a name in characters is spelled, syllable by syllable: in pinyin, then as Wade and Giles; none for others."""
    readings = [_readings().get(letter, ()) for letter in plainest(characters)]
    spellings = list(islice(product(*readings), MOST_SPELLINGS)) if characters else []
    return list(dict.fromkeys([*spellings, *(tuple(map(wade_giles, syllables)) for syllables in spellings)]))


_WHOLE = {
    "zhi": "chih", "chi": "chih", "shi": "shih", "ri": "jih", "zi": "tzu", "ci": "tzu", "si": "ssu", "er": "erh",
    "ye": "yeh", "yan": "yen", "you": "yu", "yong": "yung", "gui": "kuei", "kui": "kuei", "he": "ho", "ge": "ko",
    "ke": "ko", "yi": "i", "yue": "yueh",
}  # fmt: skip
_INITIALS = (
    ("zh", "ch"), ("ch", "ch"), ("sh", "sh"), ("b", "p"), ("d", "t"), ("g", "k"), ("j", "ch"), ("q", "ch"), ("x", "hs"),
    ("z", "ts"), ("c", "ts"), ("r", "j"),
)  # fmt: skip
_FINALS = (("ian", "ien"), ("ie", "ieh"), ("ue", "ueh"), ("ve", "ueh"), ("ong", "ung"), ("v", "u"))
_KEEP_UO = ("g", "k", "h", "sh")


def wade_giles(syllable: str) -> str:
    """A syllable of pinyin as Wade and Giles spell it, without apostrophes and points: `xiao` → `hsiao`."""
    if syllable in _WHOLE:
        return _WHOLE[syllable]
    initial, instead = next((row for row in _INITIALS if syllable.startswith(row[0])), ("", ""))
    final = syllable[len(initial) :]
    if final.endswith("uo") and initial not in _KEEP_UO and not syllable.startswith(_KEEP_UO):
        final = final.removesuffix("uo") + "o"
    ending, spelling = next((row for row in _FINALS if final.endswith(row[0])), ("", ""))
    return instead + final.removesuffix(ending) + spelling


def parted(word: str) -> Syllables:
    """The syllables of pinyin that a folded word is put together of, the longest first; none where it is not."""
    if not word:
        return ()
    for end in range(min(6, len(word)), 0, -1):
        if word[:end] in _syllables():
            rest = parted(word[end:])
            if rest or end == len(word):
                return (word[:end], *rest)
    return ()


def read_as(text: str, syllables: Syllables) -> Iterator[int]:
    """Where characters are read so; `text` is in its plainest form."""
    read = _readings()
    for at in range(len(text) - len(syllables) + 1):
        letters = text[at : at + len(syllables)]
        if all(syllable in read.get(letter, ()) for syllable, letter in zip(syllables, letters, strict=True)):
            yield at
