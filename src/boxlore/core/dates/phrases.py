"""What people say of a date → EDTF. A phrase proposes; it never decides silently, and its words are kept.

Each answer carries the EDTF, the words it rests on, a question where the keeper must choose (century, day
order, which war, whose holiday) and the alternatives. Words that mean no date give none.
Conventions (ours unless a source is named): about → `~`; probably → `?`; early, mid and late in a decade are
its years 0-3, 4-6 and 7-9; a picture is one moment, so "between" is one of a set and "from … to" an interval;
before and after include their date, as BEF and AFT of FamilySearch GEDCOM 7.0.18.
"""

from dataclasses import dataclass, field
from types import MappingProxyType
from typing import Any

from boxlore.core.dates import edtf as standard
from boxlore.core.dates.context import DateContext
from boxlore.core.dates.display import display
from boxlore.core.dates.edtf_values import Day, Edtf
from boxlore.core.dates.forms import read_form
from boxlore.core.dates.words import simplify
from boxlore.core.errors import TextFault

READER_VERSION = "dates 1"

MOST_LETTERS = 300
"""A longer text is a story, not a date: it is kept, and not read."""


@dataclass(frozen=True, slots=True)
class PhraseSettings:
    """How this collection means its dates: day order (dmy, mdy or None to ask), hemisphere, countries."""

    order: str | None = None
    hemisphere: str = "north"
    countries: tuple[str, ...] = ()


AS_TOLD = PhraseSettings()


@dataclass(frozen=True, slots=True)
class KnownDates:
    """Dates already told: births of people and dates of events, by folded name, as EDTF."""

    births: MappingProxyType[str, str] = field(default_factory=lambda: MappingProxyType({}))
    events: MappingProxyType[str, str] = field(default_factory=lambda: MappingProxyType({}))


NOTHING_KNOWN = KnownDates()


@dataclass(frozen=True, slots=True)
class PhraseReading:
    """What was understood. `edtf` is None where no date was; `ask` is a question, or None."""

    text: str
    edtf: Edtf | None
    ask: str | None = None
    alternatives: tuple[str, ...] = ()
    note: str = ""


def read(text: str, settings: PhraseSettings = AS_TOLD, known: KnownDates = NOTHING_KNOWN) -> PhraseReading:
    """Read one date as people say it. Never raises for any text."""
    if len(text) > MOST_LETTERS:
        return PhraseReading(text, None, "Too long for a date; kept as told.")
    context = DateContext(settings.order, settings.hemisphere, settings.countries, known.births, known.events)
    proposed = read_form(simplify(text), context)
    if proposed is None:
        return PhraseReading(text, None)
    if not proposed.edtf:
        return PhraseReading(text, None, proposed.ask, proposed.alternatives, proposed.note)
    try:
        return PhraseReading(text, standard.parse(proposed.edtf), proposed.ask, proposed.alternatives, proposed.note)
    except TextFault as fault:
        return PhraseReading(
            text, None, f"There is no such date: {fault.why[0].lower()}{fault.why[1:]}. Which is meant?"
        )


def answer(
    text: str, settings: PhraseSettings = AS_TOLD, known: KnownDates = NOTHING_KNOWN, *, edtf_only: bool = False
) -> dict[str, Any]:
    """The answer as one JSON object; bounds are ISO days or null, qualifiers ignored."""
    if edtf_only:
        return _strict(text)
    reading = read(text, settings, known)
    if reading.edtf is None:
        return {
            "text": text,
            "edtf": None,
            "state": "wrong" if text.strip() else "incomplete",
            "level": None,
            "earliest": None,
            "latest": None,
            "display": None,
            "ask": reading.ask,
            "alternatives": list(reading.alternatives),
            "error": {"message": "These words are not read as a date; they are kept as told.", "column": 1},
        }
    return _valid(text, reading.edtf) | {"ask": reading.ask, "alternatives": list(reading.alternatives)}


def _valid(text: str, edtf: Edtf) -> dict[str, Any]:
    return {
        "text": text,
        "edtf": edtf.text,
        "state": "valid",
        "level": edtf.level,
        "earliest": _iso(edtf.earliest),
        "latest": _iso(edtf.latest),
        "display": display(edtf),
        "ask": None,
        "alternatives": [],
        "error": None,
    }


def _iso(day: Day | None) -> str | None:
    return None if day is None else str(day)


def _strict(text: str) -> dict[str, Any]:
    found = standard.check(text)
    if found.state is standard.State.VALID:
        return _valid(text, standard.parse(text))
    message = found.message or "More must follow."
    empty = dict.fromkeys(("edtf", "level", "earliest", "latest", "display", "ask"))
    column = found.column or len(text) + 1
    return {
        "text": text,
        **empty,
        "state": str(found.state),
        "alternatives": [],
        "error": {"message": message, "column": column},
    }
