"""Readings as text and as values (our own form): both ways, and text that cannot be read."""

import json

import pytest
from tests.every_row import every_row

from boxlore.core.dates.phrases import read
from boxlore.core.dates.reading import DateReading
from boxlore.core.errors import WrongUse
from boxlore.core.people.consent import make_consent
from boxlore.core.people.names.reader import read_name
from boxlore.core.people.reference import PersonRef
from boxlore.core.places.reading import Place, PlaceReading
from boxlore.core.records.readings import TYPES, read_value, reading_text, value_text
from boxlore.core.statements import Reading, ReadingValue, Unreadable

BOTH_WAYS: list[tuple[str, ReadingValue]] = [
    ("date", read("about 1912")),
    ("date", read("nonsense")),
    ("place", PlaceReading("Nõmme", "match", (Place(name="Nõmme", lat=59.4, lon=24.7),))),
    ("person", PersonRef("leida")),
    ("event", PersonRef("wedding")),
    ("consent", make_consent(["name"], "2026-11-25")),
    ("name", read_name("Mrs. Anna Pell née von der Pahlen")),
]


@pytest.mark.parametrize(("kind", "value"), BOTH_WAYS, ids=[kind for kind, _ in BOTH_WAYS])
def test_both_ways(kind: str, value: ReadingValue) -> None:
    text = reading_text(Reading(kind, value, "test"))
    assert text == value_text(value)
    assert json.loads(text) == value.to_json()
    assert read_value(kind, text) == value


def test_every_kind_goes_both_ways() -> None:
    assert {kind for kind, _ in BOTH_WAYS} == set(TYPES)


def test_letters_of_other_scripts_stay_as_they_are() -> None:
    """Strike searches the bytes of the store for the words: they may not be escaped there."""
    assert "Nõmme" in value_text(PlaceReading("Nõmme", "kept"))


UNREADABLE = [
    ("date", ""),
    ("date", "{"),
    ("date", "null"),
    ("date", '"1912"'),
    ("date", '["1912"]'),
    ("date", "{}"),
    ("date", '{"edtf": "1912-13"}'),
    ("date", '{"id": "leida"}'),
    ("date", '{"edtf": "1912", "error": ' + "[" * 100_000),
    ("date", '{"edtf": ' + "9" * 10_000 + "}"),
    ("place", '{"choices": [{"city": 1}]}'),
    ("place", '{"choices": [], "findings": [{"rule": "x", "severity": "loud"}]}'),
    ("person", "{}"),
    ("event", '{"id": 7}'),
    ("consent", '{"matters": ["all"]}'),
    ("name", '{"given": "Leida"}'),
]


@every_row(("kind", "text"), UNREADABLE)
@every_row("confirmed", [False, True])
def test_a_text_that_cannot_be_read_is_no_reading_and_is_kept(kind: str, text: str, confirmed: bool) -> None:
    reading = Reading(kind, read_value(kind, text), "test", confirmed=confirmed)
    assert reading.value == Unreadable(text)
    assert not reading.usable and reading.usable_value is None
    assert reading_text(reading) == text


USABLE = [(False, False, True), (True, False, False), (True, True, True), (False, True, True)]


@pytest.mark.parametrize(("asks", "confirmed", "usable"), USABLE)
def test_what_asks_waits_for_the_keeper(asks: bool, confirmed: bool, usable: bool) -> None:
    value = DateReading.from_edtf("1912")
    reading = Reading("date", value, "test", asks=asks, confirmed=confirmed)
    assert (reading.usable, reading.usable_value) == (usable, value if usable else None)


MIXED = [("person", DateReading.from_edtf("1912")), ("date", PersonRef("leida")), ("name", PersonRef("leida"))]


@pytest.mark.parametrize(("kind", "value"), MIXED, ids=str)
def test_a_value_of_another_kind_is_not_written(kind: str, value: ReadingValue) -> None:
    with pytest.raises(WrongUse, match=f"of the kind “{kind}” cannot hold a {type(value).__name__}"):
        reading_text(Reading(kind, value, "test"))
