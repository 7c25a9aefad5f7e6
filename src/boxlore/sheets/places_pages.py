"""Places on the family's pages: the words told, the name today, and where it lies as coordinates and words.

No map is fetched from anywhere: coordinates in degrees can be typed into any map the reader has (ISO 6709, Annex D,
for how they are shown).
"""

import hashlib
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import Any

from boxlore.core.crosswalk import captions
from boxlore.core.places.reading import Place, coordinates
from boxlore.core.records.in_force import Record
from boxlore.core.statements import fold
from boxlore.sheets.safe_words import clean


@dataclass(frozen=True, slots=True)
class PlaceOf:
    """The place of one record: its page, its heading, its words about itself."""

    href: str
    name: str
    lines: tuple[str, ...]


def place_of(record: Record) -> PlaceOf | None:
    """The place told of a record: one page for each place found, else for each way of calling it."""
    told = record.first("place")
    if told is None:
        return None
    words = captions.bare(told.words)
    choices = told.value.get("choices")
    found = choices[0] if isinstance(choices, list) and choices and isinstance(choices[0], dict) else {}
    if not found.get("geonames") or not found.get("city"):
        key = hashlib.sha256(fold(words).encode()).hexdigest()[:16]
        return PlaceOf(f"place/w{key}.html", captions.capital(words), ())
    name = str(found["city"])
    today = ", ".join(str(found[part]) for part in ("admin1", "country") if found.get(part) and found[part] != name)
    lines = [today]
    where = Place(name=name, lat=found.get("lat"), lon=found.get("lon"), radius_km=found.get("radius_km"))
    if said := coordinates(where):
        lines.append(f"{said}, to within about {where.radius_km:g} km" if where.radius_km else said)
    return PlaceOf(f"place/g{found['geonames']}.html", name, tuple(line for line in lines if line))


def place_subjects(records: Iterable[Record], cards: Mapping[str, Any]) -> list[dict[str, Any]]:
    """A page for each place, with every way it was called and the photographs from there."""
    found: dict[str, dict[str, Any]] = {}
    for record in records:
        place = place_of(record)
        if place is None:
            continue
        subject = found.setdefault(place.href, {"place": place, "called": {}, "shown": []})
        subject["called"][captions.bare(record.words("place"))] = None
        subject["shown"].append(cards[record.id])
    return sorted(
        (_subject(href, one) for href, one in found.items()), key=lambda one: (fold(one["name"]), one["href"])
    )


def _subject(href: str, one: Mapping[str, Any]) -> dict[str, Any]:
    place, count = one["place"], len(one["shown"])
    called = [words for words in one["called"] if words.casefold() != place.name.casefold()]
    lines = [*place.lines, f"Told as: {'; '.join(called)}" if called else ""]
    return {
        "href": href,
        "name": clean(place.name),
        "lines": [clean(line) for line in lines if line],
        "count": f"{count} photograph{'s' if count != 1 else ''}",
        "groups": [{"name": "Photographs from here", "shown": one["shown"]}],
    }
