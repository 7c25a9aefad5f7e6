"""What a strict reader refuses (ISO 16684-1, 7.4 to 7.9 and annex C), held against the XMP toolkit and exiv2."""

from collections.abc import Callable

import exiv2
import pytest

from boxlore.core.crosswalk.metadata_values import NAMESPACES
from boxlore.formats import jpeg, xmp_strict
from boxlore.formats.xmp_names import STANDARD

OWN = "xmlns:own='urn:example:own/'"
RES = "rdf:parseType='Resource'"
D = "<rdf:Description rdf:about=''"


def packet(rdf: str) -> bytes:
    return (
        f"<x:xmpmeta xmlns:x='adobe:ns:meta/'><rdf:RDF xmlns:rdf='{NAMESPACES['rdf']}' {OWN} "
        f"xmlns:dc='{NAMESPACES['dc']}'>{rdf}</rdf:RDF></x:xmpmeta>"
    ).encode()


def described(body: str) -> str:
    return f"{D}>{body}</rdf:Description>"


SOUND = {
    "nothing": f"{D}/>",
    "words": described("<own:a>words</own:a>"),
    "an attribute": f"{D} own:a='words'/>",
    "an array": described("<dc:subject><rdf:Bag><rdf:li>a</rdf:li><rdf:li>b</rdf:li></rdf:Bag></dc:subject>"),
    "languages": described("<dc:title><rdf:Alt><rdf:li xml:lang='x-default'>a</rdf:li></rdf:Alt></dc:title>"),
    "a structure": described(f"<own:a {RES}><own:b>1</own:b><own:c>2</own:c></own:a>"),
    "a structure in a description": described(
        "<own:a><rdf:Description own:b='1'><own:c>2</own:c></rdf:Description></own:a>"
    ),
    "a structure of attributes": described("<own:a own:b='1' own:c='2'/>"),
    "an array of structures": described(f"<own:a><rdf:Seq><rdf:li {RES}><own:b>1</own:b></rdf:li></rdf:Seq></own:a>"),
    "a value with a qualifier": described(f"<own:a {RES}><rdf:value>1</rdf:value><own:q>2</own:q></own:a>"),
    "a link": described("<own:a rdf:resource='urn:x'/>"),
    "a structure with its type's name": described("<own:a><own:Type><own:b>1</own:b></own:Type></own:a>"),
}  # fmt: skip

REFUSED = {
    "a property twice": (described("<own:a>1</own:a><own:a>2</own:a>"), "a 2 times"),
    "an attribute that is an element too": (f"{D} own:a='1'><own:a>1</own:a></rdf:Description>", "a 2 times"),
    "two abouts": ("<rdf:Description rdf:about='' about='uuid:1'/>", "about in the XMP packet has no namespace"),
    "abouts that differ": ("<rdf:Description rdf:about='a' own:b='1'/><rdf:Description rdf:about='c' own:d='1'/>",
                           "has 2 descriptions"),
    "no namespace": (described("<a xmlns=''>1</a>"), "property a in the XMP packet has no namespace"),
    "an attribute without a namespace": (f"{D} a='1'/>", "attribute a in the XMP packet has no namespace"),
    "no description": ("<own:Thing own:a='1' rdf:about=''/>", "has 1 descriptions"),
    "a literal of XML": (described("<own:a rdf:parseType='Literal'><own:b/></own:a>"), "of a kind (Literal)"),
    "a collection": (described("<own:a rdf:parseType='Collection'/>"), "of a kind (Collection)"),
    "an old attribute of RDF": ("<rdf:Description rdf:aboutEach='x'/>", "does not say what it is about"),
    "a bag's name": (f"{D} rdf:bagID='x'/>", "rdf:bagID cannot stand here"),
    "a member that is none": (described("<own:a><rdf:Bag><own:b>1</own:b></rdf:Bag></own:a>"), "is no rdf:li"),
    "two values": (described("<own:a><rdf:Bag/><rdf:Bag/></own:a>"), "holds more than one value"),
    "words and a value": (described("<own:a>x<rdf:Bag/></own:a>"), "holds more than one value"),
    "words between properties": (described("words<own:a/>"), "words between the properties"),
    "words between members": (described("<own:a><rdf:Bag>x<rdf:li>1</rdf:li></rdf:Bag></own:a>"), "between the mem"),
    "a value of RDF that is none": (described("<own:a><rdf:li>1</rdf:li></own:a>"), "holds rdf:li, which is no value"),
    "a property of RDF": (described("<rdf:Bag><rdf:li>1</rdf:li></rdf:Bag>"), "rdf:Bag cannot be a property"),
    "a value of no structure": (described("<rdf:value>1</rdf:value>"), "rdf:value cannot be"),
    "a field twice": (described(f"<own:a {RES}><own:b>1</own:b><own:b>2</own:b></own:a>"), "b 2"),
    "words and fields": (described("<own:a own:b='1'>words</own:a>"), "words and fields at once"),
}  # fmt: skip
"""Why -> (body of rdf:RDF, what is said of it)."""


def by_toolkit(data: bytes) -> bool:
    """Whether the XMP toolkit takes the packet."""
    try:
        from libxmp import XMPError, XMPMeta  # noqa: PLC0415  # its import fails where the Debian library is missing
    except Exception as missing:  # noqa: BLE001  # it raises its own error, not ImportError
        pytest.skip(f"libexempi is not there: {missing}")
    try:
        XMPMeta().parse_from_str(data.decode(), xmpmeta_wrap=False)
    except XMPError:
        return False
    return True


def by_exiv2(data: bytes, jpeg_with: Callable[..., bytes]) -> bool:
    """Whether exiv2 takes the packet: a property that stands beside it is read."""
    whole = jpeg_with((jpeg.APP1, jpeg.XMP_MARK + data))
    image = exiv2.ImageFactory.open(whole)
    exiv2.LogMsg.setLevel(exiv2.LogMsg.Level.mute)
    image.readMetadata()
    return bool(image.xmpData().count())


@pytest.mark.parametrize("why", SOUND)
def test_sound_packets_are_taken_by_us_and_by_the_toolkit(why: str) -> None:
    assert xmp_strict.faults(packet(SOUND[why])) == []
    assert by_toolkit(packet(SOUND[why]))


@pytest.mark.parametrize("why", REFUSED)
def test_what_is_refused_is_said(why: str) -> None:
    body, said = REFUSED[why]
    assert any(said in sentence for sentence in xmp_strict.faults(packet(body)))


@pytest.mark.parametrize("why", REFUSED)
def test_the_toolkit_refuses_it_too(why: str) -> None:
    assert not by_toolkit(packet(REFUSED[why][0]))


@pytest.mark.parametrize("why", REFUSED)
def test_exiv2_reads_nothing_of_it(why: str, jpeg_with: Callable[..., bytes]) -> None:
    assert not by_exiv2(packet(REFUSED[why][0]), jpeg_with)


VALUES = f"<own:a {RES}><rdf:value {RES}><own:b>1</own:b><rdf:value {RES}><own:c/></rdf:value></rdf:value></own:a>"
NO_PACKETS = {
    "a value in a value": (packet(described(VALUES)), "holds another rdf:value"),
    "not XML": (b"<x:xmpmeta", "not well-formed"),
    "no RDF": (b"<x:xmpmeta xmlns:x='adobe:ns:meta/'/>", "holds no rdf:RDF"),
    "an old name without its namespace": (packet("<rdf:Description about='uuid:1'/>"), "no namespace"),
    "a description without about": (packet("<rdf:Description own:a='1'/>"), "does not say what it is about"),
    "another prefix": (packet(f"{D} xmlns:d='{NAMESPACES['photoshop']}' d:City='x'/>"), "has the prefix d for"),
    "a prefix of another": (packet(f"{D} xmlns:exif='urn:x' exif:a='x'/>"), "has the prefix exif for urn:x"),
}


@pytest.mark.parametrize("why", NO_PACKETS)
def test_what_we_hold_our_own_copies_to(why: str) -> None:
    data, said = NO_PACKETS[why]
    assert any(said in sentence for sentence in xmp_strict.faults(data))


def test_no_packet_has_no_fault() -> None:
    assert xmp_strict.faults(b"") == xmp_strict.faults(b"\x00 \n") == []


@pytest.mark.parametrize("prefix", STANDARD)
def test_standard_prefixes_are_those_that_exiv2_knows(prefix: str) -> None:
    """exiv2 shortens those of IPTC, and does not know every namespace."""
    theirs = exiv2.XmpProperties.prefix(STANDARD[prefix])
    short = {"Iptc4xmpCore": "iptc", "Iptc4xmpExt": "iptcExt"}
    assert theirs in ("", short.get(prefix, prefix))
