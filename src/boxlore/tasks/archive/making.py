"""One part of a transfer in the making: what it is of, what it holds so far, and what it will not hold."""

from collections import defaultdict
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, field, replace
from pathlib import Path
from typing import BinaryIO

from boxlore.core.crosswalk.dublin_core import CollectionFacts
from boxlore.core.crosswalk.extent import Extent
from boxlore.core.crosswalk.receiving_archive import TAKES, USUALLY, Archive
from boxlore.core.crosswalk.series import series_key, series_words
from boxlore.core.fields.pictures import SHOWS_WORDS
from boxlore.core.fields.plain_values import YES_NO_WORDS
from boxlore.core.findings import Finding, Severity, several
from boxlore.core.records.item_record import Record
from boxlore.core.records.marks import ContainerPath
from boxlore.core.statements import Kind
from boxlore.exports.bag import Staged
from boxlore.tasks.archive.scans_as_handed import Changed, Cleaned, HandedScans
from boxlore.tasks.archive.sittings_held import not_to_be_heard, sittings_held
from boxlore.tasks.archive.transfer_updates import Earlier
from boxlore.tasks.collection.gate import Gate
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.progress import QUIET, Progress, go_on
from boxlore.tasks.collection.records_for_outputs import (
    EVERYTHING,
    AudienceView,
    Selection,
)
from boxlore.tasks.people.evidence_for_outputs import NOTHING, WorkedOutFor, worked_out_for

ALL_WANTED = Selection(wanted=True)
MOST_HELD = 5_000
"""Items of which the records of a part are held in memory."""
MOST_WORKED_OUT = 20_000
"""Items up to which dates are worked out: for that all of them are held in memory together."""


@dataclass(slots=True)
class Making:
    """One part in the making. `items` is the order of containers, and after counting the items of the part."""

    collection: Collection
    seen: AudienceView
    facts: CollectionFacts
    archive: Archive
    stage: Path
    earlier: Earlier | None = None
    items: list[str] = field(default_factory=list)
    selection: Selection = EVERYTHING
    """What was chosen for this transfer, or, of an update, for the one that it updates."""
    ident: str = ""
    """The identifier of the transfer."""
    made: str = ""
    """When it is made: UTC, ISO 8601."""
    holding: Extent = field(default_factory=Extent)
    """What this part is of; counted once."""
    scans: dict[str, Staged] = field(default_factory=dict)
    beside: dict[str, Path] = field(default_factory=dict)
    """Recordings and papers, by their paths below `data/`: the keeper's own files, which are copied."""
    findings: list[Finding] = field(default_factory=list)
    contents: list[tuple[str, str]] = field(default_factory=list)
    people: set[str] = field(default_factory=set)
    containers: set[ContainerPath] = field(default_factory=set)
    """What its items lie in, each box, folder or other container."""
    withheld: int = 0
    """Statements about items that this part does not have."""
    progress: Progress = QUIET
    handed_scans: HandedScans | None = None
    """In a part that takes scans: the scans as they are handed over."""
    scans_kept_back: frozenset[str] = frozenset()
    """What `scans_kept_back` says of this part: no record of it tells of these scans."""
    worked_out: WorkedOutFor = NOTHING
    """Dates that nobody has told, as they follow from the records of this part."""
    kept: dict[str, str] = field(default_factory=dict)
    """Of an update: the files that the archive has and keeps, by path, with their SHA-256."""
    has_changed: bool = True
    """Of an update: whether anything is to be said or withdrawn."""

    _held: dict[str, Record] = field(default_factory=dict)

    withdraws: bool = False
    """Of an update: whether anything of earlier transfers is to be deleted, replaced or returned."""

    @property
    def is_whole(self) -> bool:
        """Whether it is of everything, and so has the recordings, and everybody of the registry."""
        return self.selection == EVERYTHING

    @property
    def has_sittings(self) -> bool:
        """Whether recordings and papers may go: with the closed part of everything, or of all that an archive wants,
        since voices and papers name the living, and tell of more than of a choice."""
        return self.seen.to.is_closed_part and self.selection in (EVERYTHING, ALL_WANTED)

    @property
    def gate(self) -> Gate:
        """The gate of the part: the archive's own name is nobody's of the family."""
        return Gate(self.seen, (self.archive.repository,))

    @property
    def told_people(self) -> set[str] | None:
        """Those of the registry who are told of; None for everybody."""
        return None if self.is_whole else self.people

    @property
    def sittings(self) -> frozenset[str]:
        """The ids of the sittings that go: of everything all that no archive has declined, else those it wants, but for
        those in which somebody speaks who is kept from archives."""
        if not self.has_sittings:
            return frozenset()
        answers = {held.id: held.is_wanted for held in sittings_held(self.collection)}
        every = (ident for ident, _ in self.collection.store.subjects(Kind.SITTING))
        going = (None, True) if self.is_whole else (True,)
        unheard = not_to_be_heard(self.collection, self.seen.recipient)
        return frozenset(ident for ident in every if answers.get(ident) in going and ident not in unheard)

    def goes(self, path: str) -> bool:
        """Whether a scan is in this part, or in an earlier transfer that it updates."""
        return path in self.scans or path in self.kept

    def records(self, items: Sequence[str] | None = None) -> Iterator[Record]:
        """The records of the part, in the order of containers or of these `items` (ids). Raises CouldNot if the person
        asked to stop."""
        for record in self._handed_over(self.items if items is None else items):
            go_on(self.progress)
            record = self.worked_out.beside(_without_scans(record, self.scans_kept_back))
            yield self.handed_scans.record(record) if self.handed_scans else record

    def _handed_over(self, order: Sequence[str]) -> Iterator[Record]:
        """The records as the audience may see them, read once: each format asks for them again. Of very many items
        they are read each time, for they would fill the memory."""
        if self._held and all(ident in self._held for ident in order):
            yield from (self._held[ident] for ident in order)
            return
        for record in self.seen.handed_over(EVERYTHING if self.earlier else self.selection, order):
            if len(order) <= MOST_HELD:
                self._held[record.id] = record
            yield record

    def by_series(self) -> list[str]:
        """The items (ids) in the order of the keeper's own series, as far as this part may tell them, and of their
        containers within each; what is in none comes last."""
        told = {item for item, _, _ in self.collection.store.words_of(["series"])}
        in_one = [ident for ident in self.items if ident in told]
        seen = self.seen.handed_over(EVERYTHING, in_one) if in_one else ()
        keys = {record.id: series_key(series_words(record)) for record in seen}
        return sorted(self.items, key=lambda ident: keys.get(ident, series_key("")))

    def work_out_dates(self) -> None:
        """Work out the dates that nobody has told, from the records of this part alone."""
        if self.holding.items > MOST_WORKED_OUT:
            words = f"No dates were worked out: there are more than {MOST_WORKED_OUT:,} items."
            source = "our own limit"
            self.findings.append(Finding(rule="dates.many", severity=Severity.NOTE, message=words, source=source))
            return
        self.worked_out = worked_out_for(self.seen, list(self.records()), is_whole=self.is_whole)

    def not_as_taken_in(self) -> Iterator[tuple[str, Cleaned | Changed]]:
        """(scan id, how it goes) of each scan that is not handed over as it was at its intake."""
        if self.handed_scans is not None:
            handed: dict[str, Cleaned | Changed] = {**self.handed_scans.cleaned, **self.handed_scans.changed}
            yield from handed.items()

    def open(self, path: str, words: str) -> BinaryIO:
        """A new file of the part, noted in its table of contents."""
        target = self.stage / path
        target.parent.mkdir(parents=True, exist_ok=True)
        if words:
            self.contents.append((f"data/{path}", words))
        return open(target, "wb")

    def put(self, path: str, words: str, pieces: Iterable[bytes]) -> None:
        with self.open(path, words) as out:
            out.writelines(pieces)


def scans_kept_back(collection: Collection, seen: AudienceView) -> frozenset[str]:
    """The ids of the scans that show several items, of which one is not handed over with its scans, be it chosen or
    not: a sheet goes only where all that is on it may go."""
    items_of: dict[str, set[str]] = defaultdict(set)
    for scan, _, words in collection.store.words_of(["shows"]):
        items_of[scan].add(SHOWS_WORDS.read(words).item)
    shared = {scan: items for scan, items in items_of.items() if len(items) > 1}
    on_sheets = sorted(ident for ident in set().union(*shared.values()) if collection.store.number_of(ident))
    going = {record.id for record in seen.handed_over(EVERYTHING, on_sheets) if not record.closed_scans}
    held = set(on_sheets) - going
    return frozenset(scan for scan, items in shared.items() if items & held)


def _without_scans(record: Record, kept_back: frozenset[str]) -> Record:
    going = tuple(scan for scan in record.scans if scan.id not in kept_back)
    if going == record.scans:
        return record
    return replace(record, scans=going, closed_scans=record.closed_scans or not going, on_closed_sheet=not going)


_KEPT = "What is kept to the family or to the keeper alone: words, owners, givers and lenders, items set apart"


def _counted_kept(making: Making) -> str:
    """Of the items of a closed part: how much of them is kept back."""
    if not (making.withheld or making.holding.kept):
        return ". Of the items here nothing is kept back."
    kept = [several(making.withheld, "statement")] if making.withheld else []
    kept += [several(making.holding.kept, "item as a whole", "items as a whole")] if making.holding.kept else []
    return f". Of the items here that is: {' and '.join(kept)}."


def left_out_of(making: Making) -> list[str]:
    """What a part does not hold, as sentences: whoever makes a collection of it again must know."""
    lines = [
        f"{_KEPT}{_counted_kept(making) if making.seen.to.is_closed_part else '.'}",
        "Where boxes stand, what they are made of, and how it was decided between two answers that disagreed.",
    ]
    if next(iter(making.collection.store.tombstones()), None) is not None:
        lines.append("Words that were struck. struck.csv in the closed part says of which fields, without the words.")
    if any(words == YES_NO_WORDS.write(False) for _, _, words in making.collection.store.words_of(["wanted"])):
        lines.append("What an archive answered of the items and sittings that it does not want.")
    if making.seen.to.is_public:
        lines.append("All that names or shows people taken as living; consents, recordings and papers.")
        lines.append("What the keeper answered of names that were found: the closed part has it.")
    elif not making.has_sittings:
        lines.append(
            "Recordings, papers and chapters: they go with everything, or all that is wanted, and items were chosen."
        )
    if lacking := [words for name, words in TAKES.items() if name in USUALLY and not making.archive.wants(name)]:
        lines.append(f"What the archive has not asked for: {'; '.join(lacking)}.")
    if making.earlier:
        lines.append(
            f"{several(len(making.kept), 'file')} of earlier transfers that still belong to it: see files.csv."
        )
    return lines
