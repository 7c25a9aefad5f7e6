"""No words of a person are ever taken as markup: every widget is walked on every screen.

Rule of our own: widgets that draw text refuse markup; the two that Textual puts on every screen are empty here.
"""

import ast
from collections.abc import AsyncIterator, Callable, Iterator
from contextlib import asynccontextmanager
from pathlib import Path

import pytest
from tests.drawn import some
from tests.tui.conftest import hands_on
from textual.widget import Widget
from textual.widgets import Static

from boxlore.core.statements import Kind, Subject
from boxlore.tasks.collection.opening import Collection, open_collection
from boxlore.tasks.telling.statements import Teller, Telling
from boxlore.tui.app import Boxlore

HOSTILE = "[/b] [bold]x[/] [@click=app.bell]y"
TUI = Path(__file__).parents[2] / "src" / "boxlore" / "tui"

KEYS: dict[str, tuple[str, ...]] = {
    "item": (),
    "completion": ("tab", "left_square_bracket"),
    "picture": ("f2",),
    "list": ("f3",),
    "who says": ("f4",),
    "what can be done": ("f4", "enter"),
    "history": ("f4", "enter", "3"),
    "strike": ("f4", "enter", "4"),
    "guide": ("f1",),
    "menu": ("escape",),
    "a form": ("escape", "1", "1"),
    "a long task": ("escape", "6", "2"),
    "ask later": ("f9",),
    "this sitting": ("escape", "2", "1"),
    "the agreement": ("escape", "2", "1", "1"),
    "language": ("ctrl+l",),
    "relations": ("escape", "7", "9"),
    "picked": ("f3", "insert", "insert", "f8"),
}


@pytest.fixture
def collection(folder: Path) -> Iterator[Collection]:
    """Every field of the first item holds hostile words."""
    with open_collection(folder) as collection:
        item = Subject(Kind.ITEM, collection.store.item_by_number("TRA-0001") or "")
        teller = Teller(collection)
        for name in ("story", "person", "date", "place", "occasion", "inscription", "photographer", "care", "title"):
            teller.tell(item, name, HOSTILE, Telling())
            teller.tell(item, name, HOSTILE + "2", Telling())
        yield collection


def walk(widget: Widget) -> Iterator[Widget]:
    for child in widget.walk_children(with_self=True):
        assert isinstance(child, Widget)
        yield child


@asynccontextmanager
async def shown(collection: Collection, keys: tuple[str, ...]) -> AsyncIterator[Boxlore]:
    async with hands_on(collection, narrator=HOSTILE) as hands:
        await hands.press(*keys)
        yield hands.app


@pytest.mark.parametrize("screen", some(KEYS))
def test_no_widget_reads_markup(collection: Collection, screen: str, run: Callable[..., None]) -> None:
    async def look() -> None:
        async with shown(collection, KEYS[screen]) as app:
            texts = 0
            for widget in walk(app.screen):
                if isinstance(widget, Static) and "textual" not in (widget.id or ""):
                    assert widget._render_markup is False, widget
                    texts += 1
                assert widget.tooltip is None
                assert not widget.border_title
                assert not widget.border_subtitle
            assert texts > 0 or screen == "picture"
            drawn = "\n".join(strip.text for strip in app.screen._compositor.render_strips())
            if screen in ("item", "list", "who says", "history"):
                assert "[bold]x[/]" in drawn

    run(look())


def test_only_our_own_text_widget_is_used() -> None:
    """Textual's own text widgets read markup unless told otherwise; Line is the one that does not."""
    reading = {
        "Static",
        "Label",
        "Button",
        "OptionList",
        "DataTable",
        "ListView",
        "Markdown",
        "RichLog",
        "Log",
        "Header",
    }
    for path in TUI.rglob("*.py"):
        if path.name == "plain_text.py":
            continue
        names = {alias.name for node in ast.walk(ast.parse(path.read_text("utf-8"))) if isinstance(node, ast.ImportFrom)
                 and (node.module or "").startswith("textual") for alias in node.names}  # fmt: skip
        assert not names & reading, path
        assert ".notify(" not in path.read_text("utf-8"), path
