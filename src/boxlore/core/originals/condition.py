"""Condition in the trade's terms, and hazards: the caution leads, then who to call, and never a test to do at home."""

from collections.abc import Iterable
from dataclasses import dataclass

from boxlore.core.findings import Finding, Severity
from boxlore.core.originals.condition_table import ASSUME_NITRATE_UNTIL, LOCAL, NITRATE_UNTIL, TERMS, Term
from boxlore.core.originals.housing import holds

FILM = ("negative", "film")
NOT_NITRATE = ("glass", "plate", "acetate", "polyester", "safety", "paper negative")


@dataclass(frozen=True, slots=True, kw_only=True)
class ConditionNoted:
    """What was noted of one item. `earliest` and `latest` are the years of its date, 0 where unknown."""

    kind: str = "print"
    process: str = ""
    condition: tuple[str, ...] = ()
    earliest: int = 0
    latest: int = 0


def terms_in(words: str) -> list[Term]:
    """The terms that a note uses."""
    return [one for one in TERMS if holds(words, one.words)]


def condition_findings(one: ConditionNoted) -> list[Finding]:
    """What the notes ask for; hazards first."""
    found = [(term, words) for words in (*one.condition, one.process) for term in terms_in(words)]
    seen: dict[str, Finding] = {}
    for term, words in found:
        seen.setdefault(term.name, _finding(term, words))
    if "nitrate" not in seen and (maybe := _maybe_nitrate(one)) is not None:
        seen["nitrate"] = maybe
    return sorted(seen.values(), key=lambda finding: not finding.rule.startswith("hazard."))


def hazards(findings: Iterable[Finding]) -> list[Finding]:
    """Those that can hurt somebody."""
    return [one for one in findings if one.rule.startswith("hazard.")]


def _finding(term: Term, words: str) -> Finding:
    name = term.name.replace(" ", "-")
    if term.caution:
        message = f"{term.caution} Call {term.call}. {term.next} {LOCAL}"
        because = (f"noted: {words}", f"{term.name}: {term.means}")
        return Finding(
            rule=f"hazard.{name}", severity=Severity.ASK, message=message, because=because, source=term.source
        )
    message = f"{term.name.capitalize()}: {term.next}"
    because = (f"noted: {words}", term.means)
    return Finding(
        rule=f"condition.{name}", severity=Severity.NOTE, message=message, because=because, source=term.source
    )


def _maybe_nitrate(one: ConditionNoted) -> Finding | None:
    """Film that is not known to be something else, from the years of nitrate, or undated."""
    known = f"{one.process} {' '.join(one.condition)}"
    if (
        not (holds(one.kind, FILM) or holds(one.process, FILM))
        or holds(known, NOT_NITRATE)
        or holds(one.kind, NOT_NITRATE)
    ):
        return None
    if one.earliest > NITRATE_UNTIL:
        return None
    term = next(term for term in TERMS if term.name == "nitrate")
    if one.latest and one.latest <= ASSUME_NITRATE_UNTIL:
        why = f"flexible film of {one.latest} or before is taken as nitrate (NPS-TREE)"
    else:
        why = "film that may be from before the early 1950s, and no word that its edge says SAFETY"
    message = f"This may be nitrate film. {term.caution} Call {term.call} before it is handled. {LOCAL}"
    return Finding(
        rule="hazard.nitrate",
        severity=Severity.ASK,
        message=message,
        because=(why, "the word NITRATE or SAFETY on its edge, read where it lies, decides unless it is a duplicate"),
        source=f"{term.source}; NPS-TREE",
    )
