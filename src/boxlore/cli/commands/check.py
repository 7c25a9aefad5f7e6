"""`boxlore check`: every finding, with its reason and its source."""

from datetime import date

import click

from boxlore.cli import options, output, talk
from boxlore.core.findings import several
from boxlore.tasks.check import check as check_all
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.collection.records_for_outputs import Selection


@click.command()
@click.argument("items", nargs=-1)
@options.as_json
@options.on_day
@click.pass_context
def check(ctx: click.Context, items: tuple[str, ...], as_json: bool, on_day: date | None) -> None:
    """List what is missing, unsure or in conflict, of ITEMS or of everything."""
    count = 0
    with open_collection(ctx.obj, write=False, on_day=on_day) as collection:
        for located in check_all(collection, Selection(items=items)):
            count += 1
            output.write_finding(located.finding, located.number, located.mark, as_json=as_json)
    talk.say(several(count, "finding") + "." if count else "Nothing to ask or mend.")
    ctx.exit(1 if count else 0)
