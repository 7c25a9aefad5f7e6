"""`boxlore sit`: the sitting, in the terminal."""

import importlib

import click


@click.command()
@click.option("--narrator", default="", help="Who tells; with a name it opens straight on the first item.")
@click.option("--interviewer", default="", help="Who asks.")
@click.pass_context
def sit(ctx: click.Context, narrator: str, interviewer: str) -> None:
    """Sit with a narrator: picture, questions and answers, each word kept as it is typed."""
    app = importlib.import_module("boxlore.tui.app")
    ctx.exit(app.run(ctx.obj, narrator=narrator, interviewer=interviewer))
