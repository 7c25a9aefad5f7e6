"""Joining: another working copy of the collection taken into this one, and a new working copy made.

The rules of the log are in `store.joining`. Here stands what lies around it: the backup before it, the strike of what
the other copy struck, the scans, recordings and papers that only the other has, numbers that were given twice, and the
series letters by which that does not happen.
"""

import os
from collections import Counter
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field, replace
from functools import partial
from pathlib import Path
from string import ascii_uppercase

from boxlore.core.errors import BoxloreError, CouldNot, WrongUse
from boxlore.core.fields.pictures import FILE_WORDS, FileFacts
from boxlore.core.records.marks import number_text
from boxlore.core.statements import Kind, Subject
from boxlore.disk.digests import copy_proved, sha256_of
from boxlore.disk.unfinished import PART
from boxlore.disk.writing import could_not, flush_folder, write_whole
from boxlore.store import joining, strike
from boxlore.store.joining import Joined
from boxlore.store.strike import StrikeReport
from boxlore.tasks.collection.opening import Act, Collection, has_collection, open_collection, start
from boxlore.tasks.collection.progress import Progress
from boxlore.tasks.collection.settings import read_settings
from boxlore.tasks.collection.struck_rows import forget_rows

KEPT_BESIDE = ("recordings", "papers")
"""Folders whose files go by the same names in every copy."""

ABOUT_PARCEL = "parcel.json"
"""Lies in what was unpacked of a parcel, and says of what, from when and for whom it is (`parcels`)."""

SET_BY_HAND = ("prompts.toml", "archive.toml")
"""Files of settings that a new working copy has as the first has them."""


@dataclass(slots=True)
class JoinedCopies:
    """What came of it. `struck` tells of what the other copy had struck and this one had; `files` counts the scans,
    recordings and papers that were copied, `faults` says of each that could not be (sentences), and `outside` are
    those registered where they lie on the other desk, `not_sent` those that a parcel does not hold. `numbered_anew`
    holds the old and the new number of the items that had a number which another has; `same_series` says that both
    copies number in one series; `drafts` counts what is still being typed there, and `ahead` is the newest time
    there if this machine's clock has not come to it."""

    log: Joined
    struck: StrikeReport | None = None
    files: int = 0
    faults: list[str] = field(default_factory=list)
    outside: list[str] = field(default_factory=list)
    not_sent: list[str] = field(default_factory=list)
    numbered_anew: list[tuple[str, str]] = field(default_factory=list)
    same_series: bool = False
    drafts: int = 0
    ahead: str = ""
    stopped: bool = False


def join(collection: Collection, other: Path, progress: Progress, *, new_numbers: bool = False) -> JoinedCopies:
    """Take in all that another working copy has and this one has not, and copy its files. Done twice, it adds nothing.

    An item whose number another item had first gets the next number of this copy's series with `new_numbers`. Raises
    WrongUse for another collection, and where a number is of two items; CouldNot for a copy that cannot be read.
    """
    if not has_collection(other):
        raise WrongUse(f"There is no collection in {other}.", "Name the folder of a working copy of this one.")
    if other.resolve() == collection.folder.resolve():
        raise WrongUse(f"{other} is this very collection.", "Name the folder of another working copy of it.")
    store = collection.store
    known = {scan: facts.path for scan, facts in store.scans()}
    with joining.copy_to_join(other, collection.id) as there:
        collection.back_up_before("joining another copy")
        ahead = _ahead(collection, there.execute("SELECT max(recorded_at) FROM act").fetchone()[0] or "")
        (drafts,) = there.execute("SELECT count(*) FROM draft").fetchone()
        struck = strike_as_there(collection, joining.forms_struck(store.db, there))
        by, now = collection.by, collection.clock.now()
        log = joining.join(store, there, by, now, partial(check_numbers, new_numbers=new_numbers, struck=struck))
    result = JoinedCopies(log, struck, drafts=drafts, ahead=ahead)
    result.same_series = read_settings(other).series == collection.settings.series
    number_anew(collection, log.twice, result.numbered_anew)
    _copy_files(collection, other, known, result, progress)
    return result


def _ahead(collection: Collection, newest: str) -> str:
    """The newest time of the other copy, if it is later than now here."""
    return newest if newest > collection.clock.now() else ""


def strike_as_there(collection: Collection, forms: set[str]) -> StrikeReport | None:
    """Strike here what was struck in the other copy, or is a form of it."""
    store = collection.store
    ids = joining.to_strike(store.db, forms)
    if not ids:
        return None
    words = strike.words_of(store, ids)
    report = strike.strike(store, ids, by=collection.by, now=collection.clock.now())
    forget_rows(collection, words)
    return report


def check_numbers(joined: Joined, *, new_numbers: bool, struck: StrikeReport | None) -> None:
    """Raises WrongUse where two items have one number and none is to get another; then nothing is taken in."""
    if joined.twice and not new_numbers:
        numbers = list(dict.fromkeys(number for number, _, _ in joined.twice))
        more = f" and {len(numbers) - 10} more" if len(numbers) > 10 else ""
        raise WrongUse(
            f"Both copies have given the same numbers to different photographs: {', '.join(numbers[:10])}{more}. "
            f"Nothing was taken in{'; what was struck there is struck here' if struck else ''}.",
            "With --new-numbers those taken in later get new ones here, and a list says which to pencil anew. Do it in "
            "one copy, then join that one into the other.",
        )


def number_anew(collection: Collection, twice: Iterable[tuple[str, str, str]], numbered: list[tuple[str, str]]) -> None:
    """Give the later of two items of one number the next of this copy's series; `numbered` gets the old and the new."""
    act = collection.act("new numbers for items that were numbered in two copies")
    settings = collection.settings
    count = collection.store.next_number_count(settings.prefix, settings.series)
    for number, _, item in twice:
        subject = Subject(Kind.ITEM, item)
        rows = collection.store.statements(subject)
        given = next(told for told, _ in rows if told.field == "number" and told.words == number)
        anew = number_text(settings.prefix, settings.series, count)
        act.state(subject, "number", anew, replaces=given.id)
        numbered.append((number, anew))
        count += 1
    act.done()


def _copy_files(
    collection: Collection, other: Path, known: dict[str, str], result: JoinedCopies, progress: Progress
) -> None:
    """Copy each file that only the other has, and prove the copy. A scan under whose name another scan's file lies here
    goes under a name of its own, which is told of it. `known` has the scans (ids) that were here before, with their
    names then."""
    _rename(collection, known)
    scans = list(_missing_scans(collection, other, known, result))
    beside = [path for name in KEPT_BESIDE for path in files_below(other / name)]
    progress.begin("Copying", len(scans) + len(beside))
    act = collection.act("where scans lie whose names other scans have here")
    for scan, facts in scans:
        target = named = collection.folder / facts.path
        if named.exists():
            target = _free(named)
        if _copy(other / facts.path, target, facts.sha256, result, progress) and target != named:
            _state_place(act, scan, replace(facts, path=target.relative_to(collection.folder).as_posix()))
    act.done()
    for source in beside:
        target = collection.folder / source.relative_to(other)
        if not target.exists():
            _copy(source, target, "", result, progress)
        elif sha256_of(source) != sha256_of(target):
            result.faults.append(f"{target} and {source} differ; each copy keeps its own.")


def _rename(collection: Collection, known: dict[str, str]) -> None:
    """Give scans that lie here the names that the other copy gave them, where it had another's file by theirs."""
    for scan, facts in collection.store.scans():
        before, after = collection.folder / known.get(scan, facts.path), collection.folder / facts.path
        if before != after and before.is_file() and not after.exists():
            before.rename(after)
            flush_folder(after.parent)


def _missing_scans(
    collection: Collection, other: Path, known: dict[str, str], result: JoinedCopies
) -> Iterator[tuple[str, FileFacts]]:
    """(id, facts) of every scan whose bytes do not lie here under its name, and may lie there."""
    home = collection.folder.resolve()
    of_path = Counter(facts.path for _, facts in collection.store.scans())
    for scan, facts in collection.store.scans():
        is_unsure = scan not in known or of_path[facts.path] > 1  # a joining that was stopped left two by one name
        target = Path(os.path.normpath(home / facts.path))
        if not target.is_relative_to(home):
            if not target.exists():
                result.outside.append(facts.path)
        elif not target.exists() or (is_unsure and sha256_of(target) != facts.sha256):
            if (other / facts.path).is_file():
                yield scan, facts
            elif (other / ABOUT_PARCEL).is_file():
                result.not_sent.append(facts.path)
            elif scan not in known:
                result.faults.append(f"{other / facts.path} is not there; boxlore verify tells when it is found.")


def files_below(folder: Path) -> list[Path]:
    if not folder.is_dir():
        return []
    return sorted(path for path in folder.rglob("*") if path.is_file() and not path.name.endswith(PART))


def _free(target: Path) -> Path:
    """A name beside `target` that nothing has: `scan-2.jpg`."""
    count = 2
    while (path := target.with_stem(f"{target.stem}-{count}")).exists():
        count += 1
    return path


def _state_place(act: Act, scan: str, facts: FileFacts) -> None:
    subject = Subject(Kind.SCAN, scan)
    stood = [told for told, _ in act.collection.store.statements(subject) if told.field == "file"]
    act.state(subject, "file", FILE_WORDS.write(facts), replaces=stood[-1].id)


def _copy(source: Path, target: Path, sha256: str, result: JoinedCopies, progress: Progress) -> bool:
    """Copy one file, unless the task was stopped, or by a disk that takes nothing. Returns whether it was copied."""
    result.stopped = result.stopped or progress.stopped()
    if result.stopped:
        return False
    is_copied = False
    try:
        target.parent.mkdir(parents=True, exist_ok=True)
        copy_proved(source, target, sha256 or sha256_of(source))
        result.files += 1
        is_copied = True
    except BoxloreError as error:
        result.faults.append(str(error))
        result.stopped = isinstance(error, CouldNot) and error.everywhere
    except OSError as error:
        result.faults.append(str(could_not(error, target)))
    progress.step()
    return is_copied


def make_working_copy(folder: Path, other: Path, progress: Progress, *, series: str = "") -> JoinedCopies:
    """Make a new working copy of the collection in `other`, with the next series letter that no copy has, or `series`.

    The letter is noted in `other`, so that the copy made after this one gets another. Raises WrongUse, CouldNot.
    """
    with open_collection(other) as first:
        _begin_copy(first, folder, series)
    with open_collection(folder) as collection:
        return join(collection, other, progress)


def working_copy_of(collection: Collection, folder: Path, progress: Progress) -> JoinedCopies:
    """The same of a collection that is open for writing."""
    _begin_copy(collection, folder, "")
    with open_collection(folder) as copy:
        return join(copy, collection.folder, progress)


def _begin_copy(first: Collection, folder: Path, series: str) -> None:
    letter = series or next_letter(first)
    start(folder, replace(first.settings, series=letter, meeting=""), ident=first.id)
    first.store.give_series(first.settings.prefix + letter)
    for name in SET_BY_HAND:
        if (first.folder / name).is_file():
            write_whole(folder / name, (first.folder / name).read_bytes())


def next_letter(collection: Collection) -> str:
    """The first letter that stands for no working copy, as far as this one knows. Raises WrongUse after Z."""
    settings = collection.settings
    given = {*collection.store.series_given(), settings.prefix + settings.series}
    free = [letter for letter in ascii_uppercase if settings.prefix + letter not in given]
    if not free:
        raise WrongUse("Every series letter is in use.", "Join the copies, and go on with fewer.")
    return free[0]
