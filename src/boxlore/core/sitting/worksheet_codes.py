"""The short code of each line of a worksheet, which tells where an answer belongs: `A42-W3-B`.

    code   = item "-" asked [marker] "-" check
    item   = letters digits             ; of the item's number, without the collection's own prefix and leading zeros;
                                        ; letters are capital letters and digits that end with a letter
    asked  = "W" who / "D" when / "P" where / "O" occasion / "S" story / "Q" a question of the collection's own
    marker = digits                     ; after W the number on the picture, after Q that of the question (own_number)
    check  = letter or digit            ; ISO/IEC 7064, MOD 37,36, over the letters and digits before it

Example: in a collection with the prefix TR, the third marker of TRA-0042 has the code A42-W3 and a check letter.
A code is read without regard to case, blanks and hyphens, for people type it in many ways.
"""

import hashlib
import re
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass, replace

from boxlore.core.errors import WrongUse
from boxlore.core.fields.originals import NUMBER_WORDS, ItemNumber
from boxlore.core.fields.table import OWN

ASKED = {"W": "person", "D": "date", "P": "place", "O": "occasion", "S": "story"}
"""The letter of what a line asks -> the field that its answer is about."""

OWN_LETTER = "Q"

_LETTERS = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ"
_CODE = re.compile(r"([A-Z](?:[A-Z0-9]*[A-Z])?)([0-9]+)([WDPOSQ])([0-9]*)\Z")


@dataclass(frozen=True, slots=True)
class CodedLine:
    """One line of a worksheet: the item's number, the field that it asks for, and the marker's number (0 for none)."""

    number: str
    field: str
    marker: int = 0


def own_number(field: str) -> int:
    """The number of one of the collection's own questions, from its field alone: the questions may change places."""
    return int(hashlib.sha256(field.encode()).hexdigest(), 16) % 100_000


def check_letter(text: str) -> str:
    """The check character of letters and digits (ISO/IEC 7064, MOD 37,36: hybrid system)."""
    check = 36
    for letter in text:
        check = ((((check + _LETTERS.index(letter)) - 1) % 36 + 1) * 2) % 37
    return _LETTERS[(37 - check) % 36]


def write_code(line: CodedLine, prefix: str) -> str:
    """The code of a line; `prefix` is that of the collection's own numbers, and is left out of the code."""
    number = NUMBER_WORDS.read(line.number)
    own = number.letters[:-1] == prefix
    item = f"{number.letters[-1] if own else number.letters}{number.count}"
    if line.field.startswith(OWN):
        question = f"{OWN_LETTER}{own_number(line.field)}"
    else:
        question = f"{next(key for key, field in ASKED.items() if field == line.field)}{line.marker or ''}"
    return f"{item}-{question}-{check_letter(item + question)}"


def read_code(code: str, prefix: str, own: Iterable[str] = ()) -> CodedLine:
    """The line that a code stands for; `own` are the fields of the collection's own questions.

    Raises WrongUse for a code of another shape, with a wrong check letter, or of a question that is not asked.
    """
    plain = re.sub(r"[^0-9A-Z]", "", code.upper())
    body, check = plain[:-1], plain[-1:]
    match = _CODE.match(body)
    letter, digits = (match[3], match[4]) if match else ("", "")
    if match is None or (digits and letter not in ("W", OWN_LETTER)) or (letter == OWN_LETTER and not digits):
        raise WrongUse(f"“{code.strip()[:20]}” is no code of a worksheet.", "It looks like A42-W3-B.")
    if check_letter(body) != check:
        raise WrongUse(f"“{code.strip()[:20]}”: a letter or digit is wrong.", "Look at the worksheet again.")
    letters = match[1] if len(match[1]) > 1 else prefix + match[1]
    number = NUMBER_WORDS.write(ItemNumber(letters, int(match[2])))
    if letter != OWN_LETTER:
        return CodedLine(number, ASKED[letter], int(digits or 0))
    meant = [field for field in dict.fromkeys(own) if own_number(field) == int(digits)]
    if len(meant) != 1:
        raise WrongUse(
            f"“{code.strip()[:20]}” answers a question that this collection does not ask.",
            "Put the question back into prompts.toml, or tell the answer by its field: boxlore tell ITEM FIELD TEXT.",
        )
    return CodedLine(number, meant[0])


@dataclass(frozen=True, slots=True)
class WrittenAnswer:
    """A code, and the words written on its line; `at` is the line of the text at which it began, from 1.

    `stray` is (line, words) of a line below it that may be its answer's end or that of another question.
    """

    at: int
    code: str
    words: str
    stray: tuple[int, str] | None = None


_STARTS = re.compile(
    r"\s*([A-Za-z](?:[0-9A-Za-z]*[A-Za-z])?[0-9]+[ -]*[WDPOSQwdposq][0-9]*[ -]*[0-9A-Za-z])\s*[:=]\s*(.*)\Z"
)
_LIKE_A_CODE = re.compile(r"\s*[A-Za-z][0-9A-Za-z]*[0-9]+ ?-+ ?[0-9A-Za-z]+ ?-+ ?[0-9A-Za-z](?![0-9A-Za-z])")
"""How a line begins whose code is mistyped, or has no colon behind it."""


def begins_answer(line: str) -> bool:
    """Whether a line begins with a code and a colon."""
    return _STARTS.match(line) is not None


def read_answers(text: str, goes_on: Callable[[str], bool] = lambda code: True) -> Iterator[WrittenAnswer]:
    """The answers in a plain text.

        text    = {comment / answer}
        comment = "#" anything
        answer  = code (":" / "=") words {line without a code}

    Lines without a code go on with the words where the sheet has several lines for them, which `goes_on` tells of a
    code; where they begin with a blank, as folded lines do (RFC 5322, 2.2.3); and the first, where nothing stands
    beside the code. Any other, and one that begins like a code, may belong elsewhere: it comes back as `stray`.

    An answer without words was left blank, and is passed over. Raises WrongUse for words before the first code.
    """
    answer: WrittenAnswer | None = None
    for number, line in enumerate(text.splitlines(), 1):
        if line.lstrip().startswith("#"):
            continue
        if match := _STARTS.match(line):
            yield from _whole(answer)
            answer = WrittenAnswer(number, match[1], match[2])
        elif answer is not None:
            answer = _with_line(answer, number, line, several=goes_on(answer.code))
        elif line.strip():
            raise WrongUse(
                f"Line {number} stands before any code.", "Write it as CODE: words, such as A42-W3-B: the quay"
            )
    yield from _whole(answer)


def _whole(answer: WrittenAnswer | None) -> Iterator[WrittenAnswer]:
    if answer is not None and (answer.words.strip() or answer.stray):
        yield replace(answer, words=answer.words.strip())


def _with_line(answer: WrittenAnswer, number: int, line: str, *, several: bool) -> WrittenAnswer:
    """The answer with the line that stands below it."""
    belongs = several or line[:1].isspace() or not answer.words.strip()
    if answer.stray is None and line.strip() and (not belongs or _LIKE_A_CODE.match(line)):
        return replace(answer, stray=(number, line.strip()))
    return replace(answer, words=f"{answer.words}\n{line}")
