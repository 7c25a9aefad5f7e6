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
from boxlore.disk.print_outlines import find_outlines
from boxlore.disk.seeing import outlines_in


def test_the_prints_of_a_sheet_of_each_kind_are_found_and_no_others() -> None:
    for kind in some(KINDS):
        sheet = next(sheets(1, seed=2026 if kind == "touching" else 3, kinds=(kind,)))
        quads = [np.array(quad) * (WIDE, HIGH) for quad in find_outlines(sheet.pixels)]
        best = [max((overlap(outline, quad) for quad in quads), default=0.0) for outline in sheet.outlines]
        assert len(quads) == len(best) and min(best) >= 0.9, (sheet.kind, best)


def test_an_empty_bed_and_a_print_that_fills_the_picture_show_none() -> None:
    chance = np.random.default_rng(1)
    empty = np.clip(chance.normal(235, 1.5, (400, 600, 3)), 0, 255).astype(np.uint8)
    assert find_outlines(empty) == []
    assert find_outlines(np.full((40, 60, 3), 200, np.uint8)) == []


def test_of_a_file_the_upright_picture_is_looked_at(tmp_path: Path) -> None:
    bed = Image.new("RGB", (700, 500), (225, 225, 222))
    bed.paste(Image.radial_gradient("L").resize((210, 300)).point(lambda shade: shade // 2), (70, 50))
    bed.paste(Image.linear_gradient("L").resize((280, 200)).point(lambda shade: shade // 2), (350, 200))
    exif = Image.Exif()
    exif[274] = 6  # the picture is turned a quarter to the right to be upright (CIPA DC-008, 4.6.4)
    bed.transpose(Image.Transpose.ROTATE_90).save(tmp_path / "sheet.png", exif=exif)
    corners = [(quad[0], quad[2]) for quad in outlines_in(tmp_path / "sheet.png")]
    wanted = [((0.1, 0.1), (0.4, 0.7)), ((0.5, 0.4), (0.9, 0.8))]
    assert np.allclose(sorted(corners), wanted, atol=0.012), corners


def test_without_the_extra_it_is_said_how_to_get_it(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setitem(sys.modules, "cv2", None)
    with pytest.raises(CouldNot, match=r"pip install boxlore\[see\]"):
        outlines_in(Path("sheet.png"))
