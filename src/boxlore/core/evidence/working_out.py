"""What follows from all claims: between which days each day lies, why, and which claims cannot all be so.

Strong claims come first: those that are sure, then what is likely, then guesses. Where claims cannot all be so, the
smallest circle of them is kept as the explanation, and one claim is taken out, so that the others are still held
against everything else: a second contradiction shows although it shares a claim with the first, and no guess bounds
what something sure speaks against. Then each other claim of the circle is taken out in its place for a moment, for the
one that was out may contradict others too (`_look_behind`).

Nothing told is changed by that. What is reckoned with until somebody has said which is so:

- The guesses of a circle give way, if there are any; else what it says of pictures, for a life or an event is what
  many pictures are held against; else all of it. A claim that speaks against several pictures gives way too.
- Of those that give way one is not so, and nobody knows which. So each in turn is supposed not to be so, and what
  follows whichever it is still bounds a day: of two who tell 1901 and 1910, it was 1901 to 1910. So no day is bounded
  but by what holds in every least choice of claims, one of each circle, that would make the rest possible.

Alternatives (“1908 or 1910”, a summer of unknown year) are kept as spans of one day. The bounds of the day are drawn
in to the spans that they still meet, which may draw in others. That takes away only days that no solution has, so that
what is worked out is never too narrow; it may be too wide where alternatives of several days hang together.

Smallest: a circle of arrows is taken, and each of its claims is left out in turn, the weakest first, and stays out
where the rest still cannot all be so. Every claim that is left is needed.
"""

from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

from boxlore.core.evidence.claims import Claim, is_of_an_item, not_after, not_before
from boxlore.core.evidence.network import ORIGIN, Limit, Network
from boxlore.core.statements import SURENESS, Sure

LAYERS = (Sure.SURE, Sure.LIKELY, Sure.GUESS)


@dataclass(frozen=True, slots=True)
class Circle:
    """Claims that cannot all be so, each of them needed for that; of those `set_aside` one is not so, as it seems."""

    claims: tuple[Claim, ...]
    set_aside: tuple[Claim, ...]


class _Reckoning:
    """A network with the claims that own its limits, and their choices."""

    def __init__(self) -> None:
        self.network = Network()
        self.claims: list[Claim] = []
        self._open: dict[str, dict[int, Claim]] = {}
        self._to_see: set[str] = set()

    def add(self, claim: Claim) -> None:
        self.claims.append(claim)
        self.put_back(len(self.claims) - 1)

    def put_back(self, owner: int) -> None:
        claim = self.claims[owner]
        for limit in all_limits(claim):
            self.network.add(limit, owner)
        if claim.choices:
            self._open.setdefault(claim.chosen, {})[owner] = claim
            self._to_see.add(claim.chosen)

    def settle(self) -> list[int] | None:
        """Work out what follows, alternatives too; the numbers of claims that cannot all be so, if there are any."""
        while True:
            if (circle := self.network.settle()) is not None:
                return circle
            self._to_see |= self.network.moved() & self._open.keys()
            if not self._to_see:
                return None
            for day in sorted(self._to_see):
                for owner, claim in self._open[day].items():
                    if (circle := self._draw_in(owner, claim)) is not None:
                        return circle
                self._to_see.discard(day)

    def _draw_in(self, owner: int, claim: Claim) -> list[int] | None:
        """Draw in the bounds of a day to the spans that they meet; the claims that cannot all be so, if none does."""
        first, last = self.network.reached(claim.chosen)
        meets = [span for span in claim.choices if span[0] <= last and span[1] >= first]
        if meets == list(claim.choices):
            return None
        earliest, latest = self.network.reasons(claim.chosen)
        if not meets:
            return list(dict.fromkeys((owner, *earliest, *latest)))
        if (begins := min(span[0] for span in meets)) > first:
            self.network.add(not_before(claim.chosen, begins), *dict.fromkeys((owner, *earliest)))
        if (ends := max(span[1] for span in meets)) < last:
            self.network.add(not_after(claim.chosen, ends), *dict.fromkeys((owner, *latest)))
        return None

    def take_out(self, owner: int) -> None:
        self.network.forget(owner)
        self._open.get(self.claims[owner].chosen, {}).pop(owner, None)


def all_limits(claim: Claim) -> tuple[Limit, ...]:
    """The limits of a claim, with those around all its choices."""
    if not claim.choices:
        return claim.limits
    first, last = min(first for first, _ in claim.choices), max(last for _, last in claim.choices)
    return (*claim.limits, not_before(claim.chosen, first), not_after(claim.chosen, last))


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
        self._met: list[tuple[int, ...]] = []
        self._known: set[tuple[int, ...]] = set()
        self._out: list[int] = []
        self._aside: list[int] = []
        self._shared: dict[int, tuple[int, ...]] = {}
        self.circles: list[Circle] = []
        self._by_day: dict[str, list[Circle]] = {}
        by_sure: dict[Sure, list[Claim]] = {sure: [] for sure in LAYERS}
        for claim in claims:
            by_sure[claim.sure].append(claim)
        for layer in LAYERS:
            for claim in by_sure[layer]:
                self._reckoning.add(claim)
            self._settle(self._out)
        self._conclude(0)

    def add(self, claim: Claim) -> None:
        """A claim more, as an answer in a sitting is one."""
        for owner in self._shared:
            self._reckoning.take_out(owner)
        for owner in self._aside:
            self._reckoning.put_back(owner)
        self._reckoning.add(claim)
        met = len(self._met)
        self._settle(self._out)
        self._conclude(met)

    def _settle(self, out: list[int], keep: int = -1) -> None:
        """Meet circles until the rest can all be so, and put into `out` what is taken out for that; of a circle with
        the claim `keep`, another one."""
        claims = self._reckoning.claims
        while (owners := self._reckoning.settle()) is not None:
            number = {id(claims[owner]): owner for owner in sorted(owners)}
            circle = tuple(number[id(claim)] for claim in smallest([claims[owner] for owner in number.values()]))
            if circle not in self._known:
                self._known.add(circle)
                self._met.append(circle)
            gives_way = [owner for owner in self._give_way(circle) if owner != keep] or circle
            self._reckoning.take_out(gives_way[-1])
            out.append(gives_way[-1])

    def _give_way(self, circle: Sequence[int]) -> Sequence[int]:
        claims = self._reckoning.claims
        guesses = [owner for owner in circle if claims[owner].sure is Sure.GUESS]
        return guesses or [owner for owner in circle if any(map(is_of_an_item, days_of(claims[owner])))] or circle

    def _look_behind(self, met: int) -> None:
        """Of each circle from number `met` on, take out another claim than the one that is out, and meet what it
        contradicts besides. A guess that has given way is not looked into any further."""
        claims, out = self._reckoning.claims, set(self._out)
        for circle in self._met[met:]:
            for back in [owner for owner in circle if owner in out and claims[owner].sure is not Sure.GUESS]:
                for instead in [owner for owner in circle if owner not in out]:
                    self._reckoning.take_out(instead)
                    self._reckoning.put_back(back)
                    taken = [instead]
                    self._settle(taken, keep=back)
                    self._reckoning.take_out(back)
                    for owner in {*taken} - {back}:
                        self._reckoning.put_back(owner)
                    self._reckoning.settle()

    def _conclude(self, met: int) -> None:
        """What gives way in each circle that was met, and what follows all the same."""
        self._look_behind(met)
        claims = self._reckoning.claims
        ways = [list(self._give_way(circle)) for circle in self._met]
        doubted = self._doubted()
        for circle, way in zip(self._met, ways, strict=True):
            way += [owner for owner in circle if owner in doubted and circle in doubted[owner] and owner not in way]
        self._aside = sorted({owner for way in ways for owner in way} - {*self._out})
        for owner in self._aside:
            self._reckoning.take_out(owner)
        self._reckoning.settle()
        self._shared = {}
        in_ways = Counter(owner for way in ways for owner in way)
        whichever = [self._whichever(way, in_ways) for way in ways]
        for follows, owners in zip(whichever, self._met, strict=True):
            if follows and self._reckoning.network.gained(follows) is not None:
                self._shared[len(claims)] = tuple(owners)
                self._reckoning.add(Claim(words="whichever is not so", source="", limits=follows))
                self._reckoning.settle()
        self.circles, self._by_day = [], {}
        for circle, way in zip(self._met, ways, strict=True):
            self._keep(Circle(tuple(claims[owner] for owner in circle), tuple(claims[owner] for owner in way)))

    def _doubted(self) -> dict[int, set[tuple[int, ...]]]:
        """Claims that stand in circles of several pictures, or of one and of none, each with its circles; a guess casts
        no doubt on the others."""
        claims = self._reckoning.claims
        circles: dict[int, set[tuple[int, ...]]] = {}
        pictures: dict[int, set[frozenset[str]]] = {}
        for circle in self._met:
            if any(claims[owner].sure is Sure.GUESS for owner in circle):
                continue
            shown = frozenset(day for owner in circle for day in days_of(claims[owner]) if is_of_an_item(day))
            for owner in circle:
                circles.setdefault(owner, set()).add(circle)
                pictures.setdefault(owner, set()).add(shown)
        return {owner: met for owner, met in circles.items() if len(pictures[owner]) > 1}

    def _whichever(self, way: Sequence[int], ways: Mapping[int, int]) -> tuple[Limit, ...]:
        """Limits of days that hold whichever claim that gives way in a circle is not so. Where it is one that stands in
        others too, more such may be wrong; else it is the only one here. `ways` has in how many a claim gives way."""
        own = [owner for owner in way if ways[owner] == 1]
        supposed = [[owner for owner in way if owner != wrong] for wrong in own]
        if len(own) < len(way):
            supposed.append(own)
        claims, network = self._reckoning.claims, self._reckoning.network
        found = [
            bounds
            for rest in supposed
            if (bounds := network.supposing(limit for owner in rest for limit in all_limits(claims[owner]))) is not None
        ]
        days = set(found[0]).intersection(*found[1:]) if found else ()
        limits: list[Limit] = []
        for day in sorted(days):
            firsts, lasts = zip(*(bounds[day] for bounds in found), strict=True)
            limits += [not_before(day, min(firsts))] if None not in firsts else []
            limits += [not_after(day, max(lasts))] if None not in lasts else []
        return tuple(limits)

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
        owners = dict.fromkeys(each for owner in (*earliest, *latest) for each in self._shared.get(owner, (owner,)))
        return tuple(self._reckoning.claims[owner] for owner in owners)

    def gained(self, limits: Iterable[Limit]) -> dict[str, int] | None:
        """How many days narrower the others would be with these limits; None if they cannot hold."""
        return self._reckoning.network.gained(limits)

    @property
    def claims(self) -> Sequence[Claim]:
        """Every claim, those that are set aside too."""
        return [claim for owner, claim in enumerate(self._reckoning.claims) if owner not in self._shared]

    def circles_of(self, day: str) -> tuple[Circle, ...]:
        """The circles in which something is said of a day."""
        return tuple(self._by_day.get(day, ()))
