"""The course of a sitting as a table: where it stands, what the keeper does, where it stands then.

Common practice, no source: agreement before anything is asked, rests as long as they last, a closing that can be
taken back, and an end from everywhere.
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
    """What the keeper does with it."""

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
    """A step that does not follow from where the sitting stands."""

    problem: str
    what_to_do: str = "See what can be done in the menu."


def move(stage: Stage, step: Step) -> Stage:
    """The stage that a step leads to. Raises OutOfTurn where MOVES has none."""
    try:
        return MOVES[stage][step]
    except KeyError:
        raise OutOfTurn(f"A sitting that is {stage} cannot {step}.") from None
