"""The rolling rule: which backups stay, by their age, and which go first where they take too much room.

Common practice, no source; the spans are ours. All of the last day stay, then one a day for a fortnight, one a
week for a quarter, one a month for two years, one a year for ever; a backup made before something risky stays for
the fortnight. Days, weeks (ISO 8601), months and years are those of UTC. Of each, the last one stays: what it was
when the day was over. The newest of all stays whatever happens.

Where the rest still takes more room than it may, the one goes first whose neighbours stand closest for its age. So
the backups thin out towards the past, and the oldest is the last to go.
"""

from collections.abc import Callable, Hashable, Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta

MINUTE = timedelta(minutes=1)


@dataclass(frozen=True, slots=True)
class Rolled:
    """One backup as the rule sees it: its name, when it was made (UTC), whether before something risky, its bytes.

    `newer_than` counts the others that hold less of the log; it goes before the time, which a wrong clock may have set.
    """

    name: str
    at: datetime
    risky: bool
    size: int
    newer_than: int = 0


def _day(at: datetime) -> Hashable:
    return at.date()


def _week(at: datetime) -> Hashable:
    return tuple(at.isocalendar())[:2]


def _month(at: datetime) -> Hashable:
    return at.year, at.month


SPANS: tuple[tuple[timedelta, Callable[[datetime], Hashable]], ...] = (
    (timedelta(days=14), _day),
    (timedelta(weeks=13), _week),
    (timedelta(days=730), _month),
    (timedelta.max, lambda at: at.year),
)
"""Up to which age one of each is kept; ALL and RISKY are kept whole."""

ALL = timedelta(days=1)
RISKY = timedelta(days=14)


def to_drop(backups: Iterable[Rolled], now: datetime, room: int) -> list[Rolled]:
    """The backups that the rule lets go of at `now`, where all of them may take `room` bytes."""
    newest_first = sorted(backups, key=lambda backup: (backup.newer_than, backup.at, backup.name), reverse=True)
    kept = [
        backup
        for at, backup in enumerate(newest_first)
        if at == 0 or _stays(backup, newest_first[:at], abs(now - backup.at))
    ]
    while len(kept) > 1 and sum(backup.size for backup in kept) > room:
        kept.remove(_closest(kept, now))
    return [backup for backup in newest_first if backup not in kept]


def _stays(backup: Rolled, newer: Sequence[Rolled], age: timedelta) -> bool:
    if age < (RISKY if backup.risky else ALL):
        return True
    period = next(period for longest, period in SPANS if age < longest)
    return period(backup.at) not in {period(later.at) for later in newer}


def _closest(newest_first: Sequence[Rolled], now: datetime) -> Rolled:
    """The backup between whose neighbours the least time lies, for its age; the oldest one has none behind it."""
    between = zip(newest_first, newest_first[1:], newest_first[2:], strict=False)
    gaps = [((newer.at - older.at) / max(abs(now - middle.at), MINUTE), middle) for newer, middle, older in between]
    return min(gaps, key=lambda gap: gap[0])[1] if gaps else newest_first[-1]
