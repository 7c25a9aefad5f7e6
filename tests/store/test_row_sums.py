"""A bit that turned in a row of the log is noticed: BLAKE2b (RFC 7693) as hashlib has it; the file's bytes are changed
beside SQLite, whose own checks find nothing."""

import sqlite3
from contextlib import closing
from hashlib import blake2b
from pathlib import Path

import pytest

from boxlore.core.people.reference import PersonRef
from boxlore.core.statements import Kind, Reading, Statement, Subject
from boxlore.store import schema
from boxlore.store.backups import read_only
from boxlore.store.opening import create, open_store
from boxlore.store.row_sums import AlteredRow, row_sum
from boxlore.store.strike import strike
from boxlore.store.strike_rewriting import strike_backup
from boxlore.store.values import Change, Settlement
from boxlore.tasks.collection.clock import Clock

ITEM = Subject(Kind.ITEM, "11111111-1111-7111-8111-111111111111")
WORDS = "The nets at Haapsalu, näkk ja õngenöör"


def told(ident: str, words: str, field: str = "story", replaces: str = "") -> Statement:
    return Statement(
        id=ident, act="a", subject=ITEM, field=field, words=words, recorded_at="2026", moment=None, replaces=replaces
    )


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    settled = Settlement(id="d1", subject=ITEM, field="date", outcome="settled", chosen="s2", weighed=("s2", "s3"))
    change = Change(
        act="a",
        what="telling",
        by="me",
        recorded_at="2026",
        statements=(told("s1", WORDS), told("s2", "June 1931", "date"), told("s3", "1932", "date")),
        readings=(("s2", Reading("person", PersonRef("p-1931-06"), "reader", "en", asks=False, confirmed=True)),),
        settlements=(settled,),
    )
    with create(tmp_path, clock=Clock()) as store:
        store.write(change)
        assert store.altered_rows() == [] and store.rows_without_sum() == 0
    return tmp_path


def turn(folder: Path, old: bytes, new: bytes) -> None:
    """Change bytes of the file in every place, and see that SQLite finds nothing."""
    path = folder / "collection.sqlite"
    data = path.read_bytes()
    assert old in data and len(old) == len(new)
    path.write_bytes(data.replace(old, new))
    with closing(read_only(path)) as db:
        assert db.execute("PRAGMA quick_check").fetchone() == ("ok",)


@pytest.mark.parametrize(
    ("old", "new", "table", "field"),
    [
        (b"The nets at Haap", b"The jets at Haap", "statement", "story"),
        ("näkk".encode(), b"n\xe3\xa4kk", "statement", "story"),  # no UTF-8 any more
        (b"1931-06", b"1971-06", "reading", "date"),
        (b"settled", b"settlee", "settlement", "date"),
    ],
)
def test_a_letter_that_turned_is_found(folder: Path, old: bytes, new: bytes, table: str, field: str) -> None:
    turn(folder, old, new)
    with open_store(folder, write=False) as store:
        assert store.altered_rows() == [AlteredRow(table, "item", ITEM.id, field)]


def test_a_sum_that_is_gone_is_found(folder: Path) -> None:
    with closing(sqlite3.connect(folder / "collection.sqlite")) as db, db:
        db.execute("DELETE FROM statement_sum WHERE row = 1")
    with open_store(folder, write=False) as store:
        assert [row.field for row in store.altered_rows()] == ["story"]


def test_the_sum_is_over_the_columns_as_they_are_on_the_disk() -> None:
    assert row_sum(["ä", 12, None, True]) == blake2b(b"\xc3\xa4\x0012\x00\xff\x001", digest_size=8).digest()
    assert row_sum(["ä", 12]) == row_sum(["ä".encode(), 12])


def test_a_strike_takes_the_sums_out_with_their_rows(folder: Path) -> None:
    with open_store(folder) as store:
        store.write(Change(act="b", what="more", by="me", recorded_at="2027", statements=(told("s4", "A rope."),)))
    backup = folder / "backup.sqlite"
    backup.write_bytes((folder / "collection.sqlite").read_bytes())
    with open_store(folder) as store:
        strike(store, ["s1"], by="me", now="2027")
        assert store.altered_rows() == [] and store.rows_without_sum() == 0
    strike_backup(backup, [("s1", "item", ITEM.id, "story", "2027", "me")])
    for path in (backup, folder / "collection.sqlite"):
        with closing(read_only(path)) as db:
            assert db.execute("SELECT count(*) FROM statement_sum").fetchone() == (3,)
            assert db.execute("SELECT count(*) FROM statement_sum WHERE row NOT IN (SELECT row FROM statement)")


@pytest.fixture
def older(tmp_path: Path) -> Path:
    """A collection of the version before the sums, with one statement."""
    with create(tmp_path, clock=Clock()) as store:
        store.write(Change(act="a", what="telling", by="me", recorded_at="2026", statements=(told("s1", WORDS),)))
    path = tmp_path / "collection.sqlite"
    with closing(sqlite3.connect(path, isolation_level=None)) as db:
        db.executescript("""DROP TRIGGER statement_sum_goes; DROP TABLE statement_sum;
            ALTER TABLE reading DROP COLUMN sum; ALTER TABLE settlement DROP COLUMN sum;
            DELETE FROM meta WHERE name = 'sums_from'; DROP INDEX reading_days;
            DROP INDEX told_naming; DROP INDEX told_audience; DROP INDEX told_asked; PRAGMA user_version = 2;""")
    return tmp_path


def test_an_older_collection_has_no_sums_for_what_it_has_and_says_so(older: Path) -> None:
    with open_store(older, write=False) as store:  # as where nothing can be written
        assert store.altered_rows() == [] and store.rows_without_sum() == 1
    with open_store(older) as store:
        assert store.altered_rows() == [] and store.rows_without_sum() == 1
        store.write(Change(act="b", what="more", by="me", recorded_at="2027", statements=(told("s2", "A rope."),)))
        assert store.rows_without_sum() == 1
    turn(older, b"A rope.", b"A robe.")
    with open_store(older, write=False) as store:
        assert [row.field for row in store.altered_rows()] == ["story"]
        assert schema.version_of(store.db) == schema.VERSION
