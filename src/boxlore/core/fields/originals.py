"""The words about originals: their numbers, where they are kept, their size and state, and the climate there."""

import math
import re
from dataclasses import dataclass
from datetime import datetime
from functools import lru_cache

from boxlore.core.errors import WrongUse
from boxlore.core.fields.codec import Codec, as_json, facts_of, one_word, whole


@dataclass(frozen=True, slots=True)
class ItemNumber:
    """A permanent number: `letters` are the prefix and the series letter, `count` from 1."""

    letters: str
    count: int


def _write_number(number: ItemNumber) -> str:
    return f"{number.letters}-{number.count:04d}"


def _parse_number(words: str) -> ItemNumber:
    letters, hyphen, count = words.rpartition("-")
    if not hyphen:
        raise ValueError(words)
    return ItemNumber(one_word(letters), whole(count))


NUMBER_WORDS: Codec[ItemNumber] = Codec("number of an item", "Write it like TRA-0042.", _write_number, _parse_number)
"""`letters-count`, the count with at least four digits."""

SERIES_SQL = "substr(words, 1, instr(words, '-'))"
"""SQLite: the beginning of a number up to its hyphen (`TRA-`), by which numbers are put in order; see `series_of`."""


def series_of(number: str) -> str:
    """What SERIES_SQL finds in a number's words, or an empty string."""
    return number[: number.find("-") + 1]


COUNT_SQL = "CAST(substr(words, length(rtrim(words, '0123456789')) + 1) AS INTEGER)"
"""SQLite: the count of a number."""

NUMBERED_SQL = "words >= ? AND words < ?"
"""SQLite: whether a number has certain letters, given `number_bounds` of them."""


def number_bounds(letters: str) -> tuple[str, str]:
    """The words between which all numbers with these letters lie (`.` is the sign after the hyphen)."""
    return f"{letters}-", f"{letters}."


BY_NUMBER_SQL = f"{SERIES_SQL}, length(words), words"
"""SQLite: the order of numbers, series by series, TRA-9999 before TRA-10000."""


@dataclass(frozen=True, slots=True)
class Kept:
    """An item's place: the container's id and the position in it, from 1 (0: none was given)."""

    container: str
    position: int = 0


def _write_kept(kept: Kept) -> str:
    return f"{kept.container} {kept.position}"


def _parse_kept(words: str) -> Kept:
    container, _, position = words.partition(" ")
    return Kept(one_word(container), whole(position) if position else 0)


KEPT_WORDS: Codec[Kept] = Codec(
    "place in a container", "Write the container's id, a blank and the position in it.", _write_kept, _parse_kept
)
"""`container position`. A collection rebuilt by an earlier version has the container alone where no position was
given."""

KEPT_IN_SQL = "words >= ? AND words < ?"
"""SQLite: whether an item is kept in one container, given `kept_bounds` of it."""


def kept_bounds(container: str) -> tuple[str, str]:
    """The words between which all lie that say so of one container (`!` is the letter after the blank)."""
    return f"{container} ", f"{container}!"


@dataclass(frozen=True, slots=True)
class SizeMm:
    """Width, height and depth in millimetres, as many of them as were measured; all above 0."""

    sides: tuple[float, ...]


_BETWEEN = re.compile(r"\s*[x×]\s*|\s+", re.IGNORECASE)
_MEASURE = re.compile(r"[0-9]{1,6}(\.[0-9]{1,4})?")


def _write_size(size: SizeMm) -> str:
    return " x ".join(f"{side:.10g}" for side in size.sides)


@lru_cache(1024)
def _parse_size(words: str) -> SizeMm:
    text = words.strip()
    if text.casefold().endswith("mm"):
        text = text[:-2].rstrip()
    parts = _BETWEEN.split(text)
    if not 1 <= len(parts) <= 3 or not all(_MEASURE.fullmatch(part) for part in parts):
        raise ValueError(words)
    sides = tuple(map(float, parts))
    if min(sides) <= 0:
        raise ValueError(words)
    return SizeMm(sides)


SIZE_WORDS: Codec[SizeMm] = Codec(
    "size", "Write millimetres, wide by high: 108 x 165. Of a box also its depth.", _write_size, _parse_size
)
"""Grammar, read with blanks anywhere between and in any case:

    size    = side 0*2(by side) ["mm"]
    by      = "x" / "×" / blank
    side    = 1*6digit ["." 1*4digit]
"""


NO_INCHES = 20
"""Millimetres: whoever writes two sides up to here without “mm” has most likely measured in inches."""


def typed_size(text: str, sides: int = 2) -> SizeMm:
    """The size that somebody wrote, of so many sides at least. Raises WrongUse, saying what may be written."""
    size = SIZE_WORDS.typed(text)
    if len(size.sides) < sides:
        lacks = "its depth is missing" if sides == 3 else "its height is missing"
        raise WrongUse(f"“{text.strip()[:40]}” is not the whole size: {lacks}.", SIZE_HINTS[sides])
    if max(size.sides) <= NO_INCHES and not text.strip().casefold().endswith("mm"):
        inches = " x ".join(f"{side * 25.4:.0f}" for side in size.sides)
        raise WrongUse(
            f"“{text.strip()[:40]}” would be millimetres.",
            f"If inches are meant, write {inches}; if it is as small as that, write mm behind it.",
        )
    return size


SIZE_HINTS = {
    2: "Write millimetres, wide by high: 108 x 165.",
    3: "Write millimetres, wide by high by deep: 380 x 260 x 130.",
}


@dataclass(frozen=True, slots=True)
class Noted:
    """A term of condition or attachment, and whether it is so or, after a later look, is so no more."""

    what: str
    so: bool = True


_NO_MORE = "no "


def _write_noted(noted: Noted) -> str:
    return noted.what if noted.so else f"{_NO_MORE}{noted.what}"


def _parse_noted(words: str) -> Noted:
    gone = words.startswith(_NO_MORE)
    return Noted(words.removeprefix(_NO_MORE), so=not gone)


NOTED_WORDS: Codec[Noted] = Codec("note", "Write it in words.", _write_noted, _parse_noted)
"""The term in words, or `no` before it where it is no longer so. Any words can be read."""


@dataclass(frozen=True, slots=True)
class Measured:
    """One reading taken by hand: local time to the second, °C to two decimals, percent to one."""

    at: datetime
    celsius: float
    percent: float


def _write_measured(measured: Measured) -> str:
    return f"{measured.at:%Y-%m-%dT%H:%M:%S} {measured.celsius:.2f} {measured.percent:.1f}"


def _parse_measured(words: str) -> Measured:
    when, celsius, percent = words.split()
    measured = Measured(datetime.fromisoformat(when), float(celsius), float(percent))
    if measured.at.tzinfo is not None or not (math.isfinite(measured.celsius) and 0 < measured.percent <= 100):
        raise ValueError(words)
    return measured


MEASURED_WORDS: Codec[Measured] = Codec(
    "reading of the climate",
    "Write the time, °C and percent: 2026-11-25T09:30:00 18.50 52.0",
    _write_measured,
    _parse_measured,
)


@dataclass(frozen=True, slots=True, kw_only=True)
class ClimateFile:
    """A logger's file as it was kept: where, its bytes and SHA-256, and how its units and dates are read."""

    path: str
    sha256: str
    bytes: int
    unit: str = ""
    order: str = ""


def _write_climate(log: ClimateFile) -> str:
    return as_json({"path": log.path, "sha256": log.sha256, "bytes": log.bytes, "unit": log.unit, "order": log.order})


def _parse_climate(words: str) -> ClimateFile:
    facts = facts_of(words)
    return ClimateFile(
        path=facts.text("path"),
        sha256=facts.text("sha256"),
        bytes=facts.whole("bytes"),
        unit=facts.text("unit", ""),
        order=facts.text("order", ""),
    )


CLIMATE_WORDS: Codec[ClimateFile] = Codec(
    "kept log of the climate",
    'Write a JSON object with "path", "sha256" and "bytes".',
    _write_climate,
    _parse_climate,
)
