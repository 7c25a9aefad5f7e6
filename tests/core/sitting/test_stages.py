"""The table of moves: every pair of stage and step is either a move or out of turn. Rules of our own."""

from itertools import product

import pytest
from tests.every_row import every_row

from boxlore.core.sitting.stages import MOVES, OutOfTurn, Stage, Step, move


@every_row(("stage", "step"), list(product(Stage, Step)))
def test_every_pair_of_the_table(stage: Stage, step: Step) -> None:
    if step in MOVES[stage]:
        assert move(stage, step) is MOVES[stage][step]
    else:
        with pytest.raises(OutOfTurn, match=str(stage)):
            move(stage, step)


def test_every_stage_is_reached_and_ends() -> None:
    reached = {Stage.PREPARING} | {after for steps in MOVES.values() for after in steps.values()}
    assert reached == set(Stage)
    assert all(Step.END in steps for stage, steps in MOVES.items() if stage is not Stage.OVER)
