"""A packet read as the strictest readers do: what one of them would refuse or lose is said, before a copy has its name.

The grammar is that of ISO 16684-1, 7.4 to 7.9 and annex C, which allows less than RDF/XML. Where it leaves a choice,
we hold our own copies to the plain one (7.4): one description with one rdf:about, and standard prefixes, as there are
readers that look for those bytes.

    RDF         = <rdf:RDF> *<rdf:Description> </rdf:RDF>
    Description = rdf:about *attribute *property        (each name once; all in a namespace)
    property    = text / Description / array / *property with rdf:parseType="Resource" / empty with attributes
    array       = <rdf:Bag> *<rdf:li>property</rdf:li> </rdf:Bag>        (Seq and Alt likewise)
"""

from collections import Counter
from collections.abc import Iterator

from lxml import etree

from boxlore.core.errors import ByteFault
from boxlore.formats import xmp
from boxlore.formats.xmp_names import ABOUT, LANG, RDF, STANDARD, XML, shown
from boxlore.formats.xmp_repair import DESCRIPTION

CLAUSE = "ISO 16684-1, annex C"
ARRAYS = frozenset(f"{{{RDF}}}{kind}" for kind in ("Bag", "Seq", "Alt"))
LI, VALUE, TYPE, RESOURCE, DATATYPE = (
    f"{{{RDF}}}{name}" for name in ("li", "value", "parseType", "resource", "datatype")
)
_LABELS = frozenset({f"{{{RDF}}}ID", f"{{{RDF}}}nodeID", DATATYPE, LANG, RESOURCE, TYPE})
"""Attributes of a property that are no field of it."""


def faults(packet: bytes) -> list[str]:
    """Sentences about what a strict reader does not take in the packet; empty for a sound one, and for no packet."""
    if not packet.strip(b"\x00 \t\r\n"):
        return []
    try:
        root = xmp.parse_as_written(packet)
    except ByteFault as fault:
        return [f"{fault.why}."]
    return list(dict.fromkeys(_of_packet(root)))


def _of_packet(root: etree._Element) -> Iterator[str]:
    yield from _prefixes(root)
    rdf = next(root.iter(f"{{{RDF}}}RDF"), None)
    if rdf is None:
        yield "The XMP packet holds no rdf:RDF."
        return
    nodes = list(rdf.iterchildren(etree.Element))
    if [node.tag for node in nodes] != [DESCRIPTION]:
        yield f"The XMP packet has {len(nodes)} descriptions, and should have one."
    names = Counter(name for node in nodes for name in _names(node))
    yield from (f"The XMP packet says {shown(name)} {times} times." for name, times in names.items() if times > 1)
    for node in nodes:
        if node.get(ABOUT) is None:
            yield "A description in the XMP packet does not say what it is about."
        if node.find(VALUE) is not None:
            yield "rdf:value cannot be a property of the picture in an XMP packet."
        yield from _fields(node, skip={ABOUT})


def _prefixes(root: etree._Element) -> Iterator[str]:
    """Standard namespaces with another prefix, and standard prefixes of another namespace."""
    known = {uri: prefix for prefix, uri in STANDARD.items()}
    for element in root.iter(etree.Element):
        for prefix, uri in element.nsmap.items():
            if known.get(uri, prefix) != prefix or STANDARD.get(prefix or "", uri) != uri:
                yield f"The XMP packet has the prefix {prefix or 'none'} for {uri}."


def _names(node: etree._Element) -> list[str]:
    """The names of the properties or fields of a description, a name once for each time that it comes."""
    attributes = [str(key) for key in node.attrib if etree.QName(key).namespace not in (RDF, XML)]
    return attributes + [child.tag for child in node.iterchildren(etree.Element)]


def _fields(node: etree._Element, *, skip: set[str]) -> Iterator[str]:
    """Faults of the properties inside a description or structure."""
    for key in (str(key) for key in node.attrib if key not in skip):
        namespace = etree.QName(key).namespace
        if namespace is None:
            yield f"The attribute {key} in the XMP packet has no namespace."
        elif namespace == RDF:
            yield f"{shown(key)} cannot stand here in an XMP packet."
    if _words(node):
        yield "There are words between the properties of the XMP packet."
    for child in node.iterchildren(etree.Element):
        yield from _property(child)


def _property(element: etree._Element) -> Iterator[str]:
    """Faults of one property, field or member of an array."""
    name = etree.QName(element.tag)
    if name.namespace is None:
        yield f"The property {name.localname} in the XMP packet has no namespace."
    elif name.namespace == RDF and name.localname not in ("li", "value", "type"):
        yield f"{shown(element.tag)} cannot be a property of an XMP packet."
    elif element.tag == VALUE and element.find(f".//{VALUE}") is not None:
        yield "A value in the XMP packet holds another rdf:value."
    children = list(element.iterchildren(etree.Element))
    kind = element.get(TYPE)
    if kind not in (None, "Resource"):
        yield f"{shown(element.tag)} in the XMP packet is of a kind ({kind}) that XMP does not have."
    elif kind == "Resource":
        yield from _structure(element, skip=_LABELS)
    elif children:
        yield from _holding(element, children)
    elif _words(element) and any(key not in _LABELS for key in element.attrib):
        yield f"{shown(element.tag)} in the XMP packet has words and fields at once."


def _holding(element: etree._Element, children: list[etree._Element]) -> Iterator[str]:
    """Faults of a property that holds another element: an array, or a description with its fields."""
    if len(children) > 1 or _words(element):
        yield f"{shown(element.tag)} in the XMP packet holds more than one value."
    inner = children[0]
    if inner.tag in ARRAYS:
        if _words(inner):
            yield f"There are words between the members of {shown(element.tag)} in the XMP packet."
        for member in inner.iterchildren(etree.Element):
            if member.tag != LI:
                yield f"A member of {shown(element.tag)} in the XMP packet is no rdf:li."
            yield from _property(member)
    elif inner.tag == DESCRIPTION:
        yield from _structure(inner, skip={ABOUT, *_LABELS})
    elif etree.QName(inner.tag).namespace in (RDF, None):
        yield f"{shown(element.tag)} in the XMP packet holds {shown(inner.tag)}, which is no value."
    else:
        yield from _structure(inner, skip={ABOUT, *_LABELS})  # a structure with the name of its type


def _structure(node: etree._Element, *, skip: frozenset[str] | set[str]) -> Iterator[str]:
    """Faults of a structure: a field twice, and what its fields have."""
    for name, times in Counter(_names(node)).items():
        if times > 1:
            yield f"A structure in the XMP packet has the field {shown(name)} {times} times."
    yield from _fields(node, skip=set(skip))


def _words(element: etree._Element) -> bool:
    """Whether there is text among the children of an element."""
    return bool((element.text or "").strip()) or any((child.tail or "").strip() for child in element)
