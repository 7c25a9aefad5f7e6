"""Sharp pictures on the terminal: painted over the cells of a widget once these are drawn, and cleaned away after it.

Textual knows cells only. So a widget that has a sharp picture leaves its cells empty, and after each frame the picture
is painted over them, if it is another one, or if the frame has drawn some of those cells again. What takes a picture
away is drawing its cells, which every screen laid over it does; in kitty's language it is said. Only the topmost screen
has a sharp picture: under a card it stands in half blocks, which the card dims.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any

from textual.app import App
from textual.driver import Driver
from textual.message import Message
from textual.screen import Screen
from textual.timer import Timer
from textual.widget import Widget

from boxlore.tasks.sitting.sharp_picture import Graphics, Language, SharpPicture, marker_sent, put, taken_away

MARKERS = 1_000_000
"""Kitty's language numbers every picture; the markers of one begin here."""


REST = 0.03
"""Seconds without another frame over a picture before it is painted: frames come in groups, and pictures are large."""


@dataclass(frozen=True, slots=True)
class Sign:
    """A marker on a picture: what is written, and the cell of the screen at which it begins (column, row from 0)."""

    text: str
    column: int
    row: int


@dataclass(frozen=True, slots=True)
class Painting:
    """A sharp picture at a cell of the screen, and the markers on it."""

    picture: SharpPicture
    column: int
    row: int
    signs: tuple[Sign, ...]


class Painted(Widget):
    """A widget that may have a sharp picture. `stands_sharp`: it has one now, and leaves its cells empty for it."""

    stands_sharp = False

    class Sharper(Message):
        """What the terminal can draw has become known: pictures may be made sharp now. Posted to every screen."""

    def painting(self) -> Painting | None:
        """What is to be painted; None before there is a sharp picture."""
        return None

    def stand_sharp(self, sharp: bool) -> None:
        """Leave the cells empty from now on, or draw half blocks in them again."""
        self.stands_sharp = sharp
        self.refresh()


class DrawingApp(App[int]):
    """An app whose widgets may have sharp pictures."""

    _painted: Painting | None = None
    _painter: Painted | None = None
    _soon: Timer | None = None
    _sent = 0
    """The number of the picture that a terminal of kitty's language keeps, 0 for none."""

    def get_driver_class(self) -> type[Driver]:
        """The driver that asks the terminal what it can draw; where there is none, pictures are half blocks."""
        usual = super().get_driver_class()
        try:
            from textual.drivers.linux_driver import LinuxDriver

            from boxlore.tui.terminal_driver import AskingDriver
        except ImportError:  # Windows has no termios
            return usual
        return AskingDriver if usual is LinuxDriver else usual

    @property
    def graphics(self) -> Graphics | None:
        """What the terminal can draw; None before it has answered, and if it can draw no picture."""
        known = getattr(self._driver, "graphics", None)
        return known() if known is not None else None

    def on_answered(self) -> None:
        """Let every screen know that its pictures may be made sharp."""
        if self.graphics is not None:
            for screen in self.screen_stack:
                screen.post_message(Painted.Sharper())

    def _display(self, screen: Screen[Any], renderable: Any) -> None:
        super()._display(screen, renderable)
        if self.graphics is not None and renderable is not None and not self._batch_count:
            self._after_frame(getattr(renderable, "spans", None))

    def _after_frame(self, spans: list[tuple[int, int, int]] | None) -> None:
        """Paint what is to be seen. `spans` are the cells just drawn, as (row, from column, to column); None is all."""
        painter = next(iter(self.screen.query(Painted).results()), None)
        painting = painter.painting() if painter is not None and painter.is_attached else None
        if self._painter is not None and self._painter is not painter and self._painter.stands_sharp:
            self._painter.stand_sharp(False)
        if painter is not None and painter.stands_sharp != (painting is not None):
            self._painter = painter
            painter.stand_sharp(painting is not None)  # the frame that this brings is painted on
            painting = None
        self._painter = painter
        if painting is None:
            if self._painted is not None:
                self._paint(None)
        elif painting != self._painted or _covers(painting, spans):
            if self._soon is not None:
                self._soon.stop()
            self._soon = self.set_timer(REST, self._paint_now)

    def _paint_now(self) -> None:
        painter = self._painter
        painting = painter.painting() if painter is not None and painter.stands_sharp else None
        if painter is not None and painting is not None and painter.screen is self.screen:
            self._paint(painting)

    def paint_again(self, painter: Painted) -> None:
        """Paint a picture whose markers have changed, without a frame."""
        painting = painter.painting()
        if painter is self._painter and painter.screen is self.screen and painting != self._painted:
            self._paint(painting)

    def _paint(self, painting: Painting | None) -> None:
        either, self._painted = painting or self._painted, painting
        language = either.picture.language if either is not None else None
        parts = [*self._kitty(painting)] if language is Language.KITTY else [*_cells(painting)]
        if parts and self._driver is not None:
            self._begin_update()
            self._driver.write("".join(["\x1b7", *parts, "\x1b8"]))
            self._end_update()
            self._driver.flush()

    def _kitty(self, painting: Painting | None) -> Iterator[str]:
        """A picture is sent once; after that it is only put, with its markers above it."""
        number = painting.picture.number if painting is not None else self._sent
        yield taken_away(self._sent if self._sent != number else 0)
        if painting is None:
            return
        if self._sent != number:
            yield painting.picture.sequence
            self._sent = number
        yield _at(painting.column, painting.row) + put(number)
        for at, sign in enumerate(painting.signs, MARKERS):
            yield marker_sent(at, sign.text, painting.picture.cell)
            yield _at(sign.column, sign.row) + put(at, above=1)


def _cells(painting: Painting | None) -> Iterator[str]:
    """The picture, and its markers as letters in cells, which cover it."""
    if painting is not None:
        yield _at(painting.column, painting.row) + painting.picture.sequence
        for sign in painting.signs:
            yield f"{_at(sign.column, sign.row)}\x1b[0;1;38;2;22;18;15;48;2;242;201;107m{sign.text}\x1b[0m"


def _at(column: int, row: int) -> str:
    return f"\x1b[{row + 1};{column + 1}H"


def _covers(painting: Painting, spans: list[tuple[int, int, int]] | None) -> bool:
    """Whether some of the cells just drawn are under the picture."""
    if spans is None:
        return True
    left, right = painting.column, painting.column + painting.picture.columns
    top, bottom = painting.row, painting.row + painting.picture.rows
    return any(top <= row < bottom and start < right and end > left for row, start, end in spans)
