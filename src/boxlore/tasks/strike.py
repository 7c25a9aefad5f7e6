"""Strike: one statement, or everything that holds some words, taken out for good."""

import os
import re
from collections.abc import Callable, Container, Iterable, Iterator
from dataclasses import dataclass, replace
from pathlib import Path

from boxlore.core.errors import WrongUse
from boxlore.core.fields.pictures import EMBEDDED_WORDS, FILE_WORDS, SHOWS_WORDS
from boxlore.core.fields.table import FIELDS
from boxlore.core.findings import several
from boxlore.core.people.names_in_text.text_normalising import as_seen
from boxlore.core.records.marks import looks_like_number
from boxlore.core.statements import Kind, Said, Subject, fold
from boxlore.core.wording.catalogue import ENGLISH
from boxlore.store.backups import FOLDER
from boxlore.store.queries import every_words
from boxlore.store.strike import StrikeReport as StrikeReport
from boxlore.store.strike import finish, pending, said, strike, unsaid, words_of
from boxlore.store.strike_branches import only_in_backups
from boxlore.store.strike_standing import Place, Standing
from boxlore.store.strike_words import PARTS_OF_A_NAME, can_be_struck, holds, parts_of_a_name, stands_in, tokens
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import DATABASE, FOLDERS, Collection
from boxlore.tasks.collection.output_paths import ASKED_BY_AN_UPDATE
from boxlore.tasks.collection.struck_rows import forget_rows
from boxlore.tasks.collection.struck_words_left import note_files
from boxlore.tasks.collection.told_of import called
from boxlore.tasks.people.registry import find_person
from boxlore.tasks.people.struck_withdrawals import keep_closed

BEYOND = (
    "Boxlore cannot reach copies on other disks or in other people's hands, backups that others made, "
    f"or the spare blocks of this disk. {ASKED_BY_AN_UPDATE}"
)

ORIGINALS = tuple(name for name in FOLDERS if name != FOLDER)
"""The folders of what cannot be made again."""

WRITTEN_BY_HAND = ("boxlore.toml", "prompts.toml", "archive.toml")
"""Files of settings, which the keeper edits."""

ANSWERS = re.compile(r".*-answers(-\d+)?\.txt")
"""The name of a file of answers: the keeper types into it what a teller wrote on a worksheet."""


@dataclass(frozen=True, slots=True)
class Target:
    """One statement that would be struck."""

    statement: str
    field: str
    words: str
    source: str = ""
    """The document or file that it is from, or who gave a consent, where the words stand in that name alone."""
    is_from_file: bool = False
    is_in_backups: bool = False
    """Whether only backups have it, of a branch of history that was left when an older one was brought back."""
    subject: str = ""
    """The id of what it is told of."""


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
    """The statements of a field of an item or person, in force or not, only those that hold `words` where some are
    given. With what a scan's file says goes what was told of its item by that file. Raises WrongUse if there are none.
    """
    asked, folded, sought = {subject.id for subject in subjects}, fold(as_seen(words)), tokens(words)
    matches = [
        row.as_target
        for row in _every_row(collection)
        if row.subject in asked
        and row.field == field
        and (folded in fold(as_seen(row.words)) or (sought and stands_in(row.words, sought)))
        and not _is_mark(row)
    ]
    if not matches:
        raise WrongUse(
            f"There is no such {field} to strike.", "boxlore show and boxlore people show list what is told."
        )
    return matches + (_told_by_files(collection, asked, matches) if field == "embedded" else [])


def _told_by_files(collection: Collection, scans: Container[str], embedded: Iterable[Target]) -> list[Target]:
    """What was told by their files of the items that these scans (ids) show."""
    said = fold(" ".join(" ".join(target.words.split()) for target in embedded))
    rows = list(_every_row(collection))
    items = {
        shows.item
        for row in rows
        if row.subject in scans and row.field == "shows" and (shows := SHOWS_WORDS.or_none(row.words)) is not None
    }
    items |= {row.subject for row in rows if row.field == "scan" and row.words in scans}  # markers that a file sets
    return [
        row.as_target
        for row in rows
        if row.subject in items and row.said == Said.FILE and row.field != "file_name" and fold(row.words) in said
    ]


@dataclass(frozen=True, slots=True)
class _Row:
    """One statement of the log, or of what only backups have."""

    id: str
    subject: str
    field: str
    words: str
    said: str
    source: str
    consent_by: str
    """Who gave a consent, where this is one."""
    is_in_backups: bool

    @property
    def as_target(self) -> Target:
        return Target(self.id, self.field, self.words, is_in_backups=self.is_in_backups, subject=self.subject)


def _every_row(collection: Collection) -> Iterator[_Row]:
    for row in collection.store.every_words():
        yield _Row(*row, is_in_backups=False)
    with only_in_backups(collection.folder) as db:
        for row in every_words(db):
            yield _Row(*row, is_in_backups=True)


def _is_mark(row: _Row) -> bool:
    """Whether it only says that the words of a scan's file were struck."""
    embedded = EMBEDDED_WORDS.or_none(row.words) if row.field == "embedded" else None
    return embedded is not None and embedded.are_struck


EVERYWHERE, ANY = "everywhere", "any"
"""What is written instead of an item or a person, and instead of a field."""


def targets_everywhere(collection: Collection, words: str, field: str = ANY) -> tuple[list[Target], list[Target]]:
    """Every statement about anything (items, people, places, occasions, containers, sittings, the collection) that
    holds the words as whole words, in force or not: those to strike, and those which a strike would break, such as the
    name of a scan's file. A statement from a document whose name holds them is to be struck too; what came from a file
    of such a name, as a whole tree does, is not. Of `any` field, the parts of a name go that together are the words.
    Raises WrongUse if there are none.
    """
    if field != ANY and field not in FIELDS:
        raise WrongUse(f"There is no field “{field[:40]}”.", "Write any, or boxlore show names the fields.")
    asked = tokens(words)
    if not asked:
        raise WrongUse("No words are given.", "Say which with --words.")
    rows = [
        (row, target)
        for row in _every_row(collection)
        if field in (ANY, row.field) and ((target := _holding(row, asked)) is not None or row.field in PARTS_OF_A_NAME)
    ]
    parts = [(row.id, row.subject, row.words) for row, _ in rows if row.field in PARTS_OF_A_NAME]
    together = parts_of_a_name(parts, asked) if field == ANY else set()
    holding = [target or row.as_target for row, target in rows if target or row.id in together]
    if not holding:
        raise WrongUse("Those words stand nowhere.", "boxlore find looks for words that are told.")
    to_strike = [target for target in holding if not target.is_from_file and can_be_struck(target.field)]
    return to_strike, [target for target in holding if target not in to_strike]


def _holding(row: _Row, asked: list[str]) -> Target | None:
    """The statement if it holds the words, or is from a document or a file whose name does, or is the consent of
    somebody whose name does."""
    if row.field not in FIELDS:
        return None  # of a newer version, in a backup
    if stands_in(row.words, asked):
        return row.as_target
    if row.said in (Said.DOCUMENT, Said.FILE) and stands_in(row.source, asked):
        return replace(row.as_target, source=row.source, is_from_file=row.said == Said.FILE)
    return replace(row.as_target, source=row.consent_by) if stands_in(row.consent_by, asked) else None


def target_line(collection: Collection, target: Target) -> str:
    """One of the statements to be struck, in the list of them: of what, its label, and the words."""
    source = f" (from {target.source[:100]})" if target.source else ""
    label = FIELDS[target.field].label
    told = f"{label}: {' '.join(target.words.split())[:100]}" if target.words else label
    in_backups = " (only in backups)" if target.is_in_backups else ""
    return f"  {f'{called(collection, target.subject)}  {told}'.lstrip()}{source}{in_backups}"


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

    First they go out of the tables that Boxlore itself keeps for the keeper to answer, and what a struck withdrawal
    closed is noted without its words; of what was printed, the report names the PDFs that can be read and hold the
    words.
    """
    also = list(asked)
    words = [*words_of(collection.store, statements), *also]
    forget_rows(collection, words)
    keep_closed(collection, frozenset(statements))
    collection.back_up_before("striking")
    by, now = collection.by, collection.clock.now()
    report = strike(collection.store, statements, by=by, now=now, also=also, waiting=waiting, stopped=stopped)
    from boxlore.tasks.collection.struck_in_pdfs import pdfs_read

    printed = [str(collection.folder / name) for name, holds in pdfs_read(collection, words).items() if holds]
    report = replace(report, left_in=tuple(dict.fromkeys([*report.left_in, *printed])))
    report = replace(report, standing=(*report.standing, *_names_holding(collection, report, words, also)))
    note_files(collection, filter(_is_output, carriers(collection, report)))
    return report


def _names_holding(
    collection: Collection, report: StrikeReport, struck: Iterable[str], asked: Iterable[str]
) -> Iterator[Standing]:
    """Files and folders of the collection's folder whose name holds struck words; of a text of one word only if it was
    asked for by itself. What the report names already is left out.
    """
    of_names = [words for words in map(tokens, struck) if len(words) > 1] + [
        words for words in map(tokens, asked) if words
    ]
    said = {*carriers(collection, report), *(standing.text for standing in report.standing)}
    for path in sorted(collection.folder.rglob("*")) if of_names else ():
        inside, own = path.relative_to(collection.folder).as_posix(), tokens(path.name)
        if any(holds(own, words) for words in of_names) and not any(inside in text for text in said):
            yield Standing(Place.NAME, "", "", "", inside)


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
    if standing.backups:
        return _still_in_backups(collection, standing)
    if standing.place is Place.NAME:
        return f"Still in the name of {standing.text}: give it another one."
    if standing.place is Place.BY:
        return f"Still in the keeper's name, {text}, which stands beside all that was written down; it stays."
    if standing.place is Place.ACT:
        return f"Still in the line that says what was done, {text}; it stays."
    number = _number(collection, standing)
    where = _where(standing, number)
    if standing.place is Place.READING:
        return f"Still in what {where} is read as, {text}; it goes when that statement is struck."
    if standing.place is Place.DRAFT:
        return f"Still in what is being typed in {where}, {text}: finish it there, then strike again."
    if standing.place is Place.SOURCE:
        return f"Still in what {where} is from, {text}; it goes when that statement is struck."
    if not can_be_struck(standing.field):
        file = FILE_WORDS.or_none(standing.text) if standing.field == "file" else None
        called = f", “{file.path}”" if file else ""
        return f"Still in {where}{called}: the program needs it, and it stays for whoever gets the collection's folder."
    if number:
        return f"Still in {where}, {text}: boxlore strike {number} {standing.field} takes it out."
    return f"Still in {where}, {text}: boxlore strike everywhere {standing.field} --words, with those words, does."


def _number(collection: Collection, standing: Standing) -> str:
    return collection.store.number_of(standing.subject) if standing.kind == Kind.ITEM else ""


def _where(standing: Standing, number: str) -> str:
    return f"“{FIELDS[standing.field].label.lower()}” of {number or f'one {standing.kind}'}"


BACKUPS_NAMED = 3


def _still_in_backups(collection: Collection, standing: Standing) -> str:
    """Where the words stand in backups alone, and how they go from there."""
    names = [f"{FOLDER}/{name}" for name in standing.backups[:BACKUPS_NAMED]]
    more = len(standing.backups) - len(names)
    files = ENGLISH.listed([*names, *([several(more, "more backup")] if more else ())])
    text = f"“{standing.text[:80]}”"
    delete = f"delete {'it' if len(standing.backups) == 1 else 'them'} if the words must go."
    if standing.place in (Place.BY, Place.ACT) or standing.field not in FIELDS:
        return f"Still in {files}, {text}; {delete}"
    where = f"in {_where(standing, _number(collection, standing))}, {text}"
    if standing.place is Place.WORDS and can_be_struck(standing.field):
        return f"Still in {files}, {where}: boxlore strike everywhere {standing.field} --words, with those words, does."
    return f"Still in {files}, {where}; {delete}"


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


KEPT = (("database", is_database), ("backups", is_backup))
"""What a strike cleans: its name, and whether a path is part of it."""


def proved(report: StrikeReport, carrying: Iterable[str]) -> str:
    """What a finished strike has shown, where no row holds the words any more: a sentence, or nothing. `carrying` are
    the `carriers`."""
    left = [name for name, holds_path in KEPT if any(map(holds_path, carrying))]
    clean = " or ".join(name for name, _ in KEPT if name not in left)
    if not clean or report.standing:
        return ""
    if report.is_by_chance:
        return (
            f"Nothing in the collection's {clean} tells the words any more; their letters stand there in ids, in times "
            "or within other words by chance."
        )
    return f"No byte of the collection's {clean} holds the words any more."
