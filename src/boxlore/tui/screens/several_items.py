"""One thing of many photographs: as the one that is out has it, or in words; who may see them; another box."""

from collections.abc import Sequence
from typing import Any, Protocol

from textual.app import App

from boxlore.core.errors import BoxloreError
from boxlore.core.fields.table import FIELDS
from boxlore.core.findings import several
from boxlore.core.originals.moves import move
from boxlore.core.records.item_record import Record
from boxlore.tasks.originals.housing_changes import carry_out
from boxlore.tasks.originals.housing_now import house_of
from boxlore.tasks.sitting.linking import OF_ALL, SAME, had, keep_all_to, same_as, say_of_all
from boxlore.tasks.sitting.session import Sitting
from boxlore.tasks.telling.undoing import Done
from boxlore.tui.screens.audience_lines import audience_blanks, audience_read, for_whom
from boxlore.tui.screens.cards import NOWHERE, Choice, Choices
from boxlore.tui.screens.forms import Answers, Blank, Form
from boxlore.tui.screens.person_actions import names_known
from boxlore.tui.widgets.plain_text import short


class ManyHost(Protocol):
    """What the cards need of the list below them."""

    @property
    def app(self) -> App[Any]: ...

    def said_of_many(self, words: str) -> None: ...

    def refused(self, words: str) -> None: ...

    def put_back(self) -> None: ...


SAME_KEYS = dict(zip(SAME, "12345s", strict=True))
KEYS = {
    "occasion": "o", "date": "d", "place": "p", "person": "w", "photographer": "f", "process": "r", "enclosure": "e",
    "care": "c", "series": "v", "note": "n", "audience": "a", "move": "m", "none": "0",
}  # fmt: skip
"""The key of each line: it stays the same where the lines above it come and go."""
_ABOUT = {
    "process": "how they were made: tintype, colour slide",
    "enclosure": "their sleeve, envelope or album",
    "care": "to be read before they are shown",
    "series": "their part of it: letters, the farm",
    "note": "for the keeper alone",
}
"""What is said of all, where no question of the sitting asks it."""


async def of_many(host: ManyHost, sitting: Sitting, items: Sequence[str], model: Record) -> None:
    """Ask what is so of all these items (ids); `model` is the one that is out."""
    same = same_choices(model, "same:")
    about = _ABOUT | {prompt.field: prompt.question for prompt in sitting.prompts}
    said = [Choice(f"say:{field}", FIELDS[field].label, about.get(field, ""), KEYS[field]) for field in OF_ALL]
    rest = [
        Choice("audience", "Who may see them", key=KEYS["audience"]),
        Choice("move", "Another box or folder", key=KEYS["move"]),
        Choice("none", "Let go of all that are picked", key=KEYS["none"]),
    ]

    async def answer(value: str) -> None:
        kind, _, name = value.partition(":")
        if kind == "same":
            _same(host, sitting, items, model, name)
        elif kind == "say":
            await _say(host, sitting, items, name)
        elif kind == "none":
            host.put_back()
        elif kind == "audience":
            await _audience(host, sitting, items)
        else:
            await _move(host, sitting, items)

    title = f"{len(items)} picked: as in {model.number}, or in words" if same else f"{len(items)} picked: in words"
    await host.app.push_screen(Choices(title, [*same, *said, *rest], answer, at=NOWHERE))


def same_choices(model: Record, before: str = "") -> list[Choice]:
    """What can be taken over from an item: a line for each thing that is told of it. `before` begins their values."""
    told = [(name, words) for name in SAME if (words := had(model, name))]
    if len(told) < 3:  # one thing alone is all of these
        told = told[:1]
    return [Choice(f"{before}{name}", f"Same {name}", words, SAME_KEYS[name]) for name, words in told]


def _records(sitting: Sitting, items: Sequence[str]) -> list[Record]:
    return [sitting.record(item) for item in items]


def _same(host: ManyHost, sitting: Sitting, items: Sequence[str], model: Record, name: str) -> None:
    try:
        count = same_as(sitting, _records(sitting, items), model, name)
    except BoxloreError as error:
        host.refused(str(error))
        return
    host.said_of_many(f"{count} taken over from {model.number}.")


async def _say(host: ManyHost, sitting: Sitting, items: Sequence[str], field: str) -> None:
    def answer(answers: dict[str, str]) -> str:
        try:
            count = say_of_all(sitting, _records(sitting, items), field, answers["words"])
        except BoxloreError as error:
            return str(error)
        doubt = sitting.teller.understanding.doubt(field, answers["words"])
        host.said_of_many(f"{FIELDS[field].label}: “{short(answers['words'], 40)}”, told of {count}.{doubt}")
        return ""

    label = FIELDS[field].label
    completed = {
        "occasion": sitting.occasions.begun,
        "place": sitting.collection.store.complete_places,
        "person": names_known(sitting),
        "photographer": names_known(sitting),
    }
    known = completed.get(field)
    await Form(
        f"{label} of {len(items)}",
        [
            Blank(
                "words", label, "", "The same of all that are picked; they stay picked for the next thing.", known=known
            )
        ],
        answer,
    ).open(host.app)


async def _audience(host: ManyHost, sitting: Sitting, items: Sequence[str]) -> None:
    def answer(answers: Answers) -> str:
        try:
            audience = audience_read(answers)
            count = keep_all_to(sitting, _records(sitting, items), audience)
        except BoxloreError as error:
            return str(error)
        host.said_of_many(f"{several(count, 'is', 'are')} {for_whom(audience)} now.")
        return ""

    await Form(f"Who may see {len(items)}", audience_blanks("family", "Who may see them?"), answer).open(host.app)


async def _move(host: ManyHost, sitting: Sitting, items: Sequence[str]) -> None:
    def answer(answers: dict[str, str]) -> str:
        try:
            house = house_of(sitting.collection)
            plan = move(house.holding, list(items), house.named(answers["into"]).id, 0)
            act = carry_out(sitting.collection, plan)
        except BoxloreError as error:
            return str(error)
        if act:
            sitting.steps.remember(Done(act, plan.title, items[-1]))
        host.said_of_many(f"{plan.title}.")
        return ""

    blank = Blank("into", "Into which box or folder?", "", "Its mark, such as 3/12; it is noted under “Keep safe”.")
    await Form(f"Move {len(items)}", [blank], answer).open(host.app)
