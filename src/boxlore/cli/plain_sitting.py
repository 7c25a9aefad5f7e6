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

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, field

from boxlore.core.crosswalk.captions import caption
from boxlore.core.errors import BoxloreError, WrongUse
from boxlore.core.fields.table import FIELDS
from boxlore.core.records.in_force import Record, StatementView
from boxlore.core.sitting.stages import Step
from boxlore.tasks.collection.marks import find_item
from boxlore.tasks.sitting import course
from boxlore.tasks.sitting.item_list import Listing, filtered
from boxlore.tasks.sitting.linking import RELATIONS, SAME, relate, related_lines, same_as, story_about
from boxlore.tasks.sitting.prompts import Prompt
from boxlore.tasks.sitting.session import COME_BACK, Sitting
from boxlore.tasks.sitting.showing import Showing

Say = Callable[[str], None]
PlainOrder = Callable[["Plain", str], None]


ALONE = ("help", "quit", "exit", "undo")
"""Orders that are often typed without their full stop. Such a word alone is asked about, and not kept as an answer."""


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
    _read_out: list[StatementView] = field(default_factory=list)
    """The statements last read out by `.who`; other orders name one by its number in this list."""
    _sure_to_strike: str = ""
    _consent_later: set[str] = field(default_factory=set)
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
        self.say("One line is one answer. An empty line goes on. .help says what else there is; .quit leaves.")
        if not self.sitting.writable:
            self.say(f"For reading only: {self.sitting.collection.store.why_read_only} Nothing can be kept.")
        if due := course.consent_due(self.sitting):
            self.say(f"Consent to ask for again: {'; '.join(map(course.due_words, due))}. Say .consent.")
        self.open(self.position)

    def open(self, position: int) -> None:
        """Show the item at this position of the list, and ask its first question."""
        self.before = self.record.id
        self.position, self.prompt_index = position, 0
        self.sitting.show(self.listing.id_at(position))
        self._read()
        record = self.record
        place = record.mark.long if record.mark else "no box yet"
        self.say("")
        self.say(f"{record.number}, {position + 1} of {len(self.listing)}. {place}.")
        if care := record.words("care"):
            self.say(f"Care, before the picture: {care}")
        self.say(f"Told so far: {caption(record)}" if record.told or record.people else "Nothing is told yet.")
        for line in related_lines(record):
            self.say(line)
        for marker in self.sitting.markers.of(record):
            self.say(f"Marker {marker.number}: {marker.name or 'not named'}.")
        for words in self.sitting.gentle_questions(record):
            self.say(f"Worth asking: {words}")
        for words in self.sitting.to_ask(record.id):
            self.say(f"To ask: {words}")
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
            self.say(f"{self.prompt.question} (Told: {'; '.join(others_words)}.)")
        else:
            self.say(self.prompt.question)

    def _read(self) -> None:
        """Read the item's record again after a change, for this sitting and for the teller's page."""
        self.record = self.sitting.record(self.listing.id_at(self.position))
        self.listing.forget(self.record.id)
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
            elif words.casefold() in ALONE:
                self.say(f"Did you mean .{words.casefold()}? That word alone is not kept as an answer.")
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

    def _answer(self, words: str, *, adds: bool = True) -> None:
        if not self.sitting.writable:
            raise WrongUse("Open for reading only; nothing can be kept.")
        prompt = self.prompt
        self.sitting.keep(self.record, prompt, words, adds=adds)
        self._read()
        own = self.sitting.own(self.record, prompt) or next(iter(self.record.all(prompt.field)[-1:]), None)
        read = _understood(own) if own is not None else ""
        self.say(f"Saved.{f' Understood: {read}.' if read else ''}")
        if prompt.gathers:
            self.say("Another? An empty line goes on.")
        else:
            self._next_question()

    def _next_question(self) -> None:
        if self.prompt_index + 1 < len(self.sitting.prompts):
            self.prompt_index += 1
            self.ask()
        elif self.position + 1 < len(self.listing):
            self.open(self.position + 1)
        else:
            self.say("That was the last item. .quit leaves.")

    # orders

    def correct(self, words: str) -> None:
        """Keep the words in place of this teller's last answer to the question."""
        if not words:
            raise WrongUse("There are no words to put in its place.", "Say .correct and the words.")
        self._answer(words, adds=False)

    def turn(self, by: int) -> None:
        """Open the item `by` places further on, or say that there is none."""
        if 0 <= self.position + by < len(self.listing):
            self.open(self.position + by)
        else:
            self.say("That was the last item." if by > 0 else "This is the first item.")

    def go(self, where: str) -> None:
        """Open the item with this number or mark."""
        position = self.listing.position(find_item(self.sitting.collection, where).id)
        self.open(position)

    def find(self, words: str) -> None:
        """Read out the statements that hold these words, twenty at most."""
        hits = [hit for hit in self.sitting.collection.store.search(words, 20) if hit.number] if words else []
        for hit in hits:
            self.say(f"{hit.number}, {hit.field}: {' '.join(hit.words.split())[:120]}")
        self.say(f"{len(hits)} found. .go and a number opens one." if hits else "Nothing is found.")

    def list_items(self, state: str) -> None:
        """Read out the items of one state (all, bare, begun, told, to ask): the next twenty after this item."""
        state = state or "bare"
        if state not in ("all", "bare", "begun", "told", "to ask"):
            raise WrongUse(f"There is no list “{state[:20]}”.", "all, bare, begun, told, to ask.")
        positions = range(len(self.listing)) if state == "all" else _all(filtered(self.listing, state))
        listed = list(positions)
        later = [at for at in listed if at > self.position] or listed
        for at in later[:20]:
            row = self.listing.row_at(at)
            to_ask = f"; to ask: {row.to_ask}" if row.to_ask else ""
            self.say(f"{row.number}, {row.state}: {row.about or 'nothing told'}{to_ask}")
        self.say(f"{len(listed)} {'items' if state == 'all' else state}.")

    def who(self, _: str) -> None:
        """Read out everything told of this item, numbered."""
        self._read_out = [view for name in FIELDS.in_order(self.record.told) for view in self.record.all(name)]
        for number, view in enumerate(self._read_out, 1):
            speaker = view.said_by or str(view.source)
            self.say(
                f"{number}. {FIELDS[view.field].label}: {view.words} ({speaker}, {view.sure}, for {view.audience})"
            )
        for conflict in self.record.conflicts:
            self.say(f"Disputed: {conflict.field}, {conflict.why}.")
        if not self._read_out:
            self.say("Nothing is told of this item yet.")

    def _meant(self, number: str) -> StatementView:
        """The statement with this number in the last `.who`; without a number, this teller's answer to the question.

        Raises WrongUse where neither is there.
        """
        if not number and (own := self.sitting.own(self.record, self.prompt)) is not None:
            return own
        if not (number.isascii() and number.isdigit() and 1 <= int(number) <= len(self._read_out)):
            raise WrongUse(
                "It is not clear which statement is meant.", "Say .who first, then the order and its number."
            )
        return self._read_out[int(number) - 1]

    def change(self, words: str, aspect: str, allowed: tuple[str, ...] = ()) -> None:
        """`.audience family 3`: give statement 3 (or the answer to this question) another `aspect`.

        `aspect` is audience, sure or language; `allowed` lists its values, and is empty where any value will do.
        """
        value, _, number = words.partition(" ")
        if not value or (allowed and value not in allowed and not value.startswith("archive:")):
            raise WrongUse(f"“{value[:20]}” cannot be meant.", f"One of: {', '.join(allowed)}." if allowed else "")
        self.sitting.change(self.record, self._meant(number.strip()), **{aspect: value})
        self._read()
        self.say(f"Noted: {value}.")

    def settle(self, words: str) -> None:
        """`.settle 3`, `.settle 3 both`, `.settle 3 doubtful`: which of several answers holds."""
        number, _, how = words.partition(" ")
        view = self._meant(number)
        views = self.record.all(view.field)
        if len(views) < 2 or FIELDS[view.field].many:
            raise WrongUse("Nothing else is said there, so there is nothing to settle.")
        if how not in ("", "both", "doubtful"):
            raise WrongUse("It can be settled as this one, both, or doubtful.", "Say .settle 3 both.")
        self.sitting.settle(self.record, view.field, views, "" if how else view.statement, outcome=how)
        self._read()
        self.say("Settled. What the others said stays on record.")

    def strike(self, words: str) -> None:
        """`.strike 3`: take the words out for good. The order is to be given twice; the first time it only warns."""
        view = self._meant(words)
        if self._sure_to_strike != view.statement:
            self._sure_to_strike = view.statement
            self.say(f"“{view.words}” will be taken out for good. Say .strike {words} again to do it.")
            return
        report = self.sitting.strike(view.statement)
        self._read_out = []
        self._read()
        self.say("Struck." if report.finished else "Struck; the last traces go when the other program closes.")
        for path in report.left_in:
            self.say(f"Still in: {path}")

    def history(self, words: str) -> None:
        """Read out every answer that this question ever had, and whether it still holds."""
        name = words or self.prompt.field
        for past in self.sitting.history(self.record.id, name):
            self.say(f"{past.statement.recorded_at[:16]}, {past.state}: {past.statement.words or 'asked, not known'}")

    def undo(self, _: str) -> None:
        act = self.sitting.undo()
        self.say(f"Taken back: {act.what}." if act else "Nothing of this sitting is left to take back.")
        self._read()

    def redo(self, _: str) -> None:
        act = self.sitting.redo()
        self.say(f"Done again: {act.what}." if act else "Nothing was taken back.")
        self._read()

    def same(self, shared: str) -> None:
        if shared not in SAME:
            raise WrongUse("The same what?", f"One of: {', '.join(SAME)}.")
        previous = self.sitting.record(self.before)
        count = same_as(self.sitting, [self.record], previous, shared)
        self._read()
        self.say(f"{count} taken over from {previous.number}.")

    def relation(self, words: str) -> None:
        kind, _, target = words.partition(" ")
        if kind not in RELATIONS:
            raise WrongUse("How is it related?", f"One of: {', '.join(RELATIONS)}; then a number.")
        number = relate(self.sitting, self.record, target.strip(), kind)
        self._read()
        self.say(f"{RELATIONS[kind]} {number}.")

    def story(self, words: str) -> None:
        """`.story person Jaan Tamm: He kept bees.`"""
        about, _, text = words.partition(":")
        kind, _, name = about.strip().partition(" ")
        if kind not in ("person", "event", "place", "sitting"):
            raise WrongUse("A story of whom or what?", "Say .story person Jaan Tamm: the story.")
        story_about(self.sitting, kind, name, text, self.record.id)
        self.say("The story is kept.")

    def step(self, step: Step) -> None:
        course.step(self.sitting, step)
        self.showing.say({Step.REST: "A rest.", Step.CLOSE: "Thank you."}.get(step, ""))
        self.say({Step.REST: "A rest. .resume goes on.", Step.GO_ON: "Going on."}.get(step, "Closing."))

    def agreement(self, words: str) -> None:
        """`.agreement 2 Leida Rourke`: note the terms agreed to, and who agreed. Alone, it reads the terms out."""
        terms, _, agreed_by = words.partition(" ")
        if not words:
            self.say(f"Read out: {course.READ_OUT}")
            for key, term in course.TERMS.items():
                self.say(f"{key}: {term}.")
            self.say("Then say .agreement, the number, and who gave it.")
            return
        answers = {"narrator": self.sitting.narrator or agreed_by, "terms": terms, "agreed_by": agreed_by}
        course.prepare(self.sitting, answers)
        self.say("The agreement is noted.")

    def consent(self, words: str) -> None:
        """`.consent` asks about the next person who is due; `.consent yes`, `no` or `later` answers for that person.

        After `yes` may follow the witness, where somebody else speaks for the person.
        """
        due = [person for person in course.consent_due(self.sitting) if person.id not in self._consent_later]
        if not due:
            self.say("Nobody’s consent is to be asked for again.")
            return
        answer, _, witness = words.partition(" ")
        if answer == "later":
            self._consent_later.add(due.pop(0).id)
            self.say("It stays as it was, and is asked again at the next sitting.")
        elif answer in ("yes", "no"):
            consent = course.answer_consent(self.sitting, due[0], given=answer == "yes", witness=witness)
            self.say(f"Noted: {due.pop(0).name}: {consent.words}.")
        elif answer:
            raise WrongUse("Does it stand?", "Say .consent yes, .consent no, or .consent later.")
        if due:
            self.say(f"May it stay so, outside the family? {course.due_words(due[0])}. .consent yes, no, or later.")

    def close(self, words: str) -> None:
        """Close, with what to ask next time, and the summary."""
        self.step(Step.CLOSE)
        course.ask_next_time(self.sitting, words)
        for line in course.summary(self.sitting).lines():
            self.say(line)

    def private(self, words: str) -> None:
        minutes, _, why = words.partition(" ")
        if not minutes.isascii() or not minutes.isdigit():
            raise WrongUse("How many minutes, up to now?", "Say .private 5.")
        course.close_passage(self.sitting, int(minutes), why)
        self.say(f"The last {minutes} minutes are closed for outside.")

    def later(self, words: str) -> None:
        self.sitting.ask_later(self.record, words or COME_BACK)
        self.say(f"Noted: {words or COME_BACK}.")

    def aside(self, why: str) -> None:
        self.sitting.set_aside(self.record, why)
        self.say("Set aside.")

    def not_known(self, _: str) -> None:
        self.sitting.not_known(self.record, self.prompt)
        self._read()
        self.say("Asked, not known.")
        self._next_question()

    def help(self, _: str) -> None:
        """Say what each order does, one line each."""
        for name, (_order, words) in self.orders.items():
            self.say(f".{name}: {words}")

    def leave(self, _: str) -> None:
        """End the sitting."""
        self.over = True
        self.say("Everything is kept.")


def _understood(view: StatementView) -> str:
    """What was understood of a date or a place, in words; '' for other fields."""
    if view.field == "date":
        return str(view.value.get("display") or "")
    choices = view.value.get("choices")
    if view.field == "place" and isinstance(choices, list) and choices:
        first: Mapping[str, object] = choices[0]
        parts = [first.get("city") or first.get("name"), first.get("admin1"), first.get("country")]
        return ", ".join(str(part) for part in parts if part)
    return ""


def _all(chunks: object) -> Iterator[int]:
    for chunk in chunks:  # type: ignore[attr-defined]  # lists of positions
        yield from chunk
