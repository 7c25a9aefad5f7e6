"""Given names in the dative (school grammars of the languages, from memory)."""

from tests.every_row import every_row

from boxlore.core.people.names.dative import dative, told_in_dative

NAMES = [
    ("вера", "ru", "вере"),
    ("мария", "ru", "марии"),
    ("андрей", "ru", "андрею"),
    ("дмитрий", "ru", "дмитрию"),
    ("любовь", "ru", "любови"),
    ("игорь", "ru", "игорю"),
    ("иван", "ru", "ивану"),
    ("катя", "ru", "кате"),
    ("zofia", "pl", "zofii"),
    ("zosia", "pl", "zosi"),
    ("jadwiga", "pl", "jadwidze"),
    ("anna", "pl", "annie"),
    ("jan", "pl", "janowi"),
    ("marie", "cs", "marii"),
    ("mařenka", "cs", "mařence"),
    ("věra", "cs", "věře"),
    ("jan", "cs", "janovi"),
    ("anna", "lv", "annai"),
    ("jānis", "lv", "jānim"),
    ("andrejs", "lv", "andrejam"),
    ("ona", "lt", "onai"),
    ("jonas", "lt", "jonui"),
    ("leida", "et", ""),
    ("anna maria", "pl", ""),
    ("e", "lv", ""),
    ("", "pl", ""),
    ("iivo", "lt", ""),
]


@every_row(("name", "language", "form"), NAMES)
def test_dative(name: str, language: str, form: str) -> None:
    assert dative(name, language) == form


@every_row(("name", "language", "form"), [row for row in NAMES if row[2]])
def test_what_a_dative_may_be_of(name: str, language: str, form: str) -> None:
    assert name in told_in_dative(form, language)


def test_no_dative() -> None:
    assert told_in_dative("zosi", "et") == set() and told_in_dative("i", "pl") == set()
