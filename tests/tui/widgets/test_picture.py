"""The picture of half blocks: a marker is drawn on it, at its edges too (our own contract)."""

import asyncio

import pytest
from rich.color import Color
from rich.segment import Segment
from rich.style import Style
from textual.app import App, ComposeResult
from textual.color import Color as Tint
from textual.renderables.background_screen import BackgroundScreen

from boxlore.tasks.sitting.small_picture import Glimpse
from boxlore.tui.widgets.picture import STEP, Dimmed, Picture, Pin

GREY = Glimpse(20, 20, bytes(20 * 20 * 3))


class _Shown(App[None]):
    def compose(self) -> ComposeResult:
        yield Picture()


@pytest.mark.parametrize(
    ("x", "y", "row", "column"), [(0.0, 0.0, 0, 0), (0.5, 0.5, 5, 9), (1.0, 1.0, 9, 17), (0.0, 1.0, 9, 0)]
)
def test_a_marker_at_the_edge_is_drawn_inside(x: float, y: float, row: int, column: int) -> None:
    async def drawn() -> list[str]:
        async with _Shown().run_test(size=(20, 10)) as pilot:
            picture = pilot.app.query_one(Picture)
            picture.show(GREY, [Pin(7, x, y)])
            await pilot.pause()
            return [picture.render_line(line).text for line in range(10)]

    lines = asyncio.run(drawn())
    assert [(at, line.index(" 7 ")) for at, line in enumerate(lines) if " 7 " in line] == [(row, column)]


def test_a_picture_under_a_card_is_dimmed_as_textual_dims() -> None:
    """Against Textual's own dimming, which is slower; of a cell without a lower half, and of words, too."""
    alike = Segment("▀", Style.from_color(Color.from_rgb(251, 121, 4), Color.from_rgb(1, 77, 255)))
    over, under = Color.from_rgb(250, 120, 3), Color.from_rgb(0, 77, 255)
    cells = [
        Segment("▀▀", Style.from_color(over, under)),
        Segment("▀", Style.from_color(over, None)),
        Segment("▀", Style.from_color(Color.parse("red"), None)),
        Segment("words", Style(color=over, bgcolor=under, bold=True)),
        Segment(" "),
    ]
    tint = Tint(30, 28, 26, 0.6)
    for ours, theirs in zip(
        Dimmed.process_segments(cells, tint), BackgroundScreen.process_segments(cells, tint), strict=True
    ):
        assert ours.text == theirs.text and ours.style is not None and theirs.style is not None
        assert ours.style.bold == theirs.style.bold
        for mine, other in ((ours.style.color, theirs.style.color), (ours.style.bgcolor, theirs.style.bgcolor)):
            if mine is None or mine.triplet is None:
                assert other is None or mine is not None
            else:
                assert other is not None and other.triplet is not None
                assert max(abs(a - b) for a, b in zip(mine.triplet, other.triplet, strict=True)) <= STEP
    assert [cell.text for cell in Dimmed.process_segments([cells[0], alike], tint)] == ["▀▀▀"]
