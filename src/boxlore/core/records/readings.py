"""Readings as text and as values: the one place that knows which kind of reading is which type.

The text is JSON and stands in the store beside a statement, and in a transfer. It is read once, where it comes in
(`store.rows`, `tasks.archive.rebuild`), and written once, where it goes out. A text that cannot be read is no error:
it may be damaged, or made by a later version. It becomes `Unreadable`, which counts as no reading and asks the
keeper, and is written again exactly as it was.
"""

import json
from collections.abc import Callable, Mapping
from functools import lru_cache

from boxlore.core.dates.reading import DateReading
from boxlore.core.errors import WrongUse
from boxlore.core.people.consent import Consent
from boxlore.core.people.names.parts import NameParts
from boxlore.core.people.reference import PersonRef
from boxlore.core.places.reading import PlaceReading
from boxlore.core.statements import Reading, ReadingValue, Unreadable

TYPES: Mapping[str, type[DateReading] | type[PlaceReading] | type[PersonRef] | type[Consent] | type[NameParts]] = {
    "date": DateReading,
    "place": PlaceReading,
    "person": PersonRef,
    "event": PersonRef,
    "consent": Consent,
    "name": NameParts,
}
"""The kinds of reading. A new kind is a row here, with `to_json` and `from_json` in its type."""

_READERS: Mapping[str, Callable[[Mapping[str, object]], ReadingValue]] = {
    kind: value.from_json for kind, value in TYPES.items()
}
_encoded = json.JSONEncoder(ensure_ascii=False).encode


@lru_cache(1024)
def read_value(kind: str, text: str) -> ReadingValue | Unreadable:
    """The value in a reading's text; `Unreadable` for text of another shape or a kind that is not known.

    The newest values are kept: a collection tells the same places, years and people over and over, and a place takes
    longer to read than everything else of a record. A strike calls `forget_values`, for the texts hold told words.
    """
    try:
        return _READERS[kind](_object(json.loads(text)))
    except (KeyError, ValueError, RecursionError):  # an unknown kind, a damaged text, one nested beyond all reading
        return Unreadable(text)


forget_values = read_value.cache_clear
"""Let go of every text that was read."""


def _object(data: object) -> dict[str, object]:
    if not isinstance(data, dict):
        raise ValueError("A reading is a JSON object.")
    return data


def value_text(value: ReadingValue | Unreadable) -> str:
    """The text of a value; of one that could not be read the very text."""
    return value.text if isinstance(value, Unreadable) else _encoded(value.to_json())


def reading_text(reading: Reading) -> str:
    """The text of a reading for the store. Raises WrongUse where the value is not of the reading's kind."""
    if not isinstance(reading.value, (TYPES.get(reading.kind, Unreadable), Unreadable)):
        raise WrongUse(f"A reading of the kind “{reading.kind[:40]}” cannot hold a {type(reading.value).__name__}.")
    return value_text(reading.value)
