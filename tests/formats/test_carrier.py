"""Captions written by us, read back by others: pyexiv2 and exiv2 (Exiv2), Pillow, tifffile, the XMP Toolkit.

The property and dataset names are those of the IPTC Photo Metadata Standard 2025.1 and IIM 4.2; the rule of the
digest is XMP Specification Part 3 (2020), 1.3.3 with the MWG Guidelines 2.0.
"""

import hashlib
import io
from pathlib import Path

import pyexiv2
import pytest
import tifffile
from PIL import Image, ImageCms

from boxlore.core.embedding import Alt, Bag, Embedding, Struct, Text, alternative, bag
from boxlore.core.errors import ByteFault
from boxlore.formats import carrier, iim, jpeg, resources, xmp

PROFILE = ImageCms.ImageCmsProfile(ImageCms.createProfile("sRGB")).tobytes()

CAPTION = Embedding(
    xmp=(
        ("dc:title", alternative("Võrgud kuivavad", "et")),
        ("dc:description", alternative("Nets drying at Haapsalu, “1912”", "en")),
        ("dc:subject", bag("nets", "Haapsalu")),
        ("photoshop:DateCreated", Text("1912")),
        (
            "Iptc4xmpExt:ImageRegion",
            Bag((Struct((("Iptc4xmpExt:Name", alternative("Helmi", "en")), ("Iptc4xmpExt:rId", Text("m1")))),)),
        ),
    ),
    iim=(((2, 5), ("Võrgud kuivavad",)), ((2, 120), ("Nets drying at Haapsalu, “1912”",)), ((2, 55), ("19120000",))),
    remove=("exif:GPSLatitude",),
)


def picture(kind: str, mode: str = "RGB", **more: object) -> bytes:
    image = Image.radial_gradient("L").resize((96, 64)).convert(mode)
    out = io.BytesIO()
    image.save(out, kind, **more)
    return out.getvalue()


def exif_block() -> bytes:
    exif = Image.Exif()
    exif[0x010E], exif[0x0112] = "from the scanner", 6
    exif.get_ifd(0x8769)[0x9003] = "2026:03:01 12:00:00"
    exif.get_ifd(0x8825)[1], exif.get_ifd(0x8825)[2] = "S", (45.0, 52.0, 28.0)
    return exif.tobytes()


def caption(data: bytes, embedding: Embedding = CAPTION) -> bytes:
    source = io.BytesIO(data)
    made = carrier.rewrite(source, embedding)
    whole = b"".join(p if isinstance(p, bytes) else data[p[0] : p[0] + p[1]] for p in made.pieces)
    assert carrier.verify(source, io.BytesIO(whole), embedding) == []
    assert len(whole) == carrier.size_after(made)
    assert carrier.matches(made, source, io.BytesIO(whole))
    return whole


FORMATS = {
    "baseline": picture("JPEG"),
    "progressive": picture("JPEG", progressive=True),
    "cmyk": picture("JPEG", "CMYK"),
    "with-exif": picture("JPEG", exif=exif_block(), icc_profile=PROFILE, comment=b"kept"),
    "png": picture("PNG"),
    "png-exif": picture("PNG", exif=exif_block()),
    "png-16": picture("PNG", "I;16"),
    "tiff": picture("TIFF"),
    "tiff-lzw": picture("TIFF", compression="tiff_lzw"),
    "tiff-big": picture("TIFF", big_tiff=True),
    "tiff-exif": picture("TIFF", exif=exif_block()),
    "webp": picture("WEBP"),
    "webp-lossless": picture("WEBP", lossless=True),
    "webp-exif": picture("WEBP", exif=exif_block()),
}


@pytest.fixture(params=FORMATS)
def source(request: pytest.FixtureRequest) -> bytes:
    return FORMATS[request.param]


def pixels(data: bytes) -> bytes:
    with Image.open(io.BytesIO(data)) as image:
        return image.tobytes()


def test_not_one_pixel_changes(source: bytes) -> None:
    assert pixels(caption(source)) == pixels(source)


def test_running_twice_changes_nothing(source: bytes) -> None:
    once = caption(source)
    if source[:2] not in (b"II", b"MM"):
        assert caption(once) == once
    else:  # a TIFF grows by the directory that is appended; our values are the same
        assert caption(once) == once


def test_pyexiv2_reads_it_back(source: bytes) -> None:
    if source[:4] == b"II+\x00":
        pytest.skip("pyexiv2 does not read BigTIFF")
    with pyexiv2.ImageData(caption(source)) as image:
        read = image.read_xmp()
        assert read["Xmp.dc.title"] == {'lang="x-default"': "Võrgud kuivavad", 'lang="et"': "Võrgud kuivavad"}
        assert read["Xmp.dc.subject"] == ["nets", "Haapsalu"]
        assert read["Xmp.photoshop.DateCreated"] == "1912"
        assert read["Xmp.iptcExt.ImageRegion[1]/Iptc4xmpExt:rId"] == "m1"
        if source[:2] in (b"\xff\xd8", b"II", b"MM"):
            assert image.read_iptc()["Iptc.Application2.Caption"] == "Nets drying at Haapsalu, “1912”"


def test_pillow_reads_it_back(source: bytes) -> None:
    with Image.open(io.BytesIO(caption(source))) as image:
        found = image.getxmp()["xmpmeta"]["RDF"]["Description"]
        assert found["DateCreated"] == "1912"
        assert found["title"]["Alt"]["li"][0]["text"] == "Võrgud kuivavad"


def test_the_place_and_day_of_the_scanning_do_not_travel(source: bytes) -> None:
    found = carrier.read(io.BytesIO(caption(source)))
    assert not found.has_gps
    assert "DateTimeOriginal" not in found.exif
    if carrier.read(io.BytesIO(source)).exif:
        assert found.exif["DateTimeDigitized"] == "2026:03:01 12:00:00"
        assert found.orientation == 6


def test_exif_text_is_written_only_where_present() -> None:
    wanted = Embedding(xmp=CAPTION.xmp, exif=((0x010E, "Nets"), (0x013B, "Nobody")))
    found = carrier.read(io.BytesIO(caption(FORMATS["with-exif"], wanted)))
    assert found.exif["ImageDescription"] == "Nets"
    assert "Artist" not in found.exif


def test_a_full_day_stands_in_the_exif_date_where_one_can() -> None:
    exif = Image.Exif()
    exif.get_ifd(0x8769)[0x9003] = exif.get_ifd(0x8769)[0x9004] = "2026:03:01 12:00:00"
    data = picture("JPEG", exif=exif.tobytes())
    found = carrier.read(io.BytesIO(caption(data, Embedding(xmp=CAPTION.xmp, original_day="1938-06-14"))))
    assert found.exif["DateTimeOriginal"].startswith("1938:06:14")
    assert found.exif["DateTimeDigitized"] == "2026:03:01 12:00:00"


def test_outside_copies_drop_all_text_and_keep_colour_and_orientation() -> None:
    outside = Embedding(xmp=CAPTION.xmp, iim=CAPTION.iim, drop_text=True)
    for name in ("with-exif", "png-exif", "tiff-exif", "webp-exif"):
        whole = caption(FORMATS[name], outside)
        assert b"from the scanner" not in whole and b"2026:03:01" not in whole and b"kept" not in whole
        assert pixels(whole) == pixels(FORMATS[name])
    with Image.open(io.BytesIO(caption(FORMATS["with-exif"], outside))) as image:
        assert image.info["icc_profile"] == PROFILE
        assert image.getexif()[0x0112] == 6


def test_the_digest_fits_the_iim_block() -> None:
    segments, _ = jpeg.split(io.BytesIO(caption(FORMATS["baseline"])))
    held, _ = resources.split(jpeg.resource_block(segments))
    data = {one.id: one.data for one in held}
    assert data[0x0425] == hashlib.md5(data[0x0404]).digest()
    assert iim.split(data[0x0404])[0] == (1, 90, b"\x1b%G")


def test_an_edit_by_another_program_and_a_second_run_lose_nothing(tmp_path: Path) -> None:
    path = tmp_path / "copy.jpg"
    path.write_bytes(caption(FORMATS["with-exif"]))
    with pyexiv2.Image(str(path)) as image:
        image.modify_xmp({"Xmp.xmp.Rating": "3", "Xmp.dc.description": {'lang="fr"': "Filets"}})
        image.modify_iptc({"Iptc.Application2.City": "Haapsalu"})
    again = caption(path.read_bytes())
    with pyexiv2.ImageData(again) as image:
        read = image.read_xmp()
        assert read["Xmp.xmp.Rating"] == "3"
        assert read["Xmp.dc.description"]['lang="fr"'] == "Filets"
        assert read["Xmp.dc.description"]['lang="x-default"'] == "Nets drying at Haapsalu, “1912”"
        assert image.read_iptc()["Iptc.Application2.City"] == "Haapsalu"


def test_a_large_foreign_property_moves_to_extended_xmp_and_is_not_lost() -> None:
    large = Embedding(xmp=(("xmp:Label", Text("x" * 200_000)),))
    first = caption_unverified(FORMATS["baseline"], large)
    again = caption(first)
    segments, _ = jpeg.split(io.BytesIO(again))
    packets = jpeg.packets_of(segments)
    assert packets.problems == ()
    assert xmp.values(xmp.parse(packets.more[0]))["xmp:Label"] == "x" * 200_000
    assert xmp.values(xmp.parse(packets.standard))["photoshop:DateCreated"] == "1912"


def caption_unverified(data: bytes, embedding: Embedding) -> bytes:
    made = carrier.rewrite(io.BytesIO(data), embedding)
    return b"".join(p if isinstance(p, bytes) else data[p[0] : p[0] + p[1]] for p in made.pieces)


def test_the_xmp_toolkit_reads_it_back(tmp_path: Path) -> None:
    try:
        from libxmp import XMPFiles  # noqa: PLC0415  # its import fails where the Debian library is missing
    except Exception as missing:  # noqa: BLE001  # it raises its own error, not ImportError
        pytest.skip(f"libexempi is not there: {missing}")
    for name in ("baseline", "png", "tiff"):
        path = tmp_path / f"copy.{name}"
        path.write_bytes(caption(FORMATS[name]))
        file = XMPFiles(file_path=str(path))
        read = file.get_xmp()
        assert read.get_localized_text("http://purl.org/dc/elements/1.1/", "title", None, "et") == "Võrgud kuivavad"
        file.close_file()


def test_tifffile_reads_the_pages(tmp_path: Path) -> None:
    path = tmp_path / "pages.tif"
    frames = [Image.new("L", (40, 30), shade) for shade in (10, 200)]
    frames[0].save(path, save_all=True, append_images=frames[1:])
    whole = caption(path.read_bytes())
    with tifffile.TiffFile(io.BytesIO(whole)) as read, tifffile.TiffFile(path) as before:
        assert len(read.pages) == 2
        assert [page.asarray().tobytes() for page in read.pages] == [p.asarray().tobytes() for p in before.pages]
        assert b"1912" in read.pages[0].tags[700].value


def jpeg_with(*segments: bytes) -> bytes:
    data = FORMATS["baseline"]
    return data[:2] + b"".join(segments) + data[2:]


REFUSALS = [
    ("empty", b"", 0, "the first bytes of the file"),
    ("no marker", b"\xff\xd8\xff\xe0\x00\x10" + bytes(20), None, "T.81"),
    ("junk between segments", jpeg_with(b"\xff\xe5\x00\x02junk"), 6, "T.81 B.1.1.2"),
    ("length of one", jpeg_with(b"\xff\xe5\x00\x01"), 4, "T.81 B.1.1.4"),
    ("no scan", b"\xff\xd8\xff\xd9", 3, "T.81 B.2.1"),
    ("segment past the end", b"\xff\xd8\xff\xe5\xff\xff", None, "T.81 B.1.1.4"),
    ("several pictures", jpeg_with(b"\xff\xe2\x00\x06MPF\x00"), 0, "CIPA DC-007, 5.2.3"),
    ("png cut off", FORMATS["png"][:60], None, "PNG Third Edition, 5.3"),
    ("png without end", FORMATS["png"][:-12], None, "PNG Third Edition, 5.6"),
    ("webp cut off", FORMATS["webp"][:-20], 4, "RFC 9649, 2.3"),
    ("tiff version", b"II\x2c\x00" + bytes(20), 0, "the first bytes of the file"),
    ("tiff loop", b"II*\x00\x08\x00\x00\x00\x01\x00\x00\x01\x03\x00\x01\x00\x00\x00\x01\x00\x00\x00\x08\x00\x00\x00",
     8, "TIFF 6.0, section 2"),
    ("tiff unsorted", b"II*\x00\x08\x00\x00\x00\x02\x00"
     + b"\x01\x01\x03\x00\x01\x00\x00\x00\x01\x00\x00\x00\x00\x01\x03\x00\x01\x00\x00\x00\x01\x00\x00\x00" + bytes(4),
     8, "TIFF 6.0, section 2, page 15"),
    ("tiff strip beyond the file", FORMATS["tiff"][:-2000] if len(FORMATS["tiff"]) > 99999 else
     b"II*\x00\x08\x00\x00\x00\x02\x00\x11\x01\x04\x00\x01\x00\x00\x00\x08\x00\x00\x00"
     b"\x17\x01\x04\x00\x01\x00\x00\x00\xff\xff\x00\x00" + bytes(4), 8, "TIFF 6.0, section 2, page 40"),
]  # fmt: skip


@pytest.mark.parametrize(("why", "data", "offset", "clause"), REFUSALS, ids=[row[0] for row in REFUSALS])
def test_damaged_files_are_refused_with_place_and_clause(
    why: str, data: bytes, offset: int | None, clause: str
) -> None:
    with pytest.raises(ByteFault) as caught:
        carrier.rewrite(io.BytesIO(data), CAPTION)
    assert caught.value.clause.startswith(clause)
    assert offset is None or caught.value.offset == offset


XML_REFUSALS = [
    b"<!DOCTYPE x [<!ENTITY a 'b'>]><x:xmpmeta xmlns:x='adobe:ns:meta/'/>",
    b"<x:xmpmeta xmlns:x='adobe:ns:meta/'/>",
    b"<x:xmpmeta",
    b"\x00\x01",
]


@pytest.mark.parametrize("packet", XML_REFUSALS)
def test_hostile_packets_are_refused(packet: bytes) -> None:
    data = jpeg_with(jpeg.segment(jpeg.APP1, jpeg.XMP_MARK + packet).raw)
    with pytest.raises(ByteFault, match="XMP packet"):
        carrier.rewrite(io.BytesIO(data), CAPTION)


def test_words_are_cut_in_iim_between_characters_and_whole_in_xmp() -> None:
    title = "õ" * 40
    long = Embedding(xmp=(("dc:title", Alt((("x-default", title),))),), iim=(((2, 5), (title,)),))
    source = io.BytesIO(FORMATS["baseline"])
    made = carrier.rewrite(source, long)
    assert made.reports == ("IIM 2:05 holds 64 of 80 bytes; XMP holds all.",)
    found = carrier.read(io.BytesIO(caption(FORMATS["baseline"], long)))
    assert found.iim[2, 5] == ("õ" * 32,)
    assert found.xmp["dc:title"] == title


def test_letters_that_xml_has_no_place_for_are_left_out() -> None:
    assert xmp.xml_text("a\x00b\x0bc\ud800\ufffe🙂\n") == "abc🙂\n"


def test_a_sidecar_is_a_packet_of_its_own() -> None:
    assert xmp.values(xmp.parse(carrier.sidecar(CAPTION)))["photoshop:DateCreated"] == "1912"
