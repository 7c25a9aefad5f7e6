"""Series by the keeper's own arrangement: what an archive keeps together because whoever made the collection did.

DACS 3.2 and ISAD(G) 3.3.4 (from memory): the arrangement of whoever kept the collection is kept and said; where
things lie is told of each item besides. Where no series is told, a box is one.
"""

import re

from boxlore.core.records.item_record import Record
from boxlore.core.statements import fold

SeriesKey = tuple[bool, int, str]
"""Sorts series, and is the same for the same series; that of what is in none sorts last."""
_NUMBERED = re.compile(r"\d{1,9}(?!\d)")


def series_words(record: Record) -> str:
    """The series that an item was put in; '' for none."""
    return record.words("series").strip()


def series_key(words: str) -> SeriesKey:
    """Series that begin with a number are in the order of their numbers, before the others in that of their letters."""
    number = _NUMBERED.match(words)
    return not words, int(number[0]) if number else 10**9, fold(words)
