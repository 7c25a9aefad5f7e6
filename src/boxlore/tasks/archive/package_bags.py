"""Of which collection the bags of a package are, and what of a transfer is not among them."""

from collections.abc import Iterator, Sequence
from pathlib import Path

from boxlore.core.errors import CouldNot, WrongUse
from boxlore.exports.bag_check import bag_info
from boxlore.exports.rdf_files import Thing, first_of
from boxlore.exports.rdf_terms import PREFIXES
from boxlore.tasks.archive.bags_in_time import earlier_lacking
from boxlore.tasks.archive.package_things import RECORDS
from boxlore.tasks.collection.settings import FILE_NAME


def what_lacks(bags: Sequence[Path], newest: Sequence[Path]) -> Iterator[str]:
    """What is not in the collection because the package is one part alone, or lacks a transfer that it updates."""
    infos = [bag_info(bag) for bag in newest]
    homes = [bag / "data" / "metadata" for bag in newest if (bag / RECORDS).is_file()]
    is_closed = any((bag / "data" / "metadata" / FILE_NAME).is_file() for bag in newest)
    is_open = any(info.get("Transfer-Part") == "open" for info in infos) or (
        is_closed and any(not (home / FILE_NAME).is_file() for home in homes)
    )
    both = "To have it, name the folder that holds both parts, and a new folder for the collection."
    if not is_closed:
        yield (
            "This was the open part alone. Living people, all that is closed, consents, recordings and the settings "
            f"are not in it. {both}"
        )
    elif not is_open:
        yield f"This was the closed part alone. Items of which nothing is closed may not be in it. {both}"
    if lacking := earlier_lacking(bags, newest):
        words = "; ".join(f"{name}, made {made}" for name, made in lacking)
        yield (
            f"This was an update, and what it updates was not named: {words}. Scans, recordings and papers of it are "
            "not in the collection. To have them, name its folder too: --from may be repeated."
        )


def collection_in(package: Path, things: dict[str, Thing]) -> tuple[str, Thing]:
    """The identifier of the collection that the package is of, and what is told of it. Raises WrongUse for the parts
    of two, CouldNot where there is none.
    """
    is_of = PREFIXES["dcmitype"] + "Collection"
    told = [(name, described) for name, described in things.items() if is_of in described.get("rdf:type", ())]
    if not told:
        raise CouldNot(f"{package} tells of no collection.", "It was not written by Boxlore, or has changed.")
    if len(told) > 1:
        raise _of_two(package, [first_of(described, "dcterms:title") for _, described in told])
    return told[0]


def check_of_one(package: Path, bags: Sequence[Path]) -> None:
    """Raises WrongUse for bags that say that they are of two collections."""
    titles: dict[str, str] = {}
    for bag in bags:
        info = bag_info(bag)
        if ident := info.get("Collection-Identifier"):
            titles[ident] = info.get("External-Description", "").partition(": photographs with")[0]
    if len(titles) > 1:
        raise _of_two(package, list(titles.values()))


def _of_two(package: Path, titles: Sequence[str]) -> WrongUse:
    named = " and ".join(f"“{title[:60]}”" for title in titles[:2])
    return WrongUse(f"{package} holds parts of two collections, {named}.", "Name a folder with the parts of one.")
