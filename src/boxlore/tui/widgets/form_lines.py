"""The lines of a form that are more than free words: one of a few choices, and the path of a folder or file."""

import os
import time
from collections.abc import Callable, Sequence
from pathlib import Path

from textual import events

from boxlore.tui.widgets.text_input import Words

MOST = 200
"""Names of one folder that are looked through for a completion; a folder of more is completed by more letters."""


PAUSE = 1.0
"""Seconds after which what was typed into choices is over, and a letter begins anew."""


class ChoiceLine(Words):
    """Shows one of a few labels. Left, Right and Space change it; letters choose the label that begins with them. Words
    typed here by mistake, with which no label begins, leave it as it was."""

    def __init__(self, labels: Sequence[str], text: str = "") -> None:
        super().__init__(text=text if text in labels else labels[0])
        self._labels = list(labels)
        self._typed, self._typed_at, self._before = "", 0.0, self.text

    async def _on_key(self, event: events.Key) -> None:
        event.stop()
        event.prevent_default()
        now = time.monotonic()
        if now - self._typed_at > PAUSE:
            self._typed, self._before = "", self.text
        if event.key in ("left", "right") or (event.key == "space" and not self._typed):
            self._typed = ""
            self._turn(-1 if event.key == "left" else 1)
        elif (letter := event.character) and letter.isprintable():
            self._typed, self._typed_at = self._typed + letter, now
            if not self._begin_with(self._typed):
                self.load(self._before)

    async def _on_paste(self, event: events.Paste) -> None:
        event.stop()
        event.prevent_default()
        self._begin_with(event.text.strip())

    def _turn(self, by: int) -> None:
        at = self._labels.index(self.text) + by if self.text in self._labels else 0
        self.load(self._labels[at % len(self._labels)])

    def _begin_with(self, typed: str) -> bool:
        """Show the first label that begins with these letters; False if none does."""
        label = next((label for label in self._labels if label.casefold().startswith(typed.casefold())), None)
        if label is None:
            return False
        self.load(label)
        return True


class PathLine(Words):
    """A path that is completed from what is on the disk. `folders` leaves files out; `seen` is told what may follow."""

    def __init__(self, text: str, *, base: Path, folders: bool, seen: Callable[[list[str]], None]) -> None:
        super().__init__(text=text, heard=lambda _: seen(self.completions()))
        self._base, self._folders = base, folders

    @property
    def path(self) -> Path:
        """The path that is meant: `~` is home, a relative one begins at the base."""
        return typed_path(self.text, self._base)

    def completions(self) -> list[str]:
        """What the words may go on to, in the order of the names; a folder ends in a slash."""
        head, begun = _parted(self.text)
        where = typed_path(head, self._base)
        try:
            with os.scandir(where) as entries:
                rows = [(entry.name, entry.is_dir()) for entry, _ in zip(entries, range(MOST), strict=False)]
        except OSError:
            return []
        rows = [(name, is_dir) for name, is_dir in rows if is_dir or not self._folders]
        shown = [(name, is_dir) for name, is_dir in rows if not name.startswith(".") or begun.startswith(".")]
        fits = sorted((name, is_dir) for name, is_dir in shown if name.casefold().startswith(begun.casefold()))
        return [f"{head}{name}{'/' if is_dir else ''}" for name, is_dir in fits]

    def complete(self) -> bool:
        """Go on as far as all completions agree. False if that is no letter further."""
        choices = self.completions()
        if not choices:
            return False
        first, last = min(choices), max(choices)
        agreed = first[
            : next((at for at, pair in enumerate(zip(first, last, strict=False)) if pair[0] != pair[1]), len(first))
        ]
        if len(agreed) <= len(self.text) and agreed.casefold() == self.text[: len(agreed)].casefold():
            return False
        self.load(agreed)
        self._heard(self)
        return True


class NameLine(Words):
    """A name that is completed from those known. `known` gives the names that begin as a text; `seen` is told them."""

    def __init__(self, text: str, *, known: Callable[[str], list[str]], seen: Callable[[list[str]], None]) -> None:
        super().__init__(text=text, heard=lambda _: seen(self.completions()))
        self._known = known

    def completions(self) -> list[str]:
        """The names that the words may go on to; none while nothing is typed, and none but the words themselves."""
        return [name for name in self._known(self.text) if name != self.text] if self.text.strip() else []

    def complete(self) -> bool:
        """Take the first of them. False if there is none."""
        if not (names := self.completions()):
            return False
        self.load(names[0])
        self._heard(self)
        return True


def typed_path(text: str, base: Path = Path()) -> Path:
    """The path that is meant by what was typed: `~` is home, a relative one begins at `base`."""
    return base / os.path.expanduser(text.strip())


def _parted(text: str) -> tuple[str, str]:
    """The words up to and with the last slash, and what follows it. `~` alone is home."""
    if text == "~":
        return "~/", ""
    head, slash, begun = text.replace("\\", "/").rpartition("/")
    return head + slash, begun
