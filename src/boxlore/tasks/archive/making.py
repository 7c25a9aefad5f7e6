"""One part of a transfer in the making: what it is of, what it holds so far, and what it will not hold."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from pathlib import Path
from typing import BinaryIO

from boxlore.core.crosswalk.dublin_core import CollectionFacts
from boxlore.core.crosswalk.extent import Extent
from boxlore.core.crosswalk.receiving_archive import TAKES, USUALLY, Archive
from boxlore.core.findings import Finding, several
from boxlore.core.records.item_record import Record
from boxlore.exports.bag import Staged
from boxlore.tasks.archive.scans_as_handed import HandedScans
from boxlore.tasks.archive.transfer_updates import (
    Earlier,
)
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.progress import QUIET, Progress, go_on
from boxlore.tasks.collection.records_for_outputs import (
    EVERYTHING,
    AudienceView,
    Selection,
)


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
    scans: dict[str, Staged] = field(default_factory=dict)
    beside: dict[str, Path] = field(default_factory=dict)
    """Recordings and papers, by their paths below `data/`: the keeper's own files, which are copied."""
    findings: list[Finding] = field(default_factory=list)
    contents: list[tuple[str, str]] = field(default_factory=list)
    people: set[str] = field(default_factory=set)
    progress: Progress = QUIET
    handed_scans: HandedScans | None = None
    """In a part that takes scans: the scans as they are handed over."""
    kept: dict[str, str] = field(default_factory=dict)
    """Of an update: the files that the archive has and keeps, by path, with their SHA-256."""
    has_changed: bool = True
    """Of an update: whether anything is to be said or withdrawn."""

    @property
    def is_whole(self) -> bool:
        """Whether it is of everything, and so has the recordings, and everybody of the registry."""
        return self.selection == EVERYTHING

    def goes(self, path: str) -> bool:
        """Whether a scan is in this part, or in an earlier transfer that it updates."""
        return path in self.scans or path in self.kept

    def records(self) -> Iterator[Record]:
        """The records of the part. Raises CouldNot if the person asked to stop."""
        for record in self.seen.handed_over(EVERYTHING if self.earlier else self.selection, self.items):
            go_on(self.progress)
            yield self.handed_scans.record(record) if self.handed_scans else record

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


def left_out_of(making: Making) -> list[str]:
    """What a part does not hold, as sentences: whoever makes a collection of it again must know."""
    lines = [
        "What is kept to the family or to the keeper alone: words, owners, givers and lenders, items set apart.",
        "Words that were struck. struck.csv in the closed part says of which fields, without the words.",
        "Where boxes stand, what they are made of, and how it was decided between two answers that disagreed.",
    ]
    if making.seen.to.is_public:
        lines.append("All that names or shows people taken as living; consents, recordings and papers.")
    elif not making.is_whole:
        lines.append("Recordings, papers and chapters: they go with a transfer of everything, and items were chosen.")
    if lacking := [words for name, words in TAKES.items() if name in USUALLY and not making.archive.wants(name)]:
        lines.append(f"What the archive has not asked for: {'; '.join(lacking)}.")
    if making.earlier:
        lines.append(
            f"{several(len(making.kept), 'file')} of earlier transfers that still belong to it: see files.csv."
        )
    return lines
