"""Checks a package: every file against its manifests, and whether its linked data can be read."""

from collections.abc import Iterator
from pathlib import Path

from boxlore.core.findings import Finding
from boxlore.exports.bag import verify_bag
from boxlore.exports.linked_data_check import faults_of


def verify_package(folder: Path) -> list[Finding]:
    """Every finding about a package: a bag, or a folder of several bags."""
    parts = sorted(path.parent for path in folder.glob("*/bagit.txt"))
    return [finding for part in parts or [folder] for finding in _part(part)]


def _part(folder: Path) -> Iterator[Finding]:
    yield from verify_bag(folder)
    for path in sorted((folder / "data" / "metadata").glob("records.*")):
        yield from faults_of(path)
