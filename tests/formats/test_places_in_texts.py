"""Points on the earth written into texts are cut out of every copy and open scan; what only looks like one stays.

Shapes: RFC 5870 3.3 (geo URI), ISO 6709 annex H, XMP Specification Part 2 (GPSCoordinate), Open Location Code and MGRS
(their specifications, from memory), numbers with an exponent: ISO 6093, NR3 (from memory); how people write degrees is
common practice, no source. The values are Tallinn's and Port Chalmers's.
"""

import io
import zlib

import pytest
from PIL import Image
from tests.formats.conftest import prove_without_place

from boxlore.core.crosswalk.metadata_values import NAMESPACES, Embedding, Text
from boxlore.formats import exif, image_resources, jpeg, picture_files, places_in_texts, tiff, xmp_places
from boxlore.formats.xmp import parse

POINTS = """
59.4370 N 24.7536 E
24.7536E-59.4370N
N 59° 26' 13" E 24° 45' 13"
59°26′13″N 24°45′13″E
59 26 13 N 24 45 13 E
45.8742° S, 170.5036° E
S45.8742 E170.5036
59 deg 26' 13.40" N
59.4370°N
59.437 north, 24.7536 east
59°26' põhjalaiust, 24°45' idapikkust
59,26.2234N
geo:59.437,24.7536
+59.4370+024.7536/
+592613+0244513+012.3CRSWGS_84/
-45.8742+170.5036
59.4370, 24.7536
-45.8742 170.5036
59.4370/24.7536
59,4370; 24,7536
https://maps.example/@59.43701,24.75362,17z
?q=59.4370%2C24.7536
mlat=59.437&mlon=24.75
Lat 59.437 Lon 24.7536
Latitude: 59.437
{"lng": 24.75}
9GG6CQ8W+X7
35V LF 71234 90123
35V 371234 6589012
""".strip().splitlines()

NO_POINTS = """
Nets drying at Haapsalu, 3.8.1912
TRA-0001
06.1954, 07.1954
0.12345, 0.4567
95.12345, 12.12345
between 20° and 25°
1912-08-03 12:00:00+03:00
12.5 x 30.25 cm
long 12 cm
No. 5, W. Rourke
3 N. Street
f/5.6 1/125 s 50.0 mm
born 1912 E. Tamm
Box 12 E
2026 12 E 13 N
2345+67
Scale -5.4509008380871E-05
5' 6" tall
6 o'clock
Latitude Festival
12 500 34 000
""".strip().splitlines()


@pytest.mark.parametrize("point", POINTS)
def test_a_point_is_cut_out_of_a_text_and_of_bytes(point: str) -> None:
    words = f"Nets drying. {point} The pier."
    cut = places_in_texts.cut_out(words)
    assert cut.startswith("Nets drying. ") and cut.endswith(" The pier.") and places_in_texts.OMITTED in cut
    assert not any(figures in cut for figures in ("59", "24.7", "24°", "45.8", "170", "CQ8W", "71234"))
    for codec in ("utf-8", "utf-16-le", "utf-16-be"):
        for before in (b"\x00\x01UNICODE\x00", b"\x00\x01UNICODE"):
            data = before + words.encode(codec) + b"\xff\xfe\x00"
            after = exif.apply(data, places_in_texts.patches(data))
            assert len(after) == len(data) and after.startswith(before + "Nets drying. ".encode(codec))
            assert not places_in_texts.patches(after) and " The pier.".encode(codec) in after


@pytest.mark.parametrize("words", NO_POINTS)
def test_what_only_looks_like_a_point_stays(words: str) -> None:
    assert places_in_texts.cut_out(words) == words
    assert all(not places_in_texts.patches(words.encode(codec)) for codec in ("utf-8", "utf-16-le", "utf-16-be"))


WORDS = "Nets drying, 59.4370 N 24.7536 E"
LEFT = ("59.4370", "24.7536")
CAPTION = Embedding(xmp=(("dc:source", Text("TRA-0001")),))


def picture(kind: str, **more: object) -> bytes:
    out = io.BytesIO()
    Image.radial_gradient("L").resize((48, 32)).convert("RGB").save(out, kind, **more)
    return out.getvalue()


def jpeg_with(marker: int, body: bytes) -> bytes:
    data = picture("JPEG")
    return data[:2] + jpeg.new_segment(marker, body).raw + data[2:]


def png_with(kind: bytes, body: bytes) -> bytes:
    data = picture("PNG")
    return (
        data[:33] + len(body).to_bytes(4, "big") + kind + body + zlib.crc32(kind + body).to_bytes(4, "big") + data[33:]
    )


def dataset(record: int, number: int, value: bytes) -> bytes:
    return bytes((0x1C, record, number)) + len(value).to_bytes(2, "big") + value


IIM = dataset(2, 25, b"net") + dataset(2, 90, b"Reval") + dataset(2, 120, WORDS.encode()) + dataset(2, 200, b"\x01")
IN_RESOURCES = image_resources.join([image_resources.Resource(b"8BIM", image_resources.IIM, b"", IIM)])


def comment(order: str, start: bytes, codec: str) -> bytes:
    made = Image.Exif()
    made.endian = order
    made.get_ifd(0x8769)[0x9286] = start + WORDS.encode(codec)
    made[0x9C9C] = WORDS.encode("utf-16-le") + b"\x00\x00"  # the comment of Windows
    made[0x010E] = WORDS
    return exif.MARK + made.tobytes().removeprefix(exif.MARK)


def packet(body: str) -> bytes:
    spaces = " ".join(f"xmlns:{prefix}='{NAMESPACES[prefix]}'" for prefix in ("dc", "photoshop", "Iptc4xmpExt"))
    return (
        f"<x:xmpmeta xmlns:x='{NAMESPACES['x']}'><rdf:RDF xmlns:rdf='{NAMESPACES['rdf']}'><rdf:Description rdf:about=''"
        f" {spaces} photoshop:Country='Estonia' own:said='{WORDS}' xmlns:own='urn:own'>{body}<own:kept>yes</own:kept>"
        "</rdf:Description></rdf:RDF></x:xmpmeta>"
    ).encode()


IN_XMP = packet(
    f"<dc:title><rdf:Alt><rdf:li xml:lang='x-default'>{WORDS}</rdf:li></rdf:Alt></dc:title>"
    "<photoshop:City>Reval</photoshop:City><Iptc4xmpExt:LocationCreated><rdf:Bag><rdf:li rdf:parseType='Resource'>"
    "<Iptc4xmpExt:City>Reval</Iptc4xmpExt:City></rdf:li></rdf:Bag></Iptc4xmpExt:LocationCreated>"
)

SHAPES = {
    "JPEG, comment": (jpeg_with(jpeg.COM, WORDS.encode()), "the comment of the file"),
    "JPEG, an unknown segment": (jpeg_with(0xE9, b"own\x00" + WORDS.encode()), "a text of the file"),
    "JPEG, Exif of Windows and ASCII": (jpeg_with(jpeg.APP1, comment("<", b"ASCII\0\0\0", "ascii")), "in the Exif"),
    "JPEG, Exif in UTF-16": (jpeg_with(jpeg.APP1, comment(">", b"UNICODE\0", "utf-16-be")), "in the Exif"),
    "JPEG, IIM": (jpeg_with(jpeg.APP13, jpeg.PHOTOSHOP_MARK + IN_RESOURCES), "IIM 2:120"),
    "JPEG, XMP": (jpeg_with(jpeg.APP1, jpeg.XMP_MARK + IN_XMP), "dc:title"),
    "PNG, tEXt": (png_with(b"tEXt", b"Comment\x00" + WORDS.encode()), "“Comment”"),
    "PNG, iTXt": (png_with(b"iTXt", b"Comment\x00\x01\x00\x00\x00" + zlib.compress(WORDS.encode())), "“Comment”"),
    "PNG, XMP": (png_with(b"iTXt", b"XML:com.adobe.xmp" + bytes(5) + IN_XMP), "dc:title"),
    "TIFF, description and IIM": (picture("TIFF", tiffinfo={270: WORDS, 33723: IIM}), "of the file"),
    "TIFF, IIM in image resources": (picture("TIFF", tiffinfo={34377: IN_RESOURCES}), "of the file"),
    "TIFF, XMP": (picture("TIFF", tiffinfo={700: IN_XMP}), "dc:title"),
    "WebP, XMP": (picture("WEBP", xmp=IN_XMP), "dc:title"),
    "GIF, comment": (picture("GIF", comment=WORDS.encode()), "a text of the file"),
    "HEIC, text": (b"\x00\x00\x00\x18ftypheic\x00\x00\x00\x00mif1heic\x00\x00\x00\x40mdat" + WORDS.encode(), "a text"),
}  # fmt: skip


def joined(made: picture_files.Rewrite, data: bytes) -> bytes:
    return b"".join(piece if isinstance(piece, bytes) else data[piece[0] : sum(piece)] for piece in made.pieces)


def figures_in(data: bytes) -> list[str]:
    """What a search of all bytes finds, in texts compressed or not, of one and of two bytes a letter."""
    bodies = [data, data.replace(b"\x00", b"")]
    with Image.open(io.BytesIO(data)) if b"ftyp" not in data[:16] else io.BytesIO() as opened:
        bodies.append(" ".join(map(str, getattr(opened, "text", {}).values())).encode())
    return [figures for figures in LEFT for body in bodies if figures.encode() in body]


@pytest.mark.parametrize("shape", SHAPES)
def test_no_open_scan_carries_a_point_and_the_finding_names_the_text(shape: str) -> None:
    data, named = SHAPES[shape]
    assert figures_in(data)
    source = io.BytesIO(data)
    made = picture_files.without_place(source)
    after = joined(made, data)
    assert figures_in(after) == [] and b"Reval" not in after and b"Estonia" not in after
    assert any(named in sentence for sentence in made.reports), made.reports
    prove_without_place(source, io.BytesIO(after))
    assert (b"own:kept" in after) is (b"own:kept" in data)
    assert b"IIM" not in shape.encode() or b"net" in after


@pytest.mark.parametrize("shape", SHAPES)
def test_no_family_copy_carries_a_point(shape: str) -> None:
    data, named = SHAPES[shape]
    source = io.BytesIO(data)
    if shape.startswith(("GIF", "HEIC")):
        made = picture_files.copy_without_place(source)
    else:
        made = picture_files.rewrite(source, CAPTION)
        assert picture_files.verify(source, io.BytesIO(joined(made, data)), CAPTION) == []
    assert figures_in(joined(made, data)) == []
    assert shape.startswith("TIFF") or any(named in sentence for sentence in made.reports), made.reports


def test_what_is_told_stays_in_the_texts_that_we_write() -> None:
    """A teller may read a point from a map; the caption says what was told."""
    told = Embedding(xmp=(("dc:title", Text(WORDS)),), iim=(((2, 5), (WORDS,)),), exif=((0x010E, WORDS),))
    data = jpeg_with(jpeg.APP1, comment("<", b"ASCII\0\0\0", "ascii"))
    after = joined(picture_files.rewrite(io.BytesIO(data), told), data)
    kept = picture_files.read(io.BytesIO(after))
    assert (kept.xmp["dc:title"], kept.iim[2, 5], kept.exif["ImageDescription"]) == (WORDS, (WORDS,), WORDS)
    with Image.open(io.BytesIO(after)) as opened:
        assert LEFT[0].encode() not in opened.getexif().get_ifd(0x8769)[0x9286]


def test_named_places_of_a_damaged_block_are_none() -> None:
    assert image_resources.named_places(b"8BIM\x04\x04\x00\x00\xff\xff\xff\xff") == []
    assert (
        image_resources.named_places(
            image_resources.join([image_resources.Resource(b"8BIM", image_resources.IIM, b"", b"\x1c\x02")])
        )
        == []
    )
    assert tiff.named_places(io.BytesIO(b"II*\x00\xff\xff\xff\xff")) == []


def test_damaged_xmp_with_a_point_goes_from_an_open_jpeg() -> None:
    data = jpeg_with(jpeg.APP1, jpeg.XMP_MARK + IN_XMP.replace(b"</rdf:RDF>", b""))
    made = picture_files.without_place(io.BytesIO(data))
    assert figures_in(joined(made, data)) == [] and "damaged" in made.reports[0]


def test_what_is_cut_out_is_named_by_its_property() -> None:
    gone, reports = xmp_places.taken_out(parse(IN_XMP))
    assert gone and len(reports) == 5
    for name in ("dc:title", "said", "photoshop:City", "photoshop:Country", "Iptc4xmpExt:LocationCreated"):
        assert any(name in sentence for sentence in reports), name
