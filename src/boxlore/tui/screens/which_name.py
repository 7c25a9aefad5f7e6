"""The card that asks how a doubtful name is taken apart: the proposal first, so that Enter alone confirms it."""

from functools import partial

from boxlore.tasks.sitting.which_name import OpenName, take_name
from boxlore.tui.screens.sitting_view import ItemView
from boxlore.tui.screens.which_meant import ask_numbered
from boxlore.tui.widgets.plain_text import short


async def ask_which_name(screen: ItemView, question: OpenName) -> None:
    """Open the card for this question."""
    take = partial(take_name, screen.sitting, screen.record, question)
    await ask_numbered(screen, short(question.question, 70), question.choices, take)
