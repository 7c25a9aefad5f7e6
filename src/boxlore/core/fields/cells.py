"""Tables of cells as we write and read them: CSV by RFC 4180 (comma, CRLF, quotation marks doubled).

What always holds: no spreadsheet runs a cell of ours as a formula, for one that would be begins with an apostrophe
(common practice, no source); and `read_rows` gives back the words that were written, whatever they are. To that end a
cell that is a formula behind apostrophes gets one more, and reading takes one away.

    =1+1  is written  '=1+1       '=1+1  is written  ''=1+1       'tis  is written  'tis

A cell may have any length: a story is not cut, and no table is refused for one.
"""

import csv
from collections.abc import Iterable, Iterator, Sequence
from typing import Protocol

LONGEST_CELL = 2**31 - 1
"""Characters in one cell: all that Python's reader of CSV can be told."""

FORMULA = ("=", "+", "-", "@", "\t", "\r", "\n", "＝", "＋", "－", "＠")  # wide forms, as typed in China
"""First characters that make a spreadsheet take a cell for a formula (OWASP, CSV Injection; from memory)."""


class RowsOfCells(Protocol):
    """The rows of a table as they are read; `line_num` counts the lines read so far."""

    @property
    def line_num(self) -> int: ...
    def __iter__(self) -> Iterator[list[str]]: ...
    def __next__(self) -> list[str]: ...


def guarded(words: str) -> str:
    """The words as a cell that no spreadsheet runs as a formula."""
    return f"'{words}" if _is_formula(words) else words


def unguarded(cell: str) -> str:
    """Inverse of `guarded`."""
    return cell[1:] if cell.startswith("'") and _is_formula(cell) else cell


def _is_formula(words: str) -> bool:
    return words.lstrip("'").startswith(FORMULA)


class _Line:
    """What Python's writer of CSV writes into."""

    words = ""

    def write(self, words: str) -> None:
        self.words += words


def write_row(cells: Iterable[str]) -> str:
    """One line of a table, with its end."""
    line = _Line()
    csv.writer(line, lineterminator="\r\n").writerow([guarded(cell) for cell in cells])
    return line.words


def read_cells(lines: Iterable[str], *, delimiter: str = ",", strict: bool = False) -> RowsOfCells:
    """The rows of a table, as they stand there. Raises csv.Error as it goes on; it has `line_num`."""
    csv.field_size_limit(LONGEST_CELL)
    return csv.reader(lines, delimiter=delimiter, strict=strict)


def read_rows(lines: Iterable[str]) -> Iterator[dict[str, str]]:
    """The rows of a table of ours by the names of its heading; a cell that is not there is empty. Raises csv.Error."""
    rows = read_cells(lines)
    heading: Sequence[str] = next(iter(rows), [])
    for row in rows:
        cells = map(unguarded, row)
        yield {name: next(cells, "") for name in heading}
