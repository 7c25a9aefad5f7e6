"""`boxlore events`: what happened to the family, in order, and what its pictures' dates lean on."""

import click

from boxlore.cli import options, output, talk
from boxlore.core.dates.family_display import family_display
from boxlore.core.findings import several
from boxlore.core.statements import Source
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.collection.settings import family_way
from boxlore.tasks.sitting.recovering import open_for_writing
from boxlore.tasks.strike import carriers, named, still_standing, strike_out, words_about
from boxlore.tasks.telling import events as by_hand
from boxlore.tasks.telling.statements import Teller, Telling
from boxlore.tasks.telling.time_line import time_line


@click.group()
def events() -> None:
    """The family's own time line: weddings, births, moves, voyages. EVENT is a name, or the end of an id.

    A picture's date may lean on it: “the summer after the wedding”, “two years before we moved”, “when Anna was born”.
    """


@events.command("list")
@options.as_json
@click.pass_context
def list_events(ctx: click.Context, as_json: bool) -> None:
    """Everything in order, with who said so; first, what pictures wait for."""
    with open_collection(ctx.obj, write=False) as collection:
        rows, way = time_line(collection), family_way(collection.settings)
        asked = by_hand.waiting(collection, Teller(collection))
    for event in asked:
        if as_json:
            output.row({"id": None, "name": event.name, "kind": None, "date": None, "edtf": None, "said": None,
                        "own": False, "waiting": len(event.items)})  # fmt: skip
        else:
            count = several(len(event.items), "photograph waits", "photographs wait")
            output.say(output.safe(f"When was it: {event.name}? {count} for it."))
    for row in rows:
        if as_json:
            output.row({"id": row.id, "name": row.name, "kind": row.kind,
                        "date": row.words or None, "edtf": row.edtf or None, "said": row.said,
                        "own": row.own, "waiting": 0})  # fmt: skip
        else:
            when = family_display(row.when.edtf, way) if row.when and row.when.edtf else row.words or "no date yet"
            end = f"  [{row.id[-12:]}]" if row.own else ""
            output.say(output.safe(f"{when}: {row.name}  ({row.said}){end}"))
    ctx.exit(0 if rows or asked else 1)


@events.command()
@click.argument("name")
@click.argument("date", required=False, default="")
@click.option("--kind", default="", callback=options.filled, help="wedding, birth, death, move, voyage, school, …")
@options.by
@click.pass_context
def add(ctx: click.Context, name: str, date: str, kind: str, source: Source) -> None:
    """Tell of an event called NAME, as the family says it (“when we sailed”), and when it was, if that is known."""
    with open_for_writing(ctx.obj) as collection:
        count = by_hand.add_event(Teller(collection), name, date, Telling(source=source), kind=kind)
    talk.say(f"“{name.strip()}” is on the time line{'' if date.strip() else ', with no date yet'}.{_read(count)}")


@events.command()
@click.argument("event")
@click.argument("text")
@options.by
@click.pass_context
def date(ctx: click.Context, event: str, text: str, source: Source) -> None:
    """Say when EVENT was."""
    with open_for_writing(ctx.obj) as collection:
        teller = Teller(collection)
        meant = by_hand.find_event(collection, event)
        count = by_hand.date_event(teller, meant, text, Telling(source=source))
        read = next((row for row in time_line(collection) if row.id == meant.id), meant)
    asks = "" if read.edtf else " That is no single date: it is kept as told, and nothing leans on it."
    talk.say(f"{read.name}: {text}.{asks}{_read(count)}")


@events.command()
@click.argument("event")
@click.argument("name")
@options.by
@click.pass_context
def rename(ctx: click.Context, event: str, name: str, source: Source) -> None:
    """Call EVENT something else."""
    with open_for_writing(ctx.obj) as collection:
        meant = by_hand.find_event(collection, event)
        count = by_hand.rename_event(Teller(collection), meant, name, Telling(source=source))
    talk.say(f"“{meant.name}” is called “{name.strip()}”.{_read(count)}")


@events.command()
@click.argument("event")
@click.option("--for-good", is_flag=True, help="Strike its words from the log and the backups; it cannot be undone.")
@click.pass_context
def remove(ctx: click.Context, event: str, for_good: bool) -> None:
    """Take EVENT off the time line; what was told of it stays in the history, unless --for-good."""
    with open_for_writing(ctx.obj) as collection:
        meant = by_hand.find_event(collection, event)
        statements = by_hand.statements_of(collection, meant)
        count = by_hand.remove_event(Teller(collection), meant)
        stands = False
        if for_good:
            report = strike_out(collection, statements, waiting=talk.say)
            left = [*still_standing(collection, report), *map(words_about, carriers(collection, report))]
            for words in left:
                talk.say(words)
            named(collection)
            stands = bool(report.standing)
    but = ", but words of it stand on: the lines above say where, and what takes them out" if stands else ""
    talk.say(f"“{meant.name}” is off the time line{but}.{_read(count)}")


def _read(count: int) -> str:
    """What became of the dates that lean on it."""
    if not count:
        return ""
    return f" {several(count, 'date of photographs is', 'dates of photographs are')} read again by it."
