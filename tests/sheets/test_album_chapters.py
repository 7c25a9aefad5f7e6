"""Chapters of the album (common practice, no source)."""

from dataclasses import replace
from datetime import date

import pytest
from tests.sheets.conftest import record, shown, told

from boxlore.core.dates.reading import DateReading
from boxlore.core.places.reading import Place, PlaceReading
from boxlore.core.records.worked_out_date import WorkedOutDate
from boxlore.core.statements import Sure
from boxlore.sheets.album_chapters import BY, chapters, years_known
from boxlore.sheets.print_run import Printing


def dated(at: int, edtf: str, **words):  # type: ignore[no-untyped-def]
    return record(at, date=(told("date", edtf, value=DateReading.from_edtf(edtf)),), **words)


def names(records, by, sort_names=None, language="en"):  # type: ignore[no-untyped-def]
    printing = Printing(title="x", printed_on=date(2026, 11, 25), sort_names=sort_names or {}, language=language)
    parts = chapters(records, by, printing)
    return [(part.title, [one.number for one in part.records]) for part in parts]


def test_decades_in_order_and_days_within_them() -> None:
    told_dates = ["1938-06-14", "1912", "1931~", "1938-06-02", "", "../1909", "1960/.."]
    records = [dated(at, edtf) if edtf else record(at) for at, edtf in enumerate(told_dates)]
    assert names(records, "decade") == [
        ("The 1900s", ["TRA-0006"]),
        ("The 1910s", ["TRA-0002"]),
        ("The 1930s", ["TRA-0003", "TRA-0004", "TRA-0001"]),
        ("The 1960s", ["TRA-0007"]),
        ("Without a date", ["TRA-0005"]),
    ]


def test_a_span_of_years_stands_in_the_decade_of_its_middle() -> None:
    assert names([dated(0, "1899/1905"), dated(1, "1880")], "decade")[1] == ("The 1900s", ["TRA-0001"])


def test_a_narrow_date_that_is_worked_out_says_the_decade_and_a_wide_one_does_not() -> None:
    worked = [replace(record(at), worked_out=WorkedOutDate(edtf)) for at, edtf in enumerate(("1946/1948", "1900/1939"))]
    assert names([*worked, dated(2, "1947~")], "decade") == [
        ("The 1940s", ["TRA-0001", "TRA-0003"]),
        ("Without a date", ["TRA-0002"]),
    ]
    assert years_known(replace(dated(3, "1912"), worked_out=WorkedOutDate("1946"))) == (
        1912,
        1912,
    )  # what is told holds
    assert years_known(replace(record(4), worked_out=WorkedOutDate("../1946"))) is None


def test_one_chapter_has_no_title() -> None:
    assert names([dated(0, "1912"), dated(1, "1913")], "decade") == [("", ["TRA-0001", "TRA-0002"])]
    assert names([record(0), record(1)], "none") == [("", ["TRA-0001", "TRA-0002"])]


def test_places_of_today_put_one_town_together() -> None:
    tallinn = PlaceReading("Reval", "match", (Place(name="Tallinn", city="Tallinn", country="Estonia"),))
    records = [
        record(0, place=(told("place", "Reval", value=tallinn),)),
        record(1, place=(told("place", "Tallinn", value=tallinn),)),
        record(2, place="the farm."),
        record(3),
    ]
    assert names(records, "place") == [
        ("Tallinn", ["TRA-0001", "TRA-0002"]),
        ("The farm", ["TRA-0003"]),
        ("Without a place", ["TRA-0004"]),
    ]


def test_families_by_the_surname_most_often_borne() -> None:
    sort_names = {"id-Leida": "Rourke, Leida", "id-Tom": "Rourke, Tom", "id-Mari": "Tamm, Mari", "id-Memm": "Memm"}
    records = [
        record(0, shown("Mari"), shown("Leida"), shown("Tom")),
        record(1, shown("Mari")),
        record(2, shown("Memm")),
    ]
    assert names(records, "family", sort_names) == [
        ("Rourke", ["TRA-0001"]), ("Tamm", ["TRA-0002"]), ("Others", ["TRA-0003"]),
    ]  # fmt: skip


def test_people_who_are_surely_shown_alone() -> None:
    records = [
        dated(0, "1912"), record(1, shown("Mari")), record(2, shown("Mari", sure=Sure.GUESS)),
        record(3, shown("Mari"), shown("Leida")), record(4, shown("a dock hand")), record(5, shown("Juhan")),
    ]  # fmt: skip
    assert names(records, "person", {"id-Mari": "Tamm, Mari"}) == [
        ("Juhan", ["TRA-0006"]),
        ("Tamm, Mari", ["TRA-0002"]),
        ("Others", ["TRA-0001", "TRA-0003", "TRA-0004", "TRA-0005"]),
    ]


@pytest.mark.parametrize(("by", "title"), [("box", ""), ("occasion", "")])
def test_boxes_and_occasions(by: str, title: str) -> None:
    records = [record(0, occasion="the wedding."), record(1)]
    made = names(records, by)
    assert made == [("", ["TRA-0001", "TRA-0002"])] if by == "box" else made == [
        ("The wedding", ["TRA-0001"]), ("Without an occasion", ["TRA-0002"])
    ]  # fmt: skip


@pytest.mark.parametrize("by", BY)
def test_nothing_is_lost_by_any_key(by: str, hard, printing) -> None:  # type: ignore[no-untyped-def]
    kept = [one.number for part in chapters(hard, by, printing) for one in part.records]
    assert sorted(kept) == sorted(one.number for one in hard)


def test_chapters_that_are_names_follow_the_alphabet_of_the_collection() -> None:
    records = [record(at, place=name) for at, name in enumerate(("Õru", "Tapa", "Zarasai"))]
    assert [title for title, _ in names(records, "place", language="et")] == ["Zarasai", "Tapa", "Õru"]
