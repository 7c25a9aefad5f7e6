"""`boxlore places`: the family's own places, and a bigger gazetteer of the keeper's own."""

from pathlib import Path

import click

from boxlore.cli import options, output, talk
from boxlore.cli.paths import GivenPath
from boxlore.core.findings import several
from boxlore.core.places.reading import coordinates, full_name
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.collection.progress import counting
from boxlore.tasks.sitting.recovering import open_for_writing
from boxlore.tasks.telling.places import NewPlace, add_place, gazetteer_of, own_places, take_gazetteer


@click.group(invoke_without_command=True)
@options.as_json
@click.pass_context
def places(ctx: click.Context, as_json: bool) -> None:
    """List the family's own places; `add` makes one, `import` takes in a gazetteer file.

    A place of the family's own (a farm, a cemetery) is preferred wherever its name is told.
    """
    if ctx.invoked_subcommand is not None:
        options.refuse_others(ctx, f"before {ctx.invoked_subcommand}")
        return
    with open_collection(ctx.obj, write=False) as collection:
        family_places = own_places(collection)
    for own in family_places:
        if as_json:
            output.row({"names": own.names, "inside": own.inside_words or None, "point": own.point})
        else:
            also = f" (also {', '.join(own.names[1:])})" if own.names[1:] else ""
            inside = f", in {full_name(own.inside) if own.inside else own.inside_words}" if own.inside_words else ""
            output.say(output.safe(f"{own.names[0]}{also}{inside}  {coordinates(own.place)}".rstrip()))
    if not family_places:
        talk.say('No place of the family\'s own yet. Make one: boxlore places add "Grandpa\'s farm" --inside "Milton".')


@places.command("add")
@click.argument("name")
@click.option("--inside", default="", help="The town, area or country it lies in.")
@click.option("--at", default="", help="Latitude and longitude in degrees: -45.82, 170.62 (south and west: minus).")
@click.option("--also", multiple=True, help="Another name of it; may be repeated.")
@click.option("--years", default="", help="When it was so called or stood, as told.")
@click.pass_context
def add(ctx: click.Context, name: str, inside: str, at: str, also: tuple[str, ...], years: str) -> None:
    """Make NAME a place of the family's own."""
    new = NewPlace(name=name, inside=inside, at=at, also=also, years=years)
    with open_for_writing(ctx.obj) as collection, talk.progress() as bar:
        findings = add_place(collection, new, gazetteer_of(collection, counting(bar)))
    talk.say(f"“{output.safe(name)}” is a place of the family's own now.")
    for finding in findings:
        talk.say(finding.message)
    ctx.exit(1 if findings else 0)


@places.command("import")
@click.argument("table", type=GivenPath(exists=True, dir_okay=False))
@click.option("--names", type=GivenPath(exists=True, dir_okay=False), help="An alternateNamesV2 file.")
@click.option("--country", "countries", multiple=True, help="Keep only this country (EE, NZ …); may be repeated.")
@click.pass_context
def take(ctx: click.Context, table: Path, names: Path | None, countries: tuple[str, ...]) -> None:
    """Take in TABLE, a GeoNames file of 19 columns (a whole country, every hamlet); GeoNames data are CC BY 4.0."""
    with open_for_writing(ctx.obj) as collection, talk.progress() as bar:
        country_codes = [country.upper() for country in countries]
        count = take_gazetteer(collection, table, names=names, countries=country_codes, heard=counting(bar))
        gazetteer_of(collection, counting(bar))
    talk.say(
        f"{several(count, 'place or area is', 'places and areas are')} known to this collection "
        f"now, beside the shipped ones."
    )
