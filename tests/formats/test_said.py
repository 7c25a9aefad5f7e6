"""Whatever a scan says beside its picture is read, whichever slot of whichever carrier holds it.

The carriers are written by Pillow and tifffile, or in test_picture_alone by the standards that it names. Regions are
those of the Metadata Working Group's guidelines 2.0 (namespace from memory).
"""

import io

import numpy
import pytest
import tifffile
from PIL import Image
from tests.formats.conftest import FILES, picture
from tests.formats.test_picture_alone import CARRIERS, PLANTED, WORD, jpeg
from tests.formats.test_picture_texts import described, exif_with

from boxlore.formats import said

REGIONS = f"""<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
<rdf:Description xmlns:mwg-rs="http://www.metadataworkinggroup.com/schemas/regions/"><mwg-rs:Regions><mwg-rs:RegionList>
<rdf:Bag><rdf:li mwg-rs:Name="{WORD}" mwg-rs:Type="Face"/></rdf:Bag></mwg-rs:RegionList></mwg-rs:Regions>
</rdf:Description></rdf:RDF></x:xmpmeta>""".encode()
HISTORY = REGIONS.replace(b"mwg-rs:Name", b"xmpMM:DocumentID").replace(
    b'xmlns:mwg-rs="', b'xmlns:xmpMM="http://ns.adobe.com/xap/1.0/mm/" xmlns:mwg-rs="'
)


def exif_inner(tag: int, value: bytes | str) -> bytes:
    exif = Image.Exif()
    exif.get_ifd(0x8769)[tag] = value
    return exif.tobytes()


def with_two_pages() -> bytes:
    out = io.BytesIO()
    with tifffile.TiffWriter(out) as writer:
        for description in ("", WORD):
            writer.write(numpy.zeros((64, 64), "uint8"), description=description, metadata=None)
    return out.getvalue()


READ = {
    **{name: CARRIERS[name] for name in (
        "comment", "XMP", "Exif", "image resources", "tEXt", "zTXt", "iTXt", "compressed iTXt", "WebP XMP",
        "TIFF texts", "TIFF XMP and IIM", "TIFF words for a system", "TIFF Exif",
    )},
    "a region of a face": jpeg((0xE1, b"http://ns.adobe.com/xap/1.0/\x00" + REGIONS)),
    "a comment of a user, 8 bits": picture("JPEG", exif=exif_inner(0x9286, b"ASCII\0\0\0" + PLANTED)),
    "a comment of a user, 16 bits": picture("JPEG", exif=exif_inner(0x9286, b"UNICODE\0" + WORD.encode("utf-16-be"))),
    "an owner": picture("JPEG", exif=exif_inner(0xA430, WORD)),
    "a title for a system": picture("JPEG", exif=exif_with(0x9C9B, WORD.encode("utf-16-le"))),  # type: ignore[arg-type]
    "Exif of a WebP": picture("WEBP", exif=exif_with(0x013B, WORD)),
    "Exif of a PNG": picture("PNG", exif=exif_with(0x013B, WORD)),
    "the profile of a JPEG": picture("JPEG", icc_profile=described(WORD)),
    "the profile of a PNG": picture("PNG", icc_profile=described(WORD)),
    "the profile of a WebP": picture("WEBP", icc_profile=described(WORD)),
    "the profile of a TIFF": picture("TIFF", icc_profile=described(WORD)),
    "the second page": with_two_pages(),
    "a comment that is no UTF-8": jpeg((0xFE, PLANTED + b" \xe4")),
}  # fmt: skip


@pytest.mark.parametrize("name", READ)
def test_a_name_is_read_in_any_slot(name: str) -> None:
    assert WORD in " ".join(said.texts(io.BytesIO(READ[name])))


SILENT = {
    "no picture": PLANTED,
    "an id of a version": jpeg((0xE1, b"http://ns.adobe.com/xap/1.0/\x00" + HISTORY)),
    "the make of a machine": picture("JPEG", exif=exif_with(0x010F, WORD)),
    "damaged Exif": picture("JPEG", exif=b"Exif\0\0" + PLANTED),
    "the picture alone": FILES["baseline"],
}


@pytest.mark.parametrize("name", SILENT)
def test_what_is_no_text_of_a_person_is_passed_over(name: str) -> None:
    assert WORD not in " ".join(said.texts(io.BytesIO(SILENT[name])))


@pytest.mark.parametrize("name", list(READ))
def test_what_the_colour_profile_says_is_told_apart(name: str) -> None:
    """ICC.1 7.2: a profile is of a device, and the same in each of its pictures."""
    texts = [text for text in said.profile_texts(io.BytesIO(READ[name])) if WORD in text]
    assert bool(texts) is name.startswith(("the profile of", "the name of a profile")), (name, texts)
