"""The latest birth that pictures, marriages and children leave (sources: core/people/latest_birth.py)."""

from datetime import date

from boxlore.core.dates.reading import DateReading
from boxlore.core.people.latest_birth import BornBy, Pictured, latest_births
from boxlore.core.people.person import Person, Registry


def person(ident: str, parents: str = "", **more: object) -> Person:
    return Person(
        id=ident, name=ident, sort_name=ident, forms=(ident,), calls=(ident,), parents=tuple(parents.split()), **more  # type: ignore[arg-type]
    )  # fmt: skip


def when(edtf: str) -> DateReading:
    return DateReading.from_edtf(edtf)


def said(latest: dict[str, BornBy]) -> dict[str, tuple[date, str]]:
    """Each as its day and its words."""
    return {ident: (born_by.day, born_by.in_words()) for ident, born_by in latest.items()}


def test_pictures_weddings_and_children_and_the_earliest_of_them() -> None:
    people = Registry([
        person("gran"), person("mum", "gran", married=(when("1919"),)),
        person("child", "mum", born=when("1921")), person("aunt", also=("aunt2",)), person("none"),
    ])  # fmt: skip
    seen = [
        Pictured("aunt2", when("189X"), "TRA-0003, 1890s"),
        Pictured("gone", when("1900"), "x"),
    ]
    found = said(latest_births(people, seen, [Pictured("aunt", when("1905-06"), "1905 June")]))
    assert found["aunt"] == (date(1893, 6, 30), "married 1905 June")
    assert found["mum"] == (date(1907, 12, 31), "married 1919")
    assert found["gran"] == (date(1897, 12, 31), "parent of mum, married 1919")
    assert set(found) == {"aunt", "mum", "gran"}


def test_the_earliest_day_counts_and_of_two_on_one_day_the_first() -> None:
    people = Registry([person("anna")])
    seen = [
        Pictured("anna", when("1901"), "a"),
        Pictured("anna", when("1899"), "b"),
        Pictured("anna", when("1899"), "c"),
    ]
    assert said(latest_births(people, seen)) == {"anna": (date(1899, 12, 31), "shown in b")}


def test_nothing_follows_from_a_picture_without_a_day_or_of_somebody_else() -> None:
    people = Registry([person("anna"), person("child", "anna", born=when("-0043"))])
    assert latest_births(people, [Pictured("anna", when("1900/.."), "a"), Pictured("gone", when("1900"), "b")]) == {}
    wed = Registry([person("anna", married=(when("1900/.."),))])
    assert latest_births(wed, [], [Pictured("anna", when("1900/.."), "no day")]) == {}


def test_a_birth_that_is_told_goes_up_unless_a_picture_is_earlier() -> None:
    for born, why in [("1921", "shown in TRA-1"), ("1919", "born 1919"), ("1920-12-31", "born 1920 December 31")]:
        people = Registry([person("mum"), person("child", "mum", born=when(born))])
        latest = said(latest_births(people, [Pictured("child", when("1920"), "TRA-1")]))
        assert latest["mum"][1] == f"parent of child, {why}"


def test_of_two_births_told_of_a_child_the_later_counts_for_the_parents() -> None:
    births = (when("2016"), when("1899"))
    for told in (births, births[::-1]):
        people = Registry([person("mum"), person("child", "mum", births=told, born=told[-1])])
        assert said(latest_births(people, []))["mum"][1].endswith("born 2016")


def test_it_goes_up_through_every_generation_and_nobody_is_her_own_parent() -> None:
    line = [person(f"g{at}", f"g{at + 1} g{at}") for at in range(45)]
    people = Registry([*line, person("g45"), person("child", "g0", born=when("2000"))])
    latest = said(latest_births(people, []))
    assert latest["g0"] == (date(1990, 12, 31), "parent of child, born 2000")
    assert latest["g1"][0] == date(1980, 12, 31)
    assert latest["g39"][0] == date(1600, 12, 31)
    assert "g40" not in latest, "no family is told over more than forty generations"


def test_a_leap_day_becomes_the_last_of_february_and_no_day_stands_before_the_first_year() -> None:
    days = {"1904-02-29": date(1894, 2, 28), "1904-02-28": date(1894, 2, 28), "1904-03-29": date(1894, 3, 29),
            "1904-02-01": date(1894, 2, 1), "0011-06-01": date(1, 6, 1), "0012-06-01": date(2, 6, 1)}  # fmt: skip
    for born, latest in days.items():
        people = Registry([person("mum"), person("child", "mum", born=when(born))])
        assert latest_births(people, [])["mum"].day == latest
    people = Registry([person("mum"), person("child", "mum", born=when("0010-06-01"))])
    assert latest_births(people, []) == {}


def test_a_loop_ends() -> None:
    people = Registry([person("a", "b"), person("b", "a", born=when("1900"))])
    assert latest_births(people, [])["a"].day <= date(1890, 12, 31)


def test_days_are_widened_where_they_are_approximate() -> None:
    assert when("1900~").latest_day == date(1905, 12, 31)
    assert when("1904-02-29%").latest_day == date(1914, 2, 28)
    assert when("1900/..").latest_day is None
    assert when("-0043-01-01").latest_day is None


def test_a_parent_whom_the_registry_has_not_is_passed_over() -> None:
    people = Registry([person("child", "gone mum", born=when("1921")), person("mum")])
    assert set(latest_births(people, [])) == {"mum"}
