"""What an act has gathered, by the thing it is about and by the statement it reads: looked up, never gone through.

A table of 80,000 rows is one act, and each of its rows asks what is told of its item so far. The lists of the act stay
as they are, to be added to and cut by whoever gathers. The index takes in what is new in them when it is asked; where
a list was cut behind its back, which the last row that it knows tells, it begins anew.
"""

from collections.abc import Sequence
from dataclasses import dataclass, field

from boxlore.core.statements import Reading, Statement, Subject

ReadRow = tuple[str, Reading]
"""The id of a statement, and its reading."""


@dataclass(slots=True)
class ActIndex:
    """The index of the two lists of one act."""

    statements: list[Statement]
    readings: list[ReadRow]
    _by_subject: dict[Subject, list[Statement]] = field(default_factory=dict)
    _told: list[Statement] = field(default_factory=list)
    """The statements that are in the index, as they stood in the list."""
    _place: dict[str, int] = field(default_factory=dict)
    """By the id of a statement: where its last reading stands in the list."""
    _read: list[ReadRow] = field(default_factory=list)

    def of(self, subject: Subject) -> list[Statement]:
        """What the act tells of a thing, in its order."""
        if not _goes_on(self._told, self.statements):
            self._by_subject, self._told = {}, []
        for statement in self.statements[len(self._told) :]:
            self._by_subject.setdefault(statement.subject, []).append(statement)
            self._told.append(statement)
        return self._by_subject.get(subject, [])

    def reading_of(self, ident: str) -> Reading | None:
        """What the act reads a statement as; None where it reads nothing."""
        place = self._place_of(ident)
        return None if place is None else self.readings[place][1]

    def read(self, ident: str, reading: Reading) -> None:
        """Read a statement so, in place of what the act read it as before."""
        place = self._place_of(ident)
        if place is None:
            self.readings.append((ident, reading))
        else:
            self.readings[place] = self._read[place] = (ident, reading)

    def _place_of(self, ident: str) -> int | None:
        if not _goes_on(self._read, self.readings):
            self._place, self._read = {}, []
        for row in self.readings[len(self._read) :]:
            self._place[row[0]] = len(self._read)
            self._read.append(row)
        return self._place.get(ident)


def _goes_on(known: Sequence[object], now: Sequence[object]) -> bool:
    """Whether a list only grew since."""
    return len(known) <= len(now) and (not known or known[-1] is now[len(known) - 1])
