"""What follows, against all solutions of small networks tried one by one (Dechter, Meiri and Pearl 1991: the bounds of
a simple temporal problem are exact, and there is none if and only if a circle is below 0)."""

from collections.abc import Iterator
from itertools import product

from hypothesis import given
from hypothesis import strategies as st
from tests.drawn import drawn

from boxlore.core.evidence.claims import Claim, not_after, not_before
from boxlore.core.evidence.network import Limit
from boxlore.core.evidence.working_out import WorkedOut, can_all_be, smallest
from boxlore.core.statements import Sure

DAYS = ("item a", "item b", "birth c")
A, B, C = DAYS
LAST = 5
"""Every day lies within 0 and LAST, so that all solutions can be tried."""

WINDOW = Claim(
    words="within the window",
    source="test",
    limits=tuple(limit for day in DAYS for limit in (not_before(day, 0), not_after(day, LAST))),
)

limits = st.builds(Limit, st.sampled_from(("", *DAYS)), st.sampled_from(("", *DAYS)), st.integers(-LAST, LAST)).filter(
    lambda limit: limit.later != limit.earlier
)
spans = st.tuples(st.integers(0, LAST), st.integers(0, 1)).map(lambda span: (span[0], span[0] + span[1]))


def claims_of(sures: st.SearchStrategy[Sure], choices: bool) -> st.SearchStrategy[list[Claim]]:
    plain = st.builds(
        lambda limits, sure: Claim(words="said", source="test", sure=sure, limits=tuple(limits)),
        st.lists(limits, min_size=1, max_size=2),
        sures,
    )
    chosen = st.builds(
        lambda day, spans, sure: Claim(words="or", source="test", sure=sure, chosen=day, choices=tuple(spans)),
        st.sampled_from(DAYS),
        st.lists(spans, min_size=1, max_size=3),
        sures,
    )
    return st.lists(st.one_of(plain, chosen) if choices else plain, max_size=8)


def solutions(claims: list[Claim]) -> list[dict[str, int]]:
    """Every choice of all days within the window that keeps all that is claimed."""
    return list(_kept(claims, range(LAST + 1)))


def is_possible(claims: list[Claim]) -> bool:
    """Whether any days keep all that is claimed: a path of three limits is no longer than three times LAST."""
    return any(True for _ in _kept(claims, range(-3 * LAST, 3 * LAST + 1)))


def least_repairs(worked: WorkedOut) -> Iterator[set[int]]:
    """Every choice of claims, of those that give way, with one of each circle, and none that it could do without."""
    aside = [{id(claim) for claim in circle.set_aside} for circle in worked.circles]
    for chosen in map(set, product(*aside)):
        if all(any(not circle & (chosen - {one}) for circle in aside) for one in chosen):
            yield chosen


def _kept(claims: list[Claim], numbers_tried: range) -> Iterator[dict[str, int]]:
    return (
        days
        for numbers in product(numbers_tried, repeat=len(DAYS))
        if (days := {"": 0, **dict(zip(DAYS, numbers, strict=True))})
        and all(
            all(days[limit.later] - days[limit.earlier] <= limit.days for limit in claim.limits)
            and (not claim.choices or any(first <= days[claim.chosen] <= last for first, last in claim.choices))
            for claim in claims
        )
    )


@given(claims_of(st.just(Sure.SURE), choices=False))
@drawn(120)
def test_bounds_are_exact_and_each_of_a_circle_is_needed(claims: list[Claim]) -> None:
    worked = WorkedOut([WINDOW, *claims])
    tried = solutions(claims)
    assert bool(tried) == (not worked.circles) == can_all_be([WINDOW, *claims])
    for day in DAYS if tried else ():
        assert worked.bounds(day) == (min(days[day] for days in tried), max(days[day] for days in tried))
    for circle in worked.circles:
        assert not solutions(list(circle.claims)) and set(map(id, circle.set_aside)) <= set(map(id, circle.claims))
        for left_out in circle.claims:
            rest = [claim for claim in circle.claims if claim is not left_out]
            assert can_all_be(rest) and is_possible(rest)


@given(claims_of(st.sampled_from([Sure.SURE, Sure.LIKELY, Sure.GUESS]), choices=True))
@drawn(120)
def test_never_too_narrow_with_alternatives_and_what_is_set_aside(claims: list[Claim]) -> None:
    worked = WorkedOut([WINDOW, *claims])
    for repair in least_repairs(worked):
        if id(WINDOW) in repair:
            continue
        tried = solutions([claim for claim in claims if id(claim) not in repair])
        for day in DAYS:
            first, last = worked.bounds(day)
            assert all((first is None or first <= days[day]) and (last is None or days[day] <= last) for days in tried)
    for circle in worked.circles:
        assert not solutions(list(circle.claims))
        assert all(can_all_be([claim for claim in circle.claims if claim is not out]) for out in circle.claims)
    if not claims or solutions(claims):
        assert not worked.circles


@given(claims_of(st.just(Sure.SURE), choices=False), claims_of(st.just(Sure.SURE), choices=False))
@drawn(120)
def test_one_by_one_comes_to_the_same(early: list[Claim], late: list[Claim]) -> None:
    worked = WorkedOut([WINDOW, *early])
    for claim in late:
        worked.add(claim)
    if not worked.circles:
        at_once = WorkedOut([WINDOW, *early, *late])
        assert [worked.bounds(day) for day in DAYS] == [at_once.bounds(day) for day in DAYS]
    aside = {id(claim) for circle in worked.circles for claim in circle.set_aside}
    kept = WorkedOut([claim for claim in (WINDOW, *early, *late) if id(claim) not in aside])
    assert not kept.circles
    for day in DAYS:
        (first, last), (least, most) = worked.bounds(day), kept.bounds(day)
        assert least is None or (first is not None and first >= least)
        assert most is None or (last is not None and last <= most)
    assert all(worked.because(day) for day in DAYS if worked.bounds(day) != (None, None))


@given(claims_of(st.just(Sure.SURE), choices=False), st.sampled_from(DAYS), st.integers(0, LAST))
@drawn(120)
def test_what_an_answer_would_gain_is_what_it_gains_and_leaves_nothing_behind(
    claims: list[Claim], day: str, number: int
) -> None:
    worked = WorkedOut([WINDOW, *claims])
    before = {name: worked.bounds(name) for name in DAYS}
    answer = (not_before(day, number), not_after(day, number))
    gained = worked.gained(answer)
    assert {name: worked.bounds(name) for name in DAYS} == before
    circles = len(worked.circles)
    worked.add(Claim(words="the answer", source="test", limits=answer))
    assert circles or (gained is None) == bool(worked.circles)
    if gained is None or worked.circles:
        return
    for name in DAYS:
        (first, last), (first_then, last_then) = worked.bounds(name), before[name]
        if first is not None and last is not None and first_then is not None and last_then is not None:
            assert gained.get(name, 0) == (last_then - first_then) - (last - first)


def test_a_circle_that_touches_no_known_day_is_found() -> None:
    one = Claim(words="a is before b", source="Leida", limits=(Limit("a", "b", -1),))
    other = Claim(words="b is before a", source="Arvo", limits=(Limit("b", "a", -1),))
    worked = WorkedOut([one, other])
    assert {claim.words for claim in worked.circles[0].claims} == {"a is before b", "b is before a"}
    assert worked.bounds("a") == (None, None) == worked.bounds("never heard of")
    assert (
        worked.because("a") == ()
        and list(worked.circles_of("a")) == worked.circles
        and not list(worked.circles_of("c"))
    )


def between(words: str, day: str, first: int, last: int, sure: Sure = Sure.SURE) -> Claim:
    return Claim(words=words, source="Leida", sure=sure, limits=(not_before(day, first), not_after(day, last)))


BORN = between("born on day 10", C, 10, 10)
SHOWN = Claim(words="Liisi is shown", source="Leida", sure=Sure.LIKELY, limits=(Limit(C, A, 0),))


def test_a_guess_gives_way() -> None:
    guess = between("by day 5", A, 0, 5, Sure.GUESS)
    worked = WorkedOut([guess, SHOWN, BORN])
    assert [claim.words for claim in worked.circles[0].set_aside] == ["by day 5"]
    assert worked.bounds(A) == (10, None) and worked.because(A) == (SHOWN, BORN)
    assert smallest([guess, SHOWN, BORN]) == [BORN, SHOWN, guess]


def test_what_is_told_of_a_picture_gives_way_to_a_life_and_whichever_is_not_so_still_bounds_it() -> None:
    written = between("on day 4", A, 4, 4)
    disputed = WorkedOut([SHOWN, BORN, written])
    assert set(disputed.circles[0].set_aside) == {SHOWN, written} and disputed.bounds(C) == (10, 10)
    assert disputed.bounds(A) == (4, None) and set(disputed.because(A)) == {SHOWN, BORN, written}
    other = between("on day 6", A, 6, 6)
    twice = WorkedOut([written, other])
    assert twice.bounds(A) == (4, 6) and set(twice.because(A)) == {written, other}
    lives = WorkedOut([BORN, between("born on day 12", C, 12, 12)])
    assert lives.bounds(C) == (10, 12) and len(lives.circles[0].set_aside) == 2


DIED = between("died on day 10", C, 10, 10)


def alive_in(day: str, sure: Sure = Sure.LIKELY) -> Claim:
    return Claim(words=f"alive in {day}", source="Leida", sure=sure, limits=(Limit(day, C, 0),))


def test_a_second_contradiction_shows_beside_the_first_and_what_both_share_is_doubted() -> None:
    """Two pictures of somebody, both dated to after the death that is told."""
    first, second = between("on day 20", A, 20, 20), between("on day 25", B, 25, 25)
    worked = WorkedOut([DIED, first, second, alive_in(A), alive_in(B)])
    assert [len(circle.claims) for circle in worked.circles] == [3, 3]
    assert all(DIED in circle.set_aside for circle in worked.circles)
    assert worked.bounds(C) == (10, None), "both pictures may be right, and then it was later"
    assert worked.bounds(A) == (None, 20) and worked.bounds(B) == (None, 25)


def test_what_one_picture_says_twice_casts_no_doubt_on_a_life() -> None:
    again = between("on day 21", A, 21, 21)
    worked = WorkedOut([DIED, between("on day 20", A, 20, 21), again, alive_in(A)])
    assert len(worked.circles) == 2 and worked.bounds(C) == (10, 10)


def test_no_guess_bounds_what_a_contradiction_left_open() -> None:
    """A picture dated after a death that is told, and a guess that somebody is in another one, later still."""
    first, second = between("on day 20", A, 20, 20), between("on day 25", B, 25, 25)
    worked = WorkedOut([DIED, first, second, alive_in(A), alive_in(B, Sure.GUESS)])
    assert worked.bounds(C) == (10, 10) and worked.bounds(B) == (25, 25)
    assert [[claim.sure for claim in circle.set_aside] for circle in worked.circles] == [
        [Sure.SURE, Sure.LIKELY], [Sure.GUESS],
    ]  # fmt: skip


def test_what_was_taken_out_may_contradict_others_too() -> None:
    """Two dates of one picture, of which the second cannot be beside a death either."""
    early, late = between("on day 8", A, 8, 8), between("on day 20", A, 20, 20)
    worked = WorkedOut([DIED, alive_in(A), early, late])
    found = [{claim.words for claim in circle.claims} for circle in worked.circles]
    assert {"on day 8", "on day 20"} in found and {"on day 20", "died on day 10", "alive in item a"} in found
    assert len(found) == 2 and worked.bounds(C) == (10, 10)


def test_a_contradiction_that_an_answer_brings_is_met_beside_those_that_are_there() -> None:
    early, late = between("on day 8", A, 8, 8), between("on day 20", A, 20, 20)
    worked = WorkedOut([DIED, alive_in(A), early])
    assert not worked.circles and worked.bounds(A) == (8, 8)
    worked.add(late)
    worked.add(between("on day 3", B, 3, 3))
    at_once = WorkedOut([DIED, alive_in(A), early, late])
    assert {frozenset(circle.claims) for circle in worked.circles} == {frozenset(c.claims) for c in at_once.circles}
    assert worked.bounds(A) == at_once.bounds(A) and worked.bounds(B) == (3, 3)


def test_a_span_that_is_left_alone_bounds_both_ends() -> None:
    told = Claim(
        words="1 or 4",
        source="Leida",
        chosen="a",
        choices=((1, 1), (4, 4)),
    )
    late = Claim(words="not before 2", source="Arvo", limits=(not_before("a", 2),))
    assert WorkedOut([told, late]).bounds("a") == (4, 4)
    never = Claim(words="between 2 and 3", source="Arvo", limits=(not_before("a", 2), not_after("a", 3)))
    assert len(WorkedOut([told, never]).circles[0].claims) == 2
