"""The family's web pages: pictures made for the screen, pages as the audience may see them, one folder.

What an earlier run left in the folder goes, so that nothing stays that this audience may not see; files of anybody
else are not touched. The folder keeps a list of what is ours; a file that somebody has changed since is neither
replaced nor deleted, unless `--over` is said.
"""

import os
from collections.abc import Callable, Iterable, Mapping, Sequence
from contextlib import suppress
from dataclasses import dataclass, replace
from functools import partial
from pathlib import Path

from boxlore.core.crosswalk.captions import Style, date_words
from boxlore.core.errors import CouldNot, WrongUse
from boxlore.core.findings import Finding
from boxlore.core.records.audience import To
from boxlore.core.records.item_record import Record, ScanFile
from boxlore.core.wording.catalogue import to_say
from boxlore.disk.digests import sha256_of
from boxlore.disk.pictures import make_jpeg, make_jpegs
from boxlore.disk.sound import cut_wave
from boxlore.disk.writing import write_whole
from boxlore.sheets.picture_on_paper import front_of, jpeg_size
from boxlore.sheets.typesetting import note
from boxlore.sheets.web_pages import PageSide, Site, make_pages
from boxlore.sheets.web_pages_map import Town
from boxlore.sheets.web_pages_people import around_head, faces_of
from boxlore.tasks.collection.gate import Gate, ask_of_settings
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.output_paths import PAGES_LIST, all_written, check_place, foreign, note_outputs
from boxlore.tasks.collection.progress import QUIET, Progress, go_on, workers
from boxlore.tasks.collection.records_for_outputs import check_chosen, seen_by
from boxlore.tasks.collection.unfinished import work_folder
from boxlore.tasks.outputs.printed_sheets import (
    PrintedOutput,
    PrintOrder,
    known_people,
    printing_of,
    seen_items,
    with_dates_worked_out,
)
from boxlore.tasks.people.evidence_for_outputs import WorkedOutFor
from boxlore.tasks.scans.unchanged import ScanCheck
from boxlore.tasks.telling.places import gazetteer_of

LARGE, SMALL = 1600, 480
"""Pixels on the long side of a picture on its page, and in the gallery."""

LARGE_ENOUGH = 2000
"""A picture up to this size is not shrunk: a quarter more is not worth the time it takes."""

FACE = 240
"""Pixels of the longer side of a face."""

TOWN = 1_000
"""The least number of people of a town that the maps' ground may show."""

LISTED = PAGES_LIST

OUTSIDE = PrintOrder(to=To.OUTSIDE)

NO_VOICES: Mapping[str, Sequence["Stretch"]] = {}


@dataclass(frozen=True, slots=True)
class Stretch:
    """A stretch of a recording: its path in the collection, its SHA-256 from when it was taken in, and from when to
    when it is heard, in milliseconds.
    """

    path: str
    sha256: str
    start: int
    end: int


@dataclass(frozen=True, slots=True)
class _Work:
    """One picture to make: whose it is, the scan, the name of its files, whether it stands in the gallery."""

    record: Record
    scan: ScanFile
    name: str
    small: bool


def pages(
    collection: Collection,
    out: Path,
    order: PrintOrder = OUTSIDE,
    *,
    voices: Mapping[str, Sequence[Stretch]] = NO_VOICES,
    progress: Progress = QUIET,
) -> PrintedOutput:
    """The pages in the folder `out`, which may be new, empty, or one that we made before.

    `voices` are the stretches of recordings in which an item is told of, by its id; they are for the family alone.
    """
    check_place(collection, out)
    earlier = _earlier(out)
    check_chosen(collection, order.selection)
    seen = seen_by(collection, order.to)
    ask_of_settings(seen)
    shown, left_out, held = seen_items(seen, order)
    shown, worked = with_dates_worked_out(seen, shown, order)
    printing = replace(printing_of(seen, order), left_out=left_out, held=held)
    printing = replace(printing, lives_worked_out=_lives_worked_out(worked, printing.style))
    with work_folder(collection.folder, out) as site_folder:
        progress.begin("Preparing pictures", len(shown))
        check = ScanCheck(collection.folder)
        fronts, findings = _pictures(check, _works(shown, front_of, "", small=True), site_folder, progress)
        backs, damaged = _pictures(check, _works(shown, _back_of, "-back", small=False), site_folder, progress)
        faces = _faces(shown, fronts, site_folder)
        clips, unheard = _clips(collection.folder, shown, voices, site_folder)
        site = Site(
            records=shown,
            fronts=fronts,
            backs=backs,
            printing=printing,
            outside=order.to.is_public,
            public=_public(collection, shown, order),
            faces=faces,
            voices=clips,
            known=known_people(seen),
            towns=partial(_towns, collection),
        )
        for name, text in make_pages(site):
            path = site_folder / name
            path.parent.mkdir(exist_ok=True)
            path.write_text(text, encoding="utf-8", newline="\n")
        go_on(progress)
        gate = Gate(seen)
        gate.check_folder(site_folder)
        _move_in(collection, gate, site_folder, out, earlier)
    return PrintedOutput(out, len(shown), left_out, (*check.findings, *findings, *damaged, *unheard), held)


def _lives_worked_out(worked: WorkedOutFor, style: Style) -> dict[str, tuple[str, ...]]:
    """Sentences on births and deaths that nobody has told, by the ids of people."""
    said: dict[str, tuple[str, ...]] = {}
    for dates, message in (
        (worked.births, to_say("Birth as worked out from what is told: [{date}].")),
        (worked.deaths, to_say("Death as worked out from what is told: [{date}].")),
    ):
        for ident, dated in dates.items():
            said[ident] = (*said.get(ident, ()), style.say(message, date=date_words(dated.reading, style)))
    return said


def _back_of(record: Record) -> ScanFile | None:
    return next((scan for scan in record.scans if scan.side == "verso"), None)


def _works(
    shown: Iterable[Record], side: Callable[[Record], ScanFile | None], ending: str, *, small: bool
) -> list[_Work]:
    sides = ((record, side(record)) for record in shown)
    return [_Work(record, scan, f"{record.number}{ending}", small) for record, scan in sides if scan is not None]


def _public(collection: Collection, shown: Iterable[Record], order: PrintOrder) -> Mapping[str, Record]:
    """What anyone may know of these items; nothing of one whose picture may not go outside."""
    if order.to.is_public:
        return {record.id: record for record in shown}
    seen = map(seen_by(collection, To.OUTSIDE).recipient.seen, shown)
    return {record.id: record for record in seen if not record.closed_scans}


def _pictures(
    check: ScanCheck, works: Sequence[_Work], site_folder: Path, progress: Progress
) -> tuple[dict[str, PageSide], list[Finding]]:
    """Both sizes of each picture, below `images/`; a damaged one is named in the findings."""
    for folder in ("large", "small"):
        (site_folder / "images" / folder).mkdir(parents=True, exist_ok=True)
    sides: dict[str, PageSide] = {}
    findings = []
    with workers() as pool:
        for work, side in zip(
            works,
            pool.map(lambda each_work: _picture(check, each_work, site_folder, progress), works),
            strict=True,
        ):
            if side is not None:
                sides[work.record.id] = side
            elif not progress.stopped():
                findings.append(note("pages.picture", f"A picture of {work.record.number} cannot be shown."))
            if work.small:
                progress.step()
    return sides, findings


def _picture(check: ScanCheck, work: _Work, site_folder: Path, progress: Progress) -> PageSide | None:
    if progress.stopped():
        return None
    large, small = f"images/large/{work.name}.jpg", f"images/small/{work.name}.jpg"
    scan = work.scan
    longest = LARGE_ENOUGH if 0 < _longest(scan) <= LARGE_ENOUGH else LARGE
    sizes = ((longest, 84), (SMALL, 80))[: 2 if work.small else 1]
    try:
        made = check.made(
            scan, work.record.number, lambda file: make_jpegs(file, sizes, area=scan.part, turn=scan.turn)
        )
    except CouldNot:
        return None
    if made is None:
        return None
    for name, data in zip((large, small), made, strict=False):
        (site_folder / name).write_bytes(data)
    if not work.small:
        return PageSide(large, jpeg_size(site_folder / large))
    return PageSide(large, jpeg_size(site_folder / large), small, jpeg_size(site_folder / small))


def _faces(shown: Sequence[Record], fronts: Mapping[str, PageSide], site_folder: Path) -> dict[str, PageSide]:
    """A small picture of each face, by the path of the person's page, cut from the picture of the page."""
    (site_folder / "images" / "faces").mkdir(parents=True, exist_ok=True)
    faces: dict[str, PageSide] = {}
    for href, face in faces_of(shown).items():
        front = fronts.get(face.record)
        if front is None:
            continue
        name = f"images/faces/{Path(href).stem}.jpg"
        area = around_head(face.head, front.size) if face.head else ()
        with suppress(CouldNot):  # a head of no pixels: the person is shown without a face
            (site_folder / name).write_bytes(make_jpeg(site_folder / front.large, FACE, area=area, quality=82))
            size = jpeg_size(site_folder / name)
            faces[href] = PageSide(name, size, name, size)
    return faces


def _clips(
    folder: Path, shown: Sequence[Record], voices: Mapping[str, Sequence[Stretch]], site_folder: Path
) -> tuple[dict[str, list[str]], list[Finding]]:
    """The paths of what is heard of each item, by its id, cut out of the recordings; findings about those that are not
    as they were, or cannot be cut.
    """
    clips: dict[str, list[str]] = {}
    sound = {stretch.path: stretch.sha256 for record in shown for stretch in voices.get(record.id, ())}
    unheard = {path for path, sha256 in sound.items() if not _is_as_kept(folder / path, sha256)}
    for record in shown:
        for stretch in voices.get(record.id, ()):
            clip = None if stretch.path in unheard else cut_wave(folder / stretch.path, stretch.start, stretch.end)
            if clip is None:
                unheard.add(stretch.path)
                continue
            name = f"voices/{record.number}-{len(clips.get(record.id, ())) + 1}.wav"
            (site_folder / "voices").mkdir(exist_ok=True)
            (site_folder / name).write_bytes(clip)
            clips.setdefault(record.id, []).append(name)
    told = "is not as it was taken in, or no plain WAV: what is told in it cannot be heard on the pages."
    return clips, [note("pages.voice", f"{path} {told}") for path in sorted(unheard)]


def _is_as_kept(path: Path, sha256: str) -> bool:
    return path.is_file() and not path.is_symlink() and sha256_of(path) == sha256


def _towns(collection: Collection) -> Sequence[Town]:
    """The towns of the gazetteer for the map's ground; none where it cannot be read."""
    try:
        return gazetteer_of(collection).towns(TOWN)
    except CouldNot:
        return ()


def _longest(scan: ScanFile) -> float:
    wide, high = (scan.area[2], scan.area[3]) if len(scan.area) == 4 else (1.0, 1.0)
    return max(scan.width * wide, scan.height * high)


def _earlier(out: Path) -> list[Path]:
    """Our files of an earlier run. Raises WrongUse where the folder holds something and is none of ours."""
    if not out.exists() or (out.is_dir() and not any(out.iterdir())):
        return []
    listed = out / LISTED
    if not listed.is_file():
        raise WrongUse(f"{out} holds files that Boxlore did not write.", "Name a new folder for the pages.")
    home = out.resolve()
    named = (out / line for line in listed.read_text(encoding="utf-8").splitlines() if line)
    return [path for path in named if path.resolve().is_relative_to(home) and path.is_file()]


def _move_in(collection: Collection, gate: Gate, site_folder: Path, out: Path, earlier: Sequence[Path]) -> None:
    """What an earlier run left goes; what is new comes. The list comes first, so that a broken run can be mended.

    Raises WrongUse, before anything is moved, if a file that would go or be written over is not as Boxlore wrote it
    (unless `--over` is said) or is a scan, or if a folder in it leads outside.
    """
    scans = collection.registered_scans()
    for path in (out / LISTED, *earlier):
        scans.check(path)
    names = sorted(path.relative_to(site_folder).as_posix() for path in site_folder.rglob("*") if path.is_file())
    out.mkdir(exist_ok=True)
    before = [path.relative_to(out).as_posix() for path in earlier]
    for name in names:
        target = out / name
        inside = target.parent.resolve().is_relative_to(out.resolve())
        if not inside or target.is_dir():
            raise foreign(target)
        scans.check(target)
    made = {name: sha256_of(site_folder / name) for name in names}
    if not collection.over:
        _check_unchanged(collection, gate, out, made, before)
    note_outputs(collection.folder, made.values())
    write_whole(out / LISTED, _lines(sorted({*names, *before})))
    for path in earlier:
        path.unlink()
    for name in names:
        target = out / name
        target.parent.mkdir(parents=True, exist_ok=True)
        (site_folder / name).replace(target)
    write_whole(out / LISTED, _lines(names))
    for folder in sorted((path for path in out.rglob("*") if path.is_dir()), reverse=True):
        if not any(folder.iterdir()):
            folder.rmdir()


def _check_unchanged(
    collection: Collection, gate: Gate, out: Path, made: Mapping[str, str], before: Sequence[str]
) -> None:
    """Raises WrongUse, which names every file in the way that is not as Boxlore wrote it, and what stays there so.

    `made` has the SHA-256 of what is written now by its name, `before` the names of what an earlier run wrote.
    """
    written = all_written(collection.folder)
    there = sorted({*before, *(name for name in made if os.path.lexists(out / name))})
    changed = [name for name in there if not _is_ours(out / name, written, made.get(name, ""))]
    if not changed:
        return
    named = [name for name in changed if gate.names_somebody(name, out / name)]
    gone = sorted(set(before) - {*made, *named}, key=lambda name: (name not in changed, name))
    words = f" Someone who is withheld now is named in {_some(named)}." if named else ""
    words += f" Still there, but withheld now or not chosen: {_some(gone)}." if gone else ""
    error = foreign(out / changed[0])
    if len(changed) > 1:
        words = f" The same holds of {_some(changed[1:])}.{words}"
    keep = "The folder is as it was: copy what you changed to another place"
    aside = ", and hand the folder to nobody" if named or gone else ""
    raise WrongUse(error.problem + words, f"{keep}{aside}. Then choose another folder; or, at the shell, add --over.")


def _is_ours(path: Path, written: frozenset[str], now: str) -> bool:
    """Whether a file is one that Boxlore wrote, to the byte, or holds what is written now."""
    return path.is_file() and not path.is_symlink() and ((digest := sha256_of(path)) in written or digest == now)


def _some(names: Sequence[str]) -> str:
    """The first three of the names, and how many more."""
    more = f" and {len(names) - 3} more" if len(names) > 3 else ""
    return ", ".join(names[:3]) + more


def _lines(names: Iterable[str]) -> bytes:
    return "".join(f"{name}\n" for name in names).encode()
