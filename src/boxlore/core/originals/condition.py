"""Findings from notes on condition. For a hazard the caution comes first, then who to call; it never tells the family
to test anything themselves."""

from collections.abc import Iterable
from dataclasses import dataclass

from boxlore.core.findings import Finding, Severity, make_finding
from boxlore.core.originals.condition_table import ASSUME_NITRATE_UNTIL, LOCAL, NITRATE_UNTIL, TERMS, Term
from boxlore.core.originals.housing_rules import holds

FILM = ("negative", "film")
NOT_NITRATE = ("glass", "plate", "acetate", "polyester", "safety", "paper negative")


@dataclass(frozen=True, slots=True, kw_only=True)
class ConditionNoted:
    """What was noted of one item. `earliest` and `latest` are the years of its date, 0 if unknown."""

    kind: str = "print"
    process: str = ""
    condition: tuple[str, ...] = ()
    earliest: int = 0
    latest: int = 0


def terms_in(words: str) -> list[Term]:
    """The terms of the table that a note uses."""
    return [term for term in TERMS if holds(words, term.words)]


def condition_findings(noted: ConditionNoted) -> list[Finding]:
    """The findings of an item's condition, one for each term noted, hazards first."""
    terms = [(term, words) for words in (*noted.condition, noted.process) for term in terms_in(words)]
    by_term: dict[str, Finding] = {}
    for term, words in terms:
        by_term.setdefault(term.name, _term_finding(term, words))
    if "nitrate" not in by_term and (maybe := _maybe_nitrate(noted)) is not None:
        by_term["nitrate"] = maybe
    return sorted(by_term.values(), key=lambda finding: not finding.rule.startswith("hazard."))


def hazards(findings: Iterable[Finding]) -> list[Finding]:
    """The findings that are about something that can hurt somebody."""
    return [finding for finding in findings if finding.rule.startswith("hazard.")]


def _term_finding(term: Term, words: str) -> Finding:
    name, noted = term.name.replace(" ", "-"), f"noted: {words}"
    if term.caution:
        message = f"{term.caution} Call {term.call}. {term.next} {LOCAL}"
        means = f"{term.name}: {term.means}"
        return make_finding(f"hazard.{name}", Severity.ASK, message, term.source, noted, means)
    message = f"{term.name.capitalize()}: {term.next}"
    return make_finding(f"condition.{name}", Severity.NOTE, message, term.source, noted, term.means)


def _maybe_nitrate(noted: ConditionNoted) -> Finding | None:
    """A hazard for flexible film that may be nitrate: from the years of nitrate or undated, and not said to be
    something else."""
    noted_words = f"{noted.process} {' '.join(noted.condition)}"
    if (
        not (holds(noted.kind, FILM) or holds(noted.process, FILM))
        or holds(noted_words, NOT_NITRATE)
        or holds(noted.kind, NOT_NITRATE)
    ):
        return None
    if noted.earliest > NITRATE_UNTIL:
        return None
    term = next(term for term in TERMS if term.name == "nitrate")
    if noted.latest and noted.latest <= ASSUME_NITRATE_UNTIL:
        why = f"flexible film of {noted.latest} or before is taken as nitrate (NPS-TREE)"
    else:
        why = "film that may be from before the early 1950s, and no word that its edge says SAFETY"
    message = f"This may be nitrate film. {term.caution} Call {term.call} before it is handled. {LOCAL}"
    edge = "the word NITRATE or SAFETY on its edge, read where it lies, decides unless it is a duplicate"
    return make_finding("hazard.nitrate", Severity.ASK, message, f"{term.source}; NPS-TREE", why, edge)
