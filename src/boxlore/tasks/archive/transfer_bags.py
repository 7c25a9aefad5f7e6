"""The bags of one transfer: which file goes into which; what each says of itself, the others and those before.

RFC 8493, 2.2.2: every bag has an External-Identifier of its own; all bags of one transfer, open and closed, are one
group (Bag-Group-Identifier) and are counted through (Bag-Count). The collection stands in Collection-Identifier.
"""

import re
import uuid
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from html import unescape
from pathlib import Path

from boxlore import __version__
from boxlore.core.errors import CouldNot
from boxlore.exports.bag import Staged
from boxlore.exports.bag_page import BagPage, bag_page
from boxlore.exports.inventory import as_table
from boxlore.tasks.archive.making import Making, left_out_of
from boxlore.tasks.archive.receipt import IN_A_BAG as RECEIPT
from boxlore.tasks.archive.transfer_updates import DESCRIBING

Packed = tuple[str, Path | Staged]
"""A file of a bag: the name that it gets, and what it is made of."""

BESIDE = 24_000
"""Bytes allowed for what a bag holds besides its payload and the lines about it: its page, its description."""
BAGS = "metadata/bags.csv"
LINKING = ("metadata/mets", "metadata/finding-aid")
"""Descriptions that hold addresses of scans."""
MOST_NAMED = 4
"""Bags that are named one by one where a folder lies in several."""
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
    records come first; where there are several bags, a table in the first says which of them holds which file.

    Raises CouldNot for a file that no bag of that size can hold.
    """
    bags = _parted(files, most, {})
    if len(bags) > 1:
        longest = f"{name}-{len(files) + 1}"
        listed = as_table(_rows([(path, longest) for path, _ in files]))
        making.put(BAGS, "which bag of this part holds which file", listed)  # as large as it will be at most
        table = making.stage / BAGS
        linking = {path: source for path, source in files if path.startswith(LINKING) and isinstance(source, Path)}
        more = {path: _links(source) * len(_way_to(longest)) for path, source in linking.items()}
        bags = _parted([(BAGS, table), *files], most, more)
        held = {path: f"{name}-{at}" for at, bag in enumerate(bags, 1) for path, _ in bag}
        table.write_bytes(b"".join(as_table(_rows((path, bag) for path, bag in held.items() if path != BAGS))))
        for path, source in linking.items():
            _lead_to_bags(source, held, held[path])
    return [
        PlannedBag(f"{name}-{at}" if len(bags) > 1 else name, making, bagged, at, len(bags))
        for at, bagged in enumerate(bags, 1)
    ]


def _rows(held: Iterable[tuple[str, str]]) -> Iterator[tuple[str, ...]]:
    yield "File", "Bag"
    yield from sorted(held)


_LINK = re.compile(r'(?<=")\.\./((?:scans|recordings|papers)/[^"]+)(?=")')
"""An address of a file in a description in XML, from `metadata/` on."""


def _links(source: Path) -> int:
    with open(source, encoding="utf-8") as lines:
        return sum(len(_LINK.findall(line)) for line in lines)


def _way_to(bag: str) -> str:
    """What leads from the folder `data` of one bag to that of another that lies beside it."""
    return f"../../{bag}/data/"


def _lead_to_bags(source: Path, held: Mapping[str, str], own: str) -> None:
    """Let the addresses of scans in a description lead into the bags that hold them, where all lie side by side."""

    def lead(link: re.Match[str]) -> str:
        bag = held.get(unescape(link[1]), own)
        return link[0] if bag == own else f"../{_way_to(bag)}{link[1]}"

    target = source.with_name(f"{source.name}.new")
    with open(source, encoding="utf-8", newline="") as lines, open(target, "w", encoding="utf-8", newline="") as out:
        out.writelines(_LINK.sub(lead, line) for line in lines)
    target.replace(source)


def _parted(files: Sequence[Packed], most: int, more: Mapping[str, int]) -> list[list[Packed]]:
    """The files bag by bag. `more` are bytes by which a file may grow yet."""
    bags: list[list[Packed]] = [[]]
    size = BESIDE
    for path, source in sorted(files, key=lambda packed: [not packed[0].startswith(start) for start in DESCRIBING]):
        own = size_of(source) + more.get(path, 0) + _LINES + 2 * len(path.encode())
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
    return bags


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
        **(_reached(making.facts.contact) if making.seen.to.is_closed_part else {}),
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


def _reached(contact: str) -> dict[str, str]:
    """The telephone number, in international form, and the mailbox that stand in the words of a contact."""
    phone, email = _PHONE.search(contact), _EMAIL.search(contact)
    return {"Contact-Phone": phone[0] if phone else "", "Contact-Email": email[0] if email else ""}


_PHONE = re.compile(r"\+\d[\d ()/.-]{5,}\d")
_EMAIL = re.compile(r"[^\s,;:<>()]+@[^\s,;:<>()]+\.[^\s,;:<>().]+")
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
    parts = [other for other in planned if other.making is making]
    return BagPage(
        is_closed=making.seen.to.is_closed_part,
        contents=contents,
        which=_which(bag, planned),
        updates=[named.words for named in making.earlier.revised] if making.earlier else [],
        withdraws=making.withdraws,
        left_out=left_out_of(making),
        others=_in_others(bag, parts),
        receipt_in=next((other.name for other in parts if other is not bag and _holds(other, RECEIPT)), ""),
    )


def _holds(bag: PlannedBag, path: str) -> bool:
    return any(held == path for held, _ in bag.files)


def _in_others(bag: PlannedBag, parts: Sequence[PlannedBag]) -> list[tuple[str, str]]:
    """(path, bags) of what the other bags of this part hold: descriptions one by one, other folders as such."""
    known = {path.removeprefix("data/") for path, _ in bag.making.contents}
    where: dict[str, list[str]] = {}
    for other in parts:
        if other is not bag:
            held = (path if path in known else f"{path.split('/')[0]}/" for path, _ in other.files)
            for path in dict.fromkeys(held):
                where.setdefault(f"data/{path}", []).append(other.name)
    return [(path, _listed(names)) for path, names in where.items()]


def _listed(names: Sequence[str]) -> str:
    """`open-2, open-3`; of many, `open-2 … open-40 (38 bags)`."""
    if len(names) <= MOST_NAMED:
        return ", ".join(names)
    return f"{names[0]} … {names[-1]} ({len(names)} bags)"


def _which(bag: PlannedBag, planned: Sequence[PlannedBag]) -> str:
    """`This is the bag “open-2”, 2 of 5 of the transfer urn:uuid:…; its own identifier is urn:uuid:….`"""
    which = f"{planned.index(bag) + 1} of {len(planned)} of the transfer {bag.making.ident}"
    return f"This is the bag “{bag.name}”, {which}; its own identifier is {bag.identifier}."
