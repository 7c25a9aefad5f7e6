"""What the gate asks and what an answer opens: one place each, and nothing of our own (the rules are ours).

One small collection: Anna Tuulik lives, and two pictures are taken in. Nothing here is from outside the project but the
reading of PDFs, which is pypdf's.
"""

import csv
import re
from collections.abc import Iterator
from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest
from pypdf import PdfReader
from tests.formats.conftest import picture

from boxlore.core.errors import CouldNot
from boxlore.core.fields.name_answers import NamingAnswer
from boxlore.core.records.audience import To
from boxlore.core.statements import KEEPER, Kind, Subject
from boxlore.tasks.archive.name_answers import decide
from boxlore.tasks.archive.names_asked import look_for_names
from boxlore.tasks.archive.offer import offer
from boxlore.tasks.archive.transfer import transfer
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import Collection, open_collection, start
from boxlore.tasks.collection.own_wording import without_wording
from boxlore.tasks.collection.records_for_outputs import seen_by
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.outputs.copies import copies
from boxlore.tasks.outputs.printed_sheets import PrintOrder, labels, sheet, worksheet
from boxlore.tasks.outputs.web_pages import pages
from boxlore.tasks.scans.intake import IntakeOptions, take_in
from boxlore.tasks.scans.pairing import Planned, ScanSide
from boxlore.tasks.telling.statements import Teller, Telling

ON = date(2026, 11, 27)
OUTSIDE = PrintOrder(to=To.OUTSIDE)
ANNA = "Anna Tuulik"


def made(home: Path, **settings: str) -> Path:
    start(home / "c", Settings(title=settings.pop("title", "Our photographs"), prefix="GATE", **settings))
    return home / "c"


def living(collection: Collection, given: str = "Anna", family: str = "Tuulik") -> Subject:
    act, teller = collection.act("somebody living"), Teller(collection)
    person = act.new(Kind.PERSON)
    for field, words in (("given", given), ("family", family), ("born", "1963")):
        teller.add(act, person, field, words, Telling())
    act.done()
    return person


def test_our_own_example_is_nobody_living(tmp_path: Path) -> None:
    """The worksheet says how answers are typed, by an example: no name of a person is in it, and all of it is ours."""
    with open_collection(made(tmp_path), on_day=ON) as collection:
        living(collection)
        with_pictures(collection, tmp_path, 1)
        worksheet(collection, tmp_path / "w.pdf", OUTSIDE)
    text = " ".join(page.extract_text() for page in PdfReader(tmp_path / "w.pdf").pages)
    example = re.search(r"such as\s+A42-W3-B:[^,]*,", text)
    assert example and not re.search(r"[^\W\d_]", without_wording(example[0])), text


def with_pictures(collection: Collection, home: Path, count: int) -> list[Subject]:
    plan = []
    for at in range(count):
        path = home / f"scan{at}.jpg"
        path.write_bytes(picture("JPEG", comment=str(at).encode()))
        plan.append(Planned(key=str(at), sides=(ScanSide(path),), box="7"))
    taken = take_in(collection, plan, IntakeOptions(copy=False))
    return [find_item(collection, result.number) for result in taken]


def tell(collection: Collection, item: Subject, field: str, words: str) -> None:
    Teller(collection).tell(item, field, words, Telling(source=KEEPER, audience="anyone"))


def rows(collection: Collection, name: str = "names-left.csv") -> list[dict[str, str]]:
    with open(collection.folder / name, encoding="utf-8-sig", newline="") as file:
        return list(csv.DictReader(file))


def answer(collection: Collection, words: str, name: str = "names-left.csv") -> None:
    filled = [row | {"Answer": row["Answer"] or words} for row in rows(collection, name)]
    with open(collection.folder / name, "w", encoding="utf-8", newline="") as file:
        out = csv.DictWriter(file, filled[0].keys())
        out.writeheader()
        out.writerows(filled)


@pytest.fixture
def held(tmp_path: Path) -> Iterator[Collection]:
    """Anna holds the collection, and an item names her as a story."""
    with open_collection(made(tmp_path, holder=ANNA), on_day=ON) as collection:
        living(collection)
        item, _ = with_pictures(collection, tmp_path, 2)
        tell(collection, item, "story", ANNA)
        yield collection


def test_no_word_is_cut_where_a_setting_is_quoted(tmp_path: Path) -> None:
    holder = f"The neighbours of the harbour house, who kept it all until {ANNA} had it fetched by handcart on a Sunday"
    with open_collection(made(tmp_path, holder=holder), on_day=ON) as collection:
        living(collection)
        with_pictures(collection, tmp_path, 1)
        (finding,) = labels(collection, tmp_path / "l.pdf", OUTSIDE).findings
    quoted = finding.message.partition("“")[2].partition("”")[0]
    assert quoted.startswith("…") and quoted.endswith("…") and ANNA in quoted
    assert f" {quoted.strip('…')} " in holder


@pytest.mark.parametrize("words", [NamingAnswer.MAY, NamingAnswer.OTHER])
def test_an_answer_about_an_item_does_not_open_a_setting(held: Collection, tmp_path: Path, words: NamingAnswer) -> None:
    places = [place for hit in look_for_names(held).namings for place in hit.places]
    assert decide(held, [(place, words) for place in places])
    seen = seen_by(held, To.OUTSIDE)
    assert [record.words("story") for record in seen.records()] == [ANNA, ""]
    assert seen.holder == ""
    printed = labels(held, tmp_path / "l.pdf", OUTSIDE)
    (finding,) = printed.findings
    assert "The holder names someone living (“Anna Tuulik”), and is left away." in finding.message
    assert ANNA not in "".join(page.extract_text() for page in PdfReader(tmp_path / "l.pdf").pages)
    (row,) = rows(held)
    assert (row["Number"], row["Where"], row["Words"]) == ("the collection", "setting holder", "[Anna Tuulik]")


@pytest.mark.parametrize("words", ["may be named", "not that person"])
def test_a_setting_that_was_answered_goes_out_and_opens_no_item(held: Collection, tmp_path: Path, words: str) -> None:
    labels(held, tmp_path / "l.pdf", OUTSIDE)
    answer(held, words)
    printed = labels(held, tmp_path / "l2.pdf", OUTSIDE)
    assert printed.findings == ()
    assert ANNA in "".join(page.extract_text() for page in PdfReader(tmp_path / "l2.pdf").pages)
    assert [record.words("story") for record in seen_by(held, To.OUTSIDE).records()] == ["", ""]
    answer_anew = re.sub(f",{words},", ",hide,", (held.folder / "names-left.csv").read_text("utf-8"))
    (held.folder / "names-left.csv").write_text(answer_anew, "utf-8")
    assert seen_by(held, To.OUTSIDE).holder == "", "an answer that is changed holds from then on"


OF_THE_TITLE = {
    "copies": lambda c, out: list(copies(c, out, to=To.OUTSIDE)),
    "offer": offer,
    "labels": lambda c, out: labels(c, out.with_suffix(".pdf"), OUTSIDE),
    "sheet": lambda c, out: sheet(c, out.with_suffix(".pdf"), OUTSIDE),
    "pages": lambda c, out: pages(c, out, OUTSIDE),
    "transfer": transfer,
}


def test_a_title_that_names_somebody_is_said_once_and_can_be_answered(tmp_path: Path) -> None:
    """Also where the labels put the title beside another word of the name, which reads as one name."""
    with open_collection(made(tmp_path, title="Tuulik: photographs of Anna Tuulik"), on_day=ON) as collection:
        living(collection)
        with_pictures(collection, tmp_path, 2)
        for name, make in OF_THE_TITLE.items():
            with pytest.raises(CouldNot, match=r"The collection's title names someone living") as stopped:
                make(collection, tmp_path / name)  # type: ignore[no-untyped-call]
            assert "setting title in boxlore.toml" in stopped.value.what_to_do
            assert not (tmp_path / name).exists(), name
        answer(collection, "not that person")
        for name, make in OF_THE_TITLE.items():
            made_of = make(collection, tmp_path / name)  # type: ignore[no-untyped-call]
            assert name != "copies" or [copied.state for copied in made_of] == ["written", "written"]


PACKET = """<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
<rdf:Description rdf:about="" xmlns:I="http://iptc.org/std/Iptc4xmpExt/2008-02-29/"
 xmlns:m="http://www.metadataworkinggroup.com/schemas/regions/">{}</rdf:Description></rdf:RDF></x:xmpmeta>"""
LIST = '<m:Regions rdf:parseType="Resource"><m:RegionList><rdf:Bag>{}</rdf:Bag></m:RegionList></m:Regions>'
SHOWING = {
    "PersonInImage": "<I:PersonInImage><rdf:Bag><rdf:li>{}</rdf:li></rdf:Bag></I:PersonInImage>",
    "PersonInImageWDetails": '<I:PersonInImageWDetails><rdf:Bag><rdf:li rdf:parseType="Resource"><I:PersonName>'
    '<rdf:Alt><rdf:li xml:lang="x-default">{}</rdf:li></rdf:Alt></I:PersonName></rdf:li></rdf:Bag>'
    "</I:PersonInImageWDetails>",
    "region": LIST.format('<rdf:li rdf:parseType="Resource"><m:Name>{}</m:Name><m:Type>Face</m:Type></rdf:li>'),
    "region as attributes": LIST.format('<rdf:li><rdf:Description m:Name="{}" m:Type="Face"/></rdf:li>'),
}
"""Where XMP says who is shown: IPTC Photo Metadata (Extension), MWG Guidelines 2.0, 5.9; RDF/XML of both shapes."""


def shown_by_files(collection: Collection, home: Path, name: str) -> list[Subject]:
    plan = []
    for at, packet in enumerate(SHOWING.values()):
        path = home / f"shown{at}.jpg"
        path.write_bytes(picture("JPEG", comment=str(at).encode(), xmp=PACKET.format(packet.format(name)).encode()))
        plan.append(Planned(key=str(at), sides=(ScanSide(path),), box="7"))
    return [find_item(collection, result.number) for result in take_in(collection, plan, IntakeOptions(copy=False))]


def test_whom_a_file_shows_and_nobody_knows_is_held_with_a_row_to_answer(tmp_path: Path) -> None:
    with open_collection(made(tmp_path), on_day=ON) as collection:
        shown_by_files(collection, tmp_path, "Oswin Quillfeather")
        assert [record.closed_scans for record in seen_by(collection, To.OUTSIDE).records()] == [True] * 4
        assert not any(record.closed_scans for record in seen_by(collection, To.FAMILY).records())
        places = [place for hit in look_for_names(collection).namings for place in hit.places]
        (asked,) = places
        assert (asked.sentence, asked.why) == ("[Oswin Quillfeather]", "nobody here is called so")
        places = [replace(place, alike=()) for place in asked.every]
        with pytest.raises(CouldNot, match=r"held back from outside: GATEA?-0001 and 3 more"):
            sheet(collection, tmp_path / "s.pdf", OUTSIDE)
        transfer(collection, tmp_path / "t")
        assert decide(collection, [(places[0], NamingAnswer.MAY), (places[1], NamingAnswer.HIDE)]) == 2
        closed = [record.closed_scans for record in seen_by(collection, To.OUTSIDE).records()]
        assert closed == [False, True, True, True], "an answer opens the one scan that it was asked for"


def test_whom_a_file_shows_and_who_has_died_is_held_no_more(tmp_path: Path) -> None:
    with open_collection(made(tmp_path), on_day=ON) as collection:
        act, teller = collection.act("somebody dead"), Teller(collection)
        person = act.new(Kind.PERSON)
        for field, words in (("given", "Eilert"), ("family", "Haug"), ("born", "1875"), ("died", "1946")):
            teller.add(act, person, field, words, Telling())
        act.done()
        shown_by_files(collection, tmp_path, "Eilert Haug")
        assert not any(record.closed_scans for record in seen_by(collection, To.OUTSIDE).records())
