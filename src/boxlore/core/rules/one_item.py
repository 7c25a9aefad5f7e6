"""Rules about one record: what is missing, unclear or in conflict. They return all findings at once.

A rule is one row of RULES: a function from the record and the registry of people to findings. Nothing that was told is
refused here; a finding says what to ask or to mend, why, and where the rule comes from.
"""

from collections.abc import Callable, Iterable, Iterator, Mapping

from boxlore.core.dates import against_a_life
from boxlore.core.dates.against_a_life import Comparison
from boxlore.core.fields.pictures import EMBEDDED_WORDS
from boxlore.core.findings import Finding, Severity, make_finding, one_line
from boxlore.core.people.person import Person
from boxlore.core.records.item_record import ANSWER, REMARK, Conflict, Record, StatementView
from boxlore.core.rules.ages_told import ages_told
from boxlore.core.statements import Said

People = Mapping[str, Person]
"""The registry: person id -> person."""
RecordRule = Callable[[Record, People], Iterator[Finding]]

MINIMUM = "caption minimum (who, when, where, occasion): common practice, no source"
OURS = "common practice, no source"


def look_over(record: Record, people: People) -> list[Finding]:
    """Every finding about a record, in the order of RULES."""
    return [finding for rule in RULES for finding in rule(record, people)]


_WANTED = (
    ("person", "who is in it"),
    ("date", "when it was taken"),
    ("place", "where it was taken"),
)


def _missing(record: Record, people: People) -> Iterator[Finding]:
    for name, words in _WANTED:
        if not _is_told(record, name) and name not in record.not_known:
            yield make_finding(f"{name}.missing", Severity.ASK, f"Nobody has said {words}.", MINIMUM)
    if not (record.all("story") or record.all("occasion") or {"story", "occasion"} & record.not_known):
        yield make_finding("story.missing", Severity.NOTE, "No story or occasion is told.", MINIMUM)


def _is_told(record: Record, name: str) -> bool:
    """Whether a person has said it: what a scan's file says is asked about still."""
    if name == "person":
        return any(shown.told.source.said is not Said.FILE for shown in record.shown())
    return record.somebody_told(name)


def _unkept(record: Record, people: People) -> Iterator[Finding]:
    if record.mark is None:
        yield make_finding("kept.missing", Severity.ASK, "It has no box and folder yet.", OURS)


def damaged_scans(record: Record, people: People) -> Iterator[Finding]:
    """A finding for each scan whose file was cut off or broken when it was taken in."""
    for scan in record.scans:
        if scan.damaged:
            side, letter = ("front", "f") if scan.side == "recto" else ("back", "b")
            message = (
                f"The scan of the {side} is cut off or broken: {scan.path}. It is kept as it is. Copy it again from "
                f"where it comes, or scan the {side} again, name the file {record.number}_{letter}, and take it in: it "
                "stands in its place then."
            )
            yield make_finding("scan.damaged", Severity.ERROR, message, OURS)


def unseen_pages(record: Record, people: People) -> Iterator[Finding]:
    """A question for each scan whose file has further pages, as a scanner writes several prints into one TIFF."""
    for scan in record.scans:
        for name, words in EMBEDDED_WORDS.read(scan.embedded).lines:
            if name == "pages":
                message = (
                    f"The file {scan.path} has {words} pages, and only the first is seen. Save each of the others as a "
                    "picture of its own, and take it in."
                )
                yield make_finding("scan.pages", Severity.ASK, message, OURS)


def _asking(record: Record, people: People) -> Iterator[Finding]:
    """A finding for words that can be read in several ways, or not at all, until the keeper has chosen."""
    for name in ("date", "place"):
        for view in record.all(name):
            if view.asks:
                why = f"“{one_line(view.words)}” can be read in more than one way, or not at all"
                yield make_finding(
                    f"{name}.asks", Severity.ASK, f"Which {name} is meant by “{one_line(view.words)}”?", OURS, why
                )
    for shown in record.people:
        if shown.told.asks:
            yield make_finding("person.asks", Severity.ASK, f"Which “{one_line(shown.told.words)}” is meant?", OURS)


SETTLE = "To settle it: Ctrl+P at that question in a sitting; in a plain sitting .who, then .settle."
SETTLE_AT_MARKER = "To settle it: in a sitting F4, then Enter on one of the names."


def how_to_settle(conflict: Conflict) -> str:
    """What to do where sources disagree: which answer is used is asked of a field of one value, not of a marker."""
    return SETTLE_AT_MARKER if conflict.field == "person" else SETTLE


def _disagreeing(record: Record, people: People) -> Iterator[Finding]:
    """A finding for statements that cannot all be so, with each of them, who says it, and how to settle it."""
    for conflict in record.conflicts:
        sides = " or ".join(f"“{one_line(words)}” ({speakers})" for words, speakers in conflict.speakers.items())
        message = f"Sources disagree, {conflict.why}: {sides}. {how_to_settle(conflict)}"
        yield make_finding(f"{conflict.field}.conflict", Severity.ASK, message, OURS)


def _place_then(record: Record, people: People) -> Iterator[Finding]:
    """The findings that the reading of the place has, such as a country that did not exist in the picture's year."""
    view = record.first("place")
    for asks in view.place.findings if view and view.place else ():
        yield make_finding(asks.rule, Severity.NOTE, asks.message, asks.source)


def _from_files(record: Record, people: People) -> Iterator[Finding]:
    """A question for each caption, title or date that a scan's file holds: it may be about the scan or the copy."""
    for scan in record.scans:
        for name, words in EMBEDDED_WORDS.read(scan.embedded).lines:
            if name in ("caption", "title", "date") and words:
                yield make_finding(
                    f"scan.{name}",
                    Severity.ASK,
                    f"The {scan.side} scan's file says ({name}): “{one_line(words)}”. Is that so of the picture?",
                    "the scan's own facts are not the picture's: common practice, no source",
                )


def _beside_a_life(record: Record, people: People) -> Iterator[Finding]:
    """A finding for each person shown who was not yet born or had died, as far as the dates tell (`lifetime`)."""
    taken = record.date
    if taken is None:
        return
    because = f"picture {record.date_display}"
    for shown in record.shown():
        person = people.get(shown.person)
        born, died = (person.born, person.died) if person else (None, None)
        if born and born.edtf and (answer := against_a_life.before_birth(taken, born.edtf)) is not Comparison.SILENT:
            message = f"{shown.name} was not yet born ({born.display}): someone else, or another date?"
            yield make_finding("date.before-birth", Severity(answer), message, OURS, because)
        if died and died.edtf and (answer := against_a_life.after_death(taken, died.edtf)) is not Comparison.SILENT:
            message = f"{shown.name} had died ({died.display}): a copy, a grave, or someone else?"
            yield make_finding("date.after-death", Severity(answer), message, OURS, because)


def _remarked(record: Record, people: People) -> Iterator[Finding]:
    """A finding for each remark that an archive sent back; what it says of the condition is found with the housing."""
    yield from remarks_of_archives([*record.all(REMARK), *record.all(ANSWER)], record.number)


def remarks_of_archives(views: Iterable[StatementView], item: str, of_what: str = "") -> Iterator[Finding]:
    """A finding for each remark that nobody has answered since. `item` is what its answer is told of, `of_what` names
    what it is of, where that is no item: ` of the whole`."""
    views = list(views)
    answered = max((view.recorded_at for view in views if view.field == ANSWER), default="")
    for view in (view for view in views if view.field == REMARK and not view.recorded_at < answered):
        message = f"The archive remarks{of_what}: “{one_line(view.words)}” ({view.source.ref or view.speaker})."
        message += f" An answer goes with the next update: boxlore tell {item} {ANSWER} TEXT."
        yield make_finding("archive.remark", Severity.ASK, message, "what the archive wrote")


RULES: Iterable[RecordRule] = (
    _missing,
    _unkept,
    damaged_scans,
    unseen_pages,
    _asking,
    _disagreeing,
    _place_then,
    _beside_a_life,
    ages_told,
    _from_files,
    _remarked,
)
