"""What is not the donor's to give: common practice, no source. A deed gives what the donor owns."""

import csv
import shutil
from collections.abc import Iterator
from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest
from lxml import etree
from pypdf import PdfReader
from tests.every_row import every_row

from boxlore.core.crosswalk.receiving_archive import Archive
from boxlore.core.statements import Kind, Subject
from boxlore.tasks.archive.originals_of_others import asked_of_originals, lent_items
from boxlore.tasks.archive.rebuild import rebuild
from boxlore.tasks.archive.transfer import TransferOrder, transfer
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import Collection, open_collection
from boxlore.tasks.originals.housing_changes import give_back, lend
from boxlore.tasks.telling.statements import Teller, Telling

ON = date(2026, 11, 25)
MUSEUM = Archive(repository="Port Chalmers Museum", access="Nach Anmeldung.", use="Nur privat.", language="de")
ORDER = TransferOrder(archive=MUSEUM)
LENDER = "Oda Lepik of Kopli"


@pytest.fixture
def mine(small_family: Path, tmp_path: Path) -> Iterator[Collection]:
    shutil.copytree(small_family, tmp_path / "mine")
    with open_collection(tmp_path / "mine", on_day=ON) as collection:
        yield collection


def item(collection: Collection, number: str) -> Subject:
    return find_item(collection, number)


def told(package: Path, part: str) -> dict[str, dict[str, str]]:
    with open(package / part / "data/metadata/inventory.csv", encoding="utf-8-sig", newline="") as file:
        return {row["Number"]: row for row in csv.DictReader(file)}


def deed(package: Path, part: str = "closed") -> str:
    pages = PdfReader(package / part / "data/forms/deed-of-gift.pdf").pages
    return " ".join("".join(page.extract_text() for page in pages).split())


def test_what_somebody_lent_is_not_given(mine: Collection, tmp_path: Path) -> None:
    """Also where it was given back since: then it is not there to be given. Who lent it goes to no archive."""
    transfer(mine, tmp_path / "0", order=ORDER)
    assert "are given." in deed(tmp_path / "0") and "lent" not in deed(tmp_path / "0")
    lend(mine, [item(mine, "TRA-0001"), item(mine, "TRA-0002")], LENDER, None)
    give_back(mine, [item(mine, "TRA-0002")], ON)
    made = transfer(mine, tmp_path / "1", order=ORDER)
    assert [found.message.partition(":")[0] for found in made.findings if found.rule == "original.lent"] == [
        "TRA-0001 and TRA-0002"
    ]
    but_for = ", but for the originals of 2 items, which somebody lent (TRA-0001 and TRA-0002)"
    for part in ("open", "closed"):
        assert f"are given{but_for}." in deed(tmp_path / "1", part)
        page = (tmp_path / "1" / part / "README.html").read_text("utf-8")
        assert f"handed over with it{but_for}." in page
        assert '<q lang="de">Nach Anmeldung. Nur privat.</q>' in page  # the archive's own words, HTML 3.2.6.2 (lang)
        where = {number: row["Location of originals"] for number, row in told(tmp_path / "1", part).items()}
        assert where["TRA-0001"] == where["TRA-0002"] == "not handed over: it belongs to somebody who lent it"
        assert where["TRA-0003"] == "handed over with this package"
        aid = etree.parse(tmp_path / "1" / part / "data/metadata/finding-aid.ead3.xml")
        lying = {c.findtext("{*}did/{*}unitid"): bool(c.findall("{*}did/{*}container"))
                 for c in aid.iterfind(".//{*}c[@level='item']")}  # fmt: skip
        assert lying == {"TRA-0001": False, "TRA-0002": False, "TRA-0003": True}
        assert f"{but_for}." in aid.findtext(".//{*}acqinfo/{*}p")
        assert not [path for path in (tmp_path / "1" / part).rglob("*.*") if LENDER.encode() in path.read_bytes()]

    # a collection made again does not give it away either, though it does not know who lent it
    rebuild(tmp_path / "again", tmp_path / "1", on_day=ON)
    with open_collection(tmp_path / "again", on_day=ON) as again:
        transfer(again, tmp_path / "2", order=ORDER)
    assert f"are given{but_for}." in deed(tmp_path / "2")

    # scans alone touch no original, and what its lender has given since is lent no more
    transfer(mine, tmp_path / "3", order=replace(ORDER, originals=False))
    assert "lent" not in deed(tmp_path / "3")
    for number in ("TRA-0001", "TRA-0002"):
        Teller(mine).tell(item(mine, number), "lender", "no loan", Telling())
    made = transfer(mine, tmp_path / "4", order=ORDER)
    assert "lent" not in deed(tmp_path / "4") and not [f for f in made.findings if f.rule == "original.lent"]


def test_what_was_given_and_turns_out_to_be_lent_is_asked_back(mine: Collection, tmp_path: Path) -> None:
    transfer(mine, tmp_path / "1", order=ORDER)
    lend(mine, [item(mine, "TRA-0001")], LENDER, None)
    made = transfer(mine, tmp_path / "2", order=replace(ORDER, earlier=tmp_path / "1"))
    (asked,) = [found.message for found in made.findings if found.rule == "original.asked_back"]
    assert "TRA-0001 was handed over on 2026-11-25, and somebody lent it" in asked and "lender “no loan”" in asked
    for part in ("open", "closed"):
        data = tmp_path / "2" / part / "data/metadata"
        with open(data / "withdraw.csv", encoding="utf-8-sig", newline="") as file:
            back = [row["Number"] for row in csv.DictReader(file) if row["What to do"] == "return"]
        with open(data / "changes.csv", encoding="utf-8-sig", newline="") as file:
            why = {row["Number"]: row["Why"] for row in csv.DictReader(file)}
        assert back == ["TRA-0001"] and "that somebody lent it" in why["TRA-0001"]
        row = told(tmp_path / "2", part)["TRA-0001"]
        assert row["Location of originals"].startswith("handed over on 2026-11-25, asked back by ")
        assert "is asked back: it belongs to somebody who lent it." in row["Custodial history"]
        assert "kept by the family" not in row["Conditions governing access"]
    assert "TRA-0001 belongs to somebody who lent it: it was not the donor's to give" in deed(tmp_path / "2")

    # asked for once; a collection made again knows that it is lent
    Teller(mine).tell(item(mine, "TRA-0002"), "story", "Told since.", Telling(audience="anyone"))
    made = transfer(mine, tmp_path / "3", order=replace(ORDER, earlier=tmp_path / "2"))
    assert not [found for found in made.findings if found.rule == "original.asked_back"]
    rebuild(tmp_path / "again", tmp_path / "3", also=[tmp_path / "1"], on_day=ON)
    with open_collection(tmp_path / "again", write=False, on_day=ON) as again:
        assert len(lent_items(again)) == 1


def test_what_lies_in_a_lent_box_is_lent(mine: Collection) -> None:
    box = next(ident for ident, path in mine.store.containers() if len(path) == 1)
    act = mine.act("a box is lent")
    act.state(Subject(Kind.CONTAINER, box), "lender", LENDER)
    act.done()
    inside = {number for number, ident in mine.store.items() if ident in lent_items(mine)}
    assert inside == {"TRA-0001", "TRA-0002", "TRA-0003"}


OWNERS = [
    ("", "the Rourkes", False), ("Rourke family", "Rourke family, Port Chalmers", False),
    ("the Rourkes", "the Rourkes", False), ("Oda Lepik", "the Rourkes", True), ("Oda Lepik", "", True),
    ("no Oda Lepik", "the Rourkes", False),
]  # fmt: skip
"""The owner told, who holds the originals, whether the keeper is asked."""


@every_row(("owner", "holder", "asked"), OWNERS)
def test_another_owner_is_asked_about(owner: str, holder: str, asked: bool, small_family: Path, tmp_path: Path) -> None:
    shutil.copytree(small_family, tmp_path / owner / holder / "mine")
    with open_collection(tmp_path / owner / holder / "mine", on_day=ON) as collection:
        collection.settings = replace(collection.settings, holder=holder)
        if owner:
            Teller(collection).tell(item(collection, "TRA-0001"), "owner", owner, Telling())
        every = frozenset(ident for _, ident in collection.store.items())
        found = [found.rule for found in asked_of_originals(collection, every, frozenset())]
    assert found == ["original.owner"] * asked
