"""Questions about somebody in an item that nobody has answered: noted when it was told, open until it is settled."""

from collections.abc import Iterable, Iterator

from boxlore.core.findings import Finding, Severity, make_finding
from boxlore.core.records.item_record import Record
from boxlore.core.records.people_asked import answers_about, asked_by, is_in_a_remark

OURS = "a rule of our own"


def people_in_question(record: Record, questions: Iterable[str]) -> Iterator[Finding]:
    """Each of the questions noted of an item that is about somebody in it, and has no answer."""
    views = (*record.all("person"), *record.all("note"))
    for question in questions:
        about = any(asked_by(question, view.words) for view in views if not view.meant)
        told = (
            answers_about(question, view.words) is not None or is_in_a_remark(question, view.words) for view in views
        )
        if about or any(told):
            yield make_finding("person.in-question", Severity.ASK, question, OURS, about=record.id)
