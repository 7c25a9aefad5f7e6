"""Backups: made only when something was told, proved, never over another, and never a fault of the sitting (our own
rules, no outside source). A disk that refuses is a limit of the system's own on the size of files (setrlimit(2))."""

import os
import resource
import sqlite3
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest

from boxlore.core.errors import CouldNot
from boxlore.core.statements import Kind, Statement, Subject
from boxlore.store import schema
from boxlore.store.backups import back_up, holdings, holdings_of, is_kept, keep, listed, roll, way_back
from boxlore.store.opening import Store, create, open_store
from boxlore.store.strike import files_holding, finish, pending, strike
from boxlore.store.values import Change, Draft
from boxlore.tasks.collection.clock import Clock

ITEM = Subject(Kind.ITEM, "11111111-1111-7111-8111-111111111111")


@pytest.fixture
def clock() -> Clock:
    return Clock()


@pytest.fixture
def store(tmp_path: Path, clock: Clock) -> Iterator[Store]:
    with create(tmp_path, clock=clock) as made:
        yield made


def tell(store: Store, clock: Clock, words: str, field: str = "story") -> Statement:
    act = clock.new_id()
    statement = Statement(
        id=clock.new_id(), act=act, subject=ITEM, field=field, words=words, recorded_at=clock.now(), by="me"
    )
    store.write(Change(act=act, what=words[:40], by="me", recorded_at=clock.now(), statements=(statement,)))
    return statement


def test_a_name_tells_when_and_why_and_none_is_written_over(store: Store, clock: Clock) -> None:
    tell(store, clock, "one")
    now = "2026-11-25T10:15:30.250Z"
    paths = [back_up(store, "before merging people", now) for _ in range(2)]
    assert [path.name for path in paths] == [
        "20261125T101530Z-before-merging-people.sqlite",
        "20261125T101530Z-before-merging-people-2.sqlite",
    ]
    assert [(f"{backup.at:%H:%M:%S}", backup.why, backup.ours) for backup in listed(store.folder)] == [
        ("10:15:30", "before merging people", True)
    ] * 2


@pytest.mark.parametrize("name", ["mine", "before-version-2", "20269999T999999Z-closing", "20261125-closing"])
def test_a_file_of_another_name_is_listed_by_the_day_it_was_written(store: Store, clock: Clock, name: str) -> None:
    path = keep(store.db, store.folder, name)
    os.utime(path, (1_700_000_000, 1_700_000_000))  # 2023-11-14T22:13:20Z
    (backup,) = listed(store.folder)
    assert (f"{backup.at:%Y-%m-%dT%H:%M:%S}", backup.ours) == ("2023-11-14T22:13:20", False)
    assert roll(store.folder, clock.now(), 1) == [] and path.exists()


def test_is_kept_sees_what_is_told_drafted_taken_back_and_struck(store: Store, clock: Clock) -> None:
    assert is_kept(store)  # nothing was ever told
    one = tell(store, clock, "one")

    def changed() -> bool:
        was_kept = is_kept(store)
        back_up(store, "closing", clock.now())
        return not was_kept and is_kept(store)

    assert changed()
    store.save_draft(Draft(subject=ITEM, field="title", words="half", updated_at=clock.now()))
    assert changed()
    store.save_draft(Draft(subject=ITEM, field="title", words="half a sen", updated_at=clock.now()))
    assert changed()
    store.write(Change(act=clock.new_id(), what="undo", by="me", recorded_at=clock.now(), withdraws=(one.act,)))
    assert changed()
    strike(store, [one.id], by="me", now=clock.now())
    assert is_kept(store)  # the strike reaches the newest backup too


def test_a_backup_holds_what_was_told_and_stands_alone(store: Store, clock: Clock) -> None:
    tell(store, clock, "TRA-0001", "number")
    tell(store, clock, "one")
    path = back_up(store, "closing", clock.now())
    holds = holdings_of(path)
    assert holds is not None and (holds.items, holds.statements) == (1, 2)
    assert [each.name for each in path.parent.iterdir()] == [path.name]
    with sqlite3.connect(path) as db:
        assert db.execute("PRAGMA integrity_check").fetchone() == ("ok",)


def test_a_damaged_collection_never_becomes_a_backup(store: Store, clock: Clock) -> None:
    """A page of the table of statements is overwritten: SQLite's own check finds it, and the good backups stay."""
    for count in range(400):
        tell(store, clock, f"It rained, time {count}")
    good = back_up(store, "closing", clock.now())
    store.close()
    flip(store.path)
    with open_store(store.folder, write=False) as opened, pytest.raises(CouldNot) as caught:
        back_up(opened, "closing", clock.now())
    assert "is damaged" in str(caught.value) and "boxlore restore can bring back the backup of" in str(caught.value)
    assert [path.name for path in good.parent.iterdir()] == [good.name]


def flip(path: Path) -> None:
    """Overwrite the middle page of a database with other bytes."""
    data = bytearray(path.read_bytes())
    page = int.from_bytes(data[16:18], "big")
    at = len(data) // page // 2 * page
    data[at : at + page] = b"\xa5" * page
    path.write_bytes(data)


LIMITED = """
import resource, signal, sys
from pathlib import Path
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.telling.statements import Teller, Telling
from boxlore.tasks.collection.items_by_mark import find_item
with open_collection(Path(sys.argv[1])) as collection:
    Teller(collection).tell(find_item(collection, "TRA-0001"), "story", "It rained", Telling())
    signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
    resource.setrlimit(resource.RLIMIT_FSIZE, (50_000, 50_000))
print("closed")
"""


def test_a_disk_that_refuses_costs_the_backup_and_nothing_else(bare, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    """The sitting ends well, the words are kept, a sentence is said, and no half of a file is left."""
    folder = bare(2)
    for backup in listed(folder):
        backup.path.unlink()
    env = {**os.environ, "PYTHONPATH": os.pathsep.join(sys.path)}
    ran = subprocess.run([sys.executable, "-c", LIMITED, str(folder)], capture_output=True, text=True, env=env)
    assert (ran.returncode, ran.stdout) == (0, "closed\n"), ran.stderr
    assert ran.stderr.startswith("No backup could be made in ") and "what is told is safe" in ran.stderr
    assert list((folder / "backups").iterdir()) == []
    with open_store(folder, write=False) as opened:
        assert [hit.words for hit in opened.search("rained")] == ["It rained"]


def test_a_file_where_the_folder_should_be_is_said(store: Store, clock: Clock) -> None:
    tell(store, clock, "one")
    (store.folder / "backups").write_text("")
    with pytest.raises(CouldNot, match=r"No backup could be made in .* what is told is safe"):
        back_up(store, "closing", clock.now())


def test_a_disk_nearly_full_is_left_the_room_that_is_there(
    store: Store, clock: Clock, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("shutil.disk_usage", lambda folder: os.terminal_size((0, 0)) and Usage())
    tell(store, clock, "one")
    with pytest.raises(CouldNot, match="nearly full"):
        back_up(store, "closing", clock.now())
    assert listed(store.folder) == []


class Usage:
    free = 100_000


def test_newer_tables_wait_where_no_backup_can_be_made(tmp_path: Path, clock: Clock) -> None:
    create(tmp_path, clock=clock).close()
    path = tmp_path / "collection.sqlite"
    path.unlink()
    with sqlite3.connect(path, isolation_level=None) as db:
        schema.migrate(db, schema.MIGRATIONS[:1])
    before = path.read_bytes()
    (tmp_path / "backups").write_text("")
    with pytest.raises(CouldNot, match="No backup could be made"):
        open_store(tmp_path)
    assert path.read_bytes()[100:] == before[100:]


def test_what_a_kill_left_unfinished_is_gone_after_the_next_opening(store: Store) -> None:
    (store.folder / "backups").mkdir()
    left = [store.folder / "collection.part", store.folder / "collection.part-journal"]
    left += [store.folder / "backups" / name for name in ("x.part", "x.part-wal", "y.sqlite.part")]
    for path in left:
        path.write_text("the words of an elder")
    store.close()
    open_store(store.folder).close()
    assert not any(path.exists() for path in left)


REASONS = ["on closing", "before striking", "before merging people", "before restoring", "before a table"]
SECRET = "Zanzibar"


def test_a_word_struck_is_in_no_backup_of_any_reason_nor_in_its_index(store: Store, clock: Clock) -> None:
    """One word, so that it could stand whole in the index of a backup; also in the line about another act."""
    for count in range(60):
        tell(store, clock, f"It rained, time {count}")
    secret = tell(store, clock, f"{SECRET} was where they danced that night")
    again = Change(act=clock.new_id(), what=f"again: {secret.words}", by="me", recorded_at=clock.now())
    store.write(again)
    for count, why in enumerate(REASONS):
        tell(store, clock, f"It snowed, time {count}")
        back_up(store, why, clock.now())
    keep(store.db, store.folder, "a copy of the keeper's own")
    assert len(list(files_holding(store.folder / "backups", [SECRET]))) == len(REASONS) + 1
    report = strike(store, [secret.id], by="me", now=clock.now())
    assert report.finished and report.left_in == ()
    assert list(files_holding(store.folder, [SECRET])) == []
    assert all(holdings(backup) for backup in listed(store.folder))
    for backup in listed(store.folder):
        with sqlite3.connect(backup.path) as db:
            assert db.execute("PRAGMA integrity_check").fetchone() == ("ok",)
            assert db.execute("SELECT count(*) FROM words_index WHERE words_index MATCH 'rained'").fetchone() == (60,)
            assert db.execute("SELECT statement FROM tombstone").fetchall() == [(secret.id,)]


def test_a_disk_that_is_full_says_whether_the_words_are_gone(store: Store, clock: Clock) -> None:
    """SQLite's own limit on the pages of a file stands for a disk that is full at once (PRAGMA max_page_count), the
    system's limit on the size of files for one that fills while the file is written anew (setrlimit(2))."""
    last = [tell(store, clock, f"It rained, time {count}. " * 10) for count in range(200)][-1]
    store.writer.do(lambda db: db.execute("PRAGMA max_page_count = 1"), plain=True)
    with pytest.raises(CouldNot, match=r"^Nothing was struck: the disk is full. Free some space"):
        strike(store, [last.id], by="x" * 40_000, now=clock.now())
    assert len(store.search("rained 199")) == 1 and not pending(store)
    store.writer.do(lambda db: db.execute("PRAGMA max_page_count = 1000000"), plain=True)
    store.writer.do(lambda db: db.execute("PRAGMA wal_checkpoint(TRUNCATE)").fetchall(), plain=True)
    before = resource.getrlimit(resource.RLIMIT_FSIZE)
    resource.setrlimit(resource.RLIMIT_FSIZE, (store.path.stat().st_size * 9 // 10, before[1]))
    try:
        with pytest.raises(CouldNot, match=r"^The words are out of use, but traces .* finishes the strike.$"):
            strike(store, [last.id], by="me", now=clock.now())
    finally:
        resource.setrlimit(resource.RLIMIT_FSIZE, before)
    assert store.search("rained 199") == [] and pending(store)
    assert finish(store, lambda why: None, lambda: True)
    assert list(files_holding(store.folder, ["time 199."])) == []


def test_a_backup_that_holds_none_of_it_is_not_written_anew(store: Store, clock: Clock) -> None:
    tell(store, clock, "It rained")
    path = back_up(store, "closing", clock.now())
    with sqlite3.connect(path) as db:
        before = db.execute("SELECT * FROM act").fetchall()
    strike(store, [tell(store, clock, "It snowed").id], by="me", now=clock.now())
    with sqlite3.connect(path) as db:
        assert db.execute("SELECT * FROM act").fetchall() == before
        assert db.execute("SELECT count(*) FROM tombstone").fetchone() == (1,)


def test_a_damaged_backup_that_holds_a_struck_word_is_named(store: Store, clock: Clock) -> None:
    secret = tell(store, clock, SECRET)
    path = back_up(store, "closing", clock.now())
    path.write_bytes(path.read_bytes()[:-8192])
    report = strike(store, [secret.id], by="me", now=clock.now())
    assert [Path(left).name for left in report.left_in] == [path.name]


def test_the_way_back_names_the_newest_that_can_be_read(store: Store, clock: Clock) -> None:
    assert way_back(store.folder) == "There is no backup beside it."
    tell(store, clock, "one")
    whole = back_up(store, "closing", "2026-11-24T10:00:00Z")
    (store.folder / "backups" / "20261125T100000Z-closing.sqlite").write_bytes(b"")
    back_up(store, "damaged", "2026-11-26T10:00:00Z")
    assert str(whole) in way_back(store.folder)


def test_the_newest_holds_most_whatever_the_clock_said(store: Store, clock: Clock) -> None:
    """A sitting by a clock that ran ahead was closed at a time which the log has not come to: it goes on from its last
    words. One that cannot be read stays where its name puts it."""
    tell(store, clock, "one")
    back_up(store, "on closing", "2026-11-27T15:00:00Z")
    tell(store, clock, "by the wrong clock")
    back_up(store, "on closing", "2027-06-01T12:25:00Z")
    (store.folder / "backups" / "20270601T122000Z-on-closing.sqlite").write_bytes(b"")
    tell(store, clock, "three")
    newest = back_up(store, "on closing", "2027-06-01T12:00:01Z")
    assert [backup.path.name[:15] for backup in listed(store.folder)] == [
        "20270601T120001", "20270601T122000", "20270601T122500", "20261127T150000"
    ]  # fmt: skip
    assert is_kept(store) and str(newest) in way_back(store.folder)
    assert newest not in roll(store.folder, "2027-09-01T12:00:00Z", 1) and newest.exists()


def test_rolling_takes_only_what_it_made_and_keeps_to_its_room(store: Store, clock: Clock) -> None:
    tell(store, clock, "one")
    keep(store.db, store.folder, "mine")
    for day in (1, 2, 3):
        back_up(store, "closing", f"2026-11-0{day}T10:00:00Z")
    back_up(store, "closing", "2026-11-03T09:00:00Z")
    back_up(store, "damaged", "2020-01-01T10:00:00Z")
    size = listed(store.folder)[0].size
    gone = roll(store.folder, "2026-11-04T20:00:00Z", 2 * size)
    assert sorted(path.name[:13] for path in gone) == ["20261102T1000", "20261103T0900"]
    assert {backup.path.name[:11] for backup in listed(store.folder)} == {
        "mine.sqlite", "20200101T10", "20261101T10", "20261103T10"
    }  # fmt: skip
