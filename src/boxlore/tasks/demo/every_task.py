"""The demo: makes a collection of the invented Tamm and Rourke families, and runs every task on it."""

import csv
import shutil
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, field
from datetime import date
from pathlib import Path

from boxlore.core.errors import WrongUse
from boxlore.core.fields.sittings import RECORDING_WORDS, SHOWN_WORDS, RecordingFacts, ShownAt
from boxlore.core.findings import several
from boxlore.core.records.audience import To
from boxlore.core.statements import KEEPER, Kind, Said, Source, Statement, Subject, Sure, read_source
from boxlore.disk.digests import sha256_of
from boxlore.disk.shipped import shipped
from boxlore.disk.unfinished import is_free, put_in_place
from boxlore.tasks.archive.transfer import transfer
from boxlore.tasks.check import check
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import DATABASE, Act, Collection, open_collection, start
from boxlore.tasks.collection.progress import QUIET, Progress, go_on
from boxlore.tasks.collection.records_for_outputs import Selection, record_of
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.collection.unfinished import work_folder
from boxlore.tasks.demo.housing import house
from boxlore.tasks.outputs.copies import copies
from boxlore.tasks.outputs.printed_sheets import PrintOrder, labels, sheet, slips, worksheet
from boxlore.tasks.outputs.web_pages import pages
from boxlore.tasks.scans.damage import look_closer
from boxlore.tasks.scans.intake import IntakeOptions, take_in
from boxlore.tasks.scans.pairing import by_table
from boxlore.tasks.strike import strike_out
from boxlore.tasks.telling.statements import Teller, Telling
from boxlore.tasks.telling.understanding import person_reading

SETTINGS = Settings(
    title="Tamm and Rourke family photographs",
    prefix="TR",
    series="A",
    holder="Rourke family, Port Chalmers",
    family="Tamm and Rourke family",
    history="A family of Reval (now Tallinn, Estonia) and of Port Chalmers, New Zealand.",
    hemisphere="south",
    language="en",
)

PERSON_FIELDS = (
    "given family born_as married_as nickname name sex born born_at died died_at living father mother spouse married"
).split()
LINKS = ("father", "mother", "spouse")


@dataclass(slots=True)
class _DemoMaking:
    """What the steps of making the demo share. `items` and `people` map the keys of its tables to what was made of
    them; `struck` are the ids of the statements to strike at the end."""

    collection: Collection
    teller: Teller
    items: dict[str, Subject] = field(default_factory=dict)
    people: dict[str, Subject] = field(default_factory=dict)
    struck: list[str] = field(default_factory=list)


def run(
    folder: Path, say: Callable[[str], None], progress: Progress = QUIET, on_day: date | None = None
) -> Iterator[tuple[str, Path]]:
    """Make the demo in a new or empty `folder`, then run check, copies, sheets, pages and transfer on it.

    It takes its name when all is made, so that a run that is broken off can be repeated. Yields (what was made, where
    it is then) after each task; `say` gets a sentence about each. Raises WrongUse if the folder is not empty.
    """
    if not is_free(folder):
        raise WrongUse(f"{folder} is not empty.", "Name a new folder for the demo.")
    with work_folder(folder, folder / "demo" if folder.exists() else folder) as work:
        for label, path in _make(work, say, progress, on_day):
            yield label, folder / path.relative_to(work)
        put_in_place(work, folder, last=DATABASE)


def _make(
    folder: Path, say: Callable[[str], None], progress: Progress, on_day: date | None
) -> Iterator[tuple[str, Path]]:
    """The same in the folder in which it is made."""
    start(folder, SETTINGS, on_day=on_day)
    with open_collection(folder, on_day=on_day) as collection:
        build(collection, say, progress)
        go_on(progress)
        yield "the collection", folder
        findings = list(check(collection))
        say(f"Check: {several(len(findings), 'finding')} to ask or mend, such as “{findings[0].finding.message}”")
        results = list(copies(collection, folder / "copies", progress=progress))
        go_on(progress)
        say(f"Copies: {len(results)}, each with its caption inside; not one pixel of a scan is changed.")
        yield "captioned copies", folder / "copies"
        printed = sheet(collection, folder / "print" / "album.pdf", progress=progress)
        say(f"Album: {several(printed.items, 'photograph')}, by decade.")
        yield "the album sheet", printed.path
        yield from _more_on_paper(collection, folder / "print", progress)
        shown = pages(collection, folder / "pages", progress=progress)
        say(f"Pages: {several(shown.items, 'photograph')} for anyone to see; the living are left out.")
        yield "web pages for anyone", folder / "pages" / "index.html"
        at_home = pages(collection, folder / "pages-family", PrintOrder(to=To.FAMILY), progress=progress)
        say(f"Family pages: {several(at_home.items, 'photograph')}, with everybody in them; not to be put on the web.")
        yield "the family's own pages", folder / "pages-family" / "index.html"
        sent = transfer(collection, folder / "transfer", progress=progress)
        say(f"Transfer: {sent.withheld} living people withheld from the open part.")
        yield "the package for an archive", folder / "transfer"


def _more_on_paper(collection: Collection, out: Path, progress: Progress) -> Iterator[tuple[str, Path]]:
    """Print slips, labels, and a worksheet of the wedding group, whose guests are not all known."""
    yield "caption slips", slips(collection, out / "slips.pdf").path
    yield "labels for boxes and folders", labels(collection, out / "labels.pdf").path
    group = PrintOrder(selection=Selection(event="the wedding of Helmi"))
    yield "a worksheet for a narrator", worksheet(collection, out / "worksheet.pdf", group, progress=progress)[0].path


def build(collection: Collection, say: Callable[[str], None], progress: Progress = QUIET) -> None:
    """Fill a new collection from the tables of the demo: intake, people, statements, housing, a sitting, a strike."""
    home = shipped("demo_family")
    making = _DemoMaking(collection, Teller(collection))
    _take_in(making, home, progress)
    look_closer(collection, progress)
    say(f"Intake: {several(len(making.items), 'item')} in two boxes, fronts paired with backs, one scan cut in three.")
    _people(making, home)
    count = _statements(making, home, progress)
    say(f"Statements: {count}, by two narrators, what is written on the prints, and the keeper.")
    house(collection, home, making.items)
    say("Housing: one box stands well, one on the floor of a damp wash-house; a fortnight of its climate is kept.")
    _sitting(making, home)
    report = strike_out(collection, making.struck)
    say(f"Struck: {report.struck} statement, at the teller's wish; no byte of it is left.")


def _rows(path: Path) -> list[dict[str, str]]:
    with open(path, encoding="utf-8", newline="") as file:
        return [{name: value or "" for name, value in row.items()} for row in csv.DictReader(file)]


def _take_in(making: _DemoMaking, home: Path, progress: Progress) -> None:
    plan = by_table(enumerate(_rows(home / "intake.csv"), 2), home)
    for result in take_in(making.collection, plan, IntakeOptions(copy=True), progress):
        if result.state != "taken":
            raise WrongUse(f"{result.key}: {result.why or result.state}", "The demo's own pictures are at fault.")
        making.items[result.key] = find_item(making.collection, result.number)
    go_on(progress)


def _people(making: _DemoMaking, home: Path) -> None:
    rows = _rows(home / "people.csv")
    making.people = {row["person"]: Subject(Kind.PERSON, making.collection.clock.new_id()) for row in rows}
    act = making.collection.act("the family, as Leida and Con told it")
    how = Telling(source=_narrator(making, "leida"))
    for row in rows:
        for name in PERSON_FIELDS:
            if words := row[name]:
                subject = making.people[row["person"]]
                statement = making.teller.add_words(act, subject, name, _name(rows, name, words), how)
                if name in LINKS:
                    _means(act, statement, making.people[words])
                else:
                    making.teller.read_into(act, statement)
    act.done()


def _name(rows: list[dict[str, str]], name: str, words: str) -> str:
    """The words of a person's field; for a link, the name of the person whose key `words` is."""
    if name not in LINKS:
        return words
    row = next(row for row in rows if row["person"] == words)
    return f"{row['given']} {row['family']}"


def _means(act: Act, statement: Statement, person: Subject) -> None:
    """Add the keeper's reading that says which person a statement means."""
    act.readings.append((statement.id, person_reading(person)))


def _narrator(making: _DemoMaking, key: str) -> Source:
    return Source(Said.NARRATOR, making.people[key].id)


def _source(making: _DemoMaking, text: str) -> Source:
    source = read_source(text) if text else KEEPER
    return _narrator(making, source.ref) if source.said is Said.NARRATOR else source


def _statements(making: _DemoMaking, home: Path, progress: Progress) -> int:
    rows = _rows(home / "statements.csv")
    progress.begin("Telling", len(rows))
    act = making.collection.act("what Leida and Con told, and what is written on the prints")
    for row in rows:
        statement = _tell(making, act, row)
        if row["act"] == "strike":
            making.struck.append(statement.id)
        go_on(progress)
        progress.step()
    act.done()
    return len(rows)


def _tell(making: _DemoMaking, act: Act, row: Mapping[str, str]) -> Statement:
    how = Telling(
        source=_source(making, row["source"]),
        sure=Sure(row["sure"] or Sure.SURE),
        language=row["language"],
        audience=row["audience"],
    )
    subject = making.items[row["item"]]
    if row["marker"]:
        subject = _marker(making, act, subject, row["marker"])
    person = making.people.get(row["person"])
    if person is None and row["field"] in ("person", "named", "photographer") and row["words"]:
        person = making.people.setdefault(row["words"], act.new(Kind.PERSON))
        if not any(statement.subject == person for statement in act.statements):
            act.state(person, "name", row["words"], source=how.source)
    statement = making.teller.add_words(act, subject, row["field"], row["words"], how)
    if person is not None:
        _means(act, statement, person)
    else:
        making.teller.read_into(act, statement)
    return statement


def _marker(making: _DemoMaking, act: Act, item: Subject, area: str) -> Subject:
    """Make a marker on the front of an item; `area` as the table has it."""
    scan = next(scan for scan in record_of(making.collection, item.id).scans if scan.side == "recto")
    marker = act.new(Kind.MARKER)
    act.state(marker, "scan", scan.id)
    act.state(marker, "area", area)
    return marker


def _sitting(making: _DemoMaking, home: Path) -> None:
    """Make one sitting, with its time log and its recording, whose SHA-256 is noted."""
    collection = making.collection
    recording = collection.folder / "recordings" / "sitting-1.wav"
    shutil.copyfile(home / "recording.wav", recording)
    act = collection.act("a sitting with Leida")
    sitting = act.new(Kind.SITTING)
    how = Telling(sitting=sitting.id)
    narrator = making.teller.add_words(act, sitting, "narrator", "Leida Rourke", how)
    _means(act, narrator, making.people["leida"])
    making.teller.add(act, sitting, "interviewer", "Mia Rourke", how)
    making.teller.add(act, sitting, "place", "Port Chalmers", how)
    agreed = "Read out and agreed: kept in the family, with the archive after that. Nobody was paid."
    making.teller.add(act, sitting, "agreement", agreed, how)
    path = recording.relative_to(collection.folder).as_posix()
    facts = RecordingFacts(path=path, sha256=sha256_of(recording), bytes=recording.stat().st_size, start=0)
    act.state(sitting, "recording", RECORDING_WORDS.write(facts), sitting=sitting.id, moment=0)
    for row in _rows(home / "sitting.csv"):
        if row["what"] == "shown":
            shown = ShownAt(making.items[row["item"]].id, int(row["ms"]))
            act.state(sitting, "shown", SHOWN_WORDS.write(shown), sitting=sitting.id, moment=shown.at)
    act.done()
