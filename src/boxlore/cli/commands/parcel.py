"""`boxlore parcel`: what was told here in one file, for somebody who works on it elsewhere."""

from datetime import date
from pathlib import Path

import click

from boxlore.cli import options, output, parcel_options, talk
from boxlore.cli.paths import GivenPath
from boxlore.core.records.audience import To
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.collection.parcels import ParcelOrder, make_parcel
from boxlore.tasks.collection.said_of_joining import said_of_parcel


@click.command()
@click.argument("out", type=GivenPath(dir_okay=False))
@click.option("--since", callback=options.day, help="Only what was told on this day or later (YYYY-MM-DD).")
@click.option(
    "--for",
    "to",
    type=click.Choice([To.KEEPER.value, To.FAMILY.value]),
    default=To.KEEPER.value,
    show_default=True,
    help="Who gets it: another keeper has all, the family what it may see.",
)
@click.option("--without-scans", is_flag=True, help="Leave scans, recordings and papers out.")
@click.option("--new-copy", is_flag=True, help="For somebody who has no working copy yet: sets a series letter aside.")
@click.option("--lock", is_flag=True, help="Ask for a passphrase, without which nobody can read it.")
@options.as_json
@click.pass_context
def parcel(
    ctx: click.Context,
    /,
    out: Path,
    since: date | None,
    to: str,
    without_scans: bool,
    new_copy: bool,
    lock: bool,
    as_json: bool,
) -> None:
    """Put what was told here, and its scans, into the file OUT, for another working copy of this collection.

    Whoever gets it takes it in with boxlore join OUT, or makes a working copy of it with boxlore new FOLDER --join OUT
    (if it was made with --new-copy), and sends one back. It may be taken in in any order and as often as one likes.
    What was struck after a parcel was made stays struck wherever that is known.
    """
    order = ParcelOrder(
        since=since,
        to=To(to),
        with_files=not without_scans,
        new_copy=new_copy,
        passphrase=parcel_options.new_passphrase() if lock else "",
    )
    with open_collection(ctx.obj, write=new_copy) as collection, talk.progress() as bar:
        made = make_parcel(collection, out, order, bar)
    if as_json:
        output.row({
            "path": str(made.path), "sha256": made.sha256, "statements": made.statements, "scans": made.files,
            "kept_back": made.kept_back, "left": made.left, "series": made.letter,
        })  # fmt: skip
    for words in said_of_parcel(made, order):
        talk.say(words)
