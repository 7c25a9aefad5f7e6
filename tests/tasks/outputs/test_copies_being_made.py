"""Copies after a run that was killed: its work is known by its bytes (rules of our own). The editor is pyexiv2."""

import errno
import os
import signal
import subprocess
import sys
from datetime import date
from pathlib import Path

import pyexiv2
import pytest
from PIL import Image

from boxlore.core.errors import CouldNot, WrongUse
from boxlore.core.records.audience import To
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import open_collection, start
from boxlore.tasks.collection.records_for_outputs import Selection
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.outputs.copies import Copied, copies
from boxlore.tasks.outputs.copies_being_made import FILE_NAME, read_being_made
from boxlore.tasks.outputs.copies_contents import FILE_NAME as CONTENTS
from boxlore.tasks.outputs.copies_contents import read_contents
from boxlore.tasks.scans.intake import IntakeOptions, take_in
from boxlore.tasks.scans.pairing import Planned, ScanSide
from boxlore.tasks.telling.statements import Teller, Telling

ON = date(2026, 11, 25)

KILLED = """
import os, signal, sys
from datetime import date
from pathlib import Path
from boxlore.core.records.audience import To
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.outputs.copies import copies
home, out, to, longest = sys.argv[1:]
with open_collection(Path(home), write=False, on_day=date(2026, 11, 25)) as collection:
    for made, _ in enumerate(copies(collection, Path(out), to=To(to), longest=int(longest)), 1):
        if made == 3:
            os.kill(os.getpid(), signal.SIGKILL)
"""
"""All three copies are made, and the run is killed before it writes the contents page."""


@pytest.fixture
def home(tmp_path: Path) -> Path:
    """Two pictures that carry captions, one (GIF) whose caption lies beside it."""
    folder = tmp_path / "family"
    start(folder, Settings(title="Tamm and Rourke", prefix="TR"), on_day=ON)
    plan = []
    for name in ("nets.jpg", "boat.png", "wharf.gif"):
        Image.radial_gradient("L").resize((60 + len(name), 40)).save(tmp_path / name)
        plan.append(Planned(key=name, sides=(ScanSide(tmp_path / name),)))
    with open_collection(folder, on_day=ON) as collection:
        assert len(take_in(collection, plan, IntakeOptions(copy=True))) == 3
    return folder


def kill(home: Path, out: Path, to: str = "family", longest: int = 0) -> None:
    command = [sys.executable, "-c", KILLED, str(home), str(out), to, str(longest)]
    assert subprocess.run(command, check=False).returncode == -signal.SIGKILL
    assert (out / FILE_NAME).exists()


def tell(home: Path, words: str) -> None:
    with open_collection(home, on_day=ON) as collection:
        for number in ("TRA-0001", "TRA-0002", "TRA-0003"):
            Teller(collection).tell(find_item(collection, number), "title", words, Telling())


def make(home: Path, out: Path, **more: object) -> list[Copied]:
    with open_collection(home, write=False, on_day=ON) as collection:
        return list(copies(collection, out, **more))  # type: ignore[arg-type]  # as the test spells them


def test_the_next_run_knows_what_a_killed_one_made(home: Path, tmp_path: Path) -> None:
    out = tmp_path / "copies"
    kill(home, out)
    tell(home, "Nets drying")
    made = make(home, out)
    assert [copied.state for copied in made] == ["written", "written", "sidecar"]
    assert not any("another" in copied.why.lower() for copied in made)
    with pyexiv2.Image(str(out / "TRA-0001_f.jpg")) as image:
        assert image.read_xmp()["Xmp.dc.title"]['lang="x-default"'] == "Nets drying"
    assert "Nets drying" in (out / "TRA-0003_f.gif.xmp").read_text("utf-8")
    assert not (out / FILE_NAME).exists()
    assert [copied.state for copied in make(home, out)] == ["same", "same", "sidecar"]


@pytest.mark.parametrize("longest", [0, 32])
def test_outside_copies_go_on_after_a_kill(home: Path, tmp_path: Path, longest: int) -> None:
    out = tmp_path / "copies"
    kill(home, out, "outside", longest)
    tell(home, "Nets drying")
    made = make(home, out, to=To.OUTSIDE, longest=longest)
    assert [copied.state for copied in made][:2] == ["written", "written"], made
    with pyexiv2.Image(str(out / made[0].copy)) as image:
        assert image.read_xmp()["Xmp.dc.title"]['lang="x-default"'] == "Nets drying"
    assert not (out / FILE_NAME).exists()


def test_a_kill_between_two_whole_runs_is_nothing_either(home: Path, tmp_path: Path) -> None:
    """The contents page is of the run before the killed one, and gives other digests."""
    out = tmp_path / "copies"
    make(home, out)
    tell(home, "Nets drying")
    kill(home, out)
    tell(home, "Nets being mended")
    assert not any("another" in copied.why.lower() for copied in make(home, out))


def test_what_another_program_adds_after_a_kill_is_kept(home: Path, tmp_path: Path) -> None:
    out = tmp_path / "copies"
    kill(home, out)
    with pyexiv2.Image(str(out / "TRA-0001_f.jpg")) as image:
        image.modify_xmp({"Xmp.xmp.Rating": "3"})
    tell(home, "Nets drying")
    changed = make(home, out)[0]
    assert "Another program has changed this copy; what it added was kept." in changed.why
    tell(home, "Nets on poles")
    kill(home, out)
    tell(home, "Nets being mended")
    assert "what it added was kept" in make(home, out)[0].why
    with pyexiv2.Image(str(out / "TRA-0001_f.jpg")) as image:
        assert image.read_xmp()["Xmp.xmp.Rating"] == "3"


def test_what_a_killed_run_made_for_others_keeps_its_folder(home: Path, tmp_path: Path) -> None:
    out = tmp_path / "copies"
    kill(home, out)
    with pytest.raises(WrongUse, match="holds copies for family"):
        make(home, out, to=To.OUTSIDE)


def test_a_run_over_some_items_forgets_none_of_the_others(home: Path, tmp_path: Path) -> None:
    out = tmp_path / "copies"
    kill(home, out)
    make(home, out, selection=Selection(items=("TRA-0001",)))
    assert set(read_being_made(out).left()) >= {"TRA-0002_f.png", "TRA-0003_f.gif", "TRA-0003_f.gif.xmp"}
    tell(home, "Nets drying")
    assert not any("another" in copied.why.lower() for copied in make(home, out))
    assert not (out / FILE_NAME).exists()


def test_a_copy_that_may_not_be_made_any_more_is_named(home: Path, tmp_path: Path) -> None:
    out = tmp_path / "copies"
    kill(home, out)
    with open_collection(home, write=False, on_day=ON) as collection:
        scan = next(facts for _, facts in collection.store.scans())
    (home / scan.path).unlink()
    refused = make(home, out)[0]
    assert refused.state == "refused" and "An earlier copy is still there: TRA-0001_f.jpg." in refused.why


def full_for(name: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """Let the disk be full (ENOSPC, POSIX) for every file that is to take a name with `name` in it."""
    whole = os.replace

    def replace(part: Path, target: Path) -> None:
        if name in str(target):
            raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))
        whole(part, target)

    monkeypatch.setattr(os, "replace", replace)


def test_on_a_full_disk_the_page_names_all_that_was_made_and_no_list_is_left(
    home: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Copies are made side by side: those behind the one that met the full disk are there too."""
    out = tmp_path / "copies"
    full_for("TRA-0001", monkeypatch)
    with pytest.raises(CouldNot, match="The disk is full"):
        make(home, out)
    named = {line.copy for line in read_contents(out)}
    assert named == {path.name for path in out.iterdir() if path.suffix in (".jpg", ".png", ".gif")}
    assert not (out / FILE_NAME).exists()


def test_a_page_that_cannot_be_written_is_said_and_the_next_run_takes_the_list_away(
    home: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    out = tmp_path / "copies"
    with monkeypatch.context() as patched:
        full_for(CONTENTS, patched)
        with pytest.raises(CouldNot, match=rf"3 copies are there, noted in {FILE_NAME}; the next run goes on"):
            make(home, out)
    assert (out / FILE_NAME).exists()
    assert [copied.state for copied in make(home, out)] == ["same", "same", "sidecar"]
    assert not (out / FILE_NAME).exists()


def test_a_list_that_cannot_be_written_or_read_is_said(home: Path, tmp_path: Path) -> None:
    out = tmp_path / "copies"
    out.mkdir()
    elsewhere = tmp_path / "elsewhere.txt"
    elsewhere.write_text("not ours", "utf-8")
    (out / FILE_NAME).symlink_to(elsewhere)
    assert {copied.state for copied in make(home, out)} == {"refused"}
    assert elsewhere.read_text("utf-8") == "not ours"
    (out / FILE_NAME).unlink(missing_ok=True)
    (out / FILE_NAME).mkdir()
    with pytest.raises(CouldNot, match="A folder stands where a file is wanted"):
        make(home, out)
    (out / FILE_NAME).rmdir()
    (out / FILE_NAME).write_bytes(b"\xff\xfe no line\n")
    assert [copied.state for copied in make(home, out)] == ["written", "written", "sidecar"]
