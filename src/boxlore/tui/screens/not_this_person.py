"""Where one statement names the wrong person: somebody else is meant, or nobody knows who it is."""

from typing import Any, Protocol

from textual.app import App

from boxlore.core.errors import BoxloreError
from boxlore.core.people.person import Person
from boxlore.tasks.sitting import people_corrections
from boxlore.tasks.sitting.session import Sitting
from boxlore.tui.screens.cards import Choice
from boxlore.tui.screens.forms import Blank, Form
from boxlore.tui.screens.person_actions import names_known

OTHER, NOT_KNOWN = "other", "not_known"
NOT_THIS = (
    Choice(OTHER, "Not this person here", "somebody else is meant in this one"),
    Choice(NOT_KNOWN, "Somebody else, not known who", "nobody knows who it is"),
)


class NamingHost(Protocol):
    """What is needed of the screen that lists the statement."""

    @property
    def app(self) -> App[Any]: ...

    @property
    def sitting(self) -> Sitting: ...

    def done(self, words: str) -> None:
        """Show the statements anew after a change, and say what was done."""


async def put_right(host: NamingHost, value: str, person: Person, naming: people_corrections.Naming) -> None:
    """Do one of NOT_THIS."""
    if value == OTHER:
        await _ask_other(host, person, naming)
    else:
        people_corrections.nobody_known(host.sitting, person, naming)
        host.done(f"{naming.number}: not {person.name}; who it is, is not known.")


async def _ask_other(host: NamingHost, person: Person, naming: people_corrections.Naming) -> None:
    def answer(answers: dict[str, str]) -> str:
        try:
            name = people_corrections.somebody_else(host.sitting, person, naming, answers["name"])
        except BoxloreError as error:
            return str(error)
        host.done(f"{naming.number} shows {name}.")
        return ""

    blank = Blank(
        "name",
        "Who is it?",
        "",
        "A name. Somebody new is added, if nobody is called so.",
        known=names_known(host.sitting),
    )
    await Form(f"Not {person.name} in {naming.number}", [blank], answer).open(host.app)
