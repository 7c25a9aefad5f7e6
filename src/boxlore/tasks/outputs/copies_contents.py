"""The contents page of copies, `contents.csv`: each copy, its number and mark, what the archive calls its item, and the
SHA-256 of scan and copy.

It is read before copies are made again, so that a file that somebody else has changed since is known from one
that is as it was written. A run over some items only leaves the lines of the others.
"""

import csv
from collections.abc import Iterable
from dataclasses import dataclass, fields
from pathlib import Path

from boxlore.core.errors import CouldNot
from boxlore.core.fields.cells import read_rows, write_row
from boxlore.disk.writing import could_not, write_whole
from boxlore.tasks.collection.output_paths import COPIES_LIST

FILE_NAME = COPIES_LIST


@dataclass(frozen=True, slots=True, kw_only=True)
class CopyLine:
    """One copy. `how` is whole (every byte of the picture), encoded (newly) or sidecar (caption beside it).

    `additions` is yes where another program has put something into the copy, which is kept from run to run.
    """

    copy: str
    number: str
    mark: str
    scan: str
    sha256_of_scan: str
    sha256_of_copy: str
    made_for: str
    longest: str = ""
    how: str = "whole"
    additions: str = ""
    language: str = ""
    """Of our own words in its caption; empty for a copy made before they had one, which says them in English."""
    reference: str = ""
    """What the archive calls the item, once it has said so."""

    @property
    def key(self) -> tuple[str, str, str]:
        """What stays the same when an item moves to another box."""
        return (self.number, self.scan, self.longest)


COLUMNS = [field.name for field in fields(CopyLine)]


def read_contents(folder: Path) -> list[CopyLine]:
    """The lines of a folder's contents page; none where there is no page. A line that is no line is left out."""
    try:
        with open(folder / FILE_NAME, encoding="utf-8-sig", errors="replace", newline="") as page:
            rows = list(read_rows(page))
    except FileNotFoundError:
        return []
    except OSError as error:
        raise could_not(error, folder / FILE_NAME) from error
    except csv.Error as error:
        raise CouldNot(f"{folder / FILE_NAME} cannot be read: {error}.", "Move it away; the copies stay.") from error
    return [
        CopyLine(**{name: row.get(name) or "" for name in COLUMNS})
        for row in rows
        if row.get("copy") and row.get("number") and row.get("made_for")
    ]


def contents_page(folder: Path, lines: Iterable[CopyLine]) -> bytes:
    """The page, in the order of the numbers, without the copies that are not there any more."""
    rows = [write_row(COLUMNS)]
    for line in sorted(lines, key=lambda entry: (entry.number, entry.copy)):
        if (folder / line.copy).is_file():
            rows.append(write_row([getattr(line, name) for name in COLUMNS]))
    return "".join(rows).encode("utf-8-sig")  # by its mark spreadsheets know UTF-8 (RFC 3629, 6)


def write_contents(folder: Path, lines: Iterable[CopyLine]) -> None:
    """Write the page."""
    write_whole(folder / FILE_NAME, contents_page(folder, lines))
