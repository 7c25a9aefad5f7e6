"""A transfer goes on: what was told, struck, closed and mended after it, and what comes back, step by step.

The state that an archive must then have is our own rule; identifiers and counts of bags are RFC 8493, 2.2.2, read by
bagit (PyPI); a finding aid's maintenance is EAD3 1.1.1 (Society of American Archivists), read by lxml.
"""

import csv
import shutil
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field, replace
from datetime import date, timedelta
from pathlib import Path

import bagit
import pytest
from lxml import etree
from PIL import Image
from pypdf import PdfReader
from tests.tasks.archive.a_sitting import a_sitting

from boxlore.core.crosswalk.receiving_archive import Archive
from boxlore.core.errors import CouldNot, WrongUse
from boxlore.core.fields.name_answers import NamingAnswer
from boxlore.core.findings import Severity
from boxlore.core.people.consent import make_consent
from boxlore.core.records.audience import To
from boxlore.core.records.item_record import every_told
from boxlore.core.records.marks import Mark
from boxlore.core.statements import KEEPER, Kind, Said, Source, Subject
from boxlore.disk.digests import sha256_of
from boxlore.tasks.archive.archive_settings import archive_of
from boxlore.tasks.archive.item_states import read_item
from boxlore.tasks.archive.name_answers import decide, undecided
from boxlore.tasks.archive.names_asked import look_for_names
from boxlore.tasks.archive.offer import offer, read_answer
from boxlore.tasks.archive.rebuild import rebuild
from boxlore.tasks.archive.receipt import COLUMNS, read_receipt
from boxlore.tasks.archive.sittings_held import sittings_held
from boxlore.tasks.archive.transfer import TransferOrder, Transferred, transfer
from boxlore.tasks.archive.transfer_updates import WITHDRAW, originals_before
from boxlore.tasks.check import check
from boxlore.tasks.collection.container_references import container_references
from boxlore.tasks.collection.items_by_mark import find_item, find_told
from boxlore.tasks.collection.opening import Collection, open_collection
from boxlore.tasks.collection.progress import Quiet
from boxlore.tasks.collection.records_for_outputs import Selection, record_of, seen_by
from boxlore.tasks.outputs.printed_sheets import labels
from boxlore.tasks.people import registry
from boxlore.tasks.scans.intake import IntakeOptions, take_in
from boxlore.tasks.scans.package_check import verify_package
from boxlore.tasks.scans.pairing import by_table
from boxlore.tasks.strike import strike_out
from boxlore.tasks.telling.statements import Teller, Telling

ON = date(2026, 11, 25)
MUSEUM = Archive(repository="Port Chalmers Museum", takes=("dublin-core", "ead3", "rdf", "recordings", "scans"))


def table(path: Path) -> list[dict[str, str]]:
    with open(path, encoding="utf-8-sig", newline="") as file:
        return list(csv.DictReader(file))


@dataclass
class AtTheArchive:
    """What an archive has that does as `withdraw.csv` says: files by part and path, the newest description."""

    files: dict[tuple[str, str], bytes] = field(default_factory=dict)

    def receive(self, package: Path) -> None:
        for part in ("open", "closed"):
            bags = sorted(package.glob(f"{part}*"))
            for row in (row for bag in bags for row in table_of(bag / "data" / WITHDRAW)):
                for key in [key for key in self.files if key[0] == part and row["File"] and matches(key[1], row)]:
                    del self.files[key]
            for bag in bags:
                data = bag / "data"
                described = {key for key in self.files if key[0] == part and key[1].startswith("metadata/")}
                for key in described if (data / "metadata").is_dir() else ():
                    del self.files[key]
                for path in data.rglob("*.*"):
                    self.files[part, path.relative_to(data).as_posix()] = path.read_bytes()

    def holding(self, words: bytes) -> set[str]:
        """The parts in which these words stand anywhere."""
        return {part for (part, _), data in self.files.items() if words in data}

    def scans(self, part: str) -> set[str]:
        return {path.rpartition("/")[2] for held, path in self.files if held == part and path.startswith("scans/")}


def table_of(path: Path) -> list[dict[str, str]]:
    return table(path) if path.is_file() else []


def matches(path: str, row: dict[str, str]) -> bool:
    return path == row["File"] or (row["File"].endswith("/") and path.startswith(row["File"]))


@pytest.fixture
def mine(small_family: Path, tmp_path: Path) -> Iterator[Collection]:
    home = tmp_path / "mine"
    shutil.copytree(small_family, home)
    with open_collection(home, on_day=ON) as collection:
        yield collection


def hand_over(collection: Collection, out: Path, earlier: Path | None = None, **more: object) -> Transferred:
    return transfer(collection, out, order=TransferOrder(archive=MUSEUM, earlier=earlier, **more))  # type: ignore[arg-type]


def why(package: Path, part: str = "open") -> set[tuple[str, str, str, str]]:
    """What is to be done, the reason, and the file or number, of each row."""
    return {
        (row["What to do"], row["Reason"], row["File"] or row["Number"], row["Field"])
        for row in table(package / part / "data" / WITHDRAW)
    }


def test_a_life_of_a_transfer(mine: Collection, tmp_path: Path) -> None:
    museum, teller = AtTheArchive(), Teller(mine)
    one, two, three, four = (tmp_path / name for name in ("1", "2", "3", "4"))
    letter = "He never liked the harbour."
    struck = teller.tell(find_item(mine, "TRA-0001"), "story", letter, Telling(audience="anyone"))

    # 1. the first transfer: everything, in two parts
    hand_over(mine, one)
    museum.receive(one)
    assert museum.holding(letter.encode()) == {"open", "closed"}
    assert museum.scans("closed") > museum.scans("open") >= {"TRA-0001_f.jpg", "TRA-0002_f.jpg"}

    # 2. a change, a strike, and an item that is closed
    strike_out(mine, [struck.id])
    teller.tell(find_item(mine, "TRA-0002"), "story", "He built boats at Kopli.", Telling(audience="anyone"))
    registry.set_audience(mine, find_item(mine, "TRA-0002"), "archive:2060-01-01")
    made = hand_over(mine, two, one)
    assert [part.scans for part in made.parts] == [0, 0]  # not one file goes twice
    assert {("delete", "struck", "TRA-0001", "story"), ("delete", "closed", "TRA-0002", "title"),
            ("delete", "closed", "scans/TRA-0002_f.jpg", ""),
            ("delete", "struck", "metadata/", "")} <= why(two)  # fmt: skip
    assert ("delete", "struck", "TRA-0001", "story") in why(two, "closed")
    assert not any("TRA-0002_f" in row[2] for row in why(two, "closed"))
    museum.receive(two)
    assert museum.holding(letter.encode()) == set()
    assert museum.holding(b"He built boats at Kopli.") == {"closed"}
    assert "TRA-0002_f.jpg" not in museum.scans("open") and "TRA-0002_f.jpg" in museum.scans("closed")

    page = (two / "closed/README.html").read_text("utf-8")
    assert "Of the items here nothing is kept back." in page
    teller.tell(find_item(mine, "TRA-0003"), "donor", "Aunt Oda", Telling())

    # 3. the receipt comes back, with remarks; the next update carries the archive's own references
    receipt = tmp_path / "receipt.csv"
    ident = find_item(mine, "TRA-0001").id
    lines = [COLUMNS, ("", "", "the whole transfer", "2026/14", "", "The tin smells"),
             ("TRA-0001", f"urn:uuid:{ident}", "", "", "P-991", "Mould found; quarantined")]  # fmt: skip
    receipt.write_text("\n".join(",".join(line) for line in lines), "utf-8")
    received = read_receipt(mine, receipt, archive="Port Chalmers Museum")
    assert (received.accessions, received.references, received.remarks) == (("2026/14",), 1, 2)
    of_the_whole = [found.finding.message for found in check(mine) if found.finding.rule == "archive.remark"]
    assert any("The archive remarks of the whole: “The tin smells”" in words for words in of_the_whole)
    said = [found.finding.message for found in check(mine) if found.number == "TRA-0001"]
    assert any(
        "The archive remarks: “Mould found; quarantined” (receipt receipt.csv of Port" in words for words in said
    )
    assert any("Mould is a health hazard" in words for words in said)
    assert read_receipt(mine, receipt, archive="Port Chalmers Museum").remarks == 0
    hand_over(mine, three, two)
    museum.receive(three)
    page = (three / "closed/README.html").read_text("utf-8")
    assert "Of the items here that is: 1 statement." in page  # who gave it; the archive's own remark is none
    assert museum.holding(b"P-991") == {"open", "closed"}
    with pytest.raises(CouldNot, match="Nothing has changed"):
        hand_over(mine, four, three)

    # 4. what the archive has is the collection, and is one again
    assert verify_package(tmp_path / "1") == verify_package(tmp_path / "2") == verify_package(tmp_path / "3") == []
    made_again = rebuild(tmp_path / "again", three, also=[one, two], on_day=ON)
    assert (made_again.items, made_again.missing, made_again.notes) == (3, (), ())
    with open_collection(tmp_path / "again", write=False, on_day=ON) as again:
        stories = [view.words for view in record_of(again, ident).all("story")]
        assert stories == [view.words for view in record_of(mine, ident).all("story")] and letter not in stories
        assert record_of(again, ident).words("archive_reference") == "P-991"
        assert record_of(again, find_item(again, "TRA-0002").id).audiences == ("archive:2060-01-01",)
        assert [row.statement for row in again.store.tombstones()] == [struck.id]


def test_what_an_archive_calls_things_is_no_news_to_it(mine: Collection, tmp_path: Path) -> None:
    """Its own references come back as one line, so that what else has changed is seen, and it replaces none of them."""
    teller = Teller(mine)
    for at, (earlier, story) in enumerate([("", "Told first."), ("1", "Told second."), ("2", "")], 1):
        hand_over(mine, tmp_path / str(at), tmp_path / earlier if earlier else None)
        lines = [COLUMNS, *((f"TRA-000{item}", "", "", "", f"P-{at}/{item}", "") for item in (1, 2, 3))]
        (tmp_path / "receipt.csv").write_text("\n".join(",".join(line) for line in lines), "utf-8")
        assert read_receipt(mine, tmp_path / "receipt.csv", archive="Port Chalmers Museum").references == 3
        if story:
            teller.tell(find_item(mine, "TRA-0001"), "story", story, Telling(audience="anyone"))
    for number, how in (("2", "new"), ("3", "corrected")):
        for part in ("open", "closed"):
            rows = table(tmp_path / number / part / "data/metadata/changes.csv")
            assert [(row["Number"], row["Why"]) for row in rows if row["Number"]] == [
                ("TRA-0001", f"The archive's reference: {how}; Story: new")
            ]
            (one,) = [row for row in rows if not row["Identifier"]]
            assert (one["Fields"], one["Why"]) == ("The archive's reference", "of 2 items, as a receipt has it")
            assert "archive_reference" not in {row[3] for row in why(tmp_path / number, part)}
    assert ("replace", "corrected", "metadata/", "") in why(tmp_path / "3")


def test_no_closing_date_moves_because_days_go_by(small_family: Path, tmp_path: Path) -> None:
    """DACS 4.1: how long something is closed (from memory). An archive that has noted a day must not be sent another
    one where nothing is told."""
    today = date.today()
    with open_collection(shutil.copytree(small_family, tmp_path / "home"), on_day=today) as mine:
        Teller(mine).tell(find_item(mine, "TRA-0003"), "person", "Ruth Pirt", Telling(audience="anyone"))
        hand_over(mine, tmp_path / "1")
    rights = table(tmp_path / "1/closed/data/metadata/rights.csv")
    assert any("when that person was first noted" in row["Note"] for row in rights)
    later = today + timedelta(days=200)
    with open_collection(tmp_path / "home", on_day=later) as mine, pytest.raises(CouldNot, match="Nothing has changed"):
        hand_over(mine, tmp_path / "2", tmp_path / "1")


def test_a_remark_of_the_archive_is_answered_with_the_next_update(mine: Collection, tmp_path: Path) -> None:
    """What is answered is asked about no more; what is told of the item since is named by its field."""
    hand_over(mine, tmp_path / "1")
    receipt = tmp_path / "receipt.csv"
    lines = [COLUMNS, ("", "", "the whole transfer", "2026/14", "", "Which box is the tin in?"),
             ("TRA-0001", "", "", "", "P-1", "Who took this?"), ("TRA-0002", "", "", "", "", "Torn")]  # fmt: skip
    receipt.write_text("\n".join(",".join(line) for line in lines), "utf-8")
    read_receipt(mine, receipt, archive="Port Chalmers Museum")
    teller = Teller(mine)
    assert len(remarked(mine)) == 3
    teller.tell(find_told(mine, "TRA-0001", "archive_answer"), "archive_answer", "We think Mia’s aunt.", Telling())
    teller.tell(find_told(mine, "Whole", "archive_answer"), "archive_answer", "In box 2.", Telling())
    teller.tell(find_item(mine, "TRA-0001"), "photographer", "Quay Street Studio", Telling(audience="anyone"))
    with pytest.raises(WrongUse, match="“story” is not told of the whole"):
        find_told(mine, "whole", "story")
    assert [words.partition("“")[2].partition("”")[0] for words in remarked(mine)] == ["Torn"]
    hand_over(mine, tmp_path / "2", tmp_path / "1")
    rows = table(tmp_path / "2/closed/data/metadata/remarks.csv")
    assert [(row["Number"], row["Remark"], row["Answer"], row["Told since"]) for row in rows] == [
        ("", "Which box is the tin in?", "In box 2.", ""),
        ("TRA-0001", "Who took this?", "We think Mia’s aunt.", "Photographer"),
        ("TRA-0002", "Torn", "", ""),
    ]
    assert {row["Of"] for row in rows} == {"receipt receipt.csv of Port Chalmers Museum"}
    assert all("aunt" not in path.read_text("utf-8", "replace") for path in (tmp_path / "2/open").rglob("*.*"))
    (changed,) = (row for row in changes(tmp_path / "2", "closed") if row["Number"] == "TRA-0001")
    assert changed["Why"].split("; ")[1:3] == ["Answer to the archive: new", "Photographer: new"]
    rebuild(tmp_path / "again", tmp_path / "2", also=[tmp_path / "1"], on_day=ON)
    with open_collection(tmp_path / "again", write=False, on_day=ON) as again:
        assert len(remarked(again)) == 1


def remarked(collection: Collection) -> list[str]:
    return [found.finding.message for found in check(collection) if found.finding.rule == "archive.remark"]


def changes(package: Path, part: str) -> list[dict[str, str]]:
    return table(package / part / "data/metadata/changes.csv")


def test_a_teller_who_takes_consent_back_is_listed_beside_what_a_receipt_brought(
    mine: Collection, tmp_path: Path
) -> None:
    """The archive's own references, which stand in one line, hide no item whose teller is to be named no more."""
    person = next(one for one in mine.people().values() if one.name == "Mia Rourke")
    teller = Teller(mine)
    by_mia = Telling(source=Source(Said.NARRATOR, person.id), audience="anyone")
    teller.tell(find_item(mine, "TRA-0002"), "story", "He built boats at Kopli.", by_mia)
    registry.consent(mine, person, make_consent(["name"], "2026-11-24"))
    hand_over(mine, tmp_path / "1")
    receipt = tmp_path / "receipt.csv"
    lines = [COLUMNS, *((f"TRA-000{item}", "", "", "", f"P-{item}", "") for item in (1, 2, 3))]
    receipt.write_text("\n".join(",".join(line) for line in lines), "utf-8")
    read_receipt(mine, receipt, archive="Port Chalmers Museum")
    registry.consent(mine, person, make_consent(["name"], "2026-11-24", given=False))
    hand_over(mine, tmp_path / "2", tmp_path / "1")
    listed = {row["Number"]: row["Why"] for row in changes(tmp_path / "2", "open")}
    assert "consent taken back" in listed["TRA-0002"] and "TRA-0001" in listed and "TRA-0003" in listed
    assert ("delete", "consent taken back", "TRA-0002", "who told it") in why(tmp_path / "2")
    assert ("delete", "closed") not in {row[:2] for row in why(tmp_path / "2")}
    order = TransferOrder(archive=replace(MUSEUM, takes=("forms",)), earlier=tmp_path / "1")
    transfer(mine, tmp_path / "3", order=order)
    (page,) = PdfReader(tmp_path / "3/open/data/forms/request-to-withdraw.pdf").pages
    request = " ".join(page.extract_text().split())
    for words in ("To delete, since a consent was taken back", "is told of 3 items: TRA-0001, TRA-0002, TRA-0003"):
        assert words in request, request
    assert "Mia" not in request
    for name in ("changes.csv", "withdraw.csv"):
        assert "Mia" not in (tmp_path / "2/open/data/metadata" / name).read_text("utf-8")


def test_who_is_still_in_question_is_asked_again_in_a_collection_made_again(mine: Collection, tmp_path: Path) -> None:
    """Nothing that was open is settled by a transfer: neither which of two is meant, nor words that may be nobody's."""
    teller = Teller(mine)
    for number, words in (("TRA-0001", "Anna Lehto and Anna Parn"), ("TRA-0002", "Anna"), ("TRA-0003", "Lemmik")):
        teller.tell(find_item(mine, number), "person", words, Telling(audience="anyone"))
    act = mine.act("asked")
    act.state(find_item(mine, "TRA-0003"), "asked", "Is “Lemmik” someone in the picture?", audience="keeper")
    act.state(find_item(mine, "TRA-0003"), "asked", "Ask Oda about the quarrel", audience="keeper")
    act.done()
    asked = ["Which “Anna” is meant?", "Is “Lemmik” someone in the picture?"]
    assert [words for words in who_is_asked(mine) if words in asked] == asked
    hand_over(mine, tmp_path / "1")
    assert b"quarrel" not in b"".join(path.read_bytes() for path in (tmp_path / "1").rglob("*.nt"))
    rebuild(tmp_path / "again", tmp_path / "1", on_day=ON)
    with open_collection(tmp_path / "again", write=False, on_day=ON) as again:
        assert who_is_asked(again) == who_is_asked(mine)


def who_is_asked(collection: Collection) -> list[str]:
    rules = ("person.asks", "person.in-question")
    return [found.finding.message for found in check(collection) if found.finding.rule in rules]


def test_bags_are_told_apart_and_an_update_names_what_it_updates(mine: Collection, tmp_path: Path) -> None:
    hand_over(mine, tmp_path / "1")
    Teller(mine).tell(find_item(mine, "TRA-0001"), "story", "Told since.", Telling(audience="anyone"))
    hand_over(mine, tmp_path / "2", tmp_path / "1")
    infos = {
        (name, part): bagit.Bag(str(tmp_path / name / part)).info for name in ("1", "2") for part in ("open", "closed")
    }
    assert len({info["External-Identifier"] for info in infos.values()}) == 4
    assert {(name, info["Bag-Group-Identifier"]) for (name, _), info in infos.items()} == {
        (name, infos[name, "open"]["Bag-Group-Identifier"]) for name in ("1", "2")
    }
    assert [info["Bag-Count"] for info in infos.values()] == ["1 of 2", "2 of 2"] * 2
    assert infos["2", "open"]["Updates-Transfer"] == infos["1", "open"]["Bag-Group-Identifier"]
    for part in ("open", "closed"):
        revised = infos["2", part]["Updates-Bag"]
        manifest = (tmp_path / "1" / part / "manifest-sha512.txt").read_bytes()
        before = infos["1", part]
        for named in (
            before["External-Identifier"],
            before["Bagging-Time"],
            bagit.hashlib.sha256(manifest).hexdigest(),
        ):
            assert named in revised
            assert named in (tmp_path / "2" / part / "README.html").read_text("utf-8")
            assert named in (tmp_path / "2" / part / "data" / "metadata" / "transfers.csv").read_text("utf-8-sig")


def cut(path: Path) -> None:
    """The first item's row of a table is gone."""
    lines = path.read_text("utf-8-sig").splitlines(keepends=True)
    path.write_text("".join([*lines[:1], *lines[2:]]), "utf-8")


TAMPERED = [
    ("open/data/metadata/state.csv", cut),
    ("closed/data/metadata/state.csv", cut),
    ("closed/data/metadata/state.csv", lambda path: path.write_bytes(path.read_bytes() + b" ")),
    ("open/data/scans/TRA-0001_f.jpg", Path.unlink),
    ("closed/manifest-sha256.txt", cut),
]


def test_an_update_is_of_a_transfer_that_is_as_it_was_handed_over(mine: Collection, tmp_path: Path) -> None:
    """RFC 8493, 3: a bag is valid if every file is as its manifests say. An archive deletes by what an update says."""
    hand_over(mine, tmp_path / "1")
    Teller(mine).tell(find_item(mine, "TRA-0001"), "story", "Told since.", Telling(audience="anyone"))
    for name, tamper in TAMPERED:
        path = tmp_path / "1" / name
        whole = path.read_bytes()
        tamper(path)
        with pytest.raises(CouldNot, match=r"is not as it was handed over: .*No update was made") as refused:
            hand_over(mine, tmp_path / "2", tmp_path / "1")
        assert "Name another copy of that transfer" in refused.value.what_to_do and not (tmp_path / "2").exists()
        path.write_bytes(whole)
    stops = Stopping()
    with pytest.raises(CouldNot, match="Stopped; nothing half-made is left"):
        transfer(mine, tmp_path / "2", order=TransferOrder(archive=MUSEUM, earlier=tmp_path / "1"), progress=stops)
    assert stops.begun == ["Verifying the earlier transfer"] and not (tmp_path / "2").exists()
    hand_over(mine, tmp_path / "2", tmp_path / "1")


class Stopping(Quiet):
    """Somebody who asks to stop as soon as the first stage begins."""

    def __init__(self) -> None:
        self.begun: list[str] = []

    def begin(self, what: str, total: int) -> None:
        self.begun.append(what)

    def stopped(self) -> bool:
        return bool(self.begun)


def test_the_finding_aid_of_an_update_is_whole_and_says_that_it_was_revised(mine: Collection, tmp_path: Path) -> None:
    """EAD3 1.1.1: maintenancestatus, maintenanceevent; recordid stays."""
    hand_over(mine, tmp_path / "1")
    Teller(mine).tell(find_item(mine, "TRA-0001"), "story", "Told since.", Telling(audience="anyone"))
    hand_over(mine, tmp_path / "2", tmp_path / "1")
    trees = {
        (name, part): etree.parse(tmp_path / name / part / "data" / "metadata" / "finding-aid.ead3.xml")
        for name in ("1", "2")
        for part in ("open", "closed")
    }

    def said(name: str, part: str, path: str) -> list[str]:
        return trees[name, part].xpath(path, namespaces={"e": "http://ead3.archivists.org/schema/"})

    for part in ("open", "closed"):
        ids = [said(name, part, "string(//e:recordid)") for name in ("1", "2")]
        assert ids[0] == ids[1]
        status = [said(name, part, "string(//e:maintenancestatus/@value)") for name in ("1", "2")]
        assert status == ["new", "revised"]
        events = [said(name, part, "//e:maintenanceevent/e:eventtype/@value") for name in ("1", "2")]
        assert events == [["created"], ["created", "revised"]]
        assert len(said("2", part, "//e:c[@level='item']")) == 3
    assert said("2", "open", "string(//e:recordid)") != said("2", "closed", "string(//e:recordid)")


def test_what_was_chosen_is_remembered_and_what_was_not_is_not_gone(mine: Collection, tmp_path: Path) -> None:
    hand_over(mine, tmp_path / "1", selection=Selection(items=("TRA-0001",)))
    Teller(mine).tell(find_item(mine, "TRA-0001"), "story", "Told since.", Telling(audience="anyone"))
    made = hand_over(mine, tmp_path / "2", tmp_path / "1")
    assert [part.records for part in made.parts] == [1, 1]
    page = (tmp_path / "2" / "closed" / "README.html").read_text("utf-8")
    for words in ("items were chosen", "2 files of earlier transfers", "What the archive has not asked for: the inv"):
        assert words in page, words
    made = hand_over(mine, tmp_path / "3", tmp_path / "2", selection=Selection(items=("TRA-0002",)))
    assert [part.records for part in made.parts] == [2, 2]
    rows = table(tmp_path / "3" / "open" / "data" / "metadata" / "changes.csv")
    assert [(row["Number"], row["What"]) for row in rows if row["Number"]] == [("TRA-0002", "new")]
    assert why(tmp_path / "3") == set()


def test_a_choice_by_a_name_is_in_the_closed_part_alone(mine: Collection, tmp_path: Path) -> None:
    hand_over(mine, tmp_path / "1", selection=Selection(person="Kristjan Tamm"))
    opened = tmp_path / "1" / "open" / "data" / "metadata" / "transfers.csv"
    assert "Kristjan" not in opened.read_text("utf-8-sig")
    shutil.copytree(tmp_path / "1" / "open", tmp_path / "half" / "open")
    with pytest.raises(WrongUse, match="does not say by which"):
        hand_over(mine, tmp_path / "2", tmp_path / "half")
    closed = tmp_path / "1" / "closed" / "data" / "metadata" / "transfers.csv"
    for damaged in (b'Chosen\r\n"[1]"\r\n', b"Chosen\r\n{\r\n", b'Chosen\r\n"{""x"": 1}"\r\n'):
        closed.write_bytes(damaged)
        with pytest.raises(CouldNot, match="What was chosen for the transfer"):
            hand_over(mine, tmp_path / "2", tmp_path / "1")


def test_a_scan_that_is_mended_replaces_the_one_before(mine: Collection, tmp_path: Path) -> None:
    hand_over(mine, tmp_path / "1")
    item = find_item(mine, "TRA-0001")
    scan = record_of(mine, item.id).scans[0]
    path = mine.folder / scan.path
    path.write_bytes(path.read_bytes() + b"\n")
    made = hand_over(mine, tmp_path / "2", tmp_path / "1", take_changed=True)
    assert made.parts[1].scans == 1
    assert ("replace", "corrected", "scans/TRA-0001_f.jpg", "") in why(tmp_path / "2", "closed")


def scans_described(metadata: Path) -> set[tuple[str, str]]:
    """Every scan that the finding aid and METS tell of: its path, and its digest where that is told."""
    aid, mets = etree.parse(metadata / "finding-aid.ead3.xml"), etree.parse(metadata / "mets.xml")
    linked = {(str(path), "") for path in aid.xpath("//*[local-name()='dao']/@href")}
    located = {
        (file[0].get("{http://www.w3.org/1999/xlink}href"), f"{file.get('CHECKSUM')} {file.get('SIZE')}")
        for file in mets.iter("{http://www.loc.gov/METS/}file")
    }
    return linked | located


DAMAGES = [lambda data: data + b"\n", lambda data: data[:200], lambda data: b"", None]
"""What became of a scan's file here; None: it is gone."""


@pytest.mark.parametrize("damage", DAMAGES)
def test_a_scan_that_was_damaged_here_is_kept_at_the_archive(
    mine: Collection, tmp_path: Path, damage: Callable[[bytes], bytes] | None
) -> None:
    with_mets = replace(MUSEUM, takes=(*MUSEUM.takes, "mets"))
    transfer(mine, tmp_path / "1", order=TransferOrder(archive=with_mets))
    item = find_item(mine, "TRA-0001")
    path = mine.folder / record_of(mine, item.id).scans[0].path
    path.write_bytes(damage(path.read_bytes())) if damage else path.unlink()
    Teller(mine).tell(item, "story", "Told since.", Telling(audience="anyone"))
    made = transfer(mine, tmp_path / "2", order=TransferOrder(archive=with_mets, earlier=tmp_path / "1"))
    assert sum("The archive keeps the one that it has" in found.message for found in made.findings) == 1
    for part in ("open", "closed"):
        assert not any(row[2].startswith("scans/") for row in why(tmp_path / "2", part))
        assert "TRA-0001_f.jpg" in kept(tmp_path / "2", part)
        described = [tmp_path / name / part / "data/metadata" for name in ("1", "2")]
        scans = [scans_described(folder) for folder in described]
        assert scans[0] == scans[1] and any("TRA-0001_f.jpg" in path for path, _ in scans[1])


def test_a_recording_goes_once_and_one_that_is_gone_is_withdrawn(mine: Collection, tmp_path: Path) -> None:
    papers = mine.folder / "papers"
    papers.mkdir(exist_ok=True)
    (papers / "agreement.txt").write_text("signed", "utf-8")
    hand_over(mine, tmp_path / "1")
    (papers / "second.txt").write_text("signed too", "utf-8")
    hand_over(mine, tmp_path / "2", tmp_path / "1")
    assert [path.name for path in (tmp_path / "2" / "closed" / "data" / "papers").iterdir()] == ["second.txt"]
    (papers / "agreement.txt").unlink()
    hand_over(mine, tmp_path / "3", tmp_path / "2")
    assert ("delete", "withdrawn", "papers/agreement.txt", "") in why(tmp_path / "3", "closed")
    rebuild(tmp_path / "again", tmp_path / "1", also=[tmp_path / "3", tmp_path / "2"], on_day=ON)
    assert [path.name for path in (tmp_path / "again" / "papers").iterdir()] == ["second.txt"]
    no_sound = replace(MUSEUM, takes=("dublin-core", "rdf"))
    Teller(mine).tell(find_item(mine, "TRA-0001"), "story", "Told since.", Telling())
    transfer(mine, tmp_path / "4", order=TransferOrder(archive=no_sound, earlier=tmp_path / "3"))
    assert not any("papers" in row[2] for row in why(tmp_path / "4", "closed"))


def kept(package: Path, part: str) -> set[str]:
    """The files that an archive keeps, by their names, and those that come with the update."""
    data = package / part / "data"
    listed = {row["File"] for row in table(data / "metadata" / "files.csv")}
    brought = {path.relative_to(data).as_posix() for path in data.rglob("*.*")}
    return {path.rpartition("/")[2] for path in listed | brought if not path.startswith(("metadata/", "forms/"))}


def test_an_archive_that_takes_less_keeps_what_it_may_have_and_no_more(mine: Collection, tmp_path: Path) -> None:
    papers = mine.folder / "papers"
    papers.mkdir(exist_ok=True)
    (papers / "stays.txt").write_text("signed", "utf-8")
    (papers / "taken back.txt").write_text("signed too", "utf-8")
    every = replace(MUSEUM, takes=(*MUSEUM.takes, "copies"))
    transfer(mine, tmp_path / "1", order=TransferOrder(archive=every))
    (papers / "taken back.txt").unlink()
    registry.set_audience(mine, find_item(mine, "TRA-0002"), "archive:2060-01-01")
    less = replace(MUSEUM, takes=("dublin-core", "rdf"))
    transfer(mine, tmp_path / "2", order=TransferOrder(archive=less, earlier=tmp_path / "1"))
    assert kept(tmp_path / "2", "open") == {"TRA-0001_f.jpg", "TRA-0001_b.jpg"}
    asked = {row[2] for row in why(tmp_path / "2") if row[0] == "delete" and "/" in row[2]}
    copied = "copies/box-1/folder-1/TRA-0002"
    assert asked == {
        f"{copied}_f.jpg", f"{copied}_b.jpg", "copies/contents.csv", "scans/TRA-0002_f.jpg", "scans/TRA-0002_b.jpg",
        "metadata/",
    }  # fmt: skip
    assert {row for row in why(tmp_path / "2", "closed") if row[0] == "delete"} == {
        ("delete", "withdrawn", "papers/taken back.txt", "")
    }
    numbered = {f"TRA-000{number}_{side}.jpg" for number in (1, 2, 3) for side in "fb"}
    assert kept(tmp_path / "2", "closed") == {*numbered, "contents.csv", "stays.txt"}


def test_a_copy_goes_for_the_reason_for_which_its_words_do(mine: Collection, tmp_path: Path) -> None:
    """A rule of our own: what an archive is told to do with a copy tells why, in both parts alike."""
    teller = Teller(mine)
    struck = teller.tell(find_item(mine, "TRA-0001"), "title", "The dance at the cannery", Telling(audience="anyone"))
    every = TransferOrder(archive=replace(MUSEUM, takes=(*MUSEUM.takes, "copies")))
    transfer(mine, tmp_path / "1", order=every)
    copies = {
        path.name.partition("_")[0]: path.relative_to(tmp_path / "1/open/data").as_posix()
        for path in sorted((tmp_path / "1/open/data/copies").rglob("TRA-*"))
    }
    assert b"dance at the cannery" in (tmp_path / "1/open/data" / copies["TRA-0001"]).read_bytes()
    strike_out(mine, [struck.id])
    registry.set_audience(mine, find_item(mine, "TRA-0002"), "archive:2070-01-01")
    transfer(mine, tmp_path / "2", order=replace(every, earlier=tmp_path / "1"))
    registry.set_audience(mine, find_item(mine, "TRA-0001"), "family")
    transfer(mine, tmp_path / "3", order=replace(every, earlier=tmp_path / "2"))
    for part in ("open", "closed"):
        rows = why(tmp_path / "2", part)
        assert ("replace", "struck", copies["TRA-0001"], "") in rows, part
        assert ("delete", "closed", copies["TRA-0002"], "") in rows, part
        assert ("replace", "corrected", "copies/contents.csv", "") in rows, part
        assert ("delete", "kept", copies["TRA-0001"], "") in why(tmp_path / "3", part), part


def test_a_choice_after_a_whole_transfer_withdraws_nothing(mine: Collection, tmp_path: Path) -> None:
    papers = mine.folder / "papers"
    papers.mkdir(exist_ok=True)
    (papers / "agreement.txt").write_text("signed", "utf-8")
    every = replace(MUSEUM, takes=(*MUSEUM.takes, "copies"))
    transfer(mine, tmp_path / "1", order=TransferOrder(archive=every))
    Teller(mine).tell(find_item(mine, "TRA-0002"), "story", "Told since.", Telling(audience="anyone"))
    chosen = Selection(items=("TRA-0002",))
    order = TransferOrder(archive=every, earlier=tmp_path / "1", selection=chosen)
    transfer(mine, tmp_path / "2", order=order)
    for part in ("open", "closed"):
        assert [row for row in why(tmp_path / "2", part) if row[0] == "delete"] == []
        assert kept(tmp_path / "2", part) == kept_of_whole(tmp_path / "1", part)


def kept_of_whole(package: Path, part: str) -> set[str]:
    data = package / part / "data"
    return {path.name for path in data.rglob("*.*") if path.relative_to(data).parts[0] != "metadata"}


def test_the_descriptions_to_replace_are_those_that_there_were(mine: Collection, tmp_path: Path) -> None:
    for name, takes in (("1", ("dublin-core", "rdf", "forms")), ("2", ("dublin-core", "rdf"))):
        transfer(mine, tmp_path / name, order=TransferOrder(archive=Archive(takes=takes)))
        registry.set_audience(mine, find_item(mine, f"TRA-000{name}"), "archive:2060-01-01")
        order = TransferOrder(archive=Archive(takes=takes), earlier=tmp_path / name)
        transfer(mine, tmp_path / f"{name}-update", order=order)
    folders = [{row[2] for row in why(tmp_path / f"{name}-update") if row[2].endswith("/")} for name in ("1", "2")]
    assert folders == [{"metadata/", "forms/"}, {"metadata/"}]  # the extract of the deed
    assert not any(row[2] == "forms/" for row in why(tmp_path / "1-update", "closed"))  # nobody replaces a signed one
    registry.set_audience(mine, find_item(mine, "TRA-0003"), "archive:2060-01-01")
    order = TransferOrder(archive=Archive(takes=("dublin-core", "rdf")), earlier=tmp_path / "2-update")
    transfer(mine, tmp_path / "2-again", order=order)  # also of the transfer before the one that is updated
    assert {row[2] for row in why(tmp_path / "2-again") if row[2].endswith("/")} == {"metadata/"}


def test_an_update_is_for_the_archive_and_on_the_terms_of_the_transfer(mine: Collection, tmp_path: Path) -> None:
    """What the archive said of itself and that the originals stay goes with the transfer, and is taken up again."""
    named = replace(MUSEUM, country="NZ", terms='Said “so”,\n"and" so.\U000e0041', takes=(*MUSEUM.takes, "inventory"))
    transfer(mine, tmp_path / "1", order=TransferOrder(archive=named, originals=False))
    shutil.rmtree(tmp_path / "1" / "closed")
    assert archive_of(mine.folder, None, tmp_path / "1") == named and not originals_before(tmp_path / "1")
    transfer(mine, tmp_path / "2", order=TransferOrder(archive=MUSEUM))
    assert originals_before(tmp_path / "2") and archive_of(mine.folder, None) == Archive()
    with pytest.raises(CouldNot, match="Nothing has changed"):
        hand_over(mine, tmp_path / "3", tmp_path / "2")
    hand_over(mine, tmp_path / "3", tmp_path / "2", originals=False)  # the deed was wrong: it can be put right
    assert not originals_before(tmp_path / "3")
    changed = TransferOrder(archive=named, originals=False, earlier=tmp_path / "3")
    transfer(mine, tmp_path / "4", order=changed)
    assert archive_of(mine.folder, tmp_path / "4" / "open" / "data" / "metadata" / "archive.toml") == named


def test_a_consent_taken_back_and_what_the_family_keeps_are_reasons(mine: Collection, tmp_path: Path) -> None:
    mia = next(person for person in mine.people().values() if person.name == "Mia Rourke")
    registry.consent(mine, mia, make_consent(["name", "picture"], "2026-11-20"))
    aino = undecided([place for found in look_for_names(mine).namings for place in found.places])
    decide(mine, [(place, NamingAnswer.MAY) for place in aino])  # whom the back of TRA-0003 names, and nobody knows
    hand_over(mine, tmp_path / "1")
    registry.consent(mine, mia, make_consent(["picture"], "2026-11-24", given=False))
    hand_over(mine, tmp_path / "picture", tmp_path / "1")
    assert {(row[1], row[2]) for row in why(tmp_path / "picture") if row[2].endswith(".jpg")} == {
        ("consent taken back", "scans/TRA-0003_b.jpg"), ("consent taken back", "scans/TRA-0003_f.jpg"),
    }  # fmt: skip
    registry.consent(mine, mia, make_consent(["name"], "2026-11-24", given=False))
    registry.set_audience(mine, find_item(mine, "TRA-0002"), "family")
    hand_over(mine, tmp_path / "2", tmp_path / "1")
    reasons = {(row[1], row[2]) for row in why(tmp_path / "2") if row[2].endswith(".jpg")}
    assert reasons == {
        ("consent taken back", "scans/TRA-0003_b.jpg"), ("consent taken back", "scans/TRA-0003_f.jpg"),
        ("kept", "scans/TRA-0002_b.jpg"), ("kept", "scans/TRA-0002_f.jpg"),
    }  # fmt: skip
    assert {row[1] for row in why(tmp_path / "2", "closed") if row[0] == "delete"} == {"kept"}
    changed = table(tmp_path / "2" / "open" / "data" / "metadata" / "changes.csv")
    said = {row["Number"]: row["Why"] for row in changed}
    assert said["TRA-0003"].startswith("consent taken back") and said["TRA-0001"] == "consent taken back"
    registry.consent(mine, mia, make_consent(["name", "picture"], "2026-11-25"))
    hand_over(mine, tmp_path / "3", tmp_path / "2")
    shown = {row["Number"]: row["Why"] for row in table(tmp_path / "3" / "open" / "data" / "metadata" / "changes.csv")}
    assert "Who: told before, and may be shown now" in shown["TRA-0003"]


def test_what_a_merged_entry_tells_goes_with_the_items_that_are_chosen(mine: Collection, tmp_path: Path) -> None:
    act = mine.act("from a tree file")
    entry = act.new(Kind.PERSON)
    for name, words in (("name", "Kristjan Juhan Tamm"), ("born_at", "Reval")):
        Teller(mine).add(act, entry, name, words, Telling())
    act.done()
    kristjan = next(person for person in mine.people().values() if person.name == "Kristjan Tamm")
    registry.merge(mine, kristjan, mine.people()[entry.id])
    hand_over(mine, tmp_path / "1", selection=Selection(items=("TRA-0002",)))
    for part in ("open", "closed"):
        told = (tmp_path / "1" / part / "data" / "metadata" / "records.nt").read_text("utf-8")
        assert '"Reval"' in told and '"1909"' in told and "Mia" not in told
    rebuild(tmp_path / "again", tmp_path / "1", on_day=ON)
    with open_collection(tmp_path / "again", on_day=ON) as made_again:
        assert made_again.people()[entry.id].ids == made_again.people()[kristjan.id].ids  # still one
        assert made_again.people().names()[entry.id] == "Kristjan Tamm"


def test_whoever_told_what_goes_goes_along_with_a_name_where_it_may_be_told(mine: Collection, tmp_path: Path) -> None:
    """Chosen items: who told of them stands in none of their pictures. Hilda, long dead, told of Leida, who lives."""
    act, teller = mine.act("tellers"), Teller(mine)
    leida, hilda, tiina = (act.new(Kind.PERSON) for _ in range(3))
    for person, given, more in (
        (leida, "Leida", ()),
        (hilda, "Hilda", (("born", "1880"), ("died", "1950"))),
        (tiina, "Tiina", ()),
    ):
        for name, words in (("given", given), ("family", "Rourke"), *more):
            by = Source(Said.NARRATOR, hilda.id) if (given, name) == ("Leida", "given") else KEEPER
            teller.add(act, person, name, words, Telling(source=by))
    act.done()
    item = find_item(mine, "TRA-0002")
    teller.tell(item, "occasion", "his sixtieth birthday", Telling(source=Source(Said.NARRATOR, leida.id)))
    hand_over(mine, tmp_path / "1", selection=Selection(items=("TRA-0002",)))
    told = [(tmp_path / "1" / part / "data/metadata/records.nt").read_text("utf-8") for part in ("open", "closed")]
    assert [[name in words for name in ("Leida", "Hilda", "Tiina")] for words in told] == [
        [False, False, False],
        [True, True, False],
    ]
    rebuild(tmp_path / "again", tmp_path / "1", on_day=ON)
    with open_collection(tmp_path / "again", on_day=ON) as made_again:
        record = record_of(made_again, find_item(made_again, "TRA-0002").id)
        (view,) = record.all("occasion")
    assert view.said_by == "Leida Rourke"


def test_who_is_shown_is_known_again_where_the_archive_took_no_scans(demo: Path, tmp_path: Path) -> None:
    """A name at a marker is told of its item, where the scan that has the marker is not in the package."""
    shutil.copytree(demo, tmp_path / "tamm")
    with open_collection(tmp_path / "tamm", on_day=ON) as collection:
        names = [shown.name for shown in record_of(collection, find_item(collection, "TRA-0007").id).shown()]
        order = TransferOrder(archive=Archive(takes=("rdf",)), selection=Selection(items=("TRA-0007",)))
        transfer(collection, tmp_path / "1", order=order)
    rebuild(tmp_path / "again", tmp_path / "1", on_day=ON)
    with open_collection(tmp_path / "again", on_day=ON) as again:
        record = record_of(again, find_item(again, "TRA-0007").id)
    assert len(names) > 2 and {shown.name for shown in record.shown()} == set(names)


def test_only_the_unit_of_a_size_is_taken_off_when_a_collection_is_made_again(mine: Collection, tmp_path: Path) -> None:
    """Our own rule: told words come back as they went out."""
    act = mine.act("where it lay")
    act.state(find_item(mine, "TRA-0002"), "found_in", "a tin, 90 mm")
    act.done()
    transfer(mine, tmp_path / "1", order=TransferOrder(archive=Archive(takes=("rdf",))))
    rebuild(tmp_path / "again", tmp_path / "1", on_day=ON)
    with open_collection(tmp_path / "again", on_day=ON) as again:
        assert record_of(again, find_item(again, "TRA-0002").id).found_in == "a tin, 90 mm"


def test_a_number_of_one_item_is_no_accession_of_the_whole(mine: Collection, tmp_path: Path) -> None:
    """Describing Archives: A Content Standard, 5.2: an accession number is of what came at one time; from memory."""
    receipt = tmp_path / "receipt.csv"
    lines = [
        COLUMNS,
        ("", "", "the whole transfer", "2026/14", "", "The tin smells"),
        ("TRA-0001", "", "", "2026/14.2", "", ""),
    ]
    receipt.write_text("\n".join(",".join(line) for line in lines), "utf-8")
    received = read_receipt(mine, receipt)
    assert (received.accessions, received.remarks, received.refused) == (("2026/14",), 2, ())
    hand_over(mine, tmp_path / "1")
    aid = (tmp_path / "1" / "open" / "data" / "metadata" / "finding-aid.ead3.xml").read_text("utf-8")
    assert "Accession 2026/14." in aid and "2026/14.2" not in aid
    assert record_of(mine, find_item(mine, "TRA-0001").id).words("archive_remark") == "Accession number 2026/14.2"
    for number in ("2026/131", "2026/14; 2026/131"):  # an accrual has its own, and is sent out with both
        receipt.write_text("\n".join([",".join(COLUMNS), f",,the whole transfer,{number},,"]), "utf-8")
        read_receipt(mine, receipt)
    hand_over(mine, tmp_path / "2", tmp_path / "1")
    home = tmp_path / "2" / "open" / "data" / "metadata"
    assert "Accession 2026/14; 2026/131." in (home / "finding-aid.ead3.xml").read_text("utf-8")
    assert table(home / "receipt.csv")[0]["Accession number"] == "2026/14; 2026/131"


def test_what_is_to_be_replaced_is_named_by_its_field(mine: Collection, tmp_path: Path) -> None:
    item = find_item(mine, "TRA-0001")
    told = Teller(mine).tell(item, "process", "Tintype", Telling(audience="anyone"))
    hand_over(mine, tmp_path / "1")
    Teller(mine).tell(item, "process", "Albumen print", Telling(audience="anyone"), replaces=told.id)
    hand_over(mine, tmp_path / "2", tmp_path / "1")
    rows = table(tmp_path / "2" / "open" / "data" / WITHDRAW)
    (row,) = [row for row in rows if row["Number"] == "TRA-0001"]
    assert (row["What to do"], row["Reason"], row["Field"]) == ("replace", "corrected", "process")


def told_outside(collection: Collection) -> list[tuple[str, list[str], bool]]:
    """What anyone may have of each item: its number, its words, whether its scans stay back."""
    records = seen_by(collection, To.OUTSIDE).records()
    return [(record.number, [view.words for view in every_told(record)], record.closed_scans) for record in records]


def test_what_the_keeper_hides_stays_hidden_in_a_collection_made_again(mine: Collection, tmp_path: Path) -> None:
    """The same answers, in a package: of words that stay with the family not even a digest goes along."""
    mia = next(person for person in mine.people().values() if person.name == "Mia Rourke")
    teller = Teller(mine)
    teller.tell(find_item(mine, "TRA-0001"), "story", "Mia Rourke held the lamp.", Telling(audience="anyone"))
    teller.tell(find_item(mine, "TRA-0002"), "story", "Mia Rourke wept there.", Telling(audience="family"))
    places = [place for found in look_for_names(mine).namings for place in found.places if place.where == "story"]
    assert {place.number for place in places} == {"TRA-0001", "TRA-0002"}
    aino = [place for found in look_for_names(mine).namings for place in found.places if place.where == "inscription"]
    decide(mine, [(place, NamingAnswer.HIDE) for place in (*places, *aino)])
    registry.consent(mine, mia, make_consent(["name", "picture"], "2026-11-20"))
    hand_over(mine, tmp_path / "1")
    told = {
        part: (tmp_path / "1" / part / "data/metadata/records.nt").read_text("utf-8") for part in ("open", "closed")
    }
    digests = {place.number: place.digest for place in places}
    assert digests["TRA-0001"] in told["closed"] and digests["TRA-0002"] not in told["closed"]
    assert not any(digest in told["open"] for digest in digests.values())
    rebuild(tmp_path / "again", tmp_path / "1", on_day=ON)
    with open_collection(tmp_path / "again", on_day=ON) as again:
        assert told_outside(again) == told_outside(mine)
        assert not any("held the lamp" in words for _, said, _ in told_outside(again) for words in said)
        asked = undecided([place for found in look_for_names(again).namings for place in found.places])
        assert {place.where for place in asked} <= {"found in"}  # an answer about what is no statement stays at home


def said_of(package: Path, number: str, part: str = "open") -> dict[str, str]:
    """The row of an item in the inventory of a part."""
    rows = table(package / part / "data/metadata/inventory.csv")
    return next(row for row in rows if row["Number"] == number)


def deed_of(package: Path) -> str:
    return " ".join("".join(page.extract_text() for page in PdfReader(package / DEED).pages).split())


DEED = "closed/data/forms/deed-of-gift.pdf"


def test_an_original_that_was_given_and_is_kept_now_is_asked_back(mine: Collection, tmp_path: Path) -> None:
    """Common practice, no source: what a signed deed has given goes back only by another word that both sign."""
    every = replace(MUSEUM, takes=(*MUSEUM.takes, "inventory", "forms"))
    order = TransferOrder(archive=every)
    transfer(mine, tmp_path / "1", order=order)
    registry.set_audience(mine, find_item(mine, "TRA-0002"), "family")
    made = transfer(mine, tmp_path / "2", order=replace(order, earlier=tmp_path / "1"))
    asked = [found.message for found in made.findings if found.rule == "original.asked_back"]
    assert len(asked) == 1 and "TRA-0002 archive:2070-01-01" in asked[0]
    for part in ("open", "closed"):
        assert ("return", "kept", "TRA-0002", "") in why(tmp_path / "2", part)
        said = said_of(tmp_path / "2", "TRA-0002", part)
        assert said["Location of originals"].startswith(f"handed over on {ON}, asked back by ")
        assert f"was handed over on {ON} and is asked back." in said["Conditions governing access"]
        assert "not handed over" not in said["Conditions governing access"]
        numbers = [row["Number"] for row in table(tmp_path / "2" / part / "data/metadata/receipt.csv")]
        assert "TRA-0002" in numbers
    assert "of TRA-0002, and the family keeps now, is the donor's again" in deed_of(tmp_path / "2")

    # it is asked for once, and said for as long as it is so
    Teller(mine).tell(find_item(mine, "TRA-0001"), "story", "Told since.", Telling(audience="anyone"))
    made = transfer(mine, tmp_path / "3", order=replace(order, earlier=tmp_path / "2"))
    assert not [found for found in made.findings if found.rule == "original.asked_back"]
    assert not [row for row in why(tmp_path / "3") if row[0] == "return"]
    assert "is asked back." in said_of(tmp_path / "3", "TRA-0002")["Conditions governing access"]

    # and where it is given again, it is to be returned no more
    registry.set_audience(mine, find_item(mine, "TRA-0002"), "anyone")
    made = transfer(mine, tmp_path / "given", order=replace(order, earlier=tmp_path / "3"))
    assert [found.message[:64] for found in made.findings if found.rule == "original.given_again"] == [
        "An earlier update asked the original of TRA-0002 back, and it is"
    ]
    assert ("keep", "given again", "TRA-0002", "") in why(tmp_path / "given", "closed")
    assert "TRA-0002, which an earlier update asked back, is given again" in deed_of(tmp_path / "given")
    registry.set_audience(mine, find_item(mine, "TRA-0002"), "family")

    # what was never handed over, or scans alone, is nobody's to return; an older version did not note the day
    transfer(mine, tmp_path / "4", order=order)
    registry.set_audience(mine, find_item(mine, "TRA-0003"), "family")
    transfer(mine, tmp_path / "scans", order=replace(order, earlier=tmp_path / "4", originals=False))
    assert not [row for row in why(tmp_path / "scans") if row[0] == "return"]
    transfer(mine, tmp_path / "5", order=replace(order, earlier=tmp_path / "4"))
    assert {row[2] for row in why(tmp_path / "5") if row[0] == "return"} == {"TRA-0003"}
    assert "not handed over" in said_of(tmp_path / "5", "TRA-0002")["Conditions governing access"]
    row = {"Identifier": "x", "Number": "TRA-0003", "Told": "a b"}
    assert read_item(row, "2026-11-25").given_on == "2026-11-25" and not read_item(row | {"Told": ""}, "2026").given_on


def words_in(file: Path) -> str:
    if file.suffix == ".pdf":
        return "".join(page.extract_text() for page in PdfReader(file).pages)
    return file.read_bytes().decode("utf-8", "replace")


def test_an_update_that_gives_no_originals_after_they_were_given_asks(mine: Collection, tmp_path: Path) -> None:
    """What a signed deed has given does not go back unsaid: common practice, no source. Scans after scans ask none."""
    order = TransferOrder(archive=replace(MUSEUM, takes=("dublin-core", "rdf", "forms")))
    transfer(mine, tmp_path / "1", order=order)
    scans = replace(order, earlier=tmp_path / "1", originals=False)
    (asked,) = (found for found in transfer(mine, tmp_path / "2", order=scans).findings if found.rule == DENIED)
    assert asked.severity is Severity.ASK
    assert "originals are given, and this update says that none is" in asked.message
    assert "The originals that the earlier deed gives were never handed over" in deed_of(tmp_path / "2")
    Teller(mine).tell(find_item(mine, "TRA-0001"), "story", "Told since.", Telling(audience="anyone"))
    made = transfer(mine, tmp_path / "3", order=replace(scans, earlier=tmp_path / "2"))
    assert not [found for found in made.findings if found.rule == DENIED]
    assert "never handed over" not in deed_of(tmp_path / "3")


DENIED = "original.denied"


def test_a_donor_who_takes_the_consent_back_is_named_in_no_open_file_of_any_transfer(
    mine: Collection, tmp_path: Path
) -> None:
    """The signed deed stays, in the closed part; its extract, the page and bag-info.txt of each open bag go."""
    mia = next(person for person in mine.people().values() if person.name == "Mia Rourke")
    mine.settings = replace(mine.settings, holder="Mia Rourke")
    registry.consent(mine, mia, make_consent(["name", "picture", "voice"], "2026-11-20"))
    order = TransferOrder(archive=replace(MUSEUM, takes=(*MUSEUM.takes, "forms")))
    transfer(mine, tmp_path / "1", order=order)
    Teller(mine).tell(find_item(mine, "TRA-0001"), "story", "Told since.", Telling(audience="anyone"))
    transfer(mine, tmp_path / "2", order=replace(order, earlier=tmp_path / "1"))
    assert not any(row[2].startswith(("../", "forms")) for row in why(tmp_path / "2"))
    registry.consent(mine, mia, make_consent(["name", "picture", "voice"], "2026-11-24", given=False))
    transfer(mine, tmp_path / "3", order=replace(order, earlier=tmp_path / "2"))
    rows = [row for row in table(tmp_path / "3/open/data" / WITHDRAW) if row["Transfer"] and row["File"]]
    asked = {(row["Transfer"], row["File"]) for row in rows if row["What to do"] == "delete"}
    for name in ("1", "2"):
        opened = tmp_path / name / "open"
        group = bagit.Bag(str(opened)).info["Bag-Group-Identifier"]
        gone = {path for transferred, path in asked if transferred == group}
        gone |= {row[2] for row in why(tmp_path / "2") if row[2].endswith("/")} if name == "1" else set()
        left = {
            f"../{path.relative_to(opened).as_posix()}".replace("../data/", ""): path for path in opened.rglob("*.*")
        }
        named = [path for path, file in left.items() if "Mia" in words_in(file)]
        assert named and [path for path in named if not path.startswith(tuple(gone))] == []
    assert {row["Reason"] for row in rows if row["File"].startswith("../")} == {"consent taken back"}
    assert not any(row[2].startswith(("forms", "../")) for row in why(tmp_path / "3", "closed"))
    Teller(mine).tell(find_item(mine, "TRA-0001"), "story", "Told again.", Telling(audience="anyone"))
    transfer(mine, tmp_path / "4", order=replace(order, earlier=tmp_path / "3"))
    assert not any(row[2].startswith("../") for row in why(tmp_path / "4"))  # asked for once


def filled(path: Path, **cells: str) -> Path:
    """The table of a package, filled in by an archive in the one line of a sitting."""
    rows = table(path)
    with open(path.with_name("filled.csv"), "w", encoding="utf-8", newline="") as file:
        out = csv.DictWriter(file, rows[0].keys())
        out.writeheader()
        is_sitting = [not row["Number"] and row["Identifier"] and not row["Title"].startswith("Box") for row in rows]
        out.writerows(row | (cells if it_is else {}) for row, it_is in zip(rows, is_sitting, strict=True))
    return path.with_name("filled.csv")


def test_a_sitting_is_offered_answered_received_and_made_again_as_one_thing(mine: Collection, tmp_path: Path) -> None:
    """DACS 2.1 and 5.2 (from memory): a recording has its reference code and its accession as the pictures have."""
    sitting = a_sitting(mine, tmp_path / "in")
    offer(mine, tmp_path / "offer")
    offered = [row for row in table(tmp_path / "offer/offer.csv") if not row["Number"]]
    assert [(row["Identifier"], row["Kind"]) for row in offered] == [(f"urn:uuid:{sitting}", "1 sound recording (3 s)")]
    page = (tmp_path / "offer/offer.html").read_text("utf-8")
    assert "1 sound recording (3 s)" in page and "Mia" not in page
    no = tmp_path / "no.csv"
    no.write_text("Number,Wanted\nTRA-0002,no\nTRA-0001,yes\n", "utf-8")
    read_answer(mine, no)

    # one “no” to a picture keeps no recording back, of which the archive says yes or no by itself
    takes = replace(MUSEUM, takes=(*MUSEUM.takes, "mets", "dc-csv", "inventory"))
    order = TransferOrder(archive=takes, selection=Selection(wanted=True))
    made = transfer(mine, tmp_path / "0", order=order)
    (stays,) = [found.message for found in made.findings if found.rule == "sound.stays"]
    assert stays.startswith("The recordings and papers of 1 sitting stay here: the archive has not said")
    assert not (tmp_path / "0/closed/data/recordings").exists()
    yes = filled(tmp_path / "offer/offer.csv", Wanted="yes")
    assert read_answer(mine, yes).refused == ()
    yes.unlink()
    made = transfer(mine, tmp_path / "1", order=order)
    assert not any(found.rule == "sound.stays" for found in made.findings)
    data = tmp_path / "1/closed/data"
    (sound,) = (data / "recordings").iterdir()
    assert not (tmp_path / "1/open/data/recordings").exists()
    for name in (
        "finding-aid.ead3.xml",
        "oai_dc.xml",
        "dcterms.xml",
        "dc.csv",
        "inventory.csv",
        "records.nt",
        "mets.xml",
    ):
        told = (data / "metadata" / name).read_text("utf-8-sig")
        assert f"urn:uuid:{sitting}" in told and f"recordings/{sound.name}" in told, name
        assert "recordings/" not in (tmp_path / "1/open/data/metadata" / name).read_text("utf-8-sig"), name
    assert not any(row["Identifier"].endswith(sitting) for row in table(tmp_path / "1/open/data/metadata/receipt.csv"))

    said = [row for row in table(data / "metadata/rights.csv") if row["About"] == f"recordings/{sound.name}"]
    assert ("voice", "disallow") in {(row["Act"], row["Allowed"]) for row in said}
    assert "Nothing is noted as agreed" in (data / "metadata/inventory.csv").read_text("utf-8-sig")
    fixity = {part: table(tmp_path / f"1/{part}/data/metadata/fixity.csv") for part in ("open", "closed")}
    assert [row["SHA-256"] for row in fixity["closed"] if row["File"] == f"recordings/{sound.name}"] == [
        sha256_of(sound)
    ]
    assert not any(row["File"].startswith("recordings/") for row in fixity["open"])

    # its reference and a remark come back, and go on into the update and a collection made again
    receipt = filled(
        data / "metadata/receipt.csv", **{"The archive's reference": "P-1/R1", "Remarks": "Clipping at 2 s"}
    )
    received = read_receipt(mine, receipt, archive="Port Chalmers Museum")
    assert (received.references, received.remarks, received.refused) == (1, 1, ())
    assert any(
        "of the sitting of" in found.finding.message and "Clipping" in found.finding.message for found in check(mine)
    )
    receipt.unlink()
    transfer(mine, tmp_path / "2", order=replace(order, earlier=tmp_path / "1"))
    for name in ("finding-aid.ead3.xml", "dc.csv", "inventory.csv", "receipt.csv"):
        assert "P-1/R1" in (tmp_path / "2/closed/data/metadata" / name).read_text("utf-8-sig"), name
    assert "P-1/R1" not in (tmp_path / "2/open/data/metadata/records.nt").read_text("utf-8")
    rebuild(tmp_path / "again", tmp_path / "2", also=[tmp_path / "1"], on_day=ON)
    with open_collection(tmp_path / "again", on_day=ON) as again:
        said = {row.field: row.words for row, _ in again.store.statements(Subject(Kind.SITTING, sitting))}
        assert said["archive_reference"] == "P-1/R1" and said["archive_remark"] == "Clipping at 2 s"
        assert [held.id for held in sittings_held(again)] == [sitting]

    # a “no” to the sitting keeps it here
    (tmp_path / "offer/offer.csv").replace(tmp_path / "offer.csv")
    assert read_answer(mine, filled(tmp_path / "offer.csv", Wanted="no")).refused == ()
    transfer(mine, tmp_path / "3", order=order)
    assert not (tmp_path / "3/closed/data/recordings").exists()
    assert sitting not in (tmp_path / "3/closed/data/metadata/records.nt").read_text("utf-8")
    (tmp_path / "no.csv").write_text(
        "Number,Identifier,Wanted\n,urn:uuid:00000000-0000-7000-8000-000000000000,no\n", "utf-8"
    )
    assert "there is no sitting urn:uuid:0" in read_answer(mine, no).refused[0]


def test_nobody_who_is_kept_from_archives_is_heard_there(mine: Collection, tmp_path: Path) -> None:
    """The rule is ours: a voice tells who it is. What an archive has of it already is asked to be deleted."""
    sitting = a_sitting(mine, tmp_path / "in")
    order = TransferOrder(archive=replace(MUSEUM, takes=(*MUSEUM.takes, "forms")))
    transfer(mine, tmp_path / "1", order=order)
    (sound,) = (tmp_path / "1/closed/data/recordings").iterdir()
    mia = next(person for person in mine.people().values() if person.name == "Mia Rourke")
    registry.set_audience(mine, Subject(Kind.PERSON, mia.id), "family")

    transfer(mine, tmp_path / "2", order=replace(order, earlier=tmp_path / "1"))
    assert {("delete", "kept", f"recordings/{sound.name}", ""), ("delete", "kept", "forms/", "")} <= why(
        tmp_path / "2", "closed"
    )
    made = transfer(mine, tmp_path / "3", order=order)
    assert ["somebody who speaks in them is kept from archives" in found.message for found in made.findings
            if found.rule == "sound.stays"] == [True]  # fmt: skip
    for package in ("2", "3"):
        data = tmp_path / package / "closed/data"
        assert not (data / "recordings").exists() and not list((data / "forms").glob("consent*"))
        assert sitting not in (data / "metadata/records.nt").read_text("utf-8")
        assert not [path for path in data.rglob("*.*") if "Mia" in words_in(path)]
    offer(mine, tmp_path / "offer")
    assert all(row["Number"] for row in table(tmp_path / "offer/offer.csv"))


def test_an_update_is_of_every_bag_of_a_transfer_that_was_split(mine: Collection, tmp_path: Path) -> None:
    """RFC 8493, 2.2.2, Bag-Count: what lies in a bag that is missing would be called gone, or be sent again."""
    hand_over(mine, tmp_path / "1", split=200_000)
    Teller(mine).tell(find_item(mine, "TRA-0001"), "story", "Told since.", Telling(audience="anyone"))
    split = sorted(path for path in (tmp_path / "1").glob("closed-*"))
    assert len(split) > 1
    split[-1].rename(tmp_path / "elsewhere")
    with pytest.raises(CouldNot, match=r"Bag \d+ of the \d+ of the transfer .* is not there\. No update was made"):
        hand_over(mine, tmp_path / "2", tmp_path / "1")
    (tmp_path / "elsewhere").rename(split[-1])
    hand_over(mine, tmp_path / "2", tmp_path / "1")


def test_the_archives_own_name_is_nobodys_of_the_family(mine: Collection, tmp_path: Path) -> None:
    """A town taken for a given name stops no transfer to the archive of that town; in the title, it does."""
    act = mine.act("a photographer whose name was read amiss")
    person = act.new(Kind.PERSON)
    for name, words in (("given", "Chalmers"), ("family", "Museum"), ("born", "1990")):
        Teller(mine).add(act, person, name, words, Telling())
    act.done()
    hand_over(mine, tmp_path / "1")
    assert "Port Chalmers Museum" in (tmp_path / "1/open/README.html").read_text("utf-8")
    mine.settings = replace(mine.settings, title="Seen by Chalmers Museum")
    with pytest.raises(CouldNot, match="names someone living"):
        hand_over(mine, tmp_path / "2")


def test_the_closed_bag_says_how_to_reach_the_donor(mine: Collection, tmp_path: Path) -> None:
    """RFC 8493, 2.2.2: Contact-Phone in international form, Contact-Email."""
    contact = "the Rourkes, 4 Quay Lane, 9023 Port Chalmers, +64 (3) 472-8000, photos@rourke.example."
    mine.settings = replace(mine.settings, holder="the Rourkes", contact=contact)
    hand_over(mine, tmp_path / "1")
    told = {part: bagit.Bag(str(tmp_path / "1" / part)).info for part in ("open", "closed")}
    reached = [told["closed"][f"Contact-{name}"] for name in ("Name", "Phone", "Email")]
    assert reached == ["the Rourkes", "+64 (3) 472-8000", "photos@rourke.example"]
    assert "Contact-Phone" not in told["open"] and "Contact-Email" not in told["open"]


def test_a_scan_with_other_bytes_than_described_is_said_to_be_that(mine: Collection, tmp_path: Path) -> None:
    """The manifests were made anew over it, so that the bag is whole by itself (RFC 8493, 3)."""
    hand_over(mine, tmp_path / "1")
    for part in ("open", "closed"):
        path = tmp_path / "1" / part / "data/scans/TRA-0001_f.jpg"
        path.write_bytes(path.read_bytes() + b"x")
        bagit.Bag(str(tmp_path / "1" / part)).save(manifests=True)
    made = rebuild(tmp_path / "again", tmp_path / "1", on_day=ON)
    assert made.missing == ("scans/TRA-0001_f.jpg as it is described: the file that lies there has other bytes",)


def test_codes_of_containers_stay_as_they_are_once_the_whole_has_a_reference(mine: Collection, tmp_path: Path) -> None:
    """DACS 2.1 (from memory): the code identifies the unit; labels on shelves and citations are made of it. What lies
    between two transfers is no change of a box, and an older one that is updated asks, for a newer one was packed."""
    museum = replace(MUSEUM, prefix="MS", country="NZ", agency="NZ-PC", takes=("ead3",))
    codes = []
    for at, earlier in enumerate((None, "1", "2", "1"), 1):
        before = tmp_path / earlier if earlier else None
        if at == 3:
            file_untold(mine)
        order = TransferOrder(archive=museum, earlier=before)
        made = transfer(mine, tmp_path / str(at), order=order)
        asked = [found for found in made.findings if found.rule == "transfer.older"]
        assert [found.severity for found in asked] == ([Severity.ASK] if at == 4 else [])
        assert all("Since the transfer that this updates 2 others were packed" in found.message for found in asked)
        untold = [found.message for found in made.findings if found.rule == "open.untold"]
        assert [f"open part with all that is to be seen: {UNTOLD}." in words for words in untold] == [True] * (at > 2)
        root = etree.parse(tmp_path / str(at) / "open/data/metadata/finding-aid.ead3.xml").getroot()
        units = root.iterfind(".//{*}dsc//{*}c")
        codes.append([(code.text, code.get("repositorycode")) for unit in units if unit.get("level") != "item"
                      for code in unit.iterfind("{*}did/{*}unitid")])  # fmt: skip
        if at == 1:
            lines = [COLUMNS, ("", "", "the whole transfer", "2026/14", "MS-0106", "")]
            (tmp_path / "receipt.csv").write_text("\n".join(",".join(line) for line in lines), "utf-8")
            assert read_receipt(mine, tmp_path / "receipt.csv", archive="Port Chalmers Museum").references == 1
    assert codes[0] and all(code and code.startswith("MS TR/") and of == "NZ-PC" for code, of in codes[0])
    assert codes[0] == codes[1]


UNTOLD = "TRA-0004"


def file_untold(collection: Collection) -> None:
    """Take a photograph in of which nothing is told."""
    picture = collection.folder.parent / "new_f.png"
    Image.new("RGB", (30, 20), "grey").save(picture)
    row = {"item": "new", "file": picture.name, "side": "recto"}
    take_in(collection, by_table([(2, row)], picture.parent), IntakeOptions(copy=True))


def test_a_receipt_gives_boxes_references_too(mine: Collection, tmp_path: Path) -> None:
    """DACS 2.1 (from memory): each level has its reference code; the archive's own stands before ours."""
    museum = replace(MUSEUM, takes=("ead3", "rdf", "inventory"))
    one, two = tmp_path / "1", tmp_path / "2"
    transfer(mine, one, order=TransferOrder(archive=museum))
    sent = table(one / "closed/data/metadata/receipt.csv")
    (box,) = [row for row in sent if row["Title"] == "Box 1"]
    named = {"Box 1": "MS-0106/1", "Box 1 / Folder 1": "MS-0106/1/1"}
    for row in sent:
        row["The archive's reference"] = named.get(row["Title"], "")
        row["Remarks"] = "Its lid is torn" if row["Title"] == "Box 1" else ""
    path = tmp_path / "receipt.csv"
    with open(path, "w", encoding="utf-8", newline="") as file:
        writer = csv.DictWriter(file, COLUMNS)
        writer.writeheader()
        writer.writerows(sent)
    told = sum(row["Title"] in named for row in sent)
    received = read_receipt(mine, path, archive="Port Chalmers Museum")
    assert (received.references, received.remarks, received.refused) == (told, 1, ())
    assert read_receipt(mine, path, archive="Port Chalmers Museum").references == 0
    remarked = [found.finding.message for found in check(mine) if found.finding.rule == "archive.remark"]
    assert any("remarks of Box 1: “Its lid is torn”" in words for words in remarked)

    transfer(mine, two, order=TransferOrder(archive=museum, earlier=one))
    for part in ("open", "closed"):
        home = two / part / "data/metadata"
        root = etree.parse(home / "finding-aid.ead3.xml").getroot()
        (series,) = [c for c in root.iterfind(".//{*}dsc/{*}c") if c.findtext("{*}did/{*}container") == "1"]
        codes = [(code.text, code.get("localtype")) for code in series.iterfind("{*}did/{*}unitid")]
        assert codes == [("MS-0106/1", "the archive's reference"), ("TR/1", None)]
        (row,) = [row for row in table(home / "inventory.csv") if row["Where it lies"] == "Box 1"]
        assert row["Reference code"] == row["The archive's reference"] == "MS-0106/1"
    again = [row["The archive's reference"] for row in table(two / "open/data/metadata/receipt.csv")
             if row["Identifier"] == box["Identifier"]]  # fmt: skip
    assert again == ["MS-0106/1"]
    remarks = table(two / "closed/data/metadata/remarks.csv")
    assert [(row["Identifier"], row["Remark"]) for row in remarks] == [(box["Identifier"], "Its lid is torn")]
    rebuild(tmp_path / "again", two, also=[one], on_day=ON)
    with open_collection(tmp_path / "again", write=False, on_day=ON) as made:
        told_there = container_references(made, seen_by(made, To.OUTSIDE))
        assert {Mark(path).long: views[0].words for path, views in told_there.items()} == {
            title: words for title, words in named.items() if title in {row["Title"] for row in sent}
        }
        assert "archive.remark" in {found.finding.rule for found in check(made)}
        labels(made, tmp_path / "labels.pdf")
    assert "archive MS-0106/1" in PdfReader(tmp_path / "labels.pdf").pages[0].extract_text()
