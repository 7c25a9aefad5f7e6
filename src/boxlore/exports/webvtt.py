"""WebVTT chapters (W3C WebVTT: The Web Video Text Tracks Format) of a recording: one cue for each item told of.

    file = "WEBVTT" *(blank-line cue)                         (4.1)
    cue  = [identifier newline] start " --> " end newline title

A cue ends after it starts, and none starts before the one above it (4.1). `&`, `<` and `>` are escaped (4.2.2), so no
text can hold an arrow.
"""

from collections.abc import Iterable
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Chapter:
    """A stretch of a recording, in milliseconds from the recording's beginning, with its title."""

    start: int
    end: int
    title: str
    name: str = ""
    """The cue's identifier: an item's number."""


def timestamp(milliseconds: int) -> str:
    """Milliseconds as `00:04:12.250` (WebVTT 4.1, timestamp); the hours have more digits from 100 on."""
    elapsed = max(milliseconds, 0)
    return f"{elapsed // 3_600_000:02d}:{elapsed // 60_000 % 60:02d}:{elapsed // 1000 % 60:02d}.{elapsed % 1000:03d}"


def write_chapters(chapters: Iterable[Chapter], note: str = "") -> str:
    """The text of the file, with the chapters sorted by their starts and `note` as a comment."""
    blocks = ["WEBVTT"]
    if note:
        blocks.append("NOTE\n" + _escaped(note))
    for chapter in sorted(chapters, key=lambda chapter: chapter.start):
        start, end = max(chapter.start, 0), max(chapter.end, chapter.start + 1, 1)
        head = f"{_escaped(chapter.name)}\n" if chapter.name else ""
        blocks.append(f"{head}{timestamp(start)} --> {timestamp(end)}\n{_escaped(chapter.title) or '-'}")
    return "\n\n".join(blocks) + "\n"


def _escaped(words: str) -> str:
    """The words on one line, escaped for WebVTT."""
    line = " ".join("".join(letter if letter.isprintable() else " " for letter in words).split())
    return line.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;")
