"""Who stands where: “1 Ruth; 2 ?; 3 Anna (Ruth's cousin)”, “back row, left to right: …”, read and written back.

Grammar: groups are parted by a semicolon or a full stop before a row's name; a group may open with a row
(“back row”, “seated”), with “left to right” or “right to left”, and a colon. In a group people are parted by
commas, semicolons or “and”; each may carry a number, and in brackets what else was said of them. “?”,
“unknown” and “not known” are people whom nobody knows. Positions count from the left of the picture, from 1; rows
are written front row first (common practice, no source).
"""

import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

ROWS = (
    ("front", "front row|first row|bottom row|in front|front"),
    ("kneeling", "kneeling"),
    ("seated", "seated|sitting"),
    ("second", "second row"),
    ("middle", "middle row|centre row|center row|middle"),
    ("third", "third row"),
    ("standing", "standing"),
    ("fourth", "fourth row"),
    ("back", "back row|rear row|last row|top row|at the back|behind|back"),
)
"""Rows from the front of the picture to the back: the word kept, and what people say for it."""

ORDER = {"": 0} | {name: at for at, (name, _) in enumerate(ROWS, 1)}

_ROW = "|".join(f"(?P<{name}>{words})" for name, words in ROWS)
_LTR = r"left to right|from (?:the )?left|l\.? ?to ?r\.?|l ?[-–] ?r|l\. ?t\. ?r\."
_RTL = r"right to left|from (?:the )?right|r\.? ?to ?l\.?|r ?[-–] ?l"
_HEAD = re.compile(
    rf"\s*(?:(?:the\s+)?(?:{_ROW})\b)?\s*,?\s*\(?(?:(?P<ltr>{_LTR})|(?P<rtl>{_RTL}))?\)?\s*(?P<colon>[:–—-])?\s*",
    re.IGNORECASE,
)
_NUMBERED = re.compile(r"^\(?(\d{1,3})(?:[.):]|\s)\s*(.*)$", re.DOTALL)
_NOTE = re.compile(r"^(.*?)\s*\(([^()]*)\)$", re.DOTALL)
_UNKNOWN = re.compile(r"^(?:\?+|unknown|not known|unidentified|nobody knows|n\.?k\.?)$", re.IGNORECASE)
_NEXT_ROW = re.compile(
    rf"[.;]\s+(?=(?:the\s+)?(?:{'|'.join(words for _, words in ROWS)})\b\s*,?\s*\(?(?:{_LTR}|{_RTL})?\)?\s*:)",
    re.IGNORECASE,
)


@dataclass(frozen=True, slots=True)
class Placed:
    """One person: `words` as told, empty for someone whom nobody knows; `note` what was said in brackets."""

    words: str
    position: int
    row: str = ""
    note: str = ""
    unsure: bool = False


def read_placed(text: str) -> list[Placed]:
    """Everyone a text names with their places, in the order told. Any text gives what can be made of it."""
    placed: list[Placed] = []
    for group in _NEXT_ROW.split(text.strip().rstrip(".")):
        placed += _group(group, {(person.row, person.position) for person in placed})
    return placed


def _group(text: str, taken: set[tuple[str, int]]) -> list[Placed]:
    head = _HEAD.match(text)
    row, backwards = "", False
    if head is not None and (head["colon"] or head["ltr"] or head["rtl"]):
        row = next((name for name, _ in ROWS if head[name]), "")
        backwards = bool(head["rtl"])
        text = text[head.end() :]
    numbered = [_one(part) for part in _parts(text)]
    if backwards:
        numbered.reverse()
    placed: list[Placed] = []
    position = max((at for person, at in taken if person == row), default=0)
    for number, person in numbered:
        position = number or position + 1
        placed.append(replace(person, position=position, row=row))
    return placed


def _parts(text: str) -> list[str]:
    """The text of each person: parted at semicolons if there are any, else at commas and the last “and”."""
    semicolons = _outside_brackets(text, ";")
    if len(semicolons) > 1:
        parts = semicolons
    else:
        parts = _outside_brackets(text, ",")
        last = re.split(r"\s+(?:and|&)\s+(?![^()]*\))", parts[-1])
        parts = [*parts[:-1], *last]
        parts = [re.sub(r"^and\s+", "", part.strip()) for part in parts]
    return [part.strip() for part in parts if part.strip()]


def _outside_brackets(text: str, mark: str) -> list[str]:
    parts, depth = [""], 0
    for letter in text:
        depth = max(depth + (letter == "(") - (letter == ")"), 0)
        if letter == mark and not depth:
            parts.append("")
        else:
            parts[-1] += letter
    return parts


def _one(text: str) -> tuple[int, Placed]:
    number = 0
    if match := _NUMBERED.match(text):
        number, text = int(match[1]), match[2].strip()
    note = ""
    if (match := _NOTE.match(text)) and match[1]:
        text, note = match[1], match[2].strip()
    if _UNKNOWN.match(text) or not text:
        return number, Placed("", 0, note=note)
    unsure = text.endswith("?")
    return number, Placed(text.rstrip(" ?") if unsure else text, 0, note=note, unsure=unsure)


def note_of(words: str) -> str:
    """What stands in brackets behind a name."""
    match = _NOTE.match(words.strip())
    return match[2].strip() if match and match[1] else ""


def write_placed(people: Iterable[Placed]) -> str:
    """The same back: numbers where there are no rows, else rows, front row first, left to right."""
    everyone = list(people)
    rows = sorted({person.row for person in everyone}, key=lambda row: (ORDER.get(row, len(ORDER)), row))
    groups = [_row_back(row, [person for person in everyone if person.row == row]) for row in rows]
    return "; ".join(groups)


def _row_back(row: str, people: Sequence[Placed]) -> str:
    ordered = sorted(people, key=lambda person: person.position)
    consecutive = [person.position for person in ordered] == list(range(1, len(ordered) + 1))
    if row and consecutive and not any("," in person.words or _joined(person.words) for person in ordered):
        names = ", ".join(_back(person) for person in ordered)
        return f"{row_words(row)}, left to right: {names}"
    names = "; ".join(f"{person.position} {_back(person)}" for person in ordered)
    return f"{row_words(row)}, left to right: {names}" if row else names


def row_words(row: str) -> str:
    """`back` → `back row`; `seated` as it is."""
    return row if row in ("seated", "standing", "kneeling", "") else f"{row} row"


def _joined(words: str) -> bool:
    return " and " in f" {words} " or " & " in words


def _back(person: Placed) -> str:
    name = "?" if not person.words else f"{person.words}?" if person.unsure else person.words
    return f"{name} ({person.note})" if person.note else name
