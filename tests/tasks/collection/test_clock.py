"""A machine's clock that cannot be right is said and not followed (rules of our own).

2038-01-19 03:14:07 UTC is where a clock of 32 bits ends (a signed POSIX time_t); 1970-01-01 is where it begins.
"""

import time
from datetime import date, timedelta
from pathlib import Path

import pytest

from boxlore.core.errors import WrongUse
from boxlore.core.statements import Kind
from boxlore.tasks.collection.clock import Clock
from boxlore.tasks.collection.opening import open_collection, start
from boxlore.tasks.collection.settings import Settings

NEWEST = "2026-11-25T10:15:30.250Z"
Y2038, Y2027, Y1970 = (2**31 - 1) * 10**9, 1_800_000_000 * 10**9, 0
"""Nanoseconds since 1970."""


@pytest.fixture
def machine(monkeypatch: pytest.MonkeyPatch):  # type: ignore[no-untyped-def]
    """Sets the machine's clock."""
    return lambda nanoseconds: monkeypatch.setattr(time, "time_ns", lambda: nanoseconds)


def test_a_clock_far_ahead_is_not_followed_and_one_set_right_is(machine) -> None:  # type: ignore[no-untyped-def]
    machine(Y2038)
    clock = Clock(NEWEST)
    assert [clock.now(), clock.now()] == ["2026-11-25T10:15:30.251Z", "2026-11-25T10:15:30.252Z"]
    assert clock.today() == date(2026, 11, 25)
    assert clock.fault().startswith("This machine's clock says 2038-01-19, more than 10 years after the last words")
    machine(Y2027)
    assert clock.now() == "2027-01-15T08:00:00.000Z" and not clock.fault()


def test_a_new_collection_does_not_follow_it_either(machine) -> None:  # type: ignore[no-untyped-def]
    machine(Y2038)
    clock = Clock()
    assert clock.now() == "2026-11-01T00:00:00.001Z" and clock.today() <= date(2026, 11, 1)


def test_the_keeper_may_say_that_it_is_right(machine) -> None:  # type: ignore[no-untyped-def]
    machine(Y2038)
    clock = Clock(NEWEST, right_on="2038-01-19")
    assert clock.now() == "2038-01-19T03:14:07.000Z" and not clock.fault()


def test_a_clock_that_is_behind_is_said(machine) -> None:  # type: ignore[no-untyped-def]
    machine(Y1970)
    clock = Clock(NEWEST)
    assert clock.now() == "2026-11-25T10:15:30.251Z"
    assert "1970-01-01, and the last words here are of 2026-11-25" in clock.fault()
    assert Clock(NEWEST, date(2026, 12, 24)).today() == date(2026, 12, 24)


def test_it_is_said_at_each_opening_and_the_log_comes_back(machine, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    folder = tmp_path / "tamm_family"
    machine(Y2027)
    start(folder, Settings(title="Tamm and Rourke", prefix="TR"))
    stamps = []
    for now, said in ((Y2038, True), (Y2027 + 10**12, False)):
        machine(now)
        with open_collection(folder) as collection:
            assert any("clock says" in words for words in collection.unsaid) is said
            act = collection.act("told")
            stamps.append(act.state(act.new(Kind.ITEM), "number", f"TRA-000{len(stamps) + 1}").recorded_at)
            act.done()
    assert stamps[0] < stamps[1] and stamps[1].startswith("2027-01-15")


@pytest.mark.parametrize("words", ["tomorrow", "2038", "19.1.2038", "20380119"])
def test_a_day_that_is_none(tmp_path: Path, words: str) -> None:
    folder = tmp_path / "tamm_family"
    start(folder, Settings(title="Tamm and Rourke", prefix="TR"))
    (folder / "boxlore.toml").write_text(f'clock_right_on = "{words}"\n')
    with pytest.raises(WrongUse, match="clock_right_on"), open_collection(folder):
        pass


def test_a_day_far_ahead_is_refused() -> None:
    """By such a day nobody living now lives any more, and an output for outside would name everybody (our own rule)."""
    with pytest.raises(WrongUse, match="2126-11-27 is more than a year ahead"):
        Clock(on_day=date(2126, 11, 27))
    ahead = date.today() + timedelta(days=300)
    assert Clock(on_day=ahead).today() == ahead
