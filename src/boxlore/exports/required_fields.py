"""The table of required fields (`schemas/required.csv`): what each output must hold, how often, and by which clause.

The published schemas accept records that hold next to nothing. This table says what ours must hold.
"""

import csv
from collections.abc import Iterable
from dataclasses import dataclass
from functools import lru_cache


@dataclass(frozen=True, slots=True)
class RequiredElement:
    """One row: an element of one output, and how often it must stand there at least and at most (0: no limit)."""

    output: str
    element: str
    least: int
    most: int
    clause: str


Required = tuple[RequiredElement, ...]


def read_required(text: str) -> Required:
    """Read the table from the text of its CSV file."""
    rows = csv.DictReader(text.splitlines())
    return tuple(
        RequiredElement(row["output"], row["element"], int(row["least"]), int(row["most"]), row["clause"])
        for row in rows
    )


def missing(elements: Iterable[tuple[str, str]], output: str, table: Required) -> list[str]:
    """The elements that a record lacks or has too often, in words. `elements` are its (name, words) pairs."""
    present = [name for name, words in elements if words.strip()]
    problems: list[str] = []
    for row in _rows_for(output, table):
        times = present.count(row.element)
        if times < row.least:
            problems.append(f"{row.element} ({row.clause})")
        elif row.most and times > row.most:
            problems.append(f"a single {row.element} ({row.clause})")
    return problems


@lru_cache(16)
def _rows_for(output: str, table: Required) -> Required:
    return tuple(row for row in table if row.output == output)
