"""Logs kept with a location, readings by hand, the chart (our own contract; PNG read back with Pillow)."""

import io
from collections.abc import Iterator
from datetime import datetime, timedelta
from pathlib import Path

import pytest
from PIL import Image

from boxlore.core.errors import CouldNot, WrongUse
from boxlore.tasks.collection.opening import Collection, open_collection, start
from boxlore.tasks.collection.output_paths import Unopened
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.originals.climate import (
    chart_lines,
    humidity_at,
    judge,
    judge_locations,
    keep_log,
    note_reading,
    read_file,
    read_typed,
    write_chart,
)
from boxlore.tasks.originals.housing_changes import new_location


@pytest.fixture
def collection(tmp_path: Path) -> Iterator[Collection]:
    folder = tmp_path / "tamm_family"
    start(folder, Settings(title="Tamm and Rourke", prefix="TR"))
    with open_collection(folder) as opened:
        new_location(opened, "House", kind="house")
        new_location(opened, "Cellar", inside="House")
        yield opened


@pytest.fixture
def log(tmp_path: Path) -> Path:
    """Four damp days, hour by hour."""
    lines = ["Time,Temperature (°F),Humidity (%)"]
    start = datetime(2026, 3, 1)
    lines += [f"{start + timedelta(hours=at):%Y-%m-%d %H:%M},68.0,{70 + at % 3}" for at in range(96)]
    path = tmp_path / "logger.csv"
    path.write_text("\n".join(lines), encoding="utf-8")
    return path


def test_a_log_is_kept_once_and_judged_again_from_the_copy(collection: Collection, log: Path) -> None:
    kept = keep_log(collection, log, "Cellar")
    assert "climate.mould" in [one.rule for one in kept.findings]
    keep_log(collection, log, "House / Cellar")
    log.unlink()
    (again,) = judge_locations(collection)
    assert (again.where, len(again.readings)) == ("House / Cellar", 96)
    assert again.climate == kept.climate
    assert humidity_at([again], ("House", "Cellar", "Shelf 1")) == pytest.approx(71)
    assert humidity_at([again], ("House", "Attic")) is None


def test_a_log_that_changed_or_went_is_said_and_left_out(collection: Collection, log: Path) -> None:
    keep_log(collection, log, "Cellar")
    (copy,) = (collection.folder / "papers" / "climate").iterdir()
    copy.write_text("Time,Temperature C,Humidity\n2026-01-01 10:00,1,1\n")
    assert [one.rule for one in judge_locations(collection)[0].findings] == ["climate.log-changed", "climate.short"]
    copy.unlink()
    assert "is not there" in judge_locations(collection)[0].findings[0].message


def test_readings_by_hand_are_kept_and_too_few_get_no_verdict(collection: Collection) -> None:
    note_reading(collection, "Cellar", datetime(2026, 3, 1, 14), "68F", "55%")
    note_reading(collection, "Cellar", datetime(2026, 3, 1, 15), "20.5 °C", "54")
    (one,) = judge_locations(collection)
    assert [(round(t, 1), rh) for _, t, rh in one.readings] == [(20, 55), (20.5, 54)]
    assert [finding.rule for finding in one.findings] == ["climate.short"]


@pytest.mark.parametrize(("t", "rh"), [("68", "50%"), ("warm", "50%"), ("20C", "0%"), ("20C", "101%"), ("20C", "dry")])
def test_what_is_no_reading_is_said(t: str, rh: str) -> None:
    with pytest.raises(WrongUse, match="is no"):
        read_typed(t, rh)


@pytest.mark.parametrize("coding", ["utf-8-sig", "utf-16", "cp1252"])
def test_files_of_other_codings_are_read(log: Path, coding: str) -> None:
    log.write_bytes(log.read_text(encoding="utf-8").encode(coding))
    read = read_file(log)
    assert (read.unit, len(read.readings)) == ("F", 96)


def test_a_missing_file_is_said(tmp_path: Path) -> None:
    with pytest.raises(CouldNot, match="cannot be read"):
        read_file(tmp_path / "none.csv")


def test_the_chart_is_a_png_that_shows_both_values(log: Path, tmp_path: Path) -> None:
    one = judge("Cellar", read_file(log).readings)
    write_chart(one, tmp_path / "chart.png", Unopened(tmp_path))
    with Image.open(io.BytesIO((tmp_path / "chart.png").read_bytes())) as image:
        image.load()
        colours = {colour for _, colour in image.getcolors(1_000_000) or ()}
    assert (image.format, image.size) == ("PNG", (1500, 900))
    assert {(161, 58, 36), (37, 84, 124)} <= colours
    assert any("█" in line for line in chart_lines(one, 70))
