"""Every text that a picture or document for outside may hold is read, and one that holds more is refused.

The carriers are written by Pillow, pikepdf, zipfile, or here by the standards named in
`formats/picture_texts` and `formats/pdf`.
"""

import io
import struct
import zipfile
import zlib

import pikepdf
import pytest
from PIL import Image, ImageCms
from tests.formats.conftest import FILES, PROFILE, captioned, exif_block, frames, picture, png_chunk
from tests.formats.test_picture_alone import CARRIERS, PLANTED, WORD, XMP, jpeg, png

from boxlore.core.errors import ByteFault
from boxlore.formats import colour_profiles, document_texts, picture_texts


def described(words: str) -> bytes:
    """A colour profile with another description: an sRGB one with its first text overwritten (ICC.1, 10.15)."""
    at = PROFILE.index("sRGB".encode("utf-16-be"))
    return PROFILE[:at] + words[:8].encode("utf-16-be") + PROFILE[at + 16 :]


def resources(*, name: bytes = b"\x00\x00", ident: int = 0x0404, data: bytes) -> bytes:
    padded = data + b"\x00" * (len(data) % 2)
    return b"Photoshop 3.0\x008BIM" + struct.pack(">H", ident) + name + struct.pack(">I", len(data)) + padded


def dataset(record: int, number: int, value: bytes) -> bytes:
    return bytes((0x1C, record, number)) + struct.pack(">H", len(value)) + value


def exif_with(tag: int, value: str) -> bytes:
    exif = Image.Exif()
    exif[tag] = value
    return exif.tobytes()


PLAIN = picture("JPEG")
WEBP_PROFILE = picture("WEBP", icc_profile=described(WORD))
READ = {
    "a comment": jpeg((0xFE, PLANTED), data=PLAIN),
    "XMP": jpeg((0xE1, b"http://ns.adobe.com/xap/1.0/\x00" + XMP), data=PLAIN),
    "an attribute of XMP": jpeg((0xE1, b"http://ns.adobe.com/xap/1.0/\x00" + f"<a b='{WORD}'/>".encode()), data=PLAIN),
    "extended XMP": jpeg((0xE1, b"http://ns.adobe.com/xmp/extension/\x00" + b"0" * 32 + bytes(8) + XMP), data=PLAIN),
    "any dataset of IIM": jpeg((0xED, resources(data=dataset(3, 99, PLANTED))), data=PLAIN),
    "Exif": picture("JPEG", exif=exif_with(0x013B, WORD)),
    "a profile": picture("JPEG", icc_profile=described(WORD)),
    "a text of a PNG": png(png_chunk(b"tEXt", b"Comment\x00" + PLANTED)),
    "the keyword of a text": png(png_chunk(b"tEXt", PLANTED + b"\x00words")),
    "a compressed text": png(png_chunk(b"zTXt", b"Comment\x00\x00" + zlib.compress(PLANTED))),
    "Exif of a PNG": picture("PNG", exif=exif_with(0x8298, WORD)),
    "the name of a PNG's profile": png(png_chunk(b"iCCP", PLANTED + b"\x00\x00" + zlib.compress(PROFILE))),
    "a PNG's profile": picture("PNG", icc_profile=described(WORD)),
    "a WebP's profile": WEBP_PROFILE,
    "a TIFF's text": CARRIERS["TIFF end"].replace(PLANTED, b"") + PLANTED,
    "a TIFF's XMP": captioned(FILES["tiff"]),
    "a TIFF's profile": picture("TIFF", icc_profile=described(WORD)),
    "a WebP's XMP": captioned(FILES["webp"]),
}


@pytest.mark.parametrize("name", READ)
def test_a_text_is_read_wherever_it_stands(name: str) -> None:
    words = " ".join(text.words for text in picture_texts.texts(io.BytesIO(READ[name])))
    wanted = "Helmi" if name.endswith("XMP") and "'s" in name else WORD
    assert wanted in words


ORIENTED = struct.pack("<HHHIHH", 1, 0x0112, 3, 1, 1, 0)
TWO_DIRECTORIES = b"Exif\x00\x00II*\x00" + struct.pack("<I", 8) + ORIENTED + struct.pack("<I", 26) + ORIENTED + bytes(4)
MORE = {
    "Exif of a camera": picture("JPEG", exif=exif_block()),
    "a smaller picture in Exif": jpeg((0xE1, TWO_DIRECTORIES), data=PLAIN),
    "a resource that is no caption": jpeg((0xED, resources(ident=0x0409, data=b"thumb")), data=PLAIN),
    "a chunk that nobody knows": png(png_chunk(b"naMe", PLANTED)),
    "a film": frames("WEBP", duration=100),
    "an unknown tag": CARRIERS["TIFF unknown tag"],
    "a smaller page": CARRIERS["TIFF smaller picture"],
    "a profile cut off": picture("JPEG", icc_profile=PROFILE[:200]),
    **{name: CARRIERS[name] for name in ("JFXX thumbnail", "unknown segment", "JPEG end", "WebP unknown", "WebP end")},
}  # fmt: skip


@pytest.mark.parametrize("name", MORE)
def test_a_picture_that_holds_more_is_refused(name: str) -> None:
    with pytest.raises(ByteFault):
        list(picture_texts.texts(io.BytesIO(MORE[name])))


def profile_of(kind: bytes, value: bytes) -> bytes:
    return bytes(128) + struct.pack(">I4sII", 1, b"desc", 144, len(value) + 8) + kind + bytes(4) + value


def test_the_texts_of_a_profile() -> None:
    assert any("sRGB" in words for words in colour_profiles.texts(PROFILE))
    assert WORD in next(colour_profiles.texts(profile_of(b"text", PLANTED)))
    assert list(colour_profiles.texts(profile_of(b"curv", PLANTED))) == []
    for wrong in (profile_of(b"odd ", PLANTED), profile_of(b"text", PLANTED)[:-1], PROFILE[:140]):
        with pytest.raises(ByteFault, match="This colour profile"):
            list(colour_profiles.texts(wrong))
    assert ImageCms.ImageCmsProfile(io.BytesIO(described(WORD))).profile.profile_description


def pdf(*, locked: bool = False, attached: bool = False) -> bytes:
    """A page with a title, a bookmark, a packet, and a picture that has a comment."""
    made, out = pikepdf.new(), io.BytesIO()
    page = made.add_blank_page()
    page.Alt = pikepdf.String("an alternative text")
    page.Odd = pikepdf.Array([pikepdf.String("in an array"), pikepdf.String(b"\xff\x00")])
    picture_inside = pikepdf.Stream(made, READ["a comment"])
    picture_inside.Filter = pikepdf.Name.DCTDecode
    page.Picture = made.make_indirect(picture_inside)
    with made.open_metadata() as metadata:
        metadata["dc:creator"] = ["the creator"]
    made.docinfo["/Subject"] = "the subject"
    with made.open_outline() as outline:
        outline.root.append(pikepdf.OutlineItem("a bookmark", 0))
    if attached:
        made.attachments["a.txt"] = b"the bay"
    made.save(out, encryption=pikepdf.Encryption(owner="a", user="b") if locked else None)
    return out.getvalue()


def test_every_text_of_a_pdf() -> None:
    words = " ".join(text.words for text in document_texts.texts("a.pdf", io.BytesIO(pdf())))
    for wanted in ("an alternative text", "in an array", "the subject", "the creator", "a bookmark", WORD):
        assert wanted in words
    for wrong in (pdf(locked=True), pdf(attached=True), pdf()[:300]):
        with pytest.raises(ByteFault, match="This PDF"):
            list(document_texts.texts("a.pdf", io.BytesIO(wrong)))


def test_the_list_that_a_killed_run_of_copies_leaves_is_read_as_text() -> None:
    listed = io.BytesIO(b"0f" * 32 + b" outside box-1/TRA-0001_f.jpg\n")
    assert [text.words for text in document_texts.texts(".copies-being-made", listed)] == [
        listed.getvalue().decode().strip()
    ]


def archive(*, comment: bytes = b"") -> bytes:
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w") as made:
        made.comment = b"of the archive"
        made.mkdir("folder")
        member = zipfile.ZipInfo("folder/a.txt")
        member.comment = comment
        made.writestr(member, f"for {WORD}")
    return out.getvalue()


def test_every_member_of_an_archive() -> None:
    texts = list(document_texts.texts("a.zip", io.BytesIO(archive())))
    assert {"of the archive", "folder/a.txt", f"for {WORD}"} <= {text.words for text in texts}
    with pytest.raises(ByteFault, match="holds more than itself"):
        list(document_texts.texts("a.zip", io.BytesIO(archive(comment=b"odd"))))
