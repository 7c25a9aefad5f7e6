"""Fixity of 10 GB of scans against plain hashing (hashlib.file_digest), file by file in turn. Budget: at least 0.8.

160 files of 64 MB; with less free disk, links to fewer files of their own: the reading and hashing is the same. Also:
stopped half-way, the second run reads only the rest. Run: python tests/benchmarks/bench_fixity.py [GB]
"""

import hashlib
import os
import sys
import tempfile
import time
from pathlib import Path

from boxlore.core.fields.pictures import FILE_WORDS, FileFacts
from boxlore.core.statements import Kind
from boxlore.tasks.collection.opening import Collection, open_collection, start
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.scans.fixity import unfinished, verify_scans

SIZE = 64 << 20
OWN = 16


def make(folder: Path, count: int) -> None:
    start(folder, Settings(title="Tamm and Rourke", prefix="TR"))
    digests = []
    for at in range(count):
        path = folder / "scans" / f"{at:04d}.tif"
        if at < OWN:
            data = os.urandom(SIZE)
            path.write_bytes(data)
            digests.append(hashlib.sha256(data).hexdigest())
        else:
            os.link(folder / "scans" / f"{at % OWN:04d}.tif", path)
    with open_collection(folder) as collection:
        act = collection.act("intake")
        for at in range(count):
            facts = FileFacts(
                path=f"scans/{at:04d}.tif",
                sha256=digests[at % OWN],
                bytes=SIZE,
                width=1,
                height=1,
                media_type="image/tiff",
            )
            act.state(act.new(Kind.SCAN), "file", FILE_WORDS.write(facts))
        act.done()


def plain(path: Path) -> float:
    began = time.perf_counter()
    with open(path, "rb", buffering=0) as file:
        hashlib.file_digest(file, "sha256")
    return time.perf_counter() - began


def in_turn(collection: Collection) -> tuple[float, float]:
    """Seconds of ours and of plain hashing, file by file in turn, so that a busy machine is busy for both."""
    took = peer = 0.0
    began = time.perf_counter()
    for one in verify_scans(collection):
        took += time.perf_counter() - began
        assert one.state == "same", one
        peer += plain(collection.folder / one.path)
        began = time.perf_counter()
    return took + time.perf_counter() - began, peer


class Stop:
    """Asks to stop half-way."""

    def __init__(self, after: int) -> None:
        self.left = after

    def begin(self, what: str, total: int) -> None:
        pass

    def step(self, done: int = 1) -> None:
        self.left -= done

    def stopped(self) -> bool:
        return self.left <= 0


def main() -> None:
    gigabytes = float(sys.argv[1]) if len(sys.argv) > 1 else 10
    count = max(2, round(gigabytes * 1e9 / SIZE))
    with tempfile.TemporaryDirectory() as home:
        folder = Path(home) / "c"
        make(folder, count)
        with open_collection(folder) as collection:
            for path in sorted((folder / "scans").iterdir())[:OWN]:
                plain(path)
            took, peer = in_turn(collection)
            half = count // 2
            list(verify_scans(collection, Stop(half)))
            assert unfinished(collection) == half
            began = time.perf_counter()
            rest = len(list(verify_scans(collection)))
            again = time.perf_counter() - began
            assert rest == count - half
    total = count * SIZE / 1e6
    print(
        f"fixity of {total / 1000:.1f} GB: {total / took:.0f} MB/s; plain hashing {total / peer:.0f} MB/s; "
        f"ratio {peer / took:.2f} (budget 0.8); after a stop half-way the rest took {again / took:.2f} of a whole run"
    )


if __name__ == "__main__":
    main()
