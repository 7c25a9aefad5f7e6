"""What archives have remarked, and what the family answers: `metadata/remarks.csv` of a closed part.

A remark comes back by a receipt or with the answer to an offer, and is asked about until somebody answers it (`boxlore
tell ITEM archive_answer TEXT`), or tells of the item what was asked. Both go with the next update: the answer in its
words, and of all else that has been told since in which field. Remarks are the keeper's and the archive's own, so that
no open part has them, and what is kept from archives is in no answer either.
"""

from collections.abc import Iterable, Iterator, Mapping, Sequence

from boxlore.core.fields.table import FIELDS
from boxlore.core.findings import one_line
from boxlore.core.records.in_force import told_of
from boxlore.core.records.item_record import ANSWER, REFERENCE, REMARK, Record, StatementView, every_told
from boxlore.core.statements import Kind, Subject
from boxlore.tasks.archive.making import Making
from boxlore.tasks.archive.restrictions import restrictions_on
from boxlore.tasks.archive.transfer_updates import URN

REMARKS = "metadata/remarks.csv"
COLUMNS = ("Number", "Identifier", "Remark", "Of", "Noted", "Answer", "Answered", "Told since")


def answers_of_items(making: Making) -> Mapping[str, Sequence[StatementView]]:
    """What this part has of answers to remarks on items, by the ids of these."""
    items = dict.fromkeys(item for item, _, _ in making.collection.store.words_of([ANSWER]))
    going = {item: _going(making, Subject(Kind.ITEM, item)) for item in items}
    return {item: [view for view in views if view.field == ANSWER] for item, views in going.items()}


def remark_rows(making: Making) -> Iterator[Sequence[str]]:
    """The heading, and a row for each remark that archives have made, those of the whole first, then item by item;
    what is answered without a remark has one too."""
    yield COLUMNS
    told = {subject for subject, _, _ in making.collection.store.words_of([REMARK, ANSWER])}
    yield from _rows("", f"{URN}{making.collection.id}", _going(making, Subject(Kind.COLLECTION, making.collection.id)))
    for sitting in sorted(told.intersection(making.sittings)):
        yield from _rows("", f"{URN}{sitting}", _going(making, Subject(Kind.SITTING, sitting)))
    for ident, path in sorted(making.collection.store.containers(), key=lambda one: one[1]):
        if ident in told and path in making.containers:
            yield from _rows("", f"{URN}{ident}", _going(making, Subject(Kind.CONTAINER, ident)))
    for record in making.records([item for item in making.items if item in told]):
        going = _going(making, Subject(Kind.ITEM, record.id))
        yield from _rows(record.number, f"{URN}{record.id}", going, record)


def _rows(
    number: str, ident: str, views: Iterable[StatementView], record: Record | None = None
) -> Iterator[Sequence[str]]:
    by_time = sorted((view for view in views if view.field in (REMARK, ANSWER)), key=lambda view: view.recorded_at)
    remarks = [view for view in by_time if view.field == REMARK]
    answers = [view for view in by_time if view.field == ANSWER]
    unasked = [view for view in answers if not remarks or view.recorded_at < remarks[0].recorded_at]
    for remark in remarks:
        own = [view for view in answers if view.recorded_at >= remark.recorded_at]
        since = _told_since(record, remark.recorded_at) if record else ""
        noted = one_line(remark.words), remark.source.ref, remark.recorded_at[:10]
        yield number, ident, *noted, *_answered(own), since
    if unasked:
        yield number, ident, "", "", "", *_answered(unasked), ""


def _answered(answers: Sequence[StatementView]) -> tuple[str, str]:
    return "; ".join(one_line(view.words) for view in answers), answers[-1].recorded_at[:10] if answers else ""


def _told_since(record: Record, when: str) -> str:
    """`Who; When`: the fields in which anything was told of an item since, but for what the archive calls it."""
    since = (view for view in every_told(record) if view.recorded_at > when and view.field != REFERENCE)
    return "; ".join(dict.fromkeys(FIELDS[view.field].label for view in since))


def _going(making: Making, about: Subject) -> list[StatementView]:
    """What goes of the keeper's own statements about a thing."""
    rows = making.collection.store.statements(about)
    people = making.collection.people().names()
    kept = {view.statement for view in restrictions_on(making.seen, about, rows)}
    return [told_of(statement, None, people) for statement, _ in rows if statement.id in kept]
