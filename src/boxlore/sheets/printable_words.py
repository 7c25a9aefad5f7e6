"""Words made safe to print: without control characters, and with their own direction of writing.

Characters that change the direction of writing are removed, so that words can do no harm to what stands beside them.
Words in a right-to-left script are set in an isolate of their own (Unicode 15, UAX #9: U+2068, U+2069). A word of 25
letters and more may break behind its hyphens, as the typesetter breaks it by itself, unless a figure follows (Unicode
15, UAX #14, LB25); and where none is in 25, after every 12.
"""

import re
import unicodedata

from boxlore.core.fields.letters import FIRST_STRONG, POP, is_noncharacter
from boxlore.core.fields.letters import isolated as in_an_isolate

_BIDI = set("\u200e\u200f\u202a\u202b\u202c\u202d\u202e\u2066\u2067\ufeff\u061c")
_ISOLATE = re.compile(f"{FIRST_STRONG}([^{FIRST_STRONG}{POP}]*){POP}")
"""An isolate that ends: it can do no harm to its neighbours. Captions put each name that needs it into one."""
_SPACES = dict.fromkeys(map(ord, "\n\t\r"), " ")
_LONG = re.compile(r"\S{25,}")
_WITHOUT_HYPHEN = re.compile(r"[^\s-]{25,}")
_BEFORE_FIGURE = re.compile(r"(?<=-)(?=\d)")


def printable(words: str) -> str:
    """The words made clean (see `clean`), with a place to break in very long ones."""
    return _LONG.sub(_breakable, clean(words))


def clean(words: str) -> str:
    """The words on one line, without control characters and characters that change the direction of writing.

    Isolates that end stay, one that is left open goes.
    """
    others = {ord(letter): "" for letter in set(words).difference("\n\t\r") if not _prints(letter)}
    plain = words.translate(_SPACES | others)
    return re.sub(" +", " ", _without_open_isolates(plain)).strip()


def _without_open_isolates(words: str) -> str:
    """Between and around the isolates that end, no mark of one stays."""
    kept = _ISOLATE.split(words)  # outside, inside, outside, ...
    outside = [re.sub(f"[{FIRST_STRONG}{POP}]", "", part) for part in kept[::2]]
    inside = [f"{FIRST_STRONG}{part}{POP}" for part in kept[1::2]]
    return "".join(part for pair in zip(outside, [*inside, ""], strict=True) for part in pair)


def _prints(letter: str) -> bool:
    """Whether a letter is set. One that is newer than our table of Unicode is, as □ at least."""
    return unicodedata.category(letter) not in ("Cc", "Cs") and letter not in _BIDI and not is_noncharacter(letter)


def _breakable(match: re.Match[str]) -> str:
    return _BEFORE_FIGURE.sub("\u200b", _WITHOUT_HYPHEN.sub(_in_pieces, match[0]))


def _in_pieces(part: re.Match[str]) -> str:
    return "\u200b".join(part[0][at : at + 12] for at in range(0, len(part[0]), 12))


def isolated(words: str) -> str:
    """The words, made printable; in an isolate if they hold letters that are written from right to left."""
    return in_an_isolate(printable(words))


def paragraphs(words: str) -> list[str]:
    """The paragraphs of a story, each isolated; every line break starts a new one."""
    return [isolated(part) for part in re.split(r"\n\s*\n|\n", words) if printable(part)]


def plain_paragraphs(words: str) -> list[str]:
    """The paragraphs of a story for a web page, where the browser takes care of the direction of writing."""
    return [plain for part in re.split(r"\n\s*\n|\n", words) if (plain := clean(part))]


def language_of(tag: str) -> str:
    """The language of a BCP 47 tag as two or three small letters (ISO 639); empty for anything else."""
    primary = tag.split("-")[0].lower()
    return primary if re.fullmatch(r"[a-z]{2,3}", primary) else ""
