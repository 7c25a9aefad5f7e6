"""Sharp pictures in a terminal that draws them: what is sent to it, and that all of it is taken away again.

Kitty's language: “Terminal graphics protocol”; sixels: VT330/VT340 manual, chapter 14. The answers are those of kitty
0.26 and xterm 379.
"""

import io
import os
import re
from base64 import b64decode
from pathlib import Path
from typing import Any

import pytest
from PIL import Image, ImageChops, ImageStat
from tests.formats.test_sixel import drawn
from tests.tui.conftest import Terminal
from tests.tui.test_terminal_answers import KITTY, XTERM

LAST_QUESTION = b"\x1b[c"
BEGINS, ENDS = re.compile(rb"\x1b[_P]"), re.compile(rb"\x1b\\")
"""Of what is for pictures: APC or DCS, and ST (ECMA-48)."""
WIDE, HIGH = 9, 18
"""Pixels of a cell, as these answers have it."""


class Drawing(Terminal):
    """A terminal that draws pictures: it answers the program's questions, and keeps what it is sent for them."""

    def __init__(self, answers: str, folder: Path, state: Path) -> None:
        self._answers, self._rest = re.sub(r"\x1b\[6;\d+;\d+t", f"\x1b[6;{HIGH};{WIDE}t", answers).encode(), b""
        self._asked = b""
        self._open: bytearray | None = None
        self.sent: list[bytes] = []
        super().__init__(
            ["-c", str(folder), "sit", "--narrator", "Leida", "--no-viewing"],
            columns=120, rows=38, mute=True, XDG_STATE_HOME=str(state),
        )  # fmt: skip

    def letters(self, data: bytes) -> bytes:
        if not self.sent:
            self._asked += data
            if LAST_QUESTION in self._asked:
                os.write(self._tty, self._answers)
                self._asked = b""
        letters, data, self._rest = b"", self._rest + data, b""
        while data:
            if self._open is None:
                before, began, data = self._parted(data, BEGINS)
                letters += before
                self._open = bytearray(began) if began else None
            else:
                inside, ended, data = self._parted(data, ENDS)
                self._open += inside + ended
                if ended:
                    self.sent.append(bytes(self._open))
                    self._open = None
        return letters

    def _parted(self, data: bytes, sign: re.Pattern[bytes]) -> tuple[bytes, bytes, bytes]:
        """What comes before a sign, the sign, and what follows; an ESC at the end may be the beginning of one."""
        if found := sign.search(data):
            return data[: found.start()], found[0], data[found.end() :]
        self._rest = data[-1:] if data.endswith(b"\x1b") else b""
        return data[: len(data) - len(self._rest)], b"", b""

    def rest(self) -> None:
        """Read on until the program has drawn nothing for half a second."""
        drawn = -1
        while drawn != self._drawn:
            drawn = self._drawn
            with self._lock:
                self._lock.wait_for(lambda: self._drawn != drawn, 0.5)  # noqa: B023

    def kitty_picture(self) -> Image.Image | None:
        """The last picture sent whole, but for markers."""
        data, whole = b"", None
        for head, piece in (match.groups() for sent in self.sent if (match := KITTY_PIECE.fullmatch(sent))):
            data = piece if b"a=t" in head else data + piece
            if b"m=0" in head and data:
                whole, data = data, b""
        return Image.open(io.BytesIO(b64decode(whole))) if whole is not None else None

    def sixel_picture(self) -> Image.Image | None:
        """The last picture drawn in sixels."""
        last = next((sent for sent in reversed(self.sent) if sent.startswith(b"\x1bP0;1;0q")), None)
        if last is None:
            return None
        pixels = drawn(last)
        picture = Image.new("RGB", (max(x for x, _ in pixels) + 1, max(y for _, y in pixels) + 1))
        for place, hundredths in pixels.items():
            picture.putpixel(place, tuple(part * 255 // 100 for part in hundredths))
        return picture


KITTY_PIECE = re.compile(rb"\x1b_G((?:a=t,|q=2,)[^;]*);(.*?)\x1b\\", re.S)


def shows(sent: bytes) -> bool:
    """Whether this shows a picture: in sixels, or one that kitty was sent before."""
    return sent.startswith((b"\x1bP0;1;0q", b"\x1b_Ga=p"))


@pytest.mark.parametrize("language", ["kitty", "sixel"])
def test_the_picture_is_drawn_sharp_and_cleaned_away(language: str, pictured: Path, tmp_path: Path) -> None:
    window = Drawing(KITTY if language == "kitty" else XTERM, pictured, tmp_path / "state")
    got: Any = window.kitty_picture if language == "kitty" else window.sixel_picture
    try:
        # half blocks stand until the picture is sent, and are then taken away
        window.wait_for(lambda text: "Tell me about" in text and "▀" not in text and any(map(shows, window.sent)))
        assert "Gi=31" not in window.text, "no questions"
        shown = got()
        with Image.open(tmp_path / "incoming" / "harbour_f.jpg") as scan:
            assert abs(shown.width / shown.height - scan.width / scan.height) < 0.01, "its shape is kept"
            difference = ImageChops.difference(shown, scan.convert("RGB").resize(shown.size))
        assert shown.width > 400 and max(ImageStat.Stat(difference).mean) < 3  # of 255: 64 colours, and hundredths
        assert shown.width <= 120 * WIDE and shown.height <= 38 * HIGH

        def gone(sent: bytes) -> bool:
            """Taken away, in kitty's language; sixels go with the cells that are written over them."""
            return language == "sixel" or sent.startswith(b"\x1b_Ga=d")

        # a card stands alone; then it is sharp again
        before = len(window.sent)
        window.send("⟨Esc⟩")
        window.wait_for(
            lambda text: (
                "Take in" in text
                and "Tell me" not in text
                and "▀" not in text
                and any(map(gone, window.sent[before - 1 :]))
            )
        )
        before = len(window.sent)
        window.send("⟨Esc⟩")
        window.wait_for(
            lambda text: "Take in" not in text and "▀" not in text and any(map(shows, window.sent[before:]))
        )

        # typing sends nothing of it again
        window.send("The ")
        window.wait_for("The ")
        window.rest()  # else it may be a picture of the card that went, drawn late
        before = len(window.sent)
        window.send("harbour")
        window.wait_for("The harbour")
        assert not any(len(sent) > 1000 for sent in window.sent[before:])

        window.send("⟨PgDn⟩")
        window.wait_for(lambda text: "There is no scan of this photograph yet." in text and gone(window.sent[-1]))
        window.send("⟨^Q⟩")
        assert window.wait() == 0
        assert language == "sixel" or b"d=A" in window.sent[-1]
    finally:
        window.end()
