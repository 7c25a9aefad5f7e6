"""A full disk: the screen says so, stays, and keeps the words in sight. SQLite itself refuses (SQLITE_FULL)."""

import asyncio
from pathlib import Path

from boxlore.tasks.collection.opening import Collection, open_collection
from boxlore.tui.app import Boxlore
from boxlore.tui.screens.item import ItemScreen


def fill_the_disk(collection: Collection, *, full: bool) -> None:
    """Let the database grow no further than it is (PRAGMA max_page_count), or again without bound."""

    def limit(db: object) -> None:
        db.execute("PRAGMA max_page_count = 1" if full else "PRAGMA max_page_count = 1000000")  # type: ignore[attr-defined]  # a connection

    collection.store.writer.do(limit, plain=True)


def test_nothing_is_called_saved_that_is_not(folder: Path) -> None:
    async def sit() -> None:
        with open_collection(folder) as collection:
            app = Boxlore(collection, narrator="Ellen Rourke")
            async with app.run_test(size=(100, 30)) as pilot:
                await pilot.press(*"ok")
                fill_the_disk(collection, full=True)
                screen = app.screen
                assert isinstance(screen, ItemScreen)
                screen.blocks[0].words.put(" and much more" * 3000)
                await pilot.pause()
                drawn = "\n".join(strip.text for strip in screen._compositor.render_strips())
                assert "NOT SAVED" in drawn
                assert any(words in drawn for words in ("The disk is full", "could not be written to"))
                await pilot.press("pagedown")
                assert screen.position == 0
                assert screen.blocks[0].text.startswith("ok and much more")
                await pilot.press("ctrl+q")
                assert app.return_value is None
                fill_the_disk(collection, full=False)
                await pilot.press("pagedown")
                assert screen.position == 1
                assert len(screen.sitting.record(screen.listing.id_at(0)).words("story")) > 40_000
                app.exit(0)

    asyncio.run(sit())
