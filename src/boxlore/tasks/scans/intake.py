"""Intake: scans come in, each tied to an item with a permanent number, in a known box and folder.

A scan is read, hashed and registered, never written to. What its file already carries is a fact about
the scan, never a statement about the picture. A file whose bytes are known already is not taken twice,
so a run that was interrupted, or is repeated, ends in the same state.
"""

import json
import os
import shutil
from collections.abc import Iterable
from dataclasses import dataclass, field
from pathlib import Path

from boxlore.core.errors import BoxloreError, CouldNot, WrongUse
from boxlore.core.records.containers import number_text
from boxlore.core.records.in_force import AS_SCANNED
from boxlore.core.statements import KEEPER, Kind, Said, Source, Subject
from boxlore.disk.fixity import sha256_of
from boxlore.disk.pictures import read_header
from boxlore.disk.writing import CHUNK, replacing
from boxlore.formats import carrier
from boxlore.tasks.collection.opening import Act, Collection
from boxlore.tasks.collection.progress import QUIET, Progress
from boxlore.tasks.scans.pairing import Planned, ScanSide
from boxlore.tasks.telling.statements import Teller, Telling

SUFFIXES = frozenset(".jpg .jpeg .tif .tiff .png .webp .heic .heif .jp2 .gif .bmp".split())
BATCH = 50


@dataclass(frozen=True, slots=True)
class IntakeResult:
    """One planned item after intake: its number, and state taken, known (all bytes were here) or refused."""

    key: str
    state: str
    number: str = ""
    why: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class IntakeOptions:
    """How scans come in: copied into `scans/` or registered where they are; where the items are kept."""

    copy: bool = False
    box: str = ""
    folder: str = ""
    found_in: str = ""
    kind: str = ""


def picture_files(paths: Iterable[Path]) -> list[Path]:
    """The picture files named, and those below the folders named, hidden ones left out."""
    found: list[Path] = []
    for path in paths:
        if path.is_dir():
            found += [
                one
                for one in sorted(path.rglob("*"))
                if one.suffix.lower() in SUFFIXES and one.is_file() and not one.name.startswith(".")
            ]
        elif path.is_file():
            found.append(path)
        else:
            raise WrongUse(f"There is no file or folder {path}.")
    return list(dict.fromkeys(found))


@dataclass(slots=True)
class _IntakeRun:
    """What one intake remembers between items."""

    collection: Collection
    wanted: IntakeOptions
    teller: Teller
    act: Act
    count: int
    containers: dict[tuple[str, ...], str] = field(default_factory=dict)
    filled: dict[str, int] = field(default_factory=dict)
    scans: dict[str, str] = field(default_factory=dict)
    """SHA-256 → scan id, of the scans this run has taken."""
    items: dict[str, Subject] = field(default_factory=dict)


def take_in(
    collection: Collection, plan: Iterable[Planned], wanted: IntakeOptions, progress: Progress = QUIET
) -> list[IntakeResult]:
    """Carry out a plan. Each batch of items is one act, safe on the disk before the next begins."""
    planned = list(plan)
    progress.begin("Taking in", len(planned))
    settings = collection.settings
    count = collection.store.next_number_count(settings.prefix, settings.series)
    run = _IntakeRun(collection, wanted, Teller(collection), collection.act("intake"), count)
    run.containers = _containers(collection)
    taken: list[IntakeResult] = []
    for number, one in enumerate(planned, 1):
        if progress.stopped():
            break
        try:
            taken.append(_take(run, one))
        except BoxloreError as error:
            taken.append(IntakeResult(one.key, "refused", why=str(error)))
        progress.step()
        if number % BATCH == 0:
            run.act.done()
            run.act = collection.act("intake")
    _link(run, planned)
    run.act.done()
    return taken


def _containers(collection: Collection) -> dict[tuple[str, ...], str]:
    """Container ids by their path of labels, such as ("box 1", "folder 2")."""
    return {tuple(f"{kind} {label}" for kind, label in path): ident for ident, path in collection.store.containers()}


def _take(run: _IntakeRun, planned: Planned) -> IntakeResult:
    store = run.collection.store
    digests = [(side, sha256_of(side.path)) for side in planned.sides]
    known = [store.scan_by_sha256(digest) or run.scans.get(digest, "") for _, digest in digests]
    if known and all(known) and not any(side.area for side, _ in digests):
        return IntakeResult(planned.key, "known", why="these very pictures are here already")
    if known and all(known) and (number := store.shown_on(known[0], planned.sides[0].area)):
        return IntakeResult(planned.key, "known", number, "this part of the picture is here already")
    item = run.act.new(Kind.ITEM)
    number = number_text(run.collection.settings.prefix, run.collection.settings.series, run.count)
    shown = [
        _scan(run, side, digest, known_id, number) for (side, digest), known_id in zip(digests, known, strict=True)
    ]
    run.count += 1
    run.items[planned.key] = item
    run.act.state(item, "number", number)
    run.act.state(item, "kind", run.wanted.kind or planned.kind)
    _keep(run, item, planned)
    for side, scan in zip(planned.sides, shown, strict=True):
        shows = {"item": item.id, "side": side.side, "area": list(side.area) or None}
        run.act.state(Subject(Kind.SCAN, scan), "shows", json.dumps(shows))
    for name, words in planned.told.items():
        if name == "size":
            run.act.state(item, name, words)
        else:
            source = Source(Said.INSCRIPTION, "verso") if name == "inscription" else KEEPER
            run.teller.add(run.act, item, name, words, Telling(source=source))
    return IntakeResult(planned.key, "taken", number)


def _scan(run: _IntakeRun, side: ScanSide, digest: str, known: str, number: str) -> str:
    """The scan's id: the one known by its bytes, or a new one registered with what its file says."""
    if known:
        return known
    facts = read_header(side.path)
    path = _bring_in(run, side, digest, number) if run.wanted.copy else side.path
    scan = run.act.new(Kind.SCAN)
    words = {
        "path": _relative(path, run.collection.folder),
        "sha256": digest,
        "bytes": side.path.stat().st_size,
        "width": facts.width,
        "height": facts.height,
        "ppi": facts.ppi,
        "media_type": facts.media_type,
    }
    if side.role != AS_SCANNED:
        run.act.state(scan, "role", side.role)
    run.act.state(scan, "file", json.dumps(words, ensure_ascii=False))
    if embedded := embedded_in(side.path):
        run.act.state(scan, "embedded", embedded, source=Source(Said.FILE))
    run.scans[digest] = scan.id
    return scan.id


def _relative(path: Path, folder: Path) -> str:
    try:
        return Path(os.path.relpath(path.resolve(), folder.resolve())).as_posix()
    except ValueError:  # another drive on Windows has no relative path
        return path.resolve().as_posix()


def _bring_in(run: _IntakeRun, side: ScanSide, digest: str, number: str) -> Path:
    """Copy a scan to `scans/`, named by number, side and role, and prove the copy by its hash."""
    letter = "f" if side.side == "recto" else "b"
    role = "" if side.role == AS_SCANNED else f"_{side.role}"
    target = run.collection.folder / "scans" / f"{number}_{letter}{role}{side.path.suffix.lower()}"
    if target.exists():
        if sha256_of(target) == digest:
            return target
        raise CouldNot(f"{target.name} is there already with other content.", "Move it out of scans/ and go on.")
    with open(side.path, "rb") as source, replacing(target) as out:
        shutil.copyfileobj(source, out, CHUNK)
    if sha256_of(target) != digest:
        raise CouldNot(f"The copy of {side.path.name} differs from it.", "The disk may be failing; check it.")
    return target


_TOLD_IN_FILES = (
    ("title", ("dc:title",), (2, 5), ""),
    ("caption", ("dc:description",), (2, 120), "ImageDescription"),
    ("date", ("photoshop:DateCreated", "dcterms:created"), (2, 55), ""),
    ("people", ("Iptc4xmpExt:PersonInImage",), (0, 0), ""),
    ("keywords", ("dc:subject",), (2, 25), ""),
    ("by", ("dc:creator",), (2, 80), "Artist"),
    ("rights", ("dc:rights",), (2, 116), "Copyright"),
    ("scanned", (), (0, 0), "DateTimeOriginal"),
)
"""What is read out of a file: our name for it, XMP properties, IIM dataset, Exif name."""


def embedded_in(path: Path) -> str:
    """What the file carries already, as lines `name: words`: facts about the scan, each raising a question only."""
    try:
        with open(path, "rb") as file:
            found = carrier.read(file)
    except BoxloreError as fault:
        return f"unreadable: {fault}"
    lines: list[str] = []
    for name, properties, dataset, exif in _TOLD_IN_FILES:
        texts = [found.xmp.get(one, "") for one in properties] + ["; ".join(found.iim.get(dataset, ()))]
        texts.append(found.exif.get(exif, ""))
        words = next((" ".join(one.split()) for one in texts if one.strip()), "")
        lines += [f"{name}: {words}"] if words else []
    lines += [f"problem: {one}" for one in found.problems]
    return "\n".join(lines)


def _keep(run: _IntakeRun, item: Subject, planned: Planned) -> None:
    """Note where the item was found, then where it is kept now."""
    if found_in := planned.found_in or run.wanted.found_in:
        run.act.state(item, "found_in", found_in)
    steps = [("box", planned.box or run.wanted.box), ("folder", planned.folder or run.wanted.folder)]
    inner = _container(run, tuple((kind, label) for kind, label in steps if label))
    if inner:
        last = run.filled.get(inner)
        if last is None:
            last = run.collection.store.last_position(inner)
        position = planned.position or last + 1
        run.filled[inner] = max(last, position)
        run.act.state(item, "kept", f"{inner} {position}")


def _container(run: _IntakeRun, path: tuple[tuple[str, str], ...]) -> str:
    """The id of the container at that path, made with its outer ones where it is new."""
    key = tuple(f"{kind} {label}" for kind, label in path)
    if not path or key in run.containers:
        return run.containers.get(key, "")
    outer = _container(run, path[:-1])
    made = run.act.new(Kind.CONTAINER)
    run.act.state(made, "kind", path[-1][0])
    run.act.state(made, "label", path[-1][1])
    if outer:
        run.act.state(made, "inside", outer)
    run.containers[key] = made.id
    return made.id


def _link(run: _IntakeRun, planned: Iterable[Planned]) -> None:
    for one in planned:
        for kind, key in one.links:
            if one.key in run.items and key in run.items:
                relation = run.act.new(Kind.RELATION)
                run.act.state(relation, "link", f"{run.items[one.key].id} {run.items[key].id} {kind}")
