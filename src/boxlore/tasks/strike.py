"""Strike: one statement, or everything that holds some words, taken out for good."""

import os
import re
from collections.abc import Callable, Iterable, Iterator
from contextlib import suppress
from dataclasses import dataclass, replace
from pathlib import Path

from boxlore.core.errors import ByteFault, WrongUse
from boxlore.core.fields.pictures import EMBEDDED_WORDS, FILE_WORDS
from boxlore.core.fields.table import FIELDS
from boxlore.core.records.marks import looks_like_number
from boxlore.core.statements import Kind, Said, Statement, Subject, fold
from boxlore.disk.tables import read_table
from boxlore.exports.inventory import as_csv
from boxlore.formats import document_texts
from boxlore.store.backups import FOLDER
from boxlore.store.strike import StrikeReport as StrikeReport
from boxlore.store.strike import finish, pending, said, strike, unsaid, words_of
from boxlore.store.strike_standing import Place, Standing
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import DATABASE, FOLDERS, Collection
from boxlore.tasks.collection.output_paths import NAMES_FOUND, NAMES_LEFT, write_own
from boxlore.tasks.collection.struck_words_left import note_files
from boxlore.tasks.people.registry import find_person

BEYOND = (
    "Boxlore cannot reach copies on other disks or in other people's hands, backups that others made, "
    "or the spare blocks of this disk."
)

ORIGINALS = tuple(name for name in FOLDERS if name != FOLDER)
"""The folders of what cannot be made again."""

WRITTEN_BY_HAND = ("boxlore.toml", "prompts.toml", "archive.toml")
"""Files of settings, which the keeper edits."""

ANSWERS = re.compile(r".*-answers(-\d+)?\.txt")
"""The name of a file of answers: the keeper types into it what a teller wrote on a worksheet."""

COMPRESSED = (".pdf", ".zip", ".gz", ".xz", ".7z", ".docx", ".xlsx", ".odt", ".ods", ".epub")


@dataclass(frozen=True, slots=True)
class Target:
    """One statement that would be struck."""

    statement: str
    field: str
    words: str
    source: str = ""
    """The document or file that it is from, where the words stand in the name of that alone."""
    is_from_file: bool = False


def meant(collection: Collection, text: str, field: str) -> list[Subject]:
    """The item, or the person with all entries that were merged, whose field is to be struck. Raises WrongUse."""
    if field not in FIELDS:
        raise WrongUse(f"There is no field “{field[:40]}”.", "boxlore show and boxlore people show name the fields.")
    kinds = FIELDS[field].kinds
    if Kind.SCAN in kinds:
        item = find_item(collection, text)
        return [
            Subject(Kind.SCAN, scan.id)
            for material in collection.store.about_items(ids=(item.id,))
            for scan in material.scans
        ]
    if looks_like_number(text) or Kind.PERSON not in kinds:
        return [find_item(collection, text)]
    if Kind.ITEM in kinds and "/" in text:
        return [find_item(collection, text)]
    return [Subject(Kind.PERSON, ident) for ident in find_person(collection, text).ids]


def targets(collection: Collection, subjects: Iterable[Subject], field: str, words: str = "") -> list[Target]:
    """The statements of a field of an item or person, only those that hold `words` where some are given."""
    matches = [
        Target(statement.id, statement.field, statement.words)
        for subject in subjects
        for statement, _ in collection.store.statements(subject)
        if statement.field == field and fold(words) in fold(statement.words) and not _is_mark(statement)
    ]
    if not matches:
        raise WrongUse(
            f"There is no such {field} to strike.", "boxlore show and boxlore people show list what is told."
        )
    return matches


def _is_mark(statement: Statement) -> bool:
    """Whether it only says that the words of a scan's file were struck."""
    return statement.field == "embedded" and EMBEDDED_WORDS.read(statement.words).are_struck


EVERYWHERE, ANY = "everywhere", "any"
"""What is written instead of an item or a person, and instead of a field."""

_CHOSEN_BY_SOMEBODY = frozenset({"label", "materials", "surroundings", "found_in", "set_aside", "asked", "embedded"})
"""Fields that nobody told, of words that somebody chose: what a container is called and made of, where a picture was
found, the keeper's own remarks, and what somebody wrote into a scan's file.
"""


def targets_everywhere(collection: Collection, words: str, field: str = ANY) -> tuple[list[Target], list[Target]]:
    """Every statement about anything (items, people, places, occasions, containers, sittings, the collection) that
    holds the words as whole words, in force or not: those to strike, and those which a strike would break, such as the
    name of a scan's file. A statement from a document whose name holds them is to be struck too; what came from a file
    of such a name, as a whole tree does, is not. Raises WrongUse if there are none.
    """
    if field != ANY and field not in FIELDS:
        raise WrongUse(f"There is no field “{field[:40]}”.", "Write any, or boxlore show names the fields.")
    asked = _tokens(words)
    if not asked:
        raise WrongUse("No words are given.", "Say which with --words.")
    holding = [target for target in _holding(collection, asked) if field in (ANY, target.field)]
    if not holding:
        raise WrongUse("Those words stand nowhere.", "boxlore find looks for words that are told.")
    to_strike = [target for target in holding if not target.is_from_file and _can_be_struck(target.field)]
    return to_strike, [target for target in holding if target not in to_strike]


def _holding(collection: Collection, asked: list[str]) -> Iterator[Target]:
    """The statements that hold the words, or are from a document or a file whose name does."""
    for ident, field, told, kind, source in collection.store.every_words():
        if _holds(_tokens(told), asked):
            yield Target(ident, field, told)
        elif kind in (Said.DOCUMENT, Said.FILE) and _holds(_tokens(source), asked):
            yield Target(ident, field, told, source, is_from_file=kind == Said.FILE)


def _can_be_struck(field: str) -> bool:
    return FIELDS[field].told or field in _CHOSEN_BY_SOMEBODY


def _tokens(words: str) -> list[str]:
    return "".join(letter if letter.isalnum() else " " for letter in fold(words)).split()


def _holds(told: list[str], asked: list[str]) -> bool:
    return any(told[at : at + len(asked)] == asked for at in range(len(told) - len(asked) + 1))


def left_words(target: Target) -> str:
    """What to say of a statement that holds the words and is not struck."""
    if target.is_from_file:
        return (
            f"Not struck: the words stand in the name of a file that statements are from (“{target.source[:80]}”). "
            "Strike of these what should go by its own words."
        )
    label = FIELDS[target.field].label.lower()
    return f"Not struck: the words stand in “{label}”, which the program needs; change it where it is made."


def strike_out(
    collection: Collection,
    statements: list[str],
    *,
    asked: Iterable[str] = (),
    waiting: Callable[[str], None] = lambda why: None,
    stopped: Callable[[], bool] = lambda: False,
) -> StrikeReport:
    """Strike these statements; waits for other readers until `stopped`. `asked` are words to be looked for besides.

    First they go out of the tables that Boxlore itself keeps for the keeper to answer; of what was printed, the report
    names the PDFs that can be read and hold the words.
    """
    also = list(asked)
    words = [*words_of(collection.store, statements), *also]
    forget_rows(collection, words)
    collection.back_up_before("striking")
    by, now = collection.by, collection.clock.now()
    report = strike(collection.store, statements, by=by, now=now, also=also, waiting=waiting, stopped=stopped)
    printed = [str(collection.folder / name) for name, holds in pdfs_read(collection, words).items() if holds]
    report = replace(report, left_in=tuple(dict.fromkeys([*report.left_in, *printed])))
    note_files(collection, filter(_is_output, carriers(collection, report)))
    return report


def _is_output(path: str) -> bool:
    """Whether one of the `carriers` was made, or written, by somebody, and is none of what a collection keeps."""
    return not is_backup(path) and not is_database(path) and path.split("/", 1)[0] not in ORIGINALS


NAMED = 30
"""So many places where words stand on are named at once."""


def still_standing(collection: Collection, report: StrikeReport) -> list[str]:
    """Where the words stand on in what was not struck, each place once, and what to do there."""
    places = list(dict.fromkeys(_still_in(collection, standing) for standing in report.standing))
    more = f"And in {len(places) - NAMED} more places: strike these, and the others are named."
    return [*places[:NAMED], *([more] if len(places) > NAMED else ())]


def _still_in(collection: Collection, standing: Standing) -> str:
    text = f"“{standing.text[:80]}”"
    if standing.place is Place.BY:
        return f"Still in the keeper's name, {text}, which stands beside all that was written down; it stays."
    if standing.place is Place.ACT:
        return f"Still in the line that says what was done, {text}; it stays."
    number = collection.store.number_of(standing.subject) if standing.kind == Kind.ITEM else ""
    where = f"“{FIELDS[standing.field].label.lower()}” of {number or f'one {standing.kind}'}"
    if standing.place is Place.DRAFT:
        return f"Still in what is being typed in {where}, {text}: finish it there, then strike again."
    if standing.place is Place.SOURCE:
        return f"Still in what {where} is from, {text}; it goes when that statement is struck."
    if not _can_be_struck(standing.field):
        file = FILE_WORDS.or_none(standing.text) if standing.field == "file" else None
        called = f", “{file.path}”" if file else ""
        return f"Still in {where}{called}: the program needs it, and it stays for whoever gets the collection's folder."
    if number:
        return f"Still in {where}, {text}: boxlore strike {number} {standing.field} takes it out."
    return f"Still in {where}, {text}: boxlore strike everywhere {standing.field} --words, with those words, does."


OWN_TABLES = (NAMES_FOUND, NAMES_LEFT)
"""Tables in the collection's folder that Boxlore writes itself, for the keeper to answer; it writes them anew."""


def forget_rows(collection: Collection, struck: Iterable[str]) -> None:
    """Take the rows out of Boxlore's own tables that hold these words, whole or in part. A table that cannot be read
    goes whole: it is made again by what wrote it."""
    asked = [tokens for tokens in map(_tokens, struck) if tokens]
    for path in (collection.folder / name for name in OWN_TABLES):
        if not asked or not path.is_file():
            continue
        try:
            rows = [row.cells for row in read_table(path, lambda names: None)]
        except WrongUse:
            path.unlink()
            continue
        kept = [
            row for row in rows if not any(_share(_tokens(cell), struck) for cell in row.values() for struck in asked)
        ]
        if len(kept) < len(rows):
            path.unlink()
            heading = list(rows[0])
            write_own(collection, path.name, b"".join(as_csv([heading, *([*row.values()] for row in kept)])))


LONG_ENOUGH = 5
"""So many words in a row, as a long sentence is cut to fit a table, are words of the struck text. The first and the
last may be cut too."""


def _share(told: list[str], struck: list[str]) -> bool:
    """Whether a cell holds the struck words, or is a part of them that says something."""
    return _holds(told, struck) or (len(told) >= LONG_ENOUGH and _holds(struck, told[1:-1]))


def _said_by_files(collection: Collection, statements: Iterable[str]) -> list[str]:
    """The paths of the scans whose files said some of these statements."""
    asked = set(statements)
    return [
        facts.path
        for scan, facts in collection.store.scans()
        for statement, _ in collection.store.statements(Subject(Kind.SCAN, scan))
        if statement.id in asked and statement.field == "embedded"
    ]


def own_files(collection: Collection, to_strike: Iterable[Target]) -> list[str]:
    """What to say, after these are struck, of the scans' own files, which carry their words on."""
    asked = [target.statement for target in to_strike if target.field == "embedded"]
    return [
        f"The scan's own file still carries them: {path}. Boxlore never changes a scan. Copies made from now on hold "
        "its picture and the record alone; make those that you have again."
        for path in (_said_by_files(collection, asked) if asked else ())
    ]


def finish_pending(collection: Collection) -> bool:
    """Finish a strike that waited for another program, if there is one and it can be. True if none is left.

    The files that a strike which was broken off did not name are named when the collection is closed.
    """
    if collection.store.writable and (left_in := unsaid(collection.store)):
        inside = [_inside(collection, path) for path in left_in]
        note_files(collection, filter(_is_output, inside))
        named = [words_about(path) for path in inside]
        collection.unsaid += ["A strike was broken off; the words are gone from the database.", *named]
        said(collection.store)
    if not collection.store.writable or not pending(collection.store):
        return True
    return finish(collection.store, lambda why: None, lambda: True)


def carriers(collection: Collection, report: StrikeReport) -> list[str]:
    """Files of the collection's folder that still carry the words, relative to it."""
    return [_inside(collection, path) for path in report.left_in]


def _inside(collection: Collection, path: str) -> str:
    return Path(os.path.relpath(path, collection.folder)).as_posix()


def named(collection: Collection) -> None:
    """The files that still carry the words have been named to the keeper."""
    if collection.store.writable:
        said(collection.store)


def words_about(path: str) -> str:
    """What to do about one of the `carriers`. Nothing that cannot be made again is to be deleted."""
    if is_backup(path):
        return f"Still in {path}: it is damaged and cannot be changed; delete it."
    if is_database(path):
        return f"Still in {path}, where Boxlore does not look for words. Keep the file, and tell its makers."
    if path in WRITTEN_BY_HAND or ANSWERS.fullmatch(path):
        return f"Still in {path}, which you may edit: take the words out of it there."
    if path.split("/", 1)[0] in ORIGINALS:
        return (
            f"Perhaps still in {path}, which Boxlore never changes: short words and numbers stand in pictures and "
            "sound by chance. Keep the file; look with another program whether a caption in it holds the words."
        )
    return f"Still in {path}: made before; make it again, or delete it."


def is_backup(path: str) -> bool:
    """Whether one of the `carriers` is a backup: one that is damaged, for every other is struck as well."""
    return path.startswith(f"{FOLDER}/")


def is_database(path: str) -> bool:
    """Whether one of the `carriers` is the database itself, or what SQLite keeps beside it."""
    return path.startswith(DATABASE)


def not_searched(collection: Collection) -> list[str]:
    """Files of the folder that hold their words compressed, where a search of bytes does not see them."""
    paths = sorted(path for path in collection.folder.rglob("*") if path.suffix.lower() in COMPRESSED)
    return [path.relative_to(collection.folder).as_posix() for path in paths if path.is_file()]


WORDS_KNOWN = 6
"""By so many words from its beginning a statement is known again on a page, where lines and pages part it."""


def pdfs_read(collection: Collection, struck: Iterable[str]) -> dict[str, bool]:
    """The PDFs of the folder that can be read to their end, and whether any of the struck words stand in them."""
    asked = [tokens[:WORDS_KNOWN] for tokens in map(_tokens, struck) if tokens]
    read: dict[str, bool] = {}
    for name in (name for name in not_searched(collection) if name.lower().endswith(".pdf")):
        with open(collection.folder / name, "rb") as file, suppress(ByteFault):
            told = [token for text in document_texts.texts(name, file) for token in _tokens(text.words)]
            read[name] = any(_holds(told, tokens) for tokens in asked)
    return read
