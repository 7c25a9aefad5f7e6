"""Words that lean on another day (“two years before the move”, “when Ned was five”), read by supposing that day.

Theory of operation
-------------------
The reader of dates makes a date of such words, in all its languages, where the day that they lean on is known. Here
that day is an unknown like any other, and stays one: it is supposed to be one day after another (`SUPPOSED`, which lie
at the turn of a year, within it and on either side of the end of a February), the words are read with each, and how far
what is read lies from what was supposed is the limit between the two days. So the words are never tied to one telling
of a birth or a wedding: what leans on a wrong one is part of the circle that shows it.

What is read must move with the day that is supposed, of which one is some years off: words with a date of their own
lean on nothing. Where a year, a season or a feast is told (“the year of the sailing”) the limit is as wide as it may
lie from any day of a year; then the date by what is told of that day is read too (`Lean.known`), and says whose
telling it is. What is told to be before or after a day lies on that side of it, also where a season is told that
holds it.

Who is meant must be clear: of several who may be meant by a name, nobody is, unless one of them is in the picture; and
a day that the words may mean only by a question of the reader is no more than likely.
"""

import re
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from functools import cache
from types import MappingProxyType
from typing import NamedTuple

from boxlore.core.dates import phrases
from boxlore.core.dates.against_a_life import core, possible
from boxlore.core.dates.asked_words import NOT_UNDERSTOOD
from boxlore.core.dates.edtf_values import Day, Edtf, month_length
from boxlore.core.dates.lexer import lex, nfc
from boxlore.core.dates.lexicon import PIECE
from boxlore.core.dates.phrases import KnownDates, PhraseSettings
from boxlore.core.dates.reading import DateReading
from boxlore.core.evidence.age_words import has_a_word_of_age
from boxlore.core.evidence.claims import of_birth, of_death, of_event
from boxlore.core.evidence.even_years import YEAR, days, number_of
from boxlore.core.evidence.weddings import Weddings, day_of
from boxlore.core.people.life_event_words import ALONE, bare, called_otherwise
from boxlore.core.people.person import Person, Registry
from boxlore.core.records.events import FamilyEvent, meant_by
from boxlore.core.records.followed_events import FIRST_DAY_AT_SCHOOL
from boxlore.core.records.told_kin import kin_told

SUPPOSED = (Day(1903, 1, 1), Day(1903, 12, 31), Day(1908, 6, 15), Day(1903, 2, 25), Day(1903, 3, 5))
_TURNS_OF_MONTHS = tuple(Day(1903, month, day) for month in range(1, 13) for day in (1, month_length(1903, month)))
"""Days that are supposed too where a season, a feast or a year is told, which is not as far from each day."""
NOTHING_READ = DateReading("")
MOST_LETTERS = 160
"""A longer text is not read."""
MOST_MEANT = 12
"""So many may be meant by a name at most; of more nobody is looked for."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Lean:
    """That a day lies `least` to `most` days after the day `on`, None for no bound. `on_words` say what day that is
    and, where it is told, when; `known` is what the words come to by that. `is_asked`: the reader would ask. `person`
    is whose birth it is reckoned from, with `years` the age, where it is an age."""

    on: str
    least: int | None
    most: int | None
    is_asked: bool = False
    on_words: str = ""
    known: Edtf | None = None
    person: str = ""
    name: str = ""
    years: int = -1
    is_about: bool = False
    is_birthday: bool = False
    is_of_calendar: bool = False

    @property
    def is_age(self) -> bool:
        """Whether it is an age or a stage of a life, from a birth on to some later day."""
        return (
            bool(self.person)
            and self.least is not None
            and self.most is not None
            and (self.years >= 0 or not self.is_of_calendar)
        )


class _Meant(NamedTuple):
    """A day that words may lean on: its name among the days, the event it is, and whose life's."""

    day: str
    event: FamilyEvent
    person: Person | None = None


class Leaning:
    """Reads words of one collection. `people` are all of them, of whom a name may be."""

    def __init__(
        self, people: Registry, happened: Iterable[FamilyEvent], weddings: Weddings, settings: PhraseSettings
    ) -> None:
        self._people, self.weddings, self._settings = people, weddings, settings
        self._by_start: dict[str, list[Person]] = {}
        self._called: dict[str, list[list[str]]] = {}
        for person in people.values():
            names = _names(person) - {""}
            self._called[person.id] = [pieces(name) for name in names]
            for start in {name[:3] for name in names}:
                self._by_start.setdefault(start, []).append(person)
        self._events: dict[str, list[FamilyEvent]] = {}
        self._by_kind: dict[str, list[FamilyEvent]] = {}
        for event in map(_called_otherwise, happened):
            if event.own and (event.said or event.edtf) and not (event.kind == "marriage" and event.people):
                self._by_kind.setdefault(event.kind, []).append(event)
                called = {*event.names, *(way for name in event.names for way in called_otherwise(name))}
                for piece in {piece[:4] for name in called for piece in pieces(name)}:
                    self._events.setdefault(piece, []).append(event)
        self._of_age: dict[str, bool] = {}
        self._kin: dict[tuple[str, str], Mapping[str, Sequence[str]]] = {}
        self._read: dict[tuple[str, str, tuple[str, ...], PhraseSettings], tuple[Lean, ...]] = {}

    def of(
        self, words: str, *, narrator: str = "", shown: Sequence[str] = (), settings: PhraseSettings | None = None,
        but: str = "",
    ) -> tuple[Lean, ...]:  # fmt: skip
        """What words say by leaning on days, as a rule one. `shown` are the ids of who is in the picture, `narrator`
        is the id of who tells; the event `but` is the one whose own name the words are."""
        settings = settings or self._settings
        words = self._as_told_of(_said_otherwise(words), shown)
        key = (words, narrator, tuple(shown), settings)
        if but or key not in self._read:
            leans = tuple(self._leans(words, narrator, shown, settings, but)) if len(words) <= MOST_LETTERS else ()
            if but:
                return leans
            self._read[key] = leans
        return self._read[key]

    def _as_told_of(self, words: str, shown: Sequence[str]) -> str:
        """“They” and “their”, of the one couple in the picture."""
        if not _THEY.search(words):
            return words
        couples = {couple for ident in shown for couple in self.weddings.couples_of(ident) if set(couple) <= set(shown)}
        if len(couples) != 1:
            return words
        names = " and ".join(self._people[ident].name for ident in couples.pop() if ident in self._people)
        return _THEY.sub(lambda match: f"{names}'s" if match[0].casefold() == "their" else names, words)

    def _leans(
        self, words: str, narrator: str, shown: Sequence[str], settings: PhraseSettings, but: str
    ) -> Iterator[Lean]:
        found: list[tuple[_Meant, Lean]] = []
        for meant in self._meant(words, narrator, shown, but):
            lean = self._lean(words, meant, narrator, shown, settings)
            if lean is not None and not (lean.is_asked and self._may_be_anybodys(words, meant, narrator, shown, lean)):
                found.append((meant, lean))
        for is_asked in (False, True):
            alike = [(meant, lean) for meant, lean in found if lean.is_asked is is_asked]
            alike = _one_day(alike, shown)
            if len(alike) == 1:
                yield alike[0][1]
            if alike:
                return

    def _may_be_anybodys(self, words: str, meant: _Meant, narrator: str, shown: Sequence[str], lean: Lean) -> bool:
        """Whether it is a wedding or a funeral of nobody who is named: she in the picture may be a guest there. A month
        after “the wedding” the two alone are no guests."""
        if meant.event.kind not in ("marriage", "death"):
            return False
        if len(shown) == 2 and set(meant.event.people) == set(shown) and (lean.least, lean.most) != (0, 0):
            return False
        return not self.named(words, pieces(words), narrator).keys() & set(meant.event.people)

    def _meant(self, words: str, narrator: str, shown: Sequence[str], but: str) -> Iterator[_Meant]:
        told = pieces(words)
        named = self.named(words, told, narrator)
        if len(named) > MOST_MEANT:
            return
        if narrator in self._people:
            named.setdefault(self._people[narrator].id, self._people[narrator])
        if len(shown) == 1 and shown[0] in self._people:
            named.setdefault(self._people[shown[0]].id, self._people[shown[0]])
        couples = {
            couple: None for ident in shown for couple in self.weddings.couples_of(ident) if {*couple} == {*shown}
        }
        for person in named.values():
            yield _Meant(of_birth(person.id), _event_of(person, "birth", person.born), person)
            yield _Meant(of_death(person.id), _event_of(person, "death", person.died))
            couples |= dict.fromkeys(self.weddings.couples_of(person.id))
        for couple in couples:
            yield _Meant(day_of(couple), self._wedding(couple))
        for event in self._of_time_line(words, told):
            if event.id != but:
                yield _Meant(of_event(event.id), event)

    def person(self, ident: str) -> Person | None:
        return self._people.get(ident)

    def named(self, words: str, told: Sequence[str], narrator: str) -> dict[str, Person]:
        """Everybody who may be named in words, by ids."""
        near = {person.id: person for piece in told for person in self._by_start.get(piece[:3], ())}
        persons = {ident: person for ident, person in near.items() if _is_called(self._called[ident], told)}
        for idents in self.kin_told(words, narrator).values():
            persons |= {self._people[ident].id: self._people[ident] for ident in idents}
        return persons

    def kin_told(self, words: str, narrator: str) -> Mapping[str, Sequence[str]]:
        """`kin_told`, asked once for all the days that words are read with."""
        key = (words, narrator)
        if key not in self._kin:
            self._kin[key] = kin_told(words, self._people, narrator)
        return self._kin[key]

    def _wedding(self, couple: tuple[str, ...]) -> FamilyEvent:
        pair = [self._people[ident] for ident in couple if ident in self._people]
        when = next((person.married[0] for person in pair if len(person.married) == 1), None)
        told = next((event for event in self.weddings.events if set(event.people) == set(couple) and event.edtf), None)
        name = f"the wedding of {' and '.join(person.name for person in pair)}"
        return FamilyEvent(
            id=day_of(couple), kind="marriage", names=(name,), people=couple, own=False,
            when=told.when if told else when, words=told.words if told else when.text if when else "",
            said=told.said if told else "",
        )  # fmt: skip

    def _of_time_line(self, words: str, told: Sequence[str]) -> list[FamilyEvent]:
        events = {event.id: event for piece in told for event in self._events.get(piece[:4], ())}
        joined = f" {' '.join(told)} "
        for kind, ways in ALONE.items():
            if kind in self._by_kind and any(f" {way} " in joined for way in ways):
                events |= {event.id: event for event in self._by_kind[kind]}
        return list(events.values()) if len(events) <= MOST_MEANT else []

    def _lean(
        self, words: str, meant: _Meant, narrator: str, shown: Sequence[str], settings: PhraseSettings
    ) -> Lean | None:
        @cache
        def read(day: str) -> DateReading:
            return self._read_with(words, meant, day, narrator, shown, settings)

        lean = leaning_on(meant.day, read)
        if lean is None:
            return None
        lean = _on_its_side(words, replace(lean, on_words=told_of(meant.event)))
        if meant.person:
            lean = _of_age(replace(lean, person=meant.person.id, name=meant.person.name), read)
        if meant.event.edtf and lean.is_of_calendar and not lean.is_about:
            lean = replace(lean, known=_one(read(meant.event.edtf)))
        return lean

    def may_name_an_event(self, words: str) -> bool:
        """Whether a word of some length is one of an event's name."""
        return bool(self._of_time_line(words, [piece for piece in pieces(words) if len(piece) > len("the")]))

    def may_be_an_age(self, words: str) -> bool:
        """Whether there is a word of ages or of a stage of life, without which no birth is leant on."""
        if words not in self._of_age:
            self._of_age[words] = has_a_word_of_age(nfc(words))
        return self._of_age[words]

    def _read_with(
        self, words: str, meant: _Meant, day: str, narrator: str, shown: Sequence[str], settings: PhraseSettings
    ) -> DateReading:
        """The words read with that day for what is meant, and nothing known of anybody else."""
        event = replace(meant.event, when=DateReading.from_edtf(day))
        kin = self.kin_told(words, narrator)
        events, perhaps = meant_by(words, [event], self._people, narrator, kin)
        if any(name == FIRST_DAY_AT_SCHOOL for told in perhaps.values() for name, _ in told):
            perhaps = MappingProxyType({})  # customs know at which ages schools begin
        person = meant.person
        if not events and not perhaps and not (person and self.may_be_an_age(words)):
            return NOTHING_READ
        known = KnownDates(events=events, perhaps=perhaps, first_year=0)
        if person is not None:
            births = dict.fromkeys(_names(person), day)
            births |= {phrase: day for phrase, idents in kin.items() if idents == (person.id,)}
            is_narrator = narrator in self._people and self._people[narrator].id == person.id
            known = replace(
                known,
                births=MappingProxyType(births),
                narrator=day if is_narrator else "",
                pictured=MappingProxyType({person.name: day} if list(shown) == [person.id] else {}),
            )
        reading = phrases.read(words, settings, known)
        is_named_alone = bool(perhaps) and reading.edtf is None  # “Ivy's cousin's wedding” is not surely Ivy's own
        return NOTHING_READ if is_named_alone else reading


def leaning_on(day: str, read: Callable[[str], DateReading]) -> Lean | None:
    """How far what is read lies from a day, whatever day that is; None where the words do not lean on it."""
    far: list[Far] = []
    texts: list[tuple[int, set[str]]] = []
    is_asked = False
    for supposed in SUPPOSED:
        reading = read(str(supposed))
        dates = _usable(reading)
        told = {edtf.text for edtf in dates}
        if not dates or any(year != supposed.year and told & before for year, before in texts):
            return None  # one that may be meant is not reckoned from the day: “the year the war ended”
        texts.append((supposed.year, told))
        is_asked = is_asked or bool(reading.ask) or reading.edtf is None
        far.append(_around([_far(supposed, edtf) for edtf in dates]))
    if not _is_of_calendar(far):
        least, most = _around(far)
        return Lean(on=day, least=least, most=most, is_asked=is_asked)
    has_days = False
    for supposed in _TURNS_OF_MONTHS:
        dates = _usable(read(str(supposed)))
        far += [_far(supposed, edtf) for edtf in dates]
        has_days = has_days or any(date.day for edtf in dates for part in edtf.parts for date in part if date)
    least, most = _around(far)
    slack = days(31) if has_days else 0  # a feast lies within a month: it is nearest to a day that was not supposed
    return Lean(
        on=day,
        least=least - slack if least is not None else None,
        most=most + slack if most is not None else None,
        is_asked=is_asked,
        is_of_calendar=True,
    )


def _on_its_side(words: str, lean: Lean) -> Lean:
    """The lean with no bound on the other side than the one that is told."""
    sides = {kind for token in lex(nfc(words)) for kind in token.kinds & _SIDES}
    if sides == {"after"} and lean.least is not None and (lean.most is None or lean.most >= 0):
        return replace(lean, least=max(lean.least, 0))
    if sides == {"before"} and lean.most is not None and (lean.least is None or lean.least <= 0):
        return replace(lean, most=min(lean.most, 0))
    return lean


_SIDES = frozenset(("before", "after", "not"))
Far = tuple[int | None, int | None]
"""How far the first and the last day of what is read lie behind the day that was supposed."""


_THEY = re.compile(r"\b(?:they|their|nad|ils|elles|ellos|loro|они)\b", re.IGNORECASE)
_OTHERWISE = (
    (re.compile(r"\ba year or (?:two|so)\b|\b(?:one|1) or (?:two|2) years\b", re.IGNORECASE), "a couple of years"),
    (re.compile(r"\ba month or (?:two|so)\b", re.IGNORECASE), "a couple of months"),
    (re.compile(r"\baasta või paar\b", re.IGNORECASE), "paar aastat"),
)


_WHERE = re.compile(r", (?:in|at|near|outside) (?P<where>[^\W\d_]+(?: [^\W\d_]+)?)\W*$")


def _said_otherwise(words: str) -> str:
    """The same in words that the reader of dates has, without the place behind them (“my 21st birthday, in Kumasi”)."""
    where = _WHERE.search(words)
    if where and all(token.kinds <= {"name", "place"} for token in lex(nfc(where["where"]))):
        words = words[: where.start()]
    for pattern, instead in _OTHERWISE:
        words = pattern.sub(instead, words)
    return words


def pieces(words: str) -> list[str]:
    """The words and numbers, folded as the reader of dates has them."""
    told = (match[0] for match in PIECE.finditer(words.casefold().replace("’", "'")))
    return [piece for piece in told if piece[0].isalnum()]


def _names(person: Person) -> set[str]:
    return {name.casefold() for name in (person.name, *person.forms, *person.calls)}


def pieces_of_names(people: Iterable[Person]) -> frozenset[str]:
    """Every word of every name of these people."""
    return frozenset(piece for person in people for name in _names(person) for piece in pieces(name))


def _is_called(names: Sequence[Sequence[str]], told: Sequence[str]) -> bool:
    """Whether all words of one of these names begin words that are told, as the time line has it (“Annas Geburt”); an
    initial is a word of its own."""
    return any(
        all(any(piece.startswith(part) if len(part) > 1 else piece == part for piece in told) for part in name)
        for name in names
    )


def _event_of(person: Person, kind: str, when: DateReading | None) -> FamilyEvent:
    return FamilyEvent(
        id=person.id, kind=kind, names=(f"the {kind} of {person.name}",), people=(person.id,), own=False, when=when,
        words=when.text if when else "",
    )  # fmt: skip


def _called_otherwise(event: FamilyEvent) -> FamilyEvent:
    """“The move to Dunedin” is told as “we moved to Dunedin” too: the ways of its kind, with what stands behind."""
    _, _, behind = bare(event.name).partition(" ")
    ways = tuple(f"{way} {behind}" for way in ALONE.get(event.kind, ()) if behind and " " in way)
    return replace(event, names=(*ways, *event.names))


def told_of(event: FamilyEvent) -> str:
    """“the sailing: “1936”, Ned Moss”: what is told of an event, and by whom."""
    said = f", {event.said}" if event.said else ""
    return f"{event.name}: “{' '.join(event.words.split())}”{said}" if event.words else event.name


MOST_CHOICES = 3


def _usable(read: DateReading) -> list[Edtf]:
    """Every date that may be meant, where all words were read; none where they may be anything."""
    if read.edtf is None and (not read.ask or NOT_UNDERSTOOD in read.ask):
        return []
    dates = may_be_meant(read)
    return dates if len(dates) <= MOST_CHOICES else []


def may_be_meant(read: DateReading) -> list[Edtf]:
    """What words were read as, and what else they may mean."""
    others = [edtf for text in read.alternatives if (edtf := DateReading.from_edtf(text).edtf) is not None]
    return [read.edtf, *others] if read.edtf else others


def _one(read: DateReading) -> Edtf | None:
    dates = _usable(read)
    return dates[0] if len(dates) == 1 else None


def _far(day: Day, edtf: Edtf) -> Far:
    """What is about so far may lie by a quarter of it further off: by a year at least where years are told, by half a
    year for “just after”, by two months where months are told, and by a month elsewhere (common practice, no source).
    What is after stays after."""
    supposed = number_of(*day)
    first, last = (number_of(*bound) - supposed if bound else None for bound in core(edtf))
    if possible(edtf) == core(edtf):
        return first, last
    dates = [date for part in edtf.parts for date in part if date]
    slack = (days(183) if edtf.kind == "one" else days(31)) if all(date.day for date in dates) else YEAR
    if not any(date.day for date in dates) and all(date.month.isdigit() and int(date.month) <= 12 for date in dates):
        slack = days(61)
    before = first - max(slack, abs(first) // 4) if first is not None else None
    behind = last + max(slack, abs(last) // 4) if last is not None else None
    if before is not None and first is not None and first >= 0 and last != 0:
        before = max(before, 0)
    if behind is not None and last is not None and last <= 0 and first != 0:
        behind = min(behind, 0)
    return before, behind


def _around(far: Sequence[Far]) -> Far:
    firsts, lasts = [first for first, _ in far], [last for _, last in far]
    return (
        None if None in firsts else min(first for first in firsts if first is not None),
        None if None in lasts else max(last for last in lasts if last is not None),
    )


def _is_of_calendar(far: Sequence[Far]) -> bool:
    """Whether the distance is another from other days of a year: a year or a season is told, and no distance."""
    for ends in zip(*far, strict=True):
        told = [end for end in ends if end is not None]
        if told and max(told) - min(told) > days(31):
            return True
    return False


def _of_age(lean: Lean, read: Callable[[str], DateReading]) -> Lean:
    """A lean on a birth, with the age where one is told: whole years from a birthday to the next, or about so many."""
    (edtf, *_), day = _usable(read(str(SUPPOSED[0]))), SUPPOSED[0]
    first, last = (number_of(*bound) - number_of(*day) if bound else None for bound in core(edtf))
    if first is None or last is None or first < 0:
        return lean
    if possible(edtf) != core(edtf):
        return replace(lean, years=(first + last) // (2 * YEAR), is_about=True) if last - first <= 4 * YEAR else lean
    if last - first < 7:
        return replace(lean, years=round(first / YEAR), is_birthday=first % YEAR < 7 and first > 7)
    return replace(lean, years=first // YEAR) if last - first < YEAR + 7 and not lean.is_of_calendar else lean


def _one_day(found: list[tuple[_Meant, Lean]], shown: Sequence[str]) -> list[tuple[_Meant, Lean]]:
    """Those of one day, if it is clear which is meant: the event that is called so in so many words, or somebody's who
    is in the picture."""
    if len({lean.on for _, lean in found}) <= 1:
        return found[:1]
    own = [row for row in found if row[0].event.own]
    if len(own) == 1 and all(row[0].event.kind == own[0][0].event.kind for row in found):
        return own
    pictured = [row for row in found if set(row[0].event.people) & set(shown)]
    return pictured if len({lean.on for _, lean in pictured}) == 1 else found
