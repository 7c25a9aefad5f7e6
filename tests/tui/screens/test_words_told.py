"""Places as they were told, on their screen: where each is, and put right for all pictures (our own contract).

Where the places lie is GeoNames' (CC BY 4.0, `src/boxlore/gazetteer/data/NOTICE.txt`).
"""

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from tests.tui.conftest import hands_on

from boxlore.core.places.reading import full_name
from boxlore.core.records.item_record import Record
from boxlore.core.statements import Kind, Subject
from boxlore.tasks.collection.opening import Collection, open_collection
from boxlore.tasks.collection.records_for_outputs import record_of
from boxlore.tasks.telling.statements import Teller, Telling

Run = Callable[..., None]


@pytest.fixture
def collection(folder: Path) -> Iterator[Collection]:
    with open_collection(folder) as opened:
        yield opened


def record(collection: Collection, number: int) -> Record:
    return record_of(collection, collection.store.item_by_number(f"TRA-{number:04d}") or "")


def place(collection: Collection, number: int) -> str:
    reading = record(collection, number).first("place").place
    return full_name(reading.best) if reading and reading.best else ""


def test_a_place_is_put_right_for_all_its_pictures(run: Run, collection: Collection) -> None:
    teller = Teller(collection)
    for number, words in ((1, "Milton"), (2, "Milton"), (3, "Port Chalmers"), (4, "our bay")):
        item = Subject(Kind.ITEM, collection.store.item_by_number(f"TRA-{number:04d}") or "")
        teller.tell(item, "place", words, Telling())

    async def put_right() -> None:
        async with hands_on(collection, size=(120, 38)) as hands:
            await hands.press("escape")
            await hands.choose("Put right", "Places")
            assert "Port Chalmers = Port Chalmers, Otago, New Zealand one picture" in hands.text
            assert "our bay no place on a map one picture" in hands.text and "Milton ? " in hands.text
            await hands.press("«milton»", "enter", "2")
            assert "“Milton”: which place is it?" in hands.text
            await hands.press("1")
            chosen = place(collection, 1)
            assert chosen and place(collection, 2) == chosen and f"Milton = {chosen} 2 pictures" in hands.text
            assert f"Noted: {chosen}, 2×. Ctrl+Z takes it back." in hands.text
            await hands.press("enter", "2", "0")
            assert "Milton no place on a map 2 pictures" in hands.text
            await hands.press("ctrl+z", "ctrl+z")
            assert ("Milton ? " in hands.text and place(collection, 1) != chosen) or not place(collection, 1)
            await hands.press("enter", "2", "o")
            await hands.fill("nowhere that is anywhere")
            assert "“nowhere that is anywhere” is not in the list of places." in hands.text
            await hands.refill("Milton")
            assert "Which Milton?" in hands.text
            await hands.press("2")
            assert "Noted: " in hands.text and "Milton" in place(collection, 2)
            await hands.press("enter", "2", "o")
            await hands.fill("Dunedin, New Zealand")
            assert place(collection, 1) == "Dunedin, Otago, New Zealand"
            assert record(collection, 1).first("place").words == "Milton"  # as it was told

    run(put_right())
