"""Verify: the fixity of every scan, of the copies beside it, and of packages."""

from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from boxlore.core.errors import CouldNot
from boxlore.core.findings import Finding, Severity
from boxlore.core.statements import Kind, Subject
from boxlore.disk.fixity import sha256_of
from boxlore.exports.bag import verify_bag
from boxlore.tasks import fixity
from boxlore.tasks.opening import Collection
from boxlore.tasks.progress import QUIET, Progress

SOURCE = "SHA-256 (FIPS 180-4) noted at intake"


@dataclass(frozen=True, slots=True)
class Verified:
    """One file: `state` is same, changed, moved (found elsewhere by its bytes) or gone."""

    path: str
    state: str
    found: str = ""


def verify_scans(collection: Collection, progress: Progress = QUIET) -> Iterator[Verified]:
    """Read every scan again and hold it against the SHA-256 of its intake."""
    scans = list(collection.store.scans())
    progress.begin("Reading scans", len(scans))
    missing: dict[str, str] = {}
    for _, facts in scans:
        if progress.stopped():
            return
        path = str(facts["path"])
        try:
            state = "same" if sha256_of(collection.folder / path) == facts["sha256"] else "changed"
        except CouldNot:
            missing[str(facts["sha256"])] = path
            state = ""
        if state:
            yield Verified(path, state)
        progress.step()
    yield from _moved(collection, missing)


def _moved(collection: Collection, missing: dict[str, str]) -> Iterator[Verified]:
    """Look for vanished scans by their bytes among the files of `scans/`."""
    found: dict[str, str] = {}
    if missing:
        for path in sorted((collection.folder / "scans").rglob("*")):
            if path.is_file():
                found.setdefault(sha256_of(path), path.relative_to(collection.folder).as_posix())
    for digest, lost in missing.items():
        yield Verified(lost, "moved" if digest in found else "gone", found.get(digest, ""))


def verify_package(folder: Path) -> list[Finding]:
    """Every file of a package against its manifests; a folder of several bags is read bag by bag."""
    parts = sorted(path.parent for path in folder.glob("*/bagit.txt"))
    return [finding for part in parts or [folder] for finding in verify_bag(part)]


def note_check(collection: Collection, found: list[Verified]) -> None:
    """Remember a check of the whole: one event for it, and one for each file that was not as it was."""
    if not collection.store.writable or not found:
        return
    act = collection.act("the fixity of the scans was checked")
    wrong = [one for one in found if one.state != "same"]
    outcome = "all as they were" if not wrong else f"{len(wrong)} not as they were"
    fixity.note(act, fixity.collection_of(collection), fixity.CHECKED, outcome, what=f"{len(found)} scans")
    by_path = {str(facts["path"]): ident for ident, facts in collection.store.scans()}
    for one in wrong:
        fixity.note(act, Subject(Kind.SCAN, by_path[one.path]), fixity.CHECKED, one.state, found=one.found)
    act.done()


def finding_of(one: Verified) -> Finding | None:
    """The finding for a file that is not as it was."""
    if one.state == "same":
        return None
    words = {
        "changed": f"{one.path} has changed since its intake; it was not touched by Boxlore.",
        "moved": f"{one.path} is not there; the same bytes are at {one.found}.",
        "gone": f"{one.path} is not there, and nothing in scans/ has its bytes.",
    }
    return Finding(
        rule=f"scan.{one.state}", severity=Severity.ERROR, message=words[one.state], because=(), source=SOURCE
    )
