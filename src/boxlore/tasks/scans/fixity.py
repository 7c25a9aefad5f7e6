"""Fixity of the scans: every one read again by a schedule, a stopped run gone on with, what is wrong listed clearly.

Rule kept: a scan is never written to and never overwritten. One that changed, moved or vanished is looked for by its
bytes; only the register of where it lies is changed, and only when asked. SHA-256 (FIPS 180-4) noted at intake; once a
year: common practice, from memory.
"""

import json
import time
from collections.abc import Iterable, Iterator, Sequence
from contextlib import suppress
from dataclasses import dataclass, field
from datetime import date, timedelta
from pathlib import Path

from boxlore.core.errors import CouldNot
from boxlore.core.findings import Finding, Severity
from boxlore.core.statements import Kind, Subject
from boxlore.disk.fixity import sha256_of
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.progress import QUIET, Progress
from boxlore.tasks.scans.file_state import SOURCE, Verified

META = "fixity_run"
SAVE_EVERY = 2.0
"""Seconds between two notes of how far a run is: that much reading is done again at most."""
LISTED = 1000


@dataclass(frozen=True, slots=True, kw_only=True)
class Last:
    """The last run that came to its end."""

    on: date
    read: int
    wrong: int


@dataclass(slots=True)
class _FixityRun:
    """How far a run is. `after` is the last scan read; it is kept in the database between two runs."""

    begun: str
    after: str = ""
    read: int = 0
    bytes: int = 0
    wrong: list[dict[str, str]] = field(default_factory=list)


def last_run(collection: Collection) -> Last | None:
    """When the scans were last read, all of them, and how that went."""
    told = collection.store.statements(Subject(Kind.COLLECTION, collection.id))
    noted = [json.loads(one.words) for one, _ in told if one.field == "fixity"]
    runs = [run for run in noted if "ended" in run]
    if not runs:
        return None
    newest = max(runs, key=lambda run: str(run["ended"]))
    return Last(on=date.fromisoformat(newest["ended"][:10]), read=newest["read"], wrong=newest["wrong_count"])


def due_on(collection: Collection) -> date | None:
    """The day on which the scans are due to be read again; None if they never were."""
    last = last_run(collection)
    return last.on + timedelta(days=collection.settings.fixity_days) if last else None


def schedule_findings(collection: Collection) -> list[Finding]:
    """Says when the scans were never read again, or not for longer than the schedule; and what was wrong then."""
    count = collection.store.count("scan")
    if not count:
        return []
    last, due = last_run(collection), due_on(collection)
    every = f"every {collection.settings.fixity_days} days: fixity_days in boxlore.toml"
    if last is None or due is None:
        message = f"The {count} scans were never read again since their intake. Run boxlore verify."
        return [_finding("fixity.never", message, every)]
    found: list[Finding] = []
    if due <= collection.clock.today():
        found.append(_finding("fixity.due", f"The scans were last read on {last.on}. Run boxlore verify.", every))
    if last.wrong:
        message = f"When they were last read, on {last.on}, {last.wrong} scans were not as they were."
        found.append(_finding("fixity.wrong", message, "boxlore verify lists them"))
    return found


def _finding(rule: str, message: str, because: str) -> Finding:
    source = "fixity at capture, on copying and yearly: common practice, from memory"
    return Finding(rule=rule, severity=Severity.NOTE, message=message, because=(because,), source=source)


def unfinished(collection: Collection) -> int:
    """How many scans a run that was stopped has read already; 0 where none was stopped."""
    words = collection.store.meta(META)
    return int(json.loads(words)["read"]) if words else 0


def verify_scans(
    collection: Collection, progress: Progress = QUIET, *, look_in: Sequence[Path] = (), anew: bool = False
) -> Iterator[Verified]:
    """Read every scan again and hold it against the SHA-256 of its intake; those that are wrong come last.

    A run that was stopped goes on where it stopped, unless `anew`. The result is noted when the collection is open
    for writing. What changed or is gone is looked for by its bytes in `scans/` and in the folders of `look_in`.
    """
    scans = list(collection.store.scans())
    run = _begin(collection, scans, anew=anew)
    progress.begin("Reading scans", len(scans))
    progress.step(run.read)
    saved = time.monotonic()
    for ident, facts in scans[run.read :]:
        if progress.stopped():
            _save(collection, run)
            return
        path = str(facts["path"])
        state = _state(collection.folder / path, str(facts["sha256"]))
        run.after, run.read, run.bytes = ident, run.read + 1, run.bytes + _count(facts)
        if state == "same":
            yield Verified(path, state)
        else:
            run.wrong.append({"scan": ident, "path": path, "state": state})
        progress.step()
        if time.monotonic() - saved > SAVE_EVERY:
            _save(collection, run)
            saved = time.monotonic()
    found = list(_looked_for(collection, run.wrong, dict(scans), look_in))
    yield from found
    _end(collection, run, found)


def _count(facts: dict[str, object]) -> int:
    count = facts.get("bytes")
    return count if isinstance(count, int) else 0


def _state(path: Path, digest: str) -> str:
    try:
        return "same" if sha256_of(path) == digest else "changed"
    except CouldNot:
        return "unreadable" if path.is_file() else "gone"


def _begin(collection: Collection, scans: Sequence[tuple[str, object]], *, anew: bool) -> _FixityRun:
    """The run that was stopped, if the scans it had read are still the first ones; else a new one."""
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


def _end(collection: Collection, run: _FixityRun, found: Sequence[Verified]) -> None:
    if not collection.store.writable:
        return
    words = {
        "begun": run.begun,
        "ended": f"{collection.clock.today().isoformat()}T{collection.clock.now()[11:]}",
        "read": run.read,
        "bytes": run.bytes,
        "wrong_count": len(found),
        "wrong": [{"path": one.path, "state": one.state, "found": one.found} for one in found[:LISTED]],
    }
    act = collection.act(f"fixity: {run.read} scans read, {len(found)} not as they were")
    act.state(Subject(Kind.COLLECTION, collection.id), "fixity", json.dumps(words, ensure_ascii=False))
    act.done()
    collection.store.set_meta(META, "")


def _looked_for(
    collection: Collection,
    wrong: Sequence[dict[str, str]],
    facts: dict[str, dict[str, object]],
    look_in: Sequence[Path],
) -> Iterator[Verified]:
    """Look for what is wrong by its bytes. Only files of a length that is missing are read."""
    missing = {str(facts[one["scan"]]["sha256"]): _count(facts[one["scan"]]) for one in wrong if one["scan"] in facts}
    found = _by_bytes(collection, missing, [collection.folder / "scans", *look_in]) if missing else {}
    for one in wrong:
        if one["scan"] not in facts:
            continue
        at = found.get(str(facts[one["scan"]]["sha256"]), "")
        state = "moved" if one["state"] == "gone" and at else one["state"]
        yield Verified(one["path"], state, at, one["scan"])


def _by_bytes(collection: Collection, missing: dict[str, int], folders: Iterable[Path]) -> dict[str, str]:
    lengths = set(missing.values())
    found: dict[str, str] = {}
    for folder in folders:
        for path in sorted(folder.rglob("*")):
            with suppress(CouldNot, OSError):  # a file that cannot be read is not the one looked for
                if path.is_file() and path.stat().st_size in lengths and (digest := sha256_of(path)) in missing:
                    found.setdefault(digest, _relative(path, collection.folder))
    return found


def _relative(path: Path, folder: Path) -> str:
    try:
        return path.resolve().relative_to(folder.resolve()).as_posix()
    except ValueError:
        return path.resolve().as_posix()


def register_again(collection: Collection, found: Iterable[Verified]) -> int:
    """Note the new place of scans that were found elsewhere by their bytes. No file is touched. Returns how many."""
    act = collection.act("scans found again by their bytes")
    count = 0
    for one in found:
        if not (one.found and one.scan):
            continue
        subject = Subject(Kind.SCAN, one.scan)
        stood = [told for told, _ in collection.store.statements(subject) if told.field == "file"]
        facts = json.loads(stood[-1].words) | {"path": one.found}
        act.state(subject, "file", json.dumps(facts, ensure_ascii=False), replaces=stood[-1].id)
        count += 1
    act.done()
    return count


def finding_of(one: Verified) -> Finding | None:
    """The finding for a file that is not as it was."""
    if one.state == "same":
        return None
    again = "boxlore verify --mend notes its new place; no file is touched."
    words = {
        "changed": f"{one.path} has changed since its intake; it was not touched by Boxlore. "
        + (
            f"The bytes of its intake are at {one.found}: {again}"
            if one.found
            else "Bring the file back from a backup."
        ),
        "unreadable": f"{one.path} is there and cannot be read. The disk may be failing, or it is another user's.",
        "moved": f"{one.path} is not there; the same bytes are at {one.found}: {again}",
        "gone": f"{one.path} is not there, and no file looked at has its bytes. Name further folders with --look-in.",
    }
    return Finding(rule=f"scan.{one.state}", severity=Severity.ERROR, message=words[one.state], source=SOURCE)
