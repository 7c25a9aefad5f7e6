"""Who stands where: one person's place in a picture, and a whole list of them written out.

“front row, left to right: Anna, ?, Ruth; back row, left to right: Tom (her son)”. Positions count from the left of the
picture, from 1, or from its right, from -1; rows are written front row first (common practice, no source). `reader`
reads such lists back, and many other wordings.
"""

import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field

from boxlore.core.people.kin_terms import ORDINALS
from boxlore.core.wording.catalogue import ENGLISH, Say, to_say

ROWS = (
    "front", "kneeling", "lying", "seated", "second", "middle", "third", "standing", "fourth", "fifth",
    "fourth from the back", "third from the back", "second from the back", "back", "in the middle of the picture",
    "clockwise", "counterclockwise", "top to bottom", "bottom to top", "diagonally",
)  # fmt: skip
"""Rows from the front of the picture to the back, and two orders around it."""

MIDDLE = "in the middle of the picture"
"""Where somebody stands of whom no order is told."""

AROUND = ROWS[ROWS.index("clockwise") :]
"""Those that are orders, and say themselves in which order people are told."""

ORDER = {"": 0} | {name: at for at, name in enumerate(ROWS, 1)}

_NOTE = re.compile(r"^(.*?)\s*\(([^()]*)\)$", re.DOTALL)


@dataclass(frozen=True, slots=True)
class Placed:
    """One person: `words` as told, empty for someone whom nobody knows; `note` what was said beside the name.

    `position` is 0 where no place is told, and below 0 where it is told from the right: -2 for `second from the
    right`. `asks` is the question where something is in doubt; where `is_person` is
    false the words may be nobody's, and nobody is to be made of them. `family` is a family name that is told for
    several people together (`Tom and Leida Rourke`), a proposal. `is_nameless`: somebody of this picture alone, whom
    the words describe and do not name (`the minister`, `his wife`); in another picture they may mean somebody else.
    """

    words: str
    position: int
    row: str = ""
    note: str = ""
    unsure: bool = False
    likely: bool = field(default=False, compare=False)
    """Whether it is told as likely: `probably`, and no other doubt."""
    asks: str = field(default="", compare=False)
    is_person: bool = field(default=True, compare=False)
    family: str = field(default="", compare=False)
    is_nameless: bool = field(default=False, compare=False)
    own: str = field(default="", compare=False)
    """What she is to the one who tells, where those beside her say so: `mother` for `Ma` of `Ma and Pa`."""


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
    ordered = sorted(people, key=lambda person: left_to_right(person.position))
    consecutive = [person.position for person in ordered] == list(range(1, len(ordered) + 1))
    if row in AROUND:
        return f"{row}: {', '.join(_back(person) for person in ordered)}"
    if row and consecutive and not any("," in person.words or _joined(person.words) for person in ordered):
        names = ", ".join(_back(person) for person in ordered)
        return f"{row_words(row)}, left to right: {names}"
    names = "; ".join(f"{_place_back(person.position)} {_back(person)}" for person in ordered)
    return f"{row_words(row)}, left to right: {names}" if row else names


def left_to_right(position: int) -> tuple[bool, int]:
    """A key that sorts places from left to right: those told from the left, then those told from the right."""
    return position < 0, position


def _place_back(position: int) -> str:
    return str(position) if position >= 0 else f"{said_place(position, ENGLISH)}:"


def said_place(position: int, say: Say) -> str:
    """`third from the left`, `second from the right`. A language that counts in figures has the `number`."""
    place = abs(position)
    counted = ORDINALS[place] if place < len(ORDINALS) else f"number {place}"
    pattern = to_say("{counted} from the right") if position < 0 else to_say("{counted} from the left")
    return say(pattern, counted=counted, number=place)


_ROW_WORDS = {
    "front": to_say("front row"), "kneeling": to_say("kneeling"), "lying": to_say("lying"), "seated": to_say("seated"),
    "second": to_say("second row"), "middle": to_say("middle row"), "third": to_say("third row"),
    "standing": to_say("standing"), "fourth": to_say("fourth row"), "fifth": to_say("fifth row"),
    "fourth from the back": to_say("fourth row from the back"),
    "third from the back": to_say("third row from the back"),
    "second from the back": to_say("second row from the back"), "back": to_say("back row"),
    MIDDLE: to_say("in the middle of the picture"), "clockwise": to_say("clockwise"),
    "counterclockwise": to_say("counterclockwise"), "top to bottom": to_say("top to bottom"),
    "bottom to top": to_say("bottom to top"), "diagonally": to_say("diagonally"),
}  # fmt: skip


def row_words(row: str) -> str:
    """`back` → `back row`, `second from the back` → `second row from the back`; `seated` as it is."""
    return _ROW_WORDS.get(row, row)


def _joined(words: str) -> bool:
    return " and " in f" {words} " or " & " in words


def _back(person: Placed) -> str:
    name = "?" if not person.words else f"{person.words}?" if person.unsure else person.words
    return f"{name} ({person.note})" if person.note else name
