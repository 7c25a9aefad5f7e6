"""Whether what can be searched for, and the names that complete what is typed, follow from the log.

A bit that turns in the full-text index is seen by nobody: SQLite's own checks of a file (before 3.44) do not look into
it, the log has no sum over it, and a search merely misses a word. So both tables are held against the log. Of the
full-text index that is two questions: whether it holds the folded words of just the rows that are told, and whether
its tree of tokens is that of these words, which FTS5 answers itself ("integrity-check", SQLite FTS5, 6.4). As it
answers only where it may write, the tables below the index are copied into a database in memory for that.
"""

import sqlite3
from contextlib import closing

from boxlore.core.statements import fold
from boxlore.store.projections import NameEntry, is_indexed, names_in
from boxlore.store.schema import WORDS_INDEX

_BELOW = ("data", "idx", "content", "docsize", "config")
"""What FTS5 keeps an index in (SQLite FTS5, 9)."""


def are_words_in_step(db: sqlite3.Connection) -> bool:
    """Whether the full-text index and the names are those that the log makes. Raises sqlite3.OperationalError."""
    try:
        return _are_told(db) and _is_sound(db)
    except sqlite3.OperationalError as error:  # a text that is none any more; else the disk does not answer
        if "decode" not in str(error):
            raise
        return False
    except sqlite3.DatabaseError:  # a table that cannot be read
        return False


def _are_told(db: sqlite3.Connection) -> bool:
    indexed: dict[int, str] = dict(db.execute("SELECT id, c0 FROM words_index_content"))
    names: set[NameEntry] = set()
    for row, kind, subject, field, words in db.execute(
        "SELECT row, subject_kind, subject, field, words FROM statement"
    ):
        if is_indexed(field, words) and indexed.pop(row, None) != fold(words):
            return False
        names.update(names_in(kind, subject, field, words))
    return not indexed and names == set(db.execute("SELECT folded, subject, kind, words FROM name"))


def _is_sound(db: sqlite3.Connection) -> bool:
    with closing(sqlite3.connect(":memory:", isolation_level=None)) as copy:
        copy.execute(WORDS_INDEX)
        for table in _BELOW:
            rows = db.execute(f"SELECT * FROM words_index_{table}")
            places = ", ".join("?" * len(rows.description))
            copy.execute(f"DELETE FROM words_index_{table}")
            copy.executemany(f"INSERT INTO words_index_{table} VALUES ({places})", rows)
        copy.execute("INSERT INTO words_index (words_index) VALUES ('integrity-check')")
    return True
