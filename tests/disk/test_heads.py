"""Faces found on the demo's drawn groups (our own contract); how many of many is measured by bench_heads.py.

The models are OpenCV's; that three agree, and that the faces of a group are alike in size, is common practice, no
source.
"""

import sys
from pathlib import Path

import pytest

from boxlore.core.errors import CouldNot
from boxlore.disk import heads
from boxlore.disk.heads import MODELS, _faces, _Find
from boxlore.disk.seeing import heads_in

SCANS = Path(__file__).parents[2] / "demo_family" / "scans"
DECK = ((0.3559, 0.4988), (0.4619, 0.6002), (0.5933, 0.4868))
"""The middles of the three heads of on_deck_1949.png, as its drawing told them (demo_family/statements.csv)."""


def test_each_face_is_found_once_and_nothing_else() -> None:
    found = heads_in(SCANS / "on_deck_1949.png")
    assert [(head.x, head.y) for head in found] == [pytest.approx(place, abs=0.02) for place in DECK]
    assert all(0.02 < head.width < 0.06 for head in found)


def test_of_a_part_and_turned_they_lie_where_they_are_looked_at() -> None:
    """The left half of the picture, turned by half: upside down there is no face; by none, two of them."""
    assert heads_in(SCANS / "on_deck_1949.png", area=(0.3, 0.4, 0.2, 0.4), turn=180) == []
    first, second = heads_in(SCANS / "on_deck_1949.png", area=(0.3, 0.4, 0.2, 0.4))
    assert (first.x, second.x) == pytest.approx(((0.3559 - 0.3) / 0.2, (0.4619 - 0.3) / 0.2), abs=0.08)


def find(width: float, *models: str) -> _Find:
    return _Find(10.0, 10.0, width, set(models))


def test_in_a_group_faces_are_alike_and_two_models_are_enough_for_one_like_the_others() -> None:
    group = [find(50, *MODELS), find(55, *MODELS), find(60, *MODELS)]
    others = [find(52, *MODELS[:2]), find(52, MODELS[0]), find(30, *MODELS[:2]), find(150, *MODELS)]
    assert _faces([*group, *others]) == [*group, others[0]]
    assert _faces([group[0], others[0]]) == [group[0]], "without a group, all three must see it"


def test_without_the_extra_or_its_models_it_is_said_what_to_do(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(heads, "MODELS", ("none_such",))
    with pytest.raises(CouldNot, match=r"carries no models of faces. Install .*boxlore\[see\]"):
        heads_in(SCANS / "on_deck_1949.png")
    monkeypatch.setitem(sys.modules, "cv2", None)
    with pytest.raises(CouldNot, match=r"looks for heads is not installed. Install .*or set the markers by hand"):
        heads_in(SCANS / "on_deck_1949.png")
