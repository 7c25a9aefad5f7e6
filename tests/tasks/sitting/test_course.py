"""The course of a sitting."""

from collections.abc import Callable
from pathlib import Path

import pytest

from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.sitting.course import suggest_end
from boxlore.tasks.sitting.session import Sitting


def test_an_end_is_suggested_once_after_ninety_minutes(
    bare: Callable[[int], Path], monkeypatch: pytest.MonkeyPatch
) -> None:
    """About 90 minutes, then stop (George Mason University, History Matters; from memory)."""
    seconds = 1000.0
    monkeypatch.setattr("time.monotonic", lambda: seconds)
    with open_collection(bare(1)) as collection:
        sitting = Sitting(collection, narrator="Leida Rourke")
        sitting.begin()
        assert not suggest_end(sitting)
        seconds += 89 * 60
        assert not suggest_end(sitting)
        seconds += 60
        assert suggest_end(sitting) == "An hour and a half by now. Enough for today?"
        assert not suggest_end(sitting)
        nobody = Sitting(collection)
        seconds += 200 * 60
        assert not suggest_end(nobody)
