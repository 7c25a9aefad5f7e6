"""Caption slips, to be cut out and mounted under a copy print. A slip is as wide as the print and has crop marks.

The width is the longer side of the print for a landscape picture, the shorter side for a portrait one. The sizes are
those of common copy prints, in inches and in centimetres. The widest slips are printed on landscape pages.
"""

import tempfile
from collections.abc import Mapping, Sequence
from dataclasses import replace
from pathlib import Path
from typing import Any

from boxlore.core.crosswalk import captions, references
from boxlore.core.errors import WrongUse
from boxlore.core.findings import Finding
from boxlore.core.records.item_record import Record
from boxlore.sheets.album import left_out_words
from boxlore.sheets.picture_on_paper import front_of
from boxlore.sheets.print_run import Printing, shared
from boxlore.sheets.printable_words import isolated
from boxlore.sheets.typesetting import make_pdf

INCH = 25.4
PRINTS = {
    "4x6": (4 * INCH, 6 * INCH),
    "5x7": (5 * INCH, 7 * INCH),
    "8x10": (8 * INCH, 10 * INCH),
    "10x15": (100.0, 150.0),
    "13x18": (130.0, 180.0),
}
"""Copy print -> its shorter and longer side in millimetres."""

IN_INCHES = ("4x6", "5x7", "8x10")

LYING_FROM = 165.0
"""Slips wider than this (in millimetres) are printed on a landscape page, where there is room for their crop marks."""

BESIDE = 14.0
"""The space between two slips side by side, in millimetres: enough for the crop marks of both."""


def make_slips(
    records: Sequence[Record], printing: Printing, size: str = "4x6", length: str = "slip"
) -> tuple[bytes, list[Finding]]:
    """The slips as a PDF, with a group of pages for each width, and findings about letters that could not be printed.

    `length` is one of `captions.LENGTHS`. Raises WrongUse for a size that is not in PRINTS.
    """
    if size not in PRINTS:
        raise WrongUse(f"“{size}” is no size of a copy print.", f"Use one of {', '.join(PRINTS)}.")
    by_width: dict[float, list[dict[str, Any]]] = {}
    for record in records:
        by_width.setdefault(slip_width(record, size), []).append(_slip(record, printing, length))
    data = {
        **shared(printing, "slips"),
        "heading": printing.say("Caption slips for prints of {size}", size=f"{size.replace('x', ' × ')} {_unit(size)}"),
        "groups": [_group(width, slips, printing) for width, slips in sorted(by_width.items())],
        "left_out": left_out_words(records, printing),
        "words": {"advice": printing.say("Printing and mounting these slips")},
    }
    with tempfile.TemporaryDirectory() as folder:
        return make_pdf("slips.typ", data, printing.theme, Path(folder), printing.printed_on)


def _unit(size: str) -> str:
    return "in" if size in IN_INCHES else "cm"


def slip_width(record: Record, size: str) -> float:
    """The width of the copy print of this item, in millimetres."""
    short, long = PRINTS[size]
    scan = front_of(record)
    if scan is None:
        return long
    wide, high = float(scan.width), float(scan.height)
    if len(scan.area) == 4:
        wide, high = wide * scan.area[2], high * scan.area[3]
    return short if high > wide else long


def _group(width: float, slips: Sequence[Mapping[str, Any]], printing: Printing) -> dict[str, Any]:
    wide, high = printing.page
    lying = width > LYING_FROM
    room = (high if lying else wide) - 2 * printing.theme.margin_side
    columns = max(int((room + BESIDE) // (width + BESIDE)), 1)
    rows = [list(slips[at : at + columns]) for at in range(0, len(slips), columns)]
    return {
        "width": width,
        "lying": lying,
        "beside": BESIDE,
        "rows": rows,
        "name": printing.say("{wide} mm wide", wide=f"{width:.0f}"),
    }


def _slip(record: Record, printing: Printing, length: str) -> dict[str, Any]:
    style = replace(printing.style, numbers=False)
    return {
        "number": record.number,
        "reference": isolated(references.reference(record, style)),
        "title": isolated(captions.title(record, style)),
        "lines": [isolated(line) for line in captions.lines(record, length, style).values()],
    }
