"""Plans of moves (rules of our own, no outside source): nothing is lost, nothing is in two places."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.drawn import drawn

from boxlore.core.fields.originals import KEPT_WORDS, Kept
from boxlore.core.originals.moves import (
    KEPT,
    MoveStep,
    Plan,
    Positions,
    close_up,
    contents,
    doubles,
    gaps,
    merge,
    move,
    relabel,
)

HELD: Positions = {"a": Kept("x", 1), "b": Kept("x", 2), "c": Kept("x", 5), "d": Kept("y", 1)}
INSIDE = {"f1": "x", "f2": "y"}
LABELS = {"x": "1", "y": "2", "f1": "1", "f2": "1"}


def carried_out(holding: Positions, plan: Plan) -> dict[str, Kept]:
    """The holding after the steps of a plan that are about items."""
    return {**holding, **{step.subject: KEPT_WORDS.read(step.after) for step in plan.steps if step.field == KEPT}}


def test_a_move_goes_after_the_last() -> None:
    assert move(HELD, ["a", "b"], "y").steps == (
        MoveStep("a", "kept", "x 1", "y 2"),
        MoveStep("b", "kept", "x 2", "y 3"),
    )


def test_a_taken_place_is_a_problem() -> None:
    assert move(HELD, ["d"], "x", 2).problems == ("Place 2 is taken.",)
    assert move(HELD, ["a", "b"], "x", 2).problems == ()


def test_closing_up_keeps_the_order() -> None:
    after = carried_out(HELD, close_up(HELD, "x"))
    assert contents(after, "x") == [("a", 1), ("b", 2), ("c", 3)]
    assert gaps(position for _, position in contents(HELD, "x")) == [3, 4]


def test_an_item_that_lies_right_is_not_moved() -> None:
    assert [step.subject for step in close_up(HELD, "x").steps] == ["c"]
    assert close_up(HELD, "y").steps == ()


def test_a_label_that_is_no_other_is_no_step() -> None:
    assert relabel(LABELS, INSIDE, {"x": "1", "y": "9"}).steps == (MoveStep("y", "label", "2", "9"),)


def test_a_merge_puts_items_after_the_last_and_refuses_two_of_one_label() -> None:
    assert contents(carried_out(HELD, merge(HELD, "y", "x", {}, LABELS)), "x")[-1] == ("d", 6)
    assert "in both" in merge(HELD, "y", "x", INSIDE, LABELS).problems[0]
    assert merge(HELD, "x", "f1", INSIDE, LABELS).problems == ("A container cannot be put into itself.",)
    free = merge(HELD, "y", "x", INSIDE, {**LABELS, "f2": "2"})
    assert MoveStep("f2", "inside", "y", "x") in free.steps and not free.problems


def test_two_boxes_may_change_labels_with_each_other() -> None:
    assert relabel(LABELS, INSIDE, {"x": "2", "y": "1"}).problems == ()
    assert relabel(LABELS, INSIDE, {"x": "2"}).problems == ("Two would be labelled 2.",)
    assert "no label" in relabel(LABELS, INSIDE, {"x": "1/2"}).problems[0]


def test_doubles_are_found() -> None:
    assert doubles([("a", 1), ("b", 1), ("c", 2), ("d", 0), ("e", 0)]) == {1: ["a", "b"]}


ITEMS, BOXES = "abcdefgh", "xyz"
MOVES = st.one_of(
    st.tuples(
        st.just("move"), st.lists(st.sampled_from(ITEMS), max_size=4), st.sampled_from(BOXES), st.integers(0, 12)
    ),
    st.tuples(st.just("close"), st.sampled_from(BOXES)),
    st.tuples(st.just("merge"), st.sampled_from(BOXES), st.sampled_from(BOXES)),
)


@given(st.lists(MOVES, max_size=12))
@drawn(200)
def test_no_sequence_of_moves_loses_or_doubles_an_item(moves: list[tuple[object, ...]]) -> None:
    holding: Positions = {item: Kept("x", at) for at, item in enumerate(ITEMS, 1)}
    for name, *rest in moves:
        plan = {"move": move, "close": close_up}[name](holding, *rest) if name != "merge" else (  # type: ignore[index,operator]  # rows of MOVES
            merge(holding, *rest, inside={}, labels={})  # type: ignore[misc]  # the same
        )  # fmt: skip
        if not plan.problems:
            holding = carried_out(holding, plan)
        assert set(holding) == set(ITEMS)
        assert len(set(holding.values())) == len(ITEMS)
        assert all(place.position > 0 for place in holding.values())


@pytest.mark.parametrize(("places", "free"), [([], []), ([1], []), ([3], [1, 2]), ([1, 2, 2, 4], [3])])
def test_gaps(places: list[int], free: list[int]) -> None:
    assert gaps(places) == free
