"""The offer list: what an archive is shown before anything is handed over, and its answer read back.

Thumbnails, titles, dates and extent as anyone may see them: no name of anyone living, no picture that shows one.
Sittings of which recordings or papers are kept stand in the list too, as one thing each, under their identifiers.
The answer is the same table with yes or no in the column “Wanted”. An empty `archive.toml` goes with the list: what the
archive writes there makes the transfer suit it.
"""

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from html import escape
from pathlib import Path

from boxlore.core.crosswalk import captions
from boxlore.core.crosswalk.dublin_core import CollectionFacts
from boxlore.core.crosswalk.extent import Extent
from boxlore.core.errors import CouldNot, WrongUse
from boxlore.core.findings import Finding, several
from boxlore.core.records.audience import To
from boxlore.core.records.item_record import Record, is_number_alone
from boxlore.core.records.marks import looks_like_number
from boxlore.core.statements import Kind, Said, Source, Subject
from boxlore.core.wording.catalogue import ENGLISH
from boxlore.disk.pictures import make_jpeg
from boxlore.disk.tables import read_any_table
from boxlore.disk.unfinished import is_free, put_in_place
from boxlore.disk.writing import write_whole
from boxlore.exports.ead_dialects import language_name
from boxlore.exports.escaping import clean
from boxlore.exports.inventory import as_table
from boxlore.sheets.picture_on_paper import front_of
from boxlore.sheets.typesetting import note
from boxlore.tasks.archive.archive_settings import FILE_NAME, as_toml
from boxlore.tasks.archive.receipt import state_once
from boxlore.tasks.archive.sittings_held import SittingHeld, not_to_be_heard, sitting_held, sittings_held
from boxlore.tasks.archive.transfer_context import facts_of, order_of_containers, with_contact
from boxlore.tasks.archive.transfer_updates import URN
from boxlore.tasks.collection.gate import Gate, ask_of_settings
from boxlore.tasks.collection.opening import Act, Collection
from boxlore.tasks.collection.output_paths import OFFER_LIST, check_place
from boxlore.tasks.collection.progress import QUIET, Progress, go_on
from boxlore.tasks.collection.records_for_outputs import EVERYTHING, Selection, check_chosen, seen_by, withheld_choice
from boxlore.tasks.collection.unfinished import work_folder
from boxlore.tasks.scans.unchanged import ScanCheck

COLUMNS = ("Number", "Identifier", "Title", "Date", "Kind", "Access", "Wanted", "Remarks")
THUMBNAIL = 240
"""Pixels on the long side: enough to know a picture, too few to print one."""

ANSWERS = {"yes": "yes", "y": "yes", "wanted": "yes", "no": "no", "n": "no", "not wanted": "no"}


@dataclass(frozen=True, slots=True)
class Offered:
    """The list: how many items, how many thumbnails, and how many pictures are not shown."""

    items: int
    pictures: int
    hidden: int
    findings: tuple[Finding, ...] = ()


def offer(
    collection: Collection, out: Path, *, selection: Selection = EVERYTHING, progress: Progress = QUIET
) -> Offered:
    """Write `offer.html` with its thumbnails, `offer.csv` and an empty `archive.toml` into `out`.

    Raises CouldNot if a name is left in them.
    """
    check_place(collection, out)
    if not is_free(out):
        raise WrongUse(f"{out} is not empty.", "Name a new folder for the list.")
    check_chosen(collection, selection)
    seen = seen_by(collection, To.OUTSIDE)
    ask_of_settings(seen)
    facts = facts_of(collection, seen)
    every = seen.handed_over(selection, order_of_containers(collection))
    records = [record for record in every if record.id not in facts.not_given]
    if not records:
        if selection.asked:
            raise CouldNot(*withheld_choice(selection))
        raise CouldNot("There is nothing to offer.", "Take items in first, or choose others.")
    with work_folder(collection.folder, out / "offer" if out.exists() else out) as work:
        offered = _make(collection, facts, records, work, progress, is_whole=selection == EVERYTHING)
        Gate(seen).check_folder(work)
        put_in_place(work, out)
    return offered


def _make(
    collection: Collection,
    facts: CollectionFacts,
    records: list[Record],
    out: Path,
    progress: Progress,
    *,
    is_whole: bool,
) -> Offered:
    """Write the list into the folder in which it is made; `is_whole` for one of everything."""
    progress.begin("Making thumbnails", len(records))
    holding, rows, pictures, hidden = Extent(), [], 0, 0
    check, damaged = ScanCheck(collection.folder), []
    for record in records:
        go_on(progress)
        holding.add(record)
        thumbnail = _thumbnail(check, record, out)
        if not thumbnail and not record.closed_scans and front_of(record):
            damaged.append(note("offer.picture", f"The picture of {record.number} cannot be shown."))
        pictures += bool(thumbnail)
        hidden += record.closed_scans
        rows.append(_row(record, facts, thumbnail))
        progress.step()
    sittings = list(_sittings_offered(collection)) if is_whole else []  # they tell of more than of a choice
    items = (_cells(record, facts) for record in records)
    table = as_table([COLUMNS, *items, *map(_cells_of_sitting, sittings)])
    write_whole(out / OFFER_LIST, b"".join(table))
    write_whole(out / "offer.html", _page(facts, holding, rows, sittings))
    write_whole(out / FILE_NAME, as_toml().encode())
    return Offered(len(records), pictures, hidden, (*check.findings, *damaged))


def _thumbnail(check: ScanCheck, record: Record, out: Path) -> str:
    scan = front_of(record)
    if scan is None or record.closed_scans:
        return ""
    try:
        data = check.made(scan, record.number, lambda file: make_jpeg(file, THUMBNAIL, area=scan.part, turn=scan.turn))
    except CouldNot:
        return ""
    if data is None:
        return ""
    write_whole(out / "pictures" / f"{record.number}.jpg", data)
    return f"pictures/{record.number}.jpg"


def _cells(record: Record, facts: CollectionFacts) -> tuple[str, ...]:
    kind, title, access = captions.nature_of(record), captions.title(record), _access(record, facts)
    return (record.number, _identifier(record.id), title, record.formal_date, kind, access, "", "")


def _cells_of_sitting(held: SittingHeld) -> tuple[str, ...]:
    return ("", _identifier(held.id), _title_of_sitting(held), held.day, held.words, _IN_CLOSED_PART, "", "")


_IN_CLOSED_PART = "It would come in the closed part, which says until when, and why."


def _access(record: Record, facts: CollectionFacts) -> str:
    """What of an item would come in the closed part alone, as far as this list may say it; '' for nothing."""
    if is_number_alone(record):
        until = facts.closed_whole.get(record.id)
        return f"Closed until {until} by those who gave it. {_IN_CLOSED_PART}" if until else _IN_CLOSED_PART
    if record.closed_scans and record.scans:
        return "Its scans would come in the closed part, which says until when, and why."
    return ""


def _sittings_offered(collection: Collection) -> Iterator[SittingHeld]:
    """Those that an archive may have in its closed part."""
    unheard = not_to_be_heard(collection, seen_by(collection, To.ARCHIVE).recipient)
    return (held for held in sittings_held(collection) if held.id not in unheard)


def _title_of_sitting(held: SittingHeld) -> str:
    """Without who told in it: they may live."""
    return f"Sitting noted on {held.day}"


def _identifier(item: str) -> str:
    """What an answer is known by: a number is an item of every collection that has the prefix."""
    return f"{URN}{item}"


def _row(record: Record, facts: CollectionFacts, thumbnail: str) -> str:
    alt = escape(clean(captions.alt_text(record)), quote=True)
    closed = f"<p>{escape(_access(record, facts) or 'It has no picture here.')}</p>"
    picture = f'<img src="{thumbnail}" alt="{alt}">' if thumbnail else closed
    title, date = escape(clean(captions.title(record))), escape(clean(record.formal_date))
    return f"<figure>{picture}<figcaption>{record.number}<br>{title}<br>{date}</figcaption></figure>"


def _sound(sittings: Sequence[SittingHeld]) -> str:
    """What lies beside the pictures, as a paragraph."""
    if not sittings:
        return ""
    lines = "".join(f"<li>{escape(f'{_title_of_sitting(held)}: {held.words}')}</li>" for held in sittings)
    return f"""<p>Beside them lie recordings and papers of what was told. They name the living, or let them be heard,
and would come in the closed part; each sitting has a line of its own at the end of <code>offer.csv</code>:</p>
<ul>{lines}</ul>
"""


def _page(facts: CollectionFacts, holding: Extent, rows: list[str], sittings: Sequence[SittingHeld]) -> bytes:
    title = escape(clean(facts.title))
    whom = escape(clean(with_contact(facts.holder, facts.contact)))
    languages = [language_name(tag) for tag, _ in holding.languages.most_common()] or [language_name(facts.language)]
    return f"""<!doctype html>
<html lang="en"><head><meta charset="utf-8"><title>{title}: an offer</title>
<style>body{{font:1rem/1.4 serif;max-width:64rem;margin:2rem auto;padding:0 1rem}}
main{{display:grid;grid-template-columns:repeat(auto-fill,minmax(14rem,1fr));gap:1rem}}
figure{{margin:0}}img{{max-width:100%}}</style></head><body>
<h1>{title}</h1>
<p>{escape(holding.words)}; {escape(holding.years)}; {several(holding.scans, "scan")} that may be shown. Told in
{
        escape(ENGLISH.listed(languages))
    }. Names of people taken as living, pictures that show them, and what those who offer it have
closed until a day are left out of this list; a transfer has them in a closed part, with a day and a reason for each.
Whether the originals come too, or scans only, is agreed before the transfer.</p>
{_sound(sittings)}<p>Please write yes or no in the column “Wanted” of <code>offer.csv</code> and send it back{
        f" to {whom}" if whom else ""
    }; the transfer will suit what you write in <code>archive.toml</code>.</p>
<main>{"".join(rows)}</main></body></html>
""".encode()


@dataclass(frozen=True, slots=True)
class Answered:
    """What came back: how many are wanted, how many are not, the lines that could not be read, how many remarks; in
    `note` in which encoding it was read, where that was guessed, and how many lines say nothing."""

    wanted: int
    not_wanted: int
    refused: tuple[str, ...]
    remarks: int = 0
    note: str = ""


def read_answer(collection: Collection, path: Path) -> Answered:
    """Take the archive's answer in, in one act; a line that says nothing leaves its item as it was."""
    collection.back_up_before("an answer")
    act = collection.act(f"an archive's answer to the offer was read: {path.name}")
    source = Source(Said.DOCUMENT, f"answer {path.name}")
    counted = {"yes": 0, "no": 0}
    remarks = silent = 0
    refused: list[str] = []
    table = read_any_table(path, _check_heading(path), COLUMNS)
    for row in table.rows:
        said, remark = (row.cells.get(name, "").strip() for name in ("Wanted", "Remarks"))
        if row.fault:
            refused.append(f"Line {row.line}: {row.fault}")
        silent += not (row.fault or said)
        if row.fault or not (said or remark):
            continue
        try:
            item = _about(collection, row.cells)
            if remark:
                remarks += state_once(collection, act, item, "archive_remark", remark, source)
            if said:
                answer = _answer(said)
                _say_wanted(collection, act, item, answer, source)
                counted[answer] += 1
        except WrongUse as error:
            refused.append(f"Line {row.line}: {error}")
    act.done()
    lines = f"{several(silent, 'line has', 'lines have')} neither yes nor no: ask the archive about what is on it."
    note = " ".join(words for words in (table.note, lines if silent else "") if words)
    return Answered(counted["yes"], counted["no"], tuple(refused), remarks, note)


def _answer(said: str) -> str:
    answer = ANSWERS.get(said.lower())
    if answer is None:
        raise WrongUse(f"“{said[:20]}” is neither yes nor no.")
    return answer


def _about(collection: Collection, cells: Mapping[str, str]) -> Subject:
    """The item, or the sitting, that a line is about. Raises WrongUse for one that is not here."""
    number, named = cells.get("Number", "").strip().upper(), cells.get("Identifier", "").strip()
    if not number and named:
        held = sitting_held(collection, named.removeprefix(URN))
        if held is None or _identifier(held.id) != named:
            raise WrongUse(f"there is no sitting {named[:50]} here.")
        return Subject(Kind.SITTING, held.id)
    ident = collection.store.item_by_number(number) if looks_like_number(number) else None
    if ident is None:
        raise WrongUse(f"there is no photograph {number[:20]} here.")
    if cells.get("Identifier", "").strip() not in ("", _identifier(ident)):
        raise WrongUse(f"{number} is another item here than in that offer.")
    return Subject(Kind.ITEM, ident)


def _say_wanted(collection: Collection, act: Act, item: Subject, answer: str, source: Source) -> None:
    rows = (statement for statement, _ in collection.store.statements(item))
    before = next((statement for statement in rows if statement.field == "wanted"), None)
    if before is None or before.words != answer:
        replaces = before.id if before else ""
        act.state(item, "wanted", answer, source=source, audience="keeper", replaces=replaces)


def _check_heading(path: Path) -> Callable[[Sequence[str]], None]:
    def check(names: Sequence[str]) -> None:
        if not {"Number", "Wanted"} <= set(names):
            raise WrongUse(f"{path.name} lacks the column Number or Wanted.", "Use the offer.csv of the list.")

    return check
