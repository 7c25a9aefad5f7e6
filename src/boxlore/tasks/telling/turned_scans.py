"""Scans that are turned, or noted as an altered version (coloured, retouched). No file is written to.

A turn belongs to what of the scan shows the item, for the prints on one sheet may lie each another way; markers stay
where they are on the stored picture and are seen turned with it, and so do all outputs.
"""

from collections.abc import Iterator
from dataclasses import replace
from typing import Protocol

from boxlore.core.errors import WrongUse
from boxlore.core.fields.pictures import QUARTERS, SHOWS_WORDS, Shows
from boxlore.core.findings import several
from boxlore.core.records.item_record import ALTERED, AS_SCANNED, Record, ScanFile
from boxlore.core.statements import Kind, Statement, Subject
from boxlore.tasks.collection.opening import Act, Collection
from boxlore.tasks.collection.what_scans_show import shown_by

IN_WORDS = {"recto": "front", "verso": "back"}
"""What the sides are called."""
SIDES = {words: side for side, words in IN_WORDS.items()}


def scan_meant(record: Record, side: str = "recto", *, altered: bool = False) -> ScanFile:
    """The one scan of that side, as scanned or altered. Raises WrongUse where there is none, or more than one."""
    role = ALTERED if altered else AS_SCANNED
    scans = [scan for scan in record.scans if scan.side == side and (scan.role == ALTERED) is altered]
    if not scans:
        there = ", ".join(f"{IN_WORDS[scan.side]} ({scan.role})" for scan in record.scans) or "no scan"
        raise WrongUse(f"{record.number} has no {IN_WORDS[side]} {role}: {there}.", "Name one that it has.")
    if len(scans) > 1:
        raise WrongUse(
            f"{record.number} has {several(len(scans), 'scan')} of its {IN_WORDS[side]}.",
            "In the sitting, F2 shows each of them large, and r turns the one that is shown.",
        )
    return scans[0]


def turn_scan(act: Act, record: Record, scan: ScanFile, by: int) -> int:
    """Turn what shows the item by so many degrees to the right; returns by how many it is turned now in all.

    Raises WrongUse for what is no quarter turn.
    """
    if by not in QUARTERS:
        raise WrongUse(f"A scan is turned by 90, 180 or 270 degrees, not by {by}.")
    turn = (scan.turn + by) % 360
    for statement, shows in _shown_as(act, record, scan):
        act.state(statement.subject, "shows", SHOWS_WORDS.write(replace(shows, turn=turn)), replaces=statement.id)
    return turn


def _shown_as(act: Act, record: Record, scan: ScanFile) -> Iterator[tuple[Statement, Shows]]:
    """What says that a scan shows an item so: the same side, part and turn."""
    for statement, shows in shown_by(act.collection, scan.id):
        area = shows.area.numbers if shows.area else ()
        if (shows.item, shows.side, area, shows.turn) == (record.id, scan.side, scan.area, scan.turn):
            yield statement, shows


def turn_words(turn: int) -> str:
    """How a picture stands that is turned by so many degrees in all."""
    return f"it is seen turned by {turn}° to the right; its file is as it was." if turn else "it is seen as it lies."


def note_altered(act: Act, record: Record, scan: ScanFile, *, altered: bool) -> None:
    """Note that a scan is an altered version (coloured, retouched), or that it is as it was scanned after all.

    Of a part of a sheet it is noted of that part alone, for the others may be as they were.
    """
    role = ALTERED if altered else AS_SCANNED
    if scan.role == role:
        return
    if scan.area:
        for statement, shows in _shown_as(act, record, scan):
            act.state(statement.subject, "shows", SHOWS_WORDS.write(replace(shows, role=role)), replaces=statement.id)
        return
    about = Subject(Kind.SCAN, scan.id)
    stood = [statement for statement, _ in act.collection.store.statements(about) if statement.field == "role"]
    act.state(about, "role", role, replaces=stood[-1].id if stood else "")


class Sits(Protocol):
    """The sitting in which a picture is turned, or noted as altered."""

    collection: Collection

    def finish(self, act: Act, item: str) -> None: ...


def turn_shown(sitting: Sits, record: Record, scan: ScanFile) -> None:
    """Turn a picture by a quarter to the right, as one undoable step."""
    act = sitting.collection.act("picture turned")
    turn_scan(act, record, scan, 90)
    sitting.finish(act, record.id)


def alter_shown(sitting: Sits, record: Record, scan: ScanFile) -> None:
    """Note that a picture is an altered version, or is none where it is noted so, as one undoable step."""
    act = sitting.collection.act("picture noted as altered")
    note_altered(act, record, scan, altered=scan.role != ALTERED)
    sitting.finish(act, record.id)
