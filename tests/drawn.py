"""How many examples hypothesis draws for a test: all of them in CI, a quarter where the tests are run by hand.

They are the same ones each time, so that a run on a new machine says of the program what CI said. New ones are drawn by
the fuzzers of `tests/benchmarks`.
"""

import os

from hypothesis import settings

IN_CI = "CI" in os.environ


def drawn(examples: int = 100) -> settings:
    """The settings of a test for which so many examples are drawn in CI."""
    return settings(max_examples=examples if IN_CI else -(-examples // 4), deadline=None, derandomize=True)


PROFILE = "boxlore"
"""Of tests that tell no number of examples."""
settings.register_profile(PROFILE, drawn())
