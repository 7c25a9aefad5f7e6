"""What is said outside of an original as a thing: its condition and enclosure, and through whose hands it came.

Taken from a record that the audience has passed (`core.records.audience.Recipient.seen`), so a lender who is
withheld is not here.
"""

from boxlore.core.fields.table import FIELDS
from boxlore.core.records.in_force import Record

PHYSICAL = (("condition", "Condition"), ("attached", "Attached"), ("enclosure", "Enclosure"))
CUSTODY = (("donor", "Given by"), ("owner", "Owner"), ("lender", "Lent by"))


def physical_lines(record: Record) -> list[str]:
    """`Condition: foxing; torn`, one line for each that is told (DACS 3.2, EAD phystech)."""
    return _lines(record, PHYSICAL)


def custody_lines(record: Record) -> list[str]:
    """`Given by: Aino Tamm`, one line for each that is told (DACS 5.1, EAD custodhist)."""
    return _lines(record, CUSTODY)


def _lines(record: Record, fields: tuple[tuple[str, str], ...]) -> list[str]:
    found: list[str] = []
    for name, label in fields:
        words = [told.words for told in record.all(name) if not told.words.startswith("no ")]
        if words:
            found.append(f"{label}: {'; '.join(words if FIELDS[name].many else words[:1])}")
    return found
