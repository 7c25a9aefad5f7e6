"""Arithmetic of families. Values: CDC/NCHS (mothers 10-54), Calment 1875-02-21 to 1997-08-04, Age of Marriage Act
1929; the rest from memory, as the module says."""

import pytest
from tests.every_row import every_row

from boxlore.core.dates import phrases
from boxlore.core.dates.reading import DateReading
from boxlore.core.findings import Severity
from boxlore.core.people.person import Person, Registry
from boxlore.core.rules.people_and_kin import Wedding, look_over_people


def when(text: str) -> DateReading | None:
    return phrases.read(text) if text else None


def person(ident: str, born: str = "", died: str = "", **more: object) -> Person:
    return Person(
        id=ident, name=ident, sort_name=ident, forms=(ident,), calls=(ident,), born=when(born), died=when(died), **more
    )  # type: ignore[arg-type]


def rules(*people: Person, weddings: tuple[Wedding, ...] = ()) -> list[tuple[str, Severity]]:
    return [(one.rule, one.severity) for one in look_over_people(Registry(people), weddings)]


MOTHERS = [
    ("1900", "1908", Severity.ERROR),  # the worked check of CDC/NCHS: below 10
    ("1900-01-01", "1909-12-31", Severity.ERROR), ("1900-06-01", "1911-06-01", Severity.ASK), ("1900", "1925", None),
    ("1900", "1952", Severity.ASK), ("1900", "1962", Severity.ERROR), ("about 1900", "1908", Severity.ASK),
    ("1925", "1900", Severity.ERROR), ("", "1900", None),
]  # fmt: skip


@every_row(("mother", "child", "severity"), MOTHERS)
def test_mothers(mother: str, child: str, severity: Severity | None) -> None:
    found = rules(person("m", mother, sex="female"), person("c", child, parents=("m",), mothers=("m",)))
    assert found == ([("kin.mother-age", severity)] if severity else [])


FATHERS = [("1900", "1910", Severity.ERROR), ("1900-01-01", "1913-06-01", Severity.ASK), ("1900", "1930", None),
           ("1900", "1975", Severity.ASK), ("1900", "1995", Severity.ERROR)]  # fmt: skip


@pytest.mark.parametrize(("father", "child", "severity"), FATHERS)
def test_fathers(father: str, child: str, severity: Severity | None) -> None:
    found = rules(person("f", father, sex="male"), person("c", child, parents=("f",)))
    assert found == ([("kin.father-age", severity)] if severity else [])


LIVES = [
    ("1875-02-21", "1997-08-04", None),  # 122 years and 164 days: the longest known
    ("1875-02-21", "1997-08-07", ("life.too-long", Severity.ERROR)),
    ("about 1870", "1999", ("life.too-long", Severity.ASK)),
    ("1900", "1890", ("life.backwards", Severity.ERROR)), ("1900", "about 1890", ("life.backwards", Severity.ASK)),
    ("1900", "1900", None), ("1900", "", None),
]  # fmt: skip


@pytest.mark.parametrize(("born", "died", "found"), LIVES)
def test_lives(born: str, died: str, found: tuple[str, Severity] | None) -> None:
    assert rules(person("a", born, died)) == ([found] if found else [])


DEAD = [
    ("female", "1900-01-01", "1900-01-02", "kin.mother-dead"), ("female", "1900-01-01", "1900-01-01", ""),
    ("male", "1900-01-01", "1900-09-15", ""), ("male", "1900-01-01", "1901-01-15", "kin.father-dead"),
]  # fmt: skip


@pytest.mark.parametrize(("sex", "died", "born", "rule"), DEAD)
def test_born_after_a_parents_death(sex: str, died: str, born: str, rule: str) -> None:
    mothers = ("p",) if sex == "female" else ()
    found = rules(person("p", "", died, sex=sex), person("c", born, parents=("p",), mothers=mothers))
    assert found == ([(rule, Severity.ERROR)] if rule else [])


SIBLINGS = [("1900-01-01", "1900-06-01", 1), ("1900-01-01", "1900-01-02", 0), ("1900-01-01", "1900-11-01", 0),
            ("1900-01-01", "1900", 0), ("1900-01-01", "1900-01-04", 0), ("1900-01-01", "1900-01-05", 1),
            ("1900-01-01", "1900-09-27", 1), ("1900-01-01", "1900-09-28", 0)]  # fmt: skip


@every_row(("one", "other", "count"), SIBLINGS)
def test_siblings_too_close(one: str, other: str, count: int) -> None:
    mother = person("m", "1875")
    pair = [person(name, day, parents=("m",), mothers=("m",)) for name, day in (("a", one), ("b", other))]
    assert rules(mother, *pair) == [("kin.siblings", Severity.ASK)] * count


WEDDINGS = [
    ("female", "1900", "1913", ""), ("female", "1900-01-01", "1911-06-01", "marriage.age"),
    ("male", "1900-01-01", "1913-06-01", "marriage.age"), ("female", "1920-01-01", "1935-06-01", "marriage.age"),
    ("female", "1950", "1949", "marriage.age"), ("female", "1900", "1920", ""),
]  # fmt: skip


@pytest.mark.parametrize(("sex", "born", "day", "rule"), WEDDINGS)
def test_weddings(sex: str, born: str, day: str, rule: str) -> None:
    """England: girls 12, boys 14 to 10 May 1929; 16 from then."""
    bride = person("a", born, sex=sex)
    assert [one for one, _ in rules(bride, weddings=(Wedding(("a", "gone"), when(day)),))] == ([rule] if rule else [])
    told = person("a", born, sex=sex, married=(when(day),))
    assert [one for one, _ in rules(told)] == ([rule] if rule else [])


def test_married_after_death_and_to_a_parent() -> None:
    dead = person("a", "1900", "1930", married=(when("1931"),))
    assert rules(dead) == [("marriage.after-death", Severity.ERROR)]
    assert rules(person("a", spouses=("b",), parents=("b",)), person("b"))[0] == ("kin.spouse", Severity.ERROR)
    assert rules(person("a", spouses=("b", "gone")), person("b", spouses=("a",))) == []


def test_loops_and_too_many_parents() -> None:
    assert [one for one, _ in rules(person("a", parents=("b",)), person("b", parents=("a",)))] == ["kin.loop"] * 2
    three = person("c", parents=("a", "b", "d"), mothers=("a", "b"))
    assert rules(person("a"), person("b"), person("d"), three) == [("kin.parents", Severity.ASK)]
    assert rules(person("c", parents=("gone",))) == []


def test_a_name_that_can_be_taken_apart_in_two_ways_asks() -> None:
    assert rules(person("Zhang Wei", name_asks="Is “Zhang” the family name?")) == [("name.asks", Severity.ASK)]
