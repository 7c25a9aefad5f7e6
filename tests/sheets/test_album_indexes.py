"""The years of a life and further names, as the album's index gives them (common practice, no source)."""

from datetime import date

import pytest
from tests.sheets.conftest import record, shown, told

from boxlore.core.dates.reading import DateReading
from boxlore.core.people.person import Person
from boxlore.core.places.reading import Place, PlaceReading
from boxlore.core.statements import Sure
from boxlore.core.wording.catalogue import ENGLISH
from boxlore.sheets.album_indexes import other_sort_names, people_index, places_index, years_of
from boxlore.sheets.print_run import Printing


def person(born: str = "", died: str = "", **more) -> Person:  # type: ignore[no-untyped-def]
    values = {"id": "p", "name": "Leida Rourke", "sort_name": "Rourke, Leida", "forms": (), "calls": (), **more}
    dates = {name: DateReading.from_edtf(edtf) for name, edtf in (("born", born), ("died", died)) if edtf}
    return Person(**values, **dates)


@pytest.mark.parametrize(
    ("born", "died", "years"),
    [
        ("1888-03-01", "1962", "1888–1962"),
        ("1871~", "1915", "about 1871–1915"),
        ("1924", "", "born 1924"),
        ("1920/1922", "", "born about 1920"),
        ("", "1943?", "died about 1943"),
        ("../1900", "", ""),
        ("", "", ""),
    ],
)
def test_years_of_a_life(born: str, died: str, years: str) -> None:
    assert years_of(person(born, died), ENGLISH) == years


def test_further_surnames_refer_to_the_one_used() -> None:
    assert other_sort_names(person(surnames=("Rourke", "Tamm"))) == ("Tamm, Leida",)
    assert other_sort_names(person(sort_name="Memm", surnames=("Tamm",))) == ()


def test_a_page_where_somebody_is_not_sure_says_so() -> None:
    printing = Printing(title="x", printed_on=date(2026, 11, 25))
    records = [record(0, shown("Anna", sure=Sure.GUESS)), record(1, shown("Anna"))]
    (group,) = people_index(records, printing)
    assert group["rows"][0]["items"] == [("TRA-0001", "?"), ("TRA-0002", "")]


def test_a_reference_stands_where_the_name_does_it_refers_to() -> None:
    """Also one that begins with a small letter; and who only took pictures is called so."""
    printing = Printing(
        title="x", printed_on=date(2026, 11, 25),
        sort_names={"id-Ann": "Hohenlohe, Ann", "id-Juan": "de la Cruz, Juan"},
        other_names={"id-Ann": ("von Hohenlohe, Ann",)},
    )  # fmt: skip
    people = [shown("Ann"), shown("a dock hand"), shown("Juan"), shown("Atelier Lind", role="photographer")]
    named, unnamed = people_index([record(0, *people)], printing)
    rows = {row["name"]: (row["more"], row["see"]) for row in named["rows"]}
    assert rows == {
        "Atelier Lind": ("photographer", ""), "de la Cruz, Juan": ("", ""), "Hohenlohe, Ann": ("", ""),
        "von Hohenlohe, Ann": ("", "Hohenlohe, Ann"),
    }  # fmt: skip
    assert [row["name"] for row in unnamed["rows"]] == ["a dock hand"]


def test_a_place_stands_once_however_it_was_told() -> None:
    def place(words: str, city: str, geonames: int):  # type: ignore[no-untyped-def]
        town = Place(name=city, city=city, country="Estonia", geonames=geonames)
        return (told("place", words, value=PlaceReading(words, "match", (town,))),)

    words = ["Haapsalu, Estonia", "Haapsalu", "near Haapsalu", "Hapsal"]
    records = [record(at, place=place(told_as, "Haapsalu", 1)) for at, told_as in enumerate(words)]
    records += [record(4, place="the bach"), record(5, place="the bach")]
    (group,) = places_index(records, Printing(title="x", printed_on=date(2026, 11, 25)))
    assert [(row["name"], len(row["items"]), row["see"]) for row in group["rows"]] == [
        ("Haapsalu", 4, ""), ("Hapsal (now Haapsalu, Estonia)", 0, "Haapsalu"), ("The bach", 2, ""),
    ]  # fmt: skip


def test_indexes_follow_the_alphabet_of_the_collection() -> None:
    printing = Printing(title="x", printed_on=date(2026, 11, 25), language="et")
    records = [record(0, shown("Õun"), place="Ülde"), record(1, shown("Zeller"), place="Zarasai")]
    records += [record(2, shown("Tamm"), place="Tapa")]
    for group, names in (
        (people_index(records, printing)[0], ["Zeller", "Tamm", "Õun"]),
        (places_index(records, printing)[0], ["Zarasai", "Tapa", "Ülde"]),
    ):
        assert [row["name"] for row in group["rows"]] == names
