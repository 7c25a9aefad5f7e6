"""The album sheet, read back with pikepdf and pdftotext.

PDF/A-2 level A: ISO 19005-2, 6.7 (tagging); PDF/UA-1: ISO 14289-1, 7.3 (graphics), 7.4 (headings).
"""

import contextlib
import io
import re
import shutil
import subprocess
from dataclasses import replace
from itertools import pairwise
from pathlib import Path

import pikepdf
import pypdf
import pypdfium2
import pytest
from PIL import Image
from tests.drawn import some
from tests.sheets.conftest import nine, record, shown
from tests.sheets.pdf_clauses import faults

from boxlore.core.crosswalk import captions, references
from boxlore.core.crosswalk.captions import PLAIN, Style
from boxlore.core.records.item_record import Record
from boxlore.core.records.marks import Mark
from boxlore.sheets.album import left_out_words, make_sheet
from boxlore.sheets.picture_on_paper import Room, Shelf, back_of, figure, outline_key
from boxlore.sheets.print_run import Printing
from boxlore.sheets.theme import LARGE_PRINT, THEMES, Theme


@pytest.fixture(scope="module")
def made(hard: list[Record], pictures: dict[str, Path], tmp_path_factory: pytest.TempPathFactory):  # type: ignore[no-untyped-def]
    from datetime import date  # noqa: PLC0415  # the module's only use

    data, findings = make_sheet(hard, pictures, Printing(title="Tamm and Rourke", printed_on=date(2026, 11, 25)))
    path = tmp_path_factory.mktemp("album") / "album.pdf"
    path.write_bytes(data)
    return path, findings


def structure(node):  # type: ignore[no-untyped-def]
    kids = node.get("/K")
    for kid in kids if isinstance(kids, pikepdf.Array) else [kids]:
        if isinstance(kid, pikepdf.Dictionary):
            yield kid
            yield from structure(kid)


def test_pdf_a_and_ua(made) -> None:  # type: ignore[no-untyped-def]
    with pikepdf.open(made[0]) as pdf:
        assert pdf.Root.MarkInfo.Marked
        assert str(pdf.Root.Lang) == "en"
        assert "/OutputIntents" in pdf.Root and pdf.Root.ViewerPreferences.DisplayDocTitle
        with pdf.open_metadata() as meta:
            assert (meta["pdfaid:part"], meta["pdfaid:conformance"], meta["pdfuaid:part"]) == ("2", "A", "1")
            assert meta["dc:title"] == "Tamm and Rourke"
        assert "/Encrypt" not in pdf.trailer
        for page in pdf.pages:
            for font in (page.get("/Resources", {}).get("/Font") or {}).values():
                inner = font.get("/DescendantFonts", [font])[0]
                assert any(key in inner.FontDescriptor for key in ("/FontFile", "/FontFile2", "/FontFile3"))


def test_every_picture_is_a_figure_with_the_composed_alt_text(made, hard: list[Record]) -> None:  # type: ignore[no-untyped-def]
    with pikepdf.open(made[0]) as pdf:
        alts = [str(one.Alt) for one in structure(pdf.Root.StructTreeRoot) if one.get("/S") == "/Figure"]
    inside = {plain(captions.alt_text(record)) for record in hard[:-1]}
    assert {plain(alt) for alt in alts} == inside
    assert len(alts) == len(hard)  # that of the title page is there again, and the damaged one is none


def test_headings_skip_no_level_and_bookmarks_name_each_item(made, hard: list[Record]) -> None:  # type: ignore[no-untyped-def]
    with pikepdf.open(made[0]) as pdf:
        tags = [str(one.get("/S", "")) for one in structure(pdf.Root.StructTreeRoot)]
        outline = pdf.open_outline().root
        titles = [one.title for one in outline]
        items = [one.title for one in outline[1].children]
    levels = [int(tag[2:]) for tag in tags if tag[:2] == "/H" and tag[2:].isdigit()]
    assert levels[0] == 1
    assert all(after - before <= 1 for before, after in pairwise(levels))
    chapters = ["The 1910s", "Without a date", "Stories", "People", "Places", "Where the words come from"]
    assert titles == ["Tamm and Rourke", *chapters]
    assert [plain(title) for title in items] == [plain(captions.title(hard[0]))]


def test_told_languages_are_tagged(made) -> None:  # type: ignore[no-untyped-def]
    with pikepdf.open(made[0]) as pdf:
        tagged = {str(one.Lang) for one in structure(pdf.Root.StructTreeRoot) if "/Lang" in one}
        inside = b"".join(page.Contents.read_bytes() for page in pdf.pages)
    assert {"ru", "mi"} <= tagged | {tag for tag in ("ru", "mi") if f"/Lang({tag})".encode() in inside}


def plain(words: str) -> str:
    for letter in "\u2068\u2069\u200b\u202a\u202b\u202c\u202e\x07":
        words = words.replace(letter, "")
    return " ".join(words.replace("\u00a0", " ").replace("\U00013000", "□").split())


def test_the_text_is_the_captions_page_by_page(made, hard: list[Record], text_of) -> None:  # type: ignore[no-untyped-def]
    pages = text_of(made[0])
    assert all("Printed 25 November 2026" in page for page in pages)
    for one in hard:
        reference = references.reference(one)
        page = next(page for page in pages if reference in page)
        numbered = len(one.shown()) > 1
        said = captions.lines(one, "sheet", Style(numbers=numbered))
        if one.number == "TRA-0003":
            continue  # pdftotext orders words from right to left by what stands on the page: see the next test
        for words in (captions.title(one), *said.values()):
            assert plain(words).replace(" ", "") in page.replace(" ", ""), words


def test_hebrew_is_there_in_reading_order(made, text_of) -> None:  # type: ignore[no-untyped-def]
    text = " ".join(text_of(made[0]))
    for word in ("בית", "הספר", "בתל", "אביב", "לאה", "תמם"):
        assert word in text


def test_left_to_right_holds_for_names_from_right_to_left(pictures, printing, tmp_path) -> None:  # type: ignore[no-untyped-def]
    """Unicode Standard Annex 9, 2.4.2: an isolate keeps two names from becoming one run, whose first stands right."""
    if not shutil.which("pdftotext"):
        pytest.skip("Debian's poppler-utils is not here to read the pages with")
    names = ("לאה", "משה", "רות")
    row = [shown(name, 0.2 + at / 4, 0.3, 0.05, 0.08, number=at + 1) for at, name in enumerate(names)]
    (tmp_path / "a.pdf").write_bytes(make_sheet([record(0, *row, title="Two")], pictures, printing)[0])
    command = ["pdftotext", "-bbox", str(tmp_path / "a.pdf"), "-"]
    out = subprocess.run(command, capture_output=True, check=True).stdout.decode()
    words = re.findall(r'xMin="([\d.]+)" yMin="([\d.]+)".*?>(.*?)</word>', out)
    first, second, _ = (next((float(x), y) for x, y, word in words if set(name) <= set(word)) for name in names)
    assert first[0] < second[0] and first[1] == second[1]


def test_a_long_story_flows_on_and_says_where(made, hard: list[Record], text_of) -> None:  # type: ignore[no-untyped-def]
    pages = text_of(made[0])
    page = next(page for page in pages if references.reference(hard[1]) in page)
    number = int(page.split("The story is on page ")[1].split(".")[0])
    assert "Stories" in pages[number - 1] and "Word1 of the long story" in pages[number - 1]
    whole = " ".join(pages[number - 1 :])
    assert all(f"Word{at} of" in whole for at in range(1, 181))
    assert len(hard[1].words("story").split()) >= 1800


def test_indexes_give_the_pages(made, hard: list[Record], text_of) -> None:  # type: ignore[no-untyped-def]
    pages = text_of(made[0])
    people = next(page for page in reversed(pages) if " Back 0 " in page)
    at = next(number for number, page in enumerate(pages, 1) if references.reference(hard[0]) in page)
    assert f"Back 0 {at} Back 1 {at}" in people
    places = next(page for page in pages if "Reval (now Tallinn, Estonia)" in page and "Places" in page)
    assert f"Reval (now Tallinn, Estonia) {at}" in places


def test_what_cannot_be_printed_is_named(made, text_of) -> None:  # type: ignore[no-untyped-def]
    path, findings = made
    messages = [one.message for one in findings]
    assert messages[0] == "The picture of TRA-0009 cannot be shown."
    assert "U+13000" in messages[1] and len(messages) == 2
    assert "that nobody has: □" in " ".join(text_of(path))
    assert "This picture cannot be shown" in " ".join(text_of(path))


def test_two_runs_are_the_same_bytes(hard, pictures, printing: Printing) -> None:  # type: ignore[no-untyped-def]
    assert make_sheet(hard, pictures, printing)[0] == make_sheet(hard, pictures, printing)[0]


@pytest.mark.parametrize(("paper", "size"), [("a4", (595, 842)), ("letter", (612, 792))])
def test_paper(paper: str, size: tuple[int, int], hard, pictures, printing: Printing) -> None:  # type: ignore[no-untyped-def]
    """ISO 216: 210 × 297 mm; ANSI letter: 8.5 × 11 in; in points of 1/72 in."""
    data, _ = make_sheet(hard[:2], pictures, replace(printing, paper=paper))
    with pikepdf.open(io.BytesIO(data)) as pdf:
        assert [round(float(edge)) for edge in pdf.pages[0].mediabox][2:] == list(size)


def test_large_print(hard, pictures, printing: Printing, text_of, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    data, _ = make_sheet(hard, pictures, replace(printing, theme=LARGE_PRINT))
    (tmp_path / "a.pdf").write_bytes(data)
    text = " ".join(text_of(tmp_path / "a.pdf"))
    assert "Back row, left to right: 6 Back 0, 7 Back 1, 8 Back 2 and 9 Back 3." in text


def test_a_print_shop_gets_colour_over_the_edge(hard, pictures, printing: Printing, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    """ISO 32000-1, 14.11.2: the TrimBox is the finished page; the BleedBox, by default the whole one, what is printed.
    Read by pypdf, which knows the defaults, and drawn by PDFium."""
    theme = replace(THEMES["linen"], paper="#d8c4a4", ink="#000000", soft="#000000")
    printing = replace(printing, paper="square", bleed=3.0, theme=theme)
    (tmp_path / "a.pdf").write_bytes(make_sheet(hard[:2], pictures, printing)[0])
    for page in pypdf.PdfReader(tmp_path / "a.pdf").pages:
        boxes = [[round(float(edge) / 72 * 25.4, 1) for edge in box] for box in (page.bleedbox, page.trimbox)]
        assert boxes == [[0, 0, 216, 216], [3, 3, 213, 213]]
    with contextlib.closing(pypdfium2.PdfDocument(tmp_path / "a.pdf")) as pdf:
        for page in pdf:
            drawn_page = page.render(scale=0.5).to_pil().convert("RGB")
            assert {drawn_page.getpixel(at) for at in ((0, 0), (drawn_page.width - 1, drawn_page.height - 1))} == {
                (0xD8, 0xC4, 0xA4)
            }
    assert faults(tmp_path / "a.pdf") == []


def test_where_a_key_says_who_is_who_no_number_covers_anybody(made, hard: list[Record], text_of) -> None:  # type: ignore[no-untyped-def]
    """Each number once in the key, and once before its name."""
    page = next(page for page in text_of(made[0]) if references.reference(hard[0]) in page)
    assert [page.split().count(str(number)) for number in range(6, 10)] == [2, 2, 2, 2]


def test_what_is_left_out_is_counted(hard: list[Record], printing: Printing) -> None:
    kept = [replace(hard[0], withheld=2), hard[1]]
    assert left_out_words(kept, replace(printing, left_out=1)) == "Left out of this copy: 2 statements and 1 item."
    assert left_out_words([replace(hard[0], withheld=1)], printing) == "Left out of this copy: 1 statement."
    assert left_out_words(hard, printing) == ""


def test_the_boxes_under_the_title_are_counted_up(hard, printing: Printing, text_of, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    """Common practice, no source: boxes are told in the order of a shelf, whatever the photographs stand in."""
    records = [replace(hard[at], scans=(), mark=Mark((("box", box),), 1)) for at, box in enumerate(("10", "2", "1"))]
    data, _ = make_sheet(records, {}, printing)
    (tmp_path / "a.pdf").write_bytes(data)
    assert "The prints are kept in boxes 1, 2 and 10" in " ".join(" ".join(text_of(tmp_path / "a.pdf")).split())


def drawn(path: Path):  # type: ignore[no-untyped-def]
    """For each page: the sizes of its letters in points, the surface of its pictures and its blank foot, as parts of
    the page. What stands in the margin below is no part of a page's filling.
    """
    margin = Theme().margin_bottom / 25.4 * 72
    with pikepdf.open(path) as pdf:
        for page in pdf.pages:
            matrix, kept, sizes, pictures = pikepdf.Matrix(), [], set(), []
            size, text, lowest = 0.0, pikepdf.Matrix(), float(page.mediabox[3])
            images = {name for name, one in (page.Resources.get("/XObject") or {}).items() if one.Subtype == "/Image"}
            for operands, operator in pikepdf.parse_content_stream(page):
                match str(operator):
                    case "q":
                        kept.append(matrix)
                    case "Q":
                        matrix = kept.pop()
                    case "cm":
                        matrix = pikepdf.Matrix(*map(float, operands)) @ matrix
                    case "Tf":
                        size = float(operands[1])
                    case "Tm":
                        text = pikepdf.Matrix(*map(float, operands))
                    case "Tj" | "TJ":
                        sizes.add(round(size * abs((text @ matrix).d), 1))
                        lowest = min(lowest, y) if (y := (text @ matrix).f) >= margin else lowest
                    case "Do" if operands[0] in images:
                        pictures.append(abs(matrix.a * matrix.d))
                        lowest = min(lowest, matrix.f, matrix.f + matrix.d)
            high = float(page.mediabox[3])
            yield sizes, sum(pictures) / float(page.mediabox[2]) / high, (lowest - margin) / high


@pytest.mark.parametrize(("theme", "least"), [("plain", 11.0), ("large-print", 18.0)])
def test_no_letter_is_smaller_than_the_theme_says(theme: str, least: float, hard, pictures, printing, tmp_path) -> None:  # type: ignore[no-untyped-def]
    """11 points for a book that is read at home: common practice, no source; 18: see `sheets.theme`."""
    (tmp_path / "a.pdf").write_bytes(make_sheet(hard, pictures, replace(printing, theme=THEMES[theme]))[0])
    sizes = set().union(*(sizes for sizes, *_ in drawn(tmp_path / "a.pdf")))
    assert sizes and min(sizes) >= least - 0.05


# Of the pages with photographs the least that is picture, and the mean. A picture that lies goes across an upright page
# and is two fifths of it at most; a small page has as many words; large letters take their room.
FILLED = [
    ("a4", "plain", 0.4, 0.48), ("square", "plain", 0.4, 0.45), ("letter", "plain", 0.4, 0.45),
    ("a5", "plain", 0.3, 0.4), ("a4", "large-print", 0.3, 0.4), ("a4", "linen", 0.3, 0.4),
]  # fmt: skip


@pytest.mark.parametrize(("size", "theme", "least", "mean"), some(FILLED))
def test_the_pages_are_mostly_picture(  # type: ignore[no-untyped-def]
    size: str, theme: str, least: float, mean: float, hard, pictures, printing, tmp_path
) -> None:
    """Every page of photographs but the last (common practice, no source)."""
    records = [
        replace(one, id=f"{one.id}-{time}", number=f"T{time}-{one.number}") for time in (1, 2) for one in hard[:6]
    ]
    printing = replace(printing, paper=size, theme=THEMES[theme])
    (tmp_path / "a.pdf").write_bytes(make_sheet(records, pictures, printing)[0])
    measured = list(drawn(tmp_path / "a.pdf"))[2:]
    shares = [share for _, share, _ in measured]
    feet = [foot for *_, foot in measured]
    shares = shares[: next(at for at, share in enumerate(shares) if not share)]
    assert max(feet[: len(shares) - 1]) < 0.15
    assert max(feet[len(shares) : -1], default=0.0) < 0.15  # what follows, but for the last page of all
    assert min(shares[:-1]) >= least and sum(shares[:-1]) / len(shares[:-1]) >= mean, shares


@pytest.mark.parametrize(("size", "where"), [((200, 400), "Beside it is its back."), ((400, 300), "Below it")])
def test_backs_that_carry_writing_stand_with_their_fronts(
    size: tuple[int, int], where: str, printing, tmp_path
) -> None:  # type: ignore[no-untyped-def]
    """Where both are largest: two that stand beside each other, two that lie one under the other."""
    front = record(0, inscription="Kärdla 1931")
    back = replace(front.scans[0], id="back0", side="verso")
    both = replace(front, scans=(front.scans[0], back))
    path = tmp_path / "a.jpg"
    Image.new("RGB", size).save(path)
    (tmp_path / "a.pdf").write_bytes(make_sheet([both], {"scan0": path, "back0": path}, printing)[0])
    with pikepdf.open(tmp_path / "a.pdf") as pdf:
        alts = [str(one.Alt) for one in structure(pdf.Root.StructTreeRoot) if one.get("/S") == "/Figure"]
    assert where in alts[1]
    plain_front = replace(both, told={})
    assert back_of(plain_front) is None and back_of(both) == back


def test_what_a_page_has_no_room_for_stands_at_the_end(pictures, printing, text_of, tmp_path) -> None:  # type: ignore[no-untyped-def]
    """Nothing is lost: a story begun under its picture is whole among the stories, what is written on it stands with
    where the words come from."""
    story = " ".join(f"Word{at} was said." for at in range(1, 20))
    records = [record(at, *nine(), story=story, inscription="Kärdla 1931") for at in range(3)]
    data, _ = make_sheet(records, pictures, replace(printing, paper="a5", theme=LARGE_PRINT))
    (tmp_path / "a.pdf").write_bytes(data)
    text = " ".join(text_of(tmp_path / "a.pdf"))
    for word in ("Word19 was said.", "Written on it: “Kärdla 1931”."):
        assert text.count(word) >= len(records), word
    assert text.count("was said. …") == len(records)  # begun, to the end of a sentence


def test_lives_and_other_names_stand_in_the_index(hard, pictures, printing, text_of, tmp_path) -> None:  # type: ignore[no-untyped-def]
    with_lives = replace(
        printing,
        lives={"id-Memm": "1868–1940"},
        other_names={"id-Memm": ("Kask, Mari",)},
        sort_names={"id-Memm": "Tamm, Mari"},
    )
    (tmp_path / "a.pdf").write_bytes(make_sheet(hard[1:2], pictures, with_lives)[0])
    people = next(page for page in text_of(tmp_path / "a.pdf") if " People " in page and "Contents" not in page)
    assert "Kask, Mari see Tamm, Mari" in people and "Tamm, Mari, 1868–1940 3" in people


def test_the_family_stands_in_nested_lists(hard, pictures, printing, text_of, tmp_path) -> None:  # type: ignore[no-untyped-def]
    """ISO 14289-1, 7.6: lists are tagged as such."""
    family = [(0, "Juhan and Helmi"), (1, "Liisi"), (2, "Leida"), (1, "Aino"), (0, "Ann and Patrick")]
    (tmp_path / "a.pdf").write_bytes(make_sheet(hard[:1], pictures, replace(printing, family=family))[0])
    assert any("Juhan and Helmi" in page and "Leida" in page for page in text_of(tmp_path / "a.pdf"))
    with pikepdf.open(tmp_path / "a.pdf") as pdf:
        lists = [each for each in structure(pdf.Root.StructTreeRoot) if each.get("/S") == "/L"]
    assert len(lists) >= 3


def test_the_outline_key_is_measured_as_it_is_drawn(hard, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    """A scan that is stored on its side (Exif 2.32, Orientation 6) is higher than wide when it is shown."""
    picture = tmp_path / "upright.jpg"
    Image.new("RGB", (300, 400)).save(picture)
    shelf = Shelf({"scan0": picture}, tmp_path, [])
    assert outline_key(hard[0], shelf, 11.0)["shape"] == figure(hard[0], shelf, Room(90.0, 120.0), PLAIN)["shape"]
