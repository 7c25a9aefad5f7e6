"""`boxlore survey`: goes through a box item by item at single keys, and writes lists of what was noted."""

import sys
from dataclasses import asdict
from datetime import date
from pathlib import Path

import click

from boxlore.cli import options, output, talk
from boxlore.cli.paths import GivenPath
from boxlore.core.errors import WrongUse
from boxlore.core.findings import several
from boxlore.core.records.marks import short_form
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.originals.survey import Lists, lists, note, read_answer, write_order, write_work
from boxlore.tasks.sitting.recovering import open_for_writing


@click.command()
@click.argument("mark", required=False, default="")
@click.option("--note", "notes", multiple=True, metavar="ITEM=JSON", help="One item's answer without the screen.")
@click.option("--work", type=GivenPath(dir_okay=False), help="Write the work list (.csv or .pdf).")
@click.option("--scan", type=GivenPath(dir_okay=False), help="Write the scanning order (.csv or .pdf).")
@options.selection
@options.over
@options.as_json
@options.on_day
@click.pass_context
def survey(
    ctx: click.Context,
    /,
    mark: str,
    notes: tuple[str, ...],
    work: Path | None,
    scan: Path | None,
    over: bool,
    as_json: bool,
    on_day: date | None,
    **chosen: object,
) -> None:
    """Go through the box at MARK item by item: enclosure, what is attached, condition, size, writing on the back.

    At a terminal the survey's screen opens. With --work, --scan or --json the lists are made of what was noted: what
    to do, what to buy, what to have scanned at which size. --note TRA-0007='{"enclosure": "PVC", "attached":
    ["tape"]}' notes one item without the screen.
    """
    _refuse_others(ctx, mark, lists=bool(work or scan or as_json), notes=bool(notes))
    for note_words in notes:
        _note(ctx.obj, note_words)
    if work is None and scan is None and not as_json:
        if notes:
            talk.say(f"Kept: {several(len(notes), 'item')}.")
            return
        if not (sys.stdin.isatty() and sys.stdout.isatty()):
            raise WrongUse("The survey's screen needs a terminal.", "Use --note, --work FILE, --scan FILE or --json.")
        from boxlore.tui.screens.survey import run

        with open_for_writing(ctx.obj) as collection:
            ctx.exit(run(collection, mark))
    with open_collection(ctx.obj, write=False, on_day=on_day) as collection, talk.progress():
        collection.over = over
        selection = options.selected(chosen | _inside(mark))
        todo = lists(collection, selection)
        if work is not None:
            write_work(collection, todo, work)
        if scan is not None:
            write_order(collection, todo, scan)
    if as_json:
        _rows(todo)
    talk.say(
        f"To do: {several(len(todo.work), 'line')}. To buy: {several(len(todo.buy), 'line')}. To "
        f"scan: {several(len(todo.scan), 'original')}."
    )


def _refuse_others(ctx: click.Context, mark: str, *, lists: bool, notes: bool) -> None:
    """Raises WrongUse for what the way in which the command is used would drop."""
    options_of_lists = ("notes", "work", "scan", "over", "as_json", "on_day")
    if not (ctx.params["work"] or ctx.params["scan"]):
        options.refuse_given(ctx, "without --work or --scan", "over")
    if not lists:
        options.refuse_others(ctx, "without --work, --scan or --json", "notes" if notes else "mark")
    elif mark:
        others = [name for name in options.SELECTION if name not in ("box", "folder")]
        options.refuse_others(ctx, f"with the mark {mark[:40]}", "mark", *options_of_lists, *others)


def _inside(mark: str) -> dict[str, str]:
    """The options that choose what lies in the box, or in the folder of the box, of a mark. Raises WrongUse."""
    labels = short_form(mark).split("/") if mark else []
    if len(labels) > 2:
        raise WrongUse(f"“{mark[:40]}” is no box and no folder.", "Write it like 3 or 3/12.")
    return dict(zip(("box", "folder"), labels, strict=False))


def _note(folder: Path, words: str) -> None:
    """Keep one `ITEM=JSON`. Raises WrongUse for an answer that is no such object."""
    item, _, answer_text = words.partition("=")
    answer = read_answer(answer_text)
    with open_for_writing(folder) as collection:
        note(collection, find_item(collection, item).id, answer)


def _rows(todo: Lists) -> None:
    for name, jobs in (("do", todo.work), ("buy", todo.buy)):
        for job in jobs:
            output.row({"list": name, **asdict(job)})
    for order in todo.scan:
        output.row({"list": "scan", **asdict(order)})
