"""A correction told from the shell: an answer in the place of what the same source told of it before.

Without it both stand, for somebody may tell a thing twice and mean both: who told it otherwise is asked about. What was
corrected stays in the history.
"""

from boxlore.core.errors import WrongUse
from boxlore.core.fields.table import field_of
from boxlore.core.statements import Statement, Subject
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.telling.statements import Teller, Telling


def told_before(collection: Collection, subject: Subject, field: str, how: Telling) -> list[Statement]:
    """What the source of `how` has told in that field of an item, the last one last."""
    source = Teller(collection).source(collection.act("nothing is kept of it"), how.source)
    rows = (row for row, _ in collection.store.statements(subject))
    return [row for row in rows if row.field == field and row.source == source and row.words]


def tell_instead(teller: Teller, subject: Subject, field: str, words: str, how: Telling) -> Statement:
    """Tell it in the place of what the same source told before, which holds no more.

    Raises WrongUse where that source has told nothing there, or several things of which any may be meant.
    """
    collection = teller.collection
    before = told_before(collection, subject, field, how)
    if not before:
        raise WrongUse(
            f"Nothing is told in {field} by that source, so that there is nothing to put it in the place of.",
            "Leave --instead away, or say who told it: --by.",
        )
    if field_of(field, subject.kind).many and len(before) > 1:
        said = "; ".join(f"“{row.words[:40]}”" for row in before)
        raise WrongUse(
            f"That source has told several things in {field}: {said}.", "Correct the one that is meant: boxlore sit."
        )
    typed = teller.typed(subject.kind, field, words)
    act = collection.act(f"{field}: corrected")
    kept = next((row for row in before if row.words == typed and row.sure is how.sure), None)
    told = kept or teller.add(act, subject, field, typed, how, replaces=before[-1].id)
    for row in before if kept else before[:-1]:
        if row is not kept:  # as an answer is taken back in a sitting: done with, and asked no more
            act.state(subject, "asked", "", audience="keeper", replaces=row.id)
    act.done()
    return told
