"""A bag of scans against copying and hashing the same files plainly (both digests, both flushed to the disk).

    python tests/benchmarks/bench_bag.py [MEGABYTES]

Budget: at least 0.7 of the plain copy; memory flat.
"""

import hashlib
import os
import resource
import sys
import tempfile
import time
from pathlib import Path

from boxlore.exports.bag import CHUNK, Payload, write_bag

MEGABYTES = int(sys.argv[1]) if len(sys.argv) > 1 else 200
EACH = 5 << 20


def most_mb() -> float:
    return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024


def plain(source: Path, target: Path) -> None:
    """What any careful copy does."""
    digests = [hashlib.sha512(), hashlib.sha256()]
    with open(source, "rb") as file, open(target, "xb") as out:
        while data := file.read(CHUNK):
            out.write(data)
            for digest in digests:
                digest.update(data)
        out.flush()
        os.fsync(out.fileno())


with tempfile.TemporaryDirectory() as folder:
    home = Path(folder)
    files = []
    for at in range(max(MEGABYTES * (1 << 20) // EACH, 1)):
        files.append(home / f"TRA-{at:04d}_f.tif")
        files[-1].write_bytes(os.urandom(EACH))
    total = len(files) * EACH / 1e6
    (home / "plain").mkdir()
    begun, worked = time.perf_counter(), time.process_time()
    for one in files:
        plain(one, home / "plain" / one.name)
    peer, peer_worked = time.perf_counter() - begun, time.process_time() - worked

    before = most_mb()
    begun, worked = time.perf_counter(), time.process_time()
    write_bag(home / "bag", [Payload(f"scans/{one.name}", one) for one in files], {})
    taken, own = time.perf_counter() - begun, time.process_time() - worked
    print(
        f"bag: {total / taken:,.0f} MB/s, plain copy and hash {total / peer:,.0f} MB/s, ratio {peer / taken:.2f} "
        f"(by processor time {peer_worked / own:.2f}); +{most_mb() - before:.0f} MB"
    )
