"""The card that asks which place is meant: the choices numbered, somewhere near one of them, a place of our own."""

from boxlore.core.errors import BoxloreError
from boxlore.core.places.reading import Place, full_name
from boxlore.tasks.sitting.which_place import OpenPlace, choose, make_own, open_place
from boxlore.tui.screens.cards import Choice, Choices
from boxlore.tui.screens.item_view import ItemView
from boxlore.tui.widgets.plain_text import short

NEAR, OWN = "near", "own"


async def ask_which_place(screen: ItemView, question: OpenPlace) -> None:
    """Open the card for this question."""

    async def answer(value: str) -> None:
        if value == NEAR:
            await _ask_near(screen, question)
        elif value == OWN:
            _done(screen, make_own(screen.sitting, screen.record, question))
        else:
            _chosen(screen, question, value)

    near = [Choice(NEAR, "Somewhere near", "near one of these")] if _with_points(question) else []
    own = Choice(OWN, "A place of our own", "a farm, a house: it is known from now on")
    await screen.app.push_screen(Choices(_title(question), [*_numbered(question), *near, own], answer))


async def _ask_near(screen: ItemView, question: OpenPlace) -> None:
    near = [choice for choice in _numbered(question) if choice.value in _with_points(question)]
    title = f"{_title(question)} Near which?"
    await screen.app.push_screen(Choices(title, near, lambda value: _chosen(screen, question, value, near=True)))


def _title(question: OpenPlace) -> str:
    return f"“{short(question.view.words, 40)}”: which place is meant?"


def _numbered(question: OpenPlace) -> list[Choice]:
    return [Choice(str(number), short(name, 60)) for number, name in enumerate(question.names, 1)]


def _with_points(question: OpenPlace) -> list[str]:
    """The numbers of the choices that have a point, so that one can be near them."""
    return [str(number) for number, place in enumerate(question.reading.choices, 1) if place.point is not None]


def _chosen(screen: ItemView, question: OpenPlace, value: str, *, near: bool = False) -> None:
    try:
        place = choose(screen.sitting, screen.record, question, int(value), near=near)
    except BoxloreError as error:
        screen.say(str(error), bad=True)
        return
    _done(screen, place)


def _done(screen: ItemView, place: Place) -> None:
    screen.refresh_record()
    screen.say(f"Noted: {full_name(place)}. Ctrl+Z takes it back.")


def open_question(screen: ItemView) -> OpenPlace | None:
    """The first open question about a place of this item; None if there is none."""
    asked = (open_place(screen.sitting, screen.record, block.prompt) for block in screen.blocks)
    return next((question for question in asked if question is not None), None)
