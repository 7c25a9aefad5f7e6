"""Contradictions as a person counts them: what comes of one wrong claim is one disagreement, in however many circles.

A circle tells of the same as a shorter one, or as one of the same pictures that is as long, if both hold one claim of a
picture that gives way in both: were that claim not so, neither would be there. A life or an event is what many pictures
are held against; two pictures that both speak against a death, or against the day of a third, stay two disagreements.
"""

from collections.abc import Iterable
from dataclasses import dataclass

from boxlore.core.evidence.claims import Claim, is_of_an_item
from boxlore.core.evidence.working_out import Circle, days_of


@dataclass(frozen=True, slots=True)
class Disagreement:
    """The shortest circle, and the others that tell of the same."""

    circle: Circle
    others: tuple[Circle, ...] = ()

    @property
    def besides(self) -> tuple[Claim, ...]:
        """What the others hold that the shortest does not."""
        held = set(self.circle.claims)
        return tuple(dict.fromkeys(claim for other in self.others for claim in other.claims if claim not in held))


def disagreements(circles: Iterable[Circle]) -> list[Disagreement]:
    """In the order in which the shortest circle of each was met."""
    met = list(circles)
    groups: list[list[Circle]] = []
    by_claim: dict[Claim, list[list[Circle]]] = {}
    for circle in sorted(met, key=lambda circle: len(circle.claims)):
        shared = _of_pictures(circle)
        beside = [group for claim in shared for group in by_claim.get(claim, ()) if _is_told_by(circle, group[0])]
        group = beside[0] if beside else []
        group.append(circle)
        if not beside:
            groups.append(group)
            for claim in shared:
                by_claim.setdefault(claim, []).append(group)
    place = {id(circle): number for number, circle in enumerate(met)}
    groups.sort(key=lambda group: place[id(group[0])])
    return [Disagreement(first, tuple(others)) for first, *others in groups]


def _of_pictures(circle: Circle) -> list[Claim]:
    return [claim for claim in circle.set_aside if any(map(is_of_an_item, days_of(claim)))]


def by_day(found: Iterable[Disagreement]) -> dict[str, list[Disagreement]]:
    """The disagreements whose shortest circle says something of a day, for each day."""
    days: dict[str, list[Disagreement]] = {}
    for each in found:
        for day in {day for claim in each.circle.claims for day in days_of(claim)}:
            days.setdefault(day, []).append(each)
    return days


def _is_told_by(circle: Circle, shorter: Circle) -> bool:
    return len(shorter.claims) < len(circle.claims) or _pictures(shorter) == _pictures(circle)


def _pictures(circle: Circle) -> set[str]:
    return {day for claim in circle.claims for day in days_of(claim) if is_of_an_item(day)}
