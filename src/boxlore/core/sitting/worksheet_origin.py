"""Of which collection a worksheet is: a short code of it, and what a file of answers says of where it belongs.

A code of a line (`worksheet_codes`) leaves the prefix out, so that `A42-W3-B` means something in every collection.
Therefore a worksheet and its file of answers carry a code of the collection too, and the file has the number of each
item above its lines, behind `#`:

    Collection: 7KQ2M9-B
    # TRA-0042 · Box 3

    origin = six letters or digits "-" check   ; 30 bits of the SHA-256 of the collection's id (FIPS 180-4)
    check  = letter or digit                   ; ISO/IEC 7064, MOD 37,36, over the six

I, L, O and U are not among the six, and where they are read 1, 1 and 0 are meant. The line counts with or without `#`
before it, anywhere in the file, for what follows it; of a table a column `collection` says the same of each row.
"""

import hashlib
import re
from dataclasses import dataclass

from boxlore.core.errors import WrongUse
from boxlore.core.sitting.worksheet_codes import begins_answer, check_letter

NAME = "Collection"

_LETTERS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"
_LOOK_ALIKE = str.maketrans("ILO", "110")
_ORIGIN = re.compile(r"([0-9A-Z]{6})[- ]?([0-9A-Z])")
_LINE = re.compile(r"\s*#?\s*collection\s*[:=]\s*([0-9A-Za-z]{6}[- ][0-9A-Za-z])\b.*", re.IGNORECASE)
_FIRST_LINE = re.compile(r"\s*collection\s*[:=]\s*([^(]*)(?:\(.*)?", re.IGNORECASE)
_HEADING = re.compile(r"\s*#\s*([A-Z][A-Z0-9]*-[0-9]{4,})(?![-0-9A-Za-z]).*")


def write_origin(collection: str) -> str:
    """The code of a collection, from its id."""
    number = int(hashlib.sha256(collection.encode()).hexdigest(), 16)
    body = "".join(_LETTERS[number >> 5 * at & 31] for at in range(6))
    return f"{body}-{check_letter(body)}"


def read_origin(words: str) -> str:
    """A code of a collection as `write_origin` writes it. Raises WrongUse for what is none, or has a wrong letter."""
    match = _ORIGIN.fullmatch(words.strip().upper())
    body = match[1].translate(_LOOK_ALIKE) if match else ""
    if match is None or check_letter(body).translate(_LOOK_ALIKE) != match[2].translate(_LOOK_ALIKE):
        raise WrongUse(
            f"“{words.strip()[:20]}” is no code of a collection.",
            f"It looks like 7KQ2M9-B, and stands on the worksheet's last page, behind “{NAME}”.",
        )
    return f"{body}-{check_letter(body)}"


@dataclass(frozen=True, slots=True)
class SaidOfAnswers:
    """What a file of answers says of where they belong: (line, code of a collection), (line, number of an item), each
    from that line on; and the text with other lines alone, their numbers kept."""

    origins: tuple[tuple[int, str], ...]
    headings: tuple[tuple[int, str], ...]
    text: str


def read_said(text: str) -> SaidOfAnswers:
    """Take the lines apart. A code of a collection with a wrong letter raises WrongUse above the first answer, and is a
    part of an answer below it.
    """
    origins: list[tuple[int, str]] = []
    headings: list[tuple[int, str]] = []
    lines = text.splitlines()
    has_begun = False
    for at, line in enumerate(lines):
        has_begun = has_begun or begins_answer(line)
        match = _LINE.fullmatch(line) or (None if has_begun else _FIRST_LINE.fullmatch(line))
        if match and not (has_begun and _is_wrong(match[1])):
            origins.append((at + 1, read_origin(match[1])))
            lines[at] = ""
        elif match := _HEADING.fullmatch(line):
            headings.append((at + 1, match[1]))
    return SaidOfAnswers(tuple(origins), tuple(headings), "\n".join(lines))


def _is_wrong(words: str) -> bool:
    try:
        read_origin(words)
    except WrongUse:
        return True
    return False


def before(line: int, said: tuple[tuple[int, str], ...]) -> str:
    """What was said last above a line; nothing if nothing was."""
    return next((words for at, words in reversed(said) if at < line), "")
