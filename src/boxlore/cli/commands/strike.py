"""`boxlore strike`: words taken out for good, at the teller's wish."""

import sys

import click

from boxlore.cli import options, output, talk
from boxlore.tasks.describe import find_item
from boxlore.tasks.recovering import open_for_writing
from boxlore.tasks.strike import BEYOND, carriers, strike_out, targets


@click.command()
@click.argument("item")
@click.argument("field")
@click.option("--words", default="", help="Only statements that hold these words.")
@click.option("--yes", is_flag=True, help="Do it without asking.")
@options.as_json
@click.pass_context
def strike(ctx: click.Context, item: str, field: str, words: str, yes: bool, as_json: bool) -> None:
    """Take the statements about FIELD of ITEM out for good: from the log, every draft, index and backup."""
    with open_for_writing(ctx.obj) as collection, talk.progress() as bar:
        found = targets(collection, find_item(collection, item), field, words)
        talk.say(f"{len(found)} statements would be struck. This cannot be undone.")
        if not yes and not (sys.stdin.isatty() and click.confirm("Strike them?", default=False, err=True)):
            talk.say("Nothing was struck. Add --yes where nobody can be asked.")
            ctx.exit(1)
        report = strike_out(collection, [one.statement for one in found], waiting=talk.say, stopped=bar.stopped)
        left = carriers(collection, report)
    if as_json:
        output.row({"struck": report.struck, "finished": report.finished, "still_in": left})
    if not report.finished:
        talk.say("The words are out of use; their last traces go when the other program closes the collection.")
        ctx.exit(1)
    talk.say(f"Struck. No byte of the collection's database or backups holds the words any more. {BEYOND}")
    for path in left:
        talk.say(f"Still in {path}: made before; make it again, or delete it.")
    ctx.exit(1 if left else 0)
