"""Who said it: what was told before a teller was named is given to her, and one statement to another source."""

from dataclasses import replace

from boxlore.core.fields.language import language_tag
from boxlore.core.statements import KEEPER, Said, Source, Statement
from boxlore.tasks.collection.opening import Act, Collection
from boxlore.tasks.collection.progress import QUIET, Progress
from boxlore.tasks.collection.prompts import PROMPTS, read_prompts
from boxlore.tasks.sitting.session import Sitting
from boxlore.tasks.telling.statements import Teller

ASKED = {prompt.field for prompt in PROMPTS} | {"named", "title"}
"""Fields whose words are a teller's: those of the questions, who is named beside the picture, and its title."""


def give(sitting: Sitting, item: str) -> int:
    """Everything that waits for a teller is told by the one who tells now. Returns how many statements there were.

    One act, so that one undo takes it back; `item` is what is out, for looking there after an undo.
    """
    act = sitting.collection.act(f"told by {sitting.narrator}")
    for statement in waiting(sitting):
        said_by(act, statement, sitting.source, sitting.id)
    count = len(act.statements)
    if count:
        sitting.finish(act, item)
    sitting.waiting.clear()
    return count


def waiting(sitting: Sitting) -> list[Statement]:
    """What waits for a teller and is in force: not undone, replaced or given already."""
    return [
        statement
        for statement in sitting.waiting
        if any(said.id == statement.id for said, _ in sitting.collection.store.statements(statement.subject))
    ]


def said_by(act: Act, statement: Statement, source: Source, sitting: str = "") -> Statement:
    """The same words, from another source; the statement before is replaced and stays in the history."""
    reading = next(
        (reading for said, reading in act.collection.store.statements(statement.subject) if said.id == statement.id),
        None,
    )
    language = language_tag(statement.language)
    again = act.again(
        replace(statement, source=source, sitting=sitting or statement.sitting, language=language), statement.subject
    )
    if reading is not None:
        act.readings.append((again.id, reading))
    return again


def reassign(sitting: Sitting, statement: Statement, name: str, item: str) -> Source:
    """One statement was said by somebody else: a teller by name ('' for the keeper). Returns the new source."""
    act = sitting.collection.act(f"{statement.field}: said by {name or 'the keeper'}")
    source = sitting.teller.source(act, Source(Said.NARRATOR, name)) if name else KEEPER
    said_by(act, statement, source)
    sitting.finish(act, item)
    return source


def give_all(collection: Collection, name: str, since: str, progress: Progress = QUIET) -> int:
    """Every answer about items that stands under the keeper since a day (YYYY-MM-DD) is this teller's. Returns how
    many statements there were; one act, taken back as a whole.

    An answer is what tellers are asked for (ASKED, and the collection's own questions). What a keeper sees by looking,
    as the condition of a print or what it is made of, stays the keeper's.
    """
    fields = ASKED | {prompt.field for prompt in read_prompts(collection.folder)}
    collection.back_up_before("giving answers to a teller")
    act = collection.act(f"told by {name}")
    source = Teller(collection).source(act, Source(Said.NARRATOR, name))
    before = len(act.statements)
    progress.begin("Looking at every photograph", collection.store.count("item"))
    for material in collection.store.about_items():
        rows = [*material.statements, *(row for marker in material.markers for row in marker.statements)]
        for statement, _ in rows:
            if statement.source == KEEPER and statement.field in fields and statement.recorded_at[:10] >= since:
                said_by(act, statement, source)
        progress.step()
        if progress.stopped():
            return 0
    count = len(act.statements) - before
    if count:
        act.done()
    return count
