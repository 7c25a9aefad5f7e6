"""Rows of the database as values, and back. No other module knows the order of the columns."""

import sqlite3
from collections.abc import Iterator
from functools import lru_cache
from typing import Any

from boxlore.core.errors import CouldNot
from boxlore.core.records.readings import read_value, reading_text
from boxlore.core.statements import Kind, Reading, Said, Source, Statement, Subject, Sure
from boxlore.store.promises import Promises
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
"""Joins the reading that counts to a statement `s`: a confirmed one before others, then the newest."""

MEANT = "CASE WHEN json_valid(value) THEN json_extract(value, '$.id') END"
"""In SQL: the person or event that a reading's text names (`core.people.reference`), NULL if none."""

PLACE_USED = "CASE WHEN json_valid(value) THEN json_extract(value, '$.choices[0].geonames') END"
"""In SQL: the GeoNames id of the place that a reading's text gives first (`core.places.reading`), NULL if none."""

LATEST = "CASE WHEN json_valid(value) THEN json_extract(value, '$.latest') END"
"""In SQL: the last day of a date's reading as an ISO day, NULL if it has none; its first is `schema.EARLIEST`."""

ToldRow = tuple[Statement, Reading | None]
"""A statement with the reading that counts, if it has one."""

_KINDS = {str(kind): kind for kind in Kind}
_SAID = {str(said): said for said in Said}
_SURE = {str(sure): sure for sure in Sure}

_subject = lru_cache(1024)(Subject)
_source = lru_cache(1024)(Source)
"""Subjects and sources are the same over and over, and making them would take a fifth of the time of reading a row."""


def statement_of(row: tuple[Any, ...]) -> Statement:
    """The statement in a row selected by SELECT, which may have further columns behind.

    Raises CouldNot for a row that no Boxlore can have written.
    """
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
    """The CouldNot for a column that holds a word which no Boxlore writes there."""
    word = str(error.args[0])[:40]
    return CouldNot(
        f"The database is damaged, or another program wrote to it: {where} holds “{word}”, which means nothing there.",
        "Go back to a backup. A newer Boxlore may know the word.",
    )


def reading_of(row: tuple[Any, ...]) -> Reading | None:
    """The reading in columns selected by READING, or None if they are NULL."""
    if row[0] is None:
        return None
    return Reading(row[0], read_value(row[0], row[1]), row[2], row[3], asks=bool(row[4]), confirmed=bool(row[5]))


def reading_values(reading: Reading) -> tuple[Any, ...]:
    """A reading as a row of READING. Raises WrongUse where its value is not of its kind."""
    text = reading_text(reading)
    return (reading.kind, text, reading.reader, reading.settings, reading.asks, reading.confirmed)


def rows_in_force(db: sqlite3.Connection, condition: str, values: tuple[Any, ...] = ()) -> Iterator[ToldRow]:
    """Statements in force with the readings that count; `condition` is an SQL clause about the statement `s`."""
    query = f"SELECT {SELECT}, {READING} FROM in_force s {NEWEST_READING} WHERE {condition}"
    promises = Promises(db)
    for row in db.execute(query, values):
        yield promises.held(statement_of(row)), reading_of(row[16:])


def statement_values(statement: Statement) -> tuple[Any, ...]:
    """A statement as a row of COLUMNS."""
    return (
        statement.id,
        statement.act,
        statement.subject.kind,
        statement.subject.id,
        statement.field,
        statement.words,
        statement.language,
        statement.source.said,
        statement.source.ref,
        statement.sure,
        statement.audience,
        statement.sitting,
        statement.moment,
        statement.recorded_at,
        statement.by,
        statement.replaces,
    )


DRAFT_COLUMNS = (
    "subject_kind subject field slot words language said source sure audience sitting moment replaces updated_at"
).split()


def draft_values(draft: Draft) -> tuple[Any, ...]:
    """A draft as a row of DRAFT_COLUMNS."""
    return (
        draft.subject.kind,
        draft.subject.id,
        draft.field,
        draft.slot,
        draft.words,
        draft.language,
        draft.source.said,
        draft.source.ref,
        draft.sure,
        draft.audience,
        draft.sitting,
        draft.moment,
        draft.replaces,
        draft.updated_at,
    )


def draft_of(row: tuple[Any, ...]) -> Draft:
    """The draft in a row of DRAFT_COLUMNS. Raises CouldNot for a row that no Boxlore can have written."""
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
