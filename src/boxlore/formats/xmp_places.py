"""The place of capture in XMP: coordinates in any property, at any depth, as element, attribute or keyword.

A scan's coordinates say where it was scanned, which is somebody's home. Names are known by their sound, as there are
many namespaces for the same: `exif:GPSLatitude` (CIPA DC-010), `geo:lat` (W3C, WGS84 vocabulary), `decimalLatitude`
(Darwin Core), those of drones and cameras. Points that are written into texts are cut out of them.

Places by their names go too where they say where the file was made, or may: the structures and the fields of a place
(IPTC Photo Metadata Standard 2025.1), which programs fill from the coordinates.
"""

import re
from typing import NamedTuple

from lxml import etree

from boxlore.core.crosswalk.metadata_values import NAMESPACES
from boxlore.formats import places_in_texts
from boxlore.formats.xmp_names import RDF, clark_name

_SOUNDS = re.compile(r"gps|latitude|longitude|coordinates|geotag|iso6709", re.IGNORECASE)
_SHORT = frozenset("lat lon lng long alt lat_long latlong pos point location".split())
"""Local names that are coordinates in a namespace of geography, and anything elsewhere."""
_EXACT = frozenset("lat lon lng lat_long latlong".split())
_GEOGRAPHY = re.compile(r"geo|wgs84|opengis|kml", re.IGNORECASE)
_KEYWORD = re.compile(r"\s*geo:?\s*(?:lat|lon|lng|long|alt)\w*\s*[=:]", re.IGNORECASE)
"""A machine tag among keywords, such as `geo:lat=59.4370` (common practice, no source)."""

_NAMED = {
    clark_name(name): name
    for name in (
        "Iptc4xmpExt:LocationCreated", "Iptc4xmpExt:LocationShown", "Iptc4xmpCore:Location", "Iptc4xmpCore:CountryCode",
        "photoshop:City", "photoshop:State", "photoshop:Country",
    )
}  # fmt: skip
"""Properties that name a place."""
_PREFIXES = {uri: prefix for prefix, uri in NAMESPACES.items()}

NAMES_IN_BYTES = re.compile(rb"gpsl(?:at|ong)|latitude|longitude|iso6709|wgs84", re.IGNORECASE)
"""The same for bytes that are no packet, of which chance makes no such names."""


class TakenOut(NamedTuple):
    """Whether there was a place, and sentences about what a person may have written and went with it."""

    gone: bool
    reports: list[str]


def taken_out(root: etree._Element, *, named: bool = True) -> TakenOut:
    """Take every coordinate out of the tree, and with `named` the places by their names."""
    gone, cut, names = False, dict[str, None](), dict[str, None]()
    for element in list(root.iter(etree.Element)):
        for key, text in [(str(key), str(text)) for key, text in element.attrib.items()]:
            if is_coordinate(key) or is_keyword(text):
                del element.attrib[key]
                gone = True
            elif named and key in _NAMED:
                del element.attrib[key]
                names[_NAMED[key]] = None
            elif (left := places_in_texts.cut_out(text)) != text:
                element.set(key, left)
                cut[_shown(key)] = None
        parent = element.getparent()
        if parent is not None and (is_coordinate(element.tag) or (is_keyword(element.text or "") and not len(element))):
            parent.remove(element)
            gone = True
        elif parent is not None and named and element.tag in _NAMED:
            parent.remove(element)
            names[_NAMED[element.tag]] = None
        elif (left := places_in_texts.cut_out(element.text or "")) != (element.text or ""):
            element.text = left
            cut[_property_of(element)] = None
    reports = [places_in_texts.said(f"{name} of the file") for name in cut]
    reports += [f"{name} of the file names a place and was taken out." for name in names]
    return TakenOut(gone or bool(reports), reports)


def _property_of(element: etree._Element) -> str:
    """The name of the property that an element is, or stands in."""
    chain = [element, *element.iterancestors()]
    outer = [element.tag for element in chain if etree.QName(element.tag).namespace != RDF]
    return _shown(str(outer[0] if outer else element.tag))


def _shown(tag: str) -> str:
    """`{namespace}name` as a person sees it, `dc:title`."""
    name = etree.QName(tag)
    prefix = _PREFIXES.get(name.namespace or "")
    return f"{prefix}:{name.localname}" if prefix else name.localname


def is_coordinate(tag: str) -> bool:
    name = etree.QName(tag)
    local, namespace = name.localname, name.namespace or ""
    if namespace == RDF:
        return False
    lowered = local.lower()
    return (
        bool(_SOUNDS.search(local)) or lowered in _EXACT or (lowered in _SHORT and bool(_GEOGRAPHY.search(namespace)))
    )


def is_keyword(text: str) -> bool:
    return bool(_KEYWORD.match(text))


def is_keyword_of_place(value: bytes) -> bool:
    """Whether a keyword, as IIM has it, is a coordinate."""
    return is_keyword(value.decode("utf-8", "replace"))
