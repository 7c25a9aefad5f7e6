"""`boxlore tell` and its neighbours: what somebody cannot mean is refused with what to write (rules of our own)."""

import json
import subprocess
import sys
from collections.abc import Callable
from datetime import date, timedelta
from pathlib import Path

import pytest
from tests.every_row import every_row

from boxlore.store.values import Draft
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.collection.prompts import FILE_NAME
from boxlore.tasks.collection.records_for_outputs import record_of

WHO = "Write narrator:NAME, inscription:verso, inscription:recto, document:WHAT or keeper."

OWN = '[[prompt]]\nfield = "own-clothes"\nquestion = "What are they wearing?"\n'


@pytest.fixture
def folder(bare: Callable[[int], Path]) -> Path:
    """Two items without scans, and a collection that asks one question of its own."""
    made = bare(2)
    (made / FILE_NAME).write_text(OWN, "utf-8")
    return made


def statements(folder: Path) -> int:
    with open_collection(folder, write=False) as collection:
        return int(collection.store.db.execute("SELECT count(*) FROM statement").fetchone()[0])


REFUSED = [
    (["tell", "TRA-0001", "story", "x", "--by", ""], WHO),
    (["tell", "TRA-0001", "story", "x", "--by", "narrator:"], WHO),
    (["tell", "TRA-0001", "story", "x", "--by", "document: "], WHO),
    (["tell", "TRA-0001", "story", "x", "--by", "inscription:"], WHO),
    (["tell", "TRA-0001", "story", "x", "--by", "inscription:banana"], WHO),
    (["people", "shown", "TRA-0001", "left to right: Leida", "--by", "narrator:"], WHO),
    (["tell", "TRA-0001", "story", "x", "--language", ""], "--language is empty. Write a BCP 47 tag"),
    (["tell", "TRA-0001", "story", "\u200b"], "one of the arguments shows nothing (U+200B)."),
    (["tell", "TRA-0001", "story", "a\x1bb"], "Character 2 of these words is no letter (U+001B)."),
    (["tell", "TRA-0001", "person", ","], "Who: “,” says nothing. Write it in words, or ? alone for asked, not known."),
    (["tell", "TRA-0001", "place", "..."], "Where: “...” says nothing."),
    (["tell", "TRA-0001", "kind", "?"], "Kind: that is not asked of anybody."),
    (["tell", "TRA-0001", "kind", "spaceship"], "“spaceship” is no kind of original. Write one of: print, card,"),
    (["survey", "--note", 'TRA-0001={"kind":"spaceship"}'], "“spaceship” is no kind of original."),
    (["survey", "--note", 'TRA-0001={"size":"4x6"}'],
     "“4x6” would be millimetres. If inches are meant, write 102 x 152; if it is as small as that, write mm"),
    (["survey", "--note", 'TRA-0001={"writing":"pencil"}'],
     "“writing” cannot be \"pencil\". Write true where there is writing on the back; what is written is told with:"),
    (["survey", "--note", 'TRA-0001={"attached":[1]}'], "“attached” cannot be [1]. Write a list of words, such as"),
    (["tell", "TRA-0001", "size", "108"], "“108” is not the whole size: its height is missing."),
    (["tell", "TRA-0001", "rights", "javascript:alert(1)"], "is no address of rights. Write one that begins"),
    (["housing", "place", ""], "There are no words to keep."),
    (["housing", "place", "..."], "“...” is no name of a location"),
    (["housing", "place", "Hall/Shelf"], "no stroke (/). Say what it is in with --inside."),
    (["housing", "place", "Hall", "--inside", "Hall"], "There is no location “Hall”."),
    (["housing", "lend", "TRA-0001", "--by", ""], "--by is empty."),
    (["housing", "lend", "TRA-0001", "--by", "Con", "--due", "2026-01-01", "--on", "2026-01-02"],
     "Due back on 2026-01-01, and lent on 2026-01-02."),
    (["housing", "box", "2", "--capacity", "0"], "“0” is no number of items that a container holds. Write a whole"),
    (["housing", "box", "2", "--capacity", "9" * 30], "no number of items that a container holds."),
    (["housing", "box", "2", "--size", "380"], "“380” is not the whole size: its depth is missing."),
    (["housing", "box", "2", "--size", "380 x 260"], "Write millimetres, wide by high by deep: 380 x 260 x 130."),
    (["copies", "copies", "--box", ""], "--box is empty."),
    (["copies", "copies", "--box", "99"], "Nothing here is of box “99”. boxlore housing what, boxlore people list"),
    (["copies", "copies", "--person", "Xyzzy"], "Nothing here is of person “Xyzzy”."),
    (["copies", "copies", "--event", "Xyzzy", "--find", "qq"], "Nothing here is of occasion “Xyzzy”, words “qq”."),
    (["survey", "99", "--json"], "Nothing here is of box “99”."),
    (["sheet", "out/x.txt"], "x.txt would be a PDF. Call it x.pdf."),
    (["housing", "lend", "TRA-0001", "--by", "Con", "--receipt", "x.docx"], "x.docx would be a PDF. Call it x.pdf."),
    (["transfer", "out", "--split", "0"], "A bag of 0 holds nothing. Write it like 4G or 700M, or leave it out"),
    (["tell", "TRA-0001", "story", "x", "--language", "English"], "“English” is no language tag. Write a BCP 47 tag"),
    (["people", "audience", "Arvo Tamm", "family", "--field", "story"], "Say --item for an item;"),
    (["tell", "TRA-0001", "born", "1900"], "There is no field “born” for an item."),
    (["tell", "TRA-0001", "banana", "x"], "keyword, series. Of this collection's own: own-clothes."),
    (["tell", "TRA-0001", "own-banana", "x"],
     "This collection asks no question “own-banana”. Its own questions are: own-clothes. prompts.toml"),
    (["tell", "TRA-0001", "number", "TRA-0009"], "“number” is not told in words. An item keeps its number for life."),
    (["tell", "TRA-0001", "kept", "x 1"], "Say where it lies with: boxlore housing move."),
    (["tell", "TRA-0001", "audience", "family"], "boxlore people audience --item ITEM AUDIENCE."),
    (["people", "audience", "--item", "TRA-0001", "keeper", "--field", "born"], "There is no field “born”"),
    (["people", "audience", "--item", "TRA-0001", "keeper", "--field", "own-banana"], "asks no question “own-banana”"),
]  # fmt: skip


@every_row(("arguments", "sentence"), REFUSED)
def test_what_cannot_be_meant_is_refused(run, folder: Path, arguments: list[str], sentence: str) -> None:  # type: ignore[no-untyped-def]
    before = statements(folder)
    code, out, err = run("-c", folder, *arguments)
    assert (code, out) == (2, "") and sentence in " ".join(err.split())
    assert statements(folder) == before


BLANK = [
    ["places", "add", "\u200b"],
    ["places", "add", "Farm", "--inside", "\u2060"],
    ["people", "consent", "Mia", "--for", "name", "--as", "guardian", "--by", "\u200b", "--witness", "\u200b"],
    ["people", "consent", "Mia", "--for", "name", "--as", "guardian", "--by", " ", "--witness", "Con"],
    ["people", "split", "Leida Rourke", " ", "--item", "TRA-0003"],
    ["places", "add", "Farm", "--also", " "],
    ["housing", "place", "\u3164", "house"],
]


@every_row("arguments", BLANK)
def test_names_of_which_nothing_can_be_seen_are_refused_by_every_command(run, mine: Path, arguments: list[str]) -> None:  # type: ignore[no-untyped-def]
    before = statements(mine)
    code, out, err = run("-c", mine, *arguments)
    assert (code, out) == (2, "") and ("There are no words to keep" in err or "A place needs a name." in err)
    assert statements(mine) == before


def test_a_collection_has_a_title(run, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    code, _, err = run("new", tmp_path / "ours", "--title", " ")
    assert code == 2 and "title is empty. Write what the collection is called." in err
    assert not (tmp_path / "ours").exists()


PEOPLE = [
    ("living", "banana", "living: “banana” cannot be meant. Write one of: yes, no."),
    ("sex", "banana", "sex: “banana” cannot be meant. Write one of: female, male, other."),
    ("sex", " ", "There are no words to keep."),
    ("consent", "whatever", "“consent” is not told in words. Note a consent with: boxlore people consent"),
    ("merged_into", "banana", "Say that two are one with: boxlore people merge"),
    ("different", "banana", "Say that two are two with: boxlore people apart"),
    ("audience", "family", "Say who may see a person with: boxlore people audience"),
    ("mother", "Leida Rourke", "Leida Rourke cannot be the mother of Leida Rourke. If somebody else of that name"),
    ("father", "Leida Rourke", "Leida Rourke cannot be the father of Leida Rourke."),
    ("spouse", "Leida Rourke", "Leida Rourke cannot be the spouse of Leida Rourke."),
    ("mother", "Mia Rourke", "Mia Rourke cannot be the mother of Leida Rourke, who is told to be an ancestor"),
    ("title", "x", "There is no field “title” for a person."),
    ("nickname", "", "There are no words to keep."),
]


@every_row(("field", "words", "sentence"), PEOPLE)
def test_what_cannot_be_told_of_a_person(run, mine: Path, field: str, words: str, sentence: str) -> None:  # type: ignore[no-untyped-def]
    before = statements(mine)
    code, _, err = run("-c", mine, "people", "tell", "Leida Rourke", field, words)
    assert code == 2 and sentence in " ".join(err.split())
    assert statements(mine) == before


def test_a_second_answer_of_one_source_is_said_to_stand_beside_the_first(run, folder: Path) -> None:  # type: ignore[no-untyped-def]
    tell = ("-c", folder, "tell", "TRA-0001")
    assert "both stand" not in run(*tell, "date", "14 June 1938")[2]
    assert "told “14 June 1938” before, and both stand. --instead" in run(*tell, "date", "15 June 1938")[2]
    assert "both stand" not in run(*tell, "date", "16 June 1938", "--by", "document:letter")[2]
    assert "both stand" not in run(*tell, "date", "15 June 1938", "--instead")[2]
    run(*tell, "story", "It rained.")
    assert "both stand" not in run(*tell, "story", "It blew.")[2]  # stories are many
    with open_collection(folder, write=False) as collection:
        record = record_of(collection, find_item(collection, "TRA-0001").id)
        assert sorted(view.words for view in record.all("date")) == ["15 June 1938", "16 June 1938"]


@pytest.mark.parametrize("option", [("--by", ""), ("--by", "narrator:"), ("--audience", "")])
def test_the_options_of_people_tell_are_held_to_the_same(run, mine: Path, option: tuple[str, str]) -> None:  # type: ignore[no-untyped-def]
    assert run("-c", mine, "people", "tell", "Leida Rourke", "nickname", "Leidi", *option)[0] == 2


def test_nobody_is_her_own_grandmother_either(run, mine: Path) -> None:  # type: ignore[no-untyped-def]
    """Mia is Leida's daughter; her new daughter Ann cannot be Leida's mother, nor one person with her."""
    assert run("-c", mine, "people", "tell", "Mia Rourke", "nickname", "Mimi")[0] == 0
    with open_collection(mine, write=False) as collection:
        grandchild = next(
            person.name
            for person in collection.people().values()
            if any(
                "Leida Rourke" in [collection.people()[great].name for great in collection.people()[parent].parents]
                for parent in person.parents
            )
        )
    code, _, err = run("-c", mine, "people", "tell", "Leida Rourke", "mother", grandchild)
    assert code == 2 and f"{grandchild} cannot be the mother of Leida Rourke" in " ".join(err.split())
    code, _, err = run("-c", mine, "people", "merge", "Leida Rourke", grandchild)
    assert code == 2 and "is told to be an ancestor of" in err
    code, _, err = run("-c", mine, "people", "apart", "Leida Rourke", "Leida Rourke")
    assert code == 2 and "Leida Rourke is one person." in err


@pytest.mark.parametrize(
    ("field", "typed", "kept"),
    [("living", "Yes", "yes"), ("sex", "F", "female"), ("sex", "Man", "male"), ("sex", "x", "other")],
)
def test_the_words_of_a_closed_list_are_kept_as_the_list_has_them(  # type: ignore[no-untyped-def]
    run, mine: Path, field: str, typed: str, kept: str
) -> None:
    assert run("-c", mine, "people", "tell", "Mia Rourke", field, typed)[0] == 0
    told = json.loads(run("-c", mine, "people", "show", "Mia Rourke", "--json")[1])["statements"]
    assert [row["words"] for row in told if row["field"] == field][-1] == kept


def test_a_question_of_the_collection_is_told_while_it_is_asked_or_answered(run, folder: Path) -> None:  # type: ignore[no-untyped-def]
    assert run("-c", folder, "tell", "TRA-0001", "own-clothes", "Sunday best")[0] == 0
    (folder / FILE_NAME).unlink()
    assert run("-c", folder, "tell", "TRA-0002", "own-clothes", "An apron")[0] == 0
    code, _, err = run("-c", folder, "tell", "TRA-0002", "own-shoes", "Clogs")
    assert code == 2 and "It has no questions of its own." in err
    (folder / FILE_NAME).write_text("[[prompt", "utf-8")
    assert run("-c", folder, "tell", "TRA-0002", "own-shoes", "Clogs")[0] == 2


def test_keeping_one_field_says_that_it_is_one_field(run, folder: Path) -> None:  # type: ignore[no-untyped-def]
    code, _, err = run("-c", folder, "people", "audience", "--item", "TRA-0001", "keeper", "--field", "story")
    assert code == 0 and "Kept: story of TRA-0001 is for keeper." in err
    assert "Kept: TRA-0001 is for family." in run("-c", folder, "people", "audience", "--item", "TRA-0001", "family")[2]


ROWS = [
    ("TRA-0001,story,Reval, 1908,keeper\n", "Line 2: “keeper” stands under no heading: put words"),
    ("TRA-0001,story,a\x00b,keeper\n", "Line 2: Character 2 of these words is no letter (U+0000)."),
    ("TRA-0001,story,\u2060\u200b,keeper\n", "Line 2: There are no words to keep."),
    ("TRA-0001,story,x,narrator:\n", "Line 2: “narrator:” does not say which narrator."),
    ('TRA-0001,story,"He said\nTRA-0002,story,no more",keeper\n', "Line 2: Its words go on into another row"),
    ("TRA-0001,own-banana,x,keeper\n", "Line 2: This collection asks no question “own-banana”."),
    ("TRA-0001,kept,x 1,keeper\n", "Line 2: “kept” is not told in words."),
]


@pytest.mark.parametrize(("row", "sentence"), ROWS)
def test_a_row_that_cannot_be_meant_is_refused_by_its_line(  # type: ignore[no-untyped-def]
    run, folder: Path, tmp_path: Path, row: str, sentence: str
) -> None:
    table = tmp_path / "told.csv"
    table.write_text(f"item,field,text,by\n{row}TRA-0002,title,After it, \n", "utf-8")
    code, _, err = run("-c", folder, "tell", "--from", table)
    assert code == 1 and sentence in " ".join(err.split())
    assert "After it" in run("-c", folder, "show", "TRA-0002")[1]


def test_two_columns_that_mean_one_are_not_both_filled(run, folder: Path, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    table = tmp_path / "told.csv"
    table.write_text("item,field,text,words\nTRA-0001,story,One,Two\nTRA-0002,story,Same,Same\n", "utf-8")
    code, _, err = run("-c", folder, "tell", "--from", table)
    assert code == 1 and "Line 2: “text” and “words” both say something. Fill one of these columns." in err
    assert "Same" in run("-c", folder, "show", "TRA-0002")[1]


def test_a_quotation_mark_left_open_refuses_the_table(run, folder: Path, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    table = tmp_path / "told.csv"
    table.write_text('item,field,text\nTRA-0001,story,Kept\nTRA-0001,story,"Open\nTRA-0002,story,Next\n', "utf-8")
    before = statements(folder)
    code, out, err = run("-c", folder, "tell", "--from", table, "--json")
    assert (code, out) == (2, "") and "line 3" in err and "nothing was taken" in err
    assert statements(folder) == before


def test_a_table_is_kept_though_nobody_reads_on(folder: Path, tmp_path: Path) -> None:
    """As in `boxlore tell --from told.csv --json | head -n 1`: more than a pipe holds, and a reader that leaves."""
    table = tmp_path / "told.csv"
    table.write_text("item,field,text\n" + "".join(f"TRA-0001,keyword,word {at}\n" for at in range(900)), "utf-8")
    program = "from boxlore.cli.main import main; main()"
    command = [sys.executable, "-c", program, "-c", str(folder), "tell", "--from", str(table), "--json"]
    with subprocess.Popen(command, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL) as telling:
        assert telling.stdout is not None
        first = json.loads(telling.stdout.readline())
        telling.stdout.close()
    with open_collection(folder, write=False) as collection:
        kept = collection.store.history(first["subject"], "keyword")
    assert first["words"] == "word 0" and len(kept) == 900


def test_a_table_taken_twice_says_so(run, folder: Path, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    table = tmp_path / "told.csv"
    table.write_text("item,field,text\nTRA-0001,keyword,boats\nTRA-0009,keyword,x\n", "utf-8")
    assert "1 told, 0 known already, 1 refused." in run("-c", folder, "tell", "--from", table)[2]
    code, out, err = run("-c", folder, "tell", "--from", table, "--json")
    assert (code, out) == (1, "") and "0 told, 1 known already, 1 refused." in err
    assert "1 told, 0 known already" in run("-c", folder, "tell", "--from", table, "--again")[2]


@pytest.mark.parametrize("prefix", ["TR2", "T22222B"])
def test_a_number_under_a_prefix_with_digits_is_known_again(run, tmp_path: Path, prefix: str) -> None:  # type: ignore[no-untyped-def]
    home = tmp_path / "ours"
    assert run("new", home, "--prefix", prefix)[0] == 0
    assert run("-c", home, "intake", "--without-scan", "1")[0] == 0
    assert run("-c", home, "tell", f"{prefix.lower()}a-0001", "story", "Found again")[0] == 0
    assert "Found again" in run("-c", home, "show", f"{prefix}A-0001")[1]
    assert run("-c", home, "find", "again")[0] == 0


def test_a_new_collection_leaves_what_lies_there(run, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    home = tmp_path / "ours"
    home.mkdir()
    settings = home / "boxlore.toml"
    settings.write_text("# of another program\n", "utf-8")
    code, _, err = run("new", home, "--prefix", "TR")
    assert code == 2 and f"{settings} is there already" in err and "choose another folder" in err
    assert settings.read_text("utf-8") == "# of another program\n"
    settings.unlink()
    settings.symlink_to(tmp_path / "elsewhere.toml")
    assert run("new", home, "--prefix", "TR")[0] == 2
    settings.unlink()
    (home / "scans").write_text("a file", "utf-8")
    code, _, err = run("new", home, "--prefix", "TR")
    assert code == 2 and f"{home / 'scans'} is a file." in err
    (home / "scans").unlink()
    assert run("new", home, "--prefix", "TR")[0] == 0
    (home / "collection.sqlite").unlink()  # as a start that was killed leaves the folder
    assert run("new", home, "--prefix", "TR")[0] == 0


@pytest.mark.parametrize("field", ["occasion", "person", "date", "place", "story", "title", "own-clothes"])
def test_a_question_mark_alone_means_asked_not_known(run, folder: Path, tmp_path: Path, field: str) -> None:  # type: ignore[no-untyped-def]
    code, _, err = run("-c", folder, "tell", "TRA-0001", field, "?")
    assert (code, err.strip()) == (0, f"Kept: {field} of TRA-0001: asked, not known.")
    table = tmp_path / "table.csv"
    table.write_text(f"item,field,text\nTRA-0002,{field},?\nTRA-0002,story,-\n", "utf-8")
    code, _, err = run("-c", folder, "tell", "--from", table)
    assert code == 1 and "Line 3: Story: “-” says nothing." in err and "1 told, 0 known already, 1 refused." in err
    with open_collection(folder, write=False) as collection:
        for number in ("TRA-0001", "TRA-0002"):
            record = record_of(collection, find_item(collection, number).id)
            assert record.not_known == {field} and not record.told and not record.people
        assert not collection.people()


def test_of_a_person_too(run, folder: Path) -> None:  # type: ignore[no-untyped-def]
    run("-c", folder, "tell", "TRA-0001", "person", "Con Rourke")
    for field in ("born", "living", "nickname"):
        assert run("-c", folder, "people", "tell", "Con Rourke", field, "?")[0] == 0
    with open_collection(folder, write=False) as collection:
        [person] = collection.people().values()
    assert (person.name, person.born, person.living, person.calls) == ("Con Rourke", None, "", ("Con",))


def test_kinds_sizes_and_links_are_kept_as_they_are_meant(run, folder: Path) -> None:  # type: ignore[no-untyped-def]
    for field, words in (("kind", "Album page"), ("size", "8x11 mm"), ("rights", "Ask the Tamms: all of them.")):
        assert run("-c", folder, "tell", "TRA-0001", field, words)[0] == 0
    with open_collection(folder, write=False) as collection:
        record = record_of(collection, find_item(collection, "TRA-0001").id)
    assert (record.kind, record.size_mm, record.words("rights")) == (
        "album-page",
        (8, 11),
        "Ask the Tamms: all of them.",
    )
    run("-c", folder, "tell", "TRA-0001", "person", "Arvo Tamm")
    code, _, err = run("-c", folder, "people", "tell", "Arvo Tamm", "identifier", "not a link")
    assert code == 2 and "“not a link” is no link. Write the whole address" in err
    assert run("-c", folder, "people", "tell", "Arvo Tamm", "identifier", "https://viaf.org/viaf/1")[0] == 0


def test_a_consent_is_of_somebody_living_and_of_a_day_that_has_come(run, folder: Path) -> None:  # type: ignore[no-untyped-def]
    for name in ("Con Rourke", "Tom Rourke"):
        run("-c", folder, "tell", "TRA-0001", "person", name)
    run("-c", folder, "people", "tell", "Tom Rourke", "died", "2011")
    ahead = f"{date.today() + timedelta(days=100)}"
    code, _, err = run("-c", folder, "people", "consent", "Con Rourke", "--for", "name", "--on", ahead)
    assert code == 2 and f"{ahead} is still to come. Note a consent on the day when it is given, or later." in err
    code, _, err = run("-c", folder, "people", "consent", "Tom Rourke", "--for", "name")
    assert code == 2 and "Tom Rourke is told to have died, and no consent is needed." in err
    assert run("-c", folder, "people", "consent", "Tom Rourke", "--for", "name", "--withdraw")[0] == 0
    assert run("-c", folder, "people", "consent", "Con Rourke", "--for", "name", "--by", "")[0] == 2
    assert run("-c", folder, "people", "consent", "Con Rourke", "--for", "name")[0] == 0


def test_nothing_is_moved_into_itself_or_kept_inside_itself(run, folder: Path) -> None:  # type: ignore[no-untyped-def]
    for mark in ("1", "1/1", "1/2"):
        run("-c", folder, "housing", "box", mark)
    run("-c", folder, "housing", "move", "TRA-0001", "--to", "1/1")
    run("-c", folder, "housing", "move", "TRA-0002", "--to", "1/2")
    code, _, err = run("-c", folder, "housing", "move", "1", "--to", "1/1", "--yes")
    assert code == 2 and "Box 1 cannot be moved into Box 1 / Box 1. Name the items" in err
    code, _, err = run("-c", folder, "housing", "move", "1/1", "--to", "1/1", "--yes")
    assert code == 2 and "cannot be moved into itself." in err
    assert run("-c", folder, "housing", "move", "1/2", "--to", "1/1", "--yes")[0] == 0
    assert run("-c", folder, "housing", "place", "Hall cupboard")[0] == 0
    code, _, err = run("-c", folder, "housing", "place", "Hall cupboard", "--inside", "Hall cupboard")
    assert code == 2 and "Hall cupboard cannot be inside itself." in err
    assert run("-c", folder, "housing", "place", "House")[0] == 0
    for outer in ("Hall cupboard", "House"):
        assert run("-c", folder, "housing", "place", "Shelf", "--inside", outer)[0] == 0
    code, _, err = run("-c", folder, "housing", "box", "1", "--at", "Shelf")
    assert code == 2 and "There are 2 locations “Shelf”. Say which one: Hall cupboard / Shelf; House / Shelf." in err
    assert run("-c", folder, "housing", "place", "Hall cupboard", "--inside", "House")[0] == 0
    assert run("-c", folder, "housing", "box", "1", "--at", "Hall cupboard")[0] == 0


def test_what_was_given_back_is_not_given_back_twice(run, folder: Path) -> None:  # type: ignore[no-untyped-def]
    code, _, err = run("-c", folder, "housing", "back", "TRA-0001")
    assert code == 2 and "TRA-0001 is not on loan." in err
    for _ in range(2):  # lent, given back, lent again
        assert run("-c", folder, "housing", "lend", "TRA-0001", "--by", "Con Rourke")[0] == 0
        assert run("-c", folder, "housing", "back", "TRA-0001", "--on", "2026-11-25")[0] == 0
    code, _, err = run("-c", folder, "housing", "back", "TRA-0001")
    assert code == 2 and "TRA-0001 was given back on 2026-11-25. boxlore housing lend notes it" in err


def test_a_label_with_a_stroke_would_make_two_marks_alike(run, folder: Path) -> None:  # type: ignore[no-untyped-def]
    for label in ("7/1", "..."):
        code, _, err = run("-c", folder, "intake", "--without-scan", "1", "--box", label, "--yes")
        assert code == 1 and f"“{label}” is no label" in err and "such as --box 7 --folder 1." in err


def test_a_table_must_have_the_words_and_may_be_parted_by_semicolons(run, folder: Path, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    table = tmp_path / "table.csv"
    table.write_text("item,field\nTRA-0001,story\n", "utf-8")
    code, _, err = run("-c", folder, "tell", "--from", table)
    assert code == 2 and "table.csv has no column text." in err
    table.write_text("item;field;text\nTRA-0001;story;The boat, at last\nTRA-0001;date;1931\n", "utf-8")
    code, _, err = run("-c", folder, "tell", "--from", table)
    assert code == 0 and "2 told, 0 known already, 0 refused." in err


def test_only_statements_that_there_are_can_be_parted(run, folder: Path) -> None:  # type: ignore[no-untyped-def]
    run("-c", folder, "tell", "TRA-0001", "person", "Arvo Tamm", "--by", "narrator:Aino")
    code, _, err = run("-c", folder, "people", "split", "Arvo Tamm", "Arvo the elder", "--statement", "ffffffff")
    assert code == 2 and "Nothing told of Arvo Tamm has an id that ends in “ffffffff”." in err
    code, out, _ = run("-c", folder, "people", "show", "Arvo Tamm")
    assert code == 0 and "Name: Arvo Tamm  (Aino)" in out


def test_show_has_what_is_typed_what_is_not_known_and_the_size(run, folder: Path) -> None:  # type: ignore[no-untyped-def]
    run("-c", folder, "tell", "TRA-0001", "size", "108 x 165")
    run("-c", folder, "tell", "TRA-0001", "occasion", "?")
    run("-c", folder, "tell", "TRA-0001", "place", "She would not say.", "--sure", "not-known", "--by", "narrator:Aino")
    with open_collection(folder) as collection:
        subject = find_item(collection, "TRA-0001")
        draft = Draft(subject=subject, field="story", words="half a sen", updated_at=collection.clock.now())
        collection.store.save_draft(draft)
    _, out, _ = run("-c", folder, "show", "TRA-0001")
    for line in (
        "  Story: half a sen  (being typed)",
        "  Occasion: asked, not known",
        "  Where: She would not say.  (not known)",
        "  Size in mm: 108 x 165",
    ):
        assert line in out.splitlines(), line
    record = json.loads(run("-c", folder, "show", "TRA-0001", "--json")[1])
    assert record["size_mm"] == [108, 165]
    assert [(row["field"], row["words"], row["said_by"]) for row in record["not_known"]] == [
        ("occasion", "", None),
        ("place", "She would not say.", "Aino"),
    ]


def test_a_question_about_who_is_told_is_said_at_once(run, folder: Path) -> None:  # type: ignore[no-untyped-def]
    code, out, err = run("-c", folder, "tell", "TRA-0001", "person", "Anna, the picnic at Brighton")
    assert (code, out) == (0, "") and "To ask: Is “the picnic at Brighton” someone in the picture?" in err
