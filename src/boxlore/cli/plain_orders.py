"""The orders of the plain sitting (`.next`), as one table, and the loop that reads lines: what is no order is heard by
`plain_sitting.Plain.hear`."""

from collections.abc import Callable
from contextlib import AbstractContextManager, nullcontext

from boxlore.cli import plain_choices, plain_names, plain_statements, plain_steps
from boxlore.cli.output import safe
from boxlore.cli.plain_sitting import Plain, PlainOrder, Say
from boxlore.core.errors import BoxloreError
from boxlore.core.findings import several
from boxlore.core.sitting.stages import Step
from boxlore.core.statements import Sure
from boxlore.tasks.sitting import course
from boxlore.tasks.sitting.beginning import known_tellers, offered
from boxlore.tasks.sitting.item_list import Listing
from boxlore.tasks.sitting.session import AUDIENCES, Sitting
from boxlore.tasks.sitting.tellers_page import Showing

_SURE = tuple(str(sureness) for sureness in Sure if sureness is not Sure.NOT_KNOWN)

ORDERS: dict[str, tuple[PlainOrder, str]] = {
    "next": (lambda plain, _: plain.turn(1), "the next photograph."),
    "before": (lambda plain, _: plain.turn(-1), "the photograph before."),
    "go": (Plain.go, "a photograph by number or place: .go TRA-0042, .go 3/12/4."),
    "find": (Plain.find, "what holds these words: .find regatta."),
    "list": (Plain.list_items, "photographs: .list bare, begun, told, to ask, all."),
    "question": (lambda plain, _: plain.ask(), "the question again."),
    "read": (lambda plain, _: plain.open(plain.position), "this photograph again from the start."),
    "who": (plain_statements.who, "everything told of this photograph, numbered, and who says so."),
    "correct": (Plain.correct, "the answer in the place of the last one: .correct It was in May."),
    "place": (plain_choices.place, "which place is meant: .place, then .place 2, .place near 2 or .place own."),
    "name": (plain_names.name, "how a doubtful name is taken apart: .name, then .name 1."),
    "person": (plain_names.person, "who is meant: .person, then .person 2."),
    "unknown": (Plain.not_known, "asked, and not known."),
    "later": (Plain.later, "come back to this, or whom to ask: .later ask Joan."),
    "aside": (Plain.aside, "put this photograph aside for now: .aside too sad today."),
    "audience": (
        lambda plain, words: plain_statements.change(plain, words, "audience", AUDIENCES),
        "who may see it: .audience family, or .audience keeper 3 for statement 3.",
    ),
    "sure": (
        lambda plain, words: plain_statements.change(plain, words, "sure", _SURE),
        "how sure: .sure likely, .sure guess 3.",
    ),
    "language": (
        lambda plain, words: plain_statements.change(plain, words, "language"),
        "the language of an answer: .language et.",
    ),
    "settle": (plain_statements.settle, "a conflict: .settle 3, .settle 3 both, .settle 3 doubtful."),
    "strike": (plain_statements.strike, "take words out for good: .strike 3."),
    "history": (plain_statements.history, "what was ever said to this question."),
    "same": (Plain.same, "as for the photograph before: .same people, day, place, all of these."),
    "relation": (Plain.relation, "to another photograph: .relation negative_of TRA-0007."),
    "story": (plain_steps.story, "a story of no picture: .story person Jaan Tamm: He kept bees."),
    "agreement": (plain_steps.agreement, "read out, and note terms and who gave it."),
    "consent": (plain_steps.consent, "ask again what the living allow: .consent, then .consent yes, no or later."),
    "clap": (
        lambda plain, _: plain.say(f"Clap {course.clap(plain.sitting)} noted."),
        "a moment heard in the recording.",
    ),
    "private": (plain_steps.private, "keep the last minutes from outside: .private 5."),
    "rest": (lambda plain, _: plain_steps.step(plain, Step.REST), "a rest."),
    "resume": (lambda plain, _: plain_steps.step(plain, Step.GO_ON), "after a rest."),
    "close": (plain_steps.close, "end the sitting, with what to ask next time: .close the farm; the crossing."),
    "undo": (Plain.undo, "take the last thing back."),
    "redo": (Plain.redo, "do it again."),
    "help": (Plain.help, "these lines."),
    "quit": (Plain.leave, "leave; nothing is lost."),
}
"""Name of an order -> the function that does it, and the line that `.help` shows. An order may be shortened to any
beginning that no other order has."""


def sit_plain(
    sitting: Sitting,
    showing: Showing,
    listen: Callable[[], str | None],
    say: Say,
    hearing: Callable[[], AbstractContextManager[None]] = nullcontext,
    *,
    asks: bool = False,
) -> None:
    """Hold a sitting until `.quit` or the end of the input. `listen` returns the next line, or None at the end.

    Each line is obeyed within a `hearing`. `asks`: it is asked first who tells, where that is not said.
    """
    recovered = sitting.begin()
    listing = Listing(sitting.collection)
    if not len(listing):
        say("Nothing is in this collection yet. Take scans in with: boxlore intake")
        return
    if recovered:
        kept = several(len(recovered), "answer that was being typed is", "answers that were being typed are")
        say(f"After an interruption: {kept} kept.")
    for words in sitting.teller.unsaid:
        say(safe(words))
    if sitting.prompts_fault:
        say(sitting.prompts_fault)
    if showing.address:
        say(f"Page for the teller: {showing.address}")
    if asks and sitting.writable and not sitting.id:
        _ask_who_tells(sitting, listen, lambda words: say(safe(words)))
    plain = Plain(sitting, listing, showing, lambda words: say(safe(words)), ORDERS)
    plain.begin()
    while not plain.over and (line := listen()) is not None:
        with hearing():
            plain.hear(line)


def _ask_who_tells(sitting: Sitting, listen: Callable[[], str | None], say: Say) -> None:
    """Ask who tells today, until it is said; an empty line leaves it to the keeper."""
    tellers = offered(known_tellers(sitting.collection))
    say("Who tells today? Say a number or a whole name; an empty line: you, as the keeper.")
    for number, teller in enumerate(tellers, 1):
        say(f"{number}. {teller.name}")
    while (line := listen()) is not None and (words := line.strip()):
        is_number = words.isascii() and words.isdigit()
        if is_number and not 1 <= int(words) <= len(tellers):
            say("There is no such number. Say a name, or an empty line.")
            continue
        try:
            sitting.start_with(tellers[int(words) - 1].name if is_number else words)
        except BoxloreError as error:
            say(str(error))
            continue
        for sentence in sitting.teller.unsaid:
            say(sentence)
        say(".agreement reads out what to agree on, and notes it.")
        return
    sitting.nobody(myself=True)
