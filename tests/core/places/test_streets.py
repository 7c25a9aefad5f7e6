"""Words for streets by language (common practice, no source)."""

from tests.every_row import every_row

from boxlore.core.places.streets import is_street

STREETS = [
    ("Princes Street", True),
    ("ul. Mickiewicza", True),
    ("Gartenstraße", True),
    ("Pärnu maantee", True),
    ("Brīvības ielā", True),
    ("George St.", True),
    ("ул. Баумана", True),
    ("St Giles", False),
    ("Street", False),
    ("Port Chalmers", False),
    ("Milton", False),
]


@every_row(("words", "street"), STREETS)
def test_which_words_name_a_street(words: str, street: bool) -> None:
    assert is_street(words) is street
