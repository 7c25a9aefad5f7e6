"""Prints on a sheet: which pictures are outlined by hand, and how what was drawn is taken in; from the menu, and for
`boxlore intake --find-prints hand`."""

from boxlore.core.errors import BoxloreError
from boxlore.tasks.collection.progress import Progress
from boxlore.tasks.scans.outlines_by_hand import OutlinesByHand
from boxlore.tasks.scans.pairing import Planned
from boxlore.tasks.sitting.tellers_page import Showing
from boxlore.tui.menu_tasks.taking_in import COPY, carry_out, plan_of_sheets, where_blanks
from boxlore.tui.menu_tasks.task import TaskHost, file_blank
from boxlore.tui.screens.forms import Form
from boxlore.tui.screens.long_task import WorkingScreen
from boxlore.tui.screens.outlines import OutlineScreen
from boxlore.tui.themed_app import ThemedApp

TITLE = "Prints on a sheet"


async def ask_sheets(host: TaskHost, showing: Showing) -> None:
    """Ask which pictures, have the outlines on them put right, then take them in; all of it is one step."""
    if not host.sitting.writable:
        host.say("Open for reading only; nothing can be changed.", bad=True)
        return
    collection = host.sitting.collection

    async def begin(answers: dict[str, str]) -> str:
        try:
            given, plan = plan_of_sheets(collection, answers)
        except BoxloreError as error:
            return str(error)
        hand = OutlinesByHand(collection, plan)
        if not hand.sheets:
            return "No picture there may show several prints: each has a back, or is here already."

        def left() -> None:
            host.app.pop_screen()
            host.task_done(wrote=False)

        async def taken(planned: list[Planned]) -> None:
            def job(progress: Progress) -> list[str]:
                what = [TITLE]
                with host.sitting.steps.one_step(what):
                    moved = hand.put_right()
                    lines = carry_out(collection, planned, given, answers, progress)
                    what[0] = lines[0].removesuffix(".")
                return [
                    *moved,
                    *lines,
                    "Ctrl+Z, back at the photograph, takes it back; your own files stay where they are.",
                ]

            host.app.pop_screen()
            await host.app.push_screen(WorkingScreen(TITLE, job, lambda: host.task_done(wrote=True)))

        await host.app.push_screen(OutlineScreen(hand, showing, taken, left))
        return ""

    blanks = [
        file_blank(collection, "path", "Folder, file, or a number", "", "A number: of a sheet that is in already."),
        *where_blanks(),
        COPY,
    ]
    await Form(TITLE, blanks, begin).open(host.app)


class ByHand(ThemedApp):
    """An app that shows only the outlines, for `boxlore intake --find-prints hand`."""

    def __init__(self, hand: OutlinesByHand, showing: Showing) -> None:
        super().__init__()
        self._hand, self._showing = hand, showing
        self.planned: list[Planned] | None = None
        """What was taken; None where nothing was."""

    async def on_mount(self) -> None:
        self.signals.hear(draws=not self.is_headless)

        async def taken(planned: list[Planned]) -> None:
            self.planned = planned
            self.exit(0)

        await self.push_screen(OutlineScreen(self._hand, self._showing, taken, lambda: self.exit(0)))

    async def action_leave(self) -> None:
        """Leave without taking anything."""
        self.exit(0)

    async def action_quit(self) -> None:
        self.exit(0)


def by_hand(hand: OutlinesByHand, showing: Showing) -> list[Planned] | None:
    """The plan with an item for each outline, put right by hand; None where nothing is to be taken. The items that are
    here are as they were: `hand.put_right` changes them."""
    if not hand.sheets:
        return list(hand.plan)
    showing.collection = hand.collection
    app = ByHand(hand, showing)
    app.run()
    return app.planned
