"""What came of joining two working copies, or of making one, in sentences; both fronts say the same."""

from collections.abc import Sequence
from pathlib import Path

from boxlore.core.findings import several
from boxlore.core.wording.catalogue import ENGLISH
from boxlore.store.joining import Correction
from boxlore.store.strike import StrikeReport
from boxlore.tasks.collection.joining import JoinedCopies
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.parcels import Parcel, ParcelOrder, TakenIn
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
        lines += said_of_struck(joined.struck)
    lines += [
        f"{old} was given in both copies: the photograph taken in later is {new} now. Pencil that on its enclosure."
        for old, new in joined.numbered_anew
    ]
    if joined.same_series:
        lines.append(said_of_series(collection.settings.series))
    lines += said_of_both(collection, log.corrected_twice)
    if joined.ahead:
        lines.append(
            f"The newest there is of {joined.ahead[:16]}Z, which is to come: is the clock right, there and here?"
        )
    if joined.drafts:
        lines.append(f"{several(joined.drafts, 'answer')} still being typed there will come with a later joining.")
    return lines + said_of_files(joined)


def said_of_parcel(parcel: Parcel, order: ParcelOrder) -> list[str]:
    """What is said of a parcel that was made, in sentences."""
    for_whom = "another keeper: it holds what is the keeper's alone, too"
    lines = [
        f"{parcel.path}: {several(parcel.statements, 'statement')}, {several(parcel.files, 'scan')}, for "
        f"{'the family' if order.to.is_family else for_whom}.",
        f"Its SHA-256 begins with {parcel.sha256[:8]}: whoever gets it is shown the same, and can tell you.",
    ]
    if order.to.is_family:
        lines.append(
            f"{several(parcel.kept_back, 'statement')} {_was(parcel.kept_back, 'kept back')}: what the family may not "
            "see, and words that were put right since. The living are named in it; it is for the family alone."
        )
    if parcel.letter:
        lines.append(
            f"Series {parcel.letter} is set aside for it: boxlore new FOLDER --join {parcel.path.name} makes a working "
            "copy that numbers in it. Make another parcel for another desk."
        )
    if not order.passphrase:
        lines.append("It is not locked: whoever has the file can read it. --lock asks for a passphrase.")
    lines += [f"{path} is registered where it lies, or is not there: it is not in the parcel." for path in parcel.left]
    return lines


def said_of_taken_in(collection: Collection, parcel: Path, taken: TakenIn) -> list[str]:
    """What came of taking a parcel in, in sentences."""
    lines = [
        f"The SHA-256 of {parcel.name} begins with {taken.sha256[:8]}.",
        *said_of_joining(collection, parcel, taken.joined),
    ]
    if taken.lacking:
        acts = several(taken.lacking, "act")
        lines.append(
            f"The parcel begins on {taken.since}; {acts} from before are not here. Ask for one from earlier on."
        )
    return lines


def said_of_series(letter: str) -> str:
    """What is said of two copies that number in one series."""
    return (
        f"Both copies number in series {letter}. Set series to another letter in the boxlore.toml of one of them, "
        "so that no number is given twice."
    )


def said_of_files(joined: JoinedCopies) -> list[str]:
    """Which files were not copied, and why, in sentences."""
    lines = [f"{path} is registered where it lies, and was not copied." for path in joined.outside] + joined.faults
    if joined.not_sent:
        scans = several(len(joined.not_sent), "scan")
        lines.append(f"{scans} told of in it {_is(len(joined.not_sent))} not in the parcel: ask for it with its scans.")
    if joined.stopped:
        lines.append("Stopped before every file was copied: boxlore join goes on.")
    return lines


def _was(count: int, done: str = "struck") -> str:
    return f"was {done}" if count == 1 else f"were {done}"


def _is(count: int) -> str:
    return "is" if count == 1 else "are"


def said_of_struck(report: StrikeReport) -> list[str]:
    """What is said of what was struck here because it was struck elsewhere."""
    lines = [f"{several(report.struck, 'statement')} struck there {_was(report.struck)} here too."]
    return lines + [f"{path} still holds struck words: make it again, or delete it." for path in report.left_in]


def said_of_both(collection: Collection, told: Sequence[Correction]) -> list[str]:
    """What is said of what was corrected in two copies."""
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
