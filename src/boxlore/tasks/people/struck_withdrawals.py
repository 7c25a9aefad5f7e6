"""A strike opens nothing: what a struck withdrawal of a consent closed stays closed, without its words."""

from collections.abc import Container, Iterable

from boxlore.core.people.consent import Consent, Matter, allowed
from boxlore.core.statements import Kind, Reading, Statement, Subject
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.people.registry import CONSENT_READER


def keep_closed(collection: Collection, struck: Container[str]) -> None:
    """Before statements (ids) are struck: note anew, of nobody's name, whatever would be allowed again without them."""
    for person in [person for person in collection.people().values() if person.consents]:
        rows = [row for ident in person.ids for row in collection.store.statements(Subject(Kind.PERSON, ident))]
        told = sorted((row for row in rows if row[0].field == "consent"), key=lambda row: row[0].recorded_at)
        if not any(statement.id in struck for statement, _ in told):
            continue
        left = [row for row in told if row[0].id not in struck]
        if reopened := allowed(_consents(left)) - allowed(_consents(told)):
            day = collection.clock.today().isoformat()
            withdrawn = Consent(given=False, matters=reopened, day=day)
            act = collection.act("what was withdrawn stays so")
            words = f"withdrawn, as a struck statement said, {day}: {', '.join(sorted(reopened))}"
            kept = act.state(Subject(Kind.PERSON, person.id), "consent", words, audience="keeper")
            act.readings.append((kept.id, Reading("consent", withdrawn, CONSENT_READER, confirmed=True)))
            act.done()


def _consents(rows: Iterable[tuple[Statement, Reading | None]]) -> list[Consent]:
    read = [reading.value for _, reading in rows if reading is not None and reading.kind == "consent"]
    all_withdrawn = Consent(given=False, matters=frozenset(Matter), day="")
    return [value if isinstance(value, Consent) else all_withdrawn for value in read]
