"""Names of XMP in XML: each namespace with one prefix, the one that its standard gives it, declared at the root.

A prefix means nothing to an XML reader, but some readers of pictures look for the bytes ` hdrgm:Version="` or
`exif:`; to them a file with another prefix is another kind of file. So standard namespaces get the standard prefix,
any other keeps its own unless that is a standard one (ISO 16684-1, 6.2 and 7.2).
"""

from collections.abc import Mapping

from lxml import etree

from boxlore.core.crosswalk.metadata_values import NAMESPACES

RDF, X, XML = NAMESPACES["rdf"], NAMESPACES["x"], NAMESPACES["xml"]
LANG, ABOUT = f"{{{XML}}}lang", f"{{{RDF}}}about"

STANDARD: Mapping[str, str] = {
    **NAMESPACES,
    "aux": "http://ns.adobe.com/exif/1.0/aux/",
    "crs": "http://ns.adobe.com/camera-raw-settings/1.0/",
    "exifEX": "http://cipa.jp/exif/1.0/",
    "hdrgm": "http://ns.adobe.com/hdr-gain-map/1.0/",
    "mwg-kw": "http://www.metadataworkinggroup.com/schemas/keywords/",
    "pdf": "http://ns.adobe.com/pdf/1.3/",
    "plus": "http://ns.useplus.org/ldf/xmp/1.0/",
    "stFnt": "http://ns.adobe.com/xap/1.0/sType/Font#",
    "stJob": "http://ns.adobe.com/xap/1.0/sType/Job#",
    "stRef": "http://ns.adobe.com/xap/1.0/sType/ResourceRef#",
    "stVer": "http://ns.adobe.com/xap/1.0/sType/Version#",
    "tiff": "http://ns.adobe.com/tiff/1.0/",
    "xmpBJ": "http://ns.adobe.com/xap/1.0/bj/",
    "xmpDM": "http://ns.adobe.com/xmp/1.0/DynamicMedia/",
    "xmpG": "http://ns.adobe.com/xap/1.0/g/",
    "xmpGImg": "http://ns.adobe.com/xap/1.0/g/img/",
    "xmpTPg": "http://ns.adobe.com/xap/1.0/t/pg/",
    "xmpidq": "http://ns.adobe.com/xmp/Identifier/qual/1.0/",
}
"""Prefix -> namespace: ours, and those of ISO 16684-1, 8, XMP Specification Part 2, CIPA DC-010, PLUS and the gain map
of ISO 21496-1's forerunner (Adobe, Gain Map 1.0)."""

_PREFIX = {uri: prefix for prefix, uri in STANDARD.items()}


def clark_name(qualified: str) -> str:
    """`prefix:name` as `{namespace}name`, which is how lxml names elements and attributes; such a name as it is."""
    if qualified.startswith("{"):
        return qualified
    prefix, _, local = qualified.partition(":")
    return f"{{{NAMESPACES[prefix]}}}{local}"


def shown(tag: str) -> str:
    """`{namespace}name` as `prefix:name` with the standard prefix; the name alone for another namespace."""
    name = etree.QName(tag)
    prefix = _PREFIX.get(name.namespace or "", "")
    return f"{prefix}:{name.localname}" if prefix else name.localname


def _namespaces(root: etree._Element) -> list[str]:
    """The namespaces of all elements and attributes, each once, sorted, so that the same tree gives the same bytes."""
    tags = [tag for element in root.iter(etree.Element) for tag in (element.tag, *(str(key) for key in element.attrib))]
    return sorted({uri for tag in tags if (uri := etree.QName(tag).namespace)})


def _prefixes(root: etree._Element) -> dict[str, str]:
    """Prefix -> namespace for everything in the tree; see the module's docstring."""
    uris = _namespaces(root)
    prefixes = {prefix: uri for prefix, uri in STANDARD.items() if uri in uris and uri != XML}
    own = {uri: prefix for element in root.iter(etree.Element) for prefix, uri in element.nsmap.items() if prefix}
    for uri in uris:
        if uri not in _PREFIX:
            prefix, number = own.get(uri, ""), 0
            while not prefix or prefix in STANDARD or prefix in prefixes:
                number += 1
                prefix = f"ns{number}"
            prefixes[prefix] = uri
    return prefixes


def with_standard_prefixes(root: etree._Element) -> etree._Element:
    """The same tree, made anew under one root that declares every namespace."""
    anew = etree.Element(root.tag, nsmap=_prefixes(root))
    _fill(anew, root)
    return anew


def _fill(anew: etree._Element, old: etree._Element) -> None:
    """Give the new element what the old one has. The parser limits how deep elements stand in each other."""
    anew.text = old.text
    for key, text in old.attrib.items():
        anew.set(key, text)
    for child in old:
        if isinstance(child.tag, str):
            _fill(etree.SubElement(anew, child.tag), child)
        elif child.tag is etree.Comment:
            anew.append(etree.Comment(child.text))
        else:
            continue  # a processing instruction or entity is no part of the data model (ISO 16684-1, 7.3)
        anew[-1].tail = child.tail
