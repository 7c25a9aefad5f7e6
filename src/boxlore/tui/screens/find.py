"""The list of all items, of any length. Words typed at the top search everything told, drafts included.

The list shows positions in `tasks.sitting.item_list.Listing`; only rows on the screen are read.
"""

from collections.abc import Callable
from contextlib import suppress
from typing import Any

from textual.app import App, ComposeResult
from textual.screen import Screen
from textual.timer import Timer

from boxlore.core.errors import WrongUse
from boxlore.core.records.marks import number_text
from boxlore.tasks.collection.items_by_mark import find_items
from boxlore.tasks.sitting.item_list import Listing, ListRow, filtered, nearest
from boxlore.tasks.sitting.people_corrections import items_with
from boxlore.tasks.sitting.session import Sitting
from boxlore.tasks.telling.finding import found, near
from boxlore.tui.keys import ROW_KEYS, bindings
from boxlore.tui.screens.guide import GuideScreen
from boxlore.tui.screens.list_screen import taken_back
from boxlore.tui.screens.several_items import of_many
from boxlore.tui.widgets.bars import Bottom, Top
from boxlore.tui.widgets.plain_text import Line, short
from boxlore.tui.widgets.row_list import Cells, Rows
from boxlore.tui.widgets.text_input import Words

FILTERS = ("all", "bare", "begun", "told", "to ask")
_MEANING = {
    "bare": "nothing is told yet",
    "begun": "something is told",
    "told": "who, when, where and why",
    "to ask": "noted for later",
}
MOST = 500
"""How many hits of a search are listed."""
PAUSE = 0.08
"""Seconds without a key before the words are searched for."""


class FindScreen(Screen[None]):
    """The list with its search line; `opened` is called with the position of the item that was chosen."""

    AUTO_FOCUS = ""
    BINDINGS = bindings(ROW_KEYS)
    DEFAULT_CSS = """
    FindScreen Words { margin: 1 1 0 1; }
    FindScreen .heading { color: $faint; padding: 0 1; }
    FindScreen Rows { margin: 0 1; }
    """

    def __init__(
        self,
        sitting: Sitting,
        listing: Listing,
        position: int,
        opened: Callable[[int], None],
        picked: dict[str, None] | None = None,
    ) -> None:
        """`picked` are the ids picked out before, which stay so."""
        super().__init__()
        self._sitting, self._listing, self._position, self._opened = sitting, listing, position, opened
        self._collection = sitting.collection
        self._picked: dict[str, None] = {} if picked is None else picked
        """Ids of the items picked out, in that order; F8 says the same of all of them."""
        self._filter = self._from = 0
        self._in_rows = True
        """Whether the last key was one of the rows: Space picks then, and else it is a space among words."""
        self._positions: list[int] | None = None
        """The positions shown, or None for all items."""
        self._words_at: dict[int, str] = {}
        """Position -> the words found there."""
        self._run = 0
        """Counts searches and filters, so that one that is overtaken ends."""
        self._undone = ""
        """What was taken back by the last key, in a sentence."""
        self._later: Timer | None = None
        self.words = Words(heard=self._heard, bound=("space",), id="wanted")
        self._top, self._heading, self.rows = Top("All photographs"), Line(classes="heading"), Rows()

    async def show(self, app: App[Any]) -> None:
        """Open the screen; when this returns, the next key is typed into the search line."""
        await app.push_screen(self)
        self.set_focus(self.words)

    def compose(self) -> ComposeResult:
        yield self._top
        yield self.words
        yield self._heading
        yield self.rows
        yield Bottom(ROW_KEYS)

    def on_mount(self) -> None:
        self._show_all()

    def _show_all(self) -> None:
        self._positions, self._words_at = None, {}
        self.rows.show(len(self._listing), self._cells, self._position)
        self._say()

    def _say(self, after: str = "") -> None:
        count = self.rows.count
        name = FILTERS[self._filter]
        photographs = "photograph" if count == 1 else "photographs"
        counted = "found" if self.words.text.strip() else photographs if name == "all" else f"{photographs} {name}"
        meaning = f"Photographs {name}: {_MEANING[name]}" if name != "all" else "All photographs"
        self._top.tell(meaning, f"{count} {counted}{after}")
        if self._undone:
            self._heading.say(f"  {self._undone}")
        elif self._picked:
            self._heading.say(
                f"  {len(self._picked)} picked; F8 says one thing of them all. Space picks one more, or puts it back."
            )
        else:
            self._heading.say("  Words, a number or a mark (1/2/4) find. ↑ ↓ move, Space picks, Enter opens.")

    def _cells(self, at: int, width: int) -> Cells:
        position = self._position_at(at)
        if self._positions is None:
            row = self._listing.row_at(position)
        else:
            near = self._positions[max(0, at - 30) : at + 30]
            self._listing.rows([self._listing.id_at(near_position) for near_position in near])
            row = self._listing.rows([self._listing.id_at(position)])[0]
        return cells(row, width, self._words_at.get(position, ""), picked=row.id in self._picked)

    # searching

    def _heard(self, words: Words) -> None:
        self._in_rows, self._undone = not words.text.strip(), ""
        if self._later is not None:
            self._later.stop()
        self._later = self.set_timer(PAUSE, self._search)

    def _search(self) -> None:
        if self._later is not None:
            self._later.stop()
            self._later = None
        query = self.words.text.strip()
        self._run += 1
        if not query:
            self._filter_anew()
            return
        self._filter = 0
        self._words_at = {}
        for item, words in self._hits(query):
            position = self._listing.position(item)
            if position >= 0 and position not in self._words_at:
                self._words_at[position] = words
        self._positions = list(self._words_at)
        self.rows.show(len(self._positions), self._cells)
        self._say(f", the first {MOST} shown" if len(self._words_at) >= MOST else "")
        if not (self._positions or self._undone) and (meant := near(self._collection, query)):
            self._heading.say(f"  Nothing is found. Did you mean {' or '.join(meant)}?")

    def _hits(self, query: str) -> list[tuple[str, str]]:
        """(item id, words found in it): first the item of that number or mark, then the hits of the search."""
        named: list[tuple[str, str]] = []
        with suppress(WrongUse):  # neither a number nor a mark: words to search for
            named = [(subject.id, "") for subject in find_items(self._collection, self._full(query))]
        told = [(hit.item, hit.words) for hit in found(self._collection, query, MOST) if hit.item]
        return named + told + list(items_with(self._collection, query).items())

    def _full(self, query: str) -> str:
        """A bare `42` as the whole number that it stands for, in this working copy's series (`TRA-0042`)."""
        settings = self._collection.settings
        if query.isascii() and query.isdigit() and len(query) < 10:
            return number_text(settings.prefix, settings.series, int(query))
        return query

    # filtering

    async def action_filter(self) -> None:
        """Show the next kind of items: all, bare, begun, told, to ask."""
        await self.words.drained()
        self.words.load("")
        self._undone = ""
        self._filter = (self._filter + 1) % len(FILTERS)
        self._filter_anew()

    def _filter_anew(self) -> None:
        self._run += 1
        if FILTERS[self._filter] == "all":
            self._show_all()
            return
        self._positions, self._words_at = [], {}
        self.rows.show(0, self._cells)
        self._gather(self._run, filtered(self._listing, FILTERS[self._filter]))

    def _gather(self, run: int, chunks: Any) -> None:
        """Add the next chunk of positions and come back for more, so that keys are heard in between."""
        if run != self._run or not self.is_attached or self._positions is None:
            return
        chunk = next(chunks, None)
        if chunk is None:
            self._say()
            return
        self._positions += chunk
        at = nearest(self._positions, self._position) if self.rows.at == 0 else self.rows.at
        self.rows.show(len(self._positions), self._cells, at)
        self._say(" …")
        self.set_timer(0.001, lambda: self._gather(run, chunks))

    # keys

    async def action_take(self) -> None:
        """Open the item at the cursor."""
        await self.words.drained()
        if self._later is not None:
            self._search()
        self._take()

    def _take(self) -> None:
        if self.rows.count:
            position = self._position_at(self.rows.at)
            self.app.pop_screen()
            self._opened(position)

    def on_rows_taken(self) -> None:
        self._take()

    def _position_at(self, at: int) -> int:
        """The position, among all items, of the item of a row."""
        return at if self._positions is None else self._positions[at]

    def _item_at(self, at: int) -> str:
        """The id of the item of a row."""
        return self._listing.id_at(self._position_at(at))

    async def action_space(self) -> None:
        """Pick the row, or type a space among the words to be found."""
        await self.words.drained()
        if self._in_rows:
            await self.action_pick()
        else:
            self.words.put(" ")

    async def action_pick(self) -> None:
        """Pick the item at the cursor out, or put it back, and go to the next row."""
        await self.words.drained()
        if self.rows.count:
            item = self._item_at(self.rows.at)
            if item in self._picked:
                del self._picked[item]
            else:
                self._picked[item] = None
            self._from = self.rows.at
            self._move(1)
            self._say()

    async def action_pick_on(self, by: int) -> None:
        """Pick the item at the cursor out and the next one (`by` 1) or the one above (-1), and go there."""
        await self.words.drained()
        if self.rows.count:
            self._picked[self._item_at(self.rows.at)] = None
            self._from = self.rows.at
            self._move(by)
            self._picked[self._item_at(self.rows.at)] = None
            self._say()

    async def action_range(self) -> None:
        """Pick every row from the one picked last to the cursor."""
        await self.words.drained()
        rows = range(min(self._from, self.rows.at), min(max(self._from, self.rows.at) + 1, self.rows.count))
        for at in rows:
            self._picked[self._item_at(at)] = None
        self._in_rows = True
        self.rows.refresh()
        self._say()

    async def action_same(self) -> None:
        """Tell the same of all items that are picked."""
        await self.words.drained()
        if not self._picked or not self._sitting.writable:
            self._heading.say(
                "  Space picks rows out; then F8 says the same people, day or place of them. Ctrl+R picks up to here."
            )
            return
        current = self._sitting.record(self._listing.id_at(self._position))
        await of_many(self, self._sitting, list(self._picked), current)

    def said_of_many(self, words: str) -> None:
        """Show that something was told of the items that are picked; they stay so, for the next thing."""
        self.rows.refresh()
        self._say()
        self._heading.say(f"  {words} Ctrl+Z takes it back. F8 says more of them.")

    def put_back(self) -> None:
        """Pick nothing any more."""
        self._picked.clear()
        self.rows.refresh()
        self._say()

    def refused(self, words: str) -> None:
        """Show why something could not be told of the items that are picked."""
        self._heading.say(f"  {words}")

    async def action_undo(self) -> None:
        """Take back the last thing done; where items went with it, the list is left, for it is another then."""
        await self.words.drained()
        items_turned = self._sitting.steps.items_turned
        words = taken_back(self._sitting)
        if self._sitting.steps.items_turned != items_turned:
            self.app.pop_screen()
            return
        self._undone, at = words, self.rows.at
        if self.words.text.strip():  # what was found may be found no more
            self._search()
        elif FILTERS[self._filter] != "all":
            self._filter_anew()
        else:
            self._say()
        self.rows.go(at)

    def _move(self, by: int) -> None:
        """Move the cursor, so that the next Space picks."""
        self._in_rows, self._undone = True, ""
        self.rows.move(by)

    async def action_up(self) -> None:
        await self.words.drained()
        self._move(-1)

    async def action_down(self) -> None:
        await self.words.drained()
        self._move(1)

    async def action_page_up(self) -> None:  # type: ignore[override]  # Textual awaits it
        await self.words.drained()
        self._move(-self.rows.page)

    async def action_page_down(self) -> None:  # type: ignore[override]  # Textual awaits it
        await self.words.drained()
        self._move(self.rows.page)

    async def action_first(self) -> None:
        await self.words.drained()
        self._move(-self.rows.count)

    async def action_last(self) -> None:
        await self.words.drained()
        self._move(self.rows.count)

    async def action_guide(self) -> None:
        """Show the guide."""
        await self.words.drained()
        await self.app.push_screen(GuideScreen())

    def action_back(self) -> None:
        """Go back to the photograph."""
        self.app.pop_screen()

    async def action_leave(self) -> None:
        """Leave the program."""
        await self.app.run_action("leave")


def cells(row: ListRow, width: int, hit: str = "", *, picked: bool = False) -> Cells:
    """One line of the list: number, mark, state as a word; then the words found in it, or what the item is about."""
    to_ask = f"  → {row.to_ask}" if row.to_ask else ""
    head = 10 + 3 + 10 + 1 + 6 + 1
    about = short(f"“{hit}”" if hit else row.about + to_ask, max(width - head, 8))
    return (
        (f"{row.number:<10} {'+' if picked else ' '} ", "strong"),
        (f"{short(row.mark or '-', 10):<10} ", "plain"),
        (f"{row.state:<6} ", "faint"),
        (about, "plain"),
    )
