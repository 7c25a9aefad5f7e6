"""What all printed outputs share (ISO 216 A4 210 × 297 mm; letter 8.5 × 11 in)."""

from datetime import date

import pytest

from boxlore.core.crosswalk.captions import Style
from boxlore.core.wording.catalogue import Say
from boxlore.sheets.print_run import Printing, day_in_words, shared


@pytest.mark.parametrize(
    ("day", "language", "words"),
    [
        (date(2026, 11, 25), "en", "25 November 2026"), (date(2027, 1, 1), "de", "1. Januar 2027"),
        (date(2026, 11, 25), "es", "25 de noviembre de 2026"),
    ],
)  # fmt: skip
def test_days(day: date, language: str, words: str) -> None:
    assert day_in_words(Printing(title="x", printed_on=day, style=Style(say=Say(language)))) == words


def test_rooms_fit_the_paper() -> None:
    a4 = Printing(title="x", printed_on=date(2026, 11, 25))
    letter = Printing(title="x", printed_on=date(2026, 11, 25), paper="letter")
    assert a4.page == (210.0, 297.0)
    assert letter.page == pytest.approx((8.5 * 25.4, 11 * 25.4))
    assert a4.room() == 186.0 and a4.room(2) == 89.0
    assert 2 * letter.room(2) + 8.0 == pytest.approx(letter.room())


def test_a_language_that_is_none_falls_back() -> None:
    assert shared(Printing(title="x", printed_on=date(2026, 11, 25), language="?"))["language"] == "en"
    assert shared(Printing(title="x", printed_on=date(2026, 11, 25), language="et-EE"))["language"] == "et"
