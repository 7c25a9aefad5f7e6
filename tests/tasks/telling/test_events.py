"""Events told by hand, and the dates that lean on them (reckoned by hand, rules of our own)."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from boxlore.core.dates.reading import DateReading
from boxlore.core.errors import WrongUse
from boxlore.core.statements import Kind, Said, Source, Subject
from boxlore.tasks.collection.opening import Collection, open_collection, start
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.telling.events import (
    add_event,
    date_event,
    find_event,
    remove_event,
    rename_event,
    statements_of,
    waiting,
)
from boxlore.tasks.telling.statements import Teller, Telling
from boxlore.tasks.telling.time_line import source_words, time_line
from boxlore.tasks.telling.understanding import NOTHING_AROUND, Around, Understanding

BY_LEIDA = Telling(source=Source(Said.NARRATOR, "Leida Tamm"))
TOLD = ("the summer after the christening", "the year after the christening", "two years before we moved")


@pytest.fixture
def collection(tmp_path: Path) -> Iterator[Collection]:
    """Three items whose dates lean on events that nobody has dated yet."""
    start(tmp_path / "ours", Settings())
    with open_collection(tmp_path / "ours") as opened:
        teller = Teller(opened)
        for number, words in enumerate(TOLD, 1):
            act = opened.act("an item")
            item = act.new(Kind.ITEM)
            act.state(item, "number", f"FAMA-{number:04d}")
            teller.add(act, item, "date", words, Telling())
            act.done()
        yield opened


def dates(collection: Collection) -> list[str | None]:
    """The dates of the three items, as EDTF."""
    read = []
    for number in (1, 2, 3):
        item = Subject(Kind.ITEM, collection.store.item_by_number(f"FAMA-{number:04d}") or "")
        (reading,) = [reading for statement, reading in collection.store.statements(item) if statement.field == "date"]
        assert reading is not None and isinstance(reading.value, DateReading)
        read.append(reading.value.edtf.text if reading.value.edtf else None)
    return read


def line(collection: Collection) -> list[tuple[str, str, str]]:
    return [(event.edtf, event.name, event.said) for event in time_line(collection)]


def test_an_event_is_asked_about_once_and_then_read_by_every_picture(collection: Collection) -> None:
    teller = Teller(collection)
    assert [(row.name, len(row.items)) for row in waiting(collection, teller)] == [
        ("the christening", 2),
        ("we moved", 1),
    ]
    assert add_event(teller, "the christening", "December 1931", BY_LEIDA) == 2
    assert dates(collection) == ["1932-22", "1932~", None]
    assert line(collection) == [("1931-12", "the christening", "Leida Tamm")]
    assert [row.name for row in waiting(collection, teller)] == ["we moved"]


def test_an_event_without_a_date_stays_asked_until_it_has_one(collection: Collection) -> None:
    teller = Teller(collection)
    assert add_event(teller, "when we moved", "", Telling(), kind="house") == 0
    assert line(collection) == [("", "when we moved", "the keeper")]
    assert date_event(teller, find_event(collection, "we moved"), "1952", Telling()) == 1
    assert date_event(teller, find_event(collection, "we moved"), "1953", Telling()) == 1
    assert dates(collection)[2] == "1951~"
    assert line(collection) == [("1953", "when we moved", "the keeper")]


def test_another_name_is_asked_about_where_the_old_one_was_said(collection: Collection) -> None:
    teller = Teller(collection)
    add_event(teller, "the christening", "May 1931", Telling())
    assert rename_event(teller, find_event(collection, "christening"), "Anna's christening", Telling()) == 2
    assert line(collection) == [("1931-05", "Anna's christening", "the keeper")]
    item = Subject(Kind.ITEM, collection.store.item_by_number("FAMA-0002") or "")
    reading = next(reading for statement, reading in collection.store.statements(item) if statement.field == "date")
    assert reading and reading.asks and "is Anna's christening meant?" in str(getattr(reading.value, "ask", ""))


def test_what_is_taken_off_is_leant_on_no_more(collection: Collection) -> None:
    teller = Teller(collection)
    add_event(teller, "the christening", "December 1931", Telling())
    assert remove_event(teller, find_event(collection, "the christening")) == 2
    assert (line(collection), dates(collection)) == ([], [None, None, None])
    assert add_event(teller, "The christening", "December 1931", Telling()) == 2  # it takes the same entry again
    assert len(statements_of(collection, find_event(collection, "the christening"))) == 3


def test_occasions_and_lives_are_on_the_time_line(collection: Collection) -> None:
    teller = Teller(collection)
    act = collection.act("lives")
    anna, item = act.new(Kind.PERSON), act.new(Kind.ITEM)
    teller.add(act, anna, "name", "Anna Tamm", Telling())
    teller.add(act, anna, "born", "1928", BY_LEIDA)
    teller.add(act, item, "occasion", "the regatta", Telling())
    act.done()
    assert line(collection) == [("1928", "the birth of Anna Tamm", "Leida Tamm")]
    add_event(teller, "the regatta", "1935", Telling())
    assert line(collection)[1] == ("1935", "the regatta", "the keeper")


REFUSED = [
    ("the christening", "", "“the christening” is there already."),
    ("the picnic", "banana", "“banana” is no kind of event."),
    ("!!", "", "An event needs a name."),
    ("?", "", "An event needs a name."),
]


@pytest.mark.parametrize(("name", "kind", "sentence"), REFUSED)
def test_what_cannot_be_added(collection: Collection, name: str, kind: str, sentence: str) -> None:
    teller = Teller(collection)
    add_event(teller, "the christening", "1931", Telling())
    with pytest.raises(WrongUse, match=sentence):
        add_event(teller, name, "", Telling(), kind=kind)


def test_who_is_meant_is_said(collection: Collection) -> None:
    teller = Teller(collection)
    add_event(teller, "the move to Dunedin", "1952", Telling())
    add_event(teller, "the move to Milton", "1960", Telling())
    act = collection.act("a life")
    anna = act.new(Kind.PERSON)
    teller.add(act, anna, "name", "Anna Tamm", Telling())
    teller.add(act, anna, "born", "1928", Telling())
    act.done()
    with pytest.raises(WrongUse, match="may be 2 events"):
        find_event(collection, "the move")
    with pytest.raises(WrongUse, match="No event here is called “the flood”"):
        find_event(collection, "the flood")
    with pytest.raises(WrongUse, match="follows from what is told of a person"):
        find_event(collection, "the birth of Anna Tamm")
    milton = find_event(collection, "milton")
    assert find_event(collection, milton.id[-12:]) == milton
    with pytest.raises(WrongUse, match="Another event is called"):
        rename_event(teller, milton, "the move to Dunedin", Telling())


def test_sources_in_words() -> None:
    assert source_words(Source(Said.INSCRIPTION, "verso"), {}) == "written on a picture"
    assert source_words(Source(Said.FILE, "tree.ged"), {}) == "tree.ged"
    assert source_words(Source(Said.NARRATOR, "x"), {}) == "narrator:x"


def test_a_slip_of_a_told_event_is_asked_about(collection: Collection) -> None:
    teller = Teller(collection)
    add_event(teller, "the christening", "3 May 1931", BY_LEIDA)
    understanding = Understanding(collection)
    read, _ = understanding.date("the day after the cristening", NOTHING_AROUND)
    assert read.edtf is not None and (read.text, read.edtf.text) == ("the day after the cristening", "1931-05-04")
    assert read.ask == "“the day after the cristening”: is “the day after the christening” meant?"
    assert understanding.date("the day before the christenign", NOTHING_AROUND)[0].choices == ("1931-05-02",)
    assert understanding.date("the day after the flod", NOTHING_AROUND)[0].choices == ()


def test_whose_oma_an_event_tells_is_asked_where_somebody_tells(collection: Collection) -> None:
    teller = Teller(collection)
    act = collection.act("a narrator")
    ruth = act.new(Kind.PERSON)
    act.state(ruth, "name", "Ruth Tamm")
    act.done()
    add_event(teller, "Oma was born", "9 July 1908", BY_LEIDA, kind="birth")
    understanding = Understanding(collection)
    alone, _ = understanding.date("when Oma was six", NOTHING_AROUND)
    told, _ = understanding.date("when Oma was six", Around(narrator=ruth.id))
    assert alone.edtf is not None and alone.edtf == told.edtf and alone.edtf.text == "[1914-07-09..1915-07-08]"
    assert (alone.ask, told.ask) == (None, "“when Oma was six”: is Oma meant?")
