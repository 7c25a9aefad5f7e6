"""Damaged files that say where they were made, by the ten thousand: nobody finds the place in what leaves.

    python tests/benchmarks/fuzz_places.py [FILES] [SEED]

Seeds are the shapes of `tests/formats/test_places.py`, damaged as in `fuzz_formats.py`. Each is cleaned for outside and
made a family copy, or refused with its clause. Ends with 1 where exiv2 or Pillow still reads a place in either, where
pixels differ, where a cleaned file is not proved, or where anything but a refusal is raised.
"""

import io
import random
import sys
import time
import warnings
from collections import Counter
from importlib.util import module_from_spec, spec_from_file_location
from pathlib import Path
from types import ModuleType

import exiv2
from PIL import Image

from boxlore.core.errors import ByteFault
from boxlore.formats import picture_files

sys.path.insert(0, str(Path(__file__).parents[2]))  # the shapes import what their tests share
FILES = int(sys.argv[1]) if len(sys.argv) > 1 else 20_000
SEED = int(sys.argv[2]) if len(sys.argv) > 2 else 20261126
EXTREMES = (b"\x00", b"\xff", b"\x00\x00", b"\xff\xff", b"\x7f\xff\xff\xff", bytes(4), b"\xff" * 4)
warnings.simplefilter("ignore")
exiv2.LogMsg.setLevel(exiv2.LogMsg.Level.mute)


def shapes() -> ModuleType:
    spec = spec_from_file_location("places", Path(__file__).parents[1] / "formats" / "test_places.py")
    assert spec is not None and spec.loader is not None
    places = module_from_spec(spec)
    spec.loader.exec_module(places)
    return places


def damaged(data: bytes, chance: random.Random) -> bytes:
    out = bytearray(data)
    for _ in range(chance.choice((1, 1, 2, 3))):
        at = min(int(chance.expovariate(1 / 200)), len(out) - 1)
        match chance.randrange(4):
            case 0:
                out[at] = chance.randrange(256)
            case 1:
                new = chance.choice(EXTREMES)
                out[at : at + len(new)] = new
            case 2:
                out[at:at] = out[at : at + chance.randrange(1, 24)]
            case _:
                del out[at : at + chance.randrange(1, 24)]
    return bytes(out) or b"\x00"


def places(data: bytes) -> set[str]:
    """What exiv2 and Pillow read of a place."""
    found: set[str] = set()
    try:
        image = exiv2.ImageFactory.open(data)
        image.readMetadata()
        for datum in (*image.exifData(), *image.xmpData()):
            if "GPS" in datum.key() and "GPSTag" not in datum.key() and datum.size():
                found.add(datum.key())
    except Exception:  # noqa: BLE001  # the binding raises its own kinds
        found |= set()
    try:
        with Image.open(io.BytesIO(data)) as opened:
            found |= {f"Pillow {key}" for key in opened.getexif().get_ifd(0x8825) if key in (2, 4)}
    except Exception:  # noqa: BLE001  # damaged pictures raise anything
        found |= set()
    return found


def pixels(data: bytes) -> bytes:
    """What Pillow decodes; empty where it refuses the file."""
    try:
        with Image.open(io.BytesIO(data)) as opened:
            return opened.tobytes()
    except Exception:  # noqa: BLE001  # damaged pictures raise anything
        return b""


def judged(data: bytes, caption: picture_files.Embedding, module: ModuleType) -> list[str]:
    source, said = io.BytesIO(data), list[str]()
    try:
        made = picture_files.without_place(source)
        after = module.joined(made, data)
        said.append("outside: the very same" if after == data else "outside: cleaned")
        if after != data:
            module.prove_without_place(source, io.BytesIO(after))
        if left := places(after):
            said.append(f"WRONG outside: {sorted(left)[:2]}")
        if after != data and (before := pixels(data)) and pixels(after) != before:
            said.append("WRONG outside: pixels")
    except ByteFault as fault:
        assert fault.clause
        said.append("outside: refused")
    try:
        try:
            copy = module.joined(picture_files.rewrite(source, caption), data)
            if wrong := picture_files.verify(source, io.BytesIO(copy), caption):
                said.append(f"WRONG copy not proved: {wrong[0]}")
        except ByteFault:
            copy = module.joined(picture_files.copy_without_place(source), data)
        said.append("copy: made")
        if left := places(copy):
            said.append(f"WRONG copy: {sorted(left)[:2]}")
    except ByteFault as fault:
        assert fault.clause
        said.append("copy: refused")
    return said


def run() -> int:
    module = shapes()
    seeds = [*(module.JPEGS | module.OTHERS).values()]
    chance, counted, start = random.Random(SEED), Counter[str](), time.perf_counter()
    for number in range(FILES):
        data = damaged(chance.choice(seeds), chance)
        try:
            said = judged(data, module.CAPTION, module)
        except Exception as error:  # noqa: BLE001  # what is looked for here
            said = [f"WRONG {type(error).__name__}: {error}"[:100]]
        for what in said:
            if what.startswith("WRONG") and counted[what] < 2:
                path = Path(f"fuzz-{SEED}-{number}.bin")
                path.write_bytes(data)
                print(f"{what}; the file is {path}")
            counted[what] += 1
    print(f"{FILES} damaged files from {len(seeds)} seeds in {time.perf_counter() - start:.0f} s")
    for what, count in counted.most_common():
        print(f"  {count:8} {what}")
    return 1 if any(what.startswith("WRONG") for what in counted) else 0


if __name__ == "__main__":
    sys.exit(run())
