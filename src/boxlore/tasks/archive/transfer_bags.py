"""The bags of one transfer: which file goes into which; what each says of itself, the others and those before.

RFC 8493, 2.2.2: every bag has an External-Identifier of its own; all bags of one transfer, open and closed, are one
group (Bag-Group-Identifier) and are counted through (Bag-Count). The collection stands in Collection-Identifier.
"""

import uuid
from collections.abc import Sequence
from dataclasses import dataclass, field
from pathlib import Path

from boxlore import __version__
from boxlore.core.crosswalk.captions import listed
from boxlore.core.errors import CouldNot
from boxlore.exports.bag import Staged
from boxlore.exports.bag_page import BagPage, bag_page
from boxlore.tasks.archive.making import Making, left_out_of
from boxlore.tasks.archive.transfer_updates import DESCRIBING

Packed = tuple[str, Path | Staged]
"""A file of a bag: the name that it gets, and what it is made of."""

BESIDE = 24_000
"""Bytes allowed for what a bag holds besides its payload and the lines about it: its page, its description."""
_LINES = 2 * len("  data/\n") + 128 + 64
"""Bytes of a file's lines in both manifests, without its path."""


@dataclass(frozen=True, slots=True)
class PlannedBag:
    """One bag before it is written: its folder's name (`open`, or `open-1`), and its files. `at` of `count` bags of
    its part."""

    name: str
    making: Making
    files: list[Packed] = field(default_factory=list)
    at: int = 1
    count: int = 1

    @property
    def is_first(self) -> bool:
        return self.at == 1

    @property
    def identifier(self) -> str:
        """The bag's own identifier, a URN."""
        return named_within(self.making.ident.removeprefix("urn:uuid:"), self.name)


def named_within(ident: str, name: str) -> str:
    """The URN of what is called so within a thing that has a UUID: version 5 (RFC 9562, 5.5), the same each time."""
    return f"urn:uuid:{uuid.uuid5(uuid.UUID(ident), name)}"


def size_of(source: Path | Staged) -> int:
    """Bytes of a file to be packed."""
    return source.size if isinstance(source, Staged) else source.stat().st_size


def plan_bags(name: str, making: Making, files: Sequence[Packed], most: int) -> list[PlannedBag]:
    """Part the files into bags of at most so many bytes each, all that is in their folders counted; 0 for one bag. The
    records come first. Raises CouldNot for a file that no bag of that size can hold.
    """
    bags: list[list[Packed]] = [[]]
    size = BESIDE
    for path, source in sorted(files, key=lambda packed: [not packed[0].startswith(start) for start in DESCRIBING]):
        own = size_of(source) + _LINES + 2 * len(path.encode())
        if most and BESIDE + own > most:
            raise CouldNot(
                f"{path} has {size_of(source):,} bytes: it does not fit into a bag of {most:,} bytes.",
                f"Allow bags of {BESIDE + own:,} bytes or more, or make one bag without --split.",
            )
        if most and size + own > most:
            bags.append([])
            size = BESIDE
        bags[-1].append((path, source))
        size += own
    is_split = len(bags) > 1
    return [
        PlannedBag(f"{name}-{at}" if is_split else name, making, bagged, at, len(bags))
        for at, bagged in enumerate(bags, 1)
    ]


def described_bag(bag: PlannedBag, planned: Sequence[PlannedBag]) -> tuple[dict[str, str], bytes]:
    """What `bag-info.txt` says by its reserved names (RFC 8493, 2.2.2; `exports/bag` adds the sizes), and the page."""
    return _info(bag, planned), bag_page(bag.making.facts, bag.making.holding, _page(bag, planned))


def _info(bag: PlannedBag, planned: Sequence[PlannedBag]) -> dict[str, str]:
    making = bag.making
    settings, archive = making.collection.settings, making.archive
    part = "open part" if making.seen.to.is_public else "closed part: not to be shown before the dates in its records"
    part += f", bag {bag.at} of {bag.count}" if bag.count > 1 else ""
    part += f", update of {making.earlier.time[:10]}" if making.earlier else ""
    revised = making.earlier.revised if making.earlier else ()
    return {
        "Source-Organization": making.seen.holder or making.facts.family,
        "Contact-Name": making.seen.holder,
        "External-Identifier": bag.identifier,
        "External-Description": f"{settings.title}: photographs with what was told of them ({part})",
        "Internal-Sender-Description": f"for {archive.repository}" if archive.repository else "",
        "Internal-Sender-Identifier": bag.name,
        "Bagging-Date": making.facts.on_day.isoformat(),
        "Bagging-Time": making.made,
        "Bag-Group-Identifier": making.ident,
        "Bag-Count": f"{planned.index(bag) + 1} of {len(planned)}",
        "Collection-Identifier": f"urn:uuid:{making.collection.id}",
        "Transfer-Part": "open" if making.seen.to.is_public else "closed",
        "Updates-Transfer": revised[0].transfer if revised else "",
        "Updates-Bag": "; ".join(named.words for named in revised),
        "Bag-Software-Agent": f"Boxlore {__version__}",
    }


_FOLDERS = {
    "iiif": "a manifest for each item that has a picture (IIIF)",
    "scans": "the scans",
    "recordings": "sound of the sittings",
    "papers": "signed papers and logs",
    "copies": "captioned copies of scans that anyone may see",
}


def _page(bag: PlannedBag, planned: Sequence[PlannedBag]) -> BagPage:
    """What the page of a bag says beyond the facts: its own files only, which bag it is, what it updates."""
    making = bag.making
    names = [f"data/{path}" for path, _ in bag.files]
    own = set(names)
    contents = [(path, words) for path, words in making.contents if path in own]
    told = {path for path, _ in contents}
    contents += [(path, "chapters of a recording") for path in names if path.endswith(".vtt") and path not in told]
    for folder, words in _FOLDERS.items():
        if count := sum(path.startswith(f"data/{folder}/") for path in names):
            contents.append((f"data/{folder}/", f"{words}: {count:,}"))
    return BagPage(
        is_closed=making.seen.to.is_closed_part,
        contents=contents,
        which=_which(bag, planned),
        receipt_in=next((name for name in _holding(bag, planned, "metadata/receipt.csv") if name != bag.name), ""),
        updates=[named.words for named in making.earlier.revised] if making.earlier else [],
        left_out=left_out_of(making),
    )


def _which(bag: PlannedBag, planned: Sequence[PlannedBag]) -> str:
    """`This is open-2, bag 2 of 5 of the transfer urn:uuid:…. The descriptions of this part are in open-1.`"""
    words = f"This is {bag.name}, bag {planned.index(bag) + 1} of {len(planned)} of the transfer {bag.making.ident}"
    words += f"; its own identifier is {bag.identifier}."
    if bag.count > 1:
        where = listed(_holding(bag, planned, "metadata/"))
        words += f" The descriptions of this part are in {where}. They name files as they lie when all that is in the "
        words += f"data folders of its {bag.count} bags is laid into one; each bag lists its own files below."
    return words


def _holding(bag: PlannedBag, planned: Sequence[PlannedBag], start: str) -> list[str]:
    """The names of the bags of the same part that hold a file whose path begins so."""
    of_part = [other for other in planned if other.making is bag.making]
    return [other.name for other in of_part if any(path.startswith(start) for path, _ in other.files)]
