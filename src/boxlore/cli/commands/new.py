"""`boxlore new`: starts a collection."""

from pathlib import Path

import click

from boxlore.cli import options, parcel_options, talk
from boxlore.cli.paths import GivenPath
from boxlore.core.errors import WrongUse
from boxlore.core.findings import several
from boxlore.core.places.country_defaults import usual_ways
from boxlore.core.wording.catalogue import ENGLISH
from boxlore.tasks.archive.rebuild import rebuild
from boxlore.tasks.collection.joining import make_working_copy
from boxlore.tasks.collection.opening import start
from boxlore.tasks.collection.parcels import copy_from_parcel
from boxlore.tasks.collection.said_of_joining import said_of_working_copy
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.scans.given_files import in_utf_8


@click.command()
@click.argument("folder", type=GivenPath())
@click.option("--title", help="The collection's title.")
@click.option(
    "--prefix",
    default="FAM",
    show_default=True,
    help="Capital letters or digits, a letter first, that begin every number.",
)
@click.option("--series", default="", help="The letter of this working copy (A; with --from the next free one).")
@click.option("--holder", default="", help="Who holds the originals.")
@click.option("--language", default="en", show_default=True, help="The language told in (BCP 47).")
@click.option(
    "--hemisphere",
    type=click.Choice(["north", "south"]),
    help="Where summers are meant; without it, that of the first of the countries, else north.",
)
@click.option("--day-order", type=click.Choice(["dmy", "mdy"]), help="How 7/4/52 is meant; without it, it asks.")
@click.option("--countries", default="", help="Whose holidays are meant, and whose places come first: “NZ EE”.")
@click.option(
    "--from",
    "package",
    multiple=True,
    type=GivenPath(exists=True),
    help="Rebuild it from a transfer; may be repeated, for its updates.",
)
@click.option(
    "--join", "other", type=GivenPath(exists=True),
    help="Make it a working copy of the collection in this folder, or of a parcel, for another desk.",
)  # fmt: skip
@click.pass_context
def new(
    ctx: click.Context,
    /,
    folder: Path,
    title: str | None,
    prefix: str,
    series: str,
    holder: str,
    language: str,
    hemisphere: str | None,
    day_order: str | None,
    countries: str,
    package: tuple[Path, ...],
    other: Path | None,
) -> None:
    """Start a collection in FOLDER."""
    if other is not None:
        options.refuse_others(ctx, "with --join, which has it of that collection", "folder", "other", "series")
        _working_copy(folder, other, series.upper())
        return
    if package:
        options.refuse_others(ctx, "with --from, which has it of the transfer", "folder", "package", "series")
        _rebuild(folder, package, series.upper())
        return
    if title is None and not in_utf_8(str(folder.resolve().name)):
        raise WrongUse("The folder's name is not in UTF-8, and cannot be the title.", "Say --title TITLE.")
    settings = Settings(
        title=title or folder.resolve().name.replace("_", " ").title(),
        prefix=prefix.upper(),
        series=series.upper() or "A",
        holder=holder,
        language=language,
        hemisphere=hemisphere or _hemisphere_of(countries),
        day_order=day_order or "",
        countries=countries.upper(),
    )
    start(folder, settings)
    talk.say(f"A collection is in {folder}. Its first number will be {settings.prefix}{settings.series}-0001.")
    talk.say(f"Settings are in {folder / 'boxlore.toml'}. Next: boxlore -c {folder} intake PATH")


def _hemisphere_of(countries: str) -> str:
    """That of the first country; north where none is told."""
    usual = usual_ways(next(iter(countries.split()), "").partition("-")[0])
    return usual.hemisphere if usual else "north"


def _working_copy(folder: Path, other: Path, series: str) -> None:
    if other.is_file():
        passphrase = parcel_options.passphrase_of(other)
        with talk.progress() as bar:
            joined = copy_from_parcel(folder, other, passphrase, bar, series=series).joined
        later = f"Later, boxlore -c {folder} parcel FILE makes a parcel of what was told there, to send back."
    else:
        with talk.progress() as bar:
            joined = make_working_copy(folder, other, bar, series=series)
        later = f"Later, boxlore -c {other} join {folder} brings together what was told in both."
    for words in (*said_of_working_copy(other, folder, joined), later):
        talk.say(words)


def _rebuild(folder: Path, packages: tuple[Path, ...], series: str) -> None:
    package, *also = packages
    rebuilt = rebuild(folder, package, also=also, series=series)
    talk.say(
        f"{folder}: {several(rebuilt.items, 'item')}, {several(rebuilt.scans, 'scan')} and "
        f"{several(rebuilt.statements, 'statement')} from {ENGLISH.listed([str(path) for path in packages])}."
    )
    for note in rebuilt.notes:
        talk.say(note)
    for path in rebuilt.missing:
        talk.say(f"The package does not hold {path}.")
    talk.say("What boxes are made of and where they stand is not in a transfer: see boxlore housing.")
    talk.say("Nor is what is kept to the family or the keeper: owners, givers and lenders, words for the family.")
