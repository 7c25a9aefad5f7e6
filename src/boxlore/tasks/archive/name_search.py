"""The name search: where a withheld name stands, before anything leaves, and that none is left in what does.

Every form of every withheld name is looked for in all words, in names of files, in what scans carry inside them and
in the finished files. The keeper reads what was found and what becomes of it.
"""

import re
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import chain
from pathlib import Path

from boxlore.core.errors import CouldNot
from boxlore.core.fields.name_answers import NamingAnswer
from boxlore.core.fields.table import FIELDS
from boxlore.core.findings import several
from boxlore.core.records.audience import OF_SCANS, WHO_SAYS, Naming, Recipient
from boxlore.core.records.closing_dates import Closing
from boxlore.core.records.in_force import told_of
from boxlore.core.records.item_record import Record
from boxlore.core.records.name_answers import MADE_BY, NOTHING_DECIDED, STRANGER
from boxlore.core.statements import Kind, Reading, Statement, Subject, fold
from boxlore.tasks.archive.name_answers import NamePlace, answers_before, places_of, with_answers
from boxlore.tasks.collection.gate import Gate, files_in
from boxlore.tasks.collection.names_found import OF_NO_ITEM
from boxlore.tasks.collection.names_left import WRITTEN
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.records_for_outputs import EVERYTHING, AudienceView, Selection, records

_COUNTED = re.compile(r"(?:[(#№]|\bn(?:o|r|ro|um|umber|ummer|umero)?\b[.:]?)\s*\d{1,3}(?!\d)", re.IGNORECASE)
"""A number that counts pictures of one title: `no. 3`, `(3)`. An age or a year tells people apart."""
AS_ANSWERED = "may go out, as you answered"
THE_SCAN = "the scan, "
TO_THE_CLOSED_PART = "the scan goes to the closed part"


@dataclass(frozen=True, slots=True)
class NameFound:
    """One place where withheld names stand: whose, in which words, and what becomes of it in the open part."""

    number: str
    field: str
    words: str
    people: tuple[str, ...]
    done: str
    places: tuple[NamePlace, ...] = ()
    """Where in the words, for each person; none where somebody is meant or shown without a name."""


def search(
    collection: Collection, outside: AudienceView, closing: Closing, selection: Selection = EVERYTHING
) -> Iterator[NameFound]:
    """Everything that the open part leaves out for a name's sake, item by item."""
    of_makers: set[tuple[str, frozenset[str]]] = set()
    before = answers_before(collection)
    of_items = ((whole, list(outside.recipient.namings(whole))) for whole in records(collection, selection))
    for whole, every in chain(of_items, [_of_no_item(collection, outside.recipient)]):
        namings = [naming for naming in every if _is_first(naming, of_makers)]
        if not every:
            continue
        people = tuple(sorted(person.name for person in closing.named_in(every)))
        in_it = [naming for naming in every if naming.where != WHO_SAYS]
        shown = tuple(sorted(person.name for person in closing.named_in(in_it)))
        for naming in namings:
            is_the_scan = naming.where in OF_SCANS or outside.recipient.may_read_of(naming)
            done = TO_THE_CLOSED_PART if is_the_scan else "left out of the open part"
            places = tuple(with_answers(before, places_of(collection, whole, naming)))
            yield NameFound(whole.number, naming.where, naming.words[:200], people, done, places)
        listed = {naming.words for naming in namings if naming.where in OF_SCANS}
        if in_it and outside.recipient.seen(whole).closed_scans:
            for scan in whole.scans:
                if scan.path not in listed:
                    yield NameFound(whole.number, f"{THE_SCAN}{scan.side}", scan.path, shown, TO_THE_CLOSED_PART)


def _of_no_item(collection: Collection, outside: Recipient) -> tuple[Record, Sequence[Naming]]:
    """The names of nobody known in what is told of events, places, people, sittings and the collection, with what
    stands for an item there."""
    namings = [
        naming
        for kind in (Kind.COLLECTION, Kind.PERSON, Kind.EVENT, Kind.PLACE, Kind.SITTING)
        for ident, rows in collection.store.subjects(kind)
        for naming in outside.names_unknown(Subject(kind, ident), [told_of(*row, {}) for row in rows if _is_told(*row)])
    ]
    return Record(id="", number=OF_NO_ITEM), list(dict.fromkeys(namings))


def _is_told(row: Statement, _: Reading | None) -> bool:
    return FIELDS[row.field].told


def asked_once(namings: Iterable[NameFound]) -> Iterator[NameFound]:
    """The same, each question once: of one person and one word that may name her, of one name of nobody known, and
    about titles that differ by a number alone (`Hay, no. 1`, `Hay, no. 2`). Further places hang on the first."""
    every = list(namings)
    alike: dict[tuple[str, ...], list[NamePlace]] = {}
    for naming in every:
        for place in naming.places:
            alike.setdefault(_question(place), []).append(place)
    for naming in every:
        asked = [alike.pop(_question(place), ()) for place in naming.places]
        places = tuple(replace(first, alike=tuple(others)) for first, *others in filter(None, asked))
        if places or not naming.places:
            yield replace(naming, places=places)


def _question(place: NamePlace) -> tuple[str, ...]:
    """What places of one question have in common: of a doubt the word and the doubt; else their words but for a number
    that counts them; or the place itself, since a name without other words may be another one's in the next item."""
    if place.person == STRANGER or (place.why and place.where != MADE_BY):
        return place.person, fold(place.words), place.why, place.answer
    words, counted = _COUNTED.subn("0", place.sentence)
    is_alone = fold(place.sentence) == fold(f"[{place.words}]")
    own = "" if counted or not is_alone else f"{place.item} {place.key}"
    return place.person, place.where, words, place.why, place.answer, own


def _is_first(naming: Naming, of_makers: set[tuple[str, frozenset[str]]]) -> bool:
    """Whether a naming is listed: what files say of their maker is asked of the first of them."""
    said = naming.text, naming.people
    if naming.where != MADE_BY:
        return True
    is_first = said not in of_makers
    of_makers.add(said)
    return is_first


def in_words(namings: Sequence[NameFound]) -> str:
    """`12 living people in 206 mentions`."""
    people = {name for naming in namings for name in naming.people}
    unknown = {fold(place.name) for naming in namings for place in naming.places if place.person == STRANGER}
    mentions = sum(sum(len(place.every) for place in naming.places) or 1 for naming in namings)
    living = several(len(people), "living person", "living people")
    others = f", {several(len(unknown), 'name')} of nobody known" if unknown else ""
    return f"{living}{others} in {several(mentions, 'mention')}"


def answered(collection: Collection, outside: AudienceView) -> Iterator[NameFound]:
    """What the keeper has let go out by an answer, which the search above finds no more: it can be changed still."""
    open_again = replace(
        outside.recipient,
        withheld=replace(outside.withheld, decided=NOTHING_DECIDED),
        strangers=outside.recipient.strangers and replace(outside.recipient.strangers, decided=NOTHING_DECIDED),
    )
    before = answers_before(collection)
    decided = {item for item, _ in before}
    order = [ident for _, ident in collection.store.items() if ident in decided]
    of_items = ((whole, open_again.namings(whole)) for whole in records(collection, order=order))
    for whole, namings in chain(of_items, [_of_no_item(collection, open_again)]):
        for naming in namings:
            places = with_answers(before, places_of(collection, whole, naming))
            let_go = tuple(place for place in places if place.answer and place.answer != WRITTEN[NamingAnswer.HIDE])
            if let_go:
                yield NameFound(whole.number, naming.where, naming.words[:200], (), AS_ANSWERED, let_go)


def names_left(seen: AudienceView, folder: Path) -> Iterator[str]:
    """Files of a folder that the gate does not let out: they name someone withheld, or cannot be opened wholly."""
    gate = Gate(seen)
    for name, path in files_in(folder):
        try:
            gate.check_all([(name, path)])
        except CouldNot:
            yield name
