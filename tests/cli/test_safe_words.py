"""Nothing that a file is called commands the terminal, and no prefix leads out of the collection.

Control functions: ECMA-48, 5th edition, 8.3 (ESC, CSI, OSC, BEL, BS and the C1 set); OSC 52, which writes to the
clipboard, is common practice of terminals, no source.
"""

import json
import os
import subprocess
import sys
import unicodedata
from pathlib import Path

import pytest
from tests.drawn import some

import boxlore.cli

SOURCE = Path(boxlore.cli.__file__).parent
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


def test_a_place_of_a_table_somebody_wrote_does_not_either(run, mine: Path, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    table = tmp_path / "places.txt"
    name = "Zed\x1b]0;PWN\x07ville"
    row = f"9000001|{name}|Zedville|{name}|-45.1|170.6|P|PPL|NZ||F7||||900|||Pacific/Auckland|"
    table.write_text(row.replace("|", "\t") + "\n", encoding="utf-8")
    run("-c", mine, "places", "import", table)
    for more in ((), ("--json",)):
        _, out, err = run("-c", mine, "place", "Zedville", *more)
        assert "ville" in out and not commands(out) and not commands(err)


def test_a_row_of_json_shows_what_it_means(run, mine: Path, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    """What shows nothing is escaped (RFC 8259, section 7), and means the same."""
    folder = tmp_path / "found"
    folder.mkdir()
    name = "a\x9b31m\u202eb.jpg"
    (folder / name).write_bytes(b"\xff\xd8 no picture")
    _, out, _ = run("-c", mine, "intake", folder, "--copy", "--yes", "--json")
    assert not commands(out)
    assert json.loads(out.splitlines()[0])["key"].endswith(name.removesuffix(".jpg"))


@pytest.mark.parametrize("encoding", some(["cp1252", "latin-1", "utf-8"]))
def test_a_pipe_in_an_old_encoding_ends_no_command(tmp_path: Path, encoding: str) -> None:
    """Python's `PYTHONIOENCODING`, as a pipe has it on a system whose code page is not UTF-8."""
    program = [sys.executable, "-c", "from boxlore.cli.main import main; main()"]
    environment = {**os.environ, "PYTHONIOENCODING": encoding}
    plain, rows = (
        subprocess.run([*program, "date", "suvel 1938, Ōtāne", *more], capture_output=True, env=environment)
        for more in ((), ("--json",))
    )
    assert plain.returncode in (0, 1) and b"Traceback" not in plain.stderr + rows.stderr
    shown = plain.stdout.decode(encoding)
    assert ("Ōtāne" if encoding == "utf-8" else "t\\u0101ne") in shown
    assert json.loads(rows.stdout.decode(encoding))["text"].endswith("Ōtāne")


def test_all_that_is_written_is_made_safe() -> None:
    """Two modules write to the streams, and both leave out what commands a terminal; the help is our own words."""
    writers = {path.name for path in SOURCE.rglob("*.py") if "click.echo(" in path.read_text(encoding="utf-8")}
    assert writers == {"output.py", "talk.py", "main.py"}
