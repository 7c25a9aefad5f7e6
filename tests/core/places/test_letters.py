"""Countries by the letters of a name; codes against pycountry (ISO 3166-1), alphabets from memory."""

import pycountry
from tests.every_row import every_row

from boxlore.core.places.letters import lands_of_letters
from boxlore.core.places.letters_table import LETTERS

NAMES = [
    ("Rømø", "DK", "IT"),
    ("Łazy", "PL", "ES"),
    ("Võru", "EE", "FR"),
    ("Þingvellir", "IS", "NO"),
    ("Göteborg", "", "SE"),  # ö is written in many languages
]


@every_row(("name", "inside", "outside"), NAMES)
def test_in_which_countries_a_name_lies(name: str, inside: str, outside: str) -> None:
    lands = lands_of_letters([name])
    assert (inside in lands) is bool(inside)
    assert outside not in lands


def test_countries_are_those_of_iso_3166() -> None:
    lands = {land for lands in LETTERS.values() for land in lands.split()}
    assert lands <= {country.alpha_2 for country in pycountry.countries}


def test_a_letter_stands_in_one_row() -> None:
    letters = "".join(LETTERS)
    assert len(set(letters)) == len(letters)
