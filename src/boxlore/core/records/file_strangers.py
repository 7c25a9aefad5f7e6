"""Whom a scan's own file says that it shows, and of whom the registry knows nothing: they count as living.

A file names people as shown (`PersonInImage`, the name of a region of a face) who were never told here. A name in a
caption may be anything; this says who is in the picture. So the scan is held until the keeper has answered.
"""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from hashlib import sha256

from boxlore.core.fields.name_answers import NamingAnswer
from boxlore.core.fields.pictures import EMBEDDED_WORDS
from boxlore.core.people.person import Person
from boxlore.core.records.item_record import Record, ScanFile
from boxlore.core.records.name_answers import NOTHING_DECIDED, Decided
from boxlore.core.statements import fold

STRANGER = "unknown"
"""Stands for the id of a person whom the registry has not."""

INSIDE = "inside the file"


@dataclass(frozen=True, slots=True)
class Strangers:
    """`known` are the names of everyone in the registry, folded; `decided` is what the keeper has answered."""

    known: frozenset[str]
    decided: Decided = NOTHING_DECIDED

    def shown_in(self, record: Record) -> Iterator[tuple[ScanFile, str]]:
        """(scan, name) for each person whom a file of the record shows, whom nobody knows, and who was not let out."""
        for scan in record.scans:
            for name in _named_as_shown(scan):
                answer = self.decided.answers.get((record.id, INSIDE, STRANGER, stranger_digest(name)))
                if fold(name) not in self.known and answer in (None, NamingAnswer.HIDE):
                    yield scan, name


def strangers_to(people: Iterable[Person], decided: Decided) -> Strangers:
    """For a registry: whoever is called by a whole name of somebody in it is that one, and judged as that one."""
    names = (name for person in people for name in (person.name, person.sort_name, *person.forms))
    return Strangers(frozenset(map(fold, names)), decided)


def stranger_digest(name: str) -> str:
    """By what an answer about a stranger is known again."""
    return f"{sha256(fold(name).encode()).hexdigest()[:16]}:0:0"


def _named_as_shown(scan: ScanFile) -> Iterator[str]:
    for line, words in EMBEDDED_WORDS.read(scan.embedded).lines if scan.embedded else ():
        if line == "people":
            yield from filter(None, map(str.strip, words.split(";")))
