"""The metadata to embed in a copy, as plain values: XMP properties, IIM datasets, Exif text.

The kinds of XMP value are those of ISO 16684-1, 6.3: simple value, language alternative, unordered array, ordered
array, structure. A property is named `prefix:name`, with a prefix of NAMESPACES.
"""

import re
from collections.abc import Mapping
from dataclasses import dataclass

NAMESPACES: Mapping[str, str] = {
    "rdf": "http://www.w3.org/1999/02/22-rdf-syntax-ns#",
    "x": "adobe:ns:meta/",
    "xml": "http://www.w3.org/XML/1998/namespace",
    "dc": "http://purl.org/dc/elements/1.1/",
    "dcterms": "http://purl.org/dc/terms/",
    "exif": "http://ns.adobe.com/exif/1.0/",
    "photoshop": "http://ns.adobe.com/photoshop/1.0/",
    "xmp": "http://ns.adobe.com/xap/1.0/",
    "xmpRights": "http://ns.adobe.com/xap/1.0/rights/",
    "xmpMM": "http://ns.adobe.com/xap/1.0/mm/",
    "stEvt": "http://ns.adobe.com/xap/1.0/sType/ResourceEvent#",
    "xmpNote": "http://ns.adobe.com/xmp/note/",
    "Iptc4xmpCore": "http://iptc.org/std/Iptc4xmpCore/1.0/xmlns/",
    "Iptc4xmpExt": "http://iptc.org/std/Iptc4xmpExt/2008-02-29/",
    "mwg-rs": "http://www.metadataworkinggroup.com/schemas/regions/",
    "mwg-coll": "http://www.metadataworkinggroup.com/schemas/collections/",
    "stArea": "http://ns.adobe.com/xmp/sType/Area#",
    "stDim": "http://ns.adobe.com/xap/1.0/sType/Dimensions#",
    "boxlore": "urn:boxlore:copy#",
}
"""Prefix -> namespace. ISO 16684-1; XMP Specification Part 2; IPTC Photo Metadata Standard 2025.1; MWG Guidelines
2.0. The last is ours: what we note in a copy for ourselves."""


@dataclass(frozen=True, slots=True)
class Text:
    """A simple value."""

    words: str


@dataclass(frozen=True, slots=True)
class Alt:
    """A language alternative: (language tag, words) pairs, `x-default` first."""

    words: tuple[tuple[str, str], ...]


@dataclass(frozen=True, slots=True)
class Bag:
    """An unordered array."""

    items: tuple["XmpValue", ...]


@dataclass(frozen=True, slots=True)
class Seq:
    """An ordered array."""

    items: tuple["XmpValue", ...]


@dataclass(frozen=True, slots=True)
class Struct:
    """A structure: (property name, value) pairs in order."""

    fields: tuple[tuple[str, "XmpValue"], ...]


XmpValue = Text | Alt | Bag | Seq | Struct


_TAG = re.compile(r"[A-Za-z]{2,3}(-[A-Za-z0-9]{1,8})*", re.ASCII)
"""A language tag of the commonest forms of BCP 47: a language of two or three letters, then subtags."""


def alternative(words: str, language: str) -> Alt:
    """The words as the default and under their language (`en` if it is ''); only as the default if it is no tag."""
    tag = (language or "en").replace("_", "-")
    default = ("x-default", words)
    return Alt((default, (tag, words)) if _TAG.fullmatch(tag) else (default,))


def bag(*words: str) -> Bag:
    """A bag of simple values."""
    return Bag(tuple(Text(text) for text in words))


OUR_REGION = "boxlore-"
"""Identifiers of our regions begin with this; so regions of other programs can be told from ours, and are kept."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Embedding:
    """Everything that one copy is to carry. What is not named here stays as the file has it.

    `xmp`: our properties, which replace those in the file; other languages of an alternative and regions of other
    programs are kept. `absent`: properties written only if the file has none of that name. `remove`: names of
    properties to take out. `iim`: (record, dataset) with its texts; one without texts is taken out. `exif`: tag with
    its text, written only if the file has the tag. `original_day`: the picture's date (YYYY-MM-DD) if it is a full and
    sure day, else ''. `unfilled` and `unfilled_iim`: those of ours that have no value this time; what the file says
    there stays. `drop_text`: all textual metadata of the file goes; colour profile, resolution and orientation stay.
    `only_place`: nothing is written; only what says where the file was made goes. `settled`: the file is a copy of
    ours, and what another program wrote of these properties is among the values here (see `formats.additions`).
    `keeps_day`: the day of the picture in its Exif is such a value, and stays.
    """

    xmp: tuple[tuple[str, XmpValue], ...] = ()
    absent: tuple[tuple[str, XmpValue], ...] = ()
    remove: tuple[str, ...] = ()
    iim: tuple[tuple[tuple[int, int], tuple[str, ...]], ...] = ()
    exif: tuple[tuple[int, str], ...] = ()
    original_day: str = ""
    unfilled: tuple[str, ...] = ()
    unfilled_iim: tuple[tuple[int, int], ...] = ()
    drop_text: bool = False
    only_place: bool = False
    settled: bool = False
    keeps_day: bool = False


PLACE_TAKEN_OUT = Embedding(only_place=True)
"""What a scan for outside carries: all that it has, but where it was made."""


@dataclass(frozen=True, slots=True)
class ExistingMetadata:
    """The metadata that a file has already. `xmp` maps `prefix:name` to plain text, `iim` (record, dataset) to texts,
    `exif` a tag's name to text; `orientation` is the Exif orientation, and `problems` are sentences."""

    xmp: Mapping[str, str]
    iim: Mapping[tuple[int, int], tuple[str, ...]]
    exif: Mapping[str, str]
    orientation: int = 1
    has_gps: bool = False
    problems: tuple[str, ...] = ()
