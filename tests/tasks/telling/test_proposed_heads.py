"""Heads proposed: in the order in which a row is told, none twice, none under a care note (our own contract)."""

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from boxlore.core.errors import WrongUse
from boxlore.core.statements import Kind, Subject
from boxlore.disk.outlines import Head
from boxlore.tasks.collection.opening import Collection, open_collection
from boxlore.tasks.collection.records_for_outputs import record_of
from boxlore.tasks.scans.intake import IntakeOptions, take_in
from boxlore.tasks.scans.pairing import by_suffix
from boxlore.tasks.sitting.session import Sitting
from boxlore.tasks.telling.markers import set_markers
from boxlore.tasks.telling.proposed_heads import propose_heads

DECK = Path(__file__).parents[3] / "demo_family" / "scans" / "on_deck_1949.png"


@pytest.fixture
def collection(bare: Callable[[int], Path]) -> Iterator[Collection]:
    with open_collection(bare(0)) as collection:
        take_in(collection, by_suffix([DECK]), IntakeOptions(copy=True))
        yield collection


def heads(*places: tuple[float, float]) -> Callable[..., list[Head]]:
    return lambda *_, **__: [Head(x, y, 0.1, 0.1) for x, y in sorted(places)]


def test_rows_are_numbered_from_the_back_and_from_the_left_and_a_marked_head_is_none(
    collection: Collection, monkeypatch: pytest.MonkeyPatch
) -> None:
    back, front = [(0.7, 0.2), (0.3, 0.24)], [(0.5, 0.4), (0.1, 0.42)]
    monkeypatch.setattr("boxlore.disk.seeing.heads_in", heads(*back, *front))
    sitting = Sitting(collection, narrator="Leida")
    item = collection.store.item_by_number("TRA-0001") or ""
    record = sitting.record(item)
    (scan,) = record.scans
    places = propose_heads(collection, sitting.markers, record, scan)
    assert places == [(0.3, 0.24), (0.7, 0.2), (0.1, 0.42), (0.5, 0.4)]
    set_markers(sitting, record, scan, places[1:3])
    again = sitting.record(item)
    assert [(mark.x, mark.y) for mark in sitting.markers.of(again)] == places[1:3] and len(sitting.to_name) == 2
    assert propose_heads(collection, sitting.markers, again, scan) == [places[0], places[3]]
    areas = [
        statement.words
        for mark in sitting.markers.of(again)
        for statement, _ in collection.store.statements(Subject(Kind.MARKER, mark.id))
        if statement.field == "area"
    ]
    assert [len(words.split()) for words in areas] == [2, 2], "a point is kept, and nothing of the face"
    sitting.undo()
    assert sitting.markers.of(sitting.record(item)) == (), "one step"


def test_where_a_care_note_stands_nobody_looks_unless_it_is_said(
    collection: Collection, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("boxlore.disk.seeing.heads_in", heads((0.5, 0.5)))
    sitting = Sitting(collection, narrator="Leida")
    item = collection.store.item_by_number("TRA-0001") or ""
    act = collection.act("care")
    act.state(Subject(Kind.ITEM, item), "care", "The two behind died that winter; ask first.")
    act.done()
    record = record_of(collection, item)
    with pytest.raises(WrongUse, match="TRA-0001 has a care note"):
        propose_heads(collection, sitting.markers, record, record.scans[0])
    assert propose_heads(collection, sitting.markers, record, record.scans[0], despite_care=True) == [(0.5, 0.5)]
