"""Which copies there are, and what each is called: by what never changes, in folders as the items are kept."""

import hashlib
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from pathlib import Path

from boxlore.core.crosswalk.scan_file_names import packed_path
from boxlore.core.records.audience import To
from boxlore.core.records.item_record import AS_SCANNED, Record, ScanFile


@dataclass(frozen=True, slots=True)
class CopyJob:
    """One scan of one item, and the name of its copy, without what tells the format."""

    record: Record
    scan: ScanFile
    name: Path


def jobs_of(records: Iterable[Record], longest: int = 0) -> Iterator[CopyJob]:
    """Every scan of every item with the name of its copy; a second scan of one side is numbered."""
    for record in records:
        seen: dict[Path, int] = {}
        for scan in record.scans:
            name = place_of(record, scan, longest)
            seen[name] = seen.get(name, 0) + 1
            yield CopyJob(record, scan, name if seen[name] == 1 else name.with_name(f"{name.name}-{seen[name]}"))


def place_of(record: Record, scan: ScanFile, longest: int = 0) -> Path:
    """`box-1/folder-2/TRA-0042_f`: by what never changes, number and side, in where the item is kept."""
    folder = Path()
    for kind, label in record.container_path:
        folder /= f"{kind}-{_safe(label)}"
    side = "f" if scan.side == "recto" else "b"
    altered = "" if scan.role == AS_SCANNED else f"_{_safe(scan.role)}"
    return folder / f"{record.number}_{side}{altered}{f'_{longest}' if longest else ''}"


def scan_named(record: Record, scan: ScanFile, to: To) -> str:
    """What copies for that audience call the scan: its path; for outside its name in a package, which names nobody."""
    return packed_path(record, scan) if to.is_public else scan.path


LONGEST_LABEL = 80
"""Bytes of a label in the name of a folder. A name may have 255 bytes on most disks (NAME_MAX of POSIX systems), and
all of a path 260 letters on some (MAX_PATH of Windows): from memory."""


def _safe(label: str) -> str:
    """A label as a part of a file's name. A long one is cut, with a digest of all of it behind so that none is two."""
    name = "".join(letter if letter.isalnum() or letter in "-_" else "-" for letter in label) or "-"
    if len(name.encode()) <= LONGEST_LABEL:
        return name
    beginning = name.encode()[: LONGEST_LABEL - 9].decode(errors="ignore")
    return f"{beginning}_{hashlib.sha256(label.encode()).hexdigest()[:8]}"


def is_shortened(record: Record) -> bool:
    """Whether a folder of the record's copies is called by a part of its label."""
    return any(len(label.encode()) > LONGEST_LABEL for _, label in record.container_path)
