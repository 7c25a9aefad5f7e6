"""The first pass over the items of a part: what there is, which scans go, how each stands against a transfer before."""

from boxlore.core.crosswalk.scan_file_names import packed_path
from boxlore.core.findings import Finding, Severity
from boxlore.core.records.item_record import Record
from boxlore.disk.digests import sha256_of
from boxlore.exports.inventory import as_csv, as_table
from boxlore.tasks.archive.making import Making
from boxlore.tasks.archive.transfer_context import thing_views
from boxlore.tasks.archive.transfer_updates import (
    CHANGES,
    DESCRIBING,
    FILES,
    HEADING,
    STATE,
    Earlier,
    change_row,
    gone_rows,
    held_rows,
    rest_row,
    state_row,
)
from boxlore.tasks.archive.withdrawing import HEADING as WITHDRAW_HEADING
from boxlore.tasks.archive.withdrawing import TABLE as WITHDRAW
from boxlore.tasks.archive.withdrawing import Withdrawing


def count_items(making: Making) -> None:
    """One pass over all: what there is, which scans go, how each item stands against an earlier transfer."""
    if making.earlier:
        _choose(making, making.earlier)
    withdrawing = Withdrawing(making.collection, making.earlier or Earlier(), making.seen.to.is_public)
    changes: list[list[str]] = []
    seen: set[str] = set()
    with making.open(STATE, "what this part says of each item, for a later update") as out:
        out.writelines(as_csv([HEADING]))
        for record in making.records():
            seen.add(record.id)
            record = _taken(making, record)
            row = state_row(record, making.facts)
            out.writelines(as_csv([row]))
            withdrawing.compare(record.number, record.id, row[-1].split())
            _note_change(making, row, changes)
            making.holding.add(record)
            making.people |= {shown.person for shown in record.people if shown.person}
        people = None if making.is_whole else making.people
        things = thing_views(making.collection, making.seen, people)
        rest = rest_row(making.collection.id, [view.statement for _, _, views in things for view in views])
        out.writelines(as_csv([rest]))
        withdrawing.compare("", rest[1], rest[-1].split())
        if making.earlier and rest[1] in making.earlier.items:  # an older version did not note it
            _note_change(making, rest, changes)
    making.findings += making.handed_scans.findings if making.handed_scans else []
    making.items = [ident for ident in making.items if ident in seen]
    for record in making.records():
        _scans(making, record)
    if making.earlier:
        _say_update(making, making.earlier, withdrawing, [*changes, *gone_rows(making.earlier, seen)], seen)


def _choose(making: Making, earlier: Earlier) -> None:
    """The items of an update: all that were handed over before, and what is chosen as it was then. What the archive
    did not get is no longer there only if it is in no selection either."""
    chosen = {record.id for record in making.seen.handed_over(making.selection, making.items)}
    making.items = [ident for ident in making.items if ident in chosen or ident in earlier.items]


def _taken(making: Making, record: Record) -> Record:
    """The record of an update with those of its scans taken that the archive has not got yet."""
    if making.earlier is None or making.handed_scans is None or record.closed_scans:
        return record
    if all(making.earlier.holds(packed_path(record, scan), scan.sha256) for scan in record.scans):
        return record
    return making.handed_scans.take(record)


def _note_change(making: Making, row: list[str], changes: list[list[str]]) -> None:
    if making.earlier:
        what, fields = making.earlier.changed(row)
        if what != "same":
            changes.append(change_row(making.collection, row, what, fields, making.earlier.time))


def _say_update(
    making: Making, earlier: Earlier, withdrawing: Withdrawing, changes: list[list[str]], seen: set[str]
) -> None:
    """The tables of an update: what changed, what the archive keeps, what it is to withdraw."""
    for path, held in earlier.files.items():
        if path.startswith(("recordings/", "papers/", "copies/")) and not making.archive.wants(_WANTED[path[:4]]):
            making.kept[path] = held.sha256  # it asks for no more of them, and may keep what it has
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
    making.has_changed = bool(changes or withdrawn or is_new)
    making.put(
        "metadata/changes.csv", "what changed since the earlier transfer, and why", as_table([CHANGES, *changes])
    )
    making.put(FILES, "files of earlier transfers that still belong to it", as_table(held_rows(earlier, making.kept)))
    words = "what of earlier transfers is to be deleted or replaced, and why"
    making.put(WITHDRAW, words, as_table([WITHDRAW_HEADING, *withdrawn]))


_WANTED = {"reco": "recordings", "pape": "recordings", "copi": "copies"}
"""The first letters of a folder of the payload -> the part of a transfer that an archive takes it by."""


def _scans(making: Making, record: Record) -> None:
    """Each scan of a record once."""
    if making.handed_scans is None or record.closed_scans:
        return
    for scan in record.scans:
        path = packed_path(record, scan)
        if making.earlier and making.earlier.holds(path, scan.sha256):
            making.kept[path] = scan.sha256
            continue
        file = making.handed_scans.file(scan)
        if file is not None:
            making.scans[path] = file
            continue
        message = f"The scan {scan.path} of {record.number} is not there and is left out."
        source = "fixity of scans: common practice, no source"
        making.findings.append(Finding(rule="scan.missing", severity=Severity.ERROR, message=message, source=source))
