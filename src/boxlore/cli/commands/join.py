"""`boxlore join`: another working copy of the collection, taken in."""

from pathlib import Path

import click

from boxlore.cli import options, output, talk
from boxlore.cli.paths import GivenPath
from boxlore.core.crosswalk.captions import listed
from boxlore.core.findings import several
from boxlore.tasks.collection.joining import JoinedCopies
from boxlore.tasks.collection.joining import join as join_copies
from boxlore.tasks.collection.opening import Collection, open_collection

SHOWN = 10
"""So many corrections that both stand are shown; boxlore show tells of the others."""


@click.command()
@click.argument("other", type=GivenPath(exists=True, file_okay=False))
@click.option("--new-numbers", is_flag=True, help="Number anew what was numbered in both copies, the later item.")
@options.as_json
@click.pass_context
def join(ctx: click.Context, /, other: Path, new_numbers: bool, as_json: bool) -> None:
    """Take in what was told in OTHER, the folder of another working copy of this collection.

    Nothing told is lost or overwritten: where both copies corrected the same words, both corrections stand until you
    settle it. What was struck in either is struck in both. Scans, recordings and papers that only OTHER has are copied.
    OTHER stays as it is; join this copy into it, there, and both are alike. It may be done in any order and as often as
    you like. A working copy is made with boxlore new FOLDER --join THIS.
    """
    with open_collection(ctx.obj) as collection:
        with talk.progress() as bar:
            joined = join_copies(collection, other, bar, new_numbers=new_numbers)
        _say(collection, other, joined, as_json=as_json)
    ctx.exit(1 if joined.faults or joined.stopped else 0)


def _say(collection: Collection, other: Path, joined: JoinedCopies, *, as_json: bool) -> None:
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
    for words in said_of_joining(collection, other, joined):
        talk.say(words)


def said_of_joining(collection: Collection, other: Path, joined: JoinedCopies) -> list[str]:
    """What came of a joining, in sentences."""
    log = joined.log
    by = f" by {listed([name or 'somebody' for name in log.by])}" if log.by else ""
    lines = [
        f"Joined from {other}: {several(log.acts, 'act')}{by}, {several(log.statements, 'statement')}, "
        f"{several(joined.files, 'file')} copied."
        if log.acts or joined.files or log.tombstones
        else f"There is nothing in {other} that is not here."
    ]
    if joined.struck:
        lines.append(
            f"{several(joined.struck.struck, 'statement')} struck there {_was(joined.struck.struck)} here too."
        )
        lines += [f"{path} still holds struck words: make it again, or delete it." for path in joined.struck.left_in]
    lines += [
        f"{old} was given in both copies: the photograph taken in later is {new} now. Pencil that on its enclosure."
        for old, new in joined.numbered_anew
    ]
    if joined.same_series:
        lines.append(said_of_series(collection.settings.series))
    lines += _both_stand(collection, joined)
    if joined.ahead:
        lines.append(
            f"The newest there is of {joined.ahead[:16]}Z, which is to come: is the clock right, there and here?"
        )
    if joined.drafts:
        lines.append(f"{several(joined.drafts, 'answer')} still being typed there will come with a later joining.")
    return lines + said_of_files(joined)


def said_of_series(letter: str) -> str:
    """What is said of two copies that number in one series."""
    return (
        f"Both copies number in series {letter}. Set series to another letter in the boxlore.toml of one of them, "
        "so that no number is given twice."
    )


def said_of_files(joined: JoinedCopies) -> list[str]:
    """Which files were not copied, and why, in sentences."""
    lines = [f"{path} is registered where it lies, and was not copied." for path in joined.outside] + joined.faults
    if joined.stopped:
        lines.append("Stopped before every file was copied: boxlore join goes on.")
    return lines


def _was(count: int) -> str:
    return "was struck" if count == 1 else "were struck"


def _both_stand(collection: Collection, joined: JoinedCopies) -> list[str]:
    told = joined.log.corrected_twice
    if not told:
        return []
    lines = ["Corrected in both copies; both corrections stand until you settle it:"]
    for correction in told[:SHOWN]:
        number = collection.store.number_of(correction.subject)
        whose = f" ({correction.by})" if correction.by else ""
        lines.append(f"  {number} {correction.field}: “{correction.words[:60]}”{whose}".replace("   ", "  "))
    if len(told) > SHOWN:
        lines.append(f"  and {several(len(told) - SHOWN, 'more correction')}.")
    return lines
