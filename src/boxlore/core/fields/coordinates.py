"""Where something is on the earth: latitude and longitude."""

import re
from dataclasses import dataclass

from boxlore.core.fields.codec import Codec


@dataclass(frozen=True, slots=True)
class Coordinates:
    """A point on the earth in degrees (WGS 84), south and west negative."""

    latitude: float
    longitude: float


_POINT = re.compile(r"\s*(-?\d{1,2}(?:\.\d+)?)\s*[,; ]\s*(-?\d{1,3}(?:\.\d+)?)\s*")


def _write_coordinates(point: Coordinates) -> str:
    return f"{_plain(point.latitude)}, {_plain(point.longitude)}"


def _plain(degrees: float) -> str:
    """At most nine decimals, which is a tenth of a millimetre, and never an exponent."""
    return f"{degrees:.9f}".rstrip("0").rstrip(".")


def _parse_coordinates(words: str) -> Coordinates:
    match = _POINT.fullmatch(words)
    if match is None or abs(float(match[1])) > 90 or abs(float(match[2])) > 180:
        raise ValueError(words)
    return Coordinates(float(match[1]), float(match[2]))


COORDINATES_WORDS: Codec[Coordinates] = Codec(
    "point on the earth",
    "Write latitude and longitude in degrees, south and west with a minus: -45.82, 170.62",
    _write_coordinates,
    _parse_coordinates,
)
"""`latitude, longitude`; a blank or a semicolon may part them too."""
