"""The XMP packet (ISO 16684-1): read in any RDF/XML shape, written in one plain shape with its own prefixes.

Entities are off, no network, a DOCTYPE is refused, and the size is capped.
"""

import hashlib
from collections.abc import Iterable, Mapping

from lxml import etree

from boxlore.core.crosswalk.embedding import NAMESPACES, Alt, Bag, Embedding, Seq, Struct, Text, XmpValue
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


def named(qualified: str) -> str:
    prefix, _, local = qualified.partition(":")
    return f"{{{NAMESPACES[prefix]}}}{local}"


def parse(packet: bytes) -> etree._Element:
    """The tree of a packet; an empty one for no bytes. Raises ByteFault for what is not XMP."""
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


def _rdf(root: etree._Element) -> etree._Element:
    found = root.find(f"{{{RDF}}}RDF")
    assert found is not None  # parse and _empty see to it
    return found


def descriptions(root: etree._Element) -> list[etree._Element]:
    return list(_rdf(root).iterfind(f"{{{RDF}}}Description"))


def home_of(root: etree._Element) -> etree._Element:
    """The description that our properties stand in, made where there is none."""
    there = descriptions(root)
    home = there[0] if there else etree.SubElement(_rdf(root), f"{{{RDF}}}Description")
    home.set(_ABOUT, home.get(_ABOUT, ""))
    return home


def tree(packet: bytes, extended: Iterable[bytes] = ()) -> etree._Element:
    """The tree of a standard packet with its extended ones taken in, all properties in one description."""
    root = parse(packet)
    for more in extended:
        _gather(root, descriptions(parse(more)))
    _gather(root, descriptions(root)[1:])
    for description in descriptions(root)[:1]:
        if _NOTE in description.attrib:
            del description.attrib[_NOTE]
        for note in description.findall(_NOTE):
            description.remove(note)
        _spell_out(description)
    return root


def _spell_out(description: etree._Element) -> None:
    """Properties written as attributes become elements (the same by ISO 16684-1, 7.9.2.2), so that any can move."""
    for key, text in list(description.attrib.items()):
        if etree.QName(key).namespace not in (RDF, _XML, None):
            del description.attrib[key]
            etree.SubElement(description, key).text = str(text)


def _gather(root: etree._Element, descriptions: Iterable[etree._Element]) -> None:
    """Bring properties into the first description (ISO 16684-1, 7.4), but for those it holds already."""
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
    fill(etree.SubElement(parent, named(name)), value)


def fill(element: etree._Element, value: XmpValue) -> None:
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
    """Every namespace declared once, at the top, with the prefix that its standard gives it."""
    uris = {etree.QName(one).namespace for one in root.iter(etree.Element)}
    uris |= {etree.QName(key).namespace for one in root.iter(etree.Element) for key in one.attrib}
    ours = {prefix: uri for prefix, uri in NAMESPACES.items() if uri in uris and prefix != "xml"}
    etree.cleanup_namespaces(root, top_nsmap=ours, keep_ns_prefixes=["rdf", "x"])


def xml_text(words: str) -> str:
    """The words without the characters that XML 1.0 (2.2) has no place for."""
    return "".join(
        letter
        for letter in words
        if letter in "\t\n\r" or (" " <= letter <= "\ud7ff") or ("\ue000" <= letter <= "\ufffd") or letter > "\uffff"
    )


def serialize(root: etree._Element, *, end: str = "w", padding: int = PADDING) -> bytes:
    """The packet: header, tree, padding in lines of spaces, trailer (ISO 16684-1, 7.3.2)."""
    body: bytes = etree.tostring(root, encoding="utf-8", pretty_print=True)
    lines = (b" " * 99 + b"\n") * (padding // 100)
    return HEAD + body + lines + f'<?xpacket end="{end}"?>'.encode()


def divide(root: etree._Element, most: int, ours: Iterable[str]) -> tuple[bytes, bytes, str]:
    """The packet in at most `most` bytes, with the extended packet and its GUID where one is needed.

    Padding goes first, then the largest foreign properties move; ours stay while they can
    (XMP Specification Part 3, 1.1.3.1).
    """
    for padding in (PADDING, 0):
        packet = serialize(root, padding=padding)
        if len(packet) <= most:
            return packet, b"", ""
    moved, home, mine = _empty(), home_of(root), {named(name) for name in ours}
    target = home_of(moved)
    home.set(_NOTE, "0" * 32)
    tidy(root)
    by_size = sorted(home, key=lambda one: len(etree.tostring(one)), reverse=True)
    for child in sorted(by_size, key=lambda one: one.tag in mine):
        target.append(child)
        if len(serialize(root, padding=0)) <= most:
            break
    tidy(moved)
    body: bytes = etree.tostring(moved, encoding="utf-8", pretty_print=True)
    guid = hashlib.md5(body, usedforsecurity=False).hexdigest().upper()
    home.set(_NOTE, guid)
    return serialize(root, padding=0), body, guid


def values(root: etree._Element) -> dict[str, str]:
    """The properties as plain text, by `prefix:name`; arrays joined by `; `, structures left out."""
    found: dict[str, str] = {}
    for description in descriptions(root):
        for key, text in description.attrib.items():
            if (name := _qualified(str(key))) and name != "rdf:about":
                found[name] = str(text)
        for element in description.iterchildren(etree.Element):
            if name := _qualified(element.tag):
                texts = [li.text or "" for li in element.iter(f"{{{RDF}}}li") if not len(li)]
                found[name] = "; ".join(dict.fromkeys(texts)) if texts else (element.text or "").strip()
    return found


def _qualified(tag: str) -> str:
    name = etree.QName(tag)
    prefix = _PREFIX.get(name.namespace or "")
    return f"{prefix}:{name.localname}" if prefix else ""


def read_back(root: etree._Element, embedding: Embedding) -> list[str]:
    """The names of our properties that the tree does not hold just as they are wanted."""
    wanted = etree.Element("wanted")
    for name, value in embedding.xmp:
        write(wanted, name, value)
    held: Mapping[str, etree._Element] = {
        element.tag: element
        for description in descriptions(root)
        for element in description.iterchildren(etree.Element)
    }
    return [
        name
        for (name, _), element in zip(embedding.xmp, wanted, strict=True)
        if element.tag not in held or not _covers(held[element.tag], element)
    ]


def _covers(held: etree._Element, wanted: etree._Element) -> bool:
    """Whether everything wanted stands there; further languages of an alternative may stand beside it."""
    if held.tag != wanted.tag or (held.text or "").strip() != (wanted.text or "").strip():
        return False
    if len(held) < len(wanted) or held.get(LANG) != wanted.get(LANG):
        return False
    if len(held) > len(wanted) and not held.tag.endswith(("}Alt", "}Bag")):
        return False
    return all(_covers(one, other) for one, other in zip(held, wanted, strict=False))
