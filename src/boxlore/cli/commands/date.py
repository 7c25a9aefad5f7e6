"""`boxlore date`: what is understood of a date, as EDTF, with its bounds, display and questions."""

import sys
from collections.abc import Callable, Iterable
from contextlib import ExitStack
from dataclasses import replace
from datetime import datetime
from functools import partial
from typing import NamedTuple

import click

from boxlore.cli import options, output
from boxlore.core.dates import edtf as standard
from boxlore.core.dates import phrases
from boxlore.core.dates.family_display import FamilyWay, family_display
from boxlore.core.dates.reading import DateReading
from boxlore.core.errors import WrongUse
from boxlore.tasks.collection.opening import has_collection, open_collection
from boxlore.tasks.collection.settings import family_way
from boxlore.tasks.people.date_preview import reader_of


@click.command()
@click.argument("text", nargs=-1, required=True)
@options.as_json
@click.option("--edtf", "edtf_only", is_flag=True, help="Accept the standard (EDTF, 2019) only, no phrases.")
@click.option("--order", type=click.Choice(["dmy", "mdy"]), help="How 7/4/52 is meant.")
@click.option("--hemisphere", type=click.Choice(["north", "south"]), help="Where summers are meant.")
@click.option("--narrator", default="", callback=options.filled, help="Who says it: “when I was six”.")
@click.option("--item", default="", callback=options.filled, help="Of which photograph: “on her 21st”, “summer 1950”.")
@click.pass_context
def date(
    ctx: click.Context,
    text: tuple[str, ...],
    as_json: bool,
    edtf_only: bool,
    order: str | None,
    hemisphere: str | None,
    narrator: str,
    item: str,
) -> None:
    """Say what is understood of TEXT. Each TEXT is one date; `-` reads a date a line from standard input.

    In a collection its day order, hemisphere, countries, people and events hold, as they do for `tell`, unless told
    otherwise.
    """
    if edtf_only:
        options.refuse_others(ctx, "with --edtf", "text", "as_json", "edtf_only")
    own = Meant(order, hemisphere)
    findings = False
    with ExitStack() as stack:
        read: Callable[[str], DateReading] = phrases.read_strict
        way = FamilyWay("en", order or "")
        if not edtf_only and has_collection(ctx.obj):
            collection = stack.enter_context(open_collection(ctx.obj, write=False))
            read = reader_of(collection, narrator, item, own.settings)
            way = family_way(collection.settings)
        elif narrator or item:
            raise WrongUse("--narrator and --item are looked up in a collection.", "Name it with -c FOLDER.")
        elif not edtf_only:
            today = datetime.now().date()
            known = phrases.KnownDates(this_year=today.year, today=today.isoformat())
            read = partial(phrases.read, settings=own.settings(phrases.AS_TOLD), known=known)
        for words in lines(text):
            reading = read(words)
            findings = findings or bool(reading.ask) or reading.edtf is None
            if as_json:
                output.row(reading.to_json())
            else:
                output.say(_answer(reading, way))
    ctx.exit(1 if findings else 0)


class Meant(NamedTuple):
    """What the options say of how dates are meant; None where they say nothing."""

    order: str | None = None
    hemisphere: str | None = None

    def settings(self, own: phrases.PhraseSettings) -> phrases.PhraseSettings:
        """A collection's own settings, but for what the options say."""
        return replace(own, order=self.order or own.order, hemisphere=self.hemisphere or own.hemisphere)


def lines(texts: Iterable[str]) -> Iterable[str]:
    """The texts as given, but for `-`: in its place come all lines of standard input, blank ones included."""
    for text in texts:
        if text == "-":
            yield from (line.rstrip("\r\n") for line in sys.stdin)
        else:
            yield text


def _answer(reading: DateReading, way: FamilyWay) -> str:
    """What was understood, and below it, numbered, what may be meant: in words, with its EDTF."""
    if reading.edtf is None:
        lines = [f"{reading.text} → no date: {reading.ask or reading.fault.message}"]
    else:
        bounds = f"{reading.earliest or '…'} to {reading.latest or '…'}"
        asks = f" (ask: {reading.ask})" if reading.ask else ""
        lines = [f"{reading.text} → {reading.edtf.text}: {reading.display}, {bounds}{asks}"]
    if reading.alternatives:
        shown = [family_display(standard.parsed(edtf), way) for edtf in reading.choices]
        width = max(map(len, shown))
        for number, (words, edtf) in enumerate(zip(shown, reading.choices, strict=True), 1):
            lines.append(f"  {number}. {words}" if words == edtf else f"  {number}. {words:<{width}}  {edtf}")
    return "\n".join(output.safe(line) for line in lines)
