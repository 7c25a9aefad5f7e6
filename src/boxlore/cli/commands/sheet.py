"""`boxlore sheet`: the album caption sheet as a PDF."""

from datetime import date
from pathlib import Path

import click

from boxlore.cli import options, talk
from boxlore.core.audience import To
from boxlore.tasks.opening import open_collection
from boxlore.tasks.sheets import sheet as make


@click.command()
@click.argument("out", type=click.Path(path_type=Path, dir_okay=False))
@options.audience("family")
@options.selection
@click.option("--paper", type=click.Choice(["a4", "letter"]), help="The paper; else the collection's setting.")
@options.on_day
@click.pass_context
def sheet(ctx: click.Context, /, out: Path, to: str, paper: str | None, on_day: date | None, **chosen: object) -> None:
    """Write the album caption sheet, six photographs a page, to OUT (a .pdf)."""
    with open_collection(ctx.obj, write=False, on_day=on_day) as collection, talk.progress() as bar:
        made = make(collection, out, to=To(to), selection=options.selected(chosen), paper=paper or "", progress=bar)
    for finding in made.findings:
        talk.say(finding.message)
    talk.say(f"{made.items} photographs in {made.path}, for {to}; {made.left_out} items without a picture to show.")
    ctx.exit(1 if made.findings else 0)
