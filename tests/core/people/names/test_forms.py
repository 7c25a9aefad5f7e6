"""Forms of names, Soundex by the leaflet's own examples, and slips of spelling.

Soundex: US National Archives, “The Soundex Indexing System” (examples of General Information Leaflet 55).
"""

import pytest
from tests.every_row import every_row

from boxlore.core.people.names.forms import (
    close,
    full_forms,
    full_names_of,
    gendered_forms,
    initials,
    may_be_called,
    parts_of,
    pet_forms,
    short_rows,
    soundex,
)
from boxlore.core.people.names.short_forms_table import SHORT_FORMS

CODES = [
    ("Washington", "W252"), ("Lee", "L000"), ("Gutierrez", "G362"), ("Pfister", "P236"), ("Jackson", "J250"),
    ("Tymczak", "T522"), ("VanDeusen", "V532"), ("Ashcraft", "A261"),
]  # fmt: skip


@every_row(("name", "code"), CODES)
def test_soundex(name: str, code: str) -> None:
    assert soundex(name) == code


def test_soundex_of_accents_and_other_scripts() -> None:
    assert soundex("Mägi") == soundex("Magi") == "M200"
    assert soundex("Тамм") == soundex("") == ""


ALIKE = [
    ("Peggy", "Margaret", True), ("Dan", "Danny", True), ("M.", "Mia", True), ("Mia", "Mia", True),
    ("Catherine", "Catharine", True), ("Ruth", "Anna", False), ("", "Anna", False), ("M", "Anna", False),
    ("Juhan", "John", True), ("Tom", "Tim", False),
]  # fmt: skip


@every_row(("one", "other", "alike"), ALIKE)
def test_given_names_that_can_be_one_persons(one: str, other: str, alike: bool) -> None:
    assert may_be_called(one, other) is may_be_called(other, one) is alike


SLIPS = [
    ("rourke", "roorke", True), ("rourke", "rouke", True), ("rourke", "rourkes", True), ("rourke", "roruke", True),
    ("rourke", "rurkey", False), ("tamm", "tam", False), ("tamm", "tamme", True), ("rourke", "rourke", True),
]  # fmt: skip


@every_row(("one", "other", "is_close"), SLIPS)
def test_slips(one: str, other: str, is_close: bool) -> None:
    assert close(one, other) is close(other, one) is is_close


def test_full_forms() -> None:
    words = {"given": ["Leida Johanna"], "born_as": ["Tamm"], "married_as": ["Rourke"], "nickname": ["Leidi"],
             "honorific": ["Mrs"], "patronymic": ["Arvovna"]}  # fmt: skip
    assert {
        "Leida Tamm",
        "L. J. Rourke",
        "Tamm, Leida",
        "Leidi Rourke",
        "Mrs Rourke",
        "Leida Johanna Arvovna Tamm",
    } <= set(full_forms(words))
    assert initials("Anne-Marie") == "A. M."


def test_what_people_say_for_a_given_name() -> None:
    """The table of short forms, from memory: a full form in any spelling has all of its row, a short one the full."""
    assert {"kate", "kitty", "catherine"} <= pet_forms("katherine")
    assert not pet_forms("kitty") and "dan" in pet_forms("daniel") and not pet_forms("leida")
    assert full_names_of("kitty") == {"catherine"} and not full_names_of("catherine") and not full_names_of("leida")


def test_the_table_of_pet_forms_is_folded_and_without_doubles() -> None:
    for row in SHORT_FORMS:
        assert len(row) > 1 and len(set(row)) == len(row) and all(form == "".join(parts_of(form)) for form in row)
    assert short_rows("peggy") & short_rows("margaret") and not short_rows("nobody")


GENDERED = [
    ("ivanov", {"ivanova"}), ("ivanova", {"ivanov"}), ("kowalski", {"kowalska"}), ("петрова", {"петров"}),
    ("kazlauskas", {"kazlauskiene", "kazlauskaite"}), ("novak", {"novakova"}), ("tamm", set()),
]  # fmt: skip
"""Family names as women and men bear them in Russian, Polish, Lithuanian and Czech (common practice, from memory)."""


@pytest.mark.parametrize(("family", "also"), GENDERED)
def test_a_family_name_of_women_and_of_men(family: str, also: set[str]) -> None:
    assert also | {family} <= gendered_forms(family)
