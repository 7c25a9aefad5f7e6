"""Who tells now, and what was agreed: asked at the front door, and from the menu whenever somebody else tells."""

from collections.abc import Awaitable, Callable
from typing import Any

from textual.app import App

from boxlore.core.dates.edtf import parsed
from boxlore.core.dates.family_display import family_display
from boxlore.core.errors import BoxloreError
from boxlore.tasks.collection.settings import family_way
from boxlore.tasks.sitting import course
from boxlore.tasks.sitting.beginning import KnownTeller, known_tellers, offered
from boxlore.tasks.sitting.session import Sitting
from boxlore.tui.from_inside import from_inside
from boxlore.tui.screens.cards import NOWHERE, Choice, Choices, Notice
from boxlore.tui.screens.forms import CHOOSE, Blank, Form
from boxlore.tui.screens.person_actions import names_known
from boxlore.tui.screens.which_teller import ask_which_teller

Then = Callable[[], Awaitable[None]]
"""What follows once it is answered."""

MYSELF, SOMEBODY, LATER = "myself", "somebody", "later"
_LAST = (
    Choice(MYSELF, "I myself", "what you tell stands as told by the keeper", key="i"),
    Choice(SOMEBODY, "Somebody else", key="s"),
    Choice(LATER, "No teller yet", "answers can be given to a teller later", key="n"),
)


async def ask_teller(app: App[Any], sitting: Sitting, then: Then, *more: Choice, back: Then | None = None,
                     chosen: Callable[[str], Awaitable[None]] | None = None) -> None:  # fmt: skip
    """Ask who tells, then what was agreed, and go on with `then`. `more` are further lines, which `chosen` does.

    The cursor is at the one who told last.
    """
    latest = known_tellers(sitting.collection)
    tellers = offered(latest)
    known = {f"teller:{at}": teller for at, teller in enumerate(tellers)}
    choices = [Choice(value, teller.name, _about(sitting, teller)) for value, teller in known.items()]

    async def again() -> None:
        await ask_teller(app, sitting, then, *more, back=back, chosen=chosen)

    async def answer(value: str) -> None:
        if value in known:
            await _agreed(app, sitting, known[value], then, again)
        elif value == SOMEBODY:
            await _ask_name(app, sitting, then, again)
        elif value in (MYSELF, LATER):
            sitting.nobody(myself=value == MYSELF)
            await then()
        elif chosen is not None:
            await chosen(value)

    title = "Who tells today?" if not sitting.id else f"{sitting.teller_named} tells. Who tells now?"
    at = tellers.index(latest[0]) if latest else [choice.value for choice in _LAST].index(SOMEBODY)
    await app.push_screen(Choices(title, [*choices, *_LAST, *more], answer, back=back, at=at))


def _about(sitting: Sitting, teller: KnownTeller) -> str:
    often = "one sitting" if teller.sittings == 1 else f"{teller.sittings} sittings"
    if sitting.id and sitting.source.ref == teller.person:
        return "this sitting" if teller.sittings == 1 else f"{often}, this one among them"
    return f"{often}, last {on_day(sitting, teller.last)}" if teller.last else often


def on_day(sitting: Sitting, when: str) -> str:
    """“on 25 November 2026”, as the family writes its dates, of a day or a time in the log; '' for none."""
    return f"on {family_display(parsed(when[:10]), family_way(sitting.collection.settings))}" if when else ""


async def _ask_name(app: App[Any], sitting: Sitting, then: Then, back: Then) -> None:
    async def answer(answers: dict[str, str]) -> str:
        if not answers["narrator"]:
            return "Write who tells."
        return await ask_which_teller(app, sitting, answers["narrator"], take)

    async def take(name: str) -> str:
        await _agreed(app, sitting, KnownTeller(name, "", 0, ""), then, back)
        return ""

    known = names_known(sitting)
    hint = "The whole name, as it shall stand beside what is told. One person."
    blank = Blank("narrator", "Who tells?", "", hint, known=known)
    await Form("Somebody else", [blank], answer, back=back).open(app)


async def _agreed(app: App[Any], sitting: Sitting, teller: KnownTeller, then: Then, back: Then) -> None:
    """Ask about the agreement, then let the teller's sitting begin."""

    async def again() -> None:
        await _agreed(app, sitting, teller, then, back)

    async def answer(value: str) -> None:
        if value == "read":
            await _read_out(app, sitting, teller, then, again)
            return
        answers = {"narrator": teller.name}
        if value == "stands":
            answers |= {"terms": teller.terms, "agreed_by": teller.name}
        if fault := await _begin(app, sitting, answers, then):
            await app.push_screen(Notice(teller.name, from_inside(fault)))

    choices = [
        Choice("read", "Read it out and note it", "before anything is asked", key="r"),
        Choice("later", "Not now", "later: Esc, “Sit”, “This sitting”", key="n"),
    ]
    if teller.terms:
        choices.insert(0, Choice("stands", "Still as agreed", "I asked again today", key="a"))
    below = f"Agreed last: {teller.terms}." if teller.terms else ""
    title = f"Is there an agreement with {teller.name}?"
    at = NOWHERE if teller.terms else 0
    await app.push_screen(Choices(title, choices, answer, below=below, back=back, at=at))


async def _read_out(app: App[Any], sitting: Sitting, teller: KnownTeller, then: Then, back: Then) -> None:
    async def answer(answers: dict[str, str]) -> str:
        if not answers["terms"]:
            return "Choose who may read and hear it, with ←, → or a letter."
        return await _begin(app, sitting, {"narrator": teller.name, **answers}, then)

    blanks = [
        Blank("terms", "Who may read and hear it?", choices=(CHOOSE, *course.TERMS.items())),
        Blank("until", "Until when does an archive keep it closed?", "", course.UNTIL),
        Blank("agreed_by", "Who gave the agreement?", teller.name, course.MINOR),
        Blank("interviewer", "Who asks?", sitting.interviewer, "Your own name. May stay empty."),
        Blank("place", "Where?", "", "“The teller’s home” is enough; no street. May stay empty."),
        Blank("recorder", "Does a recorder run?", "no", choices=(("no", "no"), ("yes", "yes"))),
    ]  # fmt: skip
    above = f"Read this out: “{course.READ_OUT}”"
    await Form(f"Agreement with {teller.name}", blanks, answer, above=above, back=back).open(app)


async def _begin(app: App[Any], sitting: Sitting, answers: dict[str, str], then: Then) -> str:
    """Begin the teller's sitting; returns what is wrong with the answers, or ''."""
    try:
        course.prepare(sitting, answers)
    except BoxloreError as error:
        return str(error)
    await then()
    return ""
