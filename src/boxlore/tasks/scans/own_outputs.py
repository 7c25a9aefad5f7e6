"""What Boxlore has made itself of a collection's scans, so that an intake does not take it for a new scan.

A file is the collection's own by any of these, whatever it is called and wherever it lies:

- it says so inside, or in the caption beside it: the identifier of the collection, or that of one of its scans;
- its bytes are ones that were written as an output (see `tasks.collection.output_paths`);
- a folder above it lists it as made there of this collection's items: a contents page of copies, the list of pages, an
  offer, a package;
- it lies where the collection keeps its recordings, papers and backups.
"""

import csv
import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from pathlib import Path, PurePath

from boxlore.core.errors import BoxloreError, ByteFault
from boxlore.disk.digests import sha256_of
from boxlore.disk.regular_file import open_regular
from boxlore.formats import picture_files
from boxlore.tasks.collection.opening import FOLDERS, Collection
from boxlore.tasks.collection.output_paths import COPIES_LIST, OFFER_LIST, PAGES_LIST, was_written

MOST_LIST = 64 << 20
"""Bytes of a list that are read."""
_NUMBER = re.compile(r"[A-Z][A-Z0-9]*-[0-9]+")
_IDENTIFIER = re.compile(rb"urn:uuid:([0-9a-fA-F-]{36})")


@dataclass(slots=True)
class OwnOutputs:
    """Tells what is a collection's own. What folders list is read once."""

    collection: Collection
    _listed: dict[Path, dict[PurePath, str]] = field(default_factory=dict)
    _is_package: dict[Path, bool] = field(default_factory=dict)
    _identifiers: frozenset[str] = frozenset()

    def what(self, path: Path, digest: str) -> str:
        """What of ours the file is, in words for a sentence; '' if it is none. `digest` is its SHA-256."""
        path = path.resolve()
        if was_written(self.collection, digest):
            return "an output"
        return self._by_place(path) or self._by_words(path)

    def what_is_no_scan(self, path: Path) -> str:
        """The same for a file that is not to be taken, such as a PDF; '' also for what is no file."""
        try:
            return self.what(path, sha256_of(path)) if path.is_file() else ""
        except (BoxloreError, OSError):
            return ""

    def _by_words(self, path: Path) -> str:
        """By what it says inside, or what the caption beside it says."""
        if not self._identifiers:
            scans = (ident for ident, _ in self.collection.store.scans())
            self._identifiers = frozenset((self.collection.id, *scans))
        said = (match.decode().lower() for packet in _packets(path) for match in _IDENTIFIER.findall(packet))
        return "a copy" if self._identifiers.intersection(said) else ""

    def _by_place(self, path: Path) -> str:
        home = self.collection.folder.resolve()
        if path.is_relative_to(home) and path.relative_to(home).parts[0] in FOLDERS[1:]:
            return "what the collection keeps"
        for folder in path.parents:
            name = path.relative_to(folder)
            if folder not in self._listed:
                self._listed[folder] = dict(_listed_in(folder, self.collection))
                self._is_package[folder] = _names(folder / "bag-info.txt", self.collection.id)
            if name in self._listed[folder]:
                return self._listed[folder][name]
            if self._is_package[folder] and name.parts[0] == "data":
                return "a part of a package"
        return ""


def _packets(path: Path) -> Iterator[bytes]:
    """The XMP of a file, and of the caption beside it; none of what cannot be read."""
    beside = path.with_name(path.name + ".xmp")
    try:
        if beside.is_file() and beside.stat().st_size <= MOST_LIST:
            yield beside.read_bytes()
        with open_regular(path) as file:
            standard, further = picture_files.packets(file)
            yield from (standard, *further)
    except (ByteFault, BoxloreError, OSError):
        return


def _listed_in(folder: Path, collection: Collection) -> Iterator[tuple[PurePath, str]]:
    """What a folder lists as made there of this collection's items: (name below it, what it is)."""
    for copy in _rows(folder / COPIES_LIST, "copy", "sha256_of_scan", "made_for"):
        if collection.store.scan_by_sha256(copy["sha256_of_scan"] or ""):
            yield PurePath(copy["copy"] or ""), "a copy"
    numbers = {row["Number"] or "" for row in _rows(folder / OFFER_LIST, "Number", "Wanted")}
    named = [(f"pictures/{number}.jpg", "a picture of an offer") for number in numbers]
    named += [(line, "a picture of pages") for line in _lines(folder / PAGES_LIST)]
    for name, what in named:
        number = _NUMBER.match(PurePath(name).name)
        if number and collection.store.item_by_number(number[0]):
            yield PurePath(name), what


def _lines(path: Path) -> list[str]:
    try:
        if path.is_file() and path.stat().st_size <= MOST_LIST:
            return path.read_text("utf-8-sig", errors="replace").splitlines()
    except OSError:
        pass  # a list that cannot be read lists nothing
    return []


def _rows(path: Path, *columns: str) -> Iterator[Mapping[str, str | None]]:
    """The rows of a table that has all of these columns; none of another table."""
    try:
        rows = csv.DictReader(_lines(path))
        if set(columns) <= set(rows.fieldnames or ()):
            yield from rows
    except csv.Error:
        return


def _names(path: Path, ident: str) -> bool:
    """Whether the description of a package names the collection (RFC 8493, 2.2.2: External-Identifier)."""
    return any(f"urn:uuid:{ident}" in line for line in _lines(path))
