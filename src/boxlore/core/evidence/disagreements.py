"""Contradictions as a person counts them: what comes of one wrong claim is one disagreement, in however many circles.

A circle tells of the same as a shorter one (or one as long that was met before) if both hold one claim of a picture
that gives way in both: were that claim not so, neither would be there. A life or an event is what many pictures are
held against; two pictures that both speak against a death stay two disagreements.
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
    by_claim: dict[Claim, list[Circle]] = {}
    for circle in sorted(met, key=lambda circle: len(circle.claims)):
        shared = _of_pictures(circle)
        group = next((by_claim[claim] for claim in shared if claim in by_claim), None)
        if group is None:
            groups.append(group := [])
            by_claim |= dict.fromkeys(shared, group)
        group.append(circle)
    place = {id(circle): number for number, circle in enumerate(met)}
    groups.sort(key=lambda group: place[id(group[0])])
    return [Disagreement(first, tuple(others)) for first, *others in groups]


def _of_pictures(circle: Circle) -> list[Claim]:
    return [claim for claim in circle.set_aside if any(map(is_of_an_item, days_of(claim)))]
