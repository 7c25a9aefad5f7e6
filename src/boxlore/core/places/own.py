"""The family's own places: a farm, a cemetery, a house that no gazetteer has, with what they lie in.

An own place has one name or more, may lie inside a place that the gazetteer knows, and may have coordinates
(degrees, WGS 84) or none. Told by its name it is a match; told with what it lies in, that must agree.
"""

from collections.abc import Iterable
from dataclasses import dataclass, replace

from boxlore.core.places.reading import Place, PlaceReading, full_name
from boxlore.core.places.taking_apart import fold_place, take_apart

RADIUS_KM = 0.5
"""How far coordinates given for a farm or a churchyard may be off (ours)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class OwnPlace:
    """One place of the family's own. `inside` is the place of today that it lies in, if told and understood."""

    id: str
    names: tuple[str, ...]
    inside_words: str = ""
    inside: Place | None = None
    point: tuple[float, float] | None = None

    @property
    def place(self) -> Place:
        """It as a place: its own name, with town, area and country of what it lies in."""
        around = self.inside or Place(name="")
        lat, lon = self.point or (None, None)
        return replace(
            around,
            name=self.names[0],
            sublocation=self.names[0],
            lat=lat,
            lon=lon,
            radius_km=RADIUS_KM if self.point else None,
            box=(),
        )


def read_own(text: str, owns: Iterable[OwnPlace]) -> PlaceReading | None:
    """The family's own place that these words name, or None. Two of one name are choices."""
    parts_told = take_apart(text)
    if not parts_told.parts:
        return None
    first, *rest = (fold_place(part) for part in parts_told.parts)
    places = []
    for own in owns:
        if not any(_names_it(first, fold_place(name)) for name in own.names):
            continue
        around = f" {fold_place(own.inside_words)} {fold_place(full_name(own.place))} "
        if all(part in around for part in rest):
            places.append(_near(own, parts_told.near_km) if parts_told.near_km else own.place)
    if not places:
        return None
    kind = "choices" if len(places) > 1 else "check" if parts_told.unsure else "match"
    return PlaceReading(text, kind, tuple(places))


def _names_it(told: str, name: str) -> bool:
    """Whether folded words are a name, or end with one behind a preposition: `haymaking at the old farm`."""
    return told == name or any(f" {told}".endswith(f" {where} {name}") for where in ("at", "in", "on"))


def _near(own: OwnPlace, km: float) -> Place:
    """A place told as near the family's own."""
    return replace(own.place, sublocation=f"near {own.names[0]}", radius_km=max(km, RADIUS_KM) if own.point else None)
