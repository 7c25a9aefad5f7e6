"""Going through a box item after item: each key means one thing, said in one table; an item is kept on turning to the
next. The screen draws what stands here and sends its keys; it owns no rule.
"""

from collections.abc import Callable
from dataclasses import dataclass, field

from boxlore.core.errors import WrongUse
from boxlore.core.originals.condition import ConditionNoted, condition_findings, hazards
from boxlore.core.records.in_force import Record
from boxlore.core.statements import Said
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.records import record_of
from boxlore.tasks.originals.housing import undo
from boxlore.tasks.originals.housing_check import seen_of
from boxlore.tasks.originals.survey import WRITING, SurveyAnswer, items_of_box, note


@dataclass(frozen=True, slots=True)
class SurveyKey:
    """A key, what it notes, and which words stand for it."""

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
"""Enclosure is one of a row; the others are set and taken off again."""

KINDS = ("print", "card", "postcard", "negative", "slide", "tintype", "album-page", "letter", "note")
SIZE_KEYS = {"full_stop": ".", "space": " ", **{letter: letter for letter in "0123456789x."}}


@dataclass(slots=True)
class Standing:
    """What stands for the item at hand."""

    kind: str = "print"
    enclosure: str = ""
    attached: list[str] = field(default_factory=list)
    condition: list[str] = field(default_factory=list)
    size: str = ""
    writing: bool = False


class SurveyRun:
    """The survey of one box, or of all items. `said` is one sentence about what was done last."""

    def __init__(self, collection: Collection, mark: str = "") -> None:
        self.collection = collection
        self.ids = items_of_box(collection, mark)
        if not self.ids:
            raise WrongUse("There is nothing to survey.", "boxlore intake takes things in.")
        self.position = 0
        self.said = ""
        self.typed: str | None = None
        """The size being typed, or None."""
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
        """What must be said at once of what stands here."""
        one = seen_of(self.record)
        seen = ConditionNoted(
            kind=self.standing.kind,
            process=one.process,
            condition=tuple(self.standing.condition),
            earliest=one.earliest,
            latest=one.latest,
        )
        return [finding.message for finding in hazards(condition_findings(seen))]

    def press(self, key: str) -> None:
        """One key, by its name."""
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
        parts = [part for part in typed.replace("x", " ").split() if part.replace(".", "", 1).isdigit()]
        if len(parts) != 2 or typed.strip(" x.0123456789"):
            self.said = "Write wide by high in mm, such as 108x165, then Enter; Esc leaves it."
            return
        self.standing.size = " x ".join(parts)
        self.typed = None

    def size(self) -> None:
        """Begin to type the size."""
        self.typed = ""

    def write(self) -> None:
        """There is writing on the back, or not after all (a writing that was noted stays)."""
        if self._stood.writing:
            self.said = "Writing on the back is noted already."
        else:
            self.standing.writing = not self.standing.writing

    def next_kind(self) -> None:
        """Turn to the next kind of thing."""
        now = KINDS.index(self.standing.kind) if self.standing.kind in KINDS else -1
        self.standing.kind = KINDS[(now + 1) % len(KINDS)]

    def same(self) -> None:
        """Kind, enclosure and size as the item before."""
        if self._before is None:
            self.said = "There is no item before it."
            return
        self.standing.kind, self.standing.enclosure = self._before.kind, self._before.enclosure
        self.standing.size = self._before.size

    def turn(self, by: int) -> None:
        """Keep this item and turn to another."""
        self.keep()
        self._before = self.standing
        position = self.position + by
        if 0 <= position < len(self.ids):
            self._open(position)
        else:
            self._open(self.position)
            self.said = "That was the last item. Esc leaves." if by > 0 else "This is the first item."

    def keep(self) -> None:
        """Keep what stands here, if anything was noted. Turning past an item notes that it was looked at."""
        one, stood = self.standing, self._stood
        answer = SurveyAnswer(
            enclosure=one.enclosure if one.enclosure != stood.enclosure else None,
            attached=tuple(one.attached) if one.attached != stood.attached else None,
            condition=tuple(one.condition) if one.condition != stood.condition else None,
            size=one.size if one.size != stood.size else None,
            kind=one.kind if one.kind != stood.kind else None,
            writing=one.writing and not stood.writing,
        )
        if act := note(self.collection, self.record.id, answer):
            self._acts.append((self.position, act))
        self._stood = Standing(one.kind, one.enclosure, list(one.attached), list(one.condition), one.size, one.writing)

    def take_back(self) -> None:
        """What was set on this item and not kept yet; else the last item kept, which is opened again."""
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
        """Keep this item if anything was set on it, and end."""
        if self.standing != self._stood:
            self.keep()
        self.over = True


def _standing(record: Record) -> Standing:
    written = [one for one in record.all("inscription") if one.source.said is Said.INSCRIPTION]
    return Standing(
        kind=record.kind,
        enclosure=record.words("enclosure"),
        attached=[one.words for one in record.all("attached") if not one.words.startswith("no ")],
        condition=[one.words for one in record.all("condition") if not one.words.startswith("no ")],
        size=" x ".join(f"{value:g}" for value in record.size_mm),
        writing=any(one.source.ref == "verso" or one.words == WRITING for one in written),
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
    ("Ctrl+Z", "take back"),
    ("Esc", "leave"),
)
"""What stands in the bottom line."""
