"""The short code of each line of a worksheet, by which an answer finds its way back: `A42-W3-B`.

    code   = item "-" asked [marker] "-" check
    item   = series letter and count of the number (TRA-0042 is A42); all its letters where the prefix is another
    asked  = W who, D when, P where, O occasion, S story
    marker = the number on the picture, for W
    check  = ISO/IEC 7064, MOD 37,36 over the letters and digits before it

A code is read without regard to case, blanks and hyphens, so that it can be typed as it comes.
"""

import re
from collections.abc import Iterator
from dataclasses import dataclass

from boxlore.core.errors import WrongUse

ASKED = {"W": "person", "D": "date", "P": "place", "O": "occasion", "S": "story"}
"""What a line asks, and the field that its answer fills."""

_LETTERS = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ"
_CODE = re.compile(r"([A-Z]{1,9})([0-9]+)([WDPOS])([0-9]*)\Z")


@dataclass(frozen=True, slots=True)
class CodedLine:
    """One line of a worksheet: the item's number, the field asked for, the marker's number or 0."""

    number: str
    field: str
    marker: int = 0


def check_letter(text: str) -> str:
    """The check character of letters and digits (ISO/IEC 7064, MOD 37,36: hybrid system)."""
    check = 36
    for letter in text:
        check = ((((check + _LETTERS.index(letter)) - 1) % 36 + 1) * 2) % 37
    return _LETTERS[(37 - check) % 36]


def write_code(line: CodedLine, prefix: str) -> str:
    """The code of a line; `prefix` is the collection's own, which is left out."""
    letters, count = line.number.split("-")
    item = f"{letters.removeprefix(prefix) or letters}{int(count)}"
    letter = next(key for key, field in ASKED.items() if field == line.field)
    asked = f"{letter}{line.marker or ''}"
    return f"{item}-{asked}-{check_letter(item + asked)}"


def read_code(code: str, prefix: str) -> CodedLine:
    """The line that a code stands for. Raises WrongUse for a slip of the pen."""
    plain = re.sub(r"[^0-9A-Z]", "", code.upper())
    body, check = plain[:-1], plain[-1:]
    found = _CODE.match(body)
    if found is None or (found[4] and found[3] != "W"):
        raise WrongUse(f"“{code.strip()[:20]}” is no code of a worksheet.", "It looks like A42-W3-B.")
    if check_letter(body) != check:
        raise WrongUse(f"“{code.strip()[:20]}”: a letter or digit is wrong.", "Look at the worksheet again.")
    letters = found[1] if len(found[1]) > 1 else prefix + found[1]
    return CodedLine(f"{letters}-{int(found[2]):04d}", ASKED[found[3]], int(found[4] or 0))


@dataclass(frozen=True, slots=True)
class WrittenAnswer:
    """A code with what was written on its line; `at` is the line of the text where it began, from 1."""

    at: int
    code: str
    words: str


_STARTS = re.compile(r"\s*([A-Za-z]{1,9}[0-9]+[ -]*[WDPOSwdpos][0-9]*[ -]*[0-9A-Za-z])\s*[:=]\s*(.*)\Z")


def read_answers(text: str) -> Iterator[WrittenAnswer]:
    """Answers from plain text: `CODE: words`, one a line; lines without a code go on with the answer before.

    Lines that begin with # say nothing; an answer without words was left blank and is passed over.
    """
    at, code, words = 0, "", [""]
    for number, line in enumerate(text.splitlines(), 1):
        if line.lstrip().startswith("#"):
            continue
        if found := _STARTS.match(line):
            if said := "\n".join(words).strip():
                yield WrittenAnswer(at, code, said)
            at, code, words = number, found[1], [found[2]]
        elif line.strip() and not code:
            raise WrongUse(f"Line {number} stands before any code.", "Write it as CODE: words, such as A42-W3-B: Anna")
        else:
            words.append(line)
    if said := "\n".join(words).strip():
        yield WrittenAnswer(at, code, said)
