"""Parcels on the disk, opened by independent programs: Python's own `zipfile` and `pyrage`, an implementation of C2SP
age-encryption.org/v1 (the format has no second implementation in the registry that we use)."""

import hashlib
import io
import zipfile
from pathlib import Path

import pyrage
import pytest
from tests.drawn import IN_CI
from tests.every_row import every_row

from boxlore.core.errors import CouldNot, WrongUse
from boxlore.disk import parcel_files
from boxlore.disk.parcel_files import CONTENTS, KEY, MANIFEST, is_locked, pack, unpack

WORDS = "correct horse of Reval"
NAMES = ["parcel.json", "scans/TRA-0001_f.jpg", "papers/a b%.txt", "scans/Käär\n.jpg"]


@pytest.fixture
def scan(tmp_path: Path) -> Path:
    path = tmp_path / "quay.jpg"
    path.write_bytes(bytes(range(256)) * 9000)
    return path


def members(scan: Path) -> list[tuple[str, Path | bytes]]:
    return [(name, scan if name.startswith("scans") else name.encode()) for name in NAMES]


def unpacked(folder: Path) -> dict[str, bytes]:
    return {path.relative_to(folder).as_posix(): path.read_bytes() for path in folder.rglob("*") if path.is_file()}


def opened(path: Path, folder: Path, passphrase: str = "") -> dict[str, bytes]:
    folder.mkdir()
    unpack(path, folder, passphrase)
    return unpacked(folder)


@pytest.fixture
def quick(monkeypatch: pytest.MonkeyPatch) -> None:
    """The passphrase without its computation, which takes a second and half a gigabyte on purpose."""

    def decrypt(data: bytes, passphrase: str) -> bytes:
        words, _, key = data.partition(b"|")
        if words != passphrase.encode():
            raise pyrage.DecryptError("Decryption failed")
        return key

    monkeypatch.setattr(pyrage.passphrase, "encrypt", lambda data, passphrase: passphrase.encode() + b"|" + data)
    monkeypatch.setattr(pyrage.passphrase, "decrypt", decrypt)


@pytest.fixture
def locked(scan: Path, tmp_path: Path, quick: None) -> Path:
    pack(tmp_path / "locked" / "a.parcel", members(scan), WORDS)
    return tmp_path / "locked" / "a.parcel"


def contents(scan: Path) -> dict[str, bytes]:
    return {name: content.read_bytes() if isinstance(content, Path) else content for name, content in members(scan)}


def test_what_was_packed_comes_out(scan: Path, tmp_path: Path) -> None:
    path = tmp_path / "a.parcel"
    steps: list[int] = []
    told = pack(path, members(scan), step=lambda: steps.append(1))
    assert told == hashlib.sha256(path.read_bytes()).hexdigest() and len(steps) == len(NAMES)
    assert not is_locked(path)
    assert opened(path, tmp_path / "out") == contents(scan)


def test_what_was_locked_comes_out_by_its_passphrase(locked: Path, scan: Path, tmp_path: Path) -> None:
    assert is_locked(locked)
    assert opened(locked, tmp_path / "out", WORDS) == contents(scan)
    assert [each.name for each in locked.parent.iterdir()] == ["a.parcel"]


def test_its_manifest_is_one_of_a_bag(scan: Path, tmp_path: Path) -> None:
    """Two spaces, and a line end in a name as %0A (RFC 8493, 2.1.3); the digests are those of `hashlib`."""
    pack(tmp_path / "a.parcel", members(scan))
    with zipfile.ZipFile(tmp_path / "a.parcel") as archive:
        lines = archive.read(MANIFEST).decode().splitlines()
        assert archive.testzip() is None
    assert f"{hashlib.sha256(scan.read_bytes()).hexdigest()}  scans/Käär%0A.jpg" in lines
    assert any(line.endswith("  papers/a b%25.txt") for line in lines)


@pytest.mark.skipif(not IN_CI, reason="computes a key for seconds, as the format wants: in CI")
def test_a_locked_one_is_opened_by_any_program_for_the_format(scan: Path, tmp_path: Path) -> None:
    path = tmp_path / "a.parcel"
    pack(path, members(scan), WORDS)
    data = path.read_bytes()
    assert b"parcel.json" not in data and scan.read_bytes()[:64] not in data
    with zipfile.ZipFile(path) as archive:
        key = pyrage.x25519.Identity.from_str(pyrage.passphrase.decrypt(archive.read(KEY), WORDS).decode())
        inner = zipfile.ZipFile(io.BytesIO(pyrage.decrypt(archive.read(CONTENTS), [key])))
    assert sorted(inner.namelist()) == sorted([*NAMES, MANIFEST])


@every_row(("passphrase", "why"), [("", "is locked"), (WORDS.lower(), "not the passphrase")])
def test_another_passphrase_opens_nothing(passphrase: str, why: str, locked: Path, tmp_path: Path) -> None:
    (tmp_path / "out").mkdir(exist_ok=True)
    with pytest.raises(WrongUse, match=why):
        unpack(locked, tmp_path / "out", passphrase)
    assert not any(name in unpacked(tmp_path / "out") for name in NAMES)


def test_a_locked_one_that_was_changed_is_refused(locked: Path, tmp_path: Path) -> None:
    data = bytearray(locked.read_bytes())
    data[len(data) // 2] ^= 1
    (tmp_path / "a.parcel").write_bytes(data)
    with pytest.raises(CouldNot, match="is damaged"):
        opened(tmp_path / "a.parcel", tmp_path / "out", WORDS)


def test_a_short_passphrase_is_refused(scan: Path, tmp_path: Path) -> None:
    with pytest.raises(WrongUse, match="8 letters at least"):
        pack(tmp_path / "a.parcel", members(scan), "Leida64")
    assert not (tmp_path / "a.parcel").exists()


def test_every_changed_byte_and_every_cut_is_found_or_harmless(tmp_path: Path) -> None:
    """It is refused, or all comes out as it was packed (the times and flags of a ZIP archive mean nothing here)."""
    small: list[tuple[str, Path | bytes]] = [(name, b"Aino at the pier, " * 9) for name in NAMES[:2]]
    pack(tmp_path / "a.parcel", small)
    whole = (tmp_path / "a.parcel").read_bytes()
    tries = [whole[:at] + bytes([whole[at] ^ 0x15]) + whole[at + 1 :] for at in range(0, len(whole), 3)]
    tries += [whole[:at] for at in range(0, len(whole), 97)]
    path = tmp_path / "tried.parcel"
    refused = 0
    for count, data in enumerate(tries):
        path.write_bytes(data)
        try:
            out = opened(path, tmp_path / f"t{count}")
        except CouldNot:
            refused += 1
        else:
            assert out == dict(small)
    assert refused > len(tries) // 2


@every_row("name", ["../out.txt", "/etc/out.txt", "scans\\..\\out.txt", "C:out.txt", "a//b", "./a"])
def test_a_name_that_would_leave_the_folder_is_refused(name: str, tmp_path: Path) -> None:
    pack(tmp_path / "a.parcel", [(name, b"x")])
    folder = tmp_path / "out"
    folder.mkdir(exist_ok=True)
    with pytest.raises(CouldNot, match="which no parcel of ours does"):
        unpack(tmp_path / "a.parcel", folder)
    assert unpacked(folder) == {} and not (tmp_path / "out.txt").exists()
    (tmp_path / "a.parcel").unlink()


def test_what_is_no_parcel_is_said(tmp_path: Path, scan: Path) -> None:
    with zipfile.ZipFile(tmp_path / "other.zip", "w") as archive:
        archive.writestr("letter.txt", "Dear Mia")
    for path in (scan, tmp_path / "other.zip"):
        with pytest.raises(CouldNot, match="is no parcel"):
            opened(path, tmp_path / f"out {path.name}")
    with pytest.raises(CouldNot, match="no such file"):
        is_locked(tmp_path / "gone")


def test_a_file_that_was_added_or_taken_out_is_found(scan: Path, tmp_path: Path) -> None:
    pack(tmp_path / "a.parcel", members(scan))
    with zipfile.ZipFile(tmp_path / "a.parcel", "a") as archive:
        archive.writestr("boxlore.toml", "")
    with pytest.raises(CouldNot, match="is damaged"):
        opened(tmp_path / "a.parcel", tmp_path / "out")


def test_without_the_extra_it_says_what_to_install(scan: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setitem(__import__("sys").modules, "pyrage", None)
    with pytest.raises(CouldNot, match=r"boxlore\[lock\]"):
        pack(tmp_path / "a.parcel", members(scan), WORDS)
    assert not (tmp_path / "a.parcel").exists()


def test_a_disk_without_room_is_said_before_it_is_filled(
    scan: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    pack(tmp_path / "a.parcel", members(scan))
    monkeypatch.setattr(parcel_files.shutil, "disk_usage", lambda folder: type("Disk", (), {"free": 1000}))
    with pytest.raises(CouldNot, match="needs 4 MB"):
        opened(tmp_path / "a.parcel", tmp_path / "out")


def test_a_file_that_cannot_be_read_leaves_no_parcel(tmp_path: Path) -> None:
    with pytest.raises(CouldNot, match="no such file"):
        pack(tmp_path / "a.parcel", [("scans/a.jpg", tmp_path / "gone.jpg")])
    assert list(tmp_path.iterdir()) == []
