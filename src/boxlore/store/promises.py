"""What was promised to tellers, held at the one place where statements in force are read.

So no record, page, list or table has a wider audience than the agreement of its sitting, whoever reads it, also in a
collection that was told before, and in one made again from a transfer.
"""

import sqlite3
from dataclasses import dataclass, field

from boxlore.core.records.terms import AGREED, KEPT_FROM_OUTSIDE, Promise, promise_of
from boxlore.core.statements import Statement
from boxlore.store.schema import FEW_KINDS

_QUERY = f"""
    SELECT field, words FROM in_force WHERE {FEW_KINDS} AND subject_kind = 'sitting' AND field IN (?, ?)
    AND subject = ? ORDER BY +row"""


@dataclass(slots=True)
class Promises:
    """The promises of the sittings that one query meets."""

    db: sqlite3.Connection
    known: dict[str, Promise] = field(default_factory=dict)

    def of(self, sitting: str) -> Promise:
        """What holds of a sitting, by its id."""
        if sitting not in self.known:
            self.known[sitting] = promise_of(self.db.execute(_QUERY, (AGREED, KEPT_FROM_OUTSIDE, sitting)))
        return self.known[sitting]

    def held(self, statement: Statement) -> Statement:
        """The statement as it may be seen by what was promised in its sitting."""
        return self.of(statement.sitting).held(statement) if statement.sitting else statement
