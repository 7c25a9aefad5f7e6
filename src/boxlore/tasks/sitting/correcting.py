"""Changing, within a sitting, what was told before: who may see it, how sure it is, and which of several holds."""

from boxlore.core.errors import WrongUse
from boxlore.core.fields.language import language_tag
from boxlore.core.fields.table import FIELDS
from boxlore.core.records.item_record import Record, StatementView
from boxlore.core.statements import Kind, Statement, Subject, Sure
from boxlore.store.values import Settlement
from boxlore.tasks.sitting.session import Sitting
from boxlore.tasks.telling.statements import Telling
from boxlore.tasks.telling.understanding import person_reading
from boxlore.tasks.telling.undoing import Done


def change(sitting: Sitting, record: Record, view: StatementView, **what: str) -> None:
    """Keep the same words with another audience, sureness or language: a new statement replaces the old one.

    `what` gives the new values, by the names `audience`, `sure` and `language`.
    """
    how = Telling(
        source=view.source,
        sure=Sure(what.get("sure", view.sure)),
        audience=what.get("audience", view.audience),
        language=what.get("language") or language_tag(view.language),  # an older log took what is no tag
        sitting=sitting.id,
        moment=sitting.moment,
    )
    act = sitting.collection.act(f"{view.field}: noted as {', '.join(what.values())}")
    subject = statement_of(sitting, record, view).subject
    statement = sitting.teller.add(act, subject, view.field, view.words, how, replaces=view.statement)
    if view.meant:
        kind = Kind.EVENT if view.field == "occasion" else Kind.PERSON
        act.statements[:] = [statement]
        act.readings[:] = [(statement.id, person_reading(Subject(kind, view.meant)))]
    sitting.finish(act, record.id)


def statement_of(sitting: Sitting, record: Record, view: StatementView) -> Statement:
    """The statement itself: of the item, or of one of its markers. Raises WrongUse if it is no longer in force."""
    for material in sitting.collection.store.about_items(ids=(record.id,)):
        for statement, _ in (*material.statements, *(row for marker in material.markers for row in marker.statements)):
            if statement.id == view.statement:
                return statement
    raise WrongUse("That was changed meanwhile.", "Look at it again.")


def correct(sitting: Sitting, record: Record, view: StatementView, words: str) -> None:
    """Other words in place of these, by the same source, as surely and for the same audience; read anew."""
    statement = statement_of(sitting, record, view)
    if not words.strip():
        raise WrongUse("There are no words.", "Write what it should say, or erase it.")
    how = Telling(source=view.source, sure=view.sure, audience=view.audience, language=language_tag(view.language),
                  sitting=sitting.id, moment=sitting.moment)  # fmt: skip
    act = sitting.collection.act(f"{view.field}: corrected")
    typed = sitting.teller.typed(statement.subject.kind, view.field, words)
    sitting.teller.add(act, statement.subject, view.field, typed, how, replaces=view.statement)
    sitting.finish(act, record.id)


def withdraw(sitting: Sitting, record: Record, view: StatementView) -> None:
    """Take an answer back that was given at any time: it holds no more, nor does what it corrected, and the history
    keeps both. A question of the item that is done with stands in its place (`still_to_ask`)."""
    act = sitting.collection.act(f"{view.field}: taken back")
    item = Subject(Kind.ITEM, record.id)
    act.state(item, "asked", "", audience="keeper", sitting=sitting.id, replaces=view.statement)
    sitting.finish(act, record.id)


def to_settle(record: Record, name: str) -> tuple[StatementView, ...]:
    """The answers of which one is used; none where only one is told, or where the field gathers all of them."""
    views = record.all(name)
    return () if len(views) < 2 or FIELDS[name].many else views


def settle(
    sitting: Sitting,
    record: Record,
    name: str,
    views: tuple[StatementView, ...],
    chosen: str = "",
    *,
    outcome: str = "",
) -> None:
    """Keep the keeper's word on what several statements of a field say.

    Either one statement is `chosen` (its id), or none, and `outcome` is both (each may be so) or doubtful (nobody can
    say).
    """
    act = sitting.collection.clock.new_id()
    outcome = outcome or ("chosen" if chosen else "doubtful")
    settlement = Settlement(
        id=sitting.collection.clock.new_id(),
        subject=Subject(Kind.ITEM, record.id),
        field=name,
        outcome=outcome,
        weighed=tuple(view.statement for view in views),
        chosen=chosen,
    )
    sitting.steps.write(act, f"{name}: settled ({outcome})", settlements=(settlement,))
    sitting.steps.remember(Done(act, f"{name} settled", record.id))
