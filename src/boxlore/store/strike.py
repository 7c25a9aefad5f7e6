"""Strike: words taken out for good, at the wish of whoever told them.

The one exception to append-only. The words leave the statement and every earlier form of it, its readings,
drafts, the search index, the write-ahead log and every backup; people, places and events made only from
struck words go too. A tombstone stays (what kind, who, when; no words), so that a joining of two copies does
not bring them back. It is called done only after a case-folded search of every byte of the collection's
folder. While another program reads the file, the old pages cannot be let go of: the strike says that it is
waiting, and finishes when that program leaves, or at the next opening.
"""

import json
import sqlite3
import time
from collections.abc import Callable, Collection, Iterable
from dataclasses import dataclass
from functools import partial

from boxlore.core.statements import fold
from boxlore.store.erasing import STRUCK, delete, empty_log, is_pending, rewrite
from boxlore.store.opening import Store
from boxlore.store.projections import forget
from boxlore.store.rows import SELECT, statement_of
from boxlore.store.strike_proof import PIECE, holding, look_over

__all__ = ["StrikeReport", "finish", "holding", "pending", "strike"]

PAUSE_SECONDS = 0.25

_AMONG = "IN (SELECT value FROM json_each(?))"
_NAMES = "kind IN ('person', 'event', 'place')"
_MEANT = "CASE WHEN json_valid(value) THEN json_extract(value, '$.id') END"

_WAITING = "Another program has the collection open; the strike finishes when it is closed."


@dataclass(frozen=True, slots=True)
class StrikeReport:
    """What a strike came to. `left_in` names files that still hold the words (exports, notes), `unread` files that
    could not be searched; `again` counts statements in the same words that were not struck."""

    struck: int
    finished: bool
    left_in: tuple[str, ...] = ()
    unread: tuple[str, ...] = ()
    again: int = 0


def strike(
    store: Store,
    statements: Iterable[str],
    *,
    by: str,
    now: str,
    waiting: Callable[[str], None] = lambda why: None,
    stopped: Callable[[], bool] = lambda: False,
) -> StrikeReport:
    """Strike these statements (ids) and all that carries their words. Waits for readers until `stopped`."""
    count, words = store.writer.do(lambda db: _take_out(db, list(statements), by, now))
    store.people_version += 1
    if not finish(store, waiting, stopped):
        return StrikeReport(count, finished=False)
    proof = look_over(store.folder, words)
    return StrikeReport(count, True, proof.left_in, proof.unread, proof.again)


def pending(store: Store) -> bool:
    """Whether an earlier strike still waits for its last step."""
    return is_pending(store.db)


def finish(store: Store, waiting: Callable[[str], None], stopped: Callable[[], bool]) -> bool:
    """The last step: no page, free page, log frame or backup keeps what was struck. False if it must wait."""
    rewritten = said = False
    while True:
        store.release_readers()
        if not rewritten:
            rewritten = store.writer.do(partial(rewrite, folder=store.folder), plain=True)
        if rewritten and store.writer.do(empty_log, plain=True):
            return True
        if not said:
            waiting(_WAITING)
            said = True
        if stopped():
            return False
        time.sleep(PAUSE_SECONDS)


def _take_out(db: sqlite3.Connection, asked: list[str], by: str, now: str) -> tuple[int, list[str]]:
    """Take the rows out; returns how many there were and the words they held."""
    ids = _with_earlier_forms(db, asked)
    while further := _made_only_from(db, ids):
        ids |= _with_earlier_forms(db, further)
    rows = db.execute(f"SELECT {SELECT}, s.row FROM statement s WHERE s.id {_AMONG}", (_list(ids),)).fetchall()
    struck = [(statement_of(row), row[16]) for row in rows]
    words = [one.words for one, _ in struck if one.words.strip()]
    meant = db.execute(f"SELECT {_MEANT} FROM reading WHERE statement {_AMONG} AND {_NAMES}", (_list(ids),)).fetchall()
    for one, _ in struck:
        tomb = (one.id, one.subject.kind, one.subject.id, one.field, now, by)
        db.execute("INSERT OR REPLACE INTO tombstone VALUES (?, ?, ?, ?, ?, ?, 0)", tomb)
        _drop_drafts(db, one.subject.id, one.field, ids, words)
    delete(db, [one.id for one, _ in struck])
    _quiet_acts(db, words)
    forget(db, struck, {ident for (ident,) in meant if ident})
    return len(struck), words


def _list(ids: Collection[str]) -> str:
    return json.dumps(sorted(ids))


def _drop_drafts(db: sqlite3.Connection, subject: str, field: str, ids: set[str], words: list[str]) -> None:
    """Drafts of a struck statement, and of the same field where one begins like the other."""
    query = "SELECT slot, words, replaces FROM draft WHERE subject = ? AND field = ?"
    for slot, typed, replaces in db.execute(query, (subject, field)).fetchall():
        line = fold(typed.strip())
        if replaces in ids or any(line in fold(one) or fold(one.strip()) in line for one in words):
            db.execute("DELETE FROM draft WHERE subject = ? AND field = ? AND slot = ?", (subject, field, slot))


def _quiet_acts(db: sqlite3.Connection, words: list[str]) -> None:
    """Lines about other acts that repeat the beginning of what was struck."""
    for one in words:
        start = one.strip()[:PIECE]
        if len(start) > PIECE // 4:
            db.execute("UPDATE act SET what = ? WHERE instr(lower(what), lower(?))", (STRUCK, start))


def _with_earlier_forms(db: sqlite3.Connection, asked: Iterable[str]) -> set[str]:
    """The statements, all that they replaced, and all that replaced those."""
    found: set[str] = set()
    queue = list(asked)
    while queue:
        ident = queue.pop()
        if ident and ident not in found:
            found.add(ident)
            queue += [one for (one,) in db.execute("SELECT replaces FROM statement WHERE id = ?", (ident,))]
            queue += [one for (one,) in db.execute("SELECT id FROM statement WHERE replaces = ?", (ident,))]
    return found


def _made_only_from(db: sqlite3.Connection, ids: set[str]) -> set[str]:
    """Statements about people, events and places that were made in the same acts and that nothing else means."""
    meant = f"SELECT DISTINCT {_MEANT} AS id FROM reading WHERE {_NAMES} AND statement"
    made = {one for (one,) in db.execute(f"{meant} {_AMONG}", (_list(ids),)) if one}
    if not made:
        return set()
    elsewhere = f"{meant} NOT {_AMONG} AND id {_AMONG}"
    made -= {one for (one,) in db.execute(elsewhere, (_list(ids), _list(made)))}
    telling = f"SELECT DISTINCT source FROM statement WHERE said = 'narrator' AND source {_AMONG} AND id NOT {_AMONG}"
    made -= {one for (one,) in db.execute(telling, (_list(made), _list(ids)))}
    earlier = f"""SELECT DISTINCT subject FROM statement WHERE subject {_AMONG} AND (subject_kind NOT IN
        ('person', 'event', 'place') OR act NOT IN (SELECT act FROM statement WHERE id {_AMONG}))"""
    made -= {one for (one,) in db.execute(earlier, (_list(made), _list(ids)))}
    about = f"SELECT id FROM statement WHERE subject {_AMONG} AND id NOT {_AMONG}"
    return {one for (one,) in db.execute(about, (_list(made), _list(ids)))}
