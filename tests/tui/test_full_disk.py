"""A full disk: the screen says so, stays, and keeps the words in sight. SQLite itself refuses (SQLITE_FULL)."""

import tempfile
from collections.abc import Awaitable, Callable
from pathlib import Path

import pytest
from tests.tui.conftest import Hands, hands_on, run_to_its_end

from boxlore.tasks.collection.opening import Collection, open_collection
from boxlore.tui.app import Boxlore
from boxlore.tui.screens.sitting_keys import ItemScreen


def fill_the_disk(collection: Collection, *, full: bool) -> None:
    """Let the database grow no further than it is (PRAGMA max_page_count), or again without bound."""

    def limit(db: object) -> None:
        db.execute("PRAGMA max_page_count = 1" if full else "PRAGMA max_page_count = 1000000")  # type: ignore[attr-defined]  # a connection

    collection.store.writer.do(limit, plain=True)


def drawing(screen: ItemScreen) -> str:
    """What the screen shows."""
    return "\n".join(strip.text for strip in screen._compositor.render_strips())


Course = Callable[[Collection, Boxlore, ItemScreen, Hands], Awaitable[None]]


def in_a_sitting(folder: Path, course: Course) -> None:
    """Run what happens in a sitting on the first photograph, with its keys."""

    async def sit() -> None:
        with open_collection(folder) as collection:
            async with hands_on(collection, size=(100, 30), narrator="Ellen Rourke") as hands:
                assert isinstance(hands.app.screen, ItemScreen)
                await course(collection, hands.app, hands.app.screen, hands)

    run_to_its_end(sit())


def test_nothing_is_called_saved_that_is_not(folder: Path) -> None:
    async def course(collection: Collection, app: Boxlore, screen: ItemScreen, hands: Hands) -> None:
        await hands.press("«ok»")
        fill_the_disk(collection, full=True)
        screen.blocks[0].words.put(" and much more" * 3000)
        await hands.press()
        drawn = drawing(screen)
        assert "NOT SAVED" in drawn
        assert any(words in drawn for words in ("The disk is full", "could not be written to"))
        await hands.press("pagedown")
        assert "NOT SAVED" in drawing(screen) and "all saved" not in drawing(screen)
        assert screen.position == 0
        assert screen.blocks[0].text.startswith("ok and much more")
        await hands.press("ctrl+q")
        assert app.return_value is None
        fill_the_disk(collection, full=False)
        await hands.press("pagedown")
        assert screen.position == 1
        assert len(screen.sitting.record(screen.listing.id_at(0)).words("story")) > 40_000
        app.exit(0)

    in_a_sitting(folder, course)


KEYS = ("f9", "f6", "f7", "f8", "ctrl+z", "ctrl+y", "ctrl+s", "tab", "shift+tab", "up", "down", "enter")


def test_no_key_ends_the_program_on_a_full_disk(folder: Path) -> None:
    async def course(collection: Collection, app: Boxlore, screen: ItemScreen, hands: Hands) -> None:
        fill_the_disk(collection, full=True)
        for key in KEYS:
            await hands.press(key, "enter")
            for _ in range(5):  # cards lie at most so deep
                if app.screen is not screen:
                    await hands.press("escape")
            assert app.screen is screen, key
            assert app.return_value is None, key
        screen.blocks[0].words.put("much more " * 4000)
        await hands.press()
        for key in KEYS:
            await hands.press(key)
            assert "all saved" not in drawing(screen) or not screen.unsaved, key
        app.exit(0)

    in_a_sitting(folder, course)


def test_what_could_not_be_kept_is_kept_without_a_key(folder: Path) -> None:
    async def course(collection: Collection, app: Boxlore, screen: ItemScreen, hands: Hands) -> None:
        fill_the_disk(collection, full=True)
        screen.blocks[0].words.put("and much more " * 3000)
        await hands.press()
        assert "NOT SAVED" in drawing(screen)
        fill_the_disk(collection, full=False)
        await hands.until("kept now")
        assert "NOT SAVED" not in drawing(screen)
        assert [len(draft.words) > 40_000 for draft in collection.store.drafts()] == [True]
        app.exit(0)

    in_a_sitting(folder, course)


def test_a_folder_that_vanishes_is_said_and_what_is_typed_stays(folder: Path) -> None:
    """The system lets a program write on into a file that was moved or deleted (POSIX unlink); that is not saving."""

    async def course(collection: Collection, app: Boxlore, screen: ItemScreen, hands: Hands) -> None:
        folder.rename(folder.with_name("pulled"))
        await hands.press("«ok»")
        assert "NOT SAVED" in drawing(screen) and "is not where it was" in drawing(screen)
        await hands.press("pagedown", "f9", "f3", "escape", "f4", "escape", "ctrl+q")
        assert app.return_value is None and "NOT SAVED" in drawing(screen)
        folder.with_name("pulled").rename(folder)
        await hands.press("pagedown")
        assert screen.position == 1 and "NOT SAVED" not in drawing(screen)
        assert screen.sitting.record(screen.listing.id_at(0)).words("story") == "ok"
        folder.rename(folder.with_name("pulled"))
        await hands.press("«lost»", "ctrl+q", "ctrl+q")
        assert app.lost == ["lost"]
        folder.with_name("pulled").rename(folder)

    in_a_sitting(folder, course)


def test_without_a_place_for_the_index_a_place_is_kept_as_told(folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    (folder / "file").write_text("")
    monkeypatch.setenv("BOXLORE_CACHE", str(folder / "file" / "cache"))
    monkeypatch.setattr(tempfile, "tempdir", str(folder / "file" / "tmp"))

    async def course(collection: Collection, app: Boxlore, screen: ItemScreen, hands: Hands) -> None:
        block = next(each for each in screen.blocks if each.prompt.field == "place")
        screen.set_focus(block.words)
        await hands.press("«Reval»", "pagedown")
        assert screen.position == 1
        assert screen.sitting.record(screen.listing.id_at(0)).words("place") == "Reval"
        assert any("places are kept as they are told" in words for words in collection.unsaid)
        app.exit(0)

    in_a_sitting(folder, course)
