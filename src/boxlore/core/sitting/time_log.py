"""The time log of a sitting: which item was looked at when, and where in a recording a moment is heard.

All times are whole milliseconds since the beginning of the sitting, by a clock that only goes forward. One moment that
is heard in a recording (a clap) tells where the recording began. A sitting may have several recordings, for a
telephone call can split one.

Example: a recording with `start` 60_000 began one minute into the sitting; the moment 75_000 is heard at 0:15 in it.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from boxlore.core.fields.sittings import Passage


@dataclass(frozen=True, slots=True)
class Recording:
    """A sound file: `start` is the time in the sitting at which it begins (it may be below 0), `length` how long it
    is (0 if that is not known)."""

    path: str
    start: int
    length: int = 0


@dataclass(frozen=True, slots=True)
class Out:
    """An item was looked at from `start` to `end`."""

    item: str
    start: int
    end: int


def outs(shown: Iterable[tuple[int, str]], end: int) -> list[Out]:
    """From (moment, item id) of each showing, and the end of the sitting: from when to when each item was looked at.

    An item that is shown twice in a row is one stretch. Each stretch lasts at least a millisecond.
    """
    stretches: list[Out] = []
    for at, item in sorted(shown, key=lambda showing: showing[0]):
        if stretches and stretches[-1].item == item:
            continue
        if stretches:
            stretches[-1] = Out(stretches[-1].item, stretches[-1].start, max(at, stretches[-1].start + 1))
        stretches.append(Out(item, at, at + 1))
    if stretches:
        stretches[-1] = Out(stretches[-1].item, stretches[-1].start, max(end, stretches[-1].start + 1))
    return stretches


def heard_in(recordings: Sequence[Recording], moment: int) -> tuple[Recording, int] | None:
    """The recording in which a moment is heard, and the time in that recording; None if no recording ran then."""
    started = [recording for recording in recordings if recording.start <= moment]
    if not started:
        return None
    last = max(started, key=lambda recording: recording.start)
    if last.length and moment > last.start + last.length:
        return None
    return last, moment - last.start


def within(recording: Recording, recordings: Sequence[Recording], end: int) -> tuple[int, int]:
    """The moments of the sitting at which a recording begins and ends.

    One of unknown length ends where the next begins, or at the `end` of the sitting.
    """
    later = [following.start for following in recordings if following.start > recording.start]
    last = recording.start + recording.length if recording.length else min(later, default=max(end, recording.start + 1))
    return recording.start, last


def is_closed(passages: Iterable[Passage], start: int, end: int) -> bool:
    """Whether the stretch from `start` to `end` touches a closed passage."""
    return any(passage.start <= end and start <= passage.end for passage in passages)


def clock_of(milliseconds: int) -> str:
    """A time as `0:04:12`, the way it stands in a citation."""
    seconds = max(milliseconds, 0) // 1000
    return f"{seconds // 3600}:{seconds // 60 % 60:02d}:{seconds % 60:02d}"


def moment_of(text: str) -> int:
    """Milliseconds of `12` (seconds), `4:12` or `1:04:12.5`; a comma may stand for the point. Raises ValueError."""
    parts = text.strip().replace(",", ".").split(":")
    if not 1 <= len(parts) <= 3 or any(not part.isascii() or not part.isdigit() for part in parts[:-1]):
        raise ValueError(text)
    last = parts[-1]
    whole, _, fraction = last.partition(".")
    if not (whole.isascii() and whole.isdigit() and (not fraction or (fraction.isascii() and fraction.isdigit()))):
        raise ValueError(text)
    if len(parts) > 1 and (int(whole) > 59 or (len(parts) == 3 and int(parts[1]) > 59)):
        raise ValueError(text)
    seconds = int(whole)
    for size, part in zip((60, 3600), reversed(parts[:-1]), strict=False):
        seconds += size * int(part)
    return seconds * 1000 + round(float(f"0.{fraction or 0}") * 1000)
