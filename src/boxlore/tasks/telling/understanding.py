"""What we make of words as they are told: a date, a place, a person, an event, a name. Proposed, never decided.

A reading that asks nothing may be used by outputs; one that asks waits for the keeper.
"""

import re
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, field, replace
from functools import partial
from types import MappingProxyType

from boxlore.core.dates import phrases
from boxlore.core.dates.family_display import family_display
from boxlore.core.dates.phrases import Whom
from boxlore.core.dates.reading import DateReading
from boxlore.core.errors import CouldNot
from boxlore.core.fields.letters import is_question
from boxlore.core.fields.table import FIELDS
from boxlore.core.people.life_event_words import is_inflected
from boxlore.core.people.names.dative import dative, told_in_dative
from boxlore.core.people.names.diminutives import names_behind
from boxlore.core.people.names.parts import PART_LABELS, PARTS, NameParts
from boxlore.core.people.names.reader import READER_VERSION as NAMES
from boxlore.core.people.names.reader import read_name
from boxlore.core.people.names.traditions import KnownNames
from boxlore.core.people.person import Person, Registry, known_names
from boxlore.core.people.reference import PersonRef
from boxlore.core.people.who_is_meant import ByName, by_name, known_by, named_in, the_one
from boxlore.core.people.who_is_where.kin_words import own_relation
from boxlore.core.places.names_apart import names_apart
from boxlore.core.places.own import read_own
from boxlore.core.places.reading import Place, PlaceReading, said_in_all
from boxlore.core.records.event_slips import mended
from boxlore.core.records.events import meant_by
from boxlore.core.records.item_record import Record
from boxlore.core.records.told_kin import kin_likely, kin_told, names_behind_kin
from boxlore.core.records.told_lives import with_lives
from boxlore.core.statements import Kind, Reading, Subject
from boxlore.gazetteer.lookup import Gazetteer, open_anyway
from boxlore.gazetteer.matching import ToldPlaces, also_told, told_often
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.settings import family_way, phrase_settings
from boxlore.tasks.telling.places import home_countries, own_gazetteer, own_places, place_reading
from boxlore.tasks.telling.time_line import all_events, own_events

REGISTRY = "registry 1"

_WORD = re.compile(r"[^\W\d_]+")


@dataclass(frozen=True, slots=True)
class Understood:
    """A reading with the sentence that tells it: `shown` beside the words, `asks` if there is a question."""

    reading: Reading
    shown: str
    asks: str = ""
    alternatives: tuple[str, ...] = ()


class Understanding:
    """Reads the words of one collection. The gazetteer opens (or is built) on the first place."""

    def __init__(self, collection: Collection) -> None:
        self._collection = collection
        self._gazetteer: Gazetteer | None = None
        self.fault = ""
        """Why no place is understood; '' if nothing stands against it."""
        self._used: ToldPlaces | None = None
        self._named: tuple[Registry, KnownNames] = Registry(), KnownNames()
        self._by_name: tuple[Registry, ByName] = Registry(), {}
        self._eldest: tuple[Registry, int] = Registry(), 0

    @property
    def gazetteer(self) -> Gazetteer | None:
        """The places. None where their index can be made nowhere: places are kept as they are told then."""
        if self._gazetteer is None and not self.fault:
            try:
                extra = own_gazetteer(self._collection)
                self._gazetteer = open_anyway(self._collection.unsaid.append, extra=extra)
            except CouldNot as error:
                self.fault = f"{error} Until then places are kept as they are told."
                self._collection.unsaid.append(self.fault)
        return self._gazetteer

    @property
    def used(self) -> ToldPlaces:
        """The places that the collection names already: they are preferred."""
        if self._used is None:
            self._used = told_often(self._collection.store.places_used())
        return self._used

    def read(self, reads: str, words: str, around: "Around | None" = None) -> Understood | None:
        """What these words come to, for a field that reads `date`, `place`, `person`, `event` or `name`."""
        if not words.strip():
            return None
        around = around or NOTHING_AROUND
        if reads == "date":
            read, settings = self.date(words, around)
            way = family_way(self._collection.settings)
            shown = family_display(read.edtf, way) if read.edtf else "kept as told, not read as a date"
            return Understood(date_reading(read, settings), shown, read.ask or "", read.alternatives)
        if reads == "place":
            return self._place(words, around)
        if reads == "name":
            return self._name(words)
        if reads == "person":
            return self._meant(words)
        return None

    def doubt(self, field: str, words: str) -> str:
        """What to say of words just kept in this field that are not read as a date, or not surely; '' for others."""
        understood = self.read("date", words) if FIELDS[field].reads == "date" else None
        if understood is None or is_question(words):
            return ""
        value = understood.reading.value
        if isinstance(value, DateReading) and not (value.edtf or value.choices):
            return " It is kept as told, and not read as a date."
        return f" In question: {understood.asks}" if understood.asks else ""

    def date(
        self, words: str, around: "Around", settings: phrases.PhraseSettings | None = None
    ) -> tuple[DateReading, phrases.PhraseSettings]:
        """A date by the collection's settings, or by others, and by what is known around it; with the settings used."""
        settings = settings or around.settings(phrase_settings(self._collection.settings))
        read = self._alone(words, settings, around)
        is_open = read.edtf is None or read.edtf.text.startswith("XXXX")
        if is_open or (not read.ask and phrases.says_no_number(words)):
            # an age or an event of the family (“auf der Flucht”): now it is worth reading the registry
            read = phrases.read(words, settings, self.known(words, around))
            if read.edtf is None and not read.alternatives:
                read = self._with_a_slip(words, around, settings) or read
        elif read.ask:  # which century was meant may follow from the lives of who tells and who is in the picture
            lives = MappingProxyType(dict(around.people()))
            born = birth_of(self._collection.people().get(around.narrator)) if around.narrator else ""
            if born or lives:
                known = phrases.KnownDates(
                    narrator=born, pictured=lives, this_year=self._this_year, first_year=around.first_year,
                    eldest=self._first_birth(), today=self._today,
                )  # fmt: skip
                read = phrases.read(words, settings, known)
        return read, settings

    def _with_a_slip(self, words: str, around: "Around", settings: phrases.PhraseSettings) -> DateReading | None:
        """The question what is meant, where a word is a slip of a told event (“the weding”); None for other words."""
        happened = own_events(self._collection)
        if not happened:
            return None
        people = self._collection.people()
        names = {piece for person in people.values() for name in person.forms for piece in name.casefold().split()}
        for told in mended(words, happened, names):
            read = phrases.read(told, settings, self.known(told, around))
            if read.choices:
                ask = read.ask or f"“{words}”: is “{told}” meant?"
                return replace(read, text=words, ask=ask)
        return None

    def leans(self, words: str) -> bool:
        """Whether words say no date by themselves, so that they may lean on a birth or an event of the family."""
        return self._alone(words, phrase_settings(self._collection.settings), NOTHING_AROUND).edtf is None

    def _alone(self, words: str, settings: phrases.PhraseSettings, around: "Around") -> DateReading:
        known = phrases.KnownDates(this_year=self._this_year, first_year=around.first_year, today=self._today)
        return phrases.read(words, settings, known)

    def known(self, words: str, around: "Around") -> phrases.KnownDates:
        """The births and events that these words lean on (`when Ruth was five`, `when I was six`, `on her 21st`); a
        birth of a name that several have is left out, and of several events it is asked which."""
        registry = self._collection.people()
        people, happened = with_lives(registry, all_events(self._collection))
        births: dict[str, set[str]] = {}
        deaths: dict[str, set[str]] = {}
        for person in people.values():
            if person.id in registry or not around.narrator or not own_relation(person.name):
                _add_life(person, {person.name, *person.forms, *person.calls}, births, deaths)  # else whose “Oma”?
        for name in list(births):
            if form := dative(name, self._collection.settings.language):  # `Вере 5 лет`
                births.setdefault(form, set()).update(births[name])
                deaths.setdefault(form, set()).update(deaths[name])
        for name, born in births.items():
            if len(born) > 1:
                births[name] = born - {""}  # one whose birth is told
        kin = kin_told(words, people, around.narrator)
        for phrase, ids in kin.items():
            if len(ids) == 1:
                _add_life(people[ids[0]], {phrase}, births, deaths)
        if around.narrator not in people:
            for phrase, name in names_behind_kin(words, births).items():
                births[phrase], deaths[phrase] = births[name], deaths[name]
        maybe = kin_likely(words, people, around.narrator, {*kin, *births})
        events, perhaps = meant_by(words, happened, people, around.narrator, kin, maybe)
        likely = self._by_pet_forms(words, births, deaths)
        likely |= {
            phrase: tuple(Whom(people[ident].name, birth_of(people[ident]), death_of(people[ident])) for ident in ids)
            for phrase, ids in maybe.items()
        }
        return phrases.KnownDates(
            _single(births), events, birth_of(people.get(around.narrator)), MappingProxyType(dict(around.people())),
            self._this_year, perhaps, around.first_year, _single(deaths), MappingProxyType(likely), self._first_birth(),
            self._today,
        )  # fmt: skip

    def _first_birth(self) -> int:
        """The year in which the first of the family was born, as far as it is told; 0 where no birth is."""
        people = self._collection.people()
        if self._eldest[0] is not people:
            years = [year for person in people.values() if person.born and (year := person.born.first_year)]
            self._eldest = people, min(years, default=0)
        return self._eldest[1]

    def _by_pet_forms(
        self, words: str, births: Mapping[str, set[str]], deaths: Mapping[str, set[str]]
    ) -> dict[str, tuple[Whom, ...]]:
        """By each pet form among the words, in the dative too, the one known name behind it, and the birth."""
        likely: dict[str, tuple[Whom, ...]] = {}
        language = self._collection.settings.language
        for told in _WORD.findall(words):
            form = told.casefold()
            if form in births or not told[0].isupper():
                continue
            forms = {form, *told_in_dative(form, language)}
            names = {name for short in forms for name in names_behind(short, language)}
            names |= {name for name in births if language != "en" and is_inflected(form, name)}  # `Ruthi sünnipäev`
            meant = sorted(name for name in names if len(births.get(name, ())) == 1)
            born = {birth for name in meant for birth in births[name]}
            if len(born) == 1:
                died = {death for name in meant for death in deaths.get(name, ()) if death}
                likely[form] = (Whom(min(meant, key=len).title(), born.pop(), min(died) if len(died) == 1 else ""),)
        return likely

    @property
    def _this_year(self) -> int:
        return self._collection.clock.today().year

    @property
    def _today(self) -> str:
        return self._collection.clock.today().isoformat()

    def _place(self, words: str, around: "Around") -> Understood | None:
        read = read_own(words, own_places(self._collection))
        if read is None and self.gazetteer is not None:
            read_in = partial(self.gazetteer.read, words, used=self.used, home=home_countries(self._collection))
            read = read_in(year=around.year)
            if any(place.called_then or place.country_then for place in read.choices):
                read = said_in_all(read, [read_in(year=year) for year in around.other_years])
        if read is None:
            return None
        if read.kind not in ("match", "kept") and (chosen := self._chosen_before(words)) is not None:
            read = replace(read, kind="match", choices=(chosen,))
        if read.kind == "match" and read.best and read.best.geonames:
            self._used = also_told(self.used, [read.best.geonames])
        reading = place_reading(read, around.year)
        names = tuple(names_apart(read.choices))
        first = names[0] if names else "kept as told"
        asks = "" if read.kind in ("match", "kept") else f"{read.kind}: {first}?"
        return Understood(reading, first, asks, names[1:])

    def _chosen_before(self, words: str) -> Place | None:
        """The place that was chosen last where the same words left it open."""
        rows = self._collection.store.places_told(words.strip())
        chosen = [reading.value for _, reading in rows if reading is not None and reading.confirmed]
        return next((value.best for value in reversed(chosen) if isinstance(value, PlaceReading)), None)

    @property
    def known_names(self) -> KnownNames:
        """The names that the family has already."""
        people = self._collection.people()
        if self._named[0] is not people:
            self._named = people, known_names(people.values())
        return self._named[1]

    def person_called(self, words: str, *more: Person) -> Person | None:
        """The one person known by this name or a part of it, of the registry or of `more`; None for nobody.

        Raises WrongUse for several, and lists them.
        """
        people = {person.id: person for person in (*more, *self._collection.people().values())}
        return the_one(known_by(people.values(), words, self.known_names), words)

    def _name(self, words: str) -> Understood | None:
        """The parts of a name, by the names that the family has already; nothing for words that are no name."""
        parts = read_name(words.strip(), self.known_names)
        if not parts:
            return None
        return Understood(Reading("name", parts, NAMES, asks=bool(parts.asks)), parts_words(parts), parts.asks)

    def called(self, words: str) -> list[str]:
        """The ids of everyone who has this name."""
        return [person.id for person in self._namesakes(words)]

    def _namesakes(self, words: str) -> list[Person]:
        people = self._collection.people()
        if self._by_name[0] is not people:
            self._by_name = people, by_name(people.values())
        return named_in(self._by_name[1], words, self.known_names)

    def _meant(self, words: str) -> Understood | None:
        """The one person of that name; none if nobody has it; a question if several have."""
        namesakes = self._namesakes(words)
        if not namesakes:
            return None
        value = PersonRef(namesakes[0].id)
        if len(namesakes) == 1:
            return Understood(Reading("person", value, REGISTRY), namesakes[0].name)
        others = tuple(person.name for person in namesakes)
        return Understood(
            Reading("person", value, REGISTRY, asks=True), namesakes[0].name, f"Which of {len(namesakes)}?", others
        )


def parts_words(parts: NameParts) -> str:
    """`given Pippa, family Marlowe`."""
    return ", ".join(
        f"{PART_LABELS[name]} {value}" for name in PARTS if (value := getattr(parts, name)) and name != "particle"
    )


def date_reading(read: DateReading, settings: phrases.PhraseSettings) -> Reading:
    """The reading of a date as it is stored; one with a question, or with no date, asks."""
    return Reading(
        kind="date",
        value=read,
        reader=phrases.READER_VERSION,
        settings=repr(settings),
        asks=bool(read.ask) or read.edtf is None,
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Around:
    """Context for reading one field: the year, and others in which what is said of then must hold; the latitude
    (degrees) and the country (ISO 3166-1) already told of the same item; the id of who tells; and who is in the
    picture, asked for only where a phrase leans on it: the birth by the name, as EDTF, empty where it is not known.
    `of_a_life`: it is told of a person, not of a picture."""

    year: int | None = None
    other_years: tuple[int, ...] = ()
    latitude: float | None = None
    country: str = ""
    narrator: str = ""
    people: Callable[[], Mapping[str, str]] = field(default=dict, compare=False)
    of_a_life: bool = False

    @property
    def first_year(self) -> int:
        """The year before which a date is asked about; 0 for none."""
        return 0 if self.of_a_life else phrases.FIRST_PHOTOGRAPH

    def settings(self, own: phrases.PhraseSettings) -> phrases.PhraseSettings:
        """The collection's settings with the half of the world and the country of the item's place."""
        if self.latitude is not None:
            own = replace(own, hemisphere="south" if self.latitude < 0 else "north")
        return replace(own, countries=(self.country,)) if self.country else own


NOTHING_AROUND = Around()


def readings_of(collection: Collection, item: str) -> Iterable[tuple[str, Reading | None]]:
    """(field, reading) of everything that is told of an item."""
    return [(row.field, reading) for row, reading in collection.store.statements(Subject(Kind.ITEM, item))]


def around(rows: Iterable[tuple[str, Reading | None]]) -> Around:
    """From (field, reading) pairs; only readings that may be used count. Of a place that asks which of several it is,
    what all of them share counts: the half of the world, and the country."""
    rows = list(rows)
    usable = [(field, reading.usable_value) for field, reading in rows if reading is not None]
    date = next((value for field, value in usable if field == "date" and isinstance(value, DateReading)), None)
    place = next((value for field, value in usable if field == "place" and isinstance(value, PlaceReading)), None)
    if place is not None:
        return _around(date, place.best)
    asking = (reading.value for field, reading in rows if field == "place" and reading is not None)
    return _around(date, next((shared_by(value.choices) for value in asking if isinstance(value, PlaceReading)), None))


def shared_by(choices: Sequence[Place]) -> Place | None:
    """What all these places share, as a place without a name: the half of the world that they lie in, by the latitude
    of the first, and the country. None where they lie in both halves, or where that is not known of each."""
    halves = {None if place.lat is None else place.lat < 0 for place in choices}
    if len(halves) != 1 or None in halves:
        return None
    countries = {place.country_code for place in choices}
    return Place(name="", lat=choices[0].lat, country_code=countries.pop() if len(countries) == 1 else "")


def around_record(
    record: Record,
    people: Mapping[str, Person],
    narrator: str = "",
    *,
    readings: Callable[[], Iterable[tuple[str, Reading | None]]] = tuple,
) -> Around:
    """The same from a record in force; `people` by id, `narrator` is the id of who tells. `readings` gives those of
    the item, and is called only where its place asks which of several it is."""
    view, told_place = record.first("date"), record.first("place")
    beside = _around(view.date if view else None, record.place)
    if told_place is not None and told_place.asks:
        shared = around(readings())
        beside = replace(beside, latitude=shared.latitude, country=shared.country)
    births = {shown.name: birth_of(people.get(shown.person)) for shown in record.shown()}
    return replace(beside, narrator=narrator, people=lambda: births)


def _around(date: DateReading | None, place: Place | None) -> Around:
    around = Around(year=date.first_year, other_years=_other_years(date)) if date else NOTHING_AROUND
    return replace(around, latitude=place.lat, country=place.country_code) if place else around


def _other_years(date: DateReading) -> tuple[int, ...]:
    """Years in which what is said of the first year of a date must hold too: the last of a span; of a day, a month or
    a season the years beside its own, since a year is said to belong to the state that governed for most of it.
    """
    first, last = date.earliest, date.latest
    if first is None or last is None or date.first_year is None:
        return ()
    if first.year != last.year:
        return (last.year,)
    is_whole = (first.month, first.day, last.month, last.day) == (1, 1, 12, 31)
    return () if is_whole else (first.year - 1, first.year + 1)


def birth_of(person: Person | None) -> str:
    """The birth of somebody as EDTF; empty where none is known."""
    return person.born.edtf.text if person and person.born and person.born.edtf else ""


def death_of(person: Person) -> str:
    """The death of somebody as EDTF; empty where none is known."""
    return person.died.edtf.text if person.died and person.died.edtf else ""


def _add_life(person: Person, names: Iterable[str], births: dict[str, set[str]], deaths: dict[str, set[str]]) -> None:
    """Add somebody's birth and death by these names, where one of the two is known."""
    born, died = birth_of(person), death_of(person)
    for name in names if born or died else ():
        births.setdefault(name.casefold(), set()).add(born)
        deaths.setdefault(name.casefold(), set()).add(died)


def _single(dates_by_name: Mapping[str, set[str]]) -> MappingProxyType[str, str]:
    return MappingProxyType({name: next(iter(dates)) for name, dates in dates_by_name.items() if len(dates) == 1})


def person_reading(subject: Subject) -> Reading:
    """The reading that points to a person or event chosen or made on purpose."""
    kind = "event" if subject.kind is Kind.EVENT else "person"
    return Reading(kind, PersonRef(subject.id), REGISTRY, confirmed=True)
