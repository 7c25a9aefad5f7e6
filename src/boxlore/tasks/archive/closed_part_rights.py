"""Rights records of the closed part: what was consented to, what is closed until when, why somebody living is named.

One row is one rights statement in the units of PREMIS 3.0 (rightsBasis, rightsGranted: act, restriction, term, note;
linking agent; from memory of the Data Dictionary). The table has its schema beside it: CSV on the Web (W3C, Metadata
Vocabulary for Tabular Data, 2015).
"""

import json
from collections.abc import Iterable, Iterator

from boxlore.core.fields.name_answers import NAMING_WORDS, NamingAnswer
from boxlore.core.people.person import Person
from boxlore.core.records.closing_dates import Closure
from boxlore.core.records.item_record import Record
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.records_for_outputs import AudienceView

TABLE, SCHEMA = "metadata/rights.csv", "metadata/rights.csv-metadata.json"

COLUMNS = (
    ("About", "string", "The number of an item, or the identifier (URN) of a person"),
    ("What of it", "string", "Of an item, what of it the open part does not have; empty for all of it"),
    ("Basis", "string", "rightsBasis: consent of the person, or policy (privacy of the living, wish of the teller)"),
    ("Act", "string", "rightsGranted, act: name, picture, voice or disseminate"),
    ("Allowed", "string", "rightsGranted, restriction: allow or disallow"),
    ("From", "date", "The day from which it holds; empty for the day of the transfer"),
    ("Until", "date", "The day until which it holds; empty without an end"),
    ("Agent", "string", "Who said so, if that may be named"),
    ("Note", "string", "Why, in a sentence"),
)


def rights_schema() -> bytes:
    """The schema of the table, as a W3C metadata document."""
    columns = [
        {"titles": title, "name": title.lower().replace(" ", "_"), "datatype": kind, "dc:description": says}
        for title, kind, says in COLUMNS
    ]
    table = {"@context": "http://www.w3.org/ns/csvw", "url": "rights.csv", "tableSchema": {"columns": columns}}
    return json.dumps(table, indent=1).encode()


def rights_rows(
    collection: Collection,
    seen: AudienceView,
    closures: Iterable[tuple[Record, Closure | None]],
    never_named: frozenset[str] = frozenset(),
) -> Iterator[tuple[str, ...]]:
    """The heading and every row: consents, then item by item why it is closed and where somebody may be named.

    No answer names outside whom `never_named` (ids) has.
    """
    yield tuple(title for title, _, _ in COLUMNS)
    for person in collection.people().values():
        if seen.recipient.may_name(person.id, person.name):
            yield from _consents(seen, person)
    allowed: dict[str, list[str]] = {}
    for item, _, words in collection.store.words_of(["naming"]):
        decision = NAMING_WORDS.or_none(words)
        if decision is None or decision.answer is not NamingAnswer.MAY:
            continue
        if decision.person not in never_named:
            allowed.setdefault(item, []).append(decision.where)
    for record, closure in closures:
        if closure is not None:
            until = str(closure.until)
            yield record.number, str(closure.what), "policy", "disseminate", "disallow", "", until, "", closure.because
        for where in allowed.get(record.id, ()):
            note = f"somebody living may be named in: {where}"
            yield record.number, "", "consent", "name", "allow", "", "", "keeper", note


def _consents(seen: AudienceView, person: Person) -> Iterator[tuple[str, ...]]:
    """What a person has consented to, matter by matter; a later word on a matter ends the one before."""
    for at, consent in enumerate(person.consents):
        later = person.consents[at + 1 :]
        may_tell = seen.recipient.may_read(consent.words)
        agent = (consent.by or person.name) if may_tell else ""
        note = f"{person.name}: {consent.words}" if may_tell else ""
        for matter in sorted(consent.matters):
            allowed = "allow" if consent.given else "disallow"
            until = next((other.day for other in later if matter in other.matters), "")
            yield person.uri, "", "consent", str(matter), allowed, consent.day, until, agent, note
