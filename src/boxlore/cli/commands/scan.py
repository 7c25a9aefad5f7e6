"""`boxlore scan`: the care for one scan of one item. No scan's file is ever written to."""

from collections.abc import Callable
from functools import partial
from pathlib import Path

import click

from boxlore.cli import output, talk
from boxlore.cli.paths import GivenPath
from boxlore.core.errors import WrongUse
from boxlore.core.fields.pictures import QUARTERS
from boxlore.core.findings import several
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import Act, Collection
from boxlore.tasks.collection.records_for_outputs import record_of
from boxlore.tasks.scans.carried_markers import AWAY, STAY
from boxlore.tasks.scans.intake import IntakeResult
from boxlore.tasks.scans.one_scan import damage_words, take_scan
from boxlore.tasks.sitting.recovering import open_for_writing
from boxlore.tasks.telling.markers import Markers
from boxlore.tasks.telling.proposed_heads import propose_heads
from boxlore.tasks.telling.turned_scans import SIDES, note_altered, scan_meant, turn_scan, turn_words


@click.group()
def scan() -> None:
    """One scan of an item: a further one, a better one, one that lies on its side, one that was coloured.

    The file of a scan is never written to. What is noted here, all outputs follow: copies, pages, prints, markers.
    """


_side = click.option(
    "--side", type=click.Choice(list(SIDES)), default="front", show_default=True, help="Which side of the item."
)
_altered = click.option("--altered", is_flag=True, help="The altered version (coloured, retouched), not the scan.")


@scan.command()
@click.argument("item")
@click.argument("file", type=GivenPath(dir_okay=False))
@_side
@_altered
@click.pass_context
def add(ctx: click.Context, item: str, file: Path, side: str, altered: bool) -> None:
    """Copy FILE in as a scan of ITEM, which has none of that side yet; or as an altered version beside its scan."""
    _take(ctx, item, partial(take_scan, path=file, side=SIDES[side], altered=altered))


@scan.command("replace")
@click.argument("item")
@click.argument("file", type=GivenPath(dir_okay=False))
@_side
@click.option(
    "--markers",
    type=click.Choice([STAY, AWAY]),
    help="Where FILE has another shape than the picture before: whether its markers stay where they are seen, or are "
    "taken away (who was named there is told of the item).",
)
@click.pass_context
def replace_it(ctx: click.Context, item: str, file: Path, side: str, markers: str | None) -> None:
    """Copy FILE in as the better scan of that side of ITEM. The earlier file stays where it is, and in the history.

    Of a sheet of prints only this one is replaced. Where the scan that is here was lost or damaged on the disk, FILE
    may also be the same file once more.
    """
    _take(ctx, item, partial(take_scan, path=file, side=SIDES[side], better=True, markers=markers or ""))


def _take(ctx: click.Context, item: str, take: Callable[[Collection, str], IntakeResult]) -> None:
    with open_for_writing(ctx.obj) as collection:
        number = collection.store.number_of(find_item(collection, item).id)
        result = take(collection, number)
        talk.say(output.safe(f"{result.number or number}: {result.why or 'taken in'}."))
        for words in damage_words(collection, number):
            talk.say(output.safe(words))


@scan.command()
@click.argument("item")
@click.argument("degrees", type=click.Choice([str(turn) for turn in QUARTERS if turn]), default="90")
@_side
@_altered
@click.pass_context
def turn(ctx: click.Context, item: str, degrees: str, side: str, altered: bool) -> None:
    """Turn the picture of ITEM to the right by DEGREES: 90 (where nothing is said), 180 or 270.

    Markers, copies, prints and pages follow; the file stays as it is. Of a sheet of prints only this one is turned.
    """

    def change(collection: Collection, ident: str) -> tuple[Act, str]:
        record, act = record_of(collection, ident), collection.act("scan turned")
        return act, turn_words(turn_scan(act, record, scan_meant(record, SIDES[side], altered=altered), int(degrees)))

    _changed(ctx, item, change)


@scan.command()
@click.argument("item")
@_side
@click.option("--not", "is_not", is_flag=True, help="It is as it was scanned after all.")
@click.pass_context
def altered(ctx: click.Context, item: str, side: str, is_not: bool) -> None:
    """Note that the scan of ITEM is an altered version: coloured or retouched, so that nobody takes it for the print.

    Every output says so, and the scan that it was made of goes before it. Of a sheet of prints only this one is noted.
    """

    def change(collection: Collection, ident: str) -> tuple[Act, str]:
        record, act = record_of(collection, ident), collection.act("scan noted as altered")
        note_altered(act, record, scan_meant(record, SIDES[side], altered=is_not), altered=not is_not)
        return act, "it counts as it was scanned." if is_not else "it counts as an altered version."

    _changed(ctx, item, change)


@scan.command()
@click.argument("item")
@_side
@click.option("--take", is_flag=True, help="Set a marker on each; in a sitting it is asked who each is.")
@click.option("--despite-care", is_flag=True, help="Look also where a care note stands by the picture.")
@click.pass_context
def heads(ctx: click.Context, item: str, side: str, take: bool, despite_care: bool) -> None:
    """Propose a numbered marker on each face of ITEM that has none, row by row from the left. Needs the extra `see`.

    Where a face is, never whose: nothing of a face is compared or kept, only the place of each marker that is taken.
    Faces seen from the side are not found. Each line has a number, and x and y in parts of the picture.
    """
    with open_for_writing(ctx.obj) as collection:
        record = record_of(collection, find_item(collection, item).id)
        shown = scan_meant(record, SIDES[side], altered=False)
        markers = Markers(collection)
        try:
            places = propose_heads(collection, markers, record, shown, despite_care=despite_care)
        except WrongUse as error:
            raise WrongUse(error.problem, "--despite-care looks all the same.") from error
        act = collection.act("markers on heads")
        for x, y in places if take else ():
            markers.add(act, shown, x, y)
        act.done()
    for at, (x, y) in enumerate(places, 1):
        output.say(f"{at} {x:.4f} {y:.4f}")
    what = "a marker is set on each" if take else "nothing is kept; --take sets a marker on each"
    talk.say(f"{record.number}: {several(len(places), 'head')} without a marker; {what}." if places else
             f"{record.number}: no head without a marker is found.")  # fmt: skip


def _changed(ctx: click.Context, item: str, change: Callable[[Collection, str], tuple[Act, str]]) -> None:
    """Carry out one act on an item, and say what came of it."""
    with open_for_writing(ctx.obj) as collection:
        ident = find_item(collection, item).id
        act, words = change(collection, ident)
        act.done()
        talk.say(f"{collection.store.number_of(ident)}: {words}")
