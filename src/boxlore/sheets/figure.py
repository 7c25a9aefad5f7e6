"""A picture on paper: its size, the numbers of its people, the outline key of a large group.

A number stands at the chin, or beside the head where the chin is taken; never on a face if there is room elsewhere.
"""

import shutil
import struct
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path
from statistics import median
from typing import Any

from boxlore.core.crosswalk import captions
from boxlore.core.findings import Finding
from boxlore.core.records.in_force import PersonShown, Record, ScanFile
from boxlore.core.records.people_key import MOST_UNKEYED
from boxlore.sheets.safe_words import isolated
from boxlore.sheets.typesetting import note

Box = tuple[float, float, float, float]

POINT = (0.05, 0.08)
"""The head guessed around a marker that is only a point."""


@dataclass(frozen=True, slots=True)
class Room:
    """What a picture may fill, and how wide a number on it is; all in millimetres."""

    wide: float
    high: float
    number: float = 3.6


@dataclass(slots=True)
class Shelf:
    """Prepared pictures by `picture_key`, the folder they are set from, and what could not be shown."""

    pictures: Mapping[str, Path]
    root: Path
    findings: list[Finding]


def picture_key(scan: ScanFile) -> str:
    """What a prepared picture is filed under: the scan, and the part of it where it shows several items."""
    return f"{scan.id}:{scan.area}" if scan.area else scan.id


def front_of(record: Record) -> ScanFile | None:
    """The scan that shows the item: its front."""
    return next((one for one in record.scans if one.side == "recto"), None)


def figure(record: Record, shelf: Shelf, room: Room) -> dict[str, Any]:
    """The picture as the templates take it; a damaged one is a placeholder and is named in the findings."""
    scan = front_of(record)
    path = shelf.pictures.get(picture_key(scan)) if scan is not None else None
    alt = isolated(captions.alt_text(record))
    if scan is None or path is None:
        shelf.findings.append(note("sheet.picture", f"The picture of {record.number} cannot be shown."))
        missing = "This picture cannot be shown: the file is damaged or missing."
        return {"picture": None, "missing": missing, "alt": alt, "numbers": [], "outline": []}
    if not (shelf.root / path.name).exists():
        shutil.copyfile(path, shelf.root / path.name)
    wide, high = jpeg_size(path)
    scale = min(room.wide / wide, room.high / high)
    heads = heads_of(record.shown(), scan)
    return {
        "picture": path.name,
        "missing": "",
        "alt": alt,
        "width": wide * scale,
        "height": high * scale,
        "numbers": numbers_of(heads, room.number / (wide * scale), room.number / (high * scale))
        if needs(record)
        else [],
        **_outline(heads, high / wide),
    }


def needs(record: Record) -> bool:
    """Whether numbers tell anything: one person alone needs none."""
    return len(record.shown()) > 1


def heads_of(shown: Iterable[PersonShown], scan: ScanFile) -> list[tuple[int, Box]]:
    """Number and head of everyone marked on this scan, in 0..1 of the part of it that is shown."""
    heads = []
    for one in shown:
        if one.number and one.area and one.scan == scan.id:
            x, y, w, h = one.area if len(one.area) == 4 else _around(one.area)
            if len(scan.area) == 4:
                left, top, width, height = scan.area
                x, y, w, h = (x - left) / width, (y - top) / height, w / width, h / height
            heads.append((one.number, (x, y, w, h)))
    return heads


def _around(point: Sequence[float]) -> Box:
    return point[0] - POINT[0] / 2, point[1] - POINT[1] / 2, *POINT


def numbers_of(heads: Sequence[tuple[int, Box]], wide: float, high: float) -> list[dict[str, float]]:
    """Where each number stands: the middle of its disc, `wide` and `high` in 0..1 of the picture."""
    taken: list[Box] = [head for _, head in heads]
    placed = []
    for number, (x, y, w, h) in heads:
        spots = [
            (x + w / 2, y + h + high / 2),
            (x + w + wide / 2, y + h * 0.8),
            (x - wide / 2, y + h * 0.8),
            (x + w / 2, y + h + high),
        ]
        inside = [_inside(spot, wide, high) for spot in spots]
        free = [spot for spot in inside if not any(_meets(_disc(spot, wide, high), box) for box in taken)]
        at = (free or inside)[0]
        taken.append(_disc(at, wide, high))
        placed.append({"x": at[0], "y": at[1], "number": number})
    return placed


def _inside(spot: tuple[float, float], wide: float, high: float) -> tuple[float, float]:
    return min(max(spot[0], wide / 2), 1 - wide / 2), min(max(spot[1], high / 2), 1 - high / 2)


def _disc(spot: tuple[float, float], wide: float, high: float) -> Box:
    return spot[0] - wide / 2, spot[1] - high / 2, wide, high


def _meets(one: Box, other: Box) -> bool:
    slack = 1e-9  # a disc that only touches a face does not cover it
    across = min(one[0] + one[2], other[0] + other[2]) - max(one[0], other[0])
    down = min(one[1] + one[3], other[1] + other[3]) - max(one[1], other[1])
    return across > slack and down > slack


def _outline(heads: Sequence[tuple[int, Box]], shape: float) -> dict[str, Any]:
    """The heads alone, from the back to the front, in 0..1 of a frame drawn close around them.

    `shape` is the height of a picture to its width; of the frame on the way back.
    """
    if len(heads) <= MOST_UNKEYED:
        return {"outline": [], "shape": 1.0}
    wide, high = median(head[2] for _, head in heads), median(head[3] for _, head in heads)
    left, right = min(head[0] for _, head in heads) - wide, max(head[0] + head[2] for _, head in heads) + wide
    top, bottom = min(head[1] for _, head in heads) - high / 2, max(head[1] + head[3] for _, head in heads) + high * 1.6
    width, height = right - left, bottom - top
    outline = [
        {"number": number, "x": (x - left) / width, "y": (y - top) / height, "w": w / width, "h": h / height}
        for number, (x, y, w, h) in sorted(heads, key=lambda head: head[1][1])
    ]
    return {"outline": outline, "shape": shape * height / width}


def jpeg_size(path: Path) -> tuple[int, int]:
    """Width and height in pixels from a JPEG's frame header (T.81 B.2.2)."""
    data = path.read_bytes()
    at = 2
    while at + 9 < len(data):
        marker, length = data[at + 1], int.from_bytes(data[at + 2 : at + 4], "big")
        if 0xC0 <= marker <= 0xCF and marker not in (0xC4, 0xC8, 0xCC):
            high, wide = struct.unpack(">HH", data[at + 5 : at + 9])
            return wide, high
        at += 2 + length
    return 4, 3
