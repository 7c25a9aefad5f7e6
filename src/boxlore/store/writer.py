"""The one thread that writes. What is typed goes first, so that no long task ever delays a keystroke."""

import itertools
import queue
import sqlite3
import threading
from collections.abc import Callable
from concurrent.futures import Future
from typing import Any

from boxlore.core.errors import CouldNot

Job = Callable[[sqlite3.Connection], Any]

DRAFT, CHANGE, LEAVE = 0, 1, 2


class Writer:
    """Owns the writing connection. `do` runs a job in one transaction and waits until it is on the disk."""

    def __init__(self, connect: Callable[[], sqlite3.Connection]) -> None:
        self._connect = connect
        self._jobs: queue.PriorityQueue[tuple[int, int, Job | None, Future[Any]]] = queue.PriorityQueue()
        self._order = itertools.count()
        self._thread = threading.Thread(target=self._run, name="boxlore-writer", daemon=True)
        self._thread.start()

    def do(self, job: Job, priority: int = CHANGE, *, plain: bool = False) -> Any:
        """Run a job on the writing connection and return its result. `plain`: it minds its own transactions."""
        done: Future[Any] = Future()
        run = job if plain else _in_transaction(job)
        self._jobs.put((priority, next(self._order), run, done))
        return done.result()

    def close(self) -> None:
        """Finish what is queued, then close the connection."""
        self._jobs.put((LEAVE, next(self._order), None, Future()))
        self._thread.join()

    def _run(self) -> None:
        db = self._connect()
        while True:
            _, _, job, done = self._jobs.get()
            if job is None:
                break
            try:
                done.set_result(job(db))
            except BaseException as error:  # noqa: BLE001  # handed to whoever asked, whatever it is
                done.set_exception(_said(error))
        db.close()


def _in_transaction(job: Job) -> Job:
    def run(db: sqlite3.Connection) -> Any:
        db.execute("BEGIN IMMEDIATE")
        try:
            result = job(db)
        except BaseException:
            db.execute("ROLLBACK")
            raise
        db.execute("COMMIT")
        return result

    return run


def _said(error: BaseException) -> BaseException:
    """The sentence for what SQLite refuses; everything else as it is."""
    if not isinstance(error, sqlite3.OperationalError | sqlite3.IntegrityError):
        return error
    words = str(error)
    if "full" in words:
        return CouldNot("The disk is full; the last words could not be kept.", "Free some space and go on.")
    if "UNIQUE" in words and "statement.words" in words:
        return CouldNot("That number was given already.", "Numbers are given once; nothing was changed.")
    return CouldNot(f"The collection could not be written to ({words}).", "Nothing of this step was kept.")
