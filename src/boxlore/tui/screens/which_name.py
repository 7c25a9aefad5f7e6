"""The card that asks how a doubtful name is taken apart: the proposal first, so that Enter alone confirms it."""

from boxlore.core.errors import BoxloreError
from boxlore.tasks.sitting.which_name import OpenName, take_name
from boxlore.tui.screens.cards import Choice, Choices
from boxlore.tui.screens.sitting_view import ItemView
from boxlore.tui.widgets.plain_text import short


async def ask_which_name(screen: ItemView, question: OpenName) -> None:
    """Open the card for this question."""

    def answer(value: str) -> None:
        try:
            taken = take_name(screen.sitting, screen.record, question, int(value))
        except BoxloreError as error:
            screen.say(str(error), bad=True)
            return
        screen.refresh_record()
        screen.say(f"Noted: {taken}. Ctrl+Z takes it back.")

    choices = [Choice(str(number), short(words, 60)) for number, words in enumerate(question.choices, 1)]
    await screen.app.push_screen(Choices(short(question.question, 70), choices, answer))
