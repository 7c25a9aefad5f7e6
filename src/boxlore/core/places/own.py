"""The family's own places: a farm, a cemetery, a house that no gazetteer has, with what they lie in.

An own place has one name or more, may lie inside a place that the gazetteer knows, and may have coordinates
(degrees, WGS 84) or none. Told by its name it is a match; told with what it lies in, that must agree.
"""

from collections.abc import Iterable
from dataclasses import dataclass, replace

from boxlore.core.places.inflections import uninflected
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
    """The family's own place that these words name, or None. Two of one name are choices.

    Small words may stand beside its name (`the old Kuuse talu, by the barn`), or the name be inflected; then it asks.
    """
    parts_told = take_apart(text)
    if not parts_told.parts:
        return None
    first, *rest = parts_told.parts
    places, sure = [], True
    for own in owns:
        how = max(_how_it_is_named(first, fold_place(name)) for name in own.names)
        around = f" {fold_place(own.inside_words)} {fold_place(full_name(own.place))} "
        beside = [part for part in rest if fold_place(part) not in around]
        if how == _NOT or not all(part[0].islower() for part in beside):
            continue
        sure = sure and how == _WHOLLY and not beside
        places.append(_near(own, parts_told.near_km) if parts_told.near_km else own.place)
    if not places:
        return None
    kind = "choices" if len(places) > 1 else "check" if parts_told.unsure or not sure else "match"
    return PlaceReading(text, kind, tuple(places))


_NOT, _AMONG_WORDS, _WHOLLY = range(3)


def _how_it_is_named(told: str, name: str) -> int:
    """Whether words are a name, or end with one behind a preposition (`haymaking at the old farm`); else whether it
    stands among small words, or is inflected.
    """
    folded = fold_place(told)
    if folded == name or any(f" {folded}".endswith(f" {where} {name}") for where in ("at", "in", "on")):
        return _WHOLLY
    before, among, _ = f" {folded} ".partition(f" {name} ")
    words, start = told.split(), len(before.split())
    beside = [*words[:start], *words[start + len(name.split()) :]]
    is_among = bool(among) and not any(word[0].isupper() for word in beside)
    return _AMONG_WORDS if is_among or name in uninflected(told) else _NOT


def _near(own: OwnPlace, km: float) -> Place:
    """A place told as near the family's own."""
    return replace(own.place, sublocation=f"near {own.names[0]}", radius_km=max(km, RADIUS_KM) if own.point else None)
