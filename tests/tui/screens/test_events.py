"""The family's time line in the terminal (our own contract)."""

from collections.abc import Callable
from pathlib import Path

from tests.tui.conftest import hands_on, tell_births

from boxlore.core.statements import Kind, Subject
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.telling.statements import Teller, Telling

Run = Callable[..., None]


def test_an_event_is_told_dated_renamed_and_taken_off(run: Run, folder: Path) -> None:
    async def happened() -> None:
        with open_collection(folder) as collection:
            item = Subject(Kind.ITEM, collection.store.item_by_number("TRA-0001") or "")
            Teller(collection).tell(item, "date", "the summer after the christening", Telling())
            async with hands_on(collection) as hands:
                await hands.press("escape")
                await hands.choose("Put right", "What happened when")
                assert "0 told, 1 asked" in hands.text and "a picture waits for it" in hands.text
                await hands.press("down", "enter")
                assert "Show TRA-0001" in hands.text
                await hands.choose("Say when it was")
                await hands.fill("December 1931", "the christening")
                assert "Noted: the christening. 1 date read again. Ctrl+Z takes it back." in hands.text
                await hands.press("ctrl+z")
                assert "Taken back: event: the christening." in hands.text and "1 asked" in hands.text
                await hands.press("up", "enter")
                await hands.fill("when we sailed", "")
                assert "no date yet" in hands.text
                await hands.press("down", "down", "enter")
                await hands.choose("Say when it was")
                await hands.fill("November 1947")
                await hands.press("enter")
                await hands.choose("Call it something else")
                await hands.fill("?")
                assert "An event needs a name." in hands.text
                await hands.fill("when we left Reval")
                assert "November 1947" in hands.text and "when we left Reval" in hands.text
                await hands.press("enter")
                await hands.choose("Take it off")
                assert "0 told, 1 asked" in hands.text
                await hands.press("up", "up", "down", "enter")
                await hands.choose("Show TRA-0001")
                assert "the summer after the christening" in hands.text

    run(happened())


def test_what_follows_from_a_life_is_shown_and_put_right_elsewhere(run: Run, folder: Path) -> None:
    async def shown() -> None:
        with open_collection(folder) as collection:
            tell_births(collection, {"Anna Tamm": "1928"})
            async with hands_on(collection) as hands:
                await hands.press("escape")
                await hands.choose("Put right", "What happened when")
                assert "the birth of Anna Tamm" in hands.text and "the keeper" in hands.text
                await hands.press("down", "enter")
                assert "That follows from what is told of a person." in hands.text

    run(shown())
