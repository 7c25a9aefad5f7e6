"""The course of a sitting: prepared with its agreement, rested, closed with what to ask next time, and summed up.

Agreement is recorded before anything is asked, with its terms and who gave it; the lead-in names who, the full date
and the place without a street address; a narrator may refuse a topic or restrict access at any time (Oral History
Association, Best Practices, 2018). What someone living allows is asked about again at each
sitting. About 90 minutes, then stop (George Mason University, History Matters).
"""

from collections.abc import Mapping
from dataclasses import dataclass

from boxlore.core.errors import WrongUse
from boxlore.core.fields.audiences import audience_shown
from boxlore.core.fields.sittings import CLOSED_WORDS, COURSE_WORDS, CourseStep, Passage
from boxlore.core.findings import several
from boxlore.core.people.consent import Capacity, allowed, answered, due
from boxlore.core.people.person import Person
from boxlore.core.records.living import life_of
from boxlore.core.records.terms import ANYONE, FAMILY_ONLY, FOR_NOW, WITH_ARCHIVE, consent_words, promise_of
from boxlore.core.sitting.stages import Stage, Step
from boxlore.core.statements import Kind, Statement, Subject, fold
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.sitting.people_corrections import allow
from boxlore.tasks.sitting.session import Sitting
from boxlore.tasks.telling.statements import Teller, Telling
from boxlore.tasks.telling.understanding import NOTHING_AROUND

SUGGESTED_MINUTES = 90

READ_OUT = (
    "We look at photographs, and I write down what you tell, in your own words, with your name. If a recorder "
    "runs, it keeps your voice. You may leave out anything, stop at any time, use another name, keep a part closed, "
    "or have words taken out again, now or later. Who may read and hear it?"
)
"""Common practice after the Oral History Association's Best Practices (2018). No legal advice."""

TERMS = {"1": FAMILY_ONLY, "2": f"{WITH_ARCHIVE} {FOR_NOW}", "3": ANYONE}

DIED = "I have died"
UNTIL = f"A year or a day, or “{DIED}”. Only where an archive has it; empty: for now, until it is asked again."

MINOR = "For somebody under age a parent or guardian agrees as well: write both names."
"""Davidson College's guide to the Oral History Association's practices."""


@dataclass(frozen=True, slots=True)
class Summary:
    """What a sitting came to: items shown, statements made, minutes, and what is still to ask."""

    items: int
    statements: int
    minutes: int
    to_ask: tuple[str, ...]

    def lines(self) -> list[str]:
        """The summary in sentences."""
        sentences = [
            f"{several(self.items, 'photograph')} shown, {several(self.statements, 'answer')} kept, in "
            f"{several(self.minutes, 'minute')}."
        ]
        return sentences + [f"Next time: {words}" for words in self.to_ask]


def suggest_end(sitting: Sitting) -> str:
    """Once, when a sitting has lasted SUGGESTED_MINUTES, the words that suggest ending it; '' at any other time."""
    if sitting.end_suggested or not sitting.id or sitting.minutes < SUGGESTED_MINUTES:
        return ""
    sitting.end_suggested = True
    return "An hour and a half by now. Enough for today?"


def prepare(sitting: Sitting, answers: Mapping[str, str]) -> None:
    """Note who tells, who asks, where, and the agreement: `terms` (a key of TERMS, or words), `until` (when an archive
    keeps it closed; in words), `agreed_by`, `recorder`.

    Raises WrongUse where the terms are given without who gave them, or nobody tells.
    """
    narrator, terms, agreed_by = (answers.get(name, "").strip() for name in ("narrator", "terms", "agreed_by"))
    if not narrator:
        raise WrongUse("Nobody tells yet.", "Write who tells.")
    if terms and not agreed_by:
        raise WrongUse("Terms were agreed to by somebody.", "Write who gave the agreement.")
    agreed = _agreed(
        sitting, terms, answers.get("until", "").strip()
    )  # which may be refused: before anything is changed
    known = sitting.teller.understanding.person_called(narrator)
    tells_now = bool(sitting.id) and (known.id if known else narrator) in (sitting.source.ref, sitting.narrator)
    if not tells_now:
        sitting.start_with(narrator, answers.get("interviewer", ""))
    subject, how = Subject(Kind.SITTING, sitting.id), Telling(sitting=sitting.id, moment=sitting.moment)
    act = sitting.collection.act("the agreement")
    teller = Teller(sitting.collection)
    if place := answers.get("place", "").strip():
        teller.add(act, subject, "place", place, how)
    if terms:
        teller.add(act, subject, "agreement", f"Read out: {READ_OUT} Agreed: {agreed}.", how)
        teller.add(act, subject, "consent", consent_words(agreed_by, agreed), how)
    act.done()
    if answers.get("recorder", "").strip().lower() in ("y", "yes"):
        note(sitting, "recording started")


def _agreed(sitting: Sitting, terms: str, until: str) -> str:
    words = TERMS.get(terms, terms)
    if until and FOR_NOW not in words:
        raise WrongUse("Only an archive keeps something closed for a time.", "Choose that, or let the line be empty.")
    return words.replace(FOR_NOW, f"until {_end(sitting, until)}") if until else words


def _end(sitting: Sitting, until: str) -> str:
    """The last day that is meant, as YYYY-MM-DD, or DIED. Raises WrongUse: an end that is no day is asked about."""
    words = until.removeprefix("until ").strip(" .“”\"'")
    if fold(words) == fold(DIED):
        return DIED
    read, _ = sitting.teller.understanding.date(words, NOTHING_AROUND)
    day = read.latest_day
    if day is None or read.alternatives:  # that a year is to come is no question here
        raise WrongUse(
            f"“{words[:40]}” {'may be several days' if day else 'is no day'}.",
            f"Until which year or day? Or write “{DIED}”; empty: for now, until it is asked again.",
        )
    if day <= sitting.collection.clock.today():
        raise WrongUse(f"“{words[:40]}” is past.", "Write a year or a day that is still to come.")
    return day.isoformat()


def told_for(sitting: Sitting) -> str:
    """For whom what is told in this sitting is, as was agreed: `for the family only`; '' for anyone."""
    rows = sitting.collection.store.statements(Subject(Kind.SITTING, sitting.id))
    return audience_shown(promise_of((row.field, row.words) for row, _ in rows).audience)


def note(sitting: Sitting, step: str) -> int:
    """One line of the time log that is about the sitting itself. Returns its moment."""
    moment = sitting.moment
    if moment is None:
        raise WrongUse("No sitting with a teller has begun.", "Begin one first: Esc, then “This sitting”.")
    act = sitting.collection.act(step)
    words = COURSE_WORDS.write(CourseStep(step, moment))
    act.state(Subject(Kind.SITTING, sitting.id), "course", words, sitting=sitting.id, moment=moment)
    act.done()
    return moment


def step(sitting: Sitting, said: Step) -> None:
    """Rest, go on, close or end; noted in the time log. Raises OutOfTurn."""
    sitting.take(said)
    if sitting.id and sitting.writable:
        note(sitting, str(said))


def consent_due(sitting: Sitting) -> list[Person]:
    """The living who allow something and have not been asked again in this sitting; the teller first, then by name."""
    collection = sitting.collection
    idents = collection.store.subjects_told(Kind.PERSON, "consent") if sitting.id and sitting.writable else []
    if not idents:
        return []
    people, today, years = collection.people(), collection.clock.today(), collection.settings.living_years
    candidates = {people[ident].id: people[ident] for ident in idents if ident in people}
    asked = [
        person
        for person in candidates.values()
        if due(person.consents, sitting.id) and life_of(person, today, years).living
    ]
    return sorted(asked, key=lambda person: (sitting.source.ref not in person.ids, person.sort_name, person.id))


def due_words(person: Person) -> str:
    """“Leida Rourke: name, picture”, and who says it for her."""
    last = [consent for consent in person.consents if consent.given][-1]
    speaks = "" if last.capacity is Capacity.SELF else f" (ask {last.by}, {last.capacity})"
    return f"{person.name}: {', '.join(sorted(allowed(person.consents)))}{speaks}"


def answer_consent(sitting: Sitting, person: Person, *, given: bool, witness: str = "") -> list[str]:
    """Note that what a person allows stands, or is withdrawn, as said in this sitting. Returns the sentence that says
    so, and those of `people_corrections.allow`."""
    day = sitting.collection.clock.today().isoformat()
    consent = answered(person.consents, given=given, day=day, sitting=sitting.id, witness=witness.strip())
    return [f"{person.name}: {consent.words}.", *allow(sitting, person, consent)]


def clap(sitting: Sitting) -> int:
    """A moment that is heard in the recording as well: clap, and the number of this clap is returned."""
    note(sitting, "clap")
    return len(claps(sitting.collection, sitting.id))


def steps(collection: Collection, sitting: str) -> list[tuple[int, str]]:
    """(moment, step) of what was noted of a sitting's course."""
    rows = collection.store.statements(Subject(Kind.SITTING, sitting))
    noted = [COURSE_WORDS.read(statement.words) for statement, _ in rows if statement.field == "course"]
    return [(course.at, course.step) for course in noted]


def claps(collection: Collection, sitting: str) -> list[int]:
    """The moments of the claps, in order."""
    return sorted(at for at, what in steps(collection, sitting) if what == "clap")


def close_passage(sitting: Sitting, minutes: float, why: str) -> int:
    """The last minutes, up to now, are kept from outside: what was told in them stays with the family, and so does a
    recording in which they are heard. Returns how many answers were told in them."""
    end = sitting.moment
    if end is None:
        raise WrongUse("No sitting with a teller has begun.", "Begin one first: Esc, then “This sitting”.")
    passage = Passage(max(0, end - round(minutes * 60_000)), end, why.strip())
    words = CLOSED_WORDS.write(passage)
    act = sitting.collection.act("a closed passage")
    act.state(Subject(Kind.SITTING, sitting.id), "closed", words, audience="keeper", sitting=sitting.id, moment=end)
    act.done()
    told = [row for row, _ in sitting.collection.store.of_sitting(sitting.id) if _is_answer(row)]
    return sum(1 for row in told if row.words and passage.start <= (row.moment or 0) <= passage.end)


def ask_next_time(sitting: Sitting, words: str) -> None:
    """What to ask next time, line by line or parted by semicolons."""
    parts = [part.strip() for part in words.replace("\n", ";").split(";") if part.strip()]
    if not parts or not sitting.id:
        return
    act = sitting.collection.act("to ask next time")
    for part in parts:
        act.state(Subject(Kind.SITTING, sitting.id), "asked", part, audience="keeper", sitting=sitting.id)
    act.done()


def summary(sitting: Sitting) -> Summary:
    """What this sitting came to so far."""
    statements: list[Statement] = (
        [statement for statement, _ in sitting.collection.store.of_sitting(sitting.id)] if sitting.id else []
    )
    answers = [statement for statement in statements if _is_answer(statement)]
    to_ask = [statement.words for statement in statements if statement.field == "asked"]
    shown = {*sitting.shown, *[told.subject.id for told in answers if told.subject.kind is Kind.ITEM]}
    return Summary(len(shown), len(answers), sitting.minutes, tuple(to_ask))


HOW_KEPT = ("scan", "area", "asked")


def _is_answer(statement: Statement) -> bool:
    return statement.subject.kind in (Kind.ITEM, Kind.MARKER) and statement.field not in HOW_KEPT


STAGES = {
    Stage.GOING_THROUGH: (Step.REST, Step.CLOSE),
    Stage.RESTING: (Step.GO_ON, Step.CLOSE),
    Stage.CLOSING: (Step.GO_ON,),
}
"""What is offered at each stage (the table of moves without leaving)."""
