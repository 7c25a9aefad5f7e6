"""What a transfer says beyond its records, and what the name search lists: by the same answer as the records.

The rule is ours (core/records/audience). Tom Rourke died in 2011; Mia lives and has consented to nothing.
"""

import csv
import shutil
from collections.abc import Callable, Iterator
from datetime import date
from pathlib import Path

import pytest
from lxml import etree
from tests.every_row import every_row

from boxlore.core.fields.originals import KEPT_WORDS, Kept
from boxlore.core.fields.sittings import RECORDING_WORDS, RecordingFacts
from boxlore.core.records.audience import To
from boxlore.core.statements import Kind, Said, Source, Subject
from boxlore.tasks.archive.names_asked import look_for_names
from boxlore.tasks.archive.offer import offer
from boxlore.tasks.archive.rebuild import rebuild
from boxlore.tasks.archive.transfer import transfer
from boxlore.tasks.archive.transfer_context import moves_of, thing_lines, things_told, with_contact
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import Act, Collection, open_collection
from boxlore.tasks.collection.records_for_outputs import Selection, record_of, records, seen_by
from boxlore.tasks.people.registry import set_audience
from boxlore.tasks.telling.statements import Teller, Telling
from boxlore.tasks.telling.understanding import person_reading

ON = date(2026, 11, 25)
LETTER = Source(Said.DOCUMENT, "letter of Mia Rourke")


@pytest.fixture
def collection(bare: Callable[[int], Path]) -> Iterator[Collection]:
    """TRA-0001 lay in a box labelled with her name and lies in box 2; there is one sitting, with a recording."""
    with open_collection(bare(2)) as opened:
        act = opened.act("the family")
        person(act, "Tom", died="2011")
        person(act, "Mia")
        item, boxes = Subject(Kind.ITEM, opened.store.items()[0][1]), [act.new(Kind.CONTAINER) for _ in range(2)]
        for box, label in zip(boxes, ("Mia’s letters", "2"), strict=True):
            act.state(box, "kind", "box")
            act.state(box, "label", label)
        before = act.state(item, "kept", KEPT_WORDS.write(Kept(boxes[0].id, 1)))
        act.state(item, "kept", KEPT_WORDS.write(Kept(boxes[1].id, 1)), replaces=before.id)
        sound = RecordingFacts(path="recordings/1.wav", sha256="0" * 64, bytes=1, name="tom_rourke.wav")
        act.state(act.new(Kind.SITTING), "recording", RECORDING_WORDS.write(sound))
        act.done()
        yield opened


def person(act: Act, given: str, *, died: str = "", family: str = "Rourke") -> Subject:
    made = act.new(Kind.PERSON)
    for field, words in (("given", given), ("family", family), ("died", died)):
        if words:
            act.state(made, field, words)
    return made


def item(collection: Collection) -> Subject:
    return Subject(Kind.ITEM, collection.store.items()[0][1])


def tell(collection: Collection, about: Subject, field: str, words: str, **more: object) -> None:
    act = collection.act("told")
    act.state(about, field, words, **more)
    act.done()


def lines(collection: Collection, to: To) -> str:
    sittings = [ident for ident, _ in collection.store.subjects(Kind.SITTING)] if to is To.ARCHIVE else ()
    return "\n".join(thing_lines(collection, seen_by(collection, to), None, sittings))


def test_a_box_with_a_withheld_name_is_in_no_line_of_moves_outside(collection: Collection) -> None:
    record = next(records(collection))
    assert "Mia’s letters" in moves_of(collection, seen_by(collection, To.ARCHIVE)).of(record)[0]
    assert moves_of(collection, seen_by(collection, To.OUTSIDE)).of(record) == ()


def test_a_document_about_an_event_is_not_called_by_a_withheld_name(collection: Collection) -> None:
    wedding = collection.act("").new(Kind.EVENT)
    tell(collection, wedding, "name", "the wedding", source=LETTER)
    assert [
        view.source for view in things_told(collection, seen_by(collection, To.OUTSIDE), Kind.EVENT)[wedding.id]
    ] == [Source(Said.DOCUMENT)]
    assert "letter%20of%20Mia" not in lines(collection, To.OUTSIDE)
    assert "letter%20of%20Mia" in lines(collection, To.ARCHIVE)


def test_a_namesake_of_someone_withheld_is_not_named_outside(collection: Collection) -> None:
    act = collection.act("a namesake")
    person(act, "Mia", died="1940")
    person(act, "Mia", died="1941", family="Kask")
    act.done()
    assert "Mia Kask" in lines(collection, To.ARCHIVE) and "Mia Kask" in lines(collection, To.OUTSIDE)
    assert "Mia Rourke" not in lines(collection, To.OUTSIDE) and "Tom Rourke" in lines(collection, To.OUTSIDE)


def test_a_recording_with_the_name_of_someone_whom_the_keeper_keeps(collection: Collection) -> None:
    assert "tom_rourke.wav" in lines(collection, To.ARCHIVE)
    tom = next(ident for ident, one in collection.people().items() if one.name == "Tom Rourke")
    set_audience(collection, Subject(Kind.PERSON, tom), "family")
    assert "tom_rourke.wav" not in lines(collection, To.ARCHIVE)


PLACES = {
    "found in": lambda collection: tell(collection, item(collection), "found_in", "Mia’s shoebox"),
    "who says it": lambda collection: tell(collection, item(collection), "story", "They sailed.", source=LETTER),
    "story": lambda collection: tell(collection, item(collection), "story", "Mia fell in."),
}


@pytest.mark.parametrize("where", PLACES)
def test_the_name_search_lists_what_the_open_part_leaves_out(collection: Collection, where: str) -> None:
    assert look_for_names(collection).namings == []
    PLACES[where](collection)
    (hit,) = look_for_names(collection).namings
    assert (hit.number, hit.field, hit.people, hit.done) == (
        "TRA-0001", where, ("Mia Rourke",), "left out of the open part",
    )  # fmt: skip


def test_the_name_search_of_what_shows_someone_withheld(collection: Collection) -> None:
    """Chosen by a name that the open part may not know: nothing of it is in that part, and the keeper is told."""
    act = collection.act("told")
    mia = next(ident for ident, one in collection.people().items() if one.name == "Mia Rourke")
    told = act.state(item(collection), "person", "my niece")
    act.readings.append((told.id, person_reading(Subject(Kind.PERSON, mia))))
    act.done()
    assert [hit.words for hit in look_for_names(collection, Selection(person="Mia")).namings] == ["my niece"]


CONTACTS = [
    ("Ann Lind", "4 Quay Lane", "Ann Lind, 4 Quay Lane"),
    ("Ann Lind", "ANN LIND, 4 Quay Lane", "ANN LIND, 4 Quay Lane"),
    ("Quay Museum", "E. Lind, archivist, Quay Museum", "E. Lind, archivist, Quay Museum"),
    ("", "4 Quay Lane", "4 Quay Lane"),
    ("Ann Lind", "", "Ann Lind"),
]


@every_row(("name", "contact", "words"), CONTACTS)
def test_nobody_is_named_twice_on_a_form(name: str, contact: str, words: str) -> None:
    """Common practice, no source."""
    assert with_contact(name, contact) == words


def test_a_series_that_names_somebody_living_is_one_in_the_closed_part_alone(
    small_family: Path, tmp_path: Path
) -> None:
    """Items stand in the order of their series, as far as a part may tell them."""
    shutil.copytree(small_family, tmp_path / "home")
    told = {"TRA-0001": "2 Boats", "TRA-0002": "Mia Rourke's album", "TRA-0003": "1 Farm"}
    with open_collection(tmp_path / "home", on_day=ON) as collection:
        for number, words in told.items():
            Teller(collection).tell(find_item(collection, number), "series", words, Telling(audience="anyone"))
        transfer(collection, tmp_path / "out")
    expected = {
        "closed": [("1 Farm", 1), ("2 Boats", 1), ("Mia Rourke's album", 1)],
        "open": [("1 Farm", 1), ("2 Boats", 1)],
    }
    for part, own in expected.items():
        home = tmp_path / "out" / part / "data/metadata"
        root = etree.parse(home / "finding-aid.ead3.xml").getroot()
        series = [(c.findtext("{*}did/{*}unittitle"), len(c.findall("{*}c"))) for c in root.iterfind(".//{*}dsc/{*}c")]
        assert series[: len(own)] == own, (part, series)
        assert [title for title, _ in series[len(own) :] if "Mia" in str(title)] == [], (part, series)
        with open(home / "inventory.csv", encoding="utf-8-sig", newline="") as file:
            shown = {row["Number"]: row["Series"] for row in csv.DictReader(file) if row["Number"]}
        assert shown == told | ({"TRA-0002": ""} if part == "open" else {})
    rebuild(tmp_path / "again", tmp_path / "out", on_day=ON)
    with open_collection(tmp_path / "again", write=False, on_day=ON) as again:
        assert {number: record_of(again, find_item(again, number).id).words("series") for number in told} == told


def test_an_offer_says_what_would_come_in_the_closed_part(small_family: Path, tmp_path: Path) -> None:
    """DACS 4.1 (from memory): an archive must know of restrictions before it says yes. Mia is shown in TRA-0003."""
    shutil.copytree(small_family, tmp_path / "home")
    with open_collection(tmp_path / "home", on_day=ON) as collection:
        set_audience(collection, find_item(collection, "TRA-0002"), "archive:2060-01-01")
        offer(collection, tmp_path / "offer")
    with open(tmp_path / "offer/offer.csv", encoding="utf-8-sig", newline="") as file:
        access = {row["Number"]: row["Access"] for row in csv.DictReader(file)}
    assert access["TRA-0001"] == "" and access["TRA-0003"].startswith("Its scans would come in the closed part")
    assert access["TRA-0002"].startswith("Closed until 2060-01-01 by those who gave it. It would come in the closed")
    page = (tmp_path / "offer/offer.html").read_text("utf-8")
    assert all(words in page for words in access.values()) and "this part" not in page
