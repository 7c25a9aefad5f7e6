"""Searching words and completing names.

Both the words asked for and those searched are folded. Every token is quoted, so that nothing typed is taken for the
syntax of a full-text query.
"""

import sqlite3
from collections.abc import Iterator
from contextlib import closing
from typing import Any

from boxlore.core.fields.originals import BY_NUMBER_SQL, KEPT_WORDS
from boxlore.core.fields.pictures import SHOWS_ITEM_SQL
from boxlore.core.fields.plain_values import START_SQL
from boxlore.core.records.marks import ContainerPath, Mark
from boxlore.core.statements import fold
from boxlore.store.queries import path_of
from boxlore.store.rows import LATEST, NEWEST_READING
from boxlore.store.schema import DAYS_FROM, EARLIEST, STARTS, version_of
from boxlore.store.values import Hit

MANY = 10_000
"""If there are more hits than this, they come in the order of numbers, because ranking them all takes too long."""

SORTED = 200
"""The most names that are sorted after reading them all (see `complete`)."""

MARKS = ".,;:!?()[]“”\"'’"
"""What stands at the ends of words."""

_COUNT_NAMES = "SELECT count(*) FROM (SELECT 1 FROM name WHERE kind = ? AND folded >= ? AND folded < ? LIMIT ?)"

_HIT_COLUMNS = "s.subject_kind, s.subject, s.field, s.words, s.said, s.source"
_MATCHES = "SELECT rowid FROM words_index WHERE words_index MATCH ?"

_BEST = f"""
    SELECT {_HIT_COLUMNS} FROM words_index w JOIN in_force s ON s.row = w.rowid
    WHERE w.words_index MATCH ? ORDER BY w.rank, w.rowid LIMIT ?"""

_IN_ORDER = f"""
    SELECT {_HIT_COLUMNS} FROM in_force n CROSS JOIN in_force s ON s.subject = n.subject
    WHERE n.field = 'number' AND +s.row IN ({_MATCHES})
    ORDER BY {BY_NUMBER_SQL.replace("words", "n.words")}, s.row LIMIT ?"""

_NOT_ITEMS = f"""
    SELECT {_HIT_COLUMNS} FROM in_force s
    WHERE s.row IN ({_MATCHES}) AND s.subject_kind <> 'item' ORDER BY s.row LIMIT ?"""

_DATED = f"""
    SELECT {_HIT_COLUMNS} FROM (
        SELECT statement, act, {EARLIEST} AS begins FROM reading {{by_days}}
        WHERE kind = 'date' AND {EARLIEST} >= ? AND {EARLIEST} <= ? AND {LATEST} <= ? ORDER BY begins, statement) d
    CROSS JOIN in_force s ON s.id = d.statement {NEWEST_READING}
    WHERE s.subject_kind = 'item' AND r.act = d.act ORDER BY d.begins, d.statement LIMIT ?"""
"""Ids of statements sort by time. Tables older than their index are read without it."""

_PERSON_IN_FORCE = "EXISTS (SELECT 1 FROM in_force s WHERE s.subject = n.subject AND s.words = n.words)"
_PLACE_IN_FORCE = f"""EXISTS (SELECT 1 FROM in_force s
    WHERE s.field = 'place' AND s.subject_kind = 'item' AND {START_SQL} = n.words)"""


def search(db: sqlite3.Connection, words: str, limit: int) -> list[Hit]:
    """At most `limit` hits: drafts first, then statements in force, the best matches first.

    A hit holds all the words, or words that begin with them.
    """
    tokens = [token for token in fold(words).replace('"', " ").split() if any(map(str.isalnum, token))]
    if not tokens:
        return []
    match = " ".join(f'"{token}"*' for token in tokens)
    maker = _HitMaker(db)
    hits = [maker.hit(row, draft=True) for row in _drafts(db, tokens)]
    hits += [maker.hit(row, draft=False) for row in _statements(db, match, limit)]
    return hits[:limit]


def dated(db: sqlite3.Connection, first: str, last: str, limit: int) -> list[Hit]:
    """What was told of items and read as a date from one day to the other, in the order of the days."""
    maker = _HitMaker(db)
    query = _DATED.format(by_days="INDEXED BY reading_days" if version_of(db) >= DAYS_FROM else "")
    return [maker.hit(row, draft=False) for row in db.execute(query, (first, last, last, limit)).fetchall()]


def words_beginning(db: sqlite3.Connection, start: str, limit: int) -> set[str]:
    """Of at most `limit` statements."""
    query = """
        SELECT w.folded FROM words_index w JOIN in_force s ON s.row = w.rowid WHERE w.words_index MATCH ? LIMIT ?"""
    letters = "".join(filter(str.isalnum, fold(start)))
    rows = db.execute(query, (f'"{letters}"*', limit)).fetchall() if letters else []
    words = {word.strip(MARKS) for (folded,) in rows for word in folded.split()}
    return {word for word in words if word.startswith(letters)}


def _statements(db: sqlite3.Connection, match: str, limit: int) -> list[tuple[Any, ...]]:
    """Rows of _HIT_COLUMNS for a full-text query: ranked, or for very many hits in the order of numbers."""
    count_hits = f"SELECT count(*) FROM ({_MATCHES} LIMIT ?)"
    if db.execute(count_hits, (match, MANY + 1)).fetchone()[0] <= MANY:
        return db.execute(_BEST, (match, limit)).fetchall()
    rows = db.execute(_IN_ORDER, (match, limit)).fetchall()
    if len(rows) < limit:
        rows += db.execute(_NOT_ITEMS, (match, limit - len(rows))).fetchall()
    return rows


def _drafts(db: sqlite3.Connection, tokens: list[str]) -> Iterator[tuple[Any, ...]]:
    query = "SELECT subject_kind, subject, field, words, said, source FROM draft ORDER BY updated_at"
    for row in db.execute(query).fetchall():
        folded = fold(row[3])
        if all(token in folded for token in tokens):
            yield row


class _HitMaker:
    """Makes hits from rows, with the item that a row belongs to and where it is kept; caches paths of containers."""

    def __init__(self, db: sqlite3.Connection) -> None:
        self._db = db
        self._paths: dict[str, ContainerPath] = {}

    def hit(self, row: tuple[Any, ...], *, draft: bool) -> Hit:
        kind, subject, field, words, said, source = row
        item = subject if kind == "item" else self._item_behind(kind, subject)
        query = "SELECT field, words FROM in_force WHERE subject = ? AND field IN ('number', 'kept') ORDER BY row"
        facts = dict(self._db.execute(query, (item,))) if item else {}
        mark = self._mark(facts.get("kept", ""))
        return Hit(item, facts.get("number", ""), mark, field, words, f"{said}:{source}" if source else said, draft)

    def _mark(self, words: str) -> str:
        kept = KEPT_WORDS.or_none(words)
        if kept is None:
            return ""
        if kept.container not in self._paths:
            self._paths[kept.container] = path_of(self._db, kept.container)
        path = self._paths[kept.container]
        return Mark(path, kept.position).short if path else ""

    def _item_behind(self, kind: str, subject: str) -> str:
        """The id of the item that a marker is on; empty for other kinds."""
        if kind != "marker":
            return ""
        query = f"""
            SELECT {SHOWS_ITEM_SQL} FROM in_force WHERE field = 'shows'
            AND subject IN (SELECT words FROM in_force WHERE subject = ? AND field = 'scan') LIMIT 1"""
        row = self._db.execute(query, (subject,)).fetchone()
        return str(row[0]) if row else ""


def complete(db: sqlite3.Connection, kind: str, prefix: str, limit: int) -> list[tuple[str, str]]:
    """(id, words) of at most `limit` names in force, any word of which begins with `prefix`; last meant first.

    If there are few such names, all are read and sorted. If there are many, they are read from an index that has the
    names with the same first letters in the right order, until there are enough.
    """
    start = " ".join(fold(prefix).split())
    if not start:
        return []
    bounds = (kind, start, f"{start}\U0010ffff")
    letters = min(len(start), STARTS)
    index, same_letters = f"INDEXED BY name_start_{letters}", f"AND substr(n.folded, 1, {letters}) = ?"
    if len(start) > STARTS and db.execute(_COUNT_NAMES, (*bounds, SORTED + 1)).fetchone()[0] <= SORTED:
        index = same_letters = ""
    query = f"""
        SELECT n.subject, n.words FROM name n {index}
        WHERE n.kind = ? AND n.folded >= ? AND n.folded < ? {same_letters}
        AND CASE n.subject WHEN '' THEN {_PLACE_IN_FORCE} ELSE {_PERSON_IN_FORCE} END
        ORDER BY n.at DESC, n.folded"""
    names: dict[str, tuple[str, str]] = {}
    with closing(db.execute(query, (*bounds, start[:letters]) if same_letters else bounds)) as rows:
        for subject, words in rows:
            names.setdefault(subject or words, (subject, words))
            if len(names) == limit:
                break
    return list(names.values())
