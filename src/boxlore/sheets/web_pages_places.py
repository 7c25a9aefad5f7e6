"""Places on the family's pages: the told words, today's name, and where the place lies, as coordinates and in words.

No map is loaded from anywhere; `web_pages_map` draws one. The coordinates, in degrees, can be typed into any map
(ISO 6709, Annex D, says how they are written).
"""

import hashlib
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import Any

from boxlore.core.crosswalk import captions
from boxlore.core.people.names.list_order import list_key
from boxlore.core.places.reading import coordinates
from boxlore.core.records.item_record import Record
from boxlore.core.statements import fold
from boxlore.core.wording.catalogue import Say
from boxlore.sheets.album_chapters import in_time, photographs
from boxlore.sheets.album_indexes import town_of
from boxlore.sheets.print_run import Printing
from boxlore.sheets.printable_words import clean


@dataclass(frozen=True, slots=True)
class PlaceOf:
    """The place of one record: the path of its page, its heading, and lines on where it lies."""

    href: str
    name: str
    lines: tuple[str, ...]
    point: tuple[float, float] | None = None


def place_of(record: Record, say: Say) -> PlaceOf | None:
    """The place told of a record, or None. Words that were not found as a town have a page for each wording."""
    told_place = record.first("place")
    if told_place is None:
        return None
    words = captions.bare(told_place.words)
    place = town_of(record)
    if place is None:
        key = hashlib.sha256(fold(words).encode()).hexdigest()[:16]
        return PlaceOf(f"place/w{key}.html", captions.capital(words), ())
    country = say.country(place.country_code, place.country)
    lines = [", ".join(part for part in (place.admin1, country) if part and part != place.city)]
    if coordinates_words := coordinates(place):
        far = f"{place.radius_km:g}" if place.radius_km else ""
        lines.append(
            say("{place}, to within about {km} km", place=coordinates_words, km=far) if far else coordinates_words
        )
    return PlaceOf(f"place/g{place.geonames}.html", place.city, tuple(line for line in lines if line), place.point)


def place_subjects(records: Iterable[Record], cards: Mapping[str, Any], printing: Printing) -> list[dict[str, Any]]:
    """A page for each place, with all the names it was told by and the photographs from there by their dates; sorted by
    name, in the alphabet of the printing's language."""
    by_href: dict[str, dict[str, Any]] = {}
    for record in in_time(records):
        place = place_of(record, printing.say)
        if place is None:
            continue
        subject = by_href.setdefault(place.href, {"place": place, "called": {}, "shown": []})
        subject["called"][captions.bare(record.words("place"))] = None
        subject["shown"].append(cards[record.id])
    subjects = (_subject(href, entry, printing.say) for href, entry in by_href.items())
    return sorted(subjects, key=lambda subject: (list_key(subject["name"], printing.language), subject["href"]))


def _subject(href: str, entry: Mapping[str, Any], say: Say) -> dict[str, Any]:
    place, count = entry["place"], len(entry["shown"])
    other_names = [words for words in entry["called"] if words.casefold() != place.name.casefold()]
    lines = [*place.lines, say("Told as: {names}", names=say.apart(other_names)) if other_names else ""]
    return {
        "href": href,
        "name": clean(place.name),
        "lines": [clean(line) for line in lines if line],
        "life": "",
        "kin": [],
        "point": place.point,
        "photographs": count,
        "count": photographs(count, say),
        "groups": [{"name": say("Photographs from here"), "shown": entry["shown"]}],
    }
