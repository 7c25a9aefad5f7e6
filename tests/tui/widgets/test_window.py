"""The part of a picture that is shown large (rules of our own, no outside source)."""

import pytest

from boxlore.core.records.item_record import ScanFile
from boxlore.tui.widgets.window import CLOSEST, WHOLE, Window

QUARTER = Window(0.25, 0.5, 0.5, 0.5)


@pytest.mark.parametrize(
    ("window", "wanted"),
    [
        (WHOLE.around(0.5, 0.75, 0.5), (0.25, 0.5, 0.5, 0.5)),
        (WHOLE.around(0.9, 0.1, 0.5), (0.5, 0, 0.5, 0.5)),
        (WHOLE.around(0.5, 0.5, 0), (0.5 - CLOSEST / 2, 0.5 - CLOSEST / 2, CLOSEST, CLOSEST)),
        (QUARTER.around(0.1, 0.9, 1.4), WHOLE),
        (QUARTER.reaching(0.5, 0.6), QUARTER),
        (QUARTER.reaching(0.1, 0.2), (0.1, 0.2, 0.5, 0.5)),
        (QUARTER.reaching(0.9, 1.0), (0.4, 0.5, 0.5, 0.5)),
        (WHOLE.reaching(0.9, 0.1), WHOLE),
    ],
)
def test_it_goes_closer_and_along_and_stays_on_the_picture(window: Window, wanted: tuple[float, ...]) -> None:
    assert window == pytest.approx(wanted)


def test_a_place_is_seen_where_it_lies_and_only_that_part_is_read() -> None:
    assert QUARTER.seen(0.5, 0.5) == (0.5, 0) and QUARTER.place(0.5, 0) == (0.5, 0.5) and QUARTER.middle == (0.5, 0.75)
    scan = ScanFile(id="1", path="a.png", sha256="", bytes=0, width=0, height=0, media_type="")
    assert WHOLE.of(scan, 1) is scan and QUARTER.of(scan, 1).area == QUARTER
