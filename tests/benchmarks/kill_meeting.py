"""Meetings of three desks while connections are cut and the server is killed, at random moments.

    python tests/benchmarks/kill_meeting.py [EXCHANGES] [SEED]

Before each exchange a desk tells, corrects, undoes or strikes something; during it, now and then, every session on the
server is ended, or the server is killed as by a power cut and started again. A meeting may then say that the server was
not reached, and nothing else. At the end, when nobody cuts any more, all three have the same log, nothing told is lost,
nothing struck is back, and the server has the same rows.
"""

import random
import sys
import tempfile
import threading
from contextlib import ExitStack, suppress
from pathlib import Path

import psycopg
from tests.postgres import Cluster, running_cluster
from tests.store.test_joining import COLLECTION, ITEMS, LOG, do
from tests.tasks.collection.test_meeting import MeetingDesk, asked

from boxlore.store.meeting_place import NotReached, prepare

NAMES = ("leida", "aksel", "eha")


def cut(cluster: Cluster, chance: random.Random) -> None:
    """End every session, or the server."""
    if chance.random() < 0.2:
        cluster.stop()
        cluster.start()
        return
    with suppress(psycopg.Error):
        asked(
            cluster.address("postgres"),
            "SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE application_name = %s",
            "boxlore",
        )


def disturb(desk: MeetingDesk, chance: random.Random) -> None:
    rows = desk.rows()
    deed = chance.choice(["tell", "tell", "name", "correct", "undo", "settle", "strike"])
    if deed == "tell" or not rows:
        desk.tell(ITEMS[chance.randrange(3)], f"told {chance.random()}")
    elif deed == "name":
        desk.name_somebody(ITEMS[chance.randrange(3)], f"Person {chance.randrange(9)}")
    elif deed != "strike" or chance.random() < 0.3:
        do(desk, deed, chance.choice(rows))


def main(exchanges: int, seed: int) -> None:
    chance = random.Random(seed)
    broken = 0
    with running_cluster() as cluster, tempfile.TemporaryDirectory() as folder, ExitStack() as stack:
        address = cluster.address(cluster.new_database())
        prepare(address, COLLECTION, "first", NAMES)
        desks = [MeetingDesk(Path(folder) / name, name, address) for name in NAMES]
        for desk in desks:
            stack.enter_context(desk.store)
        told: set[str] = set()
        for _ in range(exchanges):
            desk = chance.choice(desks)
            disturb(desk, chance)
            told |= {ident for ident, _ in desk.rows()}
            cutting = threading.Timer(chance.random() * 0.4, cut, (cluster, chance))
            if chance.random() < 0.6:
                cutting.start()
            try:
                desk.meet()
            except NotReached:
                broken += 1
            if cutting.is_alive():
                cutting.join()
        for desk in (*desks, *desks):
            desk.meet()
        tables = [desk.tables() for desk in desks]
        for name in LOG:
            assert tables[0][name] == tables[1][name] == tables[2][name], name
        ids = {ident for ident, _ in desks[0].rows()}
        buried = {ident for (ident,) in desks[0].store.db.execute("SELECT statement FROM tombstone")}
        assert told <= ids | buried, "nothing told is lost"
        assert not ids & buried, "nothing struck is back"
        assert {row[0] for row in asked(address, "SELECT id FROM boxlore.statement")} == ids
        assert all(desk.store.is_in_step() and not desk.store.altered_rows() for desk in desks)
        print(
            f"{exchanges} exchanges, {broken} of them broken off; {len(ids)} statements, {len(buried)} struck: alike."
        )


if __name__ == "__main__":
    numbers = [int(word) for word in sys.argv[1:]]
    main(*(numbers + [500, 1][len(numbers) :]))
