"""Clues of the dates that are told of a picture, all of them: those in force, and those that somebody else told.

What a scan's file says is about the scan, and is left out. So is what cannot be beside the date in force, where the
keeper has settled for that; and what the keeper has weighed and left open is one claim, that it is one of them: nobody
is asked twice.
"""

from collections.abc import Iterator
from dataclasses import replace

from boxlore.core.dates.conflicts import can_both_be
from boxlore.core.evidence.claims import Claim, dated, of_item
from boxlore.core.findings import one_line
from boxlore.core.records.item_record import Record, StatementView
from boxlore.core.statements import Said, Sure


def clues(record: Record) -> Iterator[Claim]:
    settled = None if any(conflict.field == "date" for conflict in record.conflicts) else record.date
    left_open = any(conflict.field == "date" for conflict in record.undecided)
    first = record.first("date")
    for view in (first,) if left_open and first else record.all("date"):
        edtf = view.date.edtf if view.date else None
        if edtf is None or view.source.said is Said.FILE or view.sure is Sure.NOT_KNOWN:
            continue
        if settled is None or can_both_be(edtf, settled):
            yield dated(told(view, f"{record.number} is dated “{one_line(view.words)}”"), of_item(record.id), edtf)


def told(view: StatementView, words: str) -> Claim:
    """A claim of a statement, with who says it."""
    teller = view.source.ref if view.source.said is Said.NARRATOR else ""
    return Claim(words=words, source=replace(view, sure=Sure.SURE).speaker, sure=view.sure, teller=teller)
