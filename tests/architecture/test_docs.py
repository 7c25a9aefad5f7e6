"""What the README, DEVELOPERS.md and every docstring name is there (our own rule: they claim only what is)."""

import importlib
import re
import shlex
from collections.abc import Iterator
from pathlib import Path

import click
import pytest

from boxlore.cli.main import COMMANDS, boxlore

ROOT = Path(__file__).parents[2]
SRC = ROOT / "src" / "boxlore"
FOLDERS = sorted(path.name for path in SRC.iterdir() if (path / "__init__.py").is_file())

PROSE = [
    *ROOT.glob("*.md"),
    *(path for folder in ("src", "tests", "demo_family", "schemas") for path in (ROOT / folder).rglob("*.py")),
]

NAMED = re.compile(rf"`((?:boxlore\.)?(?:{'|'.join(FOLDERS)})[./][\w./*]+)(?:\([^`\n]*\))?`|`(tests/[\w./*]+)`")
"""A place in the source in backticks, `core/dates/edtf.py` or `core.dates.edtf.parse`, or one in the tests."""


def is_there(place: str) -> bool:
    """Whether there is such a file, folder, module or name in a module."""
    if any(ROOT.glob(place)) or any(SRC.glob(place)):
        return True
    parts = re.split("[./]", place.removeprefix("boxlore."))
    for count in range(len(parts), 0, -1):
        if SRC.joinpath(*parts[:count]).with_suffix(".py").is_file():
            thing = importlib.import_module(".".join(("boxlore", *parts[:count])))
            for name in parts[count:]:
                if not hasattr(thing, name):
                    return name in getattr(thing, "__annotations__", {})
                thing = getattr(thing, name)
            return True
    return SRC.joinpath(*parts).is_dir()


def test_every_place_named_is_there() -> None:
    named = [(path, place) for path in PROSE for place in _places(path.read_text(encoding="utf-8"))]
    assert len(named) > 50
    assert [f"{path.relative_to(ROOT)}: {place}" for path, place in named if not is_there(place)] == []


NOT_OF_THE_SOURCE = {"archive.toml", "pyproject.toml"}
"""Names of files in the guide that lie elsewhere: what a keeper has, and the settings of the project."""


def test_the_guide_names_files_that_there_are_and_every_room() -> None:
    """By a bare name too, as `calendars.py` after `core/dates/lexicon.py`; and each room has something in the table."""
    guide = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")
    bare = set(re.findall(r"`(\w+\.(?:py|typ|toml|sql|css|html|js))(?:\.\w+)?`", guide)) - NOT_OF_THE_SOURCE
    assert bare <= {path.name for path in (ROOT / "src").rglob("*")} | {path.name for path in ROOT.glob("tests/*/*")}
    table = guide.partition("## To change X, go to Y")[2].partition("\n## ")[0]
    rooms = {path.parent.relative_to(SRC).as_posix() for path in SRC.rglob("*.py") if path.name != "__init__.py"}
    nowhere = {room for room in rooms - {"."} if not re.search(rf"`{room}/", table)}
    assert nowhere == {"tasks/demo"}, nowhere


def _places(text: str) -> Iterator[str]:
    for match in NAMED.finditer(text):
        yield match[1] or match[2]


@pytest.mark.parametrize("place", ["core/dates/none.py", "core.dates.edtf.none", "tests/none/", "store.none"])
def test_a_place_that_is_not_there_is_found(place: str) -> None:
    assert not is_there(place)


def commands_shown() -> list[str]:
    """Every line of the README that begins with a command of ours, alone in backticks or in a block."""
    text = (ROOT / "README.md").read_text(encoding="utf-8")
    return [line.strip("`") for line in re.findall(r"`boxlore [^`\n]+`|^boxlore .+$", text, re.MULTILINE)]


def test_the_readme_shows_commands_that_there_are() -> None:
    shown = commands_shown()
    assert len(shown) > 20
    for line in shown:
        words = [word for word in shlex.split(line, comments=True)[1:] if word not in ("COMMAND", "-h")]
        while words[:1] == ["-c"]:
            words = words[2:]
        if not words or words[0].startswith("-"):
            continue
        command: click.Command | None = boxlore.get_command(click.Context(boxlore), words[0])
        assert command is not None, line
        if isinstance(command, click.Group) and len(words) > 1 and words[1] in command.commands:
            command = command.commands[words[1]]
        options = {option for parameter in command.params for option in parameter.opts} | {"--help"}
        assert {word.split("=")[0] for word in words if word.startswith("--")} <= options, line


def test_the_readmes_other_options_are_options_of_some_command() -> None:
    text = (ROOT / "README.md").read_text(encoding="utf-8")
    options = {
        option
        for name in COMMANDS
        if (command := boxlore.get_command(click.Context(boxlore), name)) is not None
        for parameter in command.params
        for option in parameter.opts
    }
    assert set(re.findall(r"`(--[a-z-]+)", text)) <= options
