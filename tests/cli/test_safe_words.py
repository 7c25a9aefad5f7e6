"""Nothing that a file is called commands the terminal, and no prefix leads out of the collection.

Control functions: ECMA-48, 5th edition, 8.3 (ESC, CSI, OSC, BEL, BS and the C1 set); OSC 52, which writes to the
clipboard, is common practice of terminals, no source.
"""

import unicodedata
from pathlib import Path

import pytest

CLIPBOARD = "\x1b]52;c;cm0gLXJmIH4=\x07"
EVIL = f"a{CLIPBOARD}\x1b[2J\x9b31m\x08\r\u202e_f.jpg"


def commands(text: str) -> set[str]:
    return {letter for letter in text if unicodedata.category(letter) in ("Cc", "Cf") and letter != "\n"}


def test_a_file_name_does_not_command_the_terminal(run, mine: Path, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    folder = tmp_path / "found"
    folder.mkdir()
    (folder / EVIL).write_bytes(b"\xff\xd8 no picture")
    _, out, err = run("-c", mine, "intake", folder, "--copy", "--yes")
    assert "_f.jpg" in out + err
    assert not commands(out) and not commands(err)
    _, out, err = run("-c", mine, "tell", "--from", tmp_path / EVIL)
    assert "There is no file" in err
    assert not commands(out) and not commands(err)
    _, out, err = run("-c", mine, "sheet", mine / "scans" / EVIL)
    assert err and not commands(err)


def test_a_wrong_use_of_a_command_does_not_either(run) -> None:  # type: ignore[no-untyped-def]
    code, out, err = run(f"x{EVIL}")
    assert code == 2 and "No such command" in err
    assert not commands(out) and not commands(err)


@pytest.mark.parametrize(
    "prefix", ["../../A", "A/B", "T R", "=CM", "A\\B", "A.B", "1AB", "A", "ABCDEFGH", "ÄB", "AB\n"]
)
def test_a_prefix_is_letters_and_digits(run, tmp_path: Path, prefix: str) -> None:  # type: ignore[no-untyped-def]
    code, _, err = run("new", tmp_path / "photos", "--prefix", prefix)
    assert code == 2 and "capital letters or digits" in err
    assert not (tmp_path / "photos").exists()


@pytest.mark.parametrize("prefix", ["TR", "tamm", "TR2", "ABCDEFG"])
def test_such_a_prefix_is_taken(run, tmp_path: Path, prefix: str) -> None:  # type: ignore[no-untyped-def]
    code, _, err = run("new", tmp_path / "photos", "--prefix", prefix)
    assert code == 0 and f"{prefix.upper()}A-0001" in err
