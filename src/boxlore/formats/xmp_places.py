"""The place of capture in XMP: coordinates in any property, at any depth, as element, attribute or keyword.

A scan's coordinates say where it was scanned, which is somebody's home. Names are known by their sound, as there are
many namespaces for the same: `exif:GPSLatitude` (CIPA DC-010), `geo:lat` (W3C, WGS84 vocabulary), `decimalLatitude`
(Darwin Core), those of drones and cameras. Named places in words are left to the crosswalk.
"""

import re

from lxml import etree

from boxlore.formats.xmp_names import RDF

_SOUNDS = re.compile(r"gps|latitude|longitude|coordinates|geotag|iso6709", re.IGNORECASE)
_SHORT = frozenset("lat lon lng long alt lat_long latlong pos point location".split())
"""Local names that are coordinates in a namespace of geography, and anything elsewhere."""
_EXACT = frozenset("lat lon lng lat_long latlong".split())
_GEOGRAPHY = re.compile(r"geo|wgs84|opengis|kml", re.IGNORECASE)
_KEYWORD = re.compile(r"\s*geo:?\s*(?:lat|lon|lng|long|alt)\w*\s*[=:]", re.IGNORECASE)
"""A machine tag among keywords, such as `geo:lat=59.4370` (common practice, no source)."""

IN_BYTES = re.compile(rb"gps|atitude|ongitude|oordinates|geo|lat=|lon=|lat>|lon>|lng|iso6709", re.IGNORECASE)
"""A quick look at a packet's bytes: one without any of these says no place."""

NAMES_IN_BYTES = re.compile(rb"gpsl(?:at|ong)|latitude|longitude|iso6709|wgs84", re.IGNORECASE)
"""The same for bytes that are no packet, of which chance makes no such names."""


def may_say(packet: bytes) -> bool:
    """Whether a packet, in UTF-8 or UTF-16, may have a coordinate; cheaper than reading it."""
    return bool(IN_BYTES.search(packet.replace(b"\x00", b"")))


def taken_out(root: etree._Element) -> bool:
    """Take every coordinate out of the tree. Returns whether there was one."""
    gone = False
    for element in list(root.iter(etree.Element)):
        for key in [
            str(key) for key in element.attrib if _is_coordinate(str(key)) or _is_keyword(str(element.get(key)))
        ]:
            del element.attrib[key]
            gone = True
        if _is_coordinate(element.tag) or (_is_keyword(element.text or "") and not len(element)):
            parent = element.getparent()
            if parent is not None:
                parent.remove(element)
                gone = True
    return gone


def _is_coordinate(tag: str) -> bool:
    name = etree.QName(tag)
    local, namespace = name.localname, name.namespace or ""
    if namespace == RDF:
        return False
    lowered = local.lower()
    return (
        bool(_SOUNDS.search(local)) or lowered in _EXACT or (lowered in _SHORT and bool(_GEOGRAPHY.search(namespace)))
    )


def _is_keyword(text: str) -> bool:
    return bool(_KEYWORD.match(text))


def is_keyword_of_place(value: bytes) -> bool:
    """Whether a keyword, as IIM has it, is a coordinate."""
    return _is_keyword(value.decode("utf-8", "replace"))
