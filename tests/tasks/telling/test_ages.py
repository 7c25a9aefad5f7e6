"""Ages lean on who tells and on who is in the picture; holidays on the country (reckoned by hand, rules of our own)."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from boxlore.core.dates.reading import DateReading
from boxlore.core.errors import WrongUse
from boxlore.core.statements import Kind, Said, Source, Subject
from boxlore.tasks.collection.opening import Collection, open_collection, start
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.people.registry import take_back
from boxlore.tasks.telling.statements import Teller, Telling

BY_LEIDA = Telling(source=Source(Said.NARRATOR, "Leida Tamm"))


@pytest.fixture
def collection(tmp_path: Path) -> Iterator[Collection]:
    start(tmp_path / "ours", Settings(countries="NZ"))
    with open_collection(tmp_path / "ours") as opened:
        teller = Teller(opened)
        act = opened.act("people")
        for name, born in (("Leida Tamm", "4 March 1920"), ("Aino Tamm", "1910"), ("Jaan Tamm", "")):
            person = act.new(Kind.PERSON)
            teller.add(act, person, "name", name, Telling())
            if born:
                teller.add(act, person, "born", born, Telling())
        act.done()
        yield opened


def date_of(collection: Collection, item: Subject) -> tuple[str | None, str | None]:
    """EDTF and the question of the date told last."""
    rows = [row for row in collection.store.statements(item) if row[0].field == "date"]
    reading = rows[-1][1]
    assert reading is not None and isinstance(reading.value, DateReading)
    return reading.value.edtf.text if reading.value.edtf else None, reading.value.ask


def item_with(collection: Collection, *people: str) -> tuple[Teller, Subject]:
    teller = Teller(collection)
    act = collection.act("an item")
    item = act.new(Kind.ITEM)
    for person in people:
        teller.add(act, item, "person", person, Telling())
    act.done()
    return teller, item


TOLD = [  # who is in the picture, what Leida says, EDTF, the question
    ((), "when I was six", "[1926-03-04..1927-03-03]", None),
    ((), "on my 21st birthday", "1941-03-04", None),
    (("Aino Tamm",), "aged 5", "1915~", None),
    (("Aino Tamm",), "on her 21st", "1931", None),
    (("Aino Tamm", "Leida Tamm"), "on her 21st", None, "“on her 21st”: is Aino Tamm or Leida Tamm meant?"),
    (("Jaan Tamm",), "aged 5", None, "When was Jaan Tamm born?"),
    (("Mihkel the carter",), "aged 50", None, "When was Mihkel born?"),
    ((), "aged 5", None, "Who was that, and when were they born?"),
    ((), "Labour Day 1950", "1950-10-23", None),  # fourth Monday in October: Public Holidays Act 1910 (NZ)
]


@pytest.mark.parametrize(("people", "words", "edtf", "ask"), TOLD)
def test_what_a_narrator_says_of_an_age(
    collection: Collection, people: tuple[str, ...], words: str, edtf: str | None, ask: str | None
) -> None:
    teller, item = item_with(collection, *people)
    teller.tell(item, "date", words, BY_LEIDA)
    assert date_of(collection, item) == (edtf, ask)


def test_an_age_after_the_death_is_asked_about(collection: Collection) -> None:
    teller, item = item_with(collection, "Aino Tamm")
    act = collection.act("a death")
    aino = next(person for person in collection.people().values() if person.name == "Aino Tamm")
    teller.add(act, Subject(Kind.PERSON, aino.id), "died", "1941", Telling())
    act.done()
    teller.tell(item, "date", "when Aino Tamm was fifty", BY_LEIDA)
    edtf, ask = date_of(collection, item)
    assert edtf is None and "after the death" in str(ask)


def test_the_keeper_is_no_narrator(collection: Collection) -> None:
    teller, item = item_with(collection)
    teller.tell(item, "date", "when I was six", Telling())
    assert date_of(collection, item) == (None, "When were you born?")


def test_an_age_is_read_once_it_is_told_who_that_is(collection: Collection) -> None:
    teller, item = item_with(collection)
    teller.tell(item, "date", "aged 5", Telling())
    teller.tell(item, "person", "Aino Tamm", Telling())
    assert date_of(collection, item) == ("1915~", None)
    teller.tell(item, "person", "Leida Tamm", Telling())
    assert date_of(collection, item) == ("1915~", None)  # it was read already


def test_an_age_is_read_once_the_birth_is_told_and_taken_back_with_it(collection: Collection) -> None:
    teller, item = item_with(collection, "Jaan Tamm")
    act = collection.act("its number")
    act.state(item, "number", "TRA-0001")
    act.done()
    teller.tell(item, "date", "aged 5", Telling())
    jaan = next(person for person in collection.people().values() if person.name == "Jaan Tamm")
    teller.tell(Subject(Kind.PERSON, jaan.id), "born", "a long time ago", Telling())
    assert date_of(collection, item) == (None, "When was Jaan Tamm born?")
    born = teller.tell(Subject(Kind.PERSON, jaan.id), "born", "1903", Telling())
    assert date_of(collection, item) == ("1908~", None)
    take_back(collection, born.act)
    assert date_of(collection, item)[0] is None


def test_a_holiday_is_that_of_the_place(collection: Collection) -> None:
    teller, item = item_with(collection)
    teller.tell(item, "place", "Toronto, Canada", Telling())
    teller.tell(item, "date", "Labour Day 1950", Telling())
    assert date_of(collection, item) == ("1950-09-04", None)  # first Monday in September (Canada, 1894)


def test_countries_that_are_none(tmp_path: Path) -> None:
    with pytest.raises(WrongUse, match="two capital letters a country"):
        start(tmp_path / "other", Settings(countries="New Zealand"))


PET_FORMS = [
    ("Верочке 5 лет", "[1912-09-30..1913-09-29]", "“Верочке 5 лет”: is Вера meant?"),
    ("верочке 5 лет", None, None),  # no name
    ("Верочка, 1938", None, "“Верочка, 1938”: is 1938 meant? Not understood: “Верочка”."),
    ("Верочка в школе", None, None),
    ("Танечке 5 лет", None, None),  # Татьяна is nobody here
]


def test_an_age_with_a_pet_form_is_asked_about(tmp_path: Path) -> None:
    start(tmp_path / "ours", Settings(language="ru"))
    with open_collection(tmp_path / "ours") as opened:
        teller, act = Teller(opened), opened.act("people")
        person = act.new(Kind.PERSON)
        teller.add(act, person, "name", "Вера", Telling())
        teller.add(act, person, "born", "30 сентября 1907", Telling())
        act.done()
        for words, edtf, ask in PET_FORMS:
            act = opened.act("an item")
            item = act.new(Kind.ITEM)
            teller.add(act, item, "date", words, Telling())
            act.done()
            assert date_of(opened, item) == (edtf, ask), words


def test_an_age_with_the_name_in_the_dative(tmp_path: Path) -> None:
    start(tmp_path / "ours", Settings(language="ru"))
    with open_collection(tmp_path / "ours") as opened:
        teller, act = Teller(opened), opened.act("people")
        person = act.new(Kind.PERSON)
        teller.add(act, person, "name", "Вера", Telling())
        teller.add(act, person, "born", "30 сентября 1907", Telling())
        act.done()
        act = opened.act("an item")
        item = act.new(Kind.ITEM)
        teller.add(act, item, "date", "Вере 5 лет", Telling())
        act.done()
        assert date_of(opened, item) == ("[1912-09-30..1913-09-29]", None)


def test_a_name_in_the_genitive_is_asked_about(tmp_path: Path) -> None:
    start(tmp_path / "ours", Settings(language="et"))
    with open_collection(tmp_path / "ours") as opened:
        teller, act = Teller(opened), opened.act("people")
        person = act.new(Kind.PERSON)
        for field, words in (("name", "Ruth"), ("born", "9. mai 1951"), ("died", "11. veebruar 1970")):
            teller.add(act, person, field, words, Telling())
        act.done()
        for words, edtf, ask in (
            ("Ruthi kuues sünnipäev", "1957-05-09", "“Ruthi kuues sünnipäev”: is Ruth meant?"),
            ("Ruthi viimane suvi", None, "“Ruthi viimane suvi”: is Ruth meant?"),
            ("Ru kuues sünnipäev", None, "When was Ru born?"),
        ):
            act = opened.act("an item")
            item = act.new(Kind.ITEM)
            teller.add(act, item, "date", words, Telling())
            act.done()
            assert date_of(opened, item) == (edtf, ask), words
