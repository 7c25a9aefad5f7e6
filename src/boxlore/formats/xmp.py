"""The XMP packet (ISO 16684-1): read with any RDF/XML shape, merged, written in one plain shape.

Only our own properties are touched; unknown ones, other people's languages and foreign namespaces stay.
Entities are off, no network, a DOCTYPE is refused, and the size is capped.
"""

import hashlib
from collections.abc import Iterable, Mapping

from lxml import etree

from boxlore.core.embedding import NAMESPACES, Alt, Bag, Embedding, Seq, Struct, Text, Value
from boxlore.core.errors import ByteFault

MOST_BYTES = 16 << 20
PADDING = 2000
HEAD = b'<?xpacket begin="\xef\xbb\xbf" id="W5M0MpCehiHzreSzNTczkc9d"?>\n'
CLAUSE = "ISO 16684-1, 7"

_RDF, _X, _XML = NAMESPACES["rdf"], NAMESPACES["x"], NAMESPACES["xml"]
_PREFIX = {uri: prefix for prefix, uri in NAMESPACES.items()}
_LANG = f"{{{_XML}}}lang"
_ABOUT = f"{{{_RDF}}}about"
_NOTE = f"{{{NAMESPACES['xmpNote']}}}HasExtendedXMP"


def _name(qualified: str) -> str:
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
    if root.tag == f"{{{_RDF}}}RDF":
        outer = etree.Element(f"{{{_X}}}xmpmeta", nsmap={"x": _X})
        outer.append(root)
        return outer
    if root.find(f"{{{_RDF}}}RDF") is None:
        raise ByteFault(0, "The XMP packet holds no rdf:RDF", "ISO 16684-1, 7.3")
    return root


def _empty() -> etree._Element:
    root = etree.Element(f"{{{_X}}}xmpmeta", nsmap={"x": _X})
    etree.SubElement(root, f"{{{_RDF}}}RDF", nsmap={"rdf": _RDF})
    return root


def _rdf(root: etree._Element) -> etree._Element:
    found = root.find(f"{{{_RDF}}}RDF")
    assert found is not None  # parse and _empty see to it
    return found


def _descriptions(root: etree._Element) -> list[etree._Element]:
    return list(_rdf(root).iterfind(f"{{{_RDF}}}Description"))


def _home(root: etree._Element) -> etree._Element:
    """The description that our properties stand in, made where there is none."""
    descriptions = _descriptions(root)
    home = descriptions[0] if descriptions else etree.SubElement(_rdf(root), f"{{{_RDF}}}Description")
    home.set(_ABOUT, home.get(_ABOUT, ""))
    return home


def merge(packet: bytes, embedding: Embedding) -> etree._Element:
    """The packet's tree with our properties in place of those of the same name."""
    root = _empty() if embedding.drop_text else parse(packet)
    foreign = _other_languages(root, embedding.xmp)
    for name in [*(name for name, _ in embedding.xmp), *embedding.remove]:
        _take_out(root, name)
    if not embedding.xmp:
        return root
    home = _home(root)
    for name, value in embedding.xmp:
        _write(home, name, _with_languages(value, foreign.get(name, ())))
    etree.cleanup_namespaces(root, top_nsmap=_used(root), keep_ns_prefixes=["rdf", "x"])
    return root


def _used(root: etree._Element) -> dict[str, str]:
    uris = {etree.QName(one).namespace for one in root.iter(etree.Element)}
    uris |= {etree.QName(key).namespace for one in root.iter(etree.Element) for key in one.attrib}
    return {prefix: uri for prefix, uri in NAMESPACES.items() if uri in uris and prefix not in ("xml",)}


def _take_out(root: etree._Element, name: str) -> None:
    tag = _name(name)
    for description in _descriptions(root):
        if tag in description.attrib:
            del description.attrib[tag]
        for found in description.findall(tag):
            description.remove(found)


def _other_languages(root: etree._Element, ours: Iterable[tuple[str, Value]]) -> dict[str, tuple[tuple[str, str], ...]]:
    """Alternatives in languages that we do not write, by property."""
    found: dict[str, tuple[tuple[str, str], ...]] = {}
    for name, value in ours:
        if isinstance(value, Alt):
            mine = {language.lower() for language, _ in value.words} | {"x-default"}
            theirs = [
                (li.get(_LANG, ""), li.text or "")
                for description in _descriptions(root)
                for li in description.iterfind(f"{_name(name)}/{{{_RDF}}}Alt/{{{_RDF}}}li")
            ]
            found[name] = tuple((lang, words) for lang, words in theirs if lang and lang.lower() not in mine)
    return found


def _with_languages(value: Value, more: tuple[tuple[str, str], ...]) -> Value:
    return Alt((*value.words, *more)) if isinstance(value, Alt) else value


def _write(parent: etree._Element, name: str, value: Value) -> None:
    _fill(etree.SubElement(parent, _name(name)), value)


def _fill(element: etree._Element, value: Value) -> None:
    match value:
        case Text(words):
            element.text = xml_text(words)
        case Alt(words):
            array = etree.SubElement(element, f"{{{_RDF}}}Alt")
            for language, text in dict(words).items():
                li = etree.SubElement(array, f"{{{_RDF}}}li")
                li.set(_LANG, language)
                li.text = xml_text(text)
        case Bag(items) | Seq(items):
            array = etree.SubElement(element, f"{{{_RDF}}}{type(value).__name__}")
            for item in items:
                _fill(etree.SubElement(array, f"{{{_RDF}}}li"), item)
        case Struct(fields):
            element.set(f"{{{_RDF}}}parseType", "Resource")
            for name, inner in fields:
                _write(element, name, inner)


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


def absorb(root: etree._Element, packet: bytes) -> None:
    """Bring the properties of an extended packet into the tree, but for those it holds already."""
    home = _home(root)
    if _NOTE in home.attrib:
        del home.attrib[_NOTE]
    present = {child.tag for child in home}
    for description in _descriptions(parse(packet)):
        for child in list(description):
            if child.tag not in present:
                home.append(child)


def divide(root: etree._Element, most: int, ours: Iterable[str]) -> tuple[bytes, bytes, str]:
    """The packet in at most `most` bytes, with the extended packet and its GUID where one is needed.

    Padding goes first, then the largest foreign properties move; ours stay while they can
    (XMP Specification Part 3, 1.1.3.1).
    """
    for padding in (PADDING, 0):
        packet = serialize(root, padding=padding)
        if len(packet) <= most:
            return packet, b"", ""
    moved, home, mine = _empty(), _home(root), {_name(name) for name in ours}
    target = _home(moved)
    home.set(_NOTE, "0" * 32)
    by_size = sorted(home, key=lambda one: len(etree.tostring(one)), reverse=True)
    for child in sorted(by_size, key=lambda one: one.tag in mine):
        target.append(child)
        if len(serialize(root, padding=0)) <= most:
            break
    body: bytes = etree.tostring(moved, encoding="utf-8", pretty_print=True)
    guid = hashlib.md5(body, usedforsecurity=False).hexdigest().upper()
    home.set(_NOTE, guid)
    return serialize(root, padding=0), body, guid


def values(packet: bytes) -> dict[str, str]:
    """The packet's properties as plain text, by `prefix:name`; arrays joined by `; `, structures left out."""
    found: dict[str, str] = {}
    for description in _descriptions(parse(packet)):
        for key, text in description.attrib.items():
            if (name := _qualified(str(key))) and name != "rdf:about":
                found[name] = str(text)
        for element in description.iterchildren(etree.Element):
            if name := _qualified(element.tag):
                texts = [li.text or "" for li in element.iter(f"{{{_RDF}}}li") if not len(li)]
                found[name] = "; ".join(dict.fromkeys(texts)) if texts else (element.text or "").strip()
    return found


def _qualified(tag: str) -> str:
    name = etree.QName(tag)
    prefix = _PREFIX.get(name.namespace or "")
    return f"{prefix}:{name.localname}" if prefix else ""


def read_back(packet: bytes, embedding: Embedding) -> list[str]:
    """The names of our properties that the packet does not hold just as they are wanted."""
    wanted = etree.Element("wanted")
    for name, value in embedding.xmp:
        _write(wanted, name, value)
    held: Mapping[str, etree._Element] = {
        element.tag: element
        for description in _descriptions(parse(packet))
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
    if len(held) < len(wanted) or held.get(_LANG) != wanted.get(_LANG):
        return False
    return all(_covers(one, other) for one, other in zip(held, wanted, strict=False))
