"""Many statements from a table or from the answers to a worksheet; a second time, only what is new is told."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import partial
from pathlib import Path

from boxlore.core.errors import WrongUse
from boxlore.core.findings import faults_told
from boxlore.core.records.marks import looks_like_number
from boxlore.core.sitting.worksheet_codes import WrittenAnswer, read_answers, read_code
from boxlore.core.sitting.worksheet_origin import NAME, SaidOfAnswers, before, read_origin, read_said, write_origin
from boxlore.core.statements import Kind, Statement, Subject, Sure, typed_source
from boxlore.disk.tables import TableRow, lacks_column, read_table, read_text
from boxlore.tasks.collection.items_by_mark import find_item, find_told
from boxlore.tasks.collection.opening import Act, Collection
from boxlore.tasks.collection.prompts import own_fields, own_lines
from boxlore.tasks.telling.statements import Teller, Telling
from boxlore.tasks.telling.table_repeats import HeldOtherwise, KnownRows

COLUMNS = ("item", "field", "text", "words", "by", "source", "sure", "audience", "language", "code", "collection")
"""Every column that is read; `words` is another name of text, and `source` of by. `collection` goes with `code`."""


@dataclass(frozen=True, slots=True)
class NotTaken:
    """A row of a table that could not be taken in: its line (the heading is line 1), and why."""

    line: int
    why: str


@dataclass(frozen=True, slots=True)
class TableTaken:
    """What a table came to: the statements that are new and on the disk, how many rows were known already, and the
    rows that were refused."""

    told: tuple[Statement, ...]
    known: int
    refused: tuple[NotTaken, ...]
    unsaid: tuple[str, ...] = ()
    """Of the narrators: who is new here, and who was meant by a part of a name."""

    @property
    def faults(self) -> list[str]:
        """The rows that were refused, as sentences; a fault that many have is told once."""
        return faults_told((row.line, row.why) for row in self.refused)


class NoOrigin(WrongUse):
    """Answers of a worksheet that do not say of which collection it was printed."""


def tell_from(
    collection: Collection, path: Path, how: Telling, *, again: bool = False, printed_here: bool = False
) -> TableTaken:
    """Many statements from a CSV with the columns item, field, text, by, sure, audience, language.

    In place of item and field a column `code` may hold the code of a worksheet's line; a file that ends in .txt is
    read as answers, one `CODE: words` a line. Every row that can be taken is taken, in one act; the others come back
    with their reasons. What the collection holds already is not told a second time, unless `again` says so.

    Codes mean something in every collection. So answers say of which they are; with `printed_here` those that do not
    are taken as of this one. Raises NoOrigin for them without it, and WrongUse for those of another: none is told then.
    """
    rows = _rows(collection, path)
    check_origin(collection, path, rows, printed_here=printed_here)
    collection.back_up_before("a table")
    teller = Teller(collection)
    act = collection.act(f"told from {path.name}")
    known_rows = KnownRows(collection)
    taken: list[Statement] = []
    refused: list[NotTaken] = []
    known = 0
    for row in rows:
        before = teller.mark(act)
        try:
            worded = _word_row(teller, act, collection, row, how)
            fresh = [statement for statement in worded if not _is_known(known_rows, statement, again=again)]
        except WrongUse as error:
            teller.back_to(act, before)
            refused.append(NotTaken(row.line, str(error)))
            continue
        if not fresh:
            teller.back_to(act, before)
            known += 1
            continue
        teller.leave_out(act, [statement for statement in worded if statement not in fresh])
        for statement in fresh:
            teller.read_into(act, statement)
        taken += fresh
    act.done()
    return TableTaken(tuple(taken), known, tuple(refused), tuple(teller.unsaid))


UNDER = "under"
"""In a row of answers: the number of the item under which the line stands."""


def check_origin(collection: Collection, path: Path, rows: Sequence[TableRow], *, printed_here: bool) -> None:
    """Raises NoOrigin, or WrongUse, unless every answer to a worksheet is to one of this collection."""
    ours, title = write_origin(collection.id), collection.settings.title[:60]
    elsewhere = "Nothing was told. Take the answers in where they belong: boxlore -c ITS-FOLDER tell --from FILE."
    for row in rows:
        where = f"{path.name}, line {row.line}"
        origin = _cell(row, "collection")
        if origin and read_origin(origin) != ours:
            of_which = f"these answers are of another collection ({read_origin(origin)}; “{title}” is {ours})"
            raise WrongUse(f"{where}: {of_which}.", elsewhere)
        if (under := _cell(row, UNDER)) and collection.store.item_by_number(under) is None:
            raise WrongUse(f"{where} is about {under}, and “{title}” has no such item.", elsewhere)
    lacking = [row for row in rows if _cell(row, "code") and not _cell(row, "collection")]
    if lacking and not printed_here:
        raise NoOrigin(
            f"{path.name} does not say from which collection its worksheet was printed (line {lacking[0].line}), and "
            "such codes mean something in every one. Nothing was told.",
            f"If it was “{title}”, begin the file with the line {NAME}: {ours} (a table: a column “collection”).",
        )


def _cell(row: TableRow, name: str) -> str:
    return row.cells.get(name, "").strip()


def is_told(collection: Collection, subject: Subject, field: str, words: str, how: Telling) -> bool:
    """Whether the collection holds all that these words come to, from the same source and in the same manner."""
    teller, act, known_rows = Teller(collection), collection.act("nothing is kept of it"), KnownRows(collection)
    statements = teller.add_answer(act, subject, field, teller.typed(subject.kind, field, words), how)
    try:
        return all(known_rows.knows(statement) for statement in statements)
    except WrongUse:  # held in another manner, or struck: told alone it may be told anew
        return False


def _is_known(known_rows: KnownRows, statement: Statement, *, again: bool) -> bool:
    """Whether the collection holds the statement and is not to hold it twice. Raises WrongUse as `KnownRows.knows`."""
    try:
        return known_rows.knows(statement) and not again
    except HeldOtherwise:
        if again:
            return False
        raise


def _word_row(teller: Teller, act: Act, collection: Collection, table_row: TableRow, how: Telling) -> list[Statement]:
    """The statements that a row comes to, in the act; their words are not read yet."""
    if table_row.fault:
        raise WrongUse(table_row.fault)
    row = {name: cell.strip() for name, cell in table_row.cells.items()}
    words = _either(row, "text", "words")
    _check_swallowed(words)
    told_how = how_told(row, how)
    if row.get("code"):
        subject, field = asked_by(collection, row["code"], row.get(UNDER, ""))
        return teller.add_answer(act, subject, field, words, told_how)
    field = row.get("field", "")
    item = find_told(collection, row.get("item", ""), field)
    return teller.add_answer(act, item, field, teller.typed(item.kind, field, words), told_how)


def _either(row: dict[str, str], name: str, second_name: str) -> str:
    """The cell of a column that has two names. Raises WrongUse where both say something, and not the same."""
    cells = {row.get(name, ""), row.get(second_name, "")} - {""}
    if len(cells) > 1:
        raise WrongUse(f"“{name}” and “{second_name}” both say something.", "Fill one of these columns.")
    return next(iter(cells), "")


def _check_swallowed(words: str) -> None:
    """Raises WrongUse for words that go on into another row, which a quotation mark left open has swallowed."""
    for line in words.splitlines()[1:]:
        if looks_like_number(line.partition(",")[0]) and "," in line:
            raise WrongUse(
                f"Its words go on into another row: “{line[:40]}”.",
                "Close the quotation mark before it; if it is not a row, begin that line with a word.",
            )


def asked_by(collection: Collection, code: str, under: str = "") -> tuple[Subject, str]:
    """What a worksheet's line asks: the item, or the marker on its front, and the field. `under` is the number of the
    item under which the line stands, if one does. Raises WrongUse where the code means another item.
    """
    own = (*own_fields(collection.folder), *collection.store.own_fields())
    line = read_code(code, collection.settings.prefix, own)
    if under and under != line.number:
        raise WrongUse(
            f"“{code.strip()[:20]}” stands under {under}, and means {line.number} here.",
            f"If it is of {line.number}, take the line “# {under}” above it away. If the numbers had another prefix "
            "when the worksheet was printed, set that in boxlore.toml while you take its answers in.",
        )
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
    source = _either(row, "by", "source")
    return replace(
        how,
        source=typed_source(source) if source else how.source,
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


def _check_columns(path: Path, names: Sequence[str]) -> None:
    """Raises WrongUse for a table that does not say what its rows are about, or has a column that is not read.

    A column whose name is mistyped would be passed over, and `audiance` would let out what was to be kept.
    """
    missing = {"item", "field"} - set(names)
    if missing and "code" not in names:
        raise lacks_column(path, names, " or ".join(sorted(missing)), "See boxlore tell --help.")
    if not {"text", "words"} & set(names):
        raise lacks_column(path, names, "text", "It holds the words of each row; see boxlore tell --help.")
    unknown = [name for name in names if name not in COLUMNS]
    if unknown:
        raise WrongUse(f"{path.name} has a column “{unknown[0][:40]}”.", f"Columns are: {', '.join(COLUMNS)}.")


def _rows(collection: Collection, path: Path) -> list[TableRow]:
    """The rows of a table, or the answers of a text file; all are read before any is told."""
    if path.suffix.lower() != ".txt":
        return read_table(path, partial(_check_columns, path), COLUMNS)
    said = read_said(read_text(path, "Save it in UTF-8."))
    answers = read_answers(said.text, lambda code: _has_several_lines(collection, code))
    return [TableRow(answer.at, _cells(answer, said), _stray(answer)) for answer in answers]


def _cells(answer: WrittenAnswer, said: SaidOfAnswers) -> dict[str, str]:
    """An answer as a row of a table; UNDER is no column that a table may have."""
    origin, under = before(answer.at, said.origins), before(answer.at, said.headings)
    return {"code": answer.code, "text": answer.words, "collection": origin, UNDER: under}


def _has_several_lines(collection: Collection, code: str) -> bool:
    """Whether the worksheet has several lines for the answer: for a story, people in a row, questions that say so."""
    own = own_lines(collection.folder)
    try:
        line = read_code(code, collection.settings.prefix, own)
    except WrongUse:
        return True  # the answer is refused with all its lines
    return line.field == "story" or (line.field == "person" and not line.marker) or own.get(line.field, 1) > 1


def _stray(answer: WrittenAnswer) -> str:
    """What to say of a line below the answer that may belong elsewhere; '' where there is none."""
    if answer.stray is None:
        return ""
    number, words = answer.stray
    return (
        f"Line {number} below it has no code: “{words[:60]}”. If it goes on with this answer, begin it with a blank; "
        "else put its own code and a colon before it. Neither was told yet."
    )
