"""The tables of the database, and the migrations that bring an older collection up to date.

`statement`, `act`, `withdrawal`, `settlement`, `weighed`, `reading` and `tombstone` are the log (see `log`): rows are
added and never changed, except by a strike. PROJECTIONS follow from the log and can be made again from it (see
`projections`). `statement_sum` goes with it, row by row (see `row_sums`). `draft` and `meta` are
neither. The name and the columns of `statement` stay for ever, so that a strike works on a backup of any version.
"""

import sqlite3
from collections.abc import Sequence

from boxlore.core.fields.originals import BY_NUMBER_SQL
from boxlore.core.fields.pictures import FILE_SHA256_SQL, LINK_FIRST_SQL, LINK_SECOND_SQL, SHOWS_ITEM_SQL
from boxlore.core.fields.plain_values import START_SQL

FEW_KINDS = "subject_kind IN ('person', 'event', 'place', 'container', 'location', 'sitting', 'collection')"
"""A clause for the kinds of which a collection has few subjects. SQLite uses the index over them only for a query that
holds exactly this clause (Partial Indexes, 3.1)."""

PROJECTIONS = ("withdrawn", "past", "words_index", "name", "used")

APPLICATION_ID = 0x426F784C
"""The application id in the header of the file, “BoxL” (SQLite file format, 1.3.17)."""

WORDS_INDEX = 'CREATE VIRTUAL TABLE words_index USING fts5 (folded, tokenize = "unicode61 remove_diacritics 0");\n'
"""The full-text index, which can be made anew."""

_FIRST = f"""
CREATE TABLE statement (
    row INTEGER PRIMARY KEY,
    id TEXT NOT NULL UNIQUE,
    act TEXT NOT NULL,
    subject_kind TEXT NOT NULL,
    subject TEXT NOT NULL,
    field TEXT NOT NULL,
    words TEXT NOT NULL,
    language TEXT NOT NULL,
    said TEXT NOT NULL,
    source TEXT NOT NULL,
    sure TEXT NOT NULL,
    audience TEXT NOT NULL,
    sitting TEXT NOT NULL,
    moment INTEGER,
    recorded_at TEXT NOT NULL,
    by TEXT NOT NULL,
    replaces TEXT NOT NULL
) STRICT;
CREATE INDEX statement_subject ON statement (subject);
CREATE INDEX statement_act ON statement (act);
CREATE INDEX statement_replaces ON statement (replaces) WHERE replaces <> '';
CREATE UNIQUE INDEX item_number ON statement (words) WHERE field = 'number';
CREATE INDEX item_kept ON statement (words) WHERE field = 'kept';
CREATE INDEX container_inside ON statement (words) WHERE field = 'inside';
CREATE INDEX marker_scan ON statement (words) WHERE field = 'scan';
CREATE INDEX scan_shows ON statement ({SHOWS_ITEM_SQL}) WHERE field = 'shows';
CREATE INDEX scan_bytes ON statement ({FILE_SHA256_SQL}) WHERE field = 'file';
CREATE INDEX link_from ON statement ({LINK_FIRST_SQL}) WHERE field = 'link';
CREATE INDEX link_to ON statement ({LINK_SECOND_SQL}) WHERE field = 'link';
CREATE INDEX kind_field ON statement (subject_kind, field, subject) WHERE {FEW_KINDS};
CREATE INDEX item_order ON statement ({BY_NUMBER_SQL}) WHERE field = 'number';
CREATE INDEX place_told ON statement ({START_SQL}) WHERE field = 'place' AND subject_kind = 'item';
CREATE INDEX scan_file ON statement (subject) WHERE field = 'file';

CREATE TABLE act (
    id TEXT PRIMARY KEY, what TEXT NOT NULL, recorded_at TEXT NOT NULL, by TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX act_time ON act (recorded_at);

CREATE TABLE withdrawal (
    act TEXT NOT NULL, withdraws TEXT NOT NULL, PRIMARY KEY (withdraws, act)
) STRICT, WITHOUT ROWID;
CREATE INDEX withdrawal_act ON withdrawal (act);

CREATE TABLE withdrawn (act TEXT PRIMARY KEY) STRICT, WITHOUT ROWID;

CREATE TABLE past (row INTEGER PRIMARY KEY) STRICT;

CREATE VIEW in_force AS
    SELECT s.* FROM statement s WHERE NOT EXISTS (SELECT 1 FROM past p WHERE p.row = s.row);

CREATE TABLE settlement (
    id TEXT PRIMARY KEY, act TEXT NOT NULL, subject_kind TEXT NOT NULL, subject TEXT NOT NULL,
    field TEXT NOT NULL, outcome TEXT NOT NULL, chosen TEXT NOT NULL, recorded_at TEXT NOT NULL, by TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX settlement_subject ON settlement (subject);
CREATE TABLE weighed (
    settlement TEXT NOT NULL, statement TEXT NOT NULL, PRIMARY KEY (settlement, statement)
) STRICT, WITHOUT ROWID;

CREATE TABLE reading (
    statement TEXT NOT NULL, act TEXT NOT NULL, kind TEXT NOT NULL, value TEXT NOT NULL, reader TEXT NOT NULL,
    settings TEXT NOT NULL, asks INTEGER NOT NULL, confirmed INTEGER NOT NULL, recorded_at TEXT NOT NULL,
    PRIMARY KEY (statement, act)
) STRICT, WITHOUT ROWID;

CREATE TABLE draft (
    subject_kind TEXT NOT NULL, subject TEXT NOT NULL, field TEXT NOT NULL, slot TEXT NOT NULL,
    words TEXT NOT NULL, language TEXT NOT NULL, said TEXT NOT NULL, source TEXT NOT NULL, sure TEXT NOT NULL,
    audience TEXT NOT NULL, sitting TEXT NOT NULL, moment INTEGER, replaces TEXT NOT NULL, updated_at TEXT NOT NULL,
    PRIMARY KEY (subject, field, slot)
) STRICT, WITHOUT ROWID;

CREATE TABLE tombstone (
    statement TEXT PRIMARY KEY, subject_kind TEXT NOT NULL, subject TEXT NOT NULL, field TEXT NOT NULL,
    struck_at TEXT NOT NULL, by TEXT NOT NULL, finished INTEGER NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE meta (name TEXT PRIMARY KEY, value TEXT NOT NULL) STRICT, WITHOUT ROWID;

{WORDS_INDEX}
CREATE TABLE name (
    folded TEXT NOT NULL, subject TEXT NOT NULL, kind TEXT NOT NULL, words TEXT NOT NULL,
    PRIMARY KEY (kind, folded, subject, words)
) STRICT, WITHOUT ROWID;
CREATE TABLE used (subject TEXT PRIMARY KEY, at TEXT NOT NULL) STRICT, WITHOUT ROWID;
"""

STARTS = 4
"""For the first letters of names, from one to this many, there is an index each that has those last meant first."""

STALE = "projections"
"""The name of a row in `meta`. As long as it is there, the projections must be made again before anything else."""

_NAMES_BY_USE = f"""
ALTER TABLE name ADD COLUMN at TEXT NOT NULL DEFAULT '';
UPDATE name SET at = coalesce((SELECT u.at FROM used u WHERE u.subject = name.subject), '');
CREATE INDEX name_subject ON name (subject);
{"".join(f"CREATE INDEX name_start_{n} ON name (kind, substr(folded, 1, {n}), at DESC);" for n in range(1, STARTS + 1))}
INSERT OR REPLACE INTO meta VALUES ('{STALE}', 'to be made again');
"""
"""Adds to each name the time when it was last meant. A backup that was struck has empty projections, so they are then
made again (STALE)."""

SUMS_FROM = "sums_from"
"""The name of a row in `meta`: rows of `statement` up to this one were written before sums were kept."""

SUMS = f"""
CREATE TABLE statement_sum (row INTEGER PRIMARY KEY, sum BLOB NOT NULL) STRICT;
CREATE TRIGGER statement_sum_goes AFTER DELETE ON statement BEGIN
    DELETE FROM statement_sum WHERE row = old.row;
END;
ALTER TABLE reading ADD COLUMN sum BLOB;
ALTER TABLE settlement ADD COLUMN sum BLOB;
INSERT OR REPLACE INTO meta SELECT '{SUMS_FROM}', coalesce(max(row), 0) FROM statement;
"""
"""Adds a sum to each row that is written from now on (see `row_sums`); of earlier rows there is none. A strike works on
tables of any version, so that the trigger, and not its code, takes the sum out with its row."""

EARLIEST = "CASE WHEN json_valid(value) THEN json_extract(value, '$.earliest') END"
"""In SQL: the first day of a date's reading as an ISO day, NULL if it has none."""

_DAYS = f"CREATE INDEX reading_days ON reading ({EARLIEST}) WHERE kind = 'date';"
"""Finds what was told of a day without reading every date (SQLite, Indexes On Expressions)."""

_RARE = "".join(
    f"CREATE INDEX told_{name} ON statement (subject) WHERE field = '{name}';"
    for name in ("naming", "audience", "asked")
)
"""Fields of which there are few statements, and which are asked for of all items whenever one is shown. SQLite uses the
index of one only for a query that names the field itself (Partial Indexes, 3.1)."""

_NUMBERS_MAY_MEET = """
DROP INDEX item_number;
CREATE INDEX item_number ON statement (words) WHERE field = 'number';"""
"""Two copies of a folder may both have given a number, and a joining keeps both rows (`joining`). That this log gives
none twice, `log` sees to."""

MIGRATIONS: tuple[str, ...] = (_FIRST, _NAMES_BY_USE, SUMS, _DAYS, _RARE, _NUMBERS_MAY_MEET)
"""Script n brings a database from version n to n + 1. Add new ones at the end, and never change one."""

VERSION = len(MIGRATIONS)

DAYS_FROM = 4
"""Tables from this version on have the index over the days of dates."""

READ_FROM = 2
"""Tables from this version on can be read as they are, where nothing can be written."""


def migrate(db: sqlite3.Connection, scripts: Sequence[str] = MIGRATIONS) -> int:
    """Bring the database to the last version. Returns how many scripts were run.

    Each script and the new version number are written in one transaction.
    """
    before = version_of(db)
    for number, script in enumerate(scripts[before:], before + 1):
        record = f"PRAGMA application_id = {APPLICATION_ID}; PRAGMA user_version = {number};"
        try:
            db.executescript(f"BEGIN IMMEDIATE; {script} {record} COMMIT;")
        except sqlite3.Error:
            if db.in_transaction:
                db.execute("ROLLBACK")
            raise
    return len(scripts) - before


def version_of(db: sqlite3.Connection) -> int:
    """The version of the tables (`user_version` in the header of the file)."""
    version: int = db.execute("PRAGMA user_version").fetchone()[0]
    return version
