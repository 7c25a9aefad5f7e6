"""The name search: where a withheld name stands, before anything leaves, and that none is left in what does.

Every form of every withheld name is looked for in all words, in names of files, in what scans carry inside them and
in the finished files. The keeper reads what was found and what becomes of it.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from boxlore.core.errors import CouldNot
from boxlore.core.records.audience import OF_SCANS
from boxlore.core.records.closing_dates import Closing
from boxlore.tasks.archive.name_answers import NamePlace, places_of, with_answers
from boxlore.tasks.collection.gate import Gate, files_in
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.records import EVERYTHING, AudienceView, Selection, records

TO_THE_CLOSED_PART = "the scan goes to the closed part"


@dataclass(frozen=True, slots=True)
class NameFound:
    """One place where withheld names stand: whose, in which words, and what becomes of it in the open part."""

    number: str
    field: str
    words: str
    people: tuple[str, ...]
    done: str
    places: tuple[NamePlace, ...] = ()
    """Where in the words, for each person; none where somebody is meant or shown without a name."""


def search(
    collection: Collection, outside: AudienceView, closing: Closing, selection: Selection = EVERYTHING
) -> Iterator[NameFound]:
    """Everything that the open part leaves out for a name's sake, item by item."""
    for whole in records(collection, selection):
        namings = list(outside.recipient.namings(whole))
        if not namings:
            continue
        people = tuple(sorted(person.name for person in closing.named_in(whole)))
        for naming in namings:
            done = TO_THE_CLOSED_PART if naming.where in OF_SCANS else "left out of the open part"
            places = tuple(with_answers(collection, places_of(collection, whole, naming)))
            yield NameFound(whole.number, naming.where, naming.words[:200], people, done, places)
        listed = {naming.words for naming in namings if naming.where in OF_SCANS}
        if outside.recipient.seen(whole).closed_scans:
            for scan in whole.scans:
                if scan.path not in listed:
                    yield NameFound(whole.number, f"the scan, {scan.side}", scan.path, people, TO_THE_CLOSED_PART)


def names_left(seen: AudienceView, folder: Path) -> Iterator[str]:
    """Files of a folder that the gate does not let out: they name someone withheld, or cannot be opened wholly."""
    gate = Gate(seen)
    for name, path in files_in(folder):
        try:
            gate.check_all([(name, path)])
        except CouldNot:
            yield name
