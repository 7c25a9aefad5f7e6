"""How a day begins: who told here before, where one stopped, and which photographs to go through.

Where one stopped is noted beside the log (`OUT` in the store's own notes): it is about this copy of the collection
and this desk, not about the photographs.
"""

import time
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from boxlore.core.people.reference import id_meant
from boxlore.core.records.terms import terms_in
from boxlore.core.statements import Kind
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.sitting.item_list import TOLD, Listing
from boxlore.tasks.telling.understanding import Understanding

OUT = "out"
"""The note in the store: the id of the item that was out last, and when, with a blank between."""

MOST_OFFERED = 9
"""So many of those who told before are offered, those who told last."""

PATIENCE = 1.0
"""Seconds that are spent at most on looking for the next photograph with an open question."""


@dataclass(frozen=True, slots=True)
class KnownTeller:
    """Somebody who told before: the name, how many sittings, the day of the last one, the terms last agreed, and the
    place among all who told, by their first sitting."""

    name: str
    person: str
    sittings: int
    last: str
    terms: str = ""
    place: int = 0


def check_teller(collection: Collection, name: str) -> None:
    """Raises WrongUse for a name by which several people may be meant; lists them."""
    if name.strip():
        Understanding(collection).person_called(name)


def known_tellers(collection: Collection) -> list[KnownTeller]:
    """Everyone who told in a sitting, the last one first."""
    people = collection.people()
    tellers: dict[str, KnownTeller] = {}
    for _, rows in collection.store.subjects(Kind.SITTING):
        words_of = {statement.field: statement.words for statement, _ in rows}
        meant = next(
            (id_meant(reading) for statement, reading in rows if statement.field == "narrator" and reading), ""
        )
        if not (name := words_of.get("narrator", "")):
            continue
        person = people[meant].id if meant in people else ""
        before = tellers.get(person or name)
        is_later = before is None or words_of.get("date", "") >= before.last
        tellers[person or name] = KnownTeller(
            name=people[person].name if person else name,
            person=person,
            sittings=(before.sittings if before else 0) + 1,
            last=words_of.get("date", "") if is_later or before is None else before.last,
            terms=terms_in(words_of.get("consent", "")) or (before.terms if before else ""),
            place=before.place if before else len(tellers),
        )
    return sorted(tellers.values(), key=lambda teller: (teller.last, teller.name), reverse=True)


def offered(tellers: Sequence[KnownTeller]) -> list[KnownTeller]:
    """Those of `known_tellers` who told last, in the order in which they first told, so that a digit means the same one
    every day."""
    return sorted(tellers[:MOST_OFFERED], key=lambda teller: teller.place)


def note_out(collection: Collection, item: str) -> None:
    """Note that an item came out, for the next time."""
    collection.store.set_meta(OUT, f"{item} {collection.clock.now()}")


@dataclass(frozen=True, slots=True)
class Stopped:
    """Where one stopped: the item's position in the list, and when (UTC, ISO 8601; '' if nobody noted it)."""

    position: int
    when: str = ""


def where_stopped(collection: Collection, listing: Listing) -> Stopped | None:
    """The item that was out last, if it is still there; None where nothing was shown yet."""
    item, _, when = collection.store.meta(OUT).partition(" ")
    position = listing.position(item) if item else -1
    return Stopped(position, when) if position >= 0 else None


def next_open(listing: Listing, begin: int = 0) -> int | None:
    """The position of the first photograph from `begin` on that still has an open question, from the start again at
    the end. None if there is none, or none was found within PATIENCE."""
    until = time.monotonic() + PATIENCE
    for positions in _chunks(listing, begin):
        rows = listing.rows([listing.id_at(at) for at in positions])
        for at, row in zip(positions, rows, strict=True):
            if row.state != TOLD and not row.to_ask:
                return at
        if time.monotonic() > until:
            break
    return None


def _chunks(listing: Listing, begin: int, size: int = 50) -> Iterator[list[int]]:
    order = [*range(begin, len(listing)), *range(min(begin, len(listing)))]
    for start in range(0, len(order), size):
        yield order[start : start + size]


@dataclass(frozen=True, slots=True)
class Way:
    """Some photographs to go through in their order: what they are, in words, and their positions in the list."""

    name: str
    positions: tuple[int, ...]

    def after(self, position: int, by: int) -> int | None:
        """The position that follows (`by` 1) or comes before (-1); None at an end."""
        ahead = [at for at in self.positions if (at > position if by > 0 else at < position)]
        return None if not ahead else ahead[0] if by > 0 else ahead[-1]


def same_box(collection: Collection, listing: Listing, position: int) -> Way | None:
    """The photographs in the same box as the one at a position; None if that one is in no box."""
    paths = dict(collection.store.containers())
    boxes = {item: path[0][1] for item, kept in collection.store.kept_in() if (path := paths.get(kept.container))}
    box = boxes.get(listing.id_at(position))
    if box is None:
        return None
    inside = [at for item, label in boxes.items() if label == box and (at := listing.position(item)) >= 0]
    return Way(f"Box {box}", tuple(sorted(inside)))
