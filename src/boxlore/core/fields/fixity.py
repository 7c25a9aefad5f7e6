"""The words about fixity: a run over all scans, and single events (a digest checked, a file copied)."""

from dataclasses import dataclass
from datetime import date

from boxlore.core.fields.codec import Codec, Facts, as_json, facts_of


@dataclass(frozen=True, slots=True)
class WrongFile:
    """A file that was not as it was: `state` changed, moved, unreadable or gone; `found` where its bytes are now."""

    path: str
    state: str
    found: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class FixityRun:
    """All scans were read again. `begun` and `ended` are ISO 8601; `wrong` lists the first of `wrong_count` files."""

    begun: str
    ended: str
    read: int
    bytes: int
    wrong_count: int
    wrong: tuple[WrongFile, ...] = ()

    @property
    def day(self) -> date:
        """The day on which it ended."""
        return date.fromisoformat(self.ended[:10])


@dataclass(frozen=True, slots=True, kw_only=True)
class FixityEvent:
    """One event: its term and its outcome. Of a bag that was packed also what it is called, how many records and
    bytes it holds, and the SHA-256 of its manifest."""

    event: str
    outcome: str
    what: str = ""
    records: int = 0
    bytes: int = 0
    manifest: str = ""


def _write_fixity(noted: FixityRun | FixityEvent) -> str:
    if isinstance(noted, FixityEvent):
        return as_json(
            {
                "event": noted.event,
                "outcome": noted.outcome,
                "what": noted.what,
                "records": noted.records,
                "bytes": noted.bytes,
                "manifest": noted.manifest,
            }
        )
    return as_json(
        {
            "begun": noted.begun,
            "ended": noted.ended,
            "read": noted.read,
            "bytes": noted.bytes,
            "wrong_count": noted.wrong_count,
            "wrong": [{"path": file.path, "state": file.state, "found": file.found} for file in noted.wrong],
        }
    )


def _parse_fixity(words: str) -> FixityRun | FixityEvent:
    facts = facts_of(words)
    if "ended" not in facts:
        return FixityEvent(
            event=facts.text("event"),
            outcome=facts.text("outcome"),
            what=facts.text("what", ""),
            records=facts.whole("records", 0),
            bytes=facts.whole("bytes", 0),
            manifest=facts.text("manifest", ""),
        )
    return FixityRun(
        begun=facts.text("begun"),
        ended=_day_and_more(facts.text("ended")),
        read=facts.whole("read"),
        bytes=facts.whole("bytes", 0),
        wrong_count=facts.whole("wrong_count"),
        wrong=tuple(_wrong_file(file) for file in facts.objects("wrong")),
    )


def _day_and_more(text: str) -> str:
    """The text, if it begins with a day. Raises ValueError."""
    date.fromisoformat(text[:10])
    return text


def _wrong_file(file: Facts) -> WrongFile:
    return WrongFile(file.text("path"), file.text("state"), file.text("found", ""))


FIXITY_WORDS: Codec[FixityRun | FixityEvent] = Codec(
    "event of fixity",
    'Write a JSON object with "event" and "outcome", or with "begun", "ended", "read" and "wrong_count".',
    _write_fixity,
    _parse_fixity,
)
"""A JSON object; one with `ended` is a run."""
