"""Joining: what was told in another working copy of the collection is taken into this one.

Theory of operation
===================

The problem. A brother abroad has the other half of the shoeboxes; a society has two laptops. Both copies of one
collection go on, each by itself, for months. Then they are to be one again, and whoever joins first, or twice, or by
way of a third copy, must find the same; and nothing that was told may be lost, nor anything struck come back.

The idea. The log is made of rows that are never changed, each with an id that nobody else has (see `log`). So a joined
log is the union of both by id, and what is in force follows from it as it always does. Four things need a rule.

- Order. Of two answers that weigh the same, the later in the log counts. A row's place must therefore not depend on who
  joined whom: after a joining the rows stand in the order of their times and ids (`_put_in_order`).
- Strikes. What either copy has struck, with all its earlier and later forms in either copy, is gone in both
  (`forms_struck`): rows of this log by a strike of its own (`strike`), before anything is taken in; rows of the other
  are never written here. Their tombstones are the union too. So a correction made there of what was struck here is
  struck, and a person whom only such rows brought goes with them.
- An act whose line is blanked in one copy is blank in both, for the line may repeat struck words; so are the lines of
  what undid or redid them, and whatever else repeats them.
- A number given twice. Each working copy numbers in a series of its own, so this comes only of a folder that was copied
  by hand. Both rows stand; `twice` names the two items, and the keeper gives the later one a new number.

What always holds
- The same rows come of it in any order and however often; a test draws random tellings, undoings, strikes and joinings
  of three copies and finds them equal at the end.
- All rows come in one transaction, or none.
- A row that is not as it was written there (`row_sums`) is not taken; nothing is, until that is put right.
- What is still being typed (drafts) stays where it is typed.

An example. Leida's copy A holds s1, “about 1935”. In copy B Aksel corrects it to s2, “1936”; in A Leida has s1 struck.
B joins A: s1 is struck there, and s2, a form of it, with it. A joins B: s2 is not taken; A notes a tombstone for it.
Either way both hold two tombstones and neither row.
"""

import json
import sqlite3
from collections.abc import Callable, Iterable, Iterator
from contextlib import closing, contextmanager
from dataclasses import dataclass
from pathlib import Path

from boxlore.core.errors import CouldNot, WrongUse
from boxlore.store import projections
from boxlore.store.database_file import DATABASE, check_file, connect_to_read, errors_in_words
from boxlore.store.left_out import NOT_TOLD, NOTHING, LeftOut
from boxlore.store.opening import Store
from boxlore.store.queries import GIVEN
from boxlore.store.row_sums import row_sum
from boxlore.store.rows import COLUMNS, MEANT, reading_of, statement_of
from boxlore.store.schema import VERSION, version_of
from boxlore.store.strike import with_what_follows
from boxlore.store.strike_rewriting import STRUCK, TOMB, acts_of, blank_lines, quiet_acts

_COLUMNS = ", ".join(COLUMNS)
_ACT = COLUMNS.index("act")
_READING = "statement, act, kind, value, reader, settings, asks, confirmed, recorded_at, sum"
_SETTLEMENT = "id, act, subject_kind, subject, field, outcome, chosen, recorded_at, by, sum"
_FORMS = "SELECT id, replaces FROM statement WHERE replaces <> ''"

_OUT_OF_PLACE = """
    WITH in_order AS (SELECT row, row_number() OVER (ORDER BY recorded_at, id) AS place FROM statement),
    as_they_stand AS (SELECT row, row_number() OVER (ORDER BY row) AS place FROM statement),
    first AS (SELECT min(place) AS place FROM in_order o JOIN as_they_stand s USING (place) WHERE o.row <> s.row)
    SELECT o.row, (SELECT max(row) FROM statement) + row_number() OVER (ORDER BY o.place)
    FROM in_order o, first WHERE o.place >= first.place"""
"""(row, the row that it is to be) of the first statement that does not stand in the order of times and ids, and of all
behind it: each gets a place behind all there are, so that no two have one place on the way."""

_BLANK_WHAT_UNDID = f"""
    WITH RECURSIVE blank (act) AS (
        SELECT id FROM act WHERE what = '{STRUCK}'
        UNION SELECT w.act FROM withdrawal w JOIN blank b ON w.withdraws = b.act)
    UPDATE act SET what = '{STRUCK}' WHERE what <> '{STRUCK}' AND id IN (SELECT act FROM blank)"""
"""What undid or redid an act whose line is blank may have come without the rows by which that is known."""

_TWICE = """
    SELECT s.words, s.subject FROM in_force s WHERE s.field = 'number' AND s.words IN (
        SELECT words FROM in_force WHERE field = 'number' GROUP BY words HAVING count(*) > 1)
    ORDER BY s.words, s.recorded_at, s.id"""

_CORRECTED_TWICE = """
    SELECT s.subject, s.field, s.words, s.by FROM in_force s WHERE s.replaces <> '' AND s.replaces IN (
        SELECT replaces FROM in_force WHERE replaces <> '' GROUP BY replaces HAVING count(*) > 1)
    AND EXISTS (SELECT 1 FROM in_force o WHERE o.replaces = s.replaces AND o.id IN (SELECT value FROM json_each(?)))
    ORDER BY s.replaces, s.row"""


@dataclass(frozen=True, slots=True)
class Correction:
    """One of two or more corrections of the same words, made in different copies: of which thing (its id), in which
    field, the new words, and who made it."""

    subject: str
    field: str
    words: str
    by: str


@dataclass(frozen=True, slots=True)
class Joined:
    """What came in: how many acts, statements and tombstones, and by whom the acts are, in the order of the time.

    `twice` holds the number, the item that had it first and a later one, for each number that two items have;
    `corrected_twice` what was corrected in both copies, of which both corrections stand.
    """

    acts: int
    statements: int
    tombstones: int
    by: tuple[str, ...]
    twice: tuple[tuple[str, str, str], ...]
    corrected_twice: tuple[Correction, ...]


@contextmanager
def copy_to_join(folder: Path, collection: str) -> Iterator[sqlite3.Connection]:
    """Context: the database of another working copy, read as it was when it was opened, for somebody may go on telling
    and striking there. Raises CouldNot, WrongUse if it is none."""
    path = folder / DATABASE
    check_file(path)
    with errors_in_words(path), closing(connect_to_read(path)) as there:
        there.execute("BEGIN")
        if version_of(there) != VERSION:
            raise CouldNot(f"{path} was written by an older Boxlore.", "Open it once with this one, there or here.")
        if there.execute("SELECT value FROM meta WHERE name = 'collection'").fetchone() != (collection,):
            raise WrongUse(
                f"{folder} holds another collection, and no working copy of this one.",
                "A working copy is made with boxlore new FOLDER --join THIS; two families' collections stay two.",
            )
        yield there


def forms_struck(here: sqlite3.Connection, there: sqlite3.Connection) -> set[str]:
    """The ids of all that was struck in either copy, with all earlier and later forms that either has."""
    beside: dict[str, list[str]] = {}
    for db in (here, there):
        for ident, replaces in db.execute(_FORMS):
            beside.setdefault(ident, []).append(replaces)
            beside.setdefault(replaces, []).append(ident)
    to_follow = [ident for db in (here, there) for (ident,) in db.execute("SELECT statement FROM tombstone")]
    forms: set[str] = set()
    while to_follow:
        ident = to_follow.pop()
        if ident not in forms:
            forms.add(ident)
            to_follow += beside.get(ident, ())
    return forms


def to_strike(here: sqlite3.Connection, struck: Iterable[str]) -> list[str]:
    """Those of the ids that are rows here."""
    query = "SELECT id FROM statement WHERE id IN (SELECT value FROM json_each(?))"
    return [ident for (ident,) in here.execute(query, (json.dumps(sorted(struck)),))]


def join(
    store: Store,
    there: sqlite3.Connection,
    by: str,
    now: str,
    agree: Callable[[Joined], None] = lambda _: None,
    left_out: LeftOut = NOTHING,
) -> Joined:
    """Take in all that the other copy has and this one has not, but what is left out, in one transaction.

    What was struck there must be struck here already. `by` and `now` stand in the tombstones of what is struck because
    of this joining; what `agree` raises of what came leaves all as it was. What is left out is not struck: a later
    joining may bring it. Raises CouldNot for rows that are not as they were written.
    """

    def take_in(db: sqlite3.Connection) -> Joined:
        joined = _take_in(db, there, by, now, left_out)
        agree(joined)
        return joined

    joined: Joined = store.writer.do(take_in)
    store.people_version += 1
    return joined


def _take_in(here: sqlite3.Connection, there: sqlite3.Connection, by: str, now: str, left_out: LeftOut) -> Joined:
    refused = forms_struck(here, there)
    refused |= _made_only_from(here, there, refused)
    tombstones = _take_tombstones(here, there, refused, by, now)
    acts, names = _take_acts(here, there, refused, left_out)
    taken = _take_statements(here, there, refused, left_out)
    for (act,) in _take_withdrawals(here, there):
        projections.weigh_act(here, act)
    here.execute(_BLANK_WHAT_UNDID)
    for row, values in taken:
        projections.add(here, row, statement_of(values))
    _take_readings(here, there, left_out)
    _take_settlements(here, there, left_out)
    _take_counts(here, there)
    if taken:
        _put_in_order(here)
    corrected = here.execute(_CORRECTED_TWICE, (json.dumps([values[0] for _, values in taken]),))
    return Joined(
        acts, len(taken), tombstones, names, tuple(_twice(here)), tuple(Correction(*row) for row in corrected)
    )


def _made_only_from(here: sqlite3.Connection, there: sqlite3.Connection, struck: set[str]) -> set[str]:
    """The ids of what only the other copy has of people, events and places that are there because of struck rows."""
    known = "SELECT 1 FROM statement WHERE subject = ? UNION ALL SELECT 1 FROM statement WHERE source = ? LIMIT 1"
    meant = f"SELECT 1 FROM reading WHERE {MEANT} = ? LIMIT 1"
    about = "SELECT subject FROM statement WHERE id = ?"
    only_there = set()
    for ident in with_what_follows(there, sorted(struck)) - struck:
        ((subject,),) = there.execute(about, (ident,)).fetchall()
        if not here.execute(known, (subject, subject)).fetchone() and not here.execute(meant, (subject,)).fetchone():
            only_there.add(ident)
    return only_there


def _take_tombstones(here: sqlite3.Connection, there: sqlite3.Connection, refused: set[str], by: str, now: str) -> int:
    """The union of the tombstones; of two for one statement, the earlier. Those of rows refused only now are made."""
    known = {ident for (ident,) in here.execute("SELECT statement FROM tombstone")}
    rows = there.execute(f"SELECT {TOMB} FROM tombstone").fetchall()
    named = known | {row[0] for row in rows}
    about = "SELECT id, subject_kind, subject, field FROM statement WHERE id = ?"
    for ident in sorted(refused - named):
        if row := there.execute(about, (ident,)).fetchone():
            rows.append((*row, now, by))
    here.executemany(
        f"""INSERT INTO tombstone ({TOMB}, finished) VALUES (?, ?, ?, ?, ?, ?, 1) ON CONFLICT (statement) DO UPDATE
        SET struck_at = excluded.struck_at, by = excluded.by
        WHERE (excluded.struck_at, excluded.by) < (struck_at, by)""",
        rows,
    )
    return len({row[0] for row in rows} - known)


def _take_acts(
    here: sqlite3.Connection, there: sqlite3.Connection, refused: set[str], left_out: LeftOut
) -> tuple[int, tuple[str, ...]]:
    """The acts; the lines of those that told, undid or redid what is refused, that repeat its words, or that are blank
    there, are blank here. Returns how many came, and by whom."""
    known = {act for (act,) in here.execute("SELECT id FROM act")}
    quiet = acts_of(there, refused)
    quiet |= {act for (act,) in there.execute("SELECT id FROM act WHERE what = ?", (STRUCK,))}
    rows = [
        (act, STRUCK if act in quiet else NOT_TOLD if act in left_out.lines else what, at, by)
        for act, what, at, by in there.execute("SELECT id, what, recorded_at, by FROM act ORDER BY recorded_at, id")
        if act not in known and act not in left_out.acts
    ]
    here.executemany("INSERT INTO act (id, what, recorded_at, by) VALUES (?, ?, ?, ?)", rows)
    blank_lines(here, quiet)
    words = "SELECT words FROM statement WHERE id IN (SELECT value FROM json_each(?))"
    quiet_acts(here, [told for (told,) in there.execute(words, (json.dumps(sorted(refused)),))])
    return len(rows), tuple(dict.fromkeys(row[3] for row in rows))


def _take_statements(
    here: sqlite3.Connection, there: sqlite3.Connection, refused: set[str], left_out: LeftOut
) -> list[tuple[int, tuple[object, ...]]]:
    """(row, values) of every statement that was taken in."""
    known = {ident for (ident,) in here.execute("SELECT id FROM statement")}
    query = f"SELECT {_COLUMNS}, t.sum FROM statement s LEFT JOIN statement_sum t ON t.row = s.row ORDER BY s.row"
    append = f"INSERT INTO statement ({_COLUMNS}) VALUES ({', '.join('?' * len(COLUMNS))})"
    taken = []
    for *row, kept in there.execute(query):
        if row[0] in known or row[0] in refused or row[0] in left_out.rows or row[_ACT] in left_out.acts:
            continue
        values = tuple(row)
        made = _check(kept, values)
        at = here.execute(append, values).lastrowid
        assert at is not None  # an INSERT that did not raise has a row
        here.execute("INSERT OR REPLACE INTO statement_sum VALUES (?, ?)", (at, made))
        taken.append((at, values))
    return taken


def _check(kept: bytes | None, values: Iterable[str | bytes | int | None]) -> bytes:
    """The sum of a row. Raises CouldNot where one of the other copy is not as it was written; rows from before the sums
    have none."""
    made = row_sum(values)
    if kept is not None and kept != made:
        raise CouldNot(
            "Something in the other copy is not as it was written there.",
            "boxlore -c FOLDER verify, there, names it; boxlore restore can bring a backup back. Nothing was taken in.",
        )
    return made


def _take_withdrawals(here: sqlite3.Connection, there: sqlite3.Connection) -> list[tuple[str]]:
    """The acts whose withdrawals came in."""
    fresh = []
    for act, undone in there.execute("SELECT act, withdraws FROM withdrawal").fetchall():
        if here.execute("INSERT OR IGNORE INTO withdrawal VALUES (?, ?)", (act, undone)).rowcount:
            fresh.append((undone,))
    return fresh


def _take_readings(here: sqlite3.Connection, there: sqlite3.Connection, left_out: LeftOut) -> None:
    """Readings of statements that are here; of two made by one act, which was still going on, the later.

    Those of what was told in acts that are left out come too, if they were made later: where they go it is known.
    """
    is_here = "SELECT 1 FROM statement WHERE id = ?"
    of_acts = "SELECT id FROM statement WHERE act IN (SELECT value FROM json_each(?))"
    known_there = {ident for (ident,) in there.execute(of_acts, (json.dumps(sorted(left_out.acts)),))} - left_out.rows
    take = f"""INSERT INTO reading ({_READING}) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)
        ON CONFLICT (statement, act) DO UPDATE SET kind = excluded.kind, value = excluded.value,
        reader = excluded.reader, settings = excluded.settings, asks = excluded.asks, confirmed = excluded.confirmed,
        recorded_at = excluded.recorded_at, sum = excluded.sum
        WHERE (excluded.recorded_at, excluded.value) > (recorded_at, value)"""
    for *row, kept in there.execute(f"SELECT {_READING} FROM reading"):
        has_it = here.execute(is_here, (row[0],)).fetchone()
        if has_it or (row[0] in known_there and row[1] not in left_out.acts):
            is_newer = here.execute(take, (*row, _check(kept, row))).rowcount
            if has_it and is_newer and (reading := reading_of(tuple(row[2:8]))):
                projections.add_reading(here, reading, row[8])


def _take_settlements(here: sqlite3.Connection, there: sqlite3.Connection, left_out: LeftOut) -> None:
    for *row, kept in there.execute(f"SELECT {_SETTLEMENT} FROM settlement"):
        if row[0] in left_out.settlements:
            continue
        marks = ", ".join("?" * (len(row) + 1))
        here.execute(f"INSERT OR IGNORE INTO settlement ({_SETTLEMENT}) VALUES ({marks})", (*row, _check(kept, row)))
    weighed = [row for row in there.execute("SELECT * FROM weighed") if row[0] not in left_out.settlements]
    here.executemany("INSERT OR IGNORE INTO weighed VALUES (?, ?)", weighed)


def _take_counts(here: sqlite3.Connection, there: sqlite3.Connection) -> None:
    """The highest number ever given of each series, in whichever copy."""
    query = f"SELECT name, value FROM meta WHERE substr(name, 1, {len(GIVEN)}) = '{GIVEN}'"
    for name, value in there.execute(query):
        here.execute(
            """INSERT INTO meta VALUES (?, ?) ON CONFLICT (name) DO UPDATE SET value = excluded.value
            WHERE CAST(excluded.value AS INTEGER) > CAST(value AS INTEGER)""",
            (name, value),
        )


def _put_in_order(db: sqlite3.Connection) -> None:
    """Let the rows stand in the order of their times and ids, each with what is kept beside it.

    Rows from before the sums lie among others afterwards; they get sums, of what they are now.
    """
    moves = db.execute(_OUT_OF_PLACE).fetchall()
    db.execute("CREATE TEMP TABLE moved (row INTEGER PRIMARY KEY, place INTEGER NOT NULL)")
    db.executemany("INSERT INTO moved VALUES (?, ?)", moves)
    among = "IN (SELECT row FROM moved)"
    for table, key in (("statement", "row"), ("statement_sum", "row"), ("past", "row"), ("words_index", "rowid")):
        place = f"(SELECT place FROM moved WHERE moved.row = {table}.{key})"
        db.execute(f"UPDATE {table} SET {key} = {place} WHERE {key} {among}")
    db.execute("DROP TABLE moved")
    without = f"SELECT s.row, {_COLUMNS} FROM statement s WHERE s.row NOT IN (SELECT row FROM statement_sum)"
    for row, *values in db.execute(without).fetchall():
        db.execute("INSERT INTO statement_sum VALUES (?, ?)", (row, row_sum(values)))


def _twice(db: sqlite3.Connection) -> Iterator[tuple[str, str, str]]:
    first: dict[str, str] = {}
    for number, item in db.execute(_TWICE):
        if first.setdefault(number, item) != item:
            yield number, first[number], item
