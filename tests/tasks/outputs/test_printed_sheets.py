"""Printed outputs of the demo family: selections, audiences, themes, and the worksheet that comes back."""

import shutil
import subprocess
from pathlib import Path

import pytest
from tests.sheets.test_album import drawn

from boxlore.core.crosswalk import captions, references
from boxlore.core.errors import CouldNot, WrongUse
from boxlore.core.records.audience import To
from boxlore.core.records.item_record import ScanFile
from boxlore.core.statements import Kind, Said, Source
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.collection.records_for_outputs import Selection, record_of, seen_by
from boxlore.tasks.collection.settings import family_way
from boxlore.tasks.outputs.printed_sheets import (
    PrintOrder,
    WorksheetForm,
    labels,
    pixels,
    seen_items,
    sheet,
    slips,
    theme_of,
    worksheet,
)
from boxlore.tasks.telling.statements import Telling
from boxlore.tasks.telling.table import tell_from

LIVING = ("Mia", "Daniel", "Danny", "Leida", "Con Rourke", "Oskar")


@pytest.fixture
def opened(demo: Path):  # type: ignore[no-untyped-def]
    from datetime import date  # noqa: PLC0415  # the fixture's only use

    with open_collection(demo, write=False, on_day=date(2026, 11, 25)) as collection:
        yield collection


def numbers(opened, **chosen: object) -> list[str]:  # type: ignore[no-untyped-def]
    return [one.number for one in seen_items(seen_by(opened, To.FAMILY), PrintOrder(selection=Selection(**chosen)))[0]]  # type: ignore[arg-type]


def test_selections(opened) -> None:  # type: ignore[no-untyped-def]
    assert numbers(opened, box="1", folder="1") == ["TRA-0001", "TRA-0002", "TRA-0003", "TRA-0004"]
    assert numbers(opened, event="picnic") == ["TRA-0020"]
    assert set(numbers(opened, person="Helmi Tamm")) >= {"TRA-0003", "TRA-0006"}
    assert "TRA-0009" in numbers(opened, words="accordion")
    assert numbers(opened, items=("TRA-0018",)) == ["TRA-0018"]
    with pytest.raises(CouldNot, match="no picture to print"):
        numbers(opened, event="a coronation")


def test_a_selection_tells_outsiders_nothing(opened) -> None:  # type: ignore[no-untyped-def]
    """Asking for a living person's pictures for outside gives none, not a folder of theirs without the name."""
    outside = PrintOrder(to=To.OUTSIDE, selection=Selection(person="Mia Rourke"))
    with pytest.raises(CouldNot):
        seen_items(seen_by(opened, To.OUTSIDE), outside)


def words_of(path: Path) -> str:
    if not shutil.which("pdftotext"):
        pytest.skip("Debian's poppler-utils is not here to read the pages with")
    found = subprocess.run(["pdftotext", "-raw", str(path), "-"], capture_output=True, check=True)
    return found.stdout.decode()


@pytest.mark.parametrize("make", [sheet, slips, labels, worksheet])
def test_outsiders_read_no_living_name_anywhere(make, opened, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    """In words, in alternative texts, in bookmarks, in the file for answers: by every byte after unpacking."""
    import pikepdf  # noqa: PLC0415  # read in this test alone

    make(opened, tmp_path / "out.pdf", PrintOrder(to=To.OUTSIDE))
    text = words_of(tmp_path / "out.pdf")
    with pikepdf.open(tmp_path / "out.pdf") as pdf:
        hidden = [str(item) for item in pdf.open_outline().root]
        for one in pdf.objects:
            if isinstance(one, pikepdf.Dictionary):
                hidden += [str(one[key]) for key in ("/Alt", "/Title", "/Contents", "/ActualText") if key in one]
    answers = tmp_path / "out-answers.txt"
    whole = text + " ".join(hidden) + (answers.read_text("utf-8") if answers.exists() else "")
    assert "TRA-00" in whole
    for name in LIVING:
        assert name not in whole


def test_the_family_sees_more(opened, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    made = sheet(opened, tmp_path / "a.pdf")
    outside = sheet(opened, tmp_path / "b.pdf", to=To.OUTSIDE)
    assert made.items > outside.items and outside.left_out > made.left_out
    assert (outside.held, made.held) == (outside.left_out - made.left_out, 0)
    assert outside.why_left_out == (
        f"{outside.left_out} left out: {made.left_out} have no scan of their front, "
        f"{outside.held} may show somebody living, or are closed"
    )
    assert "Mia Rourke" in words_of(tmp_path / "a.pdf")
    assert "for outside" in words_of(tmp_path / "b.pdf")


def test_two_runs_are_the_same_bytes(opened, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    order = PrintOrder(selection=Selection(box="1"))
    for make in (sheet, slips, labels, worksheet):
        make(opened, tmp_path / "a" / "out.pdf", order)
        make(opened, tmp_path / "b" / "out.pdf", order)
        assert (tmp_path / "a" / "out.pdf").read_bytes() == (tmp_path / "b" / "out.pdf").read_bytes(), make


def test_a_damaged_scan_is_replaced_and_named(demo: Path, tmp_path: Path) -> None:
    shutil.copytree(demo, tmp_path / "mine")
    with open_collection(tmp_path / "mine", write=False) as collection:
        scan = record_of(collection, find_item(collection, "TRA-0001").id).scans[0]
        (tmp_path / "mine" / scan.path).write_bytes(b"\xff\xd8\xff\xe0 no picture")
        made = sheet(collection, tmp_path / "a.pdf", PrintOrder(selection=Selection(box="1")))
        changed, shown = (one.message for one in made.findings)
        assert shown == "The picture of TRA-0001 cannot be shown."
        assert f"{scan.path} of TRA-0001 is not as it was at its intake" in changed


def test_a_worksheet_of_what_is_unanswered_leaves_out_what_is_told(demo: Path, tmp_path: Path) -> None:
    shutil.copytree(demo, tmp_path / "mine")
    form, chosen = WorksheetForm(only_open=True), PrintOrder(selection=Selection(items=("TRA-0021",)))
    with open_collection(tmp_path / "mine") as collection:
        _, answers = worksheet(collection, tmp_path / "all.pdf", chosen)
        asked = [line for line in answers.read_text("utf-8").splitlines() if line.startswith("A21-")]
        _, answers = worksheet(collection, tmp_path / "open.pdf", chosen, form)
        still = [line for line in answers.read_text("utf-8").splitlines() if line.startswith("A21-")]
        assert 0 < len(still) < len(asked) and set(still) < set(asked)
        words = {"W": "Aino Tamm", "D": "1934", "P": "Tallinn", "O": "her birthday", "S": "She was eight."}
        filled = [f"{line} {words[line.split('-')[1][0]]}\n" for line in still]
        (tmp_path / "filled.txt").write_text("".join(filled), "utf-8")
        leida = Telling(source=Source(Said.NARRATOR, "leida"))
        tell_from(collection, tmp_path / "filled.txt", leida, printed_here=True)
        with pytest.raises(CouldNot, match="nothing is unanswered"):
            worksheet(collection, tmp_path / "none.pdf", chosen, form)


def test_a_filled_worksheet_comes_back(demo: Path, tmp_path: Path) -> None:
    shutil.copytree(demo, tmp_path / "mine")
    with open_collection(tmp_path / "mine") as collection:
        order = PrintOrder(selection=Selection(items=("TRA-0003",)))
        _, answers = worksheet(collection, tmp_path / "w.pdf", order)
        filled = []
        for line in answers.read_text("utf-8").splitlines():
            said = {"A3-W6": "Villem Lepik", "A3-P": "?", "A3-S": "The fiddler fell asleep."}
            known = next((words for start, words in said.items() if line.startswith(f"{start}-")), "")
            filled.append(f"{line} {known}" if known else line)
        answers.write_text("\n".join([*filled, "A3-W7-Q: a slip of the pen"]), encoding="utf-8")
        taken = tell_from(collection, answers, Telling(source=Source(Said.NARRATOR, "x")))
        told, refused = [(one.subject.kind, one.field) for one in taken.told], taken.refused
        record = record_of(collection, find_item(collection, "TRA-0003").id)
    assert told == [(Kind.MARKER, "person"), (Kind.ITEM, "place"), (Kind.ITEM, "story")]
    assert [one.why for one in refused] == ["“A3-W7-Q”: a letter or digit is wrong. Look at the worksheet again."]
    assert next(one.name for one in record.shown() if one.number == 6) == "Villem Lepik"
    assert [one.words for one in record.all("story")][-1].startswith("The fiddler fell asleep.")


def test_a_filled_file_of_answers_is_never_overwritten(opened, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    order = PrintOrder(selection=Selection(items=("TRA-0003",)))
    _, first = worksheet(opened, tmp_path / "w.pdf", order)
    first.write_text("A3-W6-5: Villem", encoding="utf-8")
    _, second = worksheet(opened, tmp_path / "w.pdf", order)
    assert (first.name, second.name) == ("w-answers.txt", "w-answers-2.txt")
    assert first.read_text("utf-8") == "A3-W6-5: Villem"


def test_every_caption_of_the_demo_is_on_its_sheet(opened, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    """And 45 % of each of its pages are picture, but of one, on which stand the nine people of a wedding with the
    doubts about them: its words take a quarter of it (common practice, no source)."""
    sheet(opened, tmp_path / "a.pdf")
    _, *shares = [round(share, 2) for _, share, _ in drawn(tmp_path / "a.pdf") if share]  # the title page is none
    fewest, *others = sorted(shares)
    assert fewest >= 0.38 and min(others) >= 0.44 and sum(shares) / len(shares) >= 0.5
    text = "".join(words_of(tmp_path / "a.pdf").split())
    for one in seen_by(opened, To.FAMILY).records():
        if one.scans:
            style = captions.Style(numbers=len(one.shown()) > 1, dates=family_way(opened.settings))
            for words in (
                captions.title(one, style),
                *captions.lines(one, "sheet", style).values(),
                references.reference(one),
            ):
                assert "".join(words.split()) in text, words


def test_themes_by_name_and_by_file(tmp_path: Path) -> None:
    assert theme_of("").size < theme_of("large-print").size
    (tmp_path / "fonts").mkdir()
    (tmp_path / "mine.toml").write_text('like = "large-print"\nfonts_from = "fonts"\n', encoding="utf-8")
    assert theme_of(str(tmp_path / "mine.toml")).fonts_from == str((tmp_path / "fonts").resolve())
    (tmp_path / "bad.toml").write_text('fonts_from = "nowhere"\n', encoding="utf-8")
    for name, why in (("bad.toml", "no folder nowhere"), ("none.toml", "no theme and no file"), (".", "no theme")):
        with pytest.raises(WrongUse, match=why):
            theme_of(str(tmp_path / name))
    (tmp_path / "latin.toml").write_bytes(b'fonts = ["\xe4"]')
    with pytest.raises(WrongUse, match="UTF-8"):
        theme_of(str(tmp_path / "latin.toml"))


SCAN = ScanFile(id="s", path="s", sha256="", bytes=1, width=3000, height=2000, media_type="image/jpeg")


def test_no_more_pixels_than_the_paper_shows() -> None:
    """66 mm wide at 44 mm high: 676 pixels at 260 an inch; the same where the picture is stored on its side."""
    assert pixels(SCAN, (86, 44)) == 676
    assert pixels(SCAN, (40, 400)) == 615  # standing it would be 60 mm high


def test_kin_of_the_one_the_album_is_for(opened, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    """Leida is the daughter of Arvo, son of Helmi and Juhan, son of Mari (the demo's own table of people)."""
    order = PrintOrder(selection=Selection(items=("TRA-0003", "TRA-0018")), kin_of="Leida Rourke")
    sheet(opened, tmp_path / "a.pdf", order)
    text = " ".join(words_of(tmp_path / "a.pdf").split())
    assert "Helmi Tamm (Leida’s grandmother)" in text
    assert "Mari Tamm (Leida’s great-grandmother)" in text
    assert "Tom Rourke (Leida’s husband)" in text
    assert sheet(opened, tmp_path / "b.pdf", PrintOrder(kin_of="Rourke, Leida")).items
    with pytest.raises(WrongUse, match="nobody called"):
        sheet(opened, tmp_path / "b.pdf", PrintOrder(kin_of="Nobody"))
    with pytest.raises(WrongUse, match="only in what is for the family"):
        sheet(opened, tmp_path / "c.pdf", PrintOrder(to=To.OUTSIDE, kin_of="Leida Rourke"))
