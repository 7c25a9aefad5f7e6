"""Every text in a document that leaves: PDF, XML, HTML, tables, linked data, JSON, TOML, WebVTT, plain text, archives.

Rule kept: values are given and keys are not (an element's name, a heading in the brackets of a format, the property of
a statement in linked data), each with the carrier that it stands in. A document that cannot be read to its end raises
ByteFault. Tables and texts are read line by line, so that memory stays flat.
"""

import csv
import io
import json
import re
import tomllib
import zipfile
from collections.abc import Callable, Iterator
from html.parser import HTMLParser
from typing import Any, BinaryIO

from lxml import etree

from boxlore.core.errors import ByteFault
from boxlore.core.fields.cells import read_cells
from boxlore.formats import picture_texts
from boxlore.formats.picture_texts import Inside

MOST_MEMBERS = 10_000


def texts(name: str, file: BinaryIO) -> Iterator[Inside]:
    """The texts of a file that is called `name`. Raises ByteFault for a kind that is not known, or damage."""
    file.seek(0)
    head = file.read(16)
    file.seek(0)
    try:
        yield from _reader(name, head)(file)
    except (UnicodeDecodeError, csv.Error, ValueError, RecursionError, zipfile.BadZipFile, etree.LxmlError) as error:
        raise ByteFault(0, f"This file cannot be read to its end ({error})", "the kind that its name says") from error


def _reader(name: str, head: bytes) -> Callable[[BinaryIO], Iterator[Inside]]:
    if head.startswith(b"%PDF-"):
        return _of_pdf
    if head.startswith(b"PK\x03\x04"):
        return _of_zip
    reader = _READERS.get(f".{name.rpartition('.')[2].lower()}" if "." in name else "")
    return reader or picture_texts.texts


def _lines(file: BinaryIO) -> Iterator[str]:
    """The lines of a text in UTF-8; the wrapper leaves the file open to whoever opened it."""
    wrapper = io.TextIOWrapper(file, encoding="utf-8-sig", newline="")
    try:
        yield from wrapper
    finally:
        if not file.closed:
            wrapper.detach()


def _of_text(file: BinaryIO) -> Iterator[Inside]:
    for line in _lines(file):
        if line.strip():
            yield Inside("text", line.strip())


def _of_table(file: BinaryIO) -> Iterator[Inside]:
    heading: list[str] = []
    for row in read_cells(_lines(file)):
        for at, cell in enumerate(row):
            where = heading[at] if at < len(heading) else "heading" if not heading else "a cell under no heading"
            if cell:
                yield Inside(where, cell)
        heading = heading or row


def _of_xml(file: BinaryIO) -> Iterator[Inside]:
    """Texts, attributes, comments and instructions. Elements are let go as they end."""
    for event, node in etree.iterparse(
        file, events=("end", "comment", "pi"), resolve_entities=False, no_network=True, huge_tree=True
    ):
        name = etree.QName(node).localname if event == "end" else event
        for value in (*(node.attrib.values() if event == "end" else ()), node.text):
            if value and value.strip():
                yield Inside(name, value.strip())
        for child in node:
            if child.tail and child.tail.strip():
                yield Inside(name, child.tail.strip())
        if event == "end":
            node.clear(keep_tail=True)


class _Page(HTMLParser):
    """Gathers what a page says, also where no reader sees it; not how it looks."""

    def __init__(self) -> None:
        super().__init__(convert_charrefs=True)
        self.texts: list[Inside] = []
        self.within = ""

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.within = tag
        self.texts += [Inside(f"{tag} {name}", value) for name, value in attrs if value and name not in _LOOKS]

    def handle_startendtag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.handle_starttag(tag, attrs)
        self.within = ""

    def handle_endtag(self, tag: str) -> None:
        self.within = ""

    def handle_data(self, data: str) -> None:
        if data.strip() and self.within not in ("style", "script"):
            self.texts.append(Inside(self.within or "text", data.strip()))

    def handle_comment(self, data: str) -> None:
        self.texts.append(Inside("comment", data))


_LOOKS = frozenset(
    "class style width height lang dir role type rel charset loading decoding sizes tabindex scope method".split()
)
"""Attributes whose values are words of HTML or of our style sheet, as element names are."""


def _of_html(file: BinaryIO) -> Iterator[Inside]:
    page = _Page()
    for line in _lines(file):
        page.feed(line)
    page.close()
    yield from page.texts


_TRIPLE = re.compile(r'\s*(\S+)\s+<([^>]*)>\s+(?:<([^>]*)>|"((?:[^"\\]|\\.)*)"\S*|(_:\S+))\s*\.\s*')
_LITERAL = re.compile(r'"""((?:[^"\\]|\\.|"(?!""))*)"""|"((?:[^"\\\n]|\\.)*)"|<((?:urn|file|mailto):[^>]*)>', re.DOTALL)
_ESCAPED = re.compile(r"\\u([0-9A-Fa-f]{4})|\\U([0-9A-Fa-f]{8})|\\(.)")
TYPE = "http://www.w3.org/1999/02/22-rdf-syntax-ns#type"


def _unescaped(words: str) -> str:
    return _ESCAPED.sub(
        lambda match: chr(int(match[1] or match[2], 16)) if match[1] or match[2] else f" {match[3]}", words
    )


def _of_triples(file: BinaryIO) -> Iterator[Inside]:
    """Subjects and objects of N-Triples; a property is a key, and so is a type."""
    for line in _lines(file):
        if not line.strip() or line.startswith("#"):
            continue
        match = _TRIPLE.fullmatch(line)
        if match is None:
            raise ValueError(f"a line is no statement: {line[:40]}")
        where = re.split(r"[/#]", match[2])[-1]
        if match[2] != TYPE:
            yield Inside(where, _unescaped(match[4] or match[3] or match[5] or ""))
        yield Inside("subject", match[1])


def _of_turtle(file: BinaryIO) -> Iterator[Inside]:
    for match in _LITERAL.finditer("".join(_lines(file))):
        yield Inside("Turtle", _unescaped(match[1] or match[2] or match[3] or ""))


def _of_json(file: BinaryIO) -> Iterator[Inside]:
    yield from _values("", json.load(file))


_DATA = re.compile(r"\s*window\.\w+ = (.*);\s*", re.DOTALL)


def _of_script(file: BinaryIO) -> Iterator[Inside]:
    """A script; one that only hands JSON to a page is read as that."""
    text = file.read().decode("utf-8")
    if data := _DATA.fullmatch(text):
        yield from _values("", json.loads(data[1]))
    else:
        yield from _of_text(io.BytesIO(text.encode()))


def _of_toml(file: BinaryIO) -> Iterator[Inside]:
    data = file.read().decode("utf-8")
    yield from _values("", tomllib.loads(data))
    for line in data.splitlines():
        if "#" in line:
            yield Inside("comment", line.partition("#")[2])


def _values(name: str, value: Any) -> Iterator[Inside]:
    """The values of JSON or TOML at any depth, each with the key that it stands under."""
    if isinstance(value, dict):
        for key, inner in value.items():
            yield from _values(str(key), inner)
    elif isinstance(value, list):
        for inner in value:
            yield from _values(name, inner)
    elif value not in (None, "", True, False):
        yield Inside(name, str(value))


def _of_zip(file: BinaryIO) -> Iterator[Inside]:
    with zipfile.ZipFile(file) as archive:
        yield Inside("comment", archive.comment.decode("utf-8", "replace"))
        if len(archive.infolist()) > MOST_MEMBERS:
            raise ValueError(f"it has over {MOST_MEMBERS} members")
        for member in archive.infolist():
            yield Inside("name of a member", member.filename)
            if member.comment or member.extra:
                raise ValueError(f"{member.filename} holds more than itself")
            if not member.is_dir():
                with archive.open(member) as opened:
                    yield from texts(member.filename, io.BytesIO(opened.read()))


def _of_pdf(file: BinaryIO) -> Iterator[Inside]:
    from boxlore.formats import pdf  # noqa: PLC0415  # the reader of PDFs is loaded only where there is one

    yield from pdf.texts(file)


_READERS = {
    ".txt": _of_text, ".vtt": _of_text, ".js": _of_script, ".css": _of_text, ".csv": _of_table, ".xml": _of_xml,
    ".xmp": _of_xml, ".html": _of_html, ".nt": _of_triples, ".ttl": _of_turtle, ".json": _of_json,
    ".jsonld": _of_json, ".toml": _of_toml,
    ".copies-being-made": _of_text,
}  # fmt: skip
"""How a file is read, by its name's ending; the last is the list that a killed run of copies leaves beside them."""
