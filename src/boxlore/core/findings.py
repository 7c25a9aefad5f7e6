"""Findings: something to ask or mend, with its reason and its source; never a refusal of what was told.

And how a count stands in a sentence.
"""

from dataclasses import dataclass
from enum import StrEnum


class Severity(StrEnum):
    """How much a finding asks of the keeper."""

    ERROR = "error"
    """Cannot be so: two facts exclude each other."""
    ASK = "ask"
    """Worth asking the narrator."""
    NOTE = "note"
    """Worth knowing."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Finding:
    """One thing that a rule found.

    `rule` is a short permanent name (`date.before-birth`), `message` one sentence in plain English
    that may be read out to a narrator, `because` the facts it rests on, `source` the published
    reason for the rule, or "common practice, no source". `about` is the id of the record meant, if any.
    """

    rule: str
    severity: Severity
    message: str
    because: tuple[str, ...] = ()
    source: str = ""
    about: str = ""


def several(count: int, noun: str, nouns: str = "") -> str:
    """“1 item”, “3 items”: a count in a sentence. `nouns` is another plural, or one with its verb."""
    return f"{count:,} {noun if count == 1 else nouns or noun + 's'}"


def make_finding(rule: str, severity: Severity, message: str, source: str, *because: str, about: str = "") -> Finding:
    """A finding, in the order in which rules are written: its name, how much it asks, the sentence, source, facts."""
    return Finding(rule=rule, severity=severity, message=message, because=because, source=source, about=about)
