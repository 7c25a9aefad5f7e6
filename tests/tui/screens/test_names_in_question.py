"""The places where somebody living is named are answered one by one from the menu (our own contract)."""

from collections.abc import Callable
from pathlib import Path

from tests.tui.conftest import hands_on, tell_births

from boxlore.tasks.archive.names_asked import look_for_names
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.telling.statements import Teller, Telling

Run = Callable[..., None]


def test_each_place_is_asked_about_once(run: Run, folder: Path) -> None:
    async def answer() -> None:
        with open_collection(folder) as collection:
            tell_births(collection, {"Mia Tamm": "1990"})
            for number in (1, 2, 3):
                item = find_item(collection, f"TRA-{number:04d}")
                Teller(collection).tell(item, "story", f"Mia Tamm on pier {number}.", Telling())
            async with hands_on(collection, (80, 24)) as hands:
                await hands.press("escape")
                await hands.choose("Hand on", "Names in question")
                await hands.until("1 of 3 mentions: Mia Tamm")
                assert (
                    "1 of 3 mentions: Mia Tamm" in hands.text and "TRA-0001, Story: [Mia Tamm] on pier 1." in hands.text
                )
                await hands.choose("Hide it", "May be named", "Skip")
                assert "2 answers are kept. Ctrl+Z takes back the last one." in hands.text
                await hands.press("ctrl+z")  # and nothing that was told before
                assert (
                    "which is on the screen again: whether 1 mention names somebody living." in hands.text
                    and "TRA-0002" in hands.text
                )
                await hands.press("escape")
                await hands.choose("Hand on", "Names in question")
                assert "1 of 2 mentions: Mia Tamm" in hands.text and "TRA-0002" in hands.text
                await hands.choose("Hide it wherever it stands")
                assert "1 answer is kept. Ctrl+Z takes back the last one." in hands.text
                await hands.press("ctrl+z", "escape")
                await hands.choose("Hand on", "Names in question")
                await hands.choose("Not that person", "Skip")
                await hands.press("escape")
                await hands.choose("Hand on", "Names in question")
                assert "1 of 1 mention: Mia Tamm" in hands.text and "TRA-0003" in hands.text
                await hands.choose("May be named")
                await hands.press("escape")
                await hands.choose("Hand on", "Names in question")
                assert "No name is in question." in hands.text
            asked = look_for_names(collection)
        places = {place.number: place.answer for naming in asked.namings for place in naming.places}
        assert places == {"TRA-0001": "hide"}  # the second names somebody else, the third may be named

    run(answer())
