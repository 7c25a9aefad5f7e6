"""The first screen when no collection is open: start one, open one, or see the demonstration."""

from collections.abc import Awaitable, Callable, Sequence
from dataclasses import replace
from pathlib import Path

from textual.app import ComposeResult
from textual.containers import Vertical
from textual.screen import Screen

from boxlore.core.errors import BoxloreError
from boxlore.core.findings import several
from boxlore.core.places.country_defaults import UsualWays, usual_ways
from boxlore.core.statements import fold
from boxlore.tasks.collection.backups import has_backups
from boxlore.tasks.collection.opening import DATABASE, check_new_folder, files_beside, start
from boxlore.tasks.collection.settings import Settings, read_settings
from boxlore.tui.from_inside import PLACES, from_inside
from boxlore.tui.keys import bound
from boxlore.tui.screens.cards import Choice, Choices
from boxlore.tui.screens.forms import Answers, Back, Blank, Form
from boxlore.tui.screens.guide import GuideScreen
from boxlore.tui.screens.language_line import language_blank, language_read
from boxlore.tui.widgets.form_lines import typed_path
from boxlore.tui.widgets.plain_text import Line, short

FolderAction = Callable[[Path], Awaitable[str]]
"""What is done with the folder that was named. Returns what went wrong, or ''."""

Rebuild = Callable[[Path, Path, Callable[[str], Awaitable[None]]], Awaitable[None]]
"""Makes a collection in a folder from a transfer; the last asks again, and says what was wrong."""

FromParcel = Callable[[Path, Path, str, Callable[[str], Awaitable[None]]], Awaitable[None]]
"""Makes a working copy in a folder of what is in a parcel, with its passphrase; the last asks again."""

WELCOME = (
    "Boxes of photographs, and someone who still knows.\n\n"
    "Boxlore sits with the two of you: it shows a scan, you ask, and every word is kept beside the number of the "
    "print and the box it lies in.\n"
)

MOST_BELOW = 3
"""So many collections are named that lie below the folder in which there is none."""

FIVE = (
    ("Tab", "go on to the next question"),
    ("PgDn", "the next photograph"),
    ("F1", "the guide, at any time"),
    ("Esc", "the menu, or back"),
    ("Ctrl+Q", "leave; nothing is lost"),
)


class StartScreen(Screen[None]):
    """Offers to start a collection, open one or see the demonstration.

    `opened` opens a folder, `demo` makes the demonstration in one, `restore` asks for a backup of one and brings it
    back, `rebuild` makes one in a folder from a transfer, `from_parcel` from a parcel; `resumed` is called whenever
    this screen is on top again and returns what went wrong, or ''. `broken` is a folder that could not be opened, and
    why.
    """

    AUTO_FOCUS = ""
    BINDINGS = bound(
        ("s,1", "start"),
        ("o,2", "open"),
        ("d,3", "demo"),
        ("t,4", "rebuild"),
        ("p,5", "parcel"),
        ("r,6", "restore"),
        ("f1", "guide"),
        ("escape", "more"),
        ("ctrl+q,q", "leave"),
    )
    DEFAULT_CSS = """
    StartScreen { align: center middle; }
    StartScreen .card { width: 76; }
    """

    def __init__(
        self,
        opened: FolderAction,
        demo: FolderAction,
        restore: FolderAction,
        rebuild: Rebuild,
        from_parcel: FromParcel,
        resumed: Callable[[], Awaitable[str]],
        broken: tuple[Path, str] | None = None,
        recent: Sequence[Path] = (),
        *,
        hidden: bool = False,
        back: str = "",
    ) -> None:
        """`hidden`: nothing is shown of it until a card that stands on it has been closed. `back` is the title of the
        collection that is open, to which Esc goes back."""
        super().__init__()
        self._back = back
        self._hidden = hidden
        self._recent = list(recent)
        self._opened, self._demo, self._restore, self._resumed = opened, demo, restore, resumed
        self._rebuild, self._from_parcel = rebuild, from_parcel
        self._broken = broken
        self._note, self._way_back = Line(id="note"), Line(("  R  ", "bold $primary"), "Bring back a backup\n")
        self._five = Line(
            ("Five keys are enough:\n", "$faint"),
            *[part for cap, use in FIVE for part in ((f"  {cap:<7}", "bold"), f"{use}\n")],
        )

    def compose(self) -> ComposeResult:
        with Vertical(classes="card"):
            yield Line("Boxlore", classes="title")
            yield Line(WELCOME)
            yield Line(
                ("  S  ", "bold $primary"), "Start a collection\n",
                ("  O  ", "bold $primary"), "Open a collection\n",
                ("  D  ", "bold $primary"), "See the demonstration: the Tamm and Rourke families\n",
                ("  T  ", "bold $primary"), "Make one again from a transfer to an archive\n",
                ("  P  ", "bold $primary"), "Begin with a parcel that somebody sent",
            )  # fmt: skip
            yield self._way_back
            if self._back:
                yield Line(("  Esc  ", "bold $primary"), f"Back to “{short(self._back, 50)}”\n")
            yield self._five
            yield self._note

    def on_mount(self) -> None:
        self._note.display = False
        self._five.display = not self._back  # who has one open knows the keys; small screens have no room for both
        self.query_one(".card").visible = not self._hidden
        if self._broken is not None:
            self._offer(*self._broken)

    def _offer(self, folder: Path, words: str) -> None:
        """Say why a collection could not be opened, in place of the keys to learn."""
        self._broken = folder, words
        self._five.display = False
        self._note.styles.max_height = 8  # a path or two are in it
        self.say(words)

    def say(self, words: str) -> None:
        """Show what went wrong, in a sentence."""
        self._note.display = bool(words)
        self._note.add_class("-bad")
        self._note.say(from_inside(words).replace(PLACES["restore"], "R"))  # as it is called here

    async def on_screen_resume(self) -> None:
        if self._hidden:  # it comes up for the first time, and the card stands on it next
            self._hidden = False
            return
        self.query_one(".card").visible = True
        if words := await self._resumed():
            self.say(words)

    async def action_start(self) -> None:
        """Start a collection: what it is called and where the family lives, then how that country says things."""

        async def answer(answers: Answers) -> str:
            if not answers["folder"]:
                return "Name a folder for it."
            if fault := _cannot_be_made(answers["folder"]):
                return fault
            usual = usual_ways(answers["country"])
            if usual is None:
                return f"“{answers['country'][:40]}” may be no country, or several. Write its whole English name."

            async def back() -> None:
                await form.anew(answers, "").open(self.app)

            async def go_on(folder: str) -> None:
                answers["folder"] = folder
                await self._ask_ways(answers, usual, back=back)

            await self._ask_apart(answers["folder"], go_on, back)
            return ""

        blanks = [
            Blank("title", "What is it called?", "Family photographs", "As an album or an archive shall call it."),
            Blank(
                "country",
                "In which country does the family live?",
                "",
                "In English. Its places and holidays come first, and its ways are offered next. May stay empty.",
            ),
            Blank(
                "folder",
                "Folder",
                "~/photographs",
                "A new one, apart from your scans; made if it is not there.",
                path="folder",
            ),
        ]
        form = Form("Start a collection", blanks, answer)
        await form.open(self.app)

    async def _ask_apart(self, folder: str, go_on: Callable[[str], Awaitable[None]], back: Back) -> None:
        """Where files lie in the folder already, such as the scans, ask whether the collection shall be apart."""
        count = files_beside(typed_path(folder))
        if not count:
            await go_on(folder)
            return
        beside = f"{folder.rstrip('/')}_collection"
        choices = [
            Choice(beside, "In a folder beside it", f"{beside}; your files are taken in from where they are"),
            Choice(folder, "In it, among them", "what Boxlore makes then lies between your files"),
        ]
        title = f"{several(count, 'file lies', 'files lie')} in {folder} already. Where shall the collection be?"
        await self.app.push_screen(Choices(title, choices, go_on, back=back))

    async def _ask_ways(self, first: Answers, usual: UsualWays, back: Back) -> None:
        async def answer(answers: dict[str, str]) -> str:
            folder = typed_path(first["folder"])
            language, fault = language_read(answers["language"])
            if fault:
                return fault
            settings = Settings(
                title=first["title"] or "Family photographs",
                prefix=answers["prefix"].upper(),
                language=language,
                day_order=answers["day_order"],
                hemisphere=answers["hemisphere"],
                countries=usual.country,
            )
            try:
                start(folder, settings)
            except BoxloreError as error:
                return str(error)
            return await self._opened(folder)

        order = (("", "ask each time"), ("dmy", "7 April 1952"), ("mdy", "July 4, 1952"))
        summer = (("north", "June to August"), ("south", "December to February"))
        blanks = [
            replace(language_blank(usual.language), name="language", label="Which language do they mostly tell in?"),
            Blank("day_order", "How is 7/4/52 read?", usual.day_order, choices=order),
            Blank("hemisphere", "When is summer?", usual.hemisphere, choices=summer),
            Blank("prefix", "Letters before each number", letters_of(first["title"]),
                  "Two to seven letters that begin every number: FAM gives FAMA-0001."),
        ]  # fmt: skip
        await Form("Language, dates and seasons", blanks, answer, back=back).open(self.app)

    async def action_open(self) -> None:
        """Open a collection."""

        async def answer(answers: dict[str, str]) -> str:
            folder = typed_path(answers["folder"])
            if not (folder / DATABASE).is_file() and not has_backups(folder):
                below = sorted(path.parent for path in folder.glob(f"*/{DATABASE}"))[:MOST_BELOW]
                there = f" There is one in {' and in '.join(map(str, below))}." if below else ""
                return f"There is no collection in {folder}.{there}"
            words = await self._opened(folder)
            if words and has_backups(folder):
                self._offer(folder, words)
                return ""
            return words

        async def form() -> None:
            blank = Blank("folder", "Folder", str(Path.cwd()), path="folder")
            await Form("Open a collection", [blank], answer).open(self.app)

        if not self._recent:
            await form()
            return

        async def chosen(value: str) -> None:
            if not value:
                await form()
            elif words := await answer({"folder": value}):
                self.say(words)

        choices = [Choice(str(folder), short(_title_of(folder), 40), short(str(folder), 60)) for folder in self._recent]
        await self.app.push_screen(Choices("Open a collection", [*choices, Choice("", "Another folder")], chosen))

    async def action_demo(self) -> None:
        """Make the demonstration and open it."""

        async def answer(answers: dict[str, str]) -> str:
            return _cannot_be_made(answers["folder"]) or await self._demo(typed_path(answers["folder"]))

        blank = Blank(
            "folder",
            "Folder for it",
            "~/tamm_family",
            "Made if it is not there; delete it when you like.",
            path="folder",
        )
        await Form("The demonstration", [blank], answer).open(self.app)

    async def action_rebuild(self) -> None:
        """Make a collection again from a transfer, and open it. What was wrong with the folders is said on the form."""
        blanks = [
            Blank("package", "Folder of the transfer", "", "Where its folders open and closed lie; it stays as it is.",
                  path="folder"),
            Blank("folder", "Folder for the collection", "~/photographs", "Made if it is not there.", path="folder"),
        ]  # fmt: skip

        async def answer(answers: dict[str, str]) -> str:
            if not answers["package"] or not answers["folder"]:
                return "Name both folders."
            package = typed_path(answers["package"])
            if package.is_file():
                return f"{package.name} is a file. A parcel is opened with P, “Begin with a parcel”."
            if not package.is_dir():
                return f"There is no folder {package}."
            if fault := _cannot_be_made(answers["folder"]):
                return fault

            async def again(fault: str) -> None:
                await form.anew(answers, fault).open(self.app)

            await self._rebuild(typed_path(answers["folder"]), package, again)
            return ""

        form = Form("Make one again from a transfer", blanks, answer)
        await form.open(self.app)

    async def action_parcel(self) -> None:
        """Make a working copy of the first parcel that somebody sent, and open it."""
        blanks = [
            Blank("file", "The parcel", "", "A file that was made by “Hand on”, “A parcel”, for one without a working "
                  "copy.", path="file"),
            Blank("folder", "Folder for the working copy", "~/photographs", "Made if it is not there.", path="folder"),
            Blank("passphrase", "Passphrase", "", "Only where the parcel is locked."),
        ]  # fmt: skip

        async def answer(answers: Answers) -> str:
            if not answers["file"] or not answers["folder"]:
                return "Name the parcel and a folder."
            parcel = typed_path(answers["file"])
            if not parcel.is_file():
                return f"There is no file {parcel}. Tab completes a path, F3 looks through the folders."
            if fault := _cannot_be_made(answers["folder"]):
                return fault

            async def again(fault: str) -> None:
                await form.anew(answers, fault).open(self.app)

            await self._from_parcel(typed_path(answers["folder"]), parcel, answers["passphrase"], again)
            return ""

        form = Form("Begin with a parcel", blanks, answer)
        await form.open(self.app)

    async def action_restore(self) -> None:
        """Bring a backup back: of the collection that could not be opened, else of one that is named."""

        async def answer(answers: dict[str, str]) -> str:
            folder = typed_path(answers["folder"])
            return await self._restore(folder) if has_backups(folder) else f"There are no backups in {folder}."

        if self._broken is not None:
            await self._restore(self._broken[0])
        else:
            blank = Blank("folder", "Folder of the collection", str(Path.cwd()), path="folder")
            await Form("Bring back a backup", [blank], answer).open(self.app)

    async def action_guide(self) -> None:
        """Show the guide."""
        await self.app.push_screen(GuideScreen())

    async def action_more(self) -> None:
        """Go back to the collection that is open; else show the same choices as a menu, for who looks for one at
        Esc."""
        if self._back:
            self.app.pop_screen()
            return

        async def answer(value: str) -> None:
            await self.run_action(value)

        choices = [
            Choice("start", "Start a collection", key="s"),
            Choice("open", "Open a collection", key="o"),
            Choice("demo", "See the demonstration", key="d"),
            Choice("rebuild", "Make one again from a transfer", "of what an archive has", "t"),
            Choice("parcel", "Begin with a parcel", "that somebody sent", "p"),
            Choice("restore", "Bring back a backup", "as the collection was before", "r"),
            Choice("leave", "Leave", key="q"),
        ]
        await self.app.push_screen(Choices("Boxlore", choices, answer))

    async def action_leave(self) -> None:
        """Leave the program."""
        await self.app.run_action("leave")


def _cannot_be_made(folder: str) -> str:
    """Why no collection can be made in a folder; '' where one can."""
    try:
        check_new_folder(typed_path(folder))
    except BoxloreError as error:
        return str(error)
    return ""


def _title_of(folder: Path) -> str:
    """The title of the collection in a folder; the name of the folder where its settings cannot be read."""
    try:
        return read_settings(folder).title
    except BoxloreError:
        return folder.name


def letters_of(title: str) -> str:
    """Letters for the numbers, from the title: “Tamm and Rourke” gives TR, “Our photographs” gives OP; FAM else."""
    words = [fold(word) for word in title.split() if word[:1].isalpha() and fold(word) not in ("and", "the", "of")]
    letters = "".join(word[0] for word in words if word[0].isascii())[:3].upper()
    return letters if len(letters) >= 2 else "FAM"
