"""The places where somebody living is named, or may be, answered one by one before anything goes outside."""

from collections.abc import Sequence
from typing import Any, Protocol

from textual.app import App

from boxlore.core.fields.name_answers import NamingAnswer
from boxlore.core.fields.table import FIELDS
from boxlore.core.findings import several
from boxlore.tasks.archive.name_answers import NamePlace, decide, took_consent_back, undecided
from boxlore.tasks.archive.names_asked import names_asked
from boxlore.tasks.collection.progress import Progress
from boxlore.tasks.sitting.session import Sitting
from boxlore.tui.screens.cards import Choice, Choices
from boxlore.tui.screens.long_task import WorkingScreen


class NamesHost(Protocol):
    """What the cards need of the screen below them."""

    sitting: Sitting

    @property
    def app(self) -> App[Any]: ...

    def say(self, words: str, *, bad: bool = False) -> None: ...


SKIP, LATER, HIDE_ALL = "skip", "later", "hide all"
_ANSWERS = (
    Choice(NamingAnswer.HIDE, "Hide it", "it stays out of what leaves the family, after a consent too"),
    Choice(NamingAnswer.OTHER, "Not that person", "the words mean somebody else, or nobody"),
    Choice(NamingAnswer.MAY, "May be named", "there is consent"),
    Choice(SKIP, "Skip", "it stays hidden, and is asked again"),
    Choice(LATER, "Leave the rest", "for another time"),
    Choice(HIDE_ALL, "Hide it wherever it stands", "all further mentions of this name"),
)
_NOT_NOW = Choice(SKIP, "May be named", "not now: consent was taken back, and a new one must be noted first")


async def ask_names(screen: NamesHost) -> None:
    """Look for names in a thread, then ask about each place that nobody has decided. Each answer is kept at once."""
    collection = screen.sitting.collection
    waiting: list[NamePlace] = []

    def job(progress: Progress) -> list[str]:
        progress.begin("Looking for names", 0)
        waiting[:] = undecided([place for naming in names_asked(collection).namings for place in naming.places])
        return [] if waiting else ["No name is in question. What nobody may see of the living stays out."]

    def after() -> None:
        if waiting:
            screen.app.pop_screen()  # the card of the search has nothing to say
            screen.app.call_later(_ask, screen, waiting, 0, 0)

    await screen.app.push_screen(WorkingScreen("Names in question", job, after))


async def _ask(screen: NamesHost, places: list[NamePlace], at: int, kept: int) -> None:
    """Ask about a place, then about those after it; `kept` answers were given before. Each is a step of the sitting, so
    that Ctrl+Z takes back the last of them and nothing else."""
    place = places[at]

    async def answer(value: str) -> None:
        count, sitting = kept, screen.sitting
        answered: list[tuple[NamePlace, NamingAnswer]] = []
        if value in tuple(NamingAnswer):
            answered = [(place, NamingAnswer(value))]
        elif value == HIDE_ALL:
            of_name = [later for later in places[at:] if (later.person, later.name) == (place.person, place.name)]
            answered = [(later, NamingAnswer.HIDE) for later in of_name]
            places[at + 1 :] = [later for later in places[at + 1 :] if later not in of_name]
        if decide(sitting.collection, answered, write=lambda act: sitting.finish(act, place.item)):
            count += 1
        if value != LATER and at + 1 < len(places):
            await _ask(screen, places, at + 1, count)
        elif count:
            screen.say(f"{several(count, 'answer is', 'answers are')} kept. Ctrl+Z takes back the last one.")

    where = FIELDS[place.where].label if place.where in FIELDS else place.where
    doubt = f" ({place.why})" if place.why else ""
    title = f"{at + 1} of {several(len(places), 'mention')}: {place.name}{doubt}"
    below = f"{place.number}, {where}: {place.sentence}"
    answers: Sequence[Choice] = _ANSWERS
    if took_consent_back(screen.sitting.collection, place.person):
        answers = tuple(_NOT_NOW if choice.value == NamingAnswer.MAY else choice for choice in _ANSWERS)
    await screen.app.push_screen(Choices(title, answers, answer, below=below))
