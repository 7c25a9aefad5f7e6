"""One test for every row of a table: to run a row as a test of its own costs more than most of our checks do.

    @every_row(("words", "edtf"), ROWS)
    def test_what_is_said_of_a_year(words: str, edtf: str) -> None:
        assert read(words).edtf == edtf

It is written as `pytest.mark.parametrize` is. A row that is wrong hides no other: the test goes through all rows, and
then fails with every wrong one, its values, the line that failed and what was said there. `every_row_by_group` takes
rows in groups that have names, and makes one test of each group.

What the test takes from fixtures is made once for all its rows. So a test whose row leaves something behind (a file, a
setting, an environment), may be skipped, or costs much, keeps `parametrize`.
"""

import functools
import inspect
import traceback
from collections.abc import Callable, Iterable, Mapping
from pathlib import Path
from typing import Any

import pytest

ROOT = Path(__file__).parents[1]

WRONG = (Exception, pytest.fail.Exception, pytest.skip.Exception)
"""What a row may end with: a row that skips counts as wrong, for it would hide those after it."""

Test = Callable[..., None]
Names = str | tuple[str, ...]


def every_row(names: Names, rows: Iterable[Any]) -> Callable[[Test], Test]:
    """A test of one row becomes a test of all; `names` are the row's, one name alone is the name of the whole row.

    Raises ValueError where there is no row, for then nothing would be checked.
    """
    return every_row_by_group(names, {"": rows})


def every_row_by_group(names: Names, groups: Mapping[str, Iterable[Any]]) -> Callable[[Test], Test]:
    """The same, as one test for each group, named for it; a group named "" is the whole test."""
    table = {name: list(rows) for name, rows in groups.items()}
    if not all(table.values()) or not table:
        raise ValueError(f"there are no rows to check {names} by")
    is_whole = list(table) == [""]

    def of_all_rows(test: Test) -> Test:
        of_a_row = {names} if isinstance(names, str) else set(names)
        asked = [value for name, value in inspect.signature(test).parameters.items() if name not in of_a_row]

        @functools.wraps(test)
        def go_through(group: str = "", **fixtures: Any) -> None:
            _check(test, [_named(names, row) for row in table[group]], fixtures)

        if not is_whole:
            asked.insert(0, inspect.Parameter("group", inspect.Parameter.POSITIONAL_OR_KEYWORD))
        go_through.__signature__ = inspect.Signature(asked)  # type: ignore[attr-defined]  # what pytest reads
        return go_through if is_whole else pytest.mark.parametrize("group", list(table))(go_through)

    return of_all_rows


def _named(names: Names, row: Any) -> dict[str, Any]:
    return {names: row} if isinstance(names, str) else dict(zip(names, row, strict=True))


def _check(test: Test, rows: list[dict[str, Any]], fixtures: dict[str, Any]) -> None:
    wrong = [said for row in rows if (said := _said_of(test, row, fixtures))]
    if wrong:
        head = f"{len(wrong)} of {len(rows)} rows {'is' if len(wrong) == 1 else 'are'} wrong:"
        pytest.fail("\n\n".join((head, *wrong)), pytrace=False)


def _said_of(test: Test, row: dict[str, Any], fixtures: dict[str, Any]) -> str:
    """What is wrong with the row, in lines; nothing if it is right."""
    try:
        test(**row, **fixtures)
    except WRONG as fault:
        values = ", ".join(f"{name}={_shown(value)}" for name, value in row.items())
        return "\n    ".join((values, *_lines(fault)))
    return ""


def _shown(value: Any) -> str:
    text = repr(value)
    return text if len(text) <= 500 else f"{text[:500]}… ({len(text)} characters)"


def _lines(fault: BaseException) -> list[str]:
    """Where it failed, from the test inwards, and what was said."""
    frames = traceback.extract_tb(fault.__traceback__)
    where = [f"{_short(frame.filename)}:{frame.lineno}: {frame.line}" for frame in frames if not _is_ours(frame)]
    return [*where, *f"{type(fault).__name__}: {fault}".splitlines()]


def _is_ours(frame: traceback.FrameSummary) -> bool:
    return frame.filename == __file__ or "_pytest" in frame.filename


def _short(path: str) -> str:
    return str(Path(path).relative_to(ROOT)) if Path(path).is_relative_to(ROOT) else path
