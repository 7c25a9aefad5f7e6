"""Backs that come later than their fronts: three and three give three items (rules of our own, no outside source)."""

import hashlib
import json
import os
import pty
import subprocess
import sys
from pathlib import Path

import pytest
from PIL import Image
from tests.every_row import every_row

from boxlore.core.fields.pictures import CAME_FROM_WORDS, CameFrom
from boxlore.core.statements import Kind, Subject
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import open_collection, start
from boxlore.tasks.collection.records_for_outputs import records
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.people.registry import take_back
from boxlore.tasks.scans.intake import IntakeOptions, IntakeResult, take_in
from boxlore.tasks.scans.later_scans import came_from
from boxlore.tasks.scans.pairing import Planned, alternating, by_suffix, read_items
from boxlore.tasks.strike import meant, strike_out, targets


@pytest.fixture
def home(tmp_path: Path) -> Path:
    start(tmp_path / "tamm", Settings(title="Tamm and Rourke", prefix="TR"))
    return tmp_path / "tamm"


def picture(path: Path) -> Path:
    """A picture whose bytes no other path has."""
    path.parent.mkdir(exist_ok=True)
    digest = hashlib.sha256(str(path).encode()).digest()
    Image.frombytes("L", (8, 4), digest).resize((80, 60)).save(path)
    return path


def take(home: Path, *paths: Path, plan: list[Planned] | None = None, **options: object) -> list[IntakeResult]:
    with open_collection(home) as collection:
        wanted = IntakeOptions(**options)  # type: ignore[arg-type]  # options by name
        return take_in(collection, by_suffix(paths) if plan is None else plan, wanted)


def states(results: list[IntakeResult]) -> list[str]:
    return [result.state for result in results]


def sides(home: Path) -> list[list[str]]:
    with open_collection(home, write=False) as collection:
        return [[scan.side for scan in record.scans] for record in records(collection)]


NAMES = [
    ("harbour.png", "harbour_b.png"),
    ("harbour.png", "harbour-b.png"),
    ("harbour.png", "harbour verso.png"),
    ("harbour.png", "harbour_BACK.tif"),
    ("harbour_r.png", "harbour_v.png"),
    ("harbour front.png", "harbour back.png"),
    ("harbour.bak.png", "harbour.bak_v.png"),
]


@pytest.mark.parametrize("copy", [True, False], ids=["copied", "in place"])
@pytest.mark.parametrize(("front", "back"), NAMES)
def test_a_back_that_comes_later_joins_its_front(home: Path, tmp_path: Path, front: str, back: str, copy: bool) -> None:
    fronts = [picture(tmp_path / "in" / name) for name in (front, "other.png")]
    assert states(take(home, *fronts, copy=copy)) == ["taken", "taken"]
    joined = take(home, picture(tmp_path / "in" / back), copy=copy)
    assert [(result.state, result.why) for result in joined] == [("joined", "the back of an item that was here")]
    assert sorted(sides(home)) == [["recto"], ["recto", "verso"]]
    assert states(take(home, *fronts, tmp_path / "in" / back, copy=copy)) == ["known", "known"]


@pytest.mark.parametrize("copy", [True, False], ids=["copied", "in place"])
def test_a_folder_that_got_its_backs_later_is_taken_whole_again(home: Path, tmp_path: Path, copy: bool) -> None:
    fronts = [picture(tmp_path / "in" / f"{at}.png") for at in range(3)]
    take(home, *fronts, copy=copy)
    backs = [picture(tmp_path / "in" / f"{at}_b.png") for at in range(3)]
    assert states(take(home, *fronts, *backs, copy=copy)) == ["joined"] * 3
    assert sides(home) == [["recto", "verso"]] * 3


def test_a_front_that_comes_later_joins_its_back(home: Path, tmp_path: Path) -> None:
    take(home, picture(tmp_path / "in" / "harbour_b.png"), copy=True)
    assert states(take(home, picture(tmp_path / "in" / "harbour.png"), copy=True)) == ["joined"]
    assert sides(home) == [["recto", "verso"]]
    assert sorted(path.name for path in (home / "scans").iterdir()) == ["TRA-0001_b.png", "TRA-0001_f.png"]


ONE_NAME = (
    # files taken at once, files taken after, the sides of the items in the end
    (("Gr\u00fcn_f.png", "Gru\u0308n_b.png"), (), [["recto", "verso"]]),  # NFC and NFD, UAX #15
    (("Gru\u0308n.png", "GR\u00dcN_B.png"), (), [["recto", "verso"]]),
    (("IMG.png", "img_b.png"), (), [["recto", "verso"]]),
    (("IMG.png", "IMG_b.png", "img.png"), (), [["recto", "verso"], ["recto"]]),
    (("Gru\u0308n.png",), ("Gr\u00fcn_b.png",), [["recto", "verso"]]),
    (("IMG.png",), ("img_b.png",), [["recto", "verso"]]),
    (("img_b.png",), ("IMG.png",), [["recto", "verso"]]),
)


@every_row(("at_once", "after", "items"), ONE_NAME)
def test_a_name_is_one_in_every_normal_form_and_case(
    tmp_path_factory: pytest.TempPathFactory, at_once: tuple[str, ...], after: tuple[str, ...], items: list[list[str]]
) -> None:
    folder = tmp_path_factory.mktemp("names")
    start(folder / "tamm", Settings(title="Tamm and Rourke", prefix="TR"))
    for names in filter(None, (at_once, after)):
        take(folder / "tamm", *(picture(folder / "in" / name) for name in names), copy=at_once[0] != "IMG.png")
    assert sides(folder / "tamm") == items


def test_a_name_written_before_this_rule_is_known_again(home: Path, tmp_path: Path) -> None:
    """Older collections keep the digest of a name as it was written."""
    front = picture(tmp_path / "in" / "IMG.png")
    take(home, front, copy=True)
    with open_collection(home) as collection:
        (scan,) = [ident for ident, _, _ in collection.store.words_of(("came_from",))]
        written = hashlib.sha256(b"IMG").hexdigest()[:16]
        act = collection.act("as it was")
        folder = CAME_FROM_WORDS.write(CameFrom(came_from(front).folder, written))
        (before,) = collection.store.history(scan, "came_from")
        act.state(Subject(Kind.SCAN, scan), "came_from", folder, replaces=before.statement.id)
        act.done()
    assert states(take(home, picture(tmp_path / "in" / "IMG_b.png"), copy=True)) == ["joined"]


def test_files_of_a_table_are_found_in_any_normal_form(home: Path, tmp_path: Path) -> None:
    picture(tmp_path / "in" / "Gru\u0308n.png")
    table = tmp_path / "in" / "items.csv"
    table.write_text("item,file,side\na,Gr\u00fcn.png,recto\nb,gone.png,recto\n", "utf-8")
    assert states(take(home, plan=read_items(table, table.parent))) == ["taken", "refused"]


@pytest.mark.parametrize("copy", [True, False], ids=["copied", "in place"])
def test_a_second_back_of_a_front_is_no_item_of_its_own_unasked(home: Path, tmp_path: Path, copy: bool) -> None:
    folder = tmp_path / "in"
    names = ("mill.png", "mill_b.png", "mill-back.png", "MILL_v.png")
    results = take(home, *(picture(folder / name) for name in names), copy=copy)
    assert sorted(states(results)) == ["refused", "refused", "taken"]
    assert [result.why for result in results if "mill_b." in result.why] == [
        "mill_b.png is called the back of TRA-0001, which has another back already. "
        "If it is of another original, say --backs apart for an item of its own."
    ]
    assert states(take(home, picture(tmp_path / "later" / "mill_b.png"), copy=copy)) == ["refused"]
    assert states(take(home, folder / "mill-back.png", copy=copy)) == ["known"]
    assert sides(home) == [["recto", "verso"]]
    assert states(take(home, folder / "mill_b.png", copy=copy, backs="apart")) == ["taken"]


def test_by_turns_and_by_a_table_they_join_too(home: Path, tmp_path: Path) -> None:
    folder = tmp_path / "in"
    front, back, sheet, rear = (picture(folder / name) for name in ("1.png", "2.png", "3.png", "4.png"))
    take(home, front)
    assert states(take(home, plan=alternating([front, back]))) == ["joined"]
    table = folder / "items.csv"
    heading = "item,file,side,area,title\n"
    fronts = "a,3.png,recto,0 0 0.5 1,Left\nb,3.png,recto,0.5 0 0.5 1,Right\n"
    table.write_text(heading + fronts, "utf-8")
    assert states(take(home, plan=read_items(table, folder))) == ["taken", "taken"]
    table.write_text(heading + fronts + "a,4.png,verso,0.5 0 0.5 1,\nb,4.png,verso,0 0 0.5 1,\n", "utf-8")
    assert states(take(home, plan=read_items(table, folder))) == ["joined", "joined"]
    assert sides(home) == [["recto", "verso"]] * 3
    with open_collection(home, write=False) as collection:
        titles = [[view.words for view in record.all("title")] for record in records(collection)]
    assert titles == [[], ["Left"], ["Right"]]  # told once
    assert sheet.exists() and rear.exists()


def test_a_file_called_by_a_number_joins_that_item(home: Path, tmp_path: Path) -> None:
    take(home, plan=[Planned(key="without scan 1")])
    assert states(take(home, picture(tmp_path / "shop" / "TRA-0001_f.png"), copy=True)) == ["joined"]
    assert states(take(home, picture(tmp_path / "shop" / "tra-0001_b.png"), copy=True)) == ["joined"]
    assert sides(home) == [["recto", "verso"]]
    table = tmp_path / "shop" / "items.csv"
    take(home, plan=[Planned(key="without scan 2")])
    picture(tmp_path / "shop" / "x.png")
    table.write_text("item,file,side,story,size\nTRA-0002,x.png,verso,Told since,90 x 60\n", "utf-8")
    assert states(take(home, plan=read_items(table, table.parent))) == ["joined"]
    with open_collection(home, write=False) as collection:
        record = next(record for record in records(collection) if record.number == "TRA-0002")
    assert record.words("story") == "Told since" and record.size_mm == (90, 60)


def test_a_back_called_by_the_number_of_no_item_is_no_item(home: Path, tmp_path: Path) -> None:
    back = picture(tmp_path / "shop" / "TRA-0123_b.png")
    (refused,) = take(home, back, copy=True)
    assert (refused.state, "the back of TRA-0123, and no item here has that number" in refused.why) == ("refused", True)
    assert states(take(home, picture(tmp_path / "fronts" / "IMG-0123_f.png"), copy=True)) == ["taken"]
    assert states(take(home, back, copy=True, backs="apart")) == ["taken"]
    assert states(take(home, picture(tmp_path / "shop" / "TRA-0001_b.png"), copy=True)) == ["joined"]
    (refused,) = take(home, picture(tmp_path / "again" / "TRA-0001_b.png"), copy=True)
    assert (refused.state, "which has another back already" in refused.why) == ("refused", True)


def test_the_same_name_in_another_folder_is_asked_about(home: Path, tmp_path: Path) -> None:
    take(home, picture(tmp_path / "fronts" / "001.png"), copy=True)
    back = picture(tmp_path / "backs" / "001_b.png")
    (unsure,) = take(home, back, copy=True)
    assert (unsure.state, unsure.why) == ("unsure", "001_b.png may be the back of TRA-0001, whose file lies elsewhere.")
    assert sides(home) == [["recto"]] and len(list((home / "scans").iterdir())) == 1
    assert states(take(home, back, copy=True, backs="join")) == ["joined"]
    assert sides(home) == [["recto", "verso"]]


def test_fronts_and_backs_of_two_folders_in_one_run(home: Path, tmp_path: Path) -> None:
    fronts = [picture(tmp_path / "fronts" / f"{at}.png") for at in range(3)]
    backs = [picture(tmp_path / "backs" / f"{at}_b.png") for at in range(3)]
    assert sorted(states(take(home, *fronts, *backs, backs="join"))) == ["joined"] * 3 + ["taken"] * 3
    assert sides(home) == [["recto", "verso"]] * 3


def test_the_keeper_answers_one_by_one(home: Path, tmp_path: Path) -> None:
    fronts = [picture(tmp_path / "fronts" / f"{at}.png") for at in range(2)]
    take(home, *fronts)
    plan = by_suffix([picture(tmp_path / "backs" / f"{at}_b.png") for at in range(2)])
    answers = {plan[0].key: True, plan[1].key: False}
    assert states(take(home, plan=plan, answers=answers)) == ["joined", "taken"]


def test_what_may_belong_to_several_is_refused_with_their_numbers(home: Path, tmp_path: Path) -> None:
    take(home, picture(tmp_path / "box1" / "001.png"), picture(tmp_path / "box2" / "001.png"))
    (refused,) = take(home, picture(tmp_path / "backs" / "001_b.png"), backs="join")
    assert refused.state == "refused"
    assert refused.why.startswith("001_b.png may be the back of TRA-0001, TRA-0002. Name its item by the number")
    assert states(take(home, tmp_path / "backs" / "001_b.png", backs="apart")) == ["taken"]


def test_a_second_back_is_refused_unless_it_is_of_another_original(home: Path, tmp_path: Path) -> None:
    front, back = picture(tmp_path / "in" / "a.png"), picture(tmp_path / "in" / "a_b.png")
    take(home, front, back, copy=True)
    Image.radial_gradient("L").save(back)
    (refused,) = take(home, front, back, copy=True)
    assert (refused.state, refused.why) == (
        "refused",
        "TRA-0001 has a back already, and a_b.png is another. "
        "If it is a better scan of it, say --replace; if it is of another original, say --backs apart.",
    )
    assert states(take(home, front, back, copy=True, backs="apart")) == ["taken"]


def test_one_bare_back_may_be_that_of_many_fronts(home: Path, tmp_path: Path) -> None:
    """Two prints whose backs are blank and come out the same, byte for byte."""
    one, two = picture(tmp_path / "in" / "1.png"), picture(tmp_path / "in" / "2.png")
    for name in ("1_b.png", "2_b.png"):
        Image.new("L", (60, 40), 250).save(tmp_path / "in" / name)
    take(home, one, tmp_path / "in" / "1_b.png", copy=True)
    assert states(take(home, two, tmp_path / "in" / "2_b.png", copy=True)) == ["taken"]
    assert sides(home) == [["recto", "verso"]] * 2


def test_an_item_that_was_taken_back_waits_for_nothing(home: Path, tmp_path: Path) -> None:
    take(home, picture(tmp_path / "in" / "a.png"), copy=False)
    with open_collection(home) as collection:
        act = collection.store.history(find_item(collection, "TRA-0001").id, "number")[0].statement.act
        take_back(collection, act)
    assert states(take(home, picture(tmp_path / "in" / "a_b.png"))) == ["taken"]


@pytest.mark.parametrize("copy", [True, False], ids=["copied", "in place"])
def test_of_a_pair_with_a_damaged_back_nothing_is_stated(home: Path, tmp_path: Path, copy: bool) -> None:
    front, back = picture(tmp_path / "in" / "a.png"), tmp_path / "in" / "a_b.png"
    back.write_bytes(b"no picture")
    good = picture(tmp_path / "in" / "c.png")
    refused, taken = take(home, front, back, good, copy=copy)
    assert (refused.state, taken.state, taken.number) == ("refused", "taken", "TRA-0001")
    assert "a_b.png" in refused.why
    with open_collection(home, write=False) as collection:
        assert [facts.path.rpartition("/")[2] for _, facts in collection.store.scans()] == (
            ["TRA-0001_f.png"] if copy else ["c.png"]
        )
    assert len(list((home / "scans").iterdir())) == copy
    picture(back)
    assert states(take(home, front, back, good, copy=copy)) == ["taken", "known"]
    assert sides(home) == [["recto"], ["recto", "verso"]]


def test_the_name_of_a_file_is_kept_of_a_copy_until_it_is_struck(home: Path, tmp_path: Path) -> None:
    take(home, picture(tmp_path / "in" / "Ants Saar owed us money.png"), copy=True)
    with open_collection(home) as collection:
        (hit,) = collection.store.search("saar")
        assert (hit.field, hit.words, hit.source) == ("file_name", "Ants Saar owed us money.png", "file")
        found = targets(collection, meant(collection, "TRA-0001", "file_name"), "file_name")
        assert strike_out(collection, [target.statement for target in found]).finished
    assert b"Ants Saar" not in (home / "collection.sqlite").read_bytes()


def test_without_a_terminal_it_is_said_what_to_say_and_at_one_it_is_asked(home: Path, tmp_path: Path) -> None:
    fronts = [picture(tmp_path / "fronts" / name) for name in ("1.png", "2.png")]
    take(home, *fronts, copy=True)
    backs = [picture(tmp_path / "backs" / name) for name in ("1_b.png", "2_b.png")]
    program = "from boxlore.cli.main import main; main()"
    command = [sys.executable, "-c", program, "-c", str(home), "intake", *map(str, backs), "--copy"]
    ran = subprocess.run(command, stdin=subprocess.DEVNULL, capture_output=True, text=True, check=False)
    assert ran.returncode == 1
    assert "whose file lies elsewhere. Say --backs join, or --backs apart for an item of its own." in ran.stderr
    ours, theirs = pty.openpty()
    os.write(ours, b"y\ny\nn\n")
    ran = subprocess.run([*command, "--json"], stdin=theirs, capture_output=True, text=True, check=False)
    os.close(ours), os.close(theirs)
    assert ran.returncode == 0 and "Does it join it?" in ran.stderr
    assert [json.loads(line)["state"] for line in ran.stdout.splitlines()] == ["joined", "taken"]
    assert sorted(sides(home)) == [["recto"], ["recto", "verso"], ["verso"]]
