"""What follows from all claims: between which days each day lies, why, and which claims cannot all be so.

Strong claims come first: those that are sure, then what is likely, then guesses. Where claims cannot all be so, the
smallest circle of them is kept as the explanation, and they are set aside: the guesses among them, if there are any,
and else all of them, for somebody who is sure may be as wrong as what is likely by custom. Nothing told is changed by
that; it is only not reckoned with until somebody has said which is so. So what is false in a circle moves no day,
unless a guess gives way to it.

Alternatives (“1908 or 1910”, a summer of unknown year) are kept as spans of one day. The bounds of the day are drawn
in to the spans that they still meet, which may draw in others. That takes away only days that no solution has, so that
what is worked out is never too narrow; it may be too wide where alternatives of several days hang together.

Smallest: a circle of arrows is taken, and each of its claims is left out in turn, the weakest first, and stays out
where the rest still cannot all be so. Every claim that is left is needed.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from boxlore.core.evidence.claims import Claim, not_after, not_before
from boxlore.core.evidence.network import ORIGIN, Limit, Network
from boxlore.core.statements import SURENESS, Sure

LAYERS = (Sure.SURE, Sure.LIKELY, Sure.GUESS)


@dataclass(frozen=True, slots=True)
class Circle:
    """Claims that cannot all be so, each of them needed for that; `set_aside` are not reckoned with."""

    claims: tuple[Claim, ...]
    set_aside: tuple[Claim, ...]


class _Reckoning:
    """A network with the claims that own its limits, and their choices."""

    def __init__(self) -> None:
        self.network = Network()
        self.claims: list[Claim] = []
        self._open: dict[int, Claim] = {}

    def add(self, claim: Claim) -> None:
        owner = len(self.claims)
        self.claims.append(claim)
        for limit in claim.limits:
            self.network.add(limit, owner)
        if claim.choices:
            self._open[owner] = claim
            self.network.add(not_before(claim.chosen, min(first for first, _ in claim.choices)), owner)
            self.network.add(not_after(claim.chosen, max(last for _, last in claim.choices)), owner)

    def settle(self) -> list[int] | None:
        """Work out what follows, alternatives too; the numbers of claims that cannot all be so, if there are any."""
        while True:
            if (circle := self.network.settle()) is not None:
                return circle
            is_narrower = False
            for owner, claim in self._open.items():
                first, last = self.network.reached(claim.chosen)
                meets = [span for span in claim.choices if span[0] <= last and span[1] >= first]
                if meets == list(claim.choices):
                    continue
                earliest, latest = self.network.reasons(claim.chosen)
                if not meets:
                    return list(dict.fromkeys((owner, *earliest, *latest)))
                if (begins := min(span[0] for span in meets)) > first:
                    self.network.add(not_before(claim.chosen, begins), *dict.fromkeys((owner, *earliest)))
                    is_narrower = True
                if (ends := max(span[1] for span in meets)) < last:
                    self.network.add(not_after(claim.chosen, ends), *dict.fromkeys((owner, *latest)))
                    is_narrower = True
            if not is_narrower:
                return None

    def set_aside(self, owner: int) -> None:
        self.network.forget(owner)
        self._open.pop(owner, None)


def days_of(claim: Claim) -> set[str]:
    """The days that a claim says something of, the origin left out."""
    named = {name for limit in claim.limits for name in (limit.later, limit.earlier)}
    return (named | {claim.chosen}) - {ORIGIN}


def can_all_be(claims: Iterable[Claim]) -> bool:
    """Whether nothing is found that speaks against the claims."""
    reckoning = _Reckoning()
    for claim in claims:
        reckoning.add(claim)
    return reckoning.settle() is None


def smallest(claims: Sequence[Claim]) -> list[Claim]:
    """Of claims that cannot all be so, such of which each is needed; the stronger stay rather than the weaker."""
    left = sorted(claims, key=lambda claim: -SURENESS[claim.sure])
    for claim in reversed(left.copy()):
        rest = [other for other in left if other is not claim]
        if not can_all_be(rest):
            left = rest
    return left


class WorkedOut:
    """What follows from claims. `circles` are what cannot all be so, in the order in which it was met."""

    def __init__(self, claims: Iterable[Claim] = ()) -> None:
        self._reckoning = _Reckoning()
        self.circles: list[Circle] = []
        self._by_day: dict[str, list[Circle]] = {}
        by_sure: dict[Sure, list[Claim]] = {sure: [] for sure in LAYERS}
        for claim in claims:
            by_sure[claim.sure].append(claim)
        for layer in LAYERS:
            for claim in by_sure[layer]:
                self._reckoning.add(claim)
            self._settle()

    def add(self, claim: Claim) -> None:
        """A claim more, as an answer in a sitting is one."""
        self._reckoning.add(claim)
        self._settle()

    def _settle(self) -> None:
        while (owners := self._reckoning.settle()) is not None:
            number = {id(self._reckoning.claims[owner]): owner for owner in owners}
            circle = smallest([self._reckoning.claims[owner] for owner in owners])
            aside = [claim for claim in circle if claim.sure is Sure.GUESS] or circle
            for claim in aside:
                self._reckoning.set_aside(number[id(claim)])
            self._keep(Circle(tuple(circle), tuple(aside)))

    def _keep(self, circle: Circle) -> None:
        self.circles.append(circle)
        for day in {day for claim in circle.claims for day in days_of(claim)}:
            self._by_day.setdefault(day, []).append(circle)

    def bounds(self, day: str) -> tuple[int | None, int | None]:
        """The earliest and the latest number of days, None where nothing bounds it."""
        return self._reckoning.network.bounds(day)

    def because(self, day: str) -> tuple[Claim, ...]:
        """What the bounds follow from, first what bounds it from below."""
        earliest, latest = self._reckoning.network.reasons(day)
        return tuple(self._reckoning.claims[owner] for owner in dict.fromkeys((*earliest, *latest)))

    def gained(self, limits: Iterable[Limit]) -> dict[str, int] | None:
        """How many days narrower the others would be with these limits; None if they cannot hold."""
        return self._reckoning.network.gained(limits)

    def circles_of(self, day: str) -> tuple[Circle, ...]:
        """The circles in which something is said of a day."""
        return tuple(self._by_day.get(day, ()))
