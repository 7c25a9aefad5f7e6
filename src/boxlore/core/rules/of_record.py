"""What a record still asks for: rules that look at one record and return findings, all of them at once.

A rule is one row of RULES: a function from the record (and the people in it) to findings. Nothing told is
refused here; a finding says what to ask or mend, why, and where the rule comes from.
"""

from collections.abc import Callable, Iterable, Iterator, Mapping

from boxlore.core.dates import lifetime
from boxlore.core.dates.lifetime import Comparison
from boxlore.core.fields.pictures import EMBEDDED_WORDS
from boxlore.core.findings import Finding, Severity
from boxlore.core.people.person import Person
from boxlore.core.records.in_force import Record
from boxlore.core.rules.age import ages_told

People = Mapping[str, Person]
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
        told = record.shown() if name == "person" else record.all(name)
        if not told and name not in record.not_known:
            yield _finding(f"{name}.missing", Severity.ASK, f"Nobody has said {words}.", MINIMUM)
    if not (record.all("story") or record.all("occasion") or {"story", "occasion"} & record.not_known):
        yield _finding("story.missing", Severity.NOTE, "No story or occasion is told.", MINIMUM)


def _unkept(record: Record, people: People) -> Iterator[Finding]:
    if record.mark is None:
        yield _finding("kept.missing", Severity.ASK, "It has no box and folder yet.", OURS)


def _asking(record: Record, people: People) -> Iterator[Finding]:
    """Words whose reading waits for the keeper."""
    for name in ("date", "place"):
        for told in record.all(name):
            if told.asks:
                why = f"“{_short(told.words)}” can be read in more than one way, or not at all"
                yield _finding(
                    f"{name}.asks", Severity.ASK, f"Which {name} is meant by “{_short(told.words)}”?", OURS, why
                )
    for shown in record.people:
        if shown.told.asks:
            yield _finding("person.asks", Severity.ASK, f"Which “{_short(shown.told.words)}” is meant?", OURS)


def _disagreeing(record: Record, people: People) -> Iterator[Finding]:
    for conflict in record.conflicts:
        said = tuple(f"{told.said_by or told.source.said}: “{_short(told.words)}”" for told in conflict.told)
        yield _finding(f"{conflict.field}.conflict", Severity.ASK, f"Sources disagree: {conflict.why}.", OURS, *said)


def _place_then(record: Record, people: People) -> Iterator[Finding]:
    told = record.first("place")
    for asks in told.place.findings if told and told.place else ():
        yield _finding(asks.rule, Severity.NOTE, asks.message, asks.source)


def _from_files(record: Record, people: People) -> Iterator[Finding]:
    """An embedded caption or date only raises a question: it may be about the copy, not the picture."""
    for scan in record.scans:
        for name, words in EMBEDDED_WORDS.read(scan.embedded).lines:
            if name in ("caption", "title", "date") and words:
                yield _finding(
                    f"scan.{name}",
                    Severity.ASK,
                    f"The {scan.side} scan's file says ({name}): “{_short(words)}”. Is that so of the picture?",
                    "the scan's own facts are not the picture's: common practice, no source",
                )


def _beside_a_life(record: Record, people: People) -> Iterator[Finding]:
    """Pictures from before a birth or after a death, as exactly as the dates allow (`core.dates.lifetime`)."""
    taken = record.date
    if taken is None:
        return
    because = f"picture {record.date_display}"
    for shown in record.shown():
        person = people.get(shown.person)
        born, died = (person.born, person.died) if person else (None, None)
        if born and born.edtf and (answer := lifetime.before_birth(taken, born.edtf)) is not Comparison.SILENT:
            message = f"{shown.name} was not yet born ({born.display}): someone else, or another date?"
            yield _finding("date.before-birth", Severity(answer), message, OURS, because)
        if died and died.edtf and (answer := lifetime.after_death(taken, died.edtf)) is not Comparison.SILENT:
            message = f"{shown.name} had died ({died.display}): a copy, a grave, or someone else?"
            yield _finding("date.after-death", Severity(answer), message, OURS, because)


def _finding(rule: str, severity: Severity, message: str, source: str, *because: str) -> Finding:
    return Finding(rule=rule, severity=severity, message=message, because=because, source=source)


def _short(words: str) -> str:
    line = " ".join(words.split())
    return line if len(line) <= 60 else f"{line[:59]}…"


RULES: Iterable[RecordRule] = (
    _missing,
    _unkept,
    _asking,
    _disagreeing,
    _place_then,
    _beside_a_life,
    ages_told,
    _from_files,
)
