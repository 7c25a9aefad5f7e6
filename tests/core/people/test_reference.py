"""Whom words mean: the reference both ways (our own form)."""

import pytest

from boxlore.core.dates.reading import DateReading
from boxlore.core.people.reference import PersonRef, id_meant
from boxlore.core.statements import Reading, Unreadable


def test_both_ways() -> None:
    assert PersonRef("leida").to_json() == {"id": "leida"}
    assert PersonRef.from_json({"id": "leida", "more": 1}) == PersonRef("leida")


@pytest.mark.parametrize("data", [{}, {"id": ""}, {"id": None}, {"id": 7}, {"id": ["leida"]}], ids=str)
def test_an_object_without_an_id_is_refused(data: dict[str, object]) -> None:
    with pytest.raises(ValueError, match="no id"):
        PersonRef.from_json(data)


MEANT = [
    (Reading("person", PersonRef("leida"), "test"), "leida"),
    (Reading("event", PersonRef("wedding"), "test", asks=True), "wedding"),
    (Reading("date", DateReading.from_edtf("1912"), "test"), ""),
    (Reading("person", Unreadable("{}"), "test"), ""),
    (None, ""),
]


@pytest.mark.parametrize(("reading", "ident"), MEANT)
def test_whom_a_reading_means(reading: Reading | None, ident: str) -> None:
    assert id_meant(reading) == ident
