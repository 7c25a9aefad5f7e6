"""Which backups stay, with a fixed clock (the spans are ours: common practice, no source)."""

from datetime import UTC, date, datetime, timedelta

import pytest

from boxlore.store.backups_retention import Rolled, to_drop

NOW = datetime(2026, 11, 25, 12, 0, tzinfo=UTC)
"""A Wednesday (ISO 8601: day 3 of week 48)."""

PLENTY = 1 << 40


def backups(*made: str) -> list[Rolled]:
    """`2026-11-25T10:15`, or with an exclamation mark before it one that was made before something risky."""
    return [
        Rolled(words, datetime.fromisoformat(words.lstrip("!")).replace(tzinfo=UTC), words.startswith("!"), 100)
        for words in made
    ]


TABLE = [
    ("all of the last day stay", ["2026-11-25T11:59", "2026-11-25T11:58", "2026-11-24T12:01"], []),
    ("the last of a day stays", ["2026-11-25T11:00", "2026-11-23T17:00", "2026-11-23T09:00"], ["2026-11-23T09:00"]),
    (
        "a day that is not over everywhere is one day",
        ["2026-11-24T13:00", "2026-11-24T11:00"],
        ["2026-11-24T11:00"],
    ),
    (
        "before something risky stays for a fortnight",
        ["2026-11-25T11:00", "2026-11-12T17:00", "!2026-11-12T09:00", "!2026-11-11T09:00", "2026-11-11T10:00"],
        ["2026-11-11T10:00", "!2026-11-11T09:00"],
    ),
    (
        "after a fortnight the last of a week stays (Sunday is its last day, ISO 8601)",
        ["2026-11-25T11:00", "2026-11-08T20:00", "2026-11-07T20:00", "2026-11-02T08:00", "2026-11-01T23:00"],
        ["2026-11-07T20:00", "2026-11-02T08:00"],
    ),
    (
        "weeks are those of ISO 8601: 2025-W01 begins on 30 December 2024",
        ["2025-01-20T09:00", "2025-01-03T09:00", "2024-12-30T09:00", "2024-12-29T09:00"],
        ["2024-12-30T09:00"],
    ),
    (
        "after a quarter the last of a month stays",
        ["2026-11-25T11:00", "2026-08-25T09:00", "2026-08-23T09:00", "2026-07-31T09:00", "2026-07-01T09:00"],
        ["2026-08-23T09:00", "2026-07-01T09:00"],
    ),
    (
        "after two years the last of a year stays",
        ["2026-11-25T11:00", "2024-10-31T09:00", "2024-05-01T09:00", "2023-12-31T09:00", "2023-01-01T09:00"],
        ["2024-05-01T09:00", "2023-01-01T09:00"],
    ),
    ("the newest stays however old it is", ["2019-03-01T09:00"], []),
    ("a clock that stood wrong drops nothing of the day", ["2038-01-19T03:14", "2026-11-25T11:00"], []),
]


@pytest.mark.parametrize(("made", "dropped"), [row[1:] for row in TABLE], ids=[row[0] for row in TABLE])
def test_by_age(made: list[str], dropped: list[str]) -> None:
    now = NOW if made[0] > "2026" or len(made) == 1 else datetime(2025, 1, 20, 12, tzinfo=UTC)
    assert sorted(backup.name for backup in to_drop(backups(*made), now, PLENTY)) == sorted(dropped)


def test_three_years_of_sittings_leave_a_way_back_from_every_time() -> None:
    """A sitting each evening, the rule applied after each: whatever is looked for is there, and it is not many."""
    kept: list[Rolled] = []
    first = datetime(2023, 11, 1, 20, tzinfo=UTC)
    for day in range(3 * 365):
        now = first + timedelta(days=day)
        kept += backups(f"{now:%Y-%m-%dT%H:%M}")
        dropped = to_drop(kept, now, PLENTY)
        kept = [backup for backup in kept if backup not in dropped]
        days = {backup.at.date() for backup in kept}
        weeks = {backup.at.isocalendar()[:2] for backup in kept}
        months = {(backup.at.year, backup.at.month) for backup in kept}
        assert days >= {(now - timedelta(days=back)).date() for back in range(min(day + 1, 14))}
        assert weeks >= {(now - timedelta(weeks=back)).isocalendar()[:2] for back in range(min(day // 7 + 1, 13))}
        assert months >= _months(first.date(), now.date())
        assert len(kept) <= 14 + 13 + 24 + 1
    assert {backup.at.year for backup in kept} == {2023, 2024, 2025, 2026}


def _months(first: date, today: date) -> set[tuple[int, int]]:
    """This month and the 23 before it, so far as there were sittings."""
    this = today.year * 12 + today.month - 1
    begun = first.year * 12 + first.month - 1
    return {(month // 12, month % 12 + 1) for month in range(max(this - 23, begun), this + 1)}


BY_SIZE = [
    (400, []),
    (399, ["2026-11-25T11:00"]),
    (299, ["2026-11-25T11:58", "2026-11-25T11:00"]),
    (199, ["2026-11-25T11:58", "2026-11-25T11:00", "2026-11-24T20:00"]),
    (0, ["2026-11-25T11:58", "2026-11-25T11:00", "2026-11-24T20:00"]),
]


@pytest.mark.parametrize(("room", "dropped"), BY_SIZE)
def test_by_size_the_closest_goes_first_and_the_newest_never(room: int, dropped: list[str]) -> None:
    """100 bytes each. 11:00 is an hour old, and 16 hours lie between its neighbours; 11:58 is 2 minutes old, and 59
    lie between; the oldest is the last to go."""
    made = backups("2026-11-25T11:59", "2026-11-25T11:58", "2026-11-25T11:00", "2026-11-24T20:00")
    assert sorted(backup.name for backup in to_drop(made, NOW, room)) == sorted(dropped)
