"""Backups that are not as they were written (SHA-256 by hashlib; the list is one that `sha256sum -c` reads)."""

import hashlib
import shutil
import sqlite3
import subprocess
from contextlib import closing
from pathlib import Path

import pytest

from boxlore.core.errors import CouldNot
from boxlore.core.statements import Kind, Statement, Subject
from boxlore.store.backup_sums import LIST_NAME, forget, is_altered, note
from boxlore.store.backups import back_up, roll
from boxlore.store.opening import Store, create
from boxlore.store.restoring import bring_back, is_whole
from boxlore.store.strike import strike
from boxlore.store.values import Change
from boxlore.tasks.collection.clock import Clock

NOW = "2026-11-25T10:15:30.250Z"


def tell(store: Store, clock: Clock, words: str) -> Statement:
    act, item = clock.new_id(), Subject(Kind.ITEM, clock.new_id())
    statement = Statement(
        id=clock.new_id(), act=act, subject=item, field="story", words=words, recorded_at=clock.now(), by="me"
    )
    store.write(Change(act=act, what="told", by="me", recorded_at=clock.now(), statements=(statement,)))
    return statement


@pytest.fixture
def backup(tmp_path: Path) -> Path:
    clock = Clock()
    with create(tmp_path, clock=clock) as store:
        tell(store, clock, "Helmi wept words")
        return back_up(store, "on closing", "2026-11-24T10:00:00Z")


def alter(backup: Path) -> None:
    """Other words of the same length: SQLite finds nothing wrong with the file."""
    backup.write_bytes(backup.read_bytes().replace(b"Helmi wept", b"Helmi left"))
    with closing(sqlite3.connect(backup)) as db:
        assert db.execute("PRAGMA integrity_check").fetchone() == ("ok",)


def test_a_backup_whose_words_were_altered_is_not_brought_back(backup: Path, tmp_path: Path) -> None:
    assert is_whole(backup)
    alter(backup)
    assert not is_whole(backup)
    with pytest.raises(CouldNot, match="is not as it was written") as caught:
        bring_back(tmp_path, backup, NOW)
    assert LIST_NAME in str(caught.value)
    forget(backup)  # as a keeper who changed it does by hand
    assert bring_back(tmp_path, backup, NOW).holds.statements == 1


def test_the_list_is_one_that_other_programs_read(backup: Path, tmp_path: Path) -> None:
    digest = hashlib.sha256(backup.read_bytes()).hexdigest()
    assert (tmp_path / LIST_NAME).read_text("utf-8") == f"{digest}  backups/{backup.name}\n"
    if shutil.which("sha256sum"):
        subprocess.run(["sha256sum", "-c", LIST_NAME], cwd=tmp_path, check=True, capture_output=True)


def test_a_strike_notes_the_new_bytes_and_vouches_for_none_that_were_altered(tmp_path: Path) -> None:
    clock = Clock()
    with create(tmp_path, clock=clock) as store:
        secret = tell(store, clock, "Helmi wept words")
        good, bad = (back_up(store, why, "2026-11-24T10:00:00Z") for why in ("on closing", "before a test"))
        bad.write_bytes(bad.read_bytes().replace(b"told", b"tolb"))
        strike(store, [secret.id], by="me", now=NOW)
    assert b"wept" not in good.read_bytes()
    listed = (tmp_path / LIST_NAME).read_text("utf-8")
    assert good.name in listed and not is_altered(good) and bad.name not in listed
    if shutil.which("sha256sum"):
        subprocess.run(["sha256sum", "-c", LIST_NAME], cwd=tmp_path, check=True, capture_output=True)


def test_an_older_copy_of_a_backup_that_a_keeper_puts_back_is_known(tmp_path: Path) -> None:
    clock = Clock()
    with create(tmp_path, clock=clock) as store:
        secret = tell(store, clock, "Helmi wept words")
        backup = back_up(store, "on closing", "2026-11-24T10:00:00Z")
        older = backup.read_bytes()
        strike(store, [secret.id], by="me", now=NOW)
    assert backup.read_bytes() != older
    backup.write_bytes(older)
    assert not is_altered(backup) and bring_back(tmp_path, backup, NOW).struck == 1


def test_what_is_gone_or_unreadable_is_no_fault(backup: Path, tmp_path: Path) -> None:
    (tmp_path / LIST_NAME).write_bytes(b"\xff\xfe no list\n")
    assert not is_altered(backup)
    note(backup)
    assert not is_altered(backup) and backup.name in (tmp_path / LIST_NAME).read_text("utf-8")
    backup.unlink()
    forget(backup)
    assert (tmp_path / LIST_NAME).read_bytes() == b""
    (tmp_path / LIST_NAME).unlink()
    forget(backup)
    assert not (tmp_path / LIST_NAME).exists()
    roll(tmp_path, NOW, 1)
