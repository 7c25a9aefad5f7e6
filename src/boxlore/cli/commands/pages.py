"""`boxlore pages`: the family's web pages, a folder of plain HTML."""

from datetime import date
from pathlib import Path

import click

from boxlore.cli import options, print_options, talk
from boxlore.cli.outside import say_left_out
from boxlore.cli.paths import GivenPath
from boxlore.core.findings import several
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.outputs.web_pages import NO_VOICES
from boxlore.tasks.outputs.web_pages import pages as make
from boxlore.tasks.sitting.voices import heard


@click.command()
@click.argument("out", type=GivenPath(file_okay=False))
@options.audience("outside")
@options.selection
@click.option(
    "--theme",
    default="",
    metavar="THEME",
    help="plain, large-print, linen, slate, or a file of your own (.toml): colours.",
)
@print_options.kin_of
@print_options.output_language
@click.option(
    "--voice",
    is_flag=True,
    help="With --for family: what was told at each photograph, if whoever told it agreed.",
)
@options.over
@options.on_day
@click.pass_context
def pages(
    ctx: click.Context,
    /,
    out: Path,
    voice: bool,
    over: bool,
    on_day: date | None,
    **chosen: object,
) -> None:
    """Write the family's web pages to the folder OUT; open its index.html in any browser.

    They need no network and no script, and can be copied to a stick. With --for family they hold what only the
    family may see: do not put those on the web.
    """
    order = print_options.order_of(chosen)
    with open_collection(ctx.obj, write=False, on_day=on_day) as collection, talk.progress() as bar:
        collection.over = over
        say_left_out(collection, order.to, order.selection)
        voices = heard(collection, order.to) if voice else NO_VOICES
        written = make(collection, out, order, voices=voices, progress=bar)
    talk.say(
        f"{several(written.items, 'photograph')} in {written.path / 'index.html'}, for {order.to}; "
        f"{written.why_left_out}."
    )
    ctx.exit(talk.say_findings(written.findings))
