"""Many statements from a table or from the answers to a worksheet, in one act."""

import csv
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, replace
from pathlib import Path

from boxlore.core.errors import WrongUse
from boxlore.core.sitting.worksheet_codes import read_answers, read_code
from boxlore.core.statements import Kind, Statement, Subject, Sure, read_source
from boxlore.tasks.collection.marks import find_item
from boxlore.tasks.collection.opening import Act, Collection
from boxlore.tasks.telling.statements import Teller, Telling

COLUMNS = ("item", "field", "text", "words", "by", "source", "sure", "audience", "language", "code")
"""Every column that is read; `words` is another name of text, and `source` of by."""

LONGEST_CELL = 10_000_000
"""Characters in one cell: far more than anybody tells at once, and no more than a machine holds easily."""


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
    collection.back_up_before("a table")
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
    told_how = how_told(row, how)
    if row.get("code", "").strip():
        if words.strip() == "?":
            words, told_how = "", replace(told_how, sure=Sure.NOT_KNOWN)
        subject, field = asked_by(collection, row["code"])
        return teller.add(act, subject, field, words, told_how)
    return teller.add(act, find_item(collection, row.get("item", "")), row.get("field", "").strip(), words, told_how)


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


def _check_columns(path: Path, names: Sequence[str]) -> None:
    """Raises WrongUse for a table that does not say what its rows are about, or has a column that is not read.

    A column whose name is mistyped would be passed over, and `audiance` would let out what was to be kept.
    """
    missing = {"item", "field"} - set(names)
    if missing and "code" not in names:
        hint = " Its columns must be parted by commas." if any(";" in name or "\t" in name for name in names) else ""
        raise WrongUse(f"{path.name} has no column {' or '.join(sorted(missing))}.{hint}", "See boxlore tell --help.")
    unknown = [name for name in names if name and name not in COLUMNS]
    if unknown:
        raise WrongUse(f"{path.name} has a column “{unknown[0][:40]}”.", f"Columns are: {', '.join(COLUMNS)}.")


def _rows(path: Path) -> Iterable[tuple[int, dict[str, str]]]:
    try:
        if path.suffix.lower() == ".txt":
            for answer in read_answers(path.read_text(encoding="utf-8-sig")):
                yield answer.at, {"code": answer.code, "text": answer.words}
            return
        with open(path, encoding="utf-8-sig", newline="") as file:
            csv.field_size_limit(LONGEST_CELL)
            reader = csv.DictReader(file)
            _check_columns(path, reader.fieldnames or ())
            for row in reader:
                yield reader.line_num, {key: value or "" for key, value in row.items() if key}
    except csv.Error as error:
        raise WrongUse(f"{path.name} cannot be read as a table: {error}.", "Save it as CSV with commas.") from None
    except FileNotFoundError:
        raise WrongUse(f"There is no file {path}.") from None
    except UnicodeDecodeError as error:
        raise WrongUse(f"{path.name} is not in UTF-8.", "Save it in UTF-8.") from error
