"""`boxlore copies` and `boxlore verify` on a folder of copies: data on stdout, words on stderr, exit codes."""

import json
import shutil
from pathlib import Path

import pytest
from PIL import Image

from boxlore.cli.main import main


@pytest.fixture
def run(capsys: pytest.CaptureFixture[str]):  # type: ignore[no-untyped-def]
    def ran(*arguments: object) -> tuple[int, list[dict[str, object]], str]:
        with pytest.raises(SystemExit) as left:
            main([str(one) for one in arguments])
        out, err = capsys.readouterr()
        return int(left.value.code or 0), [json.loads(line) for line in out.splitlines()], err

    return ran


def test_smaller_copies_verified_changed_and_said(  # type: ignore[no-untyped-def]
    run, demo: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    home, out = tmp_path / "mine", tmp_path / "small"
    shutil.copytree(demo, home)
    code, rows, err = run(
        "-c", home, "copies", out, "--longest", "200", "--item", "TRA-0001", "--json", "--language", "et"
    )
    assert code == 0 and "2 written" in err
    assert [list(one) for one in rows] == [["number", "mark", "scan", "copy", "state", "why"]] * 2
    assert all("Newly encoded" in str(one["why"]) for one in rows)
    with Image.open(out / str(rows[0]["copy"])) as image:
        assert max(image.size) == 200
    assert run("-c", home, "verify", out, "--json")[:2] == (0, [])
    with pytest.raises(SystemExit):
        main(["-c", str(home), "tell", "TRA-0001", "story", "The nets were mended in winter."])
    capsys.readouterr()
    code, rows, err = run("-c", home, "verify", out, "--json")
    assert code == 1 and "1 is not as it should be" in err
    assert {(one["rule"], one["number"]) for one in rows} == {("copy.caption", "TRA-0001")}
    code, rows, err = run("-c", home, "verify", "--json")
    assert code == 1 and {one["number"] for one in rows} == {"TRA-0001"}


def test_what_is_shortened_in_iim_is_one_line_at_the_end(  # type: ignore[no-untyped-def]
    demo: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str], run
) -> None:
    with pytest.raises(SystemExit):
        main(["-c", str(demo), "copies", str(tmp_path / "c"), "--item", "TRA-0019"])
    err = capsys.readouterr().err
    assert "IIM 2:05" not in err
    assert err.splitlines()[-1].startswith("In 1 copy the older form of the caption (IIM) is shortened,")
    _, rows, err = run("-c", demo, "copies", tmp_path / "d", "--item", "TRA-0019", "--json")
    assert "IIM 2:05 holds 64 of 83 bytes; XMP holds all." in str(rows[0]["why"]) and "is shortened" not in err


@pytest.mark.parametrize("pixels", ["10", "70000", "many"])
def test_sizes_that_make_no_sense(pixels: str, run, demo: Path, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    assert run("-c", demo, "copies", tmp_path / "c", "--longest", pixels)[0] == 2


def test_no_copy_where_a_scan_of_the_collection_lies(run, demo: Path, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    """Also where one of its own copies was taken in where it lies: it is a scan now, and no scan is ever written to."""
    home = tmp_path / "home"
    shutil.copytree(demo, home, ignore=shutil.ignore_patterns("pages", "transfer", "copies"))
    assert run("-c", home, "copies", home / "copies", "--item", "TRA-0001")[0] == 0
    assert run("-c", home, "intake", home / "copies", "--yes", "--own")[0] in (0, 1)
    assert run("-c", home, "tell", "TRA-0001", "story", "The nets were mended in winter.")[0] == 0
    before = {path: path.read_bytes() for path in (home / "copies").rglob("*.jpg")}
    code, _, err = run("-c", home, "copies", home / "copies", "--item", "TRA-0001")
    assert code == 1 and "Copies cannot go among the scans" in err
    assert before and {path: path.read_bytes() for path in before} == before


def test_one_folder_one_audience(run, demo: Path) -> None:  # type: ignore[no-untyped-def]
    code, _, err = run("-c", demo, "copies", demo / "copies", "--for", "outside")
    assert code == 2 and "holds copies for family" in err
