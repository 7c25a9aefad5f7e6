"""Recordings and papers of the sittings, as what is handed over tells of them: they lie beside the items.

DACS 2.3-2.5 (title, date, extent), 4.1 (access).
"""

from collections.abc import Iterable
from dataclasses import dataclass

from boxlore.core.findings import several
from boxlore.core.records.closing_dates import Closure

NOTHING_AGREED = "Nothing is noted as agreed with whoever speaks in it."
SOUND, PAPER, CLIMATE = "sound recording", "paper of a sitting", "climate log"


@dataclass(frozen=True, slots=True, kw_only=True)
class Beside:
    """One recording or paper. `path` is where it lies in the package; `speakers` are told by name; `length` is in
    milliseconds, 0 where it is not known."""

    path: str
    kind: str
    title: str
    day: str
    speakers: tuple[str, ...] = ()
    length: int = 0
    closure: Closure | None = None
    sitting: str = ""
    """The id of its sitting; empty for what belongs to none."""
    reference: str = ""
    """What the archive calls the sitting, once it has said so."""
    without_consent: bool = False
    """Whether it is a recording, and nothing is noted as agreed with whoever speaks in it."""

    @property
    def access(self) -> str:
        """Until when it is closed, and why."""
        more = f" {NOTHING_AGREED}" if self.without_consent else ""
        return f"{self.closure}{more}" if self.closure else "Nothing in it is closed: it tells of the air in a room."

    @property
    def length_words(self) -> str:
        """`12 min 30 s`; '' where it is not known."""
        return in_words(self.length)


def in_words(length: int) -> str:
    """`12 min 30 s` for so many milliseconds; '' for none."""
    minutes, seconds = divmod(round(length / 1000), 60)
    return " ".join(f"{count} {unit}" for count, unit in ((minutes, "min"), (seconds, "s")) if count)


def counted(beside: Iterable[Beside]) -> str:
    """`1 sound recording, 2 papers of a sitting`; '' for none."""
    kinds = [held.kind for held in beside]
    plural = {SOUND: "sound recordings", PAPER: "papers of sittings", CLIMATE: "climate logs"}
    return ", ".join(several(kinds.count(kind), kind, words) for kind, words in plural.items() if kind in kinds)
