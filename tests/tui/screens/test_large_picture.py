"""The large picture: the cross, closer and back, markers in hand (our own contract)."""

import re
from collections.abc import Callable
from pathlib import Path

import pytest
from tests.tui.conftest import hands_on

from boxlore.core.statements import Kind, Subject
from boxlore.disk.outlines import Head
from boxlore.tasks.collection.opening import Collection, open_collection
from boxlore.tasks.collection.records_for_outputs import record_of
from boxlore.tui.screens.large_picture import LargeScreen
from boxlore.tui.widgets.picture import Picture

Run = Callable[..., None]


def areas(collection: Collection) -> list[tuple[str, tuple[float, ...]]]:
    record = record_of(collection, collection.store.item_by_number("TRA-0001") or "")
    return [(shown.name, tuple(round(edge, 3) for edge in shown.area)) for shown in record.shown()]


def test_the_cross_moves_by_steps_of_what_is_shown_and_stops_at_the_edges(run: Run, pictured: Path) -> None:
    """The first arrow puts the cross in the middle; each further one moves it by a fixed part of the window."""

    async def mark() -> None:
        with open_collection(pictured) as collection:
            async with hands_on(collection) as hands:
                await hands.press("f2", *["right"] * 60, *["down"] * 60, "enter", "«Jaan Tamm»", "enter")
                assert areas(collection) == [("Jaan Tamm", (1.0, 1.0))]
                await hands.press("f2", "up", "up", "left", "down")
                picture = hands.app.screen.query_one(Picture)
                drawn = [picture.render_line(y).text for y in range(picture.size.height)]
                picture.notify_style_update()  # forgets the lines that it keeps
                assert [picture.render_line(y).text for y in range(picture.size.height)] == drawn
                assert sum("╋" in line for line in drawn) == 1
                await hands.press("escape", "f2", "up", "+", "+", "up", "enter", "«Helmi Tamm»", "enter")
                (_, (x, y)) = areas(collection)[1]
                assert x == 0.5 and 0.45 < y < 0.5, "closer, a step is smaller"

    run(mark())


def test_a_marker_in_hand_is_let_go_and_a_wrong_digit_takes_none(run: Run, pictured: Path) -> None:
    async def look() -> None:
        with open_collection(pictured) as collection:
            async with hands_on(collection) as hands:
                await hands.press("f2", "left", "enter", "«Jaan Tamm»", "enter", "f2")
                assert "1 Jaan Tamm" in hands.text and "No markers" not in hands.text
                await hands.press("«7»")
                assert "Arrows and Enter set one" in hands.text
                await hands.press("«1»")
                assert "1 in hand: arrows and Enter move it, Del takes it away, 0 lets go." in hands.text
                await hands.press("«0»", "delete")
                assert "Take a marker in hand first: its digit." in hands.text
                await hands.press("-", "f2", "enter")
                assert "The cross is in the middle: arrows move it, Enter sets a marker there." in hands.text
                await hands.press("escape")
                assert "▸" in hands.text and "1 of 2" in hands.text

    run(look())


def test_the_large_picture_goes_on_to_the_next_and_stops_at_a_care_note(run: Run, pictured: Path) -> None:
    async def look() -> None:
        with open_collection(pictured) as collection:
            act = collection.act("a care note")
            act.state(
                Subject(Kind.ITEM, collection.store.item_by_number("TRA-0002") or ""),
                "care",
                "A funeral. Ask before showing it.",
            )
            async with hands_on(collection) as hands:
                await hands.press("«We left»", "f2", "left", "pagedown")
                assert "TRA-0002 · no scan" in hands.text and "F2 next side · Esc closes" in hands.text
                await hands.press("pagedown")
                assert "TRA-0002" in hands.text and "That was the last." in hands.text
                await hands.press("pageup")
                assert "TRA-0001 · front" in hands.text and "That was the last." not in hands.text
                await hands.press("pageup")
                assert "This is the first." in hands.text
                act.done()
                await hands.press("pagedown")
                assert "Who is in it?" in hands.text and "A funeral." in hands.text
                await hands.press("pageup")
                assert "We left" in hands.text

    run(look())


def test_without_a_scan_nothing_is_marked(run: Run, pictured: Path) -> None:
    async def look() -> None:
        with open_collection(pictured) as collection:
            async with hands_on(collection) as hands:
                await hands.press("pagedown", "f2")
                assert "TRA-0002 · no scan" in hands.text and "No markers on this picture." in hands.text
                await hands.press("f2", "enter", "left", "enter")
                assert "2 of 2" in hands.text

    run(look())


def test_a_sentence_stays_until_the_next_key(run: Run, pictured: Path) -> None:
    """Also where the picture comes after the key: it came a moment later than the words, and took them away."""

    async def look() -> None:
        with open_collection(pictured) as collection:
            async with hands_on(collection) as hands:
                await hands.press("f2", "delete")
                screen = hands.app.screen
                assert isinstance(screen, LargeScreen)
                screen._fetched(screen.scan)
                screen.on_painted_sharper()
                screen.on_resize()
                await hands.press()
                assert "Take a marker in hand first" in hands.text
                await hands.press("left")
                assert "Take a marker in hand first" not in hands.text

    run(look())


def test_read_only_a_marker_stays_where_it_is(run: Run, pictured: Path) -> None:
    async def look() -> None:
        with open_collection(pictured) as collection:
            async with hands_on(collection) as hands:
                await hands.press("f2", "left", "enter", "«Jaan Tamm»", "enter")
            before = areas(collection)
        with open_collection(pictured, write=False) as reading:
            async with hands_on(reading) as hands:
                for keys in (("«1»", "delete"), ("«1»", "right", "right", "enter")):
                    await hands.press("f2", *keys)
                    assert "Open for reading only; nothing can be changed." in hands.text
                    await hands.press("escape")
            assert areas(reading) == before

    run(look())


def test_a_picture_is_turned_and_noted_as_altered_by_keys(run: Run, pictured: Path) -> None:
    """A marker turns with it; each is one step that Ctrl+Z takes back."""

    async def look() -> None:
        with open_collection(pictured) as collection:

            def seen() -> tuple[int, str, tuple[float, ...]]:
                (scan,) = record_of(collection, collection.store.item_by_number("TRA-0001") or "").scans
                return scan.turn, scan.role, areas(collection)[0][1]

            async with hands_on(collection) as hands:
                await hands.press("f2", *["left"] * 4, "enter", "«Jaan Tamm»", "enter", "f2")
                upright = hands.app.screen.query_one(Picture)._pins[0]
                await hands.press("r")
                assert "Turned to the right, here and in all that is made of it" in hands.text
                turned = hands.app.screen.query_one(Picture)._pins[0]
                assert (turned.x, turned.y) == (1 - upright.y, upright.x) and seen() == (90, "as-scanned", (0.38, 0.5))
                await hands.press("a")
                assert "It counts as an altered version now." in hands.text and seen()[1] == "altered"
                await hands.press("a")
                assert "It counts as it was scanned now." in hands.text
                await hands.press("ctrl+z", "ctrl+z", "ctrl+z")
                assert seen()[:2] == (0, "as-scanned")
                await hands.press("pagedown", "f2", "r", "a")
                assert "TRA-0002 · no scan" in hands.text
                await hands.press("f1")
                assert re.search(r"Keys here\b.*\ba +Note that it was coloured or retouched", hands.text)

    run(look())


def test_heads_are_proposed_and_those_that_are_taken_are_asked_for(
    run: Run, pictured: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Our own contract. What finds them is tried in tests/disk/test_heads.py."""
    found = [Head(0.2, 0.5, 0.1, 0.1), Head(0.5, 0.5, 0.1, 0.1), Head(0.8, 0.5, 0.1, 0.1)]
    monkeypatch.setattr("boxlore.disk.seeing.heads_in", lambda *_, **__: found)

    async def look() -> None:
        with open_collection(pictured) as collection:
            async with hands_on(collection) as hands:
                await hands.press("f2", "h")
                await hands.until("3 heads without a marker.")
                assert "?2" in hands.text
                await hands.press("escape")
                assert "No marker was set." in hands.text and areas(collection) == []
                await hands.press("h")
                await hands.until("3 heads without a marker.")
                await hands.press("«2»", "enter")
                assert "2 markers set." in hands.text
                await hands.press("h")
                await hands.until("1 head without a marker.")
                await hands.press("escape", "escape")
                assert "Who is at 1?" in hands.text
                await hands.press("tab", "«Jaan Tamm»", "enter", "«Helmi Tamm»", "enter")
                assert areas(collection) == [("Jaan Tamm", (0.2, 0.5)), ("Helmi Tamm", (0.8, 0.5))]
                act = collection.act("a care note")
                item = collection.store.item_by_number("TRA-0001") or ""
                act.state(Subject(Kind.ITEM, item), "care", "Fragile: support with both hands.")
                act.done()
                await hands.press("pagedown", "pageup", "f2", "h")
                assert "A care note stands by this picture" in hands.text
                await hands.press("h")
                await hands.until("1 head without a marker.")

    run(look())
