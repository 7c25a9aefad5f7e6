"""Another place than told words were read as, asked for in other words; the told words stay."""

from collections.abc import Callable, Sequence
from typing import Any

from textual.app import App

from boxlore.core.errors import BoxloreError
from boxlore.core.places.names_apart import names_apart
from boxlore.core.places.reading import Place
from boxlore.tasks.sitting.session import Sitting
from boxlore.tasks.sitting.words_told import places_called
from boxlore.tui.screens.cards import NOWHERE, Choice, Choices
from boxlore.tui.screens.forms import Blank, Form
from boxlore.tui.widgets.plain_text import short


def numbered(names: Sequence[str]) -> list[Choice]:
    """A choice for each name; its value is its number, from 1."""
    return [Choice(str(number), short(name, 60)) for number, name in enumerate(names, 1)]


async def ask_other_place(app: App[Any], sitting: Sitting, told: str, take: Callable[[Place], None]) -> None:
    """Ask in other words for the place that `told` means; of several of that name, which. `take` keeps it."""

    async def answer(answers: dict[str, str]) -> str:
        try:
            places = places_called(sitting, answers["words"])
        except BoxloreError as error:
            return str(error)
        if len(places) == 1:
            take(places[0])
        else:
            title, choices = f"Which {short(answers['words'], 30)}?", numbered(names_apart(places))
            await app.push_screen(Choices(title, choices, lambda value: take(places[int(value) - 1]), at=NOWHERE))
        return ""

    blank = Blank("words", "Which place is that?", "", "With its region or country: Milton, Otago.")
    above = f"“{short(told, 60)}” stays as it was told."
    await Form("Where was it?", [blank], answer, above=above).open(app)
