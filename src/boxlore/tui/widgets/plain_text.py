"""Text on the screen, never read as markup: a name may hold brackets, and old words may hold control letters."""

import re

from textual.content import Content
from textual.widgets import Static

StyledText = str | tuple[str, str]
"""Words, or (words, style)."""


def plain(words: str) -> str:
    """Words that are safe to draw: control letters, and those that turn the direction, are drawn as `�`."""
    return words if words.isprintable() else _UNSAFE.sub("\N{REPLACEMENT CHARACTER}", words)


_UNSAFE = re.compile("[\x00-\x08\x0b-\x1f\x7f-\x9f\ud800-\udfff\u202a-\u202e\u2066-\u2069]")
"""All letters of the categories Cc, but for the tab and the new line, and Cs (Unicode Standard, 4.5), and directional
formatting (Unicode Standard Annex 9, 2): one left open would turn the rest of the line."""


class Line(Static):
    """A widget that shows one piece of text, given as parts: words, or (words, style)."""

    def __init__(self, *parts: StyledText, id: str | None = None, classes: str | None = None) -> None:
        super().__init__(content(*parts), markup=False, id=id, classes=classes)
        self._parts = parts

    def say(self, *parts: StyledText) -> None:
        """Show these parts instead. The screen is laid out again only for words that may need another room: a layout
        costs more than all else that a key does."""
        if parts != self._parts:
            self._parts = parts
            self.update(content(*parts), layout=self.styles.auto_dimensions)


def content(*parts: StyledText) -> Content:
    """The parts joined into one text of Textual's; a part is words, or (words, style)."""
    pieces = [
        Content(plain(part)) if isinstance(part, str) else Content.styled(plain(part[0]), part[1]) for part in parts
    ]
    return Content("").join(pieces)


def short(words: str, width: int) -> str:
    """Words on one line, cut to at most `width` letters; an ellipsis shows that they were cut."""
    line = " ".join(plain(words).split())
    return line if len(line) <= width else line[: max(width - 1, 0)] + "…"
