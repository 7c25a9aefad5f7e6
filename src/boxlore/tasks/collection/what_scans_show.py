"""What one scan shows: its items, each with the statement that says so."""

from collections.abc import Iterator

from boxlore.core.fields.pictures import SHOWS_WORDS, Shows
from boxlore.core.statements import Kind, Statement, Subject
from boxlore.tasks.collection.opening import Collection


def shown_by(collection: Collection, scan: str) -> Iterator[tuple[Statement, Shows]]:
    """Each item that a scan shows, in the order of the log; words that are none of a showing are left out."""
    for statement, _ in collection.store.statements(Subject(Kind.SCAN, scan)):
        shows = SHOWS_WORDS.or_none(statement.words) if statement.field == "shows" else None
        if shows is not None:
            yield statement, shows
