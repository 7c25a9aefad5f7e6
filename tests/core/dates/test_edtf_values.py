"""The bounds of dates that are made by hand (the Gregorian calendar: 1900 was no leap year)."""

import pytest

from boxlore.core.dates.edtf_values import Date, Day, edge


def test_a_day_that_there_is_not_has_no_bounds() -> None:
    with pytest.raises(ValueError, match="no day"):
        edge(Date("1900", "02", "30"), last=False)
    assert edge(Date("2000", "02", "29"), last=True) == Day(2000, 2, 29)
