"""What is suggested for a country: orders after Unicode CLDR 46 (from memory), halves by latitude (any atlas)."""

import pytest
from tests.every_row import every_row

from boxlore.core.places.countries_table import COUNTRY_NAMES
from boxlore.core.places.country_defaults import UsualWays, usual_ways
from boxlore.core.places.country_defaults_table import BOTH_ORDERS, LANGUAGES, MONTH_FIRST, SOUTH

BY_COUNTRY = [
    ("New Zealand", UsualWays("dmy", "south", "en", "NZ")),
    ("new zea", UsualWays("dmy", "south", "en", "NZ")),
    ("NZ", UsualWays("dmy", "south", "en", "NZ")),
    ("Estonia", UsualWays("dmy", "north", "et", "EE")),
    ("United States", UsualWays("mdy", "north", "en", "US")),
    ("Canada", UsualWays("", "north", "en", "CA")),
    ("Niger", UsualWays("dmy", "north", "en", "NE")),  # not Nigeria, though that begins so too
    ("England", UsualWays("dmy", country="GB")),  # ISO 3166-2:GB has it as a country of the United Kingdom
    ("scotland", UsualWays("dmy", country="GB")),
    ("UK", UsualWays("dmy", country="GB")),  # not Ukraine, though that begins so too
    ("u.s.a.", UsualWays("mdy", "north", "en", "US")),
    ("Deutschland", UsualWays("dmy", "north", "de", "DE")),  # CLDR
    ("", UsualWays()),
]


@every_row(("country", "usual"), BY_COUNTRY)
def test_what_is_usual_in_a_country(country: str, usual: UsualWays) -> None:
    assert usual_ways(country) == usual


@pytest.mark.parametrize("country", ["Atlantis", "United"])
def test_a_country_that_cannot_be_told_is_asked_for(country: str) -> None:
    assert usual_ways(country) is None


def test_every_code_is_a_country() -> None:
    assert {*MONTH_FIRST, *BOTH_ORDERS, *SOUTH, *LANGUAGES} <= {*COUNTRY_NAMES}
