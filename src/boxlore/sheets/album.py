"""The album caption sheet: six photographs a page with all that is known of each, then stories and indexes.

Every picture carries its number and its place in the box; every page the day it was printed.
"""

import shutil
import struct
import tempfile
from collections.abc import Mapping, Sequence
from datetime import date
from pathlib import Path
from typing import Any

from boxlore.core import captions
from boxlore.core.findings import Finding, Severity
from boxlore.core.record import Record, ScanFile
from boxlore.core.statements import fold
from boxlore.sheets.setting import replaced, set_pdf, texts, without_glyph
from boxlore.sheets.words import isolated, paragraphs

PER_PAGE = 6
MOST_STORY = 150
"""Letters of a story under a picture; a longer one flows on at the end of the album."""

TALL = {"a4": 44.0, "letter": 39.0}
WIDE = {"a4": 86.0, "letter": 88.9}
"""Room for one picture, in millimetres."""

THEME = {
    "fonts": ["Libertinus Serif", "New Computer Modern"],
    "size": 8.8,
    "ink": "#2b2420",
    "soft": "#6f6259",
    "line": "#cdbfae",
    "paper": "#f4eee4",
}


def make_sheet(
    records: Sequence[Record],
    pictures: Mapping[str, Path],
    *,
    title: str,
    language: str = "en",
    paper: str = "a4",
    printed_on: date,
    audience_label: str = "",
    brackets: bool = False,
) -> tuple[bytes, list[Finding]]:
    """The sheet as a PDF, and what could not be shown. `pictures` maps `picture_key` to a plain JPEG."""
    findings: list[Finding] = []
    with tempfile.TemporaryDirectory() as folder:
        root = Path(folder)
        entries = [_entry(one, pictures, root, paper, brackets, findings) for one in records]
        data = _data(records, entries, title, language, paper, printed_on, audience_label)
        bad = without_glyph(texts(data))
        if bad:
            named = ", ".join(f"{letter} (U+{ord(letter):04X})" for letter in sorted(bad))
            findings.append(_finding("sheet.glyph", f"No font has these letters; they are printed as □: {named}."))
        return set_pdf("album.typ", replaced(data, bad), root, printed_on), findings


def picture_key(scan: ScanFile) -> str:
    """What a prepared picture is filed under: the scan, and the part of it where it shows several items."""
    return f"{scan.id}:{scan.area}" if scan.area else scan.id


def _data(
    records: Sequence[Record],
    entries: Sequence[dict[str, Any]],
    title: str,
    language: str,
    paper: str,
    printed_on: date,
    audience_label: str,
) -> dict[str, Any]:
    pages = [list(entries[at : at + PER_PAGE]) for at in range(0, len(entries), PER_PAGE)]
    stories = [entry["long_story"] for entry in entries if entry["long_story"]]
    withheld = sum(record.withheld for record in records)
    left_out = f"{withheld} statements are left out of this copy." if withheld else ""
    return {
        "title": isolated(title),
        "author": "",
        "subtitle": isolated(_subtitle(records)),
        "language": language.split("-")[0],
        "paper": {"letter": "us-letter"}.get(paper, paper),
        "tall": TALL[paper],
        "theme": THEME,
        "audience": isolated(audience_label),
        "printed": f"Printed {printed_on.isoformat()}",
        "pages": pages,
        "stories": stories,
        "words": {"stories": "Stories"},
        "indexes": [
            {"title": "People", "rows": _index({r.number: _names(r) for r in records})},
            {"title": "Places", "rows": _index({r.number: _places(r) for r in records})},
        ],
        "left_out": left_out,
    }


def _subtitle(records: Sequence[Record]) -> str:
    boxes = list(dict.fromkeys(record.mark.path[0][1] for record in records if record.mark))
    kept = f", in box {' and '.join(boxes)}" if len(boxes) < 4 and boxes else ""
    count = len(records)
    return f"{count} photograph{'s' if count != 1 else ''}{kept}"


def _names(record: Record) -> list[str]:
    return [one.name for one in record.people]


def _places(record: Record) -> list[str]:
    return [told.words for told in record.all("place")[:1]]


def _index(named: Mapping[str, Sequence[str]]) -> list[dict[str, Any]]:
    """Names in folded order with the numbers of the items they stand at; the template finds the pages."""
    found: dict[str, list[str]] = {}
    for number, names in named.items():
        for name in names:
            if number not in found.setdefault(name, []):
                found[name].append(number)
    rows = sorted(found.items(), key=lambda row: fold(row[0]))
    return [{"name": isolated(name), "items": items} for name, items in rows]


def _entry(
    record: Record, pictures: Mapping[str, Path], root: Path, paper: str, brackets: bool, findings: list[Finding]
) -> dict[str, Any]:
    story = next((told.words for told in record.all("story")), "")
    short = story if len(story) <= MOST_STORY else f"{story[:MOST_STORY].rsplit(' ', 1)[0]} … (more at the end)"
    source = captions.source_line(record)
    more = [captions.sentence(captions.inscription_line(record)), f"Told by {source}." if source else ""]
    title = captions.title(record, brackets=brackets)
    reference = captions.reference(record)
    long_story = {"title": isolated(title), "paragraphs": paragraphs(story), "reference": isolated(reference)}
    return {
        "number": record.number,
        "reference": isolated(reference),
        "title": isolated(title),
        "people": isolated(captions.sentence(captions.people_line(record))),
        "place_date": isolated(" · ".join(p for p in (captions.place_line(record), captions.date_line(record)) if p)),
        "story": isolated(captions.sentence(short)),
        "more": isolated(" ".join(part for part in more if part)),
        "alt": isolated(captions.alt_text(record)),
        "long_story": long_story if short != story else None,
        **_picture(record, pictures, root, paper, findings),
    }


def _picture(
    record: Record, pictures: Mapping[str, Path], root: Path, paper: str, findings: list[Finding]
) -> dict[str, Any]:
    scan = next((one for one in record.scans if one.side == "recto"), None)
    path = pictures.get(picture_key(scan)) if scan is not None else None
    if scan is None or path is None:
        findings.append(_finding("sheet.picture", f"The picture of {record.number} cannot be shown."))
        return {"picture": None, "missing": "This picture cannot be shown.", "numbers": [], "width": 0, "height": 0}
    shutil.copyfile(path, root / path.name)
    wide, high = jpeg_size(path)
    scale = min(WIDE[paper] / wide, TALL[paper] / high)
    return {
        "picture": path.name,
        "width": wide * scale,
        "height": high * scale,
        "missing": "",
        "numbers": [_number(one.area, scan, one.number) for one in record.shown() if one.number and one.area],
    }


def _number(area: tuple[float, ...], scan: ScanFile, number: int) -> dict[str, float]:
    """Where the number stands: at the chin of a box, just below a point, never on the face."""
    x, y = (area[0] + area[2] / 2, area[1] + area[3]) if len(area) == 4 else (area[0], area[1] + 0.05)
    if len(scan.area) == 4:
        x, y = (x - scan.area[0]) / scan.area[2], (y - scan.area[1]) / scan.area[3]
    return {"x": min(max(x, 0.03), 0.97), "y": min(max(y, 0.02), 0.93), "number": number}


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


def _finding(rule: str, message: str) -> Finding:
    return Finding(rule=rule, severity=Severity.NOTE, message=message, source="printing: common practice, no source")
