"""Struck words go out of the tables that Boxlore writes into the collection's folder for the keeper to answer."""

from collections.abc import Iterable

from boxlore.core.errors import WrongUse
from boxlore.disk.tables import read_table
from boxlore.exports.inventory import as_table
from boxlore.store.strike_words import LONG_ENOUGH, holds, tokens
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.output_paths import NAMES_FOUND, NAMES_LEFT, write_own

OWN_TABLES = (NAMES_FOUND, NAMES_LEFT)
"""Tables in the collection's folder that Boxlore writes itself, for the keeper to answer; it writes them anew."""


def forget_rows(collection: Collection, struck: Iterable[str]) -> None:
    """Take the rows out of Boxlore's own tables that hold these words, whole or in part. A table that cannot be read
    goes whole: it is made again by what wrote it."""
    asked = [words for words in map(tokens, struck) if words]
    for path in (collection.folder / name for name in OWN_TABLES):
        if not asked or not path.is_file():
            continue
        try:
            rows = [row.cells for row in read_table(path, lambda names: None)]
        except WrongUse:
            path.unlink()
            continue
        kept = [row for row in rows if not any(_share(tokens(cell), words) for cell in row.values() for words in asked)]
        if len(kept) < len(rows):
            path.unlink()
            heading = list(rows[0])
            write_own(collection, path.name, b"".join(as_table([heading, *([*row.values()] for row in kept)])))


def _share(told: list[str], struck: list[str]) -> bool:
    """Whether a cell holds the struck words, or is a part of them that says something: a long sentence is cut to fit a
    table, also within its first and its last word."""
    return holds(told, struck) or (len(told) >= LONG_ENOUGH and holds(struck, told[1:-1]))
