"""What can be done with a person as a whole: another name, one of two, two of one, things told, consent."""

from collections.abc import Awaitable, Callable
from typing import Any, Protocol

from textual.app import App

from boxlore.core.errors import BoxloreError
from boxlore.core.fields.table import FIELDS
from boxlore.core.people.consent import Capacity, Matter, make_consent
from boxlore.core.people.person import Person
from boxlore.core.statements import Kind
from boxlore.tasks.sitting import people_corrections
from boxlore.tasks.sitting.session import Sitting
from boxlore.tasks.telling.statements import KIN
from boxlore.tui.screens.audience_lines import audience_blanks, audience_read, for_whom
from boxlore.tui.screens.cards import Choice, Choices
from boxlore.tui.screens.forms import CHOOSE, Answers, Blank, Form
from boxlore.tui.screens.one_person import ask_if_one
from boxlore.tui.screens.which_new import ask_new
from boxlore.tui.widgets.plain_text import short

ADDED = (
    "born",
    "died",
    "mother",
    "father",
    "spouse",
    "nickname",
    "given",
    "family",
    "born_as",
    "living",
    "sex",
    "story",
)
"""What can be told of a person from the screen, in the order of the menu."""

ABOUT = (
    Choice("rename", "Correct the name", "everywhere, with its history"),
    Choice("add", "Add something told", "a birth, a mother, a nickname"),
    Choice("same", "The same person as …", "two entries become one"),
    Choice("two", "Not the same as …", "so that it is proposed no more"),
    Choice("part", "Take two apart again", "“the same person” is taken back"),
    Choice("consent", "Consent", "shown outside? who says so"),
    Choice("audience", "Who may see them", "the person, wherever they are named"),
)
MATTERS = (CHOOSE, *((str(matter), str(matter)) for matter in Matter), (" ".join(Matter), "all of these"))
CAPACITIES = (CHOOSE, *((str(capacity), str(capacity)) for capacity in Capacity))
ALLOWED = (CHOOSE, ("yes", "yes"), ("no", "no, or no longer"))


class AboutHost(Protocol):
    """What the cards need of the person's screen."""

    @property
    def app(self) -> App[Any]: ...

    @property
    def sitting(self) -> Sitting: ...

    @property
    def person(self) -> Person: ...

    def say(self, words: str, *, bad: bool = False) -> None: ...

    def done(self, words: str) -> None:
        """Show the person anew after a change, and say what was done."""


async def ask_about(host: AboutHost) -> None:
    """Offer what can be done with the person."""

    async def answer(value: str) -> None:
        try:
            await _DO[value](host)
        except BoxloreError as error:
            host.say(str(error), bad=True)

    await host.app.push_screen(Choices(host.person.name, ABOUT, answer))


async def _rename(host: AboutHost) -> None:
    """Ask for the name; where somebody else has it, whether the two are one."""
    sitting, person = host.sitting, host.person

    async def answer(answers: dict[str, str]) -> str:
        name = answers["name"]
        if not name:
            return "There is no name. Write the whole name, as captions shall give it."
        if (second := people_corrections.namesake(sitting.collection, person, name)) is None:
            return renamed(name)

        def two() -> str:
            people_corrections.rename(sitting, person, name, apart_from=second)
            return f"Called {name} everywhere; {second.name} is somebody else."

        title = f"Somebody is called {second.name} already. The same person?"
        await ask_if_one(host.app, sitting, (second, person), _done(host), title=title, two=two)
        return ""

    def renamed(name: str) -> str:
        try:
            people_corrections.rename(sitting, person, name)
        except BoxloreError as error:
            return str(error)
        host.done(f"Called {name} everywhere.")
        return ""

    blank = Blank("name", "The whole name, as captions give it", person.name)
    await Form("Correct the name", [blank], answer).open(host.app)


def _done(host: AboutHost) -> Callable[[str], None]:
    return lambda words: host.done(words) if words else host.say("Nothing was changed.")


async def _same(host: AboutHost) -> None:
    hint = f"That entry and {host.person.name}'s are shown before they become one."
    await _ask_whom(host, "The same person as …", "Whose other entry is it?", hint)


async def _two(host: AboutHost) -> None:
    await _ask_whom(host, "Not the same as …", "Who is somebody else?", "", two=True)


async def _ask_whom(host: AboutHost, title: str, label: str, hint: str, *, two: bool = False) -> None:
    """Ask for somebody else by name, then, of the one meant, whether it is one person; `two` says that it is not."""
    sitting, person = host.sitting, host.person

    async def meant(second: Person) -> None:
        if two:
            people_corrections.two_people(sitting, person, second)
            host.done(f"{second.name} is somebody else.")
        else:
            await ask_if_one(host.app, sitting, (person, second), _done(host))

    async def answer(answers: dict[str, str]) -> str:
        try:
            people = people_corrections.called(sitting.collection, answers["name"], but=person)
        except BoxloreError as error:
            return str(error)
        if len(people) == 1:
            await meant(people[0])
            return ""
        choices = [
            Choice(str(at), people_corrections.in_short(sitting.collection, known)) for at, known in enumerate(people)
        ]
        await host.app.push_screen(Choices("Which of them?", choices, lambda value: meant(people[int(value)])))
        return ""

    blank = Blank("name", label, "", hint, known=names_known(sitting))
    await Form(title, [blank], answer).open(host.app)


def names_known(sitting: Sitting) -> Callable[[str], list[str]]:
    """What completes a name in a form: the names of the registry that begin so."""
    return lambda words: people_corrections.names_begun(sitting.collection, words)


async def _part(host: AboutHost) -> None:
    name = host.person.name
    if people_corrections.parted_again(host.sitting, host.person):
        host.done("They stand apart again. What was closed while they were one is closed for each.")
    else:
        host.say(f"{name} was never made one with anybody.")


async def _add(host: AboutHost) -> None:
    async def chosen(field: str) -> None:
        label = FIELDS[field].label

        def keep(words: str) -> str:
            try:
                doubt = people_corrections.add(host.sitting, host.person, field, words)
            except BoxloreError as error:
                return str(error)
            host.done(f"Kept: {label.lower()}, “{short(words, 40)}”.{doubt}")
            return ""

        async def answer(answers: dict[str, str]) -> str:
            words = answers["words"]
            if not words or field not in KIN or people_corrections.is_anybody(host.sitting, words):
                return keep(words)

            async def again(fault: str = "") -> None:
                await form.anew(answers, fault).open(host.app)

            async def take(meant: str) -> None:
                if fault := keep(meant):
                    await again(fault)

            await ask_new(host.app, host.sitting, words, take, back=again)
            return ""

        known = names_known(host.sitting) if field in KIN else None
        blank = Blank("words", label, "", _HINTS.get(field, "In the teller’s own words."), known=known)
        form = Form(f"{host.person.name}: {label.lower()}", [blank], answer)
        await form.open(host.app)

    fields = [field for field in ADDED if Kind.PERSON in FIELDS[field].kinds]
    choices = [Choice(field, FIELDS[field].label, _HINTS.get(field, "")) for field in fields]
    await host.app.push_screen(Choices(f"{host.person.name}: what was told?", choices, chosen))


async def _consent(host: AboutHost) -> None:
    def answer(answers: dict[str, str]) -> str:
        if not (answers["matter"] and answers["given"] and answers["capacity"]):
            return "Choose what may be shown, whether it is allowed, and who says so, with ←, → or a letter."
        day = host.sitting.collection.clock.today().isoformat()
        try:
            given = make_consent(
                answers["matter"].split(), day, given=answers["given"] == "yes", capacity=answers["capacity"],
                by=answers["by"], witness=answers["witness"],
            )  # fmt: skip
            again = people_corrections.allow(host.sitting, host.person, given)
        except BoxloreError as error:
            return str(error)
        host.done(" ".join((f"{host.person.name}: {given.words}.", *again)))
        return ""

    blanks = [
        Blank("matter", "What may be shown outside the family?", choices=MATTERS),
        Blank("given", "Is it allowed?", choices=ALLOWED),
        Blank("capacity", "Who says so?", choices=CAPACITIES),
        Blank("by", "Name of who speaks for the person", "", "Where it is not the person."),
        Blank("witness", "Witness", "", "Where somebody else speaks for the person."),
    ]
    await Form(f"Consent of {host.person.name}", blanks, answer).open(host.app)


async def _audience(host: AboutHost) -> None:
    def answer(answers: Answers) -> str:
        try:
            audience = audience_read(answers)
            people_corrections.keep_to(host.sitting, host.person, audience)
        except BoxloreError as error:
            return str(error)
        host.done(f"{host.person.name} is {for_whom(audience)} from now on.")
        return ""

    blanks = audience_blanks(host.person.audience, "Who may see the person?")
    above = "Whoever is taken as living goes outside the family by consent only, whatever stands here."
    await Form(f"Who may see {host.person.name}", blanks, answer, above=above).open(host.app)


_DO: dict[str, Callable[[AboutHost], Awaitable[None]]] = {
    "rename": _rename,
    "add": _add,
    "same": _same,
    "two": _two,
    "part": _part,
    "consent": _consent,
    "audience": _audience,
}

_HINTS = {
    "born": "A day, a year, or “about 1912”.",
    "died": "A day, a year, or “in the war”.",
    "mother": "A name. Of one that nobody here has it is asked.",
    "father": "A name. Of one that nobody here has it is asked.",
    "spouse": "A name. Of one that nobody here has it is asked.",
    "living": "yes or no",
    "sex": "female, male or other",
    "nickname": "What the family calls them.",
    "born_as": "The family name before a marriage.",
}
