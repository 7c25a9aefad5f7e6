"""A table in one test (`tests/every_row.py`) fails as its rows would have failed one by one (our own rule)."""

import inspect

import pytest
from tests.every_row import every_row, every_row_by_group

ROWS = [("Reval", 5), ("Tallinn", 6), ("Port Chalmers", 13), ("Kopli", 7)]


@every_row(("town", "letters"), ROWS)
def all_towns(town: str, letters: int) -> None:
    if town == "Kopli":
        raise LookupError("no such town")
    assert len(town) == letters


@every_row_by_group("town", {"here": ["Reval"], "there": ["Port Chalmers"]})
def by_country(town: str, tmp_path_factory: pytest.TempPathFactory) -> None:
    assert town == "Reval", tmp_path_factory


def test_every_wrong_row_is_named_with_what_came() -> None:
    with pytest.raises(pytest.fail.Exception) as failed:
        all_towns()
    said = str(failed.value)
    assert said.startswith("2 of 4 rows are wrong:")
    assert "town='Tallinn', letters=6" in said and "assert 7 == 6" in said
    assert "assert len(town) == letters" in said
    assert "town='Kopli', letters=7" in said and "LookupError: no such town" in said
    assert "Reval" not in said


def test_a_row_that_skips_or_that_raises_nothing_is_wrong() -> None:
    @every_row("number", range(3))
    def odd(number: int) -> None:
        if number == 0:
            pytest.skip("none")
        with pytest.raises(ValueError, match="1"):
            assert number == 1, "1"

    with pytest.raises(pytest.fail.Exception, match="3 of 3 rows are wrong") as failed:
        odd()
    assert "Skipped: none" in str(failed.value) and "DID NOT RAISE" in str(failed.value)


def test_a_group_is_a_test_of_its_own_and_fixtures_are_asked_for() -> None:
    assert list(inspect.signature(all_towns).parameters) == []
    assert list(inspect.signature(by_country).parameters) == ["group", "tmp_path_factory"]
    by_country(group="here", tmp_path_factory=None)
    with pytest.raises(pytest.fail.Exception, match="1 of 1 rows is wrong:\n\ntown='Port Chalmers'"):
        by_country(group="there", tmp_path_factory=None)


def test_a_table_without_rows_is_refused() -> None:
    with pytest.raises(ValueError, match="there are no rows to check town by"):
        every_row("town", [])
    for groups in ({}, {"here": ["Reval"], "there": []}):
        with pytest.raises(ValueError, match="there are no rows to check town by"):
            every_row_by_group("town", groups)


def test_the_rows_of_a_mapping_are_its_keys() -> None:
    letters = {"Reval": 5, "Tallinn": 7}
    every_row("town", letters)(lambda town: len(town) == letters[town] or pytest.fail(town))()


def test_a_row_of_another_length_is_refused() -> None:
    short = every_row(("town", "letters"), [("Reval",)])(lambda town, letters: None)
    with pytest.raises(ValueError, match="shorter"):
        short()
