"""Outlines of prints on pictures, put right by hand: which corner is in hand, where it goes, step by step back.

The terminal and the page that the teller looks at draw the same outlines and do the same to them. They lie on the
picture as it is seen, in 0..1 of it. The file stays as it is: what is taken at the end is a plan for intake, in which
each outline is an item with its area.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field, replace
from pathlib import Path

from boxlore.core.errors import CouldNot, WrongUse
from boxlore.core.fields.areas import Area
from boxlore.core.fields.pictures import SHOWS_WORDS, Shows
from boxlore.core.fields.quads import corners_of
from boxlore.core.records.item_record import ScanFile
from boxlore.core.records.marker_positions import seen_at
from boxlore.disk.digests import sha256_of
from boxlore.disk.outlines import Drawn, Quad
from boxlore.disk.pictures import turn_of
from boxlore.disk.seeing import need_eyes, outlines_in
from boxlore.tasks.collection.opening import Act, Collection
from boxlore.tasks.collection.what_scans_show import shown_by
from boxlore.tasks.scans.find_prints import part_at, parts_of
from boxlore.tasks.scans.pairing import Planned

NO_EYES = "None are proposed, for the part that finds prints is not installed (`pip install boxlore[see]`): a adds one."
NEW = 0.3
"""Width and height of a new outline, as parts of the picture."""
NARROWEST = 0.01
"""An outline that is narrower or lower than this part of the picture is no print."""
SAME = 0.5
"""A proposal of which so much lies within an item that is here is that item."""


@dataclass(frozen=True, slots=True)
class Looked:
    """What looking at a picture came to: outlines proposed, those of items that are here already with the ids of the
    items, the ids of all items that the picture shows, how it is turned, the scan's id if it is here, and a sentence
    where nothing could be looked for."""

    proposed: tuple[Quad, ...] = ()
    here: tuple[tuple[str, Quad], ...] = ()
    items: tuple[str, ...] = ()
    turn: int = 1
    scan: str = ""
    why: str = ""


@dataclass(slots=True)
class OutlinesByHand:
    """One run: the pictures of a plan, one after the other. Those with a back or an area already stay as they are."""

    collection: Collection
    plan: Sequence[Planned]
    at: int = 0
    """Which picture is out."""
    looked: dict[int, Looked] = field(default_factory=dict)
    _drawn: dict[int, list[Drawn]] = field(default_factory=dict)
    """Of each picture, how its outlines were, the last as they are now."""
    _from: tuple[float, float] | None = None

    @property
    def sheets(self) -> list[Planned]:
        """The pictures that may show several prints."""
        return [item for item in self.plan if len(item.sides) == 1 and not item.sides[0].area]

    @property
    def path(self) -> Path:
        """The file of the picture that is out."""
        return self.sheets[self.at].sides[0].path

    @property
    def scan(self) -> ScanFile:
        """The same as a scan, so that it is read and shown like one."""
        path = str(self.path.absolute())
        return ScanFile(id=path, path=path, sha256="", bytes=0, width=0, height=0, media_type="")

    @property
    def now(self) -> Drawn:
        """The outlines of the picture that is out."""
        return self._last(self.at)

    def _last(self, at: int) -> Drawn:
        return self._drawn[at][-1] if at in self._drawn else Drawn()

    @property
    def is_changed(self) -> bool:
        """Whether anything was done by hand."""
        return any(len(steps) > 1 for steps in self._drawn.values())

    def look(self, at: int) -> Looked:
        """Look at a picture: slow, and the only thing here that reads files."""
        path = self.sheets[at].sides[0].path
        turn = turn_of(path)
        try:
            known = self.collection.store.scan_by_sha256(sha256_of(path))
            here = self._parts_here(known, turn) if known else []
            shown, why = _proposed(path)
        except CouldNot as error:
            return Looked(turn=turn, why=str(error))
        parts = tuple((item, quad) for item, quad in here if quad is not None)
        new = tuple(quad for quad in shown if not any(_within(quad, part) > SAME for _, part in parts))
        return Looked(new, parts, tuple(dict.fromkeys(item for item, _ in here)), turn, known, why)

    def _parts_here(self, scan: str, turn: int) -> list[tuple[str, Quad | None]]:
        """(item, outline) of each item that a scan shows: None for the whole of it."""
        return [(shows.item, _outline_of(shows, turn)) for _, shows in shown_by(self.collection, scan)]

    def begin(self, at: int, looked: Looked) -> None:
        """Take over what was found on a picture, unless somebody drew on it meanwhile."""
        self.looked[at] = looked
        if at not in self._drawn:
            items = tuple(item for item, _ in looked.here)
            self._drawn[at] = [Drawn((*(quad for _, quad in looked.here), *looked.proposed), owners=items)]

    # what is in hand

    def next_corner(self, by: int) -> None:
        """Take the next corner in hand, or the one before, over all outlines."""
        now = self.now
        corners = 4 * len(now.outlines)
        if corners:
            at = 4 * now.outline + max(now.corner, 0) + (by if now.corner >= 0 or by < 0 else 0)
            at = (0 if by > 0 else -1) if now.outline < 0 else at
            self._hold(*divmod(at % corners, 4))

    def hold(self, outline: int) -> bool:
        """Take a whole outline in hand; False where there is none of that number."""
        if not 0 <= outline < len(self.now.outlines):
            return False
        self._hold(outline, -1)
        return True

    def let_go(self) -> None:
        """Nothing is in hand any more."""
        self._hold(-1, -1)

    def _hold(self, outline: int, corner: int) -> None:
        steps = self._drawn.setdefault(self.at, [Drawn()])
        steps[-1] = replace(steps[-1], outline=outline, corner=corner)

    def grab(self, x: float, y: float, reach: tuple[float, float]) -> bool:
        """Take in hand the corner within reach of a point, else the outline that the point is in; False for neither."""
        self._from = (x, y)
        near = [
            (((at_x - x) / reach[0]) ** 2 + ((at_y - y) / reach[1]) ** 2, outline, corner)
            for outline, quad in enumerate(self.now.outlines)
            for corner, (at_x, at_y) in enumerate(quad)
        ]
        distance, outline, corner = min(near, default=(2.0, -1, -1))
        if distance > 1:
            inside = [at for at, quad in enumerate(self.now.outlines) if _holds(quad, x, y)]
            outline, corner = (inside[-1], -1) if inside else (-1, -1)
        self._hold(outline, corner)
        return outline >= 0

    # what is done

    def move(self, right: float, down: float, *, begun: bool = False) -> None:
        """Move what is in hand. `begun`: it goes on with the movement before, and is no step of its own."""
        quad = self.now.in_hand
        if quad is None:
            return
        held = range(4) if self.now.corner < 0 else (self.now.corner,)
        right = min(max(right, -min(quad[at][0] for at in held)), 1 - max(quad[at][0] for at in held))
        down = min(max(down, -min(quad[at][1] for at in held)), 1 - max(quad[at][1] for at in held))
        moved = [(x + right, y + down) if at in held else (x, y) for at, (x, y) in enumerate(quad)]
        self.put(self.now.outline, self.now.corner, as_quad(moved), begun=begun)

    def drag(self, x: float, y: float, *, begun: bool) -> None:
        """Move what was grabbed to where the mouse is."""
        if self._from is not None:
            self.move(x - self._from[0], y - self._from[1], begun=begun)
            self._from = (x, y)

    def put(self, outline: int, corner: int, quad: Quad, *, begun: bool = False) -> None:
        """Let an outline lie so, and take that corner of it in hand (-1: all of it)."""
        now = self.now
        if 0 <= outline < len(now.outlines):
            outlines = (*now.outlines[:outline], quad, *now.outlines[outline + 1 :])
            self._set(replace(now, outlines=outlines, outline=outline, corner=corner), begun=begun)

    def add(self, x: float = 0.5, y: float = 0.5) -> None:
        """Add an outline around a point, and take its first corner in hand."""
        left, top = (min(max(part - NEW / 2, 0.0), 1 - NEW) for part in (x, y))
        corners = [(left, top), (left + NEW, top), (left + NEW, top + NEW), (left, top + NEW)]
        now = self.now
        self._set(replace(now, outlines=(*now.outlines, as_quad(corners)), outline=len(now.outlines), corner=0))

    def remove(self) -> bool:
        """Take the outline in hand away; False where none is. Raises WrongUse for that of an item that is here."""
        now = self.now
        if self._new_in_hand("it can be moved, and stays") is None:
            return False
        outlines = (*now.outlines[: now.outline], *now.outlines[now.outline + 1 :])
        self._set(replace(now, outlines=outlines, outline=-1, corner=-1))
        return True

    def split(self) -> bool:
        """Make two of the outline in hand, across the middle of its longer sides, for prints that touch; the first
        corner of the second is in hand. False where none is in hand. Raises WrongUse for that of an item here."""
        now = self.now
        if (quad := self._new_in_hand("move it, and add one beside it")) is None:
            return False
        across = sum(abs(quad[at][0] - quad[at + 1][0]) for at in (0, 2))
        down = sum(abs(quad[at][1] - quad[at - 3][1]) for at in (1, 3))
        first, second, third, fourth = quad
        if across >= down:
            upper, lower = _halfway(first, second), _halfway(fourth, third)
            parts = (first, upper, lower, fourth), (upper, second, third, lower)
        else:
            left, right = _halfway(first, fourth), _halfway(second, third)
            parts = (first, second, right, left), (left, right, third, fourth)
        outlines = (*now.outlines[: now.outline], *map(as_quad, parts), *now.outlines[now.outline + 1 :])
        self._set(replace(now, outlines=outlines, outline=now.outline + 1, corner=0))
        return True

    def _new_in_hand(self, instead: str) -> Quad | None:
        """The outline in hand, None where none is. Raises WrongUse for that of an item that is here."""
        now = self.now
        if 0 <= now.outline < len(now.owners):
            number = self.collection.store.number_of(now.owners[now.outline])
            raise WrongUse(f"That is {number}, which is here already: {instead}.")
        return now.in_hand

    def undo(self) -> bool:
        """Take the last step on this picture back; False where there is none."""
        if len(self._drawn.get(self.at, ())) < 2:
            return False
        self._drawn[self.at].pop()
        return True

    def _set(self, drawn: Drawn, *, begun: bool = False) -> None:
        steps = self._drawn.setdefault(self.at, [Drawn()])
        if begun and len(steps) > 1:
            steps[-1] = drawn
        else:
            steps.append(drawn)

    # what comes of it

    def turn(self, by: int) -> bool:
        """Go to the next picture, or the one before; False where there is none."""
        if not 0 <= self.at + by < len(self.sheets):
            return False
        self.at += by
        return True

    def check(self) -> None:
        """Raises WrongUse for an outline that can be no print."""
        for number, quad in enumerate(self.now.outlines, 1):
            xs, ys = zip(*quad, strict=True)
            if max(xs) - min(xs) < NARROWEST or max(ys) - min(ys) < NARROWEST:
                raise WrongUse(f"Outline {number} is too narrow to be a print.", "Move its corners, or take it away.")

    def taken(self) -> list[Planned]:
        """The plan, with an item for each outline; a picture without any is one item."""
        parts: dict[str, list[Planned]] = {}
        for at, item in enumerate(self.sheets):
            drawn = self._last(at)
            if drawn.outlines:
                new = drawn.outlines[len(drawn.owners) :]
                parts[item.key] = parts_of(item, [part_at(quad, self._turn(at)) for quad in new])
        return [part for item in self.plan for part in parts.get(item.key, [item])]

    def put_right(self) -> list[str]:
        """Let the items that are here already have the outlines that were moved, and say which."""
        lines = []
        for at, looked in self.looked.items():
            for (item, stood), quad in zip(looked.here, self._last(at).outlines, strict=False):
                if quad != stood:
                    number = self.collection.store.number_of(item)
                    act = self.collection.act(f"outline of {number} moved")
                    move_outline(act, looked.scan, item, part_at(quad, looked.turn))
                    act.done()
                    lines.append(f"{number}: its outline is put right.")
        return lines

    def _turn(self, at: int) -> int:
        return self.looked[at].turn if at in self.looked else turn_of(self.sheets[at].sides[0].path)


def _proposed(path: Path) -> tuple[list[Quad], str]:
    """The outlines that are found on a picture, or none and why. Raises CouldNot for a file that cannot be read."""
    try:
        need_eyes()
    except CouldNot:
        return [], NO_EYES
    return list(outlines_in(path).quads), ""


def move_outline(act: Act, scan: str, item: str, part: tuple[float, ...]) -> None:
    """Another part of a scan shows an item; its markers stay where they are on the picture."""
    for statement, shows in shown_by(act.collection, scan):
        if shows.item == item and shows.area is not None:
            moved = replace(shows, area=Area(*part[:4]), corners=part[4:])
            act.state(statement.subject, "shows", SHOWS_WORDS.write(moved), replaces=statement.id)


def as_quad(corners: Iterable[tuple[float, float]]) -> Quad:
    """Four corners. Raises ValueError for another number of them."""
    first, second, third, fourth = ((round(x, 5), round(y, 5)) for x, y in corners)
    return first, second, third, fourth


def _outline_of(shows: Shows, turn: int) -> Quad | None:
    if shows.area is None:
        return None
    x, y, wide, high = (*shows.area.numbers, 0.0, 0.0)[:4]
    box = ((x, y), (x + wide, y), (x + wide, y + high), (x, y + high))
    return as_quad(seen_at(corner, (), turn) for corner in (corners_of(shows.corners) or box))


def _halfway(first: tuple[float, float], second: tuple[float, float]) -> tuple[float, float]:
    return (first[0] + second[0]) / 2, (first[1] + second[1]) / 2


def _box(quad: Quad) -> tuple[float, float, float, float]:
    xs, ys = zip(*quad, strict=True)
    return min(xs), min(ys), max(xs), max(ys)


def _within(quad: Quad, outer: Quad) -> float:
    """Which part of the box around a print lies in the box around another."""
    (left, top, right, low), (o_left, o_top, o_right, o_low) = _box(quad), _box(outer)
    shared = max(min(right, o_right) - max(left, o_left), 0) * max(min(low, o_low) - max(top, o_top), 0)
    return shared / max((right - left) * (low - top), 1e-9)


def _holds(quad: Quad, x: float, y: float) -> bool:
    """Whether a point lies inside an outline (by how often a line to the right of it crosses the sides)."""
    crossed = False
    for (x1, y1), (x2, y2) in zip(quad, (*quad[1:], quad[0]), strict=True):
        if (y1 > y) != (y2 > y) and x < (x2 - x1) * (y - y1) / (y2 - y1) + x1:
            crossed = not crossed
    return crossed
