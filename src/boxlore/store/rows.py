"""Rows to values and back: the one place that knows the order of the columns."""

import sqlite3
from collections.abc import Iterator
from functools import lru_cache
from typing import Any

from boxlore.core.errors import CouldNot
from boxlore.core.records.readings import read_value, reading_text
from boxlore.core.statements import Kind, Reading, Said, Source, Statement, Subject, Sure
from boxlore.store.values import Draft

COLUMNS = (
    "id act subject_kind subject field words language said source sure audience sitting moment recorded_at by replaces"
).split()

SELECT = ", ".join(f"s.{name}" for name in COLUMNS)

READING = "r.kind, r.value, r.reader, r.settings, r.asks, r.confirmed"

NEWEST_READING = """
LEFT JOIN reading r ON r.statement = s.id AND r.act = (
    SELECT n.act FROM reading n WHERE n.statement = s.id AND n.act NOT IN (SELECT act FROM withdrawn)
    ORDER BY n.confirmed DESC, n.recorded_at DESC, n.act DESC LIMIT 1)
"""
"""The reading beside a statement `s`: a confirmed one before others, then the newest."""

MEANT = "CASE WHEN json_valid(value) THEN json_extract(value, '$.id') END"
"""In SQL: the person or event that a reading's text names (`core.people.reference`), NULL if none."""

PLACE_USED = "CASE WHEN json_valid(value) THEN json_extract(value, '$.choices[0].geonames') END"
"""In SQL: the GeoNames id of the place that a reading's text gives first (`core.places.reading`), NULL if none."""

ToldRow = tuple[Statement, Reading | None]

_KINDS = {str(kind): kind for kind in Kind}
_SAID = {str(said): said for said in Said}
_SURE = {str(sure): sure for sure in Sure}

_subject = lru_cache(1024)(Subject)
_source = lru_cache(1024)(Source)
"""The same values over and over, made once: building them is a fifth of reading a row."""


def statement_of(row: tuple[Any, ...]) -> Statement:
    """The statement in the first columns of a row selected by SELECT. Raises CouldNot for a row of no log of ours."""
    try:
        return Statement(
            id=row[0],
            act=row[1],
            subject=_subject(_KINDS[row[2]], row[3]),
            field=row[4],
            words=row[5],
            language=row[6],
            source=_source(_SAID[row[7]], row[8]),
            sure=_SURE[row[9]],
            audience=row[10],
            sitting=row[11],
            moment=row[12],
            recorded_at=row[13],
            by=row[14],
            replaces=row[15],
        )
    except KeyError as error:
        raise _foreign(f"the statement {row[0]}", error) from None


def _foreign(where: str, error: KeyError) -> CouldNot:
    """What is said of a column that holds a word which no Boxlore writes there."""
    word = str(error.args[0])[:40]
    return CouldNot(
        f"The database is damaged, or another program wrote to it: {where} holds “{word}”, which means nothing there.",
        "Go back to a backup. A newer Boxlore may know the word.",
    )


def reading_of(row: tuple[Any, ...]) -> Reading | None:
    """The reading in columns selected by READING, if there is one."""
    if row[0] is None:
        return None
    return Reading(row[0], read_value(row[0], row[1]), row[2], row[3], asks=bool(row[4]), confirmed=bool(row[5]))


def reading_values(reading: Reading) -> tuple[Any, ...]:
    """A reading as a row of READING. Raises WrongUse where its value is not of its kind."""
    text = reading_text(reading)
    return (reading.kind, text, reading.reader, reading.settings, reading.asks, reading.confirmed)


def told_rows(db: sqlite3.Connection, where: str, values: tuple[Any, ...] = ()) -> Iterator[ToldRow]:
    """Statements in force with their readings; `where` is a clause of ours over `s`."""
    query = f"SELECT {SELECT}, {READING} FROM in_force s {NEWEST_READING} WHERE {where}"
    for row in db.execute(query, values):
        yield statement_of(row), reading_of(row[16:])


def statement_values(one: Statement) -> tuple[Any, ...]:
    """A statement as a row of COLUMNS."""
    return (
        one.id,
        one.act,
        one.subject.kind,
        one.subject.id,
        one.field,
        one.words,
        one.language,
        one.source.said,
        one.source.ref,
        one.sure,
        one.audience,
        one.sitting,
        one.moment,
        one.recorded_at,
        one.by,
        one.replaces,
    )


DRAFT_COLUMNS = (
    "subject_kind subject field slot words language said source sure audience sitting moment replaces updated_at"
).split()


def draft_values(one: Draft) -> tuple[Any, ...]:
    """A draft as a row of DRAFT_COLUMNS."""
    return (
        one.subject.kind,
        one.subject.id,
        one.field,
        one.slot,
        one.words,
        one.language,
        one.source.said,
        one.source.ref,
        one.sure,
        one.audience,
        one.sitting,
        one.moment,
        one.replaces,
        one.updated_at,
    )


def draft_of(row: tuple[Any, ...]) -> Draft:
    """A row of DRAFT_COLUMNS as a draft. Raises CouldNot for a row of no database of ours."""
    try:
        return Draft(
            subject=Subject(_KINDS[row[0]], row[1]),
            field=row[2],
            slot=row[3],
            words=row[4],
            language=row[5],
            source=Source(_SAID[row[6]], row[7]),
            sure=_SURE[row[8]],
            audience=row[9],
            sitting=row[10],
            moment=row[11],
            replaces=row[12],
            updated_at=row[13],
        )
    except KeyError as error:
        raise _foreign(f"the draft of {row[2]}", error) from None
