"""Everything in a folder is answered: taken, refused with a reason, or counted as no picture. Rule of our own."""

import os
import sys
from collections.abc import Callable
from pathlib import Path

import pytest
from PIL import Image

from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.scans.given_files import files_given

Run = Callable[..., tuple[int, str, str]]

POSIX = pytest.mark.skipif(sys.platform in ("win32", "darwin"), reason="names that are not UTF-8, and FIFOs")


@pytest.fixture
def scans(tmp_path: Path) -> Path:
    folder = tmp_path / "scans"
    (folder / "inner").mkdir(parents=True)
    for at, name in enumerate(("a.jpe", "b.jfif", "c.mpo", "d.jpg", "inner/e")):
        Image.new("L", (16, 16), 10 * at).save(folder / name, "JPEG")
    Image.new("L", (16, 16), 90).save(folder / "f.cr3", "TIFF")
    (folder / "album.pdf").write_bytes(b"%PDF-1.7\n")
    (folder / "notes.txt").write_text("the quay")
    (folder / ".hidden.jpg").write_bytes(b"")
    (folder / "bad.avif").write_bytes(b"not a picture")
    return folder


def test_each_file_of_a_folder_is_taken_refused_or_counted(bare: Callable[[int], Path], scans: Path, run: Run) -> None:
    code, _, said = run("-c", bare(0), "intake", scans, "--yes")
    assert "5 taken in, 0 known already, 3 refused, 2 not pictures." in said
    for name in ("album.pdf: It is a PDF", "f.cr3: It is a camera's raw file", "bad.avif cannot be opened"):
        assert name in said
    assert code == 1


def test_only_text_beside_the_pictures_leaves_nothing_out(bare: Callable[[int], Path], scans: Path, run: Run) -> None:
    for name in ("f.cr3", "album.pdf", "bad.avif"):
        (scans / name).unlink()
    code, _, said = run("-c", bare(0), "intake", scans, "--yes")
    assert "5 taken in, 0 known already, 0 refused, 2 not pictures." in said
    assert code == 0


@POSIX
def test_links_closed_folders_and_fifos_are_answered(scans: Path, tmp_path: Path) -> None:
    (scans / "gone.jpg").symlink_to(tmp_path / "nowhere.jpg")
    (scans / "elsewhere").symlink_to(tmp_path, target_is_directory=True)
    os.mkfifo(scans / "pipe.jpg")
    Image.new("L", (16, 16)).save(scans / ".cover.jpg")
    closed = scans / "closed"
    closed.mkdir()
    closed.chmod(0)
    given = files_given([scans])
    closed.chmod(0o700)
    reasons = {path.name: why for path, why in given.refused}
    assert "link to a file that is not there" in reasons["gone.jpg"]
    assert "link to a folder" in reasons["elsewhere"]
    assert "It is a picture, but hidden" in reasons[".cover.jpg"]
    assert sorted(path.name for path in given.other_files) == [".hidden.jpg", "notes.txt", "pipe.jpg"]
    assert [path.name for path in given.not_pictures["pipe (FIFO)"]] == ["pipe.jpg"]
    assert files_given([scans / "pipe.jpg"]).not_pictures == {"pipe (FIFO)": [scans / "pipe.jpg"]}
    if os.geteuid() != 0:  # root opens every folder
        assert "cannot be opened" in reasons["closed"]


def test_what_is_no_picture_is_named_by_kind(bare: Callable[[int], Path], scans: Path, run: Run) -> None:
    """Raw files of cameras, films, sidecars and empty files lie beside the scans of a family."""
    for name, data in {
        "a.xmp": b"<x/>", "b.xmp": b"<x/>", "c.xmp": b"<x/>", "d.XMP": b"<x/>", "quay.dng": b"II*\x00\x08\x00\x00\x00",
        "quay.raf": b"FUJIFILMCCD-RAW", "pier.mp4": b"\x00\x00\x00\x18ftypmp42", "cut.jpg": b"", "nothing": b"",
    }.items():  # fmt: skip
        (scans / name).write_bytes(data)
    folder = bare(0)
    code, _, said = run("-c", folder, "intake", scans, "--yes")
    assert "4 .xmp (what a program noted beside a picture; it is not read): a.xmp, b.xmp, c.xmp and 1 more" in said
    for line in (
        "1 .mp4 (a film; a recording of a sitting is kept by `boxlore recording`): pier.mp4",
        "1 empty (0 bytes): nothing",
        "1 hidden: .hidden.jpg",
    ):
        assert line in said
    for name in ("quay.dng", "quay.raf"):
        assert f"{name}: It is a camera's raw file: let a program of its maker write a TIFF or JPEG of it" in said
    assert "cut.jpg is empty (0 bytes)" in said
    assert code == 1 and "8 not pictures." in said
    code, _, said = run("-c", folder, "intake", scans / "quay.dng", "--yes")
    assert code == 1 and "It is a camera's raw file" in said, "named itself, a thumbnail would be taken for it"
    _, rows, said = run("-c", folder, "intake", scans, "--yes", "--list", "--json")
    assert str(scans / "d.XMP") in said and " and 1 more" not in said
    assert rows.count('"state": "not-a-picture"') == rows.count("not-a-picture") == 8


def test_a_folder_without_pictures_says_what_it_holds(bare: Callable[[int], Path], tmp_path: Path, run: Run) -> None:
    (tmp_path / "films").mkdir()
    (tmp_path / "films" / "pier.mp4").write_bytes(b"\x00\x00\x00\x18ftypmp42")
    code, _, said = run("-c", bare(0), "intake", tmp_path / "films", "--yes")
    assert code == 2 and "There are no pictures there. It holds 1 .mp4 (a film; a recording" in said


@POSIX
def test_a_name_that_is_not_utf_8_is_refused_in_place_and_taken_as_a_copy(
    bare: Callable[[int], Path], scans: Path, run: Run
) -> None:
    """`b\\xe4r.jpg` is Latin-1 (ISO/IEC 8859-1), as disks of the nineties have it."""
    with open(os.fsencode(scans) + b"/b\xe4r.jpg", "wb") as file:
        Image.new("L", (16, 16), 200).save(file, "JPEG")
    folder = bare(0)
    code, _, said = run("-c", folder, "intake", scans, "--yes")
    assert code == 1
    assert "5 taken in, 0 known already, 4 refused" in said
    assert "bär" in said and "not written in UTF-8" in said and "--copy" in said
    _, _, said = run("-c", folder, "intake", scans, "--copy", "--yes")
    assert "1 taken in, 5 known already, 3 refused" in said
    with open_collection(folder, write=False) as collection:
        assert "scans/TRA-0006_f.jpg" in {facts.path for _, facts in collection.store.scans()}
