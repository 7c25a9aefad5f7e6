"""`boxlore date`: what is understood of a date, as EDTF, with its bounds, display and questions."""

import sys
from collections.abc import Iterable
from dataclasses import replace
from datetime import datetime

import click

from boxlore.cli import options, output
from boxlore.core.dates import phrases
from boxlore.core.dates.reading import DateReading
from boxlore.tasks.collection.opening import has_collection
from boxlore.tasks.collection.settings import phrase_settings, read_settings


@click.command()
@click.argument("text", nargs=-1, required=True)
@options.as_json
@click.option("--edtf", "edtf_only", is_flag=True, help="Accept the standard (EDTF, 2019) only, no phrases.")
@click.option("--order", type=click.Choice(["dmy", "mdy"]), help="How 7/4/52 is meant.")
@click.option("--hemisphere", type=click.Choice(["north", "south"]), help="Where summers are meant.")
@click.pass_context
def date(
    ctx: click.Context,
    text: tuple[str, ...],
    as_json: bool,
    edtf_only: bool,
    order: str | None,
    hemisphere: str | None,
) -> None:
    """Say what is understood of TEXT. Each TEXT is one date; `-` reads a date a line from standard input.

    In a collection its day order and hemisphere hold, unless told otherwise.
    """
    own = phrase_settings(read_settings(ctx.obj)) if has_collection(ctx.obj) else phrases.AS_TOLD
    settings = replace(own, order=order or own.order, hemisphere=hemisphere or own.hemisphere)
    known = phrases.KnownDates(this_year=datetime.now().year)
    findings = False
    for words in lines(text):
        reading = phrases.read_strict(words) if edtf_only else phrases.read(words, settings, known)
        findings = findings or bool(reading.ask) or reading.edtf is None
        if as_json:
            output.row(reading.to_json())
        else:
            click.echo(_sentence(reading))
    ctx.exit(1 if findings else 0)


def lines(texts: Iterable[str]) -> Iterable[str]:
    """The texts as given, but for `-`: in its place come all lines of standard input, blank ones included."""
    for text in texts:
        if text == "-":
            yield from (line.rstrip("\r\n") for line in sys.stdin)
        else:
            yield text


def _sentence(reading: DateReading) -> str:
    if reading.edtf is None:
        return f"{output.safe(reading.text)} → no date: {reading.ask or reading.fault.message}"
    asks = f" (ask: {reading.ask})" if reading.ask else ""
    bounds = f"{reading.earliest or '…'} to {reading.latest or '…'}"
    return f"{output.safe(reading.text)} → {reading.edtf.text}: {reading.display}, {bounds}{asks}"
