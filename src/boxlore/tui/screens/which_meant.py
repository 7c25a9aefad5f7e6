"""The card that asks which date or place is meant: the choices numbered; of a place somewhere near one, or our own."""

from collections.abc import Callable, Sequence
from functools import partial

from boxlore.core.errors import BoxloreError
from boxlore.core.places.reading import full_name
from boxlore.tasks.collection.prompts import Prompt
from boxlore.tasks.sitting.which_date import OpenDate, choose_date
from boxlore.tasks.sitting.which_meant import OpenQuestion, open_question
from boxlore.tasks.sitting.which_place import OpenPlace, choose, make_own
from boxlore.tui.screens.cards import Choice, Choices
from boxlore.tui.screens.sitting_view import ItemView
from boxlore.tui.widgets.plain_text import short

NEAR, OWN = "near", "own"


async def ask_which(screen: ItemView, question: OpenQuestion) -> None:
    """Open the card for this question."""
    if isinstance(question, OpenDate):
        await _ask_date(screen, question)
    else:
        await _ask_place(screen, question)


async def ask_numbered(
    screen: ItemView, title: str, names: Sequence[str], take: Callable[[int], str], *, below: str = ""
) -> None:
    """Open a card with these choices; `take` keeps the one of a number (from 1), and returns it in words."""

    def answer(value: str) -> None:
        try:
            words = take(int(value))
        except BoxloreError as error:
            screen.say(str(error), bad=True)
            return
        _done(screen, words)

    await screen.app.push_screen(Choices(title, _numbered(names), answer, below=below))


async def _ask_date(screen: ItemView, question: OpenDate) -> None:
    below = "Esc, and another answer in its place, if it is none of these."
    take = partial(choose_date, screen.sitting, screen.record, question)
    await ask_numbered(screen, short(question.asks, 100), question.names, take, below=below)


async def _ask_place(screen: ItemView, question: OpenPlace) -> None:

    async def answer(value: str) -> None:
        if value == NEAR:
            await _ask_near(screen, question)
        elif value == OWN:
            _done(screen, full_name(make_own(screen.sitting, screen.record, question)))
        else:
            _chosen(screen, question, value)

    near = [Choice(NEAR, "Somewhere near", "near one of these")] if _with_points(question) else []
    own = Choice(OWN, "A place of our own", "a farm, a house: it is known from now on")
    await screen.app.push_screen(Choices(_title(question), [*_numbered(question.names), *near, own], answer))


async def _ask_near(screen: ItemView, question: OpenPlace) -> None:
    near = [choice for choice in _numbered(question.names) if choice.value in _with_points(question)]
    title = f"{_title(question)} Near which?"
    await screen.app.push_screen(Choices(title, near, lambda value: _chosen(screen, question, value, near=True)))


def _title(question: OpenPlace) -> str:
    return f"“{short(question.view.words, 40)}”: which place is meant?"


def _numbered(names: Sequence[str]) -> list[Choice]:
    return [Choice(str(number), short(name, 60)) for number, name in enumerate(names, 1)]


def _with_points(question: OpenPlace) -> list[str]:
    """The numbers of the choices that have a point, so that one can be near them."""
    return [str(number) for number, place in enumerate(question.reading.choices, 1) if place.point is not None]


def _chosen(screen: ItemView, question: OpenPlace, value: str, *, near: bool = False) -> None:
    try:
        place = choose(screen.sitting, screen.record, question, int(value), near=near)
    except BoxloreError as error:
        screen.say(str(error), bad=True)
        return
    _done(screen, full_name(place))


def _done(screen: ItemView, words: str) -> None:
    screen.refresh_record()
    screen.say(f"Noted: {words}. Ctrl+Z takes it back.")


def to_choose(screen: ItemView, at: Prompt | None) -> OpenQuestion | None:
    """The open question with choices of this item, that of the prompt `at` before others; None if there is none.

    A place without choices can be made our own; a date without them only other words can tell.
    """
    for prompt in sorted((block.prompt for block in screen.blocks), key=lambda prompt: prompt is not at):
        question = open_question(screen.sitting, screen.record, prompt)
        if isinstance(question, OpenPlace) or (question is not None and question.choices):
            return question
    return None
