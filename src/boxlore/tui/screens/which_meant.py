"""The card that asks which date or place is meant: the choices numbered; of a place somewhere near one, or our own."""

from collections.abc import Callable, Sequence
from dataclasses import replace
from functools import partial

from boxlore.core.dates.event_question import asked_event, when_born
from boxlore.core.errors import BoxloreError
from boxlore.core.people.person import Person
from boxlore.core.places.reading import Place, full_name
from boxlore.tasks.collection.prompts import Prompt
from boxlore.tasks.sitting.people_corrections import add
from boxlore.tasks.sitting.which_date import OpenDate, birth_asked, choose_date, say_date
from boxlore.tasks.sitting.which_meant import OpenQuestion
from boxlore.tasks.sitting.which_place import OpenPlace, choose, make_own, mean, no_place, own_parts
from boxlore.tasks.telling.events import tell_event
from boxlore.tui.screens.cards import NOWHERE, Choice, Choices
from boxlore.tui.screens.events import HINT, noted
from boxlore.tui.screens.forms import Blank, Form
from boxlore.tui.screens.other_place import ask_other_place, numbered
from boxlore.tui.screens.sitting_view import ItemView
from boxlore.tui.widgets.plain_text import short
from boxlore.tui.widgets.prompt_block import question_alone

NEAR, OWN, NONE, OTHER = "near", "own", "none", "other"


async def ask_which(screen: ItemView, question: OpenQuestion, prompt: Prompt) -> None:
    """Open the card for this question, of the answer to a prompt."""
    if name := event_of(question):
        await ask_event(screen, name)
    elif isinstance(question, OpenDate):
        await _ask_date(screen, question, prompt)
    else:
        await _ask_place(screen, question)


async def ask_numbered(
    screen: ItemView, title: str, names: Sequence[str], take: Callable[[int], str], *, below: str = ""
) -> None:
    """Open a card with these choices; `take` keeps the one of a number (from 1), and returns it in words."""

    def answer(value: str) -> None:
        _taken(screen, partial(take, int(value)))

    await screen.app.push_screen(Choices(title, numbered(names), answer, below=below, at=NOWHERE))


def _taken(screen: ItemView, take: Callable[[], str]) -> None:
    """Keep what was chosen, and say what was kept, or why not."""
    try:
        words = take()
    except BoxloreError as error:
        screen.say(str(error), bad=True)
        return
    _done(screen, words)


async def _ask_date(screen: ItemView, question: OpenDate, prompt: Prompt) -> None:
    """Ask which of the choices is meant, or another date; where there is none to choose, the date at once."""
    if not (question.asks and question.names):
        await _ask_other_date(screen, question, prompt)
        return

    async def answer(value: str) -> None:
        if value == OTHER:
            await _ask_other_date(screen, question, prompt)
        else:
            _taken(screen, partial(choose_date, screen.sitting, screen.record, question, int(value)))

    other = Choice(OTHER, "Another date", "the words stay as told", key="o")
    title = short(question_alone(question.asks, question.names), 140)
    await screen.app.push_screen(Choices(title, [*numbered(question.names), other], answer, at=NOWHERE))


async def _ask_other_date(screen: ItemView, question: OpenDate, prompt: Prompt) -> None:
    """Ask in other words for the date that is meant; where a birth is in question, for that or for the date."""
    whose = birth_asked(screen.sitting, question)

    def answer(answers: dict[str, str]) -> str:
        if whose is not None and answers["born"]:
            return _birth_kept(screen, whose, answers["born"])
        if not answers["date"]:
            return "Write when it was, as near as anyone can say. Esc leaves it open."
        try:
            words = say_date(screen.sitting, screen.record, prompt, question, answers["date"])
        except BoxloreError as error:
            return str(error)
        _done(screen, words)
        return ""

    told = f"“{short(question.view.words, 60)}” stays as it was told"
    read_as = f", and is read as {question.names[0]}" if question.names and not question.asks else ""
    above = question.asks or f"{told}{read_as}."
    blanks = [Blank("date", "When was this photograph taken?", "", "As near as anyone can say: 1952, about 1950.")]
    if whose is not None:
        hint = "The day or the year. What is told by an age is worked out from it."
        blanks.insert(0, Blank("born", when_born(whose.name), "", hint))
        blanks[1] = replace(blanks[1], label="Or when was this photograph taken?")
    await Form("When was it?", blanks, answer, above=above).open(screen.app)


def _birth_kept(screen: ItemView, person: Person, words: str) -> str:
    """Keep a birth, by which an age that was told is read. Returns '' or what is wrong with the words."""
    try:
        add(screen.sitting, person, "born", words)
    except BoxloreError as error:
        return str(error)
    _done(screen, f"{person.name}, born {words}")
    return ""


async def _ask_place(screen: ItemView, question: OpenPlace) -> None:
    async def answer(value: str) -> None:
        if value == NEAR:
            await _ask_near(screen, question)
        elif value == OWN:
            await _ask_own(screen, question)
        elif value == OTHER:
            take = partial(_kept_place, screen, question)
            await ask_other_place(screen.app, screen.sitting, question.view.words, take)
        elif value == NONE:
            no_place(screen.sitting, screen.record, question)
            _done(screen, "the words stand for no place on a map")
        else:
            _chosen(screen, question, value)

    near = [Choice(NEAR, "Somewhere near", "near one of these", key="n")] if _with_points(question) else []
    other = Choice(OTHER, "Another place", "said in other words", key="a")
    own = Choice(OWN, "A place of our own", "a farm, a house: it is known from now on", key="o")
    none = [Choice(NONE, "None of these", "the words stay, without a map", key="0")] if question.names else []
    choices = [*numbered(question.names), *near, other, own, *none]
    await screen.app.push_screen(Choices(_title(question), choices, answer, at=NOWHERE))


async def _ask_own(screen: ItemView, question: OpenPlace) -> None:
    name, inside = own_parts(question)

    def answer(answers: dict[str, str]) -> str:
        if not answers["name"]:
            return "A place needs a name. Say it as the family does: Grandpa’s farm."
        try:
            place = make_own(screen.sitting, screen.record, question, answers["name"], answers["inside"])
        except BoxloreError as error:
            return str(error)
        _done(screen, full_name(place))
        return ""

    blanks = [
        Blank("name", "What does the family call it?", name, "The words that were told mean it too.", keeps=True),
        Blank("inside", "In or near which town?", inside, "For instance: Milton, Otago. May stay empty."),
    ]
    await Form("A place of our own", blanks, answer).open(screen.app)


async def ask_event(screen: ItemView, name: str) -> None:
    """Ask when something was that a date leans on; the dates that wait for it are read by it."""

    def answer(answers: dict[str, str]) -> str:
        sitting = screen.sitting
        if not answers["date"]:
            return "Write when it was. A year is enough; Esc leaves it open."
        try:
            count = tell_event(sitting.teller, name, answers["date"], sitting.telling,
                               write=lambda act: sitting.finish(act, screen.record.id))  # fmt: skip
        except BoxloreError as error:
            return str(error)
        screen.refresh_record()
        screen.say(noted(name, count))
        return ""

    above = "The dates that wait for it are read by it; “Put right”, “What happened when” has it from now on."
    blank = Blank("date", "When was it?", "", HINT)
    await Form(short(name, 60), [blank], answer, above=above).open(screen.app)


async def _ask_near(screen: ItemView, question: OpenPlace) -> None:
    near = [choice for choice in numbered(question.names) if choice.value in _with_points(question)]
    title = f"{_title(question)} Near which?"

    def answer(value: str) -> None:
        _chosen(screen, question, value, near=True)

    await screen.app.push_screen(Choices(title, near, answer, at=NOWHERE))


def _title(question: OpenPlace) -> str:
    return f"“{short(question.view.words, 40)}”: which place is meant?"


def _with_points(question: OpenPlace) -> list[str]:
    """The numbers of the choices that have a point, so that one can be near them."""
    return [str(number) for number, place in enumerate(question.reading.choices, 1) if place.point is not None]


def _kept_place(screen: ItemView, question: OpenPlace, place: Place) -> None:
    _taken(screen, lambda: full_name(mean(screen.sitting, screen.record, question, place)))


def _chosen(screen: ItemView, question: OpenPlace, value: str, *, near: bool = False) -> None:
    _taken(screen, lambda: full_name(choose(screen.sitting, screen.record, question, int(value), near=near)))


def _done(screen: ItemView, words: str) -> None:
    screen.refresh_record()
    screen.say(f"Noted: {words}. Ctrl+Z takes it back.")


def event_of(question: OpenQuestion) -> str:
    """The event of the family that a date waits for; '' for any other question."""
    return asked_event(question.asks) if isinstance(question, OpenDate) and not question.choices else ""
