"""Bringing a backup back, from every state a database can be in, killed at any moment (our own rules; what SQLite
calls whole is its own `PRAGMA integrity_check`)."""

import os
import random
import shutil
import signal
import sqlite3
import subprocess
import sys
import time
from collections.abc import Callable
from contextlib import closing
from pathlib import Path

import pytest
from tests.drawn import some

from boxlore.core.errors import CouldNot
from boxlore.core.statements import Kind, Statement, Subject
from boxlore.store import schema
from boxlore.store.backups import back_up, holdings, keep, listed
from boxlore.store.opening import Store, create, open_store
from boxlore.store.restoring import bring_back
from boxlore.store.strike import files_holding, strike
from boxlore.store.values import Change, Draft
from boxlore.tasks.collection.clock import Clock

NOW = "2026-11-25T10:15:30.250Z"
SECRET = "Zanzibar"


@pytest.fixture
def clock() -> Clock:
    return Clock()


def tell(store: Store, clock: Clock, words: str, field: str = "story") -> Statement:
    act, item = clock.new_id(), Subject(Kind.ITEM, clock.new_id())
    made = Statement(
        id=clock.new_id(), act=act, subject=item, field=field, words=words, recorded_at=clock.now(), by="me"
    )
    store.write(Change(act=act, what=words[:40], by="me", recorded_at=clock.now(), statements=(made,)))
    return made


def told(folder: Path) -> set[str]:
    with closing(sqlite3.connect(folder / "collection.sqlite")) as db:
        assert db.execute("PRAGMA integrity_check").fetchone() == ("ok",)
        return {words for (words,) in db.execute("SELECT words FROM statement")}


@pytest.fixture
def folder(tmp_path: Path, clock: Clock) -> Path:
    """A collection in which 300 stories were told, then a backup made, then one more told."""
    with create(tmp_path, clock=clock) as store:
        tell(store, clock, "TRA-0001", "number")
        for count in range(300):
            tell(store, clock, f"It rained, time {count}")
        back_up(store, "on closing", "2026-11-24T10:00:00Z")
        tell(store, clock, "TRA-0002", "number")
        tell(store, clock, "Then it snowed")
    return tmp_path


def backup_of(folder: Path) -> Path:
    return next(backup.path for backup in listed(folder) if backup.why == "on closing")


def backups_of(folder: Path) -> list[Path]:
    return [backup.path for backup in listed(folder)]


def missing(path: Path) -> None:
    path.unlink()


def zero_bytes(path: Path) -> None:
    path.write_bytes(b"")


def a_few_bytes(path: Path) -> None:
    path.write_bytes(path.read_bytes()[:50])


def truncated(path: Path) -> None:
    path.write_bytes(path.read_bytes()[: path.stat().st_size * 2 // 3])


def cut_within_a_page(path: Path) -> None:
    path.write_bytes(path.read_bytes()[:-1])


def other_bytes(path: Path) -> None:
    path.write_bytes(os.urandom(path.stat().st_size))


def header_flipped(path: Path) -> None:
    data = bytearray(path.read_bytes())
    data[3] ^= 0x10
    path.write_bytes(data)


def page_flipped(path: Path) -> None:
    data = bytearray(path.read_bytes())
    page = int.from_bytes(data[16:18], "big")
    for number in range(2, len(data) // page, 3):
        data[number * page : number * page + 8] = b"\xa5" * 8
    path.write_bytes(data)


def not_utf8(path: Path) -> None:
    """Bytes of the words themselves, which SQLite does not check: the structure stays whole."""
    path.write_bytes(path.read_bytes().replace(b"Then it snowed", b"Then \xff\xfe snowed"))


def another_programs(path: Path) -> None:
    path.unlink()
    with sqlite3.connect(path) as db:
        db.execute("CREATE TABLE recipe (words)")
    db.close()


BROKEN: list[Callable[[Path], None]] = [
    missing, zero_bytes, a_few_bytes, truncated, cut_within_a_page, other_bytes, header_flipped, page_flipped,
    another_programs,
]  # fmt: skip


@pytest.mark.parametrize("break_it", BROKEN, ids=lambda each: each.__name__)
def test_every_kind_of_broken_database_is_brought_back_and_its_bytes_kept(
    folder: Path, break_it: Callable[[Path], None]
) -> None:
    path = folder / "collection.sqlite"
    break_it(path)
    remains = path.read_bytes() if path.exists() else None
    brought = bring_back(folder, backup_of(folder), NOW)
    assert (brought.holds.items, brought.holds.statements) == (1, 301)
    assert told(folder) == {"TRA-0001"} | {f"It rained, time {count}" for count in range(300)}
    if remains is None:
        assert brought.kept is None
    else:
        assert brought.kept is not None and brought.kept.read_bytes() == remains
        assert brought.kept.name == "20261125T101530Z-damaged.sqlite"
    with open_store(folder) as store:  # it can be written to again
        assert store.search("rained 299")
    assert not list(folder.glob("*.part*"))


def index_damaged(path: Path) -> None:
    """The first byte of an index of acts, which no count of statements asks: SQLite finds it, the rows can be read."""
    with closing(sqlite3.connect(path)) as db:
        (root,) = db.execute("SELECT rootpage FROM sqlite_schema WHERE name = 'act_time'").fetchone()
        assert db.execute("PRAGMA wal_checkpoint(TRUNCATE)")
    data = bytearray(path.read_bytes())
    data[(root - 1) * int.from_bytes(data[16:18], "big")] ^= 0xFF
    path.write_bytes(data)


@pytest.mark.parametrize(
    ("break_it", "lost"),
    [
        (index_damaged, 2),  # all 303 can be counted: two were told after the backup of 301
        (truncated, 0),  # a part of it cannot be read, so nothing is said of it
        (missing, 0),
    ],
)
def test_what_only_a_damaged_one_held_is_counted(folder: Path, break_it: Callable[[Path], None], lost: int) -> None:
    """Its words may still be read from it; the backup that comes back does not have them."""
    break_it(folder / "collection.sqlite")
    assert bring_back(folder, backup_of(folder), NOW).lost_statements == lost


@pytest.mark.parametrize("break_it", [*BROKEN[1:-1], not_utf8], ids=lambda each: each.__name__)
def test_opening_a_broken_database_says_the_way_back(folder: Path, break_it: Callable[[Path], None]) -> None:
    """The sentence names the command, the day and the file; the text that is no UTF-8 is not quoted."""
    break_it(folder / "collection.sqlite")
    with pytest.raises(CouldNot) as caught, open_store(folder, write=False) as store:
        assert list(store.subjects("item"))
        store.rebuild()
    sentence = str(caught.value)
    assert "is damaged" in sentence and "snowed" not in sentence
    assert f"boxlore restore can bring back the backup of {listed(folder)[0].day} ({backup_of(folder)})" in sentence


@pytest.mark.parametrize("break_it", [missing, zero_bytes, truncated, other_bytes], ids=lambda each: each.__name__)
def test_a_log_that_lay_beside_is_kept_and_never_taken_for_the_new_ones(
    folder: Path, clock: Clock, break_it: Callable[[Path], None]
) -> None:
    """Killed while the log was full, then broken: the log holds words that are nowhere else."""
    store = open_store(folder)
    tell(store, clock, "Only in the log")
    beside = folder / "beside"
    beside.mkdir()
    for name in ("collection.sqlite", "collection.sqlite-wal"):
        shutil.copy(folder / name, beside / name)
    store.close()
    for name in ("collection.sqlite", "collection.sqlite-wal"):
        shutil.move(beside / name, folder / name)
    break_it(folder / "collection.sqlite")
    brought = bring_back(folder, backup_of(folder), NOW)
    log = folder / "backups" / "20261125T101530Z-damaged.sqlite-wal"
    assert b"Only in the log" in log.read_bytes()
    assert brought.kept is not None and brought.kept.exists()
    assert len(told(folder)) == 301 and "Only in the log" not in told(folder)


def test_a_sound_one_becomes_a_backup_that_can_be_brought_back_itself(folder: Path) -> None:
    before = told(folder)
    brought = bring_back(folder, backup_of(folder), NOW)
    assert brought.kept is not None and brought.kept.name == "20261125T101530Z-before-restoring.sqlite"
    assert brought.only_before == ("TRA-0002",)
    assert "Then it snowed" not in told(folder)
    again = bring_back(folder, brought.kept, NOW)
    assert told(folder) == before and again.only_before == ()


def test_one_that_the_newest_backup_holds_is_not_kept_twice(folder: Path) -> None:
    with open_store(folder) as store:
        newest = back_up(store, "on closing", "2026-11-24T22:00:00Z")
    assert bring_back(folder, backups_of(folder)[-1], NOW).kept == newest
    assert len(listed(folder)) == 2


def test_a_number_given_since_is_not_given_again(folder: Path) -> None:
    bring_back(folder, backup_of(folder), NOW)
    with open_store(folder) as store:
        assert [number for number, _ in store.items()] == ["TRA-0001"]
        assert (store.next_number_count("TR", "A"), store.next_number_count("TR", "B")) == (3, 1)
    bring_back(folder, backup_of(folder), NOW)
    with open_store(folder) as store:
        assert store.next_number_count("TR", "A") == 3
    (folder / "collection.sqlite").write_bytes(b"")
    bring_back(folder, backup_of(folder), NOW)  # the backup of the one before still knows it
    with open_store(folder) as store:
        assert store.next_number_count("TR", "A") == 3


def test_words_in_the_log_are_kept_too(folder: Path, clock: Clock) -> None:
    """What was written last may still lie in the write-ahead log: it is in the backup that is made first."""
    store = open_store(folder)
    tell(store, clock, "Only in the log")
    wal = (folder / "collection.sqlite-wal").read_bytes()
    whole = (folder / "collection.sqlite").read_bytes()
    store.close()
    (folder / "collection.sqlite").write_bytes(whole)
    (folder / "collection.sqlite-wal").write_bytes(wal)
    brought = bring_back(folder, backup_of(folder), NOW)
    assert brought.kept is not None
    with closing(sqlite3.connect(brought.kept)) as db:
        assert db.execute("SELECT count(*) FROM statement WHERE words = 'Only in the log'").fetchone() == (1,)


READS = """
import sqlite3, sys
db = sqlite3.connect(sys.argv[1])
db.execute("SELECT count(*) FROM statement").fetchone()
print("reading", flush=True)
sys.stdin.read()
"""

WRITES = """
import sys
from pathlib import Path
from boxlore.store.opening import open_store
with open_store(Path(sys.argv[1]).parent):
    print("writing", flush=True)
    sys.stdin.read()
"""


@pytest.mark.parametrize("program", [READS, WRITES], ids=["reads", "writes"])
def test_refused_while_another_program_has_it_open(folder: Path, program: str) -> None:
    path = folder / "collection.sqlite"
    with open_store(folder):
        pass  # the log is in use again from here on
    env = {**os.environ, "PYTHONPATH": os.pathsep.join(sys.path)}
    other = subprocess.Popen(
        [sys.executable, "-c", program, str(path)], stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True, env=env
    )
    assert other.stdin is not None and other.stdout is not None
    other.stdout.readline()
    names = sorted(each.name for each in (folder / "backups").iterdir())
    with pytest.raises(CouldNot, match="Another program has the collection open"):
        bring_back(folder, backup_of(folder), NOW)
    other.communicate("")
    assert sorted(each.name for each in (folder / "backups").iterdir()) == names
    assert "Then it snowed" in told(folder)
    bring_back(folder, backup_of(folder), NOW)
    assert "Then it snowed" not in told(folder)


REFUSED: list[tuple[str, Callable[[Path], None], str]] = [
    ("page", page_flipped, "is damaged itself"),
    ("cut", truncated, "is no whole backup"),
    ("cut within a page", cut_within_a_page, "is no whole backup"),
    ("zero", zero_bytes, "is no whole backup"),
    ("other", another_programs, "is no whole backup"),
    ("missing", missing, "is no whole backup"),
]


@pytest.mark.parametrize(("break_it", "words"), [row[1:] for row in REFUSED], ids=[row[0] for row in REFUSED])
def test_a_broken_backup_is_refused_and_nothing_is_changed(
    folder: Path, break_it: Callable[[Path], None], words: str
) -> None:
    backup = backup_of(folder)
    break_it(backup)
    with pytest.raises(CouldNot, match=words):
        bring_back(folder, backup, NOW)
    assert "Then it snowed" in told(folder)
    assert [each for each in (folder / "backups").iterdir() if each != backup] == []


def test_a_backup_of_another_collection_is_refused(folder: Path, clock: Clock, tmp_path_factory) -> None:  # type: ignore[no-untyped-def]
    with create(tmp_path_factory.mktemp("other"), clock=clock) as store:
        tell(store, clock, "It hailed")
        stranger = shutil.copy(back_up(store, "on closing", NOW), folder / "backups" / "stranger.sqlite")
    with pytest.raises(CouldNot, match="a backup of another collection"):
        bring_back(folder, Path(stranger), NOW)
    assert "Then it snowed" in told(folder)


def test_a_newer_backup_is_refused(folder: Path) -> None:
    backup = backup_of(folder)
    with sqlite3.connect(backup) as db:
        db.execute(f"PRAGMA user_version = {schema.VERSION + 1}")
    db.close()
    with pytest.raises(CouldNot, match="written by a newer Boxlore"):
        bring_back(folder, backup, NOW)


def test_one_with_older_tables_is_brought_up_to_date(folder: Path) -> None:
    older = folder / "backups" / "older.sqlite"
    with sqlite3.connect(older, isolation_level=None) as old:
        schema.migrate(old, schema.MIGRATIONS[:1])
        old.execute("ATTACH ? AS newer", (str(backup_of(folder)),))
        for table in ("statement", "act", "meta"):
            old.execute(f"INSERT INTO {table} SELECT * FROM newer.{table}")
        columns = ", ".join(row[1] for row in old.execute("PRAGMA table_info (reading)"))
        old.execute(f"INSERT INTO reading SELECT {columns} FROM newer.reading")
    old.close()
    (folder / "collection.sqlite").unlink()
    bring_back(folder, older, NOW)
    with open_store(folder) as store:
        assert store.search("rained 299")


# words that were struck since


def strike_in(folder: Path, clock: Clock, statement: str) -> None:
    with open_store(folder) as store:
        report = strike(store, [statement], by="me", now=clock.now())
        assert report.finished and report.left_in == ()


@pytest.fixture
def escaped(folder: Path, clock: Clock) -> Path:
    """A backup with words that were struck since; it lay on another disk meanwhile. Two were told after it."""
    with open_store(folder) as store:
        secret = tell(store, clock, f"{SECRET} was where they danced that night")
        store.save_draft(Draft(subject=secret.subject, field="story", words=SECRET, updated_at=clock.now()))
        backup = back_up(store, "on closing", "2026-11-24T20:00:00Z")
        tell(store, clock, "Told later")
    away = backup.read_bytes()
    strike_in(folder, clock, secret.id)
    backup.write_bytes(away)
    assert len(list(files_holding(folder, [SECRET]))) == 1
    return backup


@pytest.mark.parametrize("break_it", some([None, *BROKEN]), ids=lambda each: each.__name__ if each else "whole")
def test_what_was_struck_since_does_not_come_back(
    folder: Path, escaped: Path, break_it: Callable[[Path], None] | None
) -> None:
    """The present database knows it, or another backup does; after the next opening the backup does not hold it."""
    if break_it is not None:
        break_it(folder / "collection.sqlite")
    brought = bring_back(folder, escaped, NOW)
    assert (brought.struck, brought.holds.statements) == (1, 303)
    in_use = (folder / "collection.sqlite").read_bytes()
    assert SECRET.lower().encode() not in in_use.lower()
    with open_store(folder) as store:
        assert store.search(SECRET) == [] and store.drafts() == []
        assert len(store.struck()) == 1  # so that no file brings it back either
    assert list(files_holding(folder, [SECRET])) == []


def test_drafts_typed_since_a_strike_that_the_backup_knows_stay(folder: Path, clock: Clock) -> None:
    with open_store(folder) as store:
        secret = tell(store, clock, SECRET)
        strike(store, [secret.id], by="me", now=clock.now())
        store.save_draft(Draft(subject=secret.subject, field="story", words="It hailed", updated_at=clock.now()))
        backup = back_up(store, "on closing", "2026-11-24T20:00:00Z")
    brought = bring_back(folder, backup, NOW)
    assert brought.struck == 0
    with open_store(folder) as store:
        assert [draft.words for draft in store.drafts()] == ["It hailed"]


def test_a_strike_that_still_waited_is_finished_in_what_is_brought_back(folder: Path, clock: Clock) -> None:
    """The words are taken out and the last step is not done: no backup was reached yet."""
    with open_store(folder) as store:
        secret = tell(store, clock, SECRET)
        backup = back_up(store, "on closing", "2026-11-24T20:00:00Z")
        untouched = backup.read_bytes()
        reader = sqlite3.connect(store.path)
        reader.execute("BEGIN")
        reader.execute("SELECT count(*) FROM statement").fetchone()
        assert not strike(store, [secret.id], by="me", now=clock.now(), stopped=lambda: True).finished
        reader.close()
    backup.write_bytes(untouched)
    assert bring_back(folder, backup, NOW).struck == 1
    open_store(folder).close()
    assert list(files_holding(folder, [SECRET])) == []


# killed

KILLED = """
import sys
from pathlib import Path
from boxlore.store.restoring import bring_back
print("ready", flush=True)
bring_back(Path(sys.argv[1]), Path(sys.argv[2]), sys.argv[3])
print("done", flush=True)
"""


@pytest.mark.parametrize("break_it", [None, page_flipped], ids=["whole", "damaged"])
def test_killed_at_any_moment_there_is_the_one_before_or_the_one_brought_back(
    folder: Path, escaped: Path, break_it: Callable[[Path], None] | None
) -> None:
    """A few moments here; tests/benchmarks/kill_restoring.py tries hundreds. After each kill it can be done again."""
    chance = random.Random(11)
    before = told(folder)
    path, backups = folder / "collection.sqlite", folder / "backups"
    if break_it is not None:
        break_it(path)
    start = {each.name: each.read_bytes() for each in (path, *backups.iterdir())}
    env = {**os.environ, "PYTHONPATH": os.pathsep.join(sys.path)}
    for _ in range(5):
        shutil.rmtree(backups)
        backups.mkdir()
        for name, data in start.items():
            (folder if name == path.name else backups).joinpath(name).write_bytes(data)
        child = subprocess.Popen(
            [sys.executable, "-c", KILLED, str(folder), str(escaped), NOW],
            stdout=subprocess.PIPE, text=True, env=env,
        )  # fmt: skip
        assert child.stdout is not None
        child.stdout.readline()
        time.sleep(chance.random() * 0.15)
        child.send_signal(signal.SIGKILL)
        child.communicate()
        if break_it is None:
            assert told(folder) in (before, (before - {"Told later"}))
            assert "Told later" in told(folder) or any("before-restoring" in each.name for each in backups.iterdir())
        elif path.read_bytes() != start[path.name]:
            assert (backups / "20261125T101530Z-damaged.sqlite").read_bytes() == start[path.name]
            assert told(folder) == before - {"Told later"}
        bring_back(folder, escaped, NOW)
        assert told(folder) == before - {"Told later"}
        open_store(folder).close()
        assert list(files_holding(folder, [SECRET])) == []
        assert all(holdings(backup) for backup in listed(folder) if backup.why != "damaged")


LIMIT = """
import resource, signal
signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
resource.setrlimit(resource.RLIMIT_FSIZE, (50_000, 50_000))
"""


def test_a_full_disk_changes_nothing(folder: Path) -> None:
    """The system's own limit on the size of a file (setrlimit(2)) refuses the copy."""
    limited = f"{LIMIT}{KILLED}"
    env = {**os.environ, "PYTHONPATH": os.pathsep.join(sys.path)}
    ran = subprocess.run(
        [sys.executable, "-c", limited, str(folder), str(backup_of(folder)), NOW],
        capture_output=True, text=True, env=env,
    )  # fmt: skip
    assert ran.returncode == 1 and "CouldNot: The backup could not be brought back (" in ran.stderr
    assert "Nothing was changed." in ran.stderr
    assert "Then it snowed" in told(folder)
    assert not list(folder.glob("*.part*")) and len(listed(folder)) == 1


def test_a_backup_the_keeper_put_there_comes_back_as_well(folder: Path) -> None:
    with open_store(folder) as store:
        mine = keep(store.db, folder, "from the stick")
    bring_back(folder, backup_of(folder), NOW)
    bring_back(folder, mine, NOW)
    assert "Then it snowed" in told(folder)
