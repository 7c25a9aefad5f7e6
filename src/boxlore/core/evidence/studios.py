"""Clues of a studio: the pictures of one photographer lie within a working life, learnt from those that are dated.

Fifty years (`WORKING`) from the first picture of a studio to its last, father and son together: common practice, no
source. Only a picture far from all others is bounded by it; it is a guess.
"""

from collections.abc import Iterator
from dataclasses import replace

from boxlore.core.evidence.claims import Claim, of_item, weaker, years_after
from boxlore.core.evidence.told_dates import told
from boxlore.core.findings import one_line
from boxlore.core.records.item_record import Record
from boxlore.core.statements import Sure, fold

WORKING = 50
"""Years."""


def clues(record: Record) -> Iterator[Claim]:
    for shown in record.shown("photographer"):
        studio = f"studio {shown.person or fold(shown.told.words.strip())}"
        yield replace(
            told(
                shown.told, f"{record.number} is of {one_line(shown.name)}, and a studio worked {WORKING} years at most"
            ),
            sure=weaker(shown.sure, Sure.GUESS),
            limits=years_after(of_item(record.id), studio, 0, WORKING),
        )
