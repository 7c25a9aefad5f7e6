"""Records for outputs: from the store to `core.record.Record`, seen as one audience may see it."""

import json
from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from boxlore.core.audience import Life, To, Withheld, life_of, visible, withhold
from boxlore.core.errors import WrongUse
from boxlore.core.lives import Seen as Pictured
from boxlore.core.lives import latest_births
from boxlore.core.record import Material, Record, build
from boxlore.core.rules_kin import Wedding
from boxlore.core.statements import fold
from boxlore.tasks.describe import find_item
from boxlore.tasks.opening import Collection


@dataclass(frozen=True, slots=True, kw_only=True)
class Selection:
    """Which items: all, or those of a box, a folder, a person by name, an event, a search, or by number or mark."""

    box: str = ""
    folder: str = ""
    person: str = ""
    event: str = ""
    words: str = ""
    items: tuple[str, ...] = ()


EVERYTHING = Selection()


def record_of(collection: Collection, item: str) -> Record:
    """The keeper's whole record of one item, by its id."""
    for record in _records(collection, (item,)):
        return record
    raise WrongUse("That item is not here.")


def records(collection: Collection, selection: Selection = EVERYTHING) -> Iterator[Record]:
    """The keeper's whole records, in the order of their numbers, one at a time."""
    ids = _chosen_ids(collection, selection)
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

    def records(self, selection: Selection = EVERYTHING) -> Iterator[Record]:
        """What outputs take: only what may be seen."""
        today = self.collection.clock.today()
        for record in records(self.collection, selection):
            seen = visible(record, self.to, today, self.withheld)
            if _selected(seen, selection):  # a selection tells nothing that its audience may not know
                yield seen


def seen_by(collection: Collection, to: To) -> Seen:
    """Work out who is living, then whose names are withheld from that audience."""
    people = collection.people()
    lives = lives_of(collection) if to is To.OUTSIDE else {}
    return Seen(collection, to, withhold(people.values(), lives, to, collection.clock.today()), lives)


def lives_of(collection: Collection) -> dict[str, Life]:
    """Who is taken as living, and why: from what is told, else from pictures, marriages and children."""
    people = collection.people()
    latest = latest_births(people, _pictured(collection), _wed(collection))
    today, years = collection.clock.today(), collection.settings.living_years
    return {ident: life_of(one, today, years, latest.get(ident)) for ident, one in people.items()}


def _pictured(collection: Collection) -> Iterator[Pictured]:
    """Everyone in a dated picture, or behind the camera."""
    for record in records(collection):
        if (when := record.first("date")) and when.value:
            for one in (*record.shown(), *record.shown("photographer")):
                if one.person:
                    yield Pictured(one.person, when.value, f"{record.number}, {record.date_display}")


def weddings(collection: Collection) -> Iterator[Wedding]:
    """Marriages that are told as events, with who married and when."""
    for _, told in collection.store.subjects("event"):
        usable = [(one, json.loads(read.value)) for one, read in told if read is not None and read.usable]
        dates = [value for one, value in usable if one.field == "date"]
        partners = tuple(str(value.get("id", "")) for one, value in usable if one.field == "partner")
        if dates and partners:
            yield Wedding(partners, dates[-1])


def _wed(collection: Collection) -> Iterator[Pictured]:
    for wedding in weddings(collection):
        for one in wedding.partners:
            yield Pictured(one, wedding.value, str(wedding.value.get("display") or ""))


def _chosen_ids(collection: Collection, selection: Selection) -> tuple[str, ...] | None:
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
    if selection.event and fold(selection.event) not in fold(record.words("occasion")):
        return False
    asked = fold(selection.person)
    return not asked or any(asked in fold(one.name) for one in record.people)


def _records(collection: Collection, ids: tuple[str, ...] | None) -> Iterator[Record]:
    people = collection.people()
    said_by = people.names()
    material: Material
    for material in collection.store.about_items(ids=ids):
        yield build(material, people, said_by)
