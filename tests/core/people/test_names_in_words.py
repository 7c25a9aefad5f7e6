"""How names are found in words: whole words, case endings, never a shorter stem than four letters (a rule of our own).

Estonian case forms are from memory: Leidalt (ablative), Leidaga (comitative), Annast (elative).
"""

import pytest

from boxlore.core.people.names_in_words import name_forms, stems, tokens_of

FORMS = name_forms(["Leida", "Ann", "M. Rourke", "Mrs Tom Rourke", "ljr", "..."])

STANDS = [
    "Leida", "küsi LEIDALT.", "Leidaga", "leida_rourke-1.jpg", "Ann", "(Ann)", "M. Rourke", "m rourke’s", "M. Rourkele",
    "Mrs. Tom Rourke came", "L.J.R. no, ljr", "Lei\u00adda", "Le\u200bida", "\u202eLe\u202cida", "M. Rour\u2060ke",
]  # fmt: skip
STANDS_NOT = [
    "", "...", "Anna", "Annast", "Anni", "Leid", "Leidadelegi", "Rourke", "M. R.", "Mrs Tom",
    "Mrs Tom and Rourke", "Tom Rourke M",
]  # fmt: skip


@pytest.mark.parametrize("words", STANDS)
def test_a_form_stands_in_the_words(words: str) -> None:
    assert FORMS.stand_in(tokens_of(words))


@pytest.mark.parametrize("words", STANDS_NOT)
def test_no_form_stands_in_other_words(words: str) -> None:
    """`Anna` would be Ann if endings were cut below four letters; `Leidadelegi` has more than an ending."""
    assert not FORMS.stand_in(tokens_of(words))


STEMS = [
    ("leidalt", ["leidalt", "leidal", "leida", "leid"]),
    ("leidadelegi", ["leidadelegi", "leidadeleg", "leidadele", "leidadel", "leidade"]),
    ("annas", ["annas", "anna"]),
    ("anna", ["anna"]),
    ("ann", ["ann"]),
    ("a", ["a"]),
]


@pytest.mark.parametrize(("word", "looked_up"), STEMS)
def test_up_to_four_letters_are_cut_off_while_four_remain(word: str, looked_up: list[str]) -> None:
    assert stems(word) == looked_up


def test_no_forms_stand_nowhere() -> None:
    assert not name_forms([]).stand_in(tokens_of("Leida"))
