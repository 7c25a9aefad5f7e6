"""`boxlore intake`: takes scans in, fronts paired with backs, shown before it is done."""

import sys
from collections.abc import Sequence, Sized
from dataclasses import replace
from pathlib import Path

import click

from boxlore.cli import options, output, talk
from boxlore.cli.paths import GivenPath
from boxlore.core.errors import WrongUse
from boxlore.core.findings import several
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.scans.camera_dates import camera_dates as dates_of_cameras
from boxlore.tasks.scans.camera_dates import question, tell_camera_dates
from boxlore.tasks.scans.damage import intake_findings, look_closer, unseen_lines
from boxlore.tasks.scans.example_table import example_table as the_example_table
from boxlore.tasks.scans.find_prints import as_table, with_prints
from boxlore.tasks.scans.given_files import GivenFiles, files_given, named_groups, readable
from boxlore.tasks.scans.intake import IntakeOptions, IntakeResult, not_taken, own_line, take_in
from boxlore.tasks.scans.pairing import MEANING, Planned, ScanSide, alternating, by_suffix, read_items
from boxlore.tasks.sitting.recovering import open_for_writing

_COLUMNS = "\n".join(f"  {name:13} {words}" for name, words in MEANING.items())
_BELOW = f"""\b
Columns of a table, all but the first may be missing:
{_COLUMNS}
"""


@click.command(epilog=_BELOW)
@click.argument("paths", nargs=-1, type=GivenPath(any_kind=True))
@click.option("--box", default="", help="The box the originals are kept in.")
@click.option("--folder", default="", help="The folder in that box.")
@click.option("--found-in", default="", help="How they lay before: shoebox, ribbon, envelope, order.")
@click.option(
    "--copy",
    is_flag=True,
    help="Copy the scans into the collection; without it they stay where they are, and their place is noted.",
)
@click.option(
    "--pairs", type=click.Choice(["suffix", "alternating", "table"]), default="suffix", show_default=True,
    help="How fronts and backs belong together.",
)  # fmt: skip
@click.option(
    "--table",
    type=GivenPath(dir_okay=False),
    help="A table (CSV) with a row for each scan or item; its columns stand below.",
)
@click.option(
    "--find-prints", type=click.Choice(["no", "take", "hand", "table"]), default="no", show_default=True,
    help="Find the prints on flatbed sheets and telephone pictures: an item for each is shown and taken in (take);"
    " their outlines are put right by mouse or keys first, at the terminal or on a page (hand, also without the extra);"
    " or they are written as a table (table). Needs the extra `see`.",
)  # fmt: skip
@click.option("--example-table", is_flag=True, help="Print an example of such a table, and do nothing else.")
@click.option(
    "--camera-dates", type=click.Choice(["ask", "picture", "scan"]), default="ask", show_default=True,
    help="The date that a camera wrote into the files: asked once, or the date of the picture (no picture of a print),"
    " or of the scan alone.",
)  # fmt: skip
@click.option("--without-scan", type=click.IntRange(1, 10_000), help="Make so many items that have no scan yet.")
@click.option(
    "--backs", type=click.Choice(["ask", "join", "apart"]), default="ask", show_default=True,
    help="Backs (or fronts) whose other side is here: join them where it is sure and ask about the rest, join them all,"
    " or make items of their own.",
)  # fmt: skip
@click.option(
    "--list", "list_all", is_flag=True, help="Name every file that is no picture, not only the first of each kind."
)
@click.option("--own", is_flag=True, help="Take also what Boxlore itself has made of scans: copies, pages, packages.")
@click.option(
    "--replace",
    is_flag=True,
    help="A better scan of a side that is here takes its place: a file that was written over, or called by the number.",
)
@click.option("--yes", is_flag=True, help="Do it without asking.")
@options.as_json
@click.pass_context
def intake(
    ctx: click.Context,
    paths: tuple[Path, ...],
    box: str,
    folder: str,
    found_in: str,
    copy: bool,
    pairs: str,
    table: Path | None,
    find_prints: str,
    example_table: bool,
    camera_dates: str,
    without_scan: int | None,
    backs: str,
    list_all: bool,
    own: bool,
    replace: bool,
    yes: bool,
    as_json: bool,
) -> None:
    """Take in the pictures at PATHS (files or folders). A run that is repeated takes nothing twice.

    Backs that are scanned later than their fronts join them, by their names (harbour.jpg, harbour_b.jpg), by the
    item's number (TRA-0042_b.jpg), or by a table whose column item holds that number.
    """
    if example_table:
        options.refuse_others(ctx, "with --example-table", "example_table")
        output.say(the_example_table().rstrip("\r\n"))
        return
    _refuse_others(ctx, paths, pairs, table, without_scan)
    given = GivenFiles()
    plan = _plan(paths, pairs, table, without_scan, given)
    if find_prints == "hand":
        outlined = _by_hand(ctx.obj, plan)
        if outlined is None:
            talk.say("Nothing was taken in.")
            return
        plan = outlined
    elif find_prints != "no":
        with talk.progress() as bar:
            plan, remarks = with_prints(plan, bar)
        for remark in remarks:
            talk.say(output.safe(readable(remark)))
    if find_prints == "table":
        output.say(as_table(plan).rstrip("\r\n"))
        talk.say("Nothing is taken in yet. Keep this as items.csv, put areas right, then: intake --table items.csv")
        return
    _show(plan)
    if not yes and sys.stdin.isatty() and not talk.agreed("Take these in?", "Nothing was taken in.", default=True):
        talk.say("Nothing was taken in.")
        return
    intake_options = IntakeOptions(
        copy=copy, box=box, folder=folder, found_in=found_in, backs=backs, own=own, replace=replace
    )
    with open_for_writing(ctx.obj) as collection:
        with talk.progress() as bar:
            results = take_in(collection, plan, intake_options, bar)
        stopped = len(results) < len(plan)
        results = _settled(collection, plan, intake_options, results, asks=not yes and sys.stdin.isatty())
        if not stopped:
            with talk.progress() as bar:
                look_closer(collection, bar)
        numbers = [result.number for result in results if result.state == "taken"]
        _camera_dates(collection, numbers, camera_dates, asks=not yes and sys.stdin.isatty())
        damaged = intake_findings(collection, [result.number for result in results if result.number])
        unseen = unseen_lines(collection) if numbers else []
        results += not_taken(collection, given.refused)
    if list_all and as_json:
        results += [IntakeResult(readable(path), "not-a-picture") for path in given.other_files]
    for result in results:
        if as_json:
            output.row(
                {"key": result.key, "state": result.state, "number": result.number or None, "why": result.why or None}
            )
        elif result.state in ("refused", "replaced"):
            talk.say(output.safe(f"{result.key}: {result.why}"))
    for line in named_groups(given, None) if list_all else named_groups(given):
        talk.say(output.safe(f"Not taken, for it is no picture: {line}"))
    if not as_json and (line := own_line(results)):
        talk.say(output.safe(f"{line} --own takes them nevertheless."))
    for number, finding in damaged:
        talk.say(output.safe(f"{number}: {finding.message}"))
    for line in unseen:
        talk.say(output.safe(line))
    _say_counts(results, given, [finding for _, finding in damaged if finding.rule == "scan.damaged"])
    ctx.exit(1 if stopped or any(result.state == "refused" for result in results) else 0)


def _by_hand(folder: Path, plan: list[Planned]) -> list[Planned] | None:
    """The plan with an item for each outline that was put right by hand; None where nothing was taken. Raises WrongUse
    without a terminal."""
    if not (sys.stdin.isatty() and sys.stdout.isatty()):
        raise WrongUse("Outlines are put right by hand at a terminal.", "Say --find-prints take, or table.")
    from boxlore.cli.commands.sit import shown
    from boxlore.tasks.scans.outlines_by_hand import OutlinesByHand
    from boxlore.tui.screens.prints_on_a_sheet import by_hand

    with open_for_writing(folder) as collection, shown(lan=False, page=True) as showing:
        hand = OutlinesByHand(collection, plan)
        outlined = by_hand(hand, showing)
        for words in hand.put_right() if outlined is not None else ():
            talk.say(words)
        return outlined


def _camera_dates(collection: Collection, numbers: Sequence[str], way: str, *, asks: bool) -> None:
    """Ask once what the camera's own dates are, or do as told; without a terminal they stay those of the scans."""
    dates = dates_of_cameras(collection, numbers) if way != "scan" else []
    if not dates:
        return
    about = question(dates)
    if way == "picture" or (
        asks and click.confirm(f"{about} Were they taken that day, and are no pictures of prints?", err=True)
    ):
        tell_camera_dates(collection, dates)
        talk.say(f"{several(len(dates), 'date')} of the camera told of the pictures.")
    elif not asks:
        talk.say(f"{about} It counts as the day of the scan; --camera-dates picture makes it that of the picture.")


def _say_counts(results: Sequence[IntakeResult], given: GivenFiles, damaged: Sized) -> None:
    """How many were taken in, joined, known, refused, and left as no picture."""
    states = [result.state for result in results]
    joined = f"{states.count('joined')} joined to items that were here, " if "joined" in states else ""
    replaced = f"{states.count('replaced')} in the place of scans that were here, " if "replaced" in states else ""
    talk.say(
        f"{states.count('taken')} taken in, {joined}{replaced}"
        f"{states.count('known')} known already, {states.count('refused')} refused"
        + (f", {states.count('own')} made by Boxlore itself" if "own" in states else "")
        + (f", {len(given.other_files)} not pictures" if given.not_pictures else "")
        + (f"; of those taken in, {several(len(damaged), 'scan is', 'scans are')} damaged." if damaged else ".")
    )


def _refuse_others(
    ctx: click.Context, paths: Sequence[Path], pairs: str, table: Path | None, without_scan: int | None
) -> None:
    """Raises WrongUse for what the way in which things are taken in would drop."""
    kept = ("box", "folder", "found_in", "yes", "as_json")
    if without_scan:
        options.refuse_others(ctx, "with --without-scan", "without_scan", *kept)
    elif table is not None:
        by_table = ("pairs",) if pairs == "table" else ()
        options.refuse_others(
            ctx, "with --table", "table", "paths", "copy", "backs", "own", "replace", "camera_dates", *by_table, *kept
        )
        if len(paths) > 1:
            raise WrongUse("With --table, one folder is where its pictures lie, and several are named.", "Name one.")


def _settled(
    collection: Collection,
    plan: Sequence[Planned],
    intake_options: IntakeOptions,
    results: list[IntakeResult],
    *,
    asks: bool,
) -> list[IntakeResult]:
    """The results with an answer to what was unsure: asked at a terminal, else refused with what to say."""
    unsure = [at for at, result in enumerate(results) if result.state == "unsure"]
    if not asks:
        for at in unsure:
            why = f"{results[at].why} Say --backs join, or --backs apart for an item of its own."
            results[at] = replace(results[at], state="refused", why=why)
        return results
    answers = {
        plan[at].key: click.confirm(f"{output.safe(results[at].why)} Does it join it?", default=True, err=True)
        for at in unsure
    }
    settled = take_in(collection, [plan[at] for at in unsure], replace(intake_options, answers=answers))
    for at, result in zip(unsure, settled, strict=True):
        results[at] = result
    return results


def _plan(
    paths: Sequence[Path], pairs: str, table: Path | None, without_scan: int | None, given: GivenFiles
) -> list[Planned]:
    """The items to take in, made from the files or the table; `given` gets what else is in the folders.

    Raises WrongUse where there is nothing to read.
    """
    if without_scan:
        return [Planned(key=f"without scan {at}") for at in range(1, without_scan + 1)]
    if table is not None or pairs == "table":
        if table is None:
            raise WrongUse("--pairs table needs --table FILE.csv.")
        return read_items(table, paths[0] if paths else table.parent)
    if not paths:
        raise WrongUse("Which pictures?", "Name files or folders, --table FILE.csv, or --without-scan N.")
    sorted_files = files_given(paths)
    given.refused, given.not_pictures = sorted_files.refused, sorted_files.not_pictures
    files = sorted_files.pictures
    if not files and not given.refused:
        held = f" It holds {'; '.join(named_groups(given))}." if given.not_pictures else ""
        raise WrongUse(f"There are no pictures there.{output.safe(held)}", "JPEG, TIFF, PNG and WebP are taken in.")
    return alternating(files) if pairs == "alternating" else by_suffix(files)


def _part(side: ScanSide) -> str:
    """`, 45 % by 30 % of it, at 3 %, 50 %`: which part of a picture shows the item; '' for the whole."""
    if not side.area:
        return ""
    left, top, wide, high = (f"{part:.0%}" for part in side.area)
    return f" ({wide} by {high} of it, from {left} across, {top} down)"


def _show(plan: Sequence[Planned]) -> None:
    """Say how many items there are, and how the first five are paired."""
    fronts = sum(1 for planned in plan if planned.sides)
    backs = sum(1 for planned in plan for side in planned.sides if side.side == "verso")
    talk.say(f"{several(len(plan), 'item')}: {fronts} with a scan, {backs} with a back.")
    for planned in plan[:5]:
        sides = ", ".join(f"{side.side} {side.path.name}{_part(side)}" for side in planned.sides)
        talk.say(output.safe(readable(f"  {Path(planned.key).name}: {sides or 'without a scan'}")))
    if len(plan) > 5:
        talk.say(f"  … and {len(plan) - 5} more.")
