"""A list whose rows are looked for in a thread: what it says meanwhile, and where they cannot be found (our own
contract)."""

import asyncio
import threading
from collections.abc import Callable
from functools import partial

import pytest
from textual.app import App

from boxlore.core.errors import CouldNot
from boxlore.tasks.collection.progress import Progress
from boxlore.tui.colours import LAMP
from boxlore.tui.screens.list_screen import LookingScreen


class _Coloured(App[None]):
    def get_theme_variable_defaults(self) -> dict[str, str]:
        return dict(LAMP.variables)


class Looking(LookingScreen):
    """Finds nothing, once it may; or cannot look."""

    def __init__(self, fault: str = "") -> None:
        super().__init__("Looking")
        self.fault, self.may_end, self.said = fault, threading.Event(), ""

    def look(self, progress: Progress) -> Callable[[], None]:
        self.may_end.wait(20)
        if self.fault:
            raise CouldNot(self.fault)
        return partial(self._rows.show, 0, lambda at, width: ())

    def _at_row(self) -> None:
        self.said = self._unfound or "There is nothing."


@pytest.mark.parametrize(("fault", "said"), [("", "There is nothing."), ("It is damaged.", "It is damaged.")])
def test_a_key_says_nothing_of_what_is_still_looked_for(fault: str, said: str) -> None:
    async def look() -> None:
        app = _Coloured()
        async with app.run_test() as pilot:
            screen = Looking(fault)
            await app.push_screen(screen)
            await pilot.press("down")
            assert screen.said == Looking.LOOKS
            screen.may_end.set()
            await app.workers.wait_for_complete()
            await pilot.press("down")
            assert screen.said == said

    asyncio.run(look())
