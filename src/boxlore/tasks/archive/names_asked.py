"""What an output for outside leaves out for a name's sake, as a table for the keeper to read and to fill in.

The table lies in the collection's folder (`names-found.csv`), never where it could be handed over. A transfer writes
it, and so does every single output (copies, sheets, pages, an offer), each for the items that it is made of; an
answer that stands there about another item stays.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from pathlib import Path

from boxlore.core.errors import CouldNot
from boxlore.core.findings import several
from boxlore.core.records.audience import OF_SCANS, To
from boxlore.exports.inventory import as_table
from boxlore.tasks.archive.name_answers import NamePlace, read_answers
from boxlore.tasks.archive.name_search import THE_SCAN, NameFound, answered, asked_once, in_words, search
from boxlore.tasks.archive.transfer_context import closing_of
from boxlore.tasks.collection.names_found import ANSWER, HEADING, KEY, NUMBER, rows_of
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.output_paths import NAMES_FOUND, write_own
from boxlore.tasks.collection.records_for_outputs import EVERYTHING, Selection, check_chosen, records, seen_by

MOST_SAID = 40
"""Rows that are said where no table can be written."""

MOST_SHOWN = 12
"""Further places of one question whose words stand in its row."""

SURE = "surely the name"
FOLLOWS = "not asked: it follows from what is told of the item"
MEANT = "not asked: the person is meant, and goes out with a consent"
"""Why a row stands in the table where there is no doubt."""


@dataclass(frozen=True, slots=True)
class NamesAsked:
    """What every name search finds, what may go out because the keeper said so, and how many of her answers are new."""

    namings: list[NameFound]
    let_go: list[NameFound]
    taken: int = 0


def look_for_names(collection: Collection, selection: Selection = EVERYTHING) -> NamesAsked:
    """What every name search finds, for the keeper to read before anything leaves, and what she let go out: all names
    are looked for once."""
    check_chosen(collection, selection)
    outside = seen_by(collection, To.OUTSIDE)
    namings = list(asked_once(search(collection, outside, closing_of(collection, outside), selection)))
    return NamesAsked(namings, list(asked_once(answered(collection, outside))))


def names_asked(collection: Collection, selection: Selection = EVERYTHING) -> NamesAsked:
    """The search, after the answers that the keeper wrote into the table are kept in the log.

    Raises WrongUse for an answer that cannot be read.
    """
    asked = look_for_names(collection, selection)
    listed = collection.folder / NAMES_FOUND
    if not listed.is_file() or not collection.store.writable:
        return asked
    places = [place for naming in (*asked.namings, *asked.let_go) for place in naming.places]
    taken = read_answers(collection, listed, places)
    return replace(look_for_names(collection, selection), taken=taken) if taken else asked


def write_names_found(collection: Collection, asked: NamesAsked, selection: Selection = EVERYTHING) -> Path:
    """Write what the name search found of the selection as a table for the keeper to fill in. What was answered so that
    it may go out stands there too, to be changed, and answers about other items, which were not taken yet.

    Raises WrongUse, CouldNot.
    """
    listed = collection.folder / NAMES_FOUND
    earlier = {_place(row): row for row in _kept_rows(collection, listed, selection)}
    every = (*asked.namings, *asked.let_go)
    rows = [_with_answer(row, earlier.pop(_place(row), ())) for naming in every for row in _rows_of(naming)]
    if rows or earlier:
        listed.unlink(missing_ok=True)  # what was written there is in the log, or kept
        write_own(collection, NAMES_FOUND, b"".join(as_table([HEADING, *earlier.values(), *rows])))
    return listed


def left_out(collection: Collection, to: To, selection: Selection = EVERYTHING) -> list[str]:
    """Before an output that is not for outside, nothing. Else the answers are taken and the table is written: sentences
    that say how many places stay out, and where they are listed; where no table can be written, they are listed here.
    """
    if not to.is_public:
        return []
    asked = names_asked(collection, selection)
    namings, lines = asked.namings, said_of_answers(asked)
    try:
        listed = write_names_found(collection, asked, selection)
    except (CouldNot, OSError):
        return [*lines, *(_said(namings) if namings else ())]
    if namings:
        lines.append(
            f"Left out of what goes outside: {in_words(namings)}; each is in {listed}, with what becomes of it."
        )
        if new := sum(bool(row.cells[KEY] and not row.cells[ANSWER]) for row in rows_of(listed)):
            lines.append(
                f"{new} not decided yet: “Hand on”, “Names in question” asks you about each; then make this again. "
                "What you hide stays hidden, after a later consent too, until you change its answer. The list is for "
                "you; do not hand it on."
            )
    return lines


def said_of_answers(asked: NamesAsked) -> list[str]:
    """A sentence about the answers that were taken just now; none if there were none."""
    are = several(asked.taken, "answer from the table of names is", "answers from the table of names are")
    return [f"{are} taken."] if asked.taken else []


def _said(namings: Sequence[NameFound]) -> Iterator[str]:
    """The places themselves, of a collection in whose folder nothing can be written."""
    rows = [row for naming in namings for row in _rows_of(naming)]
    yield f"Left out of what goes outside: {in_words(namings)}. No table of them can be written into this collection:"
    yield from (f"{number}, {where}: {words}" for number, where, words, *_ in rows[:MOST_SAID])
    if len(rows) > MOST_SAID:
        yield f"… and {len(rows) - MOST_SAID} more."


def _kept_rows(collection: Collection, listed: Path, selection: Selection) -> Iterator[tuple[str, ...]]:
    """Rows with an answer that is not in the log: about items that were not searched, and all where nothing is kept."""
    if not listed.is_file() or (selection == EVERYTHING and collection.store.writable):
        return
    searched = {record.number for record in records(collection, selection)} if collection.store.writable else ()
    for row in rows_of(listed):
        if row.cells[ANSWER].strip() and row.cells[NUMBER].strip() not in searched:
            yield tuple(row.cells.get(name, "") for name in HEADING)


def _place(row: Sequence[str]) -> tuple[str, str, str]:
    """What a row is about: the item, and the key of a place, or its words."""
    number, key, words = (row[HEADING.index(name)] for name in (NUMBER, KEY, "Words"))
    return number, key, "" if key else words


def _with_answer(row: tuple[str, ...], earlier: Sequence[str]) -> tuple[str, ...]:
    """The row with the answer of an earlier one of the same place, where it has none of its own."""
    at = HEADING.index(ANSWER)
    return (*row[:at], earlier[at], *row[at + 1 :]) if earlier and not row[at] else row


def _rows_of(naming: NameFound) -> Iterator[tuple[str, ...]]:
    """One row for each person at each place; one for all who are meant or shown without a name, to which no answer can
    be given."""
    if not naming.places:
        why = FOLLOWS if naming.field.startswith(THE_SCAN) or naming.field in OF_SCANS else MEANT
        yield (naming.number, naming.field, naming.words, "; ".join(naming.people), naming.done, why, "", "")
    for place in naming.places:
        done = f"{naming.done}{_also(place)}"
        yield (
            naming.number, naming.field, _shown(place), place.name, done, place.why or SURE, place.answer, place.key,
        )  # fmt: skip


def _shown(place: NamePlace) -> str:
    """The words of a place, and those of the others that are answered with it."""
    others = [f"{other.number}: {other.sentence}" for other in place.alike if other.sentence != place.sentence]
    more = [f"and {len(others) - MOST_SHOWN} more"] if len(others) > MOST_SHOWN else []
    return " / ".join((place.sentence, *dict.fromkeys(others[:MOST_SHOWN]), *more))


def _also(place: NamePlace) -> str:
    """`; the same in TRA-0002, as you answer here`, where one question is asked of several items."""
    others = sorted({other.number for other in place.alike})
    return f"; the same in {', '.join(others)}, as you answer here" if others else ""
