"""The transfer: records and scans for an archive in two bags, an open part and a closed part.

The open part holds what anyone may see: the names of people taken as living are withheld, with the scans that
show or name them. The closed part adds them, with a closure date and a reason for each item. Everything is made and
checked before a bag is; before the open part takes its name it is searched for every form of every withheld name.
"""

import json
from collections.abc import Callable, Iterable, Iterator, Mapping
from contextlib import ExitStack
from dataclasses import dataclass, field, replace
from pathlib import Path

from boxlore.core.crosswalk.dublin_core import Handed
from boxlore.core.crosswalk.receiving_archive import NOT_SAID, Archive
from boxlore.core.errors import CouldNot, WrongUse
from boxlore.core.fields.fixity import FixityEvent
from boxlore.core.findings import Finding, Severity
from boxlore.core.records.audience import To
from boxlore.core.records.closing_dates import Closing, Closure
from boxlore.core.records.item_record import Record
from boxlore.disk.unfinished import is_free, unfinished_folder
from boxlore.disk.writing import flush_folder
from boxlore.exports.bag import Payload, Staged, write_bag
from boxlore.tasks.archive.archive_settings import archive_before, doubtful_codes
from boxlore.tasks.archive.further_formats import check_settings, make_further
from boxlore.tasks.archive.making import Making, scans_kept_back
from boxlore.tasks.archive.name_search import in_words, names_left
from boxlore.tasks.archive.originals_asked_back import asked_of_the_keeper
from boxlore.tasks.archive.originals_of_others import asked_of_originals
from boxlore.tasks.archive.scans_as_handed import HandedScans
from boxlore.tasks.archive.sound_handed import sound_going, sound_staying
from boxlore.tasks.archive.transfer_bags import (
    Packed,
    PlannedBag,
    described_bag,
    named_within,
    plan_bags,
    size_of,
)
from boxlore.tasks.archive.transfer_context import closing_of, facts_of, moves_of, order_of_containers
from boxlore.tasks.archive.transfer_files import make_files
from boxlore.tasks.archive.transfer_updates import Earlier, chosen_before, originals_before, read_earlier
from boxlore.tasks.archive.updated_since import packed_since
from boxlore.tasks.collection.gate import ask_of_settings
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.output_paths import check_place
from boxlore.tasks.collection.progress import QUIET, Progress, go_on
from boxlore.tasks.collection.records_for_outputs import (
    EVERYTHING,
    AudienceView,
    Selection,
    check_chosen,
    contradictions,
    seen_by,
    withheld_choice,
)
from boxlore.tasks.collection.unfinished import work_folder
from boxlore.tasks.outputs.copies import copies
from boxlore.tasks.scans import fixity_events

FAT32 = 4 * 1024**3 - 1
"""The largest file that a stick with FAT32 can hold, in bytes."""

__all__ = ["FAT32", "TransferOrder", "TransferPart", "Transferred", "facts_of", "in_words", "names_left", "transfer"]


@dataclass(frozen=True, slots=True, kw_only=True)
class TransferOrder:
    """What is asked of a transfer. `split` is the most payload bytes of one bag, 0 for no limit."""

    selection: Selection = EVERYTHING
    archive: Archive = NOT_SAID
    originals: bool = True
    split: int = 0
    earlier: Path | None = None
    go_on: bool = False
    """Whether to hand over the rest when a record cannot be valid."""
    take_changed: bool = False
    """Whether scans that are not as they were at their intake go, as they are now."""


@dataclass(frozen=True, slots=True)
class TransferPart:
    """One bag: where it is, its records, scans, payload bytes; how many scans were cleaned."""

    path: Path
    records: int
    scans: int
    bytes: int
    cleaned: int = 0


@dataclass(frozen=True, slots=True)
class Transferred:
    """The package: its parts, how many people are withheld from the open one, what was found."""

    parts: tuple[TransferPart, ...]
    withheld: int
    findings: tuple[Finding, ...]


@dataclass(slots=True)
class _TransferRun:
    collection: Collection
    order: TransferOrder
    closing: Closing
    items: list[str]
    outside: AudienceView
    progress: Progress
    findings: list[Finding] = field(default_factory=list)
    ident: str = ""
    made: str = ""
    earlier: Mapping[str, Earlier] = field(default_factory=dict)
    """Part -> what an earlier transfer had handed over of it."""


def transfer(
    collection: Collection,
    out: Path,
    *,
    selection: Selection = EVERYTHING,
    progress: Progress = QUIET,
    order: TransferOrder | None = None,
) -> Transferred:
    """Write `out/open` and `out/closed`. Raises CouldNot if a withheld name is left anywhere in the open part,
    or if a record cannot be valid and the order does not say to go on with the rest."""
    order = order or TransferOrder(selection=selection)
    for taken in (out / "open", out / "closed", *out.glob("open-[1-9]*"), *out.glob("closed-[1-9]*")):
        check_place(collection, taken)
        if not is_free(taken):
            raise WrongUse(f"{taken} is not empty.", "Name a new folder for the package.")
    if order.earlier is not None and order.selection == EVERYTHING:
        order = replace(order, selection=chosen_before(order.earlier))
    check_chosen(collection, order.selection)
    earlier = _read_earlier(collection, order.earlier, progress) if order.earlier else {}
    outside = seen_by(collection, To.OUTSIDE)
    named = ask_of_settings(outside)
    items = order_of_containers(collection)
    closing = replace(closing_of(collection, outside), kept_back=scans_kept_back(collection, outside))
    run = _TransferRun(collection, order, closing, items, outside, progress, earlier=earlier)
    run.made = collection.clock.now()
    run.ident = named_within(collection.id, f"transfer {run.made}")
    run.findings += [*packed_since(collection, earlier.values()), *named, *doubtful_codes(order.archive)]
    run.findings += contradictions(collection, outside.lives)
    with work_folder(collection.folder, out / "transfer") as work, ExitStack() as held:
        makings = {
            name: _make(run, seen, work / name, held)
            for name, seen in (("open", outside), ("closed", seen_by(collection, To.ARCHIVE)))
        }
        _refuse_unchanged(run, makings.values())
        parts = _bag(run, makings, work)
        parts = _take_their_places(parts, out)
    _note(collection, parts)
    return Transferred(tuple(parts), outside.withheld.count, tuple(dict.fromkeys(run.findings)))


def _read_earlier(collection: Collection, folder: Path, progress: Progress) -> dict[str, Earlier]:
    """What an earlier transfer had handed over of each part. Every file of it is read, which takes its time."""
    earlier: dict[str, Earlier] = {}
    progress.begin("Verifying the earlier transfer", len(_PARTS))
    for part in _PARTS:
        go_on(progress)
        earlier[part] = read_earlier(collection, folder, part)
        progress.step()
    return earlier


_PARTS = ("open", "closed")


def _take_their_places(parts: list[TransferPart], out: Path) -> list[TransferPart]:
    """Both parts are whole: they take their names together, the open one last."""
    for part in reversed(parts):
        target = out / part.path.name
        if target.exists():
            target.rmdir()  # an empty one; a bag that was split may not be over another
        part.path.replace(target)
    flush_folder(out)
    return [replace(part, path=out / part.path.name) for part in parts]


def _make(run: _TransferRun, seen: AudienceView, folder: Path, held: ExitStack) -> Making:
    """One part: its files made in a folder beside it, which is `held` until they are bagged."""
    closed = seen.to.is_closed_part
    facts = facts_of(run.collection, seen, archive=run.order.archive, originals=run.order.originals)
    facts = replace(facts, people=seen.people(), moves_of=moves_of(run.collection, seen).of)
    facts = replace(facts, closure_of=_closures(run.closing)) if closed else facts
    earlier = run.earlier.get(folder.name)
    given_on = earlier.given_on if earlier else {}
    facts = replace(facts, is_closed=closed, transfers=_transfers(run, earlier), given_on=given_on)
    run.findings += asked_of_the_keeper(earlier, facts) if earlier and closed else ()
    work = held.enter_context(unfinished_folder(folder.with_name(f"{folder.name}-files")))
    stage, cleaned = work / "made", work / "cleaned"
    stage.mkdir()
    cleaned.mkdir()
    making = Making(run.collection, seen, facts, run.order.archive, stage, earlier)
    making.items, making.selection, making.progress = run.items, run.order.selection, run.progress
    making.ident, making.made = run.ident, run.made
    making.holding.not_given, making.holding.lent_items = facts.not_given, facts.lent
    making.beside = dict(sound_going(making))
    run.findings += sound_staying(making)
    making.scans_kept_back = scans_kept_back(run.collection, seen) if closed else run.closing.kept_back
    if run.order.archive.wants("scans") or (earlier and earlier.has_scans):
        making.handed_scans = HandedScans(
            run.collection.folder,
            cleaned,
            is_open=not closed,
            take_changed=run.order.take_changed,
            staged=earlier is None,
            held=earlier.files.get if earlier else lambda path: None,
            progress=run.progress,
        )
    if earlier and run.order.archive.wants("copies"):  # before it is told what the archive has already
        _copies(run, making)
    check_settings(making)
    make_files(making, run.closing)
    if closed and facts.originals:
        run.findings += asked_of_originals(run.collection, frozenset(making.items) - facts.not_given, facts.lent)
    make_further(making)
    _refuse(run, making)
    if not earlier and run.order.archive.wants("copies"):
        _copies(run, making)
    return making


def _transfers(run: _TransferRun, earlier: Earlier | None) -> tuple[Handed, ...]:
    """Every transfer so far, and this one."""
    today = run.collection.clock.today().isoformat()
    if earlier is None:
        return (Handed(today, f"Transfer {run.ident}."),)
    days = {bag.transfer: bag.made[:10] for bag in earlier.bags}
    before = tuple(Handed(day, f"Transfer {transfer}.") for transfer, day in days.items())
    return (*before, Handed(today, f"Transfer {run.ident}, an update of {earlier.revised[0].transfer}."))


def _closures(closing: Closing) -> Callable[[Record], Closure | None]:
    """The closure of each item, worked out once: every format of the closed part asks for it again. Of closures that
    read the same, as most do, one is kept."""
    by_item: dict[str, Closure | None] = {}
    kept: dict[Closure | None, Closure | None] = {}

    def closure_of(record: Record) -> Closure | None:
        if record.id not in by_item:
            closure = closing.of(record)
            by_item[record.id] = kept.setdefault(closure, closure)
        return by_item[record.id]

    return closure_of


def _refuse(run: _TransferRun, making: Making) -> None:
    """Stop before anything is packed if there is nothing, or a record that cannot be valid and nobody said go on."""
    if not making.holding.items and not making.earlier:
        if run.order.selection.asked:  # the keeper has such items: `check_chosen` found them
            raise CouldNot(*withheld_choice(run.order.selection))
        raise CouldNot("There is nothing to transfer.", "Take items in first, or choose others.")
    invalid = [finding.message for finding in making.findings if finding.rule == "export.invalid"]
    if invalid and not run.order.go_on:
        more = f" (and {len(invalid) - 1} more)" if len(invalid) > 1 else ""
        raise CouldNot(
            f"{invalid[0]}{more}",
            "Correct what is told of it (boxlore sit, or strike), or hand over the rest without it: --anyway.",
        )
    run.findings += making.findings


def _refuse_unchanged(run: _TransferRun, makings: Iterable[Making]) -> None:
    if not any(making.has_changed for making in makings) and not _has_other_terms(run.order):
        raise CouldNot("Nothing has changed since that transfer.", "")


def _has_other_terms(order: TransferOrder) -> bool:
    """Whether an update is made for an archive that says otherwise of itself, or hands the originals over otherwise."""
    earlier = order.earlier
    if earlier is None:
        return False
    return archive_before(earlier) != order.archive or originals_before(earlier) != order.originals


def _copies(run: _TransferRun, making: Making) -> None:
    """Captioned copies made for outside, in both parts: those that name nobody living. Archives are told in English."""
    stage, selection = making.stage / "copies", run.order.selection
    for _ in copies(run.collection, stage, to=To.OUTSIDE, selection=selection, language="en"):
        go_on(run.progress)
        run.progress.step()


def _bag(run: _TransferRun, makings: Mapping[str, Making], work: Path) -> list[TransferPart]:
    """Plan the bags of both parts, look through every file, and only then write them."""
    planned: list[PlannedBag] = []
    for name, making in makings.items():
        files = _files(making)
        run.findings += _too_large(files)
        bags = plan_bags(name, making, files, run.order.split)
        gate, packed = making.gate, [file for bag in bags for file in bag.files]
        gate.check_all((path, source.path if isinstance(source, Staged) else source) for path, source in packed)
        planned += bags
    described = [described_bag(bag, planned) for bag in planned]
    for bag, (info, page) in zip(planned, described, strict=True):
        gate = bag.making.gate
        gate.check_bytes("README.html", page)
        gate.check_bytes("bag-info.json", json.dumps(info).encode())
    return [_written(run, work, bag, *texts) for bag, texts in zip(planned, described, strict=True)]


def _files(making: Making) -> list[Packed]:
    written = [
        (path.relative_to(making.stage).as_posix(), path) for path in sorted(making.stage.rglob("*")) if path.is_file()
    ]
    made = {path for path, _ in written}  # chapters that we made are newer than any that lay there
    beside = [(path, source) for path, source in making.beside.items() if path not in made]
    return [*written, *sorted(making.scans.items(), key=_name_of), *beside]


def _written(run: _TransferRun, work: Path, bag: PlannedBag, info: Mapping[str, str], page: bytes) -> TransferPart:
    making = bag.making
    payload = [Payload(name, source) for name, source in bag.files]
    run.progress.begin(f"Packing {bag.name}", sum(size_of(source) for _, source in bag.files))
    size = write_bag(work / bag.name, payload, info, lambda count: _packed(run, count), {"README.html": page})
    scans = sum(1 for name, _ in bag.files if name.startswith("scans/"))
    cleaned = _cleaned(making, {name for name, _ in bag.files})
    return TransferPart(work / bag.name, making.holding.items if bag.is_first else 0, scans, size, cleaned)


def _name_of(packed: Packed) -> str:
    return packed[0]


def _cleaned(making: Making, bagged: set[str]) -> int:
    """How many of the files in a bag are scans with their picture alone."""
    if making.handed_scans is None:
        return 0
    handed = making.handed_scans
    files = {id(handed.file(cleaned.scan)) for cleaned in handed.cleaned.values()}
    return sum(id(source) in files for name, source in making.scans.items() if name in bagged)


def _packed(run: _TransferRun, count: int) -> None:
    """So many bytes more are packed. Raises CouldNot if the person asked to stop."""
    go_on(run.progress)
    run.progress.step(count)


def _too_large(files: list[Packed]) -> Iterator[Finding]:
    for name, source in files:
        if (size := size_of(source)) > FAT32:
            words = f"{name} has {size:,} bytes: a stick formatted as FAT32 cannot hold a file of 4 GiB or more."
            yield Finding(
                rule="bag.fat32", severity=Severity.NOTE, message=words, source="FAT32: largest file 4 GiB - 1"
            )


def _note(collection: Collection, parts: list[TransferPart]) -> None:
    """Remember that these bags were made, with the digest of what is in them, if the collection can be written to."""
    if not collection.store.writable:
        return
    act = collection.act("a transfer was packed")
    for part in parts:
        manifest = (part.path / "manifest-sha512.txt").read_bytes()
        event = FixityEvent(
            event=fixity_events.COPIED,
            outcome=f"copied and hashed{_left_out(part.cleaned)}",
            what=part.path.name,
            records=part.records,
            bytes=part.bytes,
            manifest=fixity_events.digest(manifest),
        )
        fixity_events.note(act, fixity_events.collection_of(collection), event)
    act.done()


def _left_out(count: int) -> str:
    scans = "a scan holds" if count == 1 else f"{count} scans hold"
    return f"; what {scans} beside the picture was left out" if count else ""
