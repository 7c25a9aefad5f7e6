"""Runs of bytes with their places (rules of our own, no outside source)."""

import io

import pytest

from boxlore.core.errors import ByteFault
from boxlore.formats.binary import COMPARE_BYTES, patched, read_at, same_bytes, size_of


def test_a_file_that_ends_too_early_is_refused_with_its_place() -> None:
    assert read_at(io.BytesIO(b"abcdef"), 2, 3, "a clause") == b"cde"
    with pytest.raises(ByteFault) as caught:
        read_at(io.BytesIO(b"abcdef"), 4, 5, "a clause")
    assert (caught.value.offset, caught.value.clause) == (6, "a clause")
    assert "3 bytes too early" in str(caught.value)


def test_size() -> None:
    assert size_of(io.BytesIO(b"abc")) == 3


PATCHES = [
    (0, 6, [], [(0, 6)]),
    (0, 6, [(2, b"XY")], [(0, 2), b"XY", (4, 2)]),
    (0, 6, [(4, b"YZ"), (0, b"A")], [b"A", (1, 3), b"YZ"]),
    (3, 4, [(3, b"abcd")], [b"abcd"]),
]


@pytest.mark.parametrize(("offset", "length", "patches", "pieces"), PATCHES)
def test_patched(offset: int, length: int, patches: list[tuple[int, bytes]], pieces: list[object]) -> None:
    assert patched(offset, length, patches) == pieces


def test_same_bytes_compares_every_byte_and_notices_an_early_end() -> None:
    long = bytes(range(256)) * (COMPARE_BYTES // 128)
    other = bytearray(long)
    other[-1] ^= 1
    one = io.BytesIO(b"xx" + long)
    assert same_bytes(one, 2, io.BytesIO(long), 0, len(long))
    assert not same_bytes(one, 2, io.BytesIO(bytes(other)), 0, len(long))
    assert not same_bytes(one, 2, io.BytesIO(long[:-1]), 0, len(long))
    assert not same_bytes(io.BytesIO(long[:-1]), 0, io.BytesIO(long), 0, len(long))
    assert same_bytes(one, 0, io.BytesIO(b""), 0, 0)
