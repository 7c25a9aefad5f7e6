"""What is found by its words, and by the days that they were understood as (our own contract)."""

import sqlite3
from collections.abc import Callable, Iterator
from contextlib import closing
from pathlib import Path

import pytest
from tests.every_row import every_row

from boxlore.core.statements import Kind, Subject
from boxlore.store import schema
from boxlore.tasks.collection.opening import Collection, open_collection
from boxlore.tasks.telling.finding import found, near
from boxlore.tasks.telling.statements import Teller, Telling
from boxlore.tasks.telling.undoing import Done, Steps

TOLD = (
    "12 May 1952",
    "the summer of '52",
    "in the early fifties",
    "before 1950",
    "1961",
    "when the roof leaked",
    "3/4/1952",
    "the nineteen-fifties",
)
"""The dates of TRA-0001 to TRA-0008, as they were told. The seventh may be of March or of April."""

ROWS = [
    ("1952", [1, 7, 2]),
    ("the year 1952", [7, 1, 2]),
    ("May 1952", [1]),
    ("summer 1952", [2]),
    ("12.5.1952", [1]),
    ("1950s", [3, 8, 7, 1, 2]),
    ("the fifties", [8, 3, 7, 1, 2]),
    ("about 1961", [5]),
    ("the sixties", [5]),
    ("1930s", []),
    ("after 1940", []),
    ("roof", [6]),
    ("when the roof leaked", [6]),
    ("52", [2]),
    (" ", []),
]
"""What is asked, the items that are found."""


@pytest.fixture
def collection(bare: Callable[[int], Path]) -> Iterator[Collection]:
    """TRA-0001 and on, with a date each, and a ninth that was taken back."""
    with open_collection(bare(9)) as collection:
        ids = dict(collection.store.items())
        for at, words in enumerate((*TOLD, "1952"), 1):
            act = collection.act("told")
            Teller(collection).add(act, Subject(Kind.ITEM, ids[f"TRA-{at:04d}"]), "date", words, Telling())
            act.done()
        Steps(collection).withdraw(Done(act.id, "the ninth", ""))
        yield collection


@every_row(("asked", "items"), ROWS)
def test_a_date_finds_what_was_understood_as_one_within_it(
    collection: Collection, asked: str, items: list[int]
) -> None:
    assert [int(hit.number[-4:]) for hit in found(collection, asked)] == items


def test_a_collection_of_older_tables_that_is_only_read_is_searched_as_well(collection: Collection) -> None:
    with closing(sqlite3.connect(collection.store.path)) as db:
        db.executescript(f"DROP INDEX reading_days; PRAGMA user_version = {schema.DAYS_FROM - 1};")
        with open_collection(collection.folder, write=False) as older:
            assert [hit.number for hit in found(older, "1961")] == ["TRA-0005"]
        assert schema.version_of(db) == schema.DAYS_FROM - 1


def test_no_more_is_found_than_was_asked_for(collection: Collection) -> None:
    assert [hit.words for hit in found(collection, "1952", 1)] == ["12 May 1952"]


@every_row(
    ("asked", "meant"),
    [
        ("roff", ["roof"]),
        ("Roof leakde", ["roof leaked"]),
        ("somer", []),
        ("sumer fifties", ["summer fifties"]),
        ("zeppelin", []),
        ("?!", []),
        ("roof", []),
    ],
)
def test_a_slip_is_offered_as_it_was_told(collection: Collection, asked: str, meant: list[str]) -> None:
    assert near(collection, asked) == meant
