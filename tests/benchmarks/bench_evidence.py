"""What is worked out of 100,000 photographs and 500,000 limits of days: the whole, one answer more; in processor time.

    python tests/benchmarks/bench_evidence.py [ITEMS] [PEER_ITEMS] [SOLVER_ITEMS]

The collection is made up: families of forty with births and parents, each photograph with people shown, an age, a told
date or a range of its own, and ties to its neighbours. Beside it stands a general way to the same shortest paths, of
Bellman and Ford by numpy, and, where `ortools` is there (the extra `dev`), a general solver with the same limits: GLOP,
which has all latest days at once as those with the greatest sum, and all earliest as those with the least. Both must
come to the same days; the ratio is theirs to ours. Neither explains anything.
"""

import importlib
import random
import sys
import time
from collections.abc import Iterator

import numpy as np

from boxlore.core.evidence.claims import Claim, after, not_after, not_before, of_birth, of_item, years_after
from boxlore.core.evidence.network import ORIGIN
from boxlore.core.evidence.working_out import WorkedOut

FAMILY = 40
SHOWN = 3


def claims_of(items: int, drawn: random.Random) -> Iterator[Claim]:
    """About five limits a photograph, all of which can hold: days are drawn first, and what is told follows them."""
    people = items // 20
    born = [drawn.randint(680_000, 690_000) + (person % FAMILY // 8) * 9_500 for person in range(people)]
    for person in range(people):
        day = of_birth(str(person))
        limits = [not_before(day, born[person] - 400), not_after(day, born[person] + 400)] if person % 3 else []
        if person % FAMILY >= 8:
            parent = person - 8
            least = (born[person] - born[parent]) // 366
            limits += years_after(day, of_birth(str(parent)), min(12, least), 80)
        yield Claim(words="born", source="register", limits=tuple(limits))
    for item in range(items):
        day = of_item(str(item))
        family = drawn.randrange(max(people // FAMILY, 1)) * FAMILY
        shown = [family + drawn.randrange(min(FAMILY, people)) for _ in range(SHOWN)]
        taken = max(born[person] for person in shown) + drawn.randint(200, 20_000)
        limits = [limit for person in shown[1:] for limit in after(day, of_birth(str(person)), 0, 40_000)[:1]]
        age = taken - born[shown[0]]
        limits += after(day, of_birth(str(shown[0])), age - 1_500, age + 1_500)
        limits.append(not_after(day, taken + drawn.randint(0, 9_000)))
        yield Claim(words="shown", source="Leida", limits=tuple(limits))


def main(items: int = 100_000, peer_items: int = 100_000, solver_items: int = 5_000) -> None:
    drawn = random.Random(1921)
    claims = list(claims_of(items, drawn))
    limits = sum(len(claim.limits) for claim in claims)
    begun = time.process_time()
    worked = WorkedOut(claims)
    whole = time.process_time() - begun
    print(f"{items} items, {limits} limits: {whole:.2f} s, {len(worked.circles)} circles")
    more = []
    for _ in range(1000):
        day = of_item(str(drawn.randrange(items)))
        first, last = worked.bounds(day)
        assert first is not None and last is not None
        middle = (first + last) // 2
        answer = Claim(words="that year", source="Leida",
                       limits=(not_before(day, middle - 183), not_after(day, middle + 183)))  # fmt: skip
        begun = time.process_time()
        worked.add(answer)
        more.append(time.process_time() - begun)
    more.sort()
    median, late, worst = (more[place] * 1000 for place in (500, 950, -1))
    print(f"one answer more: {median:.2f} ms median, {late:.2f} ms p95, {worst:.1f} ms worst")
    beside_a_peer(peer_items)
    beside_a_general_solver(solver_items)


def beside_a_peer(items: int) -> None:
    """The method of Bellman and Ford as textbooks have it, each round over all limits at once, by numpy."""
    claims = list(claims_of(items, random.Random(1937)))
    begun = time.process_time()
    worked = WorkedOut(claims)
    ours = time.process_time() - begun
    begun = time.process_time()
    limits = [limit for claim in claims for limit in claim.limits]
    number = {
        name: place for place, name in enumerate({ORIGIN: 0, **{day: 0 for limit in limits for day in limit[:2]}})
    }
    later = np.array([number[limit.later] for limit in limits])
    earlier = np.array([number[limit.earlier] for limit in limits])
    days = np.array([limit.days for limit in limits], dtype=np.float64)
    ends = []
    for begins, reached in ((earlier, later), (later, earlier)):
        labels = np.full(len(number), np.inf)
        labels[0] = 0
        for _ in number:
            before = labels.copy()
            np.minimum.at(labels, reached, labels[begins] + days)
            if np.array_equal(before, labels):
                break
        ends.append(labels)
    theirs = time.process_time() - begun
    for name, place in number.items():
        first, last = worked.bounds(name)
        if name != ORIGIN:
            assert ends[0][place] == (np.inf if last is None else last), name
            assert -ends[1][place] == (-np.inf if first is None else first), name
    print(f"{items} items, both ends: ours {ours:.2f} s, numpy {theirs:.2f} s: {theirs / ours:.2f} times ours")


NO_BOUND = 2_000_000
"""A number of days before and behind which the solver looks for nothing: it needs an end."""


def beside_a_general_solver(items: int) -> None:
    try:
        solvers = importlib.import_module("ortools.linear_solver.pywraplp")
    except ImportError:
        print("No general solver beside it: ortools is not installed (pip install '.[dev]').")
        return
    claims = list(claims_of(items, random.Random(1949)))
    begun = time.process_time()
    worked = WorkedOut(claims)
    ours = time.process_time() - begun
    begun = time.process_time()
    solver = solvers.Solver.CreateSolver("GLOP")
    names = {day for claim in claims for limit in claim.limits for day in limit[:2]}
    variables = {name: solver.NumVar(-NO_BOUND, NO_BOUND, name) for name in sorted(names)}
    variables[ORIGIN].SetBounds(0, 0)
    for claim in claims:
        for later, earlier, days in claim.limits:
            solver.Add(variables[later] - variables[earlier] <= days)
    ends = []
    for sense in (solver.Minimize, solver.Maximize):
        sense(sum(variables.values()))
        assert solver.Solve() == solver.OPTIMAL
        ends.append({name: round(variable.solution_value()) for name, variable in variables.items()})
    theirs = time.process_time() - begun
    for name in names - {ORIGIN}:
        bounds = worked.bounds(name)
        told = [None if abs(end[name]) > NO_BOUND // 2 else end[name] for end in ends]
        assert list(bounds) == told, name
    print(
        f"{items} items, both ends: ours {ours:.2f} s, GLOP of ortools {theirs:.2f} s: {theirs / ours:.0f} times ours"
    )


if __name__ == "__main__":
    main(*map(int, sys.argv[1:]))
