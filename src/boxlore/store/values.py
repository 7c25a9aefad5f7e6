"""The values that go into the store and come out of it."""

from dataclasses import dataclass

from boxlore.core.statements import KEEPER, Kind, Reading, Source, Statement, Subject, Sure


@dataclass(frozen=True, slots=True, kw_only=True)
class Settlement:
    """The keeper's decision in a conflict between the statements `weighed` (ids).

    `chosen` is the id of the one to use; it is empty if both stay or the matter stays doubtful.
    """

    id: str
    subject: Subject
    field: str
    outcome: str
    weighed: tuple[str, ...]
    chosen: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Change:
    """The rows of one act, which are written in one transaction.

    `what` says in a line what was done, `readings` are (statement id, reading), `withdraws` are ids of acts undone.
    """

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
    """What is being typed into one field. `slot` tells apart the boxes of a field that may have several statements."""

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
    """One line of a search. `item` is the id of the item that the words belong to, or empty if they belong to none.

    `number` and `mark` are the item's; `draft` says that the words are still being typed.
    """

    item: str
    number: str
    mark: str
    field: str
    words: str
    source: str
    draft: bool = False


@dataclass(frozen=True, slots=True)
class Struck:
    """A tombstone: which statement was struck, of what kind of thing, its id, the field, when and by whom. No words."""

    statement: str
    kind: str
    subject: str
    field: str
    at: str
    by: str


@dataclass(frozen=True, slots=True)
class Past:
    """One statement of a field's history. `state` is `in force`, `replaced` or `withdrawn`."""

    statement: Statement
    state: str

    @property
    def shown(self) -> str:
        """“told”, “replaced”, “taken back”."""
        return {"in force": "told", "withdrawn": "taken back"}.get(self.state, self.state)


@dataclass(frozen=True, slots=True)
class ActDone:
    """One line of the list of acts: what was done, when, by whom, and whether it is withdrawn."""

    id: str
    what: str
    recorded_at: str
    by: str
    withdrawn: bool


PERSON_NAMES = ("name", "given", "family", "born_as", "married_as", "nickname")
"""Fields that hold a name of a person, event or place."""
NAMED_KINDS = (Kind.PERSON, Kind.EVENT, Kind.PLACE)
"""Kinds whose names complete what is typed."""
