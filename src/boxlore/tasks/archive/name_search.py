"""The name search: where a withheld name stands, before anything leaves, and that none is left in what does.

Every form of every withheld name is looked for in all words, in names of files, in what scans carry inside them and
in the finished files. The keeper reads what was found and what becomes of it.
"""

import re
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from pathlib import Path

from boxlore.core.records.audience import OF_SCANS
from boxlore.core.records.closing_dates import Closing
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.records import EVERYTHING, AudienceView, Selection, records

READABLE = (".xml", ".txt", ".csv", ".nt", ".ttl", ".html", ".vtt", ".toml", ".json")
CHUNK = 1 << 22
LONGEST_NAME = 512

TO_THE_CLOSED_PART = "the scan goes to the closed part"


@dataclass(frozen=True, slots=True)
class NameFound:
    """One place where withheld names stand: whose, in which words, and what becomes of it in the open part."""

    number: str
    field: str
    words: str
    people: tuple[str, ...]
    done: str


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
            yield NameFound(whole.number, naming.where, naming.words[:200], people, done)
        listed = {naming.words for naming in namings if naming.where in OF_SCANS}
        if outside.recipient.seen(whole).closed_scans:
            for scan in whole.scans:
                if scan.path not in listed:
                    yield NameFound(whole.number, f"the scan, {scan.side}", scan.path, people, TO_THE_CLOSED_PART)


def names_left(seen: AudienceView, folder: Path) -> Iterator[str]:
    """Files of a folder in whose names or bytes any form of a withheld name stands."""
    in_bytes = byte_search(seen)
    for path in sorted(folder.rglob("*")):
        if path.is_file() and (not seen.recipient.may_read(path.name) or _holds(path, seen, in_bytes)):
            yield path.relative_to(folder).as_posix()


def names_in_payload(seen: AudienceView, payload: Iterable[tuple[str, Path]], info: Mapping[str, str]) -> Iterator[str]:
    """The same of what is about to be packed, by the names it will have, and of the bag's own words."""
    in_bytes = byte_search(seen)
    for name, path in payload:
        if not seen.recipient.may_read(name) or _holds(path, seen, in_bytes):
            yield name
    yield from (name for name, words in info.items() if not seen.recipient.may_read(words))


@dataclass(frozen=True, slots=True)
class ByteSearch:
    """Full names in any file's bytes, in any case, in UTF-8 or UTF-16; single given names would hit by chance.

    `words` are the last words of the names: cheap to look for, so that the pattern is tried only where one stands.
    """

    words: tuple[bytes, ...]
    pattern: re.Pattern[bytes]

    def finds(self, data: bytes) -> bool:
        low = data.lower()
        return any(
            any(word in text for word in self.words) and self.pattern.search(text)
            for text in (low, low.replace(b"\0", b""))
        )


def byte_search(seen: AudienceView) -> ByteSearch | None:
    """The search for everyone withheld, or None if nobody is."""
    names = seen.withheld.whole_names
    spelled = {spelling.encode().lower() for name in names for spelling in (name, name.lower(), name.upper())}
    if not spelled:
        return None
    words = tuple(sorted({spelling.rpartition(b" ")[2] for spelling in spelled}))
    return ByteSearch(words, re.compile(b"|".join(map(re.escape, sorted(spelled)))))


def _holds(path: Path, seen: AudienceView, in_bytes: ByteSearch | None) -> bool:
    """Whether a file holds a withheld name: a text by its folded words line by line, anything else by its bytes."""
    if path.suffix.lower() in READABLE:
        with open(path, encoding="utf-8", errors="replace") as file:
            return not all(map(seen.recipient.may_read, file))
    if in_bytes is None:
        return False
    before = b""
    with open(path, "rb") as binary:
        while data := binary.read(CHUNK):
            if in_bytes.finds(before + data):
                return True
            before = data[-LONGEST_NAME:]
    return False
