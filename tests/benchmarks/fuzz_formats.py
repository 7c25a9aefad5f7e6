"""Damaged picture files by the hundred thousand: each is captioned and proved, or refused; never a crash, hang, growth.

    python tests/benchmarks/fuzz_formats.py [FILES] [SEED]

Seeds are the files of `tests/formats/conftest.py`, bare and captioned. Each is damaged in one to eight places: a byte
changed, numbers set to their extremes, a run doubled, cut out, or the end cut off. Any error but a refusal with its
clause, a copy that is not proved, a file that takes over two seconds or memory that grows ends the run with 1.
"""

import io
import random
import resource
import sys
import time
from collections import Counter
from importlib.util import module_from_spec, spec_from_file_location
from pathlib import Path

from boxlore.core.errors import ByteFault
from boxlore.formats import picture_files

FILES = int(sys.argv[1]) if len(sys.argv) > 1 else 100_000
SEED = int(sys.argv[2]) if len(sys.argv) > 2 else 20261125
MOST_SECONDS, MOST_GROWTH_KB = 2.0, 60_000
EXTREMES = (b"\x00", b"\xff", b"\x00\x00", b"\xff\xff", b"\x7f\xff\xff\xff", b"\xff\xff\xff\xff", bytes(8), b"\xff" * 8)


def seeds() -> tuple[list[bytes], picture_files.Embedding]:
    spec = spec_from_file_location("pictures", Path(__file__).parents[1] / "formats" / "conftest.py")
    assert spec is not None and spec.loader is not None
    pictures = module_from_spec(spec)
    spec.loader.exec_module(pictures)
    return [one for data in pictures.FILES.values() for one in (data, pictures.captioned(data))], pictures.CAPTION


def damaged(data: bytes, chance: random.Random) -> bytes:
    out = bytearray(data)
    for _ in range(chance.choice((1, 1, 1, 2, 3, 8))):
        # half of the places lie near the start, where the structure is
        at = (
            min(int(chance.expovariate(1 / 300)), len(out) - 1) if chance.random() < 0.5 else chance.randrange(len(out))
        )
        match chance.randrange(6):
            case 0:
                out[at] = chance.randrange(256)
            case 1:
                out[at] ^= 1 << chance.randrange(8)
            case 2:
                new = chance.choice(EXTREMES)
                out[at : at + len(new)] = new
            case 3:
                out[at:at] = out[at : at + chance.randrange(1, 64)]
            case 4:
                del out[at : at + chance.randrange(1, 64)]
            case _:
                if chance.random() < 0.2:
                    del out[max(at, 12) :]
        if not out:
            return b"\x00"
    return bytes(out)


def one(data: bytes, caption: picture_files.Embedding) -> str:
    source = io.BytesIO(data)
    try:
        picture_files.read(source)
    except ByteFault as fault:
        assert fault.clause and fault.offset >= 0
    try:
        made = picture_files.rewrite(source, caption)
    except ByteFault as fault:
        assert fault.clause and fault.offset >= 0
        return "refused"
    whole = b"".join(p if isinstance(p, bytes) else data[p[0] : p[0] + p[1]] for p in made.pieces)
    wrong = picture_files.verify(source, io.BytesIO(whole), caption)
    return "captioned and proved" if not wrong else f"not proved: {'; '.join(wrong)}"


def run() -> int:
    kinds, caption = seeds()
    chance = random.Random(SEED)
    counted: Counter[str] = Counter()
    slowest, start, settled = 0.0, time.perf_counter(), 0
    for number in range(FILES):
        data = damaged(chance.choice(kinds), chance)
        begun = time.perf_counter()
        try:
            counted[one(data, caption)] += 1
        except Exception as error:  # noqa: BLE001  # what is looked for here
            path = Path(f"fuzz-{SEED}-{number}.bin")
            path.write_bytes(data)
            counted[f"CRASH {type(error).__name__}: {error}"[:120]] += 1
            print(f"crash: {type(error).__name__}: {error}; the file is {path}")
        slowest = max(slowest, time.perf_counter() - begun)
        if number == FILES // 10:
            settled = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
    grown = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss - settled
    taken = time.perf_counter() - start
    print(f"{FILES} damaged files from {len(kinds)} seeds in {taken:.0f} s ({FILES / taken:.0f} a second)")
    for what, count in counted.most_common():
        print(f"  {count:8} {what}")
    print(
        f"slowest {slowest * 1000:.0f} ms (at most {MOST_SECONDS:.0f} s), memory grew {grown} KB after the first tenth"
    )
    bad = sum(count for what, count in counted.items() if what.startswith("CRASH"))
    return 1 if bad or slowest > MOST_SECONDS or grown > MOST_GROWTH_KB else 0


sys.exit(run())
