"""The first pass over the items of a part: what there is, which scans go, how each stands against a transfer before."""

from collections.abc import Iterator, Sequence

from boxlore.core.crosswalk.scan_file_names import packed_path
from boxlore.core.findings import Finding, Severity, make_finding, several
from boxlore.core.records.item_record import Record, every_told, is_untold
from boxlore.core.wording.catalogue import ENGLISH
from boxlore.disk.digests import sha256_of
from boxlore.exports.inventory import as_csv, as_table
from boxlore.tasks.archive.item_states import HEADING, STATE, rest_row, said_now, state_row
from boxlore.tasks.archive.making import Making
from boxlore.tasks.archive.remarks_answered import answers_of_items
from boxlore.tasks.archive.scans_as_handed import missing_finding
from boxlore.tasks.archive.sittings_held import not_to_be_heard, sittings_held
from boxlore.tasks.archive.transfer_context import tellers_of, thing_views
from boxlore.tasks.archive.transfer_updates import (
    CALLED,
    CHANGES,
    DESCRIBING,
    FILES,
    WITHDRAW,
    Earlier,
    change_row,
    gone_rows,
    held_rows,
    own_references_as_one,
)
from boxlore.tasks.archive.withdrawal_form import put_request
from boxlore.tasks.archive.withdrawing import HEADING as WITHDRAW_HEADING
from boxlore.tasks.archive.withdrawing import Reason, Withdrawing
from boxlore.tasks.collection.container_references import container_references
from boxlore.tasks.outputs.copies_contents import FILE_NAME as CONTENTS
from boxlore.tasks.outputs.copies_names import jobs_of

COPIES_LISTED = f"copies/{CONTENTS}"


def count_items(making: Making) -> None:
    """One pass over all: what there is, which scans go, how each item stands against an earlier transfer."""
    chosen = _choose(making, making.earlier) if making.earlier else set()
    withdrawing = Withdrawing(making.collection, making.earlier or Earlier(), making.seen, making.facts)
    changes: list[list[str]] = []
    seen: set[str] = set()
    untold: list[str] = []
    answers = answers_of_items(making)
    with making.open(STATE, "what this part says of each item, for a later update") as out:
        out.writelines(as_table([HEADING]))
        for record in making.records():
            seen.add(record.id)
            record = _taken(making, record)
            row = state_row(record, making.facts, answers.get(record.id, ()))
            out.writelines(as_csv([row]))
            withdrawing.compare(record.number, record.id, row[-1].split())
            _note_change(making, row, changes, withdrawing, record)
            making.holding.add(record)
            if making.seen.to.is_public and record.open_scans and is_untold(record):
                untold.append(record.number)
            making.withheld += record.withheld
            path = record.container_path
            making.containers |= {path[:depth] for depth in range(1, len(path) + 1)}
            making.people |= {shown.person for shown in record.people if shown.person}
            making.people |= tellers_of(every_told(record))
        things = thing_views(making.collection, making.seen, making.told_people, making.sittings)
        told = [view.statement for _, _, views in things for view in views]
        of_containers = container_references(making.collection, making.seen)
        told += [view.statement for path, views in of_containers.items() if path in making.containers for view in views]
        rest = rest_row(making.collection.id, told)
        out.writelines(as_csv([rest]))
        withdrawing.compare("", rest[1], rest[-1].split())
        if making.earlier and rest[1] in making.earlier.items:  # an older version did not note it
            _note_change(making, rest, changes, withdrawing)
    making.findings += making.handed_scans.findings if making.handed_scans else []
    making.findings += _untold(untold)
    making.items = [ident for ident in making.items if ident in seen]
    copies: set[str] = set()
    for record in making.records():
        _scans(making, record)
        if making.earlier and not _copies_anew(making, record, chosen) and record.number not in withdrawing.lacking:
            copies |= {job.name.name for job in jobs_of([record] if not record.closed_scans else [])}
    if making.earlier:
        _keep_others(making, making.earlier, copies)
        _say_update(making, making.earlier, withdrawing, [*changes, *gone_rows(making.earlier, seen)], seen)


MOST_NAMED = 10
"""So many items are named by their numbers."""


def _untold(numbers: Sequence[str]) -> Iterator[Finding]:
    """What is said of photographs that anyone may see in the open part, and of which nobody has said who is on them."""
    if numbers:
        more = [f"{len(numbers) - MOST_NAMED} more"] if len(numbers) > MOST_NAMED else []
        which = ENGLISH.listed([*numbers[:MOST_NAMED], *more])
        words = (
            f"Nothing is told of {several(len(numbers), 'photograph that goes', 'photographs that go')} into the open "
            f"part with all that is to be seen: {which}. Look who is on it before you hand it on; somebody living may "
            "be. What is to stay closed until a day: boxlore people audience --item NUMBER archive:2070-01-01."
        )
        yield make_finding("open.untold", Severity.NOTE, words, "our own rule")


def _choose(making: Making, earlier: Earlier) -> set[str]:
    """The items of an update: all that were handed over before, and what is chosen as it was then. What the archive
    did not get is no longer there only if it is in no selection either. Returns those that are chosen."""
    chosen = {record.id for record in making.seen.handed_over(making.selection, making.items)}
    making.items = [ident for ident in making.items if ident in chosen or ident in earlier.items]
    return chosen


def _taken(making: Making, record: Record) -> Record:
    """The record of an update with those of its scans taken that the archive has not got yet."""
    if making.earlier is None or making.handed_scans is None or record.closed_scans:
        return record
    if not making.archive.wants("scans") or all(
        making.earlier.holds(packed_path(record, scan), scan.sha256) for scan in record.scans
    ):
        return record
    return making.handed_scans.take(record)


def _note_change(
    making: Making, row: list[str], changes: list[list[str]], withdrawing: Withdrawing, record: Record | None = None
) -> None:
    """Note what has changed of a record, or of all that belongs to none."""
    if making.earlier:
        what, fields = making.earlier.changed(row)
        if what == "same":
            return
        withdrawn = withdrawing.reasons(row[0]) if row[0] else []
        if row[0] and "caption" in fields and withdrawing.note_teller(row[0], row[1]):
            withdrawn.append(Reason.CONSENT)
        told = said_now(record, making.facts, fields) if record else ()
        now = "; ".join(f"{CALLED.get(name, name)}: {words}" for name, words in told)
        changes.append(change_row(making.collection, row, what, fields, withdrawn, making.earlier, now))


def _copies_anew(making: Making, record: Record, chosen: set[str]) -> bool:
    """Whether the copies of an item are made anew, so that one that is not made any more is to be withdrawn."""
    return making.archive.wants("copies") and record.id in chosen


def _keep_others(making: Making, earlier: Earlier, copies: set[str]) -> None:
    """Let the archive keep what it has of recordings, papers and copies and would not get now, since it takes no more
    of them or other items are chosen, as long as it may have it: sound and papers as the keeper has them, and those of
    `copies` (names without what tells the format). The list of copies stays only where all of them do. Of a scan whose
    file here was damaged, its own is the good one.
    """
    held = [path for path in earlier.files if path.startswith("copies/") and path != COPIES_LISTED]
    stay = [path for path in held if path.rpartition("/")[2].partition(".")[0] in copies]
    if len(stay) == len(held) and COPIES_LISTED in earlier.files and not making.archive.wants("copies"):
        stay.append(COPIES_LISTED)
    unheard = not_to_be_heard(making.collection, making.seen.recipient)
    stay_here = {
        path
        for held in sittings_held(making.collection)
        if held.is_wanted is False or held.id in unheard
        for path in held.paths
    }
    sent_or_declined = {*stay_here, *making.beside}
    for path in earlier.files:
        own = making.collection.folder / path
        is_sound = path.startswith(("recordings/", "papers/")) and path not in sent_or_declined
        if is_sound and own.is_file() and earlier.holds(path, sha256_of(own)):
            stay.append(path)
    stay += [path for path in (making.handed_scans.damaged if making.handed_scans else ()) if path in earlier.files]
    making.kept |= {path: earlier.files[path].sha256 for path in stay}


def _say_update(
    making: Making, earlier: Earlier, withdrawing: Withdrawing, changes: list[list[str]], seen: set[str]
) -> None:
    """The tables of an update: what changed, what the archive keeps, what it is to withdraw."""
    files = {**making.kept, **{path: file.digests["sha256"] for path, file in making.scans.items()}}
    copied = {path.relative_to(making.stage).as_posix(): path for path in (making.stage / "copies").rglob("*.*")}
    files |= {path: sha256_of(source) for path, source in (*making.beside.items(), *copied.items())}
    for path in [path for path in (*making.beside, *copied) if earlier.holds(path, files[path])]:
        making.kept[path] = files[path]
        if path in copied:
            copied.pop(path).unlink()
        else:
            del making.beside[path]
    withdrawn = withdrawing.rows(seen, files)
    is_new = any(not path.startswith(DESCRIBING) for path in (*making.scans, *making.beside, *copied))
    making.withdraws = bool(withdrawn)
    making.has_changed = bool(changes or withdrawn or is_new)
    making.put(
        "metadata/changes.csv",
        "what changed since the earlier transfer, and why",
        as_table([CHANGES, *own_references_as_one(changes)]),
    )
    making.put(FILES, "files of earlier transfers that still belong to it", as_table(held_rows(earlier, making.kept)))
    words = "what of earlier transfers is to be deleted, replaced or returned, and why"
    making.put(WITHDRAW, words, as_table([WITHDRAW_HEADING, *withdrawn]))
    put_request(making, earlier, withdrawn)


def _scans(making: Making, record: Record) -> None:
    """Each scan of a record once."""
    if making.handed_scans is None or record.closed_scans:
        return
    for scan in record.scans:
        path = packed_path(record, scan)
        if making.earlier and making.earlier.holds(path, scan.sha256):
            making.kept[path] = scan.sha256
            continue
        if not making.archive.wants("scans"):  # it keeps what it has
            continue
        file = making.handed_scans.file(scan)
        if file is not None:
            making.scans[path] = file
            continue
        words = f"The scan {scan.path} of {record.number} is not there and is left out."
        making.findings.append(missing_finding(words))
