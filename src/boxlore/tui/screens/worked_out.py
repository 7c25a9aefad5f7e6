"""What can be worked out of everything told: dates, each with its reasons; Enter goes to the photograph's date.

It is a proposal for the keeper alone, and nothing of it is written.
"""

from collections.abc import Callable
from functools import partial

from boxlore.core.findings import several
from boxlore.tasks.collection.progress import Progress
from boxlore.tasks.sitting.worked_out import DateWorkedOut, dates_worked_out
from boxlore.tui.screens.list_screen import LookingScreen, SittingHost
from boxlore.tui.widgets.plain_text import short
from boxlore.tui.widgets.row_list import Cells

TOLD_WIDTH = 26


class WorkedOutScreen(LookingScreen):
    """A row for each photograph of which everything told together says more than its date does."""

    def __init__(self, host: SittingHost) -> None:
        super().__init__("What can be worked out")
        self._host = host
        self._dated: list[DateWorkedOut] = []

    def look(self, progress: Progress) -> Callable[[], None]:
        """Work the dates out."""
        return partial(self._found, dates_worked_out(self._host.sitting.collection, progress))

    def _found(self, dated: list[DateWorkedOut]) -> None:
        self._dated = dated
        self._top.tell(right=f"{several(len(dated), 'photograph')} · Enter opens it · Esc back")
        self._rows.show(len(dated), self._cells, 0)
        self._at_row()

    def _cells(self, at: int, width: int) -> Cells:
        row = self._dated[at]
        told = short(f"“{row.told}”" if row.told else "no date told", TOLD_WIDTH)
        worked = row.worked or "these cannot all be so"
        return (
            (f"{row.number:<10} ", "strong"),
            (f"{told:<{TOLD_WIDTH}} ", "faint"),
            (short(worked, max(width - TOLD_WIDTH - 14, 8)), "plain"),
        )

    def _at_row(self) -> None:
        if not self._dated:
            self._whole.say(self._unfound or "Nothing more follows from what is told so far.")
            return
        row = self._dated[self._rows.at]
        head = f"{row.number}: {row.worked}, because" if row.worked else f"{row.number}: which of these is not so?"
        reasons = "".join(f"\n· {reason}" for reason in row.because)
        agree = "\nIf you agree, Enter goes to its date: tell it there." if row.worked else ""
        self._whole.say(head, (reasons, "$secondary"), (agree, "$faint"))

    async def action_take(self) -> None:
        """Go to the photograph, at its date."""
        if self._dated:
            self._host.show_item(self._dated[self._rows.at].item, "date")
