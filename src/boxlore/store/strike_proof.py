"""The proof of a strike: a search for the struck words in every byte of every file in the collection's folder.

The theory of operation of the whole strike opens `strike`. The problem here is that the same words can be written in
a file in many ways, and that SQLite spreads a long text over pages that need not follow each other (SQLite file
format, 1.6). So the words are cut into pieces of at most PIECE characters, and each piece is searched for in each of
its spellings: upper, lower, title and folded case; composed and decomposed; as formats of text escape it
(`strike_spellings`); each in UTF-8 and UTF-16. The search ignores the case of ASCII letters. One piece that is found is
enough.

A database of ours is counted apart (`in_rows`) if its rows, which were not struck, hold the same words: Leida may have
told of the harbour in the same words as the struck statement. Their number is reported, and `strike_standing` says
which they are.

In other files a short piece counts only where it is a word of a text (`strike_chance_matches`): three letters stand in
compressed pixels by chance. What this search cannot see is what a file holds compressed, as a PDF or a ZIP does.
"""

import re
import sqlite3
import unicodedata
from collections.abc import Iterable, Iterator, Mapping
from contextlib import closing
from dataclasses import dataclass
from pathlib import Path

from boxlore.core.people.names_in_text.text_normalising import as_seen
from boxlore.core.statements import fold
from boxlore.store.strike_chance_matches import around, is_word
from boxlore.store.strike_rewriting import PIECE
from boxlore.store.strike_spellings import escaped

CHUNK = 1 << 20
WITH_IT = 32
"""Bytes on either side of a hit that say whether it is a word."""
_DATABASE = re.compile(r"\.sqlite(-wal|-shm|-journal)?\Z")

_MADE_FROM_WORDS = ("name", "words_index%")
"""Tables that are made from told words, and hold none that the statements do not."""
_TOLD_TEXTS = "SELECT words FROM statement UNION ALL SELECT words FROM draft"


@dataclass(frozen=True, slots=True)
class Proof:
    """`left_in` are files that still hold the words, `unread` files that could not be read. `in_rows` are databases of
    ours whose rows hold them, be it by chance, as ids hold digits. `again` is the number of statements and drafts that
    hold all the words of a struck one.
    """

    left_in: tuple[str, ...] = ()
    unread: tuple[str, ...] = ()
    again: int = 0
    in_rows: tuple[str, ...] = ()


def search_folder(folder: Path, words: Iterable[str], *, ours: bool | None = None) -> Proof:
    """Search all files below the folder for these words; with `ours`, only our databases (True) or all else (False)."""
    needles = _needles(words)
    unread: list[str] = []
    still_holding: list[str] = []
    in_rows: list[str] = []
    for path in _files(folder):
        is_ours = _is_ours(folder, path)
        if ours is not None and is_ours is not ours:
            continue
        if pieces_found := _pieces_in(path, needles, unread, raw=is_ours):
            is_told = is_ours and pieces_found <= _pieces_in_rows(path, pieces_found)
            (in_rows if is_told else still_holding).append(str(_database_of(path) if is_told else path))
    again = _count_same_words(folder / "collection.sqlite", words)
    return Proof(tuple(still_holding), tuple(unread), again, tuple(dict.fromkeys(in_rows)))


def files_holding(folder: Path, words: Iterable[str]) -> Iterator[Path]:
    """The files below the folder that hold any piece of these words; databases of ours are not treated apart."""
    needles = _needles(words)
    for path in _files(folder):
        if _pieces_in(path, needles, []):
            yield path


def pieces(words: str) -> list[str]:
    """The words in pieces of at most PIECE characters, each of one line, for a page has its own line ends. A piece of
    half that or less is left out if there are others."""
    lines = [line.strip() for line in words.splitlines() if line.strip()]
    cut = [line[at : at + PIECE].strip() for line in lines for at in range(0, len(line), PIECE)]
    return [piece for piece in cut if len(piece) > PIECE // 2] or cut[:1]


def forms(piece: str) -> set[str]:
    """All spellings of a piece that a file may hold."""
    seen = {piece, as_seen(piece)}
    cases = {case for text in seen for case in (text, text.lower(), text.upper(), text.casefold(), text.title())}
    cases |= set(map(fold, seen))
    spellings = cases | {unicodedata.normalize(composed, case) for case in cases for composed in ("NFC", "NFD")}
    return {form for spelling in spellings for form in (spelling, *escaped(spelling)) if form}


def _needles(words: Iterable[str]) -> dict[bytes, str]:
    """Bytes to search for -> the piece that they spell. ASCII letters are in lower case."""
    codes = ("utf-8", "utf-16-le", "utf-16-be")
    all_pieces = {piece for text in words for piece in pieces(text) if piece}
    return {form.encode(code).lower(): piece for piece in all_pieces for form in forms(piece) for code in codes}


def _files(folder: Path) -> Iterator[Path]:
    for path in sorted(folder.rglob("*")):
        if path.is_file():
            yield path


def _pieces_in(path: Path, needles: Mapping[bytes, str], unread: list[str], *, raw: bool = False) -> set[str]:
    """The pieces that a file holds as words; with `raw` wherever their bytes stand, as in a database, whose texts lie
    side by side. A file that cannot be read is added to `unread`.
    """
    in_file: set[str] = set()
    longest = max(map(len, needles), default=0)
    kept = b""
    try:
        with open(path, "rb") as file:
            data = file.read(CHUNK) if longest else b""
            while data:
                following = file.read(CHUNK)
                window = kept + data.lower() + following[: longest + WITH_IT].lower()
                for needle, piece in needles.items():
                    if piece not in in_file and _stands_in(window, needle, raw):
                        in_file.add(piece)
                kept = window[: len(kept) + len(data)][-longest - WITH_IT :]
                data = following
    except OSError:
        unread.append(str(path))
    return in_file


def _stands_in(window: bytes, needle: bytes, raw: bool) -> bool:
    start = window.find(needle)
    while start >= 0:
        before, after = around(window, start, len(needle))
        if raw or is_word(before, needle, after):
            return True
        start = window.find(needle, start + 1)
    return False


def _is_ours(folder: Path, path: Path) -> bool:
    """Whether the file is the database, its write-ahead log, or a backup."""
    if path.parent == folder:
        return _database_of(path).name == "collection.sqlite"
    return path.parent == folder / "backups" and _DATABASE.search(path.name) is not None


def _database_of(path: Path) -> Path:
    """The database beside which SQLite keeps the file, or itself."""
    return path.with_name(_DATABASE.sub(".sqlite", path.name))


def _pieces_in_rows(path: Path, wanted: set[str]) -> set[str]:
    """Those of the wanted pieces that stand in rows of this database, and so in statements that were not struck."""
    name = _database_of(path)
    forms_of = {piece: {form.lower() for form in forms(piece)} for piece in wanted}
    in_rows: set[str] = set()
    try:
        with closing(sqlite3.connect(f"{name.resolve().as_uri()}?mode=ro", uri=True)) as db:
            for text in _texts(db):
                lowered = (text.lower(), fold(text), fold(as_seen(text)))
                in_rows |= {
                    piece for piece in wanted if any(form in line for form in forms_of[piece] for line in lowered)
                }
                if in_rows == wanted:
                    break
    except sqlite3.DatabaseError:
        return set()
    return in_rows


def _texts(db: sqlite3.Connection) -> Iterator[str]:
    """What the rows of a database hold: what is told, and ids and times, in which digits such as 1880 stand by chance.

    Not what an act did: that is said in words of the statements, and a strike takes it out.
    """
    tables = "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE ? AND name NOT LIKE ?"
    for (table,) in db.execute(tables, _MADE_FROM_WORDS).fetchall():
        columns = "id, recorded_at, by" if table == "act" else "*"
        for row in db.execute(f'SELECT {columns} FROM "{table}"'):
            yield "\n".join(value for value in row if isinstance(value, str))


def _count_same_words(path: Path, words: Iterable[str]) -> int:
    """How many statements and drafts hold all the words of a struck statement."""
    struck = {fold(as_seen(text).strip()) for text in words if text.strip()}
    if not struck:
        return 0
    with closing(sqlite3.connect(f"{path.resolve().as_uri()}?mode=ro", uri=True)) as db:
        return sum(
            any(struck_words in fold(as_seen(text)) for struck_words in struck) for (text,) in db.execute(_TOLD_TEXTS)
        )
