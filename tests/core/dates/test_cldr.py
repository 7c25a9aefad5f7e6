"""The table of months and days is what its script makes of babel's copy of Unicode CLDR."""

from pathlib import Path

import pytest
from tests.made_tables import check_table

pytest.importorskip("babel", reason="babel is needed for making the table only (extra `dev`)")


def test_the_table_is_what_the_script_makes() -> None:
    check_table(Path(__file__).parent / "make_cldr.py", "babel has another CLDR")
