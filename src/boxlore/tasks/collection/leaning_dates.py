"""Dates that lean on a life or an event (“when Liisi was five”), where the date of one is kept from somebody: what they
were read as would tell it.
"""

from collections.abc import Callable
from functools import cache

from boxlore.core.dates import phrases
from boxlore.core.people.person import Registry
from boxlore.core.records.audience import Recipient
from boxlore.core.statements import Kind
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.settings import phrase_settings


def keeps_a_date(collection: Collection, recipient: Recipient, known: Registry) -> bool:
    """Whether a date of somebody's life, or of an event of the family, is told and kept from the recipient."""
    everyone = collection.people()
    for ident, person in known.items():
        whole = everyone[ident]
        if (whole.born, whole.died, whole.married) != (person.born, person.died, person.married):
            return True
    events = collection.store.subjects(Kind.EVENT)
    return any(row.field == "date" and not recipient.may_know(row) for _, rows in events for row, _ in rows)


def leaning(collection: Collection) -> Callable[[str], bool]:
    """Asks whether words say no date by themselves, once of each."""
    settings = phrase_settings(collection.settings)
    known = phrases.KnownDates(this_year=collection.clock.today().year)
    return cache(lambda words: phrases.read(words, settings, known).edtf is None)
