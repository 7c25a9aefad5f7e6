"""What stands below a prompt (our own contract)."""

import pytest

from boxlore.tui.widgets.prompt_block import short_places


@pytest.mark.parametrize(
    ("names", "shown"),
    [
        (["Milton, Otago, New Zealand"], ["Milton, Otago, New Zealand"]),
        (["Hinterweidenthal, Rheinland-Pfalz, Germany"], ["Hinterweidenthal, … Germany"]),
        (
            ["Milton, Massachusetts, United States", "Milton, Georgia, United States"],
            ["Milton, Massachusetts, United Sta…", "Milton, Georgia, United States"],
        ),
        (
            [f"({south} S, 170.0 E) Milton, Otago, New Zealand" for south in ("46.1", "45.9")],
            ["(46.1 S, 170.0 E) Milton, Otago, …", "(45.9 S, 170.0 E) Milton, Otago, …"],
        ),
        (["Llanfairpwllgwyngyllgogerych, United Kingdom"], ["Llanfairpwllgwyngyllgogerych, Uni…"]),
    ],
)
def test_what_tells_places_apart_is_left_out_last(names: list[str], shown: list[str]) -> None:
    assert short_places(names, 34) == shown
