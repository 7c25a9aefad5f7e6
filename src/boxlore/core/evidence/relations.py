"""Clues of relations between items: what was taken on one day, and what shows the same picture.

A date is that of the taking, not of the print: a copy or another print of a picture has the picture's own day.
"""

from collections.abc import Iterator, Mapping

from boxlore.core.evidence.claims import Claim, after, of_item
from boxlore.core.records.item_record import Record
from boxlore.core.statements import Sure

SAME_TAKING: Mapping[str, str] = {
    "same_day": "was taken on the same day as",
    "same_picture": "is the same picture as",
    "print_from": "is a print from the negative",
    "negative_of": "is the negative of",
    "detail_of": "is a detail of",
}
"""Kinds of relation by which two items have one day. What was attached to a picture may be of any day."""


def clues(record: Record, ids: Mapping[str, str]) -> Iterator[Claim]:
    """`ids` are those of items by their numbers. Told from one end, so that each relation is one claim."""
    for relation in record.related:
        other = ids.get(relation.number)
        if relation.kind in SAME_TAKING and not relation.reverse and other is not None and other != record.id:
            yield Claim(
                words=f"{record.number} {SAME_TAKING[relation.kind]} {relation.number}",
                source="a relation told of them",
                sure=Sure.LIKELY,
                limits=after(of_item(record.id), of_item(other), 0, 0),
            )
