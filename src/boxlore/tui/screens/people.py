"""The list of people: letters narrow it, Enter shows everything told of one."""

from textual.app import ComposeResult

from boxlore.core.dates.family_display import family_display
from boxlore.core.people.person import Person
from boxlore.tasks.collection.settings import family_way
from boxlore.tasks.sitting.people_corrections import listed
from boxlore.tui.screens.list_screen import ListScreen, SittingHost
from boxlore.tui.screens.person import PersonScreen
from boxlore.tui.widgets.plain_text import Line, short
from boxlore.tui.widgets.row_list import Cells
from boxlore.tui.widgets.text_input import Words


class PeopleScreen(ListScreen):
    """Everyone in the registry, by sort form."""

    DEFAULT_CSS = """
    PeopleScreen Words { margin: 1 1 0 1; }
    PeopleScreen .heading { color: $faint; padding: 0 1; }
    PeopleScreen Rows { margin: 0 1; }
    """

    def __init__(self, host: SittingHost) -> None:
        super().__init__("People")
        self._host = host
        self._people: list[Person] = []
        self._words = Words(heard=lambda _: self._load(anew=True), id="wanted")

    def compose(self) -> ComposeResult:
        yield self._top
        yield self._words
        yield Line("  Type a part of a name; ↑ ↓ move, Enter shows everything told of one.", classes="heading")
        yield self._rows

    async def show(self) -> None:
        """Open the screen; when this returns, the next key is typed into the search line."""
        await self._host.app.push_screen(self)
        self.set_focus(self._words)

    def on_mount(self) -> None:
        self._load()

    def on_screen_resume(self) -> None:
        """Back from a person: the list as it is now, and typing takes the place of the words sought."""
        if self._people:
            self._load()
            self._words.select_all()

    def _load(self, *, anew: bool = False) -> None:
        """Show those who are sought; `anew`, with the cursor at the first, else where it was."""
        at = self._people[self._rows.at].id if self._people and not anew else ""
        self._people = list(listed(self._host.sitting.collection, self._words.text))
        position = next((place for place, person in enumerate(self._people) if person.id == at), 0)
        self._rows.show(len(self._people), self._cells, position)
        self._top.tell(right=f"{len(self._people)} people" if len(self._people) != 1 else "one person")

    def _cells(self, at: int, width: int) -> Cells:
        person = self._people[at]
        way = family_way(self._host.sitting.collection.settings)
        both = (date.edtf if date else None for date in (person.born, person.died))
        dates = "–".join(family_display(edtf, way) if edtf else "" for edtf in both)
        name = short(person.sort_name, max(width - 30, 10))
        return ((f"{name:<{max(width - 30, 10)}}", "plain"), (f"  {short(dates if dates != '–' else '', 28)}", "faint"))

    async def action_move(self, by: int) -> None:
        """Move the cursor, once every letter is typed in: among the rows that are shown then."""
        await self._words.drained()
        self._rows.move(by)

    async def action_take(self) -> None:
        """Show the person at the cursor."""
        await self._words.drained()
        if self._people:
            await self.app.push_screen(PersonScreen(self._host, self._people[self._rows.at].id))
