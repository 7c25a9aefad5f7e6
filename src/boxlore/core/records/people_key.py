"""The people key: who stands where, as people say it: “Back row, left to right: …”.

Rows are read from the markers of one scan. A row begins where the heads stand at least most of a head lower than
those before; two rows are one if neither stands in front of the other (a child at the end of a line of grown-ups is
no front row). Common practice of captioning groups, no source; the thresholds are ours.
"""

from collections.abc import Container, Iterable, Mapping, Sequence
from dataclasses import dataclass
from itertools import pairwise
from statistics import median

from boxlore.core.people.who_is_where.written_out import ORDER, row_words
from boxlore.core.records.item_record import PersonShown
from boxlore.core.wording.catalogue import to_say

DEEP = 0.8
"""A row begins this many heads below the last."""

MOST_UNKEYED = 8
"""A larger group also gets an outline key: the heads as numbered shapes beside the picture."""

LONE_FROM = 5
"""One person makes a row of their own only in a group of this many and more."""


@dataclass(frozen=True, slots=True)
class KeyRow:
    """One row of a group, left to right. `name` is empty where there is only one row."""

    name: str
    people: tuple[PersonShown | None, ...]
    """None where someone stands whom nobody knows."""
    gaps: frozenset[int] = frozenset()
    """Which of those None nothing is told of here: `1 Fred, 2 Nell, 4 Jack`, so that places count rightly."""
    places: tuple[int, ...] = ()
    """Places, where more are between them than are told: `third from the left is Anna`; below 0 from the right."""


def key_of(shown: Sequence[PersonShown], nameless: Iterable[tuple[str, int]] = ()) -> tuple[KeyRow, ...]:
    """The rows of those who have a marker, from the back; else of those whose row and place are told.

    `nameless` are the rows and places of people whom nobody knows. Empty if nobody's place is known.
    """
    placed = sorted(_placed(shown), key=_height)
    if not placed:
        return _told_rows(shown, nameless)
    rows = [sorted(row, key=_across) for row in _merged(_split(placed), len(placed))]
    return tuple(KeyRow(name, tuple(row)) for name, row in zip(_names(len(rows)), rows, strict=True))


def _told_rows(shown: Sequence[PersonShown], nameless: Iterable[tuple[str, int]]) -> tuple[KeyRow, ...]:
    rows: dict[str, dict[int, PersonShown | None]] = {}
    for row, position in nameless:
        rows.setdefault(row, {})[position] = None
    for person in shown:
        if person.position:
            rows.setdefault(person.row, {})[person.position] = person
    if not any(person for row in rows.values() for person in row.values()):
        return ()
    from_the_back = sorted(rows, key=lambda row: (ORDER.get(row, len(ORDER)), row), reverse=True)
    told: list[KeyRow] = []
    for row in from_the_back:
        name = row_words(row) if row else ""
        elsewhere = {place for other in rows if other != row for place in rows[other]}
        from_left = {place: person for place, person in rows[row].items() if place > 0}
        from_right = sorted(rows[row].keys() - from_left.keys())
        if from_left:
            told.append(_told_row(name, from_left, elsewhere))
        if from_right:
            told.append(KeyRow(name, tuple(rows[row][place] for place in from_right), places=tuple(from_right)))
    return tuple(told)


def _told_row(name: str, by_place: Mapping[int, PersonShown | None], elsewhere: Container[int]) -> KeyRow:
    """One row; numbers that go on with those of another row count from there."""
    places = sorted(by_place)
    begins = places[0] if places[0] - 1 in elsewhere else 1
    between = set(range(begins, places[-1])) - by_place.keys()
    if len(between) > len(places):
        return KeyRow(name, tuple(by_place[place] for place in places), places=tuple(places))
    people = tuple(by_place.get(place) for place in range(begins, places[-1] + 1))
    return KeyRow(name, people, gaps=frozenset(place - begins for place in between))


def unplaced(shown: Sequence[PersonShown]) -> tuple[PersonShown, ...]:
    """Those who are in the picture, nobody has said where; or marked on another scan of it."""
    placed = _placed(shown) or [person for person in shown if person.position]
    return tuple(person for person in shown if person not in placed)


def _placed(shown: Sequence[PersonShown]) -> list[PersonShown]:
    """Those with a marker, on the scan that has the most of them."""
    scans = [person.scan for person in shown if person.area]
    most = max(scans, key=scans.count, default="")
    return [person for person in shown if person.area and person.scan == most]


def centre(area: tuple[float, ...]) -> tuple[float, float]:
    """The middle of a marker, point or box, in 0..1 of the stored picture."""
    return (area[0] + area[2] / 2, area[1] + area[3] / 2) if len(area) == 4 else (area[0], area[1])


def _across(person: PersonShown) -> tuple[float, int]:
    return centre(person.area)[0], person.number


def _height(person: PersonShown) -> tuple[float, float]:
    return centre(person.area)[1], centre(person.area)[0]


def _head(placed: Sequence[PersonShown]) -> float:
    """The height of a head: that of the boxes, else guessed from how far apart the points stand."""
    heights = [person.area[3] for person in placed if len(person.area) == 4]
    if heights:
        return median(heights)
    across = sorted(centre(person.area)[0] for person in placed)
    gaps = [after - before for before, after in pairwise(across)]
    return max(median(gaps), 0.04) if gaps else 1.0


def _split(placed: Sequence[PersonShown]) -> list[list[PersonShown]]:
    deep = DEEP * _head(placed)
    rows = [[placed[0]]]
    for before, person in pairwise(placed):
        if _height(person)[0] - _height(before)[0] > deep:
            rows.append([])
        rows[-1].append(person)
    return rows


def _merged(rows: list[list[PersonShown]], count: int) -> list[list[PersonShown]]:
    """Neighbouring rows joined where neither stands in front of the other."""
    merged = [rows[0]]
    for row in rows[1:]:
        lone = min(len(row), len(merged[-1])) == 1 and count < LONE_FROM
        if lone or not _in_front(merged[-1], row):
            merged[-1] = merged[-1] + row
        else:
            merged.append(row)
    return merged


def _in_front(back: Sequence[PersonShown], front: Sequence[PersonShown]) -> bool:
    """Whether the two share some of the picture's width."""
    behind, before = [_across(person)[0] for person in back], [_across(person)[0] for person in front]
    return max(min(behind), min(before)) <= min(max(behind), max(before))


_FROM_THE_BACK = (
    to_say("second row from the back"), to_say("third row from the back"), to_say("fourth row from the back"),
    to_say("fifth row from the back"), to_say("sixth row from the back"), to_say("seventh row from the back"),
    to_say("eighth row from the back"),
)  # fmt: skip


def _names(count: int) -> list[str]:
    if count == 1:
        return [""]
    if count == 3:
        return [to_say("back row"), to_say("middle row"), to_say("front row")]
    more = [f"{at}th row from the back" for at in range(len(_FROM_THE_BACK) + 2, count)]
    return ["back row", *[*_FROM_THE_BACK, *more][: count - 2], "front row"]
