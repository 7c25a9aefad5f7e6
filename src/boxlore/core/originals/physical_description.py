"""An original as a thing, in lines for outputs: its condition and enclosure, and through whose hands it came.

The record given must have passed `core.records.audience.Recipient.seen`, which has taken out whoever is withheld.
"""

from boxlore.core.fields.originals import NOTED_WORDS
from boxlore.core.fields.table import FIELDS
from boxlore.core.records.item_record import Record

PHYSICAL = (("condition", "Condition"), ("attached", "Attached"), ("enclosure", "Enclosure"))
CUSTODY = (("donor", "Given by"), ("owner", "Owner"), ("lender", "Lent by"))


def physical_lines(record: Record) -> list[str]:
    """`Condition: foxing; torn`, one line for each field of PHYSICAL that is told (DACS 3.2, EAD phystech)."""
    return _lines(record, PHYSICAL)


def custody_lines(record: Record) -> list[str]:
    """`Given by: Aino Tamm`, one line for each field of CUSTODY that is told (DACS 5.1, EAD custodhist)."""
    return _lines(record, CUSTODY)


def _lines(record: Record, fields: tuple[tuple[str, str], ...]) -> list[str]:
    """A line for each field; words that begin with `no ` deny something, and are left out."""
    lines: list[str] = []
    for name, label in fields:
        words = [view.words for view in record.all(name) if NOTED_WORDS.read(view.words).so]
        if words:
            lines.append(f"{label}: {'; '.join(words if FIELDS[name].many else words[:1])}")
    return lines
