"""A keeper's own, larger gazetteer, made from a GeoNames table (19 columns) and perhaps its table alternateNamesV2.

The places kept are those of the feature classes P (populated places) and A (areas) in the countries asked for. Each
becomes one line with the columns of the shipped data (`make.city_lines`). GeoNames data are under CC BY 4.0.
"""

from collections.abc import Callable, Iterator
from pathlib import Path

CLASSES = ("P", "A")
EVERY = 20_000
"""How many lines are read between two reports of progress."""

ReadProgress = Callable[[str, int, int], None]
"""Called as (sentence about the stage, bytes read, bytes in all)."""


def kept_lines(path: Path, *, names: Path | None, countries: frozenset[str], progress: ReadProgress) -> Iterator[str]:
    """The lines to keep. `names` is the table of further names; `countries` are ISO 3166-1 codes, empty for all.

    The table of places is read twice, so that only the further names of kept places are held in memory.
    """
    kept_ids = {cells[0] for cells in _rows(path, countries, progress, "Choosing places")} if names else set()
    alternatives = _other_names(names, kept_ids, progress) if names else {}
    for cells in _rows(path, countries, progress, "Taking places in"):
        spellings = [cells[2], *cells[3].split(","), *alternatives.get(cells[0], ())]
        joined = "|".join(dict.fromkeys(name for name in spellings if name and name != cells[1] and len(name) <= 60))
        yield "\t".join(
            (cells[0], cells[1], cells[8], cells[10], cells[11], cells[4], cells[5], cells[14] or "0", joined)
        )


def _rows(path: Path, countries: frozenset[str], progress: ReadProgress, stage: str) -> Iterator[list[str]]:
    """The rows of the table of places that are kept, as their 19 columns."""
    size = path.stat().st_size
    read = 0
    with open(path, encoding="utf-8") as file:
        for count, line in enumerate(file):
            read += len(line)
            if count % EVERY == 0:
                progress(stage, min(read, size), size)
            cells = line.rstrip("\n").split("\t")
            if len(cells) == 19 and cells[6] in CLASSES and (not countries or cells[8] in countries):
                yield cells


def _other_names(path: Path, kept_ids: set[str], progress: ReadProgress) -> dict[str, list[str]]:
    """The further names by id of their place. Rows whose language is `link`, `post` or the like hold no names."""
    names_of: dict[str, list[str]] = {}
    size, read = path.stat().st_size, 0
    with open(path, encoding="utf-8") as file:
        for count, line in enumerate(file):
            read += len(line)
            if count % EVERY == 0:
                progress("Reading other names", min(read, size), size)
            cells = line.rstrip("\n").split("\t")
            if len(cells) >= 4 and cells[1] in kept_ids and len(cells[2]) <= 3:
                names_of.setdefault(cells[1], []).append(cells[3])
    return names_of
