"""Records for outputs: from the store to `core.records.item_record.Record`, seen as one audience may see it."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import date
from difflib import get_close_matches
from functools import partial

from boxlore.core.dates.reading import DateReading
from boxlore.core.errors import WrongUse
from boxlore.core.fields.audiences import AUDIENCE_WORDS
from boxlore.core.fields.name_answers import NAMING_WORDS, OF_SETTING
from boxlore.core.fields.table import FIELDS
from boxlore.core.findings import Finding, Severity
from boxlore.core.people.consent import Consent
from boxlore.core.people.latest_birth import BornBy, Pictured, latest_births
from boxlore.core.people.names_in_text.search import Hit
from boxlore.core.people.person import Person, Registry, build_registry
from boxlore.core.people.reference import PersonRef
from boxlore.core.records.audience import Recipient, To, is_keepers_alone
from boxlore.core.records.audience_levels import closed_until, may_see
from boxlore.core.records.in_force import build
from boxlore.core.records.item_record import Material, PersonShown, Record, every_told
from boxlore.core.records.living import BornFrom, Life, life_of
from boxlore.core.records.marks import bare_label
from boxlore.core.records.name_answers import STRANGER, Decided, decided
from boxlore.core.records.withheld import Withheld, withhold
from boxlore.core.rules.ages_told import born_from_ages
from boxlore.core.rules.people_and_kin import Wedding
from boxlore.core.statements import Kind, Reading, Statement, Subject, Sure, fold
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.leaning_dates import keeps_a_date, leaning
from boxlore.tasks.collection.names_found import answers_in_table
from boxlore.tasks.collection.names_left import decisions_given
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.unknown_people import strangers_of


@dataclass(frozen=True, slots=True, kw_only=True)
class Selection:
    """Which items: all, or those of a box, a folder, a person by name, an event, a search, or by number or mark."""

    box: str = ""
    folder: str = ""
    person: str = ""
    event: str = ""
    words: str = ""
    items: tuple[str, ...] = ()
    wanted: bool = False
    """Only what the archive has said that it wants."""

    @property
    def asked(self) -> str:
        """What is looked for by a name or by words that may be mistyped; empty if nothing is."""
        return ", ".join(f"{what} “{words[:40]}”" for what, words in self.parts().items())

    def parts(self) -> dict[str, str]:
        """What is looked for, by what it is."""
        parts = {"box": self.box, "folder": self.folder, "person": self.person, "occasion": self.event,
                 "words": self.words}  # fmt: skip
        return {what: words for what, words in parts.items() if words}


EVERYTHING = Selection()


def nothing_of(selection: Selection) -> str:
    """`nothing here is of box “99”`."""
    return f"nothing here is of {selection.asked}"


def withheld_choice(selection: Selection) -> tuple[str, str]:
    """What to say where the keeper's own items are chosen by words that may not be known where they would go: a
    selection tells nothing that its audience may not know."""
    return (
        f"There is nothing to hand over by {selection.asked}: outside it may not be known that items are of that.",
        "Choose them by box or folder, or all; what names the living goes to the closed part.",
    )


def check_chosen(collection: Collection, selection: Selection) -> None:
    """Raises WrongUse if it chooses none of the keeper's own items, naming what is not there and the nearest name.

    Everything that makes an output of chosen items asks this first, so that a slip makes nothing.
    """
    if selection.wanted and not collection.store.wanted():
        raise WrongUse(
            "No archive has said that it wants anything.", "Read its answer first: boxlore offer --answer FILE.csv."
        )
    if not selection.asked or next(records(collection, selection), None) is not None:
        return
    alone = [
        Selection(**{name: words})
        for name in ("box", "folder", "person", "event", "words")
        if (words := getattr(selection, name))
    ]
    unknown = [part for part in alone if next(records(collection, part), None) is None]
    words = ", ".join(part.asked for part in unknown or alone)
    nearest = [name for part in unknown for name in _nearest(collection, part)]
    meant = f"Is {' or '.join(f'“{name}”' for name in nearest)} meant? " if nearest else ""
    together = "" if unknown or len(alone) == 1 else " together"
    called = _called(collection.people(), selection.person) if len(alone) == 1 else frozenset()
    if called and not meant:
        raise WrongUse(
            f"“{selection.person}” is among the people, and no item names or shows anybody of that name.",
            "boxlore tell ITEM person NAME says who is in a picture.",
        )
    raise WrongUse(
        f"Nothing here is of {words}{together}.",
        f"{meant}boxlore housing what, boxlore people list and boxlore find show them.",
    )


def _nearest(collection: Collection, part: Selection) -> list[str]:
    """The names of that kind that are nearest to one that is not there, the best first."""
    if part.person:
        names = [person.name for person in collection.people().values()]
    else:
        kind = "box" if part.box else "folder" if part.folder else ""
        names = [label for _, path in collection.store.containers() for held, label in path if held == kind]
    asked = fold(part.person or part.box or part.folder)
    by_fold = {fold(name): name for name in names if fold(name) != asked}
    return [by_fold[near] for near in get_close_matches(asked, by_fold, 2)]


def record_of(collection: Collection, item: str) -> Record:
    """The keeper's whole record of one item, by its id."""
    for record in _records(collection, (item,)):
        return record
    raise WrongUse("That item is not here.")


def records(
    collection: Collection, selection: Selection = EVERYTHING, order: Sequence[str] | None = None
) -> Iterator[Record]:
    """The keeper's whole records, one at a time, in the order of their numbers, or those of `order` in its own."""
    ids = _chosen_ids(collection, selection)
    if order is not None:
        chosen = set(order if ids is None else ids)
        ids = tuple(ident for ident in order if ident in chosen)
    called = _called(collection.people(), selection.person)
    for record in _records(collection, ids):
        if _selected(record, selection, called):
            yield record


@dataclass(slots=True)
class AudienceView:
    """The collection as one recipient may have it, and what is known of the living where that decides."""

    collection: Collection
    recipient: Recipient
    lives: Mapping[str, Life] = field(default_factory=dict)
    latest: Mapping[str, BornBy] = field(default_factory=dict)
    """The latest possible birth of a person as inferred, with its reason."""

    known: Registry = field(default_factory=Registry)
    """Those of whose name, dates or kin something is kept from the recipient, as they may know them."""

    @property
    def to(self) -> To:
        return self.recipient.to

    @property
    def withheld(self) -> Withheld:
        return self.recipient.withheld

    @property
    def holder(self) -> str:
        """Who holds the originals, as the recipient may know: empty where that names somebody withheld."""
        return self.setting("holder")

    def setting(self, name: str) -> str:
        """A setting as the recipient may know it: empty where it names somebody withheld. How to reach whoever holds
        the originals is for an archive's closed part alone."""
        if name == "contact" and not self.to.is_closed_part:
            return ""
        return "" if self.named_in_setting(name) else getattr(self.collection.settings, name)

    def named_in_setting(self, name: str) -> Sequence[Hit]:
        """Where a setting (`title`, `holder`) surely names somebody withheld, and the keeper has not let that out.

        It is a place of its own: the same words answered in an item are not answered here.
        """
        words = getattr(self.collection.settings, name)
        hits = self.withheld.hits(words, self.collection.id, OF_SETTING + name)
        return [hit for hit in hits if not hit.doubt]

    def people(self) -> Registry:
        """The registry as the recipient may know it. Whoever is withheld is in it too: ask `may_name` of each."""
        everyone = self.collection.people()
        return Registry(self.known.get(ident, person) for ident, person in everyone.items()) if self.known else everyone

    def records(self, selection: Selection = EVERYTHING, order: Sequence[str] | None = None) -> Iterator[Record]:
        """What outputs take: only what may be seen."""
        called = _called(self.people(), selection.person)
        for record in records(self.collection, selection, order):
            seen = self.recipient.seen(record)
            # a selection tells nothing that its audience may not know
            if _selected(seen, selection, called) and self._may_find(seen, selection.words):
                yield seen

    def handed_over(self, selection: Selection = EVERYTHING, order: Sequence[str] | None = None) -> Iterator[Record]:
        """What an archive is shown or given: the records without the items that are the keeper's alone, which no other
        record names either."""
        kept = keepers_alone(self.collection)
        numbers = {self.collection.store.number_of(item) for item in kept}
        for record in self.records(selection, order):
            if record.id not in kept:
                related = tuple(relation for relation in record.related if relation.number not in numbers)
                yield record if related == record.related else replace(record, related=related)

    def _may_find(self, seen: Record, words: str) -> bool:
        """Whether a search for the words meets a statement that the recipient may see."""
        if not words or self.to is To.KEEPER:
            return True
        asked = _tokens(words)
        return any(_holds(asked, view.words) for view in every_told(seen))


def _tokens(words: str) -> list[str]:
    return "".join(letter if letter.isalnum() else " " for letter in fold(words)).split()


def _holds(asked: Sequence[str], words: str) -> bool:
    """Whether the words hold all that is asked for, or words that begin so, as the search of the store has it."""
    tokens = _tokens(words)
    return all(any(token.startswith(start) for token in tokens) for start in asked)


def never_named_outside(collection: Collection) -> frozenset[str]:
    """The ids of those whom no answer of the keeper names outside."""
    return seen_by(collection, To.OUTSIDE).withheld.never_named


def seen_by(collection: Collection, to: To) -> AudienceView:
    """Work out who is living, then whose names are withheld from that audience."""
    if to.is_public:
        from boxlore.tasks.collection.files_read_again import read_files_again

        read_files_again(collection)
    latest, earliest, years = _births(collection) if to.is_public else ({}, {}, {})
    lives = _lives(collection, latest, earliest) if to.is_public else {}
    today = collection.clock.today()
    answers = _decided(collection)
    withheld = withhold(collection.people().values(), lives, to, today, answers)
    recipient = Recipient(
        to=to,
        on_day=today,
        withheld=withheld,
        strangers=strangers_of(collection, answers, withheld.people, years) if to.is_public else None,
        own_audiences=partial(_own_audiences, collection),
    )
    known = _known_in_part(collection, recipient)
    leans = leaning(collection) if keeps_a_date(collection, recipient, known) else None
    return AudienceView(collection, replace(recipient, names=known.names(), leans=leans), lives, latest, known)


def given(person: Person) -> tuple[Consent, ...]:
    """The consents of somebody without what was taken back."""
    return tuple(consent for consent in person.consents if consent.given)


def while_consents_held(seen: AudienceView, people: Sequence[Person]) -> AudienceView:
    """What outsiders might have before these people took consents back."""
    ids = {person.id for person in people}
    everyone = seen.collection.people().values()
    before = [replace(person, consents=given(person)) if person.id in ids else person for person in everyone]
    withheld = withhold(before, seen.lives, seen.to, seen.recipient.on_day, _decided(seen.collection))
    return replace(seen, recipient=replace(seen.recipient, withheld=withheld))


def _decided(collection: Collection) -> Decided:
    """What the keeper has decided of places that name somebody: in items, and in settings of the collection."""
    told = [(item, NAMING_WORDS.or_none(words)) for item, _, words in collection.store.words_of(["naming"])]
    of_items = [
        ("" if item == collection.id else item, decision)
        for item, decision in told
        if decision and (item != collection.id or decision.person == STRANGER)  # else it is of a setting, or a file
    ]
    if not collection.store.writable:
        of_items += answers_in_table(collection)
    of_settings = [each for each in decisions_given(collection) if each.where.startswith(OF_SETTING)]
    return decided([*of_items, *((collection.id, decision) for decision in of_settings)])


def _known_in_part(collection: Collection, recipient: Recipient) -> Registry:
    """Those of whom something is kept from the recipient, made of the rest of what is told of them."""
    ids = [
        ident
        for person in collection.people().values()
        if not recipient.may_know_all_of(person)
        for ident in person.ids
    ]
    return build_registry((ident, list(_known_rows(collection, recipient, ident))) for ident in ids)


def _known_rows(collection: Collection, recipient: Recipient, ident: str) -> Iterator[tuple[Statement, Reading | None]]:
    for statement, reading in collection.store.statements(Subject(Kind.PERSON, ident)):
        if recipient.may_know(statement) or not FIELDS[statement.field].told:
            yield statement, reading


def _own_audiences(collection: Collection, about: Subject) -> tuple[str, ...]:
    """What the keeper has kept of an item to whom. (Of a person: whom the keeper keeps is withheld altogether.)"""
    if about.kind is not Kind.ITEM:
        return ()
    return tuple(
        statement.words for statement, _ in collection.store.statements(about) if statement.field == "audience"
    )


def keepers_alone(collection: Collection) -> frozenset[str]:
    """The ids of the items that are the keeper's alone."""
    kept = ((item, words) for item, _, words in collection.store.words_of(["audience"]))
    return frozenset(item for item, words in kept if is_keepers_alone([words]))


def kept_whole(collection: Collection) -> tuple[frozenset[str], dict[str, date]]:
    """The ids of the items that no archive is given, as their audience says, and of those that are closed as a whole
    until a day, with the day."""
    today = collection.clock.today()
    whole = [
        (item, str(kept.audience))
        for item, _, words in collection.store.words_of(["audience"])
        if (kept := AUDIENCE_WORDS.or_none(words)) and not kept.field and collection.store.number_of(item)
    ]
    days = {item: day for item, audience in whole if (day := closed_until(audience, today))}
    return frozenset(item for item, audience in whole if not may_see(audience, To.ARCHIVE, today)), days


def contradictions(collection: Collection, lives: Mapping[str, Life] | None = None) -> list[Finding]:
    """Who is named to nobody outside because of what cannot be all true, for the keeper; `lives` where they are known
    already."""
    people = collection.people()
    return [
        Finding(
            rule="life.contradiction",
            severity=Severity.ASK,
            message=f"{people[ident].name} is named and shown to nobody outside: {life.contradiction}. Put right what "
            "is not so (boxlore people tell, or the person's own screen), or part two people who stand in one entry.",
            source="derived",
        )
        for ident, life in (lives_of(collection) if lives is None else lives).items()
        if life.contradiction
    ]


def lives_of(collection: Collection) -> dict[str, Life]:
    """Who is taken as living, and why: from what is told, else from pictures, marriages and children."""
    latest, earliest, _ = _births(collection)
    return _lives(collection, latest, earliest)


_Births = tuple[Mapping[str, BornBy], Mapping[str, BornFrom], Mapping[str, int]]


def _births(collection: Collection) -> _Births:
    """The latest births by what is told of pictures, weddings and children, the earliest by ages told of pictures, and
    by the id of an item the last year that its picture may be of, in one reading of all records."""
    earliest: dict[str, BornFrom] = {}
    years: dict[str, int] = {}

    def work_out() -> _Births:
        pictured = _pictured(collection, earliest, years)
        return latest_births(collection.people(), pictured, _wed(collection)), earliest, years

    return collection.while_unchanged("births", work_out)


def _lives(collection: Collection, latest: Mapping[str, BornBy], earliest: Mapping[str, BornFrom]) -> dict[str, Life]:
    today, years = collection.clock.today(), collection.settings.living_years
    return {
        ident: life_of(person, today, years, latest.get(ident), earliest.get(ident))
        for ident, person in collection.people().items()
    }


def _pictured(collection: Collection, earliest: dict[str, BornFrom], years: dict[str, int]) -> Iterator[Pictured]:
    """Everyone in a dated picture, or behind the camera; a guess at the date, or at who it is, ends no life. The
    earliest births by ages that are told of the pictures are put into `earliest`: these may only begin one later, so
    that a guess counts too. The last years of pictures are put into `years`."""
    people = collection.people()
    for record in records(collection):
        view = record.first("date")
        for ident, born_from in born_from_ages(record, people):
            if ident not in earliest or born_from.day > earliest[ident].day:
                earliest[ident] = born_from
        if view is not None and view.date is not None and view.sure is not Sure.GUESS:
            if view.date.last_year is not None:
                years[record.id] = view.date.last_year
            for shown in (*record.shown(), *record.shown("photographer")):
                if shown.person in people and _is_surely(shown, people[shown.person]):
                    yield Pictured(shown.person, view.date, f"{record.number}, {record.date_display}")


def _is_surely(shown: PersonShown, person: Person) -> bool:
    """Whether it is sure that this person is shown: what is only likely ends no life. Someone without a name is whoever
    stands there.
    """
    return shown.sure is Sure.SURE or not (person.calls or person.surnames)


def weddings(collection: Collection) -> Iterator[Wedding]:
    """Marriages that are told as events, with who married and when."""
    for _, rows in collection.store.subjects("event"):
        usable = [(statement.field, read.usable_value) for statement, read in rows if read is not None]
        dates = [value for name, value in usable if name == "date" and isinstance(value, DateReading)]
        partners = tuple(value.id for name, value in usable if name == "partner" and isinstance(value, PersonRef))
        if dates and partners:
            yield Wedding(partners, dates[-1])


def _wed(collection: Collection) -> Iterator[Pictured]:
    for wedding in weddings(collection):
        for partner in wedding.partners:
            yield Pictured(partner, wedding.when, wedding.when.display)


def _chosen_ids(collection: Collection, selection: Selection) -> tuple[str, ...] | None:
    ids = _named_ids(collection, selection)
    if selection.wanted:
        wanted = collection.store.wanted()
        return tuple(wanted if ids is None else (ident for ident in ids if ident in set(wanted)))
    return ids


def _named_ids(collection: Collection, selection: Selection) -> tuple[str, ...] | None:
    if selection.items:
        return tuple(find_item(collection, number_or_mark).id for number_or_mark in selection.items)
    if selection.words:
        hits = collection.store.search(selection.words, 100_000)
        return tuple(dict.fromkeys(hit.item for hit in hits if hit.item))
    return None


def _called(people: Registry, words: str) -> frozenset[str]:
    """The ids of everyone one of whose names holds the words, also a name of an entry that is the same person."""
    asked = fold(words)
    return frozenset(
        ident
        for person in (people.values() if asked else ())
        if any(asked in fold(form) for form in (person.name, *person.forms))
        for ident in person.ids
    )


def _selected(record: Record, selection: Selection, called: frozenset[str]) -> bool:
    for kind, label in (("box", selection.box), ("folder", selection.folder)):
        if label and (record.mark is None or record.mark.label(kind) not in (label, bare_label(kind, label))):
            return False
    if selection.event and fold(selection.event) not in fold(record.words("occasion")):
        return False
    asked = fold(selection.person)
    return not asked or any(asked in fold(shown.name) or shown.person in called for shown in record.people)


def _records(collection: Collection, ids: tuple[str, ...] | None) -> Iterator[Record]:
    people = collection.people()
    said_by = people.names()
    material: Material
    for material in collection.store.about_items(ids=ids):
        record = build(material, people, said_by)
        yield _with_words_of_files(record, files_say) if (files_say := collection.files_say) else record


def _with_words_of_files(record: Record, files_say: Mapping[str, str]) -> Record:
    """The record with what files say now, where that could not be kept."""
    scans = tuple(replace(scan, embedded=files_say.get(scan.id, scan.embedded)) for scan in record.scans)
    return replace(record, scans=scans)
