"""The time log written out: for each recording its WebVTT chapters, and one log of everything told, by time code.

The open form holds only what anyone may see: no words for family, keeper or an archive, no withheld name, nothing
that touches a closed passage, and an item shown in such a passage by its number alone.
"""

import re
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from boxlore.core.crosswalk.captions import title
from boxlore.core.errors import WrongUse
from boxlore.core.fields.cells import write_row
from boxlore.core.fields.sittings import CLOSED_WORDS, Passage, shown_in
from boxlore.core.fields.table import FIELDS
from boxlore.core.records.audience import Recipient, To
from boxlore.core.records.in_force import told_of
from boxlore.core.records.item_record import Record, StatementView, is_number_alone
from boxlore.core.sitting.time_log import Out, Recording, clock_of, heard_in, is_closed, outs, within
from boxlore.core.statements import Kind, Said, Subject
from boxlore.exports.webvtt import Chapter, write_chapters
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.output_paths import check_output, write_output
from boxlore.tasks.collection.records_for_outputs import Selection, seen_by
from boxlore.tasks.sitting.recordings import of_sitting, sittings

_DAY = re.compile(r"\d{4}-\d\d-\d\d")
COLUMNS = ("recording", "time", "number", "mark", "field", "words", "language", "said by", "sure", "audience", "closed")


@dataclass(frozen=True, slots=True)
class SittingLog:
    """One sitting's time log: recordings, stretches, closed passages, and what was told."""

    sitting: str
    recordings: tuple[Recording, ...]
    outs: tuple[Out, ...]
    closed: tuple[Passage, ...]
    told: tuple[tuple[Subject, StatementView], ...]
    """What was told and when, in that order: of which thing, and the statement."""
    end: int


def read_log(collection: Collection, sitting: str) -> SittingLog:
    """Everything the log holds of one sitting."""
    rows = [statement for statement, _ in collection.store.statements(Subject(Kind.SITTING, sitting))]
    said_by = collection.people().names()
    told = [
        (statement, reading)
        for statement, reading in collection.store.of_sitting(sitting)
        if statement.moment is not None and statement.words and FIELDS[statement.field].told
        if statement.subject.kind is not Kind.SITTING
    ]
    answers = {statement.act for statement, _ in told if statement.field != "name"}
    views = [
        (statement.subject, told_of(statement, reading, said_by))
        for statement, reading in told
        if statement.field != "name" or statement.act not in answers  # else the answer has the name
    ]
    recordings = of_sitting(collection, sitting)
    shown = [shown_in(row) for row in rows if row.field == "shown"]
    ends = (
        [item.at or 0 for item in shown] + [view.moment or 0 for _, view in views] + [row.moment or 0 for row in rows]
    )
    ends += [recording.start + recording.length for recording in recordings if recording.length]
    end = max(ends, default=0) + 1
    return SittingLog(
        sitting=sitting,
        recordings=tuple(recordings),
        outs=tuple(outs(((item.at or 0, item.item) for item in shown), end)),
        closed=tuple(CLOSED_WORDS.read(row.words) for row in rows if row.field == "closed"),
        told=tuple(sorted(views, key=lambda row: (row[1].moment or 0, row[1].statement))),
        end=end,
    )


def cite(collection: Collection, view: StatementView) -> str:
    """Where a statement can be heard: `recordings/2026-11-25-leida-rourke-1.wav 0:04:12`; empty where it cannot."""
    if not view.sitting or view.moment is None:
        return ""
    heard = heard_in(of_sitting(collection, view.sitting), view.moment)
    return f"{heard[0].path} {clock_of(heard[1])}" if heard else ""


def write_log(collection: Collection, sitting: str, out: Path, to: To = To.FAMILY) -> list[Path]:
    """Write `STEM.chapters.vtt` for each recording and `log.csv`-named one for the sitting. Raises WrongUse.

    Returns the files, chapters first.
    """
    from boxlore.tasks.collection.gate import Gate

    log, name = read_log(collection, sitting), dict(sittings(collection)).get(sitting, "")
    if not name:
        raise WrongUse("There is no such sitting.", "boxlore recording lists them.")
    seen = seen_by(collection, to)
    numbers = {ident: number for number, ident in collection.store.items()}
    wanted = tuple(numbers[ident] for ident in dict.fromkeys(out.item for out in log.outs) if ident in numbers)
    records = {record.id: record for record in seen.records(Selection(items=wanted))} if wanted else {}
    files = {
        out / f"{Path(recording.path).stem}.chapters.vtt": write_chapters(
            chapters_of(log, recording, records, seen.recipient), _note(name, recording)
        )
        for recording in log.recordings
    }
    files[out / f"{_stem(log)}.log.csv"] = _csv(log, records, seen.recipient)
    for path, text in files.items():  # all or none
        check_output(collection, path, text.encode())
        Gate(seen).check_bytes(path.name, text.encode())
    for path, text in files.items():
        write_output(collection, path, text.encode())
    return list(files)


def _stem(log: SittingLog) -> str:
    """No name of anyone: file names travel further than records."""
    return Path(log.recordings[0].path).stem if log.recordings else f"sitting-{log.sitting[-6:]}"


def _note(name: str, recording: Recording) -> str:
    day = _DAY.match(name)  # the name of a sitting without a day begins with whoever tells
    return f"Chapters of {Path(recording.path).name}, item by item." + (f" Sitting: {day[0]}." if day else "")


def chapters_of(
    log: SittingLog, recording: Recording, records: dict[str, Record], recipient: Recipient
) -> Iterator[Chapter]:
    """Which item was out when, within one recording; what is kept back, and for outside a closed passage, is a
    number."""
    start, last = within(recording, log.recordings, log.end)
    for out in log.outs:
        begin, end = max(out.start, start), min(out.end, last)
        record = records.get(out.item)
        if begin >= end or record is None:
            continue
        closed = not recipient.may_hear_closed_passages and is_closed(log.closed, begin, end)
        words = record.number if closed or is_number_alone(record) else f"{record.number} {title(record)}"
        yield Chapter(begin - start, end - start, words, record.number)


def _csv(log: SittingLog, records: dict[str, Record], recipient: Recipient) -> str:
    rows = [write_row(COLUMNS)]
    for subject, view in log.told:
        about, moment = _about(log, subject, view), view.moment or 0
        closed = is_closed(log.closed, moment, moment)
        if not _may_go(recipient, about, view, closed=closed) or (about.kind is Kind.ITEM and about.id not in records):
            continue
        record = records.get(_item_at(log, moment) if about.kind is not Kind.ITEM else about.id)
        heard = heard_in(log.recordings, moment)
        where = (Path(heard[0].path).name, clock_of(heard[1])) if heard else ("", clock_of(moment))
        item = (record.number, record.mark.short if record.mark else "") if record else ("", "")
        rows.append(
            write_row((*where, *item, *_said(recipient.without_names(view, about)), "closed" if closed else ""))
        )
    return "".join(rows)


def _said(view: StatementView) -> tuple[str, ...]:
    who = view.said_by or str(view.source)
    return (view.field, view.words, view.language, who, view.sure, view.audience)


def _about(log: SittingLog, subject: Subject, view: StatementView) -> Subject:
    """What a statement is about; one about a marker is about the item that was out."""
    if subject.kind is Kind.MARKER and (item := _item_at(log, view.moment or 0)):
        return Subject(Kind.ITEM, item)
    return subject


def _item_at(log: SittingLog, moment: int) -> str:
    """The id of the item that was out at a moment of the sitting, or an empty string."""
    return next((out.item for out in log.outs if out.start <= moment < out.end), "")


def _may_go(recipient: Recipient, about: Subject, view: StatementView, *, closed: bool) -> bool:
    """Whether a line of the log may go out. A teller's words go only with a name: who tells is heard beside it."""
    if closed and not recipient.may_hear_closed_passages:
        return False
    nameless = view.source.said is Said.NARRATOR and not recipient.may_name_source(view)
    return not nameless and recipient.may_be_told(view, about)
