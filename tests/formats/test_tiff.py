"""TIFF 6.0 and BigTIFF: the file whole, our values behind it, one pointer changed; pixels are in test_carrier."""

import io
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

import numpy
import pytest
import tifffile
from PIL import Image

from boxlore.core.crosswalk.metadata_values import Embedding, Text
from boxlore.core.errors import ByteFault
from boxlore.disk.writing import write_pieces
from boxlore.formats import iim, image_resources, picture_files, tiff, xmp
from boxlore.formats.image_resources import Resource

Caption = Callable[..., bytes]
NAMES = ["tiff", "tiff-16", "tiff-tiles", "tiff-pages", "tiff-motorola", "tiff-big", "tiff-big-motorola"]


@pytest.mark.parametrize("name", NAMES)
def test_every_byte_but_the_header_pointer_stays(name: str, files: dict[str, bytes], caption: Caption) -> None:
    before, after = files[name], caption(files[name])
    pointer = slice(8, 16) if b"+" in before[2:4] else slice(4, 8)
    changed = bytearray(after[: len(before)])
    changed[pointer] = before[pointer]
    assert bytes(changed) == before
    step = 8 if b"+" in before[2:4] else 2
    assert int.from_bytes(after[pointer], "big" if before[:2] == b"MM" else "little") % step == 0


@pytest.mark.parametrize("name", NAMES)
def test_tifffile_reads_the_new_directory(name: str, files: dict[str, bytes], caption: Caption) -> None:
    with tifffile.TiffFile(io.BytesIO(caption(files[name]))) as read, tifffile.TiffFile(io.BytesIO(files[name])) as old:
        assert len(read.pages) == len(old.pages)
        first, was = read.pages[0], old.pages[0]
        assert b"1912" in first.tags[700].value
        assert bytes(first.tags[33723].value).startswith(b"\x1c\x01\x5a\x00\x03\x1b%G")
        kept = {tag.code: tag.value for tag in was.tags if tag.code != 270}
        assert {tag.code: tag.value for tag in first.tags if tag.code in kept} == kept
        if 270 in was.tags:
            assert first.tags[270].value == "Nets drying at Haapsalu, “1912”"


def with_tags(*extra: tuple[int, int, int, bytes], byteorder: str = "<") -> bytes:
    out = io.BytesIO()
    data = numpy.arange(600, dtype="uint8").reshape(20, 30)
    tags = [(code, kind, count, value, True) for code, kind, count, value in extra]
    tifffile.imwrite(out, data, extratags=tags, metadata=None, byteorder=byteorder)
    return out.getvalue()


def test_iim_and_resources_are_merged_and_the_digest_is_right(caption: Caption) -> None:
    block = iim.join([(2, 90, b"Haapsalu"), (2, 55, b"20260301")])
    held = image_resources.join([Resource(b"8BIM", 0x040C, b"", b"thumb"), Resource(b"8BIM", 0x0404, b"", block)])
    data = with_tags((33723, 7, len(block), block), (34377, 1, len(held), held))
    with tifffile.TiffFile(io.BytesIO(caption(data))) as read:
        tags = read.pages[0].tags
        made = {one[:2]: one[2] for one in iim.split(bytes(tags[33723].value))}
        assert made[2, 90] == b"Haapsalu" and made[2, 55] == b"19120000"
        parts, _ = image_resources.split(bytes(tags[34377].value))
        assert [one.id for one in parts] == [0x0404, 0x0425, 0x040C]
        assert parts[0].data == bytes(tags[33723].value)
        assert image_resources.iim_of(parts)[1] == []


def test_iim_in_the_resources_alone_is_used_and_written_to_both(caption: Caption) -> None:
    held = image_resources.join([Resource(b"8BIM", 0x0404, b"", iim.join([(2, 90, b"Haapsalu")]))])
    found = picture_files.read(io.BytesIO(caption(with_tags((34377, 1, len(held), held)))))
    assert found.iim[2, 90] == ("Haapsalu",)


def test_for_outside_old_texts_are_in_no_byte(files: dict[str, bytes], caption: Caption, words: Embedding) -> None:
    after = caption(files["tiff-pages"], replace(words, drop_text=True))
    assert b"from the scanner" not in after
    with tifffile.TiffFile(io.BytesIO(after)) as read:
        assert [page.tags[270].value.strip("\x00") if 270 in page.tags else "" for page in read.pages] == ["", "", ""]


def test_another_programs_appended_value_in_the_tail_is_not_taken_off(caption: Caption) -> None:
    """A page whose picture lies in what looks like our tail keeps it."""
    whole = bytearray(caption(with_tags()))
    found, chain = tiff.opened(io.BytesIO(bytes(whole)))
    packet = chain[0].get(700)
    strips = chain[0].get(273)
    assert packet is not None and strips is not None
    whole[strips.at + 8 : strips.at + 12] = packet.value_at.to_bytes(4, "little")
    found, chain = tiff.opened(io.BytesIO(bytes(whole)))
    assert tiff.own_tail(found, chain) == len(whole)


def test_pages_and_their_inner_directories_are_seen(caption: Caption) -> None:
    out = io.BytesIO()
    with tifffile.TiffWriter(out) as writer:
        data = numpy.arange(600, dtype="uint8").reshape(20, 30)
        writer.write(data, subifds=1, metadata=None)
        writer.write(data[::2, ::2], subfiletype=1, metadata=None)
    whole = caption(out.getvalue())
    with tifffile.TiffFile(io.BytesIO(whole)) as read:
        assert read.pages[0].pages[0].asarray().tobytes() == data[::2, ::2].tobytes()
    assert caption(whole) == whole
    with pytest.raises(ByteFault, match="beyond the file"):
        tiff.opened(io.BytesIO(out.getvalue()[:-140]))


def entry(tag: int, kind: int, count: int, value: int) -> bytes:
    numbers = tag.to_bytes(2, "little") + kind.to_bytes(2, "little") + count.to_bytes(4, "little")
    return numbers + value.to_bytes(4, "little")


def made_of(*entries: bytes, following: int = 0) -> bytes:
    table = b"".join(sorted(entries, key=lambda one: int.from_bytes(one[:2], "little")))
    return (
        b"II*\x00\x10\x00\x00\x00"
        + bytes(8)
        + len(entries).to_bytes(2, "little")
        + table
        + following.to_bytes(4, "little")
    )


STRIP = (entry(273, 4, 1, 8), entry(279, 4, 1, 8))
PAGE = "TIFF 6.0, section 2, page 40"

REFUSALS = [
    ("no picture", b"II*\x00" + bytes(8), 4, "TIFF 6.0, section 2"),
    ("no entries", made_of(), 16, "TIFF 6.0, section 2, page 14"),
    ("loop of pages", made_of(*STRIP, following=16), 16, "TIFF 6.0, section 2"),
    ("loop of inner directories", made_of(*STRIP, entry(330, 4, 1, 16)), 16, "TIFF 6.0, section 2"),
    ("strip beyond the file", made_of(entry(273, 4, 1, 8), entry(279, 4, 1, 999)), 8, PAGE),
    ("tile beyond the file", made_of(entry(324, 4, 1, 8), entry(325, 4, 1, 999)), 8, PAGE),
    ("JPEG stream beyond the file", made_of(entry(513, 4, 1, 8), entry(514, 4, 1, 999)), 8, PAGE),
    ("strip without a length", made_of(entry(273, 4, 1, 8)), 16, PAGE),
    ("strip with a length of nought", made_of(entry(273, 4, 1, 8), entry(279, 4, 1, 0)), 16, PAGE),
    ("fewer lengths than strips", made_of(entry(273, 3, 2, 8), entry(279, 4, 1, 8)), 16, PAGE),
    ("value outside", made_of(*STRIP, entry(700, 1, 99, 999)), 42, "TIFF 6.0, section 2"),
    ("raw by its tag", made_of(*STRIP, entry(50706, 1, 4, 1)), 16, "TIFF 6.0, section 2"),
    ("raw by its compression", made_of(*STRIP, entry(259, 3, 1, 34713)), 16, "TIFF 6.0, section 2"),
    ("raw by its colours", made_of(*STRIP, entry(262, 3, 1, 32803)), 16, "TIFF 6.0, section 2"),
    ("raw by its mark", b"II*\x00\x10\x00\x00\x00CR\x02\x00" + made_of(*STRIP)[12:], 8, "TIFF 6.0, section 2"),
]


@pytest.mark.parametrize(("why", "data", "offset", "clause"), REFUSALS, ids=[row[0] for row in REFUSALS])
def test_refusals(why: str, data: bytes, offset: int, clause: str) -> None:
    with pytest.raises(ByteFault) as caught:
        tiff.rewrite(io.BytesIO(data), Embedding(xmp=(("dc:title", Text("x")),)))
    assert (caught.value.offset, caught.value.clause) == (offset, clause)


def test_truncated_strips_of_a_real_file_are_refused(files: dict[str, bytes]) -> None:
    data = files["tiff"]
    with pytest.raises(ByteFault) as caught:
        tiff.rewrite(io.BytesIO(data[:-100]), Embedding())
    assert caught.value.clause == PAGE


def test_a_sparse_tile_is_no_fault(caption: Caption) -> None:
    caption(made_of(entry(324, 4, 1, 0), entry(325, 4, 1, 0)))


def sparse(path: Path, size: int) -> Path:
    """A classic TIFF of that many bytes, nearly all of them a hole, with its directory at the end."""
    table = b"".join(
        (
            (4).to_bytes(2, "little"),
            entry(256, 4, 1, 60_000),
            entry(257, 4, 1, (size - 200) // 60_000),
            entry(273, 4, 1, 8),
            entry(279, 4, 1, size - 200),
            bytes(4),
        )
    )
    with open(path, "wb") as file:
        file.write(b"II*\x00" + (size - len(table) & ~1).to_bytes(4, "little"))
        file.seek(size - len(table) & ~1)
        file.write(table)
    return path


def test_a_classic_file_of_nearly_four_gigabytes(tmp_path: Path, words: Embedding) -> None:
    """Pieces of 3.9 GiB take 8 KB of memory to caption; a result over 4 GiB is refused (TIFF 6.0, page 13)."""
    path = sparse(tmp_path / "large.tif", 4_187_593_113 & ~1)
    with open(path, "rb") as file:
        pieces, _ = tiff.rewrite(file, words)
    assert [sum(piece) - piece[0] for piece in pieces if isinstance(piece, tuple)] == [4, (4_187_593_113 & ~1) - 8]
    assert sum(len(piece) for piece in pieces if isinstance(piece, bytes)) < 8000
    with open(sparse(tmp_path / "full.tif", (1 << 32) - 400), "rb") as file, pytest.raises(ByteFault) as caught:
        tiff.rewrite(file, words)
    assert caught.value.clause == "TIFF 6.0, section 2, page 13"


def test_a_packet_of_the_files_own_survives(caption: Caption) -> None:
    packet = picture_files.sidecar(Embedding(xmp=(("xmp:Label", Text("theirs")),)))
    after = caption(with_tags((700, 1, len(packet), packet), byteorder=">"))
    assert xmp.values(xmp.tree(*picture_files.packets(io.BytesIO(after))))["xmp:Label"] == "theirs"


def test_texts_that_share_their_bytes_are_zeroed_together(caption: Caption, words: Embedding) -> None:
    end = 16 + 2 + 4 * 12 + 4
    data = made_of(*STRIP, entry(270, 2, 12, end), entry(305, 2, 6, end + 2)) + b"from a shop\x00"
    after = caption(data, replace(words, drop_text=True))
    assert after[end : end + 12] == bytes(12)
    assert after[8:16] == data[8:16]


def two_pages_as_pillow_appends_them() -> bytes:
    """Pillow writes a header before each page that it appends; every page has texts, resolution and coordinates."""
    pages = []
    for shade in (40, 200):
        page = Image.new("RGB", (30, 20), (shade, 80, 120))
        exif = page.getexif()
        exif[270], exif[305] = "the quay " * 9, "a scanner " * 9
        exif.get_ifd(34853).update({1: "N", 2: (58.0, 22.0, 24.0), 3: "E", 4: (26.0, 43.0, 12.0)})
        page.encoderinfo = {"exif": exif.tobytes()}
        pages.append(page)
    out = io.BytesIO()
    pages[0].save(out, "TIFF", save_all=True, append_images=pages[1:], exif=pages[0].encoderinfo["exif"])
    return out.getvalue()


def cleaned(data: bytes, tmp_path: Path) -> bytes:
    source, target = tmp_path / "scan.tif", tmp_path / "open.tif"
    source.write_bytes(data)
    with open(source, "rb") as file, open(target, "wb") as out:
        write_pieces(picture_files.without_place(file).pieces, file, out)
    return target.read_bytes()


@pytest.mark.parametrize("how", ["captioned", "without its place"])
def test_every_page_that_has_a_header_of_its_own_stays_whole(how: str, caption: Caption, tmp_path: Path) -> None:
    whole = two_pages_as_pillow_appends_them()
    assert whole.count(b"II*\x00") == 2
    copy = caption(whole) if how == "captioned" else cleaned(whole, tmp_path)
    with Image.open(io.BytesIO(whole)) as before, Image.open(io.BytesIO(copy)) as after:
        assert (before.n_frames, after.n_frames) == (2, 2)
        for page in range(2):
            before.seek(page)
            after.seek(page)
            assert before.tobytes() == after.tobytes()
            assert set(before.tag_v2) - {34853} <= set(after.tag_v2)
            assert {2, 4} <= set(before.getexif().get_ifd(34853))
            assert not {2, 4} & set(after.getexif().get_ifd(34853))
