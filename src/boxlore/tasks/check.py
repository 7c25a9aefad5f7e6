"""Check: every finding about every item, its scans on the disk included; and those of one rule together, the gravest
first."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace

from boxlore.core.errors import WrongUse
from boxlore.core.fields.guard import check_words
from boxlore.core.fields.table import FIELDS, codec_fields
from boxlore.core.findings import Finding, Severity, make_finding
from boxlore.core.records.in_force import told_of
from boxlore.core.records.item_record import ANSWER, REMARK, Record
from boxlore.core.records.marks import Mark
from boxlore.core.rules.one_item import look_over, remarks_of_archives
from boxlore.core.rules.people_and_kin import look_over_people
from boxlore.core.rules.people_in_question import people_in_question
from boxlore.core.rules.several_items import Together
from boxlore.core.statements import Kind, Subject
from boxlore.tasks.collection.items_by_mark import WHOLE
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.records_for_outputs import EVERYTHING, Selection, contradictions, records, weddings
from boxlore.tasks.originals.housing_check import general_findings, ground_of, item_findings
from boxlore.tasks.scans.fixity import schedule_findings
from boxlore.tasks.scans.lookalikes import Alike, alike


@dataclass(frozen=True, slots=True)
class ItemFinding:
    """A finding with the item it is about."""

    finding: Finding
    number: str
    mark: str


def check(collection: Collection, selection: Selection = EVERYTHING) -> Iterator[ItemFinding]:
    """All findings: words that cannot be read first, then item by item, in the order of the numbers."""
    if selection == EVERYTHING:
        yield from _unreadable(collection)
    people = collection.people()
    ground = ground_of(collection)
    marks: dict[str, str] = {}
    questions: dict[str, list[str]] = {}
    for ident, _, words in collection.store.words_of(("asked",)):
        questions.setdefault(ident, []).append(words)
    seen: list[Record] = []
    together = Together()
    for record in records(collection, selection):
        seen.append(replace(record, told={}))
        mark = record.mark.short if record.mark else ""
        for finding in [
            *look_over(record, people),
            *people_in_question(record, questions.get(record.id, ())),
            *item_findings(collection, record, ground),
            *_scans(collection, record),
        ]:
            yield ItemFinding(finding, record.number, mark)
        for number, finding in together.add(record):
            yield ItemFinding(finding, number, mark)
        marks[record.number] = mark
    if selection == EVERYTHING:
        for finding in (*schedule_findings(collection), *_remarks_on_the_whole(collection)):
            yield ItemFinding(finding, "", "")
        for whole in general_findings(ground):
            if whole.finding.rule != "kept.nowhere":  # said with the item, above
                yield ItemFinding(whole.finding, whole.number, whole.mark)
        for person_finding in (*look_over_people(people, weddings(collection)), *contradictions(collection)):
            yield ItemFinding(person_finding, "", "")
    for group in alike(collection, seen):
        yield ItemFinding(_alike(group), group.numbers[0], marks[group.numbers[0]])


def _unreadable(collection: Collection) -> Iterator[ItemFinding]:
    """Words that their field's codec cannot read: of an older collection, or of one that is damaged."""
    for ident, name, words in collection.store.words_of(codec_fields()):
        try:
            check_words(FIELDS[name], words)
        except WrongUse as error:
            finding = make_finding(
                "words.unreadable", Severity.ERROR, error.problem, "a rule of our own", error.what_to_do,
                about=ident,
            )  # fmt: skip
            yield ItemFinding(finding, collection.store.number_of(ident), "")


def _remarks_on_the_whole(collection: Collection) -> Iterator[Finding]:
    """What archives have remarked of the collection itself, of its sittings and its containers, and not of an item."""
    of_the_whole = collection.store.statements(Subject(Kind.COLLECTION, collection.id))
    remarked = [(f"the {WHOLE}", of_the_whole)]
    for _, rows in collection.store.subjects(Kind.SITTING):
        remarked.append((f"the sitting of {min(statement.recorded_at for statement, _ in rows)[:10]}", rows))
    paths = dict(collection.store.containers())
    for ident, rows in collection.store.subjects(Kind.CONTAINER):
        remarked.append((Mark(paths[ident]).long, rows))
    for called, told in remarked:
        views = (told_of(statement, reading, {}) for statement, reading in told if statement.field in (REMARK, ANSWER))
        yield from remarks_of_archives(views, WHOLE, f" of {called}")


NAMED_ALIKE = 12
"""So many items of a group that looks alike are named; of a larger one, the rest are counted."""


def _alike(group: Alike) -> Finding:
    *earlier, last = group.numbers[:NAMED_ALIKE]
    count = len(group.numbers)
    if count > NAMED_ALIKE:
        earlier, last = [*earlier, last], f"{count - NAMED_ALIKE} more"
    prints = "two prints" if count == 2 else f"{count} prints"
    return Finding(
        rule="scan.alike",
        severity=Severity.ASK,
        message=f"{prints.capitalize()} of one picture? {', '.join(earlier)} and {last} look alike.",
        because=(f"of 64 spots compared in them {group.apart} differ",),
        source="perceptual hashing: common practice, no source",
    )


def _scans(collection: Collection, record: Record) -> Iterator[Finding]:
    for scan in record.scans:
        path = collection.folder / scan.path
        if not path.is_file():
            problem = f"The {scan.side} scan is not where it was: {scan.path}."
        elif path.stat().st_size != scan.bytes:
            problem = f"The {scan.side} scan has changed its size: {scan.path}."
        else:
            continue
        yield Finding(
            rule="scan.changed",
            severity=Severity.ERROR,
            message=f"{problem} Run boxlore verify.",
            because=(f"SHA-256 at intake: {scan.sha256}",),
            source="fixity of scans: common practice, no source",
        )


# what is most worth doing

TEN = 10
"""So many kinds of findings are shown first."""

_GRAVITY = {Severity.ERROR: 0, Severity.ASK: 1, Severity.NOTE: 2}
_URGENT = ("hazard", "climate", "scan")
"""First parts of the names of rules whose findings grow worse while they wait."""
_ORIGINALS = ("climate", "condition", "fixity", "hazard", "housing", "kept", "loan", "scan")
"""First parts of the names of rules about the things themselves, of which no teller is asked."""
_LAST = ("missing",)
"""Rules with such a name only say that a question was never asked; they come after those that found something."""


@dataclass(frozen=True, slots=True)
class FindingGroup:
    """All findings of one rule, in the order of the items."""

    rule: str
    severity: Severity
    findings: tuple[ItemFinding, ...]

    @property
    def field(self) -> str:
        """The first part of the rule's name: the question that it is about, if it is about one."""
        return self.rule.partition(".")[0]

    @property
    def about_originals(self) -> bool:
        """Whether it is about prints, boxes and scans, and not about what is told."""
        return self.field in _ORIGINALS


def grouped(findings: Iterable[ItemFinding]) -> list[FindingGroup]:
    """The findings by their rules: what cannot be so before what is worth asking, what grows worse before what waits,
    questions never asked last."""
    by_rule: dict[str, list[ItemFinding]] = {}
    for located in findings:
        by_rule.setdefault(located.finding.rule, []).append(located)
    groups = [
        FindingGroup(rule, min((row.finding.severity for row in rows), key=_GRAVITY.__getitem__), tuple(rows))
        for rule, rows in by_rule.items()
    ]
    return sorted(
        groups,
        key=lambda group: (
            _GRAVITY[group.severity],
            group.field not in _URGENT,
            group.rule.endswith(_LAST),
            len(group.findings),
        ),
    )
