"""A better scan takes the place of one that is here, and is no new item (rules of our own, no outside source)."""

import hashlib
from pathlib import Path

import pytest
from PIL import Image

from boxlore.core.fields.pictures import FILE_WORDS, SHOWS_WORDS, FileFacts, Shows
from boxlore.core.records.item_record import ScanFile
from boxlore.core.statements import Kind, Subject
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import open_collection, start
from boxlore.tasks.collection.records_for_outputs import record_of
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.scans.fixity import verify_scans
from boxlore.tasks.scans.intake import IntakeOptions, IntakeResult, take_in
from boxlore.tasks.scans.pairing import by_suffix, read_items


def picture(path: Path, words: str, size: tuple[int, int] = (80, 60)) -> Path:
    """A picture that differs by the words."""
    path.parent.mkdir(exist_ok=True)
    Image.frombytes("L", (8, 4), hashlib.sha256(words.encode()).digest()).resize(size).save(path)
    return path


def take(home: Path, *paths: Path, table: str = "", **options: object) -> list[IntakeResult]:
    with open_collection(home) as collection:
        wanted = IntakeOptions(**options)  # type: ignore[arg-type]  # options by name
        if table:
            listed = paths[0].parent / "items.csv"
            listed.write_text(table, "utf-8")
            return take_in(collection, read_items(listed, paths[0].parent), wanted)
        return take_in(collection, by_suffix(paths), wanted)


def scans(home: Path, number: str = "TRA-0001") -> tuple[ScanFile, ...]:
    with open_collection(home, write=False) as collection:
        return record_of(collection, find_item(collection, number).id).scans


def items(home: Path) -> int:
    with open_collection(home, write=False) as collection:
        return collection.store.count("item")


@pytest.fixture
def home(tmp_path: Path) -> Path:
    start(tmp_path / "tamm", Settings(title="Tamm and Rourke", prefix="TR"))
    take(tmp_path / "tamm", picture(tmp_path / "in" / "harbour.png", "one"), copy=True)
    return tmp_path / "tamm"


def test_a_file_that_was_written_over_replaces_its_scan_when_that_is_said(home: Path) -> None:
    (before,) = scans(home)
    path = picture(home / before.path, "better", (160, 120))
    (asked,) = take(home, path)
    assert asked.state == "refused" and "take it in with --replace" in asked.why and "TRA-0001" in asked.why
    (done,) = take(home, path, replace=True)
    assert (done.state, done.number, done.why) == ("replaced", "TRA-0001", "the front of TRA-0001 is this file now")
    (after,) = scans(home)
    assert (after.id, after.path, after.width, after.bytes) == (before.id, before.path, 160, path.stat().st_size)
    assert after.sha256 == hashlib.sha256(path.read_bytes()).hexdigest() and items(home) == 1
    with open_collection(home) as collection:
        assert [verified.state for verified in verify_scans(collection)] == ["same"]
        noted = [statement.field for statement, _ in collection.store.statements(Subject(Kind.SCAN, after.id))]
        assert len(noted) == len(set(noted))
        past = [earlier.statement.words for earlier in collection.store.history(after.id, "file")]
        assert len(past) == 2 and any(before.sha256 in words for words in past)
    assert [result.state for result in take(home, path, replace=True)] == ["known"]


def test_a_file_or_a_row_that_is_called_by_the_number_replaces_it_and_the_earlier_file_stays(home: Path) -> None:
    (before,) = scans(home)
    folder = home.parent / "again"
    numbered = picture(folder / "TRA-0001_f.png", "two")
    row = "item,file\nTRA-0001,better.png\n"
    assert take(home, numbered, copy=True)[0].state == "refused"
    (refused,) = take(home, picture(folder / "better.png", "three"), table=row)
    assert "say --replace" in refused.why
    assert take(home, numbered, copy=True, replace=True)[0].state == "replaced"
    assert [scan.path for scan in scans(home)] == ["scans/TRA-0001_f_2.png"]
    assert (home / before.path).is_file()
    assert take(home, folder / "better.png", table=row, replace=True)[0].state == "replaced"
    (after,) = scans(home)
    assert after.id == before.id and after.path.endswith("again/better.png") and items(home) == 1


def test_one_file_alone_takes_the_place_of_a_scan(home: Path) -> None:
    folder = home.parent / "again"
    first, second = picture(folder / "TRA-0001_f.png", "two"), picture(folder / "TRA-0001_f.tif", "three")
    same = picture(folder / "more" / "TRA-0001_f.png", "two")
    results = take(home, first, second, same, copy=True, replace=True)
    assert [result.state for result in results] == ["replaced", "refused", "known"]
    assert "as another file has just done" in results[1].why
    about = Subject(Kind.SCAN, scans(home)[0].id)
    with open_collection(home, write=False) as collection:
        noted = [statement.field for statement, _ in collection.store.statements(about)]
    assert len(noted) == len(set(noted))


def test_what_is_new_and_what_may_replace_one_of_two_is_said(home: Path) -> None:
    (before,) = scans(home)
    path = picture(home / before.path, "better")
    back = picture(path.with_name("TRA-0001_b.png"), "back")
    (mixed,) = take(home, path, back, replace=True)
    assert mixed.state == "refused" and "Take in what is new first" in mixed.why
    folder = home.parent / "again"
    assert take(home, back)[0].state == "joined"
    with open_collection(home) as collection:
        act, item = collection.act("a second front"), find_item(collection, "TRA-0001")
        scan = act.new(Kind.SCAN)
        (front, _) = record_of(collection, item.id).scans
        file = FileFacts(path="scans/x.png", sha256="0" * 64, bytes=1, width=8, height=4, ppi=0, media_type="image/png")
        act.state(scan, "file", FILE_WORDS.write(file))
        act.state(scan, "shows", SHOWS_WORDS.write(Shows(item.id, front.side, None)))
        act.done()
    (several,) = take(home, picture(folder / "TRA-0001_f.png", "four"), replace=True)
    assert several.state == "refused" and "has 2 scans of that side" in several.why
    new = picture(folder / "TRA-0009_f.png", "five")
    assert take(home, new, replace=True)[0].state == "taken"
