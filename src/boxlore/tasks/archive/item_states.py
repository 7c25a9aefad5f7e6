"""The state of each item as a part hands it over: `metadata/state.csv`, against which a later update is held.

For each item it has a short digest of each of its fields as that part shows them, the day on which its original was
handed over, and the ids of the statements that it was made of. The row of all that belongs to no item has no number.
"""

import hashlib
from collections.abc import Collection, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace

from boxlore.core.crosswalk.dublin_core import ROWS, CollectionFacts
from boxlore.core.records.item_record import Record, StatementView, every_told

STATE = "metadata/state.csv"
FIELDS = (*dict.fromkeys(row.field for row in ROWS), "statements")
_ORIGINAL = "Original"
"""Of an item in `state.csv`: the day on which its original was handed over, and whether it was asked back."""
_ASKED_BACK = "asked back"
HEADING = ("Number", "Identifier", *FIELDS, _ORIGINAL, "Told")


def state_row(record: Record, facts: CollectionFacts, also: Sequence[StatementView] = ()) -> list[str]:
    """The item's number, id, a digest of each field, and the ids of its statements; `also` goes with it apart."""
    digests = dict.fromkeys(FIELDS, "")
    facts = replace(facts, accession="")  # it is told of the whole: no item has changed by it
    for row in ROWS:
        values = [*row.values(record, facts), *(row.detailed(record, facts) if row.detailed else ())]
        digests[row.field] = _digest(digests[row.field], *(f"{value.words}\0{value.language}" for value in values))
    told = [*every_told(record), *also]
    digests["statements"] = _digest("", *(f"{view.statement} {view.sure} {view.audience}" for view in told))
    ids = " ".join(view.statement for view in told)
    return [record.number, record.id, *digests.values(), _original_words(record.id, facts), ids]


def said_now(record: Record, facts: CollectionFacts, fields: Collection[str]) -> Iterator[tuple[str, str]]:
    """(field, what this part says of it) of each of these fields that says anything in words."""
    for field in dict.fromkeys(row.field for row in ROWS if row.field in fields):
        values = (value.words for row in ROWS if row.field == field for value in row.values(record, facts))
        if words := " | ".join(dict.fromkeys(filter(str.strip, values))):
            yield field, words


def _original_words(item: str, facts: CollectionFacts) -> str:
    """`2026-11-25`, `2026-11-25 asked back`; '' where the original was not handed over."""
    if day := facts.asked_back(item):
        return f"{day} {_ASKED_BACK}"
    return facts.given_on.get(item, facts.on_day.isoformat()) if facts.gives(item) else ""


def rest_row(collection: str, statements: Sequence[str]) -> list[str]:
    """The row of all that is told of people, events, places and sittings: it has no number."""
    digests = dict.fromkeys(FIELDS, "")
    digests["statements"] = _digest("", *sorted(statements))
    return ["", collection, *digests.values(), "", " ".join(statements)]


def _digest(*words: str) -> str:
    return hashlib.sha256("\x1f".join(words).encode("utf-8", "replace")).hexdigest()[:12]


@dataclass(frozen=True, slots=True)
class EarlierItem:
    """An item as it was handed over: its number, its digests by field, the ids of its statements."""

    number: str
    digests: Mapping[str, str]
    told: tuple[str, ...] = ()
    given_on: str = ""
    """The day on which its original was handed over; '' for not."""
    is_asked_back: bool = False


def read_item(row: Mapping[str, str], day: str) -> EarlierItem:
    """An item of an earlier state. An older version did not note its original: it was handed over on the `day` of the
    transfer, if the originals were and anything is told of the item, as of none that the family keeps."""
    digests = {name: row.get(name, "") for name in FIELDS}
    told = tuple(row.get("Told", "").split())
    given_on, _, asked = row.get(_ORIGINAL, day if told else "").partition(" ")
    return EarlierItem(row.get("Number", ""), digests, told, given_on, asked == _ASKED_BACK)
