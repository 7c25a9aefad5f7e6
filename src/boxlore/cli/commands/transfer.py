"""`boxlore transfer`: the package for an archive, an open part and a closed part."""

import re
import sys
from dataclasses import dataclass
from datetime import date
from pathlib import Path

import click

from boxlore.cli import options, output, talk
from boxlore.core.crosswalk.repository import TAKES
from boxlore.core.errors import WrongUse
from boxlore.tasks.archive.settings import archive_of
from boxlore.tasks.archive.transfer import TransferOrder, Transferred, name_search, rows_found
from boxlore.tasks.archive.transfer import transfer as make
from boxlore.tasks.collection.opening import Collection, open_collection

_SIZES = {"": 1, "K": 10**3, "M": 10**6, "G": 10**9}


def _size(ctx: click.Context, option: click.Parameter, value: str | None) -> int:
    match = re.fullmatch(r"(\d+(?:\.\d+)?)\s*([KMG]?)B?", (value or "0").strip().upper())
    if match is None:
        raise WrongUse(f"“{(value or '')[:20]}” is no size.", "Write it like 4G or 700M.")
    return int(float(match[1]) * _SIZES[match[2]])


@dataclass(frozen=True, slots=True)
class _Asked:
    """The options as they were given."""

    originals: str | None
    archive: Path | None
    also: tuple[str, ...]
    split: int
    earlier: Path | None
    wanted: bool
    anyway: bool
    yes: bool
    as_json: bool


@click.command()
@click.argument("out", type=click.Path(path_type=Path, file_okay=False))
@options.selection
@click.option("--originals", type=click.Choice(["yes", "no"]), help="Whether the originals are handed over too.")
@click.option("--archive", type=click.Path(path_type=Path), help="The archive's own settings file (archive.toml).")
@click.option("--also", multiple=True, type=click.Choice(list(TAKES)), help="Also this, such as copies or ead2002.")
@click.option("--split", callback=_size, metavar="SIZE", help="At most so much in one bag, such as 4G for a stick.")
@click.option("--update", "earlier", type=click.Path(path_type=Path, exists=True), help="Only what changed since it.")
@click.option("--wanted", is_flag=True, help="Only what the archive has said that it wants (see offer).")
@click.option("--anyway", is_flag=True, help="Go on without records that cannot be valid.")
@click.option("--yes", is_flag=True, help="What the name search found has been read; do not ask.")
@options.as_json
@options.on_day
@click.pass_context
def transfer(ctx: click.Context, /, out: Path, on_day: date | None, **chosen: object) -> None:
    """Write the package to OUT: two bags (RFC 8493), OUT/open and OUT/closed."""
    names = set(_Asked.__dataclass_fields__)
    asked = _Asked(**{name: value for name, value in chosen.items() if name in names})  # type: ignore[arg-type]  # click has checked them
    with open_collection(ctx.obj, fallback_read_only=True, on_day=on_day) as collection:
        order = _order(collection, asked, chosen)
        _read_names(collection, order, out, asked)
        with talk.progress() as bar:
            made = make(collection, out, order=order, progress=bar)
    _said(made, as_json=asked.as_json)
    ctx.exit(1 if made.findings else 0)


def _order(collection: Collection, asked: _Asked, chosen: dict[str, object]) -> TransferOrder:
    archive = archive_of(collection.folder, asked.archive)
    return TransferOrder(
        selection=options.selected(chosen),
        archive=archive.taking(asked.also),
        originals=_originals(asked.originals),
        split=asked.split,
        earlier=asked.earlier,
        go_on=asked.anyway,
    )


def _originals(said: str | None) -> bool:
    """Asked of whoever is at the terminal; without one the default holds and is said."""
    if said is not None:
        return said == "yes"
    if sys.stdin.isatty() and sys.stderr.isatty():
        return click.confirm("Are the originals handed over too (else scans only)?", default=True, err=True)
    talk.say("Taken as handing over the originals too; --originals no hands over scans only.")
    return True


def _read_names(collection: Collection, order: TransferOrder, out: Path, asked: _Asked) -> None:
    """The keeper reads what every name search found before anything leaves."""
    found = name_search(collection, order.selection)
    if not found:
        talk.say("The name search found nobody living.")
        return
    out.mkdir(parents=True, exist_ok=True)
    listed = out / "names-found.csv"
    listed.write_bytes(b"".join(rows_found(found)))
    people = {name for one in found for name in one.people}
    talk.say(f"The name search found {len(people)} living people in {len(found)} places; each is in {listed}.")
    talk.say("That list is for you; do not hand it on.")
    if asked.yes or not (sys.stdin.isatty() and sys.stderr.isatty()):
        return
    for one in found[:40]:
        talk.say(f"  {one.number}  {one.field}: {output.safe(one.words[:70])}  ({', '.join(one.people)}): {one.done}")
    if not click.confirm("Go on?", default=False, err=True):
        raise click.Abort


def _said(made: Transferred, *, as_json: bool) -> None:
    for finding in made.findings:
        talk.say(finding.message)
    for part in made.parts:
        talk.say(f"{part.path}: {part.records} records, {part.scans} scans, {part.bytes:,} bytes.")
        if as_json:
            output.row({"path": str(part.path), "records": part.records, "scans": part.scans, "bytes": part.bytes})
    talk.say(
        f"{made.withheld} people taken as living are withheld from the open part. Read both before you hand them on."
    )
