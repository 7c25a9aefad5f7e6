"""The example of a table for intake is one: every column is filled, and all of it is taken in (our own contract)."""

import csv
import re
from pathlib import Path

from PIL import Image

from boxlore.tasks.collection.opening import open_collection, start
from boxlore.tasks.collection.records_for_outputs import EVERYTHING, records
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.scans.example_table import example_table
from boxlore.tasks.scans.intake import IntakeOptions, take_in
from boxlore.tasks.scans.pairing import COLUMNS, read_items

README = Path(__file__).parents[3] / "README.md"


def test_the_example_is_taken_in_whole(tmp_path: Path) -> None:
    rows = list(csv.DictReader(example_table().splitlines()))
    assert all(any(row[name] for row in rows) for name in COLUMNS)
    for at, name in enumerate(sorted({row["file"] for row in rows} - {""})):
        Image.radial_gradient("L").rotate(at * 7).convert("RGB").save(tmp_path / name)
    table = tmp_path / "items.csv"
    table.write_text(example_table(), "utf-8", newline="")
    start(tmp_path / "tamm", Settings(title="Tamm", prefix="TRA"))
    with open_collection(tmp_path / "tamm") as collection:
        results = take_in(collection, read_items(table, tmp_path), IntakeOptions(copy=True))
        assert [result.state for result in results] == ["taken"] * 5, results
        harbour, aino, *_ = records(collection, EVERYTHING)
    assert [(scan.side, scan.role) for scan in harbour.scans] == [
        ("recto", "as-scanned"), ("verso", "as-scanned"), ("recto", "altered"),
    ]  # fmt: skip
    assert aino.scans[0].area == (0, 0, 0.5, 1)


def test_the_guide_and_the_help_name_every_column(run) -> None:  # type: ignore[no-untyped-def]
    guide = README.read_text("utf-8")
    code, helps, _ = run("intake", "--help")
    assert code == 0
    for name in COLUMNS:
        assert f"`{name}`" in guide and re.search(rf"^ +{name} +\w", helps, re.MULTILINE), name
    code, out, _ = run("intake", "--example-table")
    assert code == 0 and list(csv.reader(out.splitlines())) == list(csv.reader(example_table().splitlines()))
    assert run("intake", "--example-table", "--copy")[0] == 2
