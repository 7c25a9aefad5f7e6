"""`boxlore sheet`: the album caption sheet as a PDF."""

from datetime import date
from pathlib import Path

import click

from boxlore.cli import options, talk
from boxlore.core.records.audience import To
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.outputs.sheets import PrintOrder
from boxlore.tasks.outputs.sheets import sheet as make


@click.command()
@click.argument("out", type=click.Path(path_type=Path, dir_okay=False))
@options.printing
@click.pass_context
def sheet(
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
    """Write the album caption sheet, six photographs a page, to OUT (a .pdf)."""
    order = PrintOrder(to=To(to), selection=options.selected(chosen), paper=paper or "", theme=theme, kin_of=kin_of)
    with open_collection(ctx.obj, write=False, on_day=on_day) as collection, talk.progress() as bar:
        collection.over = over
        printed = make(collection, out, order, progress=bar)
    talk.say(
        f"{printed.items} photographs in {printed.path}, for {to}; {printed.left_out} left out: no picture, or none"
        " that may be shown."
    )
    ctx.exit(talk.say_findings(printed.findings))
