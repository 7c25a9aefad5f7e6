"""The XMP packet (ISO 16684-1): read in any shape that RDF/XML allows, written in one plain shape.

A packet comes from outside, so its size is limited, a document type is refused, and neither entities nor anything
from the network is loaded.
"""

import hashlib
from collections.abc import Collection, Iterable, Mapping

from lxml import etree

from boxlore.core.crosswalk.metadata_values import NAMESPACES, Alt, Bag, Embedding, Seq, Struct, Text, XmpValue
from boxlore.core.errors import ByteFault
from boxlore.formats.xmp_names import ABOUT, LANG, RDF, X, clark_name, with_standard_prefixes
from boxlore.formats.xmp_repair import DESCRIPTION, into_one

MOST_BYTES = 16 << 20
PADDING = 2000
HEAD = b'<?xpacket begin="\xef\xbb\xbf" id="W5M0MpCehiHzreSzNTczkc9d"?>\n'
CLAUSE = "ISO 16684-1, 7"

_PREFIX = {uri: prefix for prefix, uri in NAMESPACES.items()}
_NOTE = f"{{{NAMESPACES['xmpNote']}}}HasExtendedXMP"


def parse(packet: bytes) -> etree._Element:
    """The tree of a packet; for no bytes an empty tree. Raises ByteFault for anything that is not XMP.

        packet = [header] (xmpmeta / RDF) [padding] [trailer]     (ISO 16684-1, 7.3)
        xmpmeta = <x:xmpmeta> RDF </x:xmpmeta>
        RDF = <rdf:RDF> *description </rdf:RDF>                   (7.4)

    The root of the tree is always x:xmpmeta, and every prefix the standard's (see `xmp_names`).
    """
    if not packet.strip(b"\x00 \t\r\n"):
        return _empty()
    root = parse_as_written(packet)
    rdf = next(root.iter(f"{{{RDF}}}RDF"), None)
    if rdf is None:  # a wrapper without RDF holds nothing that could be kept
        raise ByteFault(0, "The XMP packet holds no rdf:RDF", "ISO 16684-1, 7.3")
    outer = etree.Element(f"{{{X}}}xmpmeta")
    for key, text in root.attrib.items() if root.tag in _META else ():
        outer.set(key, text)
    outer.append(rdf)
    return with_standard_prefixes(outer)


def parse_as_written(packet: bytes) -> etree._Element:
    """The tree of a packet in the shape that the file has it. Raises ByteFault for what is no XML, or hostile."""
    if len(packet) > MOST_BYTES:
        raise ByteFault(0, f"The XMP packet has {len(packet)} bytes", CLAUSE)
    if b"<!DOCTYPE" in packet or b"<!ENTITY" in packet:
        raise ByteFault(0, "The XMP packet declares a document type", "ISO 16684-1, 7.1")
    parser = etree.XMLParser(resolve_entities=False, no_network=True, remove_blank_text=True, huge_tree=False)
    data = packet.strip(b"\x00 \t\r\n")
    if data.startswith(b"\xff\xfe") and len(data) % 2:
        data += b"\x00"  # the second byte of the last letter in UTF-16
    try:
        root = etree.fromstring(data, parser)
    except etree.XMLSyntaxError as error:
        raise ByteFault(0, f"The XMP packet is not well-formed XML ({error.msg})", CLAUSE) from error
    if etree.ElementTree(root).docinfo.doctype:  # type: ignore[attr-defined]  # in another encoding the look at the bytes does not see it
        raise ByteFault(0, "The XMP packet declares a document type", "ISO 16684-1, 7.1")
    return root


_META = (f"{{{X}}}xmpmeta", f"{{{X}}}xapmeta")
"""The wrapper, and its name before 2003."""


def _empty() -> etree._Element:
    root = etree.Element(f"{{{X}}}xmpmeta", nsmap={"x": X})
    etree.SubElement(root, f"{{{RDF}}}RDF", nsmap={"rdf": RDF})
    return root


def _rdf_of(root: etree._Element) -> etree._Element:
    rdf = root.find(f"{{{RDF}}}RDF")
    assert rdf is not None  # parse and _empty see to it
    return rdf


def descriptions(root: etree._Element) -> list[etree._Element]:
    """The rdf:Description elements, which hold the properties."""
    return list(_rdf_of(root).iterfind(DESCRIPTION))


def home_of(root: etree._Element) -> etree._Element:
    """The description that our properties stand in: the first; where there is none, it is added."""
    existing = descriptions(root)
    home = existing[0] if existing else etree.SubElement(_rdf_of(root), DESCRIPTION)
    home.set(ABOUT, home.get(ABOUT, ""))
    return home


def tree(packet: bytes, extended: Iterable[bytes] = ()) -> etree._Element:
    """The tree of a packet with its extended packets, all properties gathered in one description."""
    return gathered(packet, extended)[0]


def gathered(packet: bytes, extended: Iterable[bytes] = ()) -> tuple[etree._Element, list[str]]:
    """As `tree`, with sentences about values that stand twice in the packet (see `xmp_repair`)."""
    root = parse(packet)
    own = descriptions(root)
    further = [description for body in extended for description in descriptions(parse(body))]
    home = own[0] if own else etree.SubElement(_rdf_of(root), DESCRIPTION)
    reports = into_one(home, own)
    into_one(home, further)  # where a further packet says it otherwise, the standard one is right
    if _NOTE in home.attrib:
        del home.attrib[_NOTE]
    for note in home.findall(_NOTE):
        home.remove(note)
    return root, reports


def spell_out(home: etree._Element, names: Iterable[str]) -> None:
    """Turn these properties, where they stand as attributes, into elements, which mean the same (ISO 16684-1,
    7.9.2.2). All others stay attributes, as there are readers that look for them so.
    """
    for tag in map(clark_name, names):
        if tag in home.attrib:
            etree.SubElement(home, tag).text = str(home.attrib.pop(tag))


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
    body = _body(root)
    lines = (b" " * 99 + b"\n") * (padding // 100)
    return HEAD + body + lines + f'<?xpacket end="{end}"?>'.encode()


def _body(root: etree._Element) -> bytes:
    body: bytes = etree.tostring(with_standard_prefixes(root), encoding="utf-8", pretty_print=True)
    return body


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
    for name in _by_weight(home, our_tags):
        if name in home.attrib:
            target.set(name, str(home.attrib.pop(name)))
        else:
            target.extend(home.findall(name))
        if len(serialize(root, padding=0)) <= most:
            break
    body = _body(moved)
    guid = hashlib.md5(body, usedforsecurity=False).hexdigest().upper()
    home.set(_NOTE, guid)
    return serialize(root, padding=0), body, guid


def _by_weight(home: etree._Element, our_tags: Collection[str]) -> list[str]:
    """The names of the properties: foreign ones before ours, the largest before the others."""
    sizes = {str(key): len(text) for key, text in home.attrib.items() if key not in (ABOUT, LANG, _NOTE)}
    sizes |= {child.tag: len(etree.tostring(child)) for child in home.iterchildren(etree.Element)}
    return sorted(sizes, key=lambda name: (name in our_tags, -sizes[name]))


def values(root: etree._Element) -> dict[str, str]:
    """The properties as plain text by `prefix:name`, for namespaces that we know.

    The members of an array are joined by `; `; a structure gives an empty text.
    """
    properties: dict[str, str] = {}
    for description in descriptions(root):
        for key, text in description.attrib.items():
            if (name := qualified(str(key))) and name != "rdf:about":
                properties[name] = str(text)
        for element in description.iterchildren(etree.Element):
            if name := qualified(element.tag):
                texts = [li.text or "" for li in element.iter(f"{{{RDF}}}li") if not len(li)]
                properties[name] = "; ".join(dict.fromkeys(texts)) if texts else (element.text or "").strip()
    return properties


def qualified(tag: str) -> str:
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
    """Whether the element holds everything wanted; an array or a structure may hold further members behind it."""
    if held.tag != wanted.tag or (held.text or "").strip() != (wanted.text or "").strip():
        return False
    if len(held) < len(wanted) or held.get(LANG) != wanted.get(LANG):
        return False
    further = held.tag.endswith(("}Alt", "}Bag", "}Seq")) or held.get(f"{{{RDF}}}parseType") == "Resource"
    if len(held) > len(wanted) and not further:
        return False
    return all(_covers(held_child, wanted_child) for held_child, wanted_child in zip(held, wanted, strict=False))
