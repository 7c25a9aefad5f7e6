"""The survey of a box, item by item: what each key means, and when an answer is kept.

The screen sends the keys and draws `SurveyRun.standing`, the answer for the item at hand; it owns no rule. An answer
is kept on turning to another item and on leaving.
"""

from collections.abc import Callable
from dataclasses import dataclass, field

from boxlore.core.errors import WrongUse
from boxlore.core.fields.originals import NOTED_WORDS, SIZE_WORDS, SizeMm
from boxlore.core.originals.condition import ConditionNoted, condition_findings, hazards
from boxlore.core.records.item_record import Record
from boxlore.core.statements import Said
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.records_for_outputs import record_of
from boxlore.tasks.originals.housing_changes import undo
from boxlore.tasks.originals.housing_check import condition_of
from boxlore.tasks.originals.survey import WRITING, SurveyAnswer, items_of_box, note


@dataclass(frozen=True, slots=True)
class SurveyKey:
    """A key, the group that it belongs to, and the words that it notes."""

    key: str
    group: str
    words: str


ENCLOSURE, ATTACHED, CONDITION = "enclosure", "attached", "condition"

CHOICES: tuple[SurveyKey, ...] = (
    SurveyKey("0", ENCLOSURE, "none"),
    SurveyKey("1", ENCLOSURE, "polyester sleeve"),
    SurveyKey("2", ENCLOSURE, "polypropylene sleeve"),
    SurveyKey("3", ENCLOSURE, "paper envelope"),
    SurveyKey("4", ENCLOSURE, "glassine envelope"),
    SurveyKey("5", ENCLOSURE, "PVC pocket"),
    SurveyKey("6", ENCLOSURE, "magnetic album page"),
    SurveyKey("7", ENCLOSURE, "page with corners"),
    SurveyKey("8", ENCLOSURE, "kraft envelope"),
    SurveyKey("9", ENCLOSURE, "plastic, unknown kind"),
    SurveyKey("c", ATTACHED, "paper clip"),
    SurveyKey("s", ATTACHED, "staple"),
    SurveyKey("t", ATTACHED, "tape"),
    SurveyKey("b", ATTACHED, "rubber band"),
    SurveyKey("n", ATTACHED, "note"),
    SurveyKey("f", CONDITION, "foxing"),
    SurveyKey("i", CONDITION, "silver mirroring"),
    SurveyKey("u", CONDITION, "curl"),
    SurveyKey("k", CONDITION, "cracking"),
    SurveyKey("d", CONDITION, "fading"),
    SurveyKey("r", CONDITION, "brittle"),
    SurveyKey("e", CONDITION, "torn"),
    SurveyKey("a", CONDITION, "adhesive"),
    SurveyKey("l", CONDITION, "flaking"),
    SurveyKey("m", CONDITION, "mould"),
    SurveyKey("v", CONDITION, "vinegar smell"),
    SurveyKey("g", CONDITION, "broken glass"),
    SurveyKey("o", CONDITION, "nitrate"),
)
"""A key of ENCLOSURE takes the place of the one before; a key of the other groups sets its words, or takes them off."""

KINDS = ("print", "card", "postcard", "negative", "slide", "tintype", "album-page", "letter", "note")
SIZE_KEYS = {"full_stop": ".", "space": " ", **{letter: letter for letter in "0123456789x."}}
"""The keys that type a size -> what each types."""


@dataclass(slots=True)
class Standing:
    """The answer for the item at hand, as it is set now."""

    kind: str = "print"
    enclosure: str = ""
    attached: list[str] = field(default_factory=list)
    condition: list[str] = field(default_factory=list)
    size: str = ""
    writing: bool = False


class SurveyRun:
    """The survey of one box, or of all items. `said` is a sentence about the last key, '' if there is nothing to say.

    Raises WrongUse if there is nothing to survey.
    """

    def __init__(self, collection: Collection, mark: str = "") -> None:
        self.collection = collection
        self.ids = items_of_box(collection, mark)
        if not self.ids:
            raise WrongUse("There is nothing to survey.", "boxlore intake takes things in.")
        self.position = 0
        self.said = ""
        self.typed: str | None = None
        """The size that is being typed; None while none is."""
        self.over = False
        self._before: Standing | None = None
        self._acts: list[tuple[int, str]] = []
        self._open(0)

    def _open(self, position: int) -> None:
        self.position = position
        self.record: Record = record_of(self.collection, self.ids[position])
        self.standing = _standing(self.record)
        self._stood = _standing(self.record)

    @property
    def cautions(self) -> list[str]:
        """The messages of the hazards that the answer names; they are shown at once."""
        noted = condition_of(self.record)
        at_hand = ConditionNoted(
            kind=self.standing.kind,
            process=noted.process,
            condition=tuple(self.standing.condition),
            earliest=noted.earliest,
            latest=noted.latest,
        )
        return [finding.message for finding in hazards(condition_findings(at_hand))]

    def press(self, key: str) -> None:
        """Do what a key means; `key` is its name, as Textual gives it."""
        self.said = ""
        if self.typed is not None:
            self._type(key)
        elif (choice := _BY_KEY.get(key)) is not None:
            self._choose(choice)
        elif (move := _MOVES.get(key)) is not None:
            move(self)

    def _choose(self, choice: SurveyKey) -> None:
        if choice.group == ENCLOSURE:
            self.standing.enclosure = choice.words
            return
        listed = self.standing.attached if choice.group == ATTACHED else self.standing.condition
        if choice.words in listed:
            listed.remove(choice.words)
        else:
            listed.append(choice.words)

    def _type(self, key: str) -> None:
        typed = self.typed or ""
        if key in SIZE_KEYS:
            self.typed = typed + SIZE_KEYS[key]
        elif key == "backspace":
            self.typed = typed[:-1]
        elif key == "escape":
            self.typed = None
        elif key in ("enter", "pagedown", "z"):
            self._take_size(typed)
            if key == "pagedown" and self.typed is None:
                self.turn(1)

    def _take_size(self, typed: str) -> None:
        size = SIZE_WORDS.or_none(typed)
        if size is None or len(size.sides) != 2:
            self.said = "Write wide by high in mm, such as 108x165, then Enter; Esc leaves it."
            return
        self.standing.size = SIZE_WORDS.write(size)
        self.typed = None

    def size(self) -> None:
        """Begin to type the size; the keys after it are its figures."""
        self.typed = ""

    def write(self) -> None:
        """Note that there is writing on the back, or take that back. What was kept before stays."""
        if self._stood.writing:
            self.said = "Writing on the back is noted already."
        else:
            self.standing.writing = not self.standing.writing

    def next_kind(self) -> None:
        """Set the next kind of KINDS."""
        now = KINDS.index(self.standing.kind) if self.standing.kind in KINDS else -1
        self.standing.kind = KINDS[(now + 1) % len(KINDS)]

    def same(self) -> None:
        """Set kind, enclosure and size as for the item before."""
        if self._before is None:
            self.said = "There is no photograph before it."
            return
        self.standing.kind, self.standing.enclosure = self._before.kind, self._before.enclosure
        self.standing.size = self._before.size

    def turn(self, by: int) -> None:
        """Keep this item's answer, and turn to the item `by` places further on."""
        self.keep()
        self._before = self.standing
        position = self.position + by
        if 0 <= position < len(self.ids):
            self._open(position)
        else:
            self._open(self.position)
            self.said = "That was the last item. Esc leaves." if by > 0 else "This is the first item."

    def keep(self) -> None:
        """Keep what has changed in the answer. Also an answer without change notes that the item was surveyed."""
        answered, stood = self.standing, self._stood
        answer = SurveyAnswer(
            enclosure=answered.enclosure if answered.enclosure != stood.enclosure else None,
            attached=tuple(answered.attached) if answered.attached != stood.attached else None,
            condition=tuple(answered.condition) if answered.condition != stood.condition else None,
            size=answered.size if answered.size != stood.size else None,
            kind=answered.kind if answered.kind != stood.kind else None,
            writing=answered.writing and not stood.writing,
        )
        if act := note(self.collection, self.record.id, answer):
            self._acts.append((self.position, act))
        self._stood = Standing(
            answered.kind,
            answered.enclosure,
            list(answered.attached),
            list(answered.condition),
            answered.size,
            answered.writing,
        )

    def take_back(self) -> None:
        """Take back what was set on this item and not kept yet; else undo the last answer kept, and open its item."""
        if self.standing != self._stood:
            self._open(self.position)
            self.said = "Taken back."
        elif self._acts:
            position, act = self._acts.pop()
            undo(self.collection, act)
            self._open(position)
            self.said = f"Taken back: what was noted of {self.record.number}."
        else:
            self.said = "There is nothing to take back."

    def leave(self) -> None:
        """Keep this item's answer if anything was set, and end."""
        if self.standing != self._stood:
            self.keep()
        self.over = True


def _standing(record: Record) -> Standing:
    """The answer to begin with: what the record says already. Words such as `no tape` say that it was taken off."""
    written = [view for view in record.all("inscription") if view.source.said is Said.INSCRIPTION]
    return Standing(
        kind=record.kind,
        enclosure=record.words("enclosure"),
        attached=[view.words for view in record.all("attached") if NOTED_WORDS.read(view.words).so],
        condition=[view.words for view in record.all("condition") if NOTED_WORDS.read(view.words).so],
        size=SIZE_WORDS.write(SizeMm(record.size_mm)) if record.size_mm else "",
        writing=any(view.source.ref == "verso" or view.words == WRITING for view in written),
    )


_BY_KEY = {choice.key: choice for choice in CHOICES}

_MOVES: dict[str, Callable[[SurveyRun], None]] = {
    "pagedown": lambda run: run.turn(1),
    "enter": lambda run: run.turn(1),
    "space": lambda run: run.turn(1),
    "pageup": lambda run: run.turn(-1),
    "z": SurveyRun.size,
    "w": SurveyRun.write,
    "j": SurveyRun.next_kind,
    "equals_sign": SurveyRun.same,
    "ctrl+z": SurveyRun.take_back,
    "escape": SurveyRun.leave,
    "ctrl+q": SurveyRun.leave,
}

MOVE_WORDS = (
    ("PgDn", "keep, next"),
    ("PgUp", "before"),
    ("=", "as before"),
    ("Ctrl+Z", "undo"),
    ("Esc", "leave"),
    ("F1", "guide"),
)
"""(key, what it does) for the bottom line of the screen."""
