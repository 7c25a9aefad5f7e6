"""People told of one picture, brought in order: by row, by side, and from the left."""

from collections.abc import Container, Iterator, Sequence
from dataclasses import dataclass, replace

from boxlore.core.people.positions import Placed

_SIDE_RANK = {"left": -1, "": 0, "centre": 0, "right": 1}


@dataclass(slots=True)
class Item:
    """One person while a text is read.

    `number` is one told before or behind the name; `position` one told from the left (0 for none; -1: told from the
    right, so that it is not known from the left); `side_words` are those that told the side. People of one `group` were
    told under one direction.
    """

    person: Placed
    row: str
    number: int = 0
    position: int = 0
    side: str = ""
    side_words: str = ""
    is_name: bool = False
    group: int = 0
    has_place: bool = False


def in_order(items: Sequence[Item], turned_groups: Container[int]) -> Iterator[Placed]:
    """Everyone with a position: numbers and positions as told, the others by side and in the order told."""
    rows: dict[str, list[Item]] = {}
    for item in items:
        rows.setdefault(item.row, []).append(item)
    counted = any(item.position for item in items)
    position: dict[int, int] = {}
    for row in rows.values():
        _far_from_left(row)
        ordered = _ordered(row, turned_groups)
        at = 0
        for item in ordered:
            if item.position or (counted and not item.number):
                position[id(item)] = max(item.position, 0)
                continue
            at = item.number or at + 1
            position[id(item)] = at
        row[:] = ordered
    for row in rows.values():
        for item in row:
            yield replace(item.person, position=position[id(item)], row=item.row)


def _far_from_left(row: Sequence[Item]) -> None:
    """Where all of a row are told to be on the right, nobody knows how far from the left they are; the words say it."""
    if all(item.side == "right" for item in row):
        for item in row:
            item.position = -1
            item.person = replace(item.person, note=", ".join(filter(None, (item.person.note, item.side_words))))


def _ordered(row: Sequence[Item], turned_groups: Container[int]) -> list[Item]:
    turned: list[Item] = []
    for group in dict.fromkeys(item.group for item in row):
        items = [item for item in row if item.group == group]
        turned += reversed(items) if group in turned_groups and not any(item.number for item in items) else items
    if any(item.side for item in turned):
        return sorted(turned, key=lambda item: _SIDE_RANK[item.side])
    return turned
