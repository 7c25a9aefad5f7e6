"""The card that asks who is meant: whoever of the registry it may be, somebody new, or nobody."""

from boxlore.core.errors import BoxloreError
from boxlore.tasks.sitting.which_person import OpenPerson, take_person
from boxlore.tui.screens.cards import Choice, Choices
from boxlore.tui.screens.sitting_view import ItemView
from boxlore.tui.widgets.plain_text import short


async def ask_which_person(screen: ItemView, question: OpenPerson) -> None:
    """Open the card for this question."""

    def answer(value: str) -> None:
        try:
            taken = take_person(screen.sitting, screen.record, question, int(value))
        except BoxloreError as error:
            screen.say(str(error), bad=True)
            return
        screen.refresh_record()
        screen.say(f"Noted: {taken}. Ctrl+Z takes it back.")

    choices = [Choice(str(number), short(words, 60)) for number, words in enumerate(question.names, 1)]
    below = "F4 corrects the words."
    await screen.app.push_screen(Choices(short(question.asks, 100), choices, answer, below=below))
