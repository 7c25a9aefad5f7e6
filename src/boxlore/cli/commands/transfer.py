"""`boxlore transfer`: the package for an archive, an open part and a closed part."""

import re
import sys
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date
from pathlib import Path

import click

from boxlore.cli import options, output, talk
from boxlore.cli.paths import GivenPath
from boxlore.core.crosswalk.receiving_archive import TAKES
from boxlore.core.errors import WrongUse
from boxlore.core.fields.name_answers import NamingAnswer
from boxlore.core.findings import Severity, several
from boxlore.tasks.archive.archive_settings import archive_of
from boxlore.tasks.archive.name_answers import NamePlace, decide, took_consent_back, undecided
from boxlore.tasks.archive.names_asked import look_for_names, names_asked, said_of_answers, write_names_found
from boxlore.tasks.archive.transfer import TransferOrder, Transferred, in_words
from boxlore.tasks.archive.transfer import transfer as make
from boxlore.tasks.archive.transfer_updates import originals_before
from boxlore.tasks.collection.opening import Collection, open_collection

_SIZES = {"": 1, "K": 10**3, "M": 10**6, "G": 10**9}


def _size(ctx: click.Context, option: click.Parameter, value: str | None) -> int:
    """Bytes of a size such as `4G`, `700M` or `1.5 GB` (powers of 1000); 0 without one. Raises WrongUse."""
    match = re.fullmatch(r"(\d+(?:\.\d+)?)\s*([KMG]?)B?", (value or "0").strip().upper())
    if match is None:
        raise WrongUse(f"“{(value or '')[:20]}” is no size.", "Write it like 4G or 700M.")
    size = int(float(match[1]) * _SIZES[match[2]])
    if value is not None and not size:
        raise WrongUse(
            f"A bag of {value[:20]} holds nothing.", "Write it like 4G or 700M, or leave it out for one bag."
        )
    return size


@dataclass(frozen=True, slots=True)
class _Request:
    """The command's own options, as they were given (those that choose items are in `options.selection`)."""

    originals: str | None
    archive: Path | None
    also: tuple[str, ...]
    split: int
    earlier: Path | None
    wanted: bool
    anyway: bool
    changed_scans: bool
    yes: bool
    as_json: bool
    over: bool


NOTHING = "Nothing was packed."


@click.command()
@click.argument("out", type=GivenPath(file_okay=False))
@options.selection
@click.option("--originals", type=click.Choice(["yes", "no"]), help="Whether the originals are handed over too.")
@click.option("--archive", type=GivenPath(), help="The archive's own settings file (archive.toml).")
@click.option(
    "--also",
    multiple=True,
    type=click.Choice(list(TAKES)),
    help="Also this, such as copies or ead2002; may be repeated.",
)
@click.option("--split", callback=_size, metavar="SIZE", help="At most so much in one bag, such as 4G for a stick.")
@click.option(
    "--update",
    "earlier",
    type=GivenPath(exists=True),
    help="The folder of an earlier transfer: the records anew, and of the files those that it had not.",
)
@click.option("--wanted", is_flag=True, help="Only what the archive has said that it wants (see offer).")
@click.option("--anyway", is_flag=True, help="Leave out the records that cannot be valid, and hand over the rest.")
@click.option(
    "--changed-scans", is_flag=True, help="Hand over scans that changed since their intake too, as they are now."
)
@click.option("--yes", is_flag=True, help="What the name search found has been read; do not ask.")
@options.over
@options.as_json
@options.on_day
@click.pass_context
def transfer(ctx: click.Context, /, out: Path, on_day: date | None, **chosen: object) -> None:
    """Write the package to OUT: two bags (RFC 8493), OUT/open and OUT/closed."""
    names = set(_Request.__dataclass_fields__)
    request = _Request(**{name: value for name, value in chosen.items() if name in names})  # type: ignore[arg-type]  # click has checked them
    with open_collection(ctx.obj, fallback_read_only=True, on_day=on_day) as collection:
        collection.over = request.over
        order = _order(collection, request, chosen)
        _read_names(collection, order, out, request)
        with talk.progress() as bar:
            transferred = make(collection, out, order=order, progress=bar)
    _report(transferred, as_json=request.as_json)
    asks = sum(finding.severity is not Severity.NOTE for finding in transferred.findings)
    if asks:
        talk.say(f"The package is made; {several(asks, 'sentence above asks', 'sentences above ask')} for your answer.")
    ctx.exit(1 if asks else 0)


def _order(collection: Collection, request: _Request, chosen: dict[str, object]) -> TransferOrder:
    archive = archive_of(collection.folder, request.archive, request.earlier)
    return TransferOrder(
        selection=options.selected(chosen),
        archive=archive.taking(request.also),
        originals=_originals(request),
        split=request.split,
        earlier=request.earlier,
        go_on=request.anyway,
        take_changed=request.changed_scans,
    )


def _originals(request: _Request) -> bool:
    """Whether the originals are handed over: as `--originals` says, else as with the transfer that is updated, else
    asked, else (no terminal) yes, and said."""
    if request.originals is not None:
        return request.originals == "yes"
    if request.earlier is not None:
        return originals_before(request.earlier)
    if sys.stdin.isatty() and sys.stderr.isatty():
        return talk.agreed("Are the originals handed over too (else scans only)?", NOTHING, default=None)
    talk.say("Taken as handing over the originals too; --originals no hands over scans only.")
    return True


def _read_names(collection: Collection, order: TransferOrder, out: Path, request: _Request) -> None:
    """Before anything leaves, show the keeper what is new of the places where the name search found a living person.

    All places are written to `names-found.csv` in the collection's folder, a table to fill in; what was written there
    since the last time is taken first. Raises click.Abort if the keeper does not want to go on.
    """
    asked = names_asked(collection, order.selection)
    for words in said_of_answers(asked):
        talk.say(words)
    listed, hits = write_names_found(collection, asked, order.selection), asked.namings
    if not hits:
        talk.say("The name search found nobody living.")
        return
    new = undecided([place for hit in hits for place in hit.places])
    talk.say(f"The name search found {in_words(hits)}; each is in {listed}.")
    talk.say("That list is for you; do not hand it on.")
    if new:
        waiting = several(len(new), "of them is not decided yet, and stays out until it is",
                          "of them are not decided yet, and stay out until they are")  # fmt: skip
        talk.say(f"{waiting}: fill in that table.")
    if request.yes or not (sys.stdin.isatty() and sys.stderr.isatty()):
        return
    if new and collection.store.writable and talk.agreed("Go through them now?", NOTHING, default=True):
        decide(collection, list(_asked(collection, new)))
        write_names_found(collection, look_for_names(collection, order.selection), order.selection)
    if not talk.agreed("Go on?", NOTHING):
        raise click.Abort


_KEYS = {"h": NamingAnswer.HIDE, "n": NamingAnswer.OTHER, "m": NamingAnswer.MAY}


def _asked(collection: Collection, places: list[NamePlace]) -> Iterator[tuple[NamePlace, NamingAnswer]]:
    """The keeper's answers, one by one, until there are no more or the rest is left for another time."""
    talk.say("h hide   n not that person   m may be named (there is consent)   s skip   q leave the rest for later")
    talk.say("What you hide stays hidden, after a later consent too, until you change its answer in the table.")
    for at, place in enumerate(places, 1):
        doubt = f": {place.why}" if place.why else ""
        talk.say(f"{at} of {len(places)}  {place.number}, {place.where}: {output.safe(place.sentence)}")
        keys = [key for key in _KEYS if key != "m" or not took_consent_back(collection, place.person)]
        if len(keys) < len(_KEYS):
            talk.say(f"{output.safe(place.name)} took back the consent to be named: m needs a new one.")
        key = click.prompt(
            f"{output.safe(place.name)}{doubt}", type=click.Choice([*keys, "s", "q"]), default="h", err=True
        )
        if key == "q":
            return
        if key in _KEYS:
            yield place, _KEYS[key]


def _report(transferred: Transferred, *, as_json: bool) -> None:
    for finding in transferred.findings:
        talk.say(finding.message)
    for part in transferred.parts:
        talk.say(
            f"{part.path}: {several(part.records, 'record')}, {several(part.scans, 'scan')}, {part.bytes:,} bytes."
        )
        if as_json:
            output.row({"path": str(part.path), "records": part.records, "scans": part.scans, "bytes": part.bytes})
    withheld = several(transferred.withheld, "person taken as living is", "people taken as living are")
    talk.say(f"{withheld} withheld from the open part. Read both before you hand them on.")
