"""What a terminal answers, told apart from keys.

Answers as their standards write them (XTerm Control Sequences, patch 379; kitty's “Terminal graphics protocol”), and as
xterm 379 and kitty 0.26 gave them here.
"""

import pytest
from tests.every_row import every_row
from textual.events import Key

from boxlore.tasks.sitting.sharp_picture import Graphics, Language
from boxlore.tui.terminal_answers import Answers
from boxlore.tui.terminal_driver import TypedKeys

XTERM = "\x1bP>|XTerm(379)\x1b\\\x1b[?1;3;0S\x1b[?1;0;256S\x1b[?2;0;1000;1000S\x1b[6;16;8t\x1b[?63;1;2;4;6;9;15;22c"
KITTY = "\x1b_Gi=31;OK\x1b\\\x1bP>|kitty(0.26.5)\x1b\\\x1b[6;18;9t\x1b[?62;c"
ITERM = "\x1bP>|iTerm2 3.5.0\x1b\\\x1b[6;16;8t\x1b[?64;1;2;4;6;17;18;21;22c"  # from memory
TMUX = "\x1bP>|tmux 3.3a\x1b\\\x1b[?1;2c"
FEW = "\x1b[?1;0;16S\x1b[6;16;8t\x1b[?63;4c"

TYPED_AHEAD = [
    ("\x1b5", ["escape", "5"]),
    ("\x1b=", ["escape", "equals_sign"]),
    ("\x1bt", ["escape", "t"]),
    ("\x1bT", ["escape", "T"]),
    ("\x1b41", ["escape", "4", "1"]),
    ("a\x1bõ", ["a", "escape", "õ"]),
    ("\x1b[6~5", ["pagedown", "5"]),
    ("\x1b\x7f", ["ctrl+w"]),
    ("\x1b", ["escape"]),
]
"""What comes at once, and its keys (xterm's sequences; Esc and a letter is also what Alt and the letter send)."""


@every_row(("sent", "keys"), TYPED_AHEAD)
def test_esc_and_a_letter_that_come_together_are_two_keys(sent: str, keys: list[str]) -> None:
    parser = TypedKeys()
    assert [event.key for event in [*parser.feed(sent), *parser.feed("")] if isinstance(event, Key)] == keys


CASES = [
    (XTERM, Graphics(Language.SIXEL, (8, 16), 256, (1000, 1000))),
    (KITTY, Graphics(Language.KITTY, (9, 18))),
    (ITERM, Graphics(Language.ITERM, (8, 16))),
    (TMUX, None),
    (FEW, None),
    ("\x1b_Gi=31;EINVAL\x1b\\\x1b[6;16;8t\x1b[?62c", None),
    ("\x1b[?1;3S\x1b[?2;3S\x1b[6;16;8t\x1b[?62;4c", Graphics(Language.SIXEL, (8, 16))),
    ("\x1b[?62;4c", None),  # it does not say how large a cell is
]


@pytest.mark.parametrize(("said", "can"), CASES)
def test_answers_are_no_keys_wherever_they_are_cut(said: str, can: Graphics | None) -> None:
    for cut in range(len(said) + 1):
        answers = Answers()
        typed = [answers.taken_out("ab" + said[:cut]), answers.taken_out(said[cut:] + "cd")]
        assert "".join(typed) == "abcd" and answers.over and answers.graphics() == can


def test_the_size_that_the_system_knows_is_newer_than_the_answer() -> None:
    answers = Answers()
    answers.taken_out(KITTY)
    assert answers.graphics((12, 24)) == Graphics(Language.KITTY, (12, 24))


KEYS = ["\x1b", "\x1b[A", "\x1bOP", "\x1b[6~", "\x1b[21~", "\x1bP", "\x1b_", "\x1b[200~Tamm\x1b[201~", "\x1b[<0;10;5M"]


@pytest.mark.parametrize("key", KEYS)
def test_keys_pass_while_answers_are_awaited(key: str) -> None:
    answers = Answers()
    assert answers.taken_out(key) + answers.given_back() == key
    assert answers.taken_out("x" + XTERM) == "x"
    assert answers.taken_out(key) == key, "at once, when all is answered"


def test_an_answer_half_come_is_never_given_back_as_keys() -> None:
    answers = Answers()
    assert answers.taken_out("\x1b[?6") + answers.given_back() + answers.taken_out("2;4c") == ""
    assert answers.sixel
