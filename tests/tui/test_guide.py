"""The guide that F1 shows (our own contract)."""

import re

import pytest
from textual.binding import Binding, BindingType

from boxlore.tui import guide
from boxlore.tui.keys import OUTLINE_KEYS, PICTURE_KEYS
from boxlore.tui.screens.large_picture import LargeScreen
from boxlore.tui.screens.outlines import OutlineScreen

CAPS = {
    "pagedown": "PgDn", "pageup": "PgUp", "left": "←", "up": "↑", "right": "→", "down": "↓", "delete": "Del",
    "plus": "+", "minus": "-", "escape": "Esc", "shift+tab": "Shift+Tab",
}  # fmt: skip
"""What is printed on a key, where that is not what Textual calls it."""
EVERYWHERE = ("f1", "ctrl+q")
"""Keys that the guide tells of for all screens."""


@pytest.mark.parametrize(
    ("bindings", "told"), [(LargeScreen.BINDINGS, PICTURE_KEYS), (OutlineScreen.BINDINGS, OUTLINE_KEYS)]
)
def test_each_key_of_a_screen_is_told_of(bindings: list[BindingType], told: tuple[tuple[str, str], ...]) -> None:
    caps = " ".join(cap for cap, _ in told).casefold().split()
    words = " ".join(f"{cap} {what}" for cap, what in told).casefold()
    for binding in bindings:
        assert isinstance(binding, Binding)
        key = binding.key.split(",")[0]  # others of one binding do the same
        shifted = key.startswith("shift+") and key not in CAPS  # “with Shift in small steps”
        cap = CAPS.get(key.removeprefix("shift+") if shifted else key, key).casefold()
        if key not in EVERYWHERE and not (cap.isdigit() and cap != "0"):  # “1 … 9”
            assert cap in caps if len(cap) == 1 else cap in words, key


def test_what_a_key_does_stands_beside_it_on_a_narrow_screen() -> None:
    """80 columns, of which the page's padding and its scroll bar take six."""
    written = "".join(part if isinstance(part, str) else part[0] for part in guide.parts(PICTURE_KEYS))
    keys = [line for line in written.splitlines() if line.startswith("  ")]
    assert max(map(len, keys)) <= 74
    assert {line[2 + guide.CAP_WIDE] for line in keys} == {" "}
    assert re.search(r"\n {13}\S.*Enter alone names it\.\n", written)
