"""A picture on paper: its size, the numbers of its people, and the outline key of a large group.

A number stands under the chin, or beside the head if another number or head is there, or near it. It stands on a face
only if there is no free spot.
"""

import shutil
import struct
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from pathlib import Path
from statistics import median
from typing import Any

from boxlore.core.crosswalk import captions
from boxlore.core.crosswalk.captions import Style
from boxlore.core.crosswalk.image_regions import upright
from boxlore.core.fields.quads import to_straight
from boxlore.core.findings import Finding
from boxlore.core.records.item_record import PersonShown, Record, ScanFile, every_told
from boxlore.core.records.people_key import MOST_UNKEYED
from boxlore.core.statements import Said
from boxlore.sheets.printable_words import isolated
from boxlore.sheets.typesetting import note

Box = tuple[float, float, float, float]

POINT = (0.05, 0.08)
"""Width and height of the head assumed around a marker that is only a point, in 0..1 of the picture."""


@dataclass(frozen=True, slots=True)
class Room:
    """The width and height that a picture may fill, and the diameter of a number on it; all in millimetres."""

    wide: float
    high: float
    number: float = 3.6


@dataclass(slots=True)
class Shelf:
    """Prepared pictures by `picture_key`, the folder that the typesetter reads them from, and findings about pictures
    that cannot be shown.
    """

    pictures: Mapping[str, Path]
    root: Path
    findings: list[Finding]
    sizes: dict[Path, tuple[int, int]] = field(default_factory=dict)

    def taken(self, scan: ScanFile) -> Path | None:
        """The picture of a scan, laid where the typesetter reads; None where it cannot be shown."""
        path = self.pictures.get(picture_key(scan))
        if path is not None and not (self.root / path.name).exists():
            shutil.copyfile(path, self.root / path.name)
        return path

    def front(self, record: Record) -> Path | None:
        """The picture of an item's front; None where it cannot be shown."""
        scan = front_of(record)
        return self.taken(scan) if scan is not None else None

    def size(self, path: Path) -> tuple[int, int]:
        """Width and height of a prepared picture in pixels, read once."""
        if path not in self.sizes:
            self.sizes[path] = jpeg_size(path)
        return self.sizes[path]

    def fitted(self, path: Path, room: Room) -> dict[str, Any]:
        """A picture without numbers, scaled into the room, as the templates take it."""
        pixels_wide, pixels_high = self.size(path)
        scale = min(room.wide / pixels_wide, room.high / pixels_high)
        size = {"width": pixels_wide * scale, "height": pixels_high * scale}
        return {"picture": path.name, "missing": "", "alt": "", **size, "numbers": []}


def folder_of(pictures: Mapping[str, Path]) -> Path | None:
    """The folder of prepared pictures: copies of them are made inside it, so that none lies elsewhere after a kill."""
    return next((path.parent for path in pictures.values()), None)


def picture_key(scan: ScanFile) -> str:
    """The key of a prepared picture: the scan's id, and its area if the scan shows several items."""
    return f"{scan.id}:{scan.area}" if scan.area else scan.id


def front_of(record: Record) -> ScanFile | None:
    """The first scan of the item's front, or None."""
    return next((scan for scan in record.scans if scan.side == "recto"), None)


def back_of(record: Record) -> ScanFile | None:
    """The first scan of the item's back if something is written on it, or None."""
    written = any(view.source.said is Said.INSCRIPTION for view in every_told(record)) or record.words("inscription")
    return next((scan for scan in record.scans if scan.side == "verso"), None) if written else None


def shape_of(record: Record, shelf: Shelf) -> float:
    """Width divided by height of an item's pictures side by side at one height; 4 to 3 for one that is missing."""
    return sum(_shapes(record, shelf)) or 4 / 3


def stacked_shape_of(record: Record, shelf: Shelf) -> float:
    """The same with its back under its front in one width; 0 for one that has no back to show."""
    shapes = _shapes(record, shelf)
    return 1 / sum(1 / shape for shape in shapes) if len(shapes) > 1 else 0.0


def _shapes(record: Record, shelf: Shelf) -> list[float]:
    """The shape of an item's front, and of its back where it is shown; none where its front is missing."""
    path, back = shelf.front(record), back_of(record)
    if path is None:
        return []
    sides = [path, shelf.taken(back) if back is not None else None]
    return [wide / high for side in sides if side is not None for wide, high in [shelf.size(side)]]


def outline_key(record: Record, shelf: Shelf, size: float) -> dict[str, Any]:
    """The outline key of a group as the templates take it, and its width in millimetres for letters of `size`."""
    scan, path = front_of(record), shelf.front(record)
    if scan is None or path is None:
        return {"outline": [], "key_wide": 0.0}
    heads = heads_of(record.shown(), scan)
    wide, high = shelf.size(path)
    return {**_outline(heads, high / wide), "key_wide": size * min(3.6 + max(0, len(heads) - 9) * 0.12, 6.0)}


def figure(record: Record, shelf: Shelf, room: Room, style: Style) -> dict[str, Any]:
    """The picture as the templates take it, scaled into the room.

    For a picture that cannot be shown there is a sentence instead, and a finding is added to the shelf.
    """
    scan, path = front_of(record), shelf.front(record)
    alt = isolated(captions.alt_text(record, style))
    if scan is None or path is None:
        shelf.findings.append(note("sheet.picture", f"The picture of {record.number} cannot be shown."))
        missing = style.say("This picture cannot be shown: the file is damaged or missing.")
        return {"picture": None, "missing": missing, "alt": alt, "numbers": [], "clear": True, "outline": []}
    pixels_wide, pixels_high = shelf.size(path)
    scale = min(room.wide / pixels_wide, room.high / pixels_high)
    heads = heads_of(record.shown(), scan)
    disc = room.number / (pixels_wide * scale), room.number / (pixels_high * scale)
    numbers = numbers_of(heads, *disc) if has_numbers(record) else []
    return {
        "picture": path.name,
        "missing": "",
        "alt": alt,
        "width": pixels_wide * scale,
        "height": pixels_high * scale,
        "numbers": numbers,
        "clear": are_clear(heads, numbers, *disc),
        **_outline(heads, pixels_high / pixels_wide),
    }


def has_numbers(record: Record) -> bool:
    """Whether the people get numbers: only if there is more than one."""
    return len(record.shown()) > 1


def heads_of(shown: Iterable[PersonShown], scan: ScanFile) -> list[tuple[int, Box]]:
    """(number, head) of everyone marked on this scan.

    A head is x, y, width, height in 0..1 of the upright part of the scan that shows the item; one at the edge is moved
    in.
    """
    width, height = scan.area[2:] or (1.0, 1.0)
    heads = []
    for person in shown:
        if person.number and person.area and person.scan == scan.id:
            left, top, *size = person.area
            w, h = size or (0.0, 0.0)
            (x, y), (right, low) = to_straight(scan.part, left, top), to_straight(scan.part, left + w, top + h)
            x, y, w, h = upright((min(x, right), min(y, low), abs(right - x), abs(low - y)), scan.stands)
            if not size:
                w, h = POINT[0] / width, POINT[1] / height
                x, y = x - w / 2, y - h / 2
            heads.append((person.number, (_from_edge(x, w), _from_edge(y, h), w, h)))
    return heads


def _from_edge(start: float, length: float) -> float:
    """Where a head begins so that it lies inside the picture, as far as it is no longer than that."""
    return max(0.0, min(start, 1 - length))


def numbers_of(heads: Sequence[tuple[int, Box]], wide: float, high: float) -> list[dict[str, float]]:
    """For each number the middle of its disc, as `x` and `y` in 0..1 of the picture.

    `wide` and `high` are the disc's size, in 0..1 of the picture's width and height.
    """
    occupied: list[Box] = [head for _, head in heads]
    placed = []
    for number, (x, y, w, h) in heads:
        spots = [
            (x + w / 2, y + h + high / 2),
            (x + w + wide / 2, y + h * 0.8),
            (x - wide / 2, y + h * 0.8),
            (x + w / 2, y + h + high),
            (x + w / 2, y - high / 2),
            (x + w / 2 - wide, y + h + high / 2),
            (x + w / 2 + wide, y + h + high / 2),
        ]
        inside = [_inside(spot, wide, high) for spot in spots]
        free = [spot for spot in inside if not any(_meets(_disc(spot, wide, high), box) for box in occupied)]
        spot = (free or inside)[0]
        occupied.append(_disc(spot, wide, high))
        placed.append({"x": spot[0], "y": spot[1], "number": number})
    return placed


def are_clear(
    heads: Sequence[tuple[int, Box]], numbers: Sequence[Mapping[str, float]], wide: float, high: float
) -> bool:
    """Whether no disc of that size lies on a face or on another disc."""
    discs = [_disc((one["x"], one["y"]), wide, high) for one in numbers]
    taken = [*(head for _, head in heads), *discs]
    return not any(_meets(disc, box) for disc in discs for box in taken if box is not disc)


def _inside(spot: tuple[float, float], wide: float, high: float) -> tuple[float, float]:
    """The spot, moved so that its disc lies inside the picture."""
    return min(max(spot[0], wide / 2), 1 - wide / 2), min(max(spot[1], high / 2), 1 - high / 2)


def _disc(spot: tuple[float, float], wide: float, high: float) -> Box:
    return spot[0] - wide / 2, spot[1] - high / 2, wide, high


def _meets(first_box: Box, second_box: Box) -> bool:
    """Whether two boxes overlap; boxes that only touch do not."""
    slack = 1e-9
    across = min(first_box[0] + first_box[2], second_box[0] + second_box[2]) - max(first_box[0], second_box[0])
    down = min(first_box[1] + first_box[3], second_box[1] + second_box[3]) - max(first_box[1], second_box[1])
    return across > slack and down > slack


def _outline(heads: Sequence[tuple[int, Box]], shape: float) -> dict[str, Any]:
    """The outline key of a group of more than MOST_UNKEYED: its heads from the back to the front.

    `shape` is the picture's height divided by its width. The heads returned are in 0..1 of a frame close around all of
    them, and the `shape` returned is the frame's.
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
    """Width and height in pixels, from a JPEG's frame header (T.81 B.2.2); 4 and 3 for a file without one."""
    data = path.read_bytes()
    at = 2
    while at + 9 < len(data):
        marker, length = data[at + 1], int.from_bytes(data[at + 2 : at + 4], "big")
        if 0xC0 <= marker <= 0xCF and marker not in (0xC4, 0xC8, 0xCC):
            high, wide = struct.unpack(">HH", data[at + 5 : at + 9])
            return wide, high
        at += 2 + length
    return 4, 3
