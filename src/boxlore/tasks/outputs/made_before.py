"""Outputs that were made before a consent was withdrawn, and name or show that person still: what to make again.

A file is looked at if Boxlore made it and it lies in the collection's folder; what lies elsewhere, or was handed on, is
not known here. It is one to make again if nothing kept it inside while the consent held, and something does now: a name
that the gate finds, or the number of an item whose picture may not be shown any more. So what was made for the family,
which names everybody living, is not listed. By a number it is listed only if it was made before the withdrawal, since
one that is made again may still tell that the item is there.
"""

import os
from collections.abc import Iterator, Sequence
from contextlib import suppress
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from boxlore.core.errors import BoxloreError, ByteFault
from boxlore.core.findings import several
from boxlore.core.people.consent import allowed
from boxlore.core.people.person import Person
from boxlore.core.records.audience import Recipient, To
from boxlore.core.statements import Kind, Subject
from boxlore.formats import document_texts
from boxlore.tasks.collection.gate import Gate
from boxlore.tasks.collection.opening import DATABASE, FOLDERS, Collection
from boxlore.tasks.collection.output_paths import ASKED_BY_AN_UPDATE, OWN_FILES
from boxlore.tasks.collection.records_for_outputs import given, records, seen_by, while_consents_held
from boxlore.tasks.outputs.copies_contents import read_contents
from boxlore.tasks.scans.own_outputs import OwnOutputs

SHOWS_PICTURES = frozenset((".pdf", ".html", ".jpg", ".jpeg", ".png", ".webp", ".tif", ".tiff"))
DEEPEST_ALONE = 2
"""Parts of a path down to which a PDF is an output of its own, `print/album.pdf`; deeper it is part of one."""
HANDED_ON = f"What you made elsewhere, or handed on, Boxlore cannot see: ask for it back. {ASKED_BY_AN_UPDATE}"


@dataclass(frozen=True, slots=True)
class MadeBefore:
    """Outputs of one place to make again: a file, or so many files below a folder (relative to the collection)."""

    path: str
    files: int

    def __str__(self) -> str:
        return self.path if self.files == 1 else f"{self.path} ({several(self.files, 'file')})"


def withdrawn(collection: Collection) -> list[Person]:
    """Everyone who has allowed something and does not allow it any more."""
    return [person for person in collection.people().values() if allowed(given(person)) - allowed(person.consents)]


def made_before(collection: Collection, people: Sequence[Person]) -> list[MadeBefore]:
    """The outputs in the collection's folder that name or show one of them still."""
    if not people:
        return []
    after = seen_by(collection, To.OUTSIDE)
    before = while_consents_held(after, people)
    closed = _closed_now(collection, before.recipient, after.recipient)
    since = max((_when(collection, person) for person in people), default=0.0)
    gate_before, gate_after = Gate(before), Gate(after)
    ours = OwnOutputs(collection)
    counted: dict[str, int] = {}
    for path in _files(collection):
        name = path.relative_to(collection.folder)
        if not ours.what_is_no_scan(path):
            continue
        is_told = path.stat().st_mtime <= since and _tells_of(path, name, closed)
        is_out = is_told or gate_after.names_somebody(name.as_posix(), path)
        if is_out and not gate_before.names_somebody(name.as_posix(), path):
            is_alone = name.suffix.lower() == ".pdf" and len(name.parts) <= DEEPEST_ALONE
            place = name if is_alone or len(name.parts) == 1 else Path(name.parts[0])
            counted[place.as_posix()] = counted.get(place.as_posix(), 0) + 1
    return [MadeBefore(path, files) for path, files in sorted(counted.items())]


def to_make_again(collection: Collection, people: Sequence[Person]) -> list[str]:
    """The sentences of it for the keeper; none where nobody has withdrawn anything."""
    names = ", ".join(person.name for person in people)
    made = made_before(collection, people)
    if not made:
        return [f"No output in this folder names or shows {names}. {HANDED_ON}"] if people else []
    paths = "; ".join(map(str, made))
    return [f"Made before, and names or shows {names} still: {paths}. Make each again, or delete it. {HANDED_ON}"]


def _closed_now(collection: Collection, before: Recipient, after: Recipient) -> frozenset[str]:
    """The numbers of items whose pictures might be shown while the consents held, and may not be any more."""
    return frozenset(
        whole.number
        for whole in records(collection)
        if after.seen(whole).closed_scans and not before.seen(whole).closed_scans
    )


def _when(collection: Collection, person: Person) -> float:
    """When the last word on a consent of the person was noted, in seconds."""
    told = collection.store.statements(Subject(Kind.PERSON, person.id))
    times = [statement.recorded_at for statement, _ in told if statement.field == "consent"]
    return max((datetime.fromisoformat(time).timestamp() for time in times), default=0.0)


def _files(collection: Collection) -> Iterator[Path]:
    """The files of the folder that may be outputs for outside."""
    scans = collection.registered_scans()
    for home, folders, names in os.walk(collection.folder):
        here = Path(home)
        if here == collection.folder:
            folders[:] = [name for name in folders if name not in FOLDERS]
        folders[:] = sorted(name for name in folders if not name.startswith(".") and not _is_inside(here / name))
        for name in sorted(names):
            is_own = name in OWN_FILES or name.startswith(DATABASE.partition(".")[0])
            if not name.startswith(".") and not (is_own and here == collection.folder):
                path = here / name
                if path.is_file() and not path.is_symlink() and scans.scan_at(path) is None:
                    yield path


def _is_inside(folder: Path) -> bool:
    """Whether a folder holds what is not for outside: the closed part of a package, copies for the family."""
    if folder.name.startswith("closed") and (folder / "bagit.txt").is_file():
        return True
    with suppress(BoxloreError):
        return any(not To(line.made_for).is_public for line in read_contents(folder))
    return False


def _tells_of(path: Path, name: Path, numbers: frozenset[str]) -> bool:
    """Whether a file that may show pictures has one of the numbers in its name or its words."""
    if not numbers or path.suffix.lower() not in SHOWS_PICTURES:
        return False
    if any(number in name.as_posix() for number in numbers):
        return True
    with suppress(ByteFault, OSError), open(path, "rb") as file:
        return any(number in text.words for text in document_texts.texts(path.name, file) for number in numbers)
    return False
