"""The state of one file that was read again; used by `tasks.scans.fixity` and `tasks.sitting.recordings`."""

from dataclasses import dataclass

SOURCE = "SHA-256 (FIPS 180-4) noted at intake"


@dataclass(frozen=True, slots=True)
class Verified:
    """One file that was read again. `path` is where it is noted, `scan` the scan's id ('' for other files).

    `state` is same, changed, moved (the same bytes are at `found`), unreadable or gone.
    """

    path: str
    state: str
    found: str = ""
    scan: str = ""
