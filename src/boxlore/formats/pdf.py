"""Every text of a PDF (ISO 32000-2): pages as they are read, every string of every object, packets, pictures inside.

A page's words are found through its fonts, as a reader copies them, by PDFium, which does so ten times as fast as
pypdf; that reads the rest. No template of ours parts words by itself, so that a hyphen at the end of a line was told,
and what follows belongs to it. Strings elsewhere are titles, alternative texts, bookmarks, notes and fields (7.9.2).
What a font, a picture or a table of the file itself holds is no text; a file inside the file, or a locked one, cannot
be opened wholly.
"""

import io
from collections.abc import Iterator
from contextlib import closing
from typing import Any, BinaryIO

import pypdfium2
from pypdf import PdfReader
from pypdf.errors import DependencyError, PyPdfError
from pypdf.generic import ArrayObject, ByteStringObject, DictionaryObject, StreamObject, TextStringObject

from boxlore.core.errors import ByteFault
from boxlore.formats import picture_texts
from boxlore.formats.picture_texts import Inside

UNREADABLE = (
    PyPdfError, DependencyError, pypdfium2.PdfiumError, RecursionError, ValueError, KeyError, TypeError, AttributeError,
)  # fmt: skip
"""What the two readers raise for a file that is not as it should be."""
CLAUSE = "ISO 32000-2, 7.5"
KEYS = frozenset(("/ID", "/CharSet", "/Registry", "/Ordering", "/Lang"))
"""Entries whose strings are no words: the file's identifier, and of fonts."""


def texts(file: BinaryIO) -> Iterator[Inside]:
    """The texts of a PDF. Raises ByteFault for one that is locked, damaged, or holds files."""
    try:
        reader = PdfReader(file, strict=False)
        if reader.is_encrypted or reader.attachments:
            raise ByteFault(0, "This PDF is locked, or holds files", CLAUSE)
        for number, words in enumerate(_pages(file), 1):
            yield Inside(f"page {number}", words)
        yield from (Inside("about the file", str(value)) for value in (reader.metadata or {}).values())
        seen: set[int] = set()
        for generation in reader.xref.values():
            for ident in generation:
                yield from _of_object(reader.get_object(ident), seen)
        for ident in reader.xref_objStm:
            yield from _of_object(reader.get_object(ident), seen)
    except UNREADABLE as error:
        raise ByteFault(0, f"This PDF cannot be read to its end ({error})", CLAUSE) from error


def _pages(file: BinaryIO) -> Iterator[str]:
    """What stands on each page, line by line; PDFium marks a hyphen at the end of a line by U+FFFE."""
    with closing(pypdfium2.PdfDocument(file)) as document:
        for page in document:
            with closing(page), closing(page.get_textpage()) as laid_out:
                words = laid_out.get_text_range().replace("\r\n", "\n").replace("\ufffe", "-")
                yield words.replace("-\n", "-")


def _of_object(value: Any, seen: set[int]) -> Iterator[Inside]:
    """The strings of an object and of what stands in it; objects that it refers to come by themselves."""
    if isinstance(value, StreamObject):
        yield from _of_stream(value)
    if isinstance(value, DictionaryObject):
        for key in value:
            if key not in KEYS:
                yield from _of_part(str(key), value.raw_get(key), seen)
    elif isinstance(value, ArrayObject):
        for part in list.__iter__(value):
            yield from _of_part("array", part, seen)


def _of_part(key: str, part: Any, seen: set[int]) -> Iterator[Inside]:
    if isinstance(part, TextStringObject):
        yield Inside(key.lstrip("/"), str(part))
    elif isinstance(part, ByteStringObject):
        yield Inside(key.lstrip("/"), bytes(part).decode("latin-1"))
    elif isinstance(part, DictionaryObject | ArrayObject):
        yield from _of_object(part, seen)


def _of_stream(stream: StreamObject) -> Iterator[Inside]:
    """A packet of metadata (14.3.2), and a picture that stands in the file as a JPEG (7.4.8)."""
    if stream.get("/Type") == "/Metadata":
        yield from picture_texts.of_xmp(stream.get_data())
    filters = stream.get("/Filter")
    if filters == "/DCTDecode" or (isinstance(filters, ArrayObject) and list(filters) == ["/DCTDecode"]):
        yield from picture_texts.texts(io.BytesIO(stream._data))
