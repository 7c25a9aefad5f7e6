"""Telling: one statement from a screen, a shell or a row of a table, read and stored beside its reading."""

import csv
import re
from collections.abc import Callable, Iterable
from dataclasses import dataclass, replace
from pathlib import Path

from boxlore.core.errors import WrongUse
from boxlore.core.records.audience import read_audience
from boxlore.core.records.containers import looks_like_number
from boxlore.core.sitting.worksheet_codes import read_answers, read_code
from boxlore.core.statements import (
    KEEPER,
    Kind,
    Reading,
    Said,
    Source,
    Statement,
    Subject,
    Sure,
    field_of,
    fold,
    read_source,
)
from boxlore.tasks.collection.marks import dated, holders
from boxlore.tasks.collection.opening import Act, Collection
from boxlore.tasks.telling.understanding import Around, Understanding, around, person_reading

_ID = re.compile(r"[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}")
READ_TOGETHER = {"date": "place", "place": "date"}
"""What is read anew when the other is told."""

MAKES = {"person": Kind.PERSON, "event": Kind.EVENT}


@dataclass(frozen=True, slots=True, kw_only=True)
class Telling:
    """How something is told: by whom, how surely, in which language, for whom, in which sitting."""

    source: Source = KEEPER
    sure: Sure = Sure.SURE
    language: str = ""
    audience: str = ""
    sitting: str = ""
    moment: int | None = None


def find_items(collection: Collection, text: str) -> list[Subject]:
    """The items meant by a number, or that a mark means or ever meant: now first. Raises WrongUse if there is none."""
    store = collection.store
    if looks_like_number(text):
        ident = store.item_by_number(text.strip().upper())
        if ident is None:
            raise WrongUse(f"There is no item {text.strip().upper()} here.", "boxlore find shows what there is.")
        return [Subject(Kind.ITEM, ident)]
    found = [one.item for one in holders(collection, text)]
    if not found:
        raise WrongUse(f"Nothing is, or was, kept at {text}.", "Use a number (TRA-0042) or a mark (3/12/4).")
    return [Subject(Kind.ITEM, item) for item in dict.fromkeys(found)]


def find_item(collection: Collection, text: str) -> Subject:
    """The one item meant by a number or a mark. Raises WrongUse if there is none, or a mark has meant more than one."""
    found = find_items(collection, text)
    if len(found) > 1:
        held = holders(collection, text)
        said = "; ".join(f"{collection.store.number_of(one.item)} ({dated(one)})" for one in held[:6])
        raise WrongUse(f"{text} is the mark of {len(found)} items: {said}.", "Use the number instead.")
    return found[0]


class Teller:
    """Writes what is told about one collection. One is made for a sitting or a run of the command."""

    def __init__(self, collection: Collection) -> None:
        self._collection = collection
        self.understanding = Understanding(collection)
        self._narrators: dict[str, str] = {}

    def tell(
        self,
        subject: Subject,
        name: str,
        words: str,
        how: Telling,
        *,
        replaces: str = "",
        clears: tuple[str, str, str] | None = None,
    ) -> Statement:
        """One statement, safe on the disk when this returns. `replaces` corrects an earlier one."""
        act = self._collection.act(f"{name}: {words[:40]}" if words else f"{name}: asked, not known")
        statement = self.add(act, subject, name, words, how, replaces=replaces)
        if clears is not None:
            act.clears.append(clears)
        act.done()
        return statement

    def add(self, act: Act, subject: Subject, name: str, words: str, how: Telling, *, replaces: str = "") -> Statement:
        """The same, gathered into an act that holds more than one statement."""
        statement = self.add_words(act, subject, name, words, how, replaces=replaces)
        self.read_into(act, statement)
        return statement

    def add_words(
        self, act: Act, subject: Subject, name: str, words: str, how: Telling, *, replaces: str = ""
    ) -> Statement:
        """Gather the words alone, for a caller that knows itself what they mean."""
        field = field_of(name, subject.kind)
        words = words.strip()
        if not words and how.sure is not Sure.NOT_KNOWN:
            raise WrongUse("There are no words to keep.", "Say something, or that it is not known.")
        return act.state(
            subject,
            name,
            words,
            language=how.language or self._collection.settings.language,
            source=self._source(act, how.source),
            sure=how.sure,
            audience=str(read_audience(how.audience)) if how.audience else field.audience,
            sitting=how.sitting,
            moment=how.moment,
            replaces=replaces,
        )

    def _source(self, act: Act, source: Source) -> Source:
        """A narrator told by name is a person: the one of that name, or a new one. Raises WrongUse for two."""
        name = source.ref
        people = self._collection.people()
        if source.said is not Said.NARRATOR or not name or name in people or _ID.fullmatch(name):
            return source
        if name not in self._narrators:
            found = {one.id for one in people.values() if fold(name) in map(fold, (one.name, *one.forms, *one.calls))}
            if len(found) > 1:
                raise WrongUse(f"{len(found)} people are called {name[:40]}.", "Give the whole name.")
            if not found:
                person = act.new(Kind.PERSON)
                act.state(person, "name", name)
                found = {person.id}
            (self._narrators[name],) = found
        return Source(Said.NARRATOR, self._narrators[name])

    def read_into(self, act: Act, statement: Statement) -> None:
        """Add what the words come to; a person or event that nobody knows yet is made from them."""
        reads = field_of(statement.field, statement.subject.kind).reads
        if not reads or not statement.words:
            return
        subject = statement.subject
        beside = self._around(act, subject) if reads in READ_TOGETHER else None
        understood = self.understanding.read(reads, statement.words, beside)
        if understood is not None:
            act.readings.append((statement.id, understood.reading))
            if reads in READ_TOGETHER and understood.reading.usable:
                self._read_again(act, subject, READ_TOGETHER[reads])
        elif reads in MAKES:
            made = act.new(MAKES[reads])
            how = {"source": statement.source, "audience": statement.audience, "language": statement.language}
            act.state(made, "name", statement.words, **how)
            act.readings.append((statement.id, person_reading(made)))

    def _told(self, act: Act, subject: Subject) -> list[tuple[Statement, Reading | None]]:
        """What is told of a thing so far, in this act too."""
        read = dict(act.readings)
        now = [(one, read.get(one.id)) for one in act.statements if one.subject == subject]
        replaced = {one.replaces for one, _ in now}
        before = self._collection.store.statements(subject)
        return [*((one, read.get(one.id, reading)) for one, reading in before if one.id not in replaced), *now]

    def _around(self, act: Act, subject: Subject) -> Around:
        return around((one.field, reading) for one, reading in self._told(act, subject))

    def _read_again(self, act: Act, subject: Subject, name: str) -> None:
        """A place as it was in the year told since, a season as at the place told since; never a confirmed one."""
        beside = self._around(act, subject)
        for statement, reading in self._told(act, subject):
            if statement.field != name or not statement.words or (reading is not None and reading.confirmed):
                continue
            again = self.understanding.read(name, statement.words, beside)
            if again is not None and again.reading != reading:
                act.readings = [(one, other) for one, other in act.readings if one != statement.id]
                act.readings.append((statement.id, again.reading))


@dataclass(frozen=True, slots=True)
class NotTaken:
    """A row of a table that could not be taken in: its line (the heading is line 1), and why."""

    line: int
    why: str


def tell_from(collection: Collection, path: Path, how: Telling, said: Callable[[Statement], None]) -> list[NotTaken]:
    """Many statements from a CSV with the columns item, field, text, by, sure, audience, language.

    In place of item and field a column `code` may hold the code of a worksheet's line; a file that ends in .txt is
    read as answers, one `CODE: words` a line. Every row that can be taken is taken, in one act; the others come back
    with their reasons.
    """
    teller = Teller(collection)
    act = collection.act(f"told from {path.name}")
    refused: list[NotTaken] = []
    for line, row in _rows(path):
        try:
            said(_tell_row(teller, act, collection, row, how))
        except WrongUse as error:
            refused.append(NotTaken(line, str(error)))
    act.done()
    return refused


def _tell_row(teller: Teller, act: Act, collection: Collection, row: dict[str, str], how: Telling) -> Statement:
    words = row.get("text") or row.get("words") or ""
    told = how_told(row, how)
    if row.get("code", "").strip():
        if words.strip() == "?":
            words, told = "", replace(told, sure=Sure.NOT_KNOWN)
        subject, field = asked_by(collection, row["code"])
        return teller.add(act, subject, field, words, told)
    return teller.add(act, find_item(collection, row.get("item", "")), row.get("field", "").strip(), words, told)


def asked_by(collection: Collection, code: str) -> tuple[Subject, str]:
    """What a worksheet's line asks: the item, or the marker on its front, and the field."""
    line = read_code(code, collection.settings.prefix)
    item = find_item(collection, line.number)
    if not line.marker:
        return item, line.field
    for material in collection.store.about_items(ids=(item.id,)):
        fronts = {scan.id for scan in material.scans if scan.side == "recto"}
        for marker in material.markers:
            if marker.number == line.marker and marker.scan in fronts:
                return Subject(Kind.MARKER, marker.id), line.field
    raise WrongUse(f"{line.number} has no number {line.marker} on it.", "Look at the worksheet again.")


def how_told(row: dict[str, str], how: Telling) -> Telling:
    """A row's own source, sureness, audience and language over those given for all rows."""
    source = row.get("by") or row.get("source")
    return replace(
        how,
        source=read_source(source) if source else how.source,
        sure=read_sure(row["sure"]) if row.get("sure") else how.sure,
        audience=row.get("audience") or how.audience,
        language=row.get("language") or how.language,
    )


def read_sure(text: str) -> Sure:
    """`sure`, `likely`, `guess` or `not-known`. Raises WrongUse for anything else."""
    try:
        return Sure(text.strip().lower())
    except ValueError:
        raise WrongUse(f"“{text[:40]}” is no way of being sure.", f"Use one of: {', '.join(Sure)}.") from None


def _rows(path: Path) -> Iterable[tuple[int, dict[str, str]]]:
    try:
        if path.suffix.lower() == ".txt":
            for answer in read_answers(path.read_text(encoding="utf-8-sig")):
                yield answer.at, {"code": answer.code, "text": answer.words}
            return
        with open(path, encoding="utf-8-sig", newline="") as file:
            reader = csv.DictReader(file)
            missing = {"item", "field"} - set(reader.fieldnames or ())
            if missing and "code" not in (reader.fieldnames or ()):
                raise WrongUse(f"{path.name} has no column {' or '.join(sorted(missing))}.", "See boxlore tell --help.")
            for row in reader:
                yield reader.line_num, {key: value or "" for key, value in row.items() if key}
    except FileNotFoundError:
        raise WrongUse(f"There is no file {path}.") from None
    except UnicodeDecodeError as error:
        raise WrongUse(f"{path.name} is not in UTF-8.", "Save it in UTF-8.") from error
