"""The editor in which words are typed. Every edit is done at once and in order, and `heard` is called before it is
drawn.

Textual runs a binding such as Backspace only after every parent widget has been offered the key. In fast typing it
would then act late, on other words. So the editing keys are handled here, from a table.
"""

import asyncio
import unicodedata
from collections.abc import Callable, Container
from typing import Any

from textual import events
from textual.message_pump import MessagePump
from textual.widgets import TextArea

EDITS = {  # key -> the action of Textual's TextArea
    "backspace": "delete_left",
    "ctrl+h": "delete_left",
    "delete": "delete_right",
    "ctrl+w": "delete_word_left",
    "ctrl+backspace": "delete_word_left",
    "alt+backspace": "delete_word_left",
    "ctrl+delete": "delete_word_right",
    "ctrl+u": "delete_to_start_of_line",
    "ctrl+k": "delete_to_end_of_line",
    "left": "cursor_left",
    "right": "cursor_right",
    "ctrl+left": "cursor_word_left",
    "ctrl+right": "cursor_word_right",
    "home": "cursor_line_start",
    "end": "cursor_line_end",
    "ctrl+a": "cursor_line_start",
    "ctrl+e": "cursor_line_end",
    "shift+left": "cursor_left(True)",
    "shift+right": "cursor_right(True)",
    "shift+home": "cursor_line_start(True)",
    "shift+end": "cursor_line_end(True)",
    "ctrl+x": "cut",
    "ctrl+c": "copy",
    "ctrl+v": "paste",
}


def _nothing(words: "Words") -> None:
    """The default callback: does nothing."""


async def drained(pump: MessagePump) -> None:
    """Wait until a widget or a screen has handled every key that was handed on to it so far."""
    reached = asyncio.Event()
    if pump.call_later(reached.set):
        await reached.wait()


class Words(TextArea):
    """An editor of one or more lines. `heard` is called after each change, `left` when it loses the focus; of the
    keys `bound` that are letters, a binding of the screen decides whether they are typed (with `put`)."""

    DEFAULT_CSS = """
    Words { height: auto; max-height: 8; border: none; padding: 0 1; background: $field; color: $foreground; }
    Words:focus { border: none; background: $field-on; }
    Words .text-area--cursor-line { background: transparent; }
    Words .text-area--placeholder { color: $faint; }
    """

    def __init__(
        self,
        *,
        lines: int = 1,
        heard: Callable[["Words"], None] = _nothing,
        left: Callable[["Words"], None] = _nothing,
        text: str = "",
        bound: Container[str] = (),
        id: str | None = None,
    ) -> None:
        super().__init__(text, id=id, highlight_cursor_line=False)
        self._bound = bound
        self.lines = lines
        self.cursor_blink = False
        self._heard = heard
        self._left = left

    def check_consume_key(self, key: str, character: str | None = None) -> bool:
        """Whether a key is typed before any binding of the screen sees it."""
        return key not in self._bound and super().check_consume_key(key, character)

    def load(self, text: str) -> None:
        """Replace the words, with the cursor after them; `heard` is not called. The same words are not set anew, for a
        record is shown again after every change of it."""
        if text != self.text:
            self.load_text(text)
        self.move_cursor(self.document.end)

    def put(self, text: str) -> None:
        """Insert words at the cursor, as if they were typed."""
        self._replace_via_keyboard(text, *self.selection)
        self._heard(self)

    async def drained(self) -> None:
        """Wait until every key pressed so far has been typed in."""
        await drained(self)

    @property
    def on_first_line(self) -> bool:
        """Whether the cursor stands on the first line as drawn."""
        return self.wrapped_document.location_to_offset(self.cursor_location).y == 0

    @property
    def on_last_line(self) -> bool:
        """Whether the cursor stands on the last line as drawn."""
        return self.wrapped_document.location_to_offset(self.cursor_location).y >= self.wrapped_document.height - 1

    async def _on_key(self, event: events.Key) -> None:
        edit = EDITS.get(event.key)
        if edit is None and not _is_letter(event.character):
            event.prevent_default()
            return
        event.stop()
        event.prevent_default()
        if edit is None:
            if not self.read_only and event.character:
                self._replace_via_keyboard(event.character, *self.selection)
        else:
            await self.run_action(edit)
        self._heard(self)

    async def _on_paste(self, event: events.Paste) -> None:
        event.stop()
        event.prevent_default()
        if not self.read_only:
            self.put(clean(event.text, one_line=self.lines == 1))

    def _on_blur(self, event: events.Blur) -> None:
        self._left(self)

    def action_delete_to_end_of_line(self) -> None:
        """Delete from the cursor to the end of its line."""
        self._delete_via_keyboard(self.cursor_location, self.get_cursor_line_end_location())

    def get_content_height(self, *size: Any) -> int:
        """As many lines as the words take, but never none."""
        return max(1, super().get_content_height(*size))


def _is_letter(character: str | None) -> bool:
    """Whether a character may be typed: all but control letters. Joiners and direction marks are parts of words."""
    return bool(character) and unicodedata.category(str(character)[0]) not in ("Cc", "Cs", "Cn", "Co")


def clean(text: str, *, one_line: bool = False) -> str:
    """Pasted text without control letters. Line ends become `\\n`; with `one_line`, the lines are joined by `; `."""
    lines = text.replace("\r\n", "\n").replace("\r", "\n").expandtabs(4)
    printable = "".join(
        letter for letter in lines if letter == "\n" or unicodedata.category(letter) not in ("Cc", "Cs")
    )
    return "; ".join(line.strip() for line in printable.split("\n") if line.strip()) if one_line else printable
