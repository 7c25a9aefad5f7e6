"""A city's name that was given anew, on a picture that is dated before: years by the Encyclopædia Britannica (Saint
Petersburg: Petrograd 1914, Leningrad 1924; Oslo 1925), from memory."""

from tests.core.evidence.family import BACK, days_of, item, told, worked_out
from tests.every_row import every_row

from boxlore.core.evidence.names_of_cities import GIVEN_ANEW
from boxlore.core.places.renamed_cities_table import RENAMED

HELD_AGAINST = (
    ("Leningrad", "1921", True),
    ("Ленинград", "1921", True),
    ("Oslo, Karl Johan", "1910", True),
    ("Petrograd", "1910", True),
    ("Leningrad", "1930", False),
    ("Petrograd", "1930", False),  # old names were used for decades
    ("Tallinn", "1910", False),  # its name in Estonian long before
)


@every_row(("words", "when", "is_held"), HELD_AGAINST)
def test_a_name_that_nobody_used_then_speaks_against_a_date(words: str, when: str, is_held: bool) -> None:
    worked = worked_out([item("i", told("inscription", words, source=BACK), told("date", when))])
    assert bool(worked.circles) is is_held
    assert days_of(worked, "i")[:4] == when


def test_it_bounds_no_picture_without_a_date_and_counts_only_where_it_is_written() -> None:
    assert days_of(worked_out([item("i", told("inscription", "Leningrad", source=BACK))]), "i") == "- -"
    assert not worked_out([item("i", told("place", "Leningrad"), told("date", "1921"))]).circles
    assert worked_out([item("i", told("inscription", "Leningrad, 1921", source=BACK))]).circles


def test_every_name_is_one_of_the_table() -> None:
    names = {name for row in RENAMED for name, _, _ in row.names}
    assert {row.split("|")[0] for row in GIVEN_ANEW} <= names
