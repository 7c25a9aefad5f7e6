"""`boxlore intake --find-prints`: prints found on a sheet become items with their areas (our own contract)."""

import csv
import json
import sys
from pathlib import Path

import pytest
from PIL import Image

from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.collection.records_for_outputs import EVERYTHING, records
from boxlore.tasks.scans.find_prints import area_of


@pytest.fixture
def home(run, tmp_path: Path) -> Path:  # type: ignore[no-untyped-def]
    assert run("new", tmp_path / "tamm", "--prefix", "tra", "--title", "Tamm")[0] == 0
    return tmp_path / "tamm"


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """A sheet of two prints, the second aslant, a picture that is itself one print, and a file that is no picture."""
    made = tmp_path / "in"
    made.mkdir()
    bed = Image.new("RGB", (700, 500), (225, 225, 222))
    dark = Image.radial_gradient("L").point(lambda shade: 20 + shade // 2)
    bed.paste(dark.resize((210, 300)), (70, 50))
    turned = dark.resize((240, 200)).rotate(8, expand=True, fillcolor=0)
    bed.paste(turned, (360, 200), Image.new("L", (240, 200), 255).rotate(8, expand=True))
    bed.save(made / "sheet.png")
    Image.linear_gradient("L").resize((300, 200)).save(made / "whole.png")
    (made / "broken.png").write_bytes(b"\x89PNG\r\n\x1a\n broken")
    return made


def areas(home: Path) -> list[tuple[float, ...]]:
    with open_collection(home, write=False) as collection:
        return [record.scans[0].area for record in records(collection, EVERYTHING)]


def test_each_print_of_a_sheet_is_an_item_with_its_part_of_the_scan(run, home: Path, folder: Path) -> None:  # type: ignore[no-untyped-def]
    code, _, said = run("-c", home, "intake", folder, "--find-prints", "take", "--copy", "--yes")
    assert code == 1 and "3 taken in" in said and "1 refused" in said
    assert "sheet.png: aslant, and seen straightened: print 2." in said
    assert "sheet print 1: recto sheet.png (30% by 60% of it, from 10% across, 10% down)" in said
    first, second, whole = areas(home)
    assert first == pytest.approx((0.1, 0.1, 0.3, 0.6), abs=0.012) and whole == ()
    assert second == pytest.approx((0.514, 0.4, 0.38, 0.463), abs=0.02)
    code, _, said = run("-c", home, "intake", folder / "sheet.png", "--find-prints", "take", "--copy", "--yes")
    assert code == 0 and "2 known already" in said and len(areas(home)) == 3


def out_of(rows: list[dict[str, str]], area: str) -> str:
    return f"item,file,area\nx,{rows[0]['file']},{area}\n"


@pytest.mark.parametrize(
    ("name", "words"),
    [("border.png", "may be its own border or mount"), ("room.png", "may be a thing in a scene")],
)
def test_what_cutting_may_lose_is_kept_whole_and_said(run, home: Path, tmp_path: Path, name: str, words: str) -> None:  # type: ignore[no-untyped-def]
    shown = Image.radial_gradient("L").point(lambda shade: 20 + shade // 2)
    picture = Image.new("RGB", (600, 440), (236, 236, 230))
    if name == "border.png":
        picture.paste(shown.resize((540, 360)), (30, 30))
    else:
        picture.paste((120, 90, 60), (0, 330, 600, 440))
        picture.paste(shown.resize((160, 120)), (240, 80))
    picture.save(tmp_path / name)
    code, _, said = run("-c", home, "intake", tmp_path / name, "--find-prints", "take", "--copy", "--yes")
    assert code == 0 and words in said and areas(home) == [()]


def test_a_table_of_them_can_be_put_right_and_taken_in(run, home: Path, folder: Path, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    code, out, said = run("-c", home, "intake", folder / "sheet.png", "--find-prints", "table")
    assert code == 0 and "Nothing is taken in yet." in said and areas(home) == []
    rows = list(csv.DictReader(out.splitlines()))
    assert [row["item"] for row in rows] == ["sheet print 1", "sheet print 2"]
    table = tmp_path / "items.csv"
    table.write_text(out.replace(rows[0]["area"], "0.1 0.1 0.25 0.5"), "utf-8")
    code, out, _ = run("-c", home, "intake", "--table", table, "--json", "--yes")
    assert code == 0 and [json.loads(line)["state"] for line in out.splitlines()] == ["taken", "taken"]
    assert areas(home)[0] == (0.1, 0.1, 0.25, 0.5)
    assert [len(row["area"].split()) for row in rows] == [4, 12], "what lies aslant has its corners in the table too"
    with open_collection(home, write=False) as collection:
        assert len([*records(collection, EVERYTHING)][1].scans[0].corners) == 8
    crossed = tmp_path / "crossed.csv"
    crossed.write_text(out_of(rows, "0.1 0.1 0.4 0.4 0.1 0.1 0.5 0.5 0.5 0.1 0.1 0.5"), "utf-8")
    code, _, said = run("-c", home, "intake", "--table", crossed, "--yes")
    assert code == 2 and "are no four corners of a print" in said


def test_without_the_part_that_looks_nothing_is_taken_and_it_is_said_what_to_do(
    run, home: Path, folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:  # type: ignore[no-untyped-def]
    monkeypatch.setitem(sys.modules, "cv2", None)
    code, _, said = run("-c", home, "intake", folder, "--find-prints", "take", "--yes")
    assert code == 3 and "pip install boxlore[see]" in said and areas(home) == []


def test_an_area_is_of_the_picture_as_it_is_stored() -> None:
    """Turned by 6, the upright upper left corner is the stored lower left one (CIPA DC-008, 4.6.4, figure)."""
    corners = ((0.1, 0.2), (0.4, 0.2), (0.4, 0.8), (0.1, 0.8))
    assert area_of(corners, 1) == pytest.approx((0.1, 0.2, 0.3, 0.6))
    assert area_of(corners, 6) == pytest.approx((0.2, 0.6, 0.6, 0.3))
