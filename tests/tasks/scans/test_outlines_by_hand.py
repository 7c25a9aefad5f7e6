"""Outlines of prints put right by hand: what is in hand, how it moves, and what intake gets (our own contract)."""

from collections.abc import Callable
from pathlib import Path

import pytest
from PIL import Image

from boxlore.core.errors import WrongUse
from boxlore.tasks.collection.opening import Collection, open_collection
from boxlore.tasks.collection.records_for_outputs import EVERYTHING, records
from boxlore.tasks.scans.intake import IntakeOptions, take_in
from boxlore.tasks.scans.outlines_by_hand import Looked, OutlinesByHand, as_quad
from boxlore.tasks.scans.pairing import by_suffix

LEFT = as_quad([(0.1, 0.1), (0.4, 0.1), (0.4, 0.7), (0.1, 0.7)])
RIGHT = as_quad([(0.5, 0.4), (0.9, 0.4), (0.9, 0.8), (0.5, 0.8)])


@pytest.fixture
def sheets(tmp_path: Path) -> list[Path]:
    """A sheet of two dark prints on a light bed, and the same held sideways, as a telephone notes it."""
    bed = Image.new("RGB", (700, 500), (225, 225, 222))
    dark = Image.radial_gradient("L").point(lambda shade: 20 + shade // 2)
    bed.paste(dark.resize((210, 300)), (70, 50))
    bed.paste(dark.resize((280, 200)), (350, 200))
    paths = [tmp_path / "sheet.png", tmp_path / "turned.jpg"]
    bed.save(paths[0])
    exif = Image.Exif()
    exif[274] = 6
    bed.save(paths[1], exif=exif)
    return paths


@pytest.fixture
def hand(bare: Callable[[int], Path], sheets: list[Path]) -> OutlinesByHand:
    with open_collection(bare(0)) as collection:
        return OutlinesByHand(collection, by_suffix(sheets))


def areas(collection: Collection) -> list[tuple[float, ...]]:
    return [record.scans[0].area for record in records(collection, EVERYTHING)]


def test_what_is_drawn_becomes_items_and_the_file_stays(bare: Callable[[int], Path], sheets: list[Path]) -> None:
    """Proposed, moved, taken in; and looked at again, the prints that are items are told from the new ones."""
    before = [path.read_bytes() for path in sheets]
    with open_collection(bare(0)) as collection:
        hand = OutlinesByHand(collection, by_suffix(sheets))
        for at in range(2):
            hand.begin(at, hand.look(at))
        assert len(hand.now.outlines) == 2 and hand.turn(1) and len(hand.now.outlines) == 2 and not hand.turn(1)
        assert hand.hold(1) and hand.remove() and hand.turn(-1)
        hand.put(0, 0, LEFT)
        results = take_in(collection, hand.taken(), IntakeOptions(copy=True))
        assert [result.state for result in results] == ["taken"] * 3
        first, second, turned = areas(collection)
        assert first == pytest.approx((0.1, 0.1, 0.3, 0.6), abs=1e-4)
        assert second == pytest.approx((0.5, 0.4, 0.4, 0.4), abs=0.012)
        assert turned == pytest.approx((0.1, 0.1, 0.3, 0.6), abs=0.012), "of the file as it is stored"
        again = OutlinesByHand(collection, by_suffix(sheets))
        looked = again.look(0)
        assert len(looked.here) == 2 and looked.proposed == () and len(looked.items) == 2
        again.begin(0, looked)
        with pytest.raises(WrongUse, match="That is TRA-0001, which is here already"):
            again.hold(0)
            again.remove()
        with pytest.raises(WrongUse, match="add one beside it"):
            again.split()
        again.put(0, 2, as_quad([(0.1, 0.1), (0.4, 0.1), (0.45, 0.75), (0.1, 0.7)]))
        again.add()
        assert again.put_right() == ["TRA-0001: its outline is put right."] and len(again.taken()) == 2
        (first, *_) = records(collection, EVERYTHING)
        assert first.scans[0].area == pytest.approx((0.1, 0.1, 0.35, 0.65)) and len(first.scans[0].corners) == 8
        assert areas(collection)[1] == second, "the other stays as it was"
    assert [path.read_bytes() for path in sheets] == before


def test_corners_are_taken_one_after_the_other_and_stay_on_the_picture(hand: OutlinesByHand) -> None:
    hand.begin(0, Looked((LEFT, RIGHT)))
    hand.next_corner(1)
    assert (hand.now.outline, hand.now.corner) == (0, 0)
    hand.next_corner(-1)
    assert (hand.now.outline, hand.now.corner) == (1, 3)
    hand.move(0.05, 0.9)
    assert hand.now.outlines[1][3] == (0.55, 1.0), "no further than the edge"
    assert hand.hold(0) and not hand.hold(2)
    hand.next_corner(1)
    assert (hand.now.outline, hand.now.corner) == (0, 0), "of a whole outline, its first corner"
    hand.hold(0)
    hand.move(-0.5, 0.1)
    assert hand.now.outlines[0] == as_quad([(0, 0.2), (0.3, 0.2), (0.3, 0.8), (0, 0.8)]), "as it is, to the edge"
    assert hand.is_changed and hand.undo() and hand.undo() and not hand.undo()
    assert hand.now.outlines == (LEFT, RIGHT)
    hand.let_go()
    hand.move(0.1, 0.1)
    assert hand.now.in_hand is None and not hand.remove() and not hand.is_changed


def test_the_mouse_takes_a_corner_else_the_outline_that_it_is_in(hand: OutlinesByHand) -> None:
    hand.begin(0, Looked((LEFT, RIGHT)))
    assert hand.grab(0.41, 0.11, (0.02, 0.02)) and (hand.now.outline, hand.now.corner) == (0, 1)
    hand.drag(0.43, 0.15, begun=False)
    hand.drag(0.46, 0.21, begun=True)
    assert hand.now.outlines[0][1] == (0.45, 0.2) and hand.undo() and hand.now.outlines[0] == LEFT
    assert hand.grab(0.7, 0.6, (0.02, 0.02)) and (hand.now.outline, hand.now.corner) == (1, -1)
    assert not hand.grab(0.45, 0.9, (0.02, 0.02)) and hand.now.in_hand is None
    hand.add(0.95, 0.05)
    assert hand.now.outlines[2] == as_quad([(0.7, 0), (1, 0), (1, 0.3), (0.7, 0.3)]) and hand.now.outline == 2
    hand.begin(0, Looked())
    assert len(hand.now.outlines) == 3, "what is found late takes nothing away that was drawn"
    assert hand.hold(0) and hand.split() and hand.hold(2) and hand.split() and len(hand.now.outlines) == 5
    assert hand.now.outlines[:2] == (  # across the middle of the longer sides
        as_quad([(0.1, 0.1), (0.4, 0.1), (0.4, 0.4), (0.1, 0.4)]),
        as_quad([(0.1, 0.4), (0.4, 0.4), (0.4, 0.7), (0.1, 0.7)]),
    )
    assert hand.now.outlines[2][1] == hand.now.outlines[3][0] == (0.7, 0.4) and hand.now.outline == 3
    assert hand.undo() and hand.undo() and len(hand.now.outlines) == 3
    hand.let_go()
    assert not hand.split()
    hand.put(2, 0, as_quad([(0.5, 0.5)] * 4))
    with pytest.raises(WrongUse, match="Outline 3 is too narrow"):
        hand.check()
