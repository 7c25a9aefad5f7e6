"""Questions about somebody in an item that nobody has answered: noted when it was told, open until it is settled.

A question quotes the words that it is about (`Is “Rex” someone in the picture?`), or those of a remark (`Is “Dot” in
the picture too, where “leaning on Dot” is told of Anna?`). What brackets say of somebody stands behind those words.
"""

import re
from collections.abc import Iterable, Iterator

from boxlore.core.findings import Finding, Severity, make_finding
from boxlore.core.records.item_record import Record

OURS = "a rule of our own"
OF_A_REMARK = re.compile(r"Is “(.+?)” in the picture too, where “(.+)” is told of ")


def people_in_question(record: Record, questions: Iterable[str]) -> Iterator[Finding]:
    """Each of the questions noted of an item that is about somebody in it, and has no answer."""
    views = record.all("person")
    for question in questions:
        remark = OF_A_REMARK.match(question)
        about = any(asked_by(question, view.words) for view in views if not view.meant)
        if about or (remark and any(remark[2] in view.words for view in views)):
            yield make_finding("person.in-question", Severity.ASK, question, OURS, about=record.id)


def asked_by(question: str, told: str) -> str:
    """The words in question, if it asks about what was told: all, or those before what brackets say of somebody."""
    asked = (told, before_brackets(told))
    return next((name for name in asked if f"“{name}”" in question and not OF_A_REMARK.match(question)), "")


def before_brackets(told: str) -> str:
    """`Ruth` of `Ruth (still alive then)`."""
    return told.partition(" (")[0]
