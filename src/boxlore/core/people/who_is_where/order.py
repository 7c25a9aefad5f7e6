"""People told of one picture, brought in order: by row, by side, and from the left, and which number each comes to."""

from collections.abc import Container, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from itertools import pairwise

from boxlore.core.people.who_is_where.small_words_table import ABOVE_OR_BELOW, BETWEEN_THEM
from boxlore.core.people.who_is_where.written_out import MIDDLE, Placed
from boxlore.core.statements import fold

_NOT_FROM_LEFT = -1
"""The position of an item of which no place from the left is told."""

_SIDE_RANK = {"left": -1, "": 0, "centre": 0, "right": 1}


@dataclass(slots=True)
class Item:
    """One person while a text is read.

    `number` is one told before or behind the name; `position` one told from the left (0 for none; -1: not known from
    the left), `from_right` one told from the right in `right_words`; `side_words` are those that told the side. People
    of one `group` were told under one direction.
    """

    person: Placed
    row: str
    number: int = 0
    position: int = 0
    side: str = ""
    side_words: str = ""
    is_name: bool = False
    group: int = 0
    from_right: int = 0
    right_words: str = ""
    width: int = 1
    """How many people stand there: 2 for `two unknown men`, 0 for words that only open a list."""
    joined: str = ""
    """`and` or `with` where that stands before the words."""
    of_group: str = ""
    """The family name of `the Tamm brothers`, told before the name."""
    is_beside: bool = False
    """Whether the words tell only that somebody stands beside the one before."""
    is_held: bool = False
    """Whether the one before holds her."""
    is_described: bool = False
    """Whether the words only describe somebody."""
    has_place: bool = False
    in_case: bool = False
    """Whether a word stands before the name that changes its form: `с Гришей`."""
    is_several: bool = False
    """Whether the words tell of several people: `his brothers`."""
    part: int = 0
    """The number of the first item of its part of the text."""
    beside_whom: str = ""
    """The words before whoever says where another stands: `in front of` of `in front of Peg, Dougal`."""
    definite: str = ""
    """`man`, `woman` or `person` where the words surely say of one person what they are: `my mother`, `the bride`."""
    is_identified: bool = False
    """Whether the note is what described somebody before the name was told: `the girl is Jean`."""
    is_unmarked: bool = False
    """Whether no mark and no word that joins stands between the one before and her: `the man on the left Tom`."""
    is_taken_back: bool = False
    """Whether the name was told by mistake: it asks, and nobody is made of it."""

    def take_back(self) -> None:
        """`Peg. No, Dot`: of Peg."""
        asks = f"Is “{self.person.words}” in the picture?"
        self.person, self.is_name = replace(self.person, asks=asks, is_person=False), False
        self.is_taken_back = True


def in_order(
    items: Sequence[Item], turned_groups: Container[int], totals: Mapping[str, int], *, directed: bool
) -> Iterator[Placed]:
    """Everyone with a position: numbers and positions as told, the others by side and in the order told.

    `totals`: how many people stand in a row, where that is told; `directed`: whether a direction is.
    """
    unplaced = set() if directed else _without_an_order(items)
    rows: dict[str, list[Item]] = {}
    sides = {item.side for item in items if not item.row}
    if {"left", "right"} <= sides and {item.row for item in items} == {"", "middle"}:
        for item in items:  # `Left: Anna. Right: Ruth. Middle: Tom`
            item.side, item.row = item.side or ("centre" if item.row else ""), ""
    for item in items:
        rows.setdefault(item.row, []).append(item)
    for name, row in rows.items():
        _count_from_right(row, totals.get(name, 0))
    counted = any(item.position for item in items)
    position: dict[int, int] = {}
    for row in rows.values():
        _count_ends(row, counted=counted)
        _behind_the_right(row)
        _between_two(row)
        _beside(row)
        ordered = _ordered(row, turned_groups)
        at = 0
        for item in ordered:
            if id(item) in unplaced:
                position[id(item)] = 0
                _keep_side(item, 0)
                continue
            alone = item.row and item.part and len(row) == 1 and not item.side
            if item.position or (counted and not item.number and not alone) or not item.width:
                position[id(item)] = max(item.position, 0) or -item.from_right
                _keep_side(item, position[id(item)])
                at = max(item.position, at)
                continue
            at = item.number or at + 1
            position[id(item)] = at
            at += item.width - 1
        row[:] = ordered
    for row in rows.values():
        for item in row:
            yield replace(item.person, position=position[id(item)], row=item.row)


def _without_an_order(items: Sequence[Item]) -> set[int]:
    """The ids of those in no row, of whom no order is told: whoever is in the middle has that place, the others have
    none, where others have one (`In the middle Anna, with Ruth and Tom`; `Bill and, kneeling, his son Colin`)."""
    row = [item for item in items if not item.row]
    if any(item.number or item.position or item.from_right or item.side in ("left", "right") for item in row):
        return set()
    has_places = len(row) < len(items) or any(item.side for item in row)
    for item in row:
        if item.side and fold(item.side_words) not in BETWEEN_THEM:
            item.row, item.side, item.side_words = MIDDLE, "", ""
    return {id(item) for item in row if has_places and not item.row}


def _keep_side(item: Item, position: int) -> None:
    """Where a side comes to no number, the words say it: `Rose (second from left), Bert (in the middle)`."""
    if item.side_words and not position and item.side_words not in item.person.note:
        item.person = replace(item.person, note=", ".join(filter(None, (item.person.note, item.side_words))))


def _count_from_right(row: list[Item], total: int) -> None:
    """Places told from the right as places from the left, where the number of people is known.

    It is known if it is told, or if everyone of the row has a place and these fill it from end to end.
    """
    if not any(item.from_right for item in row):
        return
    size = total or len(row)
    places = [_place_of(item, size) for item in row]
    begins_left = any(item.position or item.number or item.side == "left" for item in row)
    is_known = bool(total) or (begins_left and sorted(places) == list(range(1, size + 1)))
    for item, place in zip(row, places, strict=True):
        if is_known and 0 < place <= size:
            item.position = place
        elif item.from_right:
            item.position = _NOT_FROM_LEFT
    if is_known:
        row.sort(key=lambda item: item.position)


def _place_of(item: Item, size: int) -> int:
    """The place from the left in a row of that size; 0 where none is told."""
    if item.from_right:
        return size + 1 - item.from_right
    at_end = {"left": 1, "right": size}.get(item.side, 0)
    return item.position or item.number or at_end


def _count_ends(row: Sequence[Item], *, counted: bool) -> None:
    """Sides as places where they are no place among others in order: all of a row are told to be on the right, or
    others of the picture are `counted` (`Rose (second from left), Bert (far right)`)."""
    on_the_left, on_the_right = ([item for item in row if item.side == side] for side in ("left", "right"))
    if counted or all(item.side == "right" or item.is_beside for item in row):
        for at, item in enumerate(reversed(on_the_right), 1):
            if not item.position:
                item.position, item.from_right = _NOT_FROM_LEFT, at
    if counted:
        for at, item in enumerate(on_the_left, 1):
            item.position = item.position or at


def _behind_the_right(row: Sequence[Item]) -> None:
    """Whoever is told in a part of her own behind the last one who has a side, and without a place, stands nobody knows
    where: `left, Edie; right, May; the child is Roy`."""
    for item in row:
        if item.joined == "with" and not (item.side or item.number or item.position) and _has_ends(row):
            item.position = _NOT_FROM_LEFT  # `Mother at right with Ken, Father at left with Lou`
    last = max((at for at, item in enumerate(row) if item.side in ("left", "right")), default=len(row))
    for item in row[last + 1 :]:
        if not item.side and not item.number and item.part != row[last].part:
            item.position = item.position or _NOT_FROM_LEFT


def _has_ends(row: Sequence[Item]) -> bool:
    return {"left", "right"} <= {item.side for item in row}


def _between_two(row: Sequence[Item]) -> None:
    """Whoever stands between two who have no sides has no place that a number tells; the words say it."""
    if {item.side for item in row} != {"", "centre"}:
        return
    for item in row:
        if item.side and fold(item.side_words) in BETWEEN_THEM:
            item.position = _NOT_FROM_LEFT


def _beside(row: Sequence[Item]) -> None:
    """Who is told to stand beside somebody, on a side that is not told, has a place only before one who has a side; who
    is held has none."""
    for item in row:
        if item.is_held:
            item.position = _NOT_FROM_LEFT
    for before, item in pairwise(row):
        if item.is_beside and not (item.side or item.position or item.is_held):
            _beside_an_end(before, item)
    if not any(item.is_beside for item in row) or row[-1].side == "right":
        return
    around_centre = {item.side for item in row} == {"centre", ""}
    for item in row:
        if (item.is_beside or around_centre) and not item.position:
            item.position = _NOT_FROM_LEFT


def _beside_an_end(before: Item, item: Item) -> None:
    """Beside whoever stands at an end there is one place: `mormor längst till höger, bredvid henne moster Ester`."""
    if fold(item.person.note.split(", ")[-1]).startswith(ABOVE_OR_BELOW):
        return  # `Top left is Isa, below her is Dod`
    if before.side == "left" and before.position in (0, 1):
        item.position = 2
    elif before.side == "right" and before.from_right == 1:
        item.position, item.from_right = _NOT_FROM_LEFT, 2


def _ordered(row: Sequence[Item], turned_groups: Container[int]) -> list[Item]:
    turned: list[Item] = []
    for group in dict.fromkeys(item.group for item in row):
        items = [item for item in row if item.group == group]
        turned += reversed(items) if group in turned_groups and not any(item.number for item in items) else items
    if any(item.side for item in turned):
        return sorted(turned, key=lambda item: _SIDE_RANK[item.side])
    return turned
