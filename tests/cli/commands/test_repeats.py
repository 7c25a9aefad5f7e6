"""What is said twice is kept once, and what is written in another way is understood: rows of our own contract."""

import json
from pathlib import Path

import pytest
from PIL import Image

from boxlore.core.statements import Kind
from boxlore.tasks.collection.opening import open_collection


def acts(home: Path) -> int:
    with open_collection(home, write=False) as collection:
        return len(collection.store.last_acts(1000))


@pytest.fixture
def home(run, bare) -> Path:  # type: ignore[no-untyped-def]
    folder: Path = bare(2)
    for words in (
        ["tell", "TRA-0001", "person", "Leida Tamm"],
        ["tell", "TRA-0002", "person", "Leida Rourke"],
        ["tell", "TRA-0001", "story", "Nets drying"],
        ["people", "tell", "Leida Tamm", "born", "1912"],
        ["people", "audience", "Leida Tamm", "family"],
        ["people", "audience", "TRA-0001", "keeper", "--item", "--field", "story"],
        ["people", "apart", "Leida Tamm", "Leida Rourke"],
        ["housing", "lend", "TRA-0001", "--by", "Mia Rourke"],
    ):
        assert run("-c", folder, *words)[0] == 0, words
    return folder


@pytest.mark.parametrize(
    ("arguments", "said"),
    [
        ("tell TRA-0001 story", "Told already: story of TRA-0001. --again keeps it a second time."),
        ("people tell born", "Told already: born of Leida Tamm."),
        ("people audience", "Known already: Leida Tamm is for family."),
        ("people audience --item", "Known already: story of TRA-0001 is for keeper."),
        ("people apart", "That they are two people was said already."),
        ("people apart, the other way round", "That they are two people was said already."),
        ("housing lend", "1 item on loan from Mia Rourke. That was noted already."),
    ],
)
def test_what_is_said_twice_is_kept_once(run, home: Path, arguments: str, said: str) -> None:  # type: ignore[no-untyped-def]
    words = {
        "tell TRA-0001 story": ["tell", "TRA-0001", "story", "Nets drying"],
        "people tell born": ["people", "tell", "Leida Tamm", "born", "1912"],
        "people audience": ["people", "audience", "Leida Tamm", "family"],
        "people audience --item": ["people", "audience", "TRA-0001", "keeper", "--item", "--field", "story"],
        "people apart": ["people", "apart", "Leida Tamm", "Leida Rourke"],
        "people apart, the other way round": ["people", "apart", "Leida Rourke", "Leida Tamm"],
        "housing lend": ["housing", "lend", "TRA-0001", "--by", "Mia Rourke"],
    }[arguments]
    before = acts(home)
    code, _, err = run("-c", home, *words)
    assert (code, acts(home), said in err) == (0, before, True), err


def test_the_same_words_are_told_again_where_that_is_meant(run, home: Path) -> None:  # type: ignore[no-untyped-def]
    before = acts(home)
    for how in (["--again"], ["--sure", "guess"], ["--by", "narrator:Mia Rourke"]):
        assert "Kept: story" in run("-c", home, "tell", "TRA-0001", "story", "Nets drying", *how)[2]
    assert acts(home) > before + 2


def test_a_year_to_come_is_asked_about(run, home: Path) -> None:  # type: ignore[no-untyped-def]
    for words in (["people", "tell", "Leida Rourke", "born", "2099"], ["tell", "TRA-0001", "date", "2099"]):
        code, _, err = run("-c", home, *words)
        assert code == 0 and "To ask: “2099”: that is a year to come. Is it meant?" in err


def test_headings_and_sides_are_known_however_they_are_written(run, home: Path, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    told = tmp_path / "told.csv"
    told.write_text(" Item ;FIELD;Text\nTRA-0002;story;Boats\n")
    assert "1 told, 0 known already, 0 refused." in run("-c", home, "tell", "--from", told)[2]
    for name in ("front", "back"):
        Image.effect_noise((60, 40), 50).save(tmp_path / f"{name}.png")
    table = tmp_path / "items.csv"
    table.write_text("Item,File,Side,Found in\nquay,front.png,Front,shoebox\nquay,back.png,back,\n")
    assert "1 taken in" in run("-c", home, "intake", "--table", table)[2]
    shown = json.loads(run("-c", home, "show", "TRA-0003", "--json")[1])
    assert [scan["side"] for scan in shown["scans"]] == ["recto", "verso"]
    assert shown["found_in"] == "shoebox"
    table.write_text("item,file,side\nquay,front.png,top\n")
    assert (
        "It may be front or back. Recto and verso are understood too." in run("-c", home, "intake", "--table", table)[2]
    )


def test_a_box_is_the_same_with_and_without_its_kind(run, home: Path) -> None:  # type: ignore[no-untyped-def]
    for box, folder in (("1", "2"), ("box 1", "Folder 2"), ("Box 1", "")):
        assert run("-c", home, "intake", "--without-scan", "1", "--box", box, "--folder", folder)[0] == 0
    assert run("-c", home, "housing", "what")[1].splitlines() == [
        "Box 1: 1 item, 1 container",
        "Box 1 / Folder 2: 2 items, 0 containers",
    ]
    for box in ("1", "box 1"):
        assert "3 originals" in run("-c", home, "survey", "--box", box, "--json")[2]
    with open_collection(home) as collection:  # as an earlier version has made one
        act = collection.act("intake")
        container = act.new(Kind.CONTAINER)
        act.state(container, "kind", "box")
        act.state(container, "label", "box 9")
        act.done()
    assert run("-c", home, "intake", "--without-scan", "1", "--box", "box 9")[0] == 0
    assert "Box box 9: 1 item" in run("-c", home, "housing", "what")[1]


def test_items_are_chosen_by_every_name_of_a_person(run, home: Path) -> None:  # type: ignore[no-untyped-def]
    assert run("-c", home, "people", "merge", "Leida Tamm", "Leida Rourke")[0] == 0
    for name in ("Leida Tamm", "leida rourke"):
        code, _, err = run("-c", home, "survey", "--person", name, "--json")
        assert code == 0 and "2 originals" in err, err


def test_a_new_collection_is_refused_without_naming_a_file_that_is_not_there(run, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    code, _, err = run("new", tmp_path / "oak", "--prefix", "oak!")
    assert code == 2 and err.startswith("prefix is “OAK!”.")
    assert not (tmp_path / "oak").exists()


def test_an_update_with_nothing_new_leaves_no_folder(run, home: Path, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    assert run("-c", home, "transfer", tmp_path / "first", "--originals", "no")[0] in (0, 1)
    code, _, err = run("-c", home, "transfer", tmp_path / "a/b", "--originals", "no", "--update", tmp_path / "first")
    assert code == 3 and "Nothing has changed since that transfer." in err
    assert not (tmp_path / "a").exists()
    (tmp_path / "c").mkdir()
    assert run("-c", home, "transfer", tmp_path / "c", "--originals", "no", "--update", tmp_path / "first")[0] == 3
    assert list((tmp_path / "c").iterdir()) == []


def test_a_second_worksheet_keeps_the_answers_that_are_written(run, home: Path, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    Image.effect_noise((60, 40), 50).save(tmp_path / "quay.png")
    assert run("-c", home, "intake", tmp_path / "quay.png")[0] == 0
    sheet, answers = tmp_path / "sheet.pdf", tmp_path / "sheet-answers.txt"
    for _ in range(2):
        assert run("-c", home, "worksheet", sheet, "--item", "TRA-0003")[0] == 0
    assert sorted(path.name for path in tmp_path.glob("sheet*")) == ["sheet-answers.txt", "sheet.pdf"]
    answers.write_text(answers.read_text() + "# looked at\n")
    err = run("-c", home, "worksheet", sheet, "--item", "TRA-0003")[2]
    assert "sheet-answers-2.txt" in err and "An earlier file of answers was written into, and stays" in err
    assert answers.read_text().endswith("# looked at\n")
