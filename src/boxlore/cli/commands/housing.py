"""`boxlore housing`: where the originals are, what holds them, and what that does to them."""

import sys
from collections.abc import Iterable, Sequence
from datetime import date
from pathlib import Path

import click

from boxlore.cli import options, output, talk
from boxlore.cli.paths import GivenPath
from boxlore.core.errors import WrongUse
from boxlore.core.findings import several
from boxlore.core.originals.moves import Plan, close_up, merge, move, relabel
from boxlore.core.records.marks import KINDS, LOCATION_KINDS, Container
from boxlore.tasks.collection.items_by_mark import dated, find_item, find_items, marks_of
from boxlore.tasks.collection.opening import Collection, open_collection
from boxlore.tasks.collection.output_paths import check_pdf
from boxlore.tasks.collection.records_for_outputs import Selection
from boxlore.tasks.originals.housing_changes import (
    About,
    carry_out,
    give_back,
    last_of_housing,
    lend,
    new_location,
    note_container,
    take_off,
    undo,
)
from boxlore.tasks.originals.housing_check import HousingFound, PrintSize, check_housing, check_scans, print_sizes
from boxlore.tasks.originals.housing_now import House, check_not_into_itself, house_of, items_named, shown
from boxlore.tasks.originals.survey import write_receipt
from boxlore.tasks.sitting.recovering import open_for_writing

yes = click.option("--yes", is_flag=True, help="Do it without asking.")
plan_only = click.option("--plan", "only_plan", is_flag=True, help="Show the plan and change nothing.")


@click.group(invoke_without_command=True)
@options.as_json
@click.pass_context
def housing(ctx: click.Context, /, as_json: bool) -> None:
    """Where the originals are and how they are housed. Without a command: every finding, hazards first.

    Each finding gives its reason and its source; where sources disagree it says so.
    """
    if ctx.invoked_subcommand is None:
        with open_collection(ctx.obj, write=False) as collection:
            count = _findings(check_housing(collection), as_json=as_json)
        talk.say(several(count, "finding") + "." if count else "Nothing to mend.")
        ctx.exit(1 if count else 0)
    options.refuse_others(ctx, f"before {ctx.invoked_subcommand}")


def _findings(findings: Iterable[HousingFound], *, as_json: bool) -> int:
    count = 0
    for located in findings:
        count += 1
        output.write_finding(located.finding, located.number, located.mark, as_json=as_json)
        if not as_json:
            for because in located.finding.because:
                output.say(f"         {output.safe(because)}")
    return count


@housing.command()
@click.argument("items", nargs=-1)
@click.option("--prints", is_flag=True, help="How large each may be printed, instead of findings.")
@options.as_json
@click.pass_context
def scans(ctx: click.Context, /, items: tuple[str, ...], prints: bool, as_json: bool) -> None:
    """The quality of the scans of ITEMS or of all: pixels an inch, depth, colour profile, which way up."""
    with open_collection(ctx.obj, write=False) as collection:
        if prints:
            sizes = list(print_sizes(collection, Selection(items=items)))
            for print_size in sizes:
                _print_size(print_size, as_json=as_json)
            if not sizes:
                talk.say("There is no scan to print.")
            return
        count = _findings(check_scans(collection, Selection(items=items)), as_json=as_json)
    talk.say(several(count, "finding") + "." if count else "Every scan is as it should be.")
    ctx.exit(1 if count else 0)


def _print_size(print_size: PrintSize, *, as_json: bool) -> None:
    sharp, usable = ([round(length) for length in size] for size in (print_size.sharp, print_size.usable))
    if as_json:
        output.row({"number": print_size.number, "side": print_size.side, "sharp_mm": sharp, "usable_mm": usable})
    else:
        words = f"sharp up to {sharp[0]} × {sharp[1]} mm (300 ppi), usable up to {usable[0]} × {usable[1]} mm (200 ppi)"
        output.say(f"{print_size.number}  {print_size.side}: {words}")


@housing.command()
@click.argument("item")
@options.as_json
@click.pass_context
def where(ctx: click.Context, /, item: str, as_json: bool) -> None:
    """Where ITEM is, and every mark it had. A mark that has held several items lists them all, with dates."""
    with open_collection(ctx.obj, write=False) as collection:
        house = house_of(collection)
        for subject in find_items(collection, item):
            number = collection.store.number_of(subject.id)
            for dated_mark in marks_of(collection, subject.id):
                if as_json:
                    since, until = dated_mark.since, dated_mark.until or None
                    output.row({"number": number, "mark": dated_mark.mark.short, "since": since, "until": until})
                else:
                    stands = _stands(house, subject.id) if dated_mark.now else ""
                    output.say(f"{number}  {output.safe(dated_mark.mark.long)}  {dated(dated_mark)}{stands}")


def _stands(house: House, item: str) -> str:
    place = house.holding.get(item)
    container = house.containers.get(place.container) if place else None
    return f"  ({output.safe(' / '.join(container.location))})" if container and container.location else ""


@housing.command()
@click.argument("mark", required=False)
@options.as_json
@click.pass_context
def what(ctx: click.Context, /, mark: str | None, as_json: bool) -> None:
    """What is in the container at MARK; without it, all containers and where they stand."""
    with open_collection(ctx.obj, write=False) as collection:
        house = house_of(collection)
        if mark is None:
            for container in sorted(house.containers.values(), key=lambda container: _natural(container.mark.short)):
                _container(container, as_json=as_json)
            if not house.containers:
                talk.say("No box or folder is noted yet. boxlore housing box MARK notes one.")
            return
        container = house.named(mark)
        _container(container, as_json=as_json)
        for item in container.items:
            place = house.holding[item].position
            row = {"number": house.numbers[item], "mark": f"{container.mark.short}/{place}"}
            if as_json:
                output.row(row)
            else:
                output.say(f"  {place:>4}  {row['number']}")
        for inner in container.others:
            _container(house.containers[inner], as_json=as_json)


def _natural(short: str) -> list[tuple[int, str]]:
    """A key that sorts marks by number: `3/2` before `3/12`, and names among them by their letters."""
    return [(int(part) if part.isdigit() else 0, part) for part in short.split("/")]


def _container(container: Container, *, as_json: bool) -> None:
    if as_json:
        output.row(
            {
                "mark": container.mark.short,
                "kind": container.kind,
                "location": list(container.location),
                "items": len(container.items),
                "containers": len(container.others),
                "capacity": container.capacity or None,
                "materials": container.materials or None,
                "surroundings": sorted(container.surroundings),
            }
        )
        return
    stands = f", {' / '.join(container.location)}" if container.location else ""
    room = f"{len(container.items)} of " if container.capacity else ""
    holds = (
        f"{room}{several(container.capacity or len(container.items), 'item')}, "
        f"{several(len(container.others), 'container')}"
    )
    output.say(output.safe(f"{container.mark.long}: {holds}{stands}"))


@housing.command()
@click.argument("name")
@click.option("--kind", type=click.Choice(LOCATION_KINDS), default="room", show_default=True)
@click.option("--inside", default="", callback=options.filled, help="The house or room it is in.")
@click.option("--surroundings", multiple=True, help="attic, basement, garage, on the floor, under pipes, damp, …")
@click.pass_context
def place(ctx: click.Context, /, name: str, kind: str, inside: str, surroundings: tuple[str, ...]) -> None:
    """Make the location NAME (a house, room or shelf), or add what is around it."""
    with open_for_writing(ctx.obj) as collection:
        new_location(collection, name, kind=kind, inside=inside, surroundings=surroundings)
    talk.say(f"Kept: {kind} {name}.")


@housing.command()
@click.argument("mark")
@click.option("--kind", type=click.Choice(KINDS), default="box", show_default=True)
@click.option("--at", default="", callback=options.filled, help="The location where it stands.")
@click.option("--materials", default="", callback=options.filled, help="What it is made of, in words.")
@click.option("--size", default="", callback=options.filled, help="Inside, in mm: 380 x 260 x 130.")
@click.option("--capacity", default="", callback=options.filled, help="How many items it holds.")
@click.option("--tested", default="", callback=options.filled, help="The test mark, such as: PAT passed (ISO 18916).")
@click.option("--fullness", type=click.Choice(["overfull", "half-empty", "well filled"]), default=None)
@click.option("--surroundings", multiple=True, help="on the floor, under pipes, by the radiator, …")
@click.pass_context
def box(ctx: click.Context, /, mark: str, kind: str, fullness: str | None, **about: object) -> None:
    """Note the container at MARK (a box, folder, album, sleeve); one that is not there yet is made."""
    facts = About(fullness=fullness or "", **about)  # type: ignore[arg-type]  # options of the same names
    with open_for_writing(ctx.obj) as collection:
        container = note_container(collection, mark, facts, kind=kind)
    talk.say(f"Kept: {container.mark.long}{', ' + ' / '.join(container.location) if container.location else ''}.")


@housing.command("move")
@click.argument("items", nargs=-1, required=True)
@click.option("--to", "into", required=True, help="The container's mark, such as 3/12.")
@click.option(
    "--at",
    "position",
    type=click.IntRange(1),
    default=None,
    help="The position of the first of them; without it, after the last that lies there.",
)
@yes
@plan_only
@click.pass_context
def move_(
    ctx: click.Context, /, items: tuple[str, ...], into: str, position: int | None, yes: bool, only_plan: bool
) -> None:
    """Move ITEMS (numbers, marks, or a container's mark for all in it) into another container."""
    with open_for_writing(ctx.obj) as collection:
        house = house_of(collection)
        target = house.named(into)
        check_not_into_itself(house, items, target)
        item_ids = [subject.id for subject in items_named(collection, items)]
        _do(collection, house, move(house.holding, item_ids, target.id, position or 0), yes, only_plan)


@housing.command("merge")
@click.argument("source")
@click.argument("into")
@yes
@plan_only
@click.pass_context
def merge_(ctx: click.Context, /, source: str, into: str, yes: bool, only_plan: bool) -> None:
    """Put everything in the container SOURCE into the container INTO, after what is there."""
    with open_for_writing(ctx.obj) as collection:
        house = house_of(collection)
        source_id, into_id = house.named(source).id, house.named(into).id
        _do(collection, house, merge(house.holding, source_id, into_id, house.inside, house.labels), yes, only_plan)


@housing.command()
@click.argument("pairs", nargs=-1, required=True, metavar="OLD=NEW…")
@yes
@plan_only
@click.pass_context
def renumber(ctx: click.Context, /, pairs: tuple[str, ...], yes: bool, only_plan: bool) -> None:
    """Give containers new labels, all at once: 3=4 4=3. Numbers of items never change; old marks still find them."""
    with open_for_writing(ctx.obj) as collection:
        house = house_of(collection)
        new_labels: dict[str, str] = {}
        for pair in pairs:
            old, equals, new = pair.partition("=")
            if not equals:
                raise WrongUse(f"“{pair[:40]}” is no pair.", "Write OLD=NEW, such as 3=4.")
            new_labels[house.named(old).id] = new.strip()
        _do(collection, house, relabel(house.labels, house.inside, new_labels), yes, only_plan)


@housing.command()
@click.argument("mark")
@yes
@plan_only
@click.pass_context
def close(ctx: click.Context, /, mark: str, yes: bool, only_plan: bool) -> None:
    """Number the positions in the container at MARK anew from 1, in the order in which things lie."""
    with open_for_writing(ctx.obj) as collection:
        house = house_of(collection)
        _do(collection, house, close_up(house.holding, house.named(mark).id), yes, only_plan)


def _do(collection: Collection, house: House, plan: Plan, yes: bool, only_plan: bool) -> None:
    """Show the plan (40 steps at most), ask unless `yes`, and carry it out.

    A plan with problems is not asked about: `carry_out` raises the error that names them.
    """
    for step in plan.steps[:40]:
        talk.say(f"  {output.safe(shown(house, step))}")
    if len(plan.steps) > 40:
        talk.say(f"  … and {len(plan.steps) - 40} more.")
    if not plan.steps and not plan.problems:
        talk.say("Nothing would change.")
        return
    if only_plan and not plan.problems:
        talk.say("Nothing was changed: this is the plan.")
        return
    asks = not yes and not plan.problems and sys.stdin.isatty()
    if asks and not talk.agreed("Do this?", "Nothing was changed.", default=True):
        talk.say("Nothing was changed.")
        return
    carry_out(collection, plan)
    talk.say(f"Done: {plan.title}. boxlore housing undo takes it back; earlier marks still find their items.")


@housing.command("undo")
@yes
@click.pass_context
def undo_(ctx: click.Context, /, yes: bool) -> None:
    """Take back the last thing done about housing, whole."""
    with open_for_writing(ctx.obj) as collection:
        last = last_of_housing(collection)
        talk.say(f"Last: {last.what}, {last.recorded_at[:16]}.")
        if not yes and sys.stdin.isatty() and not talk.agreed("Take it back?", "Nothing was changed.", default=True):
            return
        undo(collection, last.id)
    talk.say("Taken back.")


@housing.command()
@click.argument("item")
@click.option("--kind", type=click.Choice(["note", "letter", "clipping", "envelope"]), default="note")
@click.option("--text", default="", help="What is written on it, exactly.")
@click.pass_context
def off(ctx: click.Context, /, item: str, kind: str, text: str) -> None:
    """Make an item of a note or letter that was taken off ITEM; it keeps what it was attached to."""
    with open_for_writing(ctx.obj) as collection:
        number = take_off(collection, find_item(collection, item), text, kind=kind)
    talk.say(f"{number}: a {kind} that was attached to {item}. Give it a place with boxlore housing move.")
    output.say(number)


@housing.command("lend")
@click.argument("items", nargs=-1, required=True)
@click.option("--by", "lender", required=True, callback=options.filled, help="Who lends them.")
@click.option("--due", default=None, callback=options.day, metavar="DATE", help="When they are due back.")
@click.option("--receipt", type=GivenPath(dir_okay=False), help="Write the slip for the lender (.pdf).")
@options.over
@options.on_day
@click.pass_context
def lend_(
    ctx: click.Context,
    /,
    items: tuple[str, ...],
    lender: str,
    due: date | None,
    receipt: Path | None,
    over: bool,
    on_day: date | None,
) -> None:
    """Note that ITEMS are on loan to you, and write the receipt that the lender gets."""
    if receipt is None:
        options.refuse_given(ctx, "without --receipt", "over")
    with open_for_writing(ctx.obj) as collection:
        collection.over = over
        if receipt is not None:
            check_pdf(collection, receipt)
        subjects = items_named(collection, items)
        is_new = lend(collection, subjects, lender, due, on_day)
        if receipt is not None:
            numbers = [collection.store.number_of(subject.id) for subject in subjects]
            day = on_day or collection.clock.today()
            write_receipt(collection, numbers, lender, (day, due), receipt)
    known = "" if is_new else " That was noted already."
    talk.say(f"{several(len(subjects), 'item')} on loan from {lender}{f', due {due}' if due else ''}.{known}")


@housing.command()
@click.argument("items", nargs=-1, required=True)
@options.on_day
@click.pass_context
def back(ctx: click.Context, /, items: Sequence[str], on_day: date | None) -> None:
    """Note that ITEMS were given back to their lender."""
    with open_for_writing(ctx.obj) as collection:
        subjects = items_named(collection, list(items))
        give_back(collection, subjects, on_day or collection.clock.today())
    talk.say(f"{several(len(subjects), 'item')} given back.")
