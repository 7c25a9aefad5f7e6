"""How fast five desks exchange what each has told, through a PostgreSQL server of this machine.

    python tests/benchmarks/bench_meeting.py [--rows 10000] [--least 3000]

Each desk has told so many statements, and each then has those of all. Counted is every statement that came to a desk or
went there, by the processor time of the desks in all meetings: a machine that others use tells nothing by the clock,
which is printed too. The peer is PostgreSQL itself: the same columns copied in and out as often (COPY) by psycopg,
without rules, rows already there, or a collection to write them to.

The rules cost: what comes is checked by its sum, weighed against all that is here, indexed for the search and written
to the disk. Then it is timed how long a word told at one open desk takes to be at another.
"""

import argparse
import tempfile
from contextlib import ExitStack
from pathlib import Path
from time import perf_counter, process_time, sleep

import psycopg
from tests.postgres import Cluster, running_cluster
from tests.store.test_joining import COLLECTION, ITEMS
from tests.tasks.collection.test_meeting import MeetingDesk

from boxlore.core.statements import Statement
from boxlore.store.meeting_place import prepare
from boxlore.store.meeting_tables import STATEMENT
from boxlore.tasks.collection.live_meeting import LiveMeeting

NAMES = ("leida", "aksel", "eha", "mary", "anton")
AN_ACT = 10
TIMES = 5


def tell_much(desk: MeetingDesk, rows: int) -> None:
    for _ in range(rows // AN_ACT):
        act = desk.clock.new_id()
        told = [
            Statement(
                id=desk.clock.new_id(), act=act, subject=ITEMS[count % 3], field="story", by=desk.name,
                words=f"Told by {desk.name}: the harbour in winter, {count}", recorded_at=desk.clock.now(),
            )
            for count in range(AN_ACT)
        ]  # fmt: skip
        desk.write(act, statements=tuple(told))


def by_copy(cluster: Cluster, database: str, times: int) -> float:
    """Seconds in which the statements that are there are copied out and in again so often."""
    columns = ", ".join(STATEMENT)
    with psycopg.connect(cluster.address(database), autocommit=True) as db:
        db.execute("CREATE TABLE IF NOT EXISTS peer AS SELECT * FROM boxlore.statement LIMIT 0")
        begun = perf_counter()
        for _ in range(times):
            with db.cursor().copy(f"COPY boxlore.statement ({columns}) TO STDOUT".encode()) as out:
                rows = list(out.rows())
            with db.cursor().copy(f"COPY peer ({columns}) FROM STDIN".encode()) as copied:
                for row in rows:
                    copied.write_row(row)
        return perf_counter() - begun


def slowest(desks: list[MeetingDesk]) -> float:
    """Seconds until a word told at the first of two open desks is at the other, the longest of several times."""
    live = [LiveMeeting(desk.collection) for desk in desks]
    for one in live:
        one.begin()
    longest, first, other = 0.0, *desks
    try:
        for count in range(TIMES + 1):  # the first one waits until both have met
            told, begun = first.tell(ITEMS[0], f"one word more, {count}"), perf_counter()
            while not other.store.db.execute("SELECT 1 FROM statement WHERE id = ?", (told.id,)).fetchone():
                sleep(0.01)
            longest = max(longest, perf_counter() - begun) if count else 0.0
    finally:
        for one in live:
            one.end()
    return longest


def main() -> int:
    parser = argparse.ArgumentParser()
    parser.add_argument("--rows", type=int, default=10_000)
    parser.add_argument("--least", type=int, default=3000)
    wanted = parser.parse_args()
    with running_cluster() as cluster, tempfile.TemporaryDirectory() as folder, ExitStack() as stack:
        database = cluster.new_database()
        prepare(cluster.address(database), COLLECTION, "first", NAMES)
        desks = [MeetingDesk(Path(folder) / name, name, cluster.address(database)) for name in NAMES]
        for desk in desks:
            stack.enter_context(desk.store)
            tell_much(desk, wanted.rows)
        moved, begun, begun_working = 0, perf_counter(), process_time()
        for desk in (*desks, *desks[:-1]):
            met = desk.meet()
            moved += met.log.statements + met.brought.statements
        took, worked = perf_counter() - begun, process_time() - begun_working
        every = len(NAMES) * wanted.rows
        assert all(len(desk.rows()) == every for desk in desks)
        assert moved == every * len(NAMES)
        peer = by_copy(cluster, database, len(NAMES) // 2)
        rate, peers = moved / worked, every * 2 * (len(NAMES) // 2) / peer
        print(
            f"{len(NAMES)} desks, {wanted.rows:,} rows each: {moved:,} rows in {took:.1f} s, {rate:,.0f} rows a second"
        )
        print(
            f"COPY of the same columns by psycopg alone: {peers:,.0f} rows a second, {peers / rate:.1f} times as many"
        )
        print(f"a word told at one open desk is at another in {slowest(desks[:2]):.2f} s, the slowest of {TIMES}")
        return 0 if rate >= wanted.least else 1


if __name__ == "__main__":
    raise SystemExit(main())
