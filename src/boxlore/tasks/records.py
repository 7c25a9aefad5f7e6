"""Records for outputs: from the store to `core.record.Record`, seen as one audience may see it."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date

from boxlore.core.audience import NOBODY, Life, To, Withheld, life_of, visible, withhold
from boxlore.core.errors import WrongUse
from boxlore.core.record import Material, Record, build
from boxlore.core.statements import fold
from boxlore.tasks.describe import find_item
from boxlore.tasks.opening import Collection


@dataclass(frozen=True, slots=True, kw_only=True)
class Selection:
    """Which items: all, or those of a box, a folder, a person by name, a search, or by number or mark."""

    box: str = ""
    folder: str = ""
    person: str = ""
    words: str = ""
    items: tuple[str, ...] = ()
    wanted: bool = False
    """Only what the archive has said that it wants."""


EVERYTHING = Selection()


def record_of(collection: Collection, item: str) -> Record:
    """The keeper's whole record of one item, by its id."""
    for record in _records(collection, (item,)):
        return record
    raise WrongUse("That item is not here.")


def records(
    collection: Collection, selection: Selection = EVERYTHING, order: Sequence[str] | None = None
) -> Iterator[Record]:
    """The keeper's whole records, one at a time, in the order of their numbers, or those of `order` in its own."""
    ids = _chosen_ids(collection, selection)
    if order is not None:
        chosen = set(order if ids is None else ids)
        ids = tuple(one for one in order if one in chosen)
    for record in _records(collection, ids):
        if _selected(record, selection):
            yield record


@dataclass(slots=True)
class Seen:
    """Records as one audience may see them, and who is withheld from it and why."""

    collection: Collection
    to: To
    withheld: Withheld
    lives: Mapping[str, Life]
    latest: Mapping[str, tuple[date, str]] = field(default_factory=dict)
    """The latest possible birth of a person as inferred, with its reason."""

    def records(self, selection: Selection = EVERYTHING, order: Sequence[str] | None = None) -> Iterator[Record]:
        """What outputs take: only what may be seen."""
        today = self.collection.clock.today()
        for record in records(self.collection, selection, order):
            yield visible(record, self.to, today, self.withheld)


def seen_by(collection: Collection, to: To) -> Seen:
    """Work out who is living, then whose names are withheld from that audience."""
    people = collection.people()
    latest = _latest_births(collection) if to is To.OUTSIDE else {}
    today, years = collection.clock.today(), collection.settings.living_years
    lives = {ident: life_of(one, today, years, latest.get(ident)) for ident, one in people.items()}
    withheld = withhold(people.values(), lives, to) if to is To.OUTSIDE else NOBODY
    return Seen(collection, to, withheld, lives, latest)


def _latest_births(collection: Collection) -> dict[str, tuple[date, str]]:
    """For everyone in a dated picture, or behind the camera: born at the latest on the picture's last day."""
    latest: dict[str, tuple[date, str]] = {}
    for record in records(collection):
        when = record.first("date")
        day = str(when.value.get("latest") or "") if when else ""
        if len(day) != 10:
            continue
        taken = date.fromisoformat(day)
        for one in (*record.shown(), *record.shown("photographer")):
            if one.person and (one.person not in latest or taken < latest[one.person][0]):
                latest[one.person] = (taken, f"shown in {record.number}, {record.date_display}")
    return latest


def _chosen_ids(collection: Collection, selection: Selection) -> tuple[str, ...] | None:
    ids = _named_ids(collection, selection)
    if selection.wanted:
        wanted = collection.store.wanted()
        return tuple(wanted if ids is None else (one for one in ids if one in set(wanted)))
    return ids


def _named_ids(collection: Collection, selection: Selection) -> tuple[str, ...] | None:
    if selection.items:
        return tuple(find_item(collection, one).id for one in selection.items)
    if selection.words:
        hits = collection.store.search(selection.words, 100_000)
        return tuple(dict.fromkeys(hit.item for hit in hits if hit.item))
    return None


def _selected(record: Record, selection: Selection) -> bool:
    mark = record.mark
    if selection.box and (mark is None or mark.label("box") != selection.box):
        return False
    if selection.folder and (mark is None or mark.label("folder") != selection.folder):
        return False
    asked = fold(selection.person)
    return not asked or any(asked in fold(one.name) for one in record.people)


def _records(collection: Collection, ids: tuple[str, ...] | None) -> Iterator[Record]:
    people = collection.people()
    said_by = {ident: one.name for ident, one in people.items()}
    material: Material
    for material in collection.store.about_items(ids=ids):
        yield build(material, people, said_by)
