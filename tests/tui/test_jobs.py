"""What the menu starts, run as the menu runs it: each form's answers as they first stand (our own contract)."""

import csv
import re
from collections.abc import Callable
from pathlib import Path

import pikepdf
import pytest
from PIL import Image

from boxlore.core.errors import BoxloreError, WrongUse
from boxlore.core.findings import Finding, Severity
from boxlore.core.sitting.worksheet_codes import CodedLine, write_code
from boxlore.core.statements import Kind, Subject
from boxlore.tasks.check import ItemFinding, check, grouped
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.collection.progress import QUIET
from boxlore.tasks.collection.records_for_outputs import Selection, records
from boxlore.tasks.originals.housing_check import check_housing
from boxlore.tasks.sitting.session import Sitting
from boxlore.tasks.telling.statements import Teller, Telling
from boxlore.tui.desktop import folder_named
from boxlore.tui.menu_tasks.table import TASKS, of_group
from boxlore.tui.menu_tasks.task import Group, selection_of
from boxlore.tui.screens.menu import GROUPS, LAST, SCREEN, THIS

ONE_SHOWN = "1 photograph; 1 left out: 1 has no scan of its front."


def start(collected: Path, task: str, /, **answers: str) -> list[str]:
    """The task with its form's own answers but for `answers`; the sentences it ends in."""
    with open_collection(collected) as collection:
        first = {blank.name: blank.text for blank in TASKS[task].blanks(collection)}
        return TASKS[task].job(collection, first | answers, QUIET)


@pytest.fixture
def folder(bare: Callable[[int], Path], tmp_path: Path) -> Path:
    """One item without a scan, one with a front and a back taken in by the menu."""
    scans = tmp_path / "from the scanner"
    scans.mkdir()
    for name, colour in (("quay_f.jpg", (90, 70, 50)), ("quay_b.jpg", (230, 220, 200))):
        Image.new("RGB", (60, 40), colour).save(scans / name)
    folder = bare(1)
    assert start(folder, "intake", path=str(scans), box="3", folder="12") == ["1 photograph taken in, with its back."]
    return folder


def test_pictures_are_taken_in_by_the_menu(folder: Path) -> None:
    with open_collection(folder, write=False) as collection:
        number, mark, scans = [(one.number, str(one.mark), one.scans) for one in records(collection)][-1]
    assert (number, mark, [scan.side for scan in scans]) == (
        "TRA-0002",
        "Box 3 / Folder 12 / Item 1",
        ["recto", "verso"],
    )
    assert all((folder / scan.path).is_file() and scan.path.startswith("scans/") for scan in scans)


def test_what_the_menu_writes_is_there(folder: Path) -> None:
    assert start(folder, "copies") == [f"In {folder / 'copies'}: 2 written."]
    assert len(list((folder / "copies").rglob("*.jpg"))) == 2
    assert start(folder, "sheet")[0] == f"{folder / 'print/album.pdf'}: {ONE_SHOWN}"
    with pikepdf.open(folder / "print/album.pdf") as pdf:
        assert len(pdf.pages) >= 1
    history = "They came from Reval in 1949."
    assert start(folder, "transfer", originals="yes", history=history)[0].startswith(f"{folder / 'transfer/open'}: ")
    assert (folder / "transfer/open/manifest-sha512.txt").is_file()
    assert history in (folder / "transfer/open/data/metadata/finding-aid.ead3.xml").read_text("utf-8")
    with open_collection(folder) as collection:  # it was asked once
        assert collection.settings.history == history
        assert "history" not in [blank.name for blank in TASKS["transfer"].blanks(collection)]


def test_a_report_says_the_whole_path(folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Also where the collection was opened by a relative one: its folder is opened by it."""
    monkeypatch.chdir(folder.parent)
    said = start(Path(folder.name), "labels")
    assert said[0].startswith(f"{folder / 'print/labels.pdf'}: ") and folder_named(said) == folder / "print"


def test_the_log_of_a_sitting_is_written(folder: Path) -> None:
    with pytest.raises(WrongUse, match="There was no sitting yet"):
        start(folder, "log")
    with open_collection(folder) as collection:
        sitting = Sitting(collection, narrator="Leida Rourke")
        sitting.begin()
        item = collection.store.item_by_number("TRA-0001") or ""
        sitting.show(item)
        sitting.keep(sitting.record(item), sitting.prompts[0], "It rained.")
    said = start(folder, "log")
    assert said[1] == "No recording of this sitting is kept, so there are no chapters."
    written = Path(said[0].removesuffix(": what was told, line by line, with its time."))
    assert written.parent == folder / "log" and "It rained." in written.read_text("utf-8-sig")


def test_two_desks_work_apart_and_are_brought_together(folder: Path, tmp_path: Path) -> None:
    """A working copy, something told in it and taken in here; the second time there is nothing new."""
    for task in ("working_copy", "join"):
        with pytest.raises(WrongUse, match="No folder is named"):
            start(folder, task)
    other = tmp_path / "stick" / "photographs"
    made = start(folder, "working_copy", folder=str(other))
    assert made[0].startswith(f"A working copy of {folder} is in {other}: ") and "series B" in made[0]
    assert made[-1].startswith("Later, “Take in”, “From a working copy” brings together")
    with open_collection(other) as collection:
        item = Subject(Kind.ITEM, collection.store.item_by_number("TRA-0001") or "")
        Teller(collection).tell(item, "story", "It rained.", Telling())
    joined = start(folder, "join", folder=str(other))
    assert joined[0].startswith(f"Joined from {other}: ") and "1 statement" in joined[0]
    assert start(folder, "join", folder=str(other)) == [f"There is nothing in {other} that is not here."]
    with open_collection(folder, write=False) as collection:
        assert "It rained." in [record.words("story") for record in records(collection)]


def test_a_parcel_is_made_and_taken_in(folder: Path, tmp_path: Path) -> None:
    for task in ("parcel", "take_in_parcel"):
        with pytest.raises(WrongUse, match="No file is named"):
            start(folder, task, file=" ")
    path = tmp_path / "for aksel.zip"
    said = start(folder, "parcel", file=str(path), to="family", new_copy="yes", scans="no")
    assert "for the family" in said[0] and any("Series B is set aside" in words for words in said)
    said = start(folder, "take_in_parcel", file=str(path))
    assert said[1] == f"There is nothing in {path} that is not here."
    with pytest.raises(WrongUse, match="Write it as YYYY-MM-DD"):
        start(folder, "parcel", file=str(tmp_path / "b.zip"), since="last week")


def test_what_the_menu_looks_over(folder: Path) -> None:
    with open_collection(folder) as collection:
        groups = grouped(check(collection))
        assert {row.number for group in groups for row in group.findings} >= {"TRA-0001", "TRA-0002"}
        assert [group.rule for group in groups if group.rule.endswith("missing")][-1] == groups[-1].rule
        act = collection.act("told")
        act.state(Subject(Kind.ITEM, collection.store.item_by_number("TRA-0001") or ""), "enclosure", "PVC sleeve")
        act.done()
        (number,) = [row.number for row in check_housing(collection) if "PVC" in row.finding.message]
        assert number == "TRA-0001"
    work, order = folder / "print/work.csv", folder / "print/scanning.csv"
    lines = start(folder, "lists", work=str(work), order=str(order))
    assert lines[0].startswith(f"{work}: ") and lines[1].startswith(f"{order}: ")
    assert "TRA-0001" in work.read_text(encoding="utf-8")
    assert list(csv.reader(order.read_text(encoding="utf-8").splitlines()))


def test_boxes_are_joined_renumbered_and_closed_up_by_the_menu(folder: Path) -> None:
    for box in ("4", "5"):
        start(folder, "without_scan", count="2", box=box)
    shown = "This is what would change; nothing is changed yet."
    assert start(folder, "merge", what="5", into="4", do="no")[0] == shown
    assert start(folder, "merge", what="5", into="4")[0] == shown, "Enter alone only shows what would change"
    assert start(folder, "merge", what="5", into="4", do="yes")[0].startswith("Done: merge.")
    assert start(folder, "renumber", pairs="4=7; 3=4")[0] == shown
    assert start(folder, "renumber", pairs="4=7; 3=4", do="yes")[0].startswith("Done: renumber.")
    start(folder, "move", what="TRA-0003", into="4", do="yes")
    assert start(folder, "close_up", mark="7")[0] == shown
    assert start(folder, "close_up", mark="7", do="yes")[0].startswith("Done: ")
    assert start(folder, "close_up", mark="7", do="yes") == ["Nothing would change."]
    with open_collection(folder, write=False) as collection:
        kept = {record.number: record.mark.short for record in records(collection) if record.mark}
    assert start(folder, "take_back", do="no")[0].endswith("; nothing is changed yet.")
    assert start(folder, "take_back")[0].startswith("This is what would be taken back: ")
    for _ in range(3):
        assert start(folder, "take_back", do="yes")[0].startswith("Taken back: ")
    with open_collection(folder, write=False) as collection:
        before = {record.number: record.mark.short for record in records(collection) if record.mark}
    assert before["TRA-0004"] == "4/2" and before["TRA-0002"] == "3/12/1", before
    assert kept == {"TRA-0002": "4/12/1", "TRA-0003": "4/1", "TRA-0004": "7/1", "TRA-0005": "7/2", "TRA-0006": "7/3"}


@pytest.mark.parametrize(
    ("task", "answers", "why"),
    [
        ("merge", {"what": "3"}, "It is not said which is put into which"),
        ("merge", {"what": "3", "into": "3"}, "cannot be put into itself"),
        ("renumber", {}, "It is not said which get new labels"),
        ("renumber", {"pairs": "3"}, "“3” is no pair"),
        ("renumber", {"pairs": "3="}, "“3=” is no pair"),
        ("take_back", {}, "nothing of housing to take back"),
        ("close_up", {}, "No box is named"),
        ("close_up", {"mark": "99"}, "99"),
    ],
)
def test_boxes_that_are_not_named_are_asked_for(folder: Path, task: str, answers: dict[str, str], why: str) -> None:
    with pytest.raises(BoxloreError, match=why):
        start(folder, task, **answers)


def test_every_task_of_the_menu_begins_with_its_form_and_takes_a_stop(folder: Path) -> None:
    """The forms themselves: a name for each line, a value among the choices, and no group empty."""
    with open_collection(folder) as collection:
        for task in TASKS.values():
            blanks = task.blanks(collection)
            assert len({blank.name for blank in blanks}) == len(blanks)
            assert all(not blank.choices or blank.text in dict(blank.choices) for blank in blanks), task.name
    assert {task.group for task in TASKS.values()} == set(Group)


def test_no_hint_of_the_menu_is_cut_short() -> None:
    """Within 80 columns a card has 70: a sign and the key, the names in a column, the hints (`screens/cards`)."""
    cards = [[*GROUPS, *LAST], *([*SCREEN.get(group, ()), *of_group(group).values()] for group in Group), SCREEN[THIS]]
    for card in cards:
        names = max(len(line.name) for line in card)
        for line in card:
            assert 5 + names + 3 + len(line.about) <= 70, f"{line.name}: {line.about}"


RECEIPT = "Number,Identifier,Title,Accession number,The archive's reference,Remarks\nTRA-0002,,,2026-7,MS-7/2,\n"


def test_what_grows_worse_comes_before_what_waits() -> None:
    """Our own contract: mend, then what is urgent, then what found something, questions never asked last."""
    rules = (("date.missing", "ask"), ("housing.pvc", "ask"), ("climate.mould", "ask"), ("scan.changed", "error"))
    found = [ItemFinding(Finding(rule=rule, severity=Severity(level), message=rule), "", "") for rule, level in rules]
    assert [group.rule for group in grouped(found)] == ["scan.changed", "climate.mould", "housing.pvc", "date.missing"]


def test_what_is_printed_and_handed_on_by_the_menu(folder: Path) -> None:
    for task, name in (("slips", "slips.pdf"), ("labels", "labels.pdf"), ("worksheet", "worksheet.pdf")):
        assert start(folder, task)[0].startswith(f"{folder / 'print' / name}: "), task
        with pikepdf.open(folder / "print" / name) as pdf:
            assert len(pdf.pages) >= 1
    assert start(folder, "pages")[0] == f"{folder / 'pages/index.html'}: {ONE_SHOWN}"
    ours = start(folder, "pages", to="family", out="for us", voice="yes")
    assert ours[2].startswith("They hold what only the family may see")
    assert start(folder, "offer")[0] == f"{folder / 'offer'}: 2 photographs, 1 thumbnail."
    answered = (folder / "offer" / "offer.csv").read_text("utf-8-sig").splitlines()
    (folder / "answer.csv").write_text("Number,Wanted\nTRA-0001,no\nTRA-0002,yes\nTRA-0009,yes\n", "utf-8")
    assert answered[0].startswith("Number,")
    assert start(folder, "answer", file="answer.csv")[0] == "1 is wanted, 1 is not."
    (folder / "receipt.csv").write_text(RECEIPT, "utf-8")
    assert "1 reference of the archive" in start(folder, "receipt", file="receipt.csv", name="Port Archive")[0]
    for item, of in (("TRA-0001", "TRA-0001"), ("", "the whole")):
        answered = start(folder, "answer_archive", item=item, text="It was taken from the quay.")
        assert answered == [f"Kept, of {of}: it goes with the next update, in its closed part."]
    start(folder, "copies")
    assert start(folder, "proved") == ["2 copies read.", "All are as they should be."]
    start(folder, "transfer", originals="yes")
    assert start(folder, "proved", folder="transfer") == ["Every file is as its manifests say."]


def test_what_is_taken_in_by_the_menu(folder: Path, tmp_path: Path) -> None:
    assert start(folder, "without_scan", count="3", box="4") == ["3 photographs: TRA-0003 to TRA-0005."]
    assert start(folder, "scan", number="TRA-0003", file=str(tmp_path / "from the scanner" / "quay_f.jpg")) == [
        "TRA-0003: a picture of the same bytes is here already, as TRA-0002."
    ]
    late = tmp_path / "late.jpg"
    Image.new("RGB", (60, 40), (9, 9, 9)).save(late)
    joined = ["TRA-0003: the back of an item that was here."]
    assert start(folder, "scan", number="TRA-0003", file=str(late), what="back") == joined
    scans = tmp_path / "by table"
    scans.mkdir()
    Image.new("RGB", (60, 40), (1, 2, 3)).save(scans / "two.jpg")
    (scans / "items.csv").write_text("item,file\na,two.jpg\nb,gone.jpg\n", "utf-8")
    rows = start(folder, "table", table=str(scans / "items.csv"))
    assert rows[0] == "2 rows: 1 taken, 1 refused." and rows[1].startswith("b: ")
    (tmp_path / "tree.ged").write_text(
        "0 HEAD\n1 GEDC\n2 VERS 5.5.1\n0 @I1@ INDI\n1 NAME Ann /Rourke/\n0 TRLR\n", "utf-8"
    )
    assert start(folder, "tree", file=str(tmp_path / "tree.ged"))[0].startswith("1 person new, 0 changed, 0 as before")
    (tmp_path / "told.csv").write_text("item,field,text\nTRA-0001,story,The quay\nTRA-0001,when?,1\n", "utf-8")
    told = start(folder, "answers", file=str(tmp_path / "told.csv"), by="Ann Rourke")
    assert told[0] == "1 answer taken in, told by Ann Rourke." and told[1].startswith("Line 3: ")
    assert start(folder, "answers", file=str(tmp_path / "told.csv"))[0].startswith("1 answer taken in, told by you.")
    (tmp_path / "old.txt").write_text(f"{write_code(CodedLine('TRA-0001', 'place'), 'TR')}: the quay\n", "utf-8")
    with pytest.raises(WrongUse, match="does not say from which collection"):
        start(folder, "answers", file=str(tmp_path / "old.txt"))
    assert start(folder, "answers", file=str(tmp_path / "old.txt"), here="yes")[0].startswith("1 answer taken in")


def test_what_is_kept_safe_by_the_menu(folder: Path) -> None:
    assert start(folder, "location", name="hall", around="damp, on the floor") == ["Kept: room hall."]
    assert start(folder, "container", mark="5", at="hall", materials="PVC") == ["Kept: Box 5, hall."]
    shown = start(folder, "move", what="TRA-0002", into="5", do="no")
    assert shown[0].startswith("This is what would change") and "TRA-0002: 3/12/1 → 5/1" in shown[1]
    assert start(folder, "move", what="TRA-0002", into="5", do="yes")[0].startswith("Done: move")
    assert start(folder, "move", what="TRA-0002", into="5")[0] == "Nothing would change."
    assert start(folder, "lend", what="TRA-0002", lender="Joan", due="2030-01-02") == [
        "1 thing on loan from Joan, due 2030-01-02."
    ]
    assert start(folder, "lend", what="TRA-0002", how="back") == ["1 thing given back."]
    assert start(folder, "climate") == ["No log is kept yet. Name a logger’s CSV file, and where it lay."]
    assert start(folder, "climate", reading="18C 45%", at="hall")[0] == "hall"
    assert start(folder, "verify") == ["2 scans read; all as they were."]
    assert start(folder, "backup")[0] == f"Nothing was told since the last backup, which lies in {folder / 'backups'}."
    with open_collection(folder) as collection:
        Teller(collection).tell(
            Subject(Kind.ITEM, collection.store.item_by_number("TRA-0001") or ""), "story", "The quay.", Telling()
        )
        made = TASKS["backup"].job(collection, {}, QUIET)
        assert made[0] == f"A backup lies in {folder / 'backups'}." and "“Copy all to another disk”" in made[1]
        Teller(collection).tell(
            Subject(Kind.ITEM, collection.store.item_by_number("TRA-0001") or ""), "occasion", "The regatta", Telling()
        )
        (folder / "backups").rename(folder / "gone")
        (folder / "backups").write_text("in the way", "utf-8")
        (refused,) = TASKS["backup"].job(collection, {}, QUIET)
        assert refused.startswith(f"No backup could be made in {folder / 'backups'}")
        (folder / "backups").unlink()
        (folder / "gone").rename(folder / "backups")
    stick = folder.parent / "stick"
    with pytest.raises(WrongUse, match=r"There is no folder .*stick\. Plug the disk in"):
        start(folder, "copy_away", into=str(stick))
    stick.mkdir()
    away = start(folder, "copy_away", into=str(stick))
    assert away[0].startswith(f"In {stick / folder.name}: all that is told, and ") and "same disk" in away[-2]
    (stick / folder.name / "earlier.txt").write_text("an older note", "utf-8")
    assert "were there already." in (again := start(folder, "copy_away", into=str(stick)))[0]
    assert again[1].startswith("1 file lies there yet from an earlier copy")
    (folder / "log.csv").write_text("Time,Temperature (°C),RH (%)\n2026-03-01 10:00,18,45\n", "utf-8")
    assert start(folder, "climate", log="log.csv", at="hall")[0] == "hall"
    scan = next((folder / "scans").rglob("*.jpg"))
    scan.write_bytes(b"gone")
    assert start(folder, "verify")[0] == "2 scans read; 1 not as they were."


def test_how_good_the_scans_are_and_what_was_taken_off_a_print(folder: Path) -> None:
    assert any(line.startswith("TRA-0002  ") for line in start(folder, "scans"))
    assert start(folder, "scans", what="prints") == [
        "TRA-0002 front: sharp up to 5 × 3 mm, usable up to 8 × 5 mm",  # 60 × 40 pixels at 300 and 200 to an inch
        "TRA-0002 back: sharp up to 5 × 3 mm, usable up to 8 × 5 mm",
    ]
    assert start(folder, "taken_off", item="TRA-0002", kind="letter", text="for Ann") == [
        "TRA-0003: a letter that was attached to TRA-0002. “Move things” says where it lies."
    ]


def test_words_are_struck_everywhere_once_the_list_was_seen(folder: Path) -> None:
    with open_collection(folder) as collection:
        item = Subject(Kind.ITEM, collection.store.item_by_number("TRA-0001") or "")
        Teller(collection).tell(item, "story", "He sold the farm to Pihlak.", Telling())
    seen = start(folder, "strike", words="Pihlak")
    assert seen[0] == "1 answer would be struck; nothing is changed yet."
    assert seen[1] == "  TRA-0001  Story: He sold the farm to Pihlak."
    assert start(folder, "strike", words="Pihlak", do="yes")[0].startswith("Struck.")
    assert start(folder, "strike", words="TRA", do="yes")[0] == "Nothing was struck."  # the numbers stay
    with pytest.raises(WrongUse, match="Those words stand nowhere"):
        start(folder, "strike", words="Pihlak")
    assert b"Pihlak" not in (folder / "collection.sqlite").read_bytes()


REFUSED = [
    ("strike", {}, "No words are given."),
    ("taken_off", {}, "It is not said off which print."),
    ("intake", {}, "No folder is named."),
    ("intake", {"path": ".", "folder": "1"}, "It is not said in which box folder “1” is. Write the box too."),
    ("without_scan", {"count": "2", "folder": "1"}, "It is not said in which box folder “1” is."),
    ("transfer", {}, "It is not said whether the originals are handed over."),
    (
        "transfer",
        {"originals": "before"},
        "It is not said whether the originals are handed over. Name the earlier transfer, or choose yes or no.",
    ),
    ("scan", {}, "No photograph is named."),
    ("scan", {"number": "TRA-0001", "file": "/nowhere/a.jpg"}, "There is no file /nowhere/a.jpg."),
    ("without_scan", {"count": "many"}, "“many” is not how many. Write a number from 1 to 10,000."),
    ("tree", {}, "No file is named. Write its path, or look for it with F3."),
    ("tree", {"file": "/nowhere/tree.ged"}, "There is no file /nowhere/tree.ged."),
    ("sheet", {"which": "box"}, "It is not said which one."),
    ("container", {}, "No box is named."),
    ("location", {}, "It has no name yet."),
    ("move", {"what": "TRA-0001"}, "It is not said what goes where."),
    ("lend", {"what": "TRA-0001"}, "It is not said who lends them."),
    ("lend", {"what": "TRA-0001", "lender": "Joan", "due": "soon"}, "“soon” is not a date. Write it as 2026-12-31."),
    ("climate", {"reading": "18C 45%"}, "It is not said where that was read."),
    ("climate", {"log": "log.csv"}, "It is not said where the log was kept."),
    ("proved", {"folder": "/nowhere"}, "There is no folder /nowhere."),
    ("own_place", {}, "A place needs a name."),
]


@pytest.mark.parametrize(("task", "answers", "why"), REFUSED)
def test_a_wrong_answer_is_refused_with_what_to_do(folder: Path, task: str, answers: dict[str, str], why: str) -> None:
    with pytest.raises(WrongUse, match=re.escape(why)):
        start(folder, task, **answers)


@pytest.mark.parametrize(
    ("which", "of", "wanted"),
    [
        ("all", "", Selection()),
        ("all", "rsa-0001, RSA-0002", Selection(items=("rsa-0001", "RSA-0002"))),
        ("box", "3/12", Selection(box="3", folder="12")),
        ("items", "TRA-0001; 3/12/1", Selection(items=("TRA-0001", "3/12/1"))),
        ("person", "Anna", Selection(person="Anna")),
        ("event", "picnic", Selection(event="picnic")),
        ("words", "quay", Selection(words="quay")),
    ],
)
def test_which_photographs(which: str, of: str, wanted: Selection) -> None:
    assert selection_of({"which": which, "of": of}) == wanted


@pytest.mark.parametrize("of", ["3/12", "Anna", "RSA-0001; Anna"])
def test_what_is_typed_below_all_of_them_is_asked_about(of: str) -> None:
    """Else the whole collection would be handed on to who wanted one photograph."""
    with pytest.raises(WrongUse, match="says all of them"):
        selection_of({"which": "all", "of": of})


def test_a_transfer_that_names_the_living_is_made_once_the_list_was_read(folder: Path) -> None:
    with open_collection(folder) as collection:
        item = Subject(Kind.ITEM, collection.store.item_by_number("TRA-0002") or "")
        Teller(collection).tell(item, "person", "Anna Berg", Telling())
        Teller(collection).tell(item, "story", "Anna Berg laughed.", Telling())
    with pytest.raises(WrongUse, match=r"found 1 living person in [0-9]+ mentions?; each is a row of"):
        start(folder, "transfer", originals="yes")
    assert start(folder, "transfer", originals="yes", read="yes")[0].startswith("Where living people are named: ")


def test_what_stands_under_the_keeper_is_given_to_a_teller(folder: Path) -> None:
    with open_collection(folder) as collection:
        item = Subject(Kind.ITEM, collection.store.item_by_number("TRA-0001") or "")
        Teller(collection).tell(item, "story", "The quay.", Telling())
        Teller(collection).tell(item, "condition", "mould", Telling())  # seen by looking, and nobody's answer
    assert start(folder, "give", name="Leida Rourke", since="2999-01-01") == ["None is there."]
    assert start(folder, "give", name="Leida Rourke") == ["1 answer of the keeper: told by Leida Rourke now."]
    with pytest.raises(WrongUse, match="is not a date"):
        start(folder, "give", name="Leida Rourke", since="soon")
    with open_collection(folder, write=False) as collection:
        record = next(iter(records(collection)))
        told = [view.said_by for field in ("story", "condition") for view in record.all(field)]
        assert told == ["Leida Rourke", ""]


def test_a_place_of_the_family_s_own_is_made(folder: Path) -> None:
    assert start(folder, "own_place", name="Grandpa’s farm", inside="Milton, Otago", also="the farm")[0] == (
        "“Grandpa’s farm” is a place of the family’s own now."
    )


def test_the_intake_form_asks_what_becomes_of_backs_whose_fronts_are_here(folder: Path, tmp_path: Path) -> None:
    """The same three answers as `--backs` has."""
    with open_collection(folder, write=False) as collection:
        blank = next(blank for blank in TASKS["intake"].blanks(collection) if blank.name == "backs")
    assert [value for value, _ in blank.choices] == ["ask", "join", "apart"]
    for day, shade in (("monday", 20), ("tuesday", 200)):
        (tmp_path / day).mkdir()
        name = "pier_f.jpg" if day == "monday" else "pier_b.jpg"
        Image.new("RGB", (60, 40), (shade, 0, 0)).save(tmp_path / day / name)
    assert start(folder, "intake", path=str(tmp_path / "monday")) == ["1 photograph taken in."]
    unsure = start(folder, "intake", path=str(tmp_path / "tuesday"))
    assert (
        unsure[0] == "Nothing new taken in; 1 not taken, for it is not sure where it belongs."
        and "say whether such backs join" in unsure[1]
    )
    assert start(folder, "intake", path=str(tmp_path / "tuesday"), backs="join") == [
        "Nothing new taken in; 1 joined to one that was here."
    ]


def test_the_intake_form_asks_whether_what_boxlore_made_itself_is_taken(folder: Path) -> None:
    """The same choice as `--own`; an album among the files is said so too, and what is no picture is refused."""
    start(folder, "copies")
    start(folder, "sheet")
    (folder / "print/notes.gif").write_bytes(b"GIF89a")
    lines = start(folder, "intake", path=str(folder / "print"))
    assert (
        lines[0] == "Nothing new taken in; 1 refused; 1 made by Boxlore itself."
        and "notes.gif cannot be opened" in lines[1]
    )
    assert "album.pdf" in lines[2] and len(lines) == 3
    lines = start(folder, "intake", path=str(folder / "copies"))
    assert (
        lines[0] == "Nothing new taken in; 1 made by Boxlore itself."
        and "no scans, for Boxlore made them itself" in lines[1]
    )
    assert "say that they are taken too" in lines[1]
    assert start(folder, "intake", path=str(folder / "copies"), own="yes")[0] == "1 photograph taken in, with its back."
