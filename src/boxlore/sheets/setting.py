"""Setting type with typst: a template, its data and pictures in; a PDF/A-2a that is PDF/UA-1 too, out.

The same data and the same day give the same bytes. A letter that no font has would stop the whole document under
PDF/A, so letters are tried first and those without a glyph stand as □ and are named.
"""

import json
from collections.abc import Iterable, Mapping
from datetime import UTC, date, datetime
from importlib import resources
from pathlib import Path
from typing import Any

import typst

_compile: Any = typst.compile
"""Its typing knows a dict of sources only in the prose of its documentation."""

STANDARDS = ["a-2a", "ua-1"]
MISSING = "□"


def template(name: str) -> bytes:
    """A template's source."""
    return resources.files("boxlore.sheets").joinpath("templates", name).read_bytes()


def set_pdf(name: str, data: Mapping[str, Any], root: Path, day: date) -> bytes:
    """The PDF of a template. `root` holds the pictures that the data name, and nothing else."""
    made: bytes = _compile(
        {"main.typ": template(name), "data.json": json.dumps(data, ensure_ascii=False).encode()},
        root=str(root),
        pdf_standards=STANDARDS,
        font_paths=_fonts(),
        timestamp=int(datetime(day.year, day.month, day.day, 12, tzinfo=UTC).timestamp()),
    )
    return made


def _fonts() -> Any:
    return typst.Fonts(include_system_fonts=False, font_paths=[])


_PROBE = b'#set text(font: ("Libertinus Serif", "New Computer Modern"))\n#json("data.json")'


def without_glyph(words: Iterable[str]) -> set[str]:
    """The letters of these words that no font of ours has."""
    letters = sorted({letter for text in words for letter in text if letter > "~"})
    return set(_bad(letters))


def _bad(letters: list[str]) -> list[str]:
    """By halves: a set that compiles is good, a single letter that does not is bad."""
    if not letters or _sets(letters):
        return []
    if len(letters) == 1:
        return letters
    middle = len(letters) // 2
    return [*_bad(letters[:middle]), *_bad(letters[middle:])]


def _sets(letters: list[str]) -> bool:
    text = json.dumps(" ".join(letters), ensure_ascii=False).encode()
    try:
        _compile(
            {"main.typ": b'#set document(title: "x")\n' + _PROBE, "data.json": text},
            pdf_standards=STANDARDS,
            font_paths=_fonts(),
            timestamp=0,
        )
    except (typst.TypstError, RuntimeError):
        return False
    return True


def replaced(value: Any, bad: set[str]) -> Any:
    """The data with every letter that has no glyph as □."""
    if isinstance(value, str):
        return "".join(MISSING if letter in bad else letter for letter in value) if bad & set(value) else value
    if isinstance(value, list):
        return [replaced(one, bad) for one in value]
    if isinstance(value, dict):
        return {name: replaced(one, bad) for name, one in value.items()}
    return value


def texts(value: Any) -> Iterable[str]:
    """Every text in the data."""
    if isinstance(value, str):
        yield value
    elif isinstance(value, list):
        for one in value:
            yield from texts(one)
    elif isinstance(value, dict):
        for one in value.values():
            yield from texts(one)
