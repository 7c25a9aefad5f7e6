"""The latest birth that pictures, marriages and children leave (sources: core/people/latest_birth.py)."""

from datetime import date

from boxlore.core.people.latest_birth import Pictured, latest_births, latest_day
from boxlore.core.people.person import Person, Registry


def person(ident: str, parents: str = "", **more: object) -> Person:
    return Person(
        id=ident, name=ident, sort_name=ident, forms=(ident,), calls=(ident,), parents=tuple(parents.split()), **more  # type: ignore[arg-type]
    )  # fmt: skip


def when(edtf: str, latest: str) -> dict[str, object]:
    return {"edtf": edtf, "latest": latest, "display": edtf}


def test_pictures_weddings_and_children_and_the_earliest_of_them() -> None:
    people = Registry([
        person("gran"), person("mum", "gran", married=(when("1919", "1919-12-31"),)),
        person("child", "mum", born=when("1921", "1921-12-31")), person("aunt", also=("aunt2",)), person("none"),
    ])  # fmt: skip
    seen = [
        Pictured("aunt2", when("189X", "1899-12-31"), "TRA-0003, 1890s"),
        Pictured("gone", when("1", "1900-01-01"), "x"),
    ]
    found = latest_births(people, seen, [Pictured("aunt", when("1905-06", "1905-06-30"), "1905 June")])
    assert found["aunt"] == (date(1893, 6, 30), "married 1905 June")
    assert found["mum"] == (date(1907, 12, 31), "married 1919")
    assert found["gran"] == (date(1897, 12, 31), "parent of mum, married 1919")
    assert set(found) == {"aunt", "mum", "gran"}


def test_a_loop_ends() -> None:
    people = Registry([person("a", "b"), person("b", "a", born=when("1900", "1900-12-31"))])
    assert latest_births(people, [])["a"][0] <= date(1890, 12, 31)


def test_days_are_widened_where_they_are_approximate() -> None:
    assert latest_day(when("1900~", "1900-12-31")) == date(1905, 12, 31)
    assert latest_day(when("1904-02-29%", "1904-02-29")) == date(1914, 2, 28)
    assert latest_day(when("1900/..", "")) is None
    assert latest_day({"latest": "-0043-01-01"}) is None
