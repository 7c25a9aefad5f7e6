"""Files are written whole or not at all (rules of our own; errors of the system by POSIX errno)."""

import errno
import hashlib
from pathlib import Path

import pytest

from boxlore.core.errors import CouldNot
from boxlore.disk.digests import sha256_of
from boxlore.disk.shipped import shipped
from boxlore.disk.unfinished import PART
from boxlore.disk.writing import Piece, could_not, replacing, write_pieces, write_whole


def test_the_same_bytes_are_not_written_again(tmp_path: Path) -> None:
    target = tmp_path / "new" / "caption.txt"
    assert write_whole(target, b"Reval")
    before = target.stat().st_ino
    assert not write_whole(target, b"Reval")
    assert target.stat().st_ino == before
    assert write_whole(target, b"Tallinn") and target.read_bytes() == b"Tallinn"
    assert list(target.parent.iterdir()) == [target]


def test_what_a_killed_run_left_goes_and_a_link_is_not_followed(tmp_path: Path) -> None:
    target, elsewhere = tmp_path / "caption.txt", tmp_path / "elsewhere.txt"
    elsewhere.write_bytes(b"not ours")
    (tmp_path / f"caption.txt{PART}").symlink_to(elsewhere)
    assert write_whole(target, b"Reval")
    assert (target.read_bytes(), elsewhere.read_bytes()) == (b"Reval", b"not ours")
    assert not target.is_symlink()


def test_a_fault_in_the_middle_leaves_the_old_file(tmp_path: Path) -> None:
    target = tmp_path / "caption.txt"
    target.write_bytes(b"old")
    with pytest.raises(ZeroDivisionError), replacing(target) as out:
        out.write(b"half")
        raise ZeroDivisionError
    assert target.read_bytes() == b"old" and list(tmp_path.iterdir()) == [target]


def test_what_the_disk_refuses_is_said_with_what_to_do(tmp_path: Path) -> None:
    (tmp_path / "file").write_bytes(b"")
    (tmp_path / "folder").mkdir()
    refused = {
        tmp_path / "file" / "x": "A file stands where a folder is wanted: {}. Choose another folder.",
        tmp_path / "folder": "A folder stands where a file is wanted: {}. Move it away, or choose another folder.",
        tmp_path / ("x" * 300): "The name is too long for this disk: {}. Choose a folder with a shorter name.",
    }
    for target, sentence in refused.items():
        with pytest.raises(CouldNot) as fault, replacing(target) as out:
            out.write(b"x")
        assert str(fault.value) == f"{sentence.format(target)} Nothing was half-written."
        assert not fault.value.everywhere


EVERYWHERE = [
    (errno.ENOSPC, True),
    (errno.EDQUOT, True),
    (errno.EROFS, True),
    (errno.EACCES, False),
    (errno.EIO, False),
]


@pytest.mark.parametrize(("number", "everywhere"), EVERYWHERE)
def test_a_full_or_closed_disk_would_refuse_the_next_file_too(number: int, everywhere: bool) -> None:
    assert could_not(OSError(number, "x"), Path("a")).everywhere is everywhere


def test_an_error_without_a_sentence_of_ours_keeps_its_own() -> None:
    assert str(could_not(OSError(errno.EIO, "Input/output error"), Path("a"))) == (
        "Input/output error: a. Nothing was half-written."
    )


PIECES: list[tuple[list[Piece], bytes]] = [
    ([b"new ", (3, 4)], b"new 3456"),
    ([(0, 2), b"-", (8, 2), (0, 0)], b"01-89"),
    ([], b""),
]


@pytest.mark.parametrize("mode", ["wb", "ab"])
@pytest.mark.parametrize(("pieces", "written"), PIECES)
def test_pieces_come_in_their_order(tmp_path: Path, mode: str, pieces: list[Piece], written: bytes) -> None:
    """The kernel copies for `wb`; it refuses a file opened to append (Linux, sendfile(2): EINVAL)."""
    (tmp_path / "source").write_bytes(b"0123456789")
    with open(tmp_path / "source", "rb") as source, open(tmp_path / "out", mode) as out:
        write_pieces(pieces, source, out)
    assert (tmp_path / "out").read_bytes() == written


@pytest.mark.parametrize("mode", ["wb", "ab"])
def test_a_source_that_ends_early_is_a_fault(tmp_path: Path, mode: str) -> None:
    (tmp_path / "source").write_bytes(b"0123")
    with (
        open(tmp_path / "source", "rb") as source,
        open(tmp_path / "out", mode) as out,
        pytest.raises(OSError, match="the source ended early"),
    ):
        write_pieces([(2, 3)], source, out)


DIGESTS = [  # FIPS 180-4; NIST's example values for SHA-256
    (b"abc", "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"),
    (b"", "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"),
]


@pytest.mark.parametrize(("data", "digest"), DIGESTS)
def test_digests_of_the_standard(tmp_path: Path, data: bytes, digest: str) -> None:
    (tmp_path / "a").write_bytes(data)
    assert sha256_of(tmp_path / "a") == digest


def test_the_bytes_read_are_counted_and_a_file_that_is_gone_is_said(tmp_path: Path) -> None:
    data = bytes(3 << 20) + b"x"
    (tmp_path / "a").write_bytes(data)
    counts: list[int] = []
    assert sha256_of(tmp_path / "a", counts.append) == hashlib.sha256(data).hexdigest()
    assert sum(counts) == len(data)
    with pytest.raises(CouldNot, match="There is no such file: "):
        sha256_of(tmp_path / "none")


def test_a_folder_that_did_not_come_with_the_program_is_said() -> None:
    assert (shipped("schemas")).is_dir()
    with pytest.raises(CouldNot, match=r"This copy of Boxlore lacks its folder nothing\. Install it again\."):
        shipped("nothing")
