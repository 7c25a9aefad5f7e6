"""The narrator's worksheet (large print: CCLVI guidelines, from memory: at least 18 points, better 20)."""

import io
from dataclasses import replace
from pathlib import Path

import pikepdf

from boxlore.core.crosswalk import captions
from boxlore.core.records.item_record import Record
from boxlore.core.sitting.worksheet_codes import read_answers, read_code
from boxlore.sheets.picture_on_paper import Room, Shelf, figure
from boxlore.sheets.print_run import Printing
from boxlore.sheets.printable_words import FIRST_STRONG, POP
from boxlore.sheets.theme import LARGE_PRINT, Theme
from boxlore.sheets.typesetting import MOST_LETTERS, shortened
from boxlore.sheets.worksheet import blank_answers, make_worksheet, questions_of, with_unnamed, worksheet_theme


def test_type_is_large_whatever_the_theme() -> None:
    for theme in (Theme(), LARGE_PRINT, Theme(size=7), replace(LARGE_PRINT, size=26)):
        made = worksheet_theme(theme)
        assert made.size >= 20 and made.leading >= 0.8
    assert worksheet_theme(replace(LARGE_PRINT, size=26)).size == 26


def test_what_is_asked(hard: list[Record]) -> None:
    lines = questions_of(hard[0], "TR")
    assert [one.asks for one in lines[:2]] == ["Who is number 1?", "Who is number 2?"]
    assert [one.asks for one in lines[9:]] == [
        "Who else is in it?", "When was it?", "Where was it?", "What was going on?", "What else do you remember?",
    ]  # fmt: skip
    assert lines[0].known == "Front 0"
    assert len({one.code for one in lines}) == len(lines)
    nothing = questions_of(hard[5], "TR")
    assert (nothing[0].asks, nothing[0].lines) == ("Who is in it, from left to right?", 3)


def test_a_number_without_a_name_is_asked_for_and_stands_on_the_picture(
    hard: list[Record], pictures: dict[str, Path], printing: Printing, text_of, tmp_path: Path
) -> None:  # type: ignore[no-untyped-def]
    scan = hard[0].scans[0].id
    bare = replace(hard[0], people=(), unnamed=((scan, 2, (0.6, 0.3, 0.1, 0.1)), (scan, 1, (0.3, 0.3, 0.1, 0.1))))
    lines = questions_of(bare, "TR")
    assert [(one.asks, one.known) for one in lines[:2]] == [("Who is number 1?", ""), ("Who is number 2?", "")]
    shelf = Shelf(pictures, tmp_path, [])
    assert [one["number"] for one in figure(with_unnamed(bare), shelf, Room(80, 44))["numbers"]] == [2, 1]
    data, _ = make_worksheet([bare], pictures, printing, "TR")
    (tmp_path / "w.pdf").write_bytes(data)
    assert lines[0].code in " ".join(text_of(tmp_path / "w.pdf"))


def test_every_code_finds_its_line_again(hard: list[Record]) -> None:
    for record in hard:
        for one in questions_of(record, "TR"):
            line = read_code(one.code, "TR")
            assert line.number == record.number
            assert (line.marker > 0) == one.asks.startswith("Who is number")


def test_the_text_file_has_every_code_and_reads_as_blank(hard: list[Record]) -> None:
    text = blank_answers(hard, "TR")
    assert all(f"\n{one.code}:" in text for record in hard for one in questions_of(record, "TR"))
    assert list(read_answers(text)) == []
    first = questions_of(hard[0], "TR")[0].code
    assert [one.words for one in read_answers(text.replace(f"{first}:", f"{first}: Anna"))] == ["Anna"]


def test_the_sheet(hard: list[Record], pictures: dict[str, Path], printing: Printing, text_of, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    data, findings = make_worksheet(hard, pictures, printing, "TR")
    assert data == make_worksheet(hard, pictures, printing, "TR")[0]
    (tmp_path / "w.pdf").write_bytes(data)
    pages = text_of(tmp_path / "w.pdf")
    for record in hard:
        text = " ".join(pages)
        assert captions.reference(record) in text
        assert all(one.code in text and one.asks in text for one in questions_of(record, "TR"))
    assert all("Printed 25 November 2026" in page for page in pages)
    assert {one.rule for one in findings} == {"sheet.picture", "sheet.glyph"}
    with pikepdf.open(io.BytesIO(data)) as pdf, pdf.open_metadata() as meta:
        assert (meta["pdfaid:part"], meta["pdfaid:conformance"], meta["pdfuaid:part"]) == ("2", "A", "1")
        assert [item.title for item in pdf.open_outline().root[0].children] == list(map(captions.reference, hard))


def test_a_title_longer_than_a_string_of_a_pdf_may_be(hard: list[Record], printing: Printing) -> None:
    long = replace(hard[0].told["title"][0], words="x " * 20_000)
    data, _ = make_worksheet([replace(hard[5], told={**hard[5].told, "title": (long,)})], {}, printing, "TR")
    assert data.startswith(b"%PDF")  # ISO 19005-2, 6.1.13, which the typesetter checks: at most 32,767 bytes


def test_what_is_cut_is_closed_again() -> None:
    data = shortened(
        {"title": f"{FIRST_STRONG}{'ש' * 5000}{POP}", "story": "x" * 5000, "name": ["y" * 5000, "z"], "n": 1}
    )
    assert len(data["title"]) == MOST_LETTERS and data["title"].endswith(f"…{POP}")
    assert data["story"] == "x" * 5000 and len(data["name"][0]) < 5000 and data["name"][1] == "z" and data["n"] == 1
