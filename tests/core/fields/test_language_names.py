"""Names of languages, as Unicode CLDR has them; each tag is the one of ISO 639-1 in pycountry's list."""

from pathlib import Path

import pycountry
import pytest
from tests.every_row import every_row
from tests.made_tables import check_table

from boxlore.core.fields.language_names import ENGLISH_NAMES, language_name, language_named

NAMES = [
    ("English", "en"), ("eesti", "et"), ("Deutsch", "de"), ("te reo Māori", "mi"), ("Māori", "mi"), ("français", "fr"),
    ("en", "en"), (" de-AT ", "de-AT"), ("Welsh", "cy"), ("Cymraeg", "cy"), ("русский", "ru"), ("Ukrainian", "uk"),
    ("", ""), ("Atlantean", ""), ("English please", ""),
]  # fmt: skip


@every_row(("words", "tag"), NAMES)
def test_a_language_by_its_name(words: str, tag: str) -> None:
    assert language_named(words) == tag


def test_what_a_language_is_called_is_its_name_in_the_standard_too() -> None:
    named = {tag: language_named(name) for tag, name in ENGLISH_NAMES.items()}
    assert named == {tag: tag for tag in ENGLISH_NAMES}
    assert (language_name("et"), language_name("de-AT")) == ("Estonian", "de-AT")


def test_the_names_of_the_standard_are_no_other_language() -> None:
    named = {row.alpha_2: language_named(row.name) for row in pycountry.languages if hasattr(row, "alpha_2")}
    assert {code: tag for code, tag in named.items() if tag not in ("", code)} == {}
    assert sum(tag == code for code, tag in named.items()) > 140


def test_the_table_is_what_the_script_makes() -> None:
    pytest.importorskip("babel", reason="babel is needed for making the table only (extra `dev`)")
    check_table(Path(__file__).parent / "make_language_names.py", "babel has another CLDR")
