"""Finds the folders that come with the program, `schemas/` and `demo_family/`: in the wheel, or beside `src/`."""

from pathlib import Path

from boxlore.core.errors import CouldNot

_PACKAGE = Path(__file__).resolve().parent.parent


def shipped(name: str) -> Path:
    """The folder `name` (`schemas` or `demo_family`): inside the installed package, else beside `src/`.

    Raises CouldNot if it is in neither place.
    """
    for folder in (_PACKAGE / "shipped" / name, _PACKAGE.parent.parent / name):
        if folder.is_dir():
            return folder
    raise CouldNot(f"This copy of Boxlore lacks its folder {name}.", "Install it again.")
