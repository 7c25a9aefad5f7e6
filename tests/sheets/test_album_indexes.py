"""The years of a life and further names, as the album's index gives them (common practice, no source)."""

from datetime import date

import pytest
from tests.sheets.conftest import record, shown

from boxlore.core.dates.reading import DateReading
from boxlore.core.people.person import Person
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


def test_indexes_follow_the_alphabet_of_the_collection() -> None:
    printing = Printing(title="x", printed_on=date(2026, 11, 25), language="et")
    records = [record(0, shown("Õun"), place="Ülde"), record(1, shown("Zeller"), place="Zarasai")]
    records += [record(2, shown("Tamm"), place="Tapa")]
    for group, names in (
        (people_index(records, printing)[0], ["Zeller", "Tamm", "Õun"]),
        (places_index(records, printing)[0], ["Zarasai", "Tapa", "Ülde"]),
    ):
        assert [row["name"] for row in group["rows"]] == names
