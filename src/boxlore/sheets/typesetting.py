"""Setting type with typst: a template, its data and pictures in; a PDF/A-2a that is PDF/UA-1 too, out.

The same data and the same day give the same bytes. A letter that no font has would stop the whole document under
PDF/A, so letters are tried first and those without a glyph stand as □ and are named.
"""

import json
from collections.abc import Iterable, Mapping
from dataclasses import asdict
from datetime import UTC, date, datetime
from importlib import resources
from pathlib import Path
from typing import Any

import typst

from boxlore.core.findings import Finding, Severity
from boxlore.sheets.theme import FALLBACK, Theme

_compile: Any = typst.compile
"""Its typing knows a dict of sources only in the prose of its documentation."""

STANDARDS = ["a-2a", "ua-1"]
MISSING = "□"
_HOME = resources.files("boxlore.sheets")


def template(name: str) -> bytes:
    """A template's source."""
    return _HOME.joinpath("templates", name).read_bytes()


def made_pdf(name: str, data: Mapping[str, Any], theme: Theme, root: Path, day: date) -> tuple[bytes, list[Finding]]:
    """The PDF of a template, and the letters no font has. `root` holds the pictures the data name, nothing else."""
    whole = {**data, "theme": {**asdict(theme), "fonts": families(theme)}}
    findings = []
    if bad := without_glyph(texts(whole), theme):
        named = ", ".join(f"{letter} (U+{ord(letter):04X})" for letter in sorted(bad))
        findings.append(note("sheet.glyph", f"No font has these letters; they are printed as □: {named}."))
    return _set(name, replaced(whole, bad), theme, root, day), findings


def note(rule: str, message: str) -> Finding:
    """Something that could not be printed as it is."""
    return Finding(rule=rule, severity=Severity.NOTE, message=message, source="printing: common practice, no source")


def _set(name: str, data: Mapping[str, Any], theme: Theme, root: Path, day: date) -> bytes:
    made: bytes = _compile(
        {
            "main.typ": template(name),
            "common.typ": template("common.typ"),
            "data.json": json.dumps(data, ensure_ascii=False).encode(),
        },
        root=str(root),
        pdf_standards=STANDARDS,
        font_paths=_fonts(theme),
        timestamp=int(datetime(day.year, day.month, day.day, 12, tzinfo=UTC).timestamp()),
    )
    return made


def families(theme: Theme) -> list[str]:
    """The theme's fonts, then those tried for a letter that they lack; a plain face falls back on plain ones first."""
    plain = theme.fonts[0].startswith("Noto")
    tried = sorted(FALLBACK, key=lambda name: name.startswith("Noto") is not plain)
    return list(dict.fromkeys((*theme.fonts, *tried)))


def _fonts(theme: Theme) -> Any:
    """Ours and those of the theme's folder; never the machine's, so that the pages are the same everywhere."""
    own = [theme.fonts_from] if theme.fonts_from else []
    return typst.Fonts(include_system_fonts=False, font_paths=[str(_HOME.joinpath("fonts")), *own])


def without_glyph(words: Iterable[str], theme: Theme) -> set[str]:
    """The letters of these words that no font of ours has."""
    letters = sorted({letter for text in words for letter in text if letter > "~"})
    return set(_bad(letters, theme))


def _bad(letters: list[str], theme: Theme) -> list[str]:
    """By halves: a set that compiles is good, a single letter that does not is bad."""
    if not letters or _sets(letters, theme):
        return []
    if len(letters) == 1:
        return letters
    middle = len(letters) // 2
    return [*_bad(letters[:middle], theme), *_bad(letters[middle:], theme)]


_PROBE = b'#let data = json("data.json")\n#set document(title: "x")\n#set text(font: data.fonts)\n#data.words'


def _sets(letters: list[str], theme: Theme) -> bool:
    data = {"fonts": families(theme), "words": " ".join(letters)}
    try:
        _compile(
            {"main.typ": _PROBE, "data.json": json.dumps(data, ensure_ascii=False).encode()},
            pdf_standards=STANDARDS,
            font_paths=_fonts(theme),
            timestamp=0,
        )
    except (typst.TypstError, RuntimeError):
        return False
    return True


def replaced(value: Any, bad: set[str]) -> Any:
    """The data with every letter that has no glyph as □."""
    if isinstance(value, str):
        return "".join(MISSING if letter in bad else letter for letter in value) if bad & set(value) else value
    if isinstance(value, list | tuple):
        return [replaced(one, bad) for one in value]
    if isinstance(value, dict):
        return {name: replaced(one, bad) for name, one in value.items()}
    return value


def texts(value: Any) -> Iterable[str]:
    """Every text in the data."""
    if isinstance(value, str):
        yield value
    elif isinstance(value, list | tuple):
        for one in value:
            yield from texts(one)
    elif isinstance(value, dict):
        for one in value.values():
            yield from texts(one)
