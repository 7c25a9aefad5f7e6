"""Pictures on paper: where numbers stand (beside the head, not on a face: common practice, no source)."""

from dataclasses import replace
from pathlib import Path

import pytest
from PIL import Image

from boxlore.core.crosswalk.captions import PLAIN
from boxlore.core.records.item_record import Record
from boxlore.sheets.picture_on_paper import Room, Shelf, are_clear, figure, front_of, heads_of, jpeg_size, numbers_of

CHIN = [
    ([(1, (0.4, 0.2, 0.1, 0.1))], [(0.45, 0.325)]),
    # the chin of 1 is the face of 2: beside the head instead
    ([(1, (0.4, 0.2, 0.1, 0.1)), (2, (0.4, 0.31, 0.1, 0.1))], [(0.525, 0.28), (0.45, 0.435)]),
    # at the lower edge the number stays in the picture
    ([(1, (0.4, 0.95, 0.1, 0.05))], [(0.525, 0.975)]),
]


@pytest.mark.parametrize(("heads", "wanted"), CHIN)
def test_numbers_stand_at_the_chin(heads, wanted) -> None:  # type: ignore[no-untyped-def]
    found = [(one["x"], one["y"]) for one in numbers_of(heads, 0.05, 0.05)]
    assert found == [pytest.approx(spot) for spot in wanted]


def test_no_number_covers_a_face_or_another_number_in_a_crowd() -> None:
    heads = [
        (row * 8 + at + 1, (0.05 + at * 0.115, 0.1 + row * 0.25, 0.05, 0.1)) for row in range(3) for at in range(8)
    ]
    boxes = [head for _, head in heads]
    discs = [(one["x"] - 0.02, one["y"] - 0.02, 0.04, 0.04) for one in numbers_of(heads, 0.04, 0.04)]
    for at, (x, y, w, h) in enumerate(discs):
        for left, top, wide, high in [*boxes, *discs[:at]]:
            apart = x + w <= left + 1e-6 or left + wide <= x + 1e-6 or y + h <= top + 1e-6 or top + high <= y + 1e-6
            assert apart


def test_of_heads_close_together_it_is_known_that_numbers_lie_on_them() -> None:
    close = [(1, (0.4, 0.4, 0.1, 0.1)), (2, (0.51, 0.4, 0.1, 0.1)), (3, (0.45, 0.51, 0.1, 0.1))]
    assert are_clear(close, numbers_of(close, 0.08, 0.08), 0.08, 0.08)
    assert not are_clear(close, numbers_of(close, 0.6, 0.6), 0.6, 0.6)


def test_a_head_at_the_edge_is_moved_into_the_picture(hard: list[Record]) -> None:
    record = next(record for record in hard if any(person.number and person.scan for person in record.shown()))
    scan = next(scan for scan in record.scans if any(person.scan == scan.id for person in record.shown()))
    marked = [
        replace(person, area=(1.0, 1.0)) if person.number and person.scan == scan.id else person
        for person in record.shown()
    ]
    for _, (x, y, w, h) in heads_of(marked, replace(scan, area=())):
        assert (x + w, y + h) == (pytest.approx(1), pytest.approx(1)) and x > 0.9 and y > 0.9


def test_a_cut_item_has_its_numbers_in_its_own_part(hard: list[Record]) -> None:
    scan = front_of(hard[0])
    assert scan is not None
    cut = type(scan)(**{name: getattr(scan, name) for name in scan.__slots__} | {"area": (0.1, 0.4, 0.4, 0.5)})  # type: ignore[attr-defined]
    first = next(head for number, head in heads_of(hard[0].shown(), cut) if number == 1)
    assert first == pytest.approx(((0.12 - 0.1) / 0.4, (0.42 - 0.4) / 0.5, 0.05 / 0.4, 0.08 / 0.5))


def test_only_a_group_over_eight_has_an_outline(hard: list[Record], pictures: dict[str, Path], tmp_path: Path) -> None:
    shelf = Shelf(pictures, tmp_path, [])
    nine = figure(hard[0], shelf, Room(80, 44), PLAIN)
    assert sorted(one["number"] for one in nine["outline"]) == list(range(1, 10))
    assert all(0 <= one["x"] <= 1 and 0 <= one["y"] <= 1 for one in nine["outline"])
    assert figure(hard[1], shelf, Room(80, 44), PLAIN)["outline"] == []
    assert (nine["width"], nine["height"]) == pytest.approx((44 * 4 / 3, 44))
    assert shelf.findings == []


def test_a_damaged_picture_is_replaced_and_named(hard: list[Record], pictures: dict[str, Path], tmp_path: Path) -> None:
    shelf = Shelf(pictures, tmp_path, [])
    assert figure(hard[8], shelf, Room(80, 44), PLAIN)["picture"] is None
    assert [one.message for one in shelf.findings] == ["The picture of TRA-0009 cannot be shown."]


@pytest.mark.parametrize("size", [(31, 17), (400, 300)])
@pytest.mark.parametrize("progressive", [False, True])
def test_the_size_of_a_jpeg(size: tuple[int, int], progressive: bool, tmp_path: Path) -> None:
    Image.new("RGB", size).save(tmp_path / "a.jpg", progressive=progressive)
    assert jpeg_size(tmp_path / "a.jpg") == size
