"""The record in force as a value: what outputs, rules and screens read of one item.

`core.records.in_force` makes it of all statements about the item, and opens with how.
"""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from dataclasses import field as starts

from boxlore.core.dates.conflicts import doubted, one_of
from boxlore.core.dates.edtf_values import Edtf
from boxlore.core.dates.reading import DateReading
from boxlore.core.fields.pictures import ALTERED as ALTERED
from boxlore.core.fields.pictures import AS_SCANNED as AS_SCANNED
from boxlore.core.people.reference import PersonRef
from boxlore.core.places.conflicts import common_place
from boxlore.core.places.reading import Place, PlaceReading
from boxlore.core.records.marker_positions import turned_by
from boxlore.core.records.marks import ContainerPath, Mark
from boxlore.core.records.worked_out_date import WorkedOutDate
from boxlore.core.statements import SURENESS, Reading, ReadingValue, Said, Source, Statement, Sure, fold
from boxlore.core.wording.catalogue import ENGLISH, Say, to_say


@dataclass(frozen=True, slots=True, kw_only=True)
class StatementView:
    """A statement with its usable reading: words, who said them, and what they were read as.

    `value` is a `DateReading`, `PlaceReading`, `PersonRef` (of a person or an event) or `Consent`, None where there is
    none that may be used; `date`, `place` and `meant` ask it for one of them. `asks` is true where there is a reading
    that may not be used.
    """

    statement: str
    field: str
    words: str
    language: str
    source: Source
    said_by: str
    sure: Sure
    audience: str
    recorded_at: str
    sitting: str = ""
    moment: int | None = None
    value: ReadingValue | None = None
    asks: bool = False
    confirmed: bool = False
    """Whether the keeper has confirmed the reading."""

    @property
    def date(self) -> DateReading | None:
        """The date that the words were read as, or None."""
        return self.value if isinstance(self.value, DateReading) else None

    @property
    def place(self) -> PlaceReading | None:
        """The place that the words were read as, or None."""
        return self.value if isinstance(self.value, PlaceReading) else None

    @property
    def meant(self) -> str:
        """The id of the person or event that the words mean, or an empty string."""
        return self.value.id if isinstance(self.value, PersonRef) else ""

    @property
    def speaker(self) -> str:
        """The same as `speaker_in` in English."""
        return self.speaker_in(ENGLISH)

    def speaker_in(self, say: Say) -> str:
        """Who or what says it, and how surely: `Leida Rourke, a guess`, `written on the back`, `the keeper`."""
        how_sure = _HOW_SURE.get(self.sure)
        return say(how_sure, who=self._who(say)) if how_sure else self._who(say)

    @property
    def who(self) -> str:
        """Who or what says it."""
        return self._who(ENGLISH)

    def _who(self, say: Say) -> str:
        said, ref = self.source.said, self.source.ref
        if said is Said.INSCRIPTION:
            return say(_SIDES.get(ref, to_say("written on the item")))
        if self.said_by or said is Said.NARRATOR:
            return self.said_by or say("a narrator")
        if said is Said.KEEPER:
            return say("the keeper")
        return ref or (say("a document") if said is Said.DOCUMENT else say("a file"))


_SIDES = {"recto": to_say("written on the front"), "verso": to_say("written on the back")}
_HOW_SURE = {Sure.GUESS: to_say("{who}, a guess"), Sure.LIKELY: to_say("{who}, likely")}


@dataclass(frozen=True, slots=True, kw_only=True)
class PersonShown:
    """One person of an item. `role` is person (in the picture), named (not in it) or photographer.

    `name` is the registry's form where the person is known, else the words told. `area` is x, y or
    x, y, w, h in 0..1 of the stored picture of `scan`; `number` the marker's number on it, or 0.
    """

    told: StatementView
    name: str
    role: str = "person"
    person: str = ""
    scan: str = ""
    area: tuple[float, ...] = ()
    number: int = 0
    row: str = ""
    position: int = 0
    """Without a marker: the row (front, back, …; empty for the only one); from the left, from 1, or from the right,
    from -1."""
    disputed: bool = False
    """Whether somebody else says that it is another person, and nobody has settled it."""
    in_question: bool = False
    """Whether the words may be nobody's, and nobody has answered yet: no title and no list of names has them."""

    @property
    def sure(self) -> Sure:
        """How sure the name is: that two say differently makes it a guess."""
        return Sure.GUESS if self.disputed else self.told.sure

    @property
    def unsure(self) -> bool:
        return self.sure is not Sure.SURE

    @property
    def is_there(self) -> bool:
        """Whether somebody is meant: not by words that may be nobody's; but at a marker, or a place in a row, there is
        somebody, whoever."""
        return bool(self.number or self.position) or not self.in_question


@dataclass(frozen=True, slots=True, kw_only=True)
class ScanFile:
    """An image file of one side of an item. `path` is relative to the collection, with slashes.

    `width` and `height` in pixels as stored, `ppi` in pixels an inch or 0, `area` the part that shows
    this item (x, y, w, h in 0..1; empty for the whole), `embedded` the text found in the file. `damaged`: its bytes
    were cut off or broken when it was taken in. `orientation` is that of its file (Exif; 1: none), and `turn` by how
    many degrees to the right the keeper turned what shows this item. `corners` are those of a print that lies aslant.
    """

    id: str
    path: str
    sha256: str
    bytes: int
    width: int
    height: int
    media_type: str
    side: str = "recto"
    role: str = AS_SCANNED
    ppi: float = 0
    area: tuple[float, ...] = ()
    embedded: str = ""
    damaged: bool = False
    orientation: int = 1
    turn: int = 0
    corners: tuple[float, ...] = ()

    @property
    def part(self) -> tuple[float, ...]:
        """What of the stored picture is seen: nothing for all of it, its area, and the corners of what lies aslant."""
        return (*self.area, *self.corners)

    @property
    def stands(self) -> int:
        """The orientation by which the stored picture is set upright: its file's, then the keeper's turn."""
        return turned_by(self.orientation, self.turn)


@dataclass(frozen=True, slots=True, kw_only=True)
class Related:
    """A relation to another item: its kind (`same_picture`, `attached_to`, …), its number, our end."""

    kind: str
    number: str
    reverse: bool = False


@dataclass(frozen=True, slots=True)
class Conflict:
    """Statements about one thing that cannot all be so.

    `hidden` says how many more there are that the audience may not see.
    """

    field: str
    told: tuple[StatementView, ...]
    why: str
    hidden: int = 0

    @property
    def speakers(self) -> Mapping[str, str]:
        """What is told, in the words told, with all who say so."""
        speakers: dict[str, list[str]] = {}
        for view in self.told:
            speakers.setdefault(" ".join(view.words.split()), []).append(view.speaker)
        return {words: ", ".join(dict.fromkeys(said_by)) for words, said_by in speakers.items()}

    @property
    def sides(self) -> str:
        """`“1931” (Leida Rourke) or “1932” (written on the back)`: each answer, and who says so."""
        sides = [f"“{words}” ({speakers})" for words, speakers in self.speakers.items()]
        return " or ".join(sides + ["another answer, which is withheld"] * bool(self.hidden))

    @property
    def words(self) -> str:
        """Why they cannot all be so, and each answer with who says so."""
        return f"{self.why}: {self.sides}" if self.told else self.why


def _as_one(conflict: Conflict) -> StatementView:
    """The sides of a conflict as one answer that asserts none of them: what an output says until it is settled.

    The words are those of all sides, with who says each; that it is one of them is as sure as the surest. A date is the
    set of their dates (EDTF `[1931,1932]`), a place what all of them lie in, or none. Where a side may not be seen, the
    one that may is marked as doubtful.
    """
    first = conflict.told[0]
    doubt = "; disputed" if conflict.hidden else ""
    return replace(
        first,
        words=" or ".join(f"{words} ({speakers}{doubt})" for words, speakers in conflict.speakers.items()),
        language=first.language if len({view.language for view in conflict.told}) == 1 else "",
        sure=max((view.sure for view in conflict.told), key=SURENESS.__getitem__),
        value=_date_of_all(conflict) or _place_of_all(conflict),
    )


def _date_of_all(conflict: Conflict) -> DateReading | None:
    dates = [view.date.edtf for view in conflict.told if view.date and view.date.edtf]
    if len(dates) < len(conflict.told):
        return None
    if conflict.hidden:
        date = doubted(dates[0]) if len({date.text for date in dates}) == 1 else None
    else:
        date = one_of(dates)
    return DateReading(date.text, date) if date else None


def _place_of_all(conflict: Conflict) -> PlaceReading | None:
    places = [view.place.best for view in conflict.told if view.place and view.place.best]
    if len(places) < len(conflict.told) or conflict.hidden:
        return None
    common = common_place(places)
    return PlaceReading(common.name, "area", (common,)) if common else None


REFERENCE = "archive_reference"
"""The field of what an archive calls an item."""
REMARK = "archive_remark"
"""The field of what an archive remarks of an item: for the keeper, and nothing that is withheld from that archive."""
ANSWER = "archive_answer"
"""The field of what the family answers to it, which goes to the archive with the next update."""
UNDATED = "undated"
DATE_WITHHELD = "date not given here"
"""What stands for a date that is told, and not to this audience."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Record:
    """One item. `told` maps a field to its statements: the one in force first, then the others.

    Of a field whose statements cannot all be so none is in force: `first`, `words`, `date` and `place` give what they
    come to together, which asserts none of them. Whoever wants the statements themselves asks `all`.
    """

    id: str
    number: str
    kind: str = "print"
    mark: Mark | None = None
    found_in: str = ""
    size_mm: tuple[float, ...] = ()
    scans: tuple[ScanFile, ...] = ()
    told: Mapping[str, tuple[StatementView, ...]] = starts(default_factory=dict)
    people: tuple[PersonShown, ...] = ()
    related: tuple[Related, ...] = ()
    conflicts: tuple[Conflict, ...] = ()
    """Those that wait for the keeper's word."""
    undecided: tuple[Conflict, ...] = ()
    """Those that the keeper has weighed and left open: each may be so, or nobody can say."""
    not_known: frozenset[str] = frozenset()
    asked: tuple[StatementView, ...] = ()
    """Each time that somebody was asked and did not know, with what they said instead, if anything."""
    unnamed: tuple[tuple[str, int, tuple[float, ...]], ...] = ()
    """Markers that nobody is named at: the scan, the number, the area."""
    nameless: tuple[tuple[str, int], ...] = ()
    """Rows and positions where someone stands whom nobody knows."""
    audiences: tuple[str, ...] = ()
    """Who may see the item at all (`family`), or one field of it (`story=family`), by the keeper's word."""
    changed_at: str = ""
    withheld: int = 0
    """How many statements the audience may not see; `core.records.audience.Recipient.seen` counts them."""
    closed_scans: bool = False
    """Whether the scans themselves may not go to this audience."""
    on_closed_sheet: bool = False
    """Whether they do not go since they are of a sheet that shows another item too, of which they may not."""
    worked_out: WorkedOutDate | None = None
    """What follows for the date from what this audience may see, where nobody has told one."""
    hidden: frozenset[str] = frozenset()
    """Those of `audience.KNOWN_OF` in which something is told, and nothing that the audience may see."""

    @property
    def container_path(self) -> ContainerPath:
        """(kind, label) of each container that the item lies in, outermost first; none for one that lies nowhere."""
        return self.mark.path if self.mark else ()

    @property
    def open_scans(self) -> tuple[ScanFile, ...]:
        """The scans, where this audience may have them."""
        return () if self.closed_scans else self.scans

    def first(self, name: str) -> StatementView | None:
        """The statement in force of a field, or what its disputed statements come to together; None for nothing."""
        if conflict := self.disputed(name):
            return _as_one(conflict)
        rows = self.told.get(name, ())
        return rows[0] if rows else None

    def disputed(self, name: str) -> Conflict | None:
        """What cannot all be so of a field of one value, and is not settled for one of them; or None.

        The people at a marker are no such field: each of them is in `people`, and says by itself that it is disputed.
        """
        for conflict in (*self.conflicts, *self.undecided) if name != "person" else ():
            if conflict.field == name and conflict.told:
                return conflict
        return None

    def rests_on(self, name: str) -> tuple[StatementView, ...]:
        """The statements that `first` rests on: the one in force, or all sides of what is disputed."""
        conflict = self.disputed(name)
        return conflict.told if conflict else self.told.get(name, ())[:1]

    def words(self, name: str) -> str:
        """The words in force of a field, or an empty string."""
        first = self.first(name)
        return first.words if first else ""

    def all(self, name: str) -> tuple[StatementView, ...]:
        """Every statement of a field in the order of the record."""
        return self.told.get(name, ())

    def somebody_told(self, name: str) -> bool:
        """Whether a person has told a field. What a scan's file says holds only until then, and is asked about."""
        return any(view.source.said is not Said.FILE for view in self.told.get(name, ()))

    @property
    def date(self) -> Edtf | None:
        """The date in force, or None."""
        first = self.first("date")
        return first.date.edtf if first and first.date else None

    @property
    def edtf(self) -> str:
        """The date in force as EDTF text, or an empty string."""
        date = self.date
        return date.text if date else ""

    @property
    def date_display(self) -> str:
        """The date in force as DACS displays it; `undated` where nothing is known."""
        first = self.first("date")
        shown = first.date.display if first and first.date else ""
        return shown or (first.words if first else UNDATED)

    @property
    def date_withheld(self) -> bool:
        """Whether a date is told that the audience may not see: then it is not undated."""
        return "date" in self.hidden

    @property
    def formal_date(self) -> str:
        """The date for an archive's description (DACS 2.4, from memory): what the words were read as; words that are
        still asked about are no date, and stand behind `undated` as they were told. Behind them stands what is worked
        out, in brackets: nobody has told it."""
        first = self.first("date")
        if first is None and self.date_withheld:
            return DATE_WITHHELD
        worked_out = f"; worked out: {self.worked_out.display}" if self.worked_out else ""
        if first is None or (first.date and first.date.display) or fold(first.words) == UNDATED:
            return self.date_display + worked_out
        return f"{UNDATED}; told as “{first.words}”{worked_out}"

    @property
    def place(self) -> Place | None:
        """The place in force, the likeliest if there are choices, or None."""
        first = self.first("place")
        return first.place.best if first and first.place else None

    @property
    def named_people(self) -> tuple[PersonShown, ...]:
        """Everyone of whom it is not in question whether they are anybody."""
        return tuple(shown for shown in self.people if not shown.in_question)

    def shown(self, role: str = "person") -> tuple[PersonShown, ...]:
        """The people with that role, in the order of the record."""
        return tuple(shown for shown in self.people if shown.role == role)


def is_number_alone(record: Record) -> bool:
    """Whether an item is kept from whoever the record is for: its number, its place and what an archive calls it are
    all that they may know."""
    is_told = bool(set(record.told) - {REFERENCE} or record.people or record.audiences)
    return record.closed_scans and record.withheld > 0 and not is_told


def is_untold(record: Record) -> bool:
    """Whether nobody has told anything of an item, nor was asked: what its file says may be a machine's, and no word of
    who has looked at it."""
    return not (record.withheld or record.people or record.asked) and all(
        view.source.said is Said.FILE for view in every_told(record)
    )


def every_told(record: Record) -> Iterable[StatementView]:
    """Every statement that a record rests on, each once: its fields, its people, the sides of its conflicts, and where
    somebody was asked and did not know."""
    views = {view.statement: view for rows in record.told.values() for view in rows}
    views |= {shown.told.statement: shown.told for shown in record.people}
    views |= {view.statement: view for conflict in record.conflicts + record.undecided for view in conflict.told}
    views |= {view.statement: view for view in record.asked}
    return views.values()


@dataclass(frozen=True, slots=True, kw_only=True)
class MarkerRows:
    """A numbered point or box on a scan with the statements about it."""

    id: str
    scan: str
    number: int
    area: tuple[float, ...]
    statements: Sequence[tuple[Statement, Reading | None]] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Material:
    """Everything in force that a record is made from. `chosen` maps a field to the settled statement's id."""

    id: str
    number: str
    statements: Sequence[tuple[Statement, Reading | None]]
    scans: Sequence[ScanFile] = ()
    markers: Sequence[MarkerRows] = ()
    path: Sequence[tuple[str, str]] = ()
    position: int = 0
    related: Sequence[Related] = ()
    chosen: Mapping[str, str] = starts(default_factory=dict)
    settled: frozenset[str] = frozenset()
    """Ids of statements that a settlement has weighed: they make no conflict any more."""
