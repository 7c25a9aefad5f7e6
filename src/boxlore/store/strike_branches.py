"""What only backups hold: statements of branches of history that were left when an older backup was brought back.

The problem. Somebody told something; then an older backup was brought back (`restoring`), and the same was told again.
The log has the second telling alone. The first one stands, with another id, in the backups that were made before, so
that a strike of the second would leave its words there, where no command reaches them.

The idea. The backups' rows that the log does not have are copied into a database in memory, with the tables' own names,
so that whatever asks the log for statements asks them too. A strike takes out of them

- all earlier and later forms of the struck statements, and what was made from these alone;
- what was told in the same words of the same subject and field;
- the same sentence wherever it stands, if it is of LONG_ENOUGH words.

Shorter words of others (the town of fifty pictures) stay: they are named after the strike, and go when they are struck
`everywhere`, which lists the rows of all branches. Drafts that hold the words go from every backup; nobody types there.
So do the words from every line that says what an act did, in the log too (“Leida is the same person as …”).
"""

import json
import sqlite3
from collections.abc import Iterable, Iterator, Sequence
from contextlib import closing, contextmanager, suppress
from dataclasses import dataclass
from pathlib import Path

from boxlore.core.fields.table import FIELDS
from boxlore.core.statements import fold
from boxlore.store.backups import FOLDER, address, read_only
from boxlore.store.database_file import DATABASE
from boxlore.store.rows import COLUMNS
from boxlore.store.strike_words import LONG_ENOUGH, can_be_struck, holds, tokens, ways

_STATEMENT = ", ".join(COLUMNS)
_READING = "statement, act, kind, value"

_TABLES = f"""
CREATE TABLE statement (row INTEGER PRIMARY KEY, {_STATEMENT}, UNIQUE (id));
CREATE INDEX statement_subject ON statement (subject);
CREATE INDEX statement_replaces ON statement (replaces);
CREATE TABLE reading ({_READING}, PRIMARY KEY (statement, act));
"""

_COPY = (
    f"""INSERT OR IGNORE INTO statement ({_STATEMENT}) SELECT {_STATEMENT} FROM backup.statement b
        WHERE NOT EXISTS (SELECT 1 FROM log.statement l WHERE l.id = b.id)""",
    f"""INSERT OR IGNORE INTO reading SELECT {_READING} FROM backup.reading b
        WHERE NOT EXISTS (SELECT 1 FROM log.reading l WHERE l.statement = b.statement AND l.act = b.act)""",
)

Draft = tuple[str, str, str]
"""The subject, field and slot of a draft."""


@dataclass(frozen=True, slots=True)
class TextOf:
    """A text, and the subject (its id) and field that it was told of."""

    subject: str
    field: str
    words: str


@dataclass(frozen=True, slots=True)
class Traces:
    """What is no statement, and holds struck words: drafts in backups, and the acts (ids) whose lines do."""

    drafts: Sequence[Draft] = ()
    acts: Sequence[str] = ()

    def to_json(self) -> str:
        """Without any of the words; '' of none."""
        return json.dumps([self.drafts, self.acts]) if self.drafts or self.acts else ""

    @classmethod
    def from_json(cls, text: str) -> "Traces":
        drafts, acts = json.loads(text) if text else ([], [])
        return cls([(subject, field, slot) for subject, field, slot in drafts], acts)


NO_TRACES = Traces()


@contextmanager
def only_in_backups(folder: Path) -> Iterator[sqlite3.Connection]:
    """The statements and readings that backups have and the log does not, in tables named as in the log.

    A backup that cannot be read has none. Texts that are not UTF-8 are read as well as they can be.
    """
    with closing(sqlite3.connect(":memory:", isolation_level=None, uri=True)) as db:
        db.text_factory = lambda data: data.decode("utf-8", "replace")
        db.executescript(_TABLES)
        db.execute("ATTACH ? AS log", (f"{(folder / DATABASE).resolve().as_uri()}?mode=ro",))
        for backup in backup_files(folder):
            with suppress(sqlite3.Error):
                db.execute("ATTACH ? AS backup", (address(backup),))
                try:
                    for copy in _COPY:
                        db.execute(copy)
                finally:
                    db.execute("DETACH backup")
        db.execute("DETACH log")
        yield db


def backup_files(folder: Path) -> list[Path]:
    """Every database among the backups, also one that cannot be read."""
    return sorted((folder / FOLDER).glob("*.sqlite"))


def same_words(db: sqlite3.Connection, struck: Sequence[TextOf]) -> list[str]:
    """The ids of the statements of `only_in_backups` that tell what was struck."""
    asked = [(text, tokens(text.words)) for text in struck]
    query = "SELECT id, subject, field, words FROM statement WHERE words <> '' ORDER BY row"
    rows = ((ident, TextOf(subject, field, words)) for ident, subject, field, words in db.execute(query))
    return [ident for ident, told in rows if told.field in FIELDS and _tells(told, asked)]


def _tells(told: TextOf, asked: Iterable[tuple[TextOf, list[str]]]) -> bool:
    own = ways(told.words)
    for text, words in asked:
        is_of_same = (text.subject, text.field) == (told.subject, told.field)
        if is_of_same and (any(holds(way, words) for way in own) if words else fold(text.words) == fold(told.words)):
            return True
        if len(words) >= LONG_ENOUGH and can_be_struck(told.field) and any(holds(way, words) for way in own):
            return True
    return False


def traces_of(db: sqlite3.Connection, folder: Path, struck: Iterable[str], asked: Iterable[str]) -> Traces:
    """The drafts in backups that hold any of the struck words; the acts of the log and of backups whose lines do, of a
    text of one word only if that was `asked` for by itself.
    """
    struck, asked = list(struck), list(asked)
    texts = [words for words in map(tokens, struck) if words]
    of_lines = [words for words in texts if len(words) > 1] + [words for words in map(tokens, asked) if words]
    drafts: dict[Draft, None] = {}
    acts = dict.fromkeys(_acts_holding(db, of_lines))
    for backup in backup_files(folder):
        with suppress(sqlite3.Error), closing(read_only(backup)) as copy:
            for subject, field, slot, words in copy.execute("SELECT subject, field, slot, words FROM draft"):
                if _holds_any(words, texts):
                    drafts[subject, field, slot] = None
            acts |= dict.fromkeys(_acts_holding(copy, of_lines))
    return Traces(list(drafts), list(acts))


def _acts_holding(db: sqlite3.Connection, asked: Sequence[list[str]]) -> list[str]:
    return [act for act, line in db.execute("SELECT id, what FROM act") if _holds_any(line, asked)]


def _holds_any(text: str, asked: Iterable[list[str]]) -> bool:
    own = ways(text)
    return any(holds(way, words) for way in own for words in asked)
