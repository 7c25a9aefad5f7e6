"""Parcels: what was told here in one file, for somebody who works on it elsewhere, and such a file taken in.

A parcel is a working copy put into one file (`disk.parcel_files`): the log, or what was told since a day, the scans
that it tells of, and `parcel.json`, which says of what, from when and for whom it is. So taking one in is the joining
of a working copy (`joining`), with its rules: in any order, as often as one likes, and what was struck since stays
struck. One for the family has only what the family may see (`parcel_audience`); what it lacks stays as it is where it
is taken in.

One that begins at a day names the acts before it, so that whoever takes it in hears what is not there yet.
"""

import json
import os
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field, replace
from datetime import UTC, date, datetime, time
from pathlib import Path

from boxlore.core.errors import CouldNot, WrongUse
from boxlore.core.records.audience import To
from boxlore.disk.digests import sha256_of
from boxlore.disk.parcel_files import Member, is_locked, pack, unpack
from boxlore.disk.unfinished import unfinished_folder
from boxlore.disk.writing import could_not
from boxlore.store import joining
from boxlore.store.database_file import DATABASE, make_database
from boxlore.store.left_out import NOTHING, LeftOut, acts_before, every_line
from boxlore.store.opening import open_store
from boxlore.tasks.collection.joining import (
    ABOUT_PARCEL,
    KEPT_BESIDE,
    SET_BY_HAND,
    JoinedCopies,
    files_below,
    join,
    make_working_copy,
    next_letter,
)
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.parcel_audience import left_out_for_family
from boxlore.tasks.collection.progress import Progress, go_on
from boxlore.tasks.collection.records_for_outputs import seen_by
from boxlore.tasks.collection.settings import FILE_NAME, Settings, as_toml
from boxlore.tasks.collection.unfinished import work_folder

BEFORE = "acts-before.txt"
"""The ids of the acts before the day at which a parcel begins, one a line."""

VERSION = 1


@dataclass(frozen=True, slots=True, kw_only=True)
class ParcelOrder:
    """What goes in: told on or since the day `since` (UTC), for the keeper of another copy or for the family, with the
    scans, recordings and papers or without, locked by `passphrase` if there is one. `new_copy` sets a series letter
    aside for somebody who has no working copy yet."""

    since: date | None = None
    to: To = To.KEEPER
    with_files: bool = True
    new_copy: bool = False
    passphrase: str = ""


@dataclass(slots=True)
class Parcel:
    """What came of it: the file with its SHA-256, how much is in it, how many statements were kept back, the scans that
    could not go (paths: registered where they lie, or not there), and the series letter set aside."""

    path: Path
    sha256: str = ""
    statements: int = 0
    files: int = 0
    kept_back: int = 0
    left: list[str] = field(default_factory=list)
    letter: str = ""


@dataclass(slots=True)
class TakenIn:
    """A parcel taken in: its SHA-256, what came of the joining, how many acts before the day `since` of the parcel are
    not here, and for whom it was."""

    sha256: str
    joined: JoinedCopies
    lacking: int = 0
    since: str = ""
    to: str = To.KEEPER


def make_parcel(collection: Collection, target: Path, order: ParcelOrder, progress: Progress) -> Parcel:
    """Make a parcel in the file `target`. Raises WrongUse for what cannot be meant, CouldNot where the disk refuses;
    nothing is left there then."""
    if os.path.lexists(target):
        raise WrongUse(f"{target} is there already.", "Choose another name; a parcel replaces nothing.")
    if order.new_copy and order.since:
        raise WrongUse("A new working copy needs all that was told.", "Leave the day out.")
    if order.to.is_public or order.to.is_closed_part:
        raise WrongUse("A parcel is for another keeper or for the family.", "Others are handed copies or a transfer.")
    made = Parcel(target)
    if order.new_copy:
        made.letter = next_letter(collection)
        collection.store.give_series(collection.settings.prefix + made.letter)
    left_out = _left_out(collection, order)
    made.kept_back = len(left_out.rows)
    with work_folder(collection.folder, target) as folder:
        progress.begin("Gathering what was told", 0)
        scans, words = _write_log(collection, folder / DATABASE, left_out, made)
        members = [*_told(collection, folder, order, left_out, made), *_files(collection, scans, words, order, made)]
        progress.begin("Packing", len(members))
        made.sha256 = pack(target, members, order.passphrase, lambda: _step(progress))
    return made


def _step(progress: Progress) -> None:
    go_on(progress)
    progress.step()


def _left_out(collection: Collection, order: ParcelOrder) -> LeftOut:
    kept = left_out_for_family(collection) if order.to.is_family else NOTHING
    if order.since is None:
        return kept
    begins = datetime.combine(order.since, time(), UTC).isoformat(timespec="milliseconds").replace("+00:00", "Z")
    return replace(kept, acts=acts_before(collection.store.db, begins))


def _write_log(collection: Collection, path: Path, left_out: LeftOut, made: Parcel) -> tuple[set[str], str]:
    """Write the log into a database of its own. Returns the ids of its scans, and the words of its sittings and places,
    which name recordings and papers."""
    make_database(path, collection.id)
    with joining.copy_to_join(collection.folder, collection.id) as here, open_store(path.parent) as store:
        joined = joining.join(store, here, collection.by, collection.clock.now(), left_out=left_out)
        made.statements = joined.statements
        others = "\n".join(words for _, _, _, words, *_ in store.every_words())
        return {scan for scan, _ in store.scans()}, others


def _told(
    collection: Collection, folder: Path, order: ParcelOrder, left_out: LeftOut, made: Parcel
) -> Iterator[Member]:
    settings = _settings_for(collection, order.to)
    about = {
        "parcel": VERSION, "collection": collection.id, "title": settings.title, "made": collection.clock.now(),
        "by": collection.by, "for": order.to.value, "since": order.since.isoformat() if order.since else "",
        "new_copy": made.letter,
    }  # fmt: skip
    yield ABOUT_PARCEL, json.dumps(about, ensure_ascii=False, indent=1).encode()
    if left_out.acts:
        yield BEFORE, "".join(f"{act}\n" for act in sorted(left_out.acts)).encode()
    yield FILE_NAME, as_toml(settings).encode()
    for name in () if order.to.is_family else SET_BY_HAND:
        if (collection.folder / name).is_file():
            yield name, collection.folder / name
    yield DATABASE, folder / DATABASE


def _settings_for(collection: Collection, to: To) -> Settings:
    settings = replace(collection.settings, meeting="")
    if not to.is_family:
        return settings
    seen = seen_by(collection, to)
    return replace(
        settings,
        title=seen.setting("title") or Settings().title,
        holder=seen.holder,
        contact="",
        family=seen.setting("family"),
        history=seen.setting("history"),
        custody="",
    )


def _files(collection: Collection, scans: set[str], words: str, order: ParcelOrder, made: Parcel) -> Iterator[Member]:
    """The files of the scans, each once, and, for a keeper, the recordings and papers; of those, where a day is told
    since which all goes, the ones that are named in the words told since."""
    home, packed = collection.folder.resolve(), set()
    for scan, facts in collection.store.scans() if order.with_files else ():
        path = Path(os.path.normpath(home / facts.path))
        if scan not in scans or facts.path in packed:
            continue
        if path.is_relative_to(home) and path.is_file():
            packed.add(facts.path)
            yield facts.path, path
        else:
            made.left.append(facts.path)
    made.files = len(packed)
    if order.with_files and not order.to.is_family:
        for path in (path for name in KEPT_BESIDE for path in files_below(home / name)):
            name = path.relative_to(home).as_posix()
            if order.since is None or name in words:
                yield name, path


@contextmanager
def _opened(parcel: Path, beside: Path, passphrase: str, progress: Progress) -> Iterator[tuple[Path, dict[str, str]]]:
    """Context: the folder that a parcel was unpacked into, removed at the end, and what the parcel says of itself."""
    with _room(beside) as folder:
        progress.begin("Opening the parcel", 0)
        unpack(parcel, folder, passphrase, lambda: _step(progress))
        try:
            about = json.loads((folder / ABOUT_PARCEL).read_bytes())
            known = isinstance(about, dict) and about.get("parcel") == VERSION
        except (OSError, ValueError):
            known = False
        if not known:
            raise CouldNot(f"{parcel.name} is no parcel of this program, or of a newer one.", "Nothing was taken in.")
        with open_store(folder):
            pass  # one that an older version made is brought up to date
        yield folder, {name: str(value) for name, value in about.items()}


@contextmanager
def _room(beside: Path) -> Iterator[Path]:
    try:
        with unfinished_folder(beside / "parcel") as folder:
            yield folder
    except OSError as error:
        raise could_not(error, Path(error.filename or beside)) from error


def take_in(
    collection: Collection, parcel: Path, passphrase: str, progress: Progress, *, new_numbers: bool = False
) -> TakenIn:
    """Take in a parcel, as a working copy is joined. Raises as `joining.join` and `parcel_files.unpack` do."""
    with _opened(parcel, collection.folder, passphrase, progress) as (folder, about):
        if about.get("collection") != collection.id:
            raise WrongUse(
                f"{parcel.name} is of another collection: {about.get('title', '')[:60]}.",
                "Two families' collections stay two. One that is new to you begins with it: “Another collection”, "
                "“Begin with a parcel” (boxlore new FOLDER --join PARCEL).",
            )
        joined = join(collection, folder, progress, new_numbers=new_numbers)
        joined.same_series = joined.same_series and joined.log.acts > 0  # else it is one's own, come back
        return TakenIn(
            sha256_of(parcel),
            joined,
            len(_before(folder) - {act for act, _ in every_line(collection.store.db)}),
            about.get("since", ""),
            about["for"],
        )


def _before(folder: Path) -> set[str]:
    path = folder / BEFORE
    return set(path.read_text("utf-8").split()) if path.is_file() else set()


def copy_from_parcel(folder: Path, parcel: Path, passphrase: str, progress: Progress, *, series: str = "") -> TakenIn:
    """Make a new working copy in `folder` of what is in a parcel, with the series letter that was set aside in it, or
    `series`. Raises WrongUse where it has none, or does not hold all that was told."""
    folder.parent.mkdir(parents=True, exist_ok=True)
    with _opened(parcel, folder.parent, passphrase, progress) as (other, about):
        if about.get("since"):
            raise WrongUse(
                f"{parcel.name} holds only what was told since {about['since']}.", "Ask for one for a new working copy."
            )
        letter = series or about.get("new_copy", "")
        if not letter:
            raise WrongUse(
                f"{parcel.name} is for somebody who has a working copy already.",
                "Ask for one for a new working copy, or say with --series a letter that no other desk has.",
            )
        made = make_working_copy(folder, other, progress, series=letter)
        return TakenIn(sha256_of(parcel), made, to=about.get("for", ""))


def passphrase_for(parcel: Path, ask: Callable[[], str]) -> str:
    """The passphrase where one is needed, which `ask` asks for; empty where none is."""
    return ask() if is_locked(parcel) else ""
