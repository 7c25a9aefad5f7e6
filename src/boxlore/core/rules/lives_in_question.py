"""What is worth asking while somebody tells: of those in the picture, whose life is told in ways that cannot all be so.

Outputs for outside keep back whoever may be living, and say why; the teller is the one who can answer.
"""

from collections.abc import Iterator, Mapping

from boxlore.core.findings import Finding, Severity, make_finding
from boxlore.core.people.person import Person
from boxlore.core.records.item_record import Record
from boxlore.core.records.living import births_apart, contradiction_in

OURS = "a rule of our own"


def lives_in_question(record: Record, people: Mapping[str, Person]) -> Iterator[Finding]:
    """A question for each person of the record of whom two births, a death and a life, or a death in doubt are told."""
    idents = dict.fromkeys(people[shown.person].id for shown in record.people if shown.person in people)
    for person in (people[ident] for ident in idents):
        if births := births_apart(person):
            yield _ask(person, f"of {person.name} two births are told, {births}. Which is so?")
        elif contradiction := contradiction_in(person):
            yield _ask(person, f"of {person.name} it is told: {contradiction}. What is so?")
        elif person.death_doubted and not person.told_living:
            yield _ask(person, f"of {person.name} it is told: “{person.death_doubted}”. Is it known whether and when?")


def _ask(person: Person, words: str) -> Finding:
    return make_finding("life.asks", Severity.ASK, words[:1].upper() + words[1:], OURS, about=person.id)
