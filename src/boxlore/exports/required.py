"""The table of required fields (`schemas/required.csv`): what each output must hold, how often, and by which clause.

A schema that was written for everybody lets empty records through; this table does not.
"""

import csv
from collections.abc import Iterable
from dataclasses import dataclass
from functools import lru_cache


@dataclass(frozen=True, slots=True)
class RequiredElement:
    """One row: an element of one output, at least and at most so often (0 for no limit)."""

    output: str
    element: str
    least: int
    most: int
    clause: str


Required = tuple[RequiredElement, ...]


def read_required(text: str) -> Required:
    """The table from its CSV."""
    rows = csv.DictReader(text.splitlines())
    return tuple(
        RequiredElement(row["output"], row["element"], int(row["least"]), int(row["most"]), row["clause"])
        for row in rows
    )


def missing(elements: Iterable[tuple[str, str]], output: str, table: Required) -> list[str]:
    """What a record lacks, or has too often, as words. `elements` are (name, words) pairs."""
    there = [name for name, words in elements if words.strip()]
    found: list[str] = []
    for row in _rows_for(output, table):
        times = there.count(row.element)
        if times < row.least:
            found.append(f"{row.element} ({row.clause})")
        elif row.most and times > row.most:
            found.append(f"a single {row.element} ({row.clause})")
    return found


@lru_cache(16)
def _rows_for(output: str, table: Required) -> Required:
    return tuple(row for row in table if row.output == output)
