"""Labels (ISO 216: A6 105 × 148 mm, A7 74 × 105 mm; index card 3 × 5 in)."""

import io
import re
from dataclasses import replace
from pathlib import Path

import pikepdf
import pytest
from tests.every_row import every_row

from boxlore.core.crosswalk.captions import PLAIN
from boxlore.core.errors import WrongUse
from boxlore.core.records.item_record import Record
from boxlore.core.records.marks import Mark
from boxlore.sheets.labels import SIZES, enclosures, make_labels, number_ranges, years_of
from boxlore.sheets.print_run import Printing

STANDARD = {"a6": {105.0, 148.0}, "a7": {74.0, 105.0}, "3x5": {76.2, 127.0}}


def test_sizes() -> None:
    assert {name: set(size) for name, size in SIZES.items()} == STANDARD


def test_every_container_once_boxes_before_their_folders(hard: list[Record]) -> None:
    moved = replace(hard[0], mark=Mark((("box", "10"),), 1))
    assert [[label for _, label in one.path] for one in enclosures([moved, *hard[1:]], PLAIN)] == [
        ["1"], ["1", "1"], ["1", "2"], ["10"],
    ]  # fmt: skip
    box, folder, *_ = enclosures(hard, PLAIN)
    assert box.lines == ["Folder 1 · 6 items · 1912", "Folder 2 · 3 items"]
    assert folder.lines[0] == "1  The whole family"


def test_a_long_title_is_cut_and_stays_one_line(
    hard: list[Record], printing: Printing, text_of, tmp_path: Path
) -> None:  # type: ignore[no-untyped-def]
    data, _ = make_labels([hard[7]], printing, "a7")
    (tmp_path / "l.pdf").write_bytes(data)
    assert re.search(r"2 W{20,29} …", " ".join(text_of(tmp_path / "l.pdf")))  # one line of 95 mm holds no more


RANGES = [
    ((1, 2, 3), "TRA-0001 to TRA-0003"), ((1, 2, 4, 9, 10), "TRA-0001 to TRA-0002, TRA-0004, TRA-0009 to TRA-0010"),
    ((1, 3, 5, 7), "TRA-0001 … TRA-0007"), ((9999, 10000), "TRA-9999 to TRA-10000"),
]  # fmt: skip


@every_row(("counts", "wanted"), RANGES)
def test_a_range_holds_no_number_that_lies_elsewhere(counts: tuple[int, ...], wanted: str) -> None:
    numbers = [f"TRA-{count:04d}" for count in counts]
    assert number_ranges(numbers, PLAIN.say) == wanted


def test_the_span_of_years(hard: list[Record]) -> None:
    assert years_of(hard) == "1912"
    assert years_of(hard[1:]) == ""


@pytest.mark.parametrize("size", SIZES)
def test_what_a_label_says(size: str, hard: list[Record], printing: Printing, text_of, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    many = [replace(hard[0], id=str(at), number=f"TRA-{at:04d}", mark=Mark((("box", "1"),), at)) for at in range(1, 41)]
    data, _ = make_labels(many, printing, size, "Rourke family")
    (tmp_path / "l.pdf").write_bytes(data)
    text = " ".join(text_of(tmp_path / "l.pdf"))
    assert "Box 1" in text and "TRA-0001 to TRA-0040" in text and "40 items · 1912" in text and "Rourke family" in text
    shown = text.count("The whole family")
    assert 4 <= shown < 40 and f"and {40 - shown} more" in text


def test_tagged_and_the_same_twice(hard: list[Record], printing: Printing) -> None:
    data, _ = make_labels(hard, printing)
    assert data == make_labels(hard, printing)[0]
    with pikepdf.open(io.BytesIO(data)) as pdf, pdf.open_metadata() as meta:
        assert (meta["pdfaid:part"], meta["pdfaid:conformance"], meta["pdfuaid:part"]) == ("2", "A", "1")
        assert [item.title for item in pdf.open_outline().root[0].children][:3] == [
            "Box 1", "Box 1 · Folder 1", "Box 1 · Folder 2",
        ]  # fmt: skip


def test_no_other_sizes(hard: list[Record], printing: Printing) -> None:
    with pytest.raises(WrongUse, match="no size of a label"):
        make_labels(hard, printing, "a1")
