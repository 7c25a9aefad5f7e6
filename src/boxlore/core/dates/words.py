"""Getting words ready to be read as a date: one spelling for each thing, and numbers said as words.

What is told is never changed; only this working copy is.
"""

import re
import unicodedata

from boxlore.core.dates.words_table import MONTHS, ORDINALS, ROMAN_MONTHS, SEASONS, TENS, UNITS, WEEKDAYS, by_word

MONTH_OF = by_word(MONTHS)
WEEKDAY_OF = by_word(WEEKDAYS)
SEASON_OF = by_word(SEASONS)

_DASHES = str.maketrans(
    {"–": "-", "—": "-", "‒": "-", "−": "-", "’": "'", "‘": "'", "ʼ": "'", "“": '"', "”": '"', " ": " "}
)
_ORDINAL = re.compile(r"\b(\d{1,2})(?:st|nd|rd|th|º|ª)\b")


def simplify(text: str) -> str:
    """Lower case, plain dashes and quotes, single blanks, ordinals and spoken numbers as digits."""
    words = unicodedata.normalize("NFC", text).translate(_DASHES).casefold().strip().strip('"')
    words = " ".join(words.split())
    words = _ORDINAL.sub(r"\1", words)
    words = re.sub(r"\b(\d{1,2}) and (\d{2})\b", r"\1\2", words)  # “19 and 48”
    return _spoken(words)


def _spoken(words: str) -> str:
    """`nineteen thirty-eight` → `1938`, `twenty-first` → `21`, `nineteen hundred and five` → `1905`."""
    if not any(
        word in words for word in ("teen", "twelve", "eleven", "ten", "ty", "th", "first", "second", "third", "one")
    ):
        return words
    tokens = words.split(" ")
    out: list[str] = []
    at = 0
    while at < len(tokens):
        taken, value = _number(tokens, at)
        if taken:
            out.append(value)
            at += taken
        else:
            out.append(tokens[at])
            at += 1
    return " ".join(out)


def _number(tokens: list[str], at: int) -> tuple[int, str]:
    """How many tokens make a spoken year or ordinal from `at`, and its digits."""
    word, tail = _bare(tokens[at])
    if word in ORDINALS:
        return 1, f"{ORDINALS[word]}{tail}"
    century = UNITS.get(word, 0) if UNITS.get(word, 0) >= 10 else (20 if word == "twenty" else 0)
    if not century or at + 1 >= len(tokens):
        return 0, ""
    following = tokens[at + 1 :]
    if _bare(following[0])[0] == "hundred":
        rest = following[1:]
        skip = 1 if rest and rest[0] == "and" else 0
        low, tail = _low(rest[skip:])
        return (2 + skip + 1, f"{century}{low:02d}{tail}") if low >= 0 else (2, f"{century}00{_bare(following[0])[1]}")
    if following[0] in ("oh", "o'") and len(following) > 1:
        low, tail = _low(following[1:])
        return (3, f"{century}{low:02d}{tail}") if 0 <= low < 10 else (0, "")
    low, tail = _low(following)
    return (2, f"{century}{low:02d}{tail}") if low >= 10 else (0, "")


def _low(tokens: list[str]) -> tuple[int, str]:
    """A spoken number below a hundred (`thirty-eight`), or -1."""
    if not tokens:
        return -1, ""
    word, tail = _bare(tokens[0])
    if word in UNITS:
        return UNITS[word], tail
    tens, _, unit = word.partition("-")
    if tens in TENS and (not unit or 0 < UNITS.get(unit, 0) < 10):
        return TENS[tens] + UNITS.get(unit, 0), tail
    return -1, ""


def _bare(token: str) -> tuple[str, str]:
    """A token without the punctuation behind it."""
    word = token.rstrip(",.?;)]")
    return word, token[len(word) :]


def month_of(word: str) -> int:
    """The month a word or a Roman numeral names, or 0."""
    bare = word.strip(".,")
    return MONTH_OF.get(bare, 0) or ROMAN_MONTHS.get(bare, 0)


def spoken_number(word: str) -> int:
    """A number in digits or words below a hundred (`5`, `five`, `twenty-one`), or -1."""
    return int(word) if word.isdigit() else _low([word])[0]
