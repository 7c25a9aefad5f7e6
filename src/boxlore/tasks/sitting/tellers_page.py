"""What the narrator's page shows: one object that the keeper's screen writes to and the page's server reads.

The keeper's screen says which item is out; whoever looks waits for the next version of the view. A touch goes the
other way. Pictures are asked for by small numbers given out here, never by a path or an id of the collection, and
only those that have been shown have one. Words are those that the family may see.
"""

import threading
from collections import OrderedDict
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field, replace

from boxlore.core.crosswalk.captions import Style, caption
from boxlore.core.errors import CouldNot
from boxlore.core.records.audience import To
from boxlore.core.records.item_record import ALTERED, Record, ScanFile
from boxlore.core.sitting.care_notes import stands_before
from boxlore.core.wording.catalogue import ENGLISH, Say, say_in, to_say
from boxlore.disk.outlines import Drawn
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.records_for_outputs import record_of, seen_by
from boxlore.tasks.collection.screen_previews import previews
from boxlore.tasks.collection.settings import family_way
from boxlore.tasks.telling.markers import Marked

SIZES = {"screen": 1600, "close": 4000}
"""Pixels on the long side: to fill a screen, and to look closely."""

KEPT_BACK = to_say("The keeper keeps this picture back.")
"""Instead of a picture that the family may not see."""

WAIT = to_say("Please wait: something should be said first.")
"""Instead of a care note that the family may not read."""

_SIDES = {"recto": to_say("Front"), "verso": to_say("Back")}

KEEP = 8
"""Pictures kept ready; a sitting turns back and forth between a few."""


@dataclass(frozen=True, slots=True)
class Spot:
    """A marker on a side, with the name the family may see (or none)."""

    number: int
    x: float
    y: float
    name: str


@dataclass(frozen=True, slots=True)
class ShownSide:
    """One picture of the item: its number for the page, what it is called, its markers."""

    id: int
    name: str
    spots: tuple[Spot, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class View:
    """What the page shows now. `version` counts up. `care` is a note to be read before the picture is uncovered."""

    version: int = 0
    item: str = ""
    number: str = ""
    place: str = ""
    sides: tuple[ShownSide, ...] = ()
    at: int = 0
    caption: str = ""
    care: str = ""
    covered: bool = False
    message: str = ""
    """Instead of a picture: a rest, thanks at the end."""
    outlines: Drawn | None = None
    """The outlines of prints on a sheet, while they are put right by hand."""


@dataclass(frozen=True, slots=True)
class Tap:
    """Somebody touched the picture: the item, the scan, and where (0..1 of the picture looked at)."""

    item: str
    scan: str
    x: float
    y: float


@dataclass(frozen=True, slots=True)
class OutlineTouch:
    """Somebody did something to the outlines on the page: `do` is put, add, remove, undo or take; of `put`, how the
    outline lies now (eight numbers), which corner of it is in hand, and whether that movement had begun before."""

    do: str
    outline: int = -1
    corner: int = -1
    corners: tuple[float, ...] = ()
    begun: bool = False


def _nobody(tap: Tap) -> None:
    """Nobody listens yet."""


def _no_hand(touch: OutlineTouch) -> None:
    """Nobody draws yet."""


def _unseen() -> None:
    """Nobody minds yet."""


def _nowhere(network: bool) -> None:
    """There is no page."""


@dataclass(slots=True)
class Showing:
    """One for a run of the program. Every method may be called from any thread."""

    address: str = ""
    """Where the page is, with its key; empty while there is none."""
    heard: Callable[[Tap], None] = _nobody
    uncovered: Callable[[], None] = _unseen
    """Called when somebody who looks has uncovered the picture."""
    outlined: Callable[[OutlineTouch], None] = _no_hand
    """Called when somebody has done something to the outlines of a sheet."""
    opening: Callable[[], None] = _unseen
    """Called once, in a thread, when the keeper's screen stands: only then the page's server begins, so that it
    keeps nobody waiting. Raises CouldNot."""
    code: str = ""
    """The address as a square code of half blocks, for a tablet's camera; empty where it is of this machine alone."""
    to_network: Callable[[bool], None] = _nowhere
    """Serves the page to the local network, for a tablet (True), or to this machine alone again (False); `address` and
    `code` are those then. Raises CouldNot."""
    collection: Collection | None = None
    _view: View = field(default_factory=View)
    _changed: threading.Condition = field(default_factory=threading.Condition)
    _numbers: dict[tuple[str, str, str, int], int] = field(default_factory=dict)
    _scans: dict[int, tuple[str, ScanFile]] = field(default_factory=dict)
    _ready: OrderedDict[tuple[int, str], bytes] = field(default_factory=OrderedDict)
    _making: threading.Lock = field(default_factory=threading.Lock)
    _uncovered: set[str] = field(default_factory=set)
    lookers: int = 0
    """How many pages follow now; the server counts."""

    # the keeper's side

    def show(self, record: Record, marked: Sequence[Marked], place: str) -> None:
        """An item is out, or something of it has changed."""
        if self.collection is None:
            return
        seen = seen_by(self.collection, To.FAMILY).recipient.seen(record)
        if seen.closed_scans:
            self._keep_back(seen, place)
            return
        names = {(shown.scan, shown.number): shown.name for shown in seen.shown() if shown.number}
        care = seen.words("care") or (record.words("care") and self.words(WAIT))
        with self._changed:
            same = self._view.item == record.id
            self._put(
                View(
                    item=record.id,
                    number=record.number,
                    place=place,
                    sides=tuple(self._side(record, scan, marked, names) for scan in record.scans),
                    at=min(self._view.at, max(len(record.scans) - 1, 0)) if same else 0,
                    caption=self._caption(seen),
                    care=care,
                    covered=bool(care) and stands_before(record.words("care")) and record.id not in self._uncovered,
                )
            )

    def _caption(self, seen: Record) -> str:
        """The caption with dates as the family writes them."""
        way = family_way(self.collection.settings) if self.collection else None
        return caption(seen, style=Style(dates=way, say=self.words))

    @property
    def words(self) -> Say:
        """Says our own words to whoever looks: in the collection's language."""
        return say_in(self.collection.settings.language) if self.collection else ENGLISH

    def _keep_back(self, seen: Record, place: str) -> None:
        """An item is out whose picture the family may not see: words stand instead, and nobody can ask for it."""
        with self._changed:
            self._scans = {number: known for number, known in self._scans.items() if known[0] != seen.id}
            view = View(
                item=seen.id,
                number=seen.number,
                place=place,
                caption=self._caption(seen),
                message=self.words(KEPT_BACK),
            )
            self._put(view)

    def show_sheet(self, scan: ScanFile, heading: str, drawn: Drawn, items: Sequence[str]) -> None:
        """A sheet of prints is out, with the outlines on it. `items` are those here that its scan shows: where the
        family may not see one of them, or a care note stands before it, words stand instead."""
        if self.collection is None:
            return
        seen = seen_by(self.collection, To.FAMILY).recipient
        records = [record_of(self.collection, item) for item in items]
        kept_back = any(record.words("care") or seen.seen(record).closed_scans for record in records)
        with self._changed:
            sides = () if kept_back else (ShownSide(self._number("", scan), heading),)
            message = self.words(KEPT_BACK) if kept_back else ""
            self._put(View(number=heading, sides=sides, message=message, outlines=replace(drawn, owners=())))

    def _side(
        self, record: Record, scan: ScanFile, marked: Sequence[Marked], names: dict[tuple[str, int], str]
    ) -> ShownSide:
        spots = tuple(
            Spot(marker.number, marker.x, marker.y, names.get((marker.scan, marker.number), ""))
            for marker in marked
            if marker.scan == scan.id
        )
        say = self.words
        name = say(_SIDES[scan.side]) if scan.side in _SIDES else scan.side.capitalize()
        if scan.role == ALTERED:
            name = say("{side}, altered version", side=name)
        return ShownSide(self._number(record.id, scan), name, spots)

    def _number(self, item: str, scan: ScanFile) -> int:
        key = (item, scan.id, scan.sha256, scan.turn)  # turned, or of another file, it is another picture
        if key not in self._numbers:
            number = len(self._numbers) + 1
            self._numbers[key] = number
        self._scans[self._numbers[key]] = (item, scan)
        return self._numbers[key]

    def expect(self, record: Record) -> None:
        """Make the picture ready that will most likely come next. Takes as long as that takes."""
        if self.collection is None or not record.scans or not self.lookers:
            return
        if seen_by(self.collection, To.FAMILY).recipient.seen(record).closed_scans:
            return
        with self._changed:
            number = self._number(record.id, record.scans[0])
        self._make(number, "screen")

    def say(self, message: str) -> None:
        """Words instead of a picture; an empty message goes back to the item."""
        with self._changed:
            self._put(replace(self._view, message=message))

    def turn(self, at: int) -> None:
        """Show another side to everyone who looks."""
        with self._changed:
            if 0 <= at < len(self._view.sides):
                self._put(replace(self._view, at=at))

    def uncover(self, item: str = "") -> None:
        """The care note was heard: the picture may be seen, for the rest of the sitting."""
        with self._changed:
            if not item or item == self._view.item:
                self._uncovered.add(self._view.item)
                self._put(replace(self._view, covered=False))

    def is_covered(self, item: str) -> bool:
        """Whether a care note still stands before that item's picture."""
        with self._changed:
            return self._view.item == item and self._view.covered

    def wake(self) -> None:
        """Let everyone who waits look whether that is over."""
        with self._changed:
            self._changed.notify_all()

    def _put(self, view: View) -> None:
        if replace(view, version=self._view.version) != self._view:
            self._view = replace(view, version=self._view.version + 1)
            self._changed.notify_all()

    # the looker's side

    @property
    def view(self) -> View:
        """What is shown now."""
        with self._changed:
            return self._view

    def wait(self, version: int, seconds: float, over: Callable[[], bool]) -> View | None:
        """The view as soon as it is another than `version`; None when the time has passed, or it is `over`."""
        with self._changed:
            self._changed.wait_for(lambda: over() or self._view.version != version, seconds)
            return None if over() or self._view.version == version else self._view

    def picture(self, number: int, size: str) -> bytes | None:
        """A JPEG made afresh, without embedded data; None unless that picture is out now and uncovered.

        One that was out before is not served: what the keeper has turned away from, or covered since, is not for them.
        """
        jpeg = self._make(number, size) if self._is_out(number) else None
        return jpeg if self._is_out(number) else None

    def _is_out(self, number: int) -> bool:
        view = self.view
        return not view.covered and number in {side.id for side in view.sides}

    def _make(self, number: int, size: str) -> bytes | None:
        known = self._scans.get(number)
        if known is None or size not in SIZES or self.collection is None:
            return None
        from boxlore.disk.pictures import make_jpeg

        with self._making:
            key = (number, size)
            if key not in self._ready:
                scan = known[1]
                try:
                    path, area, turn = self.collection.folder / scan.path, scan.part, scan.turn
                    jpeg = make_jpeg(path, SIZES[size], area=area, turn=turn, previews=previews())
                except CouldNot:
                    return None
                self._ready[key] = jpeg
                while len(self._ready) > KEEP:
                    self._ready.popitem(last=False)
            self._ready.move_to_end(key)
            return self._ready[key]

    def tap(self, number: int, x: float, y: float) -> bool:
        """A touch on the picture; False if that picture is not out any more."""
        view, known = self.view, self._scans.get(number)
        if known is None or view.covered or known[0] != view.item or number not in {side.id for side in view.sides}:
            return False
        if view.outlines is not None:
            return False
        self.heard(Tap(known[0], known[1].id, x, y))
        return True

    def outline(self, number: int, touch: OutlineTouch) -> bool:
        """Something done to the outlines of the picture of this number; False if that is not out any more."""
        view = self.view
        if view.outlines is None or number not in {side.id for side in view.sides}:
            return False
        self.outlined(touch)
        return True
