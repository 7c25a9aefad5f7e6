"""Chapters of the sittings' recordings for one part of a transfer, as its audience may see them.

W3C WebVTT, chapter cues: one to each item that was out. An item that is kept back from the part stands by its number
alone; words that hold a name that is withheld from it leave the whole file out.
"""

from collections.abc import Container, Iterator
from pathlib import Path

from boxlore.core.records.item_record import Record
from boxlore.core.sitting.time_log import Recording
from boxlore.exports.webvtt import write_chapters
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.records_for_outputs import AudienceView, Selection
from boxlore.tasks.sitting.recordings import of_sitting, sittings
from boxlore.tasks.sitting.time_log import SittingLog, chapters_of, read_log


def chapter_files(collection: Collection, seen: AudienceView, going: Container[str]) -> Iterator[tuple[str, str]]:
    """(name of the file, its text) for each recording of each sitting (ids) that is `going`, in which an item was
    out."""
    numbers = {ident: number for number, ident in collection.store.items()}
    taken: set[str] = set()
    for sitting, _ in sittings(collection):
        if sitting not in going or not of_sitting(collection, sitting):
            continue
        log = read_log(collection, sitting)
        records = _shown(seen, log, numbers)
        for recording in log.recordings:
            chapters = list(chapters_of(log, recording, records, seen.recipient))
            if not chapters:
                continue
            name = _name(recording, taken)
            taken.add(name)
            yield name, write_chapters(chapters, f"Chapters of {Path(recording.path).name}, item by item.")


def _shown(seen: AudienceView, log: SittingLog, numbers: dict[str, str]) -> dict[str, Record]:
    """The items that were out, as that audience may see them."""
    wanted = tuple(numbers[ident] for ident in dict.fromkeys(out.item for out in log.outs) if ident in numbers)
    return {record.id: record for record in seen.handed_over(Selection(items=wanted))} if wanted else {}


def _name(recording: Recording, taken: set[str]) -> str:
    """`sitting-1.chapters.vtt`; two recordings that differ by their kind alone are told apart by it."""
    path = Path(recording.path)
    name = f"{path.stem}.chapters.vtt"
    return f"{path.name}.chapters.vtt" if name in taken else name
