"""Statements: one thing that one source says about one field of one thing, in its own words.

Rule kept: every change to anything is one append-only row. An item's number, a scan's file, a box's
place on a shelf and a grandmother's story are all statements; everything else is computed from them.
A statement is in force when it is neither replaced nor withdrawn. Times are UTC, ISO 8601 with
milliseconds (`2026-11-25T10:15:30.250Z`); ids are UUIDs of version 7 (RFC 9562, 5.7).
"""

import unicodedata
import uuid
from dataclasses import dataclass
from datetime import UTC, date, datetime
from enum import StrEnum
from typing import Protocol

from boxlore.core.errors import WrongUse


class Kind(StrEnum):
    """What a statement can be about."""

    COLLECTION = "collection"
    ITEM = "item"
    SCAN = "scan"
    MARKER = "marker"
    PERSON = "person"
    EVENT = "event"
    PLACE = "place"
    SITTING = "sitting"
    LOCATION = "location"
    CONTAINER = "container"
    RELATION = "relation"


class Sure(StrEnum):
    """How sure the source is. NOT_KNOWN: asked, and the source does not know (the words are empty)."""

    SURE = "sure"
    LIKELY = "likely"
    GUESS = "guess"
    NOT_KNOWN = "not-known"


class Said(StrEnum):
    """What kind of source says something, nearest to the event first."""

    INSCRIPTION = "inscription"
    DOCUMENT = "document"
    NARRATOR = "narrator"
    KEEPER = "keeper"
    FILE = "file"


SURENESS = {Sure.SURE: 3, Sure.LIKELY: 2, Sure.GUESS: 1, Sure.NOT_KNOWN: 0}
NEARNESS = {Said.INSCRIPTION: 4, Said.DOCUMENT: 3, Said.NARRATOR: 2, Said.KEEPER: 1, Said.FILE: 0}


@dataclass(frozen=True, slots=True)
class Source:
    """Who or what says it. `ref` is a person's id for a narrator, `recto` or `verso` for an
    inscription, a short description for a document or a file, empty for the keeper."""

    said: Said
    ref: str = ""

    def __str__(self) -> str:
        return f"{self.said}:{self.ref}" if self.ref else str(self.said)


KEEPER = Source(Said.KEEPER)


def read_source(text: str) -> Source:
    """`inscription:verso` → Source. Raises WrongUse for a kind of source that is not in `Said`."""
    said, _, ref = text.strip().partition(":")
    try:
        return Source(Said(said.strip().lower() or Said.KEEPER), ref.strip())
    except ValueError:
        kinds = ", ".join(Said)
        raise WrongUse(f"“{said[:40]}” is no kind of source.", f"Use one of: {kinds}.") from None


HOW_TO_SAY_WHO = "Write narrator:NAME, inscription:verso, inscription:recto, document:WHAT or keeper."
_SIDES = {"recto": "recto", "verso": "verso", "front": "recto", "back": "verso"}


def typed_source(text: str) -> Source:
    """The source that somebody names. Raises WrongUse, saying what may be written, where it names nobody."""
    if not text.strip():
        raise WrongUse("Nobody is named as the source.", HOW_TO_SAY_WHO)
    source = read_source(text)
    if source.said is Said.KEEPER:
        if source.ref:
            raise WrongUse(f"“{text.strip()[:40]}”: the keeper is named without more.", HOW_TO_SAY_WHO)
        return source
    if source.said is Said.INSCRIPTION:
        if source.ref.lower() not in _SIDES:
            raise WrongUse("An inscription stands on the verso (the back) or the recto (the front).", HOW_TO_SAY_WHO)
        return Source(Said.INSCRIPTION, _SIDES[source.ref.lower()])
    if not any(map(str.isalnum, source.ref)):
        raise WrongUse(f"“{text.strip()[:40]}” does not say which {source.said}.", HOW_TO_SAY_WHO)
    return source


@dataclass(frozen=True, slots=True)
class Subject:
    """The thing a statement is about."""

    kind: Kind
    id: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Statement:
    """One row of the log. `audience` is text as `core.fields.audiences.read_audience` reads it.

    `moment` counts monotonic milliseconds from the start of `sitting`; `replaces` is the id of the
    statement that this one takes the place of, empty for a new one.
    """

    id: str
    act: str
    subject: Subject
    field: str
    words: str
    language: str = ""
    source: Source = KEEPER
    sure: Sure = Sure.SURE
    audience: str = "anyone"
    sitting: str = ""
    moment: int | None = None
    recorded_at: str
    by: str = ""
    replaces: str = ""


class ReadingValue(Protocol):
    """What words were read as: a date, a place, a person or event, a name's parts, a consent.

    Each type knows its JSON form.
    The types stand in the rooms above this one; `core.records.readings` names them all.
    """

    def to_json(self) -> dict[str, object]: ...


@dataclass(frozen=True, slots=True)
class Unreadable:
    """The text of a reading that is damaged, or of a kind or shape that this version does not know."""

    text: str


@dataclass(frozen=True, slots=True)
class Reading:
    """What we made of a statement's words, beside it and never instead of it.

    `kind` is date, place, person, event, name or consent, and `value` what it was read as: a `DateReading`, a
    `PlaceReading`, a `PersonRef` (of a person or an event), the `NameParts` of a person, a `Consent`. `asks` is true
    while it needs an answer of the keeper; an unconfirmed reading that asks is not used by any output.
    """

    kind: str
    value: ReadingValue | Unreadable
    reader: str
    settings: str = ""
    asks: bool = False
    confirmed: bool = False

    @property
    def usable_value(self) -> ReadingValue | None:
        """The value, if outputs may rest on it. One that cannot be read is none and asks, even if it was confirmed."""
        if isinstance(self.value, Unreadable) or (self.asks and not self.confirmed):
            return None
        return self.value

    @property
    def usable(self) -> bool:
        """Whether outputs may rest on it."""
        return self.usable_value is not None


def uuid7(milliseconds: int, randomness: bytes) -> str:
    """A version 7 UUID (RFC 9562, 5.7) from Unix milliseconds and 10 random bytes."""
    value = (milliseconds & (1 << 48) - 1) << 80 | int.from_bytes(randomness[:10], "big")
    value = value & ~(0xF << 76) | 0x7 << 76
    value = value & ~(0x3 << 62) | 0x2 << 62
    return str(uuid.UUID(int=value))


def made_at(ident: str) -> datetime | None:
    """When a version 7 UUID was made (UTC); None for an id of another kind."""
    try:
        value = uuid.UUID(ident)
    except ValueError:
        return None
    return datetime.fromtimestamp((value.int >> 80) / 1000, UTC) if value.version == 7 else None


def day_of(ident: str) -> date | None:
    """The day (UTC) on which a version 7 UUID was made; None for an id of another kind."""
    moment = made_at(ident)
    return moment.date() if moment else None


def day_in(time: str) -> date | None:
    """The day of a time of the log; None for none."""
    return date.fromisoformat(time[:10]) if time else None


_LETTERS = str.maketrans({"ł": "l", "ß": "ss", "ø": "o", "æ": "ae", "œ": "oe", "đ": "d", "ð": "d", "þ": "th", "ı": "i"})


def fold(words: str) -> str:
    """Words as search sees them: case, accents and special letters folded (both sides are folded)."""
    if words.isascii():
        return words.lower()
    plain = unicodedata.normalize("NFKD", words.casefold())
    return "".join(letter for letter in plain if not unicodedata.combining(letter)).translate(_LETTERS)
