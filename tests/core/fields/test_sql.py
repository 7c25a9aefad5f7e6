"""The SQL that looks inside words, held to the codec beside it: SQLite itself is the judge."""

import sqlite3
from collections.abc import Callable
from operator import attrgetter
from typing import Any

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from tests.core.fields.strategies import IDS, VALUES
from tests.drawn import drawn

from boxlore.core.fields.originals import (
    BY_NUMBER_SQL,
    COUNT_SQL,
    KEPT_IN_SQL,
    KEPT_WORDS,
    NUMBER_WORDS,
    NUMBERED_SQL,
    SERIES_SQL,
    ItemNumber,
    Kept,
    kept_bounds,
    number_bounds,
    series_of,
)
from boxlore.core.fields.pictures import FILE_SHA256_SQL, LINK_FIRST_SQL, LINK_SECOND_SQL, SHOWS_ITEM_SQL, STRUCK_SQL
from boxlore.core.fields.plain_values import START, START_SQL
from boxlore.core.fields.table import FIELDS

FRAGMENTS: list[tuple[str, str, Callable[[Any], object]]] = [
    ("number", SERIES_SQL, lambda number: f"{number.letters}-"),
    ("number", SERIES_SQL, lambda number: series_of(NUMBER_WORDS.write(number))),
    ("number", COUNT_SQL, attrgetter("count")),
    ("file", FILE_SHA256_SQL, attrgetter("sha256")),
    ("embedded", STRUCK_SQL, lambda embedded: embedded.lines[:1] != () and embedded.lines[0][0] == "struck"),
    ("shows", SHOWS_ITEM_SQL, attrgetter("item")),
    ("story", START_SQL, lambda words: words[:START]),
    ("link", LINK_FIRST_SQL, attrgetter("first")),
    ("link", LINK_SECOND_SQL, attrgetter("second")),
]

DB = sqlite3.connect(":memory:")


@drawn(40)
@given(st.data())
@pytest.mark.parametrize(("field", "sql", "part"), FRAGMENTS)
def test_sqlite_finds_what_the_codec_wrote(
    field: str, sql: str, part: Callable[[Any], object], data: st.DataObject
) -> None:
    value = data.draw(VALUES[field])
    words = FIELDS[field].codec.write(value)
    assume("\0" not in words)  # to SQLite's own functions text ends there ("NUL characters in strings", 2021)
    (found,) = DB.execute(f"SELECT {sql} FROM (SELECT ? AS words)", (words,)).fetchone()
    assert found == part(value)


@drawn(40)
@given(st.builds(Kept, IDS, st.integers(0, 500)), IDS)
def test_sqlite_finds_what_is_kept_in_a_container(kept: Kept, elsewhere: str) -> None:
    query = f"SELECT {KEPT_IN_SQL} FROM (SELECT ?3 AS words)"
    for container in (kept.container, elsewhere):
        (found,) = DB.execute(query, (*kept_bounds(container), KEPT_WORDS.write(kept))).fetchone()
        assert bool(found) is (container == kept.container)


@drawn(40)
@given(VALUES["number"], VALUES["number"])
def test_sqlite_finds_the_numbers_of_a_series(number: Any, elsewhere: Any) -> None:
    query = f"SELECT {NUMBERED_SQL} FROM (SELECT ?3 AS words)"
    for letters in (number.letters, elsewhere.letters):
        (found,) = DB.execute(query, (*number_bounds(letters), NUMBER_WORDS.write(number))).fetchone()
        assert bool(found) is (letters == number.letters)


def test_a_prefix_with_a_hyphen_is_counted_too() -> None:
    """Settings of earlier versions could have one."""
    words = NUMBER_WORDS.write(ItemNumber("A-BA", 12))
    assert DB.execute(f"SELECT {COUNT_SQL} FROM (SELECT ? AS words)", (words,)).fetchone() == (12,)
    assert NUMBER_WORDS.read(words) == ItemNumber("A-BA", 12)


@drawn(40)
@given(st.lists(VALUES["number"], min_size=2, max_size=8))
def test_sqlite_puts_numbers_in_order(numbers: list[Any]) -> None:
    """TRA-9999 before TRA-10000, series by series; letters by their code (SQLite's BINARY collation)."""
    words = [NUMBER_WORDS.write(number) for number in numbers]
    rows = " UNION ALL ".join("SELECT ? AS words" for _ in words)
    found = [row[0] for row in DB.execute(f"SELECT words FROM ({rows}) ORDER BY {BY_NUMBER_SQL}", words)]
    wanted = sorted(numbers, key=lambda number: (f"{number.letters}-", len(NUMBER_WORDS.write(number)), number.count))
    assert found == [NUMBER_WORDS.write(number) for number in wanted]
