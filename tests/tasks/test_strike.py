"""What may be struck. Rules of our own, no outside source; that no byte stays is tested with the store."""

from collections.abc import Callable
from pathlib import Path

import pytest

from boxlore.core.errors import WrongUse
from boxlore.tasks.collection.marks import find_item
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.strike import meant, strike_out, targets
from boxlore.tasks.telling.statements import Teller, Telling


def test_an_answer_to_a_question_of_ones_own_can_be_struck(bare: Callable[[int], Path]) -> None:
    with open_collection(bare(1)) as collection:
        item = find_item(collection, "TRA-0001")
        prompts = "[[prompt]]\nfield = 'own-clothes'\nquestion = 'What did she wear?'\n"
        (collection.folder / "prompts.toml").write_text(prompts, "utf-8")
        Teller(collection).tell(item, "own-clothes", "Her mother's brooch.", Telling())
        subjects = meant(collection, "TRA-0001", "own-clothes")
        found = targets(collection, subjects, "own-clothes")
        report = strike_out(collection, [target.statement for target in found])
        assert (report.struck, report.finished, report.left_in) == (1, True, ())
        assert [row.field for row, _ in collection.store.statements(item)] == ["number"]


def test_a_field_that_there_is_none_of_cannot_be_struck(bare: Callable[[int], Path]) -> None:
    with open_collection(bare(1)) as collection, pytest.raises(WrongUse, match="There is no field “storey”"):
        meant(collection, "TRA-0001", "storey")
