"""The time log's arithmetic. Rules of our own (no outside source)."""

import pytest
from tests.every_row import every_row

from boxlore.core.sitting.time_log import (
    Out,
    Passage,
    Recording,
    clock_of,
    heard_in,
    is_closed,
    moment_of,
    outs,
    within,
)


def test_an_item_is_out_until_the_next() -> None:
    assert outs([(0, "a"), (500, "b"), (900, "b"), (1200, "a")], 2000) == [
        Out("a", 0, 500),
        Out("b", 500, 1200),
        Out("a", 1200, 2000),
    ]
    assert outs([], 5) == []
    assert outs([(7, "a")], 3) == [Out("a", 7, 8)]


FIRST, SECOND = Recording("1.wav", -2000, 10_000), Recording("2.wav", 15_000)


@pytest.mark.parametrize(
    ("moment", "where"),
    [(-3000, None), (0, (FIRST, 2000)), (8000, (FIRST, 10_000)), (8001, None), (15_000, (SECOND, 0))],
)
def test_a_moment_is_heard_in_one_recording(moment: int, where: tuple[Recording, int] | None) -> None:
    assert heard_in([SECOND, FIRST], moment) == where


def test_a_recording_of_unknown_length_runs_until_the_next() -> None:
    one, two = Recording("1.m4a", 0), Recording("2.m4a", 5000)
    assert within(one, [one, two], 9000) == (0, 5000)
    assert within(two, [one, two], 9000) == (5000, 9000)
    assert within(FIRST, [FIRST, SECOND], 90_000) == (-2000, 8000)


def test_a_passage_closes_what_it_touches() -> None:
    closed = [Passage(1000, 2000)]
    assert [is_closed(closed, at, at) for at in (999, 1000, 2000, 2001)] == [False, True, True, False]
    assert is_closed(closed, 0, 5000)


@pytest.mark.parametrize(
    ("text", "milliseconds"), [("12", 12_000), ("4:12", 252_000), ("1:04:12.5", 3_852_500), ("0:00,25", 250)]
)
def test_moments_are_read(text: str, milliseconds: int) -> None:
    assert moment_of(text) == milliseconds


@every_row("text", ["", "x", "1:", "1:60", "1:60:00", "-3", "1:2:3:4", "1.x", "٣"])
def test_what_is_no_moment_is_refused(text: str) -> None:
    with pytest.raises(ValueError):
        moment_of(text)


def test_a_citation_reads_as_a_clock() -> None:
    assert [clock_of(at) for at in (0, 252_999, 3_600_000, -5)] == ["0:00:00", "0:04:12", "1:00:00", "0:00:00"]
