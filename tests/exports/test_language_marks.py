"""How the language and script of words are marked: ISO 639-2/B and ISO 15924, both as pycountry has them."""

import pycountry
from tests.every_row import every_row

from boxlore.exports.language_marks import SCRIPTS, language_marks

MARKS = [
    ("The boat", "en", {"lang": "eng", "script": "Latn"}),
    ("הסירה", "he", {"lang": "heb", "script": "Hebr"}),
    ("القارب, 1943", "ar", {"lang": "ara", "script": "Arab"}),
    ("Łódź", "pl", {"lang": "pol", "script": "Latn"}),
    ("Лодка", "ru", {"lang": "rus", "script": "Cyrl"}),
    ("lodka", "ru-Latn", {"lang": "rus", "script": "Latn"}),
    ("Das Boot", "de-CH", {"lang": "ger", "script": "Latn"}),
    ("家族の写真", "ja", {"lang": "jpn", "script": "Jpan"}),
    ("Лодка Mari", "ru", {"lang": "rus"}),
    ("1943", "he", {"lang": "heb"}),
    ("Paat", "vro", {"script": "Latn"}),
    ("The boat", "", {}),
]


@every_row(("words", "tag", "marks"), MARKS)
def test_words_are_marked_by_their_language_and_script(words: str, tag: str, marks: dict[str, str]) -> None:
    assert language_marks(words, tag) == marks


def test_every_script_has_its_code() -> None:
    for name, code in SCRIPTS.items():
        script = pycountry.scripts.get(alpha_4=code)
        assert script is not None and (name == "CJK" or name.lower() in script.name.lower())
