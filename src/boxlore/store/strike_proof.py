"""The proof of a strike: a search, with case folded, of every byte below the collection's folder.

Words are sought in pieces, because a long text lies in a database in pieces, on pages that need not follow
each other (SQLite file format, 1.6). Each piece is sought in UTF-8 and UTF-16, in every case, composed and
decomposed, and as JSON and XML write it. What a file holds compressed (a PDF, a ZIP) this does not see.
"""

import html
import json
import re
import sqlite3
import unicodedata
from collections.abc import Iterable, Iterator, Mapping
from contextlib import closing
from dataclasses import dataclass
from pathlib import Path

from boxlore.core.statements import fold

CHUNK = 1 << 20
PIECE = 40
"""Characters: as many of a statement as the line about an act ever repeats."""

_DATABASE = re.compile(r"\.sqlite(-wal|-shm|-journal)?\Z")

_TEXTS = "SELECT words FROM statement UNION ALL SELECT words FROM draft UNION ALL SELECT value FROM reading"
_AGAIN = "SELECT words FROM statement UNION ALL SELECT words FROM draft"


@dataclass(frozen=True, slots=True)
class Proof:
    """Files that still hold the words, files that could not be read, and what is told in the same words elsewhere."""

    left_in: tuple[str, ...] = ()
    unread: tuple[str, ...] = ()
    again: int = 0


def look_over(folder: Path, words: Iterable[str]) -> Proof:
    """Search the folder. A database of ours is left out where statements that were not struck say the same."""
    needles = _needles(words)
    unread: list[str] = []
    left: list[str] = []
    for path in _files(folder):
        found = _found_in(path, needles, unread)
        if found and not (_is_ours(folder, path) and found <= _said(path, found)):
            left.append(str(path))
    return Proof(tuple(left), tuple(unread), _said_again(folder / "collection.sqlite", words))


def holding(folder: Path, words: Iterable[str]) -> Iterator[Path]:
    """Files below the folder in whose bytes any piece of the words stands, in any case."""
    needles = _needles(words)
    for path in _files(folder):
        if _found_in(path, needles, []):
            yield path


def pieces(words: str) -> list[str]:
    """The words in pieces of at most PIECE characters; a short remainder goes with none."""
    line = words.strip()
    cut = [line[at : at + PIECE].strip() for at in range(0, len(line), PIECE)]
    return [one for one in cut if len(one) > PIECE // 2] or cut[:1]


def forms(piece: str) -> set[str]:
    """One piece as it may be spelled in a file."""
    cases = {piece, piece.lower(), piece.upper(), piece.casefold(), piece.title(), fold(piece)}
    spelled = {unicodedata.normalize(form, one) for one in cases for form in ("NFC", "NFD")} | cases
    written = {json.dumps(one)[1:-1] for one in spelled} | {html.escape(one) for one in spelled}
    return {one for one in spelled | written if one}


def _needles(words: Iterable[str]) -> dict[bytes, str]:
    """Each spelling in each encoding, its ASCII letters lower-cased, with the piece that it spells."""
    codes = ("utf-8", "utf-16-le", "utf-16-be")
    every = {piece for one in words for piece in pieces(one) if piece}
    return {form.encode(code).lower(): piece for piece in every for form in forms(piece) for code in codes}


def _files(folder: Path) -> Iterator[Path]:
    for path in sorted(folder.rglob("*")):
        if path.is_file():
            yield path


def _found_in(path: Path, needles: Mapping[bytes, str], unread: list[str]) -> set[str]:
    found: set[str] = set()
    longest = max(map(len, needles), default=0)
    tail = b""
    try:
        with open(path, "rb") as file:
            while longest and (data := file.read(CHUNK)):
                window = tail + data.lower()
                found |= {piece for needle, piece in needles.items() if piece not in found and needle in window}
                tail = window[-longest:]
    except OSError:
        unread.append(str(path))
    return found


def _is_ours(folder: Path, path: Path) -> bool:
    """Whether a file is the database, its log, or a backup."""
    return path.parent in (folder, folder / "backups") and _DATABASE.search(path.name) is not None


def _said(path: Path, found: set[str]) -> set[str]:
    """Those of the pieces that the rows of this database hold."""
    name = path.with_name(_DATABASE.sub(".sqlite", path.name))
    asked = {piece: {form.lower() for form in forms(piece)} for piece in found}
    said: set[str] = set()
    try:
        with closing(sqlite3.connect(f"{name.resolve().as_uri()}?mode=ro", uri=True)) as db:
            for (text,) in db.execute(_TEXTS):
                seen = (text.lower(), fold(text))
                said |= {piece for piece, some in asked.items() if any(one in each for one in some for each in seen)}
                if said == found:
                    break
    except sqlite3.DatabaseError:
        return set()
    return said


def _said_again(path: Path, words: Iterable[str]) -> int:
    """How many statements and drafts hold all the words of one that was struck."""
    asked = {fold(one.strip()) for one in words if one.strip()}
    if not asked:
        return 0
    with closing(sqlite3.connect(f"{path.resolve().as_uri()}?mode=ro", uri=True)) as db:
        return sum(any(one in fold(text) for one in asked) for (text,) in db.execute(_AGAIN))
