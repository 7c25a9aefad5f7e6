"""The words about sittings: what was shown when, the steps, closed passages, recordings and signed papers.

Times are whole milliseconds from the beginning of the sitting.
"""

from dataclasses import dataclass, replace

from boxlore.core.fields.codec import Codec, as_json, facts_of, one_word
from boxlore.core.statements import Statement


@dataclass(frozen=True, slots=True)
class ShownAt:
    """An item was shown. `at` is None where the words do not say when: then it is the statement's own moment."""

    item: str
    at: int | None = None


def _write_shown(shown: ShownAt) -> str:
    return as_json({"item": shown.item, "at": shown.at})


def _parse_shown(words: str) -> ShownAt:
    if not words.startswith("{"):
        return ShownAt(one_word(words))
    facts = facts_of(words)
    at = "moment" if "moment" in facts else "at"
    inner = _parse_shown(facts.text("item"))
    moment = inner.at if facts.member(at) is None else facts.whole(at)
    return ShownAt(inner.item, moment)


SHOWN_WORDS: Codec[ShownAt] = Codec(
    "showing of an item", 'Write a JSON object with "item" and "at".', _write_shown, _parse_shown
)
"""`{"item": id, "at": milliseconds}`. Earlier versions wrote the item's id alone in the demo and in rebuilt
collections, and `{"item": words, "moment": milliseconds}` in linked data, where the words may be such an object."""


def shown_in(statement: Statement) -> ShownAt:
    """What a statement of the field `shown` says, with the moment. Raises CouldNot."""
    shown = SHOWN_WORDS.read(statement.words)
    return shown if shown.at is not None else ShownAt(shown.item, statement.moment or 0)


@dataclass(frozen=True, slots=True)
class CourseStep:
    """A step of the sitting itself (`rest`, `clap`, `recording started`) and its moment."""

    step: str
    at: int


def _write_course(course: CourseStep) -> str:
    return as_json({"step": course.step, "at": course.at})


def _parse_course(words: str) -> CourseStep:
    facts = facts_of(words)
    return CourseStep(facts.text("step"), facts.whole("at"))


COURSE_WORDS: Codec[CourseStep] = Codec(
    "step of a sitting", 'Write a JSON object with "step" and "at".', _write_course, _parse_course
)


@dataclass(frozen=True, slots=True)
class Passage:
    """A stretch of the sitting that is closed for everyone outside the family, and why."""

    start: int
    end: int
    why: str = ""


def _write_closed(passage: Passage) -> str:
    return as_json({"from": passage.start, "to": passage.end, "why": passage.why})


def _parse_closed(words: str) -> Passage:
    facts = facts_of(words)
    return Passage(facts.whole("from"), facts.whole("to"), facts.text("why", ""))


CLOSED_WORDS: Codec[Passage] = Codec(
    "closed passage", 'Write a JSON object with "from", "to" and "why".', _write_closed, _parse_closed
)


@dataclass(frozen=True, slots=True, kw_only=True)
class RecordingFacts:
    """A sound file that was kept: where, its bytes and SHA-256, the name it came under.

    `start` is where its first moment lies in the sitting, with `because` for how that is known; None where the words
    do not say: then it is the statement's own moment. `length` in milliseconds, 0 where it is not known.
    """

    path: str
    sha256: str
    bytes: int
    name: str = ""
    start: int | None = None
    length: int = 0
    because: str = ""


def _write_recording(kept: RecordingFacts) -> str:
    return as_json(
        {
            "path": kept.path,
            "sha256": kept.sha256,
            "bytes": kept.bytes,
            "name": kept.name,
            "start": kept.start,
            "length": kept.length,
            "because": kept.because,
        }
    )


def _parse_recording(words: str) -> RecordingFacts:
    facts = facts_of(words)
    return RecordingFacts(
        path=facts.text("path"),
        sha256=facts.text("sha256"),
        bytes=facts.whole("bytes"),
        name=facts.text("name", ""),
        start=None if facts.member("start") is None else facts.whole("start"),
        length=facts.whole("length", 0),
        because=facts.text("because", ""),
    )


RECORDING_WORDS: Codec[RecordingFacts] = Codec(
    "kept recording",
    'Write a JSON object with "path", "sha256" and "bytes".',
    _write_recording,
    _parse_recording,
)
"""A JSON object. The demo of earlier versions wrote path, sha256 and bytes alone."""


def recording_in(statement: Statement) -> RecordingFacts:
    """What a statement of the field `recording` says, with its start. Raises CouldNot."""
    kept = RECORDING_WORDS.read(statement.words)
    return kept if kept.start is not None else replace(kept, start=statement.moment or 0)


@dataclass(frozen=True, slots=True, kw_only=True)
class PaperFacts:
    """A signed paper that was kept: where, its bytes and SHA-256, the name it came under, and what it is."""

    path: str
    sha256: str
    bytes: int
    name: str = ""
    what: str = ""


def _write_paper(kept: PaperFacts) -> str:
    return as_json(
        {"path": kept.path, "sha256": kept.sha256, "bytes": kept.bytes, "name": kept.name, "what": kept.what}
    )


def _parse_paper(words: str) -> PaperFacts:
    facts = facts_of(words)
    return PaperFacts(
        path=facts.text("path"),
        sha256=facts.text("sha256"),
        bytes=facts.whole("bytes"),
        name=facts.text("name", ""),
        what=facts.text("what", ""),
    )


PAPER_WORDS: Codec[PaperFacts] = Codec(
    "kept paper", 'Write a JSON object with "path", "sha256" and "bytes".', _write_paper, _parse_paper
)
