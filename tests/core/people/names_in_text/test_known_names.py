"""Names that all know and a gazetteer has (WordNet 3.0, GeoNames): they name nobody here."""

from importlib.util import find_spec
from pathlib import Path

import pytest
from tests.every_row import every_row
from tests.made_tables import check_table

from boxlore.core.people.names_in_text.known_names import is_of_a_known_name
from boxlore.core.people.names_in_text.text_normalising import read_text

ROWS = [
    ("Guy Fawkes on the cart", "Guy Fawkes"),
    ("Port Chalmers from the hill", "Port Chalmers"),
    ("Peter Pan’s hat", "Peter Pan’s"),
    ("Rue Victor Hugo", "Victor Hugo"),
    ("Karl-Marx-Allee", "Karl Marx"),
    ("Cape of Good Hope postcard", "Cape of Good Hope"),
    ("Church of Jesus Christ of Latter-day Saints", "Church of Jesus Christ of Latter day Saints"),
    ("Cape of Good", ""),
    ("Victor, Hugo", ""),
    ("Victor hugo", ""),
    ("port Chalmers", ""),
    ("Box Hill", ""),
    ("John Adams", ""),
    ("Father Brown", ""),
]
"""Words, and those of them that stand in such a name; that a John Adams, a Mr Brown and a family Box may be somebody
here is a rule of our own."""


@every_row(("words", "known"), ROWS)
def test_a_name_that_all_know_is_found_whole(words: str, known: str) -> None:
    read = read_text(words).words
    found = [words[word.start : word.end] for at, word in enumerate(read) if is_of_a_known_name(read, at)]
    assert " ".join(found) == known


def test_the_table_is_what_the_script_makes() -> None:
    if not Path("/usr/share/wordnet/data.noun").is_file() or find_spec("names") is None:
        pytest.skip("WordNet 3.0 (Debian's wordnet-base) and the package names are needed for making the table only")
    check_table(Path(__file__).parent / "make_known_names.py", "another release of WordNet")
