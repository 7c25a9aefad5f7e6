"""The store: the log and its view, one writer, undo and redo, search, strike (rules of our own, no outside source)."""

import os
import signal
import sqlite3
import subprocess
import sys
import threading
import time
import uuid
from collections.abc import Iterator
from contextlib import closing
from pathlib import Path
from typing import Any

import pytest

from boxlore.core.errors import CouldNot
from boxlore.core.people.reference import PersonRef
from boxlore.core.places.reading import PlaceReading
from boxlore.core.records.readings import read_value
from boxlore.core.statements import Kind, Reading, Statement, Subject
from boxlore.store import projections, schema
from boxlore.store.backups import back_up
from boxlore.store.database_file import check_ahead
from boxlore.store.opening import Store, create, open_store
from boxlore.store.strike import files_holding, pending, strike
from boxlore.store.values import Change, Draft, Settlement
from boxlore.tasks.collection.clock import Clock

ITEM = Subject(Kind.ITEM, "11111111-1111-7111-8111-111111111111")


@pytest.fixture
def clock() -> Clock:
    return Clock()


@pytest.fixture
def store(tmp_path: Path, clock: Clock) -> Iterator[Store]:
    (tmp_path / "backups").mkdir()
    with create(tmp_path, clock=clock) as made:
        yield made


def tell(store: Store, clock: Clock, field: str, words: str, subject: Subject = ITEM, **more: Any) -> Statement:
    act = clock.new_id()
    one = Statement(
        id=clock.new_id(), act=act, subject=subject, field=field, words=words, recorded_at=clock.now(), **more
    )
    store.write(Change(act=act, what=f"{field}: {words[:20]}", by="me", recorded_at=clock.now(), statements=(one,)))
    return one


def withdraw(store: Store, clock: Clock, act: str) -> str:
    made = clock.new_id()
    store.write(Change(act=made, what="undo", by="me", recorded_at=clock.now(), withdraws=(act,)))
    return made


def words_in_force(store: Store, field: str = "story") -> list[str]:
    return [one.words for one, _ in store.statements(ITEM) if one.field == field]


def test_replaced_statements_are_history(store: Store, clock: Clock) -> None:
    first = tell(store, clock, "story", "one")
    tell(store, clock, "story", "two", replaces=first.id)
    assert words_in_force(store) == ["two"]
    assert [past.state for past in store.history(ITEM.id, "story")] == ["replaced", "in force"]


def test_two_replacements_both_stand(store: Store, clock: Clock) -> None:
    first = tell(store, clock, "title", "one")
    tell(store, clock, "title", "two", replaces=first.id)
    tell(store, clock, "title", "three", replaces=first.id)
    assert words_in_force(store, "title") == ["two", "three"]


def test_undo_redo_and_undo_again(store: Store, clock: Clock) -> None:
    first = tell(store, clock, "story", "one")
    second = tell(store, clock, "story", "two", replaces=first.id)
    undo = withdraw(store, clock, second.act)
    assert words_in_force(store) == ["one"]
    redo = withdraw(store, clock, undo)
    assert words_in_force(store) == ["two"]
    withdraw(store, clock, redo)
    assert words_in_force(store) == ["one"]


def test_rebuilding_the_projections_changes_nothing(store: Store, clock: Clock) -> None:
    tell(store, clock, "number", "TRA-0001")
    first = tell(store, clock, "story", "Ōtākou and Mägi")
    withdraw(store, clock, tell(store, clock, "story", "gone").act)
    tell(store, clock, "name", "Leida Johanna Rourke", Subject(Kind.PERSON, clock.new_id()))
    before = (words_in_force(store), store.search("otakou"), store.complete_people("johanna r"))
    store.writer.do(projections.rebuild)
    assert (words_in_force(store), store.search("otakou"), store.complete_people("johanna r")) == before
    assert before[1][0].words == first.words


def _projections(store: Store) -> dict[str, list[tuple[Any, ...]]]:
    with sqlite3.connect(store.path) as db:
        return {table: sorted(db.execute(f"SELECT * FROM {table}")) for table in schema.PROJECTIONS}


def _meant(store: Store, clock: Clock, person: Subject) -> None:
    """The person is meant by an item's statement, now."""
    one = Statement(id=clock.new_id(), act=clock.new_id(), subject=ITEM, field="person", words="she",
                    recorded_at=clock.now())  # fmt: skip
    reading = Reading("person", PersonRef(person.id), "names 1")
    store.write(Change(act=one.act, what="", by="me", recorded_at=one.recorded_at, statements=(one,),
                       readings=((one.id, reading),)))  # fmt: skip


def test_the_projections_kept_up_are_those_made_anew(store: Store, clock: Clock) -> None:
    people = [Subject(Kind.PERSON, clock.new_id()) for _ in range(3)]
    for person, name in zip(people, ("Mari Tamm", "Mart Mägi", "Mall Rourke"), strict=True):
        tell(store, clock, "name", name, person)
    tell(store, clock, "nickname", "Manni", people[1])
    tell(store, clock, "place", "Mahu", ITEM)
    _meant(store, clock, people[0])
    withdraw(store, clock, tell(store, clock, "name", "Madli", people[2]).act)
    kept_up = _projections(store)
    store.writer.do(projections.rebuild)
    assert _projections(store) == kept_up
    assert all(kept_up[table] for table in schema.PROJECTIONS)


def test_names_come_the_most_recently_meant_first_however_many_begin_so(store: Store, clock: Clock) -> None:
    act = clock.new_id()
    told = [
        Statement(id=clock.new_id(), act=act, subject=Subject(Kind.PERSON, clock.new_id()), field="name",
                  words=f"Kristjan {'abcdefghij'[n % 10]}{n:03}", recorded_at=clock.now())
        for n in range(300)
    ]  # fmt: skip
    store.write(Change(act=act, what="", by="me", recorded_at=clock.now(), statements=tuple(told)))
    tell(store, clock, "nickname", "Krister", told[7].subject)
    _meant(store, clock, told[42].subject)
    for typed in ("k", "Kr", "kri", "KRIS", "krist"):
        found = store.complete_people(typed, 4)
        assert [ident for ident, _ in found] == [told[n].subject.id for n in (42, 7, 299, 298)], typed
    assert store.complete_people("kristjan b0") == [
        (told[n].subject.id, told[n].words) for n in (91, 81, 71, 61, 51, 41, 31, 21)
    ]
    assert [words for _, words in store.complete_people(" C04 ")] == ["Kristjan c042"]


def _tables(store: Store) -> set[tuple[str, str, str]]:
    """What the database is made of: its tables, views, triggers and indexes."""
    return set(store.db.execute("SELECT type, name, sql FROM sqlite_master"))


@pytest.mark.parametrize("name", ["naming", "audience", "asked"])
def test_rare_fields_go_by_their_index(store: Store, name: str) -> None:
    """SQLite uses it only for a query that names the field itself (Partial Indexes, 3.1)."""
    asked: list[str] = []
    store.db.set_trace_callback(asked.append)
    list(store.words_of((name,)))
    store.db.set_trace_callback(None)
    (query,) = asked
    plan = [row[3] for row in store.db.execute(f"EXPLAIN QUERY PLAN {query}")]
    assert any(f"USING INDEX told_{name}" in step for step in plan), plan


@pytest.mark.parametrize("emptied", [False, True], ids=["whole", "struck backup"])
def test_an_older_collection_is_brought_up_to_date(store: Store, clock: Clock, emptied: bool) -> None:
    """Tables of version 1, with their projections or (a backup that was struck) without."""
    people = [Subject(Kind.PERSON, clock.new_id()) for _ in range(2)]
    tell(store, clock, "name", "Mari Tamm", people[0])
    tell(store, clock, "name", "Mart Tamm", people[1])
    _meant(store, clock, people[0])
    first = tell(store, clock, "story", "one")
    tell(store, clock, "story", "two", replaces=first.id)
    wanted = _projections(store)
    older = store.folder / "older"
    (older / "backups").mkdir(parents=True)
    old = sqlite3.connect(older / "collection.sqlite", isolation_level=None)
    schema.migrate(old, schema.MIGRATIONS[:1])
    old.execute("ATTACH ? AS newer", (str(store.path),))
    for table in ("statement", "act", "meta"):
        old.execute(f"INSERT INTO {table} SELECT * FROM newer.{table}")
    columns = ", ".join(row[1] for row in old.execute("PRAGMA table_info (reading)"))
    old.execute(f"INSERT INTO reading SELECT {columns} FROM newer.reading")
    if not emptied:
        old.execute("INSERT INTO name SELECT folded, subject, kind, words FROM newer.name")
        old.execute("INSERT INTO used SELECT * FROM newer.used")
    old.close()
    with open_store(older) as opened:
        assert [ident for ident, _ in opened.complete_people("ma")] == [people[0].id, people[1].id]
        assert words_in_force(opened) == ["two"]
        assert _projections(opened) == wanted
        assert _tables(opened) == _tables(store)
    assert list((older / "backups").glob("before-version-*"))


def test_numbers_are_given_once(store: Store, clock: Clock) -> None:
    tell(store, clock, "number", "TRA-0001")
    with pytest.raises(CouldNot, match="That number was given already"):
        tell(store, clock, "number", "TRA-0001", Subject(Kind.ITEM, clock.new_id()))
    assert store.next_number_count("TR", "A") == 2
    assert store.next_number_count("TR", "B") == 1


def test_a_number_withdrawn_is_not_given_again(store: Store, clock: Clock) -> None:
    withdraw(store, clock, tell(store, clock, "number", "TRA-0007").act)
    assert store.items() == []
    assert store.next_number_count("TR", "A") == 8


def test_the_order_of_items_is_the_same_in_short(store: Store, clock: Clock) -> None:
    """Ids alone, 16 bytes each, in the order of numbers; a number withdrawn is in neither."""
    assert store.item_ids() == b""
    for number in ("TRB-0002", "TRA-10000", "TRA-9999", "TRB-0001", "TRA-0003"):
        last = tell(store, clock, "number", number, Subject(Kind.ITEM, clock.new_id()))
    withdraw(store, clock, last.act)
    assert [number for number, _ in store.items()] == ["TRA-9999", "TRA-10000", "TRB-0001", "TRB-0002"]
    assert store.item_ids() == b"".join(uuid.UUID(ident).bytes for _, ident in store.items())


@pytest.mark.parametrize("asked", ["haapsalu", "HAAPSALU", "mägi haap", 'haap" OR "x', "haap*", "(haap)"])
def test_search_folds_and_takes_nothing_for_syntax(store: Store, clock: Clock, asked: str) -> None:
    tell(store, clock, "number", "TRA-0001")
    tell(store, clock, "story", "Mägi at Haapsalu")
    found = store.search(asked)
    assert [hit.number for hit in found] == ([] if "OR" in asked else ["TRA-0001"])


def test_drafts_are_found_and_become_statements(store: Store, clock: Clock) -> None:
    store.save_draft(Draft(subject=ITEM, field="story", words="half a sen", updated_at=clock.now()))
    assert [(hit.words, hit.draft) for hit in store.search("half")] == [("half a sen", True)]
    act = clock.new_id()
    store.write(Change(act=act, what="", by="", recorded_at=clock.now(), clears_drafts=((ITEM.id, "story", ""),)))
    assert store.drafts() == []


def test_a_settlement_is_remembered_with_what_it_weighed(store: Store, clock: Clock) -> None:
    tell(store, clock, "number", "TRA-0001")
    one, two = tell(store, clock, "date", "1912"), tell(store, clock, "date", "1913")
    act = clock.new_id()
    made = Settlement(
        id=clock.new_id(), subject=ITEM, field="date", outcome="choose", weighed=(one.id, two.id), chosen=one.id
    )
    store.write(Change(act=act, what="settle", by="me", recorded_at=clock.now(), settlements=(made,)))
    (material,) = store.about_items()
    assert material.chosen == {"date": one.id}
    assert material.settled == {one.id, two.id}


def test_a_second_writer_is_told_and_may_read(store: Store, clock: Clock) -> None:
    tell(store, clock, "story", "one")
    with pytest.raises(CouldNot, match="Another Boxlore is writing"):
        open_store(store.folder)
    with open_store(store.folder, fallback_read_only=True) as second:
        assert not second.writable
        assert [one.words for one, _ in second.statements(ITEM)] == ["one"]
        with pytest.raises(CouldNot, match="Another Boxlore is writing"):
            tell(second, clock, "story", "two")


def test_a_folder_that_cannot_be_written_to_has_no_other_one_to_close(tmp_path: Path, clock: Clock) -> None:
    """A folder in the place of the lock refuses whoever asks, the system's own manager too (open(2): EISDIR)."""
    create(tmp_path, clock=clock).close()
    lock = tmp_path / "collection.lock"
    lock.unlink()
    lock.mkdir()
    with pytest.raises(
        CouldNot, match=r"cannot be written to .is a directory.*be written to, or ask whoever"
    ) as caught:
        open_store(tmp_path)
    assert "other one" not in str(caught.value)
    with open_store(tmp_path, fallback_read_only=True) as opened:
        assert not opened.writable


def test_a_database_that_is_newer_is_not_touched(tmp_path: Path, clock: Clock) -> None:
    create(tmp_path, clock=clock).close()
    path = tmp_path / "collection.sqlite"
    db = sqlite3.connect(path)
    db.execute(f"PRAGMA user_version = {schema.VERSION + 1}")
    db.commit()
    db.execute("PRAGMA wal_checkpoint(TRUNCATE)")
    db.close()
    before = path.read_bytes()
    with pytest.raises(CouldNot, match="written by a newer Boxlore"):
        open_store(tmp_path)
    assert path.read_bytes() == before


def test_a_damaged_database_is_not_touched_and_its_backup_named(store: Store, clock: Clock) -> None:
    backup = back_up(store, "before a test", clock.now())
    store.close()
    path = store.folder / "collection.sqlite"
    path.write_bytes(b"x" * 5000)
    with pytest.raises(CouldNot, match="is damaged") as caught:
        open_store(store.folder)
    assert str(backup) in str(caught.value)
    assert path.read_bytes() == b"x" * 5000


def test_a_damaged_page_is_found_before_anything_is_written(store: Store, clock: Clock) -> None:
    """Words added to a damaged file are lost with it: SQLite's own quick check comes before the first of them."""
    for count in range(400):
        tell(store, clock, "story", f"It rained, time {count}")
    backup = back_up(store, "before a test", clock.now())
    store.close()
    path = store.folder / "collection.sqlite"
    data = bytearray(path.read_bytes())
    at = len(data) // 4096 // 2 * 4096
    data[at : at + 400] = bytes(byte ^ 0x5A for byte in data[at : at + 400])
    path.write_bytes(data)
    with pytest.raises(CouldNot, match="is damaged") as caught:
        open_store(store.folder)
    assert str(backup) in str(caught.value) and path.read_bytes() == data
    check_ahead(path)  # what a check begun beforehand finds is found by the opening too
    with pytest.raises(CouldNot, match="is damaged"):
        open_store(store.folder)
    assert path.read_bytes() == data


def test_a_check_that_was_begun_ahead_holds_for_the_file_as_it_was(store: Store, clock: Clock) -> None:
    for count in range(400):
        tell(store, clock, "story", f"It rained, time {count}")
    store.close()
    path = store.folder / "collection.sqlite"
    whole = path.read_bytes()
    check_ahead(path)
    open_store(store.folder).close()
    check_ahead(path)
    data = bytearray(whole)
    at = len(data) // 4096 // 2 * 4096
    data[at : at + 400] = bytes(400)
    path.write_bytes(data)  # damaged after the check
    with pytest.raises(CouldNot, match="is damaged"):
        open_store(store.folder)
    path.write_bytes(whole)
    open_store(store.folder).close()
    check_ahead(store.folder / "not there.sqlite")  # nothing to check


@pytest.mark.parametrize("first", [20, 60, 68])
def test_a_damaged_header_says_the_way_back(store: Store, clock: Clock, first: int) -> None:
    """Bytes of the header that tell the program and the version (SQLite file format, 1.3)."""
    tell(store, clock, "story", "It rained")
    backup = back_up(store, "before a test", clock.now())
    store.close()
    path = store.folder / "collection.sqlite"
    data = bytearray(path.read_bytes())
    end = 64 if first == 60 else 420
    data[first:end] = bytes(byte ^ 0x5A for byte in data[first:end])
    path.write_bytes(data)
    with pytest.raises(CouldNot, match=r"is damaged .* boxlore restore") as caught:
        open_store(store.folder)
    assert str(backup) in str(caught.value)


def test_a_byte_turned_anywhere_in_the_header_is_refused_or_costs_nothing(store: Store, clock: Clock) -> None:
    """Each byte of the header, and two in the free room of pages (SQLite file format, 1.3 and 1.6): either the file is
    refused, as it is, with the way back; or every word told is still there, and the next one too."""
    stories = {f"It rained, time {count}" for count in range(60)}
    for words in sorted(stories):
        tell(store, clock, "story", words)
    back_up(store, "before a test", clock.now())
    store.close()
    path, refused = store.folder / "collection.sqlite", set()
    whole = path.read_bytes()
    for at in (*range(100), 200, 5000):
        data = bytearray(whole)
        data[at] ^= 0x5A
        path.write_bytes(data)
        try:
            with open_store(store.folder) as opened:
                tell(opened, clock, "story", "Then it snowed")
        except CouldNot as error:
            refused.add(at)
            assert path.read_bytes() == data, at
            is_version = at == 63  # a small number is that of a newer Boxlore
            assert is_version or ("is damaged" in str(error) and "boxlore restore" in str(error)), (at, str(error))
            continue
        with closing(sqlite3.connect(path)) as db:
            assert db.execute("PRAGMA integrity_check").fetchone() == ("ok",), at
            told = {words for (words,) in db.execute("SELECT words FROM statement WHERE field = 'story'")}
        assert told == stories | {"Then it snowed"}, at
    assert {0, 16, 18, 47, 52, 68} <= refused and not refused & {24, 72, 200, 5000}


def test_a_folder_without_a_collection_says_what_to_do(tmp_path: Path) -> None:
    with pytest.raises(CouldNot, match="Name its folder with -c FOLDER"):
        open_store(tmp_path)


SECRET = "Liisi danced with the Wrong Brother"


def test_strike_leaves_no_byte_in_log_drafts_index_or_backup(store: Store, clock: Clock) -> None:
    first = tell(store, clock, "story", SECRET)
    tell(store, clock, "story", SECRET + ", twice", replaces=first.id)
    kept = tell(store, clock, "story", "It rained")
    back_up(store, "before a test", clock.now())
    store.save_draft(Draft(subject=ITEM, field="story", words=SECRET, updated_at=clock.now()))
    report = strike(store, [first.id], by="me", now=clock.now())
    assert (report.struck, report.finished, report.left_in) == (2, True, ())
    assert words_in_force(store) == ["It rained"]
    assert store.search("wrong") == []
    assert list(files_holding(store.folder, [SECRET])) == []
    assert b"wrong brother" not in b"".join(p.read_bytes().lower() for p in store.folder.rglob("*") if p.is_file())
    assert store.search("rained")[0].words == kept.words


def test_strike_lets_go_of_the_readings_that_hold_the_words(store: Store, clock: Clock) -> None:
    told = tell(store, clock, "place", SECRET)
    reading = Reading("place", PlaceReading(SECRET, "kept"), "places 1")
    store.write(
        Change(act=clock.new_id(), what="read", by="me", recorded_at=clock.now(), readings=((told.id, reading),))
    )
    ((_, stored),) = store.statements(ITEM)
    assert stored is not None and SECRET in stored.value.to_json().values()  # type: ignore[union-attr]  # a place
    assert read_value.cache_info().currsize
    strike(store, [told.id], by="me", now=clock.now())
    assert read_value.cache_info().currsize == 0
    assert list(files_holding(store.folder, [SECRET])) == []


def test_strike_says_where_else_the_words_stand(store: Store, clock: Clock) -> None:
    (store.folder / "note.txt").write_text(SECRET.upper(), encoding="utf-16")
    one = tell(store, clock, "story", SECRET)
    report = strike(store, [one.id], by="me", now=clock.now())
    assert [Path(path).name for path in report.left_in] == ["note.txt"]


def test_strike_waits_for_a_reader_says_so_and_finishes_when_it_leaves(store: Store, clock: Clock) -> None:
    one = tell(store, clock, "story", SECRET)
    reader = sqlite3.connect(store.path, check_same_thread=False)
    reader.execute("BEGIN")
    reader.execute("SELECT count(*) FROM statement").fetchone()
    heard: list[str] = []
    threading.Timer(1.0, reader.close).start()
    report = strike(store, [one.id], by="me", now=clock.now(), waiting=heard.append)
    assert report.finished and len(heard) == 1 and "Another program" in heard[0]
    assert list(files_holding(store.folder, [SECRET])) == []
    assert not pending(store)


def test_a_strike_that_was_stopped_is_remembered(store: Store, clock: Clock) -> None:
    one = tell(store, clock, "story", SECRET)
    reader = sqlite3.connect(store.path)
    reader.execute("BEGIN")
    reader.execute("SELECT count(*) FROM statement").fetchone()
    report = strike(store, [one.id], by="me", now=clock.now(), stopped=lambda: True)
    assert not report.finished and pending(store)
    reader.close()


KILLED = """
import sys
from pathlib import Path
from boxlore.core.statements import Kind, Subject
from boxlore.store.opening import open_store
from boxlore.store.values import Draft
with open_store(Path(sys.argv[1])) as store:
    for count in range(1, 100000):
        draft = Draft(subject=Subject(Kind.ITEM, "x"), field="story", words="w" * count, updated_at="2026")
        store.save_draft(draft)
        print(count, flush=True)
"""


def test_kill_minus_nine_loses_nothing_that_was_called_saved(tmp_path: Path, clock: Clock) -> None:
    create(tmp_path, clock=clock).close()
    env = {**os.environ, "PYTHONPATH": os.pathsep.join(sys.path)}
    child = subprocess.Popen([sys.executable, "-c", KILLED, str(tmp_path)], stdout=subprocess.PIPE, text=True, env=env)
    assert child.stdout is not None
    saved = [int(child.stdout.readline()) for _ in range(40)]
    child.send_signal(signal.SIGKILL)
    rest, _ = child.communicate()
    saved += [int(line) for line in rest.splitlines() if line.strip()]
    with open_store(tmp_path) as store:
        (draft,) = store.drafts()
    assert len(draft.words) >= saved[-1]


def test_what_is_typed_goes_before_a_waiting_task(store: Store, clock: Clock) -> None:
    order: list[str] = []
    started = threading.Event()

    def slow(db: sqlite3.Connection) -> None:
        started.set()
        time.sleep(0.2)

    threads = [threading.Thread(target=lambda: store.writer.do(slow))]
    threads.append(threading.Thread(target=lambda: store.writer.do(lambda db: order.append("task"))))
    threads.append(threading.Thread(target=lambda: store.writer.do(lambda db: order.append("key"), 0)))
    threads[0].start()
    started.wait()
    for one in threads[1:]:
        one.start()
        time.sleep(0.05)
    for one in threads:
        one.join()
    assert order == ["key", "task"]
