"""Findings: something to ask or mend, with its reason and its source; never a refusal of what was told.

And how a count and long words stand in a sentence, and what is wrong in the lines of a table.
"""

import re
from collections.abc import Iterable
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


def one_line(words: str) -> str:
    """The words on one line, at most 60 letters."""
    line = " ".join(words.split())
    return line if len(line) <= 60 else f"{line[:59]}…"


def make_finding(rule: str, severity: Severity, message: str, source: str, *because: str, about: str = "") -> Finding:
    """A finding, in the order in which rules are written: its name, how much it asks, the sentence, source, facts."""
    return Finding(rule=rule, severity=severity, message=message, because=because, source=source, about=about)


TOLD_EACH = 3
"""So many lines with faults of one kind are told each."""
LINES_NAMED = 6
"""Of more, so many lines are named by their number beside the first, which is told."""

_OWN = re.compile(r"“[^”]*”|\S*\d\S*")


def faults_told(faults: Iterable[tuple[int, str]]) -> list[str]:
    """A sentence for each fault, (line, why); of many of one kind one for the first, with the count of the others: a
    slip in a heading is in every line.

    Two are of one kind if they read the same but for what is the line's own: what stands in quotation marks, and words
    with a figure in them, such as an item's number.
    """
    by_kind: dict[str, list[tuple[int, str]]] = {}
    for line, why in faults:
        by_kind.setdefault(_OWN.sub("", why), []).append((line, why))
    told: list[tuple[int, str]] = []
    for alike in by_kind.values():
        if len(alike) <= TOLD_EACH:
            told += [(line, f"Line {line}: {why}") for line, why in alike]
            continue
        (first, why), *others = alike
        named = ", ".join(str(line) for line, _ in others[:LINES_NAMED])
        rest = ", …" if len(others) > LINES_NAMED else ""
        told.append((first, f"Line {first}: {why} It is so in {len(others):,} more lines: {named}{rest}"))
    return [sentence for _, sentence in sorted(told)]
