"""Two places told of one thing: whether both can be so, which of them says more, and what both allow.

Both can be so where one lies in the other, as far as it is known where they lie: a farm in a town, a town in a
district, a country that was in what it is today. Two towns are two places, however near, unless one is a part of
the other or the words said “near”. Where it is not known, nothing is called impossible.
"""

from collections.abc import Sequence

from boxlore.core.places.former_countries_table import FORMER
from boxlore.core.places.reading import Place, distance_km
from boxlore.core.places.taking_apart import fold_place

TOWN_KM = 5.0
"""How far the coordinates of a town may be off; a larger radius was told as “near”."""
EDGE_DEGREES = 0.3
"""How far the edges of an area may be off (ours)."""

_CODES_NOW = {former.name: frozenset(former.now) for former in FORMER}


def can_both_be(first: Place, second: Place) -> bool:
    """Whether one may lie in the other, or be it."""
    if first.geonames is not None and first.geonames == second.geonames:
        return True
    codes, other_codes = _codes(first), _codes(second)
    if codes and other_codes and not codes & other_codes:
        return False
    if _is_part(first, second) or _is_part(second, first):
        return True
    regions = {place.admin1_code for place in (first, second) if place.country_code == first.country_code}
    if len(regions - {""}) > 1:
        return False
    if first.point and second.point:
        return _may_be_near(first, second)
    return not _lies_outside(first, second) and not _lies_outside(second, first)


def is_narrower(inner: Place, outer: Place) -> bool:
    """Of two that can both be so: whether the first says more of where it was."""
    return _is_part(inner, outer) or _detail(inner) > _detail(outer)


def common_place(places: Sequence[Place]) -> Place | None:
    """The region or the country that all of them lie in; None where they share none."""
    first = places[0]
    if not first.country_code or len({place.country_code for place in places}) > 1:
        return None
    country = Place(name=first.country, country=first.country, country_code=first.country_code)
    if not first.admin1_code or len({place.admin1_code for place in places}) > 1:
        return country
    return Place(
        name=first.admin1,
        admin1=first.admin1,
        admin1_code=first.admin1_code,
        country=first.country,
        country_code=first.country_code,
    )


def _codes(place: Place) -> frozenset[str]:
    """The countries of today that a place lies in; none where that is not known."""
    return frozenset({place.country_code}) if place.country_code else _CODES_NOW.get(place.name, frozenset())


def _is_part(inner: Place, outer: Place) -> bool:
    """Whether a town belongs to another by the name of its district: Port Chalmers to `Dunedin City`."""
    if not (inner.city and outer.city and inner.admin2) or inner.city == outer.city:
        return False
    names, district = fold_place(outer.city), fold_place(inner.admin2)
    return inner.country_code == outer.country_code and f"{district} ".startswith(f"{names} ")


def _may_be_near(first: Place, second: Place) -> bool:
    """Of two places with coordinates: whether they are one, as far as these go."""
    radii = [first.radius_km or TOWN_KM, second.radius_km or TOWN_KM]
    if first.city and second.city and max(radii) <= TOWN_KM and not (_is_own(first) or _is_own(second)):
        return False
    return distance_km(first.point or (0, 0), second.point or (0, 0)) <= sum(radii)


def _is_own(place: Place) -> bool:
    return bool(place.sublocation) and place.sublocation == place.name


def _lies_outside(place: Place, area: Place) -> bool:
    """Whether a place lies outside the edges of an area."""
    if not area.box or not (place.point or place.box):
        return False
    south, west, north, east = area.box
    lat, lon = place.point or (0.0, 0.0)
    low, left, high, right = place.box or (lat, lon, lat, lon)
    return (
        high < south - EDGE_DEGREES
        or low > north + EDGE_DEGREES
        or right < west - EDGE_DEGREES
        or left > east + EDGE_DEGREES
    )


def _detail(place: Place) -> int:
    """How much a place says of where it was: the more, the smaller the place."""
    if place.sublocation:
        return 5
    if place.city:
        return 3 if (place.radius_km or TOWN_KM) > TOWN_KM else 4
    return 2 if place.admin1 or place.box else 1 if place.country_code else 0
