"""Check: the ten things most worth doing, grouped; Enter goes to the photograph at its question."""

from collections.abc import Callable, Iterator, Sequence
from functools import partial

from boxlore.core.fields.table import FIELDS
from boxlore.core.findings import Severity
from boxlore.core.originals.source_names import source_in_full
from boxlore.tasks.check import TEN, FindingGroup, ItemFinding, check, grouped
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.progress import Progress, go_on
from boxlore.tasks.originals.housing_check import check_housing
from boxlore.tui.from_inside import from_inside
from boxlore.tui.keys import bound
from boxlore.tui.screens.list_screen import LookingScreen, SittingHost
from boxlore.tui.screens.person import PersonScreen
from boxlore.tui.widgets.plain_text import short
from boxlore.tui.widgets.row_list import Cells

NOT_SOURCES = ("common practice, no source", "a rule of our own")
"""What ends the source of a finding that rests on no publication: nothing for a keeper to look up."""


class CheckScreen(LookingScreen):
    """Rows of groups, or of the findings of one group; Tab shows all groups, Esc goes back from a group."""

    BINDINGS = bound(("tab", "all"), ("q", "leave"))
    TITLE = "Check"

    def __init__(self, host: SittingHost) -> None:
        super().__init__(self.TITLE)
        self._host = host
        self._groups: list[FindingGroup] = []
        self._open: FindingGroup | None = None
        self._wants_all = False

    def look(self, progress: Progress) -> Callable[[], None]:
        """Go through what can be found, group by group."""
        findings: list[ItemFinding] = []
        for located in self.find(self._host.sitting.collection):
            go_on(progress)
            findings.append(located)
        return partial(self._found, grouped(findings))

    def find(self, collection: Collection) -> Iterator[ItemFinding]:
        """All that the list may show."""
        return check(collection)

    def _found(self, groups: list[FindingGroup]) -> None:
        self._groups = groups
        self._draw()

    @property
    def _shown(self) -> Sequence[FindingGroup]:
        return self._groups if self._wants_all else self._groups[:TEN]

    def _draw(self, at: int = 0) -> None:
        count = sum(len(group.findings) for group in self._groups)
        if self._open is not None:
            self._top.tell(
                f"{self.TITLE} · {_kind(self._open)}", f"{len(self._open.findings)} of {count} · Enter opens · Esc all"
            )
            self._rows.show(len(self._open.findings), self._finding_cells, at)
        else:
            more = len(self._groups) - len(self._shown)
            tab = f" · Tab {more} more" if more else ""
            title = f"{self.TITLE} · {'all' if self._wants_all else 'worth doing first'}"
            things = "one thing" if count == 1 else f"{count} things"
            self._top.tell(title, f"{things} · Enter opens{tab} · Esc back")
            self._rows.show(len(self._shown), self._group_cells, at)
        self._at_row()

    def _group_cells(self, at: int, width: int) -> Cells:
        group = self._shown[at]
        first = group.findings[0]
        many = f"{len(group.findings)} ×" if len(group.findings) > 1 else ""
        where = _where(first)
        return (
            (f"{_level(group):<7} ", "strong"),
            (f"{many:>6}  ", "faint"),
            (
                short(f"{where}  {from_inside(first.finding.message)}".strip(), max(width - 18, 8)),
                "plain",
            ),
        )

    def _finding_cells(self, at: int, width: int) -> Cells:
        if self._open is None:
            return ()
        located = self._open.findings[at]
        message = from_inside(located.finding.message)
        if not any(map(_where, self._open.findings)):
            return ((short(message, width), "plain"),)
        return ((f"{_where(located):<10} ", "strong"), (short(message, max(width - 12, 8)), "plain"))

    def _here(self) -> ItemFinding | None:
        if self._open is not None:
            return self._open.findings[self._rows.at]
        return self._shown[self._rows.at].findings[0] if self._shown else None

    def _at_row(self) -> None:
        located = self._here()
        if located is None:
            self._whole.say(self._unfound or "Nothing to ask and nothing to mend.")
            return
        finding = located.finding
        because = "".join(f"\n· {fact}" for fact in finding.because)
        named = finding.source and not finding.source.endswith(NOT_SOURCES)
        source = f"\n{source_in_full(finding.source)}" if named else ""
        self._whole.say(from_inside(finding.message), (because, "$secondary"), (source, "$faint"))

    def action_all(self) -> None:
        """Show all kinds of findings, or the ten again."""
        if self._open is None:
            self._wants_all = not self._wants_all
            self._draw()

    async def action_take(self) -> None:
        """Open the group, or go to the photograph or person of the finding."""
        located = self._here()
        if located is None:
            return
        if self._open is None and len(self._shown[self._rows.at].findings) > 1:
            self._open = self._shown[self._rows.at]
            self._draw()
            return
        collection = self._host.sitting.collection
        kind = located.finding.rule.partition(".")[0]
        item = collection.store.item_by_number(located.number) if located.number else None
        if item is not None:
            self._host.show_item(item, kind)
            if located.finding.rule == f"{kind}.{DISPUTED}":
                await self._host.settle(kind)
        elif located.finding.about in collection.people():
            await self.app.push_screen(PersonScreen(self._host, located.finding.about))
        else:
            self._whole.say(
                f"{from_inside(located.finding.message)}\n",
                (f"It is about no single photograph. {_WHERE_MENDED.get(kind, 'Esc goes back.')}", "$faint"),
            )

    def action_close(self) -> None:
        """Go back from a group to all of them, else to the photograph."""
        if self._open is None:
            self.app.pop_screen()
            return
        at = next((at for at, group in enumerate(self._shown) if group is self._open), 0)
        self._open = None
        self._draw(at)


class OriginalsScreen(CheckScreen):
    """The same of what the originals need: damp, sleeves, boxes, hazards first."""

    TITLE = "Originals"

    def find(self, collection: Collection) -> Iterator[ItemFinding]:
        """What is found about the originals alone."""
        for located in check_housing(collection):
            yield ItemFinding(located.finding, located.number, located.mark)


DISPUTED = "conflict"
"""The kind of a finding about answers that cannot all be so: which of them is used is asked at once."""

_KINDS = {"missing": "nobody has said", "asks": "which is meant", DISPUTED: "sources disagree"}
_THINGS = {
    "climate": "How warm and damp it is", "fixity": "Checking the scans", "hazard": "Danger", "kept":
    "Where it is kept", "housing": "Boxes and sleeves", "kin": "Kin", "life": "Lives", "loan": "Loans", "marriage":
    "Marriages", "package": "Transfers", "scan": "Scans", "archive": "Remarks of archives", "words": "Words",
}  # fmt: skip


_WHERE_MENDED = {
    "climate": "What is measured: “Keep safe”, “Temperature and humidity”.", "fixity":
    "“Keep safe”, “Check the scans” reads them.", "housing": "“Keep safe”, “A box or folder” says what it is made of.",
    "kept": "“Keep safe” has “Move things” and “Close the gaps in a box”.", "loan": "“Keep safe”, “On loan to you”.",
    "archive": "“Hand on”, “An answer to the archive”.",
}  # fmt: skip
"""Where in the menu something is put right that is about no single photograph, by the first part of its rule."""


def _kind(group: FindingGroup) -> str:
    """What the findings of a group are about, in words: a question, or a kind of thing; and what is found of it."""
    label = FIELDS[group.field].label if group.field in FIELDS else group.field.capitalize()
    about = _THINGS.get(group.field, label)
    found = _KINDS.get(group.rule.rpartition(".")[2])
    return f"{about}: {found}" if found else about


def _where(located: ItemFinding) -> str:
    """The number of the item, where the sentence of the finding does not name it; one about a box names the box."""
    return "" if located.number in located.finding.message else located.number


def _level(group: FindingGroup) -> str:
    """What findings of this kind want: something mended, asked, or done with the originals; or nothing."""
    return "do" if group.severity is Severity.ASK and group.about_originals else _LEVELS[group.severity]


_LEVELS = {Severity.ERROR: "mend", Severity.ASK: "ask", Severity.NOTE: "note"}
