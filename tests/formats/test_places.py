"""No place of capture leaves, in whatever shape it stands in a file: held by exiv2, Pillow and a search of all bytes.

Shapes are those of CIPA DC-008 4.6.6 (Exif), DC-010 (XMP), DC-007 (several pictures), ISO/IEC 23008-12 A.2.1 (HEIF
items), PNG Third Edition 11.3.3, RFC 9649 2.7, TIFF 6.0 and its Supplement 1, XMP Specification Part 3; profiles in
texts of a PNG are common practice, no source.
"""

import hashlib
import io
import re
import zlib

import exiv2
import pytest
from PIL import Image
from tests.formats.conftest import prove_without_place

from boxlore.core.crosswalk.metadata_values import NAMESPACES, Embedding, Text
from boxlore.core.errors import ByteFault
from boxlore.formats import exif, image_resources, jpeg, picture_files, places_unread, png_texts

LATITUDE = "59,26.2234N"
"""What must be nowhere in the end; as rationals 59/1, 26/1, 2234/1."""


def block(order: str = "<", *, mark: bool = False, turned: bool = False) -> bytes:
    """An Exif block with a place, in either byte order; `turned` has its directories unsorted."""
    made = Image.Exif()
    made.endian = order
    made[0x010E], made[0x0112] = "from the scanner", 6
    made.get_ifd(0x8769)[0x9003] = "2026:03:01 12:00:00"
    made.get_ifd(0x8825)[1], made.get_ifd(0x8825)[2] = "N", (59.0, 26.0, 2234.0)
    data = made.tobytes().removeprefix(exif.MARK)
    if turned:
        tiff = exif.block(data)
        main = tiff.directory(tiff.first)
        table = b"".join(entry.raw for entry in reversed(main.entries))
        data = data[: main.at + 2] + table + data[main.at + 2 + len(table) :]
    return exif.MARK + data if mark else data


def packet(body: str = "", attributes: str = "") -> bytes:
    own = f"<own:kept xmlns:own='urn:own'>yes</own:kept>{body}"
    return (
        f"<?xpacket begin='' id='W5M0MpCehiHzreSzNTczkc9d'?><x:xmpmeta xmlns:x='{NAMESPACES['x']}'>"
        f"<rdf:RDF xmlns:rdf='{NAMESPACES['rdf']}'><rdf:Description rdf:about='' xmlns:exif='{NAMESPACES['exif']}' "
        f"{attributes}>{own}</rdf:Description></rdf:RDF></x:xmpmeta><?xpacket end='w'?>"
    ).encode()


IN_XMP = packet(f"<exif:GPSLatitude>{LATITUDE}</exif:GPSLatitude>", f"exif:GPSLongitude='{LATITUDE}'")
WGS84 = packet(f"<geo:lat xmlns:geo='http://www.w3.org/2003/01/geo/wgs84_pos#'>{LATITUDE}</geo:lat>")
KEYWORD = packet(
    f"<dc:subject xmlns:dc='{NAMESPACES['dc']}'><rdf:Bag><rdf:li>net</rdf:li>"
    f"<rdf:li>geo:lat={LATITUDE}</rdf:li></rdf:Bag></dc:subject>"
)
NESTED = packet(
    f"<Iptc4xmpExt:LocationCreated xmlns:Iptc4xmpExt='{NAMESPACES['Iptc4xmpExt']}'><rdf:Bag><rdf:li>"
    f"<rdf:Description exif:GPSLatitude='{LATITUDE}'/></rdf:li></rdf:Bag></Iptc4xmpExt:LocationCreated>"
)

WIDE = b"\xff\xfe" + IN_XMP.decode().partition("?>")[2].partition("<?xpacket")[0].encode("utf-16-le")


def picture(kind: str, **more: object) -> bytes:
    out = io.BytesIO()
    Image.radial_gradient("L").resize((48, 32)).convert("RGB").save(out, kind, **more)
    return out.getvalue()


PLAIN = picture("JPEG")


def with_segments(*segments: tuple[int, bytes], after: bytes = b"") -> bytes:
    return PLAIN[:2] + b"".join(jpeg.new_segment(*segment).raw for segment in segments) + PLAIN[2:] + after


def extended(body: bytes) -> list[tuple[int, bytes]]:
    """A standard packet that names an extended one, and that in three parts."""
    guid = hashlib.md5(body, usedforsecurity=False).hexdigest().upper().encode()
    note = f"xmlns:xmpNote='{NAMESPACES['xmpNote']}' xmpNote:HasExtendedXMP='{guid.decode()}'"
    step = len(body) // 3 + 1
    parts = [
        (
            jpeg.APP1,
            jpeg.EXTENDED_MARK + guid + len(body).to_bytes(4, "big") + at.to_bytes(4, "big") + body[at : at + step],
        )
        for at in range(0, len(body), step)
    ]
    return [(jpeg.APP1, jpeg.XMP_MARK + packet("", note)), *parts]


def in_resources(number: int, data: bytes) -> bytes:
    return jpeg.PHOTOSHOP_MARK + image_resources.join([image_resources.Resource(b"8BIM", number, b"", data)])


def png(*chunks: tuple[bytes, bytes]) -> bytes:
    data = picture("PNG")
    made = b"".join(
        len(body).to_bytes(4, "big") + kind + body + zlib.crc32(kind + body).to_bytes(4, "big") for kind, body in chunks
    )
    return data[:33] + made + data[33:]


def profile(name: bytes, data: bytes) -> bytes:
    return b"\n" + name + b"\n%8d\n" % len(data) + data.hex().encode() + b"\n"


def heif(item: bytes) -> bytes:
    """The boxes of a HEIC and an Exif item behind its four bytes of offset, in a `mdat`."""
    body = b"\x00\x00\x00\x00" + item
    return b"\x00\x00\x00\x18ftypheic\x00\x00\x00\x00mif1heic" + (len(body) + 8).to_bytes(4, "big") + b"mdat" + body


def webp(kind: bytes, body: bytes) -> bytes:
    data = picture("WEBP", exif=block(mark=True))
    head = data[12:30]  # VP8X
    rest = data[30 : data.index(b"EXIF")]
    chunk = kind + len(body).to_bytes(4, "little") + body + bytes(len(body) % 2)
    inner = b"WEBP" + head + rest + chunk
    return b"RIFF" + len(inner).to_bytes(4, "little") + inner


def tiff(**tags: object) -> bytes:
    return picture("TIFF", **tags)


def between_scans(segment: tuple[int, bytes]) -> bytes:
    """A progressive JPEG with a segment before its last scan (T.81, B.2.1: tables and others may stand before each)."""
    with Image.open(io.BytesIO(PLAIN)) as opened:
        opened.save(made := io.BytesIO(), "JPEG", progressive=True)
    data = made.getvalue()
    at = data.rfind(b"\xff\xda")
    return data[:at] + jpeg.new_segment(*segment).raw + data[at:]


SECOND = with_segments((jpeg.APP1, block(mark=True)))
JPEGS = {
    "Exif": with_segments((jpeg.APP1, block(mark=True))),
    "Exif, Motorola": with_segments((jpeg.APP1, block(">", mark=True))),
    "Exif, unsorted": with_segments((jpeg.APP1, block(mark=True, turned=True))),
    "Exif twice": with_segments((jpeg.APP1, block(mark=True)), (jpeg.APP1, block(mark=True))),
    "Exif behind another segment": with_segments((jpeg.APP2, b"own"), (jpeg.APP1, block(mark=True))),
    "Exif between two scans": between_scans((jpeg.APP1, block(mark=True))),
    "XMP between two scans": between_scans((jpeg.APP1, jpeg.XMP_MARK + IN_XMP)),
    "XMP": with_segments((jpeg.APP1, jpeg.XMP_MARK + IN_XMP)),
    "XMP, in the vocabulary of W3C": with_segments((jpeg.APP1, jpeg.XMP_MARK + WGS84)),
    "XMP, as a keyword": with_segments((jpeg.APP1, jpeg.XMP_MARK + KEYWORD)),
    "XMP, in a structure": with_segments((jpeg.APP1, jpeg.XMP_MARK + NESTED)),
    "XMP, of two bytes a letter": with_segments((jpeg.APP1, jpeg.XMP_MARK + WIDE)),
    "XMP, damaged": with_segments((jpeg.APP1, jpeg.XMP_MARK + IN_XMP.replace(b"</rdf:RDF>", b""))),
    "extended XMP": with_segments(*extended(IN_XMP)),
    "Exif in image resources": with_segments((jpeg.APP13, in_resources(0x0422, block()))),
    "XMP in image resources": with_segments((jpeg.APP13, in_resources(0x0424, IN_XMP))),
    "a thumbnail in image resources": with_segments((jpeg.APP13, in_resources(0x040C, bytes(28) + SECOND))),
    "a comment": with_segments((jpeg.COM, f"GPSLatitude: {LATITUDE}".encode())),
    "an unknown segment": with_segments((0xE7, b"own\x00" + block())),
    "JSON in an unknown segment": with_segments((0xEB, f'{{"exif:GPSLatitude": "{LATITUDE}"}}'.encode())),
    "a second picture behind the first": with_segments(after=SECOND),
    "a second picture with XMP": with_segments(after=with_segments((jpeg.APP1, jpeg.XMP_MARK + IN_XMP))),
}  # fmt: skip

OTHERS = {
    "PNG, eXIf": png((b"eXIf", block())),
    "PNG, eXIf with its mark": png((b"eXIf", block(mark=True))),
    "PNG, eXIf unsorted": png((b"eXIf", block(turned=True))),
    "PNG, XMP": png((b"iTXt", b"XML:com.adobe.xmp" + bytes(5) + IN_XMP)),
    "PNG, XMP compressed": png((b"iTXt", b"XML:com.adobe.xmp\x00\x01" + bytes(3) + zlib.compress(IN_XMP))),
    "PNG, profile of Exif": png((b"tEXt", b"Raw profile type exif\x00" + profile(b"exif", block(mark=True)))),
    "PNG, profile of APP1": png((b"zTXt", b"Raw profile type APP1\x00\x00" + zlib.compress(profile(b"APP1", block())))),
    "PNG, profile of XMP": png((b"zTXt", b"Raw profile type xmp\x00\x00" + zlib.compress(profile(b"xmp", IN_XMP)))),
    "PNG, profile in iTXt": png(
        (b"iTXt", b"Raw profile type exif\x00\x01" + bytes(3) + zlib.compress(profile(b"exif", block())))
    ),
    "PNG, words": png((b"tEXt", f"exif:GPSLatitude\x00{LATITUDE}".encode())),
    "WebP, EXIF": webp(b"EXIF", block()),
    "WebP, EXIF with its mark": webp(b"EXIF", block(mark=True)),
    "WebP, XMP": webp(b"XMP ", IN_XMP),
    "TIFF, GPS directory": tiff(exif=block(mark=True)),
    "TIFF, XMP": tiff(tiffinfo={700: IN_XMP}),
    "TIFF, image resources": tiff(tiffinfo={34377: in_resources(0x0422, block()).removeprefix(jpeg.PHOTOSHOP_MARK)}),
    "HEIC, Exif": heif(block(mark=True)),
    "HEIC, Exif without its mark": heif(block()),
    "HEIC, Exif unsorted": heif(block(">", turned=True)),
    "HEIC, XMP": heif(IN_XMP),
    "GIF, XMP": picture("GIF") + IN_XMP,
    "a film's places": b"moov\xa9xyz\x00\x12\x15\xc7+59.2622+034.2622/ meta +59.2622+034.2622+012.300/ loci"
    + bytes(4) + b"\x15\xc7home\x00\x00" + b"\x00\x3b\x43\x20" * 3,
}  # fmt: skip

RATIONALS = [b"".join(number.to_bytes(4, order) + (1).to_bytes(4, order) for number in (59, 26, 2234))
             for order in ("little", "big")]  # fmt: skip
IN_BYTES = re.compile(
    b"|".join(
        map(
            re.escape,
            [
                LATITUDE.encode(),
                LATITUDE.encode("utf-16-le"),
                block(mark=True).hex().encode()[200:],
                b"9.2622",
                b"\x3b\x43\x20",
                *RATIONALS,
            ],
        )
    )
)


def says_a_place(data: bytes) -> list[str]:
    """What exiv2, Pillow and a search of all bytes find of the place."""
    found = [match[0].hex() for match in IN_BYTES.finditer(data)]
    exiv2.LogMsg.setLevel(exiv2.LogMsg.Level.mute)
    try:
        image = exiv2.ImageFactory.open(data)
        image.readMetadata()
        found += [datum.key() for datum in (*image.exifData(), *image.xmpData()) if "GPS" in datum.key()]
    except Exception:  # noqa: BLE001  # exiv2 does not open each of these
        found += []
    try:
        with Image.open(io.BytesIO(data)) as opened:
            texts = " ".join(str(text) for text in getattr(opened, "text", {}).values())
            found += [str(key) for key in opened.getexif().get_ifd(0x8825)]
            found += ["text"] if LATITUDE in texts or block().hex()[200:] in texts else []
    except OSError:
        found += []
    return found


def joined(made: picture_files.Rewrite, data: bytes) -> bytes:
    return b"".join(piece if isinstance(piece, bytes) else data[piece[0] : sum(piece)] for piece in made.pieces)


def pixels(data: bytes) -> bytes:
    try:
        with Image.open(io.BytesIO(data)) as opened:
            return opened.tobytes()
    except OSError:
        return data[:4]


@pytest.mark.parametrize("shape", [*JPEGS, *OTHERS])
def test_a_file_leaves_without_its_place_and_with_everything_else(shape: str) -> None:
    data = (JPEGS | OTHERS)[shape]
    source = io.BytesIO(data)
    assert says_a_place(data) or "compressed" in shape or "XMP, damaged" in shape
    made = picture_files.without_place(source)
    assert not picture_files.is_whole(made, source)
    after = joined(made, data)
    assert says_a_place(after) == []
    assert pixels(after) == pixels(data)
    prove_without_place(source, io.BytesIO(after))
    if b"own:kept" in data and "damaged" not in shape:
        assert b"own:kept" in after
    if b"from the scanner" in data and "thumbnail" not in shape:
        assert b"from the scanner" in after and b"2026:03:01 12:00:00" in after


CAPTION = Embedding(xmp=(("dc:source", Text("TRA-0001")),), remove=("exif:GPSLatitude",))


@pytest.mark.parametrize("shape", [*JPEGS, *OTHERS])
def test_no_family_copy_carries_it(shape: str) -> None:
    data = (JPEGS | OTHERS)[shape]
    try:
        after = joined(picture_files.rewrite(io.BytesIO(data), CAPTION), data)
        assert picture_files.verify(io.BytesIO(data), io.BytesIO(after), CAPTION) == []
    except ByteFault:
        try:
            after = joined(picture_files.copy_without_place(io.BytesIO(data)), data)
        except ByteFault:
            assert shape == "XMP, damaged"  # refused with a sentence
            return
    assert says_a_place(after) == []
    assert pixels(after) == pixels(data)


def test_what_says_no_place_is_the_very_same(files: dict[str, bytes]) -> None:
    plain = {name: data for name, data in files.items() if "exif" not in name}
    plain["XMP"] = with_segments((jpeg.APP1, jpeg.XMP_MARK + packet()), (jpeg.APP13, in_resources(0x0404, b"")))
    plain["a keyword like one"] = with_segments(
        (jpeg.APP1, jpeg.XMP_MARK + packet("<own:a xmlns:own='u'>geology</own:a>"))
    )
    plain["a damaged one"] = with_segments((jpeg.APP1, jpeg.XMP_MARK + b"<x:xmpmeta georg"))
    for data in plain.values():
        source = io.BytesIO(data)
        assert picture_files.is_whole(picture_files.without_place(source), source)


REFUSED = {
    "XMP that cannot be emptied": b"HEIC " + IN_XMP.replace(b"</rdf:RDF>", b""),
    "words": b"MTL0 GPSLongitude=24,45E",
    "words of two bytes a letter": "GPSLatitude".encode("utf-16-le"),
    "XMP of a HEIC, compressed": b"\x00\x00\x00\x18ftypheic" + b"mime\x00application/rdf+xml\x00deflate\x00",
    "Exif of a JPEG XL, compressed": b"\x00\x00\x00\x0cJXL \r\n\x87\n\x00\x00\x00\x20brobExif" + bytes(20),
    "a damaged PNG": png((b"tEXt", b"Comment\x00x"))[:-20],
}


@pytest.mark.parametrize("why", REFUSED)
def test_what_cannot_be_cleaned_is_refused(why: str) -> None:
    with pytest.raises(ByteFault) as caught:
        picture_files.without_place(io.BytesIO(REFUSED[why]))
    assert caught.value.clause


def test_image_resources_that_are_damaged_go_where_they_may_say_one(files: dict[str, bytes]) -> None:
    data = with_segments((jpeg.APP13, in_resources(0x0422, block())[:-8]))
    made = picture_files.without_place(io.BytesIO(data))
    assert "damaged" in made.reports[0] and says_a_place(joined(made, data)) == []


def test_a_keyword_of_iim_goes_and_the_others_stay() -> None:
    """A machine tag in 2:25 (IIM 4.2; common practice, no source)."""
    datasets = [(2, 25, b"net"), (2, 25, f"geo:lat={LATITUDE}".encode()), (2, 120, b"from the scanner")]
    data = with_segments((jpeg.APP13, in_resources(0x0404, b"".join(
        b"\x1c" + bytes(dataset[:2]) + len(dataset[2]).to_bytes(2, "big") + dataset[2] for dataset in datasets
    ))))  # fmt: skip
    for after in (
        joined(picture_files.without_place(io.BytesIO(data)), data),
        joined(picture_files.rewrite(io.BytesIO(data), CAPTION), data),
    ):
        assert picture_files.read(io.BytesIO(after)).iim[2, 25] == ("net",)
        assert picture_files.read(io.BytesIO(after)).iim[2, 120] == ("from the scanner",)


def test_a_proof_fails_where_a_picture_has_changed_or_a_place_is_left() -> None:
    data = JPEGS["Exif"]
    clean = joined(picture_files.without_place(io.BytesIO(data)), data)
    for wrong in (data, clean[:-9] + bytes(7) + clean[-2:]):
        with pytest.raises(ByteFault):
            prove_without_place(io.BytesIO(data), io.BytesIO(wrong))
    heic = OTHERS["HEIC, Exif"]
    prove_without_place(io.BytesIO(heic), io.BytesIO(joined(picture_files.without_place(io.BytesIO(heic)), heic)))


def test_marks_on_the_border_of_two_windows_are_seen(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(places_unread, "WINDOW", 64)
    for before in range(50, 70):
        data = bytes(before) + IN_XMP + bytes(40) + block()
        after = places_unread.cleaned(data)
        assert says_a_place(after) == [] and len(after) == len(data)


def test_what_only_looks_like_a_structure_is_left(files: dict[str, bytes]) -> None:
    for data in (b"II*\x00\xff\xff\xff\xff", b"II*\x00\x08\x00\x00\x00\x02\x00" + b"\xff" * 40, b"MM\x00*" + bytes(60)):
        assert places_unread.cleaned(b"picture" + data) == b"picture" + data


def webp_with(kind: bytes, body: bytes) -> bytes:
    data = webp(b"EXIF", block())
    inner = data[8:] + kind + len(body).to_bytes(4, "little") + body + bytes(len(body) % 2)
    return b"RIFF" + len(inner).to_bytes(4, "little") + inner


UNKNOWN = {
    "PNG, an unknown chunk": png((b"prVt", block())),
    "WebP, an unknown chunk": webp_with(b"prvt", block()),
}


@pytest.mark.parametrize("shape", UNKNOWN)
def test_an_unknown_chunk_that_says_a_place_keeps_the_caption_out(shape: str) -> None:
    """It is written over where its length may stay, but no copy that we caption carries it."""
    with pytest.raises(ByteFault, match="says where the file was made"):
        picture_files.rewrite(io.BytesIO(UNKNOWN[shape]), CAPTION)
    if shape.startswith("WebP"):
        after = joined(picture_files.copy_without_place(io.BytesIO(UNKNOWN[shape])), UNKNOWN[shape])
        assert says_a_place(after) == []


def test_an_unknown_chunk_that_hides_a_place_in_a_compressed_stream_goes() -> None:
    """Such as the proposal of a compressed eXIf: a method, a size, a stream of zlib. Another stream stays."""
    for at, hidden in enumerate((block(), IN_XMP, b"own:kept")):
        body = b"\x78\x9cno" + len(hidden).to_bytes(4, "big") + zlib.compress(hidden)
        data = png((b"zxIf", body))
        made = picture_files.rewrite(io.BytesIO(data), CAPTION)
        after = joined(made, data)
        assert (body in after) == (at == 2) and (png_texts.LEFT_OUT in made.reports) == (at < 2)
        assert pixels(after) == pixels(data)
        assert picture_files.verify(io.BytesIO(data), io.BytesIO(after), CAPTION) == []


def test_a_place_that_stands_in_the_picture_itself_is_not_taken_out() -> None:
    """A damaged TIFF whose GPS value lies in a strip: written over, the picture would not be what it was."""
    data = OTHERS["TIFF, GPS directory"]
    structure = exif.block(data)
    main = structure.directory(structure.first)
    strip = structure.numbers(main.get(273))[0]  # type: ignore[arg-type]  # the tag of the strips' offsets
    gps = structure.directory(structure.numbers(main.get(0x8825))[0])  # type: ignore[arg-type]  # it has one
    at = gps.get(2).at  # type: ignore[union-attr]  # the latitude
    damaged = data[: at + 8] + structure.pack(strip, 4) + data[at + 12 :]
    with pytest.raises(ByteFault, match="stands in the picture"):
        picture_files.rewrite(io.BytesIO(damaged), CAPTION)
    cleaned = joined(picture_files.without_place(io.BytesIO(damaged)), damaged)
    with pytest.raises(ByteFault, match="Without its place"):
        prove_without_place(io.BytesIO(damaged), io.BytesIO(cleaned))


def test_a_packet_that_grows_when_it_is_emptied_is_refused() -> None:
    """One apostrophe of another kind in every attribute grows to six letters (XML 1.0, 2.4)."""
    grown = "".join(f" own:a{number}='&#34;'" for number in range(9)).replace("&#34;", '"' * 40)
    body = (
        f"<rdf:RDF xmlns:rdf='{NAMESPACES['rdf']}' xmlns:own='urn:own'><rdf:Description xmlns:geo='urn:geo' geo:lat='1'"
        f"{grown}/></rdf:RDF>"
    )
    with pytest.raises(ByteFault, match="cannot be emptied"):
        places_unread.cleaned(body.encode())


def test_a_packet_that_is_cut_off_is_refused_where_it_names_a_place_and_else_left() -> None:
    start = f"<rdf:RDF xmlns:rdf='{NAMESPACES['rdf']}'><rdf:Description "
    with pytest.raises(ByteFault, match="XMP that is damaged"):
        places_unread.cleaned(f"{start} decimalLatitude='59'".encode())
    assert places_unread.cleaned(f"{start} geology='59'".encode()) == f"{start} geology='59'".encode()


def test_a_directory_with_values_in_its_midst_keeps_its_pointer_to_an_emptied_place() -> None:
    """GPS behind a value that lies on the directory: only the place is written over (DC-008, 4.6.2)."""
    gps = b"\x01\x00\x02\x00\x05\x00\x03\x00\x00\x00\x44\x00\x00\x00" + bytes(4) + RATIONALS[0]

    def entry(tag: int, kind: int, count: int, value: int) -> bytes:
        return b"".join(
            number.to_bytes(size, "little") for number, size in ((tag, 2), (kind, 2), (count, 4), (value, 4))
        )

    main = b"\x03\x00" + entry(0x011A, 5, 1, 12) + entry(0x0112, 3, 1, 6) + entry(0x8825, 4, 1, 50) + bytes(4)
    data = b"II*\x00\x08\x00\x00\x00" + main + gps
    for before in (data, exif.MARK + data):
        after = places_unread.cleaned(before)
        assert len(after) == len(before)
        assert set(says_a_place(after)) <= {"Exif.Image.GPSTag"}  # the pointer alone, which leads to nothing
    assert exif.is_block(exif.block(data)) and says_a_place(data)
