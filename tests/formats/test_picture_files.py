"""Captions written by us, read back by others: pyexiv2 and exiv2 (Exiv2), Pillow, tifffile, the XMP Toolkit.

The property and dataset names are those of the IPTC Photo Metadata Standard 2025.1 and IIM 4.2; the rule of the
digest is XMP Specification Part 3 (2020), 1.3.3 with the MWG Guidelines 2.0.
"""

import io
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

import exiv2
import numpy
import pyexiv2
import pytest
import tifffile
from hypothesis import given
from hypothesis import strategies as st
from PIL import Image, ImageCms, ImageSequence
from tests.drawn import drawn

from boxlore.core.crosswalk.metadata_values import Embedding, Text
from boxlore.core.errors import ByteFault
from boxlore.formats import picture_files, xmp
from boxlore.formats.picture_files import FileFormat

Caption = Callable[..., bytes]
TIFF = (b"II*\x00", b"MM\x00*", b"II+\x00", b"MM\x00+")


def pixels(data: bytes) -> list[bytes]:
    """Every page or picture of an animation, decoded by Pillow; a TIFF by tifffile, but for LZW (page 57)."""
    if data[:4] in TIFF:
        with tifffile.TiffFile(io.BytesIO(data)) as read:
            if read.pages[0].compression != tifffile.COMPRESSION.LZW:
                return [numpy.ascontiguousarray(page.asarray()).tobytes() for page in read.pages]
    with Image.open(io.BytesIO(data)) as image:
        return [frame.tobytes() for frame in ImageSequence.Iterator(image)]


def test_not_one_pixel_changes(source: bytes, caption: Caption) -> None:
    before = pixels(source)
    assert pixels(caption(source)) == before
    assert pixels(caption(source, Embedding(xmp=(("dc:title", Text("x")),), drop_text=True))) == before


def test_twelve_million_pixels(caption: Caption) -> None:
    out = io.BytesIO()
    Image.radial_gradient("L").resize((4000, 3000)).save(out, "JPEG")
    assert pixels(caption(out.getvalue())) == pixels(out.getvalue())


def test_running_twice_changes_nothing(source: bytes, caption: Caption) -> None:
    once = caption(source)
    assert caption(once) == once


def test_a_longer_and_a_shorter_caption_leave_nothing_of_each_other(
    source: bytes, caption: Caption, words: Embedding
) -> None:
    longer = replace(words, xmp=(*words.xmp, ("dc:source", Text("in the shoebox, " * 300))))
    assert caption(caption(source, longer), replace(words, remove=("dc:source",))) == caption(
        source, replace(words, remove=("dc:source",))
    )


def test_pyexiv2_reads_it_back(source: bytes, caption: Caption) -> None:
    if source[2:4] in (b"+\x00", b"\x00+"):
        pytest.skip("pyexiv2 does not read BigTIFF")
    with pyexiv2.ImageData(caption(source)) as image:
        read = image.read_xmp()
        assert read["Xmp.dc.title"] == {'lang="x-default"': "Võrgud kuivavad", 'lang="et"': "Võrgud kuivavad"}
        assert read["Xmp.dc.subject"] == ["nets", "Haapsalu"]
        assert read["Xmp.photoshop.DateCreated"] == "1912"
        assert read["Xmp.iptcExt.ImageRegion[1]/Iptc4xmpExt:rId"] == "boxlore-m1"
        if source[:2] in (b"\xff\xd8", b"II", b"MM"):
            assert image.read_iptc()["Iptc.Application2.Caption"] == "Nets drying at Haapsalu, “1912”"


def test_exiv2_reads_it_back(source: bytes, caption: Caption) -> None:
    if source[2:4] in (b"+\x00", b"\x00+"):
        pytest.skip("exiv2 does not read BigTIFF")
    data = caption(source)
    image = exiv2.ImageFactory.open(data)
    image.readMetadata()
    assert image.xmpData()["Xmp.photoshop.DateCreated"].toString() == "1912"
    if source[:2] in (b"\xff\xd8", b"II", b"MM"):
        assert image.iptcData()["Iptc.Application2.DateCreated"].toString() == "1912-00-00"


def test_pillow_reads_it_back(source: bytes, caption: Caption) -> None:
    if source[:4] == b"MM\x00+":
        pytest.skip("Pillow does not read BigTIFF of that byte order")
    with Image.open(io.BytesIO(caption(source))) as image:
        found = image.getxmp()["xmpmeta"]["RDF"]["Description"]
        assert found["DateCreated"] == "1912"
        assert found["title"]["Alt"]["li"][0]["text"] == "Võrgud kuivavad"


def toolkit():  # type: ignore[no-untyped-def]
    try:
        from libxmp import XMPFiles  # noqa: PLC0415  # its import fails where the Debian library is missing
    except Exception as missing:  # noqa: BLE001  # it raises its own error, not ImportError
        pytest.skip(f"libexempi is not there: {missing}")
    return XMPFiles


def test_the_xmp_toolkit_reads_it_back(tmp_path: Path, source: bytes, caption: Caption) -> None:
    reader = toolkit()
    path = tmp_path / "copy"
    path.write_bytes(caption(source))
    if source[2:4] in (b"+\x00", b"\x00+") or b"ANMF" in source:
        pytest.skip("the toolkit does not read BigTIFF, nor an animated WebP")
    if source[:4] == b"RIFF" and b"EXIF" in source:
        pytest.skip("the toolkit takes the Exif that Pillow puts into a WebP for damaged, before our copy and after")
    file = reader(file_path=str(path))
    try:
        read = file.get_xmp()
        dc = "http://purl.org/dc/elements/1.1/"
        assert read.get_localized_text(dc, "title", None, "et") == "Võrgud kuivavad"
    finally:
        file.close_file()


def test_the_place_and_day_of_the_scanning_do_not_travel(source: bytes, caption: Caption) -> None:
    found = picture_files.read(io.BytesIO(caption(source)))
    assert not found.has_gps
    assert "DateTimeOriginal" not in found.exif
    before = picture_files.read(io.BytesIO(source))
    if before.exif.get("DateTimeOriginal"):
        assert before.has_gps
        assert found.exif["DateTimeDigitized"] == "2026:03:01 12:00:00"
        assert found.orientation == 6


def test_outside_copies_drop_all_text_and_keep_how_it_looks(
    files: dict[str, bytes], caption: Caption, words: Embedding
) -> None:
    outside = replace(words, drop_text=True)
    for name in ("with-exif", "png-exif", "tiff-exif", "webp-exif", "tiff-pages"):
        whole = caption(files[name], outside)
        for gone in (b"from the scanner", b"2026:03:01", b"kept", b"maker's own"):
            assert gone not in whole, (name, gone)
        before, after = picture_files.read(io.BytesIO(files[name])), picture_files.read(io.BytesIO(whole))
        assert after.orientation == before.orientation
        assert caption(whole, outside) == whole
    with Image.open(io.BytesIO(caption(files["with-exif"], outside))) as image:
        assert ImageCms.ImageCmsProfile(io.BytesIO(image.info["icc_profile"])).profile.profile_description
        assert image.getexif()[0x0112] == 6
        assert image.getexif()[0x011A] == 300


EDITED = ("with-exif", "progressive", "cmyk", "tiff", "tiff-exif", "tiff-pages", "png", "png-exif", "webp", "webp-exif")


@pytest.mark.parametrize("name", EDITED)
@pytest.mark.parametrize("editor", ["pyexiv2", "exiv2"])
def test_an_edit_by_another_program_and_a_second_run_lose_nothing(
    tmp_path: Path, name: str, editor: str, files: dict[str, bytes], caption: Caption
) -> None:
    path = tmp_path / "copy"
    path.write_bytes(caption(files[name]))
    (by_pyexiv2 if editor == "pyexiv2" else by_exiv2)(path)
    edited = path.read_bytes()
    again = caption(edited)
    assert caption(again) == again
    assert pixels(again) == pixels(files[name])
    with pyexiv2.ImageData(again) as image:
        read = image.read_xmp()
        assert read["Xmp.xmp.Rating"] == "3"
        assert read["Xmp.dc.description"]['lang="fr"'] == "Filets"
        assert read["Xmp.dc.description"]['lang="x-default"'] == "Nets drying at Haapsalu, “1912”"
        if name in EDITED[:6]:
            assert image.read_iptc()["Iptc.Application2.City"] == "Haapsalu"
            assert image.read_iptc()["Iptc.Application2.Caption"] == "Nets drying at Haapsalu, “1912”"
    before, after = picture_files.read(io.BytesIO(edited)), picture_files.read(io.BytesIO(again))
    assert {**before.xmp, **after.xmp} == dict(after.xmp)


def by_pyexiv2(path: Path) -> None:
    with pyexiv2.Image(str(path)) as image:
        image.modify_xmp({"Xmp.xmp.Rating": "3", "Xmp.dc.description": {'lang="fr"': "Filets"}})
        if image.read_iptc():
            image.modify_iptc({"Iptc.Application2.City": "Haapsalu"})


def by_exiv2(path: Path) -> None:
    image = exiv2.ImageFactory.open(str(path))
    image.readMetadata()
    xmp_data, iptc = image.xmpData(), image.iptcData()
    xmp_data["Xmp.xmp.Rating"] = "3"
    xmp_data["Xmp.dc.description"] = "lang=fr Filets"
    if not iptc.empty():
        iptc["Iptc.Application2.City"] = "Haapsalu"
    image.setXmpData(xmp_data)
    image.setIptcData(iptc)
    image.writeMetadata()


KINDS = [
    (b"\xff\xd8\xff\xe0", FileFormat.JPEG, ".jpg"),
    (b"\x89PNG\r\n\x1a\n", FileFormat.PNG, ".png"),
    (b"II*\x00", FileFormat.TIFF, ".tif"),
    (b"MM\x00+", FileFormat.TIFF, ".tif"),
    (b"RIFF\x00\x00\x00\x00WEBP", FileFormat.WEBP, ".webp"),
    (b"GIF89a", None, ".xyz"),
    (b"", None, ".xyz"),
]


@pytest.mark.parametrize(("head", "kind", "suffix"), KINDS)
def test_a_file_is_known_by_content_and_not_by_name(head: bytes, kind: FileFormat | None, suffix: str) -> None:
    assert picture_files.sniff(head) is kind
    assert picture_files.suffix_for(io.BytesIO(head), ".xyz") == suffix


def test_a_suffix_that_fits_stays() -> None:
    assert picture_files.suffix_for(io.BytesIO(b"\xff\xd8\xff\xe0"), ".jpeg") == ".jpeg"


OTHERS = [
    (b"\x00\x00\x00\x18ftypheic", "a HEIC"),
    (b"\x00\x00\x00\x0cjP  \r\n\x87\n", "a JPEG 2000"),
    (b"GIF89a", "a GIF"),
    (b"", "no JPEG, PNG, TIFF or WebP"),
]


@pytest.mark.parametrize(("head", "said"), OTHERS)
def test_other_formats_are_refused_by_their_name(head: bytes, said: str, words: Embedding) -> None:
    for use in (lambda file: picture_files.rewrite(file, words), picture_files.read):
        with pytest.raises(ByteFault, match=said) as caught:
            use(io.BytesIO(head))
        assert (caught.value.offset, caught.value.clause) == (0, "the first bytes of the file")


def test_a_copy_of_another_format_or_picture_is_not_proved(files: dict[str, bytes], caption: Caption) -> None:
    def proved(one: bytes, other: bytes) -> list[str]:
        return picture_files.same_picture(io.BytesIO(one), io.BytesIO(other))

    assert proved(files["png"], files["webp"]) == ["the copy is of another format"]
    assert proved(files["png"], files["png-16"]) == ["the parts of the picture are not as they were"]
    middles = {"baseline": b"\xff\xda", "tiff": b"II*", "png": b"IDAT", "webp": b"VP8 "}
    for name, mark in middles.items():
        whole = bytearray(caption(files[name]))
        whole[whole.index(mark) + (300 if name == "tiff" else 60)] ^= 0x10
        assert proved(files[name], bytes(whole)) == ["the picture's bytes are not equal"], name
    more = caption(files["baseline"]) + b"more"
    assert proved(files["baseline"], more) == ["the picture's bytes are not as many as before"]
    tables = caption(files["baseline"]).replace(b"\xff\xdb\x00C\x00\x08", b"\xff\xdb\x00C\x00\x09", 1)
    assert proved(files["baseline"], tables) == ["another segment than ours has changed"]


def test_what_stands_in_a_tiff_beside_the_picture_is_proved_too(
    files: dict[str, bytes], caption: Caption, words: Embedding
) -> None:
    whole = bytearray(caption(files["tiff-pages"]))
    where = whole.rindex(b"page 2 from")
    whole[where] ^= 1
    wrong = picture_files.verify(io.BytesIO(files["tiff-pages"]), io.BytesIO(bytes(whole)), words)
    assert wrong == ["another byte than ours has changed"]
    wrong = picture_files.verify(io.BytesIO(files["tiff-16"]), io.BytesIO(caption(files["tiff"])), words)
    assert wrong == ["the parts of the picture are not as they were"]
    wrong = picture_files.verify(io.BytesIO(files["tiff-16"]), io.BytesIO(caption(files["png"])), words)
    assert wrong == ["the copy is of another format"]


def test_a_caption_that_does_not_read_back_is_named(
    files: dict[str, bytes], caption: Caption, words: Embedding
) -> None:
    other = replace(words, xmp=(*words.xmp[1:], ("dc:source", Text("elsewhere")), ("dc:title", Text("plain"))))
    assert picture_files.differing_properties(io.BytesIO(caption(files["png"])), other) == ["dc:source", "dc:title"]


def test_a_copy_is_not_matched_by_another_file(files: dict[str, bytes], words: Embedding, caption: Caption) -> None:
    source = io.BytesIO(files["png"])
    made = picture_files.rewrite(source, words)
    whole = caption(files["png"])
    for at in (50, len(whole) - 20):
        other = bytearray(whole)
        other[at] ^= 1
        assert not picture_files.matches(made, source, io.BytesIO(bytes(other)))
    assert not picture_files.matches(made, source, io.BytesIO(whole + b"."))


def test_a_sidecar_is_a_packet_of_its_own(words: Embedding) -> None:
    packet = picture_files.sidecar(words)
    assert xmp.values(xmp.parse(packet))["photoshop:DateCreated"] == "1912"
    assert picture_files.differing_in_packet(packet, words) == []
    assert packet.endswith(b'<?xpacket end="w"?>')


def test_a_small_file_is_captioned_in_memory(files: dict[str, bytes], words: Embedding, caption: Caption) -> None:
    assert picture_files.captioned(files["baseline"], words) == caption(files["baseline"], words)


def seed(kind: str) -> bytes:
    exif = Image.Exif()
    exif[0x010E] = "from the scanner"
    exif.get_ifd(0x8825)[1], exif.get_ifd(0x8825)[2] = "S", (45.0, 52.0, 28.0)
    out = io.BytesIO()
    Image.new("RGB", (9, 7), "brown").save(out, kind, exif=exif.tobytes())
    return picture_files.captioned(out.getvalue(), Embedding(xmp=(("dc:title", Text("x")),), iim=(((2, 5), ("x",)),)))


SEEDS = [seed(kind) for kind in ("JPEG", "TIFF", "PNG", "WEBP")]


@drawn(250)
@given(at=st.floats(0, 1), value=st.integers(0, 255), name=st.integers(0, 3), cut=st.booleans())
def test_any_bytes_are_read_or_refused(at: float, value: int, name: int, cut: bool) -> None:
    """The large run is `tests/benchmarks/fuzz_formats.py`."""
    data = bytearray(SEEDS[name])
    place = min(int(at * len(data)), len(data) - 1)
    data[place] = value
    if cut:
        del data[place:]
    try:
        made = picture_files.rewrite(io.BytesIO(bytes(data)), Embedding(xmp=(("dc:title", Text("y")),)))
    except ByteFault as fault:
        assert fault.clause and fault.offset >= 0
    else:
        assert picture_files.size_after(made) > 0


def test_a_file_of_another_format_is_copied_but_for_its_place() -> None:
    made = picture_files.copy_without_place(io.BytesIO(b"GIF89a" + bytes(50)))
    assert made.pieces == ((0, 56),) and picture_files.size_after(made) == 56
