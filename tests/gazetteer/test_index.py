"""A keeper's own file beside the shipped data: added to the index that is there, or built with it (invented rows)."""

import sqlite3
from contextlib import closing
from pathlib import Path

import pytest

from boxlore.gazetteer.index import index_path, make_index

OWN = [
    "900001\tTammiku Talu\tEE\t18\t793\t58.5\t26.5\t4\tTammenhof",
    "1\tPärnu\tEE\t11\t624\t58.39\t24.5\t50700\tPernau",
]
"""A place that is new, and one that the shipped data have too."""


def silent(stage: str, done: int, total: int) -> None:
    """No progress is shown."""


def held(path: Path) -> list[tuple[object, ...]]:
    """All rows of an index."""
    with closing(sqlite3.connect(path)) as db:
        return [
            row for table in ("place", "name", "area") for row in db.execute(f"SELECT * FROM {table} ORDER BY 1, 2")
        ]


@pytest.mark.parametrize("shipped", ["there", "damaged"])
def test_an_index_that_is_added_to_holds_what_one_built_whole_does(
    tmp_path: Path, small_data: Path, shipped: str
) -> None:
    data, own = small_data, tmp_path / "own.tsv"
    own.write_text("\n".join(OWN) + "\n", "utf-8")
    whole, added = (index_path(tmp_path / name, data, own) for name in ("whole", "added"))
    make_index(whole, silent, data, own)
    beside = index_path(tmp_path / "added", data)
    make_index(beside, silent, data)
    if shipped == "damaged":
        beside.write_bytes(b"no database")
    make_index(added, silent, data, own)
    assert held(added) == held(whole)
    assert {row[1] for row in held(added)} >= {"Tartu", "Tammiku Talu", "Pärnu"}
    assert sorted(path.name for path in added.parent.iterdir()) == sorted({added.name, beside.name})
