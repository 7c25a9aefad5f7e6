"""What of a collection does not go into a parcel for the family: rows of the log, by who may see them.

A row goes only if everything says yes: its own audience, the item or thing that it is about, what the keeper has kept
of one field of that, and every name in its words. Of an item that is kept from the family as a whole nothing goes, its
number, scans and markers neither; of one whose scans are closed to it, the scans and their markers do not; nor does a
scan that shows no item, of which nobody can say who may see it. What is no longer in force stays at home: earlier words
may say what later ones were to put right. The line of an act goes only if nothing that the act touched stays behind.
"""

from collections.abc import Iterator, Sequence, Set
from dataclasses import dataclass, field

from boxlore.core.records.audience import Recipient
from boxlore.core.records.audience_levels import To
from boxlore.core.records.item_record import every_told
from boxlore.core.statements import Kind, Subject
from boxlore.store.left_out import LeftOut, every_line, every_row, touched_by, with_what_repeats_them
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.records_for_outputs import records, seen_by


@dataclass(slots=True)
class _Kept:
    """What the family does not have: ids of things of which no row goes, and of statements; and, by item, what the
    keeper has kept of it to whom."""

    things: set[str] = field(default_factory=set)
    statements: set[str] = field(default_factory=set)
    audiences: dict[str, tuple[str, ...]] = field(default_factory=dict)


def left_out_for_family(collection: Collection) -> LeftOut:
    """The rows of the log that the family may not see, and what may repeat them or names whom it may not."""
    recipient = seen_by(collection, To.FAMILY).recipient
    kept = _kept_of_items(collection, recipient)
    log = collection.store.db
    lines = [act for act, line in every_line(log) if not recipient.may_read(line)]
    return with_what_repeats_them(log, list(_rows_out(collection, recipient, kept)), lines)


def left_out_of_rows(collection: Collection, rows: Set[str], acts: Set[str]) -> LeftOut:
    """The same of these rows and acts alone: only the items that they are about, and those that the acts touched, are
    looked at. Scans and markers are
    decided for all of an item, so that where there are any, everything is."""
    log = collection.store.db
    rows = rows | touched_by(log, acts)
    about = {(kind, subject) for _, kind, subject, *_ in every_row(log, rows)}
    if any(kind in (Kind.SCAN, Kind.MARKER) for kind, _ in about):
        return left_out_for_family(collection)
    recipient = seen_by(collection, To.FAMILY).recipient
    kept = _kept_of_items(collection, recipient, sorted(subject for kind, subject in about if kind == Kind.ITEM))
    lines = [act for act, line in every_line(log) if act in acts and not recipient.may_read(line)]
    return with_what_repeats_them(log, list(_rows_out(collection, recipient, kept, rows)), lines)


def _kept_of_items(collection: Collection, recipient: Recipient, items: Sequence[str] | None = None) -> _Kept:
    kept, shown = _Kept(), set[str]()
    for record in records(collection, order=items):
        seen = recipient.seen(record)
        scans = {scan.id for scan in record.scans}
        if not recipient.may_see_kept(record.audiences):
            kept.things |= {record.id, *scans}
        elif seen.closed_scans:
            kept.things |= scans
        kept.audiences[record.id] = tuple(record.audiences)
        # what goes to others without a name stays here: its row has the name
        goes_as_it_is = {view.statement: view for view in every_told(seen)}
        kept.statements |= {
            view.statement for view in every_told(record) if goes_as_it_is.get(view.statement) != view
        }  # fmt: skip
        shown |= scans
    kept.things |= {scan for scan, _ in collection.store.scans()} - shown
    of_scans = collection.store.words_of(["scan"])
    kept.things |= {marker for marker, _, scan in of_scans if scan in kept.things}
    return kept


def _rows_out(collection: Collection, recipient: Recipient, kept: _Kept, rows: Set[str] | None = None) -> Iterator[str]:
    """The id of each row that does not go."""
    for row, kind, subject, name, words, source, audience, is_past, meant in every_row(collection.store.db, rows):
        about = Subject(Kind(kind), subject)
        told = "" if about.kind is Kind.SCAN else words  # what a scan's file says is decided for the scan as a whole
        beside = (source, *(meant or "").split())
        if (
            is_past
            or row in kept.statements
            or subject in kept.things
            or not recipient.may_have_row(about, name, told, audience, beside, kept.audiences.get(subject, ()))
        ):
            yield row
