"""Told places taken apart (common practice, no source: how families and registers write places)."""

import pytest
from tests.every_row import every_row

from boxlore.core.places.taking_apart import Parts, fold_place, is_district, parted_at_in, take_apart, without_district

TOLD = [
    ("Port Chalmers, Otago", Parts(("Port Chalmers", "Otago"))),
    ("Reval, 1912", Parts(("Reval",))),
    ("probably Reval", Parts(("Reval",), unsure=True)),
    ("Reval?", Parts(("Reval",), unsure=True)),
    ("[Reval]", Parts(("Reval",), unsure=True)),
    ("Reval (now Tallinn)", Parts(("Reval",), ("Tallinn",))),
    ("Reval (now Tallinn), Estonia", Parts(("Reval", "Estonia"), ("Tallinn",))),
    ("Reval, now Tallinn", Parts(("Reval",), ("Tallinn",))),
    ("Reval / Tallinn", Parts(("Reval",), ("Tallinn",))),
    ("Reval / Tallinn, Estonia", Parts(("Reval", "Estonia"), ("Tallinn",))),
    ("Nõmme (Reval)", Parts(("Nõmme", "Reval"))),
    ("the farm near Reval", Parts(("Reval",), sublocation="the farm", near_km=15, near_words="near")),
    ("10 km south of Reval", Parts(("Reval",), near_km=10, near_words="10 km south of")),
    ("10 versts from Reval", Parts(("Reval",), near_km=10.67, near_words="10 versts from")),
    ("Re\u0000val", Parts(("Re val",))),
    ("", Parts(())),
    ("x" * 401, Parts(())),
]


@every_row(("text", "parts"), TOLD)
def test_taken_apart(text: str, parts: Parts) -> None:
    assert take_apart(text) == parts


def test_nearness_in_a_name() -> None:
    assert take_apart("Bernau bei Berlin", is_near=False) == Parts(("Bernau bei Berlin",))


FOLDED = [("Saint-Étienne", "st etienne"), ("St. Petersburg", "st petersburg"), ("Mount Cook", "mt cook"),
          ("Fort William", "ft william"), ("Stoke", "stoke"), ("L'Aquila", "laquila")]  # fmt: skip


@pytest.mark.parametrize(("name", "folded"), FOLDED)
def test_a_name_as_the_index_knows_it(name: str, folded: str) -> None:
    assert fold_place(name) == folded


DISTRICTS = [
    ("Kreis Heilsberg", "Heilsberg"),
    ("Kr. Wolmar", "Wolmar"),
    ("powiat Konin", "Konin"),
    ("Uman uyezd", "Uman"),
    ("Ambla kihelkond", "Ambla"),
    ("Kunda mõis", "Kunda"),
    ("Gut Fellin", "Fellin"),
]


@pytest.mark.parametrize(("words", "town"), DISTRICTS)
def test_a_district_is_called_after_its_town(words: str, town: str) -> None:
    """Words for a district or an estate in German, Polish, Russian, Estonian (common practice, no source)."""
    assert (without_district(words), is_district(words)) == (town, True)
    assert (without_district(town), is_district(town)) == (town, False)


INSIDE = [
    ("the wharf at Lyttelton", ("the wharf", "Lyttelton")),
    ("Grandad's house in Timaru", ("Grandad's house", "Timaru")),
    ("in Dunedin", ("Dunedin",)),
    ("the main street of Gore", ("the main street", "Gore")),
    ("auf dem Domberg in Dorpat", ("auf dem Domberg", "Dorpat")),
    ("Isle of Man", None),
    ("in the hills", None),
    ("Milton", None),
    ("Te Kuiti", None),
]


def test_what_stands_in_a_place() -> None:
    """Prepositions of English and German (common practice, no source)."""
    assert [(words, parted_at_in(words)) for words, _ in INSIDE] == INSIDE
