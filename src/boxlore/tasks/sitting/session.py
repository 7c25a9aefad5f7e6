"""A sitting: who tells, which item is out, what was said of it; every key kept, every step undoable.

Theory of operation
===================

The problem. An elder has one good hour. What is typed while she speaks must survive a closed lid, a killed terminal
and a full disk; it must be tied to the photograph that was in her hand and to the minute of the recording; and a slip
of the keeper must be taken back with one key, without taking back what was said before it.

The idea. The sitting is an object without a screen. The terminal, the sitting line by line and the tests drive the
same `Sitting`, and it writes to the collection's log alone:

- Drafts. Each change in a prompt goes to the disk as a draft before the next key is heard (`draft`). On leaving the
  prompt its words become one statement and the draft goes, in one transaction (`keep`). A draft that a crash left
  behind becomes a statement at the next opening for writing (`tasks.sitting.recovering`).
- Correcting. Where a field holds one value, typing again corrects what *this* source said before (`own`): a new
  statement replaces the old one. What others said stays, and is shown above the prompt (`others`). Where a field
  gathers, every answer is added, and a semicolon parts two of them.
- Steps. Everything done is one act of the log, and a step to undo (`tasks.telling.undoing`). Undo withdraws the act;
  redo withdraws the undo. Only acts of this sitting are taken back; emptying a prompt withdraws the act that filled it.
- Time. When an item comes out, that is a statement about the sitting, with its moment: milliseconds since the sitting
  began, by a clock that only goes forward (`moment`). A recording is laid beside these moments later.
- The course. Preparing, going through items, resting, closing, over: a table says which step is possible when
  (`core.sitting.stages.MOVES`), and `take` raises OutOfTurn for any other.
- Markers. A touch on the picture makes a marker, and the next name told is the marker's own (`to_name`).

What always holds:

1. When `draft`, `keep`, `show` or any other change returns, it is on the disk.
2. Words are in exactly one place: in a draft, or in a statement, never in neither.
3. On a collection opened for reading only nothing is kept, and the fronts say so.
4. Nothing is asked of the place index while it is being built; typing never waits for it.

An example. `begin` for Leida, at 10:00:00.

    show TRA-0014                        “shown” at 0 ms, about the sitting
    draft “about 19”, “about 1935”       two drafts, the second in place of the first
    keep  date “about 1935”              act 1: s1, by Leida, at 21,400 ms; the draft is gone
    keep  date “summer of 1931”          act 2: s2 replaces s1
    undo                                 act 3 withdraws act 2: the prompt shows “about 1935” again
    show TRA-0015                        “shown” at 64,000 ms: TRA-0014 was out from 0:00 to 1:04
"""

import threading
import time
from collections.abc import Iterable, Sequence
from contextlib import nullcontext
from dataclasses import dataclass, field, replace
from functools import partial

from boxlore.core.dates import phrases
from boxlore.core.errors import WrongUse
from boxlore.core.fields.letters import is_blank, without_controls
from boxlore.core.fields.sittings import SHOWN_WORDS, ShownAt
from boxlore.core.fields.table import FIELDS
from boxlore.core.people.who_is_meant import named
from boxlore.core.people.who_is_where.reader import one_by_one
from boxlore.core.records.item_record import Record, ScanFile, StatementView
from boxlore.core.rules.lives_in_question import lives_in_question
from boxlore.core.rules.one_item import look_over
from boxlore.core.sitting.stages import Stage, Step, move
from boxlore.core.statements import KEEPER, Kind, Said, Source, Statement, Subject, Sure, fold
from boxlore.store.strike import StrikeReport
from boxlore.store.values import Draft, Past
from boxlore.tasks.collection.opening import Act, Collection
from boxlore.tasks.collection.progress import QUIET, Progress
from boxlore.tasks.collection.prompts import PROMPTS, Prompt, read_prompts
from boxlore.tasks.collection.records_for_outputs import record_of
from boxlore.tasks.sitting.beginning import note_out
from boxlore.tasks.sitting.item_list import still_to_ask
from boxlore.tasks.sitting.occasions_told import OccasionsTold
from boxlore.tasks.sitting.recovering import recover_drafts
from boxlore.tasks.strike import finish_pending, strike_out
from boxlore.tasks.telling.markers import Markers
from boxlore.tasks.telling.statements import Teller, Telling
from boxlore.tasks.telling.understanding import Understood, around_record, person_reading, readings_of
from boxlore.tasks.telling.undoing import Done, Steps

VERSO = Source(Said.INSCRIPTION, "verso")


AUDIENCES = ("anyone", "family", "keeper")
SURENESSES = (Sure.SURE, Sure.LIKELY, Sure.GUESS)

COME_BACK = "come back to this"


@dataclass(slots=True)
class Sitting:
    """One sitting at one collection. `begin` first; on a collection open for reading only, nothing is kept."""

    collection: Collection
    narrator: str = ""
    interviewer: str = ""
    stage: Stage = Stage.PREPARING
    source: Source = KEEPER
    language: str = ""
    id: str = ""
    shown: dict[str, str] = field(default_factory=dict)
    """Item id → the time it was last shown."""
    teller: Teller = field(init=False)
    _began: float = field(default_factory=time.monotonic)
    steps: Steps = field(init=False)
    _places: threading.Lock = field(default_factory=threading.Lock)
    _ready: bool = False
    _drafted: set[tuple[str, str, str]] = field(default_factory=set)
    myself: bool = False
    """Whether the keeper said that nobody else tells; without a narrator, answers wait for one otherwise."""
    waiting: list[Statement] = field(default_factory=list)
    """What was told in this sitting before anybody was named as the teller; `naming.give` gives it to one."""
    to_name: list[Subject] = field(default_factory=list)
    """Markers just set on the item that is out; the next names told are theirs, one by one."""
    markers: Markers = field(init=False)
    prompts: tuple[Prompt, ...] = PROMPTS
    prompts_fault: str = ""
    """What is wrong with the collection's own prompts; the usual ones are asked then."""
    occasions: OccasionsTold = field(default_factory=OccasionsTold)
    _called: str = ""
    """What the narrator was called when she began to tell."""
    end_suggested: bool = False
    """Whether `course.suggest_end` has said that it has lasted long."""

    def __post_init__(self) -> None:
        self.teller = Teller(self.collection)
        self.steps = Steps(self.collection)
        self.markers = Markers(self.collection)
        try:
            self.prompts = read_prompts(self.collection.folder, self.collection.settings.language)
        except WrongUse as error:
            self.prompts_fault = str(error)
        self.language = self.language or self.collection.settings.language

    # the course of it

    @property
    def writable(self) -> bool:
        """Whether anything can be kept."""
        return self.collection.store.writable

    def begin(self) -> list[Statement]:
        """Begin: who tells and who asks go into the log. Returns what an interruption had left behind."""
        self.stage = move(self.stage, Step.BEGIN)
        self._began = time.monotonic()
        if not self.writable:
            return []
        finish_pending(self.collection)
        recovered = recover_drafts(self.collection)
        if self.narrator.strip():
            self._name_the_narrator()
        return recovered

    def take(self, step: Step) -> None:
        """One step on. Raises OutOfTurn."""
        self.stage = move(self.stage, step)

    def start_with(self, narrator: str, interviewer: str = "") -> None:
        """From now on this narrator tells: a sitting of its own begins, with a time log from nought."""
        self.teller.understanding.person_called(narrator)  # raises WrongUse for several, before anything is changed
        self.narrator, self.interviewer, self.myself = narrator, interviewer, False
        self._began = time.monotonic()
        self.shown.clear()
        self._name_the_narrator()

    def nobody(self, *, myself: bool = False) -> None:
        """From now on no narrator tells: the keeper herself does (`myself`), or nobody is named yet."""
        self.id = self.narrator = ""
        self.source, self.myself = KEEPER, myself
        self.shown.clear()

    def _name_the_narrator(self) -> None:
        act = self.collection.act("a sitting")
        self.source = self.teller.source(act, Source(Said.NARRATOR, self.narrator.strip()))
        person = self.collection.people().get(self.source.ref)
        if person and not named([person], self.narrator):
            self.narrator = person.name
        self.id = act.new(Kind.SITTING).id
        subject = Subject(Kind.SITTING, self.id)
        statement = self.teller.add_words(act, subject, "narrator", self.narrator, Telling())
        act.readings.append((statement.id, person_reading(Subject(Kind.PERSON, self.source.ref))))
        self.teller.add(act, subject, "date", self.collection.clock.today().isoformat(), Telling())
        if self.interviewer.strip():
            self.teller.add(act, subject, "interviewer", self.interviewer, Telling())
        act.done()
        self._called = self._name_now

    @property
    def teller_named(self) -> str:
        """What the narrator is called now: a name that was put right since she began is hers here too."""
        return self.narrator if self._name_now == self._called else self._name_now

    @property
    def _name_now(self) -> str:
        person = self.collection.people().get(self.source.ref) if self.id else None
        return person.name if person else self._called

    @property
    def moment(self) -> int | None:
        """Milliseconds since the sitting began, by a clock that only goes forward; None outside a sitting."""
        return round((time.monotonic() - self._began) * 1000) if self.id else None

    @property
    def minutes(self) -> int:
        """Whole minutes since it began."""
        return int((time.monotonic() - self._began) // 60)

    def show(self, item: str) -> None:
        """An item comes out: noted in the time log of a sitting with a narrator."""
        self.shown[item] = self.collection.clock.now()
        self.to_name.clear()
        if self.writable:
            note_out(self.collection, item)
        if self.id and self.writable and self.stage is Stage.GOING_THROUGH:
            act = self.collection.act("shown")
            words = SHOWN_WORDS.write(ShownAt(item, self.moment))
            act.state(Subject(Kind.SITTING, self.id), "shown", words, sitting=self.id, moment=self.moment)
            act.done()

    # what is told

    def source_of(self, prompt: Prompt) -> Source:
        """Who says what is typed into this prompt: words on a print are its own, everything else the teller's."""
        return VERSO if prompt.field == "inscription" else self.source

    def own(self, record: Record, prompt: Prompt) -> StatementView | None:
        """The statement that typing into this prompt corrects: this source's own, none where answers gather."""
        return None if prompt.gathers else self.last_own(record, prompt)

    def last_own(self, record: Record, prompt: Prompt) -> StatementView | None:
        """The last answer of this source, also where answers gather: what an order to correct takes the place of."""
        source = self.source_of(prompt)
        own = [view for view in record.all(prompt.field) if view.source == source]
        return max(own, key=lambda view: (view.recorded_at, view.statement), default=None)

    def others(self, record: Record, prompt: Prompt) -> list[StatementView]:
        """What is told in this field besides; of people, those at a marker too."""
        if prompt.field == "person":
            return [shown.told for shown in record.shown()]
        own = self.own(record, prompt)
        return [view for view in record.all(prompt.field) if own is None or view.statement != own.statement]

    def draft(self, item: str, prompt: Prompt, words: str, replaces: str = "") -> None:
        """Keep what is being typed; on the disk when this returns. Empty words forget the draft."""
        subject = self._subject(item, prompt)
        slot = (subject.id, prompt.field, "")
        if is_blank(words):
            if slot in self._drafted:
                self.collection.store.drop_draft(*slot)
                self._drafted.discard(slot)
            return
        self.collection.store.save_draft(
            Draft(
                subject=subject,
                field=prompt.field,
                words=words,
                language=self.language,
                source=self.source_of(prompt),
                sitting=self.id,
                moment=self.moment,
                replaces=replaces,
                updated_at=self.collection.clock.now(),
            )
        )
        self._drafted.add(slot)
        for left_slot in [drafted for drafted in self._drafted if drafted[1] == prompt.field and drafted != slot]:
            self.collection.store.drop_draft(*left_slot)  # a marker was touched in mid-word: the words are its own now
            self._drafted.discard(left_slot)

    def keep(
        self,
        record: Record,
        prompt: Prompt,
        words: str,
        *,
        person: str = "",
        adds: bool = False,
        corrects: StatementView | None = None,
    ) -> bool:
        """The prompt is left: its words become one statement, if they say anything new. `person`: chosen by id.
        `adds`: said besides what this source said before, where the field can hold many. `corrects`: said in the place
        of this answer, where answers gather.

        Where answers gather, a semicolon parts two of them. Emptied words of ours are withdrawn.
        """
        words = without_controls(words)  # a terminal sends some for its keys; the teller never said them
        own = corrects or (None if adds and FIELDS[prompt.field].many else self.own(record, prompt))
        if is_blank(words):
            return self._emptied(record, prompt, own)
        if own is not None and own.words == words.strip():
            self.draft(record.id, prompt, "")
            return False
        if own is None and self._is_told(record, prompt, words, person):
            self.draft(record.id, prompt, "")
            return False
        parts = self._parts(prompt, words)
        parts = parts if any(parts) else [words.strip()]
        act = self.collection.act(f"{prompt.field}: {_new_in(words.strip(), own.words if own else '')}")
        subject = self._subject(record.id, prompt)
        for part in parts:
            if not is_blank(part):
                self._add(act, record, prompt, part, own, person)
                own = None if prompt.gathers else own  # the first corrects, the others are told besides
        slots = {slot for slot in self._drafted if slot[1] == prompt.field} | {(subject.id, prompt.field, "")}
        act.clears += sorted(slots)
        self.finish(act, record.id)
        self._drafted -= slots
        if prompt.field == "occasion":
            self.occasions.heard(words)
        return True

    def _is_told(self, record: Record, prompt: Prompt, words: str, person: str) -> bool:
        """Whether this source told of the same person in the same words before, of the item and at no marker: nobody is
        in a picture twice. Of those whom no name tells apart (`a boy`) there may be two."""
        if prompt.field != "person" or self.to_name:
            return False
        told = [view for view in record.all("person") if view.source == self.source_of(prompt) and view.meant]
        return any(fold(view.words) == fold(words.strip()) and person in ("", view.meant) for view in told)

    def _parts(self, prompt: Prompt, words: str) -> list[str]:
        """The answers in what was typed: names for markers one by one, those of an item together."""
        if prompt.field == "person" and not self.to_name:
            return [words.strip()]
        if prompt.field == "person":
            return one_by_one(words, self.teller.understanding.known_names)
        return [part.strip() for part in words.split(";")] if prompt.gathers else [words.strip()]

    def _subject(self, item: str, prompt: Prompt) -> Subject:
        """What typing into a prompt is about: the item, or the marker whose name is awaited."""
        return self.to_name[0] if prompt.field == "person" and self.to_name else Subject(Kind.ITEM, item)

    def mark(self, record: Record, scan: ScanFile, x: float, y: float) -> Subject:
        """A marker where the picture was touched (0..1 of the picture looked at); the next name told is its own."""
        act = self.collection.act("a marker")
        marker = self.markers.add(act, scan, x, y)
        self.finish(act, record.id)
        self.to_name.append(marker)
        return marker

    def _add(
        self, act: Act, record: Record, prompt: Prompt, words: str, own: StatementView | None, person: str
    ) -> None:
        how = self._how(prompt)
        if own is not None:
            how = replace(how, sure=own.sure, audience=own.audience)
        subject = self._subject(record.id, prompt)
        replaces = own.statement if own else ""
        if subject.kind is Kind.MARKER:
            self.to_name.pop(0)
            replaces = self._said_at(subject, how.source)
        with self._places if prompt.reads == "place" else nullcontext():
            if person:
                statement = self.teller.add_words(act, subject, prompt.field, words, how, replaces=replaces)
                act.readings.append((statement.id, person_reading(Subject(Kind.PERSON, person))))
            else:
                self.teller.add(act, subject, prompt.field, words, how, replaces=replaces)

    def _said_at(self, marker: Subject, source: Source) -> str:
        """The id of what this source said of a marker before, the name or that it is not known; '' if nothing."""
        rows = self.collection.store.statements(marker)
        said = [statement for statement, _ in rows if statement.field == "person" and statement.source == source]
        return said[-1].id if said else ""

    def await_names(self, markers: Sequence[str]) -> None:
        """These markers (ids) of the item that is out have no name yet: the next names told are theirs, after those
        that are awaited already."""
        awaited = {subject.id for subject in self.to_name}
        self.to_name += [Subject(Kind.MARKER, ident) for ident in markers if ident not in awaited]

    @property
    def telling(self) -> Telling:
        """How things are told now: by this teller, in this language, in this sitting, at this moment."""
        return Telling(source=self.source, language=self.language, sitting=self.id, moment=self.moment)

    def _how(self, prompt: Prompt) -> Telling:
        return Telling(
            source=self.source_of(prompt), language=self.language, sitting=self.id, moment=self.moment, audience=""
        )

    def _emptied(self, record: Record, prompt: Prompt, own: StatementView | None) -> bool:
        self.draft(record.id, prompt, "")
        if own is None:
            return False
        act = next(
            (
                past.statement.act
                for past in self.history(record.id, prompt.field)
                if past.statement.id == own.statement
            ),
            "",
        )
        if not self.steps.made(act):
            raise WrongUse(
                "These words were kept in an earlier sitting, so emptying does not take them away.",
                "Ctrl+Z puts them back. Write over them to correct them; F4 takes the answer back.",
            )
        self.steps.withdraw(Done(act, f"{prompt.field}: emptied", record.id), undoes=False)
        return True

    def not_known(self, record: Record, prompt: Prompt) -> None:
        """Asked, and the source does not know."""
        act = self.collection.act(f"{prompt.field}: asked, not known")
        how = replace(self._how(prompt), sure=Sure.NOT_KNOWN)
        subject = self._subject(record.id, prompt)
        self.teller.add(act, subject, prompt.field, "", how)
        if subject.kind is Kind.MARKER:
            self.to_name.pop(0)
        self.finish(act, record.id)

    def ask_later(self, record: Record, words: str = COME_BACK) -> None:
        """Note what is still to ask, or whom (“ask Joan”)."""
        act = self.collection.act(f"to ask: {words[:40]}")
        act.state(Subject(Kind.ITEM, record.id), "asked", words.strip() or COME_BACK, sitting=self.id)
        self.finish(act, record.id)

    def set_aside(self, record: Record, why: str) -> None:
        """Put an item aside for now: not for today, not for this teller."""
        act = self.collection.act(f"set aside: {why[:40]}")
        words = why.strip() or "for now"
        act.state(Subject(Kind.ITEM, record.id), "set_aside", words, audience="keeper", sitting=self.id)
        self.finish(act, record.id)

    def to_ask(self, item: str) -> list[str]:
        """What is still to ask about an item, and why it was set aside."""
        rows = [statement for statement, _ in self.collection.store.statements(Subject(Kind.ITEM, item))]
        return still_to_ask(rows)

    # what was told before

    def history(self, item: str, name: str) -> list[Past]:
        """Everything ever said of one field of an item."""
        return self.collection.store.history(item, name)

    def strike(self, statement: str, progress: Progress = QUIET) -> StrikeReport:
        """Take words out for good, at the teller's wish. Waits while another program reads the collection."""
        progress.begin("Striking the words", 0)
        return strike_out(
            self.collection, [statement], waiting=lambda why: progress.begin(why, 0), stopped=progress.stopped
        )

    # undo and redo

    def undo(self) -> Done | None:
        """Take back the last step of this sitting; None if there is none."""
        self.to_name.clear()
        return self.steps.undo()

    def redo(self) -> Done | None:
        """Do again what was just taken back; None if nothing was."""
        self.to_name.clear()
        return self.steps.redo()

    def finish(self, act: Act, item: str) -> None:
        """Write an act as the last step of this sitting."""
        if not self.id and not self.myself:
            self.waiting += [said for said in act.statements if said.source == KEEPER and FIELDS[said.field].told]
        self.steps.finish(act, item)

    # looking

    def prepare(self) -> None:
        """Read the occasions told, make ready to read dates, and open the list of places, which is built on its first
        use; call it in a thread of its own."""
        self.occasions.read(self.collection)
        phrases.make_ready()
        with self._places:
            self._ready = self.teller.understanding.gazetteer is not None

    def complete(self, prompt: Prompt, words: str) -> list[tuple[str, str]]:
        """(id, words) of people, or places and occasions (without id), that begin as the last of the words typed; none
        for a place that was told in just these words, so that the key that takes one never changes it."""
        typed = words.split(";")[-1].strip()
        if prompt.reads == "person":
            people = self.collection.people()
            completions = self.collection.store.complete_people(typed, 8)
            meant = {people[ident].id if ident in people else ident: words for ident, words in completions}
            return [(ident, people[ident].name if ident in people else words) for ident, words in meant.items()]
        if prompt.reads == "place":
            places = self.collection.store.complete_places(typed, 8)
            is_told = any(fold(place) == fold(typed) for place in places)
            return [] if is_told else [("", place) for place in places]
        return [("", told) for told in self.occasions.begun(typed)] if prompt.field == "occasion" else []

    def understand(self, prompt: Prompt, words: str, record: Record) -> Understood | None:
        """What is made of the words so far, for a prompt that is read; nothing while the places are prepared."""
        if prompt.reads == "place" and not self._ready:
            return None
        narrator = self.source.ref if self.source.said is Said.NARRATOR else ""
        told = partial(readings_of, self.collection, record.id)
        beside = around_record(record, self.collection.people(), narrator, readings=told)
        return self.teller.understanding.read(prompt.reads, words, beside)

    def gentle_questions(self, record: Record, but: Iterable[str] = ()) -> list[str]:
        """What the rules find worth asking about an item, without what the prompts ask anyway, and without what is in
        question, and what is disputed, of the fields `but`."""
        people = self.collection.people()
        findings = [*look_over(record, people), *lives_in_question(record, people)]
        shown = [f"{name}.{kind}" for name in but for kind in ("asks", "conflict")]
        return [
            finding.message
            for finding in findings
            if not finding.rule.endswith(".missing") and finding.rule not in shown
        ]

    def record(self, item: str) -> Record:
        """The keeper's whole record of an item."""
        return record_of(self.collection, item)


def _new_in(words: str, before: str) -> str:
    """What is new in an answer that is corrected, in at most 40 letters: what stands behind the part that stays."""
    letters = zip(words, before, strict=False)
    stays = next((at for at, (new, old) in enumerate(letters) if new != old), min(len(words), len(before)))
    stays = words.rfind(" ", 0, stays + 1) + 1 if 0 < stays < len(words) else 0
    line = " ".join(words[stays:].split())
    return f"{'… ' if stays else ''}{line if len(line) <= 40 else line[:39].rstrip() + '…'}"
