"""What is worked on are the bytes that were hashed (SHA-256 by hashlib), whatever is written meanwhile."""

import hashlib
from pathlib import Path

import pytest

from boxlore.disk.as_hashed import IN_MEMORY, as_hashed
from boxlore.disk.writing import Piece, write_hashed, write_pieces


@pytest.mark.parametrize("size", [0, 1, IN_MEMORY - 1, IN_MEMORY, IN_MEMORY + 3])
def test_bytes_stay_as_they_were_hashed(tmp_path: Path, size: int) -> None:
    data = bytes(range(251)) * (size // 251 + 1)
    path = tmp_path / "a.tif"
    path.write_bytes(data[:size])
    with open(path, "rb") as file, as_hashed(file, tmp_path / "not there yet") as (held, digest):
        with open(path, "r+b") as other:
            other.write(b"other bytes")
        assert digest == hashlib.sha256(data[:size]).hexdigest()
        assert held.read() == data[:size]
        pieces: list[Piece] = [b"new", (size // 2, size - size // 2)]
        with open(tmp_path / "copy", "wb") as out:
            write_pieces(pieces, held, out)
        with open(tmp_path / "hashed", "wb") as out:
            assert write_hashed(pieces, held, out) == hashlib.sha256(b"new" + data[size // 2 : size]).hexdigest()
    assert (tmp_path / "copy").read_bytes() == b"new" + data[size // 2 : size] == (tmp_path / "hashed").read_bytes()
    assert sorted(each.name for each in tmp_path.iterdir()) == ["a.tif", "copy", "hashed"]
