"""The table of names that were found (`names-found.csv`), as the keeper has filled it in.

A transfer keeps its answers in the log. Where the collection can only be read, as by an output of its own kind beside a
sitting, they hold as they stand in the table, so that an answer never waits for a transfer.
"""

from collections.abc import Iterator, Sequence
from pathlib import Path

from boxlore.core.errors import WrongUse
from boxlore.core.fields.name_answers import NAMING_WORDS, NamingDecision
from boxlore.disk.tables import TableRow, lacks_column, read_any_table
from boxlore.tasks.collection.names_left import ANSWERS
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.output_paths import NAMES_FOUND

NUMBER, KEY, ANSWER = "Number", "Key", "Answer"
HEADING = (NUMBER, "Where", "Words", "People", "What becomes of it", "Why it is asked", ANSWER, KEY)


OF_NO_ITEM = "the collection"
"""Stands in the column Number for what is no item: events, places, people, sittings, the collection as a whole."""


def item_numbered(collection: Collection, number: str) -> str | None:
    """The id of the item that a row is about, empty of what is no item; None where there is none of that number."""
    return "" if number == OF_NO_ITEM else collection.store.item_by_number(number)


def rows_of(path: Path) -> list[TableRow]:
    """The rows of the table, as a spreadsheet has saved it. Raises WrongUse where a column that is needed is gone.

    Of what it says only numbers, keys and answers are taken, which have the same letters in every encoding: where that
    was guessed, nothing is lost.
    """
    return read_any_table(path, lambda names: _check_columns(path, names), (NUMBER, KEY, ANSWER)).rows


def answer_of(path: Path, row: TableRow) -> str:
    """What the keeper has answered in a row, one of ANSWERS or nothing. Raises WrongUse, naming the line."""
    written = " ".join(row.cells[ANSWER].lower().split())
    if row.fault or (written and written not in ANSWERS):
        why = row.fault or f"“{written[:40]}” is no answer."
        raise WrongUse(
            f"{path.name}, line {row.line}: {why}", f"Write one of: {', '.join(ANSWERS)}; or leave it empty."
        )
    return written


def answers_in_table(collection: Collection) -> Iterator[tuple[str, NamingDecision]]:
    """(item, decision) of each answer in the table. Raises WrongUse for one that cannot be read."""
    path = collection.folder / NAMES_FOUND
    for row in rows_of(path) if path.is_file() else ():
        written, item = answer_of(path, row), item_numbered(collection, row.cells[NUMBER].strip())
        decision = NAMING_WORDS.or_none(f"{ANSWERS[written]} {row.cells[KEY].strip()}") if written else None
        if item is not None and decision:
            yield item, decision


def _check_columns(path: Path, names: Sequence[str]) -> None:
    for name in (NUMBER, KEY, ANSWER):
        if name not in names:
            raise lacks_column(path, names, name, "Fill in the table that the name search wrote, and keep its columns.")
