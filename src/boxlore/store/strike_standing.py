"""Where words stand on in the rows of the log, after a strike took out the statements that it was asked for.

The proof of a strike (`strike_proof`) does not count a database as left over where rows that were not struck hold the
words: others told them too, they stand inside a longer word, or the program needs them. So each such row is found here,
by the same pieces in the same spellings, and whoever struck the words is told where they are. A piece of up to SHORT
letters stands in too many words by chance, and counts only where it is a word.

A backup has rows that the log does not, of a branch of history that was left (`strike_branches`) and of what was being
typed when it was made. Those of them that hold the words are found too, each once, with the backups that have it.
"""

import json
import re
import sqlite3
from collections.abc import Iterable, Iterator
from contextlib import closing, suppress
from dataclasses import dataclass, replace
from enum import StrEnum
from pathlib import Path

from boxlore.core.people.names_in_text.text_normalising import as_seen
from boxlore.core.statements import fold
from boxlore.store.strike_proof import forms, pieces

SHORT = 3


class Place(StrEnum):
    """In which part of a row."""

    WORDS = "words"
    SOURCE = "source"
    READING = "reading"
    DRAFT = "draft"
    BY = "by"
    ACT = "act"
    NAME = "name"
    """The name of a file or a folder, which the task finds."""


_ROWS = {
    Place.WORDS: "SELECT subject_kind, subject, field, words FROM statement WHERE words <> '' ORDER BY row",
    Place.SOURCE: """SELECT subject_kind, subject, field, source FROM statement
        WHERE said IN ('document', 'file') AND source <> '' ORDER BY row""",
    Place.DRAFT: """SELECT subject_kind, subject, field, words || iif(said IN ('document', 'file'), ' ' || source, '')
        FROM draft ORDER BY updated_at""",
    Place.BY: "SELECT DISTINCT '', '', '', by FROM (SELECT by FROM act UNION SELECT by FROM tombstone) ORDER BY by",
}
"""For each place: the kind of the subject, its id, the field, and the text. Ids and times are no words."""

_READ_AS = """SELECT s.subject_kind, s.subject, s.field, s.words, r.value FROM reading r
    JOIN statement s ON s.id = r.statement ORDER BY s.row, r.act"""
_ID = re.compile(r"[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}")

_LINES = "SELECT id, what FROM act ORDER BY recorded_at, id"
_TOLD_IN = "SELECT words FROM statement WHERE act = ?"


@dataclass(frozen=True, slots=True)
class Standing:
    """One row that holds the words: where in it, what it is about (nothing for a line about an act), and the text; the
    names of the backups that alone have it, none for a row of the log."""

    place: Place
    kind: str
    subject: str
    field: str
    text: str
    backups: tuple[str, ...] = ()


def rows_standing(database: Path, words: Iterable[str], *, is_hidden: bool = False) -> list[Standing]:
    """The rows of a database that hold any piece of these words, also within a longer word unless it is SHORT; with
    `is_hidden` only the texts that hold it among signs that nobody sees, where a search of bytes finds none."""
    spellings = {form.lower() for text in words for piece in pieces(text) if piece for form in forms(piece)}
    if not spellings:
        return []
    any_of_them = re.compile("|".join(map(_pattern, sorted(spellings, key=len, reverse=True))))
    with closing(sqlite3.connect(f"{database.resolve().as_uri()}?mode=ro", uri=True)) as db:
        db.text_factory = lambda data: data.decode("utf-8", "replace")
        if is_hidden:
            return [row for row in _holding(db, any_of_them) if as_seen(row.text) != row.text]
        in_rows = [*_holding(db, any_of_them), *_in_readings(db, any_of_them)]
        return [*in_rows, *_lines_about_acts(db, any_of_them)]


def standing_in_backups(
    backups: Iterable[Path], others: Iterable[Path], words: Iterable[str], standing: Iterable[Standing]
) -> list[Standing]:
    """The rows that hold the words in backups, without those of the log, which are `standing`; of the `others`, where
    a search of bytes found none, those that hold them among signs that nobody sees, if the backup can be read."""
    asked, of_log = list(words), set(standing)
    names: dict[Standing, list[str]] = {}
    found = [(backup, rows_standing(backup, asked)) for backup in backups]
    for backup in others:
        with suppress(sqlite3.DatabaseError):
            found.append((backup, rows_standing(backup, asked, is_hidden=True)))
    for backup, rows in found:
        for row in rows:
            if row not in of_log:
                names.setdefault(row, []).append(backup.name)
    return [replace(row, backups=tuple(dict.fromkeys(having))) for row, having in names.items()]


def _pattern(spelling: str) -> str:
    return re.escape(spelling) if len(spelling) > SHORT else rf"(?<!\w){re.escape(spelling)}(?!\w)"


def _holding(db: sqlite3.Connection, words: re.Pattern[str]) -> Iterator[Standing]:
    for place, query in _ROWS.items():
        for kind, subject, field, text in db.execute(query):
            if _stands_in(text, words):
                yield Standing(place, kind, subject, field, text)


def _in_readings(db: sqlite3.Connection, words: re.Pattern[str]) -> Iterator[Standing]:
    """What told words are read as, where that holds the words and the told ones do not."""
    for kind, subject, field, told, value in db.execute(_READ_AS):
        if _stands_in(value, words) and not _stands_in(told, words):
            for text in dict.fromkeys(_texts_of(_parsed(value))):
                if _stands_in(text, words) and not _ID.fullmatch(text):
                    yield Standing(Place.READING, kind, subject, field, text)


def _parsed(value: str) -> object:
    try:
        return json.loads(value)
    except (ValueError, RecursionError):  # what an older version wrote, or damage
        return value


def _texts_of(value: object) -> Iterator[str]:
    """Every text in a value of JSON."""
    if isinstance(value, str):
        yield value
    elif isinstance(value, dict | list):
        for part in value.values() if isinstance(value, dict) else value:
            yield from _texts_of(part)


def _lines_about_acts(db: sqlite3.Connection, words: re.Pattern[str]) -> Iterator[Standing]:
    """The lines that hold the words; those of a statement that holds them too go with it, and are not named."""
    for act, line in db.execute(_LINES).fetchall():
        if _stands_in(line, words) and not any(_stands_in(told, words) for (told,) in db.execute(_TOLD_IN, (act,))):
            yield Standing(Place.ACT, "", "", "", line)


def _stands_in(text: str, words: re.Pattern[str]) -> bool:
    return bool(words.search(text.lower()) or words.search(fold(text)) or words.search(fold(as_seen(text))))
