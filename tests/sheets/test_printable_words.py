"""Words made safe for type (Unicode 15; UAX #9 for isolates)."""

import pytest

from boxlore.core.fields.letters import FIRST_STRONG, POP
from boxlore.sheets.printable_words import (
    clean,
    isolated,
    language_of,
    paragraphs,
    plain_paragraphs,
    printable,
)

CLEANED = [
    ("a\tb\nc", "a b c"),
    ("\ufeffa\x00b\x9fc", "abc"),
    ("left\u202eright\u202c", "leftright"),
    ("\u2066x\u2069", "x"),
    ("\u2068a\u2069 b \u2068c", "\u2068a\u2069 b c"),
    ("\u2069a\u2068\u2068b\u2069", "a\u2068b\u2069"),
    ("  a   b ", "a b"),
    ("Ōtākou 學", "Ōtākou 學"),
    ("\ud800x", "x"),
    ("\ufffex\ufdd0\U0002ffff", "x"),  # The Unicode Standard, 23.7
    ("\u0378x", "\u0378x"),  # given to no letter yet
    ("", ""),
]


@pytest.mark.parametrize(("words", "wanted"), CLEANED)
def test_what_is_taken_out(words: str, wanted: str) -> None:
    assert clean(words) == wanted


def test_a_very_long_word_may_break() -> None:
    assert printable("a" * 24) == "a" * 24
    name = "Hohenlohe-Schillingsfürst-Whitcombe"
    assert printable(name) == name
    assert printable("urn:uuid:01a22679-e6cf-705a") == "urn:uuid:01a22679-e6cf-\u200b705a"
    assert printable("a" * 30) == "a" * 12 + "\u200b" + "a" * 12 + "\u200b" + "a" * 6


def test_words_from_right_to_left_stand_in_an_isolate() -> None:
    assert isolated("שלום") == f"{FIRST_STRONG}שלום{POP}"
    assert isolated("Reval") == "Reval"
    assert isolated(" \n ") == ""


def test_paragraphs() -> None:
    assert paragraphs("one\n\n two \nthree\n\n") == ["one", "two", "three"]
    assert plain_paragraphs("one\n\n\x07\n\ntwo") == ["one", "two"]


@pytest.mark.parametrize(
    ("tag", "wanted"), [("en", "en"), ("mi-NZ", "mi"), ("EST", "est"), ("", ""), ("x<y", ""), ("english", "")]
)
def test_languages(tag: str, wanted: str) -> None:
    assert language_of(tag) == wanted
