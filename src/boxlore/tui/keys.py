"""All keys as tables: what each does, what the bottom line calls it, and how the guide explains it.

Keys follow the habits of terminals. All are priority bindings: Textual handles other bindings later than the keys
typed after them, and in fast typing such a key would act on the next photograph.
"""

from dataclasses import dataclass

from textual.binding import Binding, BindingType


@dataclass(frozen=True, slots=True)
class Key:
    """One key of a screen.

    `keys` are Textual's names of it, joined by commas; `action` is the name of the `action_*` method; `cap` is what is
    printed on the key; `short` is its name in the bottom line ('' leaves it out); `help` is its line in the guide.
    """

    keys: str
    action: str
    cap: str
    short: str
    help: str


ITEM_KEYS: tuple[Key, ...] = (
    Key("f1", "guide", "F1", "Guide", "This guide."),
    Key("pagedown", "next_item", "PgDn", "Next", "The next photograph. What you typed is kept."),
    Key("pageup", "item_before", "PgUp", "Before", "The photograph before."),
    Key(
        "ctrl+n",
        "next_open",
        "Ctrl+N",
        "",
        "The next photograph of which who, when, where or the occasion is not told.",
    ),
    Key(
        "escape,f10",
        "menu",
        "Esc",
        "Menu",
        "Everything else: take in, sit, put right, print, hand on, keep safe. (F10 too.)",
    ),
    Key(
        "f2",
        "picture",
        "F2",
        "Picture",
        "The picture large: its back, closer, and markers to set, move and take away; PgDn goes on in it.",
    ),
    Key("f3", "find", "F3", "List", "All photographs: find words, a number or a place in a box."),
    Key("f4", "said", "F4", "Who says", "Everything told of this photograph, by whom; correct, restrict or erase it."),
    Key("f5", "not_known", "F5", "Not known", "You asked, and the teller does not know."),
    Key(
        "f6",
        "audience",
        "F6",
        "Fewer see",
        "Fewer may see this answer: the family only, then the keeper only. F4 lets more see it again.",
    ),
    Key("f7", "sure", "F7", "How sure", "How sure the teller is: sure, likely, guess."),
    Key("f8", "same", "F8", "Same", "Same people, same day or same place as the photograph before."),
    Key("f9", "ask_later", "F9", "Ask later", "Note what is to be asked here, or whom: “What to ask” has it."),
    Key("ctrl+l", "language", "Ctrl+L", "", "The language of this answer, and from now on."),
    Key("ctrl+p", "which", "Ctrl+P", "", "Which date, place or person is meant; how a name is read."),
    Key("tab", "tab", "Tab", "", "Take what is suggested; else go to the next question."),
    Key("shift+tab", "prompt_before", "Shift+Tab", "", "Back to the question before."),
    Key(
        "enter,ctrl+j",
        "enter",
        "Enter",
        "",
        "Keep this and go on. In the story, and in what is written on it: a new line; Tab goes on.",
    ),
    Key("up", "up", "↑", "", "The line, suggestion or question above."),
    Key("down", "down", "↓", "", "The line, suggestion or question below."),
    Key("ctrl+z", "undo", "Ctrl+Z", "", "Take back the last thing done, as often as you like."),
    Key("ctrl+y", "redo", "Ctrl+Y", "", "Do again what was taken back."),
    Key("ctrl+s", "save", "Ctrl+S", "", "Keep it now. (It is kept with every key anyway.)"),
    Key("ctrl+q", "leave", "Ctrl+Q", "Leave", "Leave. Nothing is lost."),
)

ROW_KEYS: tuple[Key, ...] = (
    Key("f1", "guide", "F1", "Guide", "This guide."),
    Key("enter", "take", "Enter", "Open", "Open the row."),
    Key("up", "up", "↑", "", "One up."),
    Key("down", "down", "↓", "", "One down."),
    Key("pageup", "page_up", "PgUp", "", "A page up."),
    Key("pagedown", "page_down", "PgDn", "", "A page down."),
    Key("ctrl+home", "first", "Ctrl+Home", "", "The first."),
    Key("ctrl+end", "last", "Ctrl+End", "", "The last."),
    Key(
        "space",
        "space",
        "Space",
        "Pick",
        "Pick the row out, or put it back. While you type words to find it is a space; then ↓ first, or Ins.",
    ),
    Key("insert,ctrl+t", "pick", "Ins", "", "The same, at any time. (Ctrl+T too.)"),
    Key("shift+down", "pick_on(1)", "Shift+↓", "", "Pick this row and the next."),
    Key("shift+up", "pick_on(-1)", "Shift+↑", "", "Pick this row and the one above."),
    Key("ctrl+r", "range", "Ctrl+R", "", "Pick all from the row picked last to this one."),
    Key(
        "f8",
        "same",
        "F8",
        "Of all picked",
        "One thing of all that are picked: as the photograph that is out, or in words.",
    ),
    Key("ctrl+z", "undo", "Ctrl+Z", "", "Take back the last thing done."),
    Key(
        "tab",
        "filter",
        "Tab",
        "All / bare / begun / told / to ask",
        "All, or those of one kind, in turn.",
    ),
    Key("escape,f3", "back", "Esc", "Back", "Back to the photograph."),
    Key("ctrl+q", "leave", "Ctrl+Q", "Leave", "Leave. Nothing is lost."),
)


PICTURE_KEYS: tuple[tuple[str, str], ...] = (
    ("F2", "The other side, or the next scan. (Space and Tab too.)"),
    ("PgDn PgUp", "The next photograph, or the one before, as large."),
    ("← ↑ → ↓", "A cross, and where it goes; Enter sets a marker there, whose name is asked then."),
    ("1 … 9", "To the marker of that number, which is in hand then: arrows and Enter move it, Enter alone names it."),
    ("Del", "Take away the marker in hand."),
    ("0", "The whole picture; let go of the marker in hand."),
    ("+ -", "Closer, and back."),
    ("h", "Propose a marker on each face (with the extra “see”): Enter sets them, a digit leaves one out."),
    ("r", "Turn it by a quarter to the right, in all that is made of it; the file stays as it is."),
    ("a", "Note that it was coloured or retouched; a again: that it was not."),
    ("Ctrl+Z", "Take back the last thing done."),
    ("Esc", "Back to the questions."),
)
"""The keys of the large picture, as (what is printed on them, what they do)."""

OUTLINE_KEYS: tuple[tuple[str, str], ...] = (
    ("Tab", "Take a corner in hand, then the next one. (Shift+Tab the one before.)"),
    ("1 … 9", "Take a whole outline in hand."),
    ("← ↑ → ↓", "Move what is in hand; with Shift in small steps. A corner may be dragged with the mouse, too."),
    ("0", "Let go."),
    ("a", "Another outline."),
    ("s", "Make two of the outline in hand, where two prints touch."),
    ("Del", "Take away the outline in hand."),
    ("+ -", "Closer, and back."),
    ("PgDn PgUp", "The next picture of these, or the one before."),
    ("Enter", "Take all of them: a photograph is made of each outline."),
    ("Ctrl+Z", "A step back."),
    ("Esc", "Leave without taking any."),
)
"""The keys of a picture with the outlines of its prints."""


def bindings(keys: tuple[Key, ...]) -> list[BindingType]:
    """A table of keys as Textual's bindings: all with priority, none shown by Textual itself."""
    return [Binding(key.keys, key.action, key.help, show=False, priority=True) for key in keys]


LIST_MOVES = (("up", "move(-1)"), ("down", "move(1)"), ("pageup", "move(-10)"), ("pagedown", "move(10)"))
"""How the cursor of a list of rows moves, as (keys, action)."""


def bound(*pairs: tuple[str, str]) -> list[BindingType]:
    """(keys, action) pairs as Textual's bindings, all with priority. A letter is the same with Shift or Caps Lock, but
    where the capital has an action of its own."""
    own = {name for keys, _ in pairs for name in keys.split(",")}

    def in_both_cases(keys: str) -> str:
        names = keys.split(",")
        capitals = (name.upper() for name in names if len(name) == 1 and name.islower())
        return ",".join([*names, *(capital for capital in capitals if capital not in own)])

    return [Binding(in_both_cases(keys), action, show=False, priority=True) for keys, action in pairs]
