"""The short names of sources in full: they are those of the publishers, as the heads of the tables have them."""

import re

from tests.every_row import every_row

from boxlore.core.originals.condition_table import TERMS
from boxlore.core.originals.housing_rules_table import ATTACHED, MATERIALS, SURROUNDINGS
from boxlore.core.originals.source_names import source_in_full

ROWS = [  # source, in full
    ("KOD-D31; NEDCC 5.5", "Kodak, leaflet D-31; Northeast Document Conservation Center, leaflet 5.5"),
    ("NPS-TREE", "US National Park Service, Film Base Identification"),
    ("NPS 14/9; LC (away)", "US National Park Service, Conserve O Gram 14/9; Library of Congress (away)"),
    ("LC; common practice", "Library of Congress; common practice"),
    ("common practice, no source", "common practice, no source"),
]


@every_row(("source", "full"), ROWS)
def test_a_short_name_is_said_in_full(source: str, full: str) -> None:
    assert source_in_full(source) == full


def test_no_source_of_the_tables_stays_a_riddle() -> None:
    """But ISO, which is called so everywhere."""
    for row in (*TERMS, *MATERIALS, *ATTACHED, *SURROUNDINGS):
        assert not re.findall(r"\b(?!ISO\b|RH\b|US\b)[A-Z]{2,}\b", source_in_full(row.source)), row.source
