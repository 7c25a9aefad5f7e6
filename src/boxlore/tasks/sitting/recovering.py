"""What an interruption left half done is finished at the next opening for writing: drafts, and a strike that waited."""

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from boxlore.core.fields.letters import without_controls
from boxlore.core.fields.table import field_of
from boxlore.core.fields.told import is_untold
from boxlore.core.statements import Statement
from boxlore.store.values import Draft
from boxlore.tasks.collection.opening import Collection, open_collection
from boxlore.tasks.strike import finish_pending
from boxlore.tasks.telling.statements import Teller, Telling


@contextmanager
def open_for_writing(folder: Path) -> Iterator[Collection]:
    """Open a collection to write to it, with what an interruption left finished first."""
    with open_collection(folder) as collection:
        recover_drafts(collection)
        finish_pending(collection)
        yield collection


def recover_drafts(collection: Collection) -> list[Statement]:
    """Turn what an interruption left half typed into statements, each in an act that says so.

    A draft that says nothing yet (blanks, a comma) is forgotten.
    """
    teller = Teller(collection)
    recovered: list[Statement] = []
    for draft in collection.store.drafts():
        act = collection.act(f"recovered after an interruption: {draft.field}")
        how = Telling(
            source=draft.source,
            sure=draft.sure,
            language=draft.language,
            audience="" if draft.audience == "anyone" else draft.audience,
            sitting=draft.sitting,
            moment=draft.moment,
        )
        words = without_controls(draft.words)
        if not is_untold(field_of(draft.field, draft.subject.kind), words):
            recovered.append(teller.add(act, draft.subject, draft.field, words, how, replaces=draft.replaces))
        act.clears.append((draft.subject.id, draft.field, draft.slot))
        act.done()
    return recovered


def drafts_of(collection: Collection, item: str) -> list[Draft]:
    """What is being typed about an item and the markers on it."""
    markers = (marker for material in collection.store.about_items(ids=(item,)) for marker in material.markers)
    ids = {item, *(marker.id for marker in markers)}
    return [draft for draft in collection.store.drafts() if draft.subject.id in ids]
