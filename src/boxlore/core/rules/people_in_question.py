"""Questions about somebody in an item that nobody has answered: noted when it was told, open until it is settled."""

from collections.abc import Iterable, Iterator

from boxlore.core.findings import Finding, Severity, make_finding
from boxlore.core.records.item_record import Record
from boxlore.core.records.people_asked import OF_A_REMARK, asked_by

OURS = "a rule of our own"


def people_in_question(record: Record, questions: Iterable[str]) -> Iterator[Finding]:
    """Each of the questions noted of an item that is about somebody in it, and has no answer."""
    views = record.all("person")
    for question in questions:
        remark = OF_A_REMARK.match(question)
        about = any(asked_by(question, view.words) for view in views if not view.meant)
        if about or (remark and any(remark[2] in view.words for view in views)):
            yield make_finding("person.in-question", Severity.ASK, question, OURS, about=record.id)
