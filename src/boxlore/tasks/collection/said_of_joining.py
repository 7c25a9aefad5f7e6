"""What came of joining two working copies, or of making one, in sentences; both fronts say the same."""

from pathlib import Path

from boxlore.core.findings import several
from boxlore.core.wording.catalogue import ENGLISH
from boxlore.tasks.collection.joining import JoinedCopies
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.settings import read_settings

SHOWN = 10
"""So many corrections that both stand are shown; boxlore show tells of the others."""


def said_of_working_copy(other: Path, folder: Path, joined: JoinedCopies) -> list[str]:
    """What is said of a new working copy in `folder` of the collection in `other`."""
    letter = read_settings(folder).series
    lines = [
        f"A working copy of {other} is in {folder}: {several(joined.log.statements, 'statement')}, "
        f"{several(joined.files, 'file')}. It numbers in series {letter}.",
        *said_of_files(joined),
    ]
    return [*lines, said_of_series(letter)] if joined.same_series else lines


def said_of_joining(collection: Collection, other: Path, joined: JoinedCopies) -> list[str]:
    """What came of a joining, in sentences."""
    log = joined.log
    by = f" by {ENGLISH.listed([name or 'somebody' for name in log.by])}" if log.by else ""
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
