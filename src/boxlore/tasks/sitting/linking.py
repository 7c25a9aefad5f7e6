"""What ties one thing to others: the same people, day or place; relations between items; stories of no picture.

Each is one act, so that one undo takes all of it back.
"""

from collections.abc import Mapping, Sequence
from dataclasses import replace

from boxlore.core.errors import WrongUse
from boxlore.core.fields.audiences import AUDIENCE_WORDS, KeptTo, read_audience
from boxlore.core.fields.pictures import LINK_WORDS, Link
from boxlore.core.records.item_record import Record
from boxlore.core.statements import SURENESS, Kind, Statement, Subject, Sure, fold
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import Act
from boxlore.tasks.sitting.session import Sitting
from boxlore.tasks.telling.understanding import person_reading

SAME: Mapping[str, tuple[str, ...]] = {
    "people": ("person",),
    "day": ("date",),
    "place": ("place",),
    "occasion": ("occasion",),
    "photographer": ("photographer",),
    "all of these": ("person", "date", "place", "occasion", "photographer"),
}
"""What can be said to be the same as for another item."""

RELATIONS: Mapping[str, str] = {
    "same_picture": "Same picture as",
    "print_from": "Print from the negative",
    "negative_of": "Negative of",
    "detail_of": "Detail of",
    "attached_to": "Was attached to",
    "same_day": "Same day as",
}
"""Kinds of relation between items (DESIGN: relation), as they are said of the item that is out."""

BACKWARDS: Mapping[str, str] = {
    "print_from": "Print made from it:",
    "negative_of": "Its negative:",
    "detail_of": "Detail of it:",
    "attached_to": "Was attached to it:",
}
"""The same, said from the other end."""


def same_as(sitting: Sitting, records: Sequence[Record], model: Record, what: str) -> int:
    """The same people, day or place as another item, for these items. Returns how many statements were made."""
    act = sitting.collection.act(f"same {what} as {model.number}")
    for record in records:
        if record.id != model.id:
            _same(sitting, act, record, model, what)
    if not act.statements:
        whom = records[0].number if len(records) == 1 else "these"
        raise WrongUse(f"{model.number} has no {what} that {whom} has not.")
    sitting.finish(act, records[-1].id)
    return len(act.statements)


def _same(sitting: Sitting, act: Act, record: Record, model: Record, what: str) -> None:
    have = {fold(shown.name) for shown in record.shown()}
    for name in SAME[what]:
        if name == "person":
            for shown in model.shown():
                if fold(shown.name) not in have:
                    _say(sitting, act, record, name, shown.name, shown.sure, shown.person)
        else:
            already = {view.words for view in record.all(name)}
            for view in model.rests_on(name):
                if view.words not in already:
                    _say(sitting, act, record, name, view.words, view.sure)


def _say(sitting: Sitting, act: Act, record: Record, name: str, words: str, sure: Sure, person: str = "") -> None:
    """One statement, no surer than it was `sure` there; for somebody known, the person is meant and nobody new is
    made."""
    subject = Subject(Kind.ITEM, record.id)
    telling = replace(sitting.telling, sure=min(sure, sitting.telling.sure, key=SURENESS.__getitem__))
    if not person:
        sitting.teller.add(act, subject, name, words, telling)
        return
    statement = sitting.teller.add_words(act, subject, name, words, telling)
    act.readings.append((statement.id, person_reading(Subject(Kind.PERSON, person))))


def had(model: Record, what: str) -> str:
    """What another item has of one kind of SAME, in words; '' for nothing."""
    words: list[str] = []
    for name in SAME[what]:
        if name == "person":
            words += [_with_doubt(shown.name, shown.sure) for shown in model.shown()]
        else:
            words += [_with_doubt(view.words, view.sure) for view in model.rests_on(name)]
    return "; ".join(words)


def _with_doubt(words: str, sure: Sure) -> str:
    return words if sure is Sure.SURE else f"{words} ({sure})"


OF_ALL = (
    "occasion", "date", "place", "person", "photographer", "process", "enclosure", "care", "series", "note",
)  # fmt: skip
"""What can be told of many items at once."""


def say_of_all(sitting: Sitting, records: Sequence[Record], field: str, words: str) -> int:
    """The same words in one field of all these items, told by who tells now; one act. Returns how many were told.

    An item that has these words already is left as it is.
    """
    if not words.strip():
        raise WrongUse("There is nothing to keep yet.", "Write what is so of all of them.")
    act = sitting.collection.act(f"{field}: {words.strip()[:40]}, of {len(records)}")
    for record in records:
        if fold(words.strip()) not in {fold(view.words) for view in record.all(field)}:
            sitting.teller.add(act, Subject(Kind.ITEM, record.id), field, words, sitting.telling)
    count = sum(1 for statement in act.statements if statement.field == field)
    if not count:
        raise WrongUse("All of them say that already.")
    sitting.finish(act, records[-1].id)
    return count


def keep_all_to(sitting: Sitting, records: Sequence[Record], audience: str) -> int:
    """Keep all these items to an audience; one act. Returns how many there were."""
    words = AUDIENCE_WORDS.write(KeptTo(read_audience(audience)))
    act = sitting.collection.act(f"{len(records)} for {audience}")
    for record in records:
        subject = Subject(Kind.ITEM, record.id)
        before = [
            said.id
            for said, _ in sitting.collection.store.statements(subject)
            if said.field == "audience" and (stood := AUDIENCE_WORDS.or_none(said.words)) and not stood.field
        ]
        act.state(subject, "audience", words, audience="keeper", replaces=before[-1] if before else "")
    sitting.finish(act, records[-1].id)
    return len(records)


def relate(sitting: Sitting, record: Record, number_or_mark: str, kind: str) -> str:
    """Say how the item is related to another, given by number or mark. Returns the other's number."""
    related = find_item(sitting.collection, number_or_mark)
    if related.id == record.id:
        raise WrongUse(f"{record.number} cannot be related to itself.", "Give the number of another item.")
    number = sitting.record(related.id).number
    if any(relation.kind == kind and relation.number == number and not relation.reverse for relation in record.related):
        raise WrongUse(f"That is said of {record.number} and {number} already.")
    act = sitting.collection.act(f"{RELATIONS[kind].lower()} {number}")
    act.state(act.new(Kind.RELATION), "link", LINK_WORDS.write(Link(record.id, related.id, kind)), sitting=sitting.id)
    sitting.finish(act, record.id)
    return number


def related_lines(record: Record) -> list[str]:
    """The relations of an item in words."""
    lines = []
    for relation in record.related:
        names = BACKWARDS if relation.reverse else RELATIONS
        lines.append(f"{names.get(relation.kind, RELATIONS.get(relation.kind, relation.kind))} {relation.number}")
    return lines


ABOUT: Mapping[str, Kind] = {
    "person": Kind.PERSON,
    "event": Kind.EVENT,
    "place": Kind.PLACE,
    "sitting": Kind.SITTING,
}


def is_known(sitting: Sitting, kind: str, name: str) -> bool:
    """Whether somebody or something of this kind is called so here. Raises WrongUse for no name, and for several."""
    return bool(_called(sitting, ABOUT[kind], name.strip()))


def story_about(sitting: Sitting, kind: str, name: str, words: str, item: str) -> Statement:
    """A story that belongs to no picture: of a person, an event, a place (by name), or of this sitting.

    Somebody or something not known yet is made. `item` is what is out, for looking there after an undo.
    """
    if not words.strip():
        raise WrongUse("There is no story yet.", "Write what was told.")
    act = sitting.collection.act(f"story: {words.strip()[:40]}")
    subject = _subject(sitting, act, ABOUT[kind], name.strip())
    story = sitting.teller.add(act, subject, "story", words, sitting.telling)
    sitting.finish(act, item)
    return story


def _subject(sitting: Sitting, act: Act, kind: Kind, name: str) -> Subject:
    if kind is Kind.SITTING:
        if not sitting.id:
            raise WrongUse("No sitting with a teller has begun.", "Begin one first: Esc, then “This sitting”.")
        return Subject(kind, sitting.id)
    if ident := _called(sitting, kind, name):
        return Subject(kind, ident)
    new_subject = act.new(kind)
    act.state(new_subject, "name", name, source=sitting.source, sitting=sitting.id, moment=sitting.moment)
    return new_subject


def _called(sitting: Sitting, kind: Kind, name: str) -> str:
    """The id of the one of this kind that is called so; '' for none. Raises WrongUse for several."""
    if not name:
        raise WrongUse("It is not said about whom or what.", "Write a name.")
    if kind is Kind.PERSON:
        person = sitting.teller.understanding.person_called(name)
        return person.id if person else ""
    idents = [ident for ident, names in _named(sitting, kind) if fold(name) in names]
    if len(idents) > 1:
        raise WrongUse(f"{len(idents)} are called {name}.", "Write the name in full.")
    return idents[0] if idents else ""


def _named(sitting: Sitting, kind: Kind) -> list[tuple[str, set[str]]]:
    return [
        (ident, {fold(statement.words) for statement, _ in rows if statement.field in ("name", "called_then")})
        for ident, rows in sitting.collection.store.subjects(kind)
    ]
