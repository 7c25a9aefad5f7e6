"""Our own schema of the XMP that copies carry (`schemas/xmp.rng`): the demo's copies keep it, planted faults do not.

ISO 16684-1 for the packet and the forms of values; IPTC Photo Metadata Standard 2025.1 and MWG Guidelines 2.0 for what
each property holds. Packets are found by their wrapper, as the standard's packet scanning does (7.3.2), not by our
own readers; lxml checks.
"""

import re
from collections.abc import Iterator
from pathlib import Path

import pytest
from lxml import etree

from boxlore.core.crosswalk.xmp_and_iim import XMP_ROWS
from boxlore.disk.shipped import shipped

PACKET = re.compile(rb"<\?xpacket begin=.*?\?>(.*?)<\?xpacket end=", re.DOTALL)
NAME = "{http://relaxng.org/ns/structure/1.0}name"


def schema() -> etree.RelaxNG:
    return etree.RelaxNG(etree.fromstring((shipped("schemas") / "xmp.rng").read_bytes()))


def packets(folder: Path) -> Iterator[tuple[str, bytes]]:
    for path in sorted(folder.rglob("*_[fb].*")):
        for found in PACKET.findall(path.read_bytes()):
            yield path.name, found.strip()


def test_every_copy_of_the_demo_keeps_the_schema(demo: Path) -> None:
    check, seen = schema(), set()
    for name, packet in packets(demo / "copies"):
        assert check.validate(etree.fromstring(packet)), (name, check.error_log.last_error)
        seen.add(name)
    assert len(seen) == len(list((demo / "copies").rglob("*_[fb].*"))) >= 30


def test_every_property_that_we_write_stands_in_the_schema() -> None:
    """A property left out of it would pass as somebody else's, unchecked."""
    names = {one.text for one in etree.fromstring((shipped("schemas") / "xmp.rng").read_bytes()).iter(NAME)}
    assert {name for name, _ in XMP_ROWS} | {"xmp:CreatorTool"} == names - {"rdf:about"}


@pytest.fixture(scope="module")
def whole(demo: Path) -> bytes:
    """A packet with people, faces, a place and a date; blanks between elements taken out."""
    wanted = (b"mwg-rs:Regions", b"GPSLatitude", b"photoshop:DateCreated", b"CountryCode")
    packet = next(one for _, one in packets(demo / "copies") if all(name in one for name in wanted))
    return re.sub(rb">\s+<", b"><", packet)


FAULTS = [
    ("no number", rb"<dc:identifier>.*?</dc:identifier>", b""),
    ("no title", rb"<dc:title>.*?</dc:title>", b""),
    ("no words for who cannot see it", rb"<Iptc4xmpCore:AltText\w+>.*?</Iptc4xmpCore:AltText\w+>", b""),
    ("an empty source", rb"(<dc:source>).*?(</dc:source>)", rb"\1 \2"),
    ("the same property twice", rb"(<dc:source>.*?</dc:source>)", rb"\1\1"),
    ("a title that is no alternative", rb"(<dc:title>).*?(</dc:title>)", rb"\1Harbour\2"),
    ("an alternative without a default", rb'xml:lang="x-default"', b'xml:lang="en"'),
    ("a bag where an order is asked", rb"(<dc:subject>)<rdf:Bag>(.*?)</rdf:Bag>", rb"\1<rdf:Seq>\2</rdf:Seq>"),
    ("a date of another kind", rb"(<photoshop:DateCreated>).*?(<)", rb"\g<1>1912~\2"),
    ("a thirteenth month", rb"(<photoshop:DateCreated>).*?(<)", rb"\g<1>1912-13\2"),
    ("a country by its name", rb"(<Iptc4xmpCore:CountryCode>).*?(<)", rb"\1Estonia\2"),
    ("beyond the pole", rb"(<exif:GPSLatitude>).*?(<)", rb"\g<1>90.5\2"),
    ("a region beyond the picture", rb"(<Iptc4xmpExt:rbX>).*?(<)", rb"\g<1>1.2\2"),
    ("a region in pixels", rb"(<Iptc4xmpExt:rbUnit>).*?(<)", rb"\1pixel\2"),
    ("a region without a shape", rb"<Iptc4xmpExt:rbShape>.*?</Iptc4xmpExt:rbShape>", b""),
    ("a face without a unit", rb"<stArea:unit>.*?</stArea:unit>", b""),
    ("an identifier that is none", rb"(<Iptc4xmpExt:DigImageGUID>).*?(<)", rb"\1TRA-0001\2"),
    ("a source type by its word", rb"(<Iptc4xmpExt:DigitalSourceType>).*?(<)", rb"\1print\2"),
    ("a time without a day", rb"(<xmp:MetadataDate>).*?(<)", rb"\g<1>10:15\2"),
    ("a structure that is not said to be one", rb' rdf:parseType="Resource"', b""),
    ("words outside of any property", rb"(<rdf:Description[^>]*>)", rb"\1words"),
]


@pytest.mark.parametrize(("why", "pattern", "to"), FAULTS, ids=[row[0] for row in FAULTS])
def test_a_planted_fault_is_refused(whole: bytes, why: str, pattern: bytes, to: bytes) -> None:
    check = schema()
    assert check.validate(etree.fromstring(whole))
    spoilt, times = re.subn(pattern, to, whole, count=1, flags=re.DOTALL)
    assert times == 1, why
    assert not check.validate(etree.fromstring(spoilt)), why


def test_what_others_wrote_beside_ours_is_let_be(whole: bytes) -> None:
    other = b'<a:b xmlns:a="urn:other" a:c="1"><rdf:Bag><rdf:li>x</rdf:li></rdf:Bag></a:b></rdf:Description>'
    assert schema().validate(etree.fromstring(whole.replace(b"</rdf:Description>", other)))
