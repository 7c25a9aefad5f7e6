"""A small family tree in lines (common practice, no source)."""

from boxlore.core.dates.reading import DateReading
from boxlore.core.people.person import Person
from boxlore.core.people.tree_lines import descent


def person(ident: str, born: str = "", **links: tuple[str, ...]) -> Person:
    date = DateReading.from_edtf(born) if born else None
    return Person(id=ident, name=ident, sort_name=ident, forms=(), calls=(), born=date, **links)  # type: ignore[arg-type]


def tree(*people: Person) -> dict[str, Person]:
    return {each.id: each for each in people}


FAMILY = tree(
    person("Juhan", "1885", spouses=("Helmi",)),
    person("Helmi", "1890"),
    person("Arvo", "1914", parents=("Juhan", "Helmi")),
    person("Liisi", "1918", parents=("Juhan", "Helmi"), spouses=("Peeter",)),
    person("Peeter", "1911"),
    person("Leida", "1941", parents=("Liisi", "Peeter")),
    person("Ann"),
)


def test_children_stand_below_their_parents_by_age() -> None:
    assert descent(FAMILY, FAMILY) == [
        (0, ("Juhan", "Helmi")), (1, ("Arvo",)), (1, ("Liisi", "Peeter")), (2, ("Leida",)),
    ]  # fmt: skip


def test_parents_of_those_wanted_are_there_and_nobody_without_kin() -> None:
    assert descent(FAMILY, ["Leida", "Ann", "nobody"]) == [(0, ("Peeter", "Liisi")), (1, ("Leida",))]


def test_parents_who_never_married_are_a_couple() -> None:
    people = tree(person("A", "1900"), person("B", "1901"), person("C", parents=("A", "B")))
    assert descent(people, people) == [(0, ("A", "B")), (1, ("C",))]


def test_a_parent_alone_and_a_second_marriage() -> None:
    people = tree(
        person("A", "1900", spouses=("B", "C")), person("B", "1901"), person("C", "1905"),
        person("D", "1922", parents=("A", "B")), person("E", "1930", parents=("A", "C")), person("F", parents=("E",)),
    )  # fmt: skip
    assert descent(people, people) == [(0, ("A", "B", "C")), (1, ("D",)), (1, ("E",)), (2, ("F",))]


def test_a_loop_is_borne_and_everyone_stands_once() -> None:
    people = tree(person("A", parents=("B",)), person("B", parents=("A",)))
    lines = descent(people, people)
    assert sorted(ident for _, couple in lines for ident in couple) == ["A", "B"]


def test_cousins_who_marry_stand_once() -> None:
    people = tree(
        person("A", "1870"), person("B", "1895", parents=("A",)), person("C", "1897", parents=("A",)),
        person("D", "1920", parents=("B",), spouses=("E",)), person("E", "1921", parents=("C",)),
    )  # fmt: skip
    assert descent(people, people) == [(0, ("A",)), (1, ("B",)), (2, ("D", "E")), (1, ("C",))]


def test_a_second_husband_stands_beside_his_wife_and_not_above_the_children_of_the_first() -> None:
    people = tree(
        person("Juhan", "1885"), person("Arvo", "1914", parents=("Juhan",)), person("Liisi", "1918", spouses=("Arvo",)),
        person("Leida", "1941", parents=("Arvo", "Liisi")), person("Peeter", "1911", spouses=("Liisi",)),
        person("Ann", "1952", parents=("Liisi", "Peeter")),
    )  # fmt: skip
    wanted = [
        (0, ("Juhan",)), (1, ("Arvo", "Liisi")), (2, ("Leida",)), (1, ("Peeter", "Liisi")), (2, ("Ann",)),
    ]  # fmt: skip
    assert descent(people, people) == wanted
    older = {**people, "Peeter": person("Peeter", "1880", spouses=("Liisi",))}
    assert sorted(ident for _, couple in descent(older, older) for ident in couple) == sorted([*people, "Liisi"])
    assert (2, ("Leida",)) in descent(older, older)
