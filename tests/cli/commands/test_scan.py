"""`boxlore scan`: one scan of an item added, replaced, turned, noted as altered (our own contract)."""

import json
from pathlib import Path

import pytest
from PIL import Image


def picture(path: Path, size: tuple[int, int] = (60, 40), shade: int = 90) -> Path:
    path.parent.mkdir(exist_ok=True)
    Image.linear_gradient("L").resize(size).point(lambda value: value // 2 + shade).save(path)
    return path


@pytest.fixture
def home(run, tmp_path: Path) -> Path:  # type: ignore[no-untyped-def]
    assert run("new", tmp_path / "tamm", "--prefix", "TR", "--title", "Tamm")[0] == 0
    code, _, words = run("-c", tmp_path / "tamm", "intake", picture(tmp_path / "in" / "quay.jpg"), "--copy", "--yes")
    assert code == 0, words
    return tmp_path / "tamm"


def scans(run, home: Path) -> list[tuple[str, str, int, str]]:  # type: ignore[no-untyped-def]
    (record,) = (json.loads(line) for line in run("-c", home, "show", "TRA-0001", "--json")[1].splitlines())
    return [(scan["side"], scan["role"], scan["turn"], Path(scan["path"]).name) for scan in record["scans"]]


def test_a_back_an_altered_version_and_a_better_scan(run, home: Path, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    back = picture(tmp_path / "in" / "scan0007.jpg", shade=20)
    code, _, words = run("-c", home, "scan", "add", "tra-0001", back, "--side", "back")
    assert (code, words.splitlines()[-1]) == (0, "TRA-0001: the back of an item that was here.")
    coloured = picture(tmp_path / "in" / "nice.png", shade=50)
    code, _, words = run("-c", home, "scan", "add", "TRA-0001", coloured, "--altered")
    assert (code, words) == (0, "TRA-0001: the altered version of the front of an item that was here.\n")
    front, verso, altered = scans(run, home)
    assert front[:2] == ("recto", "as-scanned") and verso[0] == "verso" and altered[1] == "altered"
    better = picture(tmp_path / "in" / "better.jpg", (120, 80))
    code, _, words = run("-c", home, "scan", "add", "TRA-0001", better)
    assert code == 2 and "TRA-0001 has a front already" in words and "better scan of it: boxlore scan replace." in words
    assert "--" not in words, "no option that the command lacks"
    before = {path.name for path in (home / "scans").iterdir()}
    assert run("-c", home, "scan", "turn", "TRA-0001")[0] == 0
    code, _, words = run("-c", home, "scan", "replace", "TRA-0001", better)
    assert code == 0 and "the front of TRA-0001 is this file now, seen turned by 90° as the one before was" in words
    assert {path.name for path in (home / "scans").iterdir()} > before, "the earlier file stays"
    assert len(scans(run, home)) == 3


def test_one_print_of_a_sheet_is_replaced_alone_and_show_tells_what_is_seen(run, home: Path, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    picture(tmp_path / "in" / "sheet.png", (400, 300))
    better = picture(tmp_path / "in" / "better.png")
    table = tmp_path / "in" / "items.csv"
    table.write_text('item,file,area\na,sheet.png,"0,0,0.5,1"\nb,sheet.png,"0.5,0,0.5,1"\n', "utf-8")
    assert run("-c", home, "intake", "--table", table, "--copy", "--yes")[0] == 0
    assert run("-c", home, "scan", "altered", "TRA-0002")[0] == 0
    of_both = [run("-c", home, "show", number)[1] for number in ("TRA-0002", "TRA-0003")]
    assert "Scan of the front: scans/TRA-0002_f.png  (of it the part 0 0 0.5 1, an altered version)" in of_both[0]
    assert "Scan of the front: scans/TRA-0002_f.png  (of it the part 0.5 0 0.5 1)" in of_both[1]
    assert run("-c", home, "scan", "altered", "TRA-0002", "--not")[0] == 0
    assert run("-c", home, "scan", "replace", "TRA-0002", better)[0] == 0
    shown = run("-c", home, "show", "TRA-0002")[1]
    assert "Scan of the front: scans/TRA-0002_f_2.png\n  Scanned before: scans/TRA-0002_f.png\n" in shown
    assert "File name: sheet.png" in shown and "File name: better.png" in shown
    over = picture(tmp_path / "tamm" / "scans" / "TRA-0002_f.png", (420, 300))
    code, _, words = run("-c", home, "intake", over, "--replace", "--yes")
    assert code == 0 and "the front of TRA-0003 is this file now" in words, words


def test_it_is_turned_and_noted_as_altered(run, home: Path) -> None:  # type: ignore[no-untyped-def]
    code, _, words = run("-c", home, "scan", "turn", "TRA-0001")
    assert (code, words) == (0, "TRA-0001: it is seen turned by 90° to the right; its file is as it was.\n")
    assert "by 270°" in run("-c", home, "scan", "turn", "TRA-0001", "180")[2]
    assert scans(run, home)[0][2] == 270
    assert "it is seen as it lies" in run("-c", home, "scan", "turn", "TRA-0001")[2]
    assert run("-c", home, "scan", "altered", "TRA-0001")[0] == 0 and scans(run, home)[0][1] == "altered"
    assert run("-c", home, "scan", "turn", "TRA-0001", "--altered")[0] == 0
    code, _, words = run("-c", home, "scan", "turn", "TRA-0001")
    assert code == 2 and "TRA-0001 has no front as-scanned: front (altered)" in words
    assert run("-c", home, "scan", "altered", "TRA-0001", "--not")[0] == 0 and scans(run, home)[0][1] == "as-scanned"


def test_a_damaged_file_is_named_with_what_to_do(run, home: Path, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    cut = tmp_path / "in" / "cut.jpg"
    cut.write_bytes(picture(tmp_path / "in" / "whole.jpg", (900, 600)).read_bytes()[:-3000])
    code, _, words = run("-c", home, "scan", "add", "TRA-0001", cut, "--side", "back")
    assert code == 0 and "The scan of the back is cut off or broken" in words and "again" in words
    assert "The scan of the back is cut off or broken" in run("-c", home, "show", "TRA-0001")[1]
    assert any(scan["damaged"] for scan in json.loads(run("-c", home, "show", "TRA-0001", "--json")[1])["scans"])


@pytest.mark.parametrize(
    ("arguments", "code", "words"),
    [
        (("add", "TRA-0009", "in/quay.jpg"), 2, "There is no photograph TRA-0009 here"),
        (("add", "TRA-0001", "in/none.jpg"), 2, "There is no file"),
        (
            ("replace", "TRA-0001", "in/quay.jpg", "--side", "back"),
            0,
            "a picture of the same bytes is here already, as TRA-0001.",
        ),
    ],
)
def test_what_cannot_be_is_said(  # type: ignore[no-untyped-def]
    run, home: Path, tmp_path: Path, arguments: tuple[str, ...], code: int, words: str
) -> None:
    command, number, path, *more = arguments
    ended, _, said = run("-c", home, "scan", command, number, tmp_path / path, *more)
    assert (ended, words in said) == (code, True), said
    assert "Traceback" not in said
