"""The course of a sitting as a table: from a stage, a step leads to the next stage.

The agreement is made before anything is asked, a rest may last as long as it is needed, closing can be taken back,
and a sitting can be ended at every stage (common practice, no source).
"""

from dataclasses import dataclass
from enum import StrEnum

from boxlore.core.errors import WrongUse


class Stage(StrEnum):
    """Where a sitting stands."""

    PREPARING = "preparing"
    GOING_THROUGH = "going through items"
    RESTING = "resting"
    CLOSING = "closing"
    OVER = "over"


class Step(StrEnum):
    """What the keeper does with the sitting."""

    BEGIN = "begin"
    REST = "rest"
    GO_ON = "go on"
    CLOSE = "close"
    END = "end"


MOVES: dict[Stage, dict[Step, Stage]] = {
    Stage.PREPARING: {Step.BEGIN: Stage.GOING_THROUGH, Step.END: Stage.OVER},
    Stage.GOING_THROUGH: {Step.REST: Stage.RESTING, Step.CLOSE: Stage.CLOSING, Step.END: Stage.OVER},
    Stage.RESTING: {Step.GO_ON: Stage.GOING_THROUGH, Step.CLOSE: Stage.CLOSING, Step.END: Stage.OVER},
    Stage.CLOSING: {Step.GO_ON: Stage.GOING_THROUGH, Step.END: Stage.OVER},
    Stage.OVER: {},
}


@dataclass(eq=False)
class OutOfTurn(WrongUse):
    """A step that is not possible at the present stage."""

    problem: str
    what_to_do: str = "See what can be done in the menu."


def move(stage: Stage, step: Step) -> Stage:
    """The stage that a step leads to. Raises OutOfTurn if MOVES has no such step at this stage."""
    try:
        return MOVES[stage][step]
    except KeyError:
        raise OutOfTurn(f"A sitting that is {stage} cannot {step}.") from None
