"""Fixity of the scans: reading all of them again, by a schedule, and finding those that are not as they were.

What always holds: no scan is ever written to. One that changed, moved or is gone is looked for by its bytes; only the
note of where it is may be changed, and only when asked. A run that was stopped goes on where it stopped.

Scans are compared by the SHA-256 (FIPS 180-4) noted at intake. Once a year: common practice, from memory.
"""

import json
import time
from collections import defaultdict
from collections.abc import Iterable, Iterator, Mapping, Sequence
from contextlib import suppress
from dataclasses import dataclass, field, replace
from datetime import date, timedelta
from pathlib import Path

from boxlore.core.errors import CouldNot
from boxlore.core.fields.fixity import FIXITY_WORDS, FixityRun, WrongFile
from boxlore.core.fields.pictures import FILE_WORDS, FileFacts
from boxlore.core.findings import Finding, Severity, make_finding, several
from boxlore.core.statements import Kind, Subject
from boxlore.disk.digests import sha256_of
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.progress import QUIET, Progress
from boxlore.tasks.scans.file_state import SOURCE, Verified

PRACTICE = "fixity at capture, on copying and yearly: common practice, from memory"

META = "fixity_run"
SAVE_EVERY = 2.0
"""Seconds between two notes of how far a run is; after a crash so much reading is done again at most."""
LISTED = 1000
"""How many of the files that are wrong are named in the log."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Last:
    """The last run that came to its end: its day, how many scans it read, how many were wrong."""

    on: date
    read: int
    wrong: int


@dataclass(slots=True)
class _FixityRun:
    """How far a run is; kept in the database while it is stopped. `after` is the id of the last scan that it read."""

    begun: str
    after: str = ""
    read: int = 0
    bytes: int = 0
    wrong: list[dict[str, str]] = field(default_factory=list)


def last_run(collection: Collection) -> Last | None:
    """The last run over all scans; None if there was none since intake."""
    statements = collection.store.statements(Subject(Kind.COLLECTION, collection.id))
    noted = [FIXITY_WORDS.read(statement.words) for statement, _ in statements if statement.field == "fixity"]
    runs = [run for run in noted if isinstance(run, FixityRun)]
    if not runs:
        return None
    newest = max(runs, key=lambda run: run.ended)
    return Last(on=newest.day, read=newest.read, wrong=newest.wrong_count)


def due_on(collection: Collection) -> date | None:
    """The day on which the scans are due to be read again; None if they never were."""
    last = last_run(collection)
    return last.on + timedelta(days=collection.settings.fixity_days) if last else None


def schedule_findings(collection: Collection) -> list[Finding]:
    """Findings if the scans were never read again, or not within the schedule, or if some were wrong the last time."""
    count = collection.store.count("scan")
    if not count:
        return []
    last, due = last_run(collection), due_on(collection)
    schedule = f"every {collection.settings.fixity_days} days: fixity_days in boxlore.toml"
    if last is None or due is None:
        one = "scan has not been read again since it was taken in"
        more = "scans have not been read again since they were taken in"
        message = f"{several(count, one, more)}. Run boxlore verify."
        return [make_finding("fixity.never", Severity.NOTE, message, PRACTICE, schedule)]
    findings: list[Finding] = []
    if due <= collection.clock.today():
        message = f"The scans were last read on {last.on}. Run boxlore verify."
        findings.append(make_finding("fixity.due", Severity.NOTE, message, PRACTICE, schedule))
    if last.wrong:
        message = (
            f"When they were last read, on {last.on}, "
            f"{several(last.wrong, 'scan was not as it was', 'scans were not as they were')}."
        )
        findings.append(make_finding("fixity.wrong", Severity.NOTE, message, PRACTICE, "boxlore verify lists them"))
    return findings


def unfinished(collection: Collection) -> int:
    """How many scans a stopped run has read already; 0 if no run was stopped."""
    words = collection.store.meta(META)
    return int(json.loads(words)["read"]) if words else 0


def verify_scans(
    collection: Collection, progress: Progress = QUIET, *, look_in: Sequence[Path] = (), anew: bool = False
) -> Iterator[Verified]:
    """Read every scan again and compare it with its SHA-256 from intake; those that are wrong come last.

    A stopped run goes on where it stopped, unless `anew`. A scan that changed or is gone is looked for by its bytes in
    `scans/` and in the folders of `look_in`. The result is noted in the log if the collection is open for writing.
    """
    scans = list(collection.store.scans())
    registered: defaultdict[str, set[str]] = defaultdict(set)  # a whole file may have come to where a damaged one lay
    for _, facts in scans:
        registered[facts.path].add(facts.sha256)
    run = _begin(collection, scans, anew=anew)
    progress.begin("Reading scans", len(scans))
    progress.step(run.read)
    saved = time.monotonic()
    for ident, facts in scans[run.read :]:
        if progress.stopped():
            _save(collection, run)
            return
        state = _state(collection.folder / facts.path, registered[facts.path])
        run.after, run.read, run.bytes = ident, run.read + 1, run.bytes + facts.bytes
        if state == "same":
            yield Verified(facts.path, state)
        else:
            run.wrong.append({"scan": ident, "path": facts.path, "state": state})
        progress.step()
        if time.monotonic() - saved > SAVE_EVERY:
            _save(collection, run)
            saved = time.monotonic()
    wrong_files = list(_looked_for(collection, run.wrong, dict(scans), look_in))
    yield from wrong_files
    _end(collection, run, wrong_files)


def _state(path: Path, digests: set[str]) -> str:
    """What the file at a path is to the digests of the scans that are registered there."""
    try:
        return "same" if sha256_of(path) in digests else "changed"
    except CouldNot:
        return "unreadable" if path.is_file() else "gone"


def _begin(collection: Collection, scans: Sequence[tuple[str, object]], *, anew: bool) -> _FixityRun:
    """The stopped run, if the scans that it has read are still the first ones; else a new run."""
    words = collection.store.meta(META)
    if words and not anew:
        run = _FixityRun(**json.loads(words))
        if 0 < run.read <= len(scans) and scans[run.read - 1][0] == run.after:
            return run
    return _FixityRun(begun=collection.clock.now())


def _save(collection: Collection, run: _FixityRun) -> None:
    if collection.store.writable:
        words = {name: getattr(run, name) for name in _FixityRun.__slots__}
        collection.store.set_meta(META, json.dumps(words, ensure_ascii=False))


def _end(collection: Collection, run: _FixityRun, wrong_files: Sequence[Verified]) -> None:
    if not collection.store.writable:
        return
    words = FIXITY_WORDS.write(
        FixityRun(
            begun=run.begun,
            ended=f"{collection.clock.today().isoformat()}T{collection.clock.now()[11:]}",
            read=run.read,
            bytes=run.bytes,
            wrong_count=len(wrong_files),
            wrong=tuple(WrongFile(file.path, file.state, file.found) for file in wrong_files[:LISTED]),
        )
    )
    act = collection.act(f"fixity: {several(run.read, 'scan')} read, {len(wrong_files)} not as they were")
    act.state(Subject(Kind.COLLECTION, collection.id), "fixity", words)
    act.done()
    collection.store.set_meta(META, "")


def _looked_for(
    collection: Collection,
    wrong: Sequence[dict[str, str]],
    facts: Mapping[str, FileFacts],
    look_in: Sequence[Path],
) -> Iterator[Verified]:
    """Look for the files that are wrong by their bytes. Only files whose length is looked for are read."""
    lost = [facts[fault["scan"]] for fault in wrong if fault["scan"] in facts]
    missing = {file.sha256: file.bytes for file in lost}
    paths = _by_bytes(collection, missing, [collection.folder / "scans", *look_in]) if missing else {}
    for fault in wrong:
        if fault["scan"] not in facts:
            continue
        at = paths.get(facts[fault["scan"]].sha256, "")
        state = "moved" if fault["state"] == "gone" and at else fault["state"]
        yield Verified(fault["path"], state, at, fault["scan"])


def _by_bytes(collection: Collection, missing: dict[str, int], folders: Iterable[Path]) -> dict[str, str]:
    lengths = set(missing.values())
    paths: dict[str, str] = {}
    for folder in folders:
        for path in sorted(folder.rglob("*")):
            with suppress(CouldNot, OSError):  # a file that cannot be read is not the one looked for
                if path.is_file() and path.stat().st_size in lengths and (digest := sha256_of(path)) in missing:
                    paths.setdefault(digest, _relative(path, collection.folder))
    return paths


def _relative(path: Path, folder: Path) -> str:
    try:
        return path.resolve().relative_to(folder.resolve()).as_posix()
    except ValueError:
        return path.resolve().as_posix()


def register_again(collection: Collection, wrong_files: Iterable[Verified]) -> int:
    """Note the new path of each scan that was found elsewhere. No file is touched. Returns how many were noted."""
    collection.back_up_before("registering scans again")
    act = collection.act("scans found again by their bytes")
    count = 0
    for verified in wrong_files:
        if not (verified.found and verified.scan):
            continue
        subject = Subject(Kind.SCAN, verified.scan)
        stood = [statement for statement, _ in collection.store.statements(subject) if statement.field == "file"]
        moved = replace(FILE_WORDS.read(stood[-1].words), path=verified.found)
        act.state(subject, "file", FILE_WORDS.write(moved), replaces=stood[-1].id)
        count += 1
    act.done()
    return count


def finding_of(verified: Verified) -> Finding | None:
    """The finding about a file that is not as it was; None for one that is."""
    if verified.state == "same":
        return None
    again = "its new place is noted by boxlore verify --mend; no file is touched."
    words = {
        "changed": f"{verified.path} has changed since its intake; it was not touched by Boxlore. "
        + (
            f"The bytes of its intake are at {verified.found}: {again}"
            if verified.found
            else "Bring the file back from a backup."
        ),
        "unreadable": f"{verified.path} is there and cannot be read. The disk may be failing, or it is another user's.",
        "moved": f"{verified.path} is not there; the same bytes are at {verified.found}: {again}",
        "gone": f"{verified.path} is not there, and no file looked at has its bytes. "
        "Name further folders with --look-in.",
    }
    return make_finding(f"scan.{verified.state}", Severity.ERROR, words[verified.state], SOURCE)
