"""`boxlore slips`: caption slips to cut and mount under copy prints."""

from datetime import date
from pathlib import Path

import click

from boxlore.cli import print_options, talk
from boxlore.cli.outside import say_left_out
from boxlore.cli.paths import GivenPath
from boxlore.core.findings import several
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.outputs.printed_sheets import slips as make


@click.command()
@click.argument("out", type=GivenPath(dir_okay=False))
@click.option(
    "--print",
    "size",
    type=click.Choice(["4x6", "5x7", "8x10", "10x15", "13x18"]),
    default="4x6",
    show_default=True,
    help="The copy prints.",
)
@click.option(
    "--length",
    type=click.Choice(["slip", "sheet", "full"]),
    default="slip",
    show_default=True,
    help="How much they say.",
)
@print_options.printing
@click.pass_context
def slips(
    ctx: click.Context,
    /,
    out: Path,
    size: str,
    length: str,
    over: bool,
    on_day: date | None,
    **chosen: object,
) -> None:
    """Write caption slips, to cut and mount under copy prints, to OUT (a .pdf).

    A slip is as wide as its copy print lies or stands. The print size is in inches (4x6, 5x7, 8x10) or in
    centimetres (10x15, 13x18).
    """
    order = print_options.order_of(chosen)
    with open_collection(ctx.obj, write=False, on_day=on_day) as collection:
        collection.over = over
        say_left_out(collection, order.to, order.selection)
        printed = make(collection, out, order, size=size, length=length)
    talk.say(
        f"{several(printed.items, 'slip')} in {printed.path}, for {order.to}. Mount them under copy "
        f"prints, never on originals."
    )
    ctx.exit(talk.say_findings(printed.findings))
