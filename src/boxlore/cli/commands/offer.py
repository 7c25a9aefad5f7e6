"""`boxlore offer`: the list an archive sees first, and its answer read back."""

from datetime import date
from pathlib import Path

import click

from boxlore.cli import options, talk
from boxlore.cli.outside import say_left_out
from boxlore.cli.paths import GivenPath
from boxlore.core.errors import WrongUse
from boxlore.core.findings import several
from boxlore.core.records.audience import To
from boxlore.tasks.archive.offer import offer as make
from boxlore.tasks.archive.offer import read_answer
from boxlore.tasks.collection.opening import open_collection


@click.command()
@click.argument("out", required=False, type=GivenPath(file_okay=False))
@options.selection
@click.option("--answer", type=GivenPath(), help="Read offer.csv as the archive sent it back.")
@options.on_day
@click.pass_context
def offer(ctx: click.Context, /, out: Path | None, answer: Path | None, on_day: date | None, **chosen: object) -> None:
    """Write thumbnails, titles, dates and extent to OUT, without the living; or read the --answer."""
    if answer is not None:
        options.refuse_others(ctx, "with --answer", "answer", "on_day")
        with open_collection(ctx.obj, on_day=on_day) as collection:
            reply = read_answer(collection, answer)
        for words in reply.refused:
            talk.say(words)
        talk.say(
            f"{several(reply.wanted, 'is', 'are')} wanted, {several(reply.not_wanted, 'is', 'are')} "
            f"not. Next: boxlore transfer OUT --wanted"
        )
        if reply.remarks:
            talk.say(f"{several(reply.remarks, 'remark')} of the archive noted: boxlore check lists each.")
        if reply.note:
            talk.say(reply.note)
        ctx.exit(1 if reply.refused else 0)
    if out is None:
        raise WrongUse("There is no folder to write to.", "Say: boxlore offer OUT, or boxlore offer --answer FILE.csv.")
    with open_collection(ctx.obj, write=False, on_day=on_day) as collection, talk.progress() as bar:
        say_left_out(collection, To.OUTSIDE, options.selected(chosen))
        offered = make(collection, out, selection=options.selected(chosen), progress=bar)
    hidden = f"{several(offered.hidden, 'is', 'are')} not shown: closed, or for the living's sake."
    talk.say(f"{out}: {several(offered.items, 'item')}, {several(offered.pictures, 'thumbnail')}; {hidden}")
    ctx.exit(talk.say_findings(offered.findings))
