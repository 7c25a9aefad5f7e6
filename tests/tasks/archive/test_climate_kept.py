"""A collection made of a transfer judges the climate again that was kept with the first (our own rule)."""

from collections.abc import Callable
from datetime import datetime, timedelta
from pathlib import Path

import pytest

from boxlore.core.errors import CouldNot
from boxlore.core.records.audience import To
from boxlore.core.statements import Kind
from boxlore.tasks.archive.climate_kept import HEADING, UNNAMED, climate_rows, state_climate
from boxlore.tasks.archive.rebuild import rebuild
from boxlore.tasks.archive.transfer import TransferOrder, transfer
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.collection.records_for_outputs import seen_by
from boxlore.tasks.originals.climate import judge_locations, keep_log, note_reading
from boxlore.tasks.originals.housing_changes import new_location
from boxlore.tasks.people import registry


def a_log(path: Path) -> Path:
    """Four damp days, hour by hour, as a logger in Fahrenheit has them."""
    lines = ["Time,Temperature (°F),Humidity (%)"]
    lines += [f"{datetime(2026, 3, 1) + timedelta(hours=at):%Y-%m-%d %H:%M},68.0,{70 + at % 3}" for at in range(96)]
    path.write_text("\n".join(lines), encoding="utf-8")
    return path


def test_a_climate_is_judged_again_in_a_collection_made_again(bare: Callable[[int], Path], tmp_path: Path) -> None:
    with open_collection(bare(1)) as mine:
        new_location(mine, "House", kind="house")
        new_location(mine, "Wash-house", inside="House")
        new_location(mine, "Attic")
        keep_log(mine, a_log(tmp_path / "logger.csv"), "Wash-house")
        note_reading(mine, "Attic", datetime(2026, 11, 25, 9, 30), "18 C", "45%")
        judged = judge_locations(mine)
        transfer(mine, tmp_path / "t", order=TransferOrder(go_on=True))
    assert {one.where for one in judged} == {"House / Wash-house", "Attic"}
    assert not (tmp_path / "t/open/data/metadata/climate.csv").exists()
    rebuild(tmp_path / "again", tmp_path / "t")
    with open_collection(tmp_path / "again", write=False) as again:
        assert sorted(judge_locations(again), key=lambda one: one.where) == sorted(judged, key=lambda one: one.where)


def test_a_place_that_no_archive_may_read_is_not_named(bare: Callable[[int], Path]) -> None:
    with open_collection(bare(1)) as mine:
        act = mine.act("told")
        oda = act.new(Kind.PERSON)
        act.state(oda, "name", "Oda Rourke", audience="keeper")
        act.done()
        registry.set_audience(mine, oda, "keeper")
        new_location(mine, "Oda Rourke's cellar")
        note_reading(mine, "Oda Rourke's cellar", datetime(2026, 11, 25, 9, 30), "18 C", "45%")
        rows = list(climate_rows(mine, seen_by(mine, To.ARCHIVE), ()))
    assert [row[0] for row in rows[1:]] == [f"{UNNAMED} (1)"]


def test_a_table_of_the_climate_that_is_none_is_refused(bare: Callable[[int], Path], tmp_path: Path) -> None:
    (tmp_path / "climate.csv").write_text(f"{','.join(HEADING)}\nAttic,,,,,,warm and dry\n", "utf-8")
    with open_collection(bare(1)) as mine, pytest.raises(CouldNot, match="what no collection may hold"):
        state_climate(mine.act("read"), tmp_path, ())
    (tmp_path / "climate.csv").write_text(f"{','.join(HEADING)}\nAttic,papers/climate/a.csv,,,,,\n,,,,,,1\n", "utf-8")
    with open_collection(bare(1)) as mine:
        act = mine.act("read")
        state_climate(act, tmp_path, ())  # the log is not among the files of the package
        assert act.statements == []
