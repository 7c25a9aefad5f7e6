"""An age that is told, beside birth and picture (derived; our own slack)."""

from dataclasses import replace

from tests.every_row import every_row

from boxlore.core.dates import phrases
from boxlore.core.dates.reading import DateReading
from boxlore.core.people.person import Person
from boxlore.core.records.item_record import PersonShown, Record, StatementView
from boxlore.core.rules.ages_told import ages_told, born_from_ages
from boxlore.core.statements import KEEPER, Sure


def told(field: str, words: str, value: DateReading | None = None) -> StatementView:
    return StatementView(
        statement=words,
        field=field,
        words=words,
        language="en",
        source=KEEPER,
        said_by="",
        sure=Sure.SURE,
        audience="anyone",
        recorded_at="",
        value=value,
    )


def person(name: str, born: str) -> Person:
    return Person(id=name, name=name, sort_name=name, forms=(name,), calls=(name,), born=phrases.read(born))


CASES = [
    ("Mia, aged 3", "1972", True), ("Mia, aged 3", "1970", False),
    ("Mia, aged 3", "1969", False), ("about five years old", "1970", False),
    ("about five years old", "1975", True), ("a six-year-old Mia", "1972", False),
    ("Mia at the age of twelve", "1970", True),
    ("She was 4 years old.", "about 1970", False), ("She was 4 years old.", "about 1990", True),
    ("Mia looks about five", "1990", True), ("Mia looks about five", "1971", False),
    ("nobody is 5", "1990", False), ("Mia, age 3", "1960", True),
    # whose age it is: another thing's, another person's, none at all; and a comparison is no age
    ("The dog was five years old", "1990", False), ("Mia's dog was five years old", "1990", False),
    ("My brother Jack, aged five", "1990", False), ("the house, 5 years old", "1990", False),
    ("Mia, who was not aged five", "1990", False), ("Mia looks about five years older", "1990", False),
    ("Mia in a 100 years old house", "1990", False), ("Mia in her two year old coat", "1990", False),
    ("The boy beside Mia looks about five", "1990", False), ("A picture of Mia, aged 3", "1990", True),
    ("Mia, aged 3 months", "1990", False), ("Mia, aged six weeks", "1990", False),
    ("Mia looks about 9 months old", "1990", False), ("Mia, aged 3, in May", "1990", True),
    ("Here Mia must have been about five years old", "1990", True), ("aged five", "1990", True),
]  # fmt: skip


@every_row(("words", "taken", "asks"), CASES)
def test_one_person(words: str, taken: str, asks: bool) -> None:
    mia = person("Mia", "1966")
    rows = {"date": (told("date", taken, phrases.read(taken)),), "story": (told("story", words),)}
    record = Record(
        id="i", number="N", told=rows, people=(PersonShown(told=told("person", "Mia"), name="Mia", person="Mia"),)
    )
    found = list(ages_told(record, {"Mia": mia}))
    assert bool(found) is asks
    assert all(one.rule == "date.age-told" and "Mia" in one.message for one in found)


def test_an_age_in_an_answer_to_an_own_question_is_read_too() -> None:
    rows = {"date": (told("date", "1990", phrases.read("1990")),), "own-clothes": (told("own-clothes", "Mia, aged 3"),)}
    shown = (PersonShown(told=told("person", "Mia"), name="Mia", person="Mia"),)
    found = list(ages_told(Record(id="i", number="N", told=rows, people=shown), {"Mia": person("Mia", "1966")}))
    assert len(found) == 1


def test_a_birth_that_is_open_asks_nothing() -> None:
    rows = {"date": (told("date", "1972", phrases.read("1972")),), "story": (told("story", "aged 3"),)}
    shown = (PersonShown(told=told("person", "Mia"), name="Mia", person="Mia"),)
    record = Record(id="i", number="N", told=rows, people=shown)
    assert list(ages_told(record, {"Mia": person("Mia", "before 1966")})) == []
    assert len(list(ages_told(record, {"Mia": person("Mia", "1966")}))) == 1
    assert list(ages_told(record, {"Mia": replace(person("Mia", "1966"), born=None)})) == []


def test_of_several_people_the_one_named_before_it_or_nobody() -> None:
    people = {one.id: one for one in (person("Mia", "1966"), person("Tom", "1937"))}
    shown = tuple(PersonShown(told=told("person", name), name=name, person=name) for name in people)
    date = told("date", "1970", phrases.read("1970"))
    named = Record(id="i", number="N", people=shown,
                   told={"date": (date,), "story": (told("story", "Tom came. Mia was nine years old."),)})  # fmt: skip
    assert ["Mia" in one.message for one in ages_told(named, people)] == [True]
    unnamed = Record(id="i", number="N", people=shown, told={"date": (date,), "story": (told("story", "aged 9"),)})
    assert list(ages_told(unnamed, people)) == []
    assert (
        list(ages_told(Record(id="i", number="N", people=shown, told={"story": (told("story", "aged 9"),)}), people))
        == []
    )


BORN_FROM = [
    ("Mia, aged 3", "1972", "1968-01-01"), ("Mia looks about five", "May 1975", "1966-05-01"),
    ("Mia looks about 60", "1990", "1917-01-01"), ("Mia, aged 3", "about 1972", "1963-01-01"),
    ("Mia looks about 300", "1990", "1677-01-01"), ("Mia, aged 3", "before 1972", ""), ("Mia at the gate", "1972", ""),
    ("Mia, aged 3", "", ""), ("Mia, aged 999", "0950", ""),
]  # fmt: skip


@every_row(("words", "date", "born"), BORN_FROM)
def test_the_earliest_birth_by_an_age(words: str, date: str, born: str) -> None:
    mia = person("Mia", "1880")
    views = {"story": (told("story", words),)} | ({"date": (told("date", date, phrases.read(date)),)} if date else {})
    shown = PersonShown(told=told("person", "Mia"), name="Mia", person="Mia")
    found = list(born_from_ages(Record(id="a", number="A", told=views, people=(shown,)), {"Mia": mia}))
    assert [(ident, str(born_from.day)) for ident, born_from in found] == ([("Mia", born)] if born else [])
    assert all(f"is told of A, {phrases.read(date).display}" in each.because for _, each in found)
