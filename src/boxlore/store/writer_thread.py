"""The one thread that writes to the database. What is typed is written first, so that no long task delays a key."""

import itertools
import queue
import sqlite3
import threading
from collections.abc import Callable
from concurrent.futures import Future
from contextlib import suppress
from pathlib import Path
from typing import Any

from boxlore.core.errors import CouldNot
from boxlore.store.database_file import INDEX_AGAIN, INDEX_DAMAGED, is_of_index

WriteJob = Callable[[sqlite3.Connection], Any]

DRAFT, CHANGE, END = 0, 1, 2
"""Priorities of jobs; the lowest number goes first."""


class Writer:
    """Owns the writing connection and runs jobs on it, one after the other, in a thread of its own."""

    def __init__(self, db: sqlite3.Connection, path: Path) -> None:
        self._db = db
        self._path = path
        self._identity = _identity(path)
        self._jobs: queue.PriorityQueue[tuple[int, int, WriteJob | None, Future[Any]]] = queue.PriorityQueue()
        self._order = itertools.count()
        self._closed = False
        self._door = threading.Lock()
        self._thread = threading.Thread(target=self._run, name="boxlore-writer", daemon=True)
        self._thread.start()

    def do(self, job: WriteJob, priority: int = CHANGE, *, plain: bool = False) -> Any:
        """Run a job in one transaction and return its result when it is on the disk.

        With `plain` the job begins and ends its transactions itself. Raises CouldNot when the disk refuses, and when
        the collection is closed.
        """
        done: Future[Any] = Future()
        run = job if plain else _in_transaction(job)
        with self._door:
            if self._closed:
                raise CouldNot("The collection was closed; this was not written.", "Open it again.")
            self._jobs.put((priority, next(self._order), run, done))
        return done.result()

    def close(self) -> None:
        """Finish the jobs that wait, then close the connection. It may be called twice."""
        with self._door:
            if not self._closed:
                self._closed = True
                self._jobs.put((END, next(self._order), None, Future()))
        self._thread.join()

    def _run(self) -> None:
        while True:
            _, _, job, done = self._jobs.get()
            if job is None:
                break
            try:
                self._check_place()
                done.set_result(job(self._db))
            except BaseException as error:  # noqa: BLE001  # it is raised again where the job was asked for
                done.set_exception(_in_words(error))
        self._db.close()

    def _check_place(self) -> None:
        """Raise CouldNot if the file that is written to is not the one of that name any more.

        A system lets a program write on into a file that was deleted; nobody would ever read it.
        """
        if _identity(self._path) != self._identity:
            raise CouldNot(
                "The collection is not where it was; the last words could not be kept.",
                f"Plug its disk in again, or put its folder back ({self._path.parent}), and go on.",
            )


def _identity(path: Path) -> tuple[int, int] | None:
    """What tells a file from every other one on this machine; None if there is none."""
    with suppress(OSError):
        status = path.stat()
        return status.st_dev, status.st_ino
    return None


def _in_transaction(job: WriteJob) -> WriteJob:
    """The job in a transaction, which is rolled back if the job raises."""

    def run(db: sqlite3.Connection) -> Any:
        db.execute("BEGIN IMMEDIATE")
        try:
            result = job(db)
            db.execute("COMMIT")
        except BaseException:
            if db.in_transaction:  # SQLite itself ends the transaction when the disk is full
                db.execute("ROLLBACK")
            raise
        return result

    return run


def _in_words(error: BaseException) -> BaseException:
    """The CouldNot for an error of SQLite; any other error as it is."""
    if not isinstance(error, sqlite3.Error):
        return error
    words = str(error)
    if is_of_index(error):
        return CouldNot(f"{INDEX_DAMAGED} Nothing of this step was kept.", INDEX_AGAIN)
    if "disk is full" in words:
        return CouldNot("The disk is full; the last words could not be kept.", "Free some space and go on.")
    if "disk I/O error" in words or "unable to open" in words:
        return CouldNot(
            "The disk does not answer; the last words could not be kept.", "Is it plugged in, and not full?"
        )
    if "readonly" in words:
        return CouldNot("The disk can only be read; the last words could not be kept.", "Let it be written to; go on.")
    if ("malformed" in words and "JSON" not in words) or "not a database" in words:
        return CouldNot(f"The collection is damaged ({words}).", "Close it; boxlore restore can bring back a backup.")
    return CouldNot(f"The collection could not be written to ({words}).", "Nothing of this step was kept.")
