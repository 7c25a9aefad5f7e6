"""What is to be embedded in a copy, as plain values: XMP properties, IIM datasets, Exif text.

XMP values follow ISO 16684-1, 6.3: simple, language alternative, unordered and ordered array, structure.
Property names are written `prefix:name` over one table of namespaces.
"""

import re
from collections.abc import Mapping
from dataclasses import dataclass, replace

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
}
"""ISO 16684-1; XMP Specification Part 2; IPTC Photo Metadata Standard 2025.1; MWG Guidelines 2.0."""


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
"""A language tag (BCP 47), as far as the commonest forms go."""


def alternative(words: str, language: str) -> Alt:
    """The words as the default and in their own language; as the default alone where the language is no tag."""
    tag = (language or "en").replace("_", "-")
    default = ("x-default", words)
    return Alt((default, (tag, words)) if _TAG.fullmatch(tag) else (default,))


def bag(*words: str) -> Bag:
    """A bag of simple values."""
    return Bag(tuple(Text(one) for one in words))


OUR_REGION = "boxlore-"
"""How the identifier of a region of ours begins, so that another's region is told from it and survives."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Embedding:
    """Everything that one copy is to carry.

    `xmp` holds our properties: those already in the file are replaced, other languages of an alternative and
    other people's regions kept; `absent` holds those written only where the file has none; `remove` names
    properties to take out; everything else survives. `iim` maps (record, dataset) to its texts; a dataset with
    no texts is taken out. `exif` maps a tag to text, written only where the tag is present. `original_day`
    (YYYY-MM-DD) is a full and sure date of the picture, else empty. `unfilled` and `unfilled_iim` are ours too,
    with nothing to say this time: what a scan says there stays.
    With `drop_text` all textual metadata of the file goes; colour profile, resolution, orientation stay.
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

    def over_our_own(self) -> "Embedding":
        """The same for a file that holds an older caption of ours: what has nothing to say goes."""
        emptied = tuple((key, ()) for key in self.unfilled_iim)
        return replace(self, remove=(*self.remove, *self.unfilled), iim=(*self.iim, *emptied))


@dataclass(frozen=True, slots=True)
class ExistingMetadata:
    """What a file carries already. `xmp` maps `prefix:name` to plain text, `problems` are sentences."""

    xmp: Mapping[str, str]
    iim: Mapping[tuple[int, int], tuple[str, ...]]
    exif: Mapping[str, str]
    orientation: int = 1
    has_gps: bool = False
    problems: tuple[str, ...] = ()
