"""What one scan shows: its items, each with the statement that says so; and what an item had before its scans."""

from collections.abc import Iterator

from boxlore.core.fields.pictures import EARLIER, FILE_WORDS, SHOWS_WORDS, Shows
from boxlore.core.records.item_record import Record
from boxlore.core.statements import Kind, Statement, Subject
from boxlore.tasks.collection.opening import Collection


def shown_by(collection: Collection, scan: str) -> Iterator[tuple[Statement, Shows]]:
    """Each item that a scan shows, in the order of the log; words that are none of a showing are left out."""
    for statement, _ in collection.store.statements(Subject(Kind.SCAN, scan)):
        shows = SHOWS_WORDS.or_none(statement.words) if statement.field == "shows" else None
        if shows is not None:
            yield statement, shows


def earlier_files(collection: Collection, record: Record) -> list[str]:
    """The paths of the files in whose place those of an item's scans came; that of a sheet, where the item has a scan
    of its own now. None of them was deleted by us."""
    now = {scan.path for scan in record.scans}
    scans = [scan.id for scan in record.scans]
    scans += [scan for scan, shows in collection.store.showing(record.id) if shows.role == EARLIER]
    files = (
        FILE_WORDS.or_none(past.statement.words) for scan in scans for past in collection.store.history(scan, "file")
    )
    return list(dict.fromkeys(file.path for file in files if file and file.path not in now))
