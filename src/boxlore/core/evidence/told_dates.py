"""Clues of the dates that are told of a picture, all of them: those in force, and those that somebody else told.

What a scan's file says is about the scan, and is left out.
"""

from collections.abc import Iterator
from dataclasses import replace

from boxlore.core.evidence.claims import Claim, dated, of_item
from boxlore.core.records.item_record import Record, StatementView
from boxlore.core.statements import Said, Sure


def clues(record: Record) -> Iterator[Claim]:
    for view in record.all("date"):
        if view.date and view.date.edtf and view.source.said is not Said.FILE and view.sure is not Sure.NOT_KNOWN:
            yield dated(
                told(view, f"{record.number} is dated “{one_line(view.words)}”"), of_item(record.id), view.date.edtf
            )


def told(view: StatementView, words: str) -> Claim:
    """A claim of a statement, with who says it."""
    teller = view.source.ref if view.source.said is Said.NARRATOR else ""
    return Claim(words=words, source=replace(view, sure=Sure.SURE).speaker, sure=view.sure, teller=teller)


def one_line(words: str) -> str:
    """The words on one line, at most 60 letters."""
    line = " ".join(words.split())
    return line if len(line) <= 60 else f"{line[:59]}…"
