"""The sitting line by line, for screen readers and slow links: nothing is drawn, everything is said in order.

What a typed line means:

    line   = order / "?" / answer / ""
    order  = "." name [" " argument]     ; the name may be shortened
    answer = [".."] words                ; an answer that begins with a full stop is typed with two
    "?"                                  ; asked, and not known
    ""                                   ; goes on to the next question

Each answer is on the disk before the next question is asked. `tasks.sitting.session` does the work, as it does for
the screen.
"""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field
from itertools import chain

from boxlore.core.crosswalk.captions import Style, caption
from boxlore.core.dates.family_display import FamilyWay, family_display
from boxlore.core.errors import BoxloreError, WrongUse
from boxlore.core.fields.table import FIELDS
from boxlore.core.findings import several
from boxlore.core.records.item_record import Record, StatementView
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.prompts import Prompt
from boxlore.tasks.collection.settings import family_way
from boxlore.tasks.sitting import course
from boxlore.tasks.sitting.item_list import Listing, filtered
from boxlore.tasks.sitting.linking import RELATIONS, SAME, relate, related_lines, same_as
from boxlore.tasks.sitting.session import COME_BACK, Sitting
from boxlore.tasks.sitting.tellers_page import Showing
from boxlore.tasks.sitting.which_date import OpenDate, say_date
from boxlore.tasks.sitting.which_meant import OpenQuestion, choose_meant, open_question
from boxlore.tasks.sitting.which_name import OpenName, open_name
from boxlore.tasks.sitting.which_person import OpenPerson, open_people
from boxlore.tasks.sitting.worked_out import worth_asking
from boxlore.tasks.telling.finding import found

Say = Callable[[str], None]
PlainOrder = Callable[["Plain", str], None]


ALONE = {"help": "help", "quit": "quit", "exit": "quit", "undo": "undo"}
"""Orders that are often typed without their full stop, as the word typed and the order. Such a word alone, or a letter
with which one begins, is asked about, and not kept as an answer."""


@dataclass(slots=True)
class Plain:
    """One sitting, line by line: `hear` takes each line, and `say` is called with each line of the reply.

    `position` is the item's place in `listing` and `prompt_index` the question's in `sitting.prompts`, both from 0.
    `before` is the id of the item shown before this one.
    """

    sitting: Sitting
    listing: Listing
    showing: Showing
    say: Say
    orders: Mapping[str, tuple[PlainOrder, str]]
    """Name of an order -> what it does, and the line that `.help` shows."""
    position: int = 0
    prompt_index: int = 0
    before: str = ""
    over: bool = False
    record: Record = field(init=False)
    read_out: list[StatementView] = field(default_factory=list)
    """The statements last read out by `.who`; other orders name one by its number in this list."""
    warned_of: str = ""
    """The id of the statement that `.strike` has warned of."""
    just_told: Prompt | None = None
    """The question that this item's last answer was given to; an order without a number means that answer."""
    consent_later: set[str] = field(default_factory=set)
    """Ids of people whose consent is to be asked at a later sitting."""

    def __post_init__(self) -> None:
        self.record = self.sitting.record(self.listing.id_at(self.position))

    @property
    def prompt(self) -> Prompt:
        """The question asked now."""
        return self.sitting.prompts[self.prompt_index]

    # saying

    def begin(self) -> None:
        """Say how this works, then the first item."""
        self.say("One line is one answer; ? alone is “asked, not known”. An empty line goes on.")
        self.say(".help says what else there is; .quit leaves.")
        self.say(f"{self.sitting.teller_named} tells." if self.sitting.id else "You tell, as the keeper.")
        if not self.sitting.writable:
            self.say(f"For reading only: {self.sitting.collection.store.why_read_only} Nothing can be kept.")
        if due := course.consent_due(self.sitting):
            self.say(f"Consent to ask for again: {'; '.join(map(course.due_words, due))}. Say .consent.")
        self.open(self.position)

    def open(self, position: int) -> None:
        """Show the item at this position of the list, and ask its first question."""
        self.before = self.record.id
        self.position, self.prompt_index, self.just_told = position, 0, None
        self.sitting.show(self.listing.id_at(position))
        self.read_again()
        record = self.record
        place = record.mark.long if record.mark else "no box yet"
        self.say("")
        self.say(f"{record.number}, {position + 1} of {len(self.listing)}. {place}.")
        if care := record.words("care"):
            self.say(f"Care, before the picture: {care}")
        style = Style(dates=family_way(self.sitting.collection.settings))
        anything = record.told or record.people
        self.say(f"Told so far: {caption(record, style=style)}" if anything else "Nothing is told yet.")
        for line in related_lines(record):
            self.say(line)
        for marker in self.sitting.markers.of(record):
            self.say(f"Marker {marker.number}: {marker.name or 'not named'}.")
        more = worth_asking(self.sitting.collection, record, self.sitting.teller_named)
        for words in (*self.sitting.gentle_questions(record), *more):
            self.say(f"To ask: {words}")
        for words in self.sitting.to_ask(record.id):
            self.say(f"To ask: {words}")
        if words := course.suggest_end(self.sitting):
            self.say(f"{words} Say .close.")
        self.ask()

    def ask(self) -> None:
        """Say the question, with the answers that there are already."""
        own = self.sitting.own(self.record, self.prompt)
        others_words = [view.words for view in self.sitting.others(self.record, self.prompt)]
        if own is not None:
            adds = FIELDS[self.prompt.field].many
            how = "A new line adds to it; .correct replaces it." if adds else "A new line corrects it."
            self.say(f"{self.prompt.question} (Now: {own.words} – {how})")
        elif others_words:
            self.say(f"{self.prompt.question} (Told: {' · '.join(others_words)})")
        else:
            self.say(self.prompt.question)
        self._say_choices()

    def _say_choices(self) -> bool:
        """Say what is still in question of a date, a place or a name. Returns whether it waits for an
        answer: a choice, or when that was."""
        question = open_question(self.sitting, self.record, self.prompt)
        for line in choice_lines(question) if question is not None else ():
            self.say(line)
        if self.prompt.field == "person":
            name = open_name(self.sitting, self.record)
            for line in name_lines(name) if name is not None else ():
                self.say(line)
            people = [asked for asked in open_people(self.sitting, self.record) if not asked.asked_before]
            for line in person_lines(people):
                self.say(line)
        return question is not None and (bool(question.names) or isinstance(question, OpenDate))

    def read_again(self) -> None:
        """Read the item's record again after a change, for this sitting and for the teller's page."""
        self.record = self.sitting.record(self.listing.id_at(self.position))
        place = f"{self.position + 1} of {len(self.listing)}"
        self.showing.show(self.record, self.sitting.markers.of(self.record), place)

    # hearing

    def hear(self, line: str) -> None:
        """Obey one line (grammar above). An error is said as a sentence, and the question stays open."""
        words = line.strip()
        try:
            if words.startswith(".") and not words.startswith(".."):
                self._order(words)
            elif words == "?":
                self.not_known("")
            elif meant := _order_meant(words):
                self.say(f"Did you mean .{meant}? “{words}” alone is not kept as an answer; ..{words} keeps it.")
            elif self.sitting.writable and (self._takes_number(words) or self._takes_date(words)):
                pass  # it settled what was asked before
            elif words:
                self._answer(words.removeprefix("."))
            else:
                self._next_question()
        except BoxloreError as error:
            self.say(str(error))

    def _order(self, words: str) -> None:
        name, _, argument = words[1:].partition(" ")
        matching = [order for order in self.orders if order.startswith(name.lower())] if name else []
        order = name.lower() if name.lower() in self.orders else matching[0] if len(matching) == 1 else ""
        if not order:
            self.say(f"There is no order .{name}. .help lists them. Two full stops begin an answer with one.")
            return
        self.orders[order][0](self, argument.strip())

    def _answer(self, words: str, *, adds: bool = True, corrects: StatementView | None = None) -> None:
        if not self.sitting.writable:
            raise WrongUse("Open for reading only; nothing can be kept.")
        prompt = self.prompt
        self.sitting.keep(self.record, prompt, words, adds=adds, corrects=corrects)
        self.just_told = prompt
        self.read_again()
        own = self.sitting.own(self.record, prompt) or next(iter(self.record.all(prompt.field)[-1:]), None)
        read = _understood(own, family_way(self.sitting.collection.settings)) if own is not None else ""
        self.say(f"Saved.{f' Understood: {read}.' if read else ''}")
        chooses = self._say_choices()
        if prompt.gathers:
            self.say("Another? An empty line goes on.")
        elif not chooses:
            self._next_question()

    def _takes_number(self, words: str) -> bool:
        """Take a choice by its number, where the question asked now is in question; False where it is not. One digit
        that no choice has is a slip of the hand, and no answer: it is said how many there are."""
        question = (
            open_question(self.sitting, self.record, self.prompt) if words.isascii() and words.isdigit() else None
        )
        if question is None or not question.names:
            return False
        number = int(words)
        if not 1 <= number <= len(question.names):
            if len(words) > 1:
                return False
            raise WrongUse(
                f"There {'is one choice' if len(question.names) == 1 else f'are {len(question.names)} choices'}.",
                f"{'1 takes it' if len(question.names) == 1 else f'1 to {len(question.names)} take one'}; or say it in "
                "other words.",
            )
        words = choose_meant(self.sitting, self.record, question, number)
        self.read_again()
        self.say(f"Noted: {words}.")
        self._next_question()
        return True

    def _takes_date(self, words: str) -> bool:
        """“When was that?” with no choices: a date said in reply is when the words told were, which stay as they are;
        False where nothing such is asked, or other words are said."""
        question = open_question(self.sitting, self.record, self.prompt) if words else None
        if not isinstance(question, OpenDate) or question.names:
            return False
        try:
            shown = say_date(self.sitting, self.record, self.prompt, question, words)
        except WrongUse:
            return False
        self.read_again()
        self.say(f"Noted: {shown}.")
        self._next_question()
        return True

    def _next_question(self) -> None:
        if self.prompt_index + 1 < len(self.sitting.prompts):
            self.prompt_index += 1
            self.ask()
        elif self.position + 1 < len(self.listing):
            self.open(self.position + 1)
        else:
            self.say("That was the last photograph. .quit leaves.")

    # orders

    def correct(self, words: str) -> None:
        """Keep the words in place of this teller's last answer to the question."""
        if not words:
            raise WrongUse("There are no words to put in its place.", "Say .correct and the words.")
        corrects = self.sitting.last_own(self.record, self.prompt)
        if corrects is None and self.prompt.gathers:
            raise WrongUse("Nothing that this teller said is kept here.", "A line without .correct adds an answer.")
        self._answer(words, adds=False, corrects=corrects)

    def turn(self, by: int) -> None:
        """Open the item `by` places further on, or say that there is none."""
        if 0 <= self.position + by < len(self.listing):
            self.open(self.position + by)
        else:
            self.say("That was the last photograph." if by > 0 else "This is the first photograph.")

    def go(self, where: str) -> None:
        """Open the item with this number or mark."""
        position = self.listing.position(find_item(self.sitting.collection, where).id)
        self.open(position)

    def find(self, words: str) -> None:
        """Read out the statements that hold these words, twenty at most."""
        hits = [hit for hit in found(self.sitting.collection, words, 20) if hit.number] if words else []
        for hit in hits:
            self.say(f"{hit.number}, {hit.field}: {' '.join(hit.words.split())[:120]}")
        self.say(f"{len(hits)} found. .go and a number opens one." if hits else "Nothing is found.")

    def list_items(self, state: str) -> None:
        """Read out the items of one state (all, bare, begun, told, to ask): the next twenty after this item."""
        state = state or "bare"
        if state not in ("all", "bare", "begun", "told", "to ask"):
            raise WrongUse(f"There is no list “{state[:20]}”.", "all, bare, begun, told, to ask.")
        every = range(len(self.listing))
        listed = list(every if state == "all" else chain.from_iterable(filtered(self.listing, state)))
        later = [at for at in listed if at > self.position] or listed
        for at in later[:20]:
            row = self.listing.row_at(at)
            to_ask = f"; to ask: {row.to_ask}" if row.to_ask else ""
            self.say(f"{row.number}, {row.state}: {row.about or 'nothing told'}{to_ask}")
        self.say(f"{len(listed)} {'photographs' if state == 'all' else state}.")

    def undo(self, _: str) -> None:
        """Take back the last act of this sitting."""
        act = self.sitting.undo()
        self.say(f"Taken back: {act.in_words}." if act else "Nothing of this sitting is left to take back.")
        self.read_again()

    def redo(self, _: str) -> None:
        """Do again what was taken back last."""
        act = self.sitting.redo()
        self.say(f"Done again: {act.in_words}." if act else "Nothing was taken back.")
        self.read_again()

    def same(self, shared: str) -> None:
        """`.same people`: tell the same (a key of SAME) as of the item before."""
        if shared not in SAME:
            raise WrongUse("The same what?", f"One of: {', '.join(SAME)}.")
        previous = self.sitting.record(self.before)
        count = same_as(self.sitting, [self.record], previous, shared)
        self.read_again()
        self.say(f"{count} taken over from {previous.number}.")

    def relation(self, words: str) -> None:
        """`.relation negative_of TRA-0007`: say how this item is related to another."""
        kind, _, target = words.partition(" ")
        if kind not in RELATIONS:
            raise WrongUse("How is it related?", f"One of: {', '.join(RELATIONS)}; then a number.")
        number = relate(self.sitting, self.record, target.strip(), kind)
        self.read_again()
        self.say(f"{RELATIONS[kind]} {number}.")

    def later(self, words: str) -> None:
        """`.later [words]`: note what is to be asked about this item later, or whom."""
        self.sitting.ask_later(self.record, words or COME_BACK)
        self.say(f"Noted: {words or COME_BACK}.")

    def aside(self, why: str) -> None:
        """`.aside [why]`: put the item aside for now."""
        self.sitting.set_aside(self.record, why)
        self.say("Set aside.")

    def not_known(self, _: str) -> None:
        """Keep that this was asked and the teller does not know; of what the teller has answered that cannot be so."""
        if self.sitting.own(self.record, self.prompt) is not None:
            raise WrongUse("There is an answer here already.", "? is for when there is nothing to say; .help for help.")
        self.sitting.not_known(self.record, self.prompt)
        self.read_again()
        self.say("Asked, not known. .undo takes it back.")
        self._next_question()

    def help(self, _: str) -> None:
        """Say what each order does, one line each."""
        for name, (_order, words) in self.orders.items():
            self.say(f".{name}: {words}")

    def leave(self, _: str) -> None:
        """End the sitting."""
        self.over = True
        self.say("Everything is kept.")


def _order_meant(words: str) -> str:
    """The order that a word typed without its full stop may mean; '' where it is an answer."""
    typed = words.casefold()
    return next((order for word, order in ALONE.items() if typed == word or typed == word[0]), "")


def _understood(view: StatementView, way: FamilyWay) -> str:
    """What was understood of a date or a place, in words; '' for other fields."""
    if view.date is not None and view.date.edtf is not None:
        return family_display(view.date.edtf, way)
    return view.place.best.town if view.place and view.place.best else ""


def name_lines(question: OpenName) -> list[str]:
    """The ways in which a doubtful name may be taken apart, numbered, and how to choose."""
    numbered = [f"{number}. {way}" for number, way in enumerate(question.choices, 1)]
    return [question.question, *numbered, ".name 1 takes the first, the likeliest."]


def person_lines(questions: Sequence[OpenPerson]) -> list[str]:
    """The first question who is meant, its choices, numbered, how to choose, and how many questions follow it."""
    if not questions:
        return []
    question, *others = questions
    numbered = [f"{number}. {name}" for number, name in enumerate(question.names, 1)]
    follow = f" Then {several(len(others), 'more question')} who is meant." if others else ""
    return [question.asks, *numbered, f".person 1 takes the first; an empty line goes on.{follow}"]


def choice_lines(question: OpenQuestion) -> list[str]:
    """An open question about a date or a place: its choices, numbered, and how to choose."""
    numbered = [f"{number}. {name}" for number, name in enumerate(question.names, 1)]
    if isinstance(question, OpenDate):
        how = "A number takes one; an empty line goes on; other words come in its place."
        return [question.asks, *numbered, how] if numbered else [question.asks, "Say when; an empty line goes on."]
    if not numbered:
        return [f"“{question.view.words}” is in no list of places. .place own makes it a place of our own."]
    how = "A number takes one; .place near 1: somewhere near; .place own: our own; an empty line goes on."
    return ["Which place is meant?", *numbered, how]
