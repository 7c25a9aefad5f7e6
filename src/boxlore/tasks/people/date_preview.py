"""How a collection reads a date that nobody keeps: as `tell` would, of one photograph and by one narrator."""

from collections.abc import Callable
from dataclasses import replace
from functools import partial

from boxlore.core.dates.phrases import PhraseSettings
from boxlore.core.dates.reading import DateReading
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.records_for_outputs import record_of
from boxlore.tasks.collection.settings import phrase_settings
from boxlore.tasks.people.registry import find_person
from boxlore.tasks.telling.understanding import NOTHING_AROUND, Understanding, around_record, readings_of


def reader_of(
    collection: Collection, narrator: str, item: str, meant: Callable[[PhraseSettings], PhraseSettings]
) -> Callable[[str], DateReading]:
    """What reads a date: `narrator` by name or id and `item` by number or mark, each may be empty; `meant` is what is
    told otherwise than the settings say. Raises WrongUse for a person or an item that is not here."""
    teller = find_person(collection, narrator).id if narrator else ""
    beside = NOTHING_AROUND
    if item:
        record = record_of(collection, find_item(collection, item).id)
        told = partial(readings_of, collection, record.id)
        beside = around_record(record, collection.people(), readings=told)
    beside = replace(beside, narrator=teller)
    settings = meant(beside.settings(phrase_settings(collection.settings)))
    understanding = Understanding(collection)
    return lambda words: understanding.date(words, beside, settings)[0]
