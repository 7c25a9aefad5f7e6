"""`boxlore sheet`: the album as a PDF."""

from dataclasses import replace
from datetime import date
from pathlib import Path

import click

from boxlore.cli import print_options, talk
from boxlore.cli.outside import say_left_out
from boxlore.cli.paths import GivenPath
from boxlore.core.findings import several
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.outputs.printed_sheets import BOOK_SIZES, BY
from boxlore.tasks.outputs.printed_sheets import sheet as make


@click.command()
@click.argument("out", type=GivenPath(dir_okay=False))
@click.option(
    "--by",
    type=click.Choice(list(BY)),
    default="decade",
    show_default=True,
    help="What the album's chapters are made of.",
)
@click.option(
    "--bleed",
    type=click.FloatRange(0, 10),
    default=0.0,
    metavar="MM",
    help="For a print shop: the theme's paper colour to the edge, and so many millimetres over it (mostly 3).",
)
@print_options.printing_on(BOOK_SIZES)
@click.pass_context
def sheet(
    ctx: click.Context,
    /,
    out: Path,
    by: str,
    bleed: float,
    over: bool,
    on_day: date | None,
    **chosen: object,
) -> None:
    """Write the album to OUT (a .pdf): a title page, chapters of captioned photographs, who is who, places."""
    order = replace(print_options.order_of(chosen), by=by, bleed=bleed)
    with open_collection(ctx.obj, write=False, on_day=on_day) as collection, talk.progress() as bar:
        collection.over = over
        say_left_out(collection, order.to, order.selection)
        printed = make(collection, out, order, progress=bar)
    talk.say(f"{several(printed.items, 'photograph')} in {printed.path}, for {order.to}; {printed.why_left_out}.")
    ctx.exit(talk.say_findings(printed.findings))
