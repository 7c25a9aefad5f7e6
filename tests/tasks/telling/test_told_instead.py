"""What was told wrong is told again in its place: a rule of our own; the history keeps both."""

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from tests.every_row import every_row

from boxlore.core.errors import WrongUse
from boxlore.core.statements import Said, Source, Sure
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import Collection, open_collection
from boxlore.tasks.collection.records_for_outputs import record_of
from boxlore.tasks.telling.statements import Teller, Telling
from boxlore.tasks.telling.told_instead import tell_instead, told_before

LEIDA, MART = (Telling(source=Source(Said.NARRATOR, name)) for name in ("Leida", "Mart"))


@pytest.fixture
def mine(bare: Callable[[int], Path]) -> Iterator[Collection]:
    with open_collection(bare(1)) as collection:
        yield collection


def said(collection: Collection, field: str) -> list[str]:
    return [view.words for view in record_of(collection, find_item(collection, "TRA-0001").id).all(field)]


def test_a_correction_takes_the_place_of_what_the_same_source_said(mine: Collection) -> None:
    item, teller = find_item(mine, "TRA-0001"), Teller(mine)
    for how, words in ((LEIDA, "14 June 1938"), (MART, "1939"), (LEIDA, "15 June 1938")):
        teller.tell(item, "date", words, how)
    assert [row.words for row in told_before(mine, item, "date", LEIDA)] == ["14 June 1938", "15 June 1938"]
    tell_instead(teller, item, "date", "16 June 1938", LEIDA)
    assert sorted(said(mine, "date")) == ["16 June 1938", "1939"]
    record = record_of(mine, item.id)
    assert not record.asked and record.not_known == frozenset()

    # what was said already stays, and the rest goes
    teller.tell(item, "date", "17 June 1938", LEIDA)
    kept = tell_instead(teller, item, "date", "16 June 1938", LEIDA)
    assert (kept.words, sorted(said(mine, "date"))) == ("16 June 1938", ["16 June 1938", "1939"])
    tell_instead(teller, item, "date", "16 June 1938", Telling(source=LEIDA.source, sure=Sure.GUESS))
    assert [view.sure for view in record_of(mine, item.id).all("date") if view.words != "1939"] == [Sure.GUESS]


def test_one_of_many_is_corrected_and_several_are_asked_about(mine: Collection) -> None:
    item, teller = find_item(mine, "TRA-0001"), Teller(mine)
    teller.tell(item, "story", "It reined.", LEIDA)
    tell_instead(teller, item, "story", "It rained.", LEIDA)
    assert said(mine, "story") == ["It rained."]
    teller.tell(item, "story", "And it blew.", LEIDA)
    with pytest.raises(WrongUse, match=r"several things in story: “It rained\.”; “And it blew\.”"):
        tell_instead(teller, item, "story", "It hailed.", LEIDA)


NOTHING = [("date", MART), ("story", LEIDA)]


@every_row(("field", "how"), NOTHING)
def test_where_that_source_told_nothing_it_is_said(field: str, how: Telling, bare: Callable[[int], Path]) -> None:
    with open_collection(bare(1)) as collection:
        item = find_item(collection, "TRA-0001")
        Teller(collection).tell(item, "date", "1938", LEIDA)
        with pytest.raises(WrongUse, match=f"Nothing is told in {field} by that source"):
            tell_instead(Teller(collection), item, field, "1939", how)
