"""What goes into the store and what comes out: plain values."""

from dataclasses import dataclass

from boxlore.core.statements import KEEPER, Kind, Reading, Source, Statement, Subject, Sure


@dataclass(frozen=True, slots=True, kw_only=True)
class Settlement:
    """The keeper's word on a conflict: `chosen` is a statement's id (empty for both or doubtful)."""

    id: str
    subject: Subject
    field: str
    outcome: str
    weighed: tuple[str, ...]
    chosen: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Change:
    """The rows of one act, written in one transaction. `withdraws` names acts that are undone by it."""

    act: str
    what: str
    by: str
    recorded_at: str
    statements: tuple[Statement, ...] = ()
    readings: tuple[tuple[str, Reading], ...] = ()
    settlements: tuple[Settlement, ...] = ()
    withdraws: tuple[str, ...] = ()
    clears_drafts: tuple[tuple[str, str, str], ...] = ()
    """(subject id, field, slot) of drafts that have become statements of this act."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Draft:
    """What is being typed into one field; `slot` tells apart several boxes of a field that gathers."""

    subject: Subject
    field: str
    slot: str = ""
    words: str
    language: str = ""
    source: Source = KEEPER
    sure: Sure = Sure.SURE
    audience: str = "anyone"
    sitting: str = ""
    moment: int | None = None
    replaces: str = ""
    updated_at: str


@dataclass(frozen=True, slots=True)
class Hit:
    """One line of a search. `item` is the item's id, empty where the words are about something else."""

    item: str
    number: str
    mark: str
    field: str
    words: str
    source: str
    draft: bool = False


@dataclass(frozen=True, slots=True)
class Past:
    """One row of a field's history, and what became of it: in force, replaced or withdrawn."""

    statement: Statement
    state: str


@dataclass(frozen=True, slots=True)
class ActDone:
    """One line of the list of what was done, newest first."""

    id: str
    what: str
    recorded_at: str
    by: str
    withdrawn: bool


PERSON_NAMES = ("name", "given", "family", "born_as", "married_as", "nickname")
NAMED_KINDS = (Kind.PERSON, Kind.EVENT, Kind.PLACE)
