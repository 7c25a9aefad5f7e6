"""How many examples a test takes: all of them in CI, a part where the tests are run by hand.

Of the examples that hypothesis draws that is a quarter; of the rows of a table that cost much, and try the same rule by
turns (`some`), every third one; of rounds that take long (`IN_CI`: a day's photographs, kills and full disks), fewer.
They are the same ones each time, so that a run on a new machine says of the program what CI said. New ones are drawn by
the fuzzers of `tests/benchmarks`.
"""

import os
from collections.abc import Iterable
from typing import TypeVar

from hypothesis import settings

Row = TypeVar("Row")

IN_CI = "CI" in os.environ


def drawn(examples: int = 100) -> settings:
    """The settings of a test for which so many examples are drawn in CI."""
    return settings(max_examples=examples if IN_CI else -(-examples // 4), deadline=None, derandomize=True)


def some(rows: Iterable[Row]) -> list[Row]:
    """All rows in CI, else the first of each three: of a table whose rows cost much and try one rule, not several."""
    return list(rows)[:: 1 if IN_CI else 3]


PROFILE = "boxlore"
"""Of tests that tell no number of examples."""
settings.register_profile(PROFILE, drawn())
