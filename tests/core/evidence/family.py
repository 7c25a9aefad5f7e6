"""Records and statements of the invented family, made short for the tests of clues."""

from collections.abc import Iterable

from boxlore.core.dates import phrases
from boxlore.core.evidence.claims import of_item
from boxlore.core.evidence.even_years import first_day, last_day
from boxlore.core.evidence.gathering import all_clues
from boxlore.core.evidence.lives import ToldOfPerson
from boxlore.core.evidence.working_out import WorkedOut
from boxlore.core.people.person import Person, Registry
from boxlore.core.people.reference import PersonRef
from boxlore.core.records.events import FamilyEvent
from boxlore.core.records.item_record import Conflict, PersonShown, Record, Related, StatementView
from boxlore.core.statements import KEEPER, ReadingValue, Said, Source, Sure

BACK = Source(Said.INSCRIPTION, "verso")
LEIDA = Source(Said.NARRATOR, "leida")


def told(
    field: str, words: str, *, source: Source = KEEPER, sure: Sure = Sure.SURE, value: ReadingValue | None = None
) -> StatementView:
    if field == "date" and value is None:
        value = phrases.read(words)
    return StatementView(
        statement=f"{field} {words}", field=field, words=words, language="en", source=source,
        said_by="Leida Rourke" if source is LEIDA else "", sure=sure, audience="anyone", recorded_at="", value=value,
    )  # fmt: skip


def shown(name: str, *, source: Source = KEEPER, words: str = "", role: str = "person") -> PersonShown:
    known = "" if role == "photographer" else name
    return PersonShown(told=told("person", words or name, source=source), name=name, person=known, role=role)


def item(
    ident: str, *views: StatementView, people: Iterable[PersonShown] = (), kind: str = "print",
    related: tuple[Related, ...] = (), disputed: bool = False, undecided: bool = False,
) -> Record:  # fmt: skip
    rows: dict[str, tuple[StatementView, ...]] = {}
    for view in views:
        rows[view.field] = (*rows.get(view.field, ()), view)
    dates = (Conflict("date", rows.get("date", ()), "the dates differ"),)
    return Record(
        id=ident, number=ident.upper(), kind=kind, told=rows, people=tuple(people), related=related,
        conflicts=dates if disputed else (), undecided=dates if undecided else (),
    )  # fmt: skip


def person(name: str, *, died: str = "", married: tuple[str, ...] = (), surnames: tuple[str, ...] = ()) -> Person:
    return Person(
        id=name, name=name, sort_name=name, forms=(name,), calls=(name,), died=phrases.read(died) if died else None,
        married=tuple(map(phrases.read, married)), surnames=surnames,
    )  # fmt: skip


def row(who: str, field: str, words: str, sure: Sure = Sure.SURE) -> ToldOfPerson:
    value = PersonRef(words) if field in ("father", "mother") else phrases.read(words)
    return ToldOfPerson(person=who, field=field, words=words, value=value, source="Leida Rourke", sure=sure)


def worked_out(
    records: list[Record],
    people: Iterable[Person] = (),
    rows: Iterable[ToldOfPerson] = (),
    happened: Iterable[FamilyEvent] = (),
) -> WorkedOut:
    return WorkedOut(all_clues(records, Registry(people), list(rows), happened))


def days(worked: WorkedOut, day: str) -> str:
    """`1921-03-01 1926-12-31`, with a dash for no bound."""
    bounds = zip(worked.bounds(day), (first_day, last_day), strict=True)
    return " ".join("-" if number is None else str(meant(number)) for number, meant in bounds)


def days_of(worked: WorkedOut, ident: str) -> str:
    return days(worked, of_item(ident))
