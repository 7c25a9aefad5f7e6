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
from boxlore.tasks.archive.names_asked import look_for_names, names_asked, write_names_found
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


def own_search(folder: Path) -> str:
    """All that stands in the files of a folder, and what they are called."""
    files = [path for path in folder.rglob("*") if path.is_file()]
    return "\n".join(f"{path.name}\n{path.read_bytes().decode('utf-8', 'replace')}" for path in files)


UNKNOWN = ("Zelda Quillfeather", "Oswin Brannock", "Helmi", "Tilde Pobjoy", "Fiona Garside", "Hazel Umpleby")
"""One in each place, told nowhere else: of an occasion and its event, and of a place, an event, how a thing was made,
when it was, and a sleeve."""


def test_an_unknown_name_that_is_hidden_is_in_no_file_of_the_open_part(bare: Callable[[int], Path]) -> None:
    """By a search of the test's own. Of events and places of the family's too, which no item uses."""
    folder = bare(1)
    with open_collection(folder) as collection:
        teller, here = Teller(collection), item(collection)
        teller.tell(here, "occasion", f"Christening of {UNKNOWN[0]}", Telling())
        for field, words in (
            ("place", f"{UNKNOWN[1]}’s farm"),
            ("process", f"tinted by {UNKNOWN[3]}"),
            ("date", f"the year {UNKNOWN[4]} was born"),
            ("enclosure", f"sleeve from {UNKNOWN[5]}"),
        ):
            teller.tell(here, field, words, Telling())
        act = collection.act("the family’s own")
        act.state(act.new(Kind.EVENT), "name", "when Helmi sailed")
        act.state(act.new(Kind.EVENT), "name", "the Alexandra flood")
        act.state(act.new(Kind.PLACE), "name", "Helmi’s hut")
        act.state(act.new(Kind.PLACE), "name", "Port Chalmers")
        act.done()
        answer_all(collection, "hide")
        assert {row["Number"] for row in found(folder)} == {"TRA-0001", "the collection"}
        transfer(collection, folder.parent / "hidden")
        written = own_search(folder.parent / "hidden/open")
        assert [name for name in UNKNOWN if name in written] == []
        assert "the Alexandra flood" in written and "Port Chalmers" in written
        closed = own_search(folder.parent / "hidden/closed")
        assert [name for name in UNKNOWN if name not in closed] == []
        answer_all(collection, "may be named")
        transfer(collection, folder.parent / "named")
        written = own_search(folder.parent / "named/open")
        assert [name for name in UNKNOWN if name not in written] == []
        assert "when Helmi sailed" in written and "Helmi’s hut" in written
        (event,) = (
            about for about in collection.store.subjects(Kind.EVENT) if about[1][0][0].words.endswith(UNKNOWN[0])
        )
        assert event[0] in written, "the event did not follow its occasion"


def found(folder: Path) -> list[dict[str, str]]:
    with open(folder / "names-found.csv", encoding="utf-8-sig", newline="") as file:
        return list(csv.DictReader(file))


def answer_all(collection: Collection, words: str) -> None:
    """Answer every question of the table, and take the answers; nothing is asked then that was answered."""
    write_names_found(collection, names_asked(collection))
    rows = [row | {"Answer": words if row["Key"] else ""} for row in found(collection.folder)]
    with open(collection.folder / "names-found.csv", "w", encoding="utf-8", newline="") as file:
        out = csv.DictWriter(file, rows[0].keys())
        out.writeheader()
        out.writerows(rows)
    assert names_asked(collection).taken
    assert not names_asked(collection).taken
    write_names_found(collection, names_asked(collection))
    assert {row["Answer"] for row in found(collection.folder) if row["Key"]} == {words}
