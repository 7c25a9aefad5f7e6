"""Verify: what is found of one file, and the fixity of packages (that of the scans is in `tasks.fixity`)."""

from dataclasses import dataclass
from pathlib import Path

from boxlore.core.findings import Finding
from boxlore.exports.bag import verify_bag

SOURCE = "SHA-256 (FIPS 180-4) noted at intake"


@dataclass(frozen=True, slots=True)
class Verified:
    """One file: `state` is same, changed, moved (found elsewhere by its bytes), unreadable or gone."""

    path: str
    state: str
    found: str = ""
    scan: str = ""


def verify_package(folder: Path) -> list[Finding]:
    """Every file of a package against its manifests; a folder of several bags is read bag by bag."""
    parts = sorted(path.parent for path in folder.glob("*/bagit.txt"))
    return [finding for part in parts or [folder] for finding in verify_bag(part)]
