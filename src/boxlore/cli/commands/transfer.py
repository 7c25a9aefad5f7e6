"""`boxlore transfer`: the package for an archive, an open part and a closed part."""

from datetime import date
from pathlib import Path

import click

from boxlore.cli import options, talk
from boxlore.tasks.opening import open_collection
from boxlore.tasks.transfer import transfer as make


@click.command()
@click.argument("out", type=click.Path(path_type=Path, file_okay=False))
@options.selection
@options.on_day
@click.pass_context
def transfer(ctx: click.Context, /, out: Path, on_day: date | None, **chosen: object) -> None:
    """Write the package to OUT: two bags (RFC 8493), OUT/open and OUT/closed."""
    with open_collection(ctx.obj, write=False, on_day=on_day) as collection, talk.progress() as bar:
        made = make(collection, out, selection=options.selected(chosen), progress=bar)
    for finding in made.findings:
        talk.say(finding.message)
    for part in made.parts:
        talk.say(f"{part.path}: {part.records} records, {part.scans} scans, {part.bytes:,} bytes.")
    talk.say(
        f"{made.withheld} people taken as living are withheld from the open part. Read both before you hand them on."
    )
    ctx.exit(1 if made.findings else 0)
