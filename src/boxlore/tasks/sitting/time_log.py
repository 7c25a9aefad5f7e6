"""The time log written out: for each recording its WebVTT chapters, and one log of everything told, by time code.

The open form holds only what anyone may see: no words for family, keeper or an archive, no withheld name, nothing
that touches a closed passage, and an item shown in such a passage by its number alone.
"""

import csv
import io
import json
import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path

from boxlore.core.crosswalk.captions import title
from boxlore.core.errors import WrongUse
from boxlore.core.fields.table import FIELDS
from boxlore.core.records.audience import NOBODY, To, Withheld, may_see
from boxlore.core.records.in_force import Record, StatementView
from boxlore.core.sitting.time_log import Out, Passage, Recording, clock_of, heard_in, is_closed, outs, within
from boxlore.core.statements import Kind, Statement, Subject
from boxlore.disk.writing import write_whole
from boxlore.exports.webvtt import Chapter, write_chapters
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.records import Selection, seen_by
from boxlore.tasks.sitting.recordings import of_sitting, sittings, told_in

_DAY = re.compile(r"\d{4}-\d\d-\d\d")
COLUMNS = ("recording", "time", "number", "mark", "field", "words", "language", "said by", "sure", "audience", "closed")


@dataclass(frozen=True, slots=True)
class SittingLog:
    """One sitting's time log: recordings, stretches, closed passages, and what was told."""

    sitting: str
    recordings: tuple[Recording, ...]
    outs: tuple[Out, ...]
    closed: tuple[Passage, ...]
    told: tuple[Statement, ...]
    end: int


def read_log(collection: Collection, sitting: str) -> SittingLog:
    """Everything the log holds of one sitting."""
    rows = [statement for statement, _ in collection.store.statements(Subject(Kind.SITTING, sitting))]
    told = [
        one
        for one in told_in(collection, sitting)
        if one.moment is not None and one.words and one.subject.kind is not Kind.SITTING and FIELDS[one.field].told
    ]
    recordings = of_sitting(collection, sitting)
    shown = [_shown(one) for one in rows if one.field == "shown"]
    ends = [at for at, _ in shown] + [one.moment or 0 for one in [*told, *rows]]
    ends += [one.start + one.length for one in recordings if one.length]
    end = max(ends, default=0) + 1
    return SittingLog(
        sitting=sitting,
        recordings=tuple(recordings),
        outs=tuple(outs(shown, end)),
        closed=tuple(_passage(one) for one in rows if one.field == "closed"),
        told=tuple(sorted(told, key=lambda one: (one.moment or 0, one.id))),
        end=end,
    )


def _shown(statement: Statement) -> tuple[int, str]:
    """When an item was shown, and which: the words are its id, or an object with it."""
    if statement.words.startswith("{"):
        facts = json.loads(statement.words)
        return int(facts["at"]), str(facts["item"])
    return statement.moment or 0, statement.words


def _passage(statement: Statement) -> Passage:
    facts = json.loads(statement.words)
    return Passage(int(facts["from"]), int(facts["to"]), str(facts.get("why", "")))


def cite(collection: Collection, told: StatementView) -> str:
    """Where a statement can be heard: `recordings/2026-11-25-leida-rourke-1.wav 0:04:12`; empty where it cannot."""
    if not told.sitting or told.moment is None:
        return ""
    found = heard_in(of_sitting(collection, told.sitting), told.moment)
    return f"{found[0].path} {clock_of(found[1])}" if found else ""


def write_log(collection: Collection, sitting: str, out: Path, to: To = To.FAMILY) -> list[Path]:
    """Write `STEM.chapters.vtt` for each recording and `log.csv`-named one for the sitting. Raises WrongUse.

    Returns the files, chapters first.
    """
    log, name = read_log(collection, sitting), dict(sittings(collection)).get(sitting, "")
    if not name:
        raise WrongUse("There is no such sitting.", "boxlore recording lists them.")
    seen = seen_by(collection, to)
    numbers = {ident: number for number, ident in collection.store.items()}
    wanted = tuple(numbers[one] for one in dict.fromkeys(out.item for out in log.outs) if one in numbers)
    records = {record.id: record for record in seen.records(Selection(items=wanted))} if wanted else {}
    written: list[Path] = []
    for recording in log.recordings:
        path = out / f"{Path(recording.path).stem}.chapters.vtt"
        text = write_chapters(chapters_of(log, recording, records, to), _note(name, recording))
        write_whole(path, text.encode())
        written.append(path)
    path = out / f"{_stem(log)}.log.csv"
    write_whole(path, _csv(collection, log, records, seen.withheld, to).encode())
    return [*written, path]


def _stem(log: SittingLog) -> str:
    """No name of anyone: file names travel further than records."""
    return Path(log.recordings[0].path).stem if log.recordings else f"sitting-{log.sitting[-6:]}"


def _note(name: str, recording: Recording) -> str:
    day = _DAY.match(name)  # the name of a sitting without a day begins with whoever tells
    return f"Chapters of {Path(recording.path).name}, item by item." + (f" Sitting: {day[0]}." if day else "")


def chapters_of(log: SittingLog, recording: Recording, records: dict[str, Record], to: To) -> Iterator[Chapter]:
    """Which item was out when, within one recording; for outside a closed passage is a number."""
    start, last = within(recording, log.recordings, log.end)
    for out in log.outs:
        begin, end = max(out.start, start), min(out.end, last)
        record = records.get(out.item)
        if begin >= end or record is None:
            continue
        closed = to is To.OUTSIDE and is_closed(log.closed, begin, end)
        words = record.number if closed or record.closed_scans else f"{record.number} {title(record)}"
        yield Chapter(begin - start, end - start, words, record.number)


def _csv(collection: Collection, log: SittingLog, records: dict[str, Record], withheld: Withheld, to: To) -> str:
    out = io.StringIO()
    rows = csv.writer(out, lineterminator="\r\n")
    rows.writerow(COLUMNS)
    people = collection.people()
    for one in log.told:
        record, moment = _about(log, one, records), one.moment or 0
        closed = is_closed(log.closed, moment, moment)
        if not _may_go(collection, one, closed, withheld, to) or not _in_record(one, record):
            continue
        found = heard_in(log.recordings, moment)
        who = people[one.source.ref].name if one.source.ref in people else str(one.source)
        where = (Path(found[0].path).name, clock_of(found[1])) if found else ("", clock_of(moment))
        about = (record.number, record.mark.short if record.mark else "") if record else ("", "")
        said = (
            one.field,
            _plain(one.words),
            one.language,
            _plain(who),
            one.sure,
            one.audience,
            "closed" if closed else "",
        )
        rows.writerow((*where, *about, *said))
    return out.getvalue()


def _plain(words: str) -> str:
    """Words that a spreadsheet takes as words: a leading sign that would begin a formula gets an apostrophe."""
    return f"'{words}" if words[:1] in ("=", "+", "-", "@", "\t", "\r") else words


def _about(log: SittingLog, one: Statement, records: dict[str, Record]) -> Record | None:
    """The item a statement is about; of a marker or a person, the item that was out."""
    if one.subject.kind is Kind.ITEM:
        return records.get(one.subject.id)
    moment = one.moment or 0
    return next((records.get(out.item) for out in log.outs if out.start <= moment < out.end), None)


def _in_record(one: Statement, record: Record | None) -> bool:
    """Whether what is told of an item stands in the record that its audience sees (item or field may be kept)."""
    if one.subject.kind is not Kind.ITEM:
        return True
    if record is None:
        return False
    seen = [*record.all(one.field), *(shown.told for shown in record.people)]
    return any(told.words == one.words for told in seen)


def _may_go(collection: Collection, one: Statement, closed: bool, withheld: Withheld, to: To) -> bool:
    if not may_see(one.audience, to, collection.clock.today()) or (closed and to is To.OUTSIDE):
        return False
    if withheld is NOBODY:
        return True
    people: Sequence[str] = (one.source.ref,)
    return not withheld.finds(one.words) and not withheld.people & set(people)
