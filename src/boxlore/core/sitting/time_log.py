"""The time log of a sitting: which item was out when, what was said then, and where in a recording that is heard.

All times are whole milliseconds from the beginning of the sitting, by a clock that only goes forward. A recording
lies on that line by one moment heard in it (a clap); a telephone call parts one into several.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Recording:
    """A sound file: `start` is where its first moment lies in the sitting, `length` its own (0 if not known)."""

    path: str
    start: int
    length: int = 0


@dataclass(frozen=True, slots=True)
class Passage:
    """A stretch of the sitting that is closed for outside, and why."""

    start: int
    end: int
    why: str = ""


@dataclass(frozen=True, slots=True)
class Out:
    """An item was out from `start` to `end`."""

    item: str
    start: int
    end: int


def outs(shown: Iterable[tuple[int, str]], end: int) -> list[Out]:
    """(moment, item) of each showing → how long each was out; the same item shown again at once is one stretch."""
    found: list[Out] = []
    for at, item in sorted(shown, key=lambda one: one[0]):
        if found and found[-1].item == item:
            continue
        if found:
            found[-1] = Out(found[-1].item, found[-1].start, max(at, found[-1].start + 1))
        found.append(Out(item, at, at + 1))
    if found:
        found[-1] = Out(found[-1].item, found[-1].start, max(end, found[-1].start + 1))
    return found


def heard_in(recordings: Sequence[Recording], moment: int) -> tuple[Recording, int] | None:
    """The recording that a moment is heard in, and where in it; None between recordings and before the first."""
    started = [one for one in recordings if one.start <= moment]
    if not started:
        return None
    last = max(started, key=lambda one: one.start)
    if last.length and moment > last.start + last.length:
        return None
    return last, moment - last.start


def within(recording: Recording, recordings: Sequence[Recording], end: int) -> tuple[int, int]:
    """From and to which moment of the sitting a recording runs; one of unknown length runs until the next."""
    later = [one.start for one in recordings if one.start > recording.start]
    last = recording.start + recording.length if recording.length else min(later, default=max(end, recording.start + 1))
    return recording.start, last


def is_closed(passages: Iterable[Passage], start: int, end: int) -> bool:
    """Whether a stretch touches a closed passage."""
    return any(one.start <= end and start <= one.end for one in passages)


def clock_of(milliseconds: int) -> str:
    """`0:04:12`, as it stands in a citation."""
    seconds = max(milliseconds, 0) // 1000
    return f"{seconds // 3600}:{seconds // 60 % 60:02d}:{seconds % 60:02d}"


def moment_of(text: str) -> int:
    """`12`, `4:12`, `1:04:12.5` → milliseconds. Raises ValueError."""
    parts = text.strip().replace(",", ".").split(":")
    if not 1 <= len(parts) <= 3 or any(not part.isascii() or not part.isdigit() for part in parts[:-1]):
        raise ValueError(text)
    last = parts[-1]
    whole, _, rest = last.partition(".")
    if not (whole.isascii() and whole.isdigit() and (not rest or (rest.isascii() and rest.isdigit()))):
        raise ValueError(text)
    if len(parts) > 1 and (int(whole) > 59 or (len(parts) == 3 and int(parts[1]) > 59)):
        raise ValueError(text)
    seconds = int(whole)
    for size, part in zip((60, 3600), reversed(parts[:-1]), strict=False):
        seconds += size * int(part)
    return seconds * 1000 + round(float(f"0.{rest or 0}") * 1000)
