"""The list of items: moved through, filtered, searched by number, mark and words, picked from (our own contract)."""

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from tests.drawn import some
from tests.tui.conftest import hands_on

from boxlore.core.statements import Kind
from boxlore.tasks.collection.opening import Collection, open_collection
from boxlore.tasks.collection.records_for_outputs import record_of

Run = Callable[..., None]


@pytest.fixture
def collection(folder: Path) -> Iterator[Collection]:
    with open_collection(folder) as opened:
        yield opened


def test_moving_through_the_list_opens_the_row_at_the_cursor(run: Run, collection: Collection) -> None:
    async def look() -> None:
        async with hands_on(collection) as hands:
            for keys, opened in (
                (("down", "down", "up"), 2),
                (("ctrl+end",), 8),
                (("ctrl+home",), 1),
                (("pagedown",), 8),
                (("pageup",), 1),
            ):
                await hands.press("f3", *keys, "enter")
                assert f"TRA-{opened:04d} · " in hands.text and f"{opened} of 8" in hands.text

    run(look())


SEARCHES = [
    ("7", "1 found", 7),
    ("TRA-0003", "1 found", 3),
    ("regatta", "1 found", 1),
    ("zeppelin", "0 found", 0),
    ("regata", "Did you mean regatta?", 0),
]


@pytest.mark.parametrize(("words", "counted", "opened"), some(SEARCHES))
def test_a_number_its_digits_and_words_are_found(
    run: Run, collection: Collection, words: str, counted: str, opened: int
) -> None:
    async def look() -> None:
        async with hands_on(collection) as hands:
            await hands.press("«The regatta.»", "f3", f"«{words}»")
            await hands.until(counted)
            await hands.press("enter")
            shown = f"{opened} of 8" if opened else counted
            assert shown in hands.text
            await hands.press("f3" if opened else "escape")

    run(look())


def test_filters_go_round_and_a_search_that_is_emptied_shows_all(run: Run, collection: Collection) -> None:
    async def look() -> None:
        async with hands_on(collection) as hands:
            await hands.press("«The regatta.»", "f9", "enter", "f3")
            assert "All photographs 8 photographs" in hands.text
            for shown in (
                "7 photographs bare",
                "1 photograph begun",
                "0 photographs told",
                "1 photograph to ask",
                "8 photographs",
            ):
                await hands.press("tab")
                await hands.until(shown)
            await hands.press("«xyz»")
            await hands.until("0 found")
            await hands.press("backspace", "backspace", "backspace")
            await hands.until("8 photographs")

    run(look())


def people(collection: Collection, count: int) -> list[str]:
    record = record_of(collection, collection.store.item_by_number(f"TRA-{count:04d}") or "")
    return [shown.name for shown in record.shown()]


def test_what_is_taken_back_is_found_and_listed_no_more(run: Run, collection: Collection) -> None:
    async def sit() -> None:
        async with hands_on(collection) as hands:
            await hands.press("«The regatta»", "pagedown", "«We left»", "f3", "«left»")
            await hands.until("1 found")
            await hands.press("ctrl+z")
            assert "0 found" in hands.text and "Taken back: Story: We left." in hands.text
            await hands.press("ctrl+u", "tab", "tab")
            await hands.until("1 photograph begun")
            assert "Taken back" not in hands.text
            await hands.press("ctrl+z")
            await hands.until("0 photographs begun")
            assert "Taken back: Story: The regatta." in hands.text

    run(sit())


def test_a_range_is_picked_and_told_one_thing(run: Run, collection: Collection) -> None:
    act = collection.act("a box")
    box = act.new(Kind.CONTAINER)
    act.state(box, "kind", "box")
    act.state(box, "label", "7")
    act.done()

    async def pick() -> None:
        async with hands_on(collection) as hands:
            await hands.press("f3", "insert", "down", "down", "ctrl+r")
            assert "4 picked; F8 says one thing of them all." in hands.text
            await hands.press("f8")
            await hands.choose("Occasion")
            await hands.fill("")
            assert "There is nothing to keep yet. Write what is so of all of them." in hands.text
            await hands.fill("the regatta")
            assert "Occasion: “the regatta”, told of 4. Ctrl+Z takes it back." in hands.text
            await hands.press("ctrl+z")
            assert "Taken back: Occasion: the regatta, of 4. TRA-0001 + - bare" in hands.text
            await hands.press("f8", "d", "«a fine day»", "enter")  # what is picked stays so
            assert "told of 4. It is kept as told, and not read as a date. Ctrl+Z takes it back." in hands.text
            await hands.press("ctrl+z", "enter", "f3", "f8", "o")
            await hands.fill("the regatta")
            await hands.press("f8")
            await hands.choose("Occasion")
            await hands.fill("The regatta")
            assert "All of them say that already." in hands.text
            await hands.press("escape", "escape", "f8")
            await hands.choose("Who may see them")
            await hands.press("right", "ctrl+s")
            assert "4 are for the keeper only now." in hands.text
            await hands.press("f8", "0", "f8")
            assert "Space picks rows out" in hands.text
            await hands.press("up", "up", "up", "up", "insert", "f8")
            await hands.choose("Another box or folder")
            await hands.fill("9")
            assert "9" in hands.text
            await hands.fill("7")
            await hands.press("escape", "ctrl+z")
            assert "Taken back" in hands.text
            await hands.press("ctrl+z", "ctrl+z", "f3")
            assert "the regatta" not in hands.text

    run(pick())


def test_a_name_that_was_put_right_finds_its_pictures_and_stands_in_the_list(run: Run, collection: Collection) -> None:
    async def look() -> None:
        async with hands_on(collection) as hands:
            await hands.press("tab", "«Jaan Tamm»", "enter", "tab", "«about June 1951»", "enter", "f3")
            assert "Jaan Tamm · about June 1951" in hands.text  # dated as the sitting dates it
            await hands.press("f1")
            assert "You cannot break anything." in hands.text
            await hands.press("escape", "escape", "escape")
            await hands.choose("Put right", "People")
            await hands.press("«jaan»", "enter")
            assert "Jaan Tamm · one picture" in hands.text
            await hands.press("a")
            await hands.choose("Correct the name")
            await hands.fill("Jorey Tamm")
            await hands.press("escape", "escape", "f3")
            assert "Jorey Tamm · about June 1951" in hands.text
            for words in ("jorey", "jaan"):
                await hands.press(f"«{words}»")
                assert "1 found" in hands.text and "TRA-0001" in hands.text, words
                await hands.press(*["backspace"] * len(words))
            await hands.press("tab")
            assert "Photographs bare: nothing is told yet" in hands.text

    run(look())


def test_items_are_picked_put_back_and_told_the_same(run: Run, collection: Collection) -> None:
    async def pick() -> None:
        async with hands_on(collection) as hands:
            await hands.press("tab", "«Jaan Tamm»", "enter", "f3", "f8")
            assert "Space picks rows out; then F8 says the same people, day or place of them." in hands.text
            await hands.press("down", "insert", "insert", "up", "insert")
            assert "1 picked; F8 says one thing of them all." in hands.text
            await hands.press("f8")
            assert "1 Same people Jaan Tamm" in hands.text and "Same day" not in hands.text  # of which nothing is told
            await hands.choose("Same people")
            assert "1 taken over from TRA-0001. Ctrl+Z takes it back." in hands.text
            await hands.press("f8", "1")
            assert "TRA-0001 has no people that TRA-0002 has not." in hands.text
        assert [people(collection, count) for count in (1, 2, 3)] == [["Jaan Tamm"], ["Jaan Tamm"], []]

    run(pick())


def test_space_picks_rows_and_is_a_space_among_words(run: Run, collection: Collection) -> None:
    async def pick() -> None:
        async with hands_on(collection) as hands:
            await hands.press("«The big regatta.»", "f3", "space", "space")
            assert "2 picked; F8 says one thing of them all." in hands.text
            await hands.press("up", "space")
            assert "1 picked; F8" in hands.text
            await hands.press("shift+down", "shift+down")
            assert "4 picked; F8" in hands.text
            await hands.press("shift+up")
            assert "4 picked; F8" in hands.text
            await hands.press("«big»", "space", "«regatta»")
            await hands.until("1 found")
            assert "big regatta" in hands.text and "4 picked" in hands.text
            await hands.press("down", "space")
            assert "3 picked; F8" in hands.text
            await hands.press("«x»")
            await hands.until("0 found")
            await hands.press("shift+down", "insert", *["backspace"] * len("big regattax"))
            await hands.until("3 picked; F8")  # nothing was picked where nothing is found

    run(pick())
