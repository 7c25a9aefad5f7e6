"""A database is looked at before it is opened; errors of SQLite become sentences (SQLite file format, 1.3)."""

import resource
import sqlite3
from contextlib import closing
from pathlib import Path

import pytest

from boxlore.core.errors import CouldNot
from boxlore.store import schema
from boxlore.store.database_file import DATABASE, check_file, errors_in_words, make_database
from boxlore.store.locking import Lock


@pytest.fixture
def path(tmp_path: Path) -> Path:
    make_database(tmp_path / DATABASE, "c")
    return tmp_path / DATABASE


def test_a_collection_is_made_once_and_only_where_it_can_be(path: Path, tmp_path: Path) -> None:
    check_file(path)
    with pytest.raises(CouldNot, match=f"{tmp_path} already holds a collection. Open it, or choose another folder."):
        make_database(path, "d")
    with pytest.raises(CouldNot, match="No collection could be made in "):
        make_database(tmp_path / "none" / DATABASE, "d")
    assert sorted(each.name for each in tmp_path.iterdir()) == [DATABASE]


def test_a_collection_that_could_not_be_made_leaves_nothing_behind(tmp_path: Path) -> None:
    """A limit on the size of files is met while the tables are made (setrlimit(2), RLIMIT_FSIZE)."""
    before = resource.getrlimit(resource.RLIMIT_FSIZE)
    resource.setrlimit(resource.RLIMIT_FSIZE, (20_000, before[1]))
    try:
        with pytest.raises(CouldNot, match="No collection could be made in "):
            make_database(tmp_path / DATABASE, "c")
    finally:
        resource.setrlimit(resource.RLIMIT_FSIZE, before)
    assert not list(tmp_path.iterdir())


def test_what_is_no_collection_of_ours_is_not_touched(path: Path, tmp_path: Path) -> None:
    other = tmp_path / "other.sqlite"
    with closing(sqlite3.connect(other)) as db:
        db.execute("CREATE TABLE x (y)")
        db.commit()
    (tmp_path / "text.sqlite").write_text("not a database" * 20, "utf-8")
    (tmp_path / "short.sqlite").write_bytes(path.read_bytes()[:50])
    (tmp_path / "cut.sqlite").write_bytes(path.read_bytes()[:-4096])
    refused = {
        "none.sqlite": "There is no collection in ",
        "other.sqlite": "is a database of another program. Nothing was touched.",
        "text.sqlite": "its first bytes are not those of a database",
        "short.sqlite": "its first bytes are not those of a database",
        "cut.sqlite": "it is cut short",
    }
    for name, why in refused.items():
        before = (tmp_path / name).read_bytes() if (tmp_path / name).exists() else None
        with pytest.raises(CouldNot) as fault:
            check_file(tmp_path / name)
        assert why in str(fault.value), name
        assert ((tmp_path / name).read_bytes() if before is not None else None) == before
    with pytest.raises(CouldNot, match=r"cannot be read \(Is a directory\). Ask whoever owns the file."):
        check_file(tmp_path)


def test_a_file_that_is_short_of_its_header_may_have_the_rest_in_its_log(path: Path, tmp_path: Path) -> None:
    path.write_bytes(path.read_bytes()[:-4096])
    (tmp_path / f"{DATABASE}-wal").write_bytes(b"log")
    check_file(path)


def test_tables_of_a_newer_program_are_left_alone(path: Path) -> None:
    with closing(sqlite3.connect(path)) as db:
        db.execute(f"PRAGMA user_version = {schema.VERSION + 1}")
    with pytest.raises(CouldNot, match=r"was written by a newer Boxlore .* Install the newest Boxlore"):
        check_file(path)


def closed(path: Path) -> None:
    db = sqlite3.connect(path)
    db.close()
    db.execute("SELECT 1")


def no_table(path: Path) -> None:
    with closing(sqlite3.connect(path)) as db:
        db.execute("SELECT * FROM nowhere")


def no_database(path: Path) -> None:
    path.write_bytes(b"x" * 4096)
    with closing(sqlite3.connect(path)) as db:
        db.execute("SELECT * FROM statement")


def no_utf8(path: Path) -> None:
    with closing(sqlite3.connect(path)) as db:
        db.execute("SELECT CAST(x'ff' AS TEXT)").fetchone()


def interrupted(path: Path) -> None:
    with closing(sqlite3.connect(path)) as db:
        db.set_progress_handler(lambda: 1, 1)
        db.execute("SELECT count(*) FROM sqlite_master, sqlite_master").fetchone()


READINGS = [
    (closed, "The collection was closed while it was being read."),
    (interrupted, "The collection was closed while it was being read."),
    (no_table, "could not be read (no such table: nowhere). Close other programs that use it and try again."),
    (no_database, "file is not a database"),
    (no_utf8, "is damaged"),
]


@pytest.mark.parametrize(("read", "sentence"), READINGS, ids=[read.__name__ for read, _ in READINGS])
def test_an_error_while_reading_becomes_a_sentence(path: Path, read, sentence: str) -> None:  # type: ignore[no-untyped-def]
    with pytest.raises(CouldNot) as fault, errors_in_words(path):
        read(path)
    assert sentence in str(fault.value)


def test_the_lock_is_one_programs_at_a_time(tmp_path: Path) -> None:
    """Two open files of one program lock each other out too (Linux, flock(2))."""
    first, second = Lock(tmp_path), Lock(tmp_path)
    assert first.take() and not second.take()
    first.free()
    first.free()
    assert second.take()
    second.free()
