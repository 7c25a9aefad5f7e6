"""Readings in use: what is told beside, and readings in a collection that are damaged (rules of our own)."""

import sqlite3
from collections.abc import Iterator
from contextlib import closing
from io import BytesIO
from pathlib import Path

import pytest

from boxlore.core.dates.reading import DateReading
from boxlore.core.people.reference import PersonRef
from boxlore.core.places.reading import Place, PlaceReading
from boxlore.core.records.audience import To
from boxlore.core.statements import Kind, Reading, Subject, Unreadable
from boxlore.disk.shipped import shipped
from boxlore.exports.rdf import write_triples
from boxlore.exports.required_fields import read_required
from boxlore.store import projections
from boxlore.tasks.archive.transfer import facts_of
from boxlore.tasks.check import check
from boxlore.tasks.collection.opening import DATABASE, Collection, open_collection, start
from boxlore.tasks.collection.records_for_outputs import record_of, seen_by
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.people.date_preview import reader_of
from boxlore.tasks.telling.statements import Teller, Telling
from boxlore.tasks.telling.understanding import Around, around, person_reading

TALLINN = PlaceReading("Reval", "match", (Place(name="Tallinn", lat=59.4, lon=24.7),))
TWO_GEISLINGENS = PlaceReading("Geislingen", "choices", (
    Place(name="Geislingen an der Steige", lat=48.62, lon=9.83, country_code="DE"),
    Place(name="Geislingen", lat=48.29, lon=8.81, country_code="DE"),
))  # fmt: skip
"""Towns of GeoNames: both lie in the north, and in Germany."""
TWO_NEWCASTLES = PlaceReading("Newcastle", "choices", (
    Place(name="Newcastle", lat=-32.93, lon=151.78, country_code="AU"),
    Place(name="Newcastle upon Tyne", lat=54.97, lon=-1.61, country_code="GB"),
))  # fmt: skip
DATED = DateReading.from_edtf("1912-05/1914")

BESIDE = [
    ((), Around()),
    ((("date", Reading("date", DATED, "test")),), Around(year=1912, other_years=(1914,))),
    ((("date", Reading("date", DateReading.from_edtf("1912"), "test")),), Around(year=1912)),
    (
        (("date", Reading("date", DateReading.from_edtf("1939-10"), "test")),),
        Around(year=1939, other_years=(1938, 1940)),
    ),
    ((("date", Reading("date", DateReading.from_edtf("1912/.."), "test")),), Around(year=1912)),
    ((("date", Reading("date", DATED, "test", asks=True)),), Around()),
    ((("born", Reading("date", DATED, "test")),), Around()),
    ((("place", Reading("place", TALLINN, "test")), ("story", None)), Around(latitude=59.4)),
    ((("place", Reading("place", PlaceReading("x", "kept"), "test", confirmed=True)),), Around()),
    ((("place", Reading("place", PlaceReading("x", "kept"), "test", asks=True)),), Around()),
    ((("place", Reading("place", TWO_GEISLINGENS, "test", asks=True)),), Around(latitude=48.62, country="DE")),
    ((("place", Reading("place", TWO_NEWCASTLES, "test", asks=True)),), Around()),
    ((("date", Reading("date", Unreadable("{"), "test")),), Around()),
]


@pytest.mark.parametrize(("told", "beside"), BESIDE)
def test_what_is_told_of_the_same_thing_besides(told: tuple[tuple[str, Reading | None], ...], beside: Around) -> None:
    assert around(told) == beside


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    start(tmp_path / "ours", Settings())
    return tmp_path / "ours"


@pytest.fixture
def told(folder: Path) -> tuple[str, str]:
    """An item with a date, a place and a person, all read; its id and the person's."""
    with open_collection(folder) as collection:
        act = collection.act("one item")
        item, helmi = act.new(Kind.ITEM), act.new(Kind.PERSON)
        act.state(item, "number", "TRA-0001")
        act.state(helmi, "name", "Helmi Tamm")
        born = act.state(helmi, "born", "1912")
        act.readings.append((born.id, Reading("date", DateReading.from_edtf("1912"), "test")))
        who = act.state(item, "person", "Helmi")
        act.readings.append((who.id, person_reading(helmi)))
        act.done()
        teller = Teller(collection)
        teller.tell(item, "date", "1931", Telling())
        teller.tell(item, "place", "Dunedin, New Zealand", Telling())
        return item.id, helmi.id


@pytest.fixture
def damaged(folder: Path, told: tuple[str, str]) -> Iterator[Collection]:
    """The same collection, in whose file every reading has lost its end."""
    with closing(sqlite3.connect(folder / DATABASE)) as db, db:
        db.execute("UPDATE reading SET value = substr(value, 1, length(value) - 1)")
    with open_collection(folder) as collection:
        yield collection


def test_all_is_read_while_it_is_whole(folder: Path, told: tuple[str, str]) -> None:
    with open_collection(folder) as collection:
        record = record_of(collection, told[0])
        assert (record.edtf, record.place and record.place.city, record.people[0].person) == (
            "1931",
            "Dunedin",
            told[1],
        )


def test_a_life_may_be_older_than_photographs_and_a_picture_may_not(folder: Path, told: tuple[str, str]) -> None:
    item, helmi = told
    with open_collection(folder) as collection:
        teller = Teller(collection)
        teller.tell(Subject(Kind.PERSON, helmi), "died", "14 March 1796", Telling())
        taken = teller.tell(Subject(Kind.ITEM, item), "date", "14 March 1396", Telling())
        died = collection.people()[helmi].died
        assert died and died.edtf and (died.edtf.text, died.ask) == ("1796-03-14", None)
        dates = record_of(collection, item).told["date"]
        assert [view.asks for view in dates if view.words == taken.words] == [True]


def test_a_damaged_reading_counts_as_none_and_asks(damaged: Collection, told: tuple[str, str]) -> None:
    record = record_of(damaged, told[0])
    assert (record.date, record.edtf, record.date_display, record.place) == (None, "", "1931", None)
    assert (record.people[0].name, record.people[0].person) == ("Helmi", "")
    assert all(view is not None and view.asks for view in (record.first("date"), record.first("place")))
    rules = {found.finding.rule for found in check(damaged)}
    assert {"date.asks", "place.asks", "person.asks"} <= rules
    assert damaged.people()[told[1]].born is None
    assert damaged.store.places_used() == {}


def test_a_damaged_reading_stops_no_export_and_leaves_none(damaged: Collection) -> None:
    out, required = BytesIO(), read_required((shipped("schemas") / "required.csv").read_text(encoding="utf-8"))
    write_triples(seen_by(damaged, To.ARCHIVE).records(), facts_of(damaged), out, required)
    assert b"TRA-0001" in out.getvalue() and b"reading" not in out.getvalue()


def test_the_projections_of_a_damaged_collection_are_made_anew(damaged: Collection, told: tuple[str, str]) -> None:
    damaged.store.writer.do(projections.rebuild)
    assert record_of(damaged, told[0]).number == "TRA-0001"


def test_a_damaged_reading_is_mended_by_telling_again(damaged: Collection, told: tuple[str, str]) -> None:
    item = Subject(Kind.ITEM, told[0])
    (old,) = [row for row, _ in damaged.store.statements(item) if row.field == "date"]
    Teller(damaged).tell(item, "date", "1931", Telling(), replaces=old.id)
    assert record_of(damaged, told[0]).edtf == "1931"


def test_a_reading_in_the_store_is_the_value_that_was_given(folder: Path, told: tuple[str, str]) -> None:
    with open_collection(folder) as collection:
        rows = collection.store.statements(Subject(Kind.ITEM, told[0]))
        values = {row.field: reading.value for row, reading in rows if reading is not None}
    assert values["person"] == PersonRef(told[1])
    assert isinstance(values["date"], DateReading) and isinstance(values["place"], PlaceReading)


THEN = [  # words of a place, a date, the state then: the treaties of 1919, the annexation of September 1939
    ("Danzig", "1939-10", ""),
    ("Danzig", "1935-10", "Free City of Danzig"),
    ("Danzig", "1935", "Free City of Danzig"),
    ("Danzig", "1935/1950", ""),
    ("Straßburg, Elsass", "1918-12", ""),
    ("Straßburg, Elsass", "1905-12", "German Empire"),
]


def test_a_date_in_the_year_of_a_change_says_no_state(folder: Path, told: tuple[str, str]) -> None:
    with open_collection(folder) as collection:
        understanding = Teller(collection).understanding
        for words, date, state in THEN:
            beside = around((("date", Reading("date", DateReading.from_edtf(date), "test")),))
            understood = understanding.read("place", words, beside)
            assert understood is not None and isinstance(understood.reading.value, PlaceReading)
            assert understood.reading.value.choices[0].country_then == state, (words, date)


def test_a_season_follows_the_half_that_all_places_share_which_are_asked_about(folder: Path) -> None:
    """Spring is from March to May north of the equator, from September to November south of it, where the family is:
    what the meteorological services of either half mean by it (from memory)."""
    start(folder.with_name("south"), Settings(hemisphere="south"))
    with open_collection(folder.with_name("south")) as collection:
        act = collection.act("one item")
        item = act.new(Kind.ITEM)
        act.state(item, "number", "TRA-0001")
        act.done()

        def begins(words: str, place: str) -> str:
            Teller(collection).tell(item, "date", words, Telling())
            if place:
                Teller(collection).tell(item, "place", place, Telling())
            date = record_of(collection, item.id).date
            return str(date.earliest) if date else ""

        assert begins("spring 1946", "") == "1946-09-01"
        assert begins("spring 1946", "Geislingen, Germany") == "1946-03-01"
        assert record_of(collection, item.id).place is None  # which Geislingen is still asked
        read = reader_of(collection, "", "TRA-0001", lambda settings: settings)
        assert str(read("spring 1947").earliest) == "1947-03-01"
