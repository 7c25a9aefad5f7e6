"""What words were read as: a date of EDTF, or none and why. A reading proposes; the words stay as they were told.

The expression is the one truth of a reading. Its level, bounds and display are worked out from it each time, and what
JSON says of them is not believed, so that they cannot disagree. `to_json` is the one form outside the program: what
`boxlore date --json` prints, what stands beside a statement in the store, and what a transfer carries.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from functools import lru_cache
from typing import NamedTuple

from boxlore.core.dates import edtf as standard
from boxlore.core.dates.anniversary import years_on
from boxlore.core.dates.display import display
from boxlore.core.dates.edtf_values import Day, Edtf
from boxlore.core.errors import TextFault

NO_DATE = standard.Checked(standard.State.WRONG, 1, "These words are not read as a date; they are kept as told.")


@dataclass(slots=True, unsafe_hash=True)
class DateReading:
    """What was understood of `text`. `edtf` is None where no date was, and only then `fault` says why and where. Nobody
    changes one; it is not frozen for the reason that a token is not (`core.dates.lexer`).

    `ask` is the question that the keeper must answer (which century, which order of day and month), or None;
    `alternatives` are the other dates that may be meant, as EDTF.
    """

    text: str
    edtf: Edtf | None = None
    ask: str | None = None
    alternatives: tuple[str, ...] = ()
    fault: standard.Checked = NO_DATE

    @classmethod
    def from_edtf(cls, text: str) -> "DateReading":
        """The date that EDTF text says by itself. Raises TextFault for text that is not EDTF."""
        return cls(text, standard.parse(text))

    @property
    def state(self) -> standard.State:
        """Valid with a date; else whether the text is wrong, or may become a date when more is typed."""
        return standard.State.VALID if self.edtf else self.fault.state

    @property
    def earliest(self) -> Day | None:
        """The first day it can mean, qualifiers ignored; None if unbounded or no date."""
        return _follows(self.edtf.text).earliest if self.edtf else None

    @property
    def latest(self) -> Day | None:
        """The last day it can mean, qualifiers ignored; None if unbounded or no date."""
        return _follows(self.edtf.text).latest if self.edtf else None

    @property
    def first_year(self) -> int | None:
        """The year it begins in; None where it has no beginning, or none of the years 0 to 9999."""
        return _plain_year(self.earliest)

    @property
    def last_year(self) -> int | None:
        """The year it ends in; None where it has no end, or none of the years 0 to 9999."""
        return _plain_year(self.latest)

    @property
    def display(self) -> str:
        """The date in words, as DACS shows it; empty for no date."""
        return _follows(self.edtf.text).display if self.edtf else ""

    @property
    def choices(self) -> tuple[str, ...]:
        """All that may be meant, as EDTF: what it was read as first, or last where that is all the others together."""
        if self.edtf is None:
            return self.alternatives
        whole = self.edtf.text
        first = () if whole[0] in "[{" and len(self.alternatives) > 1 else (whole,)
        return tuple(dict.fromkeys((*first, *self.alternatives, whole)))

    @property
    def exact(self) -> bool:
        """Whether it is one date told without doubt: no qualifier, no open digit, no set, no interval."""
        return self.edtf is not None and not any(mark in self.edtf.text for mark in "~?%X[{/")

    @property
    def latest_day(self) -> date | None:
        """The last day it may mean in a life: five years after its end where it is approximate or uncertain, ten
        where it is both (“ca.” as five years: Yale, Rhode Island Furniture Archive note). None where it has no end,
        or ends outside the years 1 to 9999."""
        last = self.latest.calendar_date if self.latest else None
        return years_on(last, self._years_about) if last else None

    @property
    def earliest_day(self) -> date | None:
        """The first day it may mean in a life, as `latest_day` has the last. None where it has no beginning."""
        first = self.earliest.calendar_date if self.earliest else None
        return years_on(first, -self._years_about) if first else None

    @property
    def _years_about(self) -> int:
        text = self.edtf.text if self.edtf else ""
        return 10 if "%" in text else 5 if "~" in text or "?" in text else 0

    def to_json(self) -> dict[str, object]:
        """The reading as a JSON object; bounds are ISO days or null."""
        return {
            "text": self.text,
            "edtf": self.edtf.text if self.edtf else None,
            "state": str(self.state),
            "level": self.edtf.level if self.edtf else None,
            "earliest": _iso(self.earliest),
            "latest": _iso(self.latest),
            "display": self.display or None,
            "ask": self.ask,
            "alternatives": list(self.alternatives),
            "error": None if self.edtf else {"message": self.fault.message, "column": self.fault.column},
        }

    @classmethod
    def from_json(cls, data: Mapping[str, object]) -> "DateReading":
        """Inverse of `to_json`. Only text, edtf, state, ask, alternatives and error are read; the rest follows.

        A member that is absent counts as null, but `edtf` must be there. Raises ValueError for another shape.
        """
        text, expression, ask = data.get("text") or "", data.get("edtf", 0), data.get("ask")
        alternatives = data.get("alternatives") or []
        if not (isinstance(text, str) and isinstance(ask, str | None) and isinstance(alternatives, list)):
            raise ValueError("The text, the question or the alternatives of a date's reading have another shape.")
        if not all(isinstance(alternative, str) for alternative in alternatives):
            raise ValueError("An alternative of a date's reading is not EDTF text.")
        if not isinstance(expression, str | None):
            raise ValueError("A date's reading says neither an EDTF date nor that there is none.")
        if not expression:
            return cls(text, None, ask, tuple(alternatives), _fault(data))
        try:
            return cls(text, standard.parsed(expression), ask, tuple(alternatives))
        except TextFault as fault:
            raise ValueError(f"The date of a reading is not EDTF: {fault.why}.") from fault


class _Follows(NamedTuple):
    """What follows from an expression."""

    earliest: Day | None
    latest: Day | None
    display: str


@lru_cache(4096)
def _follows(text: str) -> _Follows:
    edtf = standard.parsed(text)
    return _Follows(edtf.earliest, edtf.latest, display(edtf))


def _fault(data: Mapping[str, object]) -> standard.Checked:
    """Why there is no date, from a reading's JSON."""
    state = standard.State(str(data.get("state") or NO_DATE.state))
    error = data.get("error") or {"message": NO_DATE.message, "column": NO_DATE.column}
    if state is standard.State.VALID or not isinstance(error, Mapping):
        raise ValueError("A reading without a date is called valid, or its error is not an object.")
    message, column = error.get("message") or "", error.get("column") or 0
    if not (isinstance(message, str) and isinstance(column, int)):
        raise ValueError("The error of a date's reading has another shape.")
    return standard.Checked(state, column, message)


def _iso(day: Day | None) -> str | None:
    return None if day is None else str(day)


def _plain_year(day: Day | None) -> int | None:
    return day.year if day is not None and 0 <= day.year <= 9999 else None
