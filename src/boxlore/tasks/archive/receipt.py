"""The receipt: what the archive sends back, read into the log and carried from then on.

A CSV with the columns of `COLUMNS`; a line without a number or identifier is of the whole: its accession number, the
archive's reference of the collection. The archive is the source of what it says, so everyone can see from whom a
reference comes. An item is known by its number, or by its identifier alone, a box, a folder or a sitting by its
identifier; a title that is another item's is asked about, for a column was sorted alone. What an archive calls a thing
now takes the place of what the same archive called it before; what another archive calls it stands beside. A receipt of
another collection is refused before anything of it is stated, and of a line that is refused nothing is taken: such a
line is one with a fault or a formula of a spreadsheet in the place of a number.
"""

import re
from collections import Counter, defaultdict
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from dataclasses import field as starts
from pathlib import Path

from boxlore.core.crosswalk import captions
from boxlore.core.crosswalk.dublin_core import ACCESSIONS_JOINED, CollectionFacts
from boxlore.core.crosswalk.sound import SOUND
from boxlore.core.errors import WrongUse
from boxlore.core.fields.table import FIELDS
from boxlore.core.findings import several
from boxlore.core.records.audience import To
from boxlore.core.records.item_record import Record
from boxlore.core.records.marks import ContainerPath, Mark, label_key, looks_like_number
from boxlore.core.statements import Kind, Said, Source, Subject, fold
from boxlore.core.wording.catalogue import ENGLISH
from boxlore.disk.tables import TableRow, lacks_column, read_any_table
from boxlore.tasks.archive.archive_settings import archive_of
from boxlore.tasks.archive.sittings_held import told_of_sitting
from boxlore.tasks.archive.transfer_updates import URN
from boxlore.tasks.collection.opening import Act, Collection
from boxlore.tasks.collection.records_for_outputs import seen_by

WHOLE = "the whole transfer"
COLUMNS = ("Number", "Identifier", "Title", "Accession number", "The archive's reference", "Remarks")
IN_A_BAG = "metadata/receipt.csv"
"""Where each part of a transfer has the receipt to fill in, below `data/`."""
_RECEIPT, _OF = "receipt ", " of "
"""What stands in a source: `receipt NAME.csv of ARCHIVE`."""
_FAULT = re.compile(r"[=＝].*|##+|#[^\W\d_]\S*[!?]|#N/A|Err:\d{3}", re.IGNORECASE | re.DOTALL)
"""What a spreadsheet leaves in a cell where it did not understand it: a formula, `#REF!`, `####` of a narrow column
(ISO/IEC 29500-1, 18.17.3, Error values; from memory)."""
_YEAR, _TIME = r"(?:1\d|20)\d\d", r"\d{1,2}:\d\d(?::\d\d)?"
_MONTH = "(?:Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec)"
_WRITTEN_ANEW = re.compile(
    r"\d(?:[.,]\d+)?E[+-]?\d{1,3}"
    rf"|\d{{1,2}}([./-])\d{{1,2}}\1(?:{_YEAR}|\d\d(?= ))(?: {_TIME})?"
    rf"|{_YEAR}-\d\d-\d\d[ T]{_TIME}"
    rf"|\d{{1,2}}-{_MONTH}(?:-(?:\d\d|{_YEAR}))?|{_MONTH}-\d\d",
    re.IGNORECASE,
)
"""What it makes of `300000` or of `3E5` that somebody typed, and of `12/11` or `12.11.1932`, which it takes for days
(ISO/IEC 29500-1, 18.8.30, formats 11, 14 to 17 and 22; from memory). `1932.11.12` and `12/11/32` may well be what an
archive calls a thing, and are not asked about."""


def blank_rows(
    records: Iterable[Record], facts: CollectionFacts, containers: Iterable[tuple[str, ContainerPath]] = ()
) -> Iterator[tuple[str, ...]]:
    """The receipt as it goes out: a line for the whole, then one for each of the `containers` (identifier, path), each
    item, and each sitting of which anything lies beside them, with room for the archive's words. What an archive has
    called them already stands there."""
    yield COLUMNS
    yield ("", "", WHOLE, facts.accession, facts.reference, "")
    for ident, path in sorted(containers, key=lambda one: [(kind, *label_key(label)) for kind, label in one[1]]):
        yield ("", ident, Mark(path).long, "", facts.of_containers.get(path, ""), "")
    for record in records:
        given = "; ".join(view.words for view in record.all("archive_reference"))
        yield (record.number, f"{URN}{record.id}", captions.title(record), "", given, "")
    sittings = {
        held.sitting: held for held in sorted(facts.beside, key=lambda held: held.kind == SOUND) if held.sitting
    }
    for ident, held in sittings.items():
        yield ("", f"{URN}{ident}", held.title, "", held.reference, "")


@dataclass(frozen=True, slots=True)
class Received:
    """What a receipt brought: accession numbers, how many references and remarks, and the lines that could not be
    read; in which encoding it was read, where that was guessed. `replaced` counts references that took the place of an
    earlier one; `shared` are sentences on references that several items have, `doubtful` on numbers of which the
    archive is to be asked."""

    accessions: tuple[str, ...]
    references: int
    refused: tuple[str, ...]
    remarks: int = 0
    note: str = ""
    replaced: int = 0
    shared: tuple[str, ...] = ()
    doubtful: tuple[str, ...] = ()

    @property
    def said_of_references(self) -> list[str]:
        """Sentences on references that took the place of earlier ones, on those that several items have, and on
        numbers of which the archive is to be asked."""
        asked = [*self.shared, *self.doubtful]
        if not self.replaced:
            return asked
        words = several(self.replaced, "takes the place of one", "take the place of those")
        return [f"{words} that this archive had given before.", *asked]


@dataclass(frozen=True, slots=True)
class _Line:
    """One line of a receipt, by the names of `COLUMNS`, and what it is about, or why that is not known here; `fault` is
    what is wrong with its row."""

    at: int
    cells: Mapping[str, str]
    about: Subject | WrongUse
    fault: str = ""


@dataclass(slots=True)
class _Reading:
    """A receipt that is read: into which act, whose it is, what it told so far."""

    collection: Collection
    act: Act
    archive: str
    source: Source
    is_of_ours: bool = False
    """Whether it is of the archive of `archive.toml`: then so is every receipt before it that names none."""
    told: Counter[str] = starts(default_factory=Counter)
    accessions: dict[str, None] = starts(default_factory=dict)
    known_accessions: frozenset[str] = frozenset()
    """Those that the whole had before."""
    apart: tuple[str, ...] = ()
    """The accession numbers of single items, where they differ and no line is of the whole: it has none of them."""
    refused: list[str] = starts(default_factory=list)
    given: dict[Subject, tuple[int, str]] = starts(default_factory=dict)
    """What was given a reference in which line, and which."""

    @property
    def whole(self) -> Subject:
        return Subject(Kind.COLLECTION, self.collection.id)

    def take(self, line: _Line) -> None:
        """Take one line in, or say why not. The number of the whole stands in its own line, or is the same in each
        item's; another one of an item is a remark on that item."""
        about, accession = line.about, line.cells["Accession number"]
        reference, remark = line.cells["The archive's reference"], line.cells["Remarks"]
        if line.fault:
            self.refused.append(f"Line {line.at}: {line.fault}")
            return
        if isinstance(about, WrongUse):
            if accession or reference or remark:
                self.refused.append(f"Line {line.at}: {about}")
            return
        if fault := next(filter(_FAULT.fullmatch, (accession, reference)), ""):
            words = f"“{fault[:40]}” is a fault or a formula of a spreadsheet: ask the archive what it wrote."
            self.refused.append(f"Line {line.at}: {words}")
            return
        numbers = [number.strip() for number in accession.split(ACCESSIONS_JOINED.strip()) if number.strip()]
        if about == self.whole or not (self.accessions or self.apart):
            for number in numbers:
                self.accessions[number] = None
                self.told["accession"] += self._once(self.whole, "accession", number)
        if reference and about == self.whole and line.cells["Title"] not in ("", WHOLE):
            self.refused.append(f"Line {line.at}: a reference without an item's number or identifier.")
        elif reference:
            self._refer(line.at, about, reference)
        others = [number for number in numbers if number not in {*self.accessions, *self.known_accessions}]
        own = f"Accession number {ACCESSIONS_JOINED.join(others)}" if others else ""
        for words in filter(None, (remark, own)):
            self.told["archive_remark"] += self._once(about, "archive_remark", words)

    def _refer(self, line: int, about: Subject, words: str) -> None:
        """Take a reference in: in place of the one that this archive has given before, which stays in the history."""
        before, given = self.given.get(about, (0, words))
        if given != words:
            self.refused.append(
                f"Line {line}: it has the reference “{given}” in line {before}; write both in one cell."
            )
            return
        self.given[about] = line, words
        held = [view for view, _ in self.collection.store.statements(about) if view.field == "archive_reference"]
        if words in ("; ".join(view.words for view in held), *(view.words for view in held)) or before:
            return  # as it was sent out, or said before
        own = [view.id for view in held if self._is_own(view.source)]
        audience = FIELDS["archive_reference"].audience
        how = {"source": self.source, "audience": audience, "replaces": own[-1] if own else ""}
        self.act.state(about, "archive_reference", words, **how)
        self.told["archive_reference"] += 1
        self.told["replaced"] += bool(own)

    def _is_own(self, source: Source) -> bool:
        return _is_of(source, self.archive) or (self.is_of_ours and _is_of(source, ""))

    def _once(self, about: Subject, name: str, words: str) -> bool:
        return state_once(self.collection, self.act, about, name, words, self.source)

    def shared(self) -> Iterator[str]:
        """What is said of references that this receipt gave and several items have; all of them were taken."""
        items: dict[str, list[str]] = {}
        for subject, _, words in self.collection.store.words_of(["archive_reference"]):
            if number := self.collection.store.number_of(subject):
                items.setdefault(words, []).append(number)
        for words in dict.fromkeys(self._references):
            if len(numbers := sorted(items.get(words, []))) > 1:
                shown = f"{', '.join(numbers[:4])}{' …' if len(numbers) > 4 else ''}"
                yield f"“{words}” is the reference of {shown}: ask the archive where it was meant for one of them."

    def doubtful(self) -> Iterator[str]:
        """What is said of accession numbers of single items, none of which was taken for the whole, and of numbers that
        a spreadsheet may have written anew, all of which were taken."""
        if self.apart:
            told = ENGLISH.listed([f"“{number}”" for number in self.apart])
            words = f"Lines of items have the accession numbers {told}, and no line of the whole has one"
            yield f"{words}: ask the archive which is that of the transfer."
        for words in filter(_WRITTEN_ANEW.fullmatch, dict.fromkeys([*self.accessions, *self._references])):
            yield f"“{words}” may be what a spreadsheet made of another number: ask the archive what it wrote."

    @property
    def _references(self) -> Iterator[str]:
        return (words for _, words in self.given.values())


def read_receipt(collection: Collection, path: Path, *, archive: str = "") -> Received:
    """Take a receipt in, in one act. A line about an item that is not here is refused by its number and line.

    Raises WrongUse, before anything is stated, for a receipt of another collection.
    """
    ours = archive_of(collection.folder, None).repository
    archive = archive or ours
    source = Source(Said.DOCUMENT, f"{_RECEIPT}{path.name}" + (f"{_OF}{archive}" if archive else ""))
    table = read_any_table(path, _check_heading(path), COLUMNS)
    lines = _with_titles(collection, [_line(collection, row) for row in table.rows])
    _check_ours(path, [line for line in lines if not line.fault])
    collection.back_up_before("a receipt")
    act = collection.act(f"a receipt of an archive was read: {path.name}")
    reading = _Reading(collection, act, archive, source, is_of_ours=bool(ours) and fold(archive) == fold(ours))
    told_before = collection.store.words_of(["accession"])
    reading.known_accessions = frozenset(words for subject, _, words in told_before if subject == collection.id)
    reading.apart = _apart(lines)
    for line in lines:
        reading.take(line)
    act.done()
    told = reading.told
    return Received(
        accessions=tuple(reading.accessions),
        references=told["archive_reference"],
        refused=tuple(reading.refused),
        remarks=told["archive_remark"],
        note=table.note,
        replaced=told["replaced"],
        shared=tuple(reading.shared()),
        doubtful=tuple(reading.doubtful()),
    )


class _Foreign(WrongUse):
    """A line has a number of this collection beside an identifier that is another item's."""


def _line(collection: Collection, row: TableRow) -> _Line:
    cells = {name: row.cells.get(name, "").strip() for name in COLUMNS}
    about = _about(collection, cells)
    if "Identifier" not in row.cells and not cells["Number"] and cells["Title"] not in ("", WHOLE):
        about = WrongUse("It has no identifier, by which a sitting or a box is known.")
    return _Line(row.line, cells, about, row.fault)


def _with_titles(collection: Collection, lines: list[_Line]) -> list[_Line]:
    """The lines, those without what they are about of which the title is another item's alone: where one column was
    sorted by itself, what is said there is of that one. Titles are those that went out, in either part. Where there are
    no identifiers, and no title is one of here, the lines are of another collection."""
    own: dict[str, set[str]] = defaultdict(set)
    of_others: dict[str, str] = {}
    titled = {line.at: _item_titled(line) for line in lines}
    items = [ident for ident in dict.fromkeys(titled.values()) if ident]
    for to in (To.ARCHIVE, To.OUTSIDE) if items else ():
        for record in seen_by(collection, to).records(order=items):
            title = _bare(captions.title(record))
            own[record.id].add(title)
            of_others.setdefault(title, record.number)
    fit = {line.at for line in lines if _bare(line.cells["Title"]) in own.get(titled[line.at], ())}
    is_known = any(line.cells["Identifier"] or _bare(line.cells["Title"]) in of_others for line in lines)
    if items and not is_known:
        foreign = _Foreign("No title of it is one of here.")
        return [replace(line, about=foreign) if titled[line.at] else line for line in lines]

    def moved(line: _Line) -> _Line:
        other = of_others.get(_bare(line.cells["Title"])) if titled[line.at] and line.at not in fit else None
        why = f"Its title is that of {other}: was one column sorted alone? Ask the archive what it wrote."
        return replace(line, about=WrongUse(why)) if other else line

    return [moved(line) for line in lines]


def _bare(title: str) -> str:
    return " ".join(fold(title).split())


def _item_titled(line: _Line) -> str:
    """The id of the item that a line with a title is about, else ''."""
    is_item = isinstance(line.about, Subject) and line.about.kind is Kind.ITEM and line.cells["Title"]
    return line.about.id if is_item and isinstance(line.about, Subject) else ""


def _about(collection: Collection, cells: Mapping[str, str]) -> Subject | WrongUse:
    """What a line is about: the item of its number or identifier, else the whole; or why no such item is here."""
    number, ident = cells["Number"].upper(), cells["Identifier"].lower().removeprefix(URN)
    if fault := next(filter(_FAULT.fullmatch, (cells["Number"], cells["Identifier"])), ""):
        return WrongUse(f"“{fault[:40]}” is a fault or a formula of a spreadsheet: ask the archive what it wrote.")
    if not number and ident in ("", collection.id):
        return Subject(Kind.COLLECTION, collection.id)
    if not number and told_of_sitting(collection, ident):
        return Subject(Kind.SITTING, ident)
    box = Subject(Kind.CONTAINER, ident)
    if not number and any(row.subject == box for row, _ in collection.store.statements(box)):
        return box
    if not number:
        if not collection.store.number_of(ident):
            return WrongUse(f"There is no photograph {cells['Identifier'][:50]} here.")
        return Subject(Kind.ITEM, ident)
    item = collection.store.item_by_number(number) if looks_like_number(number) else None
    if item is None:
        return WrongUse(f"There is no photograph {number[:20]} here.")
    if ident not in ("", item):
        return _Foreign(f"{number} has another identifier here.")
    return Subject(Kind.ITEM, item)


def _apart(lines: Iterable[_Line]) -> tuple[str, ...]:
    """The accession numbers that lines have, where these differ and none of them is of the whole; else none."""
    told = [
        (line.about.kind, number)
        for line in lines
        if (number := line.cells["Accession number"]) and not line.fault and isinstance(line.about, Subject)
    ]
    numbers = dict.fromkeys(number for _, number in told if not _FAULT.fullmatch(number))
    is_of_whole = any(kind is Kind.COLLECTION for kind, _ in told)
    return tuple(numbers) if len(numbers) > 1 and not is_of_whole else ()


def _check_ours(path: Path, lines: Iterable[_Line]) -> None:
    """Raises WrongUse where no fewer lines have a number of here and an identifier of elsewhere than are of here, or
    where the lines have numbers or identifiers and not one of them is of here: then what is said of the whole is of
    another collection too. Of a few such lines among many of here each is refused by itself."""
    named = [line for line in lines if line.cells["Number"] or line.cells["Identifier"]]
    unknown = [line for line in named if isinstance(line.about, WrongUse)]
    foreign = [line for line in unknown if isinstance(line.about, _Foreign)]
    is_foreign = bool(foreign) and len(foreign) >= len(named) - len(unknown)
    if refused := foreign if is_foreign else (unknown if len(unknown) == len(named) else []):
        raise WrongUse(
            f"{path.name} is a receipt of another collection; line {refused[0].at}: {refused[0].about} "
            "Nothing of it was taken in.",
            "Name the receipt of this collection, or ask the archive which transfer it is of.",
        )


def _is_of(source: Source, archive: str) -> bool:
    """Whether a receipt of this archive said so; of receipts that name no archive, one is as good as the other."""
    if source.said is not Said.DOCUMENT or not source.ref.startswith(_RECEIPT):
        return False
    return fold(source.ref).endswith(fold(f"{_OF}{archive}")) if archive else _OF not in source.ref


def state_once(collection: Collection, act: Act, about: Subject, name: str, words: str, source: Source) -> bool:
    """State what an archive says of a thing, unless it was said in the same words before."""
    known = [*(statement for statement, _ in collection.store.statements(about)), *act.statements]
    if any(row.subject == about and row.field == name and row.words == words for row in known):
        return False
    act.state(about, name, words, source=source, audience=FIELDS[name].audience)
    return True


def _check_heading(path: Path) -> Callable[[Sequence[str]], None]:
    def check(names: Sequence[str]) -> None:
        if lacking := [name for name in COLUMNS[:5] if name not in names and name != "Identifier"]:
            raise lacks_column(path, names, f"“{lacking[0]}”", "Use the receipt.csv of the package.")

    return check
