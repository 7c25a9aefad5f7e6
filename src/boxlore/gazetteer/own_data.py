"""A keeper's own, bigger gazetteer: a GeoNames table (19 columns) and, if wanted, alternateNamesV2 beside it.

Kept are feature classes P (populated places) and A (areas) of the countries asked for, one line a place with the
columns of the shipped data (`make.city_lines`). GeoNames data are under CC BY 4.0.
"""

from collections.abc import Callable, Iterator
from pathlib import Path

CLASSES = ("P", "A")
EVERY = 20_000

Heard = Callable[[str, int, int], None]


def kept_lines(path: Path, *, names: Path | None, countries: frozenset[str], heard: Heard) -> Iterator[str]:
    """The lines to keep. Reads the table twice, so that only names of kept places are held in memory."""
    wanted = {cells[0] for cells in _rows(path, countries, heard, "Choosing places")} if names else set()
    other = _other_names(names, wanted, heard) if names else {}
    for cells in _rows(path, countries, heard, "Taking places in"):
        spelled = [cells[2], *cells[3].split(","), *other.get(cells[0], ())]
        joined = "|".join(dict.fromkeys(one for one in spelled if one and one != cells[1] and len(one) <= 60))
        yield "\t".join(
            (cells[0], cells[1], cells[8], cells[10], cells[11], cells[4], cells[5], cells[14] or "0", joined)
        )


def _rows(path: Path, countries: frozenset[str], heard: Heard, what: str) -> Iterator[list[str]]:
    size = path.stat().st_size
    read = 0
    with open(path, encoding="utf-8") as file:
        for count, line in enumerate(file):
            read += len(line)
            if count % EVERY == 0:
                heard(what, min(read, size), size)
            cells = line.rstrip("\n").split("\t")
            if len(cells) == 19 and cells[6] in CLASSES and (not countries or cells[8] in countries):
                yield cells


def _other_names(path: Path, wanted: set[str], heard: Heard) -> dict[str, list[str]]:
    """Names by place; links, postcodes and airport codes (their “languages”) are no names."""
    found: dict[str, list[str]] = {}
    size, read = path.stat().st_size, 0
    with open(path, encoding="utf-8") as file:
        for count, line in enumerate(file):
            read += len(line)
            if count % EVERY == 0:
                heard("Reading other names", min(read, size), size)
            cells = line.rstrip("\n").split("\t")
            if len(cells) >= 4 and cells[1] in wanted and len(cells[2]) <= 3:
                found.setdefault(cells[1], []).append(cells[3])
    return found
