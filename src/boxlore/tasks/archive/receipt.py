"""The receipt: what the archive sends back, read into the log and carried from then on.

A CSV with the columns of `COLUMNS`; one line may carry only the accession number of the whole. The archive is the
source of what it says, so everyone can see from whom a reference comes.
"""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path

from boxlore.core.crosswalk import captions
from boxlore.core.errors import WrongUse
from boxlore.core.records.item_record import Record
from boxlore.core.records.marks import looks_like_number
from boxlore.core.statements import Kind, Said, Source, Subject
from boxlore.disk.tables import lacks_column, read_table
from boxlore.tasks.collection.opening import Act, Collection

COLUMNS = ("Number", "Identifier", "Title", "Accession number", "The archive's reference", "Remarks")


def blank_rows(records: Iterable[Record]) -> Iterator[tuple[str, ...]]:
    """The receipt as it goes out: a line for the whole, then one for each item, with room for the archive's words."""
    yield COLUMNS
    yield ("", "", "the whole transfer", "", "", "")
    for record in records:
        given = "; ".join(view.words for view in record.all("archive_reference"))
        yield (record.number, f"urn:uuid:{record.id}", captions.title(record), "", given, "")


@dataclass(frozen=True, slots=True)
class Received:
    """What a receipt brought: accession numbers, how many references, and the lines that could not be read."""

    accessions: tuple[str, ...]
    references: int
    refused: tuple[str, ...]


def read_receipt(collection: Collection, path: Path, *, archive: str = "") -> Received:
    """Take a receipt in, in one act. A line about an item that is not here is refused by its number and line."""
    source = Source(Said.DOCUMENT, f"receipt {path.name}" + (f" of {archive}" if archive else ""))
    collection.back_up_before("a receipt")
    act = collection.act(f"a receipt of an archive was read: {path.name}")
    accessions: dict[str, None] = {}
    refused: list[str] = []
    references = 0
    for line, row, fault in _rows(path):
        if fault:
            refused.append(f"Line {line}: {fault}")
            continue
        if accession := row["Accession number"].strip():
            accessions[accession] = None
        words = row["The archive's reference"].strip()
        if words and not row["Number"].strip():
            refused.append(f"Line {line}: a reference without an item's number.")
        elif words:
            try:
                references += _reference(collection, act, row, words, source)
            except WrongUse as error:
                refused.append(f"Line {line}: {error}")
    whole = Subject(Kind.COLLECTION, collection.id)
    known = {statement.words for statement, _ in collection.store.statements(whole) if statement.field == "accession"}
    for accession in accessions:
        if accession not in known:
            act.state(whole, "accession", accession, source=source)
    act.done()
    return Received(tuple(accessions), references, tuple(refused))


def _reference(collection: Collection, act: Act, row: dict[str, str], words: str, source: Source) -> bool:
    """State the archive's reference of one item, unless it is known."""
    number = row["Number"].strip().upper()
    ident = collection.store.item_by_number(number) if looks_like_number(number) else None
    if ident is None:
        raise WrongUse(f"There is no item {number[:20]} here.")
    if row["Identifier"].strip() not in ("", f"urn:uuid:{ident}"):
        raise WrongUse(f"{number} has another identifier here; this receipt is of another collection.")
    item = Subject(Kind.ITEM, ident)
    if any(
        statement.field == "archive_reference" and statement.words == words
        for statement, _ in collection.store.statements(item)
    ):
        return False
    act.state(item, "archive_reference", words, source=source)
    return True


def _rows(path: Path) -> Iterator[tuple[int, dict[str, str], str]]:
    """(line, cells of COLUMNS, what is wrong with it) of each row."""

    def check(names: Sequence[str]) -> None:
        if lacking := [name for name in COLUMNS[:5] if name not in names]:
            raise lacks_column(path, names, f"“{lacking[0]}”", "Use the receipt.csv of the package.")

    for row in read_table(path, check, COLUMNS):
        yield row.line, {name: row.cells.get(name, "") for name in COLUMNS}, row.fault
