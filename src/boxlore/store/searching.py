"""Finding words and completing names. Both sides are folded; every token is quoted, so no input is syntax."""

import sqlite3
from typing import Any

from boxlore.core.statements import fold
from boxlore.store.reading import containers
from boxlore.store.values import Hit

MANY = 10_000


def search(db: sqlite3.Connection, words: str, limit: int) -> list[Hit]:
    """Drafts first, then statements in force; the best matches first, or the oldest if there are over MANY."""
    tokens = [token for token in fold(words).replace('"', " ").split() if any(map(str.isalnum, token))]
    if not tokens:
        return []
    asked = " ".join(f'"{token}"*' for token in tokens)
    many = "SELECT count(*) FROM (SELECT 1 FROM words_index WHERE words_index MATCH ? LIMIT ?)"
    order = "w.rank" if db.execute(many, (asked, MANY + 1)).fetchone()[0] <= MANY else "w.rowid"
    query = f"""
        SELECT s.subject_kind, s.subject, s.field, s.words, s.said, s.source FROM words_index w
        JOIN in_force s ON s.row = w.rowid WHERE w.words_index MATCH ? ORDER BY {order} LIMIT ?"""
    paths = {ident: "/".join(label for _, label in path) for ident, path in containers(db)}
    drafts = _drafts(db, tokens, paths)
    found = [_hit(db, row, paths, draft=False) for row in db.execute(query, (asked, limit)).fetchall()]
    return [*drafts, *found][:limit]


def _drafts(db: sqlite3.Connection, tokens: list[str], paths: dict[str, str]) -> list[Hit]:
    rows = db.execute("SELECT subject_kind, subject, field, words, said, source FROM draft ORDER BY updated_at")
    return [
        _hit(db, row, paths, draft=True) for row in rows.fetchall() if all(token in fold(row[3]) for token in tokens)
    ]


def _hit(db: sqlite3.Connection, row: tuple[Any, ...], paths: dict[str, str], *, draft: bool) -> Hit:
    kind, subject, field, words, said, source = row
    item = subject if kind == "item" else _item_behind(db, kind, subject)
    told = dict(
        db.execute("SELECT field, words FROM in_force WHERE subject = ? AND field IN ('number', 'kept')", (item,))
    )
    container, _, place = told.get("kept", "").partition(" ")
    mark = f"{paths[container]}/{place}" if container in paths else ""
    return Hit(item, told.get("number", ""), mark, field, words, f"{said}:{source}" if source else said, draft)


def _item_behind(db: sqlite3.Connection, kind: str, subject: str) -> str:
    """The item that a marker is on; nothing for people, events and places."""
    if kind != "marker":
        return ""
    query = """
        SELECT json_extract(i.words, '$.item') FROM in_force m JOIN in_force i ON i.subject = m.words
        WHERE m.subject = ? AND m.field = 'scan' AND i.field = 'shows' LIMIT 1"""
    row = db.execute(query, (subject,)).fetchone()
    return str(row[0]) if row else ""


def complete(db: sqlite3.Connection, kind: str, prefix: str, limit: int) -> list[tuple[str, str]]:
    """(id, words) of the names of a kind any part of which begins so, most recently meant first."""
    start = " ".join(fold(prefix).split())
    if not start:
        return []
    query = """
        SELECT n.subject, n.words FROM name n LEFT JOIN used u ON u.subject = n.subject
        WHERE n.kind = ? AND n.folded >= ? AND n.folded < ?
        GROUP BY CASE n.subject WHEN '' THEN n.words ELSE n.subject END
        ORDER BY max(u.at) DESC NULLS LAST, n.folded LIMIT ?"""
    return list(db.execute(query, (kind, start, f"{start}\U0010ffff", limit)))
