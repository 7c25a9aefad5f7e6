"""`boxlore worksheet`: a large picture with lines to write on, for a relative who uses no computer."""

from dataclasses import replace
from datetime import date
from pathlib import Path

import click

from boxlore.cli import options, print_options, talk
from boxlore.cli.outside import say_left_out
from boxlore.cli.paths import GivenPath
from boxlore.core.errors import CouldNot
from boxlore.core.findings import several
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.outputs.printed_sheets import WorksheetForm
from boxlore.tasks.outputs.printed_sheets import worksheet as make
from boxlore.tasks.people.evidence import evidence, to_ask_next


@click.command()
@click.argument("out", type=GivenPath(dir_okay=False))
@click.option("--only-open", is_flag=True, help="Ask only what is unanswered, or told as a guess.")
@click.option(
    "--per-page", type=click.Choice(["1", "2", "4"]), default="1", show_default=True, help="Photographs on a page."
)
@click.option("--names", is_flag=True, help="Print the names that are known; without it nobody is led.")
@click.option(
    "--ask",
    "teller",
    default="",
    callback=options.filled,
    metavar="TELLER",
    help="What to ask this teller next, in order.",
)
@click.option("--minutes", type=click.IntRange(1, 600), default=45, show_default=True, help="With --ask: her minutes.")
@print_options.printing
@click.pass_context
def worksheet(
    ctx: click.Context,
    /,
    out: Path,
    only_open: bool,
    per_page: str,
    names: bool,
    teller: str,
    minutes: int,
    over: bool,
    on_day: date | None,
    **chosen: object,
) -> None:
    """Write the narrator's worksheet to OUT (a .pdf): pictures, ruled lines, a short code at each.

    A photograph and its lines stand together on a page, in type of 20 points; two or four a page have smaller type.
    Beside it goes a text file with every code, to type the answers into; boxlore tell --from takes it in.
    """
    order = print_options.order_of(chosen)
    if teller:
        options.refuse_given(ctx, "with --ask", *options.SELECTION)
    else:
        options.refuse_given(ctx, "without --ask", "minutes")
    with open_collection(ctx.obj, write=False, on_day=on_day) as collection, talk.progress() as bar:
        collection.over = over
        if teller:
            items = [
                question.item
                for question in to_ask_next(collection, evidence(collection), teller, minutes)
                if question.item
            ]
            if not items:
                raise CouldNot("There is no picture that an answer of hers would date better.", "Leave out --ask.")
            order = replace(order, in_order=tuple(items))
        say_left_out(collection, order.to, order.selection)
        form = WorksheetForm(per_page=int(per_page), names=names, only_open=only_open)
        printed, answers = make(collection, out, order, form, progress=bar)
    talk.say(
        f"{several(printed.items, 'photograph')} in {printed.path}, for {order.to}. Type the answers into {answers}."
    )
    if only_open and printed.left_out:
        talk.say(f"{printed.why_left_out}.")
    if not answers.stem.endswith("-answers"):
        talk.say("An earlier file of answers was written into, and stays: boxlore tell --from takes it in.")
    ctx.exit(talk.say_findings(printed.findings))
