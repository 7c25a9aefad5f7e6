"""The collection copied to another disk: whole, proved, and nothing that lies there lost (our own contract)."""

import os
import shutil
from collections.abc import Callable
from pathlib import Path

import pytest
from PIL import Image

from boxlore.core.errors import CouldNot, WrongUse
from boxlore.core.statements import Kind
from boxlore.store.locking import Lock
from boxlore.tasks.collection import on_another_disk
from boxlore.tasks.collection.on_another_disk import CopiedAway, copy_away
from boxlore.tasks.collection.opening import open_collection, start
from boxlore.tasks.collection.progress import QUIET, Quiet
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.scans.intake import IntakeOptions, take_in
from boxlore.tasks.scans.pairing import by_suffix


@pytest.fixture
def folder(bare: Callable[[int], Path], tmp_path: Path) -> Path:
    """One item without a scan; one scan copied in, one that stays outside the collection's folder."""
    folder = bare(1)
    with open_collection(folder) as collection:
        for name, copy in (("quay_f.jpg", True), ("regatta_f.jpg", False)):
            Image.linear_gradient("L").resize((60, 40 + copy)).save(tmp_path / name)
            list(take_in(collection, by_suffix([tmp_path / name]), IntakeOptions(copy=copy)))
    return folder


def told(folder: Path, words: str) -> None:
    with open_collection(folder) as collection:
        act = collection.act("a telling")
        act.state(act.new(Kind.ITEM), "story", words)
        act.done()


def away(folder: Path, into: Path, progress: Quiet = QUIET) -> CopiedAway:
    with open_collection(folder, write=False) as collection:
        return copy_away(collection, into, progress)


def stories(folder: Path) -> list[str]:
    with open_collection(folder, write=False) as collection:
        return [hit.words for hit in collection.store.search("told") if hit.field == "story"]


def test_the_copy_is_a_collection_with_its_scans(folder: Path, tmp_path: Path) -> None:
    told(folder, "First told")
    stick = tmp_path / "stick"
    (folder / "collection.pdf").write_bytes(b"an album")
    done = away(folder, stick)
    assert (done.folder, done.same, done.further, done.faults) == (stick / folder.name, 0, 0, [])
    assert done.on_same_disk and done.outside == [str(tmp_path / "regatta_f.jpg")]
    shutil.rmtree(folder)
    scans = [path.read_bytes() for path in (stick / folder.name / "scans").rglob("*.jpg")]
    assert scans == [(tmp_path / "quay_f.jpg").read_bytes()]
    assert stories(stick / folder.name) == ["First told"]
    assert (stick / folder.name / "collection.pdf").read_bytes() == b"an album"
    assert not (stick / folder.name / "collection.sqlite-wal").exists()


def test_a_second_run_copies_what_is_new_and_leaves_what_is_gone(folder: Path, tmp_path: Path) -> None:
    first = away(folder, tmp_path / "stick")
    assert away(folder, tmp_path / "stick").copied == 0
    told(folder, "Told later")
    (folder / "prompts.toml").write_text("# a note of the keeper's\n")
    next((folder / "scans").rglob("*.jpg")).unlink()
    second = away(folder, first.folder)  # the copy itself is named: no folder in it is made
    assert second.folder == first.folder and second.further == 1
    assert (first.folder / "prompts.toml").is_file() and stories(first.folder) == ["Told later"]


def test_what_was_told_in_the_copy_is_not_lost(folder: Path, tmp_path: Path) -> None:
    copy = away(folder, tmp_path / "stick").folder
    told(copy, "Told in the copy")
    with pytest.raises(WrongUse, match="Something was told in the copy"):
        away(folder, tmp_path / "stick")
    assert stories(copy) == ["Told in the copy"]


def test_what_else_lies_there_stays(folder: Path, tmp_path: Path) -> None:
    other = tmp_path / "other"
    start(other, Settings(title="Another", prefix="AN"))
    with pytest.raises(WrongUse, match="holds another collection"):
        away(folder, other)
    (other / "collection.sqlite").write_bytes(b"no database")
    with pytest.raises(WrongUse, match="cannot be read as a collection"):
        away(folder, other)
    mine = tmp_path / "stick" / folder.name / "prompts.toml"
    mine.parent.mkdir(parents=True)
    mine.write_text("# the keeper's other prompts\n")
    (folder / "prompts.toml").write_text("# prompts\n")
    with pytest.raises(WrongUse, match="holds other files, and no copy of this collection"):
        away(folder, tmp_path / "stick")
    assert [path.name for path in mine.parent.iterdir()] == ["prompts.toml"] and "other" in mine.read_text()
    for place in (folder, folder.parent, folder / "backups"):
        with pytest.raises(WrongUse, match="is the collection itself, or in it"):
            away(folder, place)


def test_a_copy_that_is_open_elsewhere_waits(folder: Path, tmp_path: Path) -> None:
    lock = Lock(away(folder, tmp_path / "stick").folder)
    assert lock.take()
    with pytest.raises(CouldNot, match="open in another program"):
        away(folder, tmp_path / "stick")
    lock.free()


def test_a_disk_that_refuses_or_is_too_small_is_said(
    folder: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    (tmp_path / "a file").write_bytes(b"")
    with pytest.raises(CouldNot, match="A file stands where a folder is wanted"):
        away(folder, tmp_path / "a file")
    with pytest.raises(CouldNot, match="The name is too long for this disk"):
        away(folder, tmp_path / ("x" * 300))
    usage = shutil.disk_usage(tmp_path)
    monkeypatch.setattr(shutil, "disk_usage", lambda path: usage._replace(free=0))
    with pytest.raises(CouldNot, match="has 0 MB free"):
        away(folder, tmp_path / "stick")
    assert not (tmp_path / "stick" / folder.name / "collection.sqlite").exists()


def test_a_scan_that_changed_is_copied_as_it_is_and_named(folder: Path, tmp_path: Path) -> None:
    scan = next((folder / "scans").rglob("*.jpg"))
    scan.chmod(0o644)
    scan.write_bytes(b"no longer a picture")
    done = away(folder, tmp_path / "stick")
    assert done.faults == [f"{scan} is not as it was at its intake; it was copied as it is."]
    assert (done.folder / scan.relative_to(folder)).read_bytes() == b"no longer a picture"


def test_it_stops_between_two_files_and_goes_on(folder: Path, tmp_path: Path) -> None:
    class Stopped(Quiet):
        def stopped(self) -> bool:
            return True

    stopped = away(folder, tmp_path / "stick", Stopped())
    assert stopped.stopped and stopped.copied == 0
    assert away(folder, tmp_path / "stick").copied > 0


def test_a_file_that_cannot_be_copied_costs_itself_alone(
    folder: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def refuse(path: Path, **more: object) -> None:
        raise OSError(5, "Input/output error")

    monkeypatch.setattr(os, "utime", refuse)
    assert all("Input/output error" in fault for fault in away(folder, tmp_path / "stick").faults)

    def full(source: Path, target: Path, sha256: str) -> None:
        raise CouldNot("The disk is full.", everywhere=True)

    monkeypatch.setattr(on_another_disk, "copy_proved", full)
    assert away(folder, tmp_path / "another").faults == ["The disk is full."]
