"""Clues of occasions: a picture of one was taken on its days or close by; pictures of one occasion belong together.

A month either side (`BESIDE`), for the portrait before a wedding, and the snapshot or the party after it: common
practice, no source.
"""

from collections.abc import Iterable, Iterator
from dataclasses import replace

from boxlore.core.evidence.claims import Claim, after, dated, of_event, of_item, weaker
from boxlore.core.evidence.even_years import days
from boxlore.core.evidence.told_dates import told
from boxlore.core.findings import one_line
from boxlore.core.records.events import FamilyEvent
from boxlore.core.records.item_record import Record
from boxlore.core.statements import Sure

BESIDE = days(31)


def clues_of_events(events: Iterable[FamilyEvent]) -> Iterator[Claim]:
    """When the family's own events were."""
    for event in events:
        if event.own and event.when and event.when.edtf:
            claim = Claim(
                words=f"{event.name} was “{one_line(event.words)}”", source=event.said or "the family's time line"
            )
            yield dated(claim, of_event(event.id), event.when.edtf)


def clues(record: Record) -> Iterator[Claim]:
    for view in record.all("occasion"):
        if view.meant:
            yield replace(
                told(view, f"{record.number} is of “{one_line(view.words)}”"),
                sure=weaker(view.sure, Sure.LIKELY),
                limits=after(of_item(record.id), of_event(view.meant), -BESIDE, BESIDE),
            )
