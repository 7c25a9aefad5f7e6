"""Text chunks of a PNG (Third Edition, 11.3.3) without a place of capture, be it words, XMP or a profile in them.

    tEXt = keyword 00 text
    zTXt = keyword 00 method text
    iTXt = keyword 00 compressed method language 00 translated 00 text

Some writers keep Exif, XMP and IIM in a text, in hexadecimal: `Raw profile type exif`, its name, its length, its bytes
(common practice, no source).
"""

import re
import zlib

from boxlore.core.crosswalk.metadata_values import PLACE_TAKEN_OUT, Embedding
from boxlore.core.errors import ByteFault
from boxlore.formats import exif, exif_copied, image_resources, places_in_texts, places_unread, xmp, xmp_places

XMP_KEYWORD = b"XML:com.adobe.xmp"
_OF_PLACE = re.compile(
    rb"(?<![a-z])(?:geo|gps|location|position|coordinates?|place|address|map)(?![a-z])", re.IGNORECASE
)
"""Names under which a text says where the file was made; PNG registers none (Third Edition, 11.3.3.2)."""
RAW = b"Raw profile type"
CLAUSE = "PNG Third Edition, 5.3"
LEFT_OUT = "A text in the file that tells where it was made was left out."
_STREAM = re.compile(rb"\x78[\x01\x5e\x9c\xda]")
"""The first bytes of a stream of zlib with a window of 32 KiB, at each of the four levels (RFC 1950, 2.2)."""
_PROFILE = re.compile(rb"\s*(\S+)\s+([0-9]+)\s+([0-9a-fA-F\s]*)")


def inflated(data: bytes, at: int) -> bytes:
    """A compressed text. Raises ByteFault, with the offset `at` of its chunk, for a damaged one or one too large."""
    machine = zlib.decompressobj()
    try:
        text = machine.decompress(data, xmp.MOST_BYTES)
    except zlib.error as error:
        raise ByteFault(at, "A compressed text in this file is damaged", CLAUSE) from error
    if machine.unconsumed_tail:
        raise ByteFault(at, f"A compressed text in this file has over {xmp.MOST_BYTES} bytes", CLAUSE)
    return text


def has_compressed_place(data: bytes) -> bool:
    """Whether a stream of zlib (RFC 1950, 2.2) that begins anywhere in data of a kind that we do not know says a place.

    One that is damaged or too large is looked at as far as it goes.
    """
    for match in _STREAM.finditer(data):
        machine, text = zlib.decompressobj(), b""
        try:
            text = machine.decompress(data[match.start() :], xmp.MOST_BYTES)
            if places_unread.cleaned(text, only_place=True, alone=True) != text:
                return True
        except zlib.error:
            continue
        except ByteFault:
            return True
    return False


def without_place(kind: bytes, data: bytes, *, only_place: bool) -> tuple[bytes, list[str]]:
    """The data of a text chunk without a place, the very same where it has none; nothing, with a sentence, where it
    cannot be taken out, nor the text be read.
    """
    try:
        head, text, compressed = parted(kind, data)
        cleaned = _cleaned(head, text, only_place=only_place)
    except ByteFault:
        return b"", [LEFT_OUT]  # it cannot be read and may hold one
    if cleaned == text:
        return data, []
    named = head.partition(b"\x00")[0].decode("latin-1")
    reports = (
        [places_in_texts.said(f"the text “{named}” of the file")] if places_in_texts.patches(text, alone=True) else []
    )
    return head + (zlib.compress(cleaned) if compressed else cleaned), reports


def parted(kind: bytes, data: bytes) -> tuple[bytes, bytes, bool]:
    """What stands before the text, the text, and whether it is compressed. A tIME chunk has no text."""
    keyword, zero, rest = data.partition(b"\x00")
    if kind == b"zTXt":
        return keyword + zero + rest[:1], inflated(rest[1:], 0), True
    if kind == b"iTXt" and rest[2:].count(b"\x00") >= 2:
        language, translated, text = rest[2:].split(b"\x00", 2)
        head = keyword + zero + rest[:2] + language + b"\x00" + translated + b"\x00"
        compressed = rest[:1] == b"\x01"
        return head, inflated(text, 0) if compressed else text, compressed
    return keyword + zero, rest, False


def _cleaned(head: bytes, text: bytes, *, only_place: bool) -> bytes:
    """The text without a place. Raises ByteFault where it cannot be taken out."""
    keyword = head.partition(b"\x00")[0]
    if keyword.startswith(RAW):
        match = _PROFILE.fullmatch(text)
        digits = b"".join(match[3].split()) if match else b"0"
        if match and len(digits) % 2 == 0:
            profile = bytes.fromhex(digits.decode("ascii"))
            cleaned = _profile(profile, only_place=only_place)
            return text if cleaned == profile else _spelled(match[1], cleaned)
        if keyword.endswith((b"exif", b"APP1", b"xmp")):
            raise ByteFault(0, "A profile in a text of this file is damaged", CLAUSE)
    if xmp_places.NAMES_IN_BYTES.search(keyword) or _OF_PLACE.search(keyword):
        raise ByteFault(0, "This text tells where the file was made", CLAUSE)
    return places_unread.cleaned(text, only_place=only_place, alone=keyword != XMP_KEYWORD)


def _profile(profile: bytes, *, only_place: bool) -> bytes:
    """A profile without a place: Exif, image resources, or whatever it is."""
    if profile.startswith((exif.MARK, *exif.HEADERS)):
        cleaned, left_out = exif_copied.captioned_or_left_out(profile, PLACE_TAKEN_OUT if only_place else Embedding())
        if not cleaned:
            raise ByteFault(0, left_out[0], CLAUSE)
        return cleaned
    if profile.startswith(b"8BIM"):
        return image_resources.without_place(profile)[0]
    return places_unread.cleaned(profile, only_place=only_place)


def _spelled(name: bytes, profile: bytes) -> bytes:
    """A profile as text: a line for its name, one for its length, and 36 bytes in hexadecimal on each further one."""
    lines = [profile[at : at + 36].hex().encode() for at in range(0, len(profile), 36)]
    return b"\n".join((b"", name, b"%8d" % len(profile), *lines, b""))
