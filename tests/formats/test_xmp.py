"""The XMP packet (ISO 16684-1, 7; XMP Specification Part 3, 1.1.3): hostile ones refused, shapes, division."""

import hashlib

import pytest

from boxlore.core.crosswalk.metadata_values import Embedding, Text, bag
from boxlore.core.errors import ByteFault
from boxlore.formats import xmp, xmp_merging

META = b"<x:xmpmeta xmlns:x='adobe:ns:meta/'>%s</x:xmpmeta>"
RDF = b"<rdf:RDF xmlns:rdf='http://www.w3.org/1999/02/22-rdf-syntax-ns#'/>"
LAUGHS = b"".join(b"<!ENTITY a%d '%s'>" % (n, b"&a%d;" % (n - 1) * 10) for n in range(1, 10))

REFUSALS = [
    ("external entity", b"<!DOCTYPE x [<!ENTITY a SYSTEM 'file:///etc/passwd'>]>" + META % b"&a;", "ISO 16684-1, 7.1"),
    ("external document type", b"<!DOCTYPE x SYSTEM 'http://localhost/x.dtd'>" + META % RDF, "ISO 16684-1, 7.1"),
    ("a billion laughs", b"<!DOCTYPE x [<!ENTITY a0 'ha'>" + LAUGHS + b"]>" + META % b"&a9;", "ISO 16684-1, 7.1"),
    (
        "a document type in another encoding",
        b"\xfe\xff" + ("<!DOCTYPE x []>" + (META % RDF).decode()).encode("utf-16-be"),
        "ISO 16684-1, 7.1",
    ),
    ("an entity that is not declared", META % b"&a;", "ISO 16684-1, 7"),
    ("no RDF", META % b"", "ISO 16684-1, 7.3"),
    ("not closed", b"<x:xmpmeta", "ISO 16684-1, 7"),
    ("no XML", b"\x00\x01", "ISO 16684-1, 7"),
    ("too large", b" " * 99 + b"x" * (xmp.MOST_BYTES + 1), "ISO 16684-1, 7"),
    ("very deep", META % (b"<a>" * 9000 + b"</a>" * 9000), "ISO 16684-1, 7"),
]


@pytest.mark.parametrize(("why", "packet", "clause"), REFUSALS, ids=[row[0] for row in REFUSALS])
def test_refusals(why: str, packet: bytes, clause: str) -> None:
    with pytest.raises(ByteFault, match="The XMP packet") as caught:
        xmp.parse(packet)
    assert (caught.value.offset, caught.value.clause) == (0, clause)


@pytest.mark.parametrize("packet", [b"", b" \r\n\x00", META % RDF, RDF, b"\xef\xbb\xbf" + META % RDF])
def test_an_empty_packet_in_any_shape_is_read(packet: bytes) -> None:
    assert xmp.values(xmp.tree(packet)) == {}


def test_letters_that_xml_has_no_place_for_are_left_out() -> None:
    assert xmp.xml_text("a\x00b\x0bc\ud800\ufffe🙂\n") == "abc🙂\n"


def test_padding_and_trailer() -> None:
    packet = xmp.serialize(xmp.parse(b""))
    assert packet.startswith(b'<?xpacket begin="\xef\xbb\xbf" id="W5M0MpCehiHzreSzNTczkc9d"?>')
    assert packet.endswith(b'<?xpacket end="w"?>')
    assert packet.count(b" " * 99 + b"\n") == 20


def divided(*properties: tuple[str, int], most: int = 65502) -> tuple[bytes, bytes, str]:
    theirs = Embedding(xmp=tuple((name, Text("x" * size)) for name, size in properties))
    root, _ = xmp_merging.captioned(b"", theirs)
    return xmp.divide(root, most, ("dc:source",))


def test_what_fits_is_not_divided_and_padding_goes_first() -> None:
    assert divided(("dc:source", 100))[1:] == (b"", "")
    standard, extended, _ = divided(("dc:source", 65502 - 600))
    assert extended == b"" and 65502 - 600 < len(standard) <= 65502


def test_the_largest_of_others_moves_and_ours_stay() -> None:
    standard, extended, guid = divided(("dc:source", 30_000), ("xmp:Label", 40_000), ("xmp:Rating", 5))
    assert hashlib.md5(extended).hexdigest().upper() == guid
    assert guid.encode() in standard and len(standard) <= 65502
    assert set(xmp.values(xmp.parse(extended))) == {"xmp:Label"}
    whole = xmp.values(xmp.tree(standard, (extended,)))
    assert whole == {"dc:source": "x" * 30_000, "xmp:Label": "x" * 40_000, "xmp:Rating": "xxxxx"}


def test_ours_move_only_when_nothing_else_is_left() -> None:
    standard, extended, _ = divided(("dc:source", 90_000), ("xmp:Label", 10))
    assert set(xmp.values(xmp.parse(extended))) == {"dc:source", "xmp:Label"}
    assert len(standard) < 1000


def test_a_note_in_either_shape_goes_when_the_packets_are_one() -> None:
    name = b"xmlns:n='http://ns.adobe.com/xmp/note/'"
    rdf = (
        b"<rdf:RDF xmlns:rdf='http://www.w3.org/1999/02/22-rdf-syntax-ns#'><rdf:Description rdf:about='' %s/></rdf:RDF>"
    )
    inner = rdf.replace(b"/></rdf:RDF>", b"><n:HasExtendedXMP>A</n:HasExtendedXMP></rdf:Description></rdf:RDF>")
    for packet in (META % (rdf % (name + b" n:HasExtendedXMP='A'")), META % (inner % name)):
        assert "xmpNote:HasExtendedXMP" in xmp.values(xmp.parse(packet))
        assert xmp.values(xmp.tree(packet)) == {}


def test_values_are_plain_texts_and_unknown_names_are_left_out() -> None:
    root, _ = xmp_merging.captioned(
        b"", Embedding(xmp=(("dc:subject", bag("a", "b", "a")), ("dc:source", Text(" s "))))
    )
    assert xmp.values(root) == {"dc:subject": "a; b", "dc:source": "s"}


def test_read_back_names_what_is_missing_or_more() -> None:
    root, _ = xmp_merging.captioned(b"", Embedding(xmp=(("dc:subject", bag("a", "b")), ("dc:source", Text("s")))))
    assert xmp.read_back(root, Embedding(xmp=(("dc:subject", bag("a")),))) == []
    wrong = (("dc:subject", bag("a", "c")), ("dc:source", Text("t")), ("dc:title", Text("t")))
    assert xmp.read_back(root, Embedding(xmp=wrong)) == ["dc:subject", "dc:source", "dc:title"]
    assert xmp.read_back(root, Embedding(xmp=(("dc:subject", bag("a", "b", "c")),))) == ["dc:subject"]


def test_a_large_property_written_as_an_attribute_moves_too() -> None:
    rdf = RDF.replace(b"/>", b"><rdf:Description rdf:about='' xmlns:o='urn:o' o:a='%s'/></rdf:RDF>" % (b"x" * 90_000))
    root, _ = xmp_merging.captioned(META % rdf, Embedding(xmp=(("dc:source", Text("s")),)))
    standard, extended, _ = xmp.divide(root, 65502, ("dc:source",))
    assert len(standard) < 1000 and b"x" * 90_000 in extended
    assert xmp.values(xmp.parse(standard))["dc:source"] == "s"
