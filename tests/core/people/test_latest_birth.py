"""The latest birth that pictures, marriages and children leave (sources: core/people/latest_birth.py)."""

from datetime import date

from boxlore.core.dates.reading import DateReading
from boxlore.core.people.latest_birth import Pictured, latest_births
from boxlore.core.people.person import Person, Registry


def person(ident: str, parents: str = "", **more: object) -> Person:
    return Person(
        id=ident, name=ident, sort_name=ident, forms=(ident,), calls=(ident,), parents=tuple(parents.split()), **more  # type: ignore[arg-type]
    )  # fmt: skip


def when(edtf: str) -> DateReading:
    return DateReading.from_edtf(edtf)


def test_pictures_weddings_and_children_and_the_earliest_of_them() -> None:
    people = Registry([
        person("gran"), person("mum", "gran", married=(when("1919"),)),
        person("child", "mum", born=when("1921")), person("aunt", also=("aunt2",)), person("none"),
    ])  # fmt: skip
    seen = [
        Pictured("aunt2", when("189X"), "TRA-0003, 1890s"),
        Pictured("gone", when("1900"), "x"),
    ]
    found = latest_births(people, seen, [Pictured("aunt", when("1905-06"), "1905 June")])
    assert found["aunt"] == (date(1893, 6, 30), "married 1905 June")
    assert found["mum"] == (date(1907, 12, 31), "married 1919")
    assert found["gran"] == (date(1897, 12, 31), "parent of mum, married 1919")
    assert set(found) == {"aunt", "mum", "gran"}


def test_a_loop_ends() -> None:
    people = Registry([person("a", "b"), person("b", "a", born=when("1900"))])
    assert latest_births(people, [])["a"][0] <= date(1890, 12, 31)


def test_days_are_widened_where_they_are_approximate() -> None:
    assert when("1900~").latest_day == date(1905, 12, 31)
    assert when("1904-02-29%").latest_day == date(1914, 2, 28)
    assert when("1900/..").latest_day is None
    assert when("-0043-01-01").latest_day is None


def test_a_parent_whom_the_registry_has_not_is_passed_over() -> None:
    people = Registry([person("child", "gone mum", born=when("1921")), person("mum")])
    assert set(latest_births(people, [])) == {"mum"}
