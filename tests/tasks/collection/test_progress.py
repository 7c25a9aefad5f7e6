"""Threads for work on pictures (our own contract)."""

import time
from collections.abc import Iterator
from threading import Event

from boxlore.tasks.collection.progress import workers


def test_work_has_ended_once_whoever_takes_its_results_lets_them_go() -> None:
    begun = Event()
    ended: list[int] = []

    def work(step: int) -> int:
        if step:
            begun.set()
            time.sleep(0.2)  # it still reads when the results are let go
        ended.append(step)
        return step

    def results() -> Iterator[int]:
        with workers() as pool:
            yield from pool.map(work, range(2))

    running = results()
    assert next(running) == 0 and begun.wait(60)
    running.close()  # type: ignore[attr-defined]  # a generator
    assert ended == [0, 1]
