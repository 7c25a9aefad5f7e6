"""Days as unknowns, and how far one may lie after another: what follows for each, and which limits cannot all hold.

Theory of operation
-------------------
A limit says that one day comes at most so many days after another: `later - earlier <= days`. Every plain statement
about time is one or two of them. “Not before 1 May 1900” is a limit between a day and the origin, which is a day like
the others and stands still at number 0; “Liisi was about five” is two limits between a picture and a birth. Such a
network is a *simple temporal problem* (R. Dechter, I. Meiri, J. Pearl, “Temporal Constraint Networks”, *Artificial
Intelligence* 49, 1991, 61-95), and their theorems are used here:

- The latest day that a day can be is the length of the shortest path to it from the origin, where each limit is an
  arrow from `earlier` to `later` of the length `days`; the earliest is the negative length of the shortest path back to
  the origin. These bounds are exact: each is reached by some choice of all days that keeps every limit.
- The limits cannot all hold if and only if there is a circle of arrows whose length is below 0.

Both kinds of paths are found by one method, on the arrows and on the arrows turned round (`_Labels`): each day bears
the length of the best path known and the arrow by which it came, and is looked at again when it becomes less. A day
that is reached from itself closes a circle below 0, which is handed back with the owners of its arrows; nothing is
changed by that arrow, so that the work goes on as soon as an owner is forgotten. All days begin at `FAR`, as if the
origin allowed that: so a circle that does not touch the origin is found too.

What always holds between two calls of `settle` that hand back no circle: every label is the length of a shortest path
over the arrows that are not forgotten. A limit that is added can only lower labels, and only those that it reaches are
looked at: an answer more costs little. Forgetting can only raise labels, of those days alone whose paths had led over
what is forgotten; they begin again at `FAR`, and take what their neighbours offer.

Example: a birth in 1918 (limits of the origin and the birth), a picture 1460 to 2555 days after it (limits of the birth
and the picture): the picture was taken in 1922 to 1925. A third limit, picture before 1 January 1920, closes a circle
of three arrows: origin, picture, birth, origin.
"""

from collections import deque
from collections.abc import Iterable, Iterator
from contextlib import contextmanager
from typing import NamedTuple

FAR = 1 << 50
"""A label that means that no path is known. Paths of days are shorter than half of it by far."""

ORIGIN = ""
"""The name of the day that stands still; its number is 0."""


class Limit(NamedTuple):
    """`later` comes at most `days` days after `earlier`; below 0 it comes so many days before it, or more."""

    later: str
    earlier: str
    days: int


class _Labels:
    """The shortest paths from the origin over arrows in one direction; see the theory above."""

    def __init__(self) -> None:
        self.label = [0]
        self.came_by = [-1]
        self._begins: list[int] = []
        self._ends: list[int] = []
        self._length: list[int] = []
        self._leaving: list[list[int]] = [[]]
        self._arriving: list[list[int]] = [[]]
        self._new: deque[int] = deque()
        self._waiting: deque[int] = deque()
        self._queued = [False]
        self._undo: list[tuple[int, int, int]] | None = None
        self.moved: set[int] = set()

    def add_day(self) -> None:
        self.label.append(FAR)
        self.came_by.append(-1)
        self._queued.append(False)
        self._leaving.append([])
        self._arriving.append([])

    def add(self, begins: int, ends: int, length: int) -> None:
        arrow = len(self._begins)
        self._begins.append(begins)
        self._ends.append(ends)
        self._length.append(length)
        self._leaving[begins].append(arrow)
        self._arriving[ends].append(arrow)
        self._new.append(arrow)

    def settle(self) -> list[int] | None:
        """Lower what can be lowered; the arrows of a circle below 0, if there is one."""
        while self._new:
            arrow = self._new.popleft()
            if (circle := self._relax(arrow)) is not None:
                self._new.append(arrow)
                return circle
        label, ends, length = self.label, self._ends, self._length
        while self._waiting:
            day = self._waiting.popleft()
            self._queued[day] = False
            here = label[day]
            for arrow in self._leaving[day]:
                if here + length[arrow] < label[ends[arrow]] and (circle := self._relax(arrow)) is not None:
                    self._queue(day)
                    return circle
        return None

    def _relax(self, arrow: int) -> list[int] | None:
        begins, ends = self._begins[arrow], self._ends[arrow]
        shorter = self.label[begins] + self._length[arrow]
        if shorter >= self.label[ends]:
            return None
        if (circle := self._circle(arrow, begins, ends)) is not None:
            return circle
        if self._undo is not None:
            self._undo.append((ends, self.label[ends], self.came_by[ends]))
        self.label[ends] = shorter
        self.came_by[ends] = arrow
        self.moved.add(ends)
        self._queue(ends)
        return None

    def _circle(self, arrow: int, day: int, ends: int) -> list[int] | None:
        """The arrows from `ends` to where the arrow begins, and the arrow, if the path of the one leads there."""
        circle = [arrow]
        while day != ends:
            if (before := self.came_by[day]) < 0:
                return None
            circle.append(before)
            day = self._begins[before]
        return circle

    def _queue(self, day: int) -> None:
        if not self._queued[day]:
            self._queued[day] = True
            self._waiting.append(day)

    def forget(self, arrows: Iterable[int]) -> None:
        """Take arrows out; the days whose paths led over them begin again."""
        gone = list(arrows)
        open_ends = [self._ends[arrow] for arrow in gone if self.came_by[self._ends[arrow]] == arrow]
        for arrow in gone:
            self._length[arrow] = 2 * FAR
        lost = dict.fromkeys(open_ends)
        while open_ends:
            for arrow in self._leaving[open_ends.pop()]:
                day = self._ends[arrow]
                if self.came_by[day] == arrow and day not in lost:
                    lost[day] = None
                    open_ends.append(day)
        for day in lost:
            self.label[day], self.came_by[day] = FAR, -1
        self.moved.update(lost)
        for day in lost:
            self._new.extend(self._arriving[day])

    def path(self, day: int) -> Iterator[int]:
        """The arrows of the shortest path to a day, the last first."""
        while (arrow := self.came_by[day]) >= 0:
            yield arrow
            day = self._begins[arrow]

    @contextmanager
    def undone(self) -> Iterator[list[tuple[int, int, int]]]:
        """What is added within is taken back at the end. Gives (day, label before, arrow before) of what changes."""
        arrows = len(self._begins)
        undo: list[tuple[int, int, int]] = []
        self._undo = undo
        yield undo
        self._undo = None
        for day, label, came_by in reversed(undo):
            self.label[day], self.came_by[day] = label, came_by
        while len(self._begins) > arrows:
            self._leaving[self._begins.pop()].pop()
            self._arriving[self._ends.pop()].pop()
            self._length.pop()
        for day in self._waiting:
            self._queued[day] = False
        self._waiting.clear()
        self._new.clear()


class Network:
    """Days and limits. Each limit has owners, numbers of whoever says so; what follows is told by owners."""

    def __init__(self) -> None:
        self._number = {ORIGIN: 0}
        self._names = [ORIGIN]
        self._owners: list[tuple[int, ...]] = []
        self._owned: dict[int, list[int]] = {}
        self._latest, self._earliest = _Labels(), _Labels()

    def add(self, limit: Limit, *owners: int) -> None:
        """A limit more. What follows is worked out by `settle`."""
        later, earlier = self._day(limit.later), self._day(limit.earlier)
        for owner in owners:
            self._owned.setdefault(owner, []).append(len(self._owners))
        self._owners.append(owners)
        self._latest.add(earlier, later, limit.days)
        self._earliest.add(later, earlier, limit.days)

    def _day(self, name: str) -> int:
        number = self._number.setdefault(name, len(self._names))
        if number == len(self._names):
            self._names.append(name)
            self._latest.add_day()
            self._earliest.add_day()
        return number

    def settle(self) -> list[int] | None:
        """Work out what follows. Returns the owners of limits that cannot all hold, or None where all can."""
        for labels in (self._latest, self._earliest):
            if (circle := labels.settle()) is not None:
                return self._owners_of(circle)
        return None

    def forget(self, owner: int) -> None:
        """Forget every limit of an owner, those that it has with others too."""
        arrows = self._owned.pop(owner, [])
        self._latest.forget(arrows)
        self._earliest.forget(arrows)

    def bounds(self, name: str) -> tuple[int | None, int | None]:
        """The earliest and the latest that a day can be, None where nothing bounds it."""
        if name not in self._number:
            return None, None
        first, last = self.reached(name)
        return first if first > -FAR // 4 else None, last if last < FAR // 4 else None

    def moved(self) -> set[str]:
        """The days whose bounds may have become others since this was asked last."""
        moved = self._latest.moved | self._earliest.moved
        self._latest.moved, self._earliest.moved = set(), set()
        return {self._names[day] for day in moved}

    def reached(self, name: str) -> tuple[int, int]:
        """The same of a day that some limit names, with numbers beyond a quarter of FAR for None."""
        day = self._number[name]
        return -self._earliest.label[day], self._latest.label[day]

    def reasons(self, name: str) -> tuple[list[int], list[int]]:
        """The owners that the earliest and the latest of a day follow from, the nearest first."""
        day = self._number.get(name, 0)
        earliest, latest = (
            self._owners_of(labels.path(day)) if labels.label[day] < FAR // 4 else []
            for labels in (self._earliest, self._latest)
        )
        return earliest, latest

    def _owners_of(self, arrows: Iterable[int]) -> list[int]:
        return list(dict.fromkeys(owner for arrow in arrows for owner in self._owners[arrow]))

    def gained(self, limits: Iterable[Limit]) -> dict[str, int] | None:
        """How many days narrower each other day would be with these limits too; None if they cannot hold."""
        with self._supposed(limits) as changed:
            if changed is None:
                return None
            narrower: dict[int, int] = {}
            for labels, before in zip((self._latest, self._earliest), changed, strict=True):
                for day, label in before.items():
                    narrower[day] = narrower.get(day, 0) + min(label - labels.label[day], FAR)
            return {self._names[day]: days for day, days in narrower.items()}

    def supposing(self, limits: Iterable[Limit]) -> dict[str, tuple[int | None, int | None]] | None:
        """Between which days each day would be that these limits too make narrower; None if they cannot hold."""
        with self._supposed(limits) as changed:
            if changed is None:
                return None
            return {self._names[day]: self.bounds(self._names[day]) for before in changed for day in before}

    @contextmanager
    def _supposed(self, limits: Iterable[Limit]) -> Iterator[list[dict[int, int]] | None]:
        """With these limits too, within: the labels before, latest and earliest, of each day whose label is another."""
        count = len(self._owners)
        with self._latest.undone() as latest, self._earliest.undone() as earliest:
            for limit in limits:
                self.add(limit)
            fits = self.settle() is None
            changed = [{day: before for day, before, _ in reversed(undo)} for undo in (latest, earliest)]
            yield changed if fits else None
        del self._owners[count:]
