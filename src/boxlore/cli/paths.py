"""The type of every path that a command takes."""

import os
from pathlib import Path
from typing import Any

import click

from boxlore.core.errors import WrongUse
from boxlore.core.fields.letters import is_blank


class GivenPath(click.Path):
    """A path that somebody wrote. An empty one, which would be the folder one is in, is refused: it is a slip, such as
    a variable of the shell that holds nothing. So is a pipe, a socket or a device, whose reading may never end, unless
    `any_kind` says that the command itself tells of it."""

    def __init__(
        self, *, exists: bool = False, file_okay: bool = True, dir_okay: bool = True, any_kind: bool = False
    ) -> None:
        super().__init__(exists=exists, file_okay=file_okay, dir_okay=dir_okay, path_type=Path)
        self.any_kind = any_kind

    def convert(self, value: Any, param: click.Parameter | None, ctx: click.Context | None) -> Any:
        if isinstance(value, str) and is_blank(value):
            name = param.make_metavar(ctx) if isinstance(param, click.Argument) and ctx else ""
            called = name.strip("[].") or (param.opts[0] if param else "A path")
            raise WrongUse(f"{called} is empty.", "Write the file or folder that is meant; a full stop is this folder.")
        path = os.fsdecode(super().convert(value, param, ctx))
        is_other = os.path.exists(path) and not os.path.isfile(path) and not os.path.isdir(path)
        if is_other and not self.any_kind:
            why = f"{path} is a pipe, a socket or a device, and no file."
            raise WrongUse(why, "Name a file; save it as one first.")
        return Path(path)
