"""Rows that no Boxlore wrote: a damaged or foreign database is said to be one. Rules of our own, no outside source."""

import sqlite3
from collections.abc import Callable
from pathlib import Path

import pytest

from boxlore.core.errors import BoxloreError, CouldNot
from boxlore.core.statements import Kind, Subject
from boxlore.store.values import Draft
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import DATABASE, open_collection
from boxlore.tasks.collection.records_for_outputs import record_of

Bare = Callable[[int], Path]


def damage(folder: Path, query: str) -> None:
    db = sqlite3.connect(folder / DATABASE)
    with db:
        db.execute(query)
    db.close()


@pytest.mark.parametrize(("column", "word"), [("sure", "quite"), ("said", "gossip"), ("subject_kind", "house")])
def test_a_word_that_means_nothing_in_its_column(bare: Bare, column: str, word: str) -> None:
    folder = bare(1)
    damage(folder, f"UPDATE statement SET {column} = '{word}' WHERE field = 'number'")
    with open_collection(folder) as collection:
        item = collection.store.item_by_number("TRA-0001")
        assert item
        with pytest.raises(CouldNot, match=f"the statement [0-9a-f-]{{36}} holds “{word}”") as fault:
            record_of(collection, item)
    assert "Go back to a backup" in str(fault.value)


def test_a_field_that_there_is_none_of(bare: Bare) -> None:
    """A row of a newer version, or of before the guard."""
    folder = bare(1)
    with open_collection(folder) as collection:
        act = collection.act("telling")
        act.state(find_item(collection, "TRA-0001"), "story", "One.")
        act.done()
    damage(folder, "UPDATE statement SET field = 'storey' WHERE field = 'story'")
    with open_collection(folder) as collection:
        item = find_item(collection, "TRA-0001")
        with pytest.raises(BoxloreError, match="a field “storey” that this Boxlore does not know"):
            record_of(collection, item.id)


def test_a_draft_of_a_damaged_database(bare: Bare) -> None:
    folder = bare(1)
    with open_collection(folder) as collection:
        draft = Draft(subject=Subject(Kind.ITEM, "i"), field="story", words="On", updated_at="2026")
        collection.store.save_draft(draft)
        assert collection.store.drafts() == [draft]
    damage(folder, "UPDATE draft SET sure = 'quite'")
    with open_collection(folder) as collection, pytest.raises(CouldNot, match="the draft of story holds “quite”"):
        collection.store.drafts()
