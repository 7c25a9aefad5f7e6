"""Caption slips: widths of the common copy prints (in inches and centimetres: common practice, no source)."""

import io
from dataclasses import replace
from pathlib import Path

import pikepdf
import pytest

from boxlore.core.crosswalk import captions, references
from boxlore.core.errors import WrongUse
from boxlore.core.records.item_record import Record
from boxlore.sheets.print_run import Printing
from boxlore.sheets.slips import make_slips, slip_width

WIDTHS = [
    ("4x6", 152.4, 101.6),
    ("5x7", 177.8, 127.0),
    ("8x10", 254.0, 203.2),
    ("10x15", 150.0, 100.0),
    ("13x18", 180.0, 130.0),
]


def standing(record: Record) -> Record:
    return replace(record, scans=(replace(record.scans[0], width=900, height=1200),))


@pytest.mark.parametrize(("size", "long", "short"), WIDTHS)
def test_as_wide_as_the_print_lies_or_stands(size: str, long: float, short: float, hard: list[Record]) -> None:
    assert slip_width(hard[0], size) == pytest.approx(long)
    assert slip_width(standing(hard[0]), size) == pytest.approx(short)
    cut = replace(hard[0], scans=(replace(hard[0].scans[0], area=(0.0, 0.0, 0.2, 1.0)),))
    assert slip_width(cut, size) == pytest.approx(short)


@pytest.mark.parametrize(("size", "lying"), [("4x6", False), ("5x7", True), ("8x10", True), ("13x18", True)])
def test_the_widest_are_set_on_a_page_on_its_side(
    size: str, lying: bool, hard: list[Record], printing: Printing
) -> None:
    data, _ = make_slips(hard[:1], printing, size)
    with pikepdf.open(io.BytesIO(data)) as pdf:
        wide, high = (float(edge) for edge in pdf.pages[0].mediabox[2:])
        assert (wide > high) is lying


@pytest.mark.parametrize("length", captions.LENGTHS)
def test_the_slip_is_the_caption(length: str, hard: list[Record], printing: Printing, text_of, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    some = [hard[0], hard[4]]
    data, findings = make_slips(some, printing, "5x7", length)
    (tmp_path / "s.pdf").write_bytes(data)
    text = " ".join(text_of(tmp_path / "s.pdf"))
    assert findings == []
    for one in some:
        for words in (captions.title(one), *captions.lines(one, length).values(), references.reference(one)):
            assert words in text
    assert "6 Back 0" not in text  # a slip has no picture with numbers on it


def test_tagged_and_the_same_twice(hard: list[Record], printing: Printing) -> None:
    data, _ = make_slips(hard, printing)
    assert data == make_slips(hard, printing)[0]
    with pikepdf.open(io.BytesIO(data)) as pdf, pdf.open_metadata() as meta:
        assert (meta["pdfaid:part"], meta["pdfaid:conformance"], meta["pdfuaid:part"]) == ("2", "A", "1")
        titles = [item.title for group in pdf.open_outline().root[0].children for item in group.children]
        assert titles == [references.reference(one) for one in hard]


@pytest.mark.parametrize(
    ("size", "unit"), [("4x6", "in"), ("5x7", "in"), ("8x10", "in"), ("10x15", "cm"), ("13x18", "cm")]
)
def test_the_heading_names_the_unit(size: str, unit: str, hard: list[Record], printing: Printing) -> None:
    data, _ = make_slips(hard[:1], printing, size)
    with pikepdf.open(io.BytesIO(data)) as pdf:
        assert pdf.open_outline().root[0].title == f"Caption slips for prints of {size.replace('x', ' × ')} {unit}"


def test_no_other_sizes(hard: list[Record], printing: Printing) -> None:
    with pytest.raises(WrongUse, match="no size of a copy print"):
        make_slips(hard, printing, "9x9")
