"""The names of places to choose from, so that no two read alike: with their county, else with where they lie."""

from collections.abc import Sequence
from dataclasses import replace

from boxlore.core.places.reading import Place, full_name


def names_apart(places: Sequence[Place]) -> list[str]:
    """The full names, in their order; of those that read alike each has its second-level area behind the town
    (`Newport, Shropshire, England, United Kingdom`), and before it, where that is not enough, its degrees.
    """
    names = [full_name(place) for place in places]
    names = [_with_county(place) if names.count(full_name(place)) > 1 else full_name(place) for place in places]
    return [
        f"{_where(place)} {name}" if names.count(name) > 1 and place.lat is not None else name
        for place, name in zip(places, names, strict=True)
    ]


def _with_county(place: Place) -> str:
    return full_name(replace(place, admin1=", ".join(part for part in (place.admin2, place.admin1) if part)))


def _where(place: Place) -> str:
    """“(52.1 N, 1.3 W)”."""
    lat, lon = place.lat or 0.0, place.lon or 0.0
    return f"({abs(lat):.1f} {'N' if lat >= 0 else 'S'}, {abs(lon):.1f} {'E' if lon >= 0 else 'W'})"
