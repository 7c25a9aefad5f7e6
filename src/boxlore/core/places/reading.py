"""Places as told: the words taken apart, and what a reading of them is. Nothing told is ever rejected.

The words are kept exactly; a reading stands beside them, of one of six kinds: match; check (please check);
perhaps (a spelling guess); choices (several, ranked); area (a country or region only); kept (as told).
Only a match may fill anything by itself. Coordinates are printed no finer than they are known.
"""

import math
import re
import unicodedata
from dataclasses import dataclass
from typing import Any

from boxlore.core.findings import Finding, Severity
from boxlore.core.statements import fold

READER_VERSION = "places 1"

KINDS = ("match", "check", "perhaps", "choices", "area", "kept")


@dataclass(frozen=True, slots=True, kw_only=True)
class Place:
    """One place of today with what was told of it: degrees are WGS 84, `radius_km` how far it may be off.

    `box` is south, west, north, east for an area; `country_code` ISO 3166-1, empty where an area spans
    countries; `called_then` and `country_then` how it was called and governed in the picture's year.
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
    geonames: int | None = None
    box: tuple[float, ...] = ()


@dataclass(frozen=True, slots=True)
class PlaceReading:
    """What was understood of the words, the best choice first."""

    text: str
    kind: str
    choices: tuple[Place, ...] = ()
    findings: tuple[Finding, ...] = ()

    def to_json(self) -> dict[str, Any]:
        """The reading as one JSON object."""
        return {
            "text": self.text,
            "kind": self.kind,
            "choices": [_place_json(one) for one in self.choices],
            "findings": [
                {"rule": one.rule, "severity": str(one.severity), "message": one.message, "source": one.source}
                for one in self.findings
            ],
        }


def _place_json(place: Place) -> dict[str, Any]:
    return {
        "name": place.name,
        "city": place.city or None,
        "sublocation": place.sublocation or None,
        "admin1": place.admin1 or None,
        "admin1_code": place.admin1_code or None,
        "admin2": place.admin2 or None,
        "country": place.country or None,
        "country_code": place.country_code or None,
        "called_then": place.called_then or None,
        "country_then": place.country_then or None,
        "lat": place.lat,
        "lon": place.lon,
        "radius_km": place.radius_km,
        "geonames": place.geonames,
        "box": list(place.box) or None,
        "full": full_name(place),
    }


def from_json(data: dict[str, Any]) -> PlaceReading:
    """The other way."""
    choices = tuple(_place_from(one) for one in data["choices"])
    findings = tuple(
        Finding(rule=one["rule"], severity=Severity(one["severity"]), message=one["message"], source=one["source"])
        for one in data["findings"]
    )
    return PlaceReading(data["text"], data["kind"], choices, findings)


_TEXTS = ("name", "city", "sublocation", "admin1", "admin1_code", "admin2", "country", "country_code")
_NUMBERS = ("lat", "lon", "radius_km", "geonames")


def _place_from(data: dict[str, Any]) -> Place:
    values: dict[str, Any] = {name: data.get(name) or "" for name in (*_TEXTS, "called_then", "country_then")}
    values |= {name: data.get(name) for name in _NUMBERS}
    return Place(**values, box=tuple(data.get("box") or ()))


def full_name(place: Place) -> str:
    """The place from small to large, as it is called today."""
    parts = (place.sublocation, place.city or place.name, place.admin1, place.country)
    return ", ".join(dict.fromkeys(part for part in parts if part))


def distance_km(one: tuple[float, float], other: tuple[float, float]) -> float:
    """How far two points (latitude, longitude in degrees) lie apart on a sphere of 6,371 km (haversine)."""
    north, south = math.radians(one[0]), math.radians(other[0])
    across = math.radians(other[1] - one[1])
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


# the words taken apart


@dataclass(frozen=True, slots=True)
class Parts:
    """Told words taken apart: parts from small to large; other names of the smallest; how far from it."""

    parts: tuple[str, ...]
    names: tuple[str, ...] = ()
    sublocation: str = ""
    unsure: bool = False
    near_km: float = 0


_DATE_TAIL = re.compile(r"[,;]?\s+(?:c\.?|ca\.?|circa|about|in)?\s*1[5-9]\d\d(?:s|\?|[-/]\d{2,4})?\s*$", re.IGNORECASE)
_UNSURE = re.compile(r"^(?:prob(?:ably|\.)?|poss(?:ibly|\.)?|perhaps|maybe|i think)\s+", re.IGNORECASE)
_NEAR = re.compile(
    r"^(?P<before>.*?)[,\s]*\b(?:(?P<far>\d+(?:\.\d+)?)\s*(?P<unit>miles?|mi|km|kilometres?|kilometers?|versts?)\s+"
    r"(?:north|south|east|west|n|s|e|w|north-?east|north-?west|south-?east|south-?west)?\s*(?:of|from)|"
    r"near|nr\.?|just outside(?: of)?|outside(?: of)?|close to|not far from|bei|près de|koło)\s+(?P<anchor>.+)$",
    re.IGNORECASE,
)
_NOW = re.compile(
    r"^(?P<one>[^,(]+?)\s*(?:\(\s*(?:now|today|formerly|later|nyní|heute|jetzt|nüüd)\s+(?P<two>[^)]+)\)|,\s*now\s+(?P<three>[^,]+))(?P<rest>.*)$",
    re.IGNORECASE,
)
_BRACKET = re.compile(r"^(?P<one>[^(]+?)\s*\((?P<two>[^)]+)\)(?P<rest>.*)$")
_KM = {"mi": 1.609, "mile": 1.609, "miles": 1.609, "verst": 1.067, "versts": 1.067}
MOST_LETTERS = 400


def take_apart(text: str) -> Parts:
    """The parts of told words: qualifiers off, “near”, several names of one place, commas from small to large."""
    words = " ".join("".join(" " if unicodedata.category(one)[0] == "C" else one for one in text).split())
    if not words or len(words) > MOST_LETTERS:
        return Parts(())
    words = _DATE_TAIL.sub("", words)
    unsure = "?" in words or bool(_UNSURE.match(words)) or (words.startswith("[") and words.endswith("]"))
    words = _UNSURE.sub("", words.strip("[]")).replace("?", "").strip()
    near_km, sublocation = 0.0, ""
    if (near := _NEAR.match(words)) is not None:
        far, unit = near["far"], (near["unit"] or "").lower()
        near_km = float(far) * _KM.get(unit, 1.0) if far else 15.0
        sublocation, words = near["before"].strip(" ,"), near["anchor"]
    words, names = _names(words)
    parts = tuple(part.strip() for part in words.split(",") if part.strip(" ."))
    return Parts(parts, names, sublocation, unsure, near_km)


def _names(words: str) -> tuple[str, tuple[str, ...]]:
    """`A (now B), C` → `A, C` and (B,); `A / B` → `A` and (B,); a bracketed area becomes context."""
    if (now := _NOW.match(words)) is not None:
        rest = now["rest"].strip(" ,")
        return f"{now['one']}, {rest}" if rest else now["one"], ((now["two"] or now["three"]).strip(),)
    if (bracket := _BRACKET.match(words)) is not None:
        rest = bracket["rest"].strip(" ,")
        joined = ", ".join(part for part in (bracket["one"], bracket["two"], rest) if part)
        return joined, ()
    first, slash, other = words.partition("/")
    if slash and first.strip() and other.strip():
        name, comma, rest = other.partition(",")
        return first.strip() + (f", {rest.strip()}" if comma else ""), (name.strip(),)
    return words, ()


_SAINTS = re.compile(r"^(?:saint|sainte|ste|sankt|sint|st)\s+")
_MOUNTS = re.compile(r"^(?:mount|mt)\s+")
_FORTS = re.compile(r"^(?:fort|ft)\s+")


def fold_place(name: str) -> str:
    """A place's name as the index knows it: folded, no dots or apostrophes, saint, mount and fort shortened."""
    plain = re.sub(r"[.'’ʼ`ʻ]", "", fold(name))
    plain = " ".join(plain.replace("-", " ").split())
    plain = _SAINTS.sub("st ", plain)
    plain = _MOUNTS.sub("mt ", plain)
    return _FORTS.sub("ft ", plain)
