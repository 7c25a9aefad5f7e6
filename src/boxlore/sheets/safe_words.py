"""Words made safe to set in type: no control or direction-changing letters, every value in its own isolate.

Unicode 15, UAX #9 (isolates U+2068, U+2069). Words of 25 letters and more may break every 12.
"""

import re
import unicodedata

FIRST_STRONG, POP = "⁨", "⁩"
_BIDI = set("\u200e\u200f\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069\ufeff\u061c")
_LONG = re.compile(r"\S{25,}")


def printable(words: str) -> str:
    """The words made clean for a printed line: a very long one may break."""
    return _LONG.sub(_breakable, clean(words))


def clean(words: str) -> str:
    """The words without control and direction-changing letters, lines folded to single blanks."""
    kept = (" " if one in "\n\t\r" else one for one in words)
    plain = "".join(one for one in kept if unicodedata.category(one) not in ("Cc", "Cs", "Cn") and one not in _BIDI)
    return re.sub(" +", " ", plain).strip()


def _breakable(match: re.Match[str]) -> str:
    word = match[0]
    return "\u200b".join(word[at : at + 12] for at in range(0, len(word), 12))


def isolated(words: str) -> str:
    """One value as a line of its own direction; empty words stay empty."""
    plain = printable(words)
    if not plain or all(unicodedata.bidirectional(one) not in ("R", "AL", "AN") for one in plain):
        return plain
    return f"{FIRST_STRONG}{plain}{POP}"


def paragraphs(words: str) -> list[str]:
    """A story's paragraphs, each made safe."""
    return [isolated(part) for part in re.split(r"\n\s*\n|\n", words) if printable(part)]


def plain_paragraphs(words: str) -> list[str]:
    """A story's paragraphs for a page, where the browser minds the direction."""
    return [plain for part in re.split(r"\n\s*\n|\n", words) if (plain := clean(part))]


def language_of(tag: str) -> str:
    """The language of a BCP 47 tag as two or three small letters (ISO 639), or empty for what is none."""
    primary = tag.split("-")[0].lower()
    return primary if re.fullmatch(r"[a-z]{2,3}", primary) else ""
