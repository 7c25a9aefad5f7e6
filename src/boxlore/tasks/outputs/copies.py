"""Captioned copies: the caption inside the file, the picture untouched, the scan never opened for writing.

A copy is named by number and side and lies in a folder by box and folder. It is written under a temporary
name, flushed, proved against its scan, and only then takes its name. A second run changes nothing, and one after a kill
knows its own work by its bytes; what another program has put into a copy since is kept; a file that is not ours is
never touched.
"""

import hashlib
import io
import os
import tempfile
from collections.abc import Callable, Iterable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass, replace
from itertools import islice
from pathlib import Path
from typing import BinaryIO

from boxlore.core.crosswalk.metadata_values import Embedding
from boxlore.core.crosswalk.xmp_and_iim import CaptionContext, embedding_of
from boxlore.core.errors import BoxloreError, ByteFault, CouldNot, WrongUse
from boxlore.core.fields.pictures import EMBEDDED_WORDS
from boxlore.core.records.audience import To
from boxlore.core.records.item_record import REFERENCE, ScanFile
from boxlore.disk.as_hashed import as_hashed
from boxlore.disk.digests import sha256_of
from boxlore.disk.pictures import UprightJpeg, make_upright_jpeg
from boxlore.disk.regular_file import open_regular
from boxlore.disk.unfinished import clear_remains
from boxlore.disk.writing import could_not, replacing, write_hashed, write_pieces, write_whole
from boxlore.formats import additions, picture_files
from boxlore.formats.iim import XMP_HOLDS_ALL
from boxlore.tasks.collection.gate import Gate, ask_of_settings
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.output_paths import check_output, check_place, note_outputs
from boxlore.tasks.collection.progress import QUIET, Progress, workers
from boxlore.tasks.collection.records_for_outputs import EVERYTHING, AudienceView, Selection, check_chosen, seen_by
from boxlore.tasks.collection.registered import RegisteredScans
from boxlore.tasks.collection.settings import family_way
from boxlore.tasks.collection.struck_words_left import may_hold_struck
from boxlore.tasks.outputs.copies_being_made import FILE_NAME as NOTED
from boxlore.tasks.outputs.copies_being_made import BeingMade, read_being_made
from boxlore.tasks.outputs.copies_contents import FILE_NAME as CONTENTS
from boxlore.tasks.outputs.copies_contents import CopyLine, contents_page, read_contents, write_contents
from boxlore.tasks.outputs.copies_names import CopyJob, is_shortened, jobs_of, scan_named
from boxlore.tasks.scans.unchanged import ScanCheck

BATCH = 16

NOT_OUTSIDE = "It is kept, or shows or names someone living, and the copies are for outside."
NOT_FOR_THEM = "The keeper keeps it, or someone whom it shows or names, from those for whom the copies are."


@dataclass(frozen=True, slots=True, kw_only=True)
class Copied:
    """One scan's copy. `state` is written, same, cut, sidecar or refused; `why` says what a person should know.

    `shortened` tells which values are shorter in IIM, which takes only so many bytes of each, than in XMP.
    """

    number: str
    mark: str
    scan: str
    copy: str
    state: str
    why: str = ""
    shortened: str = ""
    line: CopyLine | None = None
    stops: CouldNot | None = None
    """Why nothing more can be written here: a full disk, one that can only be read."""


@dataclass(frozen=True, slots=True, kw_only=True)
class CopyRun:
    """What the copies of one run share. `known` holds the lines of the contents page by the copy's name, `being_made`
    what a killed run had made that the page does not know."""

    folder: Path
    out: Path
    source: CaptionContext
    to: To
    longest: int
    gate: Gate
    known: dict[str, CopyLine]
    being_made: BeingMade
    tombs_about: Callable[[Iterable[str]], list[str]]
    scans: RegisteredScans
    over: bool = False
    """Whether a file in the way that we did not write is replaced."""
    may_hold_struck: frozenset[Path] = frozenset()
    """Files that held struck words when these were struck."""
    scan_folders: frozenset[Path] = frozenset()
    """Where scans of the collection lie, links resolved: a copy that was taken in is a scan too."""

    def embedding(self, job: CopyJob, *, made: str = "", turned: int = 1, size: tuple[int, int] = (0, 0)) -> Embedding:
        """What the copy carries; for a newly encoded one with how it was made, how it was turned, and its size."""
        scan = replace(job.scan, width=size[0], height=size[1]) if size[0] else job.scan
        context = replace(self.source, made=made, turned=turned, drop_text=self.takes_bare(job.scan))
        subjects = (job.record.id, *(each.id for each in job.record.scans))
        return additions.signed(embedding_of(job.record, scan, context), self.tombs_about(subjects))

    def target(self, copy: str) -> Path:
        """Where that copy is written. Raises WrongUse if a scan is there: one that is a link may lead to it."""
        target = self.out / copy
        self.scans.check(target)
        return target

    def takes_bare(self, scan: ScanFile) -> bool:
        """Whether a copy takes a scan's picture alone: for outside, and where what its file says was struck."""
        return self.to.is_public or EMBEDDED_WORDS.read(scan.embedded).are_struck


def copies(
    collection: Collection,
    out: Path,
    *,
    to: To = To.FAMILY,
    selection: Selection = EVERYTHING,
    longest: int = 0,
    language: str = "",
    progress: Progress = QUIET,
) -> Iterator[Copied]:
    """Make the copies, reporting each; a contents page is written at the end, also of a run that was stopped.

    `language` is that of our own words, a member of `catalogue.LANGUAGES`; else that of the collection.

    Raises CouldNot when the disk takes no more; what is done then stays, and the next run goes on from there.
    """
    _refuse_scans_folder(collection, out)
    check_place(collection, out)
    page = out / CONTENTS
    check_output(collection, page)
    check_chosen(collection, selection)
    seen = seen_by(collection, to)
    ask_of_settings(seen)
    run = run_of(seen, out, longest, language)
    run.scans.check(page)
    clear_remains(out)
    progress.begin("Copying", collection.store.count("scan") if selection == EVERYTHING else 0)
    jobs = jobs_of(seen.records(selection), longest)
    lines = dict(run.known)
    places = {line.key: line for line in run.known.values()}
    ahead: dict[str, CopyLine] = {}

    def make(job: CopyJob) -> Copied | None:
        """One copy, unless the run is to stop. It may be made while one before it meets a full disk."""
        copied = None if progress.stopped() else _copy(run, job)
        if copied is not None and copied.line is not None:
            ahead[copied.copy] = copied.line
        return copied

    try:
        with workers() as pool:
            while not progress.stopped() and (batch := list(islice(jobs, BATCH))):
                for copied in pool.map(make, batch):
                    if copied is None:
                        return
                    if copied.stops is not None:
                        raise copied.stops
                    if copied.line is not None:
                        ahead.pop(copied.copy, None)
                        copied = _without_the_old(run, copied, places.get(copied.line.key))
                        lines[copied.copy] = copied.line or lines[copied.copy]
                    progress.step()
                    yield copied
    except CouldNot:
        lines |= ahead  # all of them have ended by now
        raise
    finally:
        if lines:
            _write_page(run, lines)
        run.being_made.done(lines)


def _write_page(run: CopyRun, lines: dict[str, CopyLine]) -> None:
    """Write the contents page. Raises CouldNot, with what becomes of the copies that it should have named."""
    try:
        page = contents_page(run.out, lines.values())
        run.gate.check_bytes(CONTENTS, page)
        note_outputs(run.folder, [hashlib.sha256(page).hexdigest()])
        write_contents(run.out, lines.values())
    except CouldNot as error:
        there = sum((run.out / copy).is_file() for copy in lines)
        words = f"{error.problem} {there} copies are there, noted in {NOTED}; the next run goes on from them."
        raise CouldNot(words, error.what_to_do, error.everywhere) from error


def run_of(seen: AudienceView, out: Path, longest: int, language: str = "") -> CopyRun:
    """What the copies in that folder share. Raises WrongUse where it holds copies for another audience."""
    collection, to, settings = seen.collection, seen.to, seen.collection.settings
    language = language or settings.language
    known = {line.copy: line for line in read_contents(out)}
    being_made = read_being_made(out)
    if others := ({line.made_for for line in known.values()} | being_made.audiences) - {to}:
        raise WrongUse(
            f"{out} holds copies for {sorted(others)[0]}, and these would be for {to}.", "Choose another folder."
        )
    source = CaptionContext(
        collection=settings.title,
        collection_id=collection.id,
        holder=seen.holder,
        language=language,
        told_in=settings.language,
        brackets=settings.bracketed_titles,
        drop_text=to.is_public,
        dates=family_way(settings)._replace(language=language),
    )
    folders = {(collection.folder / facts.path).parent for _, facts in collection.store.scans()}
    return CopyRun(
        folder=collection.folder,
        out=out,
        source=source,
        to=to,
        longest=longest,
        gate=Gate(seen),
        known=known,
        being_made=being_made,
        tombs_about=collection.store.tombs_about,
        scans=collection.registered_scans(),
        over=collection.over,
        may_hold_struck=may_hold_struck(collection),
        scan_folders=frozenset(folder.resolve() for folder in folders),
    )


def _refuse_scans_folder(collection: Collection, out: Path) -> None:
    scans = (collection.folder / "scans").resolve()
    target = out.resolve()
    if target in (scans, collection.folder.resolve()) or scans in target.parents:
        raise WrongUse(f"Copies cannot go among the scans ({out}).", "Choose another folder, such as copies.")
    if out.exists() and not out.is_dir():
        raise WrongUse(f"{out} is a file.", "Choose a folder for the copies.")


def _check_folder(out: Path, name: Path) -> None:
    """Raises CouldNot where a linked folder would lead a copy out of the folder of the copies, among the scans say."""
    folder, root = (out / name).parent, out.resolve()
    if not folder.resolve().is_relative_to(root):
        raise CouldNot(f"{folder} is a link, and Boxlore does not write through links.", "Move it out of the copies.")


def _copy(run: CopyRun, job: CopyJob) -> Copied:
    record, scan = job.record, job.scan
    named = scan_named(record, scan, run.to)
    refused = Copied(
        number=record.number,
        mark=record.mark.short if record.mark else "",
        scan=scan.path,
        copy="",
        state="refused",
    )
    try:
        if record.closed_scans:
            raise CouldNot(NOT_OUTSIDE if run.to.is_public else NOT_FOR_THEM)
        _check_folder(run.out, job.name)
        written = _make(run, job)
        words = "The name of its folder is a part of the label, which is too long for a disk."
        damaged = DAMAGED if job.scan.damaged else ""
        why = " ".join(filter(None, (written.why, words if is_shortened(record) else "", damaged)))
        line = CopyLine(
            number=refused.number,
            mark=refused.mark,
            scan=refused.scan,
            copy=written.copy,
            sha256_of_scan=scan.sha256,
            sha256_of_copy=written.sha256 or sha256_of(run.out / written.copy),
            made_for=run.to,
            longest=str(run.longest or ""),
            language=run.source.language,
            how=written.how,
            additions="yes" if written.additions else "",
            reference="; ".join(view.words for view in record.all(REFERENCE)),
        )
        return replace(refused, copy=written.copy, state=written.state, why=why, shortened=written.shortened, line=line)
    except (BoxloreError, OSError) as met:
        error = could_not(met, run.out / job.name) if isinstance(met, OSError) else met
        left = [
            earlier for earlier in run.known.values() if earlier.key == (record.number, named, str(run.longest or ""))
        ]
        there = {earlier.copy for earlier in left if (run.out / earlier.copy).is_file()}
        there |= {copy for copy in run.being_made.left() if Path(copy).with_suffix("") == job.name}
        if isinstance(error, _AnothersFile):
            there.discard(error.copy)
        why = " ".join([str(error), *(f"An earlier copy is still there: {copy}." for copy in sorted(there))])
        stops = error if isinstance(error, CouldNot) and error.everywhere else None
        return replace(refused, why=why, stops=stops)


DAMAGED = "The scan is cut off or broken, and so is the copy."


@dataclass(frozen=True, slots=True)
class _Made:
    copy: str
    state: str
    why: str = ""
    shortened: str = ""
    how: str = "whole"
    additions: bool = False
    sha256: str = ""
    """Of the copy, where it is known already."""


def _make(run: CopyRun, job: CopyJob) -> _Made:
    path = run.folder / job.scan.path
    try:
        file = open_regular(path)  # the error of opening is said apart from those of writing
    except OSError as error:
        raise could_not(error, path, reading=True) from error
    with file:
        if job.scan.bytes and (size := os.fstat(file.fileno()).st_size) != job.scan.bytes:
            raise CouldNot(
                f"{job.scan.path} has {size} bytes, and had {job.scan.bytes} at its intake.",
                "`boxlore verify` tells which scans are not as they were.",
            )
        with as_hashed(file, run.out) as (source, digest):  # what is checked is what is copied
            if job.scan.sha256 and digest != job.scan.sha256:
                raise CouldNot(
                    f"{job.scan.path} is not as it was at its intake: its SHA-256 is another.",
                    "`boxlore verify` tells which scans are not as they were.",
                )
            return _made_of(run, job, path, source)


def _made_of(run: CopyRun, job: CopyJob, path: Path, source: BinaryIO) -> _Made:
    """The copy of a scan whose bytes are right."""
    suffix = picture_files.suffix_for(source, path.suffix.lower())
    folder = (run.out / job.name).parent.resolve()
    if folder in run.scan_folders or path.parent.resolve() == run.out.resolve():
        raise CouldNot(f"Copies cannot go among the scans ({folder}).", "Choose another folder.")
    if job.scan.area or job.scan.turn or run.longest:
        return _encoded(run, job, source)
    copy = job.name.with_name(job.name.name + suffix).as_posix()
    try:
        with carried_over(source, bare=run.takes_bare(job.scan)) as carried:
            return _whole(run, job, carried, copy)
    except ByteFault as fault:
        return _beside(run, job, source, copy, fault)


@contextmanager
def carried_over(source: BinaryIO, *, bare: bool) -> Iterator[BinaryIO]:
    """What of a scan a copy may carry: `bare` its picture alone. Raises ByteFault if it cannot be taken apart."""
    picture_alone = picture_files.bare_picture(source) if bare else None
    if picture_alone is None or picture_files.is_whole(picture_alone, source):
        yield source
        return
    with tempfile.TemporaryFile() as picture:
        write_pieces(picture_alone.pieces, source, picture)
        yield picture


def _whole(run: CopyRun, job: CopyJob, source: BinaryIO, copy: str) -> _Made:
    """A copy with every byte of the picture; over a copy that another program has changed, with its additions."""
    target = run.target(copy)
    embedding = run.embedding(job)
    rewritten = picture_files.rewrite(source, embedding)
    shortened = " ".join(report for report in rewritten.reports if report.endswith(XMP_HOLDS_ALL))
    others = [report for report in rewritten.reports if not report.endswith(XMP_HOLDS_ALL)]
    why = " ".join([*others, *_turned(job, source)])
    if _holds(target, rewritten, source):
        return _Made(copy, "same", why, shortened)
    if not os.path.lexists(target) or _as_written(run, copy):
        return _Made(copy, "written", why, shortened, sha256=_write(run, rewritten, source, copy, embedding))
    with _opened(target) as there:
        ours = _is_ours(there, job.record.number) and not picture_files.same_picture(source, there, embedding)
        if ours and not (run.over and _additions_go(run, target, there, embedding)):
            return _over(run, there, source, embedding, copy)
    _refuse_another(run, target)
    return _Made(
        copy, "written", f"{why} {REPLACED}".strip(), shortened, sha256=_write(run, rewritten, source, copy, embedding)
    )


def _over(run: CopyRun, there: BinaryIO, scan: BinaryIO, embedding: Embedding, copy: str) -> _Made:
    """A copy of ours that another program has changed: the caption put right in it, its additions kept."""
    target = run.out / copy
    if _additions_go(run, target, there, embedding):
        raise _not_kept(run, target)
    anew, replaced = additions.over_our_own(embedding, there, scan)
    rewritten = picture_files.rewrite(there, anew)
    why = " ".join(["Another program has changed this copy; what it added was kept.", *dict.fromkeys(replaced)])
    if _holds(target, rewritten, there):
        return _Made(copy, "same", why, additions=True)
    digest = _write(run, rewritten, there, copy, anew, ours_alone=False)
    return _Made(copy, "written", why, additions=True, sha256=digest)


def _additions_go(run: CopyRun, target: Path, there: BinaryIO, embedding: Embedding) -> bool:
    """Whether what another program added to a copy of ours must not be kept."""
    if target.resolve() in run.may_hold_struck:
        return True
    said = picture_files.read(there).xmp.get(additions.STRUCK, "")
    return embedding.drop_text or additions.struck_since(embedding, said)


def _not_kept(run: CopyRun, target: Path) -> CouldNot:
    why = "may not be for outside" if run.to.is_public else "may be what was struck"
    return CouldNot(
        f"{target} was changed by another program, and what it added {why}.",
        "Move the file away, or say --over to replace it.",
    )


REPLACED = "It took the place of another file."


@dataclass(eq=False)
class _AnothersFile(CouldNot):
    """What is in the way is no copy of ours, or none any more."""

    copy: str = ""
    """Its name below the folder of the copies."""


def _refuse_another(run: CopyRun, target: Path) -> None:
    """Raises _AnothersFile for what is in the way and no copy of ours, unless files in the way are to be replaced."""
    if not (run.over and (target.is_file() or target.is_symlink())):
        raise _AnothersFile(
            f"There is another file of that name, which is no copy of this scan: {target}.",
            "It was not touched; move it away, choose another folder, or say --over to replace it.",
            copy=target.relative_to(run.out).as_posix(),
        )


def _opened(target: Path) -> BinaryIO:
    try:
        return open(target, "rb")
    except OSError as error:
        raise could_not(error, target) from error


def _as_written(run: CopyRun, copy: str) -> bool:
    """Whether the file is, to the byte, one that we wrote and nobody has changed."""
    target, line = run.out / copy, run.known.get(copy)
    if not target.is_file():
        return False
    digest = sha256_of(target)
    return run.being_made.wrote(copy, digest) or (
        line is not None and not line.additions and digest == line.sha256_of_copy
    )


def _is_ours(there: BinaryIO, number: str) -> bool:
    try:
        return picture_files.read(there).xmp.get("dc:identifier") == number
    except ByteFault:
        return False


def _holds(target: Path, rewritten: picture_files.Rewrite, source: BinaryIO) -> bool:
    if not target.is_file():
        return False
    with _opened(target) as copy:
        return picture_files.matches(rewritten, source, copy)


def _write(
    run: CopyRun,
    rewritten: picture_files.Rewrite,
    source: BinaryIO,
    copy: str,
    embedding: Embedding,
    *,
    ours_alone: bool = True,
) -> str:
    """Write one copy and prove it before it takes its name. Returns its SHA-256.

    One that holds what another program added is not noted as being made: it must never be taken for ours alone.
    """
    target = run.out / copy
    with replacing(target) as out:
        digest = write_hashed(rewritten.pieces, source, out)
        out.flush()
        with open(out.name, "rb") as written:
            _prove(target, picture_files.verify(source, written, embedding))
            run.gate.check(copy, written)
        if ours_alone:
            run.being_made.write(copy, digest, run.to)
    return digest


def _prove(target: Path, wrong: list[str]) -> None:
    """Raises CouldNot where a copy, before it takes its name, is not read back as it should be."""
    if wrong:
        raise CouldNot(f"The copy {target.name} did not prove right: {'; '.join(wrong)}.", "It was not kept.")


def _turned(job: CopyJob, source: BinaryIO) -> Iterator[str]:
    """Regions are in stored pixels; a viewer that turns the picture may not turn them with it."""
    marked = any(shown.area and shown.scan == job.scan.id for shown in job.record.people)
    if marked and (turned := picture_files.read(source).orientation) != 1:
        yield f"The picture is stored turned (Exif {turned}), and its regions with it; --longest writes it upright."


def _upright(run: CopyRun, job: CopyJob) -> UprightJpeg:
    """The upright picture of the scan, which Pillow reads from the file again. Raises CouldNot."""
    check = ScanCheck(run.folder, "It is not copied.")
    picture = check.made(
        job.scan,
        job.record.number,
        lambda file: make_upright_jpeg(file, run.longest, area=job.scan.part, turn=job.scan.turn),
    )
    if picture is None:
        raise CouldNot(check.findings[0].message)
    return picture


def _encoded(run: CopyRun, job: CopyJob, scan: BinaryIO) -> _Made:
    """A copy made by encoding anew: a part that was cut out of its scan, a turned or a smaller picture."""
    copy = job.name.with_name(job.name.name + ".jpg").as_posix()
    target = run.target(copy)
    picture = _upright(run, job)
    how = ["cut out of its scan"] if job.scan.area else []
    how += ["straightened, for it lay aslant"] if job.scan.corners else []
    how += [f"turned by {job.scan.turn}° to the right"] if job.scan.turn else []
    how += [f"at most {run.longest} pixels on its long side"] if run.longest else []
    named = scan_named(job.record, job.scan, run.to)
    words = f"Newly encoded for use: {', '.join(how)}; the scan is {named}, SHA-256 {job.scan.sha256}"
    turned, size = picture.orientation, (picture.width, picture.height)
    embedding = run.embedding(job, made=words, turned=turned, size=size)
    data = picture_files.captioned(picture.data, embedding)
    _prove(target, picture_files.misread(io.BytesIO(data), embedding))
    run.gate.check_bytes(copy, data)
    state, why = "cut" if job.scan.area else "written", f"Newly encoded: {', '.join(how)}."
    if not os.path.lexists(target) or _as_written(run, copy):
        run.being_made.write(copy, hashlib.sha256(data).hexdigest(), run.to)
        wrote = write_whole(target, data)
        return _Made(copy, state if wrote else "same", why, how="encoded")
    if target.is_file() and target.read_bytes() == data:
        return _Made(copy, "same", why, how="encoded")
    with _opened(target) as there:
        if _is_ours(there, job.record.number) and not (run.over and _additions_go(run, target, there, embedding)):
            return replace(_over(run, there, scan, embedding, copy), how="encoded")
    _refuse_another(run, target)
    run.being_made.write(copy, hashlib.sha256(data).hexdigest(), run.to)
    write_whole(target, data)
    return _Made(copy, state, f"{why} {REPLACED}", how="encoded")


def _beside(run: CopyRun, job: CopyJob, source: BinaryIO, copy: str, fault: ByteFault) -> _Made:
    """A file that cannot carry a caption: copied as it is, without the place of its making, the caption beside it."""
    if run.takes_bare(job.scan):
        why = "the copies are for outside" if run.to.is_public else "what its file says was struck"
        raise CouldNot(
            f"{fault} It cannot be cleared of what is embedded, and {why}.",
            "`--longest 4000` makes a JPEG of it instead.",
        )
    target = run.target(copy)
    rewritten = picture_files.copy_without_place(source)
    if not _holds(target, rewritten, source):
        if os.path.lexists(target) and not _as_written(run, copy):
            _refuse_another(run, target)
        with replacing(target) as out:
            write_pieces(rewritten.pieces, source, out)
            out.flush()
            with open(out.name, "rb") as written:
                clean = picture_files.is_whole(picture_files.copy_without_place(written), written)
            _prove(target, [] if clean else ["it still says where it was scanned"])
            run.being_made.write(copy, sha256_of(Path(out.name)), run.to)
    words, caption = run.target(f"{copy}.xmp"), picture_files.sidecar(run.embedding(job))
    said: list[str] = []
    if os.path.lexists(words) and not _is_sidecar(run, f"{copy}.xmp", caption):
        caption, said = _sidecar_over(run, job, source, words)
    _prove(words, picture_files.unreadable_packet(caption))
    run.being_made.write(f"{copy}.xmp", hashlib.sha256(caption).hexdigest(), run.to)
    write_whole(words, caption)
    why = f"{fault} The caption is beside the copy, in {words.name}; `--longest 4000` makes a JPEG that carries it."
    return _Made(copy, "sidecar", " ".join([why, *said]), how="sidecar")


def _is_sidecar(run: CopyRun, name: str, caption: bytes) -> bool:
    """Whether the caption that lies beside a copy is ours: this one, or one that a killed run wrote."""
    words = run.out / name
    return words.is_file() and (words.read_bytes() == caption or run.being_made.wrote(name, sha256_of(words)))


def _sidecar_over(run: CopyRun, job: CopyJob, scan: BinaryIO, words: Path) -> tuple[bytes, list[str]]:
    """The caption beside a copy with what another program put into it. Raises CouldNot where it is not ours."""
    try:
        packet = words.read_bytes()
        embedding = run.embedding(job)
        if picture_files.identifier_in(packet) == job.record.number:
            held_struck = words.resolve() in run.may_hold_struck
            if not held_struck and not additions.struck_since(embedding, picture_files.strikes_in(packet)):
                return additions.over_our_sidecar(embedding, packet, scan)
            if not run.over:
                raise _not_kept(run, words)
    except (ByteFault, OSError):
        pass  # it is in the way, whatever it is
    _refuse_another(run, words)
    return picture_files.sidecar(run.embedding(job)), []


def _without_the_old(run: CopyRun, copied: Copied, old: CopyLine | None) -> Copied:
    """After an item has moved, its copy at the old place goes, if it is as we wrote it and was not taken in."""
    if old is None or old.copy == copied.copy or not (run.out / old.copy).is_file():
        return copied
    if (run.out / old.copy).parent.resolve() in run.scan_folders or run.scans.scan_at(run.out / old.copy):
        return replace(copied, why=f"{copied.why} {old.copy} lies among the scans now and is left.".strip())
    if not _as_written(run, old.copy):
        return replace(
            copied, why=f"{copied.why} Its copy at the old place, {old.copy}, was changed and is left.".strip()
        )
    try:
        (run.out / old.copy).unlink()
        (run.out / f"{old.copy}.xmp").unlink(missing_ok=True)
    except OSError as error:
        raise could_not(error, run.out / old.copy) from error
    return replace(copied, why=f"{copied.why} It lay in {old.copy} before.".strip())
