"""Labels for boxes and folders that say what is in them, in standard sizes, on plain paper with crop marks.

The sizes are ISO 216 A6 (105 × 148 mm) and A7 (74 × 105 mm), and the index card of 3 × 5 inches. A label goes on an
enclosure, never on an original.
"""

import tempfile
import unicodedata
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

from boxlore.core.crosswalk import captions, references
from boxlore.core.crosswalk.captions import Style
from boxlore.core.errors import WrongUse
from boxlore.core.findings import Finding
from boxlore.core.records.item_record import Record
from boxlore.core.records.marks import ContainerPath, label_key
from boxlore.core.wording.catalogue import Say
from boxlore.sheets.print_run import Printing, shared
from boxlore.sheets.printable_words import isolated
from boxlore.sheets.typesetting import make_pdf

SIZES = {"a6": (148.0, 105.0), "a7": (105.0, 74.0), "3x5": (127.0, 76.2)}
"""Width and height in millimetres; every label is wider than high."""

LABEL_SIZES = {"a6": "A6", "a7": "A7", "3x5": "3 by 5 inches"}
"""What a keeper reads for each of SIZES."""

NONE: Mapping[ContainerPath, str] = {}
"""No archive has called a container anything."""

_HEAD = 39.0
"""The height that the mark, the title and the count take, in millimetres."""

_LINE = 4.3
_LETTER = 1.72
"""The height of a line of contents, and the width of a letter of usual width in it, in millimetres."""

MOST_RANGES = 3
"""So many ranges of numbers fit on a label."""

BETWEEN = 12.0
"""The space between two labels, in millimetres."""


@dataclass(slots=True)
class Enclosure:
    """A box or folder: its path of (kind, label) from the box inwards, all items in it, and the lines of its label."""

    path: tuple[tuple[str, str], ...]
    records: list[Record] = field(default_factory=list)
    lines: list[str] = field(default_factory=list)


def make_labels(
    records: Sequence[Record],
    printing: Printing,
    size: str = "a6",
    holder: str = "",
    archives: Mapping[ContainerPath, str] = NONE,
) -> tuple[bytes, list[Finding]]:
    """The PDF with a label for each box and each folder in it, and findings about letters that could not be printed.
    `archives` are what an archive calls boxes and folders.

    Raises WrongUse for a size that is not in SIZES.
    """
    if size not in SIZES:
        raise WrongUse(f"“{size}” is no size of a label.", f"Use one of {', '.join(SIZES)}.")
    wide, high = SIZES[size]
    across = max(int((printing.room() + BETWEEN) // (wide + BETWEEN)), 1)
    labels = [
        _label(enclosure, size, holder, printing.style, archives.get(enclosure.path, ""))
        for enclosure in enclosures(records, printing.style)
    ]
    data = {
        **shared(printing, "labels"),
        "heading": printing.say("Labels for boxes and folders"),
        "wide": wide,
        "high": high,
        "between": BETWEEN,
        "rows": [labels[at : at + across] for at in range(0, len(labels), across)],
        "words": {"advice": printing.say("Printing and using these labels")},
    }
    with tempfile.TemporaryDirectory() as folder:
        return make_pdf("labels.typ", data, printing.theme, Path(folder), printing.printed_on)


def enclosures(records: Iterable[Record], style: Style) -> list[Enclosure]:
    """Every container that holds any of these items, in the order of marks: each is followed by those inside it."""
    by_path: dict[tuple[tuple[str, str], ...], Enclosure] = {}
    for record in records:
        path = record.container_path
        for depth in range(1, len(path) + 1):
            by_path.setdefault(path[:depth], Enclosure(path[:depth])).records.append(record)
    for path, enclosure in by_path.items():
        inside = [inner for inner in by_path.values() if len(inner.path) == len(path) + 1 and inner.path[:-1] == path]
        directly_inside = [record for record in enclosure.records if record.mark and record.mark.path == path]
        directly_inside.sort(key=lambda record: record.mark.item if record.mark else 0)
        enclosure.lines = [
            *(_inside(inner, style.say) for inner in inside),
            *(_item(record, style) for record in directly_inside),
        ]
    return [by_path[path] for path in sorted(by_path, key=lambda path: [label_key(label) for _, label in path])]


def _inside(enclosure: Enclosure, say: Say) -> str:
    """The line for an enclosure on the label of the one around it."""
    kind, label = enclosure.path[-1]
    parts = (references.container(kind, label, say), _count(enclosure.records, say), years_of(enclosure.records))
    return " · ".join(part for part in parts if part)


def _item(record: Record, style: Style) -> str:
    item = f"{record.mark.item}  " if record.mark and record.mark.item else ""
    return f"{item}{captions.title(record, style)}"


def _count(records: Sequence[Record], say: Say) -> str:
    return say.counted(len(records), "{count} item", "{count} items")


def years_of(records: Iterable[Record]) -> str:
    """The years of these items, from the earliest to the latest: `1908–1949`, or `1912`; empty if none is known."""
    dates = [view.date for record in records if (view := record.first("date")) and view.date]
    years = [year for date in dates for year in (date.first_year, date.last_year) if year is not None]
    return "–".join(dict.fromkeys(f"{year:04d}" for year in (min(years), max(years)))) if years else ""


def _label(enclosure: Enclosure, size: str, holder: str, style: Style, own: str) -> dict[str, Any]:
    """One label as the template takes it; lines that do not fit are counted in the last one."""
    wide, high = SIZES[size]
    most_lines, most_letters = int((high - _HEAD) // _LINE), int((wide - 10) // _LETTER)
    lines = enclosure.lines if len(enclosure.lines) <= most_lines else enclosure.lines[: most_lines - 1]
    not_listed = len(enclosure.lines) - len(lines)
    numbers = sorted((record.number for record in enclosure.records), key=lambda number: (len(number), number))
    return {
        "mark": isolated(" · ".join(references.containers(enclosure.path, style.say))),
        "numbers": _numbers(numbers, enclosure.records, style),
        "about": " · ".join(
            part
            for part in (
                _count(enclosure.records, style.say),
                years_of(enclosure.records),
                isolated(style.say("archive {reference}", reference=own)) if own else "",
            )
            if part
        ),
        "lines": [isolated(_short(line, most_letters)) for line in lines],
        "more": style.say.counted(not_listed, "and {count} more", "and {count} more") if not_listed else "",
        "holder": isolated(holder),
    }


def _numbers(numbers: Sequence[str], records: Sequence[Record], style: Style) -> str:
    """`TRA-0042 · archive P-991` for one item, `TRA-0042 to TRA-0056` for several."""
    if len(numbers) > 1:
        return number_ranges(numbers, style.say)
    return isolated(" · ".join(part for part in (numbers[0], references.archives_own(records[0], style)) if part))


def number_ranges(numbers: Sequence[str], say: Say) -> str:
    """`TRA-0042 to TRA-0056, TRA-0060`: no number stands in a range that is not here. Of many ranges only the first and
    the last number, with `…` between."""
    ranges = [
        say("{first} to {last}", first=run[0], last=run[-1]) if len(run) > 1 else run[0] for run in _runs(numbers)
    ]
    return ", ".join(ranges) if len(ranges) <= MOST_RANGES else f"{numbers[0]} … {numbers[-1]}"


def _runs(numbers: Sequence[str]) -> list[list[str]]:
    """The numbers, in order, in runs of those that follow each other."""
    runs: list[list[str]] = []
    for number in numbers:
        if runs and _next(runs[-1][-1]) == number:
            runs[-1].append(number)
        else:
            runs.append([number])
    return runs


def _next(number: str) -> str:
    """`TRA-0043` after `TRA-0042`."""
    prefix, _, count = number.rpartition("-")
    return f"{prefix}-{int(count) + 1:0{len(count)}d}"


def _short(line: str, letters: int) -> str:
    """The line, cut behind a word and ended by `…` if it is wider than that many letters of usual width."""
    room, fitting = float(letters), 0
    for letter in line:
        room -= _width(letter)
        if room < 2:
            break
        fitting += 1
    if fitting == len(line) or sum(map(_width, line)) <= letters:
        return line
    whole_words = line[:fitting].rsplit(" ", 1)[0].rstrip()
    return f"{whole_words if len(whole_words) > fitting / 2 else line[:fitting]} …"


def _width(letter: str) -> float:
    """A high estimate of a letter's width, in letters of usual width."""
    if letter in "WMwm@—" or unicodedata.east_asian_width(letter) in "WF":
        return 2.0
    return 1.4 if letter.isupper() else 1.0
