"""Names that the gate found in something finished, for the keeper to answer, so that no stop is a dead end.

A record is judged before anything is made of it, and what is in doubt there is asked there (`names-found.csv`). What
stops a finished file is mostly no record: the title of the collection, a file of settings, two values that read as one
name where they meet. Each such place is a row of the table `names-left.csv` in the collection's folder. The gate reads
the answers when it is stopped again, keeps them in the log, and stops no more for what may be named; an answer that is
changed in the table holds from then on.
"""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path

from boxlore.core.errors import CouldNot, WrongUse
from boxlore.core.fields.name_answers import NAMING_WORDS, NamingAnswer, NamingDecision
from boxlore.core.records.name_answers import FINISHED, Decided, decided
from boxlore.core.statements import Kind, Subject
from boxlore.disk.tables import lacks_column, read_table
from boxlore.exports.inventory import as_table
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.output_paths import NAMES_LEFT, write_own

TABLE = NAMES_LEFT
FILE, ITEM, WHERE, WORDS, PERSON, ANSWER, KEY = "File", "Number", "Where", "Words", "Person", "Answer", "Key"
HEADING = (FILE, ITEM, WHERE, WORDS, PERSON, ANSWER, KEY)
ANSWERS: dict[str, NamingAnswer] = {
    "hide": NamingAnswer.HIDE,
    "not that person": NamingAnswer.OTHER,
    "may be named": NamingAnswer.MAY,
}
"""What may be written in the column Answer."""

WRITTEN = {answer: words for words, answer in ANSWERS.items()}


@dataclass(frozen=True, slots=True)
class LeftName:
    """One name in one place of a finished file: whose (id), by what the place is known again, and how it is shown.

    `item` is the number of the item, or what else the words are of; `sentence` has the name in brackets. `place` is
    what the answer is about: `setting holder`, or any finished text with the same words.
    """

    person: str
    digest: str
    file: str = ""
    item: str = ""
    where: str = ""
    sentence: str = ""
    place: str = FINISHED

    @property
    def key(self) -> str:
        """What names the place in the table: person and digest, and between them a place that is no finished text."""
        place = () if self.place == FINISHED else (self.place.replace(" ", "+"),)
        return " ".join((self.person, *place, self.digest))


def answers_given(collection: Collection) -> Decided:
    """What the keeper has answered of finished texts. Raises WrongUse for an answer that cannot be read."""
    return decided(("", decision) for decision in decisions_given(collection))


def decisions_given(collection: Collection) -> list[NamingDecision]:
    """Every answer, the table before the log; what is new in the table is kept in the log.

    Raises WrongUse, naming the line, for an answer that cannot be read.
    """
    whole = Subject(Kind.COLLECTION, collection.id)
    told = {
        _place(decision): (decision, statement.id)
        for statement, _ in collection.store.statements(whole)
        if statement.field == "naming" and (decision := NAMING_WORDS.or_none(statement.words))
    }
    decisions = {place: decision for place, (decision, _) in told.items()}
    new = [decision for decision in _in_table(collection) if decisions.get(_place(decision)) != decision]
    decisions |= {_place(decision): decision for decision in new}
    if new and collection.store.writable:
        act = collection.act("answers about names in what was made")
        for decision in new:
            replaces = told[_place(decision)][1] if _place(decision) in told else ""
            act.state(whole, "naming", NAMING_WORDS.write(decision), audience="keeper", replaces=replaces)
        act.done()
    return list(decisions.values())


def _place(decision: NamingDecision) -> tuple[str, str, str]:
    return decision.person, decision.where, decision.digest


def _in_table(collection: Collection) -> Iterator[NamingDecision]:
    for row in _rows(collection):
        written = " ".join(row[ANSWER].lower().split())
        if written and written not in ANSWERS:
            raise WrongUse(
                f"{TABLE}: “{written[:40]}” is no answer.", f"Write one of: {', '.join(ANSWERS)}; or leave it empty."
            )
        person, *place, digest = row[KEY].split() or [""] * 2
        decision = f"{ANSWERS.get(written, NamingAnswer.HIDE)} {person} {' '.join(place) or FINISHED} {digest}"
        if written and (read := NAMING_WORDS.or_none(decision)) is not None:
            yield read


def _rows(collection: Collection) -> list[dict[str, str]]:
    path = collection.folder / TABLE
    return [row.cells for row in read_table(path, lambda names: _check(path, names), HEADING)] if path.is_file() else []


def _check(path: Path, names: Sequence[str]) -> None:
    for name in (ANSWER, KEY):
        if name not in names:
            raise lacks_column(path, names, name, "Fill in the table as it was written, or remove it to have it anew.")


def list_names(collection: Collection, left: Iterable[LeftName]) -> Path | None:
    """Add the places to the table, each once, with the answers that stand there. None where it cannot be written.

    A collection that is only read has the table too, where its folder takes it: answers hold as they stand there.
    """
    path = collection.folder / TABLE
    rows = {row[KEY]: [row.get(name, "") for name in HEADING] for row in _rows(collection)}
    people = collection.people()
    for name in left:
        row = [name.file, name.item, name.where, name.sentence, people[name.person].name, "", name.key]
        rows.setdefault(name.key, row)
    try:
        path.unlink(missing_ok=True)  # what was written there is in `rows`
        write_own(collection, TABLE, b"".join(as_table([HEADING, *rows.values()])))
    except (CouldNot, OSError):
        return None
    return path
