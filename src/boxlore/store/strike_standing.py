"""Where words stand on in the rows of the log, after a strike took out the statements that it was asked for.

The proof of a strike (`strike_proof`) does not count a database as left over where rows that were not struck hold the
words: others told them too, they stand inside a longer word, or the program needs them. So each such row is found here,
by the same pieces in the same spellings, and whoever struck the words is told where they are. A piece of up to SHORT
letters stands in too many words by chance, and counts only where it is a word.
"""

import re
import sqlite3
from collections.abc import Iterable, Iterator
from contextlib import closing
from dataclasses import dataclass
from enum import StrEnum
from pathlib import Path

from boxlore.core.statements import fold
from boxlore.store.strike_proof import forms, pieces

SHORT = 3


class Place(StrEnum):
    """In which part of a row."""

    WORDS = "words"
    SOURCE = "source"
    DRAFT = "draft"
    BY = "by"
    ACT = "act"


_ROWS = {
    Place.WORDS: "SELECT subject_kind, subject, field, words FROM statement WHERE words <> '' ORDER BY row",
    Place.SOURCE: """SELECT subject_kind, subject, field, source FROM statement
        WHERE said IN ('document', 'file') AND source <> '' ORDER BY row""",
    Place.DRAFT: """SELECT subject_kind, subject, field, words || iif(said IN ('document', 'file'), ' ' || source, '')
        FROM draft ORDER BY updated_at""",
    Place.BY: "SELECT DISTINCT '', '', '', by FROM (SELECT by FROM act UNION SELECT by FROM tombstone) ORDER BY by",
}
"""For each place: the kind of the subject, its id, the field, and the text. Ids and times are no words."""

_LINES = "SELECT id, what FROM act ORDER BY recorded_at, id"
_TOLD_IN = "SELECT words FROM statement WHERE act = ?"


@dataclass(frozen=True, slots=True)
class Standing:
    """One row that holds the words: where in it, what it is about (nothing for a line about an act), and the text."""

    place: Place
    kind: str
    subject: str
    field: str
    text: str


def rows_standing(database: Path, words: Iterable[str]) -> list[Standing]:
    """The rows of a database that hold any piece of these words, also within a longer word unless it is SHORT."""
    spellings = {form.lower() for text in words for piece in pieces(text) if piece for form in forms(piece)}
    if not spellings:
        return []
    any_of_them = re.compile("|".join(map(_pattern, sorted(spellings, key=len, reverse=True))))
    with closing(sqlite3.connect(f"{database.resolve().as_uri()}?mode=ro", uri=True)) as db:
        return [*_holding(db, any_of_them), *_lines_about_acts(db, any_of_them)]


def _pattern(spelling: str) -> str:
    return re.escape(spelling) if len(spelling) > SHORT else rf"(?<!\w){re.escape(spelling)}(?!\w)"


def _holding(db: sqlite3.Connection, words: re.Pattern[str]) -> Iterator[Standing]:
    for place, query in _ROWS.items():
        for kind, subject, field, text in db.execute(query):
            if _stands_in(text, words):
                yield Standing(place, kind, subject, field, text)


def _lines_about_acts(db: sqlite3.Connection, words: re.Pattern[str]) -> Iterator[Standing]:
    """The lines that hold the words; those of a statement that holds them too go with it, and are not named."""
    for act, line in db.execute(_LINES).fetchall():
        if _stands_in(line, words) and not any(_stands_in(told, words) for (told,) in db.execute(_TOLD_IN, (act,))):
            yield Standing(Place.ACT, "", "", "", line)


def _stands_in(text: str, words: re.Pattern[str]) -> bool:
    return bool(words.search(text.lower()) or words.search(fold(text)))
