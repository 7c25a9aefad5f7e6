"""What is worked out, on the screens that show it (our own contract)."""

import subprocess
import sys
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from tests.tui.conftest import hands_on, tell_births

from boxlore.core.statements import Kind, Subject
from boxlore.tasks.collection.opening import Collection, open_collection
from boxlore.tasks.telling.statements import Teller, Telling

Run = Callable[..., None]


@pytest.fixture
def collection(folder: Path) -> Iterator[Collection]:
    with open_collection(folder) as opened:
        yield opened


def test_what_only_she_can_tell_is_found_beside_what_was_noted(run: Run, collection: Collection) -> None:
    tell_births(collection, {"Leida Rourke": "1941", "Mari Tamm": "1872"})
    teller = Teller(collection)
    item = Subject(Kind.ITEM, collection.store.item_by_number("TRA-0003") or "")
    teller.tell(item, "person", "Leida Rourke", Telling())
    parted = Subject(Kind.ITEM, collection.store.item_by_number("TRA-0005") or "")
    for words in ("1912", "1931"):
        teller.tell(parted, "date", words, Telling())

    async def ask() -> None:
        async with hands_on(collection, narrator="Leida Rourke", size=(120, 38)) as hands:
            await hands.press("escape")
            await hands.choose("Sit", "What to ask")
            await hands.until("How old do you look here, about?")
            await hands.until("By what is told so far, an answer settles about")
            for _ in range(8):
                if "▸ TRA-0003" in hands.text:
                    break
                await hands.press("down")
            await hands.press("enter")
            assert "3 of 8" in hands.text and "▸ Tell me about this photograph." in hands.text
            assert "To ask: How old do you look here, about? Tell it in the story, with the name:" in hands.text
            await hands.press("escape")
            await hands.choose("Put right", "What can be worked out")
            await hands.until("▸ TRA-0005")
            assert "TRA-0005: which of these is not so?" in hands.text and "these cannot all be so" in hands.text
            await hands.press("down")
            assert (
                "no date told not earlier than 1941" in hands.text
                and "TRA-0003: not earlier than 1941, because · Leida" in hands.text
            )
            await hands.press("enter")
            assert "3 of 8" in hands.text and "▸ When was it?" in hands.text

    run(ask())


def test_what_follows_is_asked_at_its_photograph_once_that_is_drawn(run: Run, collection: Collection) -> None:
    tell_births(collection, {"Leida Rourke": "1941"})
    shown = Subject(Kind.ITEM, collection.store.item_by_number("TRA-0001") or "")
    Teller(collection).tell(shown, "person", "Leida Rourke", Telling())

    async def ask() -> None:
        async with hands_on(collection, narrator="Leida Rourke", size=(120, 38)) as hands:
            await hands.until("? How old do you look here, about?")
            await hands.press("pagedown")
            assert "2 of 8" in hands.text and "How old do you look here" not in hands.text
            await hands.press("pageup")
            await hands.until("? How old do you look here, about?")
            assert hands.text.count("? How old do you look here, about?") == 1

    run(ask())
    code = "import boxlore.tui.app, sys; print('boxlore.core.evidence.asking' in sys.modules)"
    loaded = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert loaded.stdout == "False\n", "what is worked out is loaded before the first question is drawn"


def test_where_nothing_follows_it_is_said(run: Run, collection: Collection) -> None:
    async def look() -> None:
        async with hands_on(collection) as hands:
            await hands.press("escape")
            await hands.choose("Put right", "What can be worked out")
            await hands.until("Nothing more follows from what is told so far.")
            await hands.press("enter", "escape")

    run(look())
