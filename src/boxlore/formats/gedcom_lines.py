"""The lines of a tree file: which encoding it is in, and its records as nested structures.

Written from the FamilySearch GEDCOM Specification 7.0, section 1.3 (Lines: `Level D [Xref D] Tag [D LineVal] EOL`)
and from The GEDCOM Standard Release 5.5.1, chapter 1 (grammar, CONC and CONT) and chapter 3 (character sets).
A line that breaks the grammar is told as a fault and, where it can be, kept as a further line of the text above it.
"""

import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field

MARKS = ((b"\xef\xbb\xbf", "utf-8-sig"), (b"\xff\xfe", "utf-16"), (b"\xfe\xff", "utf-16"))
"""Byte order marks."""

NAMED = {
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
"""HEAD.CHAR and the codec for it; `gedcom` is ANSEL with the letters that 5.5.1 adds (chapter 3). ASCII is read as
cp1252, which holds it, because files that say ASCII often go beyond it (common practice, no source)."""

_CHAR = re.compile(rb"[\r\n]\s*1[ \t]+CHAR[ \t]+([^\r\n]+)")
_LINE = re.compile(r"\s*(\d{1,3})[ \t]+(?:(@[^@\s][^@]*@)[ \t]+)?([A-Za-z0-9_]+)(?: (.*))?", re.DOTALL | re.ASCII)


@dataclass(frozen=True, slots=True)
class Encoding:
    """The codec to read with; `doubt` says why it was guessed, or is empty."""

    codec: str
    doubt: str = ""


def encoding_of(data: bytes) -> Encoding:
    """The encoding by mark, by zero bytes, by HEAD.CHAR, else UTF-8 if it is that, else Windows-1252 in doubt."""
    for mark, codec in MARKS:
        if data.startswith(mark):
            return Encoding(codec)
    if data[:2] == b"0\0":
        return Encoding("utf-16-le")
    if data[:2] == b"\0" + b"0":
        return Encoding("utf-16-be")
    declared = _CHAR.search(data[:8192])
    name = declared[1].decode("ascii", "replace").strip().upper() if declared else ""
    if codec := NAMED.get(name, ""):
        return Encoding(codec)
    said = f"HEAD.CHAR says {name[:20]}, which is not known" if name else ""
    try:
        data.decode("utf-8")
    except UnicodeDecodeError:
        return Encoding("cp1252", said or "HEAD.CHAR is missing and the bytes are no UTF-8: read as Windows-1252")
    return Encoding("utf-8", said)


@dataclass(slots=True)
class Node:
    """One structure: `number` is its line in the file, from 1; `value` its text with CONC and CONT joined."""

    tag: str
    value: str
    number: int
    xref: str = ""
    children: list["Node"] = field(default_factory=list)

    def first(self, tag: str) -> "Node | None":
        """The first substructure with that tag."""
        return next((one for one in self.children if one.tag == tag), None)

    def text(self, tag: str) -> str:
        """The text of the first substructure with that tag, or an empty string."""
        found = self.first(tag)
        return found.value.strip() if found else ""

    @property
    def lines(self) -> int:
        """How many structures it is, itself counted."""
        return 1 + sum(one.lines for one in self.children)


@dataclass(frozen=True, slots=True)
class Fault:
    """A line that breaks the grammar, and what was done with it."""

    number: int
    why: str


def records(lines: Iterable[str], faults: list[Fault]) -> Iterator[Node]:
    """The records (structures at level 0), one at a time. Never raises for any lines."""
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
    if path:
        path[-1].value += f"\n{line.strip()}"
        faults.append(Fault(fault.number, f"{fault.why}; kept as a further line of the text above"))
    else:
        faults.append(Fault(fault.number, f"{fault.why}, and nothing is above it: “{line.strip()[:60]}”"))


def unescaped(value: str, *, seven: bool) -> str:
    """At signs as they are meant: doubled only at the beginning in 7.0 (1.3.4), everywhere in 5.5.1 (chapter 1)."""
    if seven:
        return value[1:] if value.startswith("@@") else value
    return value.replace("@@", "@")


def pointed(value: str) -> str:
    """The cross-reference a value points to, or an empty string; `@VOID@` (7.0, 1.3.4) points to nothing."""
    value = value.strip()
    if len(value) > 2 and value[0] == value[-1] == "@" and "@" not in value[1:-1] and value[1] != "#":
        return "" if value == "@VOID@" else value[1:-1]
    return ""
