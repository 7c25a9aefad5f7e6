"""The lines of a tree file: which encoding it is in, and its records as nested structures.

Written from the FamilySearch GEDCOM Specification 7.0, section 1.3 (Lines), and from The GEDCOM Standard Release
5.5.1, chapter 1 (grammar, CONC and CONT) and chapter 3 (character sets). A line that breaks the grammar is listed as
a fault, and its text is kept as a further line of the text above it where there is any.
"""

import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field

BYTE_ORDER_MARKS = ((b"\xef\xbb\xbf", "utf-8-sig"), (b"\xff\xfe", "utf-16"), (b"\xfe\xff", "utf-16"))
"""(first bytes of the file, codec)."""

CODECS = {
    "UTF-8": "utf-8",
    "UTF8": "utf-8",
    "ANSEL": "gedcom",
    "ASCII": "cp1252",
    "ANSI": "cp1252",
    "WINDOWS": "cp1252",
    "WINDOWS-1252": "cp1252",
    "IBM WINDOWS": "cp1252",
    "CP1252": "cp1252",
    "ISO-8859-1": "iso-8859-1",
    "ISO8859-1": "iso-8859-1",
    "LATIN1": "iso-8859-1",
    "IBMPC": "cp437",
    "IBM-PC": "cp437",
    "IBM DOS": "cp850",
    "MSDOS": "cp850",
    "MACINTOSH": "mac_roman",
}
"""HEAD.CHAR -> codec. `gedcom` is ANSEL with the letters that 5.5.1 adds (chapter 3). ASCII is read as cp1252, which
contains it, because files that claim ASCII often hold further letters (common practice, no source)."""

_CHAR = re.compile(rb"[\r\n]\s*1[ \t]+CHAR[ \t]+([^\r\n]+)")
_LINE = re.compile(r"\s*(\d{1,3})[ \t]+(?:(@[^@\s][^@]*@)[ \t]+)?([A-Za-z0-9_]+)(?: (.*))?", re.DOTALL | re.ASCII)


@dataclass(frozen=True, slots=True)
class Encoding:
    """The codec to read with; `doubt` says why it is a guess, or is empty."""

    codec: str
    doubt: str = ""


def encoding_of(data: bytes) -> Encoding:
    """The encoding of a file. The first of these that applies decides: the byte order mark; zero bytes beside the
    first `0` (UTF-16); HEAD.CHAR; UTF-8, if the bytes are that; else Windows-1252, with a doubt.
    """
    for mark, codec in BYTE_ORDER_MARKS:
        if data.startswith(mark):
            return Encoding(codec)
    if data[:2] == b"0\0":
        return Encoding("utf-16-le")
    if data[:2] == b"\0" + b"0":
        return Encoding("utf-16-be")
    declared = _CHAR.search(data[:8192])
    name = declared[1].decode("ascii", "replace").strip().upper() if declared else ""
    if codec := CODECS.get(name, ""):
        return Encoding(codec)
    doubt = f"HEAD.CHAR says {name[:20]}, which is not known" if name else ""
    try:
        data.decode("utf-8")
    except UnicodeDecodeError:
        return Encoding("cp1252", doubt or "HEAD.CHAR is missing and the bytes are no UTF-8: read as Windows-1252")
    return Encoding("utf-8", doubt)


@dataclass(slots=True)
class Node:
    """One structure. `number` is its line in the file, from 1; `value` its text, with CONC and CONT joined to it."""

    tag: str
    value: str
    number: int
    xref: str = ""
    children: list["Node"] = field(default_factory=list)

    def first(self, tag: str) -> "Node | None":
        """The first substructure with that tag."""
        return next((child for child in self.children if child.tag == tag), None)

    def text(self, tag: str) -> str:
        """The text of the first substructure with that tag, or an empty string."""
        child = self.first(tag)
        return child.value.strip() if child else ""

    @property
    def lines(self) -> int:
        """How many structures it consists of: itself and all below it."""
        return 1 + sum(child.lines for child in self.children)


@dataclass(frozen=True, slots=True)
class Fault:
    """A line that breaks the grammar: its number, and what is wrong and what was done with it."""

    number: int
    why: str


def records(lines: Iterable[str], faults: list[Fault]) -> Iterator[Node]:
    """The records (structures at level 0), one at a time. Never raises; faults are appended to `faults`.

        line = level D [xref D] tag [D value] EOL     (7.0, 1.3: Line; D is a space)
        xref = "@" 1*character "@"

    More is accepted than the grammar allows: space before the level, several spaces or tabs for the first two D, and
    tags in small letters. CONT adds a further line to the value of the structure above it, CONC adds to its last line
    (5.5.1, chapter 1). A level that jumps is taken as one below the structure above.
    """
    path: list[Node] = []
    for number, line in enumerate(lines, 1):
        if not line or line.isspace():
            continue
        match = _LINE.fullmatch(line)
        if match is None:
            _broken(path, line, Fault(number, "has no level and tag"), faults)
            continue
        level, tag, value = int(match[1]), match[3].upper(), match[4] or ""
        if level > len(path):
            faults.append(Fault(number, f"jumps to level {level}; taken as level {len(path)}"))
            level = len(path)
        if tag in ("CONT", "CONC") and level:
            path[level - 1].value += value if tag == "CONC" else f"\n{value}"
            del path[level:]
            continue
        node = Node(tag, value, number, (match[2] or "").strip("@"))
        if level == 0:
            if path:
                yield path[0]
            path = [node]
        else:
            del path[level:]
            path[level - 1].children.append(node)
            path.append(node)
    if path:
        yield path[0]


def _broken(path: list[Node], line: str, fault: Fault, faults: list[Fault]) -> None:
    """Keep a line that is none as text of the structure above it, and say so; without one above, only say so."""
    if path:
        path[-1].value += f"\n{line.strip()}"
        faults.append(Fault(fault.number, f"{fault.why}; kept as a further line of the text above"))
    else:
        faults.append(Fault(fault.number, f"{fault.why}, and nothing is above it: “{line.strip()[:60]}”"))


def unescaped(value: str, *, seven: bool) -> str:
    """The value with doubled at signs made single. In 7.0 only a leading one is doubled (1.3.4), in 5.5.1 every one
    (chapter 1).
    """
    if seven:
        return value[1:] if value.startswith("@@") else value
    return value.replace("@@", "@")


def pointed(value: str) -> str:
    """The cross-reference of a pointer (`@I1@` gives `I1`); empty for any other value.

    It is empty also for `@VOID@`, which points to nothing (7.0, 1.3.4), and for `@#…@`, a calendar escape of 5.5.1.
    """
    value = value.strip()
    if len(value) > 2 and value[0] == value[-1] == "@" and "@" not in value[1:-1] and value[1] != "#":
        return "" if value == "@VOID@" else value[1:-1]
    return ""
