"""The lines of the table of quarters taken apart."""

from collections import Counter
from collections.abc import Iterator
from typing import NamedTuple

from boxlore.core.places.quarters_table import QUARTERS


class Quarter(NamedTuple):
    """One: `shared` where other cities have one of its name, or it is written with a bracket that tells it apart."""

    country: str
    city: str
    names: tuple[str, ...]
    shared: bool


def quarters() -> Iterator[Quarter]:
    """The quarters in the order of the table, with the names told alone."""
    rows = [(country, city, written.strip().split("=")) for country, city, line in _lines() for written in line]
    names = [list(dict.fromkeys(_bare(name) for name in written)) for _, _, written in rows]
    borne = Counter(name for of_one in names for name in of_one)
    for (country, city, written), of_one in zip(rows, names, strict=True):
        is_shared = written[0] != of_one[0] or any(borne[name] > 1 for name in of_one)
        yield Quarter(country, city, tuple(of_one), is_shared)


def _lines() -> Iterator[tuple[str, str, list[str]]]:
    for line in QUARTERS.strip().replace("\n ", " ").splitlines():
        head, _, written = line.partition(": ")
        country, _, city = head.partition(" ")
        yield country, city, written.split(";")


def _bare(name: str) -> str:
    return name.partition(" (")[0]
