"""What is worked out of everything told, for who sits: what else to ask the teller, and dates that may be proposed.

Both read the whole collection, which takes seconds in a large one: they are called in a thread, and can be stopped.
What is worth asking of the photograph that is shown follows from nearby, at once. Nothing of it is written; a keeper
who agrees tells it as her own answer.
"""

from dataclasses import dataclass

from boxlore.core.dates.family_display import family_display
from boxlore.core.dates.reading import DateReading
from boxlore.core.evidence.asking import PAPERS
from boxlore.core.evidence.claims import of_item
from boxlore.core.evidence.disagreements import by_day, disagreements
from boxlore.core.findings import several
from boxlore.core.people.who_is_meant import known_by
from boxlore.core.records.item_record import Record
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.progress import QUIET, Progress
from boxlore.tasks.collection.settings import family_way
from boxlore.tasks.people.evidence import evidence, to_ask_next, to_ask_of
from boxlore.tasks.sitting.what_to_ask import ToAsk

MINUTES = 45
"""How long a teller is asked at most, as for a printed worksheet."""


@dataclass(frozen=True, slots=True)
class DateWorkedOut:
    """An item (id and number) and its date as told, in words; the date that follows from everything told, and each
    reason with who says it. Without `worked` the reasons cannot all be so."""

    item: str
    number: str
    told: str
    worked: str
    because: tuple[str, ...]


def more_to_ask(collection: Collection, name: str, progress: Progress = QUIET) -> list[ToAsk]:
    """What only this teller can answer and what settles most, in the order to ask it; nothing for a name that is not
    one person's. Raises CouldNot where somebody asked to stop."""
    if len(known_by(collection.people().values(), name)) != 1:
        return []
    questions = to_ask_next(collection, evidence(collection, progress), name, MINUTES)
    return [
        ToAsk(
            question.words,
            question.item,
            question.number,
            why=_good_for(question.settles, is_sad=question.is_sad),
            kind=question.kind,
            about=question.about,
        )
        for question in questions
    ]


def worth_asking(collection: Collection, record: Record, name: str) -> list[str]:
    """What else this teller may be asked of a photograph, beside when it was taken and who is in it: at most two
    questions that settle its date better, with a warning at a sad one."""
    if record.kind in PAPERS:
        return []
    asked = [each for each in to_ask_of(collection, record, name) if each.kind not in AT_PROMPTS]
    best = sorted(asked, key=lambda each: -each.settles)[:MOST]
    return [f"{each.words}{' (it may be a sad one: ask it gently)' if each.is_sad else ''}" for each in best]


AT_PROMPTS = ("date", "who")
"""Kinds of questions that the prompts ask anyway."""
MOST = 2


def _good_for(years: float, *, is_sad: bool) -> str:
    gently = " It may be a sad one: ask it gently, and read the care note first." if is_sad else ""
    settled = f"about {several(round(years), 'year')}" if years >= 0.5 else "less than a year"
    return f"By what is told so far, an answer settles {settled} of the dates.{gently}"


def dates_worked_out(collection: Collection, progress: Progress = QUIET) -> list[DateWorkedOut]:
    """The items of which everything told together says more than their date does; first those of which it cannot all
    be so. Raises CouldNot where somebody asked to stop."""
    found = evidence(collection, progress)
    way = family_way(collection.settings)
    days = by_day(disagreements(found.worked.circles))
    against, dated = [], []
    for record in found.records:
        worked = found.of_item(record.id)
        told = "; ".join(dict.fromkeys(view.words for view in record.all("date")))
        if of_it := days.get(of_item(record.id)):
            claims = dict.fromkeys(claim for each in of_it for claim in each.circle.claims)
            reasons = tuple(f"{claim.words} ({claim.source})" for claim in claims)
            against.append(DateWorkedOut(record.id, record.number, told, "", reasons))
        elif worked.edtf and not worked.is_told(record.edtf):
            edtf = DateReading.from_edtf(worked.edtf).edtf
            shown = family_display(edtf, way) if edtf else worked.edtf
            reasons = tuple(f"{claim.words} ({claim.source})" for claim in worked.because)
            dated.append(DateWorkedOut(record.id, record.number, told, shown, reasons))
    return [*against, *dated]
