"""One scan for one item that is here: a further one, or a better one in the place of that side's."""

from pathlib import Path

from boxlore.core.errors import WrongUse
from boxlore.core.records.item_record import ALTERED, AS_SCANNED
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.scans.damage import intake_findings, look_closer
from boxlore.tasks.scans.intake import IntakeOptions, IntakeResult, take_in
from boxlore.tasks.scans.pairing import Planned, ScanSide

REPLACE = "If it is a better scan of it: boxlore scan replace."


def take_scan(
    collection: Collection,
    number: str,
    path: Path,
    *,
    side: str,
    altered: bool = False,
    better: bool = False,
    markers: str = "",
) -> IntakeResult:
    """Copy a file in as a scan of an item that is here: one more, or a `better` one in the place of that side's.

    `side` is recto or verso; `markers` says what becomes of those of the scan in whose place a better one of another
    shape comes. Raises WrongUse, and CouldNot for a file that cannot be read.
    """
    if not path.is_file():
        raise WrongUse(f"There is no file {path}.", "Name the picture that is the scan.")
    if altered and better:
        raise WrongUse("An altered version takes the place of no scan.", "Add it beside the scan, without the other.")
    scan = ScanSide(path, side, (), ALTERED if altered else AS_SCANNED)
    options = IntakeOptions(copy=True, backs="join", replace=better, markers=markers, if_there=REPLACE)
    (result,) = take_in(collection, [Planned(key=number, sides=(scan,))], options)
    if result.state == "refused":
        raise WrongUse(result.why)
    look_closer(collection)
    return result


def damage_words(collection: Collection, number: str) -> list[str]:
    """What is wrong with the files of an item's scans, and what to do."""
    return [finding.message for _, finding in intake_findings(collection, [number])]
