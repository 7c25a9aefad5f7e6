"""The four for whom something is made, and which of the levels of an audience each may see.

`archive:2060-01-01` means: closed in an archive until that day, and from that day on for anyone; `family+archive`, with
a day or without one, that the family has it meanwhile. Nobody outside these records asks `may_see`: it is the smallest
part of the answer that `core.records.audience.Recipient` gives.
"""

from datetime import date
from enum import StrEnum
from functools import lru_cache

from boxlore.core.errors import WrongUse
from boxlore.core.fields.audiences import SHARED, read_audience


class To(StrEnum):
    """For whom an output is made."""

    KEEPER = "keeper"
    FAMILY = "family"
    OUTSIDE = "outside"
    ARCHIVE = "archive"
    """The closed part of a transfer."""

    @property
    def is_public(self) -> bool:
        """Whether what is made may reach anyone at all.

        Then the living are withheld, closed passages of a sitting stay out, and so does what a scan carries inside it.
        """
        return self is To.OUTSIDE

    @property
    def is_family(self) -> bool:
        """Whether it stays in the family: only there a caption says how the living are related."""
        return self is To.FAMILY

    @property
    def is_closed_part(self) -> bool:
        """Whether it is what an archive keeps closed: with a day and a reason, recordings, consent forms, settings."""
        return self is To.ARCHIVE


_SEES = {
    To.KEEPER: ("keeper", "family", "archive", SHARED, "anyone"),
    To.FAMILY: ("family", SHARED, "anyone"),
    To.OUTSIDE: ("anyone",),
    To.ARCHIVE: ("archive", SHARED, "anyone"),
}


@lru_cache(1024)
def may_see(text: str, to: To, on_day: date) -> bool:
    """Whether words of that audience may go to `to` on that day. `archive:D` opens on the day D itself.

    An audience that cannot be read (older versions let anything in) is the keeper's alone.
    """
    try:
        audience = read_audience(text)
    except WrongUse:
        return to is To.KEEPER
    opened = audience.until is not None and audience.until <= on_day
    return ("anyone" if opened else audience.level) in _SEES[to]


def stricter(first: str, second: str, on_day: date) -> str:
    """Of two audiences the one that fewer may see; `keeper` where each is closed to somebody whom the other admits."""
    seen, seen_by_second = ({to for to in To if may_see(text, to, on_day)} for text in (first, second))
    if seen == seen_by_second:
        return second if _opens(second, on_day) > _opens(first, on_day) else first
    if seen < seen_by_second:
        return first
    return second if seen_by_second < seen else "keeper"


def _opens(text: str, on_day: date) -> date:
    """The day on which anyone may see it; the last of all where none is said."""
    return closed_until(text, on_day) or (date.min if may_see(text, To.OUTSIDE, on_day) else date.max)


def closed_until(text: str, on_day: date) -> date | None:
    """The day D of `archive:D` or `family+archive:D` while it is still to come, else None."""
    try:
        until = read_audience(text).until
    except WrongUse:
        return None
    return until if until is not None and until > on_day else None


def waits(text: str) -> bool:
    """Whether an archive keeps it closed until it is asked again: no day was said."""
    return text == SHARED
