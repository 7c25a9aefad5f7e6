"""The survey and the check of the originals on a real collection (our own contract; PDF read back with pikepdf)."""

import csv
import shutil
from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pikepdf
import pytest
from PIL import Image

from boxlore.core.errors import WrongUse
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import Collection, open_collection, start
from boxlore.tasks.collection.records_for_outputs import record_of
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.originals.housing_changes import About, lend, new_location, note_container
from boxlore.tasks.originals.housing_check import check_housing, check_scans, print_sizes
from boxlore.tasks.originals.survey import (
    SurveyAnswer,
    items_of_box,
    lists,
    note,
    read_answer,
    write_order,
    write_receipt,
    write_work,
)
from boxlore.tasks.scans.intake import IntakeOptions, take_in
from boxlore.tasks.scans.pairing import Planned, ScanSide


@pytest.fixture
def collection(tmp_path: Path) -> Iterator[Collection]:
    """Box 1 in a damp cellar with three items: one scanned too coarse, without its back, two without a scan."""
    folder = tmp_path / "tamm_family"
    start(folder, Settings(title="Tamm and Rourke", prefix="TR", holder="Rourke family"))
    picture = tmp_path / "front.jpg"
    Image.new("RGB", (600, 900), "grey").save(picture, dpi=(150, 150))
    with open_collection(folder, on_day=date(2026, 11, 25)) as opened:
        plan = [Planned(key="a", sides=[ScanSide(picture, "recto")]), Planned(key="b"), Planned(key="c")]
        take_in(opened, plan, IntakeOptions(box="1", copy=True))
        new_location(opened, "Cellar", surroundings=["damp cellar"])
        note_container(opened, "1", About(at="Cellar", materials="kraft board", capacity="2"))
        yield opened


def noted(collection: Collection, number: str, **answer: object) -> None:
    note(collection, find_item(collection, number).id, SurveyAnswer(**answer))  # type: ignore[arg-type]  # fields of it


def rules(collection: Collection) -> dict[str, list[str]]:
    found: dict[str, list[str]] = {}
    for one in check_housing(collection):
        found.setdefault(one.number or f"box {one.mark}", []).append(one.finding.rule)
    return found


def test_every_finding_of_a_box_and_its_items(collection: Collection) -> None:
    noted(collection, "TRA-0001", enclosure="polyester sleeve", attached=("tape",), size="101.6 x 152.4", writing=True)
    noted(collection, "TRA-0002", condition=("mould",), enclosure="glassine")
    found = rules(collection)
    assert found["box 1"] == ["housing.untested", "housing.kraft", "housing.overfull", "housing.basement"]
    assert found["TRA-0001"] == ["housing.tape", "housing.plastic-damp", "scan.no-verso"]
    assert found["TRA-0002"] == ["hazard.mould", "housing.glassine"]
    assert next(iter(check_housing(collection))).finding.rule == "hazard.mould"
    assert [one.finding.rule for one in check_scans(collection)] == ["scan.coarse", "scan.profile"]


def test_an_answer_is_one_act_and_a_second_one_replaces_it(collection: Collection) -> None:
    item = find_item(collection, "TRA-0002").id
    noted(collection, "TRA-0002", attached=("paper clip", "tape"), condition=("foxing",))
    noted(collection, "TRA-0002", attached=("tape",), enclosure="polyester sleeve")
    record = record_of(collection, item)
    assert {one.words for one in record.all("attached")} == {"tape", "no paper clip"}
    assert (record.words("condition"), record.words("enclosure")) == ("foxing", "polyester sleeve")
    assert "housing.fastener" not in rules(collection)["TRA-0002"]


@pytest.mark.parametrize(
    "text",
    ["", "[]", "{}x", '{"enclosure": 3}', '{"attached": "tape"}', '{"colour": "red"}'],
)
def test_what_is_no_answer_is_said(text: str) -> None:
    with pytest.raises(WrongUse):
        read_answer(text)


def test_a_size_that_is_none_is_said(collection: Collection) -> None:
    assert read_answer('{"attached": ["tape"], "writing": true}') == SurveyAnswer(attached=("tape",), writing=True)
    with pytest.raises(WrongUse, match="is no size"):
        noted(collection, "TRA-0002", size="large")


def test_the_lists_say_what_to_do_to_buy_and_to_scan(collection: Collection, tmp_path: Path) -> None:
    noted(collection, "TRA-0001", attached=("tape",), size="101.6 x 152.4", writing=True)
    noted(collection, "TRA-0002", size="101.6 x 152.4", enclosure="PVC")
    noted(collection, "TRA-0003", kind="negative", condition=("nitrate",))
    made = lists(collection)
    assert [(job.what, job.count) for job in made.buy] == [("Sleeves, 4 × 6 in", 2)]
    assert [one.number for one in made.scan] == ["TRA-0001", "TRA-0002"]
    assert made.work[0].items == ("TRA-0003",)
    write_work(collection, made, tmp_path / "work.csv")
    with open(tmp_path / "work.csv", encoding="utf-8-sig", newline="") as file:
        rows = list(csv.DictReader(file))
    assert {row["list"] for row in rows} == {"do", "buy"} and len(rows) == len(made.work) + len(made.buy)
    write_order(collection, made, tmp_path / "order.csv")
    with open(tmp_path / "order.csv", encoding="utf-8-sig", newline="") as file:
        first = next(csv.DictReader(file))
    assert (first["number"], first["ppi"], first["sides"], first["pixels"]) == (
        "TRA-0001", "600", "front and back", "2400 × 3600",
    )  # fmt: skip
    for name, write in (("work.pdf", write_work), ("order.pdf", write_order)):
        write(collection, made, tmp_path / name)
        with pikepdf.open(tmp_path / name) as pdf:
            assert pdf.Root.MarkInfo.Marked and len(pdf.pages) == 1
            assert "pdfaid" in str(pdf.open_metadata())
    with pytest.raises(WrongUse, match=r"neither \.csv nor \.pdf"):
        write_work(collection, made, tmp_path / "work.txt")


def test_the_receipt_and_a_loan_that_is_overdue(collection: Collection, tmp_path: Path) -> None:
    lend(collection, [find_item(collection, "TRA-0001")], "Aino Tamm", date(2026, 11, 1))
    write_receipt(collection, ["TRA-0001"], "Aino Tamm", (date(2026, 10, 1), date(2026, 11, 1)), tmp_path / "slip.pdf")
    with pikepdf.open(tmp_path / "slip.pdf") as pdf:
        assert len(pdf.pages) == 1
    assert "loan.overdue" in rules(collection)["TRA-0001"]


def test_the_items_of_a_box_come_in_their_order(collection: Collection) -> None:
    assert [collection.store.number_of(item) for item in items_of_box(collection, "1")] == [
        "TRA-0001", "TRA-0002", "TRA-0003",
    ]  # fmt: skip
    note_container(collection, "2", About())
    with pytest.raises(WrongUse, match="Nothing is noted to be in 2"):
        items_of_box(collection, "2")


def test_a_scan_that_is_gone_is_judged_by_what_is_known(collection: Collection) -> None:
    shutil.rmtree(collection.folder / "scans")
    noted(collection, "TRA-0001", size="101.6 x 152.4")
    assert [one.finding.rule for one in check_scans(collection)] == ["scan.coarse"]


def test_how_large_a_scan_may_be_printed(collection: Collection) -> None:
    """600 × 900 pixels at 300 an inch are 2 × 3 inches, by definition."""
    (one,) = print_sizes(collection)
    assert one.sharp == pytest.approx((50.8, 76.2)) and one.usable == pytest.approx((76.2, 114.3))
