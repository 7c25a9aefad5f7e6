"""Language alternatives and places shown, in packets written in the shapes of ISO 16684-1 (8.2.2.4) and of the IPTC
Photo Metadata Standard's own examples (from memory)."""

import io
from pathlib import Path

import pyexiv2
import pytest
from PIL import Image

from boxlore.core.errors import ByteFault
from boxlore.formats.said_in_languages import default_text, descriptions, further_languages, places_shown

HEAD = (
    '<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#" '
    'xmlns:e="http://iptc.org/std/Iptc4xmpExt/2008-02-29/"><rdf:Description rdf:about=""><e:LocationShown><rdf:Bag>'
)
TAIL = "</rdf:Bag></e:LocationShown></rdf:Description></rdf:RDF></x:xmpmeta>"
AS_ELEMENTS = (
    '<rdf:li rdf:parseType="Resource"><e:LocationName><rdf:Alt><rdf:li xml:lang="x-default">The old mill</rdf:li>'
    "</rdf:Alt></e:LocationName><e:City>Haapsalu</e:City><e:CountryName>Estonia</e:CountryName></rdf:li>"
)
AS_ATTRIBUTES = '<rdf:li><rdf:Description e:City="Port Chalmers" e:CountryName="New Zealand"/></rdf:li>'


def jpeg(packet: str = "") -> io.BytesIO:
    out = io.BytesIO()
    Image.new("RGB", (8, 8)).save(out, "JPEG", **({"xmp": packet.encode()} if packet else {}))
    return out


def test_places_are_read_from_the_smallest_part_to_the_country() -> None:
    described = descriptions(jpeg(HEAD + AS_ELEMENTS + AS_ATTRIBUTES + AS_ELEMENTS + TAIL))
    assert places_shown(described) == ["The old mill, Haapsalu, Estonia", "Port Chalmers, New Zealand"]
    assert places_shown(descriptions(jpeg(HEAD + "<rdf:li/>" + TAIL))) == places_shown(descriptions(jpeg())) == []


def test_each_language_is_read_once(tmp_path: Path) -> None:
    path = tmp_path / "a.jpg"
    path.write_bytes(jpeg().getvalue())
    words = {'lang="x-default"': "Nets", 'lang="en"': "Nets", 'lang="et"': "Võrgud", 'lang="mi"': "Kupenga"}
    with pyexiv2.Image(str(path)) as image:
        image.modify_xmp({"Xmp.dc.title": words})
    with open(path, "rb") as file:
        described = descriptions(file)
    assert default_text(described, "dc:title") == "Nets"
    assert sorted(further_languages(described, "dc:title")) == [("et", "Võrgud"), ("mi", "Kupenga")]
    assert (default_text(described, "dc:description"), further_languages(described, "dc:description")) == ("", [])


def test_a_file_that_is_no_picture_is_a_fault() -> None:
    with pytest.raises(ByteFault):
        descriptions(io.BytesIO(b"no picture at all"))
