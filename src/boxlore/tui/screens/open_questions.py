"""What Ctrl+P does: of an item, whatever is in question and can be answered by the keeper is answered here.

The question of the prompt with the cursor comes first. Else a single question is asked at once, and of several a card
asks which; what the answer at the cursor was read as, which may be wrong, stands there too.
"""

from collections.abc import Awaitable, Callable, Iterator
from dataclasses import dataclass
from functools import partial

from boxlore.core.fields.table import FIELDS
from boxlore.tasks.sitting.correcting import to_settle
from boxlore.tasks.sitting.which_date import read_date
from boxlore.tasks.sitting.which_name import open_name
from boxlore.tasks.sitting.which_person import open_person
from boxlore.tasks.sitting.which_place import open_place, read_place
from boxlore.tui.screens.beside_prompts import CHOSEN_AT_PROMPTS
from boxlore.tui.screens.cards import Choice, Choices
from boxlore.tui.screens.sitting_view import ItemView
from boxlore.tui.screens.which_meant import ask_which
from boxlore.tui.screens.which_name import ask_which_name
from boxlore.tui.screens.which_person import ask_which_person
from boxlore.tui.widgets.plain_text import short
from boxlore.tui.widgets.prompt_block import Block

NOTHING = "Nothing is in question here. At a date or a place that was read wrongly, Ctrl+P puts it right."


@dataclass(frozen=True, slots=True)
class Answerable:
    """A question that a card can answer: the field of its prompt, its words in short, and what opens the card."""

    field: str
    words: str
    ask: Callable[[], Awaitable[None]]


def answerable(screen: ItemView) -> Iterator[Answerable]:
    """The questions of the item that is out that can be answered, in the order of the prompts."""
    sitting, record = screen.sitting, screen.record
    for block in screen.blocks:
        prompt = block.prompt
        if prompt.field == "person":
            if (name := open_name(sitting, record)) is not None:
                yield Answerable("person", name.question, partial(ask_which_name, screen, name))
            if (person := open_person(sitting, record)) is not None:
                yield Answerable("person", person.asks, partial(ask_which_person, screen, person))
        elif prompt.reads in CHOSEN_AT_PROMPTS:
            question = read_date(sitting, record, prompt) or open_place(sitting, record, prompt)
            if question is not None and question.view.asks:  # a date that was read as none asks too
                words = f"{prompt.question} “{question.view.words}”"
                yield Answerable(prompt.field, words, partial(ask_which, screen, question, prompt))
        if any(conflict.field == prompt.field for conflict in record.conflicts) and to_settle(record, prompt.field):
            label = FIELDS[prompt.field].label
            yield Answerable(prompt.field, f"{label}: which answer is used?", partial(screen.settle, prompt.field))


def _read_at(screen: ItemView, block: Block) -> Answerable | None:
    """What the answer at a prompt was read as, so that it can be put right."""
    read = read_date(screen.sitting, screen.record, block.prompt) or read_place(
        screen.sitting, screen.record, block.prompt
    )
    if read is None:
        return None
    words = f"“{read.view.words}” means something else"
    return Answerable(block.prompt.field, words, partial(ask_which, screen, read, block.prompt))


async def ask_at(screen: ItemView, block: Block) -> None:
    """Ask what is in question at the prompt with the cursor; else what is in question of the item."""
    questions = list(answerable(screen))
    here = [question for question in questions if question.field == block.prompt.field]
    if here:
        await here[0].ask()
        return
    if (read := _read_at(screen, block)) is not None:
        questions.append(read)
    if not questions:
        screen.say(NOTHING)
    elif len(questions) == 1:
        await questions[0].ask()
    else:
        await _ask_one_of(screen, "What to ask here: which first?", questions)


async def ask_all(screen: ItemView) -> None:
    """Show all that is worth asking about the item: what can be answered here as lines to choose, the rest below."""
    questions = list(answerable(screen))
    answered = {question.words for question in questions}
    rest = ["".join(part if isinstance(part, str) else part[0] for part in parts) for parts in screen.questions]
    below = "\n".join(words for words in rest if not any(known in words for known in answered))
    if questions or below:
        await _ask_one_of(screen, "What to ask here", questions, below)
    else:
        screen.say("Nothing to ask follows from what is told here.")


async def _ask_one_of(screen: ItemView, title: str, questions: list[Answerable], below: str = "") -> None:
    async def answer(value: str) -> None:
        await questions[int(value)].ask()

    choices = [Choice(str(at), short(question.words, 200)) for at, question in enumerate(questions)]
    await screen.app.push_screen(Choices(title, choices, answer, below=below))
