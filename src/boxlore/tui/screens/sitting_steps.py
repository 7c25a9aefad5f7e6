"""The steps of a sitting as cards: agreement, consent, rest, recording, passages to close, closing, the summary.

`open_course` shows the steps that are possible now; `_DO` says which function does each.
"""

from collections.abc import Awaitable, Callable
from functools import partial
from pathlib import Path
from typing import Any, Protocol

from textual.app import App

from boxlore.core.errors import BoxloreError
from boxlore.core.findings import several
from boxlore.core.people.consent import Capacity
from boxlore.core.people.person import Person
from boxlore.core.records.item_record import Record
from boxlore.core.sitting.stages import Stage, Step
from boxlore.core.sitting.time_log import clock_of, moment_of
from boxlore.tasks.sitting import course
from boxlore.tasks.sitting.linking import ABOUT, is_known, story_about
from boxlore.tasks.sitting.recordings import keep_paper, keep_recording
from boxlore.tasks.sitting.session import Sitting
from boxlore.tasks.sitting.tellers_page import Showing
from boxlore.tui.keys import bound
from boxlore.tui.screens.cards import NOWHERE, Card, Choice, Choices, Notice
from boxlore.tui.screens.forms import Blank, Form
from boxlore.tui.screens.person_actions import names_known
from boxlore.tui.screens.which_new import ask_new
from boxlore.tui.widgets.form_lines import typed_path
from boxlore.tui.widgets.plain_text import Line

THANKS = "Thank you."


class StepsHost(Protocol):
    """What the cards need of the screen below them."""

    sitting: Sitting
    showing: Showing
    record: Record

    @property
    def app(self) -> App[Any]: ...

    def say(self, words: str, *, bad: bool = False) -> None: ...

    def refresh_record(self) -> None: ...


class Rest(Card):
    """The card shown during a rest, until Enter; nothing can be typed meanwhile. `over` is called at its end."""

    BINDINGS = bound(("enter,space", "close"))

    def __init__(self, over: Callable[[], None]) -> None:
        super().__init__()
        self._over = over

    def compose(self) -> Any:
        yield Line("A rest.\n\nThe time log waits. Enter goes on.", classes="card")

    async def action_close(self) -> None:
        """Go on."""
        self._over()
        self.app.pop_screen()


async def open_course(host: StepsHost) -> None:
    """Show who tells and for how long, and the steps that can be taken now."""
    sitting = host.sitting
    if not sitting.writable:
        host.say("Open for reading only; nothing can be changed.", bad=True)
        return
    has_ended = sitting.stage is Stage.CLOSING
    tells = f"{sitting.teller_named} {'told; it has ended' if has_ended else 'tells'}"
    teller = f"{tells} · {several(sitting.minutes, 'minute')}" if sitting.id else "no teller yet"
    choices = [Choice("prepare", "Agreement", "who tells, and the terms")]
    if sitting.id:
        steps = course.STAGES.get(sitting.stage, ())
        choices += [Choice(str(step), *_NAMES[step], key=_DIGITS[step]) for step in steps]
        if due := len(course.consent_due(sitting)):
            choices.append(Choice("consent", "Consent, asked again", f"{due} to ask", "c"))
        if not has_ended:
            choices += [
                Choice("started", "Note that a recorder runs", "from now on, in the time log", "4"),
                Choice("clap", "Clap", "heard in the recording too", "5"),
                Choice("closed", "Keep the last minutes from outside", "nothing of them goes out", "6"),
            ]
        choices += [
            Choice("recording", "Keep a recording", "a sound file", "7"),
            Choice("paper", "Keep a signed paper", "its scan", "8"),
            Choice("summary", "Summary", "what was told; how long", "s"),
        ]
    choices.append(Choice("story", "A story of no picture", "of a person, event or place", "t"))

    async def answer(value: str) -> None:
        try:
            await _DO[value](host)
        except BoxloreError as error:
            host.say(str(error), bad=True)

    await host.app.push_screen(Choices(f"This sitting: {teller}", choices, answer))


_NAMES = {
    Step.REST: ("Rest", "the time log waits"),
    Step.GO_ON: ("Go on", "with the sitting"),
    Step.CLOSE: ("End the sitting", "what to ask next time"),
}
_DIGITS = {Step.REST: "2", Step.GO_ON: "2", Step.CLOSE: "3"}
"""The keys of what is there at some stages only; every line has the same one in all of them."""


async def _prepare(host: StepsHost) -> None:
    sitting = host.sitting

    async def answer(answers: dict[str, str]) -> str:
        try:
            course.prepare(sitting, answers)
        except BoxloreError as error:
            return str(error)
        host.refresh_record()
        told_for = course.told_for(sitting)
        kept = f"What is told now is {told_for}. " if told_for else ""
        host.say(f"{sitting.teller_named} tells. The agreement is noted; the time log runs. {kept}".strip())
        if course.consent_due(sitting):
            await _consent(host)
        return ""

    terms = "; ".join(f"{key} {words}" for key, words in course.TERMS.items())
    blanks = [
        Blank(
            "narrator",
            "Who tells?",
            sitting.teller_named,
            "One at a time; another who is present changes what is said.",
        ),
        Blank("interviewer", "Who asks?", sitting.interviewer),
        Blank("place", "Where?", "", "“The teller’s home” is enough; no street."),
        Blank(
            "terms", "Read this out; then write what was agreed", "", f"“{course.READ_OUT}”  Write {terms}; or words."
        ),
        Blank("agreed_by", "Who gave the agreement?", "", course.MINOR),
        Blank("recorder", "Does a recorder run?", "", "yes, once it does and they have agreed."),
    ]
    await Form("Before the photographs", blanks, answer).open(host.app)


async def _consent(host: StepsHost) -> None:
    """Ask about each person whose consent is due, one card after another."""
    waiting = course.consent_due(host.sitting)

    async def ask() -> None:
        if not waiting:
            return
        person = waiting.pop(0)

        async def answer(value: str) -> None:
            if value == "later":
                host.say(f"{person.name} is asked again at the next sitting.")
                await ask()
            elif value == "yes" and person.consents[-1].capacity is not Capacity.SELF:
                await _before_whom(host, person, ask)
            else:
                host.say(" ".join(course.answer_consent(host.sitting, person, given=value == "yes")))
                await ask()

        await host.app.push_screen(Choices(f"May it stay so? {course.due_words(person)}", _MAY_IT, answer, at=NOWHERE))

    await ask()


_MAY_IT = (
    Choice("yes", "Yes", "what goes outside the family may name and show them"),
    Choice("no", "No", "it is withdrawn; from now on they are left out"),
    Choice("later", "Not here to be asked", "it stays as it was until the next sitting"),
)


async def _before_whom(host: StepsHost, person: Person, then: Callable[[], Awaitable[None]]) -> None:
    """Ask for the witness of a consent that somebody else gives for the person; `then` goes on to the next."""

    async def answer(answers: dict[str, str]) -> str:
        try:
            said = course.answer_consent(host.sitting, person, given=True, witness=answers["witness"])
        except BoxloreError as error:
            return str(error)
        host.say(" ".join(said))
        await then()
        return ""

    blank = Blank("witness", "Witness", "", "Somebody else than who speaks for them.")
    await Form(f"Consent for {person.name}", [blank], answer).open(host.app)


async def _rest(host: StepsHost) -> None:
    course.step(host.sitting, Step.REST)
    host.showing.say("A rest.")

    def over() -> None:
        if host.sitting.stage is Stage.RESTING:
            course.step(host.sitting, Step.GO_ON)
        host.showing.say("")
        host.say("Going on.")

    await host.app.push_screen(Rest(over))


async def _go_on(host: StepsHost) -> None:
    course.step(host.sitting, Step.GO_ON)
    host.showing.say("")
    host.say("Going on.")


async def _close(host: StepsHost) -> None:
    """Close once it is answered what to ask next time; Esc there lets the sitting go on."""

    async def answer(answers: dict[str, str]) -> str:
        try:
            course.ask_next_time(host.sitting, answers["next"])
            course.step(host.sitting, Step.CLOSE)
        except BoxloreError as error:
            return str(error)
        host.showing.say(THANKS)
        await _summary(host)
        return ""

    hint = "Several with a semicolon between. Empty, if nothing."
    above = "Say thank you, and what happens next. Then write:"
    blank = Blank("next", "What to ask next time?", "", hint)
    await Form("End the sitting", [blank], answer, above=above).open(host.app)


async def _summary(host: StepsHost) -> None:
    lines = "\n".join(course.summary(host.sitting).lines())
    claps = [clock_of(at) for at in course.claps(host.sitting.collection, host.sitting.id)]
    claps_line = f"\nClaps at {', '.join(claps)} of the sitting." if claps else ""
    ended = "\n\nThe sitting has ended. Ctrl+Q leaves; “Go on” opens it again."
    after = ended if host.sitting.stage is Stage.CLOSING else ""
    notice = Notice(f"{host.sitting.teller_named}: summary", lines + claps_line + after)
    notice.goes_back(partial(open_course, host))
    await host.app.push_screen(notice)


async def _started(host: StepsHost) -> None:
    at = course.note(host.sitting, "recording started")
    host.say(f"Noted at {clock_of(at)} of the sitting. “Clap” and one clap lay the recording beside it to the second.")


async def _clap(host: StepsHost) -> None:
    number = course.clap(host.sitting)
    host.say(f"Clap {number} noted. Find it in the recording afterwards, and give where it is heard.")


async def _closed(host: StepsHost) -> None:
    def answer(answers: dict[str, str]) -> str:
        try:
            minutes = float(answers["minutes"].replace(",", "."))
        except ValueError:
            return "Write how many minutes, such as 5."
        if not 0 < minutes < 600:
            return "Write how many minutes, such as 5."
        told = course.close_passage(host.sitting, minutes, answers["why"])
        host.refresh_record()
        host.say(
            f"The last {answers['minutes']} minutes are kept from outside: {several(told, 'answer')}, and the sound."
        )
        return ""

    blanks = [
        Blank("minutes", "How many minutes, up to now?", "5"),
        Blank("why", "Why?", "", "For the keeper only. May stay empty."),
    ]
    await Form("Keep the last minutes from outside", blanks, answer).open(host.app)


def _no_file(file: Path) -> str:
    """What is said where a form names no file that is there; '' where it does."""
    if file == Path():
        return "No file is named. Write its path, or look for it with F3."
    return "" if file.is_file() else f"There is no file {file}. Tab completes a path, F3 looks through the folders."


async def _recording(host: StepsHost) -> None:
    sitting = host.sitting

    def answer(answers: dict[str, str]) -> str:
        try:
            clap_at = moment_of(answers["at"]) if answers["at"] else None
            number = int(answers.get("clap") or 1)
        except ValueError:
            return "Write minutes and seconds, such as 0:12; and the clap’s number, such as 1."
        if fault := _no_file(file := typed_path(answers["file"])):
            return fault
        try:
            kept_file = keep_recording(sitting.collection, sitting.id, file, clap_at=clap_at, clap=number)
        except BoxloreError as error:
            return str(error)
        host.say(f"{kept_file.path} is kept ({kept_file.because}).")
        return ""

    have = len(course.claps(sitting.collection, sitting.id))
    blanks = [
        Blank(
            "file",
            "The sound file",
            "",
            "It is copied; yours stays. One after the other, if a call split it.",
            path="file",
        ),
        Blank("at", "Where in it is a clap heard?", "", "Minutes and seconds: 0:12. Empty, if none."),
    ]
    if have:
        blanks.append(Blank("clap", "Which clap is that?", str(have), f"{have} noted in this sitting."))
    await Form("Keep a recording", blanks, answer).open(host.app)


async def _paper(host: StepsHost) -> None:
    def answer(answers: dict[str, str]) -> str:
        if fault := _no_file(file := typed_path(answers["file"])):
            return fault
        try:
            kept_file = keep_paper(host.sitting.collection, host.sitting.id, file, answers["what"])
        except BoxloreError as error:
            return str(error)
        host.say(f"{kept_file.path} is kept.")
        return ""

    blanks = [
        Blank("file", "The scanned paper", "", "PDF or picture.", path="file"),
        Blank("what", "What is it?", "agreement"),
    ]
    await Form("Keep a signed paper", blanks, answer).open(host.app)


async def _story(host: StepsHost) -> None:
    async def chosen(kind: str) -> None:
        def keep(name: str, words: str) -> str:
            try:
                story_about(host.sitting, kind, name, words, host.record.id)
            except BoxloreError as error:
                return str(error)
            host.say("The story is kept. Ctrl+Z takes it back.")
            return ""

        async def answer(answers: dict[str, str]) -> str:
            name, words = answers.get("name", ""), answers["words"]
            try:
                is_new = kind != "sitting" and not is_known(host.sitting, kind, name)
            except BoxloreError as error:
                return str(error)
            if not (is_new and words):
                return keep(name, words)

            async def again(fault: str = "") -> None:
                await form.anew(answers, fault).open(host.app)

            async def take(meant: str) -> None:
                if fault := keep(meant, words):
                    await again(fault)

            await ask_new(host.app, host.sitting, name, take, kind=kind, back=again)
            return ""

        blanks = [Blank("words", "The story", "", "In the teller’s own words.")]
        if kind != "sitting":
            known = names_known(host.sitting) if kind == "person" else None
            blanks.insert(0, Blank("name", f"Name of the {kind}", known=known))
        form = Form("A story of no picture", blanks, answer)
        await form.open(host.app)

    choices = [Choice(kind, f"Of {_ARTICLES.get(kind, 'a')} {kind}") for kind in ABOUT]
    await host.app.push_screen(Choices("A story of no picture", choices, chosen))


_ARTICLES = {"sitting": "this", "event": "an"}

_DO: dict[str, Callable[[StepsHost], Awaitable[None]]] = {
    "prepare": _prepare,
    "consent": _consent,
    str(Step.REST): _rest,
    str(Step.GO_ON): _go_on,
    str(Step.CLOSE): _close,
    "started": _started,
    "clap": _clap,
    "closed": _closed,
    "recording": _recording,
    "paper": _paper,
    "summary": _summary,
    "story": _story,
}
