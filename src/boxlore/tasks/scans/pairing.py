"""Which picture files show which item: fronts are paired with their backs, by name, by order or by a table.

No picture is opened here: names go in, a plan of items comes out, and can be shown before anything is done.
"""

import re
import unicodedata
from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field, replace
from pathlib import Path

from boxlore.core.errors import WrongUse
from boxlore.core.fields.originals import SIZE_WORDS
from boxlore.core.fields.quads import is_quad
from boxlore.core.findings import several
from boxlore.core.records.item_record import ALTERED, AS_SCANNED
from boxlore.disk.tables import lacks_column, read_table

RECTO, VERSO = "recto", "verso"
SIDES = {RECTO: RECTO, "front": RECTO, "f": RECTO, VERSO: VERSO, "back": VERSO, "b": VERSO}
"""What may be written for a side in a table."""

_SUFFIX = re.compile(r"(.+?)[ _-]?(?:(?<=[ _-])(f|r|front|recto)|(?<=[ _-])(b|v|back|verso))\Z", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class ScanSide:
    """One picture file as one side (recto, verso) of an item.

    `area` is x, y, width, height in 0..1 of the picture, if only that part shows the item; else (). `corners` are those
    of a print that lies aslant in it (`core.fields.quads`), or (). `role` is as-scanned or altered (coloured,
    retouched).
    """

    path: Path
    side: str = RECTO
    area: tuple[float, ...] = ()
    role: str = AS_SCANNED
    corners: tuple[float, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Planned:
    """One item to be made. `key` names it in the plan; `fields` are further fields with their words.

    `links` are (kind, key of another item), for the kinds attached_to and same_picture. `table` is the path of the
    table whose row it is, without links and dots; '' for none.
    """

    key: str
    sides: tuple[ScanSide, ...] = ()
    kind: str = "print"
    box: str = ""
    folder: str = ""
    position: int = 0
    found_in: str = ""
    fields: Mapping[str, str] = field(default_factory=dict)
    links: tuple[tuple[str, str], ...] = ()
    table: str = ""


def split_suffix(stem: str) -> tuple[str, str]:
    """The name without the suffix of its side, and the side: `harbour_b` is (`harbour`, `verso`).

    The suffixes are f, r, front, recto and b, v, back, verso, after a blank, `_` or `-`. Without one it is a recto.
    """
    match = _SUFFIX.match(stem)
    if match is None:
        return stem, RECTO
    return match[1], VERSO if match[3] else RECTO


def as_one_name(text: str) -> str:
    """A name as it is compared: in one normal form (UAX #15, NFC; macOS writes NFD), its letters all small."""
    return unicodedata.normalize("NFC", unicodedata.normalize("NFC", text).casefold())


def by_suffix(files: Iterable[Path]) -> list[Planned]:
    """Pair files by the suffixes of their names; two files for the same side of one name are two items.

    `GRÜN_f` and `grün_b`, in any normal form, are one name where no other file could be meant. A back whose front has
    another stands behind it.
    """
    sides: dict[str, dict[str, Path]] = {}
    for path in sorted(files):
        stem, side = split_suffix(path.stem)
        key = str(path.parent / stem)
        if side in sides.get(key, {}):
            key = str(path.parent / path.stem) + path.suffix
        sides.setdefault(key, {})[side] = path
    for front, back in _halves_of_one_name(sides):
        sides[front] |= sides.pop(back)
    fronts = {_name_of(paths[RECTO]) for paths in sides.values() if RECTO in paths}
    second_backs = {key for key, paths in sides.items() if RECTO not in paths and _name_of(paths[VERSO]) in fronts}
    return [
        Planned(
            key=key,
            sides=tuple(ScanSide(files_by_side[side], side) for side in (RECTO, VERSO) if side in files_by_side),
        )
        for key, files_by_side in sorted(sides.items(), key=lambda row: row[0] in second_backs)
    ]


def _name_of(path: Path) -> tuple[Path, str]:
    """The folder and name of a file without its suffix, by which both sides of an item are known."""
    return path.parent, as_one_name(split_suffix(path.stem)[0])


def _halves_of_one_name(sides: Mapping[str, Mapping[str, Path]]) -> list[tuple[str, str]]:
    """The keys of a front and a back that each stand alone, and whose names differ in case and normal form only."""
    alone: dict[tuple[Path, str], dict[str, list[str]]] = defaultdict(lambda: {RECTO: [], VERSO: []})
    for key, files_by_side in sides.items():
        if len(files_by_side) == 1:
            ((side, path),) = files_by_side.items()
            alone[_name_of(path)][side].append(key)
    return [
        (keys[RECTO][0], keys[VERSO][0]) for keys in alone.values() if len(keys[RECTO]) == 1 and len(keys[VERSO]) == 1
    ]


def alternating(files: Iterable[Path]) -> list[Planned]:
    """Pair files in the order of their names: front, back, front, back. Raises WrongUse for an odd number of them, and
    where a name says that the file is the other side."""
    ordered = sorted(files)
    if len(ordered) % 2:
        raise WrongUse(
            f"{several(len(ordered), 'file')} cannot be fronts and backs by turns.",
            "Pair them by --pairs suffix, or by a table.",
        )
    for path, side in zip(ordered, (RECTO, VERSO) * (len(ordered) // 2), strict=True):
        match = _SUFFIX.match(path.stem)
        if match is not None and (VERSO if match[3] else RECTO) != side:
            by_turns, named = ("front", "back") if side == RECTO else ("back", "front")
            raise WrongUse(
                f"By turns {path.name} would be a {by_turns}, and its name says that it is a {named}.",
                "Pair them by --pairs suffix, or by a table.",
            )
    return [
        Planned(key=str(front.with_suffix("")), sides=(ScanSide(front, RECTO), ScanSide(back, VERSO)))
        for front, back in zip(ordered[::2], ordered[1::2], strict=True)
    ]


LINKS = ("attached_to", "same_picture")
TOLD_COLUMNS = ("process", "title", "date", "place", "story", "inscription", "photographer", "rights", "care")
MEANING: Mapping[str, str] = {
    "item": "your own key, the same for all its sides; or the number of one here",
    "file": "the picture's file; empty for an item without a scan",
    "side": "front or back (recto or verso)",
    "role": f"{AS_SCANNED}, or {ALTERED} if coloured or retouched",
    "area": "x y width height from 0 to 1, if only that part shows the item; its corners behind, if it lies aslant",
    "kind": "print, card, postcard, negative, slide, album-page, letter …",
    "box": "the box it is kept in",
    "folder": "the folder in that box",
    "position": "its place in the folder",
    "found_in": "how it lay before",
    "size": "width x height in millimetres",
    "attached_to": "the key of the item that it hangs on",
    "same_picture": "the key of an item with the same picture",
    "process": "how it was made: albumen print",
    "title": "a title",
    "date": "when it was taken, in any words",
    "place": "where, in any words",
    "story": "what is told of it",
    "inscription": "what is written on it",
    "photographer": "who took it",
    "rights": "whose the rights are",
    "care": "what to know before it is shown to somebody",
}
"""Each column of a table of items, and what stands in it."""
COLUMNS = tuple(MEANING)
"""Every column of a table of items."""


def by_table(rows: Iterable[tuple[int, Mapping[str, str]]], folder: Path) -> list[Planned]:
    """The items of a table, given as (line, row); a row is one side of an item, or an item without a scan.

    Its columns are those of MEANING, all optional but `item`; files lie in `folder`. Raises WrongUse, which names the
    line.
    """
    items: dict[str, Planned] = {}
    for line, row in rows:
        key = unicodedata.normalize("NFC", row.get("item", "").strip())
        if not key:
            raise WrongUse(f"Line {line} has no item.", "Give each item a key of its own in that column.")
        before = items.get(key)
        side = _side(line, row, folder)
        if before is None:
            items[key] = _planned(line, key, row, side)
        else:
            sides = (*before.sides, side) if side is not None else before.sides
            items[key] = replace(before, sides=sides, fields={**before.fields, **_fields_told(line, row)})
    for planned in items.values():
        scanned = {side.side for side in planned.sides if side.role == AS_SCANNED}
        for side in planned.sides:
            if side.side not in scanned:
                raise WrongUse(
                    f"Item {planned.key} has an altered {side.side}, {side.path.name}, and no scan of it as it is.",
                    "Give that scan a row too, so that nobody takes the altered version for the original.",
                )
        for kind, key in planned.links:
            if key not in items:
                raise WrongUse(f"Item {planned.key} is linked ({kind}) to {key}, which the table lacks.")
    return list(items.values())


def read_items(path: Path, folder: Path) -> list[Planned]:
    """The items of a CSV; see `by_table`. Raises WrongUse for a file that is no such table."""

    def check(names: Sequence[str]) -> None:
        if "item" not in names:
            raise lacks_column(path, names, "item", "Give each item a key of its own in that column.")
        if unknown := [name for name in names if name not in COLUMNS]:
            raise WrongUse(f"{path.name} has a column “{unknown[0][:40]}”.", f"Columns are: {', '.join(COLUMNS)}.")

    rows = read_table(path, check, COLUMNS)
    if faulty := next((row for row in rows if row.fault), None):
        raise WrongUse(f"{path.name}, line {faulty.line}: {faulty.fault}", "Nothing was taken in.")
    table = str(path.resolve())
    return [replace(planned, table=table) for planned in by_table(((row.line, row.cells) for row in rows), folder)]


def _side(line: int, row: Mapping[str, str], folder: Path) -> ScanSide | None:
    name = row.get("file", "").strip()
    if not name:
        return None
    written = row.get("side", "").strip().lower() or "front"
    side = SIDES.get(written)
    if side is None:
        raise WrongUse(
            f"Line {line}: side is “{written[:20]}”.", "It may be front or back. Recto and verso are understood too."
        )
    role = row.get("role", "").strip().lower() or AS_SCANNED
    if role not in (AS_SCANNED, ALTERED):
        raise WrongUse(f"Line {line}: role is “{role[:20]}”.", f"It may be {AS_SCANNED} or {ALTERED}.")
    area = read_area(row.get("area", ""), f"Line {line}")
    return ScanSide(_on_disk(folder / name), side, area[:4], role, area[4:])


def _on_disk(path: Path) -> Path:
    """The file as its folder has it, where that writes the same name in another normal form."""
    if path.exists() or not path.parent.is_dir():
        return path
    name = unicodedata.normalize("NFC", path.name)
    same = (there for there in path.parent.iterdir() if unicodedata.normalize("NFC", there.name) == name)
    return next(same, path)


def read_area(text: str, where: str) -> tuple[float, ...]:
    """The numbers of `x y w h` in 0..1, and the eight of the corners behind them where what lies there lies aslant; ()
    for an empty text. Raises WrongUse, which begins with `where`."""
    if not text.strip():
        return ()
    try:
        numbers = tuple(float(part) for part in text.replace(",", " ").split())
    except ValueError:
        numbers = ()
    area, corners = numbers[:4], numbers[4:]
    inside = len(area) == 4 and min(area) >= 0 and area[0] + area[2] <= 1.0001 and area[1] + area[3] <= 1.0001
    if not inside or area[2] <= 0 or area[3] <= 0:
        raise WrongUse(f"{where}: “{text[:40]}” is no area.", "Write x y w h as parts of the picture, from 0 to 1.")
    if corners and not (len(corners) == 8 and all(0 <= part <= 1 for part in corners) and is_quad(corners)):
        raise WrongUse(
            f"{where}: the corners behind the area “{text[:40]}” are no four corners of a print.",
            "Write x y of each, clockwise from the upper left one of the stored picture; or the area alone.",
        )
    return numbers


def _planned(line: int, key: str, row: Mapping[str, str], side: ScanSide | None) -> Planned:
    position = row.get("position", "").strip()
    if position and not position.isdigit():
        raise WrongUse(f"Line {line}: position is “{position[:20]}”.", "It must be a whole number.")
    links = tuple(
        (kind, unicodedata.normalize("NFC", row[kind].strip())) for kind in LINKS if row.get(kind, "").strip()
    )
    return Planned(
        key=key,
        sides=(side,) if side else (),
        kind=row.get("kind", "").strip() or "print",
        box=row.get("box", "").strip(),
        folder=row.get("folder", "").strip(),
        position=int(position or 0),
        found_in=row.get("found_in", "").strip(),
        fields=_fields_told(line, row),
        links=links,
    )


def _fields_told(line: int, row: Mapping[str, str]) -> dict[str, str]:
    """The fields of TOLD_COLUMNS and the size, as far as a row has words for them. Raises WrongUse for no size."""
    fields = {name: row[name].strip() for name in TOLD_COLUMNS if row.get(name, "").strip()}
    if size := row.get("size", "").strip():
        try:
            fields["size"] = SIZE_WORDS.write(SIZE_WORDS.typed(size))
        except WrongUse as error:
            raise WrongUse(f"Line {line}: {error.problem}", error.what_to_do) from None
    return fields
