"""`boxlore labels`: labels for boxes and folders, with what is in them."""

from datetime import date
from pathlib import Path

import click

from boxlore.cli import print_options, talk
from boxlore.cli.outside import say_left_out
from boxlore.cli.paths import GivenPath
from boxlore.core.findings import several
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.outputs.printed_sheets import LABEL_SIZES
from boxlore.tasks.outputs.printed_sheets import labels as make


@click.command()
@click.argument("out", type=GivenPath(dir_okay=False))
@click.option("--size", type=click.Choice(list(LABEL_SIZES)), default="a6", show_default=True, help="The label.")
@print_options.printing
@click.pass_context
def labels(
    ctx: click.Context,
    /,
    out: Path,
    size: str,
    over: bool,
    on_day: date | None,
    **chosen: object,
) -> None:
    """Write labels for boxes and folders, with what is in them, to OUT (a .pdf).

    Plain paper with crop marks: A6, A7, or cards of 3 by 5 inches.
    """
    order = print_options.order_of(chosen)
    with open_collection(ctx.obj, write=False, on_day=on_day) as collection:
        collection.over = over
        say_left_out(collection, order.to, order.selection)
        printed = make(collection, out, order, size=size)
    talk.say(
        f"Labels for {several(printed.items, 'item')} in {printed.path}, for {order.to}. They go on "
        f"enclosures, never on originals."
    )
    ctx.exit(talk.say_findings(printed.findings))
