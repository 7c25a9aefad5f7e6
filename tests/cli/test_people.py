"""`boxlore people` as a person or a script meets it: exit codes, data on stdout, words on stderr."""

import json
import shutil
from pathlib import Path

import pytest

from boxlore.cli.main import main


@pytest.fixture
def run(capsys: pytest.CaptureFixture[str], demo: Path, tmp_path: Path):  # type: ignore[no-untyped-def]
    home = tmp_path / "mine"
    shutil.copytree(demo, home, ignore=shutil.ignore_patterns("copies", "print", "transfer"))

    def ran(*arguments: object) -> tuple[int, str, str]:
        with pytest.raises(SystemExit) as left:
            main(["-c", str(home), "people", *map(str, arguments)])
        out, err = capsys.readouterr()
        return int(left.value.code or 0), out, err

    return ran


SUBCOMMANDS = (
    "names list show kin shown tell import merge unmerge split duplicates apart consent audience living".split()
)


@pytest.mark.parametrize("name", SUBCOMMANDS)
def test_every_part_explains_itself(run, name: str) -> None:  # type: ignore[no-untyped-def]
    code, out, _ = run(name, "--help")
    assert code == 0 and "Usage:" in out and len(out.splitlines()) > 4


def test_list_show_and_kin(run) -> None:  # type: ignore[no-untyped-def]
    code, out, _ = run("list", "--json", "leid")
    (row,) = map(json.loads, out.splitlines())
    assert (code, row["name"], row["uri"]) == (0, "Leida Rourke", f"urn:uuid:{row['id']}")
    assert run("list", "nobody")[0] == 1
    assert "Taken as living: said to be living" in run("show", "Leida", "--on", "2026-11-25")[1]
    shown = json.loads(run("show", "Leida", "--json")[1])
    assert shown["living"] is True and shown["statements"]
    assert run("kin", "Mia", "Con")[1].strip() == "Con Rourke: Mia's uncle"
    assert run("kin", "Mia", "accordion")[0] == 1
    assert "Leida Rourke: Mia's mother" in run("kin", "Mia")[1]
    assert {"term": "uncle", "degree": 3}.items() <= json.loads(run("kin", "Mia", "Con", "--json")[1]).items()
    assert "dead" in run("living", "--on", "2026-11-25")[1]


def test_merge_and_back(run) -> None:  # type: ignore[no-untyped-def]
    assert run("merge", "Michael Rourke", "accordion")[0] == 0
    assert "Michael Rourke" in run("list", "accordion")[1] or run("show", "accordion")[0] == 0
    assert run("unmerge", "Michael Rourke")[0] == 0
    assert run("unmerge", "Michael Rourke")[0] == 1
    assert run("apart", "Michael Rourke", "accordion")[0] == 0
    assert run("duplicates")[0] in (0, 1)


def test_places_consent_audience_and_telling(run) -> None:  # type: ignore[no-untyped-def]
    assert run("shown", "TRA-0025")[0] == 1
    code, _, err = run("shown", "TRA-0025", "left to right: Leida, ?, Con")
    assert code == 0 and "3 people, 1 of them not known" in err
    assert run("shown", "TRA-0025")[1].strip() == "1 Leida Rourke; 2 ?; 3 Con Rourke"
    assert run("consent", "Mia")[0] == 1
    assert run("consent", "Tui", "--for", "name", "--as", "guardian")[0] == 2
    assert run("consent", "Mia", "--for", "name", "--on", "2026-11-25")[0] == 0
    assert "given in person, 2026-11-25: name" in run("consent", "Mia")[1]
    code, _, err = run("consent", "Mia", "--withdraw")
    assert code == 2 and "It is not said what Mia Rourke takes back." in err and "--for name --withdraw." in err
    code, _, err = run("consent", "Mia", "--for", "name", "--withdraw")
    assert code == 0 and "Mia Rourke" in err and "Boxlore cannot see: ask for it back." in err
    assert "allows nothing that could be taken back" in run("consent", "Mia", "--withdraw")[2]
    assert run("audience", "Mia", "keeper")[0] == 0
    assert run("audience", "TRA-0003", "family", "--item")[0] == 0
    assert run("audience", "Mia", "everybody")[0] == 2
    assert run("tell", "Con", "nickname", "Connie")[0] == 0
    assert run("show", "Connie")[0] == 0


def test_a_tree_file_and_a_split(run, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    path = tmp_path / "tree.ged"
    path.write_text("0 HEAD\n1 GEDC\n2 VERS 7.0\n0 @I1@ INDI\n1 NAME Ruth /Parata/\n1 OCCU nurse\n0 TRLR\n")
    code, out, err = run("import", path, "--json")
    rows = list(map(json.loads, out.splitlines()))
    assert (code, rows[0]["new"], rows[1]["not_understood"]) == (1, 1, "INDI.OCCU")
    assert "1 person new" in err
    assert "not understood: INDI.OCCU" in run("import", path)[1]
    assert run("import", tmp_path / "none.ged")[0] == 2
    statement = json.loads(run("show", "Ruth", "--json")[1])["statements"][-1]
    assert run("split", "Ruth", "another Ruth", "--statement", statement["id"][-12:])[0] == 0
    assert run("split", "Ruth Parata", "nobody")[0] == 2


def test_names_are_shown_in_their_parts_confirmed_and_corrected(run) -> None:  # type: ignore[no-untyped-def]
    run("shown", "TRA-0001", "1 Te Rangi Hīroa; 2 Pippa Marlowe")
    code, out, _ = run("names")
    assert code == 1 and out.splitlines()[0] == (
        "Te Rangi Hīroa: given Te Rangi, family Hīroa  Is “Hīroa” a family name?"
    )
    assert "Pippa Marlowe: given Pippa, family Marlowe" in out
    code, _, err = run("names", "Hīroa", "--part", "given=Te Rangi Hīroa", "--part", "family=")
    assert code == 0 and "given Te Rangi Hīroa." in err
    (row,) = map(json.loads, run("names", "Hīroa", "--json")[1].splitlines())
    assert (row["parts"], row["confirmed"], row["asks"]) == ({"given": "Te Rangi Hīroa"}, True, None)
    assert run("names", "Pippa", "--confirm")[0] == 0
    assert "(confirmed)" in run("names", "Pippa")[1]


NO_PARTS = [
    (("names", "--confirm"), "Whose name?"),
    (("names", "Leida", "--part", "family"), "says no part"),
    (("names", "accordion", "--part", "middle=tall"), "is no part of a name"),
    (("names", "accordion", "--part", "family=Tamm"), "does not stand in"),
    (("names", "Leida", "--confirm"), "told whole"),
]


@pytest.mark.parametrize(("arguments", "words"), NO_PARTS)
def test_parts_that_are_none_are_refused(run, arguments: tuple[str, ...], words: str) -> None:  # type: ignore[no-untyped-def]
    code, _, err = run(*arguments)
    assert code == 2 and words in err
