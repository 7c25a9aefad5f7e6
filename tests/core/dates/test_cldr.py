"""The table of months and days is what its script makes of babel's copy of Unicode CLDR."""

from pathlib import Path

import pytest
from tests.made_tables import check_table

from boxlore.core.dates.numbers_in_digits import WITH_FULL_STOPS

babel = pytest.importorskip("babel", reason="babel is needed for making the table only (extra `dev`)")


def test_the_table_is_what_the_script_makes() -> None:
    check_table(Path(__file__).parent / "make_cldr.py", "babel has another CLDR")


def test_countries_with_full_stops_have_the_day_first_in_every_language_that_most_speak() -> None:
    languages = {"AT": "de", "BA": "bs", "BE": "de", "BY": "be", "CH": "de", "CZ": "cs", "DK": "da", "EE": "et"}
    languages |= {"GE": "ka", "KZ": "kk", "LI": "de", "LU": "de", "NO": "nb", "RS": "sr", "SI": "sl", "UA": "uk"}
    languages |= {"AZ": "az"}
    for country in WITH_FULL_STOPS:
        locale = babel.Locale.parse(f"{languages.get(country, country.lower())}_{country}")
        pattern = locale.date_formats["short"].pattern
        assert pattern[0] == "d" and "." in pattern and pattern.index("M") < pattern.index("y"), (country, pattern)
