"""What outputs say in our own words, apart from what was told: labels, headings, joining words, months, kinds.

A living May, Mark or Box must not be found in “may be named”, “Mark: Box 3” or “12 May 1938”. There is no list of such
words: our wording is every string in the modules and templates that write outputs, read from the program itself when
a name is first found in something finished, and kept in the user's cache folder, by the digest of these files, since
reading them all takes most of a second. Case counts, but for a first letter, so that a name is not taken for a word.

    own wording = a piece of our text of two words or more, word for word
                / one of our words before a colon, or alone as the whole of a text
                / a run of our words and numbers with a number in it (a date, a count, a box)
                / a word of ours in small letters, as no name is written

Where told words read exactly like a piece of ours, they count as ours here; in a record each is judged by itself.
"""

import ast
import re
from collections.abc import Iterable, Iterator
from contextlib import suppress
from functools import cache
from hashlib import sha256
from pathlib import Path
from threading import Lock
from typing import BinaryIO

import boxlore
from boxlore.core.errors import CouldNot
from boxlore.disk.writing import write_whole
from boxlore.gazetteer.index import cache_folder

WRITERS = (
    "core/crosswalk", "core/fields", "core/wording", "core/originals", "core/records", "core/sitting",
    "core/dates/display.py", "core/dates/display_patterns.py", "core/dates/display_words.py",
    "core/people/kin_terms.py", "core/people/kin.py", "exports", "sheets", "formats", "tasks/archive", "tasks/outputs",
    "tasks/people/kin_captions.py", "tasks/sitting/time_log.py", "tasks/scans/fixity_events.py",
)  # fmt: skip
"""Where the words of outputs are written: folders and modules below the package."""

_WORD = re.compile(r"[^\W_]+")
_MARKUP = re.compile(r"[<>{}\[\]()\"'`#=;|\\]|\\n")
_CODE = re.compile(r"\b[A-Z][A-Z0-9]*-[WDPOSQ][0-9]*-[A-Z0-9]\b")
"""The code of a worksheet's line, which has single letters in it (core.sitting.worksheet_codes)."""

_DIGEST = re.compile(
    r"(?<![^\W_])(?:[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}"
    r"|(?=[a-f]*[0-9])(?:[0-9a-f]{128}|[0-9a-f]{64}|[0-9a-f]{40}|[0-9a-f]{32}|[0-9a-f]{16}))(?![^\W_])"
)
"""A UUID (RFC 9562, 4), a digest, or the part of one that is the id of a page: its letters a to f spell Ada, Abe or Bea
between two figures by chance, in one scan of some hundred. Shorter ones may be what somebody wrote."""

_TIME = re.compile(r"(?<![^\W_])[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}:[0-9]{2}(?:\.[0-9]+)?Z(?![^\W_])")
"""A moment (RFC 3339, 5.6) as the log writes it."""
SHORTEST_CODE = 16

BLANK = "¦"
"""Keeps what stands before and behind from being read as one name."""

_WHITE = re.compile(r"\s+")
_COLON = re.compile(r"\s*:")

Pieces = set[tuple[str, ...]]
Wording = dict[str, tuple[tuple[str, ...], ...]]

KEPT = "wording.txt"
"""The file in the user's cache folder: the digest of our files and that of the lines below, each of them a piece."""


_READING = Lock()
"""Copies are made by several threads, and Python's own parser (3.11) fails where two of them parse at the same time."""


@cache
def wording() -> Wording:
    """Our pieces of text as words, by the first word of each, the longest first."""
    by_first: dict[str, list[tuple[str, ...]]] = {}
    with _READING:
        pieces = _kept_pieces()
    for piece in sorted(pieces, key=lambda words: (-len(words), words)):
        by_first.setdefault(_start(piece[0]), []).append(piece)
    return {first: tuple(these) for first, these in by_first.items()}


def _kept_pieces() -> Pieces:
    """The pieces as they were kept for these files; else read from them, and kept where the folder takes it."""
    sources = [(path.suffix, path.read_text(encoding="utf-8")) for path in _sources()]
    digest = sha256(repr(sources).encode()).hexdigest()
    try:
        kept = cache_folder() / KEPT
    except CouldNot:
        return _read(sources)
    if (pieces := _read_kept(kept, digest)) is None:
        pieces = _read(sources)
        _keep(kept, digest, pieces)
    return pieces


def _read_kept(kept: Path, digest: str) -> Pieces | None:
    """What was kept for files of that digest; None where there is nothing, or something damaged."""
    try:
        first, _, lines = kept.read_text(encoding="utf-8").partition("\n")
    except (OSError, UnicodeDecodeError):
        return None
    if first != f"{digest} {sha256(lines.encode()).hexdigest()}":
        return None
    return {tuple(line.split(" ")) for line in lines.split("\n")}


def _keep(kept: Path, digest: str, pieces: Pieces) -> None:
    lines = "\n".join(sorted(map(" ".join, pieces)))
    with suppress(CouldNot, OSError):  # it is read again the next time
        kept.parent.mkdir(parents=True, exist_ok=True)
        write_whole(kept, f"{digest} {sha256(lines.encode()).hexdigest()}\n{lines}".encode())


def _sources() -> Iterator[Path]:
    home = Path(boxlore.__file__).parent
    for writer in WRITERS:
        for path in [home / writer] if writer.endswith(".py") else sorted((home / writer).rglob("*")):
            if not path.stem.endswith("_table") and path.suffix in (".py", ".typ", ".html", ".js", ".css"):
                yield path


def _read(sources: Iterable[tuple[str, str]]) -> Pieces:
    """The pieces of text in files, each (suffix, what stands in it)."""
    return {
        piece
        for suffix, source in sources
        for text in (_strings if suffix == ".py" else _plain)(source)
        if (piece := tuple(_WORD.findall(text)))
    }


@cache
def small_words() -> frozenset[str]:
    """Every word that we write in small letters."""
    pieces = (piece for these in wording().values() for piece in these)
    return frozenset(word for piece in pieces for word in piece if word.islower())


def is_shipped(name: str, file: BinaryIO) -> bool:
    """Whether a file of a page's looks or doings is, to the byte, the one that comes with the program."""
    shipped = Path(boxlore.__file__).parent / "sheets" / "templates" / "pages" / name.rpartition("/")[2]
    if shipped.suffix not in (".js", ".css") or not shipped.is_file():
        return False
    file.seek(0)
    return file.read() == shipped.read_bytes()


def _strings(source: str) -> Iterator[str]:
    """The strings of a module line by line, whole and parted at brackets and tags, without its docstrings."""
    left: list[ast.AST] = [ast.parse(source)]
    while left:
        node = left.pop()
        if isinstance(node, ast.Expr) and isinstance(node.value, ast.Constant):
            continue
        if isinstance(node, ast.Attribute) and node.attr == "split" and isinstance(node.value, ast.Constant):
            yield from str(node.value.value).split()  # a list of words, written as one string
        if isinstance(node, ast.Constant) and isinstance(node.value, str):
            for part in map(_without_codes, node.value.splitlines()):
                yield from (part, *_MARKUP.split(part))
        left += ast.iter_child_nodes(node)


def _without_codes(text: str) -> str:
    """A text of ours as finished texts are read, in which codes are blanked: a piece with a code in it is two."""
    return _CODE.sub(" ", text)


def _plain(source: str) -> Iterator[str]:
    for line in source.splitlines():
        yield from _MARKUP.split(line)


def _start(word: str) -> str:
    return word[:1].lower() + word[1:]


def without_codes(text: str) -> str:
    """The text with a blank for each UUID, digest and moment in it, in which no name stands. Most texts of linked data
    are such a code and nothing else, and each is another one: blanked they are few."""
    if len(text) < SHORTEST_CODE:
        return text
    return _TIME.sub(BLANK, _DIGEST.sub(BLANK, text))


_NUMBER = re.compile(r"(?<![^\s()\[\]{}“”\"/\-,;:.–])[0-9]+(?![^\s()\[\]{}“”\"/\-,;:.–?!~])")
_YEARS = ("1500", "2099")


def numbers_alike(text: str) -> str:
    """The text with every number that stands alone as another of its length: what finds names only asks whether there
    is one, and whether it may be a year. So most texts of a record are met again with the next. Numbers within words
    and codes (`R0urke`, `&#77;`, `%4D`) stay as they are."""
    return _NUMBER.sub(_one_like_it, text)


def _one_like_it(number: re.Match[str]) -> str:
    is_year = len(number[0]) == len(_YEARS[0]) and _YEARS[0] <= number[0] <= _YEARS[1]
    return "1928" if is_year else "1" * len(number[0])


def without_wording(text: str, more: Iterable[str] = ()) -> str:
    """The text with our own wording blanked letter for letter, so that only what was told is left in its place.

    `more` are further words of ours.
    """
    for pattern in (_CODE, _DIGEST):
        text = pattern.sub(lambda code: BLANK * len(code[0]), text)
    matches = list(_WORD.finditer(text))
    words = [match[0] for match in matches]
    own = _pieces(words) | {at for at, word in enumerate(words) if word in small_words()}
    known = {*more}
    ours = [at in own or word.isdecimal() or word in known or _is_alone(word) for at, word in enumerate(words)]
    if len(words) == 1 and ours[0]:
        return BLANK * len(text)
    for start, end in _runs(ours, text, [match.span() for match in matches]):
        if any(word.isdecimal() for word in words[start:end]):
            own |= set(range(start, end))
    for at, match in enumerate(matches):
        if ours[at] and _COLON.match(text, match.end()):
            own.add(at)
    return "".join(_blanked(text, [match.span() for at, match in enumerate(matches) if at in own]))


def _is_alone(word: str) -> bool:
    return any(len(piece) == 1 and _same(piece[0], word) for piece in wording().get(_start(word), ()))


def _same(ours: str, word: str) -> bool:
    return word in (ours, ours[:1].upper() + ours[1:])


def _pieces(words: list[str]) -> set[int]:
    """The places of words that stand in a piece of our text of two words or more."""
    own: set[int] = set()
    at = 0
    while at < len(words):
        length = next((len(piece) for piece in wording().get(_start(words[at]), ()) if _stands(piece, words, at)), 0)
        own |= set(range(at, at + length))
        at += max(1, length)
    return own


def _stands(piece: tuple[str, ...], words: list[str], at: int) -> bool:
    return len(piece) > 1 and _same(piece[0], words[at]) and list(piece[1:]) == words[at + 1 : at + len(piece)]


def _runs(ours: list[bool], text: str, spans: list[tuple[int, int]]) -> Iterator[tuple[int, int]]:
    """(first, behind the last) of the runs of our words that no full stop parts."""
    start = None
    for at, is_ours in enumerate([*ours, False]):
        parted = 0 < at < len(spans) and "." in text[spans[at - 1][1] : spans[at][0]]
        if start is not None and (not is_ours or parted):
            yield start, at
            start = None
        if is_ours and start is None:
            start = at


def _blanked(text: str, spans: list[tuple[int, int]]) -> Iterator[str]:
    at = 0
    for start, end in spans:
        yield text[at:start]
        yield BLANK * (end - start)
        at = end
    yield text[at:]


def narrowed(text: str) -> str:
    """The text on one line."""
    return _WHITE.sub(" ", text).strip()
