"""Answers to a collection's own questions go wherever told fields go (rules of our own); pyexiv2 reads the copies."""

import csv
import shutil
import subprocess
from collections.abc import Callable, Iterator
from datetime import date
from pathlib import Path

import pyexiv2
import pytest

from boxlore.core.errors import WrongUse
from boxlore.core.records.audience import To
from boxlore.core.sitting.worksheet_codes import CodedLine, own_number, write_code
from boxlore.core.statements import Kind, Said, Source
from boxlore.tasks.archive.rebuild import rebuild
from boxlore.tasks.archive.transfer import transfer
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import Collection, open_collection
from boxlore.tasks.collection.prompts import FILE_NAME
from boxlore.tasks.collection.records_for_outputs import Selection, record_of, seen_by
from boxlore.tasks.collection.settings import family_way
from boxlore.tasks.outputs.copies import copies
from boxlore.tasks.outputs.printed_sheets import PrintOrder, own_questions, sheet, worksheet
from boxlore.tasks.outputs.web_pages import pages
from boxlore.tasks.people.registry import set_audience
from boxlore.tasks.sitting.correcting import settle
from boxlore.tasks.sitting.item_list import BEGUN, about, state_of
from boxlore.tasks.sitting.session import Sitting
from boxlore.tasks.telling.statements import Teller, Telling
from boxlore.tasks.telling.table import tell_from

ON = date(2026, 11, 25)
PROMPTS = '[[prompt]]\nfield = "own-clothes"\nquestion = "What are they wearing?"\nlines = 2\n'
WORDS = "Oilskins and sou'westers."
ONE = Selection(items=("TRA-0001",))
ORDER = PrintOrder(selection=ONE)


@pytest.fixture
def mine(demo: Path, tmp_path: Path) -> Iterator[Collection]:
    """The demo with one question of its own, answered for TRA-0001 by Kristjan, and differently by a letter."""
    shutil.copytree(demo, tmp_path / "mine", ignore=shutil.ignore_patterns("copies", "print", "transfer", "pages"))
    (tmp_path / "mine" / FILE_NAME).write_text(PROMPTS, "utf-8")
    with open_collection(tmp_path / "mine", on_day=ON) as collection:
        item = find_item(collection, "TRA-0001")
        teller = Teller(collection)
        teller.tell(item, "own-clothes", "Shirtsleeves", Telling())
        teller.tell(item, "own-clothes", WORDS, Telling(source=Source(Said.NARRATOR, "Kristjan Tamm")))
        yield collection


def text_of(pdf: Path) -> str:
    """What pdftotext (poppler-utils) reads, with single blanks."""
    if not shutil.which("pdftotext"):
        pytest.skip("Debian's poppler-utils is not here to read the pages with")
    ran = subprocess.run(["pdftotext", "-raw", "-enc", "UTF-8", str(pdf), "-"], capture_output=True, check=True)
    return " ".join(ran.stdout.decode().replace("\u2019", "'").split())


def in_copies(collection: Collection, out: Path) -> str:
    front = next(copied for copied in copies(collection, out, to=To.OUTSIDE, selection=ONE) if "_f" in copied.copy)
    with pyexiv2.Image(str(out / front.copy)) as image:
        return str(image.read_xmp()["Xmp.dc.description"]) + str(image.read_iptc()["Iptc.Application2.Caption"])


def in_pages(collection: Collection, out: Path) -> str:
    pages(collection, out, PrintOrder(to=To.OUTSIDE))
    pages_read = [path.read_text("utf-8") for path in out.rglob("*.html") if "TRA-0001" in path.name]
    return "".join(pages_read).replace("&#39;", "'")


def in_transfer(name: str) -> Callable[[Collection, Path], str]:
    def read(collection: Collection, out: Path) -> str:
        transfer(collection, out, selection=ONE)
        return (out / "open" / "data" / "metadata" / name).read_text("utf-8")

    return read


OUTPUTS: dict[str, Callable[[Collection, Path], str]] = {
    "copies": in_copies,
    "pages": in_pages,
    **{
        name: in_transfer(name)
        for name in ("oai_dc.xml", "dcterms.xml", "finding-aid.ead3.xml", "inventory.csv", "records.nt")
    },
}


@pytest.mark.parametrize("output", OUTPUTS)
def test_an_answer_is_in_every_output(mine: Collection, tmp_path: Path, output: str) -> None:
    text = OUTPUTS[output](mine, tmp_path / "out")
    assert WORDS.rstrip(".") in text
    assert output == "records.nt" or f"Clothes: {WORDS.rstrip('.')}" in text


def test_an_answer_is_in_the_album(mine: Collection, tmp_path: Path) -> None:
    sheet(mine, tmp_path / "album.pdf", ORDER)
    assert f"Clothes: {WORDS}" in text_of(tmp_path / "album.pdf")


def test_it_is_found_and_rebuilt(mine: Collection, tmp_path: Path) -> None:
    assert [(hit.number, hit.field) for hit in mine.store.search("oilskins")] == [("TRA-0001", "own-clothes")]
    transfer(mine, tmp_path / "t", selection=ONE)
    rebuild(tmp_path / "again", tmp_path / "t", on_day=ON)
    with open_collection(tmp_path / "again", on_day=ON) as again:
        told = record_of(again, find_item(again, "TRA-0001").id).all("own-clothes")
        assert [view.words for view in told] == [WORDS, "Shirtsleeves"]
        assert [prompt.question for prompt in Sitting(again).prompts] == ["What are they wearing?"]
    assert not list((tmp_path / "t" / "open").rglob(FILE_NAME))


def test_it_is_kept_from_whom_the_keeper_says(mine: Collection) -> None:
    item = find_item(mine, "TRA-0001")
    set_audience(mine, item, "family", "own-clothes")
    (record,) = seen_by(mine, To.OUTSIDE).records(ONE)
    assert record.all("own-clothes") == ()
    (record,) = seen_by(mine, To.FAMILY).records(ONE)
    assert record.words("own-clothes") == WORDS


def test_who_is_living_is_not_named_in_it_outside(mine: Collection) -> None:
    item = find_item(mine, "TRA-0001")
    Teller(mine).tell(
        item, "own-clothes", "Leida Rourke says: aprons", Telling(source=Source(Said.INSCRIPTION, "verso"))
    )
    (record,) = seen_by(mine, To.OUTSIDE).records(ONE)
    assert not any("Leida" in view.words for view in record.all("own-clothes"))


def test_the_keeper_settles_which_answer_is_used(mine: Collection) -> None:
    sitting = Sitting(mine)
    record = sitting.record(find_item(mine, "TRA-0001").id)
    views = record.all("own-clothes")
    assert [view.words for view in views] == [WORDS, "Shirtsleeves"]
    settle(sitting, record, "own-clothes", views, views[1].statement)
    assert sitting.record(record.id).words("own-clothes") == "Shirtsleeves"


def test_a_worksheet_asks_it_and_its_answer_comes_back(mine: Collection, tmp_path: Path) -> None:
    _, answers = worksheet(mine, tmp_path / "w.pdf", PrintOrder(selection=Selection(items=("TRA-0002",))))
    assert "What are they wearing?" in text_of(tmp_path / "w.pdf")
    code = write_code(CodedLine("TRA-0002", "own-clothes"), "TR")
    text = answers.read_text("utf-8")
    assert f"# What are they wearing?\n{code}:" in text
    answers.write_text(text.replace(f"{code}:", f"{code}: A shawl"), "utf-8")
    assert [statement.words for statement in tell_from(mine, answers, Telling()).told] == ["A shawl"]
    assert record_of(mine, find_item(mine, "TRA-0002").id).words("own-clothes") == "A shawl"
    (mine.folder / FILE_NAME).unlink()  # it is known while it has answers
    assert tell_from(mine, answers, Telling()).known == 1


def test_two_questions_of_one_code_are_not_printed(mine: Collection) -> None:
    seen: dict[int, str] = {}
    for at in range(100_000):
        field = f"own-{at}"
        if (namesake := seen.setdefault(own_number(field), field)) != field:
            break
    blocks = "".join(f'[[prompt]]\nfield = "{name}"\nquestion = "?"\n' for name in (namesake, field))
    (mine.folder / FILE_NAME).write_text(blocks, "utf-8")
    with pytest.raises(WrongUse, match="would have one code on paper"):
        own_questions(mine)


def test_an_item_of_which_nothing_else_is_told_is_listed_by_it(mine: Collection) -> None:
    act = mine.act("one more")
    item = act.new(Kind.ITEM)
    act.state(item, "number", "TRA-0999")
    act.done()
    Teller(mine).tell(item, "own-clothes", WORDS, Telling())
    record = record_of(mine, item.id)
    assert (about(record, family_way(mine.settings)), state_of(record)) == (f"Clothes: {WORDS}", BEGUN)


def test_a_table_tells_it(mine: Collection, tmp_path: Path) -> None:
    with open(tmp_path / "told.csv", "w", encoding="utf-8", newline="") as file:
        csv.writer(file).writerows([("item", "field", "text"), ("TRA-0003", "own-clothes", "A shawl")])
    assert len(tell_from(mine, tmp_path / "told.csv", Telling()).told) == 1
