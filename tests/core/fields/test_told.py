"""A question mark alone means asked, not known, in every field; marks alone say nothing (rules of our own)."""

import pytest
from tests.every_row import every_row

from boxlore.core.errors import WrongUse
from boxlore.core.fields.table import FIELDS
from boxlore.core.fields.told import as_told, is_untold
from boxlore.core.statements import Sure

TOLD = [name for name, field in FIELDS.items() if field.told]


@every_row("name", TOLD)
@every_row("words", ["?", " ? ", "??", "\uff1f", "\u061f"])
def test_a_question_mark_alone_is_asked_and_not_known(name: str, words: str) -> None:
    assert as_told(FIELDS[name], words, Sure.GUESS) == ("", Sure.NOT_KNOWN)
    assert not is_untold(FIELDS[name], words)


@every_row("name", [name for name in TOLD if name != "inscription"])
@every_row("words", [",", "...", ";", "-", "—", "?!", "“ ”", "+ /", ". ."])
def test_marks_alone_are_refused_with_what_to_write(name: str, words: str) -> None:
    with pytest.raises(WrongUse, match=r"says nothing\. Write it in words, or \? alone for asked, not known\."):
        as_told(FIELDS[name], words, Sure.SURE)
    assert is_untold(FIELDS[name], words)


@pytest.mark.parametrize("words", ["Anna?", "木", "👵", "♥", "J.", "Anna 2"], ids=ascii)
@pytest.mark.parametrize("name", ["person", "story"])
def test_words_stay_as_they_were_said(name: str, words: str) -> None:
    assert as_told(FIELDS[name], f" {words}\n", Sure.LIKELY) == (words, Sure.LIKELY)
    assert not is_untold(FIELDS[name], words)


@every_row("words", ["1931", "-5", "19 46", "٣"])
def test_figures_alone_are_nobodys_name(words: str) -> None:
    assert as_told(FIELDS["story"], words, Sure.SURE) == (words, Sure.SURE)
    for name in ("person", "photographer", "mother"):
        with pytest.raises(WrongUse, match=r"is nobody’s name\. Write a name, or \? alone for asked, not known\."):
            as_told(FIELDS[name], words, Sure.SURE)


def test_on_a_print_marks_may_stand_alone() -> None:
    assert as_told(FIELDS["inscription"], "– –", Sure.SURE) == ("– –", Sure.SURE)
    assert not is_untold(FIELDS["inscription"], "– –") and is_untold(FIELDS["inscription"], "  ")


def test_what_is_not_known_may_have_words_or_none_and_nothing_else_may_be_empty() -> None:
    assert as_told(FIELDS["date"], "", Sure.NOT_KNOWN) == ("", Sure.NOT_KNOWN)
    assert as_told(FIELDS["date"], "she would not say", Sure.NOT_KNOWN) == ("she would not say", Sure.NOT_KNOWN)
    with pytest.raises(WrongUse, match="There are no words to keep"):
        as_told(FIELDS["date"], " ", Sure.SURE)


def test_how_a_thing_is_kept_is_asked_of_nobody() -> None:
    with pytest.raises(WrongUse, match="Kind: that is not asked of anybody"):
        as_told(FIELDS["kind"], "?", Sure.SURE)
