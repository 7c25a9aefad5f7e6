"""The card that settles which of several answers is used: each answer with who says so, both, or none."""

from collections.abc import Callable
from typing import Any, Protocol

from textual.app import App

from boxlore.core.fields.table import FIELDS
from boxlore.core.records.item_record import Record, StatementView
from boxlore.tasks.sitting import correcting
from boxlore.tasks.sitting.session import Sitting
from boxlore.tui.screens.cards import NOWHERE, Choice, Choices
from boxlore.tui.widgets.plain_text import short
from boxlore.tui.widgets.prompt_block import who_says

BOTH, DOUBTFUL = "both", ""
SETTLED = "Settled. What the others said stays on record. Ctrl+Z takes it back; a later answer opens it again."
WIDEST = 40
"""Letters of an answer that are shown on its line."""


class SettlingHost(Protocol):
    """What the card needs of the screen below it."""

    @property
    def sitting(self) -> Sitting: ...

    @property
    def app(self) -> App[Any]: ...


async def ask_settle(
    host: SettlingHost, record: Record, field: str, done: Callable[[str], None], first: StatementView | None = None
) -> None:
    """Open the card for this field of an item; `first` is the answer that stands first. `done` is
    called with what was done, in a sentence."""
    answers = sorted(
        correcting.to_settle(record, field), key=lambda view: first is None or view.statement != first.statement
    )
    choices = [
        *(Choice(view.statement, f"“{short(view.words, WIDEST)}”", who_says(view)) for view in answers),
        Choice(BOTH, "Keep both" if len(answers) == 2 else "Keep all", "each may be so: two days, two names", key="k"),
        Choice(DOUBTFUL, "Cannot be said", "all stay, marked doubtful", key="c"),
    ]

    def answer(value: str) -> None:
        chosen, outcome = ("", value) if value == BOTH else (value, "chosen" if value else "doubtful")
        correcting.settle(host.sitting, record, field, tuple(answers), chosen, outcome=outcome)
        done(SETTLED)

    title = f"{FIELDS[field].label}: which answer is used?"
    below = "The others stay on record."
    await host.app.push_screen(Choices(title, choices, answer, below=below, at=NOWHERE))
