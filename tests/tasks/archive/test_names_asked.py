"""Every single output lists what it leaves out for a name's sake, and takes what was answered (a rule of our own)."""

import csv
import io
import shutil
from collections.abc import Iterator
from pathlib import Path

import pytest
from tests.every_row import every_row

from boxlore.core.errors import WrongUse
from boxlore.core.fields.pictures import FILE_WORDS, SHOWS_WORDS, FileFacts, Shows
from boxlore.core.people.consent import make_consent
from boxlore.core.records.audience import To
from boxlore.core.statements import Kind, Said, Source, Subject
from boxlore.tasks.archive.names_asked import MOST_SAID, left_out, look_for_names
from boxlore.tasks.archive.transfer_context import things_told
from boxlore.tasks.collection.opening import Collection, open_collection, start
from boxlore.tasks.collection.records_for_outputs import Selection, seen_by
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.people.registry import consent, find_person, still_hidden
from boxlore.tasks.telling.events import add_event
from boxlore.tasks.telling.statements import Teller, Telling

FIRST, SECOND = Selection(items=("TRA-0001",)), Selection(items=("TRA-0002",))


@pytest.fixture
def home(tmp_path: Path) -> Path:
    """Mia Rourke, who lives, is named in two items."""
    start(tmp_path / "c", Settings(title="Tamm", prefix="TR"))
    with open_collection(tmp_path / "c") as opened:
        act = opened.act("told")
        act.state(mia := act.new(Kind.PERSON), "given", "Mia")
        act.state(mia, "family", "Rourke")
        for number in ("TRA-0001", "TRA-0002"):
            act.state(item := act.new(Kind.ITEM), "number", number)
            act.state(item, "story", f"Mia fell in, says {number}.")
        act.done()
    return tmp_path / "c"


@pytest.fixture
def collection(home: Path) -> Iterator[Collection]:
    with open_collection(home) as opened:
        yield opened


def rows(folder: Path) -> list[dict[str, str]]:
    with open(folder / "names-found.csv", encoding="utf-8-sig", newline="") as file:
        return list(csv.DictReader(file))


def answer(folder: Path, words: str) -> None:
    filled = [row | {"Answer": words} for row in rows(folder)]
    with open(folder / "names-found.csv", "w", encoding="utf-8", newline="") as file:
        out = csv.DictWriter(file, filled[0].keys())
        out.writeheader()
        out.writerows(filled)


def stories(collection: Collection) -> list[str]:
    return [record.words("story") for record in seen_by(collection, To.OUTSIDE).records()]


def test_what_stays_out_of_an_output_is_listed_and_the_answers_are_taken_by_the_next(collection: Collection) -> None:
    listed = collection.folder / "names-found.csv"
    assert left_out(collection, To.FAMILY) == [] and not listed.exists()
    said, asked = left_out(collection, To.OUTSIDE)
    assert said.startswith(f"Left out of what goes outside: 1 living person in 2 mentions; each is in {listed}")
    assert asked.startswith("2 not decided yet:")
    answer(collection.folder, "not that person")
    assert left_out(collection, To.OUTSIDE) == ["2 answers from the table of names are taken."]
    assert all(stories(collection))
    assert [row["Answer"] for row in rows(collection.folder)] == ["not that person"] * 2


SAVED = [(";", "cp1252"), (";", "utf-16"), ("\t", "utf-16-le"), (",", "utf-8-sig")]
"""As spreadsheets save: parted by the semicolon of many lands, and in what they call CSV and Unicode text."""


@every_row(("parted", "encoding"), SAVED)
def test_the_table_is_read_as_a_spreadsheet_has_saved_it(
    parted: str, encoding: str, home: Path, tmp_path: Path
) -> None:
    copy = tmp_path / f"{encoding}{len(parted)}"
    shutil.copytree(home, copy)
    with open_collection(copy) as collection:
        left_out(collection, To.OUTSIDE)
        filled = [row | {"Answer": "not that person", "Words": "Ōtākou? nein – nie; ä"} for row in rows(copy)]
        text = io.StringIO()
        out = csv.DictWriter(text, filled[0].keys(), delimiter=parted)
        out.writeheader()
        out.writerows(filled)
        (copy / "names-found.csv").write_bytes(text.getvalue().encode(encoding, "replace"))
        assert left_out(collection, To.OUTSIDE) == ["2 answers from the table of names are taken."]
        assert all(stories(collection))


def test_an_output_of_some_items_leaves_answers_about_others(collection: Collection) -> None:
    left_out(collection, To.OUTSIDE)
    answer(collection.folder, "may be named")
    assert "1 answer from the table of names is taken." in left_out(collection, To.OUTSIDE, FIRST)
    assert [row["Answer"] for row in rows(collection.folder)] == ["may be named"] * 2
    assert stories(collection) == ["Mia fell in, says TRA-0001.", ""]
    left_out(collection, To.OUTSIDE, SECOND)
    assert all(stories(collection))


def test_where_a_collection_is_only_read_answers_hold_as_they_stand_in_the_table(home: Path) -> None:
    with open_collection(home, write=False) as collection:
        left_out(collection, To.OUTSIDE)
        answer(home, "Not that person")
        assert all(stories(collection))
        assert left_out(collection, To.OUTSIDE) == []
        assert [row["Answer"] for row in rows(home)] == ["Not that person"] * 2
        answer(home, "hide")
        assert len(left_out(collection, To.OUTSIDE)) == 1 and not any(stories(collection))
        assert [row["Answer"] for row in rows(home)] == ["hide"] * 2


def test_what_is_no_item_is_answered_in_the_table_of_a_collection_that_is_only_read(home: Path) -> None:
    with open_collection(home) as collection:
        act = collection.act("told")
        act.state(sailed := act.new(Kind.EVENT), "name", "when Helmi sailed")
        act.done()
    with open_collection(home, write=False) as collection:
        left_out(collection, To.OUTSIDE)
        (asked,) = (row for row in rows(home) if row["Number"] == "the collection")
        assert (asked["Where"], asked["Words"]) == ("event name", "when [Helmi] sailed")
        assert not things_told(collection, seen_by(collection, To.OUTSIDE), Kind.EVENT)[sailed.id]
        answer(home, "not that person")
        assert things_told(collection, seen_by(collection, To.OUTSIDE), Kind.EVENT)[sailed.id]
        answer(home, "hide")
        assert not things_told(collection, seen_by(collection, To.OUTSIDE), Kind.EVENT)[sailed.id]


def test_an_event_of_long_ago_is_asked_about_as_little_as_its_picture(collection: Collection) -> None:
    """By the date of the pictures that it is told of, or by its own."""
    teller, (first, second) = Teller(collection), (Subject(Kind.ITEM, ident) for _, ident in collection.store.items())
    teller.tell(first, "date", "1890", Telling())
    teller.tell(first, "occasion", "Christening of Helmi", Telling())
    add_event(teller, "when Marta sailed", "1871", Telling())
    add_event(teller, "when Liis sailed", "1971", Telling())
    asked = [naming.words for naming in look_for_names(collection).namings if naming.field == "event name"]
    assert asked == ["when Liis sailed"]
    teller.tell(second, "occasion", "Christening of Helmi", Telling())
    namings = look_for_names(collection).namings
    asked = [naming.words for naming in namings if naming.field in ("event name", "occasion")]
    assert asked == ["Christening of Helmi", "when Liis sailed"]
    alike = [len(place.every) for naming in namings for place in naming.places]
    assert 2 in alike, "the event and the second picture are one question"


def test_where_no_table_can_be_written_the_places_are_said(home: Path) -> None:
    (home / "names-found.csv").mkdir()
    with open_collection(home) as collection:
        said, *places = left_out(collection, To.OUTSIDE)
        assert said.endswith("No table of them can be written into this collection:")
        assert places == [f"TRA-000{at}, story: [Mia] fell in, says TRA-000{at}." for at in (1, 2)]
        act = collection.act("more")
        for at in range(3, MOST_SAID + 3):
            act.state(item := act.new(Kind.ITEM), "number", f"TRA-{at:04}")
            act.state(item, "story", f"Mia fell in, says {at}.")
        act.done()
        *_, last = left_out(collection, To.OUTSIDE)
        assert last == "… and 2 more."
        assert left_out(collection, To.OUTSIDE, FIRST)[1:] == places[:1]


def test_somebody_told_whom_nobody_knows_is_asked_about_wherever_the_name_stands(collection: Collection) -> None:
    first, second = (Subject(Kind.ITEM, ident) for _, ident in collection.store.items())
    act = collection.act("told")
    act.state(first, "person", "Taaniel Tohver")
    act.state(second, "care", "Taanieli kätte")
    act.done()
    left_out(collection, To.OUTSIDE)
    asked = {(row["Where"], row["Words"]): row for row in rows(collection.folder) if "nobody" in row["Why it is asked"]}
    assert set(asked) == {("person", "[Taaniel Tohver]"), ("care", "[Taanieli] kätte")}
    answer(collection.folder, "not that person")
    assert left_out(collection, To.OUTSIDE) == ["4 answers from the table of names are taken."]
    assert [record.words("care") for record in seen_by(collection, To.OUTSIDE).records()] == ["", "Taanieli kätte"]


def test_a_name_that_words_tell_of_somebody_who_may_live_is_asked_about_everywhere(collection: Collection) -> None:
    """Of nobody known, told once with a birth: in its own words, and in those of other items."""
    first, second = (Subject(Kind.ITEM, ident) for _, ident in collection.store.items())
    act = collection.act("told")
    act.state(first, "title", "Rasmus Saarepuu (b. 1983) on the pier")
    act.state(first, "keyword", "Mia Rourke")  # who is known, and asked about as herself
    act.state(second, "care", "Ask Rasmus")
    act.done()
    seen = seen_by(collection, To.OUTSIDE)
    (titled,) = (record for record in seen.records() if record.id == first.id)
    assert titled.closed_scans and not titled.told.get("title")
    left_out(collection, To.OUTSIDE)
    asked = {
        (row["Where"], row["Words"]) for row in rows(collection.folder) if "nobody known" in row["Why it is asked"]
    }
    assert asked == {("title", "[Rasmus Saarepuu] (b. 1983) on the pier"), ("care", "Ask [Rasmus]")}
    answer(collection.folder, "not that person")
    left_out(collection, To.OUTSIDE)
    (record,) = (record for record in seen_by(collection, To.OUTSIDE).records() if record.id == second.id)
    assert record.words("care") == "Ask Rasmus"


def test_a_consent_that_is_taken_back_closes_what_was_answered(collection: Collection) -> None:
    """Also what the table still says; only a new consent opens it (consent may be withdrawn at any time: Oral History
    Association, Best Practices, 2018)."""

    def note(*, given: bool) -> None:
        consent(collection, find_person(collection, "Mia"), make_consent(["name"], "2026-11-25", given=given))

    left_out(collection, To.OUTSIDE)
    answer(collection.folder, "may be named")
    left_out(collection, To.OUTSIDE)
    assert all(stories(collection))
    note(given=False)
    left_out(collection, To.OUTSIDE)
    assert not any(stories(collection))
    answer(collection.folder, "hide")
    left_out(collection, To.OUTSIDE)
    answer(collection.folder, "may be named")
    with pytest.raises(WrongUse, match=r"names-found\.csv, line 2: Mia Rourke took back the consent to be named"):
        left_out(collection, To.OUTSIDE)
    answer(collection.folder, "")
    note(given=True)
    assert not any(stories(collection)), "what the keeper hides stays hidden"
    left_out(collection, To.OUTSIDE)
    answer(collection.folder, "may be named")
    left_out(collection, To.OUTSIDE)
    assert all(stories(collection))


def test_what_the_table_hides_stays_hidden_though_a_consent_came_before_it_was_read(collection: Collection) -> None:
    left_out(collection, To.OUTSIDE)
    answer(collection.folder, "hide")
    consent(collection, find_person(collection, "Mia"), make_consent(["name"], "2026-11-25", given=True))
    kept = [left_out(collection, To.OUTSIDE)[:1] for _ in range(2)]
    assert not any(stories(collection))
    assert kept[0] == ["2 answers from the table of names are taken."] and kept[1] != kept[0]


def test_a_row_that_names_no_place_hides_nothing(collection: Collection) -> None:
    left_out(collection, To.OUTSIDE)
    answer(collection.folder, "hide")
    table = collection.folder / "names-found.csv"
    for key in ("", "nobody", "TRA"):
        filled = [
            row | {"Number": "TRA-0009" if key == "TRA" else row["Number"], "Key": key} for row in rows(table.parent)
        ]
        with open(table, "w", encoding="utf-8", newline="") as file:
            out = csv.DictWriter(file, filled[0].keys())
            out.writeheader()
            out.writerows(filled)
        assert not any("taken" in line for line in left_out(collection, To.OUTSIDE))


def test_titles_that_count_pictures_are_one_question(collection: Collection) -> None:
    """One answer holds for `no. 1` and `no. 2`; an age tells people apart."""
    act = collection.act("told")
    for number, title, age in (("TRA-0001", "Mia, no. 1", "Mia, 4"), ("TRA-0002", "Mia, no. 2", "Mia, 70")):
        item = Subject(Kind.ITEM, collection.store.item_by_number(number))
        act.state(item, "title", title)
        act.state(item, "inscription", age)
    act.done()
    left_out(collection, To.OUTSIDE)
    found = [(row["Number"], row["Where"], row["What becomes of it"]) for row in rows(collection.folder)]
    assert [place for place in found if place[1] == "title"] == [
        ("TRA-0001", "title", "left out of the open part; the same in TRA-0002, as you answer here")
    ]
    assert [number for number, where, _ in found if where == "inscription"] == ["TRA-0001", "TRA-0002"]
    answer(collection.folder, "not that person")
    assert left_out(collection, To.OUTSIDE) == ["5 answers from the table of names are taken."]
    assert [record.words("title") for record in seen_by(collection, To.OUTSIDE).records()] == [
        "Mia, no. 1",
        "Mia, no. 2",
    ]


def test_a_consent_says_what_it_does_not_open(collection: Collection) -> None:
    mia = find_person(collection, "Mia Rourke")
    named, pictured = make_consent(["name"], "2026-11-25"), make_consent(["picture"], "2026-11-25")
    assert still_hidden(collection, mia, named) == []
    left_out(collection, To.OUTSIDE)
    answer(collection.folder, "hide")
    left_out(collection, To.OUTSIDE)
    consent(collection, mia, named)
    assert still_hidden(collection, mia, pictured) == []
    assert still_hidden(collection, mia, make_consent(["name"], "2026-11-25", given=False)) == []
    (said,) = still_hidden(collection, mia, named)
    assert said.startswith("You answered hide in 2 mentions that may name Mia Rourke")
    assert stories(collection) == ["", ""]


def test_the_table_says_whether_the_words_or_the_scan_stay_behind(collection: Collection) -> None:
    """Whoever may be named and not shown is named in a title that goes out; who only told of a picture is not in it."""
    mia = find_person(collection, "Mia Rourke")
    consent(collection, mia, make_consent(["name"], "2026-11-20"))
    item = Subject(Kind.ITEM, collection.store.item_by_number("TRA-0001") or "")
    act = collection.act("told")
    con = act.new(Kind.PERSON)
    act.state(con, "given", "Con")
    act.state(con, "family", "Rourke")
    act.state(item, "title", "Mia, one year")
    other = Subject(Kind.ITEM, collection.store.item_by_number("TRA-0002") or "")
    act.state(other, "audience", "archive:2060-01-01", audience="keeper")
    act.state(other, "title", "The pier", source=Source(Said.NARRATOR, con.id))
    for about in (item, other):
        scan = act.new(Kind.SCAN)
        file = FileFacts(
            path=f"scans/{about.id}.png", sha256=about.id, bytes=1, width=8, height=4, ppi=0, media_type="image/png"
        )
        act.state(scan, "file", FILE_WORDS.write(file))
        act.state(scan, "shows", SHOWS_WORDS.write(Shows(about.id, "recto", None)))
    act.done()
    left_out(collection, To.OUTSIDE)
    said = {
        (row["Number"], row["Where"]): (row["People"], row["What becomes of it"]) for row in rows(collection.folder)
    }
    assert said["TRA-0001", "title"] == ("Mia Rourke", "the scan goes to the closed part")
    assert ("TRA-0001", "the scan, recto") in said
    assert said["TRA-0002", "who says it"] == ("Con Rourke", "left out of the open part")
    assert ("TRA-0002", "the scan, recto") not in said, "nobody is said to be in it"
    record = next(record for record in seen_by(collection, To.OUTSIDE).records() if record.number == "TRA-0001")
    assert record.words("title") == "Mia, one year" and record.closed_scans
