"""The album's chapters: photographs by decade, box, place, person, family or occasion, in a stable order."""

from collections import Counter
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass

from boxlore.core.crosswalk import captions, references
from boxlore.core.dates.reading import DateReading
from boxlore.core.people.names.list_order import list_key
from boxlore.core.records.item_record import Record
from boxlore.core.wording.catalogue import Say, to_say
from boxlore.sheets.album_indexes import is_doubted, is_name
from boxlore.sheets.print_run import Printing

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
    decade: int = 0
    """The first year of a chapter that is a decade; 0 for any other."""


def chapters(records: Sequence[Record], by: str, printing: Printing) -> list[Chapter]:
    """The chapters of an album by a key of BY; whatever the key says nothing of stands in a last chapter.

    People stand under the name by which they are indexed; titles that are names follow the alphabet of the printing's
    language. A single chapter has no title.
    """
    made = decades(records, printing.say) if by == "decade" else _by_title(records, by, printing)
    return [Chapter("", made[0].records)] if len(made) == 1 else made


def _by_title(records: Sequence[Record], by: str, printing: Printing) -> list[Chapter]:
    if by == "person":
        records = in_time(records)
    groups: dict[str, list[Record]] = {}
    for record in records:
        groups.setdefault(_TITLES[by](record, printing), []).append(record)
    last = groups.pop("", [])
    names = (
        list(groups) if by in ("box", "none") else sorted(groups, key=lambda name: list_key(name, printing.language))
    )
    made = [Chapter(name, tuple(groups[name])) for name in names]
    return [*made, Chapter(printing.say(_LAST[by]) if _LAST[by] else "", tuple(last))] if last else made


def decades(records: Sequence[Record], say: Say) -> list[Chapter]:
    """Photographs by decade in order, those without a date last; a single decade has its title too."""
    groups: dict[int, list[Record]] = {}
    for record in in_time(records):
        groups.setdefault(_decade(record), []).append(record)
    return [
        Chapter(say("The {decade}s", decade=first) if first else say(_LAST["decade"]), tuple(rows), first)
        for first, rows in groups.items()
    ]


def decade_in_short(first: int, say: Say) -> str:
    """`1920s`."""
    return say("{decade}s", decade=first)


def photographs(count: int, say: Say) -> str:
    """`3 photographs`."""
    return say.counted(count, "{count} photograph", "{count} photographs")


def span_of(records: Sequence[Record], say: Say) -> str:
    """`35 photographs, 1871 to 1975`."""
    years = [year for record in records for year in years_known(record) or ()]
    count = photographs(len(records), say)
    if not years:
        return count
    first, last = min(years), max(years)
    return f"{count}, {say('{first} to {last}', first=first, last=last) if first != last else first}"


NARROW = 10
"""Years that a date which nobody has told may leave open, to say in which decade a photograph stands (common practice,
no source)."""


def years_known(record: Record) -> tuple[int, int] | None:
    """The first and the last year of the date in force, else of a narrow one that is worked out; None for neither."""
    date = _date(record)
    earliest, latest = (date.earliest, date.latest) if date else (None, None)
    first, last = earliest.year if earliest else None, latest.year if latest else None
    if first is None and last is None:
        return None
    return (first if first is not None else last or 0, last if last is not None else first or 0)


def _date(record: Record) -> DateReading | None:
    view = record.first("date")
    if view is not None and view.date is not None and view.date.edtf is not None:
        return view.date
    worked_out = record.worked_out.reading if record.worked_out else None
    if worked_out is None or worked_out.earliest is None or worked_out.latest is None:
        return None
    return worked_out if worked_out.latest.year - worked_out.earliest.year <= NARROW else None


def in_time(records: Iterable[Record]) -> list[Record]:
    """The photographs by decade and day; those without a date last."""
    return sorted(records, key=_first_day)


def _first_day(record: Record) -> tuple[int, int, int, int]:
    """For sorting: the decade, then the first day; what has no date comes last."""
    years, date = years_known(record), _date(record)
    if years is None:
        return 99999, 0, 0, 0
    day = date.earliest if date else None
    return (sum(years) // 2 // 10, *((day.year, day.month, day.day) if day else (years[0], 0, 0)))


def _decade(record: Record) -> int:
    """1920, by the middle of what its date may mean; 0 without a date."""
    years = years_known(record)
    return sum(years) // 2 // 10 * 10 if years else 0


def _box(record: Record, printing: Printing) -> str:
    label = record.mark.label("box") if record.mark else ""
    return references.container("box", label, printing.say) if label else ""


def _place(record: Record, printing: Printing) -> str:
    """The town of today where the place was matched, else the place as told."""
    place = record.place
    return place.city if place and place.city else captions.capital(captions.bare(record.words("place")))


def _family(record: Record, printing: Printing) -> str:
    """The surname that most of those shown bear; the first of them where several are as frequent."""
    names = (printing.sort_names.get(person.person, "") for person in record.shown())
    surnames = Counter(name.split(",")[0] for name in names if "," in name)
    return surnames.most_common(1)[0][0] if surnames else ""


def _person(record: Record, printing: Printing) -> str:
    """The one person surely shown, as an index lists them; of several, in doubt, and without a name nothing."""
    shown = record.shown()
    if len(shown) != 1 or is_doubted(shown[0]) or not is_name(shown[0].name):
        return ""
    return printing.sort_names.get(shown[0].person, shown[0].name)


def _occasion(record: Record, printing: Printing) -> str:
    return captions.capital(captions.bare(record.words("occasion")))


_TITLES: Mapping[str, Callable[[Record, Printing], str]] = {
    "box": _box,
    "place": _place,
    "person": _person,
    "family": _family,
    "occasion": _occasion,
    "none": lambda record, printing: "",
}
_LAST = {
    "decade": to_say("Without a date"),
    "box": to_say("In no box"),
    "place": to_say("Without a place"),
    "person": to_say("Others"),
    "family": to_say("Others"),
    "occasion": to_say("Without an occasion"),
    "none": "",
}
