"""The survey: one box, item by item, one key for each thing that is seen on it.

All keys pass through one handler in the order in which they were pressed, and so does leaving; so none acts on the
wrong item. An item's answer is kept on turning to the next item and on leaving, by key or by signal.
"""

from collections.abc import Callable
from contextlib import suppress
from typing import Any, Protocol

from textual import events
from textual.app import App, ComposeResult
from textual.containers import Horizontal
from textual.message import Message
from textual.screen import Screen

from boxlore.core.errors import BoxloreError
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.originals.survey_keys import ATTACHED, CHOICES, CONDITION, ENCLOSURE, MOVE_WORDS, SurveyRun
from boxlore.tasks.sitting.session import Sitting
from boxlore.tui.screens.forms import Blank, Form
from boxlore.tui.screens.guide import GuideScreen
from boxlore.tui.themed_app import ThemedApp
from boxlore.tui.widgets.bars import Top
from boxlore.tui.widgets.plain_text import Line

HEADINGS = ((ENCLOSURE, "Enclosure"), (ATTACHED, "Still attached"), (CONDITION, "Condition"))


class SurveyScreen(Screen[None]):
    """Shows the item at hand and its answer; `originals.survey_keys` does the work. At the end it calls `left`."""

    AUTO_FOCUS = ""
    DEFAULT_CSS = """
    SurveyScreen .about { padding: 0 1; height: auto; }
    SurveyScreen Horizontal { height: auto; margin: 1 1 0 1; }
    SurveyScreen .group { width: 1fr; height: auto; }
    SurveyScreen #said { dock: bottom; width: 100%; height: auto; margin: 0 0 1 0; padding: 0 1; color: $secondary;
                         background: $background; }
    SurveyScreen #said.-bad { color: $error; text-style: bold; }
    SurveyScreen #keys { dock: bottom; width: 100%; height: 1; background: $panel; padding: 0 1; }
    """

    class Leave(Message):
        """Asks the screen to leave, after it has handled every key pressed before."""

    def __init__(self, run: SurveyRun, left: Callable[[], None]) -> None:
        super().__init__()
        self.run, self._left = run, left
        self._top, self._about, self._note = Top(), Line(classes="about"), Line(id="said")
        self._groups = {name: Line(classes="group") for name, _ in HEADINGS}

    def compose(self) -> ComposeResult:
        yield self._top
        yield self._about
        with Horizontal():
            yield from self._groups.values()
        yield self._note
        keys = [part for cap, words in MOVE_WORDS for part in ((cap, "bold $primary"), f" {words}  ")]
        yield Line(*keys, id="keys")

    def on_mount(self) -> None:
        self._draw()

    async def on_key(self, event: events.Key) -> None:
        """Every key, in order."""
        event.stop()
        event.prevent_default()
        if event.key == "f1":
            await self.app.push_screen(GuideScreen())
            return
        key = event.key.lower() if len(event.key) == 1 else event.key  # Caps Lock, or Shift
        self._do(lambda: self.run.press(key))

    def on_survey_screen_leave(self) -> None:
        self._do(self.run.leave)

    def on_unmount(self) -> None:
        if not self.run.over:
            with suppress(BoxloreError):  # the screen is gone: there is nobody left to tell
                self.run.leave()

    def _do(self, step: Callable[[], None]) -> None:
        if self.run.over:
            return
        try:
            step()
        except BoxloreError as error:
            self._draw()
            self._say(f"NOT SAVED: {error}", bad=True)
            return
        if self.run.over:
            self._left()
        else:
            self._draw()

    def _draw(self) -> None:
        run, answer = self.run, self.run.standing
        record = run.record
        mark = record.mark.long if record.mark else "no place"
        self._top.tell(f"{record.number}  {mark}", f"{run.position + 1} of {len(run.ids)}")
        size = (
            f"{run.typed}▏ mm, Enter takes it" if run.typed is not None else f"{answer.size} mm" if answer.size else "–"
        )
        writing = "yes" if answer.writing else "–"
        about = (f"j kind  {answer.kind}", f"z size  {size}", f"w writing on the back  {writing}")
        self._about.say("     ".join(about))
        chosen = {*answer.attached, *answer.condition, answer.enclosure}
        for name, heading in HEADINGS:
            parts: list[str | tuple[str, str]] = [(f"{heading}\n", "bold $primary")]
            for choice in (choice for choice in CHOICES if choice.group == name):
                on = choice.words in chosen
                line = f"{'■' if on else '·'} {choice.key}  {choice.words}\n"
                parts.append((line, "bold") if on else line)
            self._groups[name].say(*parts, *self._others(name))
        cautions = run.cautions
        self._say(run.said or " ".join(cautions), bad=bool(cautions) and not run.said)

    def _others(self, name: str) -> list[str | tuple[str, str]]:
        """The lines for words noted in this group that no key stands for, as `boxlore survey --note` can note them."""
        answer = self.run.standing
        known_words = {choice.words for choice in CHOICES}
        words = {ENCLOSURE: [answer.enclosure], ATTACHED: answer.attached, CONDITION: answer.condition}[name]
        return [(f"■    {written}\n", "bold") for written in words if written and written not in known_words]

    def _say(self, words: str, *, bad: bool = False) -> None:
        self._note.set_class(bad, "-bad")
        self._note.say(words)


class SurveyHost(Protocol):
    """What the survey needs of the screen that opens it."""

    sitting: Sitting

    @property
    def app(self) -> App[Any]: ...

    def say(self, words: str, *, bad: bool = False) -> None: ...

    def task_done(self, *, wrote: bool) -> None: ...


async def ask_box(host: SurveyHost) -> None:
    """Ask which box, then open the survey of it above the present screen."""
    if not host.sitting.writable:
        host.say("Open for reading only; nothing can be changed.", bad=True)
        return

    def left() -> None:
        host.app.pop_screen()
        host.task_done(wrote=True)

    async def begin(answers: dict[str, str]) -> str:
        run = SurveyRun(host.sitting.collection, answers["mark"].strip())
        await host.app.push_screen(SurveyScreen(run, left))
        return ""

    blank = Blank("mark", "Which box?", "", "Its mark, such as 3 or 3/12; empty for all photographs.")
    await Form("Survey a box", [blank], begin).open(host.app)


class Survey(ThemedApp):
    """An app that shows only the survey, for `boxlore survey`."""

    def __init__(self, run: SurveyRun) -> None:
        super().__init__()
        self._run = run

    async def on_mount(self) -> None:
        self.signals.hear(draws=not self.is_headless)
        await self.push_screen(SurveyScreen(self._run, lambda: self.exit(0)))

    def at_last(self) -> None:
        """Keep the answer at hand; called at the very end, for the case that the screen could not do it."""
        with suppress(BoxloreError):
            if not self._run.over:
                self._run.leave()

    def signalled(self) -> None:
        self.screen.post_message(SurveyScreen.Leave())

    async def action_quit(self) -> None:
        self.signalled()


def run(collection: Collection, mark: str) -> int:
    """Survey the box at this mark ('' for all items). Returns an exit code."""
    app = Survey(SurveyRun(collection, mark))
    code = app.run()
    return 3 if app.return_code else code or 0
