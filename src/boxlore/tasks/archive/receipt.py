"""The receipt: what the archive sends back, read into the log and carried from then on.

A CSV with the columns of `COLUMNS`; a line without a number is of the whole: its accession number, the archive's
reference of the collection. The archive is the
source of what it says, so everyone can see from whom a reference comes.
"""

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path

from boxlore.core.crosswalk import captions
from boxlore.core.errors import WrongUse
from boxlore.core.fields.table import FIELDS
from boxlore.core.records.item_record import Record
from boxlore.core.records.marks import looks_like_number
from boxlore.core.statements import Kind, Said, Source, Subject
from boxlore.disk.tables import lacks_column, read_any_table
from boxlore.tasks.collection.opening import Act, Collection

WHOLE = "the whole transfer"
COLUMNS = ("Number", "Identifier", "Title", "Accession number", "The archive's reference", "Remarks")


def blank_rows(records: Iterable[Record], reference: str = "") -> Iterator[tuple[str, ...]]:
    """The receipt as it goes out: a line for the whole, then one for each item, with room for the archive's words.
    `reference` is the archive's own of the collection, where it has given one."""
    yield COLUMNS
    yield ("", "", WHOLE, "", reference, "")
    for record in records:
        given = "; ".join(view.words for view in record.all("archive_reference"))
        yield (record.number, f"urn:uuid:{record.id}", captions.title(record), "", given, "")


@dataclass(frozen=True, slots=True)
class Received:
    """What a receipt brought: accession numbers, how many references and remarks, and the lines that could not be
    read; in which encoding it was read, where that was guessed."""

    accessions: tuple[str, ...]
    references: int
    refused: tuple[str, ...]
    remarks: int = 0
    note: str = ""


def read_receipt(collection: Collection, path: Path, *, archive: str = "") -> Received:
    """Take a receipt in, in one act. A line about an item that is not here is refused by its number and line."""
    source = Source(Said.DOCUMENT, f"receipt {path.name}" + (f" of {archive}" if archive else ""))
    collection.back_up_before("a receipt")
    act = collection.act(f"a receipt of an archive was read: {path.name}")
    told = dict.fromkeys(("accession", "archive_reference", "archive_remark"), 0)
    accessions: dict[str, None] = {}
    refused: list[str] = []
    whole = Subject(Kind.COLLECTION, collection.id)
    table = read_any_table(path, _check_heading(path), COLUMNS)
    for row in table.rows:
        if row.fault:
            refused.append(f"Line {row.line}: {row.fault}")
            continue
        cells = {name: row.cells.get(name, "").strip() for name in COLUMNS}
        if cells["Accession number"]:
            accessions[cells["Accession number"]] = None
            told["accession"] += state_once(collection, act, whole, "accession", cells["Accession number"], source)
        of_an_item = bool(cells["Number"] or cells["Identifier"] or cells["Title"] not in ("", WHOLE))
        if of_an_item and not cells["Number"] and cells["The archive's reference"]:
            refused.append(f"Line {row.line}: a reference without an item's number.")
        try:
            about = _about(collection, cells) if cells["Number"] else whole
        except WrongUse as error:
            refused += [f"Line {row.line}: {error}"] if any(cells[name] for name in COLUMNS[4:]) else []
            continue
        for name, column in (("archive_reference", COLUMNS[4]), ("archive_remark", COLUMNS[5])):
            if cells[column] and (cells["Number"] or not of_an_item or name == "archive_remark"):
                told[name] += state_once(collection, act, about, name, cells[column], source)
    act.done()
    return Received(tuple(accessions), told["archive_reference"], tuple(refused), told["archive_remark"], table.note)


def state_once(collection: Collection, act: Act, about: Subject, name: str, words: str, source: Source) -> bool:
    """State what an archive says of a thing, unless it was said in the same words before."""
    known = [*(statement for statement, _ in collection.store.statements(about)), *act.statements]
    if any(row.subject == about and row.field == name and row.words == words for row in known):
        return False
    act.state(about, name, words, source=source, audience=FIELDS[name].audience)
    return True


def _about(collection: Collection, cells: Mapping[str, str]) -> Subject:
    """The item that a line is about. Raises WrongUse for one that is not here."""
    number = cells["Number"].upper()
    ident = collection.store.item_by_number(number) if looks_like_number(number) else None
    if ident is None:
        raise WrongUse(f"There is no item {number[:20]} here.")
    if cells["Identifier"] not in ("", f"urn:uuid:{ident}"):
        raise WrongUse(f"{number} has another identifier here; this receipt is of another collection.")
    return Subject(Kind.ITEM, ident)


def _check_heading(path: Path) -> Callable[[Sequence[str]], None]:
    def check(names: Sequence[str]) -> None:
        if lacking := [name for name in COLUMNS[:5] if name not in names]:
            raise lacks_column(path, names, f"“{lacking[0]}”", "Use the receipt.csv of the package.")

    return check
