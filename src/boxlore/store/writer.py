"""The one thread that writes. What is typed goes first, so that no long task ever delays a keystroke."""

import itertools
import queue
import sqlite3
import threading
from collections.abc import Callable
from concurrent.futures import Future
from typing import Any

from boxlore.core.errors import CouldNot

WriteJob = Callable[[sqlite3.Connection], Any]

DRAFT, CHANGE, LEAVE = 0, 1, 2


class Writer:
    """Owns the writing connection. `do` runs a job in one transaction and waits until it is on the disk."""

    def __init__(self, db: sqlite3.Connection) -> None:
        self._db = db
        self._jobs: queue.PriorityQueue[tuple[int, int, WriteJob | None, Future[Any]]] = queue.PriorityQueue()
        self._order = itertools.count()
        self._closed = False
        self._door = threading.Lock()
        self._thread = threading.Thread(target=self._run, name="boxlore-writer", daemon=True)
        self._thread.start()

    def do(self, job: WriteJob, priority: int = CHANGE, *, plain: bool = False) -> Any:
        """Run a job on the writing connection and return its result. `plain`: it minds its own transactions.

        Raises CouldNot when the disk refuses, and when the collection was closed meanwhile.
        """
        done: Future[Any] = Future()
        run = job if plain else _in_transaction(job)
        with self._door:
            if self._closed:
                raise CouldNot("The collection was closed; this was not written.", "Open it again.")
            self._jobs.put((priority, next(self._order), run, done))
        return done.result()

    def close(self) -> None:
        """Finish what is queued, then close the connection. Closing twice is no fault."""
        with self._door:
            if not self._closed:
                self._closed = True
                self._jobs.put((LEAVE, next(self._order), None, Future()))
        self._thread.join()

    def _run(self) -> None:
        while True:
            _, _, job, done = self._jobs.get()
            if job is None:
                break
            try:
                done.set_result(job(self._db))
            except BaseException as error:  # noqa: BLE001  # handed to whoever asked, whatever it is
                done.set_exception(_said(error))
        self._db.close()


def _in_transaction(job: WriteJob) -> WriteJob:
    def run(db: sqlite3.Connection) -> Any:
        db.execute("BEGIN IMMEDIATE")
        try:
            result = job(db)
            db.execute("COMMIT")
        except BaseException:
            if db.in_transaction:  # SQLite ends it by itself when the disk is full
                db.execute("ROLLBACK")
            raise
        return result

    return run


def _said(error: BaseException) -> BaseException:
    """The sentence for what SQLite refuses; everything else as it is."""
    if not isinstance(error, sqlite3.Error):
        return error
    words = str(error)
    if "disk is full" in words:
        return CouldNot("The disk is full; the last words could not be kept.", "Free some space and go on.")
    if "item_number" in words or "UNIQUE constraint failed: statement.words" in words:
        return CouldNot("That number was given already.", "Numbers are given once; nothing was changed.")
    if ("malformed" in words and "JSON" not in words) or "not a database" in words:
        return CouldNot(f"The collection is damaged ({words}).", "Close it and go back to the newest of its backups.")
    return CouldNot(f"The collection could not be written to ({words}).", "Nothing of this step was kept.")
