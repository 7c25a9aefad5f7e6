"""A print that lies aslant is straightened: laid on a bed by OpenCV, held against what was laid there."""

import io
from pathlib import Path

import cv2
import numpy as np
import pytest
from PIL import Image, ImageOps

from boxlore.core.records.marker_positions import seen_at, stored_at
from boxlore.disk.pictures import make_jpeg, make_upright_jpeg, small_pixels
from boxlore.tasks.scans.find_prints import part_at
from boxlore.tasks.scans.outlines_by_hand import as_quad

WIDE, HIGH = 500, 400
QUAD = as_quad([(0.2, 0.15), (0.75, 0.25), (0.7, 0.8), (0.15, 0.7)])
"""Where the print lies on the bed, as it is seen: upper left, upper right, lower right, lower left."""


def laid() -> tuple[np.ndarray, Image.Image]:
    """The picture on the print, and the bed with the print on it."""
    grey = np.asarray(Image.radial_gradient("L").resize((240, 200)))
    picture = np.stack([grey, grey[:, ::-1], 255 - grey[::-1]], -1).copy()
    picture[:60, :80] = (250, 60, 20)  # the upper left is told from the others
    corners = (np.array(QUAD) * (WIDE, HIGH)).astype(np.float32)
    matrix = cv2.getPerspectiveTransform(np.array([(0, 0), (240, 0), (240, 200), (0, 200)], np.float32), corners)
    bed = np.full((HIGH, WIDE, 3), 235, np.uint8)
    cv2.warpPerspective(picture, matrix, (WIDE, HIGH), dst=bed, borderMode=cv2.BORDER_TRANSPARENT)
    return picture, Image.fromarray(bed)


@pytest.mark.parametrize("orientation", range(1, 9))
def test_it_is_seen_as_it_was_before_it_was_laid_there(orientation: int, tmp_path: Path) -> None:
    """The file lies as each orientation of Exif (CIPA DC-008, tag 274) asks; Pillow turns it there."""
    picture, bed = laid()
    exif = Image.Exif()
    exif[274] = orientation
    bed.getexif()[274] = {5: 5, 6: 8, 7: 7, 8: 6}.get(orientation, orientation)
    path = tmp_path / "bed.png"
    ImageOps.exif_transpose(bed).save(path, exif=exif)
    part = part_at(QUAD, orientation)
    assert len(part) == 12
    made = make_upright_jpeg(path, area=part)
    for data in (made.data, make_jpeg(path, 1000, area=part)):
        shown = np.asarray(Image.open(io.BytesIO(data)).convert("RGB").resize((240, 200)), float)
        assert np.abs(shown[4:-4, 4:-4] - picture[4:-4, 4:-4]).mean() < 5
    wide, high, _ = small_pixels(path, 100, 100, area=part)
    assert (wide, high) == pytest.approx((100, 100 * made.height / made.width), abs=1.5)
    middle = stored_at((0.25, 0.75), part, orientation)
    assert seen_at(middle, part, orientation) == pytest.approx((0.25, 0.75))
    turned = make_upright_jpeg(path, area=part, turn=90)
    assert (turned.width, turned.height) == (made.height, made.width)


def test_what_lies_straight_or_is_no_quadrilateral_is_its_box() -> None:
    straight = as_quad([(0.1, 0.1), (0.5, 0.1015), (0.5, 0.6), (0.1, 0.6)])
    assert part_at(straight, 1) == pytest.approx((0.1, 0.1, 0.4, 0.5))
    crossed = as_quad([(0.1, 0.1), (0.5, 0.6), (0.5, 0.1), (0.1, 0.6)])
    assert part_at(crossed, 1) == pytest.approx((0.1, 0.1, 0.4, 0.5))


def test_its_resolution_is_that_of_the_scan_whatever_its_tilt(tmp_path: Path) -> None:
    """A print of 4 by 3 inches, turned by 15 degrees on a sheet of 200 pixels an inch (trigonometry)."""
    turn = np.deg2rad(15)
    across, down = np.array([np.cos(turn), np.sin(turn)]) * 400, np.array([-np.sin(turn), np.cos(turn)]) * 300
    corners = [np.array(offset) @ (across, down) + (600, 500) for offset in ((-1, -1), (1, -1), (1, 1), (-1, 1))]
    Image.new("RGB", (1200, 1000), "grey").save(tmp_path / "sheet.jpg", dpi=(200, 200))
    part = part_at(as_quad([(float(x) / 1200, float(y) / 1000) for x, y in corners]), 1)
    for longest in (0, 400):
        copy = Image.open(io.BytesIO(make_upright_jpeg(tmp_path / "sheet.jpg", longest, area=part).data))
        inches = [pixels / copy.info["dpi"][0] for pixels in copy.size]
        assert inches == pytest.approx([4, 3], rel=0.01)
