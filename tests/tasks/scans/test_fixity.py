"""Fixity of the scans (SHA-256, FIPS 180-4; the schedule is common practice, from memory)."""

import os
import shutil
from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pytest
from PIL import Image

from boxlore.core.errors import CouldNot, WrongUse
from boxlore.tasks.collection.opening import Collection, open_collection, start
from boxlore.tasks.collection.settings import Settings, read_settings
from boxlore.tasks.scans import fixity
from boxlore.tasks.scans.fixity import (
    due_on,
    finding_of,
    last_run,
    register_again,
    schedule_findings,
    unfinished,
    verify_scans,
)
from boxlore.tasks.scans.intake import IntakeOptions, take_in
from boxlore.tasks.scans.pairing import Planned, ScanSide

COUNT = 6


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """Six scans of one size in bytes, each of another grey, so that length alone tells none apart."""
    made = tmp_path / "tamm_family"
    start(made, Settings(title="Tamm and Rourke", prefix="TR", fixity_days=30))
    plan = []
    for at in range(COUNT):
        path = tmp_path / f"in_{at}.png"
        Image.new("L", (40, 40), 40 * at).save(path)
        plan.append(Planned(key=str(at), sides=[ScanSide(path, "recto")]))
    with open_collection(made) as opened:
        take_in(opened, plan, IntakeOptions(copy=True))
    return made


@pytest.fixture
def collection(folder: Path) -> Iterator[Collection]:
    with open_collection(folder, on_day=date(2026, 11, 25)) as opened:
        yield opened


class StopAfter:
    """Asks to stop after so many steps."""

    def __init__(self, steps: int) -> None:
        self.left = steps

    def begin(self, what: str, total: int) -> None:
        assert total == COUNT

    def step(self, done: int = 1) -> None:
        self.left -= done

    def stopped(self) -> bool:
        return self.left <= 0


def scan(collection: Collection, number: int) -> Path:
    return collection.folder / "scans" / f"TRA-{number:04d}_f.png"


def test_a_run_is_noted_with_its_day_and_when_it_is_due(collection: Collection) -> None:
    assert [one.rule for one in schedule_findings(collection)] == ["fixity.never"]
    assert {one.state for one in verify_scans(collection)} == {"same"}
    last = last_run(collection)
    assert last is not None and (last.on, last.read, last.wrong) == (date(2026, 11, 25), COUNT, 0)
    assert due_on(collection) == date(2026, 12, 25)
    assert schedule_findings(collection) == []


def test_when_it_is_due_the_check_says_so(collection: Collection, folder: Path) -> None:
    list(verify_scans(collection))
    collection.store.close()
    with open_collection(folder, on_day=date(2026, 12, 25)) as later:
        assert [one.rule for one in schedule_findings(later)] == ["fixity.due"]


def test_changed_moved_and_gone_are_told_apart_and_found_by_their_bytes(collection: Collection, tmp_path: Path) -> None:
    data = bytearray(scan(collection, 1).read_bytes())
    data[-1] ^= 1
    scan(collection, 1).write_bytes(data)
    os.renames(scan(collection, 2), collection.folder / "scans" / "sorted" / "kristjan.png")
    (tmp_path / "elsewhere").mkdir()
    shutil.move(scan(collection, 3), tmp_path / "elsewhere" / "x.png")
    scan(collection, 4).unlink()
    before = {path: path.read_bytes() for path in collection.folder.rglob("*.png")}
    wrong = [one for one in verify_scans(collection, look_in=[tmp_path / "elsewhere"]) if one.state != "same"]
    assert [(Path(one.path).name, one.state, Path(one.found).name) for one in wrong] == [
        ("TRA-0001_f.png", "changed", ""),
        ("TRA-0002_f.png", "moved", "kristjan.png"),
        ("TRA-0003_f.png", "moved", "x.png"),
        ("TRA-0004_f.png", "gone", ""),
    ]
    messages = [found.message for one in wrong if (found := finding_of(one))]
    assert len(messages) == 4 and "backup" in messages[0] and "--look-in" in messages[3]
    last = last_run(collection)
    assert last is not None and last.wrong == 4
    assert [one.rule for one in schedule_findings(collection)] == ["fixity.wrong"]
    assert register_again(collection, wrong) == 2
    assert {path: path.read_bytes() for path in collection.folder.rglob("*.png")} == before
    again = [one.state for one in verify_scans(collection)]
    assert sorted(again) == ["changed", "gone", "same", "same", "same", "same"]


def test_the_right_bytes_of_a_changed_scan_are_found_elsewhere(collection: Collection) -> None:
    shutil.copyfile(scan(collection, 5), collection.folder / "scans" / "again.png")
    scan(collection, 5).write_bytes(b"\0" * scan(collection, 5).stat().st_size)
    (wrong,) = [one for one in verify_scans(collection) if one.state != "same"]
    assert (wrong.state, wrong.found) == ("changed", "scans/again.png")


def test_a_run_that_was_stopped_goes_on_where_it_stopped(collection: Collection) -> None:
    scan(collection, 1).unlink()
    assert [one.state for one in verify_scans(collection, StopAfter(4))] == ["same"] * 3
    assert unfinished(collection) == 4 and last_run(collection) is None
    assert [one.state for one in verify_scans(collection)] == ["same", "same", "gone"]
    assert unfinished(collection) == 0
    last = last_run(collection)
    assert last is not None and (last.read, last.wrong) == (COUNT, 1)


def test_it_can_begin_anew_and_does_where_the_scans_are_others(collection: Collection) -> None:
    list(verify_scans(collection, StopAfter(4)))
    assert len(list(verify_scans(collection, anew=True))) == COUNT
    list(verify_scans(collection, StopAfter(2)))
    words = collection.store.meta(fixity.META).replace('"read": 2', '"read": 3')
    collection.store.set_meta(fixity.META, words)
    assert len(list(verify_scans(collection))) == COUNT


def test_a_collection_that_can_only_be_read_is_verified_and_nothing_is_noted(collection: Collection) -> None:
    collection.store.close()
    with open_collection(collection.folder, write=False) as reading:
        assert len(list(verify_scans(reading))) == COUNT
        assert last_run(reading) is None
        scan(reading, 1).unlink()
        with pytest.raises(CouldNot):
            register_again(reading, _with_place(list(verify_scans(reading))))


def _with_place(found: list[fixity.Verified]) -> list[fixity.Verified]:
    return [fixity.Verified(one.path, "moved", "scans/x.png", one.scan) for one in found if one.state == "gone"]


def test_the_schedule_is_a_setting(folder: Path) -> None:
    assert read_settings(folder).fixity_days == 30
    path = folder / "boxlore.toml"
    path.write_text(path.read_text().replace("fixity_days = 30", "fixity_days = 0"))
    with pytest.raises(WrongUse, match="1 or more days"):
        read_settings(folder)
