"""What is said, by language.

Plurals and lists: CLDR; Spanish e and u: Ortografía de la lengua española (2010), French d’: Grevisse, Le bon usage
(both from memory).
"""

from tests.every_row import every_row

from boxlore.core.wording.catalogue import ENGLISH, Say, say_in

SAID = [
    ("en", "Told by {name}", "Ants", "Told by Ants"),
    ("et", "Told by {name}", "Ants", "Jutustanud Ants"),
    ("de", "Told by {name}", "{Ants}", "Erzählt von {Ants}"),
    ("fr", "Told by {name}", "Ants", "Raconté par Ants"),
    ("en", "no message of ours: {name}", "x", "no message of ours: x"),
    ("de", "no message of ours: {name}", "x", "no message of ours: x"),
]


@every_row(("language", "message", "name", "wanted"), SAID)
def test_messages(language: str, message: str, name: str, wanted: str) -> None:
    assert Say(language)(message, name=name) == wanted


COUNTED = [
    ("en", 0, "0 photographs"), ("en", 1, "1 photograph"), ("en", 1234, "1,234 photographs"),
    ("et", 1, "1 foto"), ("et", 0, "0 fotot"), ("et", 1234, "1234 fotot"), ("et", 12345, "12\u00a0345 fotot"),
    ("de", 1, "1 Fotografie"), ("de", 1234, "1.234 Fotografien"),
    ("es", 0, "0 fotografías"), ("es", 1, "1 fotografía"), ("es", 1234, "1234 fotografías"),
    ("fr", 0, "0 photographie"), ("fr", 1, "1 photographie"), ("fr", 2, "2 photographies"),
]  # fmt: skip


@every_row(("language", "count", "wanted"), COUNTED)
def test_counts(language: str, count: int, wanted: str) -> None:
    assert Say(language).counted(count, "{count} photograph", "{count} photographs") == wanted


LISTED = [
    ("en", "", ""), ("en", "A", "A"), ("en", "A|B", "A and B"), ("en", "A|B|C", "A, B and C"),
    ("en", "A, b|C", "A, b; and C"), ("de", "A, b|C|D", "A, b; C und D"), ("fr", "A, b|C", "A, b\u00a0; et C"),
    ("et", "A|B|C", "A, B ja C"), ("de", "A|B", "A und B"), ("fr", "A|B", "A et B"),
    ("es", "Ana|Bea", "Ana y Bea"), ("es", "Ana|Inés", "Ana e Inés"), ("es", "Ana|Hilda", "Ana e Hilda"),
    ("es", "Ana|\u2068Isa\u2069", "Ana e \u2068Isa\u2069"), ("es", "nieve|hielo", "nieve y hielo"),
    ("es", "Ana|Yolanda", "Ana y Yolanda"), ("es", "Ana|Ía", "Ana y Ía"),
]  # fmt: skip


@every_row(("language", "names", "wanted"), LISTED)
def test_lists(language: str, names: str, wanted: str) -> None:
    assert Say(language).listed(names.split("|") if names else []) == wanted


EITHER = [("en", "", ""), ("en", "A|B|C", "A or B or C"), ("et", "A|B", "A või B"), ("es", "Ana|Olga", "Ana u Olga"),
          ("es", "Ana|Hortensia", "Ana u Hortensia"), ("es", "1931|1932", "1931 o 1932")]  # fmt: skip


@every_row(("language", "choices", "wanted"), EITHER)
def test_alternatives(language: str, choices: str, wanted: str) -> None:
    assert Say(language).either(choices.split("|") if choices else []) == wanted


def test_french_elides_before_a_vowel_and_never_in_what_was_told() -> None:
    french = Say("fr")
    assert french("{nature} of {names}", nature="photographie", names="Anna") == "photographie d’Anna"
    assert french("{nature} of {names}", nature="photographie", names="\u2068Émile\u2069").endswith(
        "d’\u2068Émile\u2069"
    )
    assert french("{nature} of {names}", nature="photographie", names="Ruth") == "photographie de Ruth"
    assert french("Told by {name}", name="le fils de Anna") == "Raconté par le fils de Anna"


OF = [("Leida", "Leida vanaema"), ("\u2068Juhan Tamm\u2069", "vanaema isikule \u2068Juhan Tamm\u2069"),
      ("Rourke", "vanaema isikule Rourke"), ("Leida ja Aino", "Leida ja Aino vanaema"),
      ("Juhan ja Aino", "vanaema isikule Juhan ja Aino")]  # fmt: skip


@every_row(("names", "wanted"), OF)
def test_an_estonian_name_that_ends_in_a_vowel_is_its_own_genitive(names: str, wanted: str) -> None:
    assert Say("et")("{kin} of {names}", kin="vanaema", names=names) == wanted


def test_french_sets_a_space_before_a_semicolon() -> None:
    assert [Say(language).apart(["a", "b"]) for language in ("en", "fr")] == ["a; b", "a\u00a0; b"]


def test_countries_and_languages() -> None:
    assert [Say(language).country("EE", "Estonia") for language in ("en", "et", "de")] == [
        "Estonia",
        "Eesti",
        "Estland",
    ]
    assert Say("fr").country("", "Livonia") == "Livonia"
    assert [say_in(tag).language for tag in ("et-EE", "DE", "fi", "")] == ["et", "de", "en", "en"]
    assert say_in("tlh") == ENGLISH
