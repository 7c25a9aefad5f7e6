"""What stands beside the prompts of an item: who is where on its picture, and what is worth asking about it."""

from collections.abc import Iterable, Iterator, Sequence

from boxlore.core.records.item_record import Record
from boxlore.tasks.collection.prompts import Prompt
from boxlore.tasks.sitting.linking import related_lines
from boxlore.tasks.sitting.session import Sitting
from boxlore.tasks.sitting.which_name import open_name
from boxlore.tasks.sitting.which_person import open_people
from boxlore.tasks.telling.markers import Marked
from boxlore.tui.from_inside import from_inside
from boxlore.tui.widgets.plain_text import StyledText, short
from boxlore.tui.widgets.worth_asking import Question

CHOSEN_AT_PROMPTS = ("date", "place")
"""What prompts read that show below their words what is in question of them."""


def legend(record: Record, marked: Iterable[Marked]) -> list[StyledText]:
    """Numbers and names on the picture, whether it has a back, what it is related to; a care note before all."""
    parts: list[StyledText] = []
    for person in record.shown():
        if person.number:
            parts += ["▐", (str(person.number), "reverse"), "▌"]
            parts += [f" {person.name}{'?' if person.unsure else ''}   "]
    for mark in marked:
        if not mark.name:
            what = "not known" if mark.asked else "not named"
            parts += ["▐", (str(mark.number), "reverse"), f"▌ {what}   "]
    if any(scan.side == "verso" for scan in record.scans):
        parts.append(("F2 shows the back", "italic"))
    if related := related_lines(record):
        parts.append("\n" * bool(parts) + " · ".join(related))
    if care := record.words("care"):
        parts = [(f"Care: {care}\n", "bold $warning"), *parts]
    return parts


def worth_asking(sitting: Sitting, record: Record, prompts: Sequence[Prompt]) -> Iterator[Question]:
    """The questions about an item that do not stand at one of these prompts: what cannot all be so first, what was
    noted to ask last; `further_questions` come behind."""
    for conflict in record.conflicts:
        if conflict.field == "person":
            yield f"? Sources disagree, {conflict.words}. ", ("F4", "bold"), ", then Enter on one of the names"
        else:
            yield f"? Sources disagree, {conflict.words}. ", ("Ctrl+P", "bold"), " settles it"
    if (name := open_name(sitting, record)) is not None:
        yield f"? {name.question} ", ("Ctrl+P", "bold")
    to_ask = sitting.to_ask(record.id)
    everyone = list(open_people(sitting, record))
    if people := [question for question in everyone if not question.asked_before]:
        person = people[0]
        numbered = " · ".join(f"{number} {short(words, 34)}" for number, words in enumerate(person.names, 1))
        yield f"? {person.asks} ", ("Ctrl+P", "bold"), f" chooses: {numbered}"
        yield from ((f"? {question.asks}",) for question in people[1:])
        asked = {question.asks for question in people}
        to_ask = [words for words in to_ask if words not in asked]
    at_prompts = [prompt.field for prompt in prompts if prompt.reads in CHOSEN_AT_PROMPTS]
    at_prompts += ["person"] * bool(everyone)
    at_prompts += [conflict.field for conflict in record.conflicts]
    yield from ((f"? {from_inside(words)}",) for words in sitting.gentle_questions(record, but=at_prompts))
    yield from ((f"→ {words}",) for words in to_ask)


def further_questions(sitting: Sitting, record: Record) -> list[Question]:
    """What else the teller may be asked about an item, by the lives of those in it. What is told of those takes long
    to read, until the words of dates are made ready: call it once the item is drawn."""
    from boxlore.tasks.sitting import worked_out  # noqa: PLC0415  # the first question is drawn without it

    return [(f"? {words}",) for words in worked_out.worth_asking(sitting.collection, record, sitting.teller_named)]
