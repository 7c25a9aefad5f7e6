"""The XMP packet (ISO 16684-1): read in any shape that RDF/XML allows, written in one plain shape.

A packet comes from outside, so its size is limited, a document type is refused, and neither entities nor anything
from the network is loaded.
"""

import hashlib
from collections.abc import Iterable, Mapping

from lxml import etree

from boxlore.core.crosswalk.metadata_values import NAMESPACES, Alt, Bag, Embedding, Seq, Struct, Text, XmpValue
from boxlore.core.errors import ByteFault

MOST_BYTES = 16 << 20
PADDING = 2000
HEAD = b'<?xpacket begin="\xef\xbb\xbf" id="W5M0MpCehiHzreSzNTczkc9d"?>\n'
CLAUSE = "ISO 16684-1, 7"

RDF, _X, _XML = NAMESPACES["rdf"], NAMESPACES["x"], NAMESPACES["xml"]
_PREFIX = {uri: prefix for prefix, uri in NAMESPACES.items()}
LANG = f"{{{_XML}}}lang"
_ABOUT = f"{{{RDF}}}about"
_NOTE = f"{{{NAMESPACES['xmpNote']}}}HasExtendedXMP"


def clark_name(qualified: str) -> str:
    """`prefix:name` as `{namespace}name`, which is how lxml names elements and attributes."""
    prefix, _, local = qualified.partition(":")
    return f"{{{NAMESPACES[prefix]}}}{local}"


def parse(packet: bytes) -> etree._Element:
    """The tree of a packet; for no bytes an empty tree. Raises ByteFault for anything that is not XMP.

        packet = [header] (xmpmeta / RDF) [padding] [trailer]     (ISO 16684-1, 7.3)
        xmpmeta = <x:xmpmeta> RDF </x:xmpmeta>
        RDF = <rdf:RDF> *description </rdf:RDF>                   (7.4)

    The root of the tree is always x:xmpmeta, or another wrapper that the packet has.
    """
    if not packet.strip(b"\x00 \t\r\n"):
        return _empty()
    if len(packet) > MOST_BYTES:
        raise ByteFault(0, f"The XMP packet has {len(packet)} bytes", CLAUSE)
    if b"<!DOCTYPE" in packet or b"<!ENTITY" in packet:
        raise ByteFault(0, "The XMP packet declares a document type", "ISO 16684-1, 7.1")
    parser = etree.XMLParser(resolve_entities=False, no_network=True, remove_blank_text=True, huge_tree=False)
    try:
        root = etree.fromstring(packet.strip(b"\x00 \t\r\n"), parser)
    except etree.XMLSyntaxError as error:
        raise ByteFault(0, f"The XMP packet is not well-formed XML ({error.msg})", CLAUSE) from error
    if etree.ElementTree(root).docinfo.doctype:  # type: ignore[attr-defined]  # in another encoding the look at the bytes does not see it
        raise ByteFault(0, "The XMP packet declares a document type", "ISO 16684-1, 7.1")
    if root.tag == f"{{{RDF}}}RDF":
        outer = etree.Element(f"{{{_X}}}xmpmeta", nsmap={"x": _X})
        outer.append(root)
        return outer
    if root.find(f"{{{RDF}}}RDF") is None:  # a wrapper without RDF holds nothing that could be kept
        raise ByteFault(0, "The XMP packet holds no rdf:RDF", "ISO 16684-1, 7.3")
    return root


def _empty() -> etree._Element:
    root = etree.Element(f"{{{_X}}}xmpmeta", nsmap={"x": _X})
    etree.SubElement(root, f"{{{RDF}}}RDF", nsmap={"rdf": RDF})
    return root


def _rdf_of(root: etree._Element) -> etree._Element:
    rdf = root.find(f"{{{RDF}}}RDF")
    assert rdf is not None  # parse and _empty see to it
    return rdf


def descriptions(root: etree._Element) -> list[etree._Element]:
    """The rdf:Description elements, which hold the properties."""
    return list(_rdf_of(root).iterfind(f"{{{RDF}}}Description"))


def home_of(root: etree._Element) -> etree._Element:
    """The description that our properties stand in: the first; where there is none, it is added."""
    existing = descriptions(root)
    home = existing[0] if existing else etree.SubElement(_rdf_of(root), f"{{{RDF}}}Description")
    home.set(_ABOUT, home.get(_ABOUT, ""))
    return home


def tree(packet: bytes, extended: Iterable[bytes] = ()) -> etree._Element:
    """The tree of a packet with its extended packets, all properties gathered in one description."""
    root = parse(packet)
    for further in extended:
        _gather(root, descriptions(parse(further)))
    _gather(root, descriptions(root)[1:])
    for description in descriptions(root)[:1]:
        if _NOTE in description.attrib:
            del description.attrib[_NOTE]
        for note in description.findall(_NOTE):
            description.remove(note)
        _spell_out(description)
    return root


def _spell_out(description: etree._Element) -> None:
    """Turn properties written as attributes into elements, which mean the same (ISO 16684-1, 7.9.2.2)."""
    for key, text in list(description.attrib.items()):
        if etree.QName(key).namespace not in (RDF, _XML, None):
            del description.attrib[key]
            etree.SubElement(description, key).text = str(text)


def _gather(root: etree._Element, descriptions: Iterable[etree._Element]) -> None:
    """Move the properties that the first description lacks into it, and remove the other descriptions
    (ISO 16684-1, 7.4).
    """
    home = home_of(root)
    present = {child.tag for child in home} | set(home.attrib)
    for description in descriptions:
        if description.get(_ABOUT, "") not in ("", home.get(_ABOUT)):
            continue  # it is about another resource, and stays where it stands
        for key, text in description.attrib.items():
            if key not in present:
                home.set(key, text)
        for child in list(description):
            if child.tag not in present:
                home.append(child)
        if (parent := description.getparent()) is not None:
            parent.remove(description)


def write(parent: etree._Element, name: str, value: XmpValue) -> None:
    """Add a property, or a field of a structure, to `parent`."""
    fill(etree.SubElement(parent, clark_name(name)), value)


def fill(element: etree._Element, value: XmpValue) -> None:
    """Put a value into its element, in the plain form of ISO 16684-1, 7.5 to 7.8.

    Text   = characters
    Alt    = <rdf:Alt> 1*<rdf:li xml:lang="…">characters</rdf:li> </rdf:Alt>
    Bag    = <rdf:Bag> *<rdf:li>value</rdf:li> </rdf:Bag>     (Seq likewise)
    Struct = *<field>value</field>, with rdf:parseType="Resource" on the element
    """
    match value:
        case Text(words):
            element.text = xml_text(words)
        case Alt(words):
            array = etree.SubElement(element, f"{{{RDF}}}Alt")
            for language, text in dict(words).items():
                li = etree.SubElement(array, f"{{{RDF}}}li")
                li.set(LANG, language)
                li.text = xml_text(text)
        case Bag(items) | Seq(items):
            array = etree.SubElement(element, f"{{{RDF}}}{type(value).__name__}")
            for item in items:
                fill(etree.SubElement(array, f"{{{RDF}}}li"), item)
        case Struct(fields):
            element.set(f"{{{RDF}}}parseType", "Resource")
            for name, inner in fields:
                write(element, name, inner)


def tidy(root: etree._Element) -> None:
    """Declare every namespace once, at the root, with the prefix that its standard gives it."""
    uris = {etree.QName(element).namespace for element in root.iter(etree.Element)}
    uris |= {etree.QName(key).namespace for element in root.iter(etree.Element) for key in element.attrib}
    ours = {prefix: uri for prefix, uri in NAMESPACES.items() if uri in uris and prefix != "xml"}
    etree.cleanup_namespaces(root, top_nsmap=ours, keep_ns_prefixes=["rdf", "x"])


def xml_text(words: str) -> str:
    """The words without the characters that XML 1.0 does not allow (2.2)."""
    return "".join(
        letter
        for letter in words
        if letter in "\t\n\r" or (" " <= letter <= "\ud7ff") or ("\ue000" <= letter <= "\ufffd") or letter > "\uffff"
    )


def serialize(root: etree._Element, *, end: str = "w", padding: int = PADDING) -> bytes:
    """The packet: header, tree, padding in lines of spaces, trailer (ISO 16684-1, 7.3.2).

    `end` is w if others may change the packet in place, r if not; `padding` is in bytes.
    """
    body: bytes = etree.tostring(root, encoding="utf-8", pretty_print=True)
    lines = (b" " * 99 + b"\n") * (padding // 100)
    return HEAD + body + lines + f'<?xpacket end="{end}"?>'.encode()


def divide(root: etree._Element, most: int, ours: Iterable[str]) -> tuple[bytes, bytes, str]:
    """The packet in at most `most` bytes, the extended packet and its GUID; the last two are empty if all fits.

    Where it does not fit, first the padding is left out. Then properties move to the extended packet until it fits,
    the largest foreign ones first and `ours` last (XMP Specification Part 3, 1.1.3.1).
    """
    for padding in (PADDING, 0):
        packet = serialize(root, padding=padding)
        if len(packet) <= most:
            return packet, b"", ""
    moved, home, our_tags = _empty(), home_of(root), {clark_name(name) for name in ours}
    target = home_of(moved)
    home.set(_NOTE, "0" * 32)
    tidy(root)
    by_size = sorted(home, key=lambda child: len(etree.tostring(child)), reverse=True)
    for child in sorted(by_size, key=lambda child: child.tag in our_tags):
        target.append(child)
        if len(serialize(root, padding=0)) <= most:
            break
    tidy(moved)
    body: bytes = etree.tostring(moved, encoding="utf-8", pretty_print=True)
    guid = hashlib.md5(body, usedforsecurity=False).hexdigest().upper()
    home.set(_NOTE, guid)
    return serialize(root, padding=0), body, guid


def values(root: etree._Element) -> dict[str, str]:
    """The properties as plain text by `prefix:name`, for namespaces that we know.

    The members of an array are joined by `; `; a structure gives an empty text.
    """
    properties: dict[str, str] = {}
    for description in descriptions(root):
        for key, text in description.attrib.items():
            if (name := _qualified(str(key))) and name != "rdf:about":
                properties[name] = str(text)
        for element in description.iterchildren(etree.Element):
            if name := _qualified(element.tag):
                texts = [li.text or "" for li in element.iter(f"{{{RDF}}}li") if not len(li)]
                properties[name] = "; ".join(dict.fromkeys(texts)) if texts else (element.text or "").strip()
    return properties


def _qualified(tag: str) -> str:
    """`{namespace}name` as `prefix:name`; empty for a namespace that we do not know."""
    name = etree.QName(tag)
    prefix = _PREFIX.get(name.namespace or "")
    return f"{prefix}:{name.localname}" if prefix else ""


def read_back(root: etree._Element, embedding: Embedding) -> list[str]:
    """The names of the embedding's properties that the tree lacks or holds with another value."""
    ours = etree.Element("wanted")
    for name, value in embedding.xmp:
        write(ours, name, value)
    held_by_tag: Mapping[str, etree._Element] = {
        element.tag: element
        for description in descriptions(root)
        for element in description.iterchildren(etree.Element)
    }
    return [
        name
        for (name, _), element in zip(embedding.xmp, ours, strict=True)
        if element.tag not in held_by_tag or not _covers(held_by_tag[element.tag], element)
    ]


def _covers(held: etree._Element, wanted: etree._Element) -> bool:
    """Whether the element holds everything wanted; an Alt or a Bag may hold further members behind it."""
    if held.tag != wanted.tag or (held.text or "").strip() != (wanted.text or "").strip():
        return False
    if len(held) < len(wanted) or held.get(LANG) != wanted.get(LANG):
        return False
    if len(held) > len(wanted) and not held.tag.endswith(("}Alt", "}Bag")):
        return False
    return all(_covers(held_child, wanted_child) for held_child, wanted_child in zip(held, wanted, strict=False))
