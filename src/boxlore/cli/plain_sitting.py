"""The sitting line by line, for screen readers and slow links: nothing is drawn, everything is said in order.

One line is one answer; an empty line goes on; a line that begins with a full stop is an order. Each answer is on
the disk before the next question is asked. It is the same `tasks.sitting.session` as the screen's.
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
"""Words that nobody means as a whole answer, and everybody types who forgets the full stop."""


@dataclass(slots=True)
class Plain:
    """One sitting, line by line. `hear` takes a line and returns; `prompt` is what is asked now."""

    sitting: Sitting
    listing: Listing
    showing: Showing
    say: Say
    orders: Mapping[str, tuple[PlainOrder, str]]
    """Every order: its name, what it does, and how that is told."""
    position: int = 0
    asked: int = 0
    before: str = ""
    over: bool = False
    record: Record = field(init=False)
    _told: list[StatementView] = field(default_factory=list)
    """The statements last read out under “.who”, for orders that name one by its number."""
    _sure_to_strike: str = ""
    _consent_later: set[str] = field(default_factory=set)
    """People who were not there to be asked."""

    def __post_init__(self) -> None:
        self.record = self.sitting.record(self.listing.id_at(self.position))

    @property
    def prompt(self) -> Prompt:
        """What is asked now."""
        return self.sitting.prompts[self.asked]

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
        """Put an item out and ask its first question."""
        self.before = self.record.id
        self.position, self.asked = position, 0
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
        for one in self.sitting.markers.of(record):
            self.say(f"Marker {one.number}: {one.name or 'not named'}.")
        for words in self.sitting.gentle_questions(record):
            self.say(f"Worth asking: {words}")
        for words in self.sitting.to_ask(record.id):
            self.say(f"To ask: {words}")
        self.ask()

    def ask(self) -> None:
        """The question, with what is told there already."""
        own = self.sitting.own(self.record, self.prompt)
        others = [told.words for told in self.sitting.others(self.record, self.prompt)]
        if own is not None:
            adds = FIELDS[self.prompt.field].many
            how = "A new line adds to it; .correct replaces it." if adds else "A new line corrects it."
            self.say(f"{self.prompt.question} (Now: {own.words} – {how})")
        elif others:
            self.say(f"{self.prompt.question} (Told: {'; '.join(others)}.)")
        else:
            self.say(self.prompt.question)

    def _read(self) -> None:
        self.record = self.sitting.record(self.listing.id_at(self.position))
        self.listing.forget(self.record.id)
        place = f"{self.position + 1} of {len(self.listing)}"
        self.showing.show(self.record, self.sitting.markers.of(self.record), place)

    # hearing

    def hear(self, line: str) -> None:
        """One line: an answer, nothing, or an order. What goes wrong is said, and the question stands."""
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
        name, _, rest = words[1:].partition(" ")
        found = [order for order in self.orders if order.startswith(name.lower())] if name else []
        order = name.lower() if name.lower() in self.orders else found[0] if len(found) == 1 else ""
        if not order:
            self.say(f"There is no order .{name}. .help lists them. Two full stops begin an answer with one.")
            return
        self.orders[order][0](self, rest.strip())

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
        if self.asked + 1 < len(self.sitting.prompts):
            self.asked += 1
            self.ask()
        elif self.position + 1 < len(self.listing):
            self.open(self.position + 1)
        else:
            self.say("That was the last item. .quit leaves.")

    # orders

    def correct(self, words: str) -> None:
        """The answer in the place of this teller's last one."""
        if not words:
            raise WrongUse("There are no words to put in its place.", "Say .correct and the words.")
        self._answer(words, adds=False)

    def turn(self, by: int) -> None:
        """Another item."""
        if 0 <= self.position + by < len(self.listing):
            self.open(self.position + by)
        else:
            self.say("That was the last item." if by > 0 else "This is the first item.")

    def go(self, where: str) -> None:
        """To an item by number or mark."""
        position = self.listing.position(find_item(self.sitting.collection, where).id)
        self.open(position)

    def find(self, words: str) -> None:
        """Read out what holds these words."""
        hits = [hit for hit in self.sitting.collection.store.search(words, 20) if hit.number] if words else []
        for hit in hits:
            self.say(f"{hit.number}, {hit.field}: {' '.join(hit.words.split())[:120]}")
        self.say(f"{len(hits)} found. .go and a number opens one." if hits else "Nothing is found.")

    def list_items(self, wanted: str) -> None:
        """Read out items: all, bare, begun, told, to ask; twenty at most, from here on."""
        wanted = wanted or "bare"
        if wanted not in ("all", "bare", "begun", "told", "to ask"):
            raise WrongUse(f"There is no list “{wanted[:20]}”.", "all, bare, begun, told, to ask.")
        positions = range(len(self.listing)) if wanted == "all" else _all(filtered(self.listing, wanted))
        found = list(positions)
        later = [at for at in found if at > self.position] or found
        for at in later[:20]:
            row = self.listing.row_at(at)
            to_ask = f"; to ask: {row.to_ask}" if row.to_ask else ""
            self.say(f"{row.number}, {row.state}: {row.about or 'nothing told'}{to_ask}")
        self.say(f"{len(found)} {'items' if wanted == 'all' else wanted}.")

    def who(self, _: str) -> None:
        """Read out everything told of this item, numbered."""
        own = [name for name in self.record.told if name not in FIELDS]
        self._told = [told for name in (*FIELDS, *own) for told in self.record.all(name)]
        for number, told in enumerate(self._told, 1):
            said = told.said_by or str(told.source)
            self.say(f"{number}. {FIELDS[told.field].label}: {told.words} ({said}, {told.sure}, for {told.audience})")
        for conflict in self.record.conflicts:
            self.say(f"Disputed: {conflict.field}, {conflict.why}.")
        if not self._told:
            self.say("Nothing is told of this item yet.")

    def _meant(self, number: str) -> StatementView:
        if not number and (own := self.sitting.own(self.record, self.prompt)) is not None:
            return own
        if not (number.isascii() and number.isdigit() and 1 <= int(number) <= len(self._told)):
            raise WrongUse(
                "It is not clear which statement is meant.", "Say .who first, then the order and its number."
            )
        return self._told[int(number) - 1]

    def change(self, words: str, what: str, allowed: tuple[str, ...] = ()) -> None:
        """`.audience family 3`: another audience, sureness or language for a statement (or for this question's own)."""
        value, _, number = words.partition(" ")
        if not value or (allowed and value not in allowed and not value.startswith("archive:")):
            raise WrongUse(f"“{value[:20]}” cannot be meant.", f"One of: {', '.join(allowed)}." if allowed else "")
        self.sitting.change(self.record, self._meant(number.strip()), **{what: value})
        self._read()
        self.say(f"Noted: {value}.")

    def settle(self, words: str) -> None:
        """`.settle 3`, `.settle 3 both`, `.settle 3 doubtful`."""
        number, _, how = words.partition(" ")
        told = self._meant(number)
        others = self.record.all(told.field)
        if len(others) < 2 or FIELDS[told.field].many:
            raise WrongUse("Nothing else is said there, so there is nothing to settle.")
        if how not in ("", "both", "doubtful"):
            raise WrongUse("It can be settled as this one, both, or doubtful.", "Say .settle 3 both.")
        self.sitting.settle(self.record, told.field, others, "" if how else told.statement, outcome=how)
        self._read()
        self.say("Settled. What the others said stays on record.")

    def strike(self, words: str) -> None:
        """Asked once more before the words go for good."""
        told = self._meant(words)
        if self._sure_to_strike != told.statement:
            self._sure_to_strike = told.statement
            self.say(f"“{told.words}” will be taken out for good. Say .strike {words} again to do it.")
            return
        report = self.sitting.strike(told.statement)
        self._told = []
        self._read()
        self.say("Struck." if report.finished else "Struck; the last traces go when the other program closes.")
        for path in report.left_in:
            self.say(f"Still in: {path}")

    def history(self, words: str) -> None:
        """What was ever said of this question, and what became of it."""
        name = words or self.prompt.field
        for past in self.sitting.history(self.record.id, name):
            self.say(f"{past.statement.recorded_at[:16]}, {past.state}: {past.statement.words or 'asked, not known'}")

    def undo(self, _: str) -> None:
        done = self.sitting.undo()
        self.say(f"Taken back: {done.what}." if done else "Nothing of this sitting is left to take back.")
        self._read()

    def redo(self, _: str) -> None:
        done = self.sitting.redo()
        self.say(f"Done again: {done.what}." if done else "Nothing was taken back.")
        self._read()

    def same(self, what: str) -> None:
        if what not in SAME:
            raise WrongUse("The same what?", f"One of: {', '.join(SAME)}.")
        other = self.sitting.record(self.before)
        made = same_as(self.sitting, [self.record], other, what)
        self._read()
        self.say(f"{made} taken over from {other.number}.")

    def relation(self, words: str) -> None:
        kind, _, other = words.partition(" ")
        if kind not in RELATIONS:
            raise WrongUse("How is it related?", f"One of: {', '.join(RELATIONS)}; then a number.")
        number = relate(self.sitting, self.record, other.strip(), kind)
        self._read()
        self.say(f"{RELATIONS[kind]} {number}.")

    def story(self, words: str) -> None:
        """`.story person Jaan Tamm: He kept bees.`"""
        about, _, told = words.partition(":")
        kind, _, name = about.strip().partition(" ")
        if kind not in ("person", "event", "place", "sitting"):
            raise WrongUse("A story of whom or what?", "Say .story person Jaan Tamm: the story.")
        story_about(self.sitting, kind, name, told, self.record.id)
        self.say("The story is kept.")

    def step(self, said: Step) -> None:
        course.step(self.sitting, said)
        self.showing.say({Step.REST: "A rest.", Step.CLOSE: "Thank you."}.get(said, ""))
        self.say({Step.REST: "A rest. .resume goes on.", Step.GO_ON: "Going on."}.get(said, "Closing."))

    def agreement(self, words: str) -> None:
        """`.agreement 2 Leida Rourke`: the terms, and who gave it."""
        terms, _, who = words.partition(" ")
        if not words:
            self.say(f"Read out: {course.READ_OUT}")
            for key, one in course.TERMS.items():
                self.say(f"{key}: {one}.")
            self.say("Then say .agreement, the number, and who gave it.")
            return
        told = {"narrator": self.sitting.narrator or who, "terms": terms, "agreed_by": who}
        course.prepare(self.sitting, told)
        self.say("The agreement is noted.")

    def consent(self, words: str) -> None:
        """`.consent`, then `.consent yes` (with the witness, where another speaks for her), `no` or `later`."""
        due = [one for one in course.consent_due(self.sitting) if one.id not in self._consent_later]
        if not due:
            self.say("Nobody’s consent is to be asked for again.")
            return
        answer, _, witness = words.partition(" ")
        if answer == "later":
            self._consent_later.add(due.pop(0).id)
            self.say("It stays as it was, and is asked again at the next sitting.")
        elif answer in ("yes", "no"):
            made = course.answer_consent(self.sitting, due[0], given=answer == "yes", witness=witness)
            self.say(f"Noted: {due.pop(0).name}: {made.words}.")
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
        """Every order in a line."""
        for name, (_order, words) in self.orders.items():
            self.say(f".{name}: {words}")

    def leave(self, _: str) -> None:
        """The end."""
        self.over = True
        self.say("Everything is kept.")


def _understood(told: StatementView) -> str:
    if told.field == "date":
        return str(told.value.get("display") or "")
    choices = told.value.get("choices")
    if told.field == "place" and isinstance(choices, list) and choices:
        first: Mapping[str, object] = choices[0]
        parts = [first.get("city") or first.get("name"), first.get("admin1"), first.get("country")]
        return ", ".join(str(part) for part in parts if part)
    return ""


def _all(chunks: object) -> Iterator[int]:
    for chunk in chunks:  # type: ignore[attr-defined]  # lists of positions
        yield from chunk
