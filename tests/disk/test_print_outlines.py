"""Prints found on sheets made with known outlines (tests/made_sheets.py); the measure is intersection over union.

Our own contract. How many are found of many sheets is measured by tests/benchmarks/bench_prints.py.
"""

import sys
from pathlib import Path

import numpy as np
import pytest
from PIL import Image
from tests.drawn import some
from tests.made_sheets import HIGH, KINDS, WIDE, overlap, sheets

from boxlore.core.errors import CouldNot
from boxlore.disk.outlines import Found
from boxlore.disk.print_outlines import find_outlines
from boxlore.disk.seeing import outlines_in


def test_the_prints_of_a_sheet_of_each_kind_are_found_and_no_others() -> None:
    for kind in some(KINDS):
        sheet = next(sheets(1, seed=2026 if kind == "touching" else 3, kinds=(kind,)))
        quads = [np.array(quad) * (WIDE, HIGH) for quad in find_outlines(sheet.pixels).quads]
        best = [max((overlap(outline, quad) for quad in quads), default=0.0) for outline in sheet.outlines]
        assert len(quads) == len(best) and min(best) >= 0.9, (sheet.kind, best)


@pytest.mark.parametrize("gap", [4, 12, 26, 50])
def test_prints_near_each_other_get_nothing_of_their_neighbour(gap: int) -> None:
    """White-bordered prints on a dark lid: 4 pixels of 1000 are about 1 mm of an A4 sheet, 26 are 8 mm."""
    chance = np.random.default_rng(7)
    bed = np.clip(chance.normal(40, 2, (700, 1000, 3)), 0, 255).astype(np.uint8)
    laid = []
    for at in range(4):
        left, top = 20 + at * (190 + gap), 40 + 6 * at
        bed[top : top + 300, left : left + 190] = 240
        inner = chance.integers(60, 150, (9, 6)).astype(np.uint8)
        grey = np.asarray(Image.fromarray(inner).resize((170, 280), Image.Resampling.BICUBIC))
        bed[top + 10 : top + 290, left + 10 : left + 180] = grey[..., None]
        right = left + 190
        laid.append(np.array([(left, top), (right, top), (right, top + 300), (left, top + 300)], np.float32))
    quads = [np.array(quad) * (1000, 700) for quad in find_outlines(bed).quads]
    assert len(quads) == 4
    for quad, outline in zip(quads, laid, strict=True):
        assert np.abs(quad - outline).max() <= 4.0


@pytest.mark.parametrize(("glow", "reach"), [(16, 300), (24, 200)])
def test_light_that_falls_in_at_a_corner_joins_no_print_to_the_edge(glow: int, reach: int) -> None:
    """A lid that stands open: the bed is lighter there by so many shades, less by each `reach` pixels further on."""
    chance = np.random.default_rng(3)
    ys, xs = np.mgrid[0:714, 0:1000]
    bed = 26 + glow * np.exp(-np.hypot(xs, ys) / reach) + chance.normal(0, 0.7, (714, 1000))
    places = [(40, 60), (380, 60), (700, 60), (60, 400), (380, 400), (700, 400)]
    for left, top in places:
        inner = Image.fromarray(chance.integers(90, 170, (8, 9)).astype(np.uint8))
        bed[top : top + 236, left : left + 254] = np.asarray(inner.resize((254, 236), Image.Resampling.BICUBIC))
    pixels = np.repeat(np.clip(bed, 0, 255).astype(np.uint8)[..., None], 3, 2)
    quads = [np.array(quad) * (1000, 714) for quad in find_outlines(pixels).quads]
    assert len(quads) == len(places)
    for quad, (left, top) in zip(quads, places, strict=True):
        assert np.abs(quad[0] - (left, top)).max() <= 3.0 and np.abs(quad[2] - (left + 254, top + 236)).max() <= 3.0


def test_a_print_cut_off_by_the_edge_of_the_picture_is_not_sheared() -> None:
    bed = Image.new("RGB", (900, 700), (30, 30, 30))
    shown = Image.radial_gradient("L").resize((400, 300)).point(lambda shade: 90 + shade // 2).convert("RGB")
    turned = shown.rotate(-5, expand=True)
    bed.paste(turned, (-60, 150), Image.new("L", (400, 300), 255).rotate(-5, expand=True))
    bed.paste(shown, (460, 300))
    found = find_outlines(np.asarray(bed))
    assert len(found.quads) == 2 and len(found.cut_off) == 1
    ((left, top), (right, same_top), *_) = next(iter(found.cut_off))
    assert left < 0.01 and top == same_top and right > left


def test_an_outline_longer_than_a_print_may_be_several() -> None:
    row = ((0.1, 0.1), (0.9, 0.1), (0.9, 0.4), (0.1, 0.4))
    assert Found((row,), shape=1.5).long == [0] and not Found((row,), shape=0.7).long


def test_an_empty_bed_and_a_print_that_fills_the_picture_show_none() -> None:
    chance = np.random.default_rng(1)
    empty = np.clip(chance.normal(235, 1.5, (400, 600, 3)), 0, 255).astype(np.uint8)
    assert not find_outlines(empty).quads
    assert not find_outlines(np.full((40, 60, 3), 200, np.uint8)).quads


def test_of_a_file_the_upright_picture_is_looked_at(tmp_path: Path) -> None:
    bed = Image.new("RGB", (700, 500), (225, 225, 222))
    bed.paste(Image.radial_gradient("L").resize((210, 300)).point(lambda shade: shade // 2), (70, 50))
    bed.paste(Image.linear_gradient("L").resize((280, 200)).point(lambda shade: shade // 2), (350, 200))
    exif = Image.Exif()
    exif[274] = 6  # the picture is turned a quarter to the right to be upright (CIPA DC-008, 4.6.4)
    bed.transpose(Image.Transpose.ROTATE_90).save(tmp_path / "sheet.png", exif=exif)
    corners = [(quad[0], quad[2]) for quad in outlines_in(tmp_path / "sheet.png").quads]
    wanted = [((0.1, 0.1), (0.4, 0.7)), ((0.5, 0.4), (0.9, 0.8))]
    assert np.allclose(sorted(corners), wanted, atol=0.012), corners


def test_without_the_extra_it_is_said_how_to_get_it(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setitem(sys.modules, "cv2", None)
    with pytest.raises(CouldNot, match=r"pip install boxlore\[see\]"):
        outlines_in(Path("sheet.png"))
