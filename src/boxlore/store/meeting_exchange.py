"""The rows of the log carried to a meeting place and back.

What is new there comes into a database in memory that is as another working copy's would be, so that it is taken in
with the rules of `joining`; what is new here is added there, each row once, in the desk's own name. What the server
lets nobody do (see `meeting_tables`) is not tried.
"""

import json
import sqlite3
from collections.abc import Callable, Iterable, Iterator, Sequence
from contextlib import closing, contextmanager
from dataclasses import dataclass, field

from boxlore.store import schema
from boxlore.store.left_out import NOT_TOLD, LeftOut
from boxlore.store.meeting_place import MeetingPlace, in_words
from boxlore.store.meeting_tables import READING, SETTLEMENT, STATEMENT, TOMBSTONE, WRITTEN
from boxlore.store.queries import GIVEN
from boxlore.store.row_sums import row_sum
from boxlore.store.rows import COLUMNS
from boxlore.store.strike_rewriting import STRUCK

CHANNEL = "boxlore"
"""Desks tell each other here that something is new (LISTEN, NOTIFY): rows, or who has what out."""
ROWS, OUT = "rows", "out"

_AT_ONCE = 2000
_COLUMNS = ", ".join(COLUMNS)

_TYPES = {"moment": "bigint", "asks": "bigint", "confirmed": "bigint", "sum": "bytea", "open": "boolean"}

_ACTS = f"""
    SELECT a.id, coalesce(l.what, '{NOT_TOLD}'), a.recorded_at, a.by FROM boxlore.act a
    LEFT JOIN boxlore.line l ON l.act = a.id WHERE a.id IN (
        SELECT id FROM boxlore.act WHERE place > {{since}}
        UNION SELECT act FROM boxlore.line WHERE place > {{since}})"""

_AGAIN = """ON CONFLICT (statement, act) DO UPDATE SET kind = excluded.kind, value = excluded.value,
    reader = excluded.reader, settings = excluded.settings, asks = excluded.asks, confirmed = excluded.confirmed,
    recorded_at = excluded.recorded_at, sum = excluded.sum, place = boxlore.next_place()
    WHERE (excluded.recorded_at, excluded.value COLLATE "C")
    > (boxlore.reading.recorded_at, boxlore.reading.value COLLATE "C")"""

_FRESH = f"""
    SELECT {_COLUMNS}, t.sum FROM statement s LEFT JOIN statement_sum t ON t.row = s.row
    WHERE s.id IN (SELECT value FROM json_each(?)) ORDER BY s.row"""
_READ = f"SELECT {', '.join(READING)} FROM reading WHERE statement IN (SELECT value FROM json_each(?))"

_STATE = """
    SELECT (SELECT max(recorded_at) FROM act), (SELECT max(row) FROM statement), (SELECT count(*) FROM reading),
    (SELECT count(*) FROM tombstone)"""

_PLACES = " UNION ALL ".join(f"SELECT max(place) FROM boxlore.{table}" for table in (*WRITTEN, "given"))


@dataclass(slots=True)
class Known:
    """What the meeting place has, as far as this desk sees it: ids, and of readings when each was made."""

    acts: set[str] = field(default_factory=set)
    blank: set[str] = field(default_factory=set)
    statements: set[str] = field(default_factory=set)
    readings: dict[tuple[str, str], str] = field(default_factory=dict)
    withdrawals: set[tuple[str, str]] = field(default_factory=set)
    settlements: set[str] = field(default_factory=set)
    tombstones: set[str] = field(default_factory=set)
    given: dict[str, int] = field(default_factory=dict)


@dataclass(slots=True)
class Brought:
    """What went there: acts, statements, tombstones, and all rows; statements that did not, as this desk does not tell
    by the names of those who told them; and how the log here was when it was looked at (`log_state`)."""

    acts: int = 0
    statements: int = 0
    tombstones: int = 0
    rows: int = 0
    of_others: int = 0
    state: str = ""


@contextmanager
def as_one_desk(place: MeetingPlace) -> Iterator[None]:
    """Context: a transaction there while every other desk waits, so that what is read is all there is."""
    with in_words(), place.db.transaction():
        place.db.execute("SELECT boxlore.enter()")
        place.is_alone = True
        try:
            yield
        finally:
            place.is_alone = False


@contextmanager
def fetched(place: MeetingPlace, since: int) -> Iterator[tuple[sqlite3.Connection, int]]:
    """Context: all that is new since a place, as another working copy's database; and the last place in it."""
    with closing(sqlite3.connect("", isolation_level=None, check_same_thread=False)) as there:
        schema.migrate(there)
        there.execute("BEGIN")
        with in_words(), _one_moment(place):
            last = _fetch(place, there, since)
        there.execute("COMMIT")
        yield there, last


@contextmanager
def _one_moment(place: MeetingPlace) -> Iterator[None]:
    """Context: what is read there is as it was at one moment, though others go on. While they wait, it is anyway."""
    with place.db.transaction():
        if not place.is_alone:
            place.db.execute("SET TRANSACTION ISOLATION LEVEL REPEATABLE READ READ ONLY")
        yield


def last_place(place: MeetingPlace) -> int:
    """The last place that was given to a row there, whoever may see it."""
    with in_words():
        ((last,),) = place.db.execute("SELECT boxlore.last_place()").fetchall()
        return int(last)


def _fetch(place: MeetingPlace, there: sqlite3.Connection, since: int) -> int:
    for row, values in enumerate(_new(place, "statement", STATEMENT, since), 1):
        there.execute(f"INSERT INTO statement (row, {_COLUMNS}) VALUES ({_marks(17)})", (row, *values[:-1]))
        if values[-1] is not None:
            there.execute("INSERT INTO statement_sum VALUES (?, ?)", (row, values[-1]))
    put = {
        "reading": (READING, _new(place, "reading", READING, since)),
        "settlement": (SETTLEMENT, _new(place, "settlement", SETTLEMENT, since)),
        "weighed": (WRITTEN["weighed"], _new(place, "weighed", WRITTEN["weighed"], since)),
        "withdrawal": (WRITTEN["withdrawal"], _new(place, "withdrawal", WRITTEN["withdrawal"], since)),
        "tombstone": ((*TOMBSTONE, "finished"), ((*row, 1) for row in _struck(place, since))),
        "act": (("id", "what", "recorded_at", "by"), place.db.execute(_ACTS.format(since=int(since)).encode())),
        "meta": (("name", "value"), ((GIVEN + name, str(count)) for name, count in _given(place, since))),
    }
    for table, (columns, rows) in put.items():
        there.executemany(f"INSERT INTO {table} ({', '.join(columns)}) VALUES ({_marks(len(columns))})", rows)
    ((last,),) = place.db.execute(f"SELECT max(max) FROM ({_PLACES}) p".encode()).fetchall()
    return max(int(last or 0), since)


def _new(place: MeetingPlace, table: str, columns: Sequence[str], since: int) -> Iterator[tuple[object, ...]]:
    query = f"COPY (SELECT {', '.join(columns)} FROM boxlore.{table} WHERE place > {int(since)}) TO STDOUT"
    with place.db.cursor() as cursor, cursor.copy(query.encode()) as copy:
        copy.set_types(
            [_TYPES.get(name, "text").replace("bigint", "int8").replace("boolean", "bool") for name in columns]
        )
        yield from copy.rows()


def _struck(place: MeetingPlace, since: int) -> Iterator[tuple[object, ...]]:
    """Tombstones that count: what others wish struck is for a keeper to decide."""
    query = f"SELECT {', '.join(TOMBSTONE)} FROM boxlore.tombstone WHERE state = 'done' AND place > {int(since)}"
    yield from place.db.execute(query.encode())


def _given(place: MeetingPlace, since: int) -> list[tuple[str, int]]:
    return place.db.execute("SELECT series, count FROM boxlore.given WHERE place > %s", (since,)).fetchall()


def _marks(count: int) -> str:
    return ", ".join("?" * count)


def all_known(place: MeetingPlace) -> Known:
    """The ids of all that is there, as far as this desk sees it."""

    def ids(query: str) -> set[str]:
        return {row[0] for row in place.db.execute(query.encode())}

    with in_words():
        readings = place.db.execute("SELECT statement, act, recorded_at FROM boxlore.reading")
        return Known(
            acts=ids("SELECT id FROM boxlore.act"),
            blank=ids(f"SELECT act FROM boxlore.line WHERE what = '{STRUCK}'"),
            statements=ids("SELECT id FROM boxlore.statement"),
            readings={(statement, act): at for statement, act, at in readings},
            withdrawals=set(place.db.execute("SELECT act, withdraws FROM boxlore.withdrawal").fetchall()),
            settlements=ids("SELECT id FROM boxlore.settlement"),
            tombstones=ids("SELECT statement FROM boxlore.tombstone WHERE state = 'done' OR desk = session_user"),
            given=dict(_given(place, 0)),
        )


def also_known(known: Known, there: sqlite3.Connection) -> None:
    """Add what was fetched to what is known."""
    known.acts.update(act for (act,) in there.execute("SELECT id FROM act"))
    known.blank.update(act for (act,) in there.execute("SELECT id FROM act WHERE what = ?", (STRUCK,)))
    known.statements.update(ident for (ident,) in there.execute("SELECT id FROM statement"))
    known.readings.update(
        ((ident, act), at) for ident, act, at in there.execute("SELECT statement, act, recorded_at FROM reading")
    )
    known.withdrawals.update(there.execute("SELECT act, withdraws FROM withdrawal"))
    known.settlements.update(ident for (ident,) in there.execute("SELECT id FROM settlement"))
    known.tombstones.update(ident for (ident,) in there.execute("SELECT statement FROM tombstone"))
    known.given.update(_counts(there))


def bring(
    place: MeetingPlace, here: sqlite3.Connection, known: Known, left_out: Callable[[set[str], set[str]], LeftOut]
) -> Brought:
    """Add there what is here and not there yet, in the transaction of `as_one_desk`. `left_out` tells of
    the rows and acts that go what is not open to readers and tellers' desks."""
    here.execute("BEGIN")
    try:
        new = _Here(place, here, known)
        brought = Brought(len(new.acts), len(new.statements), len(new.tombstones), of_others=new.of_others)
        brought.state = log_state(here)
        if not new.is_empty:
            kept = left_out(*new.words) if new.has_words else LeftOut()
            with in_words():
                brought.rows = _bring(place, new, kept)
            new.are_known()
    finally:
        here.execute("COMMIT")
    return brought


class _Here:
    """What is here and not there, of what this desk may bring."""

    def __init__(self, place: MeetingPlace, here: sqlite3.Connection, known: Known) -> None:
        self._here, self._known = here, known
        acts = here.execute("SELECT id, what, recorded_at, by FROM act").fetchall()
        self._own = own = {act for act, _, _, by in acts if place.may_bring(by)}
        self.acts = [row for row in acts if row[0] in own and row[0] not in known.acts]
        may_speak = known.acts - known.blank
        self.quiet = [act for act, what, _, _ in acts if what == STRUCK and act in may_speak]
        ids = [ident for (ident,) in here.execute("SELECT id FROM statement") if ident not in known.statements]
        fresh = here.execute(_FRESH, (json.dumps(ids),)).fetchall()
        self.statements = [row for row in fresh if row[1] in own and place.may_bring(row[14])]
        self.of_others = len(fresh) - len(self.statements)
        made = here.execute("SELECT statement, act, recorded_at FROM reading")
        read = {row[0] for row in made if row[1] in own and known.readings.get(row[:2], "") < row[2]}
        self.readings = [
            row
            for row in here.execute(_READ, (json.dumps(sorted(read)),))
            if row[1] in own and known.readings.get(row[:2], "") < row[8]
        ]
        self.withdrawals = [
            row
            for row in here.execute("SELECT act, withdraws FROM withdrawal")
            if row[0] in own and row not in known.withdrawals
        ]
        self.settlements = [
            row
            for row in here.execute(f"SELECT {', '.join(SETTLEMENT)} FROM settlement")
            if row[1] in own and place.may_bring(row[8]) and row[0] not in known.settlements
        ]
        self.tombstones = [
            row
            for row in here.execute(f"SELECT {', '.join(TOMBSTONE)} FROM tombstone")
            if place.may_bring(row[5]) and row[0] not in known.tombstones
        ]
        counts = _counts(here) if place.writes else {}
        self.given = {name: count for name, count in counts.items() if known.given.get(name, -1) < count}

    @property
    def has_words(self) -> bool:
        return bool(self.acts or self.statements or self.settlements)

    @property
    def words(self) -> tuple[set[str], set[str]]:
        """The ids of the rows that go, and of the acts that do or that something of goes."""
        of_settlements = {row[1] for row in self.settlements}
        return {row[0] for row in self.statements}, {row[0] for row in self.acts} | of_settlements

    @property
    def is_empty(self) -> bool:
        others = (self.quiet, self.readings, self.withdrawals, self.tombstones, self.given)
        return not self.has_words and not any(others)

    def are_known(self) -> None:
        """All of it is there now."""
        known = self._known
        known.acts.update(row[0] for row in self.acts)
        known.blank.update(self.quiet)
        known.blank.update(row[0] for row in self.acts if row[1] == STRUCK)
        known.statements.update(row[0] for row in self.statements)
        known.readings.update((row[:2], row[8]) for row in self.readings)
        known.withdrawals.update(self.withdrawals)
        known.settlements.update(row[0] for row in self.settlements)
        known.tombstones.update(row[0] for row in self.tombstones)
        known.given.update(self.given)

    def weighed(self) -> list[tuple[str, str]]:
        fresh = {row[0] for row in self.settlements}
        return [row for row in self._here.execute("SELECT settlement, statement FROM weighed") if row[0] in fresh]


def _bring(place: MeetingPlace, new: _Here, kept: LeftOut) -> int:
    is_open = {
        "line": [(act, what, act not in kept.lines) for act, what, _, _ in new.acts],
        "statement": [(*row, row[0] not in kept.rows) for row in new.statements],
        "settlement": [(*row, row[0] not in kept.settlements) for row in new.settlements],
    }
    rows: dict[str, list[tuple[object, ...]]] = {
        "act": [(act, at, by) for act, _, at, by in new.acts],
        **is_open,
        "reading": [(*row[:9], row_sum(row[:9]) if row[9] is None else row[9]) for row in new.readings],
        "weighed": [*new.weighed()],
        "withdrawal": [*new.withdrawals],
        "tombstone": [*new.tombstones],
    }
    for table, every in rows.items():
        _add(place, table, every)
    if new.quiet:
        place.db.execute("SELECT boxlore.quiet(%s)", (new.quiet,))
    for name, count in new.given.items():
        place.db.execute("SELECT boxlore.give(%s, %s)", (name, count))
    place.db.execute("SELECT pg_notify(%s, %s)", (CHANNEL, ROWS))
    return sum(map(len, rows.values()))


def _add(place: MeetingPlace, table: str, rows: Sequence[tuple[object, ...]]) -> None:
    columns = WRITTEN[table]
    arrays = ", ".join(f"%s::{_TYPES.get(name, 'text')}[]" for name in columns)
    again = _AGAIN if table == "reading" else "ON CONFLICT DO NOTHING"
    query = f"INSERT INTO boxlore.{table} ({', '.join(columns)}) SELECT * FROM unnest({arrays}) {again}"
    for start in range(0, len(rows), _AT_ONCE):
        some = rows[start : start + _AT_ONCE]
        place.db.execute(query.encode(), [list(column) for column in zip(*some, strict=True)])


def _counts(db: sqlite3.Connection) -> dict[str, int]:
    query = f"SELECT name, value FROM meta WHERE substr(name, 1, {len(GIVEN)}) = '{GIVEN}'"
    return {name.removeprefix(GIVEN): int(value) for name, value in db.execute(query)}


def mark(place: MeetingPlace, left_out: LeftOut) -> tuple[int, int]:
    """Put right what is open there, by what this keeper's desk leaves out of a parcel for the family. Returns how many
    statements were opened, and how many closed."""
    counted = []
    for is_open in (True, False):
        wrong = [
            [one for one, marked in _marks_of(place, table, key) if marked != is_open and (one in kept) != is_open]
            for table, key, kept in (
                ("statement", "id", left_out.rows), ("line", "act", left_out.lines),
                ("settlement", "id", left_out.settlements),
            )
        ]  # fmt: skip
        if any(wrong):
            with in_words():
                place.db.execute("SELECT boxlore.mark(%s, %s, %s, %s)", (is_open, *wrong))
        counted.append(len(wrong[0]))
    return counted[0], counted[1]


def _marks_of(place: MeetingPlace, table: str, key: str) -> Iterable[tuple[str, bool]]:
    with in_words():
        return place.db.execute(f"SELECT {key}, open FROM boxlore.{table}".encode()).fetchall()


def log_state(here: sqlite3.Connection) -> str:
    """What is another whenever the log here has got or lost a row. A word that is being typed changes nothing of it."""
    return repr(here.execute(_STATE).fetchone())


def listen(place: MeetingPlace) -> None:
    """From now on hear when another desk brings something."""
    with in_words():
        place.db.execute(f"LISTEN {CHANNEL}".encode())


def heard(place: MeetingPlace, seconds: float) -> set[str]:
    """Wait so long for another desk; of what there is news, ROWS or OUT."""
    own = place.db.info.backend_pid
    with in_words():
        return {note.payload for note in place.db.notifies(timeout=seconds, stop_after=1) if note.pid != own}


def have_out(place: MeetingPlace, item: str, by: str) -> None:
    """Say to the others which item is out here, by its id; '' for none."""
    with in_words():
        place.db.execute("SELECT boxlore.have_out(%s, %s)", (item, by))
        place.db.execute("SELECT pg_notify(%s, %s)", (CHANNEL, OUT))


def who_has_out(place: MeetingPlace, seconds: float) -> list[tuple[str, str]]:
    """(login, item) of what other desks have out, and said so in the last seconds."""
    query = """SELECT role, item FROM boxlore.out_now WHERE role <> session_user AND item <> ''
        AND at > now() - make_interval(secs => %s) ORDER BY role"""
    with in_words():
        return place.db.execute(query, (seconds,)).fetchall()


def wishes(place: MeetingPlace) -> list[tuple[str, str, str, str]]:
    """(statement, subject, field, by) of what a teller's desk wishes struck that others told, for a keeper."""
    query = "SELECT statement, subject, field, by FROM boxlore.tombstone WHERE state = 'asked' ORDER BY struck_at"
    with in_words():
        return place.db.execute(query).fetchall()


def refuse(place: MeetingPlace, statements: Sequence[str]) -> None:
    """Let what was wished struck stand."""
    with in_words():
        place.db.execute("SELECT boxlore.answer(false, %s)", (list(statements),))
