"""What is found of one file when it is read again (by `tasks.scans.fixity`, `tasks.sitting.recordings`)."""

from dataclasses import dataclass

SOURCE = "SHA-256 (FIPS 180-4) noted at intake"


@dataclass(frozen=True, slots=True)
class Verified:
    """One file: `state` is same, changed, moved (found elsewhere by its bytes), unreadable or gone."""

    path: str
    state: str
    found: str = ""
    scan: str = ""
