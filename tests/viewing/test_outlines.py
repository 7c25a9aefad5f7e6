"""Outlines of prints on the teller's page: drawn over the picture, and moved there by mouse and keys (our contract)."""

import json
import time
from urllib.error import HTTPError
from urllib.request import Request, urlopen

import pytest
from tests.viewing.conftest import Keeper, Page

from boxlore.core.statements import Kind, Subject
from boxlore.tasks.scans.outlines_by_hand import Looked, OutlinesByHand, as_quad
from boxlore.tasks.scans.pairing import Planned, ScanSide
from boxlore.tasks.sitting.tellers_page import OutlineTouch
from boxlore.viewing.server import Server

QUAD = as_quad([(0.25, 0.25), (0.75, 0.25), (0.75, 0.75), (0.25, 0.75)])


@pytest.fixture
def hand(keeper: Keeper) -> OutlinesByHand:
    """A sheet is out, with one outline, and the page's touches are obeyed."""
    collection = keeper.sitting.collection
    path = collection.folder / keeper.record.scans[0].path
    hand = OutlinesByHand(collection, [Planned(key="sheet", sides=(ScanSide(path),))])
    hand.begin(0, Looked((QUAD,)))

    def obey(touch: OutlineTouch) -> None:
        if touch.do == "put":
            quad = as_quad(zip(touch.corners[::2], touch.corners[1::2], strict=True))
            hand.put(touch.outline, touch.corner, quad, begun=touch.begun)
        elif touch.do == "add":
            hand.add()
        else:
            taken.append(touch.do)
            return  # what is shown from now on is shown by whoever waits for this
        keeper.showing.show_sheet(hand.scan, "sheet", hand.now, [])

    taken: list[str] = []
    keeper.taken = taken  # type: ignore[attr-defined]
    keeper.showing.outlined = obey
    return hand


def test_a_corner_is_dragged_and_then_moved_by_keys(page: Page, keeper: Keeper, hand: OutlinesByHand) -> None:
    keeper.showing.show_sheet(hand.scan, "sheet", hand.now, [])
    page.wait_for("document.querySelectorAll('#outlines polygon').length === 1")
    page.wait_for("document.body.dataset.shown.startsWith(String(side().id) + '/')")
    x, y = page.ask("(() => { const at = document.querySelector('#outlines circle').getBoundingClientRect();"
                    " return [at.x + at.width / 2, at.y + at.height / 2]; })()")  # fmt: skip
    page.call("Input.dispatchMouseEvent", type="mousePressed", x=x, y=y, button="left", clickCount=1)
    for by in (10, 20, 40):
        page.call("Input.dispatchMouseEvent", type="mouseMoved", x=x + by, y=y + by, button="left", buttons=1)
    page.call("Input.dispatchMouseEvent", type="mouseReleased", x=x + 40, y=y + 40, button="left", clickCount=1)
    page.wait_for("view.outlines.outlines[0][0][0] > 0.245 + 40 / (picture.naturalWidth * fit)")
    moved = hand.now.outlines[0]
    assert moved[1:] == QUAD[1:] and (hand.now.outline, hand.now.corner) == (0, 0)
    page.ask("stage.focus()")
    page.press("n")
    page.press("ArrowLeft")
    page.wait_for("view.outlines.corner === 1 && view.outlines.outlines[0][1][0] < 0.74")
    assert hand.now.outlines[0][1] == (0.73, 0.25) and hand.now.outlines[0][0] == moved[0]
    page.ask("get('add').click()")
    page.wait_for("document.querySelectorAll('#outlines polygon').length === 2")
    page.press("Enter")
    until = time.monotonic() + 15
    while not keeper.taken and time.monotonic() < until:  # type: ignore[attr-defined]
        time.sleep(0.01)
    keeper.again()
    page.wait_for("document.getElementById('drawing').hidden && !document.querySelector('#outlines polygon')")
    assert keeper.taken == ["take"]  # type: ignore[attr-defined]


def test_the_keys_take_the_corners_one_after_the_other(page: Page, keeper: Keeper, hand: OutlinesByHand) -> None:
    hand.hold(0)
    keeper.showing.show_sheet(hand.scan, "sheet", hand.now, [])
    page.wait_for("document.querySelectorAll('#outlines circle.held').length === 4")
    page.ask("stage.focus()")
    for key, corner in (("N", 0), ("n", 1), ("P", 0), ("p", 3)):
        page.press(key)
        assert page.ask("hold") == [0, corner], "the same as Tab does in the terminal"


@pytest.mark.parametrize(
    "told",
    [
        {"do": "put", "outline": 0, "corner": 0, "corners": [0.1] * 7},
        {"do": "put", "outline": 0, "corner": 4, "corners": [0.1] * 8},
        {"do": "put", "outline": 0, "corner": 0, "corners": [0.1] * 7 + [1.5]},
        {"do": "put", "outline": True, "corner": 0, "corners": [0.1] * 8},
        {"do": "burn", "outline": 0, "corner": 0, "corners": []},
    ],
)
def test_what_is_no_outline_is_refused(
    told: dict[str, object], keeper: Keeper, server: Server, hand: OutlinesByHand
) -> None:
    keeper.showing.show_sheet(hand.scan, "sheet", hand.now, [])
    side = keeper.showing.view.sides[0].id
    assert _post(server, {"side": side, **told}) == 400
    assert hand.now.outlines == (QUAD,)


def test_a_picture_that_is_not_out_any_more_has_no_outlines(
    keeper: Keeper, server: Server, hand: OutlinesByHand
) -> None:
    keeper.showing.show_sheet(hand.scan, "sheet", hand.now, [])
    side = keeper.showing.view.sides[0].id
    assert not keeper.showing.tap(side, 0.5, 0.5), "a sheet takes no markers"
    assert _post(server, {"side": side, "do": "add"}) == 200 and len(hand.now.outlines) == 2
    keeper.again()
    assert _post(server, {"side": side, "do": "add"}) == 409


def _post(server: Server, told: dict[str, object]) -> int:
    origin = f"http://{server.address.host}:{server.address.port}"
    headers = {"Origin": origin, "Cookie": f"{server.cookie}={server.key}", "Content-Type": "application/json"}
    try:
        with urlopen(Request(f"{origin}/outline", json.dumps(told).encode(), headers), timeout=20) as answer:
            return int(answer.status)
    except HTTPError as error:
        return error.code


def test_a_sheet_that_the_family_may_not_see_is_kept_back(keeper: Keeper, hand: OutlinesByHand) -> None:
    item = keeper.record.id
    keeper.showing.show_sheet(hand.scan, "sheet", hand.now, [item])
    assert keeper.showing.view.sides and not keeper.showing.view.message
    collection = keeper.sitting.collection
    act = collection.act("a care note")
    act.state(Subject(Kind.ITEM, item), "care", "A funeral. Ask before showing it.")
    act.done()
    keeper.showing.show_sheet(hand.scan, "sheet", hand.now, [item])
    assert not keeper.showing.view.sides and "keeps this picture back" in keeper.showing.view.message
