"""What an archive must know beside what was told: who may see what and until when, consents, who stands where.

These statements are the keeper's own, and no output for a reader has them. The closed part of a transfer does: the
archive that holds it must know what it may do, and a collection made again from it must keep closed what was closed.
So the keeper's answers about names go too, which say by a digest where a name stands: what she hid stays hidden there.
And what is still asked of who is meant goes, so that nobody takes it for settled.
"""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import replace

from boxlore.core.fields.name_answers import NAMING_WORDS
from boxlore.core.fields.pictures import ROW_WORDS
from boxlore.core.fields.table import FIELDS
from boxlore.core.records.in_force import told_of
from boxlore.core.records.item_record import ANSWER, REMARK, StatementView
from boxlore.core.records.people_asked import asked_by, is_in_a_remark
from boxlore.core.statements import Kind, Statement, Subject, Sure
from boxlore.exports.rdf import annotation
from boxlore.exports.rdf_terms import urn
from boxlore.store.rows import ToldRow
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.records_for_outputs import AudienceView

GOING: Mapping[Kind, frozenset[str]] = {
    Kind.ITEM: frozenset({"audience", "row", REMARK, ANSWER}),
    Kind.CONTAINER: frozenset({REMARK}),
    Kind.COLLECTION: frozenset({REMARK, ANSWER}),
    Kind.PERSON: frozenset({"audience", "consent", "merged_into", "different"}),
    Kind.PLACE: frozenset({"inside"}),
    Kind.SITTING: frozenset({REMARK, ANSWER, "paper"}),
}
"""Fields that go with the closed part, by kind of thing."""


def restrictions_on(seen: AudienceView, about: Subject, rows: Iterable[ToldRow]) -> list[StatementView]:
    """The keeper's statements about one thing that go to the archive with it; none in the open part."""
    if not seen.to.is_closed_part:
        return []
    rows = list(rows)
    by_id = {statement.id: statement for statement, _ in rows}
    return [told_of(statement, reading, {}) for statement, reading in rows if _goes(seen, about, statement, by_id)]


def _goes(seen: AudienceView, about: Subject, statement: Statement, by_id: Mapping[str, Statement]) -> bool:
    if statement.field == "row":
        stands = ROW_WORDS.or_none(statement.words)
        person = by_id.get(stands.statement) if stands else None
        return person is not None and seen.recipient.may_be_told(told_of(person, None, {}), about)
    if statement.field == "naming":
        return _is_answered_of_what_goes(seen, about, statement, by_id.values())
    if statement.field == "asked" and about.kind is Kind.ITEM:
        return _asks_of_what_goes(seen, about, statement, by_id.values())
    if _stands_in_a_row(statement, by_id.values()):
        return seen.recipient.may_be_told(told_of(statement, None, {}), about)
    return statement.field in GOING.get(about.kind, ()) and seen.recipient.may_read(statement.words)


def _asks_of_what_goes(seen: AudienceView, about: Subject, question: Statement, rows: Iterable[Statement]) -> bool:
    """Whether a question goes: one that asks whom told words mean, where these go. All else that is to be asked is the
    keeper's."""
    told = [told_of(row, None, {}) for row in rows if FIELDS[row.field].reads == "person"]
    words = question.words
    asked = [view for view in told if asked_by(words, view.words) or is_in_a_remark(words, view.words)]
    goes = [seen.recipient.may_be_told(view, about) for view in asked]
    return bool(goes) and all(goes) and seen.recipient.may_read(words)


def _is_answered_of_what_goes(
    seen: AudienceView, about: Subject, statement: Statement, rows: Iterable[Statement]
) -> bool:
    """Whether an answer about a name goes: where the thing itself does, and all that is told in the field that the
    answer is about. Of words that stay with the family no archive has a digest."""
    decision = NAMING_WORDS.or_none(statement.words)
    if decision is None:
        return False
    answer = replace(told_of(statement, None, {}), audience="anyone")  # the keeper's own, and it goes with the thing
    views = [answer, *(told_of(row, None, {}) for row in rows if row.field == decision.where)]
    return all(seen.recipient.may_be_told(view, about) for view in views)


def _stands_in_a_row(statement: Statement, by_id: Iterable[Statement]) -> bool:
    """Whether it says of a place in a row that nobody knows who stands there: no record tells such a statement."""
    if statement.field != "person" or statement.sure is not Sure.NOT_KNOWN:
        return False
    rows = (ROW_WORDS.or_none(row.words) for row in by_id if row.field == "row")
    return any(row is not None and row.statement == statement.id for row in rows)


def restriction_lines(collection: Collection, seen: AudienceView, items: Iterable[str]) -> Iterator[str]:
    """The annotations of these items' restrictions."""
    if seen.to.is_closed_part:
        for material in collection.store.about_items(ids=list(items)):
            about = Subject(Kind.ITEM, material.id)
            for view in restrictions_on(seen, about, material.statements):
                yield annotation(view, urn(material.id))
