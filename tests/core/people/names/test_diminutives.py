"""Pet forms made by an ending (school grammars of the languages, from memory)."""

from tests.every_row import every_row

from boxlore.core.people.names.diminutives import names_behind

PET_FORMS = [
    ("верочка", "ru", "вера", True),
    ("carmencita", "es", "carmen", True),
    ("onutė", "lt", "ona", True),
    ("rosina", "it", "rosa", True),
    ("tommy", "en", "tom", True),
    ("mařenka", "cs", "marie", True),
    ("zosia", "pl", "zofia", True),
    ("rosina", "fi", "rosa", False),
    ("greta", "en", "peggy", False),  # both of Margaret, and nobody is called both
    ("ita", "es", "ia", False),
]


@every_row(("form", "language", "name", "may_be"), PET_FORMS)
def test_names_behind_a_pet_form(form: str, language: str, name: str, may_be: bool) -> None:
    assert (name in names_behind(form, language)) is may_be
