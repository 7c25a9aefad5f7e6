"""What an interruption left half typed becomes statements at the next opening for writing."""

from boxlore.core.statements import Statement
from boxlore.tasks.describe import Teller, Telling
from boxlore.tasks.opening import Collection


def recover_drafts(collection: Collection) -> list[Statement]:
    """Turn what an interruption left half typed into statements, each in an act that says so."""
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
        recovered.append(teller.add(act, draft.subject, draft.field, draft.words, how, replaces=draft.replaces))
        act.clears.append((draft.subject.id, draft.field, draft.slot))
        act.done()
    return recovered
