"""WebVTT chapters (W3C WebVTT: The Web Video Text Tracks Format): one cue to each item, with its title.

Rules kept: the file begins with WEBVTT and a blank line (4.1); a cue has an identifier, its times, and one line of
text (4.1, chapter title text); a cue ends after it starts, and none starts before the one above it (4.1); `&`, `<`
and `>` in text are escaped (4.2.2), so no text holds an arrow.
"""

from collections.abc import Iterable
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Chapter:
    """A stretch of a recording, in milliseconds from its own beginning, and its title."""

    start: int
    end: int
    title: str
    name: str = ""
    """The cue's identifier: an item's number."""


def timestamp(milliseconds: int) -> str:
    """`00:04:12.250` (WebVTT 4.1, timestamp); more than 99 hours have more digits."""
    rest = max(milliseconds, 0)
    return f"{rest // 3_600_000:02d}:{rest // 60_000 % 60:02d}:{rest // 1000 % 60:02d}.{rest % 1000:03d}"


def write_chapters(chapters: Iterable[Chapter], note: str = "") -> str:
    """The file's text. Chapters come in the order of their starts."""
    blocks = ["WEBVTT"]
    if note:
        blocks.append("NOTE\n" + _escaped(note))
    for chapter in sorted(chapters, key=lambda one: one.start):
        start, end = max(chapter.start, 0), max(chapter.end, chapter.start + 1, 1)
        head = f"{_escaped(chapter.name)}\n" if chapter.name else ""
        blocks.append(f"{head}{timestamp(start)} --> {timestamp(end)}\n{_escaped(chapter.title) or '-'}")
    return "\n\n".join(blocks) + "\n"


def _escaped(words: str) -> str:
    line = " ".join("".join(letter if letter.isprintable() else " " for letter in words).split())
    return line.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;")
