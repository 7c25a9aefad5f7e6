"""Strike: words taken out for good, at the wish of whoever told them.

Theory of operation
===================

The problem. Somebody who told something may wish it gone, and has the right to. The log, though, is made to lose
nothing: undo only marks an act as withdrawn, and the words stay. They also stay in corrected forms of the statement, in
readings, in drafts, in the line that says what an act did, in the full-text index, in pages that the database file has
freed, in the write-ahead log, and in every backup. And a person whom only those words brought into the registry would
still stand there by name.

The idea. A strike is the one exception to "rows are only added", and is done in three steps.

1. Take out (this module, one transaction). The statements asked for are gathered with all their earlier and later
   forms, and with what was made from them alone; also those that only backups have, of a branch of history that was
   left when an older one was brought back (`strike_branches`). For each a tombstone is written: its id, its subject and
   field, when and by whom, but no words. Then the rows, their readings, the drafts that resemble them and the lines
   about acts that repeat them are deleted, and the projections follow.
2. Erase (`strike_rewriting`). Backups get the same treatment, and the database file is written anew, so that no page,
   free page or log frame keeps the old bytes.
3. Prove (`strike_proof`). Every byte of every file in the collection's folder is searched for the words. Files that
   still hold them, such as an earlier export, are named in the report, and so are rows that were not struck, also those
   of backups (`strike_standing`). Those that are no databases of ours are
   searched before the first step, whose transaction notes them: so they are named also where a strike was killed.

Step 2 cannot be done while another program reads the database, because that program still needs the old pages. The
strike then says that it waits, and is finished when the program ends, or at the next opening for writing.

What always holds
- A row and its tombstone change in the same transaction, so the words are never gone without a trace that they were
  struck, and an unfinished strike is never forgotten.
- Step 2 needs the tombstones alone, and may be done again after any crash.
- A person, event or place goes only if nothing else has to do with it: no other reading means it, it is nobody's
  narrator, and it has no statements from other acts.
- A tombstone stays for ever. What is read in from a file later is not taken if its subject and field were struck
  (`Store.struck`), so joining two copies does not bring the words back. The backups get the tombstones too: a backup
  that is brought back has all that was struck since taken out of it first (`restoring`).
- Words that a scan's own file says stay in that file, which no strike changes. The tombstone keeps them out: as long as
  it is there, that scan's record says nothing of its file (`material`), and a file of the same bytes is taken in
  without its words (`Store.struck_files`), whatever was undone, restored or read in since.
- A strike is reported as finished only when step 2 is.

An example. Of a picture of a harbour Leida Rourke told s1, "a dock hand". In another act she corrected it to s2, "Ants
Saar, who owed us money", and the reading of s2 named a new person P in the registry, whose name stands in s3. Now she
wishes s2 struck.

- The forms of s2 are s2 and s1. The reading of s2 means P, and no other reading does; P tells nothing; P's only
  statement s3 is of the same act as s2. So s3 goes too. Leida's own name stays, although it is the source of s1 and s2:
  no reading of these means her.
- Three tombstones are written and three rows deleted. In the list of acts, the lines of both acts become "struck".
- The backup of last week has s1, s2 and s3 as well. They are deleted there, and both files are written anew.
- The search finds "Ants Saar, who owed us money" in a text that the keeper once wrote into the folder. The report names
  this file; a strike changes no files but the collection's own.
"""

import json
import sqlite3
import time
from collections.abc import Callable, Collection, Iterable, Sequence
from dataclasses import dataclass, replace
from functools import partial
from pathlib import Path

from boxlore.core.errors import CouldNot
from boxlore.core.fields.pictures import EMBEDDED_WORDS
from boxlore.core.people.event_clauses import forget_clauses
from boxlore.core.people.names_in_text.finder import forget_finders
from boxlore.core.people.names_in_text.names_by_shape import forget_shapes
from boxlore.core.people.who_is_where.reader import forget_names
from boxlore.core.people.who_is_where.seen_in_story import forget_sentences
from boxlore.core.records.readings import forget_values
from boxlore.core.statements import Statement, fold
from boxlore.store.opening import Store
from boxlore.store.projections import forget
from boxlore.store.rows import MEANT, SELECT, statement_of
from boxlore.store.strike_branches import TextOf, Traces, backup_files, only_in_backups, same_words, traces_of
from boxlore.store.strike_proof import files_holding, search_folder
from boxlore.store.strike_rewriting import (
    TRACES,
    blank_lines,
    delete_statements,
    empty_log,
    is_pending,
    quiet_acts,
    rewrite_files,
    still_holds,
)
from boxlore.store.strike_standing import Standing, rows_standing, standing_in_backups

__all__ = [
    "StrikeReport",
    "files_holding",
    "finish",
    "pending",
    "said",
    "strike",
    "unsaid",
    "with_what_follows",
    "words_of",
]

PAUSE_SECONDS = 0.25

LEFT_IN = "strike_left_in"
"""The name in `meta` of the files (JSON) that carry the words of a strike, until they have been named."""

_AMONG = "IN (SELECT value FROM json_each(?))"
_NAMES = "kind IN ('person', 'event', 'place')"

_WAITING = (
    "Another program has the collection open; the strike finishes when it is closed. Stop here if you like: the next "
    "command that writes finishes it."
)


@dataclass(frozen=True, slots=True)
class StrikeReport:
    """The result of a strike. `struck` counts the statements, and `finished` says whether the words are erased.

    `left_in` names files that still hold the words (exports, notes), `unread` files that could not be searched; `again`
    counts the statements in the same words that were not struck, and `standing` are all rows that hold the words, in
    the log and in backups. `is_by_chance` says that their letters stand in a database yet, in ids, times and other
    words.
    """

    struck: int
    finished: bool
    left_in: tuple[str, ...] = ()
    unread: tuple[str, ...] = ()
    again: int = 0
    standing: tuple[Standing, ...] = ()
    is_by_chance: bool = False


def strike(
    store: Store,
    statements: Iterable[str],
    *,
    by: str,
    now: str,
    also: Iterable[str] = (),
    waiting: Callable[[str], None] = lambda why: None,
    stopped: Callable[[], bool] = lambda: False,
) -> StrikeReport:
    """Strike these statements (ids), and all that carries their words. `also` are words to be searched for besides.

    While another program reads, `waiting` is called once with a sentence; the wait ends when `stopped` says so.
    """
    asked, words_besides = list(statements), list(also)
    gone = _gather_all(store, asked)
    words = [*gone.words, *words_besides]
    elsewhere = search_folder(store.folder, words, ours=False)
    traces = traces_of(store.db, store.folder, words, words_besides)
    try:
        count = store.writer.do(lambda db: _take_out(db, gone, _Noted(by, now, elsewhere.left_in, traces)))
    except CouldNot as error:
        raise CouldNot(f"Nothing was struck: {_cause(error)}", error.what_to_do) from error
    forget_values()
    forget_names()
    forget_finders()
    forget_sentences()
    forget_clauses()
    forget_shapes()
    store.people_version += 1
    try:
        is_finished = finish(store, waiting, stopped)
    except CouldNot as error:
        why = f"The words are out of use, but traces of them may still be in the database and backups: {_cause(error)}"
        raise CouldNot(why, f"{error.what_to_do} The next command that writes finishes the strike.") from error
    report = StrikeReport(count, is_finished, elsewhere.left_in, elsewhere.unread)
    if not is_finished:
        return replace(report, standing=tuple(rows_standing(store.path, words)))
    return _proved(store, report, words, gone.every_id)


def _proved(store: Store, report: StrikeReport, words: Sequence[str], struck: Collection[str]) -> StrikeReport:
    """The report of a finished strike: where the words are yet, in the database and in each backup."""
    proof = search_folder(store.folder, words, ours=True)
    backups = [Path(name) for name in proof.in_rows if Path(name) != store.path]
    unchanged = [path for path in backups if still_holds(path, struck)]
    standing = rows_standing(store.path, words)
    holding = [path for path in backups if path not in unchanged]
    others = [path for path in backup_files(store.folder) if path not in backups]
    standing += standing_in_backups(holding, others, words, standing)
    left_in = (*proof.left_in, *map(str, unchanged), *report.left_in)
    return replace(
        report,
        left_in=tuple(dict.fromkeys(left_in)),
        unread=(*proof.unread, *report.unread),
        again=proof.again,
        standing=tuple(standing),
        is_by_chance=bool(proof.in_rows) and not standing and not unchanged,
    )


def _cause(error: CouldNot) -> str:
    """What refused, without what the writer says of words that were to be kept: a strike has none."""
    return f"{error.problem.partition(';')[0].rstrip('.').lower()}."


def unsaid(store: Store) -> list[str]:
    """Files that carried the words of a strike which was broken off before it could name them."""
    words = store.meta(LEFT_IN)
    return list(json.loads(words)) if words else []


def said(store: Store) -> None:
    """The files that still carry the words have been named."""
    if store.meta(LEFT_IN):
        store.set_meta(LEFT_IN, "")


def pending(store: Store) -> bool:
    """Whether an earlier strike still waits for its second step."""
    return is_pending(store.db)


def finish(store: Store, waiting: Callable[[str], None], stopped: Callable[[], bool]) -> bool:
    """Do the second step, again and again until it succeeds or `stopped` says so. Returns whether it succeeded."""
    rewritten = announced = False
    while True:
        store.release_readers()
        if not rewritten:
            rewritten = store.writer.do(partial(rewrite_files, folder=store.folder), plain=True)
        if rewritten and store.writer.do(empty_log, plain=True):
            return True
        if not announced:
            waiting(_WAITING)
            announced = True
        if stopped():
            return False
        time.sleep(PAUSE_SECONDS)


@dataclass(frozen=True, slots=True)
class _Gone:
    """All that a strike takes out: the rows of the log, and the ids of what only backups have, with what each tells."""

    ids: set[str]
    rows: list[tuple[Statement, int]]
    only_in_backups: list[tuple[str, str, TextOf]]
    """The id, the kind of its subject, and what is told."""

    @property
    def every_id(self) -> set[str]:
        return {*self.ids, *(ident for ident, _, _ in self.only_in_backups)}

    @property
    def words(self) -> list[str]:
        """All the words that go."""
        of_log = [(statement.field, statement.words) for statement, _ in self.rows]
        return _texts([*of_log, *((told.field, told.words) for _, _, told in self.only_in_backups)])


@dataclass(frozen=True, slots=True)
class _Noted:
    """What is noted with a strike: by whom, when, the files that carry the words, and what else does."""

    by: str
    now: str
    left_in: Sequence[str]
    traces: Traces


def _gather_all(store: Store, asked: list[str]) -> _Gone:
    ids, rows = _gather(store.db, asked)
    with only_in_backups(store.folder) as db:
        struck = [TextOf(told.subject.id, told.field, told.words) for told, _ in rows]
        struck += [told for _, _, told in _rows_of(db, asked)]
        others = with_what_follows(db, [*ids, *same_words(db, struck)])
        return _Gone(ids, rows, _rows_of(db, others))


def _gather(db: sqlite3.Connection, asked: list[str]) -> tuple[set[str], list[tuple[Statement, int]]]:
    """What a strike of these statements takes out of the log: the ids, and each statement with its row."""
    ids = with_what_follows(db, asked)
    rows = db.execute(f"SELECT {SELECT}, s.row FROM statement s WHERE s.id {_AMONG}", (_list(ids),)).fetchall()
    return ids, [(statement_of(row), row[16]) for row in rows]


def with_what_follows(db: sqlite3.Connection, asked: list[str]) -> set[str]:
    """The ids of the statements with all their forms, and with what was made only from them."""
    ids = _with_earlier_forms(db, asked)
    while made_only_from_them := _made_only_from(db, ids):
        ids |= _with_earlier_forms(db, made_only_from_them)
    return ids


def _rows_of(db: sqlite3.Connection, ids: Collection[str]) -> list[tuple[str, str, TextOf]]:
    query = f"SELECT id, subject_kind, subject, field, words FROM statement WHERE id {_AMONG} ORDER BY row"
    return [(row[0], row[1], TextOf(*row[2:])) for row in db.execute(query, (_list(ids),)).fetchall()]


def words_of(store: Store, asked: Iterable[str]) -> list[str]:
    """All words that a strike of these statements (ids) takes out."""
    return _gather_all(store, list(asked)).words


def _texts(struck: Iterable[tuple[str, str]]) -> list[str]:
    """What is searched for, of fields and words. What a scan's file says is several texts, and the file has each by
    itself."""
    texts: list[str] = []
    for field, words in struck:
        embedded = EMBEDDED_WORDS.or_none(words) if field == "embedded" else None
        texts += embedded.texts if embedded else (words,)
    return [text for text in texts if text.strip()]


def _take_out(db: sqlite3.Connection, gone: _Gone, noted: _Noted) -> int:
    """The first step. Returns how many statements were deleted, or will be in backups alone.

    The files that carry the words besides are noted with it: who is killed now names them at the next opening.
    """
    ids, struck = gone.ids, gone.rows
    words = [statement.words for statement, _ in struck if statement.words.strip()]
    _note(db, LEFT_IN, json.dumps(noted.left_in) if noted.left_in else "")
    _note(db, TRACES, noted.traces.to_json())
    meant = db.execute(f"SELECT {MEANT} FROM reading WHERE statement {_AMONG} AND {_NAMES}", (_list(ids),)).fetchall()
    of_log = [(statement.id, statement.subject.kind, statement.subject.id, statement.field) for statement, _ in struck]
    of_backups = [(ident, kind, told.subject, told.field) for ident, kind, told in gone.only_in_backups]
    for tomb in (*of_log, *of_backups):
        db.execute("INSERT OR REPLACE INTO tombstone VALUES (?, ?, ?, ?, ?, ?, 0)", (*tomb, noted.now, noted.by))
    for statement, _ in struck:
        _drop_drafts(db, statement.subject.id, statement.field, ids, words)
    delete_statements(db, [statement.id for statement, _ in struck])
    quiet_acts(db, words)
    blank_lines(db, noted.traces.acts)
    forget(db, struck, {ident for (ident,) in meant if ident})
    return len(of_log) + len(of_backups)


def _note(db: sqlite3.Connection, name: str, value: str) -> None:
    db.execute("INSERT OR REPLACE INTO meta VALUES (?, ?)", (name, value))


def _list(ids: Collection[str]) -> str:
    return json.dumps(sorted(ids))


def _drop_drafts(db: sqlite3.Connection, subject: str, field: str, ids: set[str], words: list[str]) -> None:
    """Delete the drafts of this field that would replace a struck statement, or that hold the same words, or some of
    them.
    """
    query = "SELECT slot, words, replaces FROM draft WHERE subject = ? AND field = ?"
    for slot, typed, replaces in db.execute(query, (subject, field)).fetchall():
        line = fold(typed.strip())
        if replaces in ids or any(line in fold(struck) or fold(struck.strip()) in line for struck in words):
            db.execute("DELETE FROM draft WHERE subject = ? AND field = ? AND slot = ?", (subject, field, slot))


def _with_earlier_forms(db: sqlite3.Connection, asked: Iterable[str]) -> set[str]:
    """The ids of the statements with all their earlier and later forms, following `replaces` both ways."""
    forms: set[str] = set()
    queue = list(asked)
    while queue:
        ident = queue.pop()
        if ident and ident not in forms:
            forms.add(ident)
            queue += [earlier for (earlier,) in db.execute("SELECT replaces FROM statement WHERE id = ?", (ident,))]
            queue += [later for (later,) in db.execute("SELECT id FROM statement WHERE replaces = ?", (ident,))]
    return forms


def _made_only_from(db: sqlite3.Connection, ids: set[str]) -> set[str]:
    """The ids of statements about people, events and places that exist only because of these statements.

    Such a person, event or place is meant by a reading of these statements and by no other reading, is not the narrator
    of other statements, and has no statements from other acts.
    """
    meant = f"SELECT DISTINCT {MEANT} AS id FROM reading WHERE {_NAMES} AND statement"
    only_here = {ident for (ident,) in db.execute(f"{meant} {_AMONG}", (_list(ids),)) if ident}
    if not only_here:
        return set()
    elsewhere = f"{meant} NOT {_AMONG} AND id {_AMONG}"
    only_here -= {ident for (ident,) in db.execute(elsewhere, (_list(ids), _list(only_here)))}
    telling = f"SELECT DISTINCT source FROM statement WHERE said = 'narrator' AND source {_AMONG} AND id NOT {_AMONG}"
    only_here -= {ident for (ident,) in db.execute(telling, (_list(only_here), _list(ids)))}
    earlier = f"""SELECT DISTINCT subject FROM statement WHERE subject {_AMONG} AND (subject_kind NOT IN
        ('person', 'event', 'place') OR act NOT IN (SELECT act FROM statement WHERE id {_AMONG}))"""
    only_here -= {ident for (ident,) in db.execute(earlier, (_list(only_here), _list(ids)))}
    about = f"SELECT id FROM statement WHERE subject {_AMONG} AND id NOT {_AMONG}"
    return {ident for (ident,) in db.execute(about, (_list(only_here), _list(ids)))}
