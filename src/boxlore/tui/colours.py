"""The two themes of colours, `lamp` for dark rooms and `paper` for bright ones, and the style sheet of all screens.

No state is shown by colour alone; each has a word or a sign too.
"""

import os

from textual.theme import Theme

LAMP = Theme(
    name="lamp",
    dark=True,
    primary="#d9a44c",
    secondary="#7fb5a9",
    accent="#e2b667",
    warning="#e6a15a",
    error="#ef8570",
    success="#a5c487",
    foreground="#ede3d1",
    background="#16120f",
    surface="#1f1914",
    panel="#2d241c",
    variables={"faint": "#a89a86", "rule": "#4a3d30", "field": "#282019", "field-on": "#382c20"},
)

PAPER = Theme(
    name="paper",
    dark=False,
    primary="#7d3a2b",
    secondary="#22625c",
    accent="#8a4a1c",
    warning="#8a4a00",
    error="#a3201a",
    success="#3c6420",
    foreground="#2a221d",
    background="#f4eee1",
    surface="#faf6ec",
    panel="#e6dcc7",
    variables={"faint": "#6b6054", "rule": "#c4b69c", "field": "#fdfbf5", "field-on": "#fff3d6"},
)

SHEET = """
Screen { background: $background; color: $foreground; layout: vertical; }
ModalScreen { background: $background; align: center middle; }
#top, #bottom { width: 100%; height: 1; background: $panel; color: $foreground; padding: 0 1; }
#note { width: 100%; height: auto; max-height: 3; padding: 0 1; color: $secondary; }
#note.-bad { color: $error; text-style: bold; }
* { scrollbar-background: $surface; scrollbar-background-hover: $surface; scrollbar-background-active: $surface;
    scrollbar-color: $rule; scrollbar-color-hover: $primary; scrollbar-color-active: $primary;
    scrollbar-corner-color: $surface; }
.card { width: 96; max-width: 96%; height: auto; max-height: 100%; background: $surface; padding: 0 2;
        border: round $primary; }
.card .title { color: $primary; text-style: bold; margin-bottom: 1; }
.faint { color: $faint; }
"""


def theme_for_terminal() -> str:
    """The theme that suits the terminal: `paper` if COLORFGBG ends in 7 or 15 (a light background), else `lamp`.

    COLORFGBG is set by some terminals only (common practice, no source).
    """
    ground = os.environ.get("COLORFGBG", "").rpartition(";")[2]
    return "paper" if ground in ("7", "15") else "lamp"
