"""Composing the album's pages: which photographs stand together, how large, and where their words go.

The problem: photographs of every shape, with few words or many, in an order that must stay. A fixed grid makes small
pictures and white space. The idea: a page is cut into six columns; a photograph takes two to six of them, in a row of
its own or with neighbours; its words stand under it, or beside it in columns of their own. Once the arrangement is
chosen, the words have a known height, and what is left of the page is the pictures': one scale for all of them fills
it. Every arrangement of the next one to six photographs is tried, each gets a cost (too little picture, an empty
foot, very unequal pictures), and the cheapest way through the whole chapter is found from its end (dynamic
programming, as paragraphs are broken into lines: Knuth and Plass 1981). A page that would be mostly words is tried
again with the backs of its photographs under their fronts, and with briefer words, of which the rest is printed at the
end of the book: with all of a page alike, so that it looks of one kind.

What must always hold: the order stays; nothing overlaps; words keep the size of the theme; a photograph whose words
leave too little room for its picture gets a page where they flow on.

All lengths are in millimetres. Nothing here reads a record or a file.
"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from functools import cache
from itertools import product
from math import exp, inf, log

COLUMNS = 6
MOST_TOGETHER = 6
"""How many photographs a page holds at most."""

WANTED = 0.54
"""The part of the paper that the pictures of a page should fill; the album aims a little above 45 %."""

LEAST = 0.46
"""The part of the paper below which a page is mostly words, with what is lost in measuring."""

BRIEFER = (0.0, 0.1, 2.0)
"""What it costs a page that its words are none, one or two steps briefer: little for what nobody misses beside a
picture, much for a story that is only begun there.
"""

STACKED = 2.0
"""What it costs a page that backs stand under their fronts: as one turns a print, they stand beside them."""

LEAST_SCALE = 0.33
"""The least part of its largest possible height that a picture may have."""


@dataclass(frozen=True, slots=True)
class Piece:
    """A photograph to set: `shape` is its width divided by its height, `heights` the height of its words in so many
    columns, `head` that of the chapter's title where a chapter begins with it, else 0. `stacked` is its shape with its
    back under its front, 0 for one without a back to show; `briefer` the heights of its words cut shorter, and shorter.
    `most` is the greatest height that its pixels bear.
    """

    shape: float
    heights: Mapping[int, float]
    head: float = 0.0
    stacked: float = 0.0
    briefer: Sequence[Mapping[int, float]] = ()
    most: float = inf


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
    width of its words, and whether they stand beside it. `flows` is a photograph whose words run on over pages,
    `stacked` one whose back stands under its front; `brief` counts the steps by which its words are cut shorter.
    """

    at: int
    x: float
    y: float
    wide: float
    high: float
    words: float
    beside: bool = False
    flows: bool = False
    stacked: bool = False
    brief: int = 0


@dataclass(frozen=True, slots=True)
class _Cell:
    """A photograph in a row: the columns of its picture and of its words beside it (0: the words stand under it)."""

    picture: int
    beside: int = 0


Row = tuple[_Cell, ...]


@dataclass(frozen=True, slots=True)
class _Set:
    """A row of an arrangement: its cells, the first photograph, the shapes of its pictures, its greatest picture
    height, the height of words under the pictures, of words beside one, and of a chapter's title above.
    """

    cells: Row
    first: int
    shapes: tuple[float, ...]
    most: float
    under: float
    beside: float
    head: float

    def high(self, scale: float) -> float:
        """The height of the row at this scale of its pictures."""
        return self.head + max(self.most * scale + self.under, self.beside)


@dataclass(slots=True)
class _Way:
    """The photographs with their words so many steps briefer, and their backs under their fronts or not; and the rows
    of them that were measured already, None for one in whose middle a chapter would begin.
    """

    pieces: Sequence[Piece]
    brief: int
    stacked: bool
    rows: dict[tuple[int, Row], _Set | None] = field(default_factory=dict)

    def row(self, first: int, row: Row, area: Area) -> _Set | None:
        """The row of the photographs from this one on."""
        if (first, row) not in self.rows:
            members = [self._tried(at) for at in range(first, first + len(row))]
            starts = any(piece.head for piece in members[1:])
            self.rows[first, row] = None if starts else _measured(members, first, row, area)
        return self.rows[first, row]

    def _tried(self, at: int) -> Piece:
        piece = self.pieces[at]
        heights = (piece.heights, *piece.briefer)[min(self.brief, len(piece.briefer))]
        if self.piles(at):
            return Piece(piece.stacked, heights, piece.head, most=piece.most * piece.shape / piece.stacked)
        return Piece(piece.shape, heights, piece.head, most=piece.most)

    def piles(self, at: int) -> bool:
        """Whether the back of this photograph stands under its front."""
        return self.stacked and self.pieces[at].stacked > 0


@dataclass(frozen=True, slots=True)
class _Page:
    """A page as it may be: what is wrong with it, the part of it that is picture, its rows, how they are set, the scale
    of their pictures, and what is left free at its foot.
    """

    cost: float
    filled: float
    sets: Sequence[_Set]
    way: _Way
    scale: float
    free: float


def compose(pieces: Sequence[Piece], area: Area) -> list[list[Slot]]:
    """The pages of an album, each a list of slots in order. The last page may end early."""
    steps = range(1 + max((len(piece.briefer) for piece in pieces), default=0))
    ways = [_Way(pieces, brief, stacked) for brief in steps for stacked in (False, True)]
    best: dict[int, tuple[float, int, _Page | None]] = {len(pieces): (0.0, len(pieces), None)}
    for first in reversed(range(len(pieces))):
        tried: list[tuple[float, int, _Page | None]] = []
        for count in range(1, min(MOST_TOGETHER, len(pieces) - first) + 1):
            if (page := _best_page(ways, first, count, area)) is not None:
                tried.append((page.cost + best[first + count][0], first + count, page))
        if not tried:
            tried.append((best[first + 1][0] + 1.0, first + 1, None))
        best[first] = min(tried, key=lambda way: way[0])
    pages, at = [], 0
    while at < len(pieces):
        _, after, chosen = best[at]
        pages.append([_flowing(pieces[at], at, area)] if chosen is None else _slots(chosen, area))
        at = after
    return pages


def _flowing(piece: Piece, at: int, area: Area) -> Slot:
    """A photograph with more words than its page has room for: the picture above, the words under it and on."""
    high = min(area.wide / piece.shape, (area.high - piece.head) * 0.62, piece.most)
    return Slot(at, 0.0, 0.0, high * piece.shape, high, area.wide, flows=True)


def _best_page(ways: Sequence[_Way], first: int, count: int, area: Area) -> _Page | None:
    """The cheapest page of these photographs; None where they do not fit on one. Once it is mostly picture no further
    way is tried.
    """
    best: _Page | None = None
    for way in ways:
        if best is not None and best.filled >= LEAST:
            break
        if way.stacked and not any(way.piles(at) for at in range(first, first + count)):
            continue
        for arrangement in _arrangements(count, tuple(area.columns)):
            page = _page(way, first, arrangement, area)
            if page is not None and (best is None or page.cost < best.cost):
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


def _page(way: _Way, first: int, rows: Sequence[Row], area: Area) -> _Page | None:
    """The page of one arrangement, scaled to fill it; None where it is not possible. The last page may end early."""
    sets: list[_Set] = []
    at = first
    for row in rows:
        if (measured := way.row(at, row, area)) is None:
            return None
        sets.append(measured)
        at += len(row)
    room = area.high - area.between * (len(sets) - 1)
    scale = _scale(sets, room)
    if scale < LEAST_SCALE:
        return None
    free = 0.0 if at == len(way.pieces) else room - sum(row.high(scale) for row in sets)
    surfaces = [(row.most * scale) ** 2 * shape / area.paper for row in sets for shape in row.shapes]
    cost = _cost(surfaces, free / area.high) + BRIEFER[way.brief] + (STACKED if way.stacked else 0.0)
    return _Page(cost, sum(surfaces), sets, way, scale, free)


def _measured(members: Sequence[Piece], first: int, row: Row, area: Area) -> _Set:
    head, shapes = members[0].head, tuple(piece.shape for piece in members)
    room = area.high - head
    if row[0].beside:
        most = min(area.width(row[0].picture) / shapes[0], room, members[0].most)
        return _Set(row, first, shapes, most, 0.0, members[0].heights[row[0].beside], head)
    wide = (area.width(cell.picture) / shape for cell, shape in zip(row, shapes, strict=True))
    most = min(room, *wide, *(piece.most for piece in members))
    words = max(piece.heights[cell.picture] for cell, piece in zip(row, members, strict=True))
    return _Set(row, first, shapes, most, area.gap + words, 0.0, head)


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


def _slots(page: _Page, area: Area) -> list[Slot]:
    """Where the photographs of a page stand."""
    above = page.free / 3 if page.free > area.high / 10 else 0.0
    # what no picture can take stands above too (common practice, no source)
    between = above / (len(page.sets) - 1) if len(page.sets) > 1 else 0.0
    y = 0.0 if between else above
    slots: list[Slot] = []
    for row in page.sets:
        slots += _row_slots(page, row, y + row.head, area)
        y += row.high(page.scale) + area.between + between
    return slots


def _row_slots(page: _Page, row: _Set, y: float, area: Area) -> Iterator[Slot]:
    x, high = 0.0, row.most * page.scale
    for at, (cell, shape) in enumerate(zip(row.cells, row.shapes, strict=True), row.first):
        wide = high * shape
        words = area.wide - wide - area.gutter if cell.beside else area.width(cell.picture)
        piled = page.way.piles(at)
        yield Slot(at, x, y, wide, high, words, bool(cell.beside), stacked=piled, brief=page.way.brief)
        x += area.width(cell.picture) + area.gutter


def _cost(surfaces: Sequence[float], foot: float) -> float:
    """What is wrong with a page whose pictures have these surfaces, in parts of the paper: each page costs a little;
    too little picture, an empty foot, pictures of very different sizes, and one that is very small cost more. What
    falls below the least costs more than what it lacks of what is wanted, so that no page pays for another.
    """
    filled = sum(surfaces)
    short = max(0.0, WANTED - filled)
    below = max(0.0, LEAST - filled)
    middle = exp(sum(map(log, surfaces)) / len(surfaces))
    uneven = sum(log(surface / middle) ** 2 for surface in surfaces) / len(surfaces)
    tiny = max(0.0, 0.08 - min(surfaces))
    return 0.25 + 90 * short**2 + 300 * below**2 + 120 * max(0.0, foot - 0.1) ** 2 + 0.2 * uneven + 200 * tiny**2
