"""What people say of a date → EDTF. A phrase proposes; it never decides silently, and its words are kept.

Each reading carries the EDTF, the words it rests on, a question where the keeper must choose (century, day
order, which war, whose holiday) and the alternatives. Words that mean no date give none.
Conventions (ours unless a source is named): about → `~`; probably → `?`; early, mid and late in a decade are
its years 0-3, 4-6 and 7-9; a picture is one moment, so "between" is one of a set and "from … to" an interval;
before and after include their date, as BEF and AFT of FamilySearch GEDCOM 7.0.18.
"""

from dataclasses import dataclass, field, replace
from types import MappingProxyType

from boxlore.core.dates import edtf as standard
from boxlore.core.dates.context import DateContext
from boxlore.core.dates.forms import read_form
from boxlore.core.dates.reading import NO_DATE, DateReading
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


def read(text: str, settings: PhraseSettings = AS_TOLD, known: KnownDates = NOTHING_KNOWN) -> DateReading:
    """Read one date as people say it. Never raises for any text."""
    if len(text) > MOST_LETTERS:
        return _no_date(text, "Too long for a date; kept as told.")
    context = DateContext(settings.order, settings.hemisphere, settings.countries, known.births, known.events)
    proposed = read_form(simplify(text), context)
    if proposed is None:
        return _no_date(text)
    if not proposed.edtf:
        return _no_date(text, proposed.ask, proposed.alternatives)
    try:
        return DateReading(text, standard.parse(proposed.edtf), proposed.ask, proposed.alternatives)
    except TextFault as fault:
        return _no_date(text, f"There is no such date: {fault.why[0].lower()}{fault.why[1:]}. Which is meant?")


def _no_date(text: str, ask: str | None = None, alternatives: tuple[str, ...] = ()) -> DateReading:
    fault = NO_DATE if text.strip() else replace(NO_DATE, state=standard.State.INCOMPLETE)
    return DateReading(text, None, ask, alternatives, fault)


def read_strict(text: str) -> DateReading:
    """Read one date that must be EDTF as it stands; no phrases. Never raises for any text."""
    checked = standard.check(text)
    if checked.state is standard.State.VALID:
        return DateReading.from_edtf(text)
    column, message = checked.column or len(text) + 1, checked.message or "More must follow."
    return DateReading(text, fault=standard.Checked(checked.state, column, message))
