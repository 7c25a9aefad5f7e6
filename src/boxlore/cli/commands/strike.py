"""`boxlore strike`: takes words out for good, when the teller wishes it."""

import sys

import click

from boxlore.cli import options, output, talk
from boxlore.core.errors import WrongUse
from boxlore.tasks.sitting.recovering import open_for_writing
from boxlore.tasks.strike import BEYOND, carriers, is_backup, meant, not_searched, strike_out, targets


@click.command()
@click.argument("about", metavar="ITEM|PERSON")
@click.argument("field")
@click.option("--words", default=None, help="Only statements that hold these words.")
@click.option("--yes", is_flag=True, help="Do it without asking.")
@options.as_json
@click.pass_context
def strike(ctx: click.Context, about: str, field: str, words: str | None, yes: bool, as_json: bool) -> None:
    """Take what is told in a FIELD out for good: from the log, every draft, index and backup.

    ITEM is a number or a mark, PERSON a name, a part of one, or the end of an id. Copies, sheets, pages and packages
    in the collection's folder that still carry the words are listed.
    """
    if words is not None and not words.strip():
        raise WrongUse("--words is empty.", "Say which words, or leave --words out to strike all that is told there.")
    with open_for_writing(ctx.obj) as collection, talk.progress() as bar:
        to_strike = targets(collection, meant(collection, about, field), field, words or "")
        talk.say(f"{len(to_strike)} statements would be struck. This cannot be undone.")
        if not yes and not (sys.stdin.isatty() and click.confirm("Strike them?", default=False, err=True)):
            talk.say("Nothing was struck. Add --yes where nobody can be asked.")
            ctx.exit(1)
        report = strike_out(
            collection, [target.statement for target in to_strike], waiting=talk.say, stopped=bar.stopped
        )
        carrying, unsearched = carriers(collection, report), not_searched(collection)
    if as_json:
        output.row(
            {"struck": report.struck, "finished": report.finished, "still_in": carrying, "not_searched": unsearched}
        )
    if not report.finished:
        talk.say("The words are out of use; their last traces go when the other program closes the collection.")
        ctx.exit(1)
    broken = [path for path in carrying if is_backup(path)]
    where = "database" if broken else "database or backups"
    talk.say(f"Struck. No byte of the collection's {where} holds the words any more. {BEYOND}")
    for path in broken:
        talk.say(f"Still in {path}: it is damaged and cannot be changed; delete it.")
    for path in carrying:
        if path not in broken:
            talk.say(f"Still in {path}: made before; make it again, or delete it.")
    for path in unsearched:
        talk.say(f"Not searched: {path} is compressed. If it was made with the words in it, make it again.")
    if report.again:
        talk.say(f"{report.again} other statements say the same words; boxlore find shows them.")
    ctx.exit(1 if carrying else 0)
