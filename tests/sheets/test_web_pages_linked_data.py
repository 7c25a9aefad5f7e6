"""JSON-LD of a photograph (schema.org: Photograph, dateCreated in ISO 8601, temporalCoverage, contentLocation)."""

import json
from dataclasses import replace
from datetime import date
from typing import Any

import pytest

from boxlore.core.dates.reading import DateReading
from boxlore.core.records.item_record import Record
from boxlore.sheets.print_run import Printing
from boxlore.sheets.web_pages_linked_data import linked

PRINTING = Printing(title="x", printed_on=date(2026, 11, 25))


def dated(record: Record, edtf: str) -> dict[str, Any]:
    told = replace(record.told["date"][0], value=DateReading.from_edtf(edtf))
    said: dict[str, Any] = json.loads(linked(replace(record, told={**record.told, "date": (told,)}), PRINTING))
    return said


DATES = [
    ("1912", "1912", None),
    ("1912-05-12", "1912-05-12", None),
    ("1912~", None, "approximately 1912"),
    ("191X", None, "1910s"),
    ("1908/1909", None, "1908-1909"),
]


@pytest.mark.parametrize(("edtf", "created", "covers"), DATES)
def test_only_a_plain_date_is_the_day_it_was_made(edtf, created, covers, hard: list[Record]) -> None:  # type: ignore[no-untyped-def]
    said = dated(hard[0], edtf)
    assert (said.get("dateCreated"), said.get("temporalCoverage")) == (created, covers)


def test_unsure_people_are_not_told_to_machines(hard: list[Record]) -> None:
    assert "about" not in json.loads(linked(hard[2], PRINTING))


def test_no_word_can_close_the_script(hard: list[Record]) -> None:
    assert "<" not in linked(hard[6], PRINTING)
