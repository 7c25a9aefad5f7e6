"""Rights records of the closed part. Units: the rights entity of PREMIS 3.0, from memory; schema: W3C, Metadata
Vocabulary for Tabular Data (2015), from memory."""

import csv
import json
from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pytest
from tests.core.records.cast import person
from tests.every_row import every_row

from boxlore.core.crosswalk.receiving_archive import Archive
from boxlore.core.fields.name_answers import NamingAnswer
from boxlore.core.people.consent import make_consent
from boxlore.core.statements import Kind, Subject
from boxlore.tasks.archive.closed_part_rights import consents_words
from boxlore.tasks.archive.name_answers import decide
from boxlore.tasks.archive.names_asked import look_for_names
from boxlore.tasks.archive.transfer import TransferOrder, transfer
from boxlore.tasks.collection.opening import Collection, open_collection, start
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.people.registry import consent, set_audience


@pytest.fixture
def collection(tmp_path: Path) -> Iterator[Collection]:
    start(tmp_path / "tamm", Settings(title="A family", prefix="TR"))
    with open_collection(tmp_path / "tamm", on_day=date(2026, 11, 25)) as opened:
        act = opened.act("told")
        mia, item = act.new(Kind.PERSON), act.new(Kind.ITEM)
        act.state(mia, "given", "Mia")
        act.state(mia, "family", "Rourke")
        act.state(item, "number", "TRA-0001")
        act.state(item, "title", "Mia at sea")
        act.state(item, "story", "Mia fell in.")
        act.done()
        yield opened


def test_the_closed_part_says_why_somebody_living_is_named(collection: Collection, tmp_path: Path) -> None:
    (mia,) = collection.people().values()
    consent(collection, mia, make_consent(["picture"], "2026-11-24"))
    consent(collection, mia, make_consent(["picture"], "2026-11-25", given=False, by="Tom", witness="Ida"))
    title = [place for hit in look_for_names(collection).namings for place in hit.places if place.where == "title"]
    assert decide(collection, [(title[0], NamingAnswer.MAY)]) == 1
    archive = Archive(takes=("inventory",))
    transfer(collection, tmp_path / "t", order=TransferOrder(archive=archive, go_on=True))
    opened, closed = (tmp_path / "t" / part / "data" / "metadata" for part in ("open", "closed"))
    assert not list(opened.glob("rights*")) and "Mia at sea" in (opened / "inventory.csv").read_text("utf-8")
    with open(closed / "rights.csv", encoding="utf-8-sig", newline="") as file:
        heading, *rows = csv.reader(file)
    assert rows == [
        [mia.uri, "Mia Rourke", "", "consent", "picture", "allow", "2026-11-24", "2026-11-25", "Mia Rourke",
         "given in person, 2026-11-24: picture"],
        [mia.uri, "Mia Rourke", "", "consent", "picture", "disallow", "2026-11-25", "", "Tom",
         "withdrawn in person, as Tom tells, witness Ida, 2026-11-25: picture"],
        ["TRA-0001", "", "part of what is told of it", "policy", "disseminate", "disallow", "", "2126-11-25", "",
         "it names someone taken as living of whom no birth is told, 100 years from when that person was first noted"],
        ["TRA-0001", "Mia Rourke", "", "consent", "name", "allow", "", "", "keeper",
         "somebody living may be named in: title"],
    ]  # fmt: skip
    told = json.loads((closed / "rights.csv-metadata.json").read_text("utf-8"))
    assert [column["titles"] for column in told["tableSchema"]["columns"]] == heading
    assert told["url"] == "rights.csv"
    consent(collection, mia, make_consent(["name"], "2026-11-25", given=False))
    transfer(collection, tmp_path / "later", order=TransferOrder(archive=archive, go_on=True))
    with open(tmp_path / "later/closed/data/metadata/rights.csv", encoding="utf-8-sig", newline="") as file:
        (row,) = [row for row in csv.DictReader(file) if row["Act"] == "name"]
    assert (row["About"], row["Allowed"]) == (mia.uri, "disallow"), "no answer allows what is taken back"


WORDS = {
    "nobody was asked": ([], "No consent of anybody is noted, to be named, shown or heard."),
    "given": ([[("name", "2026-11-24", True)]], "Consents in force: of 1 person."),
    "a part taken back": (
        [[("name", "2026-11-24", True), ("picture", "2026-11-24", True), ("name", "2026-11-26", False)]],
        "Consents in force: of 1 person. Consents withdrawn: of 1 person, the last on 2026-11-26.",
    ),
    "given again": (
        [[("name", "2026-11-24", True), ("name", "2026-11-25", False), ("name", "2026-11-26", True)]],
        "Consents in force: of 1 person.",
    ),
    "of two": (
        [[("name", "2026-11-24", True)], [("name", "2026-11-24", True), ("name", "2026-11-23", False)]],
        "Consents in force: of 1 person. Consents withdrawn: of 1 person, the last on 2026-11-23.",
    ),
}


@every_row("how", WORDS)
def test_the_deed_counts_what_is_in_force_and_what_was_withdrawn(how: str) -> None:
    told, words = WORDS[how]
    people = [
        person(str(at), "Mia", consents=tuple(make_consent([what], day, given=yes) for what, day, yes in one))
        for at, one in enumerate(told)
    ]
    each = " metadata/rights.csv tells each." if told else ""
    assert consents_words(people) == f"{words}{each}"


def test_a_consent_that_was_taken_back_is_not_in_force_beside_the_word_that_took_it(
    collection: Collection, tmp_path: Path
) -> None:
    """PREMIS 3.0, termOfGrant of rightsGranted: a right that is granted has an end where it was taken back."""
    (mia,) = collection.people().values()
    for day, given in (("2026-11-20", True), ("2026-11-22", False), ("2026-11-21", True), ("2026-11-24", True)):
        consent(collection, mia, make_consent(["name"], day, given=given))
    transfer(collection, tmp_path / "t", order=TransferOrder(archive=Archive(takes=("inventory",)), go_on=True))
    with open(tmp_path / "t/closed/data/metadata/rights.csv", encoding="utf-8-sig", newline="") as file:
        rows = [row for row in csv.DictReader(file) if row["Basis"] == "consent"]
    assert [(row["Of whom"], row["Allowed"], row["From"], row["Until"]) for row in rows] == [
        ("Mia Rourke", "allow", "2026-11-20", "2026-11-22"),
        ("Mia Rourke", "disallow", "2026-11-22", "2026-11-22"),
        ("Mia Rourke", "allow", "2026-11-21", ""),
        ("Mia Rourke", "allow", "2026-11-24", ""),
    ]


def test_no_answer_is_recorded_as_naming_whom_the_keeper_keeps_to_an_audience(
    collection: Collection, tmp_path: Path
) -> None:
    title = [place for hit in look_for_names(collection).namings for place in hit.places if place.where == "title"]
    assert decide(collection, [(title[0], NamingAnswer.MAY)]) == 1
    (mia,) = collection.people().values()
    set_audience(collection, Subject(Kind.PERSON, mia.id), "family")
    order = TransferOrder(archive=Archive(takes=("inventory",)), go_on=True)
    transfer(collection, tmp_path / "kept", order=order)
    with open(tmp_path / "kept/closed/data/metadata/rights.csv", encoding="utf-8-sig", newline="") as file:
        assert [row for row in csv.DictReader(file) if row["Act"] == "name"] == []
