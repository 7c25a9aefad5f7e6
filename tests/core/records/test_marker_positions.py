"""Where a marker is seen. Outside truth: Pillow's own turning of pictures (ImageOps.exif_transpose)."""

import pytest
from PIL import Image, ImageOps
from tests.every_row import every_row

from boxlore.core.records.marker_positions import middle, part_of, seen_at, stored_at, turned_by

WIDE, HIGH = 40, 24


@every_row("turn", range(1, 9))
@every_row("area", [(), (0.25, 0.25, 0.5, 0.5)])
def test_a_point_is_seen_where_pillow_puts_it(turn: int, area: tuple[float, ...]) -> None:
    image = Image.new("L", (WIDE, HIGH))
    at = (13, 9)
    image.putpixel(at, 255)
    stored = ((at[0] + 0.5) / WIDE, (at[1] + 0.5) / HIGH)
    x, y, w, h = area or (0, 0, 1, 1)
    cut = image.crop((round(x * WIDE), round(y * HIGH), round((x + w) * WIDE), round((y + h) * HIGH)))
    cut.getexif()[274] = turn
    shown = ImageOps.exif_transpose(cut)
    where = shown.tobytes().index(255)
    expected = ((where % shown.width + 0.5) / shown.width, (where // shown.width + 0.5) / shown.height)
    assert seen_at(stored, area, turn) == pytest.approx(expected)
    assert stored_at(expected, area, turn) == pytest.approx(stored)


@every_row("turn", range(1, 9))
@every_row("degrees", [0, 90, 180, 270])
def test_a_turn_on_top_of_the_files_own_is_as_pillow_does_both(turn: int, degrees: int) -> None:
    image = Image.new("L", (WIDE, HIGH))
    image.putpixel((13, 9), 255)
    both = image.copy()
    image.getexif()[274], both.getexif()[274] = turn, turned_by(turn, degrees)
    shown = ImageOps.exif_transpose(image).rotate(-degrees, expand=True)
    again = ImageOps.exif_transpose(both)
    assert (again.size, again.tobytes()) == (shown.size, shown.tobytes())


def test_an_unknown_turn_is_upright() -> None:
    assert seen_at((0.2, 0.3), (), 99) == (0.2, 0.3)
    assert stored_at((0.2, 0.3), (), 99) == (0.2, 0.3)


def test_an_area_without_width_or_height_is_taken_as_one_wide_and_high() -> None:
    assert seen_at((0.5, 0.75), (0.25, 0.25, 0.0, 0.0)) == (0.25, 0.5)


def test_seen_and_stored_are_the_whole_upright_picture_unless_more_is_said() -> None:
    assert seen_at((0.2, 0.3)) == stored_at((0.2, 0.3)) == (0.2, 0.3)


def test_a_window_turned_is_the_same_part() -> None:
    assert part_of((), (0.0, 0.0, 0.5, 0.25), 6) == pytest.approx((0.0, 0.5, 0.25, 0.5))
    assert part_of((), (0.6, 0.1, 0.2, 0.3), 2) == pytest.approx((0.2, 0.1, 0.2, 0.3))
    assert part_of((0.5, 0.0, 0.5, 1.0), (0.5, 0.5, 0.5, 0.5)) == pytest.approx((0.75, 0.5, 0.25, 0.5))


def test_the_middle_of_a_box_is_its_middle() -> None:
    assert middle((0.2, 0.4, 0.2, 0.4)) == pytest.approx((0.3, 0.6))
    assert middle((0.2, 0.4)) == (0.2, 0.4)


@every_row("turn", range(1, 9))
def test_what_is_seen_in_a_window_of_what_lies_aslant_is_seen_in_the_whole(turn: int) -> None:
    """A window cuts out a part that lies aslant too: each place of it is that place of the whole (our own contract)."""
    aslant = (0.1, 0.1, 0.7, 0.8, 0.1, 0.2, 0.7, 0.1, 0.8, 0.6, 0.2, 0.9)
    part = part_of(aslant, (0.2, 0.3, 0.4, 0.5), turn)
    assert len(part) == 12 and part[:2] == (min(part[4::2]), min(part[5::2]))
    for x, y in ((0.0, 0.0), (1.0, 0.0), (0.3, 0.8)):
        assert seen_at(stored_at((x, y), part, turn), aslant, turn) == pytest.approx((0.2 + 0.4 * x, 0.3 + 0.5 * y))
