"""The card that asks who is meant: whoever of the registry it may be, somebody new, or nobody."""

from functools import partial

from boxlore.tasks.sitting.which_person import OpenPerson, take_person
from boxlore.tui.screens.sitting_view import ItemView
from boxlore.tui.screens.which_meant import ask_numbered
from boxlore.tui.widgets.plain_text import short


async def ask_which_person(screen: ItemView, question: OpenPerson) -> None:
    """Open the card for this question."""
    take = partial(take_person, screen.sitting, screen.record, question)
    below = "F4 corrects the words."
    if not screen.sitting.id:
        below += " “Me” is whoever tells: Esc, “Sit”, “Who tells now” names them; until then it waits."
    await ask_numbered(screen, short(question.asks, 100), question.names, take, below=below)
