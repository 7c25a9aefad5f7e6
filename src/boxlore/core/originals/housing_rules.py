"""Rules about how an original is housed: each looks at an item or a container and returns findings.

Each finding says why, and who says so. Where the sources disagree it says that too, and advises what is safe by all
of them. The tables with their sources are in `core.originals.housing_rules_table`.
"""

import re
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass

from boxlore.core.findings import Finding, Severity, make_finding, several
from boxlore.core.originals.climate import DAMP
from boxlore.core.originals.housing_rules_table import (
    ATTACHED,
    BUFFERED_SIDES,
    DAMP_SOURCE,
    DAMP_WORDS,
    MATERIALS,
    PRACTICE,
    SURROUNDINGS,
    EnclosureMaterial,
    Good,
)
from boxlore.core.records.marks import Container

MOUNTED = ("cabinet", "carte", "card", "mount", "stereo")
UNBUFFERED = ("cyanotype",)
HALF = 0.5
"""A box with less than this share of its capacity is half empty (common practice, no source)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Housed:
    """One item and what is around it. `enclosure` and `attached` are the words that were noted.

    `containers` has the innermost first. `humidity` is the mean of the location's log in percent, None without one.
    `shares` is the number of items in the same sleeve, with this one.
    """

    kind: str = "print"
    process: str = ""
    enclosure: str = ""
    attached: tuple[str, ...] = ()
    containers: tuple[Container, ...] = ()
    humidity: float | None = None
    shares: int = 1


HousingRule = Callable[[Housed], Iterator[Finding]]


def housing_findings(item: Housed) -> list[Finding]:
    """Every finding about how one item is housed, in the order of RULES."""
    return [finding for rule in RULES for finding in rule(item)]


def container_findings(container: Container) -> list[Finding]:
    """Every finding about one container and where it stands."""
    return [finding for rule in CONTAINER_RULES for finding in rule(container)]


_CLAUSES = re.compile(r"[,;.()“”\"/]|\bbut\b")
_DENIED = re.compile(r"\b(?:no|not|none|without|free of)\b")


def holds(words: str, terms: Iterable[str]) -> bool:
    """Whether the text names any of the terms: `clip` is in `Paper clips`, for a term is the beginning of a word.

    Upper and lower case are the same. A word such as `no` or `without` denies what follows in its clause, so `no paper
    clip` does not name a clip. A clause ends at a punctuation mark or at `but`. A term that ends with a blank must be a
    whole word; one that begins with `=` must be the whole text.
    """
    text = words.casefold()
    return bool(text) and any(
        text.strip() == term[1:] if term.startswith("=") else any(_in_clause(f" {part} ", term) for part in parts)
        for parts in [_CLAUSES.split(text)]
        for term in terms
    )


def _in_clause(clause: str, term: str) -> bool:
    at = clause.find(f" {term}")
    return at >= 0 and not _DENIED.search(clause[:at])


def materials_in(words: str) -> list[EnclosureMaterial]:
    """The rows of MATERIALS that a text names."""
    return [material for material in MATERIALS if holds(words, material.words)]


def _attached(item: Housed) -> Iterator[Finding]:
    for words in item.attached:
        row = next((row for row in ATTACHED if holds(words, row.words)), None)
        if row is not None:
            message = f"Still on it: {words}. {row.do}"
            yield make_finding(f"housing.{row.name}", Severity.ASK, message, row.source, f"{row.why}")


def _material(item: Housed) -> Iterator[Finding]:
    for material in materials_in(item.enclosure):
        if material.good is not Good.GOOD:
            yield _bad(f"Its enclosure is {_named(material)}: house it", material)


def _named(material: EnclosureMaterial) -> str:
    """The material's name as it stands in a sentence."""
    return {"magnetic page": "a magnetic page", "pvc": "PVC"}.get(material.name, material.name)


def _bad(subject: str, material: EnclosureMaterial) -> Finding:
    """The finding about a bad or disputed material, and how severe it is; `subject` begins its sentence (`Its
    enclosure is PVC: house it`)."""
    rule = f"housing.{material.name.replace(' ', '-')}"
    if material.good is Good.DISPUTED:
        because = (material.why, f"Sources disagree: {material.source}; {material.otherwise}.")
        return make_finding(
            rule, Severity.NOTE, f"{subject} in polyester or polypropylene, good by all.", material.source, *because
        )
    return make_finding(
        rule,
        Severity.ASK,
        f"{subject} in polyester, polypropylene or tested paper.",
        material.source,
        material.why,
    )


def _plastic_in_damp(item: Housed) -> Iterator[Finding]:
    plastics = [material for material in materials_in(item.enclosure) if material.plastic]
    if not plastics:
        return
    around = {words for container in item.containers for words in container.surroundings}
    damp = [words for words in around if holds(words, DAMP_WORDS)]
    measured = item.humidity is not None and item.humidity >= DAMP
    if measured or (damp and item.humidity is None):
        why = f"mean {item.humidity:.0f} % RH by the log" if measured else f"it stands in: {', '.join(sorted(damp))}"
        message = "A plastic sleeve in a damp room: the picture may stick to it. Use paper there, or another room."
        yield make_finding("housing.plastic-damp", Severity.ASK, message, DAMP_SOURCE, why)


def _shared_sleeve(item: Housed) -> Iterator[Finding]:
    if item.shares > 1 and (holds(item.kind, MOUNTED) or holds(item.process, MOUNTED)):
        message = f"{item.shares} items share a sleeve, and this one is mounted: its board rubs and stains the other."
        yield make_finding(
            "housing.shared-sleeve", Severity.ASK, message, "one item to a sleeve: common practice, a museum's guide"
        )


def _facing_board(item: Housed) -> Iterator[Finding]:
    if holds(item.enclosure, ("facing board", "against a board", "board against", "facing a board")) and not holds(
        item.enclosure, ("interleav",)
    ):
        message = "A board faces the picture with nothing between: lay tested paper between them."
        yield make_finding(
            "housing.board", Severity.ASK, message, PRACTICE, "old boards are acid and stain the face that they touch"
        )


def _buffered(item: Housed) -> Iterator[Finding]:
    if not holds(item.process, UNBUFFERED):
        return
    around = [item.enclosure, *(container.materials for container in item.containers[:1])]
    if any(holds(words, ("buffered",)) for words in around):
        message = "A cyanotype in buffered paper: unbuffered is safe by every source, so change it at the next turn."
        yield make_finding("housing.buffered-cyanotype", Severity.NOTE, message, "NEDCC 5.5", *BUFFERED_SIDES)


def _untested(container: Container) -> Iterator[Finding]:
    if container.kind in ("box", "folder", "album", "sleeve") and container.materials and not container.tested:
        advice = "ask the seller whether it passed ISO 18916 and meets ISO 18902."
        message = f"No test mark is known for {container.mark.long}: {advice}"
        yield make_finding(
            "housing.untested",
            Severity.NOTE,
            message,
            "NEDCC 5.5, 5.6",
            "“acid-free” or “archival” alone proves nothing",
        )


def _container_material(container: Container) -> Iterator[Finding]:
    for material in materials_in(container.materials):
        if material.good is not Good.GOOD:
            yield _bad(f"{container.mark.long} is {_named(material)}: house what is in it", material)


def _fullness(container: Container) -> Iterator[Finding]:
    count = len(container.items)
    source = "do not overfill; a spacer in a half-full box: common practice, a museum's guide"
    if container.fullness == "overfull" or (container.capacity and count > container.capacity):
        because = f"{several(count, 'item')}, room for {container.capacity}" if container.capacity else "as seen"
        message = f"{container.mark.long} is overfull: things bend and tear going in and out. Take a second one."
        yield make_finding("housing.overfull", Severity.ASK, message, source, because)
    elif container.fullness == "half-empty" or (
        container.kind == "box" and container.capacity and count and count < HALF * container.capacity
    ):
        because = f"{several(count, 'item')}, room for {container.capacity}" if container.capacity else "as seen"
        message = f"{container.mark.long} is half empty: things slump and curl. Put a spacer of tested board in it."
        yield make_finding("housing.half-empty", Severity.NOTE, message, source, because)


def _surroundings(container: Container) -> Iterator[Finding]:
    for words in sorted(container.surroundings):
        for row in SURROUNDINGS:
            if holds(words, row.words) and not holds(words, ("dehumidified",)):
                message = f"{container.mark.long} stands badly ({words}): {row.why}."
                yield make_finding(f"housing.{row.name}", Severity.ASK, message, row.source)


RULES: tuple[HousingRule, ...] = (_attached, _material, _plastic_in_damp, _shared_sleeve, _facing_board, _buffered)
CONTAINER_RULES: tuple[Callable[[Container], Iterator[Finding]], ...] = (
    _untested,
    _container_material,
    _fullness,
    _surroundings,
)
