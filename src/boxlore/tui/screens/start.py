"""The first screen when no collection is open: start one, open one, or see the demonstration."""

from collections.abc import Awaitable, Callable
from pathlib import Path

from textual.app import ComposeResult
from textual.containers import Vertical
from textual.screen import Screen

from boxlore.core.errors import BoxloreError
from boxlore.tasks.collection.opening import DATABASE, start
from boxlore.tasks.collection.settings import Settings
from boxlore.tui.keys import bound
from boxlore.tui.screens.cards import Blank, Choice, Choices, Form
from boxlore.tui.screens.guide import GuideScreen
from boxlore.tui.widgets.plain_text import Line

FolderAction = Callable[[Path], Awaitable[str]]
"""What is done with the folder that was named. Returns what went wrong, or ''."""

WELCOME = (
    "Boxes of photographs, and someone who still knows.\n\n"
    "Boxlore sits with the two of you: it shows a scan, you ask, and every word is kept beside the number of the "
    "print and the box it lies in.\n"
)

FIVE = (
    ("Tab", "go on to the next question"),
    ("PgDn", "the next photograph"),
    ("F1", "the guide, at any time"),
    ("Esc", "the menu, or back"),
    ("Ctrl+Q", "leave; nothing is lost"),
)


class StartScreen(Screen[None]):
    """Offers to start a collection, open one or see the demonstration.

    `opened` opens a folder, `demo` makes the demonstration in one; `resumed` is called whenever this screen is on top
    again.
    """

    AUTO_FOCUS = ""
    BINDINGS = bound(
        ("s,1", "start"), ("o,2", "open"), ("d,3", "demo"), ("f1", "guide"), ("escape", "more"), ("ctrl+q,q", "leave")
    )
    DEFAULT_CSS = """
    StartScreen { align: center middle; }
    StartScreen .card { width: 76; }
    """

    def __init__(self, opened: FolderAction, demo: FolderAction, resumed: Callable[[], Awaitable[None]]) -> None:
        super().__init__()
        self._opened, self._demo, self._resumed = opened, demo, resumed
        self._note = Line(id="note")

    def compose(self) -> ComposeResult:
        with Vertical(classes="card"):
            yield Line("Boxlore", classes="title")
            yield Line(WELCOME)
            yield Line(
                ("  S  ", "bold $primary"), "Start a collection\n",
                ("  O  ", "bold $primary"), "Open one that is there\n",
                ("  D  ", "bold $primary"), "See the demonstration: the Tamm and Rourke families\n",
            )  # fmt: skip
            yield Line("Five keys are enough:", classes="faint")
            yield Line(*[part for cap, use in FIVE for part in ((f"  {cap:<7}", "bold"), f"{use}\n")])
            yield self._note

    def on_mount(self) -> None:
        self._note.display = False

    def say(self, words: str) -> None:
        """Show what went wrong, in a sentence."""
        self._note.display = bool(words)
        self._note.add_class("-bad")
        self._note.say(words)

    async def on_screen_resume(self) -> None:
        await self._resumed()

    async def action_start(self) -> None:
        """Start a collection."""

        async def answer(answers: dict[str, str]) -> str:
            folder = Path(answers["folder"]).expanduser()
            try:
                if not answers["folder"]:
                    return "Name a folder for it."
                prefix = answers["prefix"].upper()
                start(folder, Settings(title=answers["title"] or "Family photographs", prefix=prefix))
            except BoxloreError as error:
                return str(error)
            return await self._opened(folder)

        blanks = [
            Blank("folder", "Folder", "~/photographs", "Made if it is not there."),
            Blank("title", "Title", "Family photographs", "As an album or an archive shall call it."),
            Blank("prefix", "Letters of the numbers", "FAM", "Two to seven letters: FAM gives FAMA-0001."),
        ]
        await Form("Start a collection", blanks, answer).open(self.app)

    async def action_open(self) -> None:
        """Open a collection."""

        async def answer(answers: dict[str, str]) -> str:
            folder = Path(answers["folder"]).expanduser()
            if not (folder / DATABASE).is_file():
                return f"There is no collection in {folder}."
            return await self._opened(folder)

        await Form("Open a collection", [Blank("folder", "Folder", str(Path.cwd()))], answer).open(self.app)

    async def action_demo(self) -> None:
        """Make the demonstration and open it."""

        async def answer(answers: dict[str, str]) -> str:
            return await self._demo(Path(answers["folder"]).expanduser())

        blank = Blank("folder", "Folder for it", "~/tamm_family", "Made if it is not there; delete it when you like.")
        await Form("The demonstration", [blank], answer).open(self.app)

    async def action_guide(self) -> None:
        """Show the guide."""
        await self.app.push_screen(GuideScreen())

    async def action_more(self) -> None:
        """Show the same choices as a menu, for who looks for one at Esc."""

        async def answer(value: str) -> None:
            await self.run_action(value)

        choices = [
            Choice("start", "Start"),
            Choice("open", "Open"),
            Choice("demo", "Demonstration"),
            Choice("leave", "Leave"),
        ]
        await self.app.push_screen(Choices("Boxlore", choices, answer))

    async def action_leave(self) -> None:
        """Leave the program."""
        await self.app.run_action("leave")
