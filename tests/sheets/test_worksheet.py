"""The narrator's worksheet (large print: CCLVI guidelines, from memory: at least 18 points, better 20)."""

import io
from dataclasses import replace
from pathlib import Path

import pikepdf
import pytest

from boxlore.core.crosswalk import references
from boxlore.core.crosswalk.captions import PLAIN
from boxlore.core.records.item_record import Record
from boxlore.core.sitting.worksheet_codes import read_answers, read_code
from boxlore.core.statements import Sure
from boxlore.sheets.picture_on_paper import Room, Shelf, figure
from boxlore.sheets.print_run import Printing
from boxlore.sheets.printable_words import FIRST_STRONG, POP
from boxlore.sheets.theme import LARGE_PRINT, Theme
from boxlore.sheets.typesetting import MOST_LETTERS, shortened
from boxlore.sheets.worksheet import (
    WorksheetForm,
    blank_answers,
    make_worksheet,
    questions_of,
    with_unnamed,
    worksheet_theme,
)


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
    assert [one["number"] for one in figure(with_unnamed(bare), shelf, Room(80, 44), PLAIN)["numbers"]] == [2, 1]
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
        assert references.reference(record) in text
        assert all(one.code in text and one.asks in text for one in questions_of(record, "TR"))
    assert all("Printed 25 November 2026" in page for page in pages)
    assert {one.rule for one in findings} == {"sheet.picture", "sheet.glyph"}
    with pikepdf.open(io.BytesIO(data)) as pdf, pdf.open_metadata() as meta:
        assert (meta["pdfaid:part"], meta["pdfaid:conformance"], meta["pdfuaid:part"]) == ("2", "A", "1")
        assert [item.title for item in pdf.open_outline().root[0].children] == list(map(references.reference, hard))


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


def test_only_what_is_unanswered_is_asked(hard: list[Record]) -> None:
    group, story, bare = hard[0], hard[3], hard[5]
    assert [one.asks for one in questions_of(group, "TR", only_open=True)] == [
        "What was going on?", "What else do you remember?",
    ]  # fmt: skip
    guessed = replace(group.people[2], told=replace(group.people[2].told, sure=Sure.GUESS))
    unsure = replace(group, people=(*group.people[:2], guessed, *group.people[3:]))
    assert questions_of(unsure, "TR", only_open=True)[0].asks == "Who is number 3?"
    assert "What else do you remember?" not in [one.asks for one in questions_of(story, "TR", only_open=True)]
    assert questions_of(bare, "TR", only_open=True) == questions_of(bare, "TR")
    text = blank_answers([group], "TR", form=WorksheetForm(only_open=True, answers="ours.txt"))
    assert text.count(":\n") == 2 and '# Then: boxlore tell --from "ours.txt" --by "narrator:NAME"\n' in text


def test_there_is_a_line_for_each_person_seen(hard: list[Record]) -> None:
    four = replace(hard[5], people=tuple(replace(one, number=0) for one in hard[0].people[:4]))
    (who,) = (one for one in questions_of(four, "TR") if one.field == "person")
    assert (who.asks, who.lines) == ("Who is in it, from left to right?", 4)


@pytest.mark.parametrize(("per_page", "size", "pages"), [(1, 20, 8), (2, 14, 5), (4, 11, 4)])
def test_pictures_and_their_lines_are_together_on_a_page(
    per_page: int, size: float, pages: int, hard: list[Record], pictures: dict[str, Path], printing: Printing,
    text_of, tmp_path: Path,
) -> None:  # type: ignore[no-untyped-def]  # fmt: skip
    shown = [hard[5], *hard[:5], *hard[7:]]  # a group of nine has a page of its own
    assert worksheet_theme(Theme(), per_page).size == size
    data, _ = make_worksheet(shown, pictures, printing, "TR", form=WorksheetForm(per_page=per_page))
    (tmp_path / "w.pdf").write_bytes(data)
    text = text_of(tmp_path / "w.pdf")
    assert len(text) == pages + 1  # the last is for whoever types the answers in
    for record in shown:
        page = next(page for page in text if references.reference(record) in page)
        assert all(line.code in page for line in questions_of(record, "TR")), record.number


@pytest.mark.parametrize("names", [False, True])
def test_names_lead_only_where_the_keeper_wants_them(
    names: bool, hard: list[Record], pictures: dict[str, Path], printing: Printing, text_of, tmp_path: Path
) -> None:  # type: ignore[no-untyped-def]
    data, _ = make_worksheet(hard[:2], pictures, printing, "TR", form=WorksheetForm(names=names))
    (tmp_path / "w.pdf").write_bytes(data)
    with pikepdf.open(tmp_path / "w.pdf") as pdf:
        read_out = [str(one["/Alt"]) for one in pdf.objects if isinstance(one, pikepdf.Dictionary) and "/Alt" in one]
    words = " ".join([*text_of(tmp_path / "w.pdf"), *read_out])
    assert read_out and all((name in words) is names for name in ("Front 0", "Back 3", "Memm"))


def test_the_order_for_whoever_types_stands_whole_on_one_line(
    hard: list[Record], pictures: dict[str, Path], printing: Printing, text_of, tmp_path: Path
) -> None:  # type: ignore[no-untyped-def]
    form = WorksheetForm(answers=f"{'a long name of a file ' * 4}answers.txt")
    data, _ = make_worksheet(hard[5:6], pictures, printing, "TR", form=form)
    (tmp_path / "w.pdf").write_bytes(data)
    assert any(form.order in line for line in text_of(tmp_path / "w.pdf")[-1].splitlines())
