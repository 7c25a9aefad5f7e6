"""Telling: one statement from a screen, a shell or a row of a table, read and stored beside its reading.

Several people in one answer become a statement each, with their places; “me” and “Mum” are the narrator's own. Nobody
is made of words that may be no person: they are kept as told, and what they mean is noted as to be asked.
"""

import re
from collections.abc import Iterable
from dataclasses import dataclass, replace

from boxlore.core.dates.reading import DateReading
from boxlore.core.fields.audiences import read_audience
from boxlore.core.fields.letters import check_typed, is_question
from boxlore.core.fields.pictures import ROW_WORDS, RowPosition
from boxlore.core.fields.table import field_of
from boxlore.core.fields.told import as_told
from boxlore.core.people.firms import is_firm
from boxlore.core.people.kin import Kin, possessive
from boxlore.core.people.names.reader import READER_VERSION as NAMES
from boxlore.core.people.names.reader import read_name
from boxlore.core.people.person import Person, build_person
from boxlore.core.people.reference import PersonRef, id_meant
from boxlore.core.people.who_is_meant import named
from boxlore.core.people.who_is_where.kin_words import name_in, own_kin_in, own_relation
from boxlore.core.people.who_is_where.reader import WhoTold, read_who
from boxlore.core.people.who_is_where.what_is_not_known import says_nobody
from boxlore.core.people.who_is_where.words_left import leaves_words
from boxlore.core.people.who_is_where.written_out import Placed
from boxlore.core.records.people_asked import before_brackets
from boxlore.core.statements import KEEPER, SURENESS, Kind, Reading, Said, Source, Statement, Subject, Sure, fold
from boxlore.tasks.collection.opening import Act, Collection
from boxlore.tasks.telling.allowed_words import check_kin, typed_words
from boxlore.tasks.telling.same_given_name import SameGivenName, is_given_alone, is_more_of
from boxlore.tasks.telling.understanding import REGISTRY, Around, Understanding, around, birth_of, person_reading

_ID = re.compile(r"[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}")
READ_TOGETHER = {"date": "place", "place": "date"}
"""What is read anew when the other is told."""

KIN = ("father", "mother", "spouse")
"""Fields of a person that mean another."""

_SHOW_PEOPLE = (Kind.ITEM, Kind.MARKER)
_OF_A_LIFE = ("born", "died")
"""What of a person an age that was told of a picture waits for."""
"""Things in whose picture somebody is told."""

MAKES = {"person": Kind.PERSON, "event": Kind.EVENT}


@dataclass(frozen=True, slots=True, kw_only=True)
class Telling:
    """How something is told: by whom, how surely, in which language, for whom, in which sitting."""

    source: Source = KEEPER
    sure: Sure = Sure.SURE
    language: str = ""
    audience: str = ""
    sitting: str = ""
    moment: int | None = None


@dataclass(frozen=True, slots=True)
class ActMark:
    """How far an act had come: how many statements, readings, new narrators and sentences there were, and the narrators
    known by then."""

    statements: int
    readings: int
    new_narrators: int
    unsaid: int
    narrators: dict[str, str]


LINKS = {"mother": "mother", "father": "father", "husband": "spouse", "wife": "spouse"}
"""Relations of a narrator that are links of the registry -> the field."""


_BRACKETS = re.compile(r"\s*(?:\([^()]*\)|\[[^\[\]]*\])\s*")


def _own_kin(person: Placed, language: str) -> str:
    """What somebody told without a name is to the one who tells; empty for another's kin, and where that is asked."""
    asked = not person.is_person and own_relation(person.words) != ""  # `Whose “mother” is in the picture?`
    if not person.words or person.is_nameless or asked:
        return ""
    return person.own or own_relation(person.words, language)


def _is_of_one_item(statement: Statement) -> bool:
    return statement.subject.kind is Kind.ITEM and statement.field == "person"


class Teller:
    """Writes what is told about one collection. One is made for a sitting or a run of the command."""

    def __init__(self, collection: Collection) -> None:
        self._collection = collection
        self.understanding = Understanding(collection)
        self._narrators: dict[str, str] = {}
        """The name of a narrator as it was given -> the person's id."""
        self._new_narrators: list[Person] = []
        self.unsaid: list[str] = []
        """What is worth saying of who was named: who is new here, and who was meant by a part of a name."""
        self.to_ask: list[str] = []
        """The questions that are open about who was told."""
        self._same_name = SameGivenName(collection)
        self._new_people: dict[tuple[str, str], tuple[Subject, Subject]] = {}
        """(act, folded name) -> what it was told of, and the person made of it."""
        self._people_told: dict[str, Placed] = {}
        """Of statements that are not read yet: the person told."""
        self._told_in_remarks: dict[str, tuple[Placed, ...]] = {}
        """Those named only in remarks of an answer, by its last statement."""

    def tell(
        self,
        subject: Subject,
        name: str,
        words: str,
        how: Telling,
        *,
        replaces: str = "",
        clears: tuple[str, str, str] | None = None,
    ) -> Statement:
        """One statement that somebody wrote, safe on the disk when this returns. `replaces` corrects an earlier one.

        Raises WrongUse for words that cannot be meant (`allowed_words`), and for somebody told as her own ancestor.
        """
        words = self.typed(subject.kind, name, words)
        asked = not words or is_question(words)
        act = self._collection.act(f"{name}: asked, not known" if asked else f"{name}: {words[:40]}")
        statement = self.add(act, subject, name, words, how, replaces=replaces)
        if subject.kind is Kind.PERSON and name in KIN:
            meant = [id_meant(reading) for ident, reading in act.readings if ident == statement.id and reading.usable]
            for ident in meant:
                check_kin(self._collection.people(), subject.id, name, ident)
        if clears is not None:
            act.clears.append(clears)
        act.done()
        if subject.kind is Kind.PERSON and name in _OF_A_LIFE:
            further = Act(self._collection, act.id, act.what)
            for item, _ in self.leaning_dates():
                self.read_again(further, Subject(Kind.ITEM, item), "date")
            further.done()
        return statement

    def typed(self, kind: Kind, name: str, words: str) -> str:
        """The words that are kept of what somebody wrote into a field. Raises WrongUse."""
        return typed_words(self._collection, kind, name, words.strip())

    def add(self, act: Act, subject: Subject, name: str, words: str, how: Telling, *, replaces: str = "") -> Statement:
        """The same, gathered into an act that holds more than one statement; the first, if one answer makes several."""
        statements = self.add_answer(act, subject, name, words, how, replaces=replaces)
        for statement in statements:
            self.read_into(act, statement)
        return statements[0]

    def add_answer(
        self, act: Act, subject: Subject, name: str, words: str, how: Telling, *, replaces: str = ""
    ) -> list[Statement]:
        """Gather the words of one answer: of several people in an item a statement each. They are not read yet.

        `replaces` is corrected by the first of them; one person who is corrected keeps the place in the row.
        """
        who = WhoTold()
        if name == "person" and subject.kind is Kind.ITEM and words.strip():
            check_typed(words.strip())
            who = read_who(words, self.understanding.known_names)
        if not (who.people or who.takers) or (replaces and len(who.people) < 2):
            return [self.add_words(act, subject, name, words, how, replaces=replaces)]
        if not who.people:
            return [*self.add_takers(act, subject, who, how), *self.add_whole_answer(act, subject, words, who, how)]
        told = _BRACKETS.sub(" ", words).strip()
        doubted = not who.people[0].is_person and who.people[0].words not in (told, words.strip())  # `Missing: Tom`
        if len(who.people) == 1 and not (who.placed or who.people[0].unsure or doubted or who.takers):
            unknown = not who.people[0].words and says_nobody(who.people[0].note)
            kept, sure = ("", Sure.NOT_KNOWN) if unknown else (words, how.sure)  # `unknown`, `ei tea`
            statement = self.add_words(act, subject, name, kept, replace(how, sure=sure))  # one person's, as told
            self._people_told[statement.id] = replace(who.people[0], position=0)
            self._told_in_remarks[statement.id] = who.too
            return [statement]
        return [
            *self.add_people(act, subject, who, how, replaces=replaces),
            *self.add_takers(act, subject, who, how),
            *self.add_whole_answer(act, subject, words, who, how),
        ]

    def add_whole_answer(self, act: Act, item: Subject, words: str, who: WhoTold, how: Telling) -> list[Statement]:
        """The answer as it was told, as a note, where it has words that nobody told of holds: nothing told is lost."""
        if not leaves_words(words, who.people, placed=who.placed):
            return []
        return [self.add_words(act, item, "note", words, replace(how, sure=Sure.SURE))]

    def add_takers(self, act: Act, item: Subject, who: WhoTold, how: Telling) -> list[Statement]:
        """The words of each who took the picture, told among those who are in it. They are not read yet."""
        return [self.add_words(act, item, "photographer", person.words, how) for person in who.takers]

    def add_people(self, act: Act, item: Subject, who: WhoTold, how: Telling, *, replaces: str = "") -> list[Statement]:
        """The words of each person told, in that order. They are not read yet."""
        statements = []
        for person in who.people:
            doubt = Sure.LIKELY if person.likely else Sure.GUESS if person.unsure else Sure.SURE
            sure = min(doubt, how.sure, key=SURENESS.__getitem__) if person.words else Sure.NOT_KNOWN
            words = f"{person.words} ({person.note})" if person.words and person.note else person.words
            statement = self.add_words(act, item, "person", words, replace(how, sure=sure), replaces=replaces)
            replaces = ""
            self._people_told[statement.id] = person if who.placed else replace(person, position=0)
            statements.append(statement)
        self._told_in_remarks[statements[-1].id] = who.too
        return statements

    def add_words(
        self, act: Act, subject: Subject, name: str, words: str, how: Telling, *, replaces: str = ""
    ) -> Statement:
        """Gather the words alone, for a caller that knows itself what they mean."""
        field = field_of(name, subject.kind)
        words, sure = as_told(field, words, how.sure)
        return act.state(
            subject,
            name,
            words,
            language=how.language or self._collection.settings.language,
            source=self.source(act, how.source),
            sure=sure,
            audience=str(read_audience(how.audience)) if how.audience else field.audience,
            sitting=how.sitting,
            moment=how.moment,
            replaces=replaces,
        )

    def mark(self, act: Act) -> ActMark:
        """How far an act has come, for `back_to`."""
        return ActMark(
            len(act.statements), len(act.readings), len(self._new_narrators), len(self.unsaid), dict(self._narrators)
        )

    def back_to(self, act: Act, before: ActMark) -> None:
        """Leave out the words that were gathered since, and the narrators made for them. They must not be read yet."""
        del act.statements[before.statements :]
        del act.readings[before.readings :]
        gone = {person.id for person in self._new_narrators[before.new_narrators :]}
        self._new_people = {key: made for key, made in self._new_people.items() if made[1].id not in gone}
        del self._new_narrators[before.new_narrators :]
        del self.unsaid[before.unsaid :]
        self._narrators = before.narrators

    def source(self, act: Act, source: Source) -> Source:
        """A narrator told by name is a person: the one known by that name or by a part of it, else a new one.

        Raises WrongUse for several who may be meant. `unsaid` has who is new, and who was meant by a part.
        """
        name = source.ref
        if source.said is not Said.NARRATOR or not name or name in self._collection.people() or _ID.fullmatch(name):
            return source
        if name not in self._narrators:
            person = self.understanding.person_called(name, *self._new_narrators) or self._new_narrator(act, name)
            if person not in self._new_narrators and not named([person], name):
                self.unsaid.append(f"“{name}” is {person.name}.")
            self._narrators[name] = person.id
        return Source(Said.NARRATOR, self._narrators[name])

    def _new_narrator(self, act: Act, name: str) -> Person:
        subject = act.new(Kind.PERSON)
        statement = act.state(subject, "name", name)
        self.read_into(act, statement)
        self._new_people.setdefault((act.id, fold(name)), (subject, subject))  # she may be in her own first picture
        self._new_narrators.append(build_person(subject.id, [(statement, None)]))
        self.unsaid.append(f"Nobody here was called “{name}”, so {name} is a new person now.")
        return self._new_narrators[-1]

    def leave_out(self, act: Act, statements: Iterable[Statement]) -> None:
        """Leave out words that were gathered and are not read yet."""
        left_out = {statement.id for statement in statements}
        for at in range(len(act.statements) - 1, -1, -1):  # they stand at the end
            if not left_out:
                return
            if act.statements[at].id in left_out:
                left_out.remove(act.statements[at].id)
                del act.statements[at]

    def read_into(self, act: Act, statement: Statement) -> None:
        """Add what the words come to; a person or event that nobody knows yet is made from them."""
        reads = field_of(statement.field, statement.subject.kind).reads
        person = self._people_told.pop(statement.id, None)
        if person is not None:
            self._read_person_told(act, statement, person)
            for remarked in self._told_in_remarks.pop(statement.id, ()):
                self._ask(act, statement, remarked.asks)
        elif reads == "name" and statement.subject.kind is not Kind.PERSON:
            return
        elif statement.field == "photographer" and (relation := own_relation(statement.words, statement.language)):
            if not self.read_own(act, statement, statement.words, relation):
                self._ask(act, statement, f"Whose “{statement.words}” took the picture?")
        elif reads and statement.words:
            self._read(act, statement, reads, statement.words)
        if statement.field == "person":
            self._read_age(act, statement.subject)

    def _read(self, act: Act, statement: Statement, reads: str, words: str) -> None:
        subject = statement.subject
        if reads == "person" and subject.kind in _SHOW_PEOPLE and self._is_nameless(words):
            return
        beside = self._around(act, statement) if reads in READ_TOGETHER else None
        understood = self.understanding.read(reads, words, beside)
        if understood is not None:
            reading = understood.reading
            if reads == "person":
                reading = self._same_name.read_as(act, statement, words, self.understanding.called(words), reading)
            act.readings.append((statement.id, reading))
            if reads in READ_TOGETHER and (understood.reading.usable or reads == "place"):
                self.read_again(act, subject, READ_TOGETHER[reads])
        elif reads == "person" and (person := self._just_made(act, statement, words)):
            another = _is_of_one_item(statement) and not statement.sitting and is_given_alone(words)
            act.readings.append((statement.id, Reading("person", PersonRef(person.id), REGISTRY, asks=another)))
        elif reads in MAKES and not (reads == "person" and is_firm(words)):
            self._make(act, statement, MAKES[reads], words)

    def _is_nameless(self, words: str) -> bool:
        """Whether the words tell of one person without a name, who is of this picture alone."""
        people = read_who(words, self.understanding.known_names).people
        return len(people) == 1 and people[0].is_nameless

    def _make(self, act: Act, statement: Statement, kind: Kind, name: str) -> Subject:
        """A new person or event of that name, whom the statement means."""
        new_subject = act.new(kind)
        how = {"source": statement.source, "audience": statement.audience, "language": statement.language}
        when = {"sitting": statement.sitting, "moment": statement.moment}  # what was promised there holds of the name
        self.read_into(act, act.state(new_subject, "name", name, **how, **when))
        act.readings.append((statement.id, person_reading(new_subject)))
        if kind is Kind.PERSON:
            self._new_people.setdefault((act.id, fold(name)), (statement.subject, new_subject))
        return new_subject

    def _just_made(self, act: Act, statement: Statement, name: str) -> Subject | None:
        """The person of this name made in the same act, where something else was told; two of a name told of one
        thing are two people."""
        told_of, person = self._new_people.get((act.id, fold(name)), (statement.subject, None))
        return person if told_of != statement.subject else None

    def _read_person_told(self, act: Act, statement: Statement, person: Placed) -> None:
        """The place of somebody told among others, and who it is; what asks is noted as to be asked."""
        if person.position:
            row = RowPosition(statement.id, person.row, person.position)
            act.state(statement.subject, "row", ROW_WORDS.write(row), sitting=statement.sitting)
        question = person.asks
        relation = _own_kin(person, statement.language)
        called = name_in(person.note) if relation in LINKS and self.narrator(statement.source)[0] else ""
        if called:  # `Mum (Hilda Tamm)`
            question = self._read_kin_by_name(act, statement, called, relation) or person.asks
        elif relation:
            read = self.read_own(act, statement, person.words, relation)
            of_place = person.asks if person.is_person else ""  # `me on her left`
            question = of_place if read else f"Whose “{person.words}” is in the picture?"
        elif person.words and person.is_person and person.family:
            question = self._read_of_family(act, statement, person) or question
        elif person.words and person.is_person and not person.is_nameless:
            question = self._read_named(act, statement, person) or question
        if question:
            self._ask(act, statement, question)

    def _read_named(self, act: Act, statement: Statement, person: Placed) -> str:
        """Somebody told by name. Where the words say that it is the narrator's mother, father, husband or wife, the one
        whom the registry has as that is meant, or gets this name; returns a question where that one has another, and
        where a narrator known by one name tells a name that goes on with it."""
        ident, name = self.narrator(statement.source)
        relation = own_kin_in(person.note) if ident else ""
        if ident and is_more_of(person.words, name) and self.understanding.read("person", person.words) is None:
            return f"Is “{before_brackets(statement.words)}” {name}, or somebody else?"
        if relation in LINKS:
            return self._read_kin_by_name(act, statement, person.words, relation)
        self._read(act, statement, "person", person.words)
        return ""

    def _read_kin_by_name(self, act: Act, statement: Statement, words: str, relation: str) -> str:
        """The narrator's own by name: the one whom the registry has as that, or a new one, linked so."""
        ident, name = self.narrator(statement.source)
        called = f"{possessive(name)} {relation}"
        relatives = self._relatives(act, ident, relation, called)
        if len(relatives) == 1:
            return self._read_as_relative(act, statement, words, relatives.pop(), called)
        self._read(act, statement, "person", words)
        read = next((reading for told, reading in act.readings[::-1] if told == statement.id), None)
        if not relatives and read is not None and read.usable:
            somebody = Subject(Kind.PERSON, id_meant(read))
            link = act.state(Subject(Kind.PERSON, ident), LINKS[relation], words, source=statement.source)
            act.readings.append((link.id, person_reading(somebody)))
            self._new_people.setdefault((act.id, fold(called)), (statement.subject, somebody))
        return ""

    def _read_as_relative(self, act: Act, statement: Statement, words: str, relative: str, called: str) -> str:
        """The narrator's own by name, where the registry has one: it is that one, whom the name is told of where none
        was; a question where that one has another name."""
        subject = Subject(Kind.PERSON, relative)
        understood = self.understanding.read("person", words)
        names = [told for told, _ in self._told(act, subject) if told.field == "name"]
        if understood is not None and id_meant(understood.reading) == relative:
            act.readings.append((statement.id, understood.reading))
        elif understood is None and len(names) == 1 and names[0].words == called:
            act.readings.append((statement.id, person_reading(subject)))
            how = {"source": statement.source, "audience": statement.audience, "language": statement.language}
            self.read_into(act, act.state(subject, "name", words, replaces=names[0].id, **how))
        else:
            known = self._collection.people().get(relative)
            shown = known.name if known else called
            return f"Is “{before_brackets(statement.words)}” {shown}, or somebody else?"
        return ""

    def _ask(self, act: Act, statement: Statement, question: str) -> None:
        """Note a question about who was told."""
        act.state(statement.subject, "asked", question, audience="keeper", sitting=statement.sitting)
        self.to_ask.append(question)

    def _read_of_family(self, act: Act, statement: Statement, person: Placed) -> str:
        """Somebody told with a family name that others share: the one of the whole name, or a new one, whose family
        name is a proposal beside the words. Returns a question where the registry has another one of that name."""
        whole = f"{person.words} {person.family}"
        namesake = self.understanding.read("person", person.words)
        if self.understanding.read("person", whole) is not None or self._just_made(act, statement, whole):
            self._read(act, statement, "person", whole)
        elif namesake is not None:
            act.readings.append((statement.id, replace(namesake.reading, asks=True)))
            return f"Is “{person.words}” {whole}, or {namesake.shown}?"
        else:
            made = self._make(act, statement, Kind.PERSON, person.words)
            self._new_people.setdefault((act.id, fold(whole)), (statement.subject, made))
            parts = replace(read_name(person.words), family=person.family)
            act.index.read(act.index.of(made)[0].id, Reading("name", parts, NAMES))
        return ""

    def read_own(self, act: Act, statement: Statement, words: str, relation: str) -> bool:
        """The narrator, or the narrator's mother: the one of the registry, or a new one. False where it is in doubt."""
        ident, name = self.narrator(statement.source)
        if ident and relation == "self":
            act.readings.append((statement.id, person_reading(Subject(Kind.PERSON, ident))))
            return True
        if not ident:
            understood = self.understanding.read("person", words)
            if understood is not None:
                act.readings.append((statement.id, understood.reading))
            return understood is not None
        called = f"{possessive(name)} {relation}"
        relatives = self._relatives(act, ident, relation, called)
        if len(relatives) == 1:
            act.readings.append((statement.id, person_reading(Subject(Kind.PERSON, relatives.pop()))))
        elif not relatives:
            relative = self._make(act, statement, Kind.PERSON, called)
            if relation in LINKS:
                link = act.state(Subject(Kind.PERSON, ident), LINKS[relation], called, source=statement.source)
                act.readings.append((link.id, person_reading(relative)))
        return len(relatives) < 2

    def narrator(self, source: Source) -> tuple[str, str]:
        """The id and the name of the narrator behind a source; both empty for any other source."""
        people = self._collection.people()
        if source.said is not Said.NARRATOR or not source.ref:
            return "", ""
        called = next((name for name, ident in self._narrators.items() if ident == source.ref), "")
        return source.ref, people[source.ref].name if source.ref in people else called

    def _relatives(self, act: Act, narrator: str, relation: str, called: str) -> set[str]:
        """Everyone who is that to the narrator: by the links of the registry, or called so by an answer before."""
        people = self._collection.people()
        kin = Kin(people)
        relatives = {
            person.id
            for person in people.values()
            if called in person.forms
            or ((kinship := kin.between(narrator, person.id)) is not None and kinship.term == relation)
        }
        just_made = self._new_people.get((act.id, fold(called)))
        return relatives | ({just_made[1].id} if just_made else set())

    def _told(self, act: Act, subject: Subject) -> list[tuple[Statement, Reading | None]]:
        """What is told of a thing so far, in this act too."""
        index = act.index
        now = [(statement, index.reading_of(statement.id)) for statement in index.of(subject)]
        replaced = {statement.replaces for statement, _ in now}
        before = self._collection.store.statements(subject)
        return [
            *(
                (statement, index.reading_of(statement.id) or reading)
                for statement, reading in before
                if statement.id not in replaced
            ),
            *now,
        ]

    def _around(self, act: Act, statement: Statement) -> Around:
        """What is told beside a statement: of the same thing, by whom, and who is in the picture."""
        subject = statement.subject
        beside = around((row.field, reading) for row, reading in self._told(act, subject))
        narrator = statement.source.ref if statement.source.said is Said.NARRATOR else ""
        of_a_life = subject.kind is Kind.PERSON
        return replace(beside, narrator=narrator, people=lambda: self._pictured(act, subject), of_a_life=of_a_life)

    def _pictured(self, act: Act, item: Subject) -> dict[str, str]:
        """Who is in the picture, by name, with the birth as EDTF; empty where it is not known."""
        rows = self._told(act, item)
        for material in self._collection.store.about_items(ids=(item.id,)):
            rows += [row for marker in material.markers for row in marker.statements]
        people = self._collection.people()
        births = {}
        for statement, reading in rows:
            if statement.field == "person" and statement.words:
                person = people.get(id_meant(reading)) if reading is not None and reading.usable else None
                births[person.name if person else statement.words] = birth_of(person)
        return births

    @property
    def collection(self) -> Collection:
        """The collection that is told about."""
        return self._collection

    def _read_age(self, act: Act, item: Subject) -> None:
        """Read a date again that could not be read, such as an age, now that it is told who is in the picture."""
        for statement, reading in self._told(act, item):
            date = reading.value if statement.field == "date" and reading is not None else None
            if isinstance(date, DateReading) and date.edtf is None:
                self.read_again(act, item, "date")
                return

    def leaning_dates(self) -> list[tuple[str, str]]:
        """(item, words) of the dates of pictures that say none by themselves: they may lean on a life or an event."""
        store = self._collection.store
        dates = [(item, words) for item, _, words in store.words_of(("date",)) if words.strip()]
        lean = {words for words in {words for _, words in dates} if self.understanding.leans(words)}
        return [(item, words) for item, words in dates if words in lean and store.number_of(item)]

    def read_again(self, act: Act, subject: Subject, name: str) -> None:
        """A place as it was in the year told since, a season as at the place told since, an age once the birth is told;
        never a confirmed one."""
        for statement, reading in self._told(act, subject):
            if statement.field != name or not statement.words or (reading is not None and reading.confirmed):
                continue
            again = self.understanding.read(name, statement.words, self._around(act, statement))
            if again is not None and again.reading != reading:
                act.index.read(statement.id, again.reading)
