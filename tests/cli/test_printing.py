"""`sheet`, `slips`, `labels`, `worksheet`, `pages` and the way back by codes, as a person meets them at the shell."""

import shutil
from pathlib import Path

import pytest

ON = ("--on", "2026-11-25")


PDFS = [
    ("sheet", ("--box", 1, "--paper", "letter"), "13 photographs in"),
    ("sheet", ("--event", "picnic", "--theme", "large-print", "--bleed", 3), "1 photograph in"),
    ("slips", ("--item", "TRA-0003", "--print", "13x18", "--length", "full"), "1 slip in"),
    ("sheet", ("--item", "TRA-0018", "--kin-of", "Leida"), "1 photograph in"),
    ("labels", ("--size", "3x5"), "Labels for 37 items"),
    ("worksheet", ("--item", "TRA-0003"), "Type the answers into"),
    ("worksheet", ("--ask", "Liisi Kuusk", "--minutes", "4"), "1 photograph in"),
    ("worksheet", ("--box", "1", "--only-open", "--per-page", "4", "--names"), "Type the answers into"),
]


@pytest.mark.parametrize(("command", "more", "said"), PDFS)
def test_each_writes_its_pdf_and_says_so(run, demo: Path, tmp_path: Path, command, more, said: str) -> None:  # type: ignore[no-untyped-def]
    out = tmp_path / "new folder" / "out.pdf"
    code, stdout, err = run("-c", demo, command, out, *more, *ON)
    assert (code, stdout) == (0, "")
    assert said in err
    assert out.read_bytes().startswith(b"%PDF-1.7")


def test_pages(run, demo: Path, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    code, _, err = run("-c", demo, "pages", tmp_path / "p", *ON)
    assert code == 0 and "for outside" in err and (tmp_path / "p" / "index.html").is_file()
    code, _, err = run("-c", demo, "pages", tmp_path, *ON)
    assert code == 2 and "files that Boxlore did not write" in err


def test_wrong_use_says_what_would_be_right(run, demo: Path, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    (tmp_path / "mine.toml").write_text("size = 2", encoding="utf-8")
    code, _, err = run("-c", demo, "sheet", tmp_path / "a.pdf", "--theme", tmp_path / "mine.toml")
    assert code == 2 and "size is 2. It may be from 6 to 40." in err
    code, _, err = run("-c", demo, "sheet", tmp_path / "a.pdf", "--box", "99")
    assert code == 2 and "Nothing here is of box “99”." in err
    code, _, err = run("-c", demo, "worksheet", tmp_path / "a.pdf", "--ask", "Leida Rourke", "--box", "1")
    assert code == 2 and "--box is not used with --ask" in err
    code, _, err = run("-c", demo, "worksheet", tmp_path / "a.pdf", "--ask", "Nobody Atall")
    assert code == 2 and "Nobody among the people is called “Nobody Atall”." in err
    assert not (tmp_path / "a.pdf").exists()


def test_answers_come_back_as_text_and_as_a_table(run, demo: Path, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    home = tmp_path / "mine"
    shutil.copytree(demo, home)
    (tmp_path / "a.txt").write_text("# from Con\nA3-W6-5: Villem Lepik\n", encoding="utf-8")
    assert run("-c", home, "tell", "--from", tmp_path / "a.txt", "--by", "narrator:Con", "--printed-here")[0] == 0
    (tmp_path / "b.csv").write_text("code,text,sure\nA3-P-6,Tallinn,likely\nA3-P-7,Riga,\n", encoding="utf-8")
    code, _, err = run("-c", home, "tell", "--from", tmp_path / "b.csv", "--printed-here")
    assert code == 1 and "Line 3" in err and "Look at the worksheet again" in err
    code, out, _ = run("-c", home, "find", "Villem", "--json")
    assert code == 0 and '"number": "TRA-0003"' in out
    code, _, err = run("-c", home, "tell", "--from", tmp_path / "none.txt")
    assert code == 2 and "There is no file" in err
