"""Labels for boxes and folders, with what is in them: plain paper with crop marks, in standard sizes.

ISO 216 A6 (105 × 148 mm) and A7 (74 × 105 mm), and the index card of 3 × 5 inches. They go on enclosures, never on
originals.
"""

import tempfile
import unicodedata
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

from boxlore.core.crosswalk import captions
from boxlore.core.errors import WrongUse
from boxlore.core.findings import Finding
from boxlore.core.records.in_force import Record
from boxlore.sheets.print_run import Printing, shared
from boxlore.sheets.safe_words import isolated
from boxlore.sheets.typesetting import made_pdf

SIZES = {"a6": (148.0, 105.0), "a7": (105.0, 74.0), "3x5": (127.0, 76.2)}
"""Width and height in millimetres; all lie on their side."""

_HEAD = 37.0
"""Millimetres that the mark, the title and the count take."""

_LINE = 4.3
_LETTER = 1.72
"""Millimetres of a line of contents, and of a letter in it at the most."""

BETWEEN = 12.0


@dataclass(slots=True)
class Enclosure:
    """A box or folder: its mark, the items in it, and the lines that say what is there."""

    path: tuple[tuple[str, str], ...]
    records: list[Record] = field(default_factory=list)
    lines: list[str] = field(default_factory=list)


def make_labels(
    records: Sequence[Record], printing: Printing, size: str = "a6", holder: str = ""
) -> tuple[bytes, list[Finding]]:
    """One label for each box and each folder in it."""
    if size not in SIZES:
        raise WrongUse(f"“{size}” is no size of a label.", f"Use one of {', '.join(SIZES)}.")
    wide, high = SIZES[size]
    across = max(int((printing.room() + BETWEEN) // (wide + BETWEEN)), 1)
    labels = [_label(one, size, holder) for one in enclosures(records)]
    data = {
        **shared(printing, "labels"),
        "heading": "Labels for boxes and folders",
        "wide": wide,
        "high": high,
        "between": BETWEEN,
        "rows": [labels[at : at + across] for at in range(0, len(labels), across)],
        "words": {"advice": "Printing and using these labels"},
    }
    with tempfile.TemporaryDirectory() as folder:
        return made_pdf("labels.typ", data, printing.theme, Path(folder), printing.printed_on)


def enclosures(records: Iterable[Record]) -> list[Enclosure]:
    """Every container that holds one of these items, each followed by those inside it, in the order of their marks."""
    found: dict[tuple[tuple[str, str], ...], Enclosure] = {}
    for record in records:
        path = record.mark.path if record.mark else ()
        for depth in range(1, len(path) + 1):
            found.setdefault(path[:depth], Enclosure(path[:depth])).records.append(record)
    for path, one in found.items():
        inside = [other for other in found.values() if len(other.path) == len(path) + 1 and other.path[:-1] == path]
        own = [record for record in one.records if record.mark and record.mark.path == path]
        one.lines = [_inside(other) for other in inside]
        one.lines += [
            _item(record) for record in sorted(own, key=lambda record: record.mark.item if record.mark else 0)
        ]
    return [found[path] for path in sorted(found, key=_natural)]


def _natural(path: tuple[tuple[str, str], ...]) -> list[tuple[int, int, str]]:
    """Box 2 before box 10; labels that are no numbers after those that are."""
    return [(0, int(label), "") if label.isdecimal() else (1, 0, label) for _, label in path]


def _inside(one: Enclosure) -> str:
    kind, label = one.path[-1]
    return " · ".join(part for part in (f"{kind.capitalize()} {label}", _count(one.records), span(one.records)) if part)


def _item(record: Record) -> str:
    item = f"{record.mark.item}  " if record.mark and record.mark.item else ""
    return f"{item}{captions.title(record)}"


def _count(records: Sequence[Record]) -> str:
    return f"{len(records)} item{'s' if len(records) != 1 else ''}"


def span(records: Iterable[Record]) -> str:
    """The years of these items, from the earliest to the latest told: `1908–1949`; empty if none is known."""
    told = [first.value for record in records if (first := record.first("date")) is not None]
    years = [str(value[end])[:4] for value in told for end in ("earliest", "latest") if value.get(end)]
    return "" if not years else min(years) if min(years) == max(years) else f"{min(years)}–{max(years)}"


def _label(one: Enclosure, size: str, holder: str) -> dict[str, Any]:
    wide, high = SIZES[size]
    most, letters = int((high - _HEAD) // _LINE), int((wide - 10) // _LETTER)
    lines = one.lines if len(one.lines) <= most else one.lines[: most - 1]
    more = len(one.lines) - len(lines)
    numbers = sorted(record.number for record in one.records)
    return {
        "mark": isolated(" · ".join(f"{kind.capitalize()} {label}" for kind, label in one.path)),
        "numbers": numbers[0] if len(numbers) == 1 else f"{numbers[0]} to {numbers[-1]}",
        "about": " · ".join(part for part in (_count(one.records), span(one.records)) if part),
        "lines": [isolated(_short(line, letters)) for line in lines],
        "more": f"and {more} more" if more else "",
        "holder": isolated(holder),
    }


def _short(line: str, letters: int) -> str:
    """The line, cut at a word where it would be wider than so many letters of the usual width."""
    room, kept = float(letters), 0
    for letter in line:
        room -= _width(letter)
        if room < 2:
            break
        kept += 1
    if kept == len(line) or sum(map(_width, line)) <= letters:
        return line
    whole = line[:kept].rsplit(" ", 1)[0].rstrip()
    return f"{whole if len(whole) > kept / 2 else line[:kept]} …"


def _width(letter: str) -> float:
    """How wide a letter is, in letters of the usual width; on the safe side."""
    if letter in "WMwm@—" or unicodedata.east_asian_width(letter) in "WF":
        return 2.0
    return 1.4 if letter.isupper() else 1.0
