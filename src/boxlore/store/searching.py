"""Finding words and completing names. Both sides are folded; every token is quoted, so no input is syntax."""

import sqlite3
from collections.abc import Iterator
from contextlib import closing
from typing import Any

from boxlore.core.fields.originals import BY_NUMBER_SQL
from boxlore.core.fields.pictures import SHOWS_ITEM_SQL
from boxlore.core.statements import fold
from boxlore.store.queries import path_of
from boxlore.store.schema import STARTS
from boxlore.store.values import Hit

MANY = 10_000
"""Above so many hits they come in the order of numbers: to weigh them all would take longer than one waits."""

SORTED = 200
"""Up to so many names are put in order by sorting them."""

_SOME = "SELECT count(*) FROM (SELECT 1 FROM name WHERE kind = ? AND folded >= ? AND folded < ? LIMIT ?)"

_FOUND = "s.subject_kind, s.subject, s.field, s.words, s.said, s.source"
_MATCHES = "SELECT rowid FROM words_index WHERE words_index MATCH ?"

_BEST = f"""
    SELECT {_FOUND} FROM words_index w JOIN in_force s ON s.row = w.rowid
    WHERE w.words_index MATCH ? ORDER BY w.rank, w.rowid LIMIT ?"""

_IN_ORDER = f"""
    SELECT {_FOUND} FROM in_force n CROSS JOIN in_force s ON s.subject = n.subject
    WHERE n.field = 'number' AND +s.row IN ({_MATCHES})
    ORDER BY {BY_NUMBER_SQL.replace("words", "n.words")}, s.row LIMIT ?"""

_OTHERS = f"""
    SELECT {_FOUND} FROM in_force s
    WHERE s.row IN ({_MATCHES}) AND s.subject_kind <> 'item' ORDER BY s.row LIMIT ?"""

_PERSON_IN_FORCE = "EXISTS (SELECT 1 FROM in_force s WHERE s.subject = n.subject AND s.words = n.words)"
_PLACE_IN_FORCE = """EXISTS (SELECT 1 FROM in_force s
    WHERE s.field = 'place' AND s.subject_kind = 'item' AND substr(s.words, 1, 200) = n.words)"""


def search(db: sqlite3.Connection, words: str, limit: int) -> list[Hit]:
    """Drafts first, then statements in force, the best matches first."""
    tokens = [token for token in fold(words).replace('"', " ").split() if any(map(str.isalnum, token))]
    if not tokens:
        return []
    asked = " ".join(f'"{token}"*' for token in tokens)
    hits = _Hits(db)
    found = [hits.hit(row, draft=True) for row in _drafts(db, tokens)]
    found += [hits.hit(row, draft=False) for row in _statements(db, asked, limit)]
    return found[:limit]


def _statements(db: sqlite3.Connection, asked: str, limit: int) -> list[tuple[Any, ...]]:
    many = f"SELECT count(*) FROM ({_MATCHES} LIMIT ?)"
    if db.execute(many, (asked, MANY + 1)).fetchone()[0] <= MANY:
        return db.execute(_BEST, (asked, limit)).fetchall()
    found = db.execute(_IN_ORDER, (asked, limit)).fetchall()
    if len(found) < limit:
        found += db.execute(_OTHERS, (asked, limit - len(found))).fetchall()
    return found


def _drafts(db: sqlite3.Connection, tokens: list[str]) -> Iterator[tuple[Any, ...]]:
    query = "SELECT subject_kind, subject, field, words, said, source FROM draft ORDER BY updated_at"
    for row in db.execute(query).fetchall():
        folded = fold(row[3])
        if all(token in folded for token in tokens):
            yield row


class _Hits:
    """Says of each row which item it belongs to and where that is kept; remembers the containers it met."""

    def __init__(self, db: sqlite3.Connection) -> None:
        self._db = db
        self._paths: dict[str, str] = {}

    def hit(self, row: tuple[Any, ...], *, draft: bool) -> Hit:
        kind, subject, field, words, said, source = row
        item = subject if kind == "item" else self._item_behind(kind, subject)
        query = "SELECT field, words FROM in_force WHERE subject = ? AND field IN ('number', 'kept') ORDER BY row"
        told = dict(self._db.execute(query, (item,))) if item else {}
        mark = self._mark(told.get("kept", ""))
        return Hit(item, told.get("number", ""), mark, field, words, f"{said}:{source}" if source else said, draft)

    def _mark(self, kept: str) -> str:
        container, _, place = kept.partition(" ")
        if container not in self._paths:
            self._paths[container] = "/".join(label for _, label in path_of(self._db, container))
        path = self._paths[container]
        return f"{path}/{place}" if path else ""

    def _item_behind(self, kind: str, subject: str) -> str:
        """The item that a marker is on; nothing for people, events and places."""
        if kind != "marker":
            return ""
        query = f"""
            SELECT {SHOWS_ITEM_SQL} FROM in_force WHERE field = 'shows'
            AND subject IN (SELECT words FROM in_force WHERE subject = ? AND field = 'scan') LIMIT 1"""
        row = self._db.execute(query, (subject,)).fetchone()
        return str(row[0]) if row else ""


def complete(db: sqlite3.Connection, kind: str, prefix: str, limit: int) -> list[tuple[str, str]]:
    """(id, words) of names in force any part of which begins so, most recently meant first.

    Where many begin so, they are read one by one, until there are enough, from an index that holds the names of
    the same first letters in the order wanted; where few do, all of them are read and put in order.
    """
    start = " ".join(fold(prefix).split())
    if not start:
        return []
    span = (kind, start, f"{start}\U0010ffff")
    letters = min(len(start), STARTS)
    index, alike = f"INDEXED BY name_start_{letters}", f"AND substr(n.folded, 1, {letters}) = ?"
    if len(start) > STARTS and db.execute(_SOME, (*span, SORTED + 1)).fetchone()[0] <= SORTED:
        index = alike = ""
    query = f"""
        SELECT n.subject, n.words FROM name n {index}
        WHERE n.kind = ? AND n.folded >= ? AND n.folded < ? {alike}
        AND CASE n.subject WHEN '' THEN {_PLACE_IN_FORCE} ELSE {_PERSON_IN_FORCE} END
        ORDER BY n.at DESC, n.folded"""
    found: dict[str, tuple[str, str]] = {}
    with closing(db.execute(query, (*span, start[:letters]) if alike else span)) as rows:
        for subject, words in rows:
            found.setdefault(subject or words, (subject, words))
            if len(found) == limit:
                break
    return list(found.values())
