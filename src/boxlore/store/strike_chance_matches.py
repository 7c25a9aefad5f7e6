"""Whether short words in the bytes of a file are words, or are spelled by chance by those of a picture or a sound.

Rule kept: `Ida` stands by chance two or three times in five megabytes of compressed pixels, a piece of eight bytes
never. So a short piece counts only as a whole word, and where its bytes are text: among twelve others that are, or
alone in a field, which ends in a zero byte, begins with its length (IIM 4.2, 1.6; JPEG, T.81 B.1.1.4), or is the file.
"""

import re

CHANCE_BYTES = 8
"""A piece of so many bytes, in UTF-16 of as many letters, stands nowhere by chance."""

_AROUND = 12
_TEXT = rb"(?:[\t\n\r\x20-\x7e]|[\xc2-\xdf][\x80-\xbf]|[\xe0-\xef][\x80-\xbf]{2})*"
_TEXT_BEFORE, _TEXT_BEHIND = re.compile(_TEXT + rb"\Z"), re.compile(_TEXT)


def around(data: bytes, start: int, length: int) -> tuple[bytes, bytes]:
    """The bytes before and behind a hit that decide; short where the data begins or ends."""
    return data[max(0, start - 2 * _AROUND) : start], data[start + length : start + length + 2 * _AROUND]


def is_word(before: bytes, needle: bytes, after: bytes) -> bool:
    """Whether a short hit between these bytes is a word of a text. In UTF-16 every other byte may be zero."""
    wide = b"\0" in needle[:2]
    if len(needle) >= CHANCE_BYTES * (2 if wide else 1):
        return True
    if wide:
        before = before.removesuffix(b"\xff\xfe").removesuffix(b"\xfe\xff").replace(b"\0", b"")
        after = after.replace(b"\0", b"")
    if _is_letter(before[-1:]) or _is_letter(after[:1]):
        return False
    if not wide and _is_field(before, needle, after):
        return True
    texts = (_TEXT_BEFORE.search(before), _TEXT_BEHIND.match(after))
    return sum(len(text[0]) for text in texts if text) >= _AROUND


def _is_letter(byte: bytes) -> bool:
    return byte.isalpha() or byte >= b"\x80"


def _is_field(before: bytes, needle: bytes, after: bytes) -> bool:
    """Whether the needle alone is a field: closed by zeros or the ends of the file, or told by its length."""
    if after[:1] in (b"", b"\0") and before[-1:] in (b"", b"\0"):
        return True
    return before[-2:] == len(needle).to_bytes(2, "big")
