"""How an audience is written, and the words by which the keeper keeps a thing, or one field of it, to one."""

from dataclasses import dataclass
from datetime import date

from boxlore.core.errors import WrongUse
from boxlore.core.fields.codec import Codec, one_word

SHARED = "family+archive"
"""The family has it, and an archive keeps it closed."""


@dataclass(frozen=True, slots=True)
class Audience:
    """Who may see a statement: `level` is keeper, family, archive, SHARED or anyone; `until` only where an archive has
    it, and there until it is asked again if there is none."""

    level: str
    until: date | None = None

    def __str__(self) -> str:
        return f"{self.level}:{self.until}" if self.until else self.level


def read_audience(text: str) -> Audience:
    """`archive:2060-01-01` → Audience. Raises WrongUse, saying what may be written."""
    level, _, day = text.strip().lower().partition(":")
    if level in ("keeper", "family", SHARED, "anyone") and not day:
        return Audience(level)
    try:
        if level in ("archive", SHARED):
            return Audience(level, date.fromisoformat(day.strip()))
    except ValueError:
        pass
    raise WrongUse(f"“{text[:40]}” is no audience.", "Use keeper, family, archive:YYYY-MM-DD or anyone.")


def audience_shown(text: str) -> str:
    """An audience in words: `for the family only`; '' for anyone. What cannot be read is for the keeper only."""
    try:
        audience = read_audience(text)
    except WrongUse:
        return "for the keeper only"
    closed = f"closed in an archive until {audience.until or 'it is asked again'}"
    if audience.level == SHARED:
        return f"for the family, {closed}"
    if audience.until:
        return closed
    return "" if audience.level == "anyone" else f"for the {audience.level} only"


@dataclass(frozen=True, slots=True)
class KeptTo:
    """Who may see a thing, or with `field` that field of it alone."""

    audience: Audience
    field: str = ""


def _write_kept_to(kept: KeptTo) -> str:
    return f"{kept.field}={kept.audience}" if kept.field else str(kept.audience)


def _parse_kept_to(words: str) -> KeptTo:
    field, equals, audience = words.rpartition("=")
    try:
        return KeptTo(read_audience(audience), one_word(field) if equals else "")
    except WrongUse:
        raise ValueError(words) from None


AUDIENCE_WORDS: Codec[KeptTo] = Codec(
    "audience",
    "Write keeper, family, archive:YYYY-MM-DD or anyone; for one field alone: story=family.",
    _write_kept_to,
    _parse_kept_to,
)
"""`audience`, or `field=audience`."""
