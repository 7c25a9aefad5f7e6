"""Nothing found is said, and nothing meant is refused: rules of our own, no outside source."""

import os
from collections.abc import Callable, Iterator
from pathlib import Path

import click
import pytest

from boxlore.cli.main import COMMANDS, boxlore
from boxlore.cli.paths import GivenPath
from boxlore.core.errors import WrongUse
from boxlore.tasks.outputs.printed_sheets import theme_of

NOTHING = [
    (["find", "zeppelin"], 1, "Nothing told has all of these words: zeppelin"),
    (["people", "list"], 0, "Nobody is known here yet."),
    (["people", "list", "Zebedee"], 1, "Nobody here is called “Zebedee”."),
    (["people", "living"], 0, "Nobody is known here yet."),
    (["people", "duplicates"], 0, "Nobody seems to be there twice."),
    (["people", "names"], 1, "No name is told whole."),
    (["places"], 0, "No place of the family's own yet."),
    (["recording"], 0, "There was no sitting yet. boxlore sit holds one."),
    (["housing", "what"], 0, "No box or folder is noted yet."),
    (["housing", "scans", "--prints"], 0, "There is no scan to print."),
    (["verify", "--events"], 0, "No scan was taken in or read again yet."),
]


def test_where_there_is_nothing_it_is_said(run, bare: Callable[[int], Path]) -> None:  # type: ignore[no-untyped-def]
    home = bare(1)
    for arguments, code, sentence in NOTHING:
        ran, out, err = run("-c", home, *arguments)
        assert (ran, out) == (code, ""), arguments
        assert sentence in err, arguments


def test_of_somebody_too(run, bare: Callable[[int], Path]) -> None:  # type: ignore[no-untyped-def]
    home = bare(1)
    run("-c", home, "tell", "TRA-0001", "person", "Aino Tamm")
    assert run("-c", home, "people", "kin", "Aino") == (1, "", "No kin of Aino Tamm is known.\n")
    assert run("-c", home, "people", "consent", "Aino") == (1, "", "Nothing is noted of what Aino Tamm allows.\n")


def every(command: click.Command) -> Iterator[click.Command]:
    yield command
    if isinstance(command, click.Group):
        context = click.Context(command)
        for name in command.list_commands(context):
            inner = command.get_command(context, name)
            assert inner is not None
            yield from every(inner)


def test_every_path_that_a_command_takes_is_refused_where_it_is_empty() -> None:
    paths = [
        (command, parameter)
        for command in every(boxlore)
        for parameter in command.params
        if isinstance(parameter.type, click.Path)
    ]
    assert len(paths) >= len(COMMANDS) // 2
    assert [command.name for command, parameter in paths if not isinstance(parameter.type, GivenPath)] == []


@pytest.mark.parametrize(
    ("arguments", "name"),
    [(["new", ""], "FOLDER"), (["copies", " "], "OUT"), (["-c", "", "check"], "-c"), (["intake", "\t"], "PATHS"),
     (["tell", "--from", ""], "--from")],
)  # fmt: skip
def test_an_empty_path_is_not_the_folder_one_is_in(  # type: ignore[no-untyped-def]
    run, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, arguments: list[str], name: str
) -> None:
    monkeypatch.chdir(tmp_path)
    code, out, err = run(*arguments)
    assert (code, out) == (2, "") and err.startswith(f"{name} is empty. Write the file or folder that is meant")
    assert list(tmp_path.iterdir()) == []


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="needs named pipes")
def test_a_pipe_in_the_place_of_a_file_is_refused_at_once(run, bare: Callable[[int], Path], tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    """Nobody writes into it, so that whoever read it would wait for ever (POSIX, open)."""
    home, pipe = bare(1), tmp_path / "pipe"
    os.mkfifo(pipe)
    for arguments in (
        ("people", "import", pipe),
        ("tell", "--from", pipe),
        ("transfer", tmp_path / "t", "--archive", pipe, "--yes"),
        ("sheet", pipe),
    ):
        code, _, err = run("-c", home, *arguments)
        assert code == 2 and "no file" in " ".join(err.split()), (arguments, err)
    with pytest.raises(WrongUse, match="no theme and no file"):
        theme_of(str(pipe))
