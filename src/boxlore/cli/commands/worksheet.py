"""`boxlore worksheet`: a large picture with lines to write on, for a relative who uses no computer."""

from datetime import date
from pathlib import Path

import click

from boxlore.cli import options, talk
from boxlore.cli.paths import GivenPath
from boxlore.core.findings import several
from boxlore.core.records.audience import To
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.outputs.printed_sheets import PrintOrder
from boxlore.tasks.outputs.printed_sheets import worksheet as make


@click.command()
@click.argument("out", type=GivenPath(dir_okay=False))
@options.printing
@click.pass_context
def worksheet(
    ctx: click.Context,
    /,
    out: Path,
    to: str,
    paper: str | None,
    theme: str,
    kin_of: str,
    over: bool,
    on_day: date | None,
    **chosen: object,
) -> None:
    """Write the narrator's worksheet to OUT (a .pdf): large pictures, ruled lines, a short code at each.

    Beside it goes a text file with every code, to type the answers into; boxlore tell --from takes it in.
    """
    order = PrintOrder(to=To(to), selection=options.selected(chosen), paper=paper or "", theme=theme, kin_of=kin_of)
    with open_collection(ctx.obj, write=False, on_day=on_day) as collection, talk.progress() as bar:
        collection.over = over
        printed, answers = make(collection, out, order, progress=bar)
    talk.say(f"{several(printed.items, 'photograph')} in {printed.path}, for {to}. Type the answers into {answers}.")
    if not answers.stem.endswith("-answers"):
        talk.say("An earlier file of answers was written into, and stays: boxlore tell --from takes it in.")
    ctx.exit(talk.say_findings(printed.findings))
