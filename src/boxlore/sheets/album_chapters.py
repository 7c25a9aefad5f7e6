"""The album's chapters: photographs by decade, box, place, person, family or occasion, in a stable order."""

from collections import Counter
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass

from boxlore.core.crosswalk import captions
from boxlore.core.people.names.list_order import list_key
from boxlore.core.records.item_record import Record
from boxlore.sheets.album_indexes import is_doubted, is_name

BY = {
    "decade": "decades", "box": "boxes", "place": "places", "person": "people", "family": "families",
    "occasion": "occasions", "none": "none",
}  # fmt: skip
"""What chapters can be made of, and what a form calls it; `none` makes one chapter in the order of the boxes."""


@dataclass(frozen=True, slots=True)
class Chapter:
    """A chapter's title (empty where the album has only one) and its photographs in order."""

    title: str
    records: tuple[Record, ...]
    has_date: bool = True
    """Whether a chapter of decades is one; false for what has no date."""


def chapters(records: Sequence[Record], by: str, sort_names: Mapping[str, str], language: str) -> list[Chapter]:
    """The chapters of an album by a key of BY; whatever the key says nothing of stands in a last chapter.

    `sort_names` gives the name under which a person is indexed, by id; titles that are names follow the alphabet of the
    `language`. A single chapter has no title.
    """
    if by in ("decade", "person"):
        records = sorted(records, key=_first_day)
    groups: dict[str, list[Record]] = {}
    for record in records:
        groups.setdefault(_TITLES[by](record, sort_names), []).append(record)
    last = groups.pop("", [])
    in_order = by in ("decade", "box", "none")
    names = list(groups) if in_order else sorted(groups, key=lambda name: list_key(name, language))
    chapters = [Chapter(name, tuple(groups[name])) for name in names]
    chapters += [Chapter(_LAST[by], tuple(last))] if last else []
    return [Chapter("", chapters[0].records)] if len(chapters) == 1 else chapters


def decades(records: Sequence[Record]) -> list[Chapter]:
    """Photographs by decade in order, those without a date last; a single decade has its title too."""
    groups: dict[str, list[Record]] = {}
    for record in sorted(records, key=_first_day):
        groups.setdefault(_decade(record, {}), []).append(record)
    return [Chapter(title or _LAST["decade"], tuple(rows), bool(title)) for title, rows in groups.items()]


def years_told(record: Record) -> tuple[int, int] | None:
    """The first and the last year of the date in force; None where there is none."""
    view = record.first("date")
    if view is None or view.date is None:
        return None
    earliest, latest = view.date.earliest, view.date.latest
    first = earliest.year if earliest else None
    last = latest.year if latest else None
    if first is None and last is None:
        return None
    return (first if first is not None else last or 0, last if last is not None else first or 0)


def _first_day(record: Record) -> tuple[int, int, int, int]:
    """For sorting: the decade, then the first day; what has no date comes last."""
    years = years_told(record)
    if years is None:
        return 99999, 0, 0, 0
    view = record.first("date")
    day = view.date.earliest if view and view.date else None
    return (sum(years) // 2 // 10, *((day.year, day.month, day.day) if day else (years[0], 0, 0)))


def _decade(record: Record, sort_names: Mapping[str, str]) -> str:
    """`The 1920s`, by the middle of what its date may mean."""
    years = years_told(record)
    return f"The {sum(years) // 2 // 10 * 10}s" if years else ""


def _box(record: Record, sort_names: Mapping[str, str]) -> str:
    label = record.mark.label("box") if record.mark else ""
    return f"Box {label}" if label else ""


def _place(record: Record, sort_names: Mapping[str, str]) -> str:
    """The town of today where the place was matched, else the place as told."""
    place = record.place
    return place.city if place and place.city else captions.capital(captions.bare(record.words("place")))


def _family(record: Record, sort_names: Mapping[str, str]) -> str:
    """The surname that most of those shown bear; the first of them where several are as frequent."""
    names = (sort_names.get(person.person, "") for person in record.shown())
    surnames = Counter(name.split(",")[0] for name in names if "," in name)
    return surnames.most_common(1)[0][0] if surnames else ""


def _person(record: Record, sort_names: Mapping[str, str]) -> str:
    """The one person surely shown, as an index lists them; of several, in doubt, and without a name nothing."""
    shown = record.shown()
    if len(shown) != 1 or is_doubted(shown[0]) or not is_name(shown[0].name):
        return ""
    return sort_names.get(shown[0].person, shown[0].name)


def _occasion(record: Record, sort_names: Mapping[str, str]) -> str:
    return captions.capital(captions.bare(record.words("occasion")))


_TITLES: Mapping[str, Callable[[Record, Mapping[str, str]], str]] = {
    "decade": _decade,
    "box": _box,
    "place": _place,
    "person": _person,
    "family": _family,
    "occasion": _occasion,
    "none": lambda record, sort_names: "",
}
_LAST = {
    "decade": "Without a date",
    "box": "In no box",
    "place": "Without a place",
    "person": "Others",
    "family": "Others",
    "occasion": "Without an occasion",
    "none": "",
}
