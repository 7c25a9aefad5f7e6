"""The picture of half blocks: a marker is drawn on it, at its edges too (our own contract)."""

import asyncio

import pytest
from textual.app import App, ComposeResult

from boxlore.tasks.sitting.small_picture import Glimpse
from boxlore.tui.widgets.picture import Picture, Pin

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
