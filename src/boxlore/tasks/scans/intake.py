"""Intake: takes scans in, and ties each to an item with a permanent number, in a box and folder.

A scan is read, hashed and registered, and never written to. What its file already says is kept as a fact about the
scan, not as a statement about the picture. A file whose bytes are known already is not taken twice; so a run that is
interrupted and repeated ends in the same state as one that was not.
"""

import os
import shutil
from collections.abc import Iterable
from dataclasses import dataclass, field
from pathlib import Path

from boxlore.core.errors import BoxloreError, CouldNot
from boxlore.core.fields.letters import check_typed
from boxlore.core.fields.originals import KEPT_WORDS, Kept
from boxlore.core.fields.pictures import (
    EMBEDDED_WORDS,
    FILE_WORDS,
    LINK_WORDS,
    SHOWS_WORDS,
    Embedded,
    FileFacts,
    Link,
    Shows,
)
from boxlore.core.fields.points import Area
from boxlore.core.records.containers import number_text
from boxlore.core.records.item_record import AS_SCANNED
from boxlore.core.statements import KEEPER, Kind, Said, Source, Subject
from boxlore.disk.fixity import sha256_of
from boxlore.disk.pictures import read_header
from boxlore.disk.writing import CHUNK, could_not, replacing
from boxlore.formats import carrier
from boxlore.tasks.collection.opening import Act, Collection
from boxlore.tasks.collection.progress import QUIET, Progress
from boxlore.tasks.scans.files import in_utf_8, readable
from boxlore.tasks.scans.pairing import Planned, ScanSide
from boxlore.tasks.telling.statements import Teller, Telling

BATCH = 50
"""So many items are one act, and safe on the disk before the next ones are read."""


@dataclass(frozen=True, slots=True)
class IntakeResult:
    """One planned item after intake, with its number. `state` is taken, known (all its bytes were here) or refused;
    `why` says why, for the last two."""

    key: str
    state: str
    number: str = ""
    why: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class IntakeOptions:
    """Options for one intake: copy the scans into `scans/`, or register them where they are; box, folder, how the items
    were found, and their kind. What an item's own plan says goes before `box`, `folder` and `found_in`."""

    copy: bool = False
    box: str = ""
    folder: str = ""
    found_in: str = ""
    kind: str = ""


@dataclass(slots=True)
class _IntakeRun:
    """What one intake remembers from item to item. `count` is that of the next number.

    `containers`: path of labels -> container id. `filled`: container id -> the last position used. `items`: the key in
    the plan -> the item made for it.
    """

    collection: Collection
    options: IntakeOptions
    teller: Teller
    act: Act
    count: int
    containers: dict[tuple[str, ...], str] = field(default_factory=dict)
    filled: dict[str, int] = field(default_factory=dict)
    scans: dict[str, str] = field(default_factory=dict)
    """SHA-256 -> scan id, of the scans that this run has taken."""
    items: dict[str, Subject] = field(default_factory=dict)


def take_in(
    collection: Collection, plan: Iterable[Planned], options: IntakeOptions, progress: Progress = QUIET
) -> list[IntakeResult]:
    """Carry out a plan, in batches of one act each. Items that cannot be taken are refused, and the others taken."""
    planned = list(plan)
    collection.back_up_before("taking scans in")
    progress.begin("Taking in", len(planned))
    settings = collection.settings
    count = collection.store.next_number_count(settings.prefix, settings.series)
    run = _IntakeRun(collection, options, Teller(collection), collection.act("intake"), count)
    run.containers = _containers(collection)
    results: list[IntakeResult] = []
    for number, item in enumerate(planned, 1):
        if progress.stopped():
            break
        try:
            results.append(_take(run, item))
        except BoxloreError as error:
            results.append(IntakeResult(readable(item.key), "refused", why=readable(str(error))))
        except OSError as error:  # a file that is taken away, or closed to us, just now
            path = item.sides[0].path if item.sides else Path(item.key)
            results.append(IntakeResult(readable(item.key), "refused", why=readable(str(could_not(error, path)))))
        progress.step()
        if number % BATCH == 0:
            run.act.done()
            run.act = collection.act("intake")
    _link(run, planned)
    run.act.done()
    return results


def _containers(collection: Collection) -> dict[tuple[str, ...], str]:
    """Path of labels, such as ("box 1", "folder 2") -> container id."""
    return {tuple(f"{kind} {label}" for kind, label in path): ident for ident, path in collection.store.containers()}


def _take(run: _IntakeRun, planned: Planned) -> IntakeResult:
    """Take one item in, unless its pictures are here already. Raises BoxloreError if a file cannot be taken."""
    store = run.collection.store
    _check_words(run.options, planned)
    if not run.options.copy:
        for side in planned.sides:
            _refuse_unwritable_name(side.path, run.collection.folder)
    digests = [(side, sha256_of(side.path)) for side in planned.sides]
    known_ids = [store.scan_by_sha256(digest) or run.scans.get(digest, "") for _, digest in digests]
    if known_ids and all(known_ids) and not any(side.area for side, _ in digests):
        return IntakeResult(readable(planned.key), "known", why="these very pictures are here already")
    if known_ids and all(known_ids) and (number := store.shown_on(known_ids[0], planned.sides[0].area)):
        return IntakeResult(readable(planned.key), "known", number, "this part of the picture is here already")
    item = run.act.new(Kind.ITEM)
    number = number_text(run.collection.settings.prefix, run.collection.settings.series, run.count)
    shown = [
        _scan(run, side, digest, known_id, number) for (side, digest), known_id in zip(digests, known_ids, strict=True)
    ]
    run.count += 1
    run.items[planned.key] = item
    run.act.state(item, "number", number)
    run.act.state(item, "kind", run.options.kind or planned.kind)
    _keep(run, item, planned)
    for side, scan in zip(planned.sides, shown, strict=True):
        shows = Shows(item.id, side.side, Area(*side.area) if side.area else None)
        run.act.state(Subject(Kind.SCAN, scan), "shows", SHOWS_WORDS.write(shows))
    for name, words in planned.fields.items():
        if name == "size":
            run.act.state(item, name, words)
        else:
            source = Source(Said.INSCRIPTION, "verso") if name == "inscription" else KEEPER
            run.teller.add(run.act, item, name, words, Telling(source=source))
    return IntakeResult(readable(planned.key), "taken", number)


def _check_words(options: IntakeOptions, planned: Planned) -> None:
    """Raises WrongUse for words of the plan or the options that nobody can have meant, before anything is stated."""
    words = (planned.found_in, planned.box, planned.folder, planned.kind, options.found_in, options.box, options.folder)
    for written in (*words, options.kind, *planned.fields.values()):
        if written:
            check_typed(written)


def _scan(run: _IntakeRun, side: ScanSide, digest: str, known_id: str, number: str) -> str:
    """The scan's id: `known_id` if its bytes are known, else a new scan, registered with what its file says."""
    if known_id:
        return known_id
    facts = read_header(side.path)
    path = _bring_in(run, side, digest, number) if run.options.copy else side.path
    scan = run.act.new(Kind.SCAN)
    file = FileFacts(
        path=_relative(path, run.collection.folder),
        sha256=digest,
        bytes=side.path.stat().st_size,
        width=facts.width,
        height=facts.height,
        ppi=facts.ppi,
        media_type=facts.media_type,
    )
    if side.role != AS_SCANNED:
        run.act.state(scan, "role", side.role)
    run.act.state(scan, "file", FILE_WORDS.write(file))
    if embedded := embedded_in(side.path):
        run.act.state(scan, "embedded", embedded, source=Source(Said.FILE))
    run.scans[digest] = scan.id
    return scan.id


def _relative(path: Path, folder: Path) -> str:
    try:
        return Path(os.path.relpath(path.resolve(), folder.resolve())).as_posix()
    except ValueError:  # another drive on Windows has no relative path
        return path.resolve().as_posix()


def _refuse_unwritable_name(path: Path, folder: Path) -> None:
    """Raises CouldNot for a path that is not UTF-8, as on an old disk: no statement could keep it."""
    if not in_utf_8(_relative(path, folder)):
        raise CouldNot(
            f"The name of {readable(path)} is not written in UTF-8, so that the collection cannot keep it.",
            "Rename it, or take it in with --copy, which gives the scan a name by its number.",
        )


def _bring_in(run: _IntakeRun, side: ScanSide, digest: str, number: str) -> Path:
    """Copy a scan into `scans/`, named by number, side and role, and compare the copy's SHA-256. Raises CouldNot."""
    letter = "f" if side.side == "recto" else "b"
    role = "" if side.role == AS_SCANNED else f"_{side.role}"
    target = run.collection.folder / "scans" / f"{number}_{letter}{role}{_suffix(side.path)}"
    if target.exists():
        if sha256_of(target) == digest:
            return target
        raise CouldNot(f"{target.name} is there already with other content.", "Move it out of scans/ and go on.")
    with open(side.path, "rb") as source, replacing(target) as out:
        shutil.copyfileobj(source, out, CHUNK)
    if sha256_of(target) != digest:
        raise CouldNot(f"The copy of {side.path.name} differs from it.", "The disk may be failing; check it.")
    return target


def _suffix(path: Path) -> str:
    """The suffix for the copy of a scan: its own, or none where that is not UTF-8."""
    suffix = path.suffix.lower()
    return suffix if in_utf_8(suffix) else ""


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
"""What is read out of a file: our name for it, its XMP properties, its IIM dataset, its Exif name."""


def embedded_in(path: Path) -> str:
    """What a file already says, as lines `name: words` by the names of _TOLD_IN_FILES; '' if it says nothing.

    These are facts about the scan: a rule may make a question of one, but none is a statement about the picture.
    """
    try:
        with open(path, "rb") as file:
            metadata = carrier.read(file)
    except BoxloreError as fault:
        return EMBEDDED_WORDS.write(Embedded((("unreadable", str(fault)),)))
    lines: list[tuple[str, str]] = []
    for name, properties, dataset, exif in _TOLD_IN_FILES:
        texts = [metadata.xmp.get(name, "") for name in properties] + ["; ".join(metadata.iim.get(dataset, ()))]
        texts.append(metadata.exif.get(exif, ""))
        words = next((" ".join(text.split()) for text in texts if text.strip()), "")
        lines += [(name, words)] if words else []
    lines += [("problem", problem) for problem in metadata.problems]
    return EMBEDDED_WORDS.write(Embedded(tuple(lines)))


def _keep(run: _IntakeRun, item: Subject, planned: Planned) -> None:
    """Note how the item was found, and at which position of which container it is kept now."""
    if found_in := planned.found_in or run.options.found_in:
        run.act.state(item, "found_in", found_in)
    steps = [("box", planned.box or run.options.box), ("folder", planned.folder or run.options.folder)]
    inner = _container(run, tuple((kind, label) for kind, label in steps if label))
    if inner:
        last = run.filled.get(inner)
        if last is None:
            last = run.collection.store.last_position(inner)
        position = planned.position or last + 1
        run.filled[inner] = max(last, position)
        run.act.state(item, "kept", KEPT_WORDS.write(Kept(inner, position)))


def _container(run: _IntakeRun, path: tuple[tuple[str, str], ...]) -> str:
    """The id of the container at this path of (kind, label), outermost first; new ones are made. '' for no path."""
    key = tuple(f"{kind} {label}" for kind, label in path)
    if not path or key in run.containers:
        return run.containers.get(key, "")
    outer = _container(run, path[:-1])
    container = run.act.new(Kind.CONTAINER)
    run.act.state(container, "kind", path[-1][0])
    run.act.state(container, "label", path[-1][1])
    if outer:
        run.act.state(container, "inside", outer)
    run.containers[key] = container.id
    return container.id


def _link(run: _IntakeRun, planned: Iterable[Planned]) -> None:
    """Relate the items of the plan that are linked to each other, where both were taken."""
    for item in planned:
        for kind, key in item.links:
            if item.key in run.items and key in run.items:
                relation = run.act.new(Kind.RELATION)
                link = Link(run.items[item.key].id, run.items[key].id, kind)
                run.act.state(relation, "link", LINK_WORDS.write(link))
