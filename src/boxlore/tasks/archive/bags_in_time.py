"""Bags of a transfer and its updates in the order of their time: which description counts, and which files there are.

What always holds: the description of the newest transfer alone counts, for it is whole, and what was struck or closed
since an older one must not come back. A file counts until an update withdraws it or brings another under its path.
"""

from collections import defaultdict
from collections.abc import Iterable, Iterator, Mapping, Sequence
from pathlib import Path

from boxlore.disk.digests import sha256_of
from boxlore.exports.bag_check import bag_info
from boxlore.tasks.archive.transfer_updates import DESCRIBING, TRANSFERS, TRANSFERS_HEADING, table_of
from boxlore.tasks.archive.withdrawing import read_withdrawn


def in_time(bags: Iterable[Path]) -> list[list[Path]]:
    """The bags of each transfer, the oldest first. Bags that name no transfer are one."""
    groups: dict[str, list[Path]] = defaultdict(list)
    times: dict[str, str] = {}
    for bag in bags:
        info = bag_info(bag)
        group = info.get("Bag-Group-Identifier", "") if "Transfer-Part" in info else ""
        groups[group].append(bag)
        times[group] = max(times.get(group, ""), info.get("Bagging-Time", ""))
    return [groups[group] for group in sorted(groups, key=lambda name: times[name])]


def files_now(transfers: Iterable[Sequence[Path]]) -> Mapping[str, Sequence[Path]]:
    """Every file of the payload that counts, but for descriptions: path below `data/` -> where it lies. A scan may lie
    in both parts, cleaned in one of them, and what one part withdraws may stay in the other."""
    files: dict[tuple[str, str], Path] = {}
    for bags in transfers:
        for bag in bags:
            part = bag_info(bag).get("Transfer-Part", "")
            for path, digest in read_withdrawn(bag):
                held = files.get((part, path))
                if held is not None and sha256_of(held) == digest:
                    del files[part, path]
        for bag in bags:
            part = bag_info(bag).get("Transfer-Part", bag.name)
            for path, source in _files_of(bag):
                files[part, path] = source
    by_path: dict[str, list[Path]] = defaultdict(list)
    for (_, path), source in files.items():
        by_path[path].append(source)
    return by_path


def _files_of(bag: Path) -> Iterator[tuple[str, Path]]:
    for source in sorted((bag / "data").rglob("*")):
        name = source.relative_to(bag / "data").as_posix()
        if source.is_file() and not name.startswith(DESCRIBING):
            yield name, source


def earlier_lacking(bags: Iterable[Path], newest: Iterable[Path]) -> list[tuple[str, str]]:
    """The transfers that the newest one updates and that are not among the bags: identifier and when it was made."""
    there = {bag_info(bag).get("Bag-Group-Identifier", "") for bag in bags}
    lacking: dict[str, str] = {}
    for bag in newest:
        for row in table_of(bag / "data" / TRANSFERS, *TRANSFERS_HEADING):
            if row["Identifier"] and row["Transfer"] not in there:
                lacking[row["Transfer"]] = row["Made"]
    return list(lacking.items())
