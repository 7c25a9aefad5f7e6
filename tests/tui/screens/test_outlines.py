"""Outlines of prints in the terminal: by keys, by the mouse, on the teller's page, and taken in (our own contract)."""

from collections.abc import Callable
from pathlib import Path

import pytest
from PIL import Image
from tests.tui.conftest import Hands, Opens, hands_on
from textual import events

from boxlore.tasks.collection.opening import Collection, open_collection
from boxlore.tasks.collection.records_for_outputs import EVERYTHING, records
from boxlore.tasks.scans.find_prints import parts_of
from boxlore.tasks.scans.intake import IntakeOptions, take_in
from boxlore.tasks.scans.outlines_by_hand import OutlinesByHand
from boxlore.tasks.scans.pairing import by_suffix
from boxlore.tasks.sitting.tellers_page import OutlineTouch, Showing
from boxlore.tui.screens.outlines import OutlineScreen
from boxlore.tui.screens.prints_on_a_sheet import ByHand
from boxlore.tui.widgets.outline_picture import OutlinePicture

Run = Callable[..., None]


@pytest.fixture
def sheet(tmp_path: Path) -> Path:
    """Two dark prints on a light bed."""
    bed = Image.new("RGB", (700, 500), (225, 225, 222))
    dark = Image.radial_gradient("L").point(lambda shade: 20 + shade // 2)
    bed.paste(dark.resize((210, 300)), (70, 50))
    bed.paste(dark.resize((280, 200)), (350, 200))
    bed.save(tmp_path / "sheet.png")
    return tmp_path / "sheet.png"


def areas(collection: Collection) -> list[tuple[float, ...]]:
    return [scan.area for record in records(collection, EVERYTHING) for scan in record.scans]


def drawing(hands: Hands) -> OutlinesByHand:
    screen = hands.app.screen
    assert isinstance(screen, OutlineScreen)
    return screen.hand


async def mouse(hands: Hands, *places: tuple[float, float]) -> None:
    """Press at the first place (0..1 of the picture), drag over the others, let go at the last."""
    picture = hands.app.screen.query_one(OutlinePicture)
    origin, cell = picture.place(0, 0), picture.place(1, 1)
    assert origin and cell
    kinds = [events.MouseDown, *[events.MouseMove] * (len(places) - 1), events.MouseUp]
    for kind, (x, y) in zip(kinds, [*places, places[-1]], strict=True):
        column = round((x - origin[0]) / (cell[0] - origin[0]))
        row = round((y - origin[1]) / (cell[1] - origin[1]))
        picture.post_message(kind(picture, column, row, 0, 0, 1, False, False, False, column, row))
        await hands.press()


def test_outlines_are_put_right_and_taken_in_as_one_step(run: Run, pictured: Path, sheet: Path) -> None:
    async def draw() -> None:
        with open_collection(pictured) as collection:
            before = areas(collection)
            async with hands_on(collection) as hands:
                await hands.press("escape")
                await hands.choose("Take in", "Prints on a sheet")
                await hands.fill(str(sheet), "3", "", "", "")
                await hands.until("2 outlines proposed.")
                hand = drawing(hands)
                picture = hands.app.screen.query_one(OutlinePicture)
                assert any(" 1 " in picture.render_line(y).text for y in range(picture.size.height))
                await hands.press("tab", "left", "shift+up")
                assert "1: its upper left corner in hand." in hands.text
                assert hand.now.outlines[0][0] == pytest.approx((0.08, 0.098), abs=0.012)
                await hands.press("+", "+", "right", "0", "«2»", "delete", "«a»", "ctrl+z", "ctrl+z", "«9»")
                assert "There is no outline 9." in hands.text and len(hand.now.outlines) == 2
                corner = hand.now.outlines[1][2]
                await mouse(hands, corner, (corner[0], 0.9), (0.95, 0.9))
                assert hand.now.outlines[1][2] == pytest.approx((0.95, 0.9), abs=0.02)
                assert hand.now.outlines[1][0] == pytest.approx((0.5, 0.4), abs=0.012)
                await hands.press("enter")
                await hands.until("2 photographs taken in")
                await hands.press("escape")
                assert len(areas(collection)) == 3
                assert areas(collection)[2] == pytest.approx((0.5, 0.4, 0.45, 0.5), abs=0.02)
                await hands.press("ctrl+z")
                assert areas(collection) == before

    run(draw())


def test_without_what_looks_at_pictures_they_are_drawn_by_hand(
    run: Run, pictured: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """An item that is here is cut too; what was drawn is not left by one key; the page may draw as well."""
    monkeypatch.setitem(__import__("sys").modules, "cv2", None)

    async def draw() -> None:
        with open_collection(pictured) as collection:
            async with hands_on(collection) as hands:
                await hands.press("escape")
                await hands.choose("Take in", "Prints on a sheet")
                await hands.fill("TRA-0001", "", "", "", "")
                await hands.until("is not installed (`pip install boxlore[see]`): a adds one.")
                hand = drawing(hands)
                await hands.press("left", "delete")
                assert "Nothing is in hand" in hands.text
                hands.app.showing.outlined(OutlineTouch("add"))
                hands.app.showing.outlined(OutlineTouch("put", 0, 2, (0.1, 0.1, 0.5, 0.1, 0.5, 0.6, 0.1, 0.6)))
                await hands.press()
                assert "1: its lower right corner in hand." in hands.text
                hands.app.showing.outlined(OutlineTouch("remove"))
                await hands.press()
                assert "Nothing is in hand" in hands.text and len(hand.now.outlines) == 1, "nothing is, on the page"
                await hands.press("pagedown", "escape")
                assert "Esc once more leaves it." in hands.text and hand.is_changed
                hands.app.showing.outlined(OutlineTouch("take"))
                await hands.until("1 photograph taken in")
                assert areas(collection)[1:] == [pytest.approx((0.1, 0.1, 0.4, 0.5))]
                await hands.press("escape", "escape")
                await hands.choose("Take in", "Prints on a sheet")
                await hands.fill("TRA-0002", "", "", "", "")
                assert "no scan of its front" in hands.text

    run(draw())


@pytest.mark.parametrize(("keys", "prints"), [(["enter"], 2), (["a", "escape", "escape"], None), (["ctrl+q"], None)])
def test_at_the_shell_only_the_outlines_are_shown(
    run: Run, pictured: Path, sheet: Path, keys: list[str], prints: int | None
) -> None:
    async def draw() -> None:
        with open_collection(pictured) as collection:
            hand = OutlinesByHand(collection, by_suffix([sheet]))
            app = ByHand(hand, Showing())
            async with app.run_test() as pilot:
                while not hand.looked:
                    await pilot.pause(0.02)
                await pilot.press(*keys)
            assert app.return_value == 0 and (app.planned and len(app.planned)) == prints

    run(draw())


def test_the_shell_says_which_outlines_of_items_that_are_here_were_put_right(
    terminal: Opens, pictured: Path, sheet: Path
) -> None:
    with open_collection(pictured) as collection:
        (item,) = by_suffix([sheet])
        parts = parts_of(item, [(0.1, 0.1, 0.3, 0.6), (0.5, 0.4, 0.4, 0.4)])
        first, _ = [result.number for result in take_in(collection, parts, IntakeOptions(copy=True))]
    window = terminal("-c", pictured, "intake", sheet, "--find-prints", "hand", "--yes", columns=100, rows=30)
    window.wait_for("2 prints are here already.")
    window.send("⟨Tab⟩⟨Left⟩")
    window.wait_for("1: its upper left corner in hand.")
    window.send("⟨Enter⟩")
    window.wait_for(f"{first}: its outline is put right.")
    assert window.wait() == 0
