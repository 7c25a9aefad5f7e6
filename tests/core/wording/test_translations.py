"""Our own words are whole in every language (PO files: GNU gettext manual, 3; CLDR by babel)."""

import ast
import re
import string
from pathlib import Path

import pytest
from tests.architecture.parsed import FILES, SRC, nodes
from tests.made_tables import check_table

from boxlore.core.wording.catalogue import LANGUAGES, Say
from boxlore.core.wording.translations import TRANSLATIONS
from boxlore.sheets.web_pages_words import SAID_BY_SCRIPT

numbers = pytest.importorskip("babel.numbers", reason="babel is needed for making the table only (extra `dev`)")
make_translations = pytest.importorskip("tests.core.wording.make_translations")


def places(words: str) -> set[str]:
    """The names of the values that stand in a message."""
    return {name for _, name, _, _ in string.Formatter().parse(words) if name}


def test_the_modules_are_what_the_script_makes() -> None:
    check_table(Path(make_translations.__file__), "babel has another CLDR")
    assert make_translations.COUNTRIES.read_text(encoding="utf-8") == make_translations.countries()


@pytest.mark.parametrize("language", TRANSLATIONS)
def test_every_message_is_translated_and_holds_its_values(language: str) -> None:
    said = make_translations.read(language)
    for message in make_translations.collected():
        if not message.id:
            continue
        ids = [message.id] if isinstance(message.id, str) else list(message.id)
        kept = said.get(message.id if isinstance(message.id, str) else message.id[0])
        assert kept is not None and "fuzzy" not in kept.flags, f"{ids[0]}: run make_translations.py and translate it"
        strings = [kept.string] if isinstance(kept.string, str) else list(kept.string)
        assert len(strings) == len(ids) and all(strings), f"{language}: {ids[0]} is not translated"
        may_hold = set().union(*map(places, ids)) | ({"number"} if "{counted}" in ids[0] else set())
        for words in strings:
            assert places(words) <= may_hold, (language, words)
            assert len(places(words)) == len(places(ids[0])), (language, words)
            assert words == words.strip() and "  " not in words, (language, words)
            assert words[-1:] == ids[0][-1:] or ids[0][-1:] not in ".:?…", (language, words)


def test_a_message_is_written_where_it_is_said() -> None:
    """Words that are put together in the call would be in no catalogue: they are said in English for ever."""
    written = {message if isinstance(message, str) else message[0] for _, message in make_translations.messages()}
    for path in FILES:
        if path.relative_to(SRC).parts[0] not in ("core", "sheets"):
            continue
        for node in nodes(path):
            if isinstance(node, ast.Call) and isinstance(node.func, ast.Name | ast.Attribute):
                name = node.func.id if isinstance(node.func, ast.Name) else node.func.attr
                message = node.args[-1 if name == "to_say" else 0] if node.args and name in ("say", "to_say") else None
                assert not isinstance(message, ast.JoinedStr | ast.BinOp), f"{path.name}:{node.lineno}"
    assert {"Told by {name}", "Close", "Show the picture", "Beside it is its back."} <= written


def test_the_script_of_the_pages_finds_all_that_it_says() -> None:
    script = (SRC / "sheets" / "templates" / "pages" / "pages.js").read_text(encoding="utf-8")
    assert set(re.findall(r'say\("([^"]*)"', script)) == set(SAID_BY_SCRIPT)
    assert all(message in TRANSLATIONS[language] for language in TRANSLATIONS for message in SAID_BY_SCRIPT)


@pytest.mark.parametrize("language", LANGUAGES)
def test_numbers_are_babels(language: str) -> None:
    """The narrow blank of French as a wide one; four figures in a language that groups from five on are CLDR's
    (minimumGroupingDigits), which babel leaves out."""
    for number in (0, 1, 999, 12345, 1234567, *(() if language in make_translations.LEAST else (1234,))):
        theirs = numbers.format_decimal(number, locale={"en": "en_GB"}.get(language, language)).replace(
            "\u202f", "\u00a0"
        )
        assert Say(language).number(number) == theirs
