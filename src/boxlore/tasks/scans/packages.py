"""Packages read again: every file against its manifests, and the linked data in them as what it says it is."""

from collections.abc import Iterator
from pathlib import Path

from boxlore.core.findings import Finding
from boxlore.exports.bag import verify_bag
from boxlore.exports.linked import faults_of


def verify_package(folder: Path) -> list[Finding]:
    """Everything wrong with a package; a folder of several bags is read bag by bag."""
    parts = sorted(path.parent for path in folder.glob("*/bagit.txt"))
    return [finding for part in parts or [folder] for finding in _part(part)]


def _part(folder: Path) -> Iterator[Finding]:
    yield from verify_bag(folder)
    for path in sorted((folder / "data" / "metadata").glob("records.*")):
        yield from faults_of(path)
