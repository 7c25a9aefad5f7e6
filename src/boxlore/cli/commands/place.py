"""`boxlore place`: what is understood of a place, what it was called in the picture's year, and where it lies now."""

from contextlib import ExitStack
from itertools import islice, tee

import click

from boxlore.cli import options, output, talk
from boxlore.cli.commands.date import lines
from boxlore.core.errors import WrongUse
from boxlore.core.places.names_apart import names_apart
from boxlore.core.places.reading import Place
from boxlore.tasks.collection.opening import has_collection, open_collection
from boxlore.tasks.collection.progress import counting
from boxlore.tasks.telling.places import read_places


@click.command()
@click.argument("text", nargs=-1, required=True)
@options.as_json
@click.option("--year", type=click.IntRange(1, 9999), help="The year of the picture.")
@click.pass_context
def place(ctx: click.Context, text: tuple[str, ...], as_json: bool, year: int | None) -> None:
    """Say what is understood of each TEXT, a place; `-` reads lines `text<TAB>year` from standard input."""
    findings = False
    asked, told = tee(_split(line, year) for line in lines(text))
    with ExitStack() as opened:
        bar = opened.enter_context(talk.progress())
        collection = opened.enter_context(open_collection(ctx.obj, write=False)) if has_collection(ctx.obj) else None
        for read, (_, when) in zip(read_places(asked, counting(bar), talk.say, collection), told, strict=True):
            findings = findings or read.kind != "match" or bool(read.findings)
            if as_json:
                output.row(read.to_json())
            else:
                apart = zip(read.choices, names_apart(read.choices), strict=True)
                names = [_then_and_now(choice, name, when) for choice, name in islice(apart, 3)]
                asks = "".join(f" ({finding.message})" for finding in read.findings)
                output.say(f"{output.safe(read.text)} → {read.kind}: {' or '.join(names) or 'kept as told'}{asks}")
    ctx.exit(1 if findings else 0)


def _split(line: str, year: int | None) -> tuple[str, int | None]:
    """`text<TAB>year` or `text`, as text and year (the default where the line has none). Raises WrongUse."""
    words, tab, when = line.rpartition("\t")
    if not tab:
        return line, year
    if when.strip() and not when.strip().isdigit():
        raise WrongUse(f"“{when[:20]}” is no year.", "Write a line as: place, a tab, a year.")
    return words, int(when) if when.strip() else year


def _then_and_now(place: Place, name: str, year: int | None) -> str:
    """`Tartu, Estonia; then Dorpat, Russian Empire`; nothing of then where nothing was different, and a word where it
    is not known, or changed in that very year.
    """
    if year is not None and place.country and not place.country_then:
        called = f"; then {place.called_then}" if place.called_then else ""
        return f"{name}{called}; who governed it in {year} is not known here, or changed that year"
    then = ", ".join(part for part in (place.called_then, place.country_then) if part)
    if place.country_then == place.country and place.called_then in ("", place.city):
        then = ""
    return name + (f"; then {then}" if then else "")
