"""Rights records of the closed part: what was consented to, what is closed until when, why somebody living is named.

One row is one rights statement in the units of PREMIS 3.0 (rightsBasis, rightsGranted: act, restriction, term, note;
linking agent; from memory of the Data Dictionary). The table has its schema beside it: CSV on the Web (W3C, Metadata
Vocabulary for Tabular Data, 2015).
"""

import json
from collections.abc import Iterable, Iterator

from boxlore.core.crosswalk.sound import NOTHING_AGREED, Beside
from boxlore.core.fields.name_answers import NAMING_WORDS, NamingAnswer, NamingDecision
from boxlore.core.findings import several
from boxlore.core.people.consent import Consent, Matter, allowed, is_taken_back
from boxlore.core.people.person import Person
from boxlore.core.records.closing_dates import Closure
from boxlore.core.records.item_record import Record
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.records_for_outputs import AudienceView

TABLE, SCHEMA = "metadata/rights.csv", "metadata/rights.csv-metadata.json"

COLUMNS = (
    ("About", "string", "The number of an item, the path of a recording or paper, or the identifier (URN) of a person"),
    ("Of whom", "string", "Of a consent, whose it is; not for outside"),
    ("What of it", "string", "Of an item, what of it the open part does not have; empty for all of it"),
    ("Basis", "string", "rightsBasis: consent of the person, or policy (privacy of the living, wish of the teller)"),
    ("Act", "string", "rightsGranted, act: name, picture, voice or disseminate"),
    ("Allowed", "string", "rightsGranted, restriction: allow or disallow"),
    (
        "From",
        "date",
        "termOfGrant or termOfRestriction, startDate; empty for the day of the first transfer of it",
    ),
    ("Until", "date", "endDate: the day until which it holds, a consent until another word on it; or empty"),
    ("Agent", "string", "Who said so, for another too, if that may be named"),
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
    beside: Iterable[Beside] = (),
) -> Iterator[tuple[str, ...]]:
    """The heading and every row: consents, then item by item why it is closed and where somebody may be named, then the
    recordings and papers `beside` them.

    No answer names outside whom `never_named` (ids) has.
    """
    yield tuple(title for title, _, _ in COLUMNS)
    people = collection.people()
    for person in people.values():
        if seen.recipient.may_name(person.id, person.name):
            yield from _consents(seen, person)
    answers: dict[str, list[NamingDecision]] = {}
    for item, _, words in collection.store.words_of(["naming"]):
        decision = NAMING_WORDS.or_none(words)
        if decision is None or decision.answer is not NamingAnswer.MAY:
            continue
        if decision.person not in never_named:
            answers.setdefault(item, []).append(decision)
    for record, closure in closures:
        if closure is not None:
            yield from _closed(record.number, closure)
        for decision in answers.get(record.id, ()):
            meant = people.get(decision.person)
            whose = meant.name if meant and seen.recipient.may_name(meant.id, meant.name) else ""
            note = f"somebody living may be named in: {decision.where}"
            yield record.number, whose, "", "consent", "name", "allow", "", "", "keeper", note
    for held in beside:
        if held.closure is not None:
            yield from _closed(held.path, held.closure)
        if held.without_consent:
            yield held.path, "", "", "consent", "voice", "disallow", "", "", "", NOTHING_AGREED


def _closed(about: str, closure: Closure) -> Iterator[tuple[str, ...]]:
    for until, why, what in closure.reasons:
        yield about, "", str(what), "policy", "disseminate", "disallow", "", str(until), "", f"it {why}"


def _consents(seen: AudienceView, person: Person) -> Iterator[tuple[str, ...]]:
    """Each word on each matter, until another word says otherwise: what is taken back is not in force beside it."""
    for at, consent in enumerate(person.consents):
        may_tell = seen.recipient.may_read(consent.words)
        agent = (consent.by or person.name) if may_tell else ""
        note = consent.words if may_tell else ""
        for matter in sorted(consent.matters):
            word = "allow" if consent.given else "disallow"
            until = _until(person.consents[at + 1 :], matter, consent)
            yield person.uri, person.name, "", "consent", str(matter), word, consent.day, until, agent, note


def _until(later: Iterable[Consent], matter: Matter, consent: Consent) -> str:
    """The day of the first later word on this matter that says otherwise; '' if it is in force. Words stand in the
    order in which they were noted, and the last one holds whatever day it bears."""
    others = (word.day for word in later if matter in word.matters and word.given is not consent.given)
    return max(consent.day, day) if (day := next(others, "")) else ""


def consents_words(people: Iterable[Person]) -> str:
    """`Consents in force: of 1 person. Consents withdrawn: of 1 person, the last on 2026-11-28. …`, or that none is
    noted. Whoever took back a part of it is counted in both."""
    consents = [person.consents for person in people if person.consents]
    in_force = sum(bool(allowed(words)) for words in consents)
    back = [words for words in consents if any(is_taken_back(words, matter) for matter in Matter)]
    if not consents:
        return "No consent of anybody is noted, to be named, shown or heard."
    lines = [f"Consents in force: of {several(in_force, 'person', 'people')}."]
    if back:
        last = max(word.day for words in back for word in words if not word.given)
        lines.append(f"Consents withdrawn: of {several(len(back), 'person', 'people')}, the last on {last}.")
    return " ".join([*lines, f"{TABLE} tells each."])
