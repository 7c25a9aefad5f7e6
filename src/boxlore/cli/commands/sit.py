"""`boxlore sit`: the sitting, in the terminal, with the page that the teller looks at."""

import gc
import importlib
import sys
from contextlib import ExitStack
from pathlib import Path
from typing import Any

import click

from boxlore.core.errors import WrongUse
from boxlore.tasks.collection.opening import open_collection


@click.command()
@click.option("--narrator", default="", help="Who tells; with a name it opens straight on the first item.")
@click.option("--interviewer", default="", help="Who asks.")
@click.option("--plain", is_flag=True, help="Line by line, for a screen reader or a slow link.")
@click.option("--no-viewing", is_flag=True, help="Without the page for the teller's browser.")
@click.option("--lan", is_flag=True, help="Let a tablet on the local network show the page (not encrypted).")
@click.pass_context
def sit(ctx: click.Context, narrator: str, interviewer: str, plain: bool, no_viewing: bool, lan: bool) -> None:
    """Sit with a narrator: picture, questions and answers, each word kept as it is typed."""
    if lan and no_viewing:
        raise WrongUse("--lan is about the page, and --no-viewing leaves it away.", "Give one of them.")
    showing = importlib.import_module("boxlore.tasks.sitting.showing").Showing()
    if lan:
        importlib.import_module("boxlore.viewing.addresses").of_this_machine()
    with ExitStack() as stack:

        def begin() -> None:
            stack.enter_context(importlib.import_module("boxlore.viewing.server").serving(showing, lan=lan))

        if not no_viewing:
            showing.opening = begin
        if plain:
            _plain(ctx.obj, narrator, interviewer, showing)
            return
        app = _load("boxlore.tui.app")
        code = app.run(ctx.obj, narrator=narrator, interviewer=interviewer, showing=showing)
    ctx.exit(code)


def _load(name: str) -> Any:
    """Import with garbage collection off, then freeze: these objects live to the end, and scanning them delays keys."""
    gc.disable()
    try:
        return importlib.import_module(name)
    finally:
        gc.freeze()
        gc.enable()


def _plain(folder: Path, narrator: str, interviewer: str, showing: Any) -> None:
    """Hold the sitting line by line; it ends where the input ends."""
    sitting = importlib.import_module("boxlore.tasks.sitting.session").Sitting
    sit_plain = importlib.import_module("boxlore.cli.plain_orders").sit_plain
    with open_collection(folder, fallback_read_only=True) as collection:
        showing.collection = collection
        showing.opening()
        sit_plain(sitting(collection, narrator=narrator, interviewer=interviewer), showing, _listen, click.echo)


def _listen() -> str | None:
    try:
        return input("> " if sys.stdin.isatty() else "")
    except (EOFError, KeyboardInterrupt):
        return None
