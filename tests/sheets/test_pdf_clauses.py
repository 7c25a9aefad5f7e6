"""What is printed, held against clauses of PDF/UA-1 and PDF/A-2a; and the checker, held against PDFs with one fault."""

from collections.abc import Callable
from datetime import date
from pathlib import Path
from typing import Any

import pikepdf
import pytest
from tests.every_row import every_row
from tests.sheets.pdf_clauses import FONT_FILES, elements, faults

from boxlore.sheets.album import make_sheet
from boxlore.sheets.labels import make_labels
from boxlore.sheets.print_run import Printing
from boxlore.sheets.slips import make_slips
from boxlore.sheets.worksheet import USUAL, make_worksheet

OUTPUTS: dict[str, Callable[[Any, Any, Any], bytes]] = {
    "album": lambda records, pictures, printing: make_sheet(records, pictures, printing)[0],
    "slips": lambda records, pictures, printing: make_slips(records, printing, "4x6", "slip")[0],
    "labels": lambda records, pictures, printing: make_labels(records, printing, "a6", "the Rourke family")[0],
    "worksheet": lambda records, pictures, printing: make_worksheet(records, pictures, printing, "TRA", [], USUAL)[0],
}


@pytest.mark.parametrize("output", OUTPUTS)
def test_nothing_printed_has_a_fault(output: str, hard, pictures, printing, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    path = tmp_path / "a.pdf"
    path.write_bytes(OUTPUTS[output](hard, pictures, printing))
    assert faults(path) == []


@pytest.fixture(scope="module")
def album(hard, pictures, tmp_path_factory: pytest.TempPathFactory) -> Path:  # type: ignore[no-untyped-def]
    path = tmp_path_factory.mktemp("clauses") / "album.pdf"
    printing = Printing(title="Tamm and Rourke", author="the Rourke family", printed_on=date(2026, 11, 25))
    path.write_bytes(make_sheet(hard[:4], pictures, printing)[0])
    return path


Harm = Callable[[pikepdf.Pdf], Any]


def first(pdf: pikepdf.Pdf, kind: str) -> Any:
    return next(each for each, _ in elements(pdf.Root.StructTreeRoot) if each.get("/S") == kind)


def with_link(pdf: pikepdf.Pdf) -> Any:
    return next(page for page in pdf.pages if "/Annots" in page)


def loose(pdf: pikepdf.Pdf) -> None:
    pdf.pages[0].contents_add(b"BT ET 0 0 10 10 re f")


def without_letters(pdf: pikepdf.Pdf) -> None:
    del next(iter(pdf.pages[0].Resources.Font.values()))["/ToUnicode"]


def without_font_file(pdf: pikepdf.Pdf) -> None:
    font = next(iter(pdf.pages[0].Resources.Font.values()))
    described = font.get("/DescendantFonts", [font])[0].FontDescriptor
    del described[next(name for name in FONT_FILES if name in described)]


def unsaid(name: str) -> Harm:
    """Take a property out of the metadata."""

    def harm(pdf: pikepdf.Pdf) -> None:
        with pdf.open_metadata(set_pikepdf_as_editor=False, update_docinfo=False) as meta:
            del meta[name]

    return harm


def acting(name: str, action: pikepdf.Object) -> Harm:
    return lambda pdf: pdf.Root.__setitem__(name, action)


SCRIPT = pikepdf.Dictionary(S=pikepdf.Name("/JavaScript"), JS="app.beep()")

BROKEN: list[tuple[str, Harm]] = [
    ("UA 7.1", lambda pdf: pdf.Root.MarkInfo.__setitem__("/Marked", False)),
    ("UA 7.1", lambda pdf: pdf.Root.ViewerPreferences.__delitem__("/DisplayDocTitle")),
    ("UA 7.2", lambda pdf: pdf.Root.__delitem__("/Lang")),
    ("A 6.2.3", lambda pdf: pdf.Root.__delitem__("/OutputIntents")),
    ("UA 7.1", lambda pdf: first(pdf, "/Div").__setitem__("/S", pikepdf.Name("/Box"))),
    ("UA 7.3", lambda pdf: first(pdf, "/Figure").__delitem__("/Alt")),
    ("UA 7.3", lambda pdf: first(pdf, "/Figure").__setitem__("/Alt", "  ")),
    ("UA 7.4.2", lambda pdf: first(pdf, "/H2").__setitem__("/S", pikepdf.Name("/H4"))),
    ("UA 7.4.4", lambda pdf: first(pdf, "/H2").__setitem__("/S", pikepdf.Name("/H"))),
    ("UA 7.5", lambda pdf: first(pdf, "/Div").__setitem__("/S", pikepdf.Name("/Table"))),
    ("UA 7.6", lambda pdf: first(pdf, "/Div").__setitem__("/S", pikepdf.Name("/L"))),
    ("UA 7.7", lambda pdf: first(pdf, "/Div").__setitem__("/S", pikepdf.Name("/Formula"))),
    ("ISO 32000-1 14.8.4.3", lambda pdf: first(pdf, "/H2").__setitem__("/S", pikepdf.Name("/TD"))),
    ("UA 7.18.3", lambda pdf: with_link(pdf).__delitem__("/Tabs")),
    ("UA 7.18.1", lambda pdf: with_link(pdf).Annots[0].__delitem__("/StructParent")),
    ("UA 7.18.5", lambda pdf: with_link(pdf).Annots[0].__delitem__("/Contents")),
    ("A 6.3.2", lambda pdf: with_link(pdf).Annots[0].__setitem__("/F", 0)),
    ("UA 7.1", loose),
    ("A 6.2.11.7", without_letters),
    ("A 6.2.11.4", without_font_file),
    ("UA 5", unsaid("pdfuaid:part")),
    ("A 6.6.4", unsaid("pdfaid:conformance")),
    ("UA 7.1", unsaid("dc:title")),
    ("A 6.5.1", acting("/OpenAction", SCRIPT)),
    ("A 6.5.2", acting("/AA", pikepdf.Dictionary(WC=SCRIPT))),
]
"""(the clause that is broken, how)."""


@every_row(("clause", "harm"), BROKEN)
def test_the_checker_finds_each_fault(clause: str, harm: Harm, album: Path, tmp_path: Path) -> None:
    with pikepdf.open(album) as pdf:
        harm(pdf)
        pdf.save(tmp_path / "harmed.pdf")
    assert any(fault.startswith(f"{clause}:") for fault in faults(tmp_path / "harmed.pdf"))


def test_the_sound_album_has_none_and_names_its_maker(album: Path) -> None:
    assert faults(album) == []
    with pikepdf.open(album) as pdf, pdf.open_metadata() as meta:
        assert list(meta["dc:creator"]) == ["the Rourke family"]
