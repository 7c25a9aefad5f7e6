"""The texts of a colour profile (ICC.1:2022, clauses 7.3 and 10): its description, maker, copyright and others.

A scanner's or a person's own profile may be called after somebody. The numbers of a profile are no texts; a tag of a
type that is not known makes the profile one that cannot be opened wholly.
"""

from collections.abc import Iterator

from boxlore.core.errors import ByteFault

CLAUSE = "ICC.1, 7.3"
HEADER = 128
MOST_TAGS = 256
NUMBERS = frozenset(
    kind.encode().ljust(4)
    for kind in (
        "XYZ bfd chrm cicp clro curv crdi dtim mft1 mft2 mAB mBA meas mpet para pseq psid rcs2 sf32 sig uf32 ui08 "
        "ui16 ui32 ui64 view vcgt scrn devs ndin MS10 mmod vcgp"
    ).split()
)
"""Types of numbers and signatures (ICC.1, clause 10; ICC.2; the last are makers' own tables, from memory)."""

TEXTS = (b"text", b"desc", b"mluc", b"dict", b"utf8", b"ncl2", b"clrt", b"utf1", b"ZXML", b"pseq", b"data")


def texts(profile: bytes) -> Iterator[str]:
    """Every text of a profile. Raises ByteFault for one that is cut off, or has a tag of an unknown type.

        profile = header(128) count *(signature offset size) *data     (ICC.1, 7.3: 4 bytes each, big-endian)
        data    = type(4) 0000 value                                   (10.1)

    A value that holds text is read as 8-bit and as 16-bit letters, since both stand in one (`desc`).
    """
    count = int.from_bytes(profile[HEADER : HEADER + 4], "big")
    table = profile[HEADER + 4 :][: 12 * count]
    if count > MOST_TAGS or len(table) != 12 * count:
        raise ByteFault(HEADER, "This colour profile is cut off", CLAUSE)
    for at in range(0, len(table), 12):
        offset, size = (int.from_bytes(table[at + start : at + start + 4], "big") for start in (4, 8))
        data = profile[offset : offset + size]
        if len(data) != size:
            raise ByteFault(HEADER + 4 + at, "This colour profile is cut off", CLAUSE)
        if data[:4] in TEXTS:
            yield data[8:].replace(b"\x00", b"").decode("latin-1")
            yield _sixteen(data[8:])
            yield _sixteen(data[9:])
        elif data[:4] not in NUMBERS:
            raise ByteFault(offset, f"This colour profile holds a value of an unknown type {data[:4]!r}", CLAUSE)


def _sixteen(data: bytes) -> str:
    return data[: len(data) // 2 * 2].decode("utf-16-be", "replace")
