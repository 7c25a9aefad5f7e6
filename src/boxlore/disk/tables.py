"""Tables that somebody wrote: CSV (RFC 4180) in UTF-8 or UTF-16 with one heading, its columns parted by
commas, semicolons or tabs, or by the sign that a first line `sep=|` names, read whole before anything is done with it.
A table that another office sends back may be in Windows-1252 too (`read_any_table`), which is then said.

Rule kept: no cell is passed over. A row with a cell that stands under no heading comes back with a fault, for an
unquoted comma in the words has parted them; a quotation mark that is not closed refuses the table, for nobody knows
how many rows it has swallowed.
"""

import codecs
import csv
import io
import re
from collections.abc import Callable, Iterable, Sequence
from contextlib import suppress
from dataclasses import dataclass
from pathlib import Path

from boxlore.core.errors import WrongUse
from boxlore.core.fields.cells import read_cells, unguarded
from boxlore.core.fields.letters import is_blank
from boxlore.disk.regular_file import open_regular
from boxlore.disk.writing import could_not

LONGEST_CELL = 10_000_000
"""Characters in one cell: far more than anybody tells at once, and no more than a machine holds easily."""

LARGEST_TABLE = 200_000_000
"""Bytes of a table: far more than anybody tells at once, and no more than a machine holds easily."""

WINDOWS = "cp1252"
_SAVE_IN_UTF_8 = "Save it as CSV in UTF-8."


@dataclass(frozen=True, slots=True)
class TableRow:
    """One row: the line on which it begins (the heading is line 1), its cells by column, and what is wrong with it."""

    line: int
    cells: dict[str, str]
    fault: str = ""


def read_table(
    path: Path, check_heading: Callable[[Sequence[str]], None], columns: Iterable[str] = ()
) -> list[TableRow]:
    """Every row that is not empty. `check_heading` gets the names of the columns and raises WrongUse for wrong ones.

    A heading that differs from one of `columns` in capitals, blanks and hyphens alone is that column: `Found in` is
    `found_in`. Raises WrongUse for a file that is no such table.
    """
    return _rows_of(path, read_text(path, _SAVE_IN_UTF_8), check_heading, columns)


def _rows_of(
    path: Path, text: str, check_heading: Callable[[Sequence[str]], None], columns: Iterable[str]
) -> list[TableRow]:
    lines = [row for row in _lines(path, text) if not all(map(is_blank, row[1]))]
    _, heading = lines[0] if lines else (1, [])
    known = {_bare(name): name for name in columns}
    names = [known.get(_bare(name), name.strip()) for name in heading]
    check_heading([name for name in names if name])
    if twice := next((name for name in names if name and names.count(name) > 1), ""):
        raise WrongUse(f"{path.name} has two columns “{twice[:40]}”.", "Give each column a name of its own.")
    return [_row(line, names, cells) for line, cells in lines[1:]]


def read_text(path: Path, in_utf_8: str) -> str:
    """The text of a file that somebody wrote, its ends of lines as they are. `in_utf_8` says how it comes into UTF-8.

    UTF-16 is told by its mark, or by the noughts beside the letters of its first line. Raises WrongUse for what is no
    such file, CouldNot for one that cannot be read. It never waits: a pipe is no file.
    """
    return _text_of(path, _bytes_of(path), in_utf_8)


def _text_of(path: Path, data: bytes, in_utf_8: str) -> str:
    encoding = _sixteen(data) or "utf-8-sig"
    try:
        return data.decode(encoding).removeprefix("\ufeff")
    except UnicodeDecodeError as error:
        raise WrongUse(f"{path.name} is not in UTF-8.", in_utf_8) from error


def _sixteen(data: bytes) -> str:
    """The name of the UTF-16 that a text is in (RFC 2781, 3.2 and 4.3), '' for another encoding.

    Without a mark, every second byte of its first letters is 0, as headings of tables are in Latin letters.
    """
    if data.startswith((b"\xff\xfe\0\0", b"\0\0\xfe\xff")):
        return ""  # UTF-32
    if data.startswith((codecs.BOM_UTF16_LE, codecs.BOM_UTF16_BE)):
        return "utf-16"
    start = data[:4]
    if len(start) == 4 and (start[1], start[3]) == (0, 0) and start[0] and start[2]:
        return "utf-16-le"
    return "utf-16-be" if len(start) == 4 and (start[0], start[2]) == (0, 0) and start[1] and start[3] else ""


@dataclass(frozen=True, slots=True)
class AnyTable:
    """A table that came from elsewhere: its rows, and a sentence on the encoding where that was guessed."""

    rows: list[TableRow]
    note: str = ""


def read_any_table(path: Path, check_heading: Callable[[Sequence[str]], None], columns: Iterable[str] = ()) -> AnyTable:
    """`read_table`, also of a table that a spreadsheet of an office saved in Windows-1252.

    What is no UTF-8 and has none of the five bytes that Windows-1252 leaves free is taken as that. Lines of a title may
    stand above the heading, which is known by two of the `columns`; they are no rows, and it is said.
    """
    text, note = _any_text(path, _bytes_of(path))
    text, above = _from_heading(text, {_bare(name) for name in columns})
    return AnyTable(_rows_of(path, text, check_heading, columns), " ".join(filter(None, (note, above))))


LOOKED_THROUGH = 20
"""Lines in which a heading is looked for, where the first one is none."""


def _from_heading(text: str, known: set[str]) -> tuple[str, str]:
    """The text with the lines above its heading emptied, so that lines count as they did, and a sentence on them."""
    text = text if "\n" in text else text.replace("\r", "\n")
    lines = [] if _NAMES_ITS_SIGN.match(text) else text.split("\n", LOOKED_THROUGH)
    for at, line in enumerate(lines[:LOOKED_THROUGH]):
        if any(len({_bare(cell.strip(' \r"')) for cell in line.split(sign)} & known) > 1 for sign in ",;\t"):
            above = [words for words in lines[:at] if words.strip(' \r",;\t')]
            if not above:
                return text, ""
            said = f"What stands above the heading, in line {at + 1}, is no row: “{above[0][:60].strip()}”."
            return "\n".join([*[""] * at, *lines[at:]]), said
    return text, ""


def _any_text(path: Path, data: bytes) -> tuple[str, str]:
    """The text, and a sentence where its encoding was guessed."""
    try:
        return _text_of(path, data, _SAVE_IN_UTF_8), ""
    except WrongUse:
        with suppress(UnicodeDecodeError):
            if not _sixteen(data):
                text, name = data.decode(WINDOWS), path.name
                return text, f"{name} is not in UTF-8 and was read as Windows-1252: look whether its accents are right."
        raise


def _bytes_of(path: Path) -> bytes:
    try:
        with open_regular(path) as file:
            data = file.read(LARGEST_TABLE + 1)
    except FileNotFoundError:
        raise WrongUse(f"There is no file {path}.") from None
    except IsADirectoryError:
        raise  # `could_not` would have the folder moved away; here it was named by mistake
    except OSError as error:
        raise could_not(error, path, reading=True) from error
    if len(data) > LARGEST_TABLE:
        raise WrongUse(f"{path.name} has more than {LARGEST_TABLE // 10**6} MB.", "Part it into smaller files.")
    return data


def _bare(name: str) -> str:
    """The letters of a heading by which it is known."""
    return "".join(letter for letter in name.casefold() if letter not in "_-" and not letter.isspace())


_NAMES_ITS_SIGN = re.compile(r'[\r\n]*"?sep=(?P<sign>[^\w\s"]|\t)"?[ \t,;|]*(?=[\r\n])', re.IGNORECASE)
"""The first line that spreadsheets write and read to say what parts the columns (common practice, no source)."""


def _parted_by(text: str, named: str) -> str:
    """The sign between columns: the one that is `named` if the heading has it, else a comma, unless the heading has
    none and has semicolons or tabs, as spreadsheets of many countries write them. Words below it decide nothing."""
    heading = text.lstrip("\r\n").partition("\n")[0]
    return next((sign for sign in (*named, ",", ";", "\t") if sign in heading), ",")


def _lines(path: Path, text: str) -> list[tuple[int, list[str]]]:
    """(line on which it begins, cells) of each row. Where a carriage return alone ends all lines, as in tables saved
    for old Macintoshes (common practice, no source), it ends ours."""
    text = text if "\n" in text else text.replace("\r", "\n")
    first = _NAMES_ITS_SIGN.match(text)
    named, start = (first["sign"], first.end()) if first else ("", 0)
    ends = "\n" * len(text[:start].splitlines()[:-1])  # lines are counted from the top of the file
    delimiter = _parted_by(text[start:], named)
    reader = read_cells(io.StringIO(ends + text[start:], newline=""), delimiter=delimiter, strict=True)
    rows: list[tuple[int, list[str]]] = []
    while True:
        begins = reader.line_num + 1
        try:
            cells = [unguarded(cell) for cell in next(reader)]
            if any(len(cell) > LONGEST_CELL for cell in cells):
                raise csv.Error(f"field larger than {LONGEST_CELL:,} characters")
            rows.append((begins, cells))
        except StopIteration:
            return rows
        except csv.Error as error:
            raise WrongUse(
                f"{path.name} cannot be read as a table: line {begins} ({error}).",
                "Close each quotation mark, and write one that belongs to the words twice; nothing was taken.",
            ) from None


def _row(line: int, names: Sequence[str], cells: Sequence[str]) -> TableRow:
    named = {name: cell for name, cell in zip(names, cells, strict=False) if name}
    beyond = [cell for at, cell in enumerate(cells) if (at >= len(names) or not names[at]) and not is_blank(cell)]
    if not beyond:
        return TableRow(line, {name: named.get(name, "") for name in names if name})
    shown = " ".join(beyond[0].split())[:40]
    why = f"“{shown}” stands under no heading: put words that hold a comma in quotation marks."
    return TableRow(line, named, why)


def lacks_column(path: Path, names: Sequence[str], lacking: str, what_to_do: str) -> WrongUse:
    """The refusal of a table that lacks a column; it says so if the columns seem to be parted by other signs."""
    hint = " Its columns must be parted by commas." if any(";" in name or "\t" in name for name in names) else ""
    return WrongUse(f"{path.name} has no column {lacking}.{hint}", what_to_do)
