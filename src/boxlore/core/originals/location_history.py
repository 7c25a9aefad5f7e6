"""Where items were kept, and when, so that every mark that an item ever had still finds it.

A mark (`3/12/4`) follows from three kinds of statement: where an item is kept, a container's label, and what a
container is inside. So renumbering a box changes the marks of all that is in it, though nothing was said about the
items. The history is worked out by reading the log again in the order of its times, with withdrawals; nothing depends
on today's date (rule of our own, no outside source).

Example: item `i` was put at `c1 4` in March and box `c1` was relabelled from 3 to 7 in May. Then `i` had the mark
`3/4` from March to May, and has had `7/4` since.
"""

from bisect import insort
from collections import defaultdict
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass

from boxlore.core.fields.originals import KEPT_WORDS
from boxlore.core.records.marks import Mark


@dataclass(frozen=True, slots=True)
class Stated:
    """The parts of one statement that are needed here; `recorded_at` is UTC in ISO 8601."""

    subject: str
    field: str
    id: str
    act: str
    words: str
    recorded_at: str
    replaces: str


@dataclass(frozen=True, slots=True)
class Spell:
    """A value and the time in which it held: from `since` until just before `until` ('': it still holds)."""

    words: str
    since: str
    until: str = ""


@dataclass(frozen=True, slots=True)
class PastMark:
    """A mark that an item had, and when; `until` is '' for the mark that it has now."""

    item: str
    mark: Mark
    since: str
    until: str = ""

    @property
    def now(self) -> bool:
        """Whether the item has this mark now."""
        return not self.until


class Withdrawn:
    """Which acts were withdrawn at which time. Takes rows of (act that withdraws, act withdrawn, time).

    An undo withdraws an act; a redo withdraws that undo, so from then on the act counts again; and so on.
    """

    def __init__(self, rows: Iterable[tuple[str, str, str]] = ()) -> None:
        self._by: defaultdict[str, list[tuple[str, str]]] = defaultdict(list)
        for act, undone, when in rows:
            insort(self._by[undone], (when, act))

    def at(self, act: str, when: str) -> bool:
        """Whether the act was withdrawn at that time, by an act that was itself not withdrawn then."""
        return any(since <= when and not self.at(by, when) for since, by in self._by.get(act, ()))

    def times(self, act: str) -> set[str]:
        """The times at which the answer of `at` for this act may have changed."""
        moments: set[str] = set()
        for since, by in self._by.get(act, ()):
            moments |= {since} | self.times(by)
        return moments


def spells(rows: Sequence[Stated], withdrawn: Withdrawn) -> list[Spell]:
    """The values of one field of one item or container through time, oldest first; times without a value are left out.

    `rows` are all statements of that field, in the order of the log.
    """
    times = {row.recorded_at for row in rows}.union(*(withdrawn.times(row.act) for row in rows))
    timeline: list[Spell] = []
    for when in sorted(times):
        words = _in_force(rows, withdrawn, when)
        if timeline and not timeline[-1].until:
            if timeline[-1].words == words:
                continue
            timeline[-1] = Spell(timeline[-1].words, timeline[-1].since, when)
        if words:
            timeline.append(Spell(words, when))
    return [spell for spell in timeline if spell.since != spell.until]


def _in_force(rows: Sequence[Stated], withdrawn: Withdrawn, when: str) -> str:
    """The words in force at that time: of the last statement neither withdrawn nor replaced then; '' if none."""
    stood = [row for row in rows if row.recorded_at <= when and not withdrawn.at(row.act, when)]
    replaced = {row.replaces for row in stood}
    return next((row.words for row in reversed(stood) if row.id not in replaced), "")


class Places:
    """The history of all containers; made once from their statements, it answers for any item."""

    def __init__(self, containers: Iterable[Stated], withdrawn: Withdrawn) -> None:
        self._withdrawn = withdrawn
        rows: defaultdict[tuple[str, str], list[Stated]] = defaultdict(list)
        for row in containers:
            rows[row.subject, row.field].append(row)
        self._spells: Mapping[tuple[str, str], list[Spell]] = {
            key: spells(field_rows, withdrawn) for key, field_rows in rows.items()
        }

    def ever_labelled(self, label: str) -> list[str]:
        """The ids of the containers that ever bore this label."""
        return [
            subject
            for (subject, field), field_spells in self._spells.items()
            if field == "label" and any(spell.words == label for spell in field_spells)
        ]

    def path(self, container: str, when: str) -> tuple[tuple[str, str], ...]:
        """(kind, label) of the container and of those around it at a time, outermost first; () before it existed."""
        steps: list[tuple[str, str]] = []
        visited: set[str] = set()
        while container not in visited and (label := self._at(container, "label", when)):
            visited.add(container)
            steps.append((self._at(container, "kind", when) or "box", label))
            container = self._at(container, "inside", when)
        return tuple(reversed(steps))

    def past_marks(self, item: str, rows: Sequence[Stated]) -> list[PastMark]:
        """Every mark that an item had, oldest first. `rows` are all its statements of the field `kept`."""
        marks: list[PastMark] = []
        for spell in spells(rows, self._withdrawn):
            kept = KEPT_WORDS.or_none(spell.words)
            if kept is None:
                continue
            changes = sorted(
                when for when in self._changes(kept.container) if spell.since < when < (spell.until or "~")
            )
            for since, until in zip([spell.since, *changes], [*changes, spell.until], strict=True):
                path = self.path(kept.container, since)
                if path:
                    _add(marks, PastMark(item, Mark(path, kept.position), since, until))
        return marks

    def _at(self, container: str, field: str, when: str) -> str:
        """The value of a container's field at a time; '' where it had none yet."""
        field_spells = self._spells.get((container, field), ())
        return next(
            (spell.words for spell in field_spells if spell.since <= when and (not spell.until or when < spell.until)),
            "",
        )

    def _changes(self, container: str) -> set[str]:
        """Every time at which the path to a container may have changed."""
        moments: set[str] = set()
        waiting, visited = [container], set[str]()
        while waiting:
            current = waiting.pop()
            if current in visited:
                continue
            visited.add(current)
            for field in ("label", "kind", "inside"):
                for spell in self._spells.get((current, field), ()):
                    moments |= {spell.since, spell.until} - {""}
                    if field == "inside":
                        waiting.append(spell.words)
        return moments


def _add(marks: list[PastMark], past_mark: PastMark) -> None:
    """Add a mark to the list; if it only continues the last one, lengthen that instead."""
    if marks and marks[-1].mark == past_mark.mark and marks[-1].until == past_mark.since:
        marks[-1] = PastMark(past_mark.item, past_mark.mark, marks[-1].since, past_mark.until)
    else:
        marks.append(past_mark)


def rows_with_mark(
    short: str, history: Iterable[PastMark], folded: Callable[[str], str] = str.casefold
) -> list[PastMark]:
    """The rows of a history with this mark: first the item that has it now, then the latest. `folded` compares."""
    rows = [past_mark for past_mark in history if folded(past_mark.mark.short) == folded(short)]
    return sorted(rows, key=lambda past_mark: (past_mark.now, past_mark.since), reverse=True)
