"""Places in use: the family's own, those used before, dates told after places, and a keeper's own gazetteer.

Lines of gazetteer tables follow GeoNames' readme (19 columns; alternateNamesV2, 10 columns); the places are invented.
"""

from collections.abc import Iterator
from pathlib import Path

import pytest

from boxlore.core.dates.reading import DateReading
from boxlore.core.errors import CouldNot, WrongUse
from boxlore.core.fields.coordinates import COORDINATES_WORDS
from boxlore.core.places.reading import PlaceReading
from boxlore.core.statements import Kind, Subject
from boxlore.gazetteer.lookup import Gazetteer, open_gazetteer
from boxlore.tasks.collection.opening import Collection, open_collection, start
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.telling.places import NewPlace, add_place, own_gazetteer, own_places, read_places, take_gazetteer
from boxlore.tasks.telling.statements import Teller, Telling


@pytest.fixture
def collection(tmp_path: Path) -> Iterator[Collection]:
    start(tmp_path / "ours", Settings())
    with open_collection(tmp_path / "ours") as opened:
        yield opened


@pytest.fixture(scope="module")
def gazetteer() -> Gazetteer:
    return open_gazetteer()


def heard(what: str, done: int, total: int) -> None:
    assert done <= total


def kind_of(collection: Collection, words: str) -> tuple[str, str]:
    (found,) = read_places([(words, 1930)], heard, print, collection)
    return found.kind, found.choices[0].name if found.choices else ""


def test_a_place_of_the_familys_own_is_a_match(collection: Collection, gazetteer: Gazetteer) -> None:
    new = NewPlace(name="Grandpa's farm", inside="Milton, Otago", at="-46.12, 169.96", also=["the Rourke place"])
    assert kind_of(collection, "Grandpa's farm") == ("kept", "")
    assert add_place(collection, new, gazetteer) == []
    for words in ("grandpas farm", "the Rourke place", "Grandpa's farm, Otago", "Grandpa’s farm, New Zealand"):
        assert kind_of(collection, words) == ("match", "Grandpa's farm")
    assert kind_of(collection, "Grandpa's farm, Estonia")[1] != "Grandpa's farm"
    (own,) = own_places(collection)
    assert (own.place.lat, own.place.city, own.place.country_code) == (-46.12, "Milton", "NZ")


def test_an_own_place_with_no_more_than_a_name(collection: Collection, gazetteer: Gazetteer) -> None:
    add_place(collection, NewPlace(name="the bach"), gazetteer)
    assert kind_of(collection, "The Bach") == ("match", "the bach")
    with pytest.raises(WrongUse, match="already"):
        add_place(collection, NewPlace(name="the bach"), gazetteer)
    with pytest.raises(WrongUse, match="name"):
        add_place(collection, NewPlace(name="  "), gazetteer)


def test_what_was_told_before_of_an_own_place_is_read_with_it(collection: Collection, gazetteer: Gazetteer) -> None:
    """Asked once: what is still asked about is settled by the place; what was read for sure stays, and so does undo."""
    act, teller = collection.act("told"), Teller(collection)
    items = [act.new(Kind.ITEM) for _ in range(5)]
    event = act.new(Kind.EVENT)
    for at, item in enumerate(items, 1):
        act.state(item, "number", f"TRA-000{at}")
    act.state(event, "name", "the hay")
    act.done()
    told = ("Zzyfold", "the barn at Zzyfold", "Zzyfold, Estonia", "Tallinn")
    for about, words in zip([*items, event], (*told, "", "Zzyfold"), strict=True):
        act = collection.act("told")
        if words:
            teller.add(act, about, "place", words, Telling())
        act.done()

    def read(about: Subject) -> str:
        rows = [reading for row, reading in collection.store.statements(about) if row.field == "place"]
        usable = [reading.usable_value for reading in rows if reading is not None and reading.usable]
        return usable[0].choices[0].name if usable and isinstance(usable[0], PlaceReading) else ""

    assert [read(about) for about in (*items, event)] == ["", "", "", "Tallinn", "", ""]
    add_place(collection, NewPlace(name="Zzyfold", inside="Milton, Otago"), gazetteer)
    assert [read(about) for about in (*items, event)] == ["Zzyfold", "Zzyfold", "", "Tallinn", "", "Zzyfold"]
    assert any("places that were told before are read with it now" in words for words in collection.unsaid)


UNKNOWN = [
    ("Zzyzqwx", "No place “Zzyzqwx” is known, so nothing can lie in it. Write a town, an area or a country."),
    ("Port Chalmrs, New Zealand", "Is it “Port Chalmers, Otago, New Zealand”? Then write it so."),
]


@pytest.mark.parametrize(("inside", "sentence"), UNKNOWN)
def test_what_lies_in_no_known_place_is_refused(
    collection: Collection, gazetteer: Gazetteer, inside: str, sentence: str
) -> None:
    with pytest.raises(WrongUse) as refused:
        add_place(collection, NewPlace(name="the bach", inside=inside), gazetteer)
    assert sentence in str(refused.value) and own_places(collection) == []


def test_a_place_may_lie_in_another_of_the_familys_own(collection: Collection, gazetteer: Gazetteer) -> None:
    add_place(collection, NewPlace(name="Grandpa's farm", inside="Milton, Otago"), gazetteer)
    add_place(collection, NewPlace(name="the barn", inside="Grandpa's farm"), gazetteer)
    assert kind_of(collection, "the barn, Grandpa's farm") == ("match", "the barn")
    assert own_places(collection)[-1].place.country_code == "NZ"


def test_coordinates_in_another_country_are_asked_about(collection: Collection, gazetteer: Gazetteer) -> None:
    wrong = NewPlace(name="the mill", inside="Viljandi, Estonia", at="-58.36, 25.6")
    swapped = NewPlace(name="the manor", inside="Viljandi, Estonia", at="25.6, 58.36")
    assert add_place(collection, wrong, gazetteer) == []  # the sea: nothing is near
    (finding,) = add_place(collection, swapped, gazetteer)
    assert finding.rule == "place.outside" and "Estonia" in finding.message


@pytest.mark.parametrize("text", ["", "north", "91, 0", "0, 181", "59.4", "59,44 24,75 1"])
def test_what_are_no_coordinates(text: str) -> None:
    with pytest.raises(WrongUse, match="Write latitude"):
        COORDINATES_WORDS.typed(text)


def test_a_place_used_before_is_preferred(collection: Collection) -> None:
    teller = Teller(collection)
    act = collection.act("two items")
    one, two = act.new(Kind.ITEM), act.new(Kind.ITEM)
    teller.add(act, one, "place", "Dunedin, New Zealand", Telling())
    act.done()
    teller.tell(two, "place", "Dunedin", Telling())
    ((_, reading),) = [told for told in collection.store.statements(two) if told[0].field == "place"]
    assert reading is not None
    read = reading.value
    assert isinstance(read, PlaceReading) and read.best is not None
    assert (read.kind, read.best.country_code) == ("match", "NZ")


def test_what_is_told_once_weighs_less_than_what_is_told_often(collection: Collection) -> None:
    """Dunedin 2191562 and Honolulu 5856195 (GeoNames). Our rule: a fifth of all told makes a land the family's."""
    teller = Teller(collection)
    act = collection.act("ten items")
    for place in (*["Dunedin, New Zealand"] * 9, "Honolulu, Hawaii"):
        teller.add(act, act.new(Kind.ITEM), "place", place, Telling())
    act.done()
    assert collection.store.places_used() == {2191562: 9, 5856195: 1}
    read = list(read_places([("Hull", None), ("Boston", None), ("Cambridge", None)], heard, print, collection))
    firsts = [reading.best.country_code for reading in read if reading.best]
    assert firsts == ["GB", "US", "NZ"]


def test_a_date_told_after_the_place_reads_it_as_it_was_then(collection: Collection) -> None:
    """Tallinn was Reval in the Russian Empire in 1905 (from memory)."""
    teller = Teller(collection)
    act = collection.act("one item")
    item = act.new(Kind.ITEM)
    teller.add(act, item, "place", "Reval", Telling())
    act.done()
    teller.tell(item, "date", "1905", Telling())
    ((_, reading),) = [told for told in collection.store.statements(item) if told[0].field == "place"]
    assert reading is not None
    read = reading.value
    assert isinstance(read, PlaceReading) and read.best is not None
    assert (read.kind, read.best.called_then) == ("match", "Reval")


def row(ident: int, name: str, kind: str, country: str, other: str = "") -> str:
    where = ("58.5", "25.5", kind, "PPL" if kind == "P" else "ADM3")
    return "\t".join(
        [str(ident), name, name, other, *where, country, "", "84", "", "", "", "12", "", "", "", "2026-01-01"]
    )


def test_a_keepers_own_gazetteer(collection: Collection, tmp_path: Path) -> None:
    table = tmp_path / "EE.txt"
    rows = [
        row(900001, "Tammiku Talu", "P", "EE", "Tammenhof"),
        row(900002, "Kivisild", "H", "EE"),
        row(900003, "Tamm", "P", "LV"),
        "a line that is none",
    ]
    table.write_text("\n".join(rows), encoding="utf-8")
    names = tmp_path / "names.txt"
    names.write_text(
        "1\t900001\tde\tTammikhof\t\t\t\t1\t\t\n2\t900001\tlink\thttps://x\t\t\t\t\t\t\n", encoding="utf-8"
    )
    assert kind_of(collection, "Tammikhof, Estonia")[0] != "match"
    assert take_gazetteer(collection, table, names=names, countries=["EE"], heard=heard) == 1
    path = own_gazetteer(collection)
    assert path is not None
    for words in ("Tammiku Talu, Estonia", "Tammikhof, Estonia", "Tammenhof, Estonia"):
        assert kind_of(collection, words) == ("match", "Tammiku Talu")


def test_a_file_that_is_no_gazetteer_changes_nothing(collection: Collection, tmp_path: Path) -> None:
    wrong = tmp_path / "wrong.txt"
    wrong.write_bytes(b"\xff\xfe\x00not a table")
    with pytest.raises(CouldNot):
        take_gazetteer(collection, wrong, names=None, countries=[], heard=heard)
    assert own_gazetteer(collection) is None
    assert not list(collection.folder.glob("*.part"))


def date_of(collection: Collection, item: Subject) -> str:
    """The date of an item as EDTF."""
    ((_, reading),) = [told for told in collection.store.statements(item) if told[0].field == "date"]
    assert reading is not None and isinstance(reading.value, DateReading) and reading.value.edtf is not None
    return reading.value.edtf.text


@pytest.mark.parametrize(("place", "edtf"), [("Tallinn, Estonia", "1913-22"), ("Dunedin, New Zealand", "1913-30")])
def test_a_summer_is_that_of_its_place(collection: Collection, place: str, edtf: str) -> None:
    """Southern summers are EDTF 30 (Library of Congress, Level 2); told before or after the place."""
    teller = Teller(collection)
    act = collection.act("two items")
    one, two = act.new(Kind.ITEM), act.new(Kind.ITEM)
    teller.add(act, one, "date", "the summer of 1913", Telling())
    teller.add(act, one, "place", place, Telling())
    teller.add(act, two, "place", place, Telling())
    act.done()
    teller.tell(two, "date", "the summer of 1913", Telling())
    assert [date_of(collection, item) for item in (one, two)] == [edtf, edtf]


def test_ages_and_events_lean_on_what_the_family_told(collection: Collection) -> None:
    teller = Teller(collection)
    act = collection.act("a person and an event")
    ruth, picnic, item = act.new(Kind.PERSON), act.new(Kind.EVENT), act.new(Kind.ITEM)
    teller.add(act, ruth, "name", "Ruth Rourke", Telling())
    teller.add(act, ruth, "given", "Ruth", Telling())
    teller.add(act, ruth, "born", "1930", Telling())
    teller.add(act, picnic, "name", "the wedding", Telling())
    teller.add(act, picnic, "date", "14 June 1952", Telling())
    act.done()
    teller.tell(item, "date", "when Ruth was five", Telling())
    assert date_of(collection, item) == "1935~"
    act = collection.act("another")
    other = act.new(Kind.ITEM)
    teller.add(act, other, "date", "the year after the wedding", Telling())
    act.done()
    assert date_of(collection, other) == "1953~"
