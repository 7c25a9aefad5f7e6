"""All read-only SQL over the log, but for records (`material`) and searches (`searching`); one function a query.

`Store` has a method for each one that others need; its docstring says what the method gives.
"""

import json
import sqlite3
from collections.abc import Callable, Iterable, Iterator, Sequence
from itertools import groupby

from boxlore.core.fields.fixity import FIXITY_WORDS, FixityEvent, FixityRun
from boxlore.core.fields.originals import (
    BY_NUMBER_SQL,
    COUNT_SQL,
    KEPT_IN_SQL,
    KEPT_WORDS,
    NUMBERED_SQL,
    SERIES_SQL,
    Kept,
    kept_bounds,
    number_bounds,
    series_of,
)
from boxlore.core.fields.pictures import (
    EMBEDDED_WORDS,
    FILE_SHA256_SQL,
    FILE_WORDS,
    SHOWS_ITEM_SQL,
    SHOWS_WORDS,
    STRUCK_SQL,
    FileFacts,
    Shows,
)
from boxlore.core.fields.plain_values import START, START_SQL, YES_NO_WORDS
from boxlore.core.fields.sittings import PAPER_WORDS, RECORDING_WORDS, PaperFacts, RecordingFacts
from boxlore.core.fields.table import OWN
from boxlore.core.originals.location_history import Stated
from boxlore.core.records.marks import ContainerPath
from boxlore.core.statements import Sure
from boxlore.store.rows import (
    DRAFT_COLUMNS,
    MEANT,
    PLACE_USED,
    SELECT,
    ToldRow,
    draft_of,
    rows_in_force,
    statement_of,
)
from boxlore.store.schema import FEW_KINDS
from boxlore.store.values import ActDone, Draft, Past, Struck

GIVEN = "given "
"""How names in `meta` begin that hold the highest number of a series ever given (`given TRA`), which a backup that
was brought back may not know."""


def meta(db: sqlite3.Connection, name: str) -> str:
    row = db.execute("SELECT value FROM meta WHERE name = ?", (name,)).fetchone()
    return str(row[0]) if row else ""


def data_version(db: sqlite3.Connection) -> int:
    return int(db.execute("PRAGMA data_version").fetchone()[0])


def statements(db: sqlite3.Connection, subject: str) -> list[ToldRow]:
    return list(rows_in_force(db, "s.subject = ? ORDER BY s.row", (subject,)))


def of_sitting(db: sqlite3.Connection, sitting: str) -> list[ToldRow]:
    return list(rows_in_force(db, "s.sitting = ? ORDER BY s.row", (sitting,)))


def by_subject(db: sqlite3.Connection, kind: str) -> Iterator[tuple[str, list[ToldRow]]]:
    clause = f"{FEW_KINDS} AND " if kind in FEW_KINDS else ""
    rows = rows_in_force(db, f"{clause}s.subject_kind = ? ORDER BY s.subject, s.row", (kind,))
    for subject, rows_of_subject in groupby(rows, key=lambda row: row[0].subject.id):
        yield subject, list(rows_of_subject)


def subjects_told(db: sqlite3.Connection, kind: str, field: str) -> list[str]:
    """Ids of the subjects with a statement in force in this field; `kind` must be one of FEW_KINDS."""
    query = f"SELECT DISTINCT subject FROM in_force WHERE {FEW_KINDS} AND subject_kind = ? AND field = ?"
    return [subject for (subject,) in db.execute(query, (kind, field))]


def items(db: sqlite3.Connection) -> list[tuple[str, str]]:
    return list(db.execute(f"SELECT words, subject FROM in_force WHERE field = 'number' ORDER BY {BY_NUMBER_SQL}"))


def item_ids(db: sqlite3.Connection) -> bytes:
    """Every item's id in the order of numbers, 16 bytes each. SQLite joins them, which takes half as long."""
    current = "field = 'number' AND row NOT IN (SELECT row FROM past)"
    ordered = f"SELECT subject FROM statement WHERE {current} ORDER BY {BY_NUMBER_SQL}"
    (joined,) = db.execute(f"SELECT group_concat(subject, '') FROM ({ordered})").fetchone()
    return bytes.fromhex((joined or "").replace("-", ""))


def items_after(db: sqlite3.Connection, number: str, limit: int) -> list[tuple[str, str]]:
    """At most `limit` pairs (number, id) that follow a number in the order of numbers.

    The order is by series, length and words (TRA-9999 before TRA-10000), so the next ones are sought in three steps:
    same series and length, same series and longer, later series. Each step can use the index over this order.
    """
    series, length = series_of(number), len(number)
    conditions: tuple[tuple[str, tuple[str | int, ...]], ...] = (
        ("{0} = ? AND {1} = ? AND words > ?", (series, length, number)),
        ("{0} = ? AND {1} > ?", (series, length)),
        ("{0} > ?", (series,)),
    )
    chunk: list[tuple[str, str]] = []
    for clause, values in conditions:
        condition = f"field = 'number' AND {clause.format(SERIES_SQL, 'length(words)')}"
        query = f"SELECT words, subject FROM in_force WHERE {condition} ORDER BY {BY_NUMBER_SQL} LIMIT ?"
        chunk += db.execute(query, (*values, limit - len(chunk)))
        if len(chunk) == limit:
            break
    return chunk


def item_by_number(db: sqlite3.Connection, number: str) -> str | None:
    row = db.execute("SELECT subject FROM in_force WHERE field = 'number' AND words = ?", (number,)).fetchone()
    return str(row[0]) if row else None


def number_of(db: sqlite3.Connection, ident: str) -> str:
    row = db.execute("SELECT words FROM in_force WHERE subject = ? AND field = 'number'", (ident,)).fetchone()
    return str(row[0]) if row else ""


def history(db: sqlite3.Connection, subject: str, field: str) -> list[Past]:
    """What a statement of another field replaces, which says nothing of its own here, is withdrawn."""
    query = f"""
        SELECT {SELECT}, s.act IN (SELECT act FROM withdrawn) OR EXISTS (
            SELECT 1 FROM statement r WHERE r.replaces = s.id AND r.replaces <> '' AND r.field <> s.field
            AND r.act NOT IN (SELECT act FROM withdrawn)
        ), EXISTS (SELECT 1 FROM past p WHERE p.row = s.row)
        FROM statement s WHERE s.subject = ? AND s.field = ? ORDER BY s.row"""
    return [
        Past(statement_of(row), "withdrawn" if row[16] else "replaced" if row[17] else "in force")
        for row in db.execute(query, (subject, field))
    ]


def struck(db: sqlite3.Connection) -> set[tuple[str, str]]:
    """(subject, field) of everything that was struck."""
    return set(db.execute("SELECT subject, field FROM tombstone"))


def tombs_about(db: sqlite3.Connection, subjects: Iterable[str]) -> list[str]:
    """Ids of the statements that were struck of these items and scans, or of what belongs to no single item."""
    rows = db.execute("SELECT statement, subject_kind, subject FROM tombstone ORDER BY statement")
    asked = set(subjects)
    return [ident for ident, kind, subject in rows if subject in asked or kind not in ("item", "scan")]


def tombstones(db: sqlite3.Connection) -> Iterator[Struck]:
    """Everything that was struck, in the order of the time."""
    query = "SELECT statement, subject_kind, subject, field, struck_at, by FROM tombstone ORDER BY struck_at, statement"
    return (Struck(*row) for row in db.execute(query))


def fields_of(db: sqlite3.Connection, ids: Sequence[str]) -> dict[str, tuple[str, bool]]:
    """The field of each of these statements, and whether it is in force, by its id."""
    query = """
        SELECT id, field, row NOT IN (SELECT row FROM past) FROM statement
        WHERE id IN (SELECT value FROM json_each(?))"""
    return {ident: (field, bool(in_force)) for ident, field, in_force in db.execute(query, (json.dumps(list(ids)),))}


def last_time(db: sqlite3.Connection) -> str:
    row = db.execute("SELECT max((SELECT max(recorded_at) FROM act), ifnull((SELECT max(updated_at) FROM draft), ''))")
    return str(row.fetchone()[0] or "")


def last_acts(db: sqlite3.Connection, limit: int) -> list[ActDone]:
    query = """
        SELECT a.id, a.what, a.recorded_at, a.by, a.id IN (SELECT act FROM withdrawn) FROM act a
        WHERE NOT EXISTS (SELECT 1 FROM withdrawal w WHERE w.act = a.id)
        ORDER BY a.recorded_at DESC, a.id DESC LIMIT ?"""
    return [ActDone(row[0], row[1], row[2], row[3], bool(row[4])) for row in db.execute(query, (limit,))]


def acts_since(db: sqlite3.Connection, when: str) -> list[str]:
    query = """
        SELECT a.id FROM act a WHERE a.recorded_at >= ? AND NOT EXISTS (SELECT 1 FROM withdrawal w WHERE w.act = a.id)
        ORDER BY a.recorded_at, a.id"""
    return [ident for (ident,) in db.execute(query, (when,))]


def told_besides(db: sqlite3.Connection, acts: Sequence[str]) -> list[str]:
    """A container's place in another is told by its id alone, an item's place in one by its id and a number."""
    query = f"""
        WITH own (act) AS (SELECT value FROM json_each(?)),
             made (subject, field) AS (
                SELECT subject, field FROM statement WHERE act IN own AND field IN ('number', 'file', 'label')),
             later (subject, told) AS (
                SELECT m.subject, s.row FROM made m JOIN statement s ON s.subject = m.subject WHERE m.field = 'number'
                UNION SELECT {SHOWS_ITEM_SQL}, s.row FROM made m JOIN statement s ON s.subject = m.subject
                WHERE m.field = 'file' AND s.field = 'shows'
                UNION SELECT s.subject, s.row FROM made m JOIN statement s
                ON s.words >= m.subject AND s.words < m.subject || '!' WHERE m.field = 'label' AND s.field = 'kept'
                UNION SELECT s.subject, s.row FROM made m JOIN statement s
                ON s.words = m.subject WHERE m.field = 'label' AND s.field = 'inside')
        SELECT DISTINCT l.subject FROM later l JOIN statement s ON s.row = l.told
        WHERE s.act NOT IN own AND s.row NOT IN (SELECT row FROM past) ORDER BY s.row"""
    return [subject for (subject,) in db.execute(query, (json.dumps(list(acts)),))]


def containers(db: sqlite3.Connection) -> list[tuple[str, ContainerPath]]:
    facts: dict[str, dict[str, str]] = {}
    query = f"""SELECT subject, field, words FROM in_force WHERE {FEW_KINDS} AND subject_kind = 'container'
        AND field IN ('kind', 'label', 'inside') ORDER BY row"""
    for subject, field, words in db.execute(query):
        facts.setdefault(subject, {})[field] = words
    return [(ident, _path(facts.get, ident)) for ident in facts]


def path_of(db: sqlite3.Connection, container: str) -> ContainerPath:
    """The path of one container, outermost first; empty if there is no such container."""

    def facts(ident: str) -> dict[str, str] | None:
        query = "SELECT field, words FROM in_force WHERE subject = ? AND subject_kind = 'container' ORDER BY row"
        return dict(db.execute(query, (ident,))) or None

    return _path(facts, container)


def _path(facts: Callable[[str], dict[str, str] | None], ident: str) -> ContainerPath:
    """The path of a container. `facts` gives the words of a container by field; a circle of containers is cut."""
    steps: list[tuple[str, str]] = []
    visited: set[str] = set()
    while ident not in visited and (facts_of := facts(ident)):
        visited.add(ident)
        steps.append((facts_of.get("kind", "box"), facts_of.get("label", "?")))
        ident = facts_of.get("inside", "")
    return tuple(reversed(steps))


def container_facts(db: sqlite3.Connection) -> list[Stated]:
    """Every kind, label and `inside` ever told of containers, past ones too, in the order of the log."""
    query = f"""SELECT s.subject, s.field, s.id, s.act, s.words, a.recorded_at, s.replaces
        FROM statement s JOIN act a ON a.id = s.act WHERE {FEW_KINDS}
        AND subject_kind = 'container' AND field IN ('kind', 'label', 'inside') ORDER BY s.row"""
    return [Stated(*row) for row in db.execute(query)]


def ever_kept(db: sqlite3.Connection, positions: Sequence[Kept]) -> list[str]:
    """Ids of items ever said to be kept at one of these positions."""
    query = """SELECT DISTINCT subject FROM statement WHERE field = 'kept'
        AND words IN (SELECT value FROM json_each(?)) ORDER BY subject"""
    words = json.dumps([KEPT_WORDS.write(kept) for kept in positions])
    return [subject for (subject,) in db.execute(query, (words,))]


def kept_facts(db: sqlite3.Connection, items: Sequence[str]) -> list[Stated]:
    """Every position ever told of these items, past ones too, in the order of the log."""
    query = """SELECT s.subject, s.field, s.id, s.act, s.words, a.recorded_at, s.replaces
        FROM statement s JOIN act a ON a.id = s.act
        WHERE field = 'kept' AND subject IN (SELECT value FROM json_each(?)) ORDER BY s.row"""
    return [Stated(*row) for row in db.execute(query, (json.dumps(list(items)),))]


def withdrawals(db: sqlite3.Connection) -> list[tuple[str, str, str]]:
    """(act, act that it withdraws, when), oldest first."""
    query = "SELECT w.act, w.withdraws, a.recorded_at FROM withdrawal w JOIN act a ON a.id = w.act ORDER BY 3"
    return list(db.execute(query))


def kept_in(db: sqlite3.Connection) -> list[tuple[str, Kept]]:
    """(item id, where it is kept) of every item that is kept somewhere, in the order of the log."""
    query = "SELECT k.subject, k.words FROM in_force k WHERE k.field = 'kept' ORDER BY k.row"
    return [(item, kept) for item, words in db.execute(query) if (kept := KEPT_WORDS.or_none(words))]


def kept_before(db: sqlite3.Connection) -> list[tuple[str, Kept, str]]:
    """(item id, where it was kept, time) of every position that an item has left."""
    query = """
        SELECT s.subject, s.words, s.recorded_at FROM statement s JOIN past p ON p.row = s.row
        WHERE s.field = 'kept' AND s.act NOT IN (SELECT act FROM withdrawn) ORDER BY s.row"""
    return [(item, kept, since) for item, words, since in db.execute(query) if (kept := KEPT_WORDS.or_none(words))]


def wanted(db: sqlite3.Connection) -> list[str]:
    """Ids of the items that an archive has said it wants."""
    query = """
        SELECT subject FROM in_force WHERE field = 'wanted' AND words = ? AND subject_kind = 'item' ORDER BY row"""
    return [str(subject) for (subject,) in db.execute(query, (YES_NO_WORDS.write(True),))]


def words_of(db: sqlite3.Connection, fields: Sequence[str]) -> Iterator[tuple[str, str, str]]:
    """(subject id, field, words) of every statement in force of these fields; not those that say nothing is known."""
    if len(fields) == 1 and fields[0].isidentifier():  # named itself, so that it goes by its index, if it has one
        yield from db.execute(_WORDS_OF.format(f"field = '{fields[0]}'"), (Sure.NOT_KNOWN,))
    else:
        among = "field IN (SELECT value FROM json_each(?))"
        yield from db.execute(_WORDS_OF.format(among), (json.dumps(list(fields)), Sure.NOT_KNOWN))


_WORDS_OF = "SELECT subject, field, words FROM in_force WHERE {} AND sure <> ? ORDER BY +row"
"""By `+row` SQLite does not read all rows for the sake of their order (Query Planner, 2.1 “Unary +”)."""


def every_words(db: sqlite3.Connection) -> Iterator[tuple[str, str, str, str, str, str, str]]:
    """(statement id, subject, field, words, said, source, who gave the consent that it is) of every statement in the
    log, in force or not."""
    consent_by = """(SELECT group_concat(json_extract(value, '$.by'), ' ') FROM reading r
        WHERE r.statement = s.id AND r.kind = 'consent' AND json_valid(value))"""
    query = f"SELECT id, subject, field, words, said, source, ifnull({consent_by}, '') FROM statement s ORDER BY row"
    yield from db.execute(query)


FixityTold = FileFacts | FixityRun | FixityEvent | RecordingFacts | PaperFacts
"""A file that was taken in, or an event."""


def fixity(db: sqlite3.Connection) -> list[tuple[str, str, FixityTold, str]]:
    """(kind, subject, facts, when) of every file taken in, also of a sitting, and every event noted since."""
    query = """
        SELECT subject_kind, subject, field, words, recorded_at FROM in_force
        WHERE field IN ('file', 'fixity', 'recording', 'paper') ORDER BY row"""
    read: dict[str, Callable[[str], FixityTold]] = {
        "file": FILE_WORDS.read,
        "fixity": FIXITY_WORDS.read,
        "recording": RECORDING_WORDS.read,
        "paper": PAPER_WORDS.read,
    }
    return [(kind, subject, read[field](words), when) for kind, subject, field, words, when in db.execute(query)]


def last_position(db: sqlite3.Connection, container: str) -> int:
    query = f"SELECT words FROM in_force WHERE field = 'kept' AND {KEPT_IN_SQL}"
    taken = [KEPT_WORDS.or_none(words) for (words,) in db.execute(query, kept_bounds(container))]
    return max((kept.position for kept in taken if kept), default=0)


def next_number_count(db: sqlite3.Connection, letters: str) -> int:
    query = f"SELECT max({COUNT_SQL}) FROM statement WHERE field = 'number' AND {NUMBERED_SQL}"
    row = db.execute(query, number_bounds(letters)).fetchone()
    return max(int(row[0] or 0), int(meta(db, GIVEN + letters) or 0)) + 1


def series_given(db: sqlite3.Connection) -> set[str]:
    given = f"SELECT substr(name, {len(GIVEN) + 1}) FROM meta WHERE substr(name, 1, {len(GIVEN)}) = '{GIVEN}'"
    numbered = f"SELECT DISTINCT rtrim({SERIES_SQL}, '-') FROM statement WHERE field = 'number'"
    return {letters for (letters,) in db.execute(f"{given} UNION {numbered}")}


def scan_by_sha256(db: sqlite3.Connection, digest: str) -> str:
    query = f"SELECT subject FROM in_force WHERE field = 'file' AND {FILE_SHA256_SQL} = ?"
    row = db.execute(query, (digest,)).fetchone()
    return str(row[0]) if row else ""


def struck_files(db: sqlite3.Connection) -> set[str]:
    """Those of scans here, be their intake taken back or not, and of those that came from a transfer without words."""
    scans = "SELECT subject FROM tombstone WHERE field = 'embedded'"
    here = db.execute(f"SELECT {FILE_SHA256_SQL} FROM statement WHERE field = 'file' AND subject IN ({scans})")
    brought = db.execute(f"SELECT words FROM in_force WHERE field = 'embedded' AND {STRUCK_SQL}")
    return {digest for (digest,) in here} | {EMBEDDED_WORDS.read(words).struck_file for (words,) in brought}


def shown_on(db: sqlite3.Connection, scan: str, area: Sequence[float]) -> str:
    query = "SELECT words FROM in_force WHERE subject = ? AND field = 'shows'"
    for (words,) in db.execute(query, (scan,)).fetchall():
        shows = SHOWS_WORDS.read(words)
        if (shows.area.numbers if shows.area else ()) == tuple(area):
            return number_of(db, shows.item)
    return ""


def showing(db: sqlite3.Connection, item: str) -> list[tuple[str, Shows]]:
    query = f"SELECT subject, words FROM in_force WHERE field = 'shows' AND {SHOWS_ITEM_SQL} = ? ORDER BY row"
    return [(scan, SHOWS_WORDS.read(words)) for scan, words in db.execute(query, (item,))]


def scans(db: sqlite3.Connection) -> Iterator[tuple[str, FileFacts]]:
    for subject, words in db.execute("SELECT subject, words FROM in_force WHERE field = 'file' ORDER BY row"):
        yield subject, FILE_WORDS.read(words)


def scan_facts(db: sqlite3.Connection) -> Iterator[dict[str, list[str]]]:
    query = """SELECT subject, field, words FROM in_force WHERE field IN ('file', 'shows', 'role', 'came_from', 'looks')
        ORDER BY subject, row"""
    for _, rows in groupby(db.execute(query), lambda row: row[0]):
        facts: dict[str, list[str]] = {}
        for _, field, words in rows:
            facts.setdefault(field, []).append(words)
        if "file" in facts:
            yield facts


def drafts(db: sqlite3.Connection) -> list[Draft]:
    query = f"SELECT {', '.join(DRAFT_COLUMNS)} FROM draft ORDER BY updated_at"
    return [draft_of(row) for row in db.execute(query)]


def count(db: sqlite3.Connection, kind: str) -> int:
    own_field = {"item": "number", "scan": "file", "marker": "scan", "relation": "link"}.get(kind)
    condition = (
        f"field = '{own_field}' AND words <> ''" if own_field else FEW_KINDS
    )  # a marker that was taken away has empty words
    query = f"SELECT count(DISTINCT subject) FROM in_force WHERE {condition} AND subject_kind = ?"
    row = db.execute(query, (kind,)).fetchone()
    return int(row[0])


def meaning(db: sqlite3.Connection, ids: Sequence[str]) -> list[ToldRow]:
    """What is in force and has a reading that names one of these people or events, oldest first. Another reading may
    count by now: ask each row's own."""
    marks = ", ".join("?" * len(ids))
    named = f"SELECT statement FROM reading WHERE kind IN ('person', 'event') AND {MEANT} IN ({marks})"
    return list(rows_in_force(db, f"s.id IN ({named}) ORDER BY s.row", tuple(ids)))


def own_fields(db: sqlite3.Connection) -> list[str]:
    rows = db.execute("SELECT DISTINCT field FROM in_force WHERE field GLOB ? ORDER BY field", (f"{OWN}*",))
    return [name for (name,) in rows]


def places_told(db: sqlite3.Connection, words: str) -> list[ToldRow]:
    """The places of items that are told in these words, with their readings, oldest first."""
    told = f"s.field = 'place' AND s.subject_kind = 'item' AND {START_SQL} = ? AND s.words = ? ORDER BY s.row"
    return list(rows_in_force(db, told, (words[:START], words)))


def places_used(db: sqlite3.Connection) -> dict[int, int]:
    """GeoNames ids of the places that readings name which are confirmed or ask nothing, and how many do."""
    query = f"SELECT {PLACE_USED}, count(*) FROM reading WHERE kind = 'place' AND (confirmed OR NOT asks) GROUP BY 1"
    return {ident: times for ident, times in db.execute(query) if ident and isinstance(ident, int)}
