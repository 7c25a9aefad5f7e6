"""Composing the album's pages: which photographs stand together, how large, and where their words go.

The problem: photographs of every shape, with few words or many, in an order that must stay. A fixed grid makes small
pictures and white space. The idea: a page is cut into six columns; a photograph takes two to six of them, in a row of
its own or with neighbours; its words stand under it, or beside it in columns of their own. Once the arrangement is
chosen, the words have a known height, and what is left of the page is the pictures': one scale for all of them fills
it. Every arrangement of the next one to six photographs is tried, each gets a cost (too little picture, an empty
foot, very unequal pictures), and the cheapest way through the whole chapter is found from its end (dynamic
programming, as paragraphs are broken into lines: Knuth and Plass 1981).

What must always hold: the order stays; nothing overlaps; words keep the size of the theme; a photograph whose words
leave too little room for its picture gets a page where they flow on.

All lengths are in millimetres. Nothing here reads a record or a file.
"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import cache
from itertools import product
from math import exp, log

COLUMNS = 6
MOST_TOGETHER = 6
"""How many photographs a page holds at most."""

WANTED = 0.54
"""The part of the paper that the pictures of a page should fill; the album aims a little above 45 %."""

LEAST_SCALE = 0.33
"""The least part of its largest possible height that a picture may have."""


@dataclass(frozen=True, slots=True)
class Piece:
    """A photograph to set: `shape` is its width divided by its height, `heights` the height of its words in so many
    columns, `head` that of the chapter's title where a chapter begins with it, else 0.
    """

    shape: float
    heights: Mapping[int, float]
    head: float = 0.0


@dataclass(frozen=True, slots=True)
class Area:
    """The type area: its size, the space between columns and between rows, the space between a picture and its words,
    the narrowest column of words, and the paper's surface in square millimetres.
    """

    wide: float
    high: float
    paper: float
    gutter: float = 6.0
    between: float = 6.0
    gap: float = 2.0
    narrowest: float = 48.0

    def width(self, columns: int) -> float:
        """The width of so many neighbouring columns."""
        return (self.wide + self.gutter) * columns / COLUMNS - self.gutter

    @property
    def columns(self) -> list[int]:
        """The numbers of columns in which words may stand."""
        return [count for count in range(1, COLUMNS + 1) if self.width(count) >= self.narrowest or count == COLUMNS]


@dataclass(frozen=True, slots=True)
class Slot:
    """Where one photograph stands: its number in the order, its corner in the type area, the size of its picture, the
    width of its words, and whether they stand beside it. `flows` is a photograph whose words run on over pages.
    """

    at: int
    x: float
    y: float
    wide: float
    high: float
    words: float
    beside: bool = False
    flows: bool = False


@dataclass(frozen=True, slots=True)
class _Cell:
    """A photograph in a row: the columns of its picture and of its words beside it (0: the words stand under it)."""

    picture: int
    beside: int = 0


Row = tuple[_Cell, ...]


@dataclass(frozen=True, slots=True)
class _Set:
    """A row of an arrangement: its cells, the first photograph, its greatest picture height, the height of words under
    the pictures, of words beside one, and of a chapter's title above.
    """

    cells: Row
    first: int
    most: float
    under: float
    beside: float
    head: float

    def high(self, scale: float) -> float:
        """The height of the row at this scale of its pictures."""
        return self.head + max(self.most * scale + self.under, self.beside)


def compose(pieces: Sequence[Piece], area: Area) -> list[list[Slot]]:
    """The pages of an album, each a list of slots in order. The last page may end early."""
    best: dict[int, tuple[float, int, list[Slot]]] = {len(pieces): (0.0, len(pieces), [])}
    for first in reversed(range(len(pieces))):
        ways = []
        for count in range(1, min(MOST_TOGETHER, len(pieces) - first) + 1):
            if (page := _best_page(pieces, first, count, area)) is not None:
                ways.append((page[0] + best[first + count][0], first + count, page[1]))
        if not ways:
            ways.append((best[first + 1][0] + 1.0, first + 1, [_flowing(pieces[first], first, area)]))
        best[first] = min(ways, key=lambda way: way[0])
    pages, at = [], 0
    while at < len(pieces):
        _, at, slots = best[at]
        pages.append(slots)
    return pages


def _flowing(piece: Piece, at: int, area: Area) -> Slot:
    """A photograph with more words than its page has room for: the picture above, the words under it and on."""
    high = min(area.wide / piece.shape, (area.high - piece.head) * 0.62)
    return Slot(at, 0.0, 0.0, high * piece.shape, high, area.wide, flows=True)


def _best_page(pieces: Sequence[Piece], first: int, count: int, area: Area) -> tuple[float, list[Slot]] | None:
    """The cheapest page of these photographs, with its cost; None where they do not fit on one."""
    best: tuple[float, list[Slot]] | None = None
    for arrangement in _arrangements(count, tuple(area.columns)):
        page = _page(pieces, first, arrangement, area)
        if page is not None and (best is None or page[0] < best[0]):
            best = page
    return best


@cache
def _arrangements(count: int, columns: tuple[int, ...]) -> list[tuple[Row, ...]]:
    """Every way to put so many photographs into rows. From five on, no row holds only one."""
    rows: dict[int, list[Row]] = {size: list(_rows(size, columns)) for size in (1, 2, 3)}
    if count >= 5:
        rows[1] = []
    return [
        arrangement
        for sizes in _parts(count)
        for arrangement in product(*(rows[size] for size in sizes))
    ]  # fmt: skip


def _parts(count: int) -> Iterator[tuple[int, ...]]:
    """The ways to write a number as a sum of 1, 2 and 3, in order."""
    if not count:
        yield ()
    for size in range(1, min(3, count) + 1):
        for rest in _parts(count - size):
            yield (size, *rest)


def _rows(size: int, columns: tuple[int, ...]) -> Iterator[Row]:
    """The rows of one, two or three photographs that these widths of words allow."""
    if size == 1:
        yield (_Cell(COLUMNS),)
        yield from ((_Cell(COLUMNS - words, words),) for words in (2, 3) if words in columns)
    elif size == 2:
        yield from (
            (_Cell(narrow), _Cell(COLUMNS - narrow))
            for narrow in (2, 3, 4)
            if {narrow, COLUMNS - narrow} <= set(columns)
        )
    elif 2 in columns:
        yield (_Cell(2), _Cell(2), _Cell(2))


def _page(pieces: Sequence[Piece], first: int, rows: Sequence[Row], area: Area) -> tuple[float, list[Slot]] | None:
    """The slots of one arrangement, scaled to fill the page, and its cost; None where it is not possible."""
    sets: list[_Set] = []
    at = first
    for row in rows:
        if any(piece.head for piece in pieces[at + 1 : at + len(row)]):
            return None  # a chapter begins in the middle of a row
        sets.append(_measured(pieces, at, row, area))
        at += len(row)
    scale = _scale(sets, area.high - area.between * (len(sets) - 1))
    if scale < LEAST_SCALE:
        return None
    free = area.high - sum(row.high(scale) for row in sets) - area.between * (len(sets) - 1)
    foot = 0.0 if at == len(pieces) else free / area.high
    above = free / 3 if foot > 0.1 else 0.0  # what no picture can take stands above too (common practice, no source)
    between = above / (len(sets) - 1) if len(sets) > 1 else 0.0
    y = 0.0 if between else above
    slots: list[Slot] = []
    for measured in sets:
        slots += _slots(pieces, measured, y + measured.head, measured.most * scale, area)
        y += measured.high(scale) + area.between + between
    return _cost(slots, foot, area), slots


def _measured(pieces: Sequence[Piece], first: int, row: Row, area: Area) -> _Set:
    head = pieces[first].head
    room = area.high - head
    if row[0].beside:
        most = min(area.width(row[0].picture) / pieces[first].shape, room)
        return _Set(row, first, most, 0.0, pieces[first].heights[row[0].beside], head)
    members = [(cell, pieces[first + at]) for at, cell in enumerate(row)]
    most = min(room, *(area.width(cell.picture) / piece.shape for cell, piece in members))
    return _Set(row, first, most, area.gap + max(piece.heights[cell.picture] for cell, piece in members), 0.0, head)


def _scale(sets: Sequence[_Set], free: float) -> float:
    """The greatest scale, up to 1, at which these rows fit; 0 where their words alone do not."""

    def needs(scale: float) -> float:
        return sum(row.high(scale) for row in sets)

    if needs(1.0) <= free:
        return 1.0
    if needs(0.0) > free:
        return 0.0
    scale = 1.0
    for _ in sets:  # each round fixes at least one more row at the height of the words beside its picture
        fixed = [row for row in sets if row.most * scale < row.beside]
        rest = [row for row in sets if row not in fixed]
        if not rest:
            break
        taken = sum(row.head + row.beside for row in fixed) + sum(row.head + row.under for row in rest)
        scale = min(1.0, (free - taken) / sum(row.most for row in rest))
    return scale if needs(scale) <= free + 0.01 else 0.0


def _slots(pieces: Sequence[Piece], row: _Set, y: float, high: float, area: Area) -> Iterator[Slot]:
    x = 0.0
    for at, cell in enumerate(row.cells, row.first):
        wide = high * pieces[at].shape
        words = area.wide - wide - area.gutter if cell.beside else area.width(cell.picture)
        yield Slot(at, x, y, wide, high, words, bool(cell.beside))
        x += area.width(cell.picture) + area.gutter


def _cost(slots: Sequence[Slot], foot: float, area: Area) -> float:
    """What is wrong with a page: each page costs a little; too little picture, an empty foot, pictures of very
    different sizes, and one that is very small cost more.
    """
    surfaces = [slot.wide * slot.high for slot in slots]
    short = max(0.0, WANTED - sum(surfaces) / area.paper)
    middle = exp(sum(map(log, surfaces)) / len(surfaces))
    uneven = sum(log(surface / middle) ** 2 for surface in surfaces) / len(surfaces)
    tiny = max(0.0, 0.08 - min(surfaces) / area.paper)
    return 0.25 + 90 * short**2 + 120 * max(0.0, foot - 0.1) ** 2 + 0.2 * uneven + 200 * tiny**2
