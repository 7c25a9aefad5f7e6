"""Sittings as an archive is told of them: each is one thing with its recordings and papers, under its identifier.

An archive says of a sitting, as of an item, whether it wants it, what it calls it and what it remarks of it. That holds
for every file of the sitting.
"""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field

from boxlore.core.crosswalk.sound import PAPER, SOUND, in_words
from boxlore.core.fields.plain_values import YES_NO_WORDS
from boxlore.core.fields.sittings import PAPER_WORDS, recording_in
from boxlore.core.findings import several
from boxlore.core.records.audience import Recipient
from boxlore.core.records.in_force import told_of
from boxlore.core.records.terms import Promise, promise_of
from boxlore.core.statements import Kind, Statement, Subject
from boxlore.tasks.collection.opening import Collection

SPEAKING = ("narrator", "interviewer")
"""Fields of a sitting that tell whose voice is in its recording."""


@dataclass(frozen=True, slots=True, kw_only=True)
class SittingHeld:
    """A sitting that has recordings or papers, by their paths in the collection's folder; of a recording with its
    length (milliseconds). `day` is when it was noted (ISO 8601)."""

    id: str
    day: str
    recordings: Mapping[str, int] = field(default_factory=dict)
    papers: tuple[str, ...] = ()
    agreed: str = "anyone"
    """The audience that was agreed."""
    is_wanted: bool | None = None
    """What an archive has said: that it wants it, or not; None for nothing."""

    @property
    def paths(self) -> tuple[str, ...]:
        return (*self.recordings, *self.papers)

    @property
    def words(self) -> str:
        """`2 sound recordings (1 min 5 s), 1 paper of a sitting`: for anyone, it names nobody."""
        sound = several(len(self.recordings), SOUND) if self.recordings else ""
        length = sum(self.recordings.values())
        sound += f" ({in_words(length)})" if length else ""
        return ", ".join(
            filter(None, (sound, several(len(self.papers), PAPER, "papers of a sitting") if self.papers else ""))
        )


def sittings_held(collection: Collection) -> Iterator[SittingHeld]:
    """Every sitting of which a recording or paper is kept, in the order in which they were noted."""
    held = (_held(ident, [row for row, _ in rows]) for ident, rows in collection.store.subjects(Kind.SITTING))
    yield from sorted((sitting for sitting in held if sitting.paths), key=lambda sitting: (sitting.day, sitting.id))


def not_to_be_heard(collection: Collection, recipient: Recipient) -> frozenset[str]:
    """The ids of the sittings in which somebody speaks of whom this recipient may not know, since a voice tells who it
    is, and papers and chapters tell whose words they are of; and of those that are not for the recipient as was agreed,
    or have minutes that are kept from outside: a recording is not cut."""
    return frozenset(
        ident
        for ident, rows in collection.store.subjects(Kind.SITTING)
        if not _is_promised(promised(row for row, _ in rows), recipient)
        or not all(
            recipient.may_be_told(told_of(statement, reading, {}), Subject(Kind.SITTING, ident))
            for statement, reading in rows
            if statement.field in SPEAKING
        )
    )


def promised(told: Iterable[Statement]) -> Promise:
    """What was agreed of a sitting, by what is in force of it."""
    return promise_of((row.field, row.words) for row in told)


def _is_promised(promise: Promise, recipient: Recipient) -> bool:
    is_whole = recipient.may_hear_closed_passages or not promise.passages
    return is_whole and recipient.may_see_audience(promise.audience)


def sitting_held(collection: Collection, ident: str) -> SittingHeld | None:
    """The sitting of this id, if a recording or paper of it is kept."""
    told = told_of_sitting(collection, ident)
    held = _held(ident, told) if told else None
    return held if held and held.paths else None


def told_of_sitting(collection: Collection, ident: str) -> list[Statement]:
    """What is in force of a sitting; nothing for the id of anything else."""
    rows = (row for row, _ in collection.store.statements(Subject(Kind.SITTING, ident)))
    return [row for row in rows if row.subject.kind is Kind.SITTING]


def _held(ident: str, told: list[Statement]) -> SittingHeld:
    recordings = [recording_in(row) for row in told if row.field == "recording"]
    papers = [paper for row in told if row.field == "paper" and (paper := PAPER_WORDS.or_none(row.words))]
    answer = next((YES_NO_WORDS.read(row.words) for row in told if row.field == "wanted"), None)
    return SittingHeld(
        id=ident,
        day=min(row.recorded_at for row in told)[:10],
        recordings={recording.path: recording.length for recording in recordings},
        papers=tuple(paper.path for paper in papers),
        agreed=promised(told).audience,
        is_wanted=answer,
    )
