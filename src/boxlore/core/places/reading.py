"""What words were read as: places of today, the best first. Nothing told is ever rejected.

The words are kept exactly; a reading stands beside them, of one of six kinds: match; check (please check);
perhaps (a spelling guess); choices (several, ranked); area (a country or region only); kept (as told).
Only a match may fill anything by itself. Coordinates are printed no finer than they are known. `to_json` is the one
form outside the program: what `boxlore place --json` prints, what stands beside a statement in the store, and what a
transfer carries.
"""

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Any

from boxlore.core.findings import Finding, Severity

READER_VERSION = "places 1"

KINDS = ("match", "check", "perhaps", "choices", "area", "kept")


@dataclass(frozen=True, slots=True, kw_only=True)
class Place:
    """One place of today with what was told of it: degrees are WGS 84, `radius_km` how far it may be off.

    `box` is south, west, north, east for an area; `country_code` ISO 3166-1, empty where an area spans
    countries; `called_then` and `country_then` how it was called and governed in the picture's year, empty where
    that is not known.
    """

    name: str
    city: str = ""
    sublocation: str = ""
    admin1: str = ""
    admin1_code: str = ""
    admin2: str = ""
    country: str = ""
    country_code: str = ""
    called_then: str = ""
    country_then: str = ""
    lat: float | None = None
    lon: float | None = None
    radius_km: float | None = None
    near: bool = False
    """Whether the place meant is only near this one."""
    geonames: int | None = None
    box: tuple[float, ...] = ()

    @property
    def point(self) -> tuple[float, float] | None:
        """Latitude and longitude in degrees, or None without coordinates."""
        return None if self.lat is None or self.lon is None else (self.lat, self.lon)

    @property
    def link(self) -> str:
        """Its address at GeoNames, or an empty string."""
        return f"https://sws.geonames.org/{self.geonames}/" if self.geonames else ""

    @property
    def town(self) -> str:
        """Town, area and country as they are called today: `Tallinn, Harju, Estonia`."""
        return _listed(self.city or self.name, self.admin1, self.country)

    def to_json(self) -> dict[str, object]:
        """The place as a JSON object; what is not known is null."""
        return {
            "name": self.name,
            "city": self.city or None,
            "sublocation": self.sublocation or None,
            "admin1": self.admin1 or None,
            "admin1_code": self.admin1_code or None,
            "admin2": self.admin2 or None,
            "country": self.country or None,
            "country_code": self.country_code or None,
            "called_then": self.called_then or None,
            "country_then": self.country_then or None,
            "lat": self.lat,
            "lon": self.lon,
            "radius_km": self.radius_km,
            "near": self.near or None,
            "geonames": self.geonames,
            "box": list(self.box) or None,
            "full": full_name(self),
        }

    @classmethod
    def from_json(cls, data: object) -> "Place":
        """Inverse of `to_json`; a member that is absent counts as null. Raises ValueError for another shape."""
        if not isinstance(data, dict):
            raise ValueError("A choice of a place's reading is not an object.")
        texts, numbers = [data.get(name) or "" for name in _TEXTS], [data.get(name) for name in _NUMBERS]
        box, geonames = data.get("box") or [], data.get("geonames")
        if {*map(type, texts)} != {str} or not texts[0]:
            raise ValueError("A place of a reading has no name, or a part that is not text.")
        if not (_are_numbers(numbers) and isinstance(box, list) and _are_numbers(box) and None not in box):
            raise ValueError("The coordinates, the radius or the edges of a place of a reading are not numbers.")
        if geonames is not None and type(geonames) is not int:
            raise ValueError("The GeoNames id of a place of a reading is not a whole number.")
        if data.get("near") is not None and type(data["near"]) is not bool:
            raise ValueError("Whether a place of a reading is only near is not true or false.")
        parts: dict[str, Any] = dict(zip(_PARTS, (*texts, *numbers), strict=True))
        return cls(**parts, near=bool(data.get("near")), geonames=geonames, box=tuple(box))


_TEXTS = ("name", "city", "sublocation", "admin1", "admin1_code", "admin2", "country", "country_code", "called_then",
          "country_then")  # fmt: skip
_NUMBERS = ("lat", "lon", "radius_km")
_PARTS = _TEXTS + _NUMBERS


def _are_numbers(values: list[Any]) -> bool:
    """Whether all are finite numbers or null; true and false are neither."""
    return {*map(type, values)} <= {int, float, type(None)} and math.isfinite(sum(filter(None, values)))


@dataclass(frozen=True, slots=True)
class PlaceReading:
    """What was understood of `text`: one of KINDS, the places that it may be with the best first, and what to ask."""

    text: str
    kind: str
    choices: tuple[Place, ...] = ()
    findings: tuple[Finding, ...] = ()

    @property
    def best(self) -> Place | None:
        """The first choice, or None for words that are kept as told."""
        return self.choices[0] if self.choices else None

    def to_json(self) -> dict[str, object]:
        """The reading as a JSON object."""
        return {
            "text": self.text,
            "kind": self.kind,
            "choices": [place.to_json() for place in self.choices],
            "findings": [
                {"rule": asks.rule, "severity": str(asks.severity), "message": asks.message, "source": asks.source}
                for asks in self.findings
            ],
        }

    @classmethod
    def from_json(cls, data: Mapping[str, object]) -> "PlaceReading":
        """Inverse of `to_json`; a member that is absent counts as null, but `choices` must be there.

        Raises ValueError for another shape.
        """
        text, kind = data.get("text") or "", data.get("kind") or "match"
        choices, findings = data.get("choices"), data.get("findings") or []
        if not (isinstance(text, str) and isinstance(choices, list) and isinstance(findings, list)):
            raise ValueError("The text, the choices or the findings of a place's reading have another shape.")
        if kind not in KINDS:
            raise ValueError("A place's reading is of no kind that there is.")
        return cls(text, str(kind), tuple(map(Place.from_json, choices)), tuple(map(_finding, findings)))


def _finding(data: object) -> Finding:
    if not isinstance(data, dict):
        raise ValueError("A finding of a place's reading is not an object.")
    rule, message, source = data.get("rule") or "", data.get("message") or "", data.get("source") or ""
    if not (isinstance(rule, str) and isinstance(message, str) and isinstance(source, str)):
        raise ValueError("A finding of a place's reading has another shape.")
    return Finding(rule=rule, severity=Severity(str(data.get("severity"))), message=message, source=source)


def said_in_all(read: PlaceReading, others: Sequence[PlaceReading]) -> PlaceReading:
    """The reading without names and states of then that differ in the readings of the same words in other years."""

    def kept(place: Place) -> Place:
        same = [
            next((also for also in other.choices if (also.name, also.geonames) == (place.name, place.geonames)), None)
            for other in others
        ]
        is_called = all(also is not None and also.called_then == place.called_then for also in same)
        is_governed = all(also is not None and also.country_then == place.country_then for also in same)
        return replace(
            place,
            called_then=place.called_then if is_called else "",
            country_then=place.country_then if is_governed else "",
        )

    return replace(read, choices=tuple(map(kept, read.choices))) if others else read


def full_name(place: Place) -> str:
    """The place from small to large, as it is called today; `near` stands before the town that it is only near."""
    town = place.city or place.name
    return _listed(place.sublocation, f"near {town}" if place.near else town, place.admin1, place.country)


def _listed(*parts: str) -> str:
    return ", ".join(dict.fromkeys(part for part in parts if part))


def distance_km(start: tuple[float, float], end: tuple[float, float]) -> float:
    """How far two points (latitude, longitude in degrees) lie apart on a sphere of 6,371 km (haversine)."""
    north, south = math.radians(start[0]), math.radians(end[0])
    across = math.radians(end[1] - start[1])
    chord = math.sin((south - north) / 2) ** 2 + math.cos(north) * math.cos(south) * math.sin(across / 2) ** 2
    return 2 * 6371 * math.asin(math.sqrt(chord))


def _degrees(value: float, places: int) -> str:
    return f"{value:.{places}f}"


def _decimals(place: Place) -> int:
    """Two for a town, one where it may be 15 km off or more (our rule; a degree of latitude is 111 km)."""
    return 1 if (place.radius_km or 5) >= 15 else 2


def dcmi_point(place: Place) -> str | None:
    """`east=24.75; north=59.44; name=Tallinn` (DCMI Point Encoding Scheme, 2006), or None without coordinates."""
    if place.lat is None or place.lon is None:
        return None
    places = _decimals(place)
    name = full_name(place).replace(";", ",")
    return f"east={_degrees(place.lon, places)}; north={_degrees(place.lat, places)}; name={name}"


def dcmi_box(place: Place) -> str | None:
    """`northlimit=…; eastlimit=…; southlimit=…; westlimit=…; name=…` (DCMI Box, 2006), or None."""
    if len(place.box) != 4:
        return None
    south, west, north, east = (f"{edge:.1f}" for edge in place.box)
    name = full_name(place).replace(";", ",")
    return f"northlimit={north}; eastlimit={east}; southlimit={south}; westlimit={west}; name={name}"


def coordinates(place: Place) -> str:
    """`59.44° N, 24.75° E`, no finer than known; empty without coordinates."""
    if place.lat is None or place.lon is None:
        return ""
    places = _decimals(place)
    north, east = ("N" if place.lat >= 0 else "S"), ("E" if place.lon >= 0 else "W")
    return f"{_degrees(abs(place.lat), places)}° {north}, {_degrees(abs(place.lon), places)}° {east}"
