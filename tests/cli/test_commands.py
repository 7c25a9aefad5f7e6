"""The commands as a person or a script meets them: exit codes, data on stdout, words on stderr (our own contract)."""

import csv
import json
import sqlite3
from datetime import date
from pathlib import Path

import click
import pytest
from PIL import Image, ImageDraw

from boxlore.cli import commands
from boxlore.cli.main import COMMANDS, boxlore
from boxlore.core.sitting.worksheet_codes import CodedLine, write_code
from boxlore.sheets.transfer_papers import InventoryLine, inventory_pdf


def rows(out: str) -> list[dict[str, object]]:
    return [json.loads(line) for line in out.splitlines()]


@pytest.mark.parametrize("name", COMMANDS)
def test_every_row_of_commands_loads_a_command(name: str) -> None:
    command = boxlore.get_command(click.Context(boxlore), name)
    assert isinstance(command, click.Command) and command.name == name


def test_every_file_of_commands_has_a_row() -> None:
    files = Path(commands.__file__).parent.glob("[!_]*.py")
    assert sorted(path.stem for path in files) == sorted(COMMANDS)


@pytest.mark.parametrize("command", COMMANDS)
def test_every_command_explains_itself(run, command: str) -> None:  # type: ignore[no-untyped-def]
    code, out, _ = run(command, "--help")
    assert code == 0 and "Usage:" in out and len(out.splitlines()) > 4


DATE_KEYS = ["text", "edtf", "state", "level", "earliest", "latest", "display", "ask", "alternatives", "error"]


def test_dates_answer_in_json_one_line_for_each(run, monkeypatch: pytest.MonkeyPatch) -> None:  # type: ignore[no-untyped-def]
    code, out, _ = run("date", "--json", "about 1920", "7/4/52", "nonsense")
    found = rows(out)
    assert code == 1
    assert [list(one) for one in found] == [DATE_KEYS] * 3
    assert found[0]["edtf"] == "1920~"
    assert found[1]["alternatives"] == ["1952-04-07", "1952-07-04"]
    assert found[2]["edtf"] is None and found[2]["error"]["message"]  # type: ignore[index]


def test_dates_by_the_standard_only(run) -> None:  # type: ignore[no-untyped-def]
    assert run("date", "--edtf", "--json", "1985-04")[0] == 0
    code, out, _ = run("date", "--edtf", "--json", "about 1920", "1985-", "1985-13")
    assert code == 1
    assert [one["state"] for one in rows(out)] == ["wrong", "incomplete", "wrong"]
    assert rows(out)[2]["error"]["column"] == 6  # type: ignore[index]


def test_day_order_and_hemisphere(run) -> None:  # type: ignore[no-untyped-def]
    assert rows(run("date", "--json", "--order", "mdy", "7/4/52")[1])[0]["edtf"] == "1952-07-04"
    found = rows(run("date", "--json", "--hemisphere", "south", "summer 1962")[1])[0]
    assert (found["edtf"], found["earliest"]) == ("1962-30", "1962-12-01")


def test_a_new_collection_has_the_summers_of_its_first_country(run, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    for number, (told, hemisphere) in enumerate(
        (
            (("--countries", "nz ee"), "south"),
            (("--countries", "ee nz"), "north"),
            (("--countries", "xx"), "north"),
            ((), "north"),
        )
    ):
        folder = tmp_path / str(number)
        assert run("new", str(folder), *told)[0] == 0
        assert f'hemisphere = "{hemisphere}"' in (folder / "boxlore.toml").read_text(encoding="utf-8")


PLACE_KEYS = {
    "name", "city", "admin1", "admin1_code", "admin2", "country", "country_code", "called_then", "lat", "lon",
    "radius_km", "geonames",
}  # fmt: skip


def test_places_answer_in_json(run, monkeypatch: pytest.MonkeyPatch) -> None:  # type: ignore[no-untyped-def]
    code, out, _ = run("place", "--json", "--year", "1880", "Dorpat")
    (found,) = rows(out)
    assert code == 0 and list(found) == ["text", "kind", "choices", "findings"]
    choice = found["choices"][0]  # type: ignore[index]
    assert choice.keys() >= PLACE_KEYS
    assert (found["kind"], choice["city"], choice["called_then"]) == ("match", "Tartu", "Dorpat")
    assert rows(run("place", "--json", "Soviet Union", "--year", "1950")[1])[0]["choices"][0]["country_code"] is None  # type: ignore[index]


def test_a_collection_from_nothing(run, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    home, scans = tmp_path / "ours", tmp_path / "in"
    scans.mkdir()
    for at, name in enumerate(("a_f.jpg", "a_b.jpg", "c.png")):
        image = Image.new("L", (60, 40), 40 + at * 60)
        ImageDraw.Draw(image).line((0, at * 9, 60, 40), fill=255)
        image.save(scans / name)
    assert run("new", home, "--prefix", "OUR")[0] == 0
    code, out, _ = run("-c", home, "intake", scans, "--copy", "--box", 1, "--folder", 2, "--json", "--yes")
    assert (code, [one["number"] for one in rows(out)]) == (0, ["OURA-0001", "OURA-0002"])
    code, out, _ = run("-c", home, "intake", scans, "--copy", "--json", "--yes")
    assert {one["state"] for one in rows(out)} == {"known"}
    assert run("-c", home, "tell", "1/2/2", "story", "The <b>tall</b> one [/b]", "--by", "narrator:Ruth")[0] == 0
    code, out, _ = run("-c", home, "find", "tall", "--json")
    assert code == 0
    assert rows(out)[0] | {"source": ""} == {
        "number": "OURA-0002", "mark": "1/2/2", "field": "story", "words": "The <b>tall</b> one [/b]", "source": "",
        "draft": False,
    }  # fmt: skip
    assert run("-c", home, "verify")[0] == 0
    assert run("-c", home, "check", "--json")[0] == 1


def test_tell_from_a_table_takes_what_it_can(run, mine: Path, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    table = tmp_path / "told.csv"
    with open(table, "w", encoding="utf-8", newline="") as file:
        out = csv.writer(file)
        out.writerow(["item", "field", "text", "by", "sure", "audience"])
        out.writerow(["TRA-0001", "story", "Fish on Fridays", "narrator:Con", "likely", "family"])
        out.writerow(["TRA-9999", "story", "Nobody", "", "", ""])
        out.writerow(["TRA-0001", "colour", "red", "", "", ""])
        out.writerow(["TRA-0001", "place", "", "", "not-known", ""])
    code, _, err = run("-c", mine, "tell", "--from", table)
    assert code == 1
    assert "Line 3: There is no photograph TRA-9999" in err and "Line 4: There is no field “colour”" in err
    code, out, _ = run("-c", mine, "show", "TRA-0001", "--json")
    told = {one["words"]: one for one in rows(out)[0]["statements"]}  # type: ignore[union-attr]
    assert (told["Fish on Fridays"]["audience"], told["Fish on Fridays"]["sure"]) == ("family", "likely")
    answers = tmp_path / "answers.txt"
    answers.write_text(f"{write_code(CodedLine('TRA-0001', 'story'), 'TR')}: Fish\n", "utf-8")
    code, _, err = run("-c", mine, "tell", "--from", answers)
    assert code == 2 and "begin the file with the line Collection: " in err and "Or say --printed-here." in err
    code, _, err = run("-c", mine, "tell", "--from", answers, "--printed-here")
    assert code == 0 and err.startswith("1 told")


TABLES = [
    ("item,field,text,audiance\nTRA-0001,story,Kept to us,keeper\n", "has a column “audiance”"),
    ('item,field,text\nTRA-0001,story,"' + "x" * 10_000_001 + '"\n', "cannot be read as a table"),
]


@pytest.mark.parametrize(("text", "words"), TABLES, ids=["a column mistyped", "a cell without end"])
def test_a_table_that_cannot_be_meant_is_refused_whole(run, mine: Path, tmp_path: Path, text: str, words: str) -> None:  # type: ignore[no-untyped-def]
    table = tmp_path / "told.csv"
    table.write_text(text, encoding="utf-8")
    code, out, err = run("-c", mine, "tell", "--from", table)
    assert (code, out) == (2, "") and words in err
    assert "Kept to us" not in run("-c", mine, "show", "TRA-0001", "--json")[1]


def test_a_long_story_in_a_table_is_taken(run, mine: Path, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    table = tmp_path / "told.csv"
    table.write_text(f"item,field,text\nTRA-0001,story,{'long ' * 40_000}\nTRA-0001,story,After it\n", encoding="utf-8")
    assert run("-c", mine, "tell", "--from", table)[0] == 0
    assert "After it" in run("-c", mine, "show", "TRA-0001", "--json")[1]


def test_strike_from_the_shell_asks_once_and_says_what_it_cannot_reach(run, mine: Path) -> None:  # type: ignore[no-untyped-def]
    code, _, err = run("-c", mine, "strike", "TRA-0018", "story")
    assert code == 1 and "Nothing was struck" in err
    code, _, err = run("-c", mine, "strike", "TRA-0018", "story", "--yes")
    assert "cannot reach copies on other disks" in err
    assert code == 1 and "copies/" in err  # the copies made before still carry it, and are named
    assert run("-c", mine, "find", "until the very minute")[0] == 1


def test_a_persons_field_is_struck_and_what_carries_it_is_listed(run, mine: Path) -> None:  # type: ignore[no-untyped-def]
    assert run("-c", mine, "people", "tell", "Leida Rourke", "story", "Kept bees on the cannery roof")[0] == 0
    assert run("-c", mine, "people", "tell", "Leida Rourke", "story", "Sang at every launching")[0] == 0
    (mine / "pages").mkdir(exist_ok=True)
    (mine / "pages" / "leida.html").write_text("<p>kept BEES on the cannery roof", "utf-8")
    (mine / "print").mkdir(exist_ok=True)
    (mine / "print" / "old.pdf").write_bytes(b"%PDF-")
    for name, words in (("hives", "Leida kept bees."), ("sea", "The boat.")):
        line = InventoryLine("TRA-0001", "", words, "")
        data = inventory_pdf("Photographs", "One.", [("Box 1", [line])], paper="a4", printed_on=date(2026, 11, 27))
        (mine / "print" / f"{name}.pdf").write_bytes(data)
    code, _, err = run("-c", mine, "strike", "Leida Rourke", "story", "--words", "bees")
    assert code == 1 and "1 statement would be struck" in err and "Nothing was struck" in err
    code, out, err = run("-c", mine, "strike", "leida rou", "story", "--words", "bees", "--yes", "--json")
    (row,) = rows(out)
    assert code == 1 and row["struck"] == 1 and "pages/leida.html" in row["still_in"]  # type: ignore[operator]
    assert "Still in pages/leida.html" in err
    assert "Still in print/hives.pdf: made before; make it again, or delete it." in err and "sea.pdf" not in err
    assert "print/old.pdf" in row["not_searched"] and "Not searched: print/old.pdf" in err  # type: ignore[operator]
    shown = run("-c", mine, "people", "show", "Leida Rourke")[1]
    assert "bees" not in shown and "Sang at every launching" in shown
    assert b"cannery" not in (mine / "collection.sqlite").read_bytes().lower()
    assert run("-c", mine, "find", "cannery roof")[0] == 1


BAD_STRIKES = [
    ("Leida Rourke", "colour", "There is no field “colour”"),
    ("Nobody Atall", "born", "Nobody here is called “Nobody Atall”"),
    ("Rourke", "born", "may be"),
    ("Leida Rourke", "title", "Nothing is, or was, kept at Leida Rourke"),
    ("9/99/9", "story", "Nothing is, or was, kept at 9/99/9"),
    ("Leida Rourke", "buried", "There is no such buried to strike"),
]


@pytest.mark.parametrize(("who", "field", "said"), BAD_STRIKES)
def test_what_cannot_be_struck_is_said(run, mine: Path, who: str, field: str, said: str) -> None:  # type: ignore[no-untyped-def]
    code, _, err = run("-c", mine, "strike", who, field, "--yes")
    assert code == 2 and said in " ".join(err.split())


def test_the_shell_finishes_what_was_half_typed(run, mine: Path) -> None:  # type: ignore[no-untyped-def]
    db = sqlite3.connect(mine / "collection.sqlite")
    (subject,) = db.execute("SELECT subject FROM statement WHERE words = 'TRA-0001'").fetchone()
    columns = [row[1] for row in db.execute("PRAGMA table_info(draft)")]
    values = {"subject_kind": "item", "subject": subject, "field": "story", "words": "Half a senten"}
    values |= {"said": "keeper", "sure": "sure", "audience": "anyone", "updated_at": "2026-11-25T00:00:00.000Z"}
    row = [values.get(name, None if name == "moment" else "") for name in columns]
    db.execute(f"INSERT INTO draft VALUES ({', '.join('?' * len(row))})", row)
    db.commit()
    db.close()
    assert rows(run("-c", mine, "find", "senten", "--json")[1])[0]["draft"] is True
    assert run("-c", mine, "tell", "TRA-0002", "keyword", "ships")[0] == 0
    assert rows(run("-c", mine, "find", "senten", "--json")[1])[0]["draft"] is False


WRONG = [
    (["show", "TRA-9999"], 2, "There is no photograph TRA-9999 here."),
    (["show", "3//4"], 2, "is no mark"),
    (["tell", "TRA-0001", "story"], 2, "Which item, which field, which words?"),
    (["tell", "TRA-0001", "story", "x", "--sure", "quite"], 2, "Use one of: sure, likely, guess, not-known."),
    (["tell", "TRA-0001", "story", "x", "--audience", "all"], 2, "Use keeper, family, archive:YYYY-MM-DD or anyone."),
    (["tell", "TRA-0001", "story", "x", "--audience", ""], 2, "Use keeper, family, archive:YYYY-MM-DD or anyone."),
    (["tell", "TRA-0001", "story", "bad\udcff"], 2, "Write them again in UTF-8."),
    (["find", "bad\udcff"], 2, "Write them again in UTF-8."),
    (["strike", "TRA-0018", "story", "--words", " ", "--yes"], 2, "--words is empty."),
    (["intake", "nowhere"], 2, "There is no file or folder nowhere."),
    (["copies", "{home}/scans"], 2, "Copies cannot go among the scans"),
    (["evidence", "--minutes", "20"], 2, "--minutes is not used without --ask"),
    (["worksheet", "w.pdf", "--minutes", "20"], 2, "--minutes is not used without --ask"),
    (["check", "--on", "yesterday"], 2, "Write it as YYYY-MM-DD."),
    (["transfer", "{home}/transfer/open"], 2, "is not empty"),
]


@pytest.mark.parametrize(("arguments", "code", "words"), WRONG, ids=[" ".join(row[0]) for row in WRONG])
def test_bad_input_gets_a_sentence_that_says_what_to_do(run, mine: Path, arguments, code: int, words: str) -> None:  # type: ignore[no-untyped-def]
    filled = [one.format(home=mine) for one in arguments]
    if filled[0] == "transfer":
        filled[1] = str(mine / "transfer")
    left, out, err = run("-c", mine, *filled)
    assert (left, out) == (code, "")
    assert words in err


def test_no_collection_and_no_command(run, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    code, _, err = run("-c", tmp_path, "check")
    assert code == 3 and "boxlore new FOLDER" in err
    assert run("frobnicate")[0] == 2


def test_two_prints_of_one_picture_are_proposed(run, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    home, scans = tmp_path / "ours", tmp_path / "in"
    scans.mkdir()
    picture = Image.effect_mandelbrot((300, 200), (-2, -1, 1, 1), 60)
    picture.save(scans / "one.jpg", quality=90)
    picture.resize((240, 160)).point(lambda v: min(255, v + 12)).save(scans / "two.png")
    Image.linear_gradient("L").save(scans / "three.png")
    run("new", home)
    run("-c", home, "intake", scans, "--yes")
    found = [one for one in rows(run("-c", home, "check", "--json")[1]) if one["rule"] == "scan.alike"]
    assert [one["message"] for one in found] == ["Two prints of one picture? FAMA-0001 and FAMA-0003 look alike."]
