"""`boxlore sit`: the sitting, in the terminal, with the page that the teller looks at."""

import importlib
from contextlib import ExitStack

import click

from boxlore.core.errors import WrongUse


@click.command()
@click.option("--narrator", default="", help="Who tells; with a name it opens straight on the first item.")
@click.option("--interviewer", default="", help="Who asks.")
@click.option("--no-viewing", is_flag=True, help="Without the page for the teller's browser.")
@click.option("--lan", is_flag=True, help="Let a tablet on the local network show the page (not encrypted).")
@click.pass_context
def sit(ctx: click.Context, narrator: str, interviewer: str, no_viewing: bool, lan: bool) -> None:
    """Sit with a narrator: picture, questions and answers, each word kept as it is typed."""
    if lan and no_viewing:
        raise WrongUse("--lan is about the page, and --no-viewing leaves it away.", "Give one of them.")
    app = importlib.import_module("boxlore.tui.app")
    showing = importlib.import_module("boxlore.tasks.showing").Showing()
    if lan:
        importlib.import_module("boxlore.viewing.addresses").of_this_machine()
    with ExitStack() as stack:

        def begin() -> None:
            stack.enter_context(importlib.import_module("boxlore.viewing.server").serving(showing, lan=lan))

        if not no_viewing:
            showing.opening = begin
        code = app.run(ctx.obj, narrator=narrator, interviewer=interviewer, showing=showing)
    ctx.exit(code)
