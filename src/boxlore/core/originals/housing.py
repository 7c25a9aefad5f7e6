"""How an original is housed, and what that does to it: rules that look and return findings, all at once.

Rule kept: each finding says why and who says so; where the sources disagree it says that too and takes the side that
is safe under both. The tables, with their sources, are in `core.originals.housing_table`.
"""

import re
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass

from boxlore.core.findings import Finding, Severity
from boxlore.core.originals.housing_table import (
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
from boxlore.core.records.containers import Container

MOUNTED = ("cabinet", "carte", "card", "mount", "stereo")
UNBUFFERED = ("cyanotype",)
HALF = 0.5


@dataclass(frozen=True, slots=True, kw_only=True)
class Housed:
    """One item and all that is around it. `enclosure` and `attached` are the words of whoever looked.

    `containers` innermost first. `humidity` is the mean of the location's log in percent, or None. `shares` counts
    the items that lie in the same sleeve, this one included.
    """

    kind: str = "print"
    process: str = ""
    enclosure: str = ""
    attached: tuple[str, ...] = ()
    containers: tuple[Container, ...] = ()
    humidity: float | None = None
    shares: int = 1


HousingRule = Callable[[Housed], Iterator[Finding]]


def housing_findings(one: Housed) -> list[Finding]:
    """Every finding about how one item is housed, in the order of RULES."""
    return [finding for rule in RULES for finding in rule(one)]


def container_findings(one: Container) -> list[Finding]:
    """Every finding about one container and where it stands."""
    return [finding for rule in CONTAINER_RULES for finding in rule(one)]


_CLAUSES = re.compile(r"[,;.()“”\"/]|\bbut\b")
_DENIED = re.compile(r"\b(?:no|not|none|without|free of)\b")


def holds(words: str, wanted: Iterable[str]) -> bool:
    """Whether any of the wanted words begins a word of the text, in any case. “No paper clip” does not hold a clip:
    what is denied is denied to the end of its clause.

    A wanted word that ends in a blank must be a whole word; one that begins with = must be the whole text.
    """
    text = words.casefold()
    return any(
        text.strip() == one[1:] if one.startswith("=") else any(_in_clause(f" {part} ", one) for part in parts)
        for parts in [_CLAUSES.split(text)]
        for one in wanted
    )


def _in_clause(clause: str, wanted: str) -> bool:
    at = clause.find(f" {wanted}")
    return at >= 0 and not _DENIED.search(clause[:at])


def materials_in(words: str) -> list[EnclosureMaterial]:
    """The materials that a text names."""
    return [one for one in MATERIALS if holds(words, one.words)]


def _attached(one: Housed) -> Iterator[Finding]:
    for words in one.attached:
        row = next((row for row in ATTACHED if holds(words, row.words)), None)
        if row is not None:
            message = f"Still on it: {words}. {row.do}"
            yield _ask(f"housing.{row.name}", message, row.source, f"{row.why}")


def _material(one: Housed) -> Iterator[Finding]:
    for material in materials_in(one.enclosure):
        if material.good is not Good.GOOD:
            yield _bad(f"Its enclosure is {_named(material)}", material)


def _named(material: EnclosureMaterial) -> str:
    return {"magnetic page": "a magnetic page", "pvc": "PVC"}.get(material.name, material.name)


def _bad(what: str, material: EnclosureMaterial) -> Finding:
    rule = f"housing.{material.name.replace(' ', '-')}"
    if material.good is Good.DISPUTED:
        because = (material.why, f"Sources disagree: {material.source}; {material.otherwise}.")
        return _note(rule, f"{what}: polyester or polypropylene are good by all.", material.source, *because)
    return _ask(rule, f"{what}: house it in polyester, polypropylene or tested paper.", material.source, material.why)


def _plastic_in_damp(one: Housed) -> Iterator[Finding]:
    plastics = [material for material in materials_in(one.enclosure) if material.plastic]
    if not plastics:
        return
    around = {words for container in one.containers for words in container.surroundings}
    damp = [words for words in around if holds(words, DAMP_WORDS)]
    measured = one.humidity is not None and one.humidity >= 65
    if measured or (damp and one.humidity is None):
        why = f"mean {one.humidity:.0f} % RH by the log" if measured else f"it stands in: {', '.join(sorted(damp))}"
        message = "A plastic sleeve in a damp room: the picture may stick to it. Use paper there, or another room."
        yield _ask("housing.plastic-damp", message, DAMP_SOURCE, why)


def _shared_sleeve(one: Housed) -> Iterator[Finding]:
    if one.shares > 1 and (holds(one.kind, MOUNTED) or holds(one.process, MOUNTED)):
        message = f"{one.shares} items share a sleeve, and this one is mounted: its board rubs and stains the other."
        yield _ask("housing.shared-sleeve", message, "one item to a sleeve: common practice, a museum's guide")


def _facing_board(one: Housed) -> Iterator[Finding]:
    if holds(one.enclosure, ("facing board", "against a board", "board against", "facing a board")) and not holds(
        one.enclosure, ("interleav",)
    ):
        message = "A board faces the picture with nothing between: lay tested paper between them."
        yield _ask("housing.board", message, PRACTICE, "old boards are acid and stain the face that they touch")


def _buffered(one: Housed) -> Iterator[Finding]:
    if not holds(one.process, UNBUFFERED):
        return
    around = [one.enclosure, *(container.materials for container in one.containers[:1])]
    if any(holds(words, ("buffered",)) for words in around):
        message = "A cyanotype in buffered paper: unbuffered is safe by every source, so change it at the next turn."
        yield _note("housing.buffered-cyanotype", message, "NEDCC 5.5", *BUFFERED_SIDES)


def _untested(one: Container) -> Iterator[Finding]:
    if one.kind in ("box", "folder", "album", "sleeve") and one.materials and not one.tested:
        asked = "ask the seller whether it passed ISO 18916 and meets ISO 18902."
        message = f"No test mark is known for {one.mark.long}: {asked}"
        yield _note("housing.untested", message, "NEDCC 5.5, 5.6", "“acid-free” or “archival” alone proves nothing")


def _container_material(one: Container) -> Iterator[Finding]:
    for material in materials_in(one.materials):
        if material.good is not Good.GOOD:
            yield _bad(f"{one.mark.long} is {_named(material)}", material)


def _fullness(one: Container) -> Iterator[Finding]:
    count = len(one.items)
    source = "do not overfill; a spacer in a half-full box: common practice, a museum's guide"
    if one.fullness == "overfull" or (one.capacity and count > one.capacity):
        because = f"{count} items, room for {one.capacity}" if one.capacity else "as seen"
        message = f"{one.mark.long} is overfull: things bend and tear going in and out. Take a second one."
        yield _ask("housing.overfull", message, source, because)
    elif one.fullness == "half-empty" or (one.kind == "box" and one.capacity and count and count < HALF * one.capacity):
        because = f"{count} items, room for {one.capacity}" if one.capacity else "as seen"
        message = f"{one.mark.long} is half empty: things slump and curl. Put a spacer of tested board in it."
        yield _note("housing.half-empty", message, source, because)


def _surroundings(one: Container) -> Iterator[Finding]:
    for words in sorted(one.surroundings):
        for row in SURROUNDINGS:
            if holds(words, row.words) and not holds(words, ("dehumidified",)):
                message = f"{one.mark.long} stands badly ({words}): {row.why}."
                yield _ask(f"housing.{row.name}", message, row.source)


def _ask(rule: str, message: str, source: str, *because: str) -> Finding:
    return Finding(rule=rule, severity=Severity.ASK, message=message, because=because, source=source)


def _note(rule: str, message: str, source: str, *because: str) -> Finding:
    return Finding(rule=rule, severity=Severity.NOTE, message=message, because=because, source=source)


RULES: tuple[HousingRule, ...] = (_attached, _material, _plastic_in_damp, _shared_sleeve, _facing_board, _buffered)
CONTAINER_RULES: tuple[Callable[[Container], Iterator[Finding]], ...] = (
    _untested,
    _container_material,
    _fullness,
    _surroundings,
)
