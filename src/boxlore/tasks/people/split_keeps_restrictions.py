"""Parting opens nothing: what was closed of one person stays closed for each that is made of it.

Whoever keeps a person to the family, or notes that a consent is withdrawn, sees one entry, however many stand behind
it. When these are parted again nobody can tell whom it was said of, so that it is said of each.
"""

from collections.abc import Iterable, Mapping
from datetime import date
from functools import reduce

from boxlore.core.people.consent import Consent
from boxlore.core.people.person import Person, build_person
from boxlore.core.records.audience_levels import stricter
from boxlore.core.statements import Kind, Reading, Statement, Subject
from boxlore.tasks.collection.opening import Act, Collection

ToldRow = tuple[Statement, Reading | None]


def is_restriction(statement: Statement, reading: Reading | None) -> bool:
    """Whether a statement of a person closes something: an audience that is not anyone, or a withdrawn consent.

    A consent that cannot be read counts as a withdrawal.
    """
    if statement.field == "audience":
        return statement.words.strip() != "anyone"
    value = reading.value if reading is not None else None
    return statement.field == "consent" and not (isinstance(value, Consent) and value.given)


def restrict(act: Act, subject: Subject, rows: Iterable[ToldRow], own: str = "anyone") -> None:
    """Say the restrictions among `rows` of a person too, whose audience is `own` so far; the stricter one holds."""
    restrictions = [(statement, reading) for statement, reading in rows if is_restriction(statement, reading)]
    audiences = [statement.words for statement, _ in restrictions if statement.field == "audience"]
    strictest = _strictest([own, *audiences], act.collection.clock.today())
    if strictest != own:
        act.state(subject, "audience", strictest, audience="keeper")
    for statement, reading in restrictions:
        if statement.field == "consent":
            copy = act.state(
                subject, "consent", statement.words, audience=statement.audience, sitting=statement.sitting
            )
            act.readings += [(copy.id, reading)] if reading is not None else []


def _strictest(audiences: Iterable[str], on_day: date) -> str:
    return reduce(lambda first, second: stricter(first, second, on_day), audiences)


def restrict_each(collection: Collection, person: Person) -> None:
    """Before the merging is taken back: say of each entry what was closed while it was one with the entry told of."""
    rows_of = {ident: collection.store.statements(Subject(Kind.PERSON, ident)) for ident in person.ids}
    merged = {
        ident: (statement.words.strip(), statement.recorded_at)
        for ident, rows in rows_of.items()
        for statement, _ in rows
        if statement.field == "merged_into"
    }
    act = collection.act(f"what was closed of {person.name} stays closed")
    for ident in person.ids:
        told_while_one = [
            (statement, reading)
            for entry in person.ids
            if entry != ident
            for statement, reading in rows_of[entry]
            if statement.recorded_at >= _one_since(ident, entry, merged)
        ]
        restrict(act, Subject(Kind.PERSON, ident), told_while_one, build_person(ident, rows_of[ident]).audience)
    act.done()


def _one_since(ident: str, entry: str, merged: Mapping[str, tuple[str, str]]) -> str:
    """When two entries became one: the time of the latest merging on the way from one to the other."""
    ways = [_way(entry, merged) for entry in (ident, entry)]
    shared = next((entry for entry in ways[0] if entry in ways[1]), "")
    return max(ways[0].get(shared, ""), ways[1].get(shared, ""))


def _way(ident: str, merged: Mapping[str, tuple[str, str]]) -> dict[str, str]:
    """The entries that one was merged into, one after the other, each with the time of the latest merging so far."""
    since = {ident: ""}
    entry, latest = ident, ""
    while entry in merged and merged[entry][0] not in since:
        entry, at = merged[entry]
        latest = max(latest, at)
        since[entry] = latest
    return since
