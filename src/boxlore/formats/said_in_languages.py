"""What the XMP of a picture says in several languages, and which places it says that it shows.

A language alternative (ISO 16684-1, 8.2.2.4) holds the same text in several languages; `x-default` is the one that a
reader shows who knows none of them. LocationShown is of the IPTC Photo Metadata Standard, Extension 1.9.
"""

from collections.abc import Iterator, Sequence
from typing import BinaryIO

from lxml import etree

from boxlore.formats import picture_files, xmp
from boxlore.formats.xmp_names import LANG, RDF, clark_name

DEFAULT = "x-default"
_PARTS_OF_A_PLACE = ("LocationName", "Sublocation", "City", "ProvinceState", "CountryName")

Descriptions = Sequence[etree._Element]
"""The elements of a file's XMP that hold its properties."""


def descriptions(file: BinaryIO) -> Descriptions:
    """What the XMP of a file describes, read once for all that is asked of it.

    Raises ByteFault for a file or a packet that cannot be read.
    """
    packet, further = picture_files.packets(file)
    return xmp.descriptions(xmp.tree(packet, further))


def further_languages(described: Descriptions, name: str) -> list[tuple[str, str]]:
    """(language, words) of each text of a property besides the default one; none where it has no languages."""
    texts = _texts(described, name)
    default = next((words for language, words in texts if language in ("", DEFAULT)), texts[0][1] if texts else "")
    return [(language, words) for language, words in texts if words and words != default and language != DEFAULT]


def default_text(described: Descriptions, name: str) -> str:
    """The text of a language alternative that a reader shows who knows none of its languages, or ''."""
    texts = _texts(described, name)
    return next((words for language, words in texts if language == DEFAULT), texts[0][1] if texts else "")


def places_shown(described: Descriptions) -> list[str]:
    """The places of LocationShown, each as its parts from the smallest to the country."""
    places = (_place(item) for item in _items(described, "Iptc4xmpExt:LocationShown"))
    return [place for place in dict.fromkeys(places) if place]


def joined_place(parts: Iterator[str]) -> str:
    """Parts of a place with commas between them, a part that stands there already left out."""
    kept: list[str] = []
    for part in parts:
        if part and not any(part.casefold() in earlier.casefold() for earlier in kept):
            kept.append(part)
    return ", ".join(kept)


def _place(item: etree._Element) -> str:
    return joined_place(_part(item, clark_name(f"Iptc4xmpExt:{name}")) for name in _PARTS_OF_A_PLACE)


def _part(item: etree._Element, tag: str) -> str:
    """A field of a structure, written as an element, as an attribute, or in a description of its own."""
    for node in (item, *item.iter(f"{{{RDF}}}Description")):
        if node.get(tag):
            return " ".join(str(node.get(tag)).split())
    element = next(item.iter(tag), None)
    if element is None:
        return ""
    inner = next(element.iter(f"{{{RDF}}}li"), element)
    return _line(inner)


def _texts(described: Descriptions, name: str) -> list[tuple[str, str]]:
    """(language, words) of each text of a property."""
    return [(item.get(LANG, ""), _line(item)) for item in _items(described, name) if not len(item)]


def _items(described: Descriptions, name: str) -> Iterator[etree._Element]:
    for description in described:
        for element in description.iterfind(clark_name(name)):
            yield from element.iterfind(f"*/{{{RDF}}}li")


def _line(element: etree._Element) -> str:
    return " ".join((element.text or "").split())
