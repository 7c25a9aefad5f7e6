"""The extent of a transfer: how many items, of which kinds, in how many boxes, from when to when.

DACS 2.4 (date) and 2.5 (extent).
"""

from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass
from dataclasses import field as starts

from boxlore.core.crosswalk.captions import nature_of
from boxlore.core.crosswalk.dublin_core import process_term
from boxlore.core.crosswalk.series import SeriesKey, series_key, series_words
from boxlore.core.findings import several
from boxlore.core.places.reading import full_name
from boxlore.core.records.item_record import DATE_WITHHELD, UNDATED, PersonShown, Record
from boxlore.core.wording.catalogue import ENGLISH

MOST_LENT = 20
"""So many lent items are named by their numbers."""


@dataclass(slots=True, kw_only=True)
class Extent:
    """The extent of a transfer, counted record by record with `add`.

    `kinds`: nature -> number of items. `boxes` are labels, `folders` are paths of labels. `earliest` and `latest` are
    days in ISO 8601, or ''. `found_in`: words -> number of items.

    Of what is counted equally often the first of the container stands first, as `Counter.most_common` has it: the same
    items are described in the same words, however often.
    """

    items: int = 0
    not_given: frozenset[str] = frozenset()
    """The ids of items that are kept by the family: they are told of by their numbers, and are no part of it."""
    lent_items: frozenset[str] = frozenset()
    """The ids of items that somebody lent: their originals are no part of it."""
    lent: list[str] = starts(default_factory=list)
    """The numbers of the items of `lent_items`."""
    undated: int = 0
    """Items of which no date is told, or none that is read yet."""
    date_withheld: int = 0
    """Items of which a date is told, and not to this audience."""
    kept: int = 0
    """Items of `not_given`."""
    earliest_open: str = ""
    """The earliest day before which, or on which, something was that has no beginning (`not later than 1932`)."""
    latest_open: str = ""
    """The latest day after which, or on which, something was that has no end."""
    kinds: Counter[str] = starts(default_factory=Counter)
    boxes: set[str] = starts(default_factory=set)
    folders: set[tuple[str, ...]] = starts(default_factory=set)
    scan_ids: set[str] = starts(default_factory=set)
    """A scan that shows several items is one."""
    earliest: str = ""
    latest: str = ""
    found_in: dict[str, int] = starts(default_factory=dict)
    creators: dict[str, PersonShown] = starts(default_factory=dict)
    """Photographers, each once."""
    people: Counter[str] = starts(default_factory=Counter)
    """Id of a person of the registry who is shown -> number of items."""
    places: Counter[str] = starts(default_factory=Counter)
    processes: dict[str, str] = starts(default_factory=dict)
    """Process -> its term, or ''."""
    occasions: Counter[str] = starts(default_factory=Counter)
    series: dict[SeriesKey, str] = starts(default_factory=dict)
    """The keeper's own series, each by the words first met."""
    languages: Counter[str] = starts(default_factory=Counter)
    """Language tag -> number of statements in it."""

    def add(self, record: Record) -> None:
        """Count one record."""
        self.items += 1
        if record.id in self.not_given:
            self.kept += 1
            return
        self.lent += [record.number] if record.id in self.lent_items else []
        self.kinds[nature_of(record)] += 1
        if record.mark:
            self.boxes.add(record.mark.path[0][1])
            self.folders.add(tuple(label for _, label in record.mark.path))
        self.scan_ids |= {scan.id for scan in record.open_scans}
        if record.found_in:
            self.found_in[record.found_in] = self.found_in.get(record.found_in, 0) + 1
        for person in record.shown("photographer"):
            self.creators.setdefault(person.person or person.name, person)
        self.people.update(_each_once(shown.person for shown in record.shown() if shown.person and not shown.unsure))
        if words := series_words(record):
            self.series.setdefault(series_key(words), words)
        if record.place is not None:
            self.places[full_name(record.place)] += 1
        self.occasions.update(_each_once(view.words for view in record.all("occasion")))
        if process := record.words("process"):
            self.processes[process] = process_term(record)
        self.languages.update(view.language for rows in record.told.values() for view in rows if view.language)
        self._date(record)

    def _date(self, record: Record) -> None:
        view = record.first("date")
        date = view.date if view else None
        first = str(date.earliest) if date and date.first_year is not None else ""
        last = str(date.latest) if date and date.last_year is not None else ""
        if first:
            self.earliest = min(self.earliest or first, first)
        elif last:
            self.earliest_open = min(self.earliest_open or last, last)
        if last:
            self.latest = max(self.latest, last)
        elif first:
            self.latest_open = max(self.latest_open, first)
        if not (first or last):
            self.date_withheld += record.date_withheld
            self.undated += not record.date_withheld

    @property
    def given(self) -> int:
        """How many items are handed over, or will be."""
        return self.items - self.kept

    @property
    def kept_words(self) -> str:
        """`2 items kept by the family`: what stands for title and extent where nothing else is there."""
        return several(self.kept, "item kept by the family", "items kept by the family")

    @property
    def lent_words(self) -> str:
        """`, but for the originals of 2 items, which somebody lent (TRA-0004 and TRA-0009)`; '' where none is lent."""
        if not self.lent:
            return ""
        what = "the original of 1 item" if len(self.lent) == 1 else f"the originals of {len(self.lent):,} items"
        named = ENGLISH.listed(self.lent) if len(self.lent) <= MOST_LENT else "the inventory says which"
        return f", but for {what}, which somebody lent ({named})"

    @property
    def scans(self) -> int:
        """How many scans there are that are not closed."""
        return len(self.scan_ids)

    @property
    def first(self) -> "RangeEnd":
        """Where the dates begin, if there are any: not later than a day, where something earlier has no beginning."""
        if self.earliest_open and not (self.earliest and self.earliest[:4] <= self.earliest_open[:4]):
            return RangeEnd(self.earliest_open, "not later than ")
        return RangeEnd(self.earliest)

    @property
    def last(self) -> "RangeEnd":
        """Where the dates end, in the same way."""
        if self.latest_open and not (self.latest and self.latest[:4] >= self.latest_open[:4]):
            return RangeEnd(self.latest_open, "not earlier than ")
        return RangeEnd(self.latest)

    @property
    def range_words(self) -> str:
        """`1898-1975`, `1912`, `not later than 1932-1975`; an open end alone where both are of its year."""
        ends = [self.first, self.last]
        if self.first.day[:4] == self.last.day[:4]:
            ends = [end for end in ends if end.is_open] or ends
        return "-".join(dict.fromkeys(end.words for end in ends))

    @property
    def not_dated(self) -> str:
        """`3 items undated, …`, for those that the range does not cover (DACS 2.4: it covers all that is dated)."""
        undated = f"{several(self.undated, 'item')} undated, or with a date that is still asked about"
        withheld = f"{several(self.date_withheld, 'item')} with a date that is not given here"
        return "; ".join(words for words, count in ((undated, self.undated), (withheld, self.date_withheld)) if count)

    @property
    def date_words(self) -> str:
        """`1898-1975, undated`: the date of a unit, which counts nothing (DACS 2.4, from memory)."""
        if not (self.earliest or self.latest):
            return self.years
        return f"{self.range_words}, {UNDATED}" if self.undated else self.range_words

    @property
    def years(self) -> str:
        """`1898-1975`, `1912; 2 items undated …` or `undated`."""
        if not (self.earliest or self.latest):
            return DATE_WITHHELD if self.date_withheld else UNDATED
        return "; ".join(part for part in (self.range_words, self.not_dated) if part)

    @property
    def words(self) -> str:
        """`20 photographs, 2 letters; 2 boxes, 5 folders`; behind it what is not given."""
        return self.words_with("")

    def words_with(self, beside: str) -> str:
        """The same, with what lies beside the items (`1 sound recording`)."""
        boxes, folders = len(self.boxes), len({labels for labels in self.folders if len(labels) > 1})
        containers = [several(boxes, "box", "boxes")] if boxes else []
        containers += [several(folders, "folder")] if folders else []
        kept = f"besides {several(self.kept, 'item that is', 'items that are')} kept by the family" if self.kept else ""
        return "; ".join(part for part in (self.kinds_words, beside, ", ".join(containers), kept) if part)

    @property
    def kinds_words(self) -> str:
        """`20 photographs, 2 letters`."""
        return ", ".join(several(count, kind) for kind, count in self.kinds.most_common())


def _each_once(words: Iterable[str]) -> list[str]:
    """Each once, in the order of the record: a set has another order in each run."""
    return list(dict.fromkeys(words))


@dataclass(frozen=True, slots=True)
class RangeEnd:
    """One end of the dates of a unit: its day (ISO 8601), and the words before its year where it is open."""

    day: str
    before: str = ""

    @property
    def is_open(self) -> bool:
        return bool(self.before)

    @property
    def words(self) -> str:
        return f"{self.before}{self.day[:4]}"


def counted_kind(kind: str, count: int) -> str:
    """What so many items of a kind are called, without the number: `photograph`, `photographs`."""
    return several(count, kind).partition(" ")[2]
