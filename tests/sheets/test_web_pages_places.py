"""Places on the pages: where they lie as words and coordinates (degrees: WGS 84), no finer than known."""

from dataclasses import replace

from tests.sheets.conftest import record, told

from boxlore.core.dates.reading import DateReading
from boxlore.core.records.item_record import Record
from boxlore.core.wording.catalogue import ENGLISH
from boxlore.sheets.print_run import Printing
from boxlore.sheets.web_pages_places import place_of, place_subjects


def test_a_place_that_was_found(hard: list[Record]) -> None:
    place = place_of(hard[0], ENGLISH)
    assert place is not None
    assert (place.href, place.name) == ("place/g588409.html", "Tallinn")
    assert place.lines == ("Estonia", "59.44° N, 24.75° E, to within about 5 km")


def test_a_place_that_was_only_told(hard: list[Record]) -> None:
    place = place_of(hard[4], ENGLISH)
    assert place is not None
    assert (place.name, place.lines) == ("Ōtākou", ()) and place.href.startswith("place/w")
    assert place_of(hard[5], ENGLISH) is None


def test_ways_of_calling_one_place_share_a_page(hard: list[Record], printing: Printing) -> None:
    told = hard[0].told["place"][0]
    other = replace(hard[1], told={"place": (replace(told, words="Tallinn."),)})
    cards = {one.id: {"number": one.number} for one in hard}
    (subject,) = place_subjects([hard[0], other], cards, printing)
    assert subject["count"] == "2 photographs"
    assert "Told as: Reval" in subject["lines"]


def test_photographs_of_a_place_stand_by_their_dates(printing: Printing) -> None:
    records = [
        record(at, place="Tapa", date=(told("date", year, value=DateReading.from_edtf(year)),))
        for at, year in enumerate(("1968", "1942"))
    ]
    (tapa,) = place_subjects(records, {one.id: {"number": one.number} for one in records}, printing)
    assert [card["number"] for card in tapa["groups"][0]["shown"]] == ["TRA-0002", "TRA-0001"]


def test_places_follow_the_alphabet_of_the_collection(printing: Printing) -> None:
    records = [record(at, place=name) for at, name in enumerate(("Õru", "Tapa", "Žukovka", "Zarasai", "Virtsu"))]
    subjects = place_subjects(
        records, {one.id: {"number": one.number} for one in records}, replace(printing, language="et")
    )
    assert [each["name"] for each in subjects] == ["Zarasai", "Žukovka", "Tapa", "Virtsu", "Õru"]
