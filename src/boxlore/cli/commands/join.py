"""`boxlore join`: another working copy of the collection, taken in."""

from pathlib import Path

import click

from boxlore.cli import options, output, parcel_options, talk
from boxlore.cli.paths import GivenPath
from boxlore.tasks.collection.joining import JoinedCopies
from boxlore.tasks.collection.joining import join as join_copies
from boxlore.tasks.collection.opening import Collection, open_collection
from boxlore.tasks.collection.parcels import take_in
from boxlore.tasks.collection.said_of_joining import said_of_joining, said_of_taken_in


@click.command()
@click.argument("other", type=GivenPath(exists=True))
@click.option("--new-numbers", is_flag=True, help="Number anew what was numbered in both copies, the later item.")
@options.as_json
@click.pass_context
def join(ctx: click.Context, /, other: Path, new_numbers: bool, as_json: bool) -> None:
    """Take in what was told in OTHER: the folder of another working copy of this collection, or a parcel of one.

    Nothing told is lost or overwritten: where both copies corrected the same words, both corrections stand until you
    settle it. What was struck in either is struck in both. Scans, recordings and papers that only OTHER has are copied.
    OTHER stays as it is; join this copy into it, there, and both are alike. It may be done in any order and as often as
    you like. A working copy is made with boxlore new FOLDER --join THIS, a parcel with boxlore parcel.
    """
    with open_collection(ctx.obj) as collection:
        if other.is_file():
            joined, said = _parcel(collection, other, new_numbers=new_numbers)
        else:
            with talk.progress() as bar:
                joined = join_copies(collection, other, bar, new_numbers=new_numbers)
            said = said_of_joining(collection, other, joined)
        _say(collection, joined, said, as_json=as_json)
    ctx.exit(1 if joined.faults or joined.stopped else 0)


def _parcel(collection: Collection, parcel: Path, *, new_numbers: bool) -> tuple[JoinedCopies, list[str]]:
    passphrase = parcel_options.passphrase_of(parcel)
    with talk.progress() as bar:
        taken = take_in(collection, parcel, passphrase, bar, new_numbers=new_numbers)
    return taken.joined, said_of_taken_in(collection, parcel, taken)


def _say(collection: Collection, joined: JoinedCopies, said: list[str], *, as_json: bool) -> None:
    log = joined.log
    struck = joined.struck.struck if joined.struck else 0
    if as_json:
        output.row({
            "acts": log.acts, "statements": log.statements, "by": list(log.by), "struck": struck,
            "files": joined.files, "numbered_anew": dict(joined.numbered_anew),
            "corrected_twice": [
                {"number": collection.store.number_of(told.subject), "field": told.field, "words": told.words,
                 "by": told.by} for told in log.corrected_twice
            ],
            "faults": joined.faults,
        })  # fmt: skip
    for words in said:
        talk.say(words)
