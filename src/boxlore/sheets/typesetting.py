"""Typesetting with typst: from a template, its data and its pictures to a PDF that is both PDF/A-2a and PDF/UA-1.

The same data and the same day give the same bytes. PDF/A allows no letter that its fonts lack, so the letters are
tried first: in our fonts and the theme's, then in those of the machine, which are taken only where a letter needs them.
Those that no font has are replaced by □, and a finding names them.
"""

import json
from collections.abc import Iterable, Mapping, Set
from dataclasses import asdict, dataclass
from datetime import UTC, date, datetime
from importlib import resources
from pathlib import Path
from typing import Any

import typst

from boxlore.core.fields.letters import FIRST_STRONG, POP
from boxlore.core.findings import Finding, Severity, make_finding
from boxlore.sheets.theme import FALLBACK, Theme
from boxlore.sheets.typeset_apart import typeset_apart

_compile: Any = typst.compile
_query: Any = typst.query
"""Both untyped, because their type hints lack the dict of sources that the documentation describes."""

STANDARDS = ["a-2a", "ua-1"]
MISSING = "□"
MOST_HERE = 50_000
"""Bytes of data that are set here: of more, the memory that it takes is to be given back."""
_HOME = resources.files("boxlore.sheets")


def template(name: str) -> bytes:
    """The source of a template."""
    return _HOME.joinpath("templates", name).read_bytes()


def make_pdf(
    name: str, data: Mapping[str, Any], theme: Theme, root: Path, day: date, letters: "Letters | None" = None
) -> tuple[bytes, list[Finding]]:
    """The PDF of a template, and a finding if letters were replaced by □.

    `root` is the folder with the pictures that the data name, and with nothing else. `letters` says what is to be done
    about letters that our fonts lack, where it is known already.
    """
    complete = _complete(data, theme)
    findings = []
    if letters is None:
        letters = letters_lacking(texts(complete), theme)
    if letters.missing:
        named = ", ".join(f"{letter} (U+{ord(letter):04X})" for letter in sorted(letters.missing))
        advice = "Put a font that has them into a folder that your theme names as fonts_from, or install one."
        findings.append(note("sheet.glyph", f"No font has these letters; they are printed as □: {named}. {advice}"))
    return _set(name, with_missing_glyphs(complete, letters.missing), theme, root, day, letters), findings


def measured(name: str, data: Mapping[str, Any], theme: Theme, root: Path, letters: "Letters") -> Any:
    """What the template tells under the label `heights`: sizes of words, before it is known where they will stand."""
    complete = with_missing_glyphs(_complete(data, theme), letters.missing)
    sources, fonts = _sources(name, complete), _fonts(theme, machine=letters.need_machine)
    value = _query(sources, "<heights>", field="value", one=True, root=str(root), font_paths=fonts)
    return json.loads(value) if isinstance(value, str) else value


def note(rule: str, message: str) -> Finding:
    """A finding about something that could not be printed as it is."""
    return make_finding(rule, Severity.NOTE, message, "printing: common practice, no source")


def _complete(data: Mapping[str, Any], theme: Theme) -> dict[str, Any]:
    return {**shortened(data), "theme": {**asdict(theme), "fonts": families(theme)}}


IN_A_STRING = frozenset(("alt", "chapter", "heading", "mark", "name", "reference", "title"))
"""Names of data that a PDF holds as a string too: of a bookmark, or for those who cannot see a picture."""
MOST_LETTERS = 4000
"""A string of PDF/A-2 has at most 32,767 bytes (ISO 19005-2, 6.1.13), and a letter up to four of them."""


def shortened(value: Any, name: str = "") -> Any:
    """The data with what is too long for a string cut short."""
    if isinstance(value, str):
        is_short = name not in IN_A_STRING or len(value) <= MOST_LETTERS
        return value if is_short else _cut(value)
    if isinstance(value, list | tuple):
        return [shortened(member, name) for member in value]
    if isinstance(value, dict):
        return {key: shortened(member, key) for key, member in value.items()}
    return value


def _cut(words: str) -> str:
    """Words cut to MOST_LETTERS, with every isolate that is open at their end closed."""
    cut = words[: MOST_LETTERS - 1 - _open(words[: MOST_LETTERS - 1])]
    return f"{cut}…{POP * _open(cut)}"


def _open(words: str) -> int:
    return words.count(FIRST_STRONG) - words.count(POP)


def _sources(name: str, data: Mapping[str, Any]) -> dict[str, bytes]:
    """The typesetter's input: the template, what all templates share, and the data."""
    return {
        "main.typ": template(name),
        "common.typ": template("common.typ"),
        "data.json": json.dumps(data, ensure_ascii=False).encode(),
    }


def _set(name: str, data: Mapping[str, Any], theme: Theme, root: Path, day: date, letters: "Letters") -> bytes:
    sources = _sources(name, data)
    how = {
        "root": str(root),
        "pdf_standards": STANDARDS,
        "timestamp": int(datetime(day.year, day.month, day.day, 12, tzinfo=UTC).timestamp()),
    }
    if len(sources["data.json"]) > MOST_HERE:
        return typeset_apart(sources, _where_fonts_are(theme, machine=letters.need_machine), how)
    pdf: bytes = _compile(sources, font_paths=_fonts(theme, machine=letters.need_machine), **how)
    return pdf


def families(theme: Theme) -> list[str]:
    """The theme's fonts, followed by those for letters that they lack; for a sans-serif theme the sans-serif first."""
    plain = theme.fonts[0].startswith("Noto")
    tried = sorted(FALLBACK, key=lambda name: name.startswith("Noto") is not plain)
    return list(dict.fromkeys((*theme.fonts, *tried)))


def _fonts(theme: Theme, *, machine: bool = False) -> Any:
    """Our fonts and those of the theme's folder, so that a PDF is the same everywhere; the machine's too where letters
    need them."""
    return typst.Fonts(**_where_fonts_are(theme, machine=machine))


def _where_fonts_are(theme: Theme, *, machine: bool) -> dict[str, Any]:
    own = [theme.fonts_from] if theme.fonts_from else []
    return {"include_system_fonts": machine, "font_paths": [str(_HOME.joinpath("fonts")), *own]}


@dataclass(frozen=True, slots=True)
class Letters:
    """What is to be done about letters that our fonts and the theme's lack: which of them no font has, and whether the
    machine's fonts are needed for the others."""

    missing: frozenset[str] = frozenset()
    need_machine: bool = False


def letters_lacking(words: Iterable[str], theme: Theme) -> Letters:
    """What is to be done about the letters of these words that none of the theme's fonts has, nor any of ours."""
    letters = sorted({letter for text in words for letter in text if letter > "~"})
    lacking = _bad(letters, theme, machine=False)
    missing = _bad(lacking, theme, machine=True)
    return Letters(frozenset(missing), len(missing) < len(lacking))


def _bad(letters: list[str], theme: Theme, *, machine: bool) -> list[str]:
    """The letters without a glyph. A set of letters that compiles has none; any other set is tried in halves."""
    if not letters or _sets(letters, theme, machine=machine):
        return []
    if len(letters) == 1:
        return letters
    middle = len(letters) // 2
    return [*_bad(letters[:middle], theme, machine=machine), *_bad(letters[middle:], theme, machine=machine)]


_PROBE = b'#let data = json("data.json")\n#set document(title: "x")\n#set text(font: data.fonts)\n#data.words'


def _sets(letters: list[str], theme: Theme, *, machine: bool) -> bool:
    """Whether a document of these letters compiles."""
    data = {"fonts": families(theme), "words": " ".join(letters)}
    try:
        _compile(
            {"main.typ": _PROBE, "data.json": json.dumps(data, ensure_ascii=False).encode()},
            pdf_standards=STANDARDS,
            font_paths=_fonts(theme, machine=machine),
            timestamp=0,
        )
    except (typst.TypstError, RuntimeError):
        return False
    return True


def with_missing_glyphs(value: Any, bad: Set[str]) -> Any:
    """The data with every letter of `bad` replaced by □."""
    if isinstance(value, str):
        return "".join(MISSING if letter in bad else letter for letter in value) if bad & set(value) else value
    if isinstance(value, list | tuple):
        return [with_missing_glyphs(member, bad) for member in value]
    if isinstance(value, dict):
        return {name: with_missing_glyphs(member, bad) for name, member in value.items()}
    return value


def texts(value: Any) -> Iterable[str]:
    """Every text in the data, at any depth."""
    if isinstance(value, str):
        yield value
    elif isinstance(value, list | tuple):
        for member in value:
            yield from texts(member)
    elif isinstance(value, dict):
        for member in value.values():
            yield from texts(member)
