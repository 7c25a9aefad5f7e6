"""Where things were kept, and when: every mark that an item ever had still finds it.

A mark follows from three kinds of statement (an item's place, a container's label, what a container is inside),
so renumbering a box changes the marks of all that is in it without a word said of the items. Nothing is computed
from the clock: the log is read again in its order, withdrawals included (rule of our own, no outside source).
"""

from bisect import insort
from collections import defaultdict
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass

from boxlore.core.records.containers import Mark


@dataclass(frozen=True, slots=True)
class Stated:
    """One row of the log as far as places need it; `recorded_at` UTC, ISO 8601."""

    subject: str
    field: str
    id: str
    act: str
    words: str
    recorded_at: str
    replaces: str


@dataclass(frozen=True, slots=True)
class Spell:
    """A value and the time it held: from `since` to before `until` (empty: still)."""

    words: str
    since: str
    until: str = ""


@dataclass(frozen=True, slots=True)
class PastMark:
    """A mark that an item had, and when; `until` is empty for the one it has now."""

    item: str
    mark: Mark
    since: str
    until: str = ""

    @property
    def now(self) -> bool:
        return not self.until


class Withdrawn:
    """Which acts counted as withdrawn at a time: undo, redo and undo again, each at its own moment."""

    def __init__(self, rows: Iterable[tuple[str, str, str]] = ()) -> None:
        self._by: defaultdict[str, list[tuple[str, str]]] = defaultdict(list)
        for act, undone, when in rows:
            insort(self._by[undone], (when, act))

    def at(self, act: str, when: str) -> bool:
        """Whether the act was withdrawn at that time: by an act that was not withdrawn itself."""
        return any(since <= when and not self.at(by, when) for since, by in self._by.get(act, ()))

    def times(self, act: str) -> set[str]:
        """The moments at which that could have changed."""
        found: set[str] = set()
        for since, by in self._by.get(act, ()):
            found |= {since} | self.times(by)
        return found


def spells(rows: Sequence[Stated], withdrawn: Withdrawn) -> list[Spell]:
    """The values of one field of one thing through time; times without a value are left out."""
    times = {one.recorded_at for one in rows}.union(*(withdrawn.times(one.act) for one in rows))
    found: list[Spell] = []
    for when in sorted(times):
        words = _in_force(rows, withdrawn, when)
        if found and not found[-1].until:
            if found[-1].words == words:
                continue
            found[-1] = Spell(found[-1].words, found[-1].since, when)
        if words:
            found.append(Spell(words, when))
    return [one for one in found if one.since != one.until]


def _in_force(rows: Sequence[Stated], withdrawn: Withdrawn, when: str) -> str:
    """The last value that was neither withdrawn nor replaced at that time."""
    stood = [one for one in rows if one.recorded_at <= when and not withdrawn.at(one.act, when)]
    replaced = {one.replaces for one in stood}
    return next((one.words for one in reversed(stood) if one.id not in replaced), "")


class Places:
    """The history of all containers. Made once, asked about any item."""

    def __init__(self, containers: Iterable[Stated], withdrawn: Withdrawn) -> None:
        self._withdrawn = withdrawn
        rows: defaultdict[tuple[str, str], list[Stated]] = defaultdict(list)
        for one in containers:
            rows[one.subject, one.field].append(one)
        self._spells: Mapping[tuple[str, str], list[Spell]] = {
            key: spells(some, withdrawn) for key, some in rows.items()
        }

    def ever_labelled(self, label: str) -> list[str]:
        """Containers that ever bore that label."""
        return [
            subject
            for (subject, field), some in self._spells.items()
            if field == "label" and any(spell.words == label for spell in some)
        ]

    def path(self, container: str, when: str) -> tuple[tuple[str, str], ...]:
        """The way to a container at a time, outermost first; nothing before it was there."""
        steps: list[tuple[str, str]] = []
        seen: set[str] = set()
        while container not in seen and (label := self._at(container, "label", when)):
            seen.add(container)
            steps.append((self._at(container, "kind", when) or "box", label))
            container = self._at(container, "inside", when)
        return tuple(reversed(steps))

    def kept(self, item: str, rows: Sequence[Stated]) -> list[PastMark]:
        """Every mark an item had, oldest first. `rows` are all its `kept` statements."""
        found: list[PastMark] = []
        for spell in spells(rows, self._withdrawn):
            container, _, place = spell.words.partition(" ")
            position = int(place) if place.isdigit() else 0
            changes = sorted(when for when in self._changes(container) if spell.since < when < (spell.until or "~"))
            for since, until in zip([spell.since, *changes], [*changes, spell.until], strict=True):
                path = self.path(container, since)
                if path:
                    _add(found, PastMark(item, Mark(path, position), since, until))
        return found

    def _at(self, container: str, field: str, when: str) -> str:
        """A fact at a time; what was said later than an item came in holds for it from then on only."""
        some = self._spells.get((container, field), ())
        return next((one.words for one in some if one.since <= when and (not one.until or when < one.until)), "")

    def _changes(self, container: str) -> set[str]:
        """Every moment at which the way to a container could have changed."""
        found: set[str] = set()
        waiting, seen = [container], set[str]()
        while waiting:
            one = waiting.pop()
            if one in seen:
                continue
            seen.add(one)
            for field in ("label", "kind", "inside"):
                for spell in self._spells.get((one, field), ()):
                    found |= {spell.since, spell.until} - {""}
                    if field == "inside":
                        waiting.append(spell.words)
        return found


def _add(found: list[PastMark], one: PastMark) -> None:
    """Add a mark; one that goes on unchanged stays one row."""
    if found and found[-1].mark == one.mark and found[-1].until == one.since:
        found[-1] = PastMark(one.item, one.mark, found[-1].since, one.until)
    else:
        found.append(one)


def held(short: str, history: Iterable[PastMark], folded: Callable[[str], str] = str.casefold) -> list[PastMark]:
    """The rows of a history that bear a mark, those of now first, then the latest."""
    rows = [one for one in history if folded(one.mark.short) == folded(short)]
    return sorted(rows, key=lambda one: (one.now, one.since), reverse=True)
