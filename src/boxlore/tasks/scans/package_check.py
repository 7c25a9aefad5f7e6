"""Checks a package: every bag in full, whether the set is whole, and whether its linked data can be read."""

import re
from collections import defaultdict
from collections.abc import Iterator, Sequence
from pathlib import Path

from boxlore.core.findings import Finding, Severity, make_finding
from boxlore.exports.bag_check import bag_info, is_bag, verify_bag
from boxlore.exports.linked_data_check import faults_of

PARTS = ("open", "closed")
COUNTED = "RFC 8493, 2.2.2, Bag-Count"
_COUNT = re.compile(r"(\d+) of (\d+)")


def bags_in(package: Path) -> list[Path]:
    """The bags of a package: itself, those in it, and those of several transfers in one folder; also a bag without its
    declaration."""
    if is_bag(package):
        return [package]
    inner = sorted(path for path in package.glob("*") if path.is_dir() and not path.is_symlink())
    return [
        bag for folder in inner for bag in ([folder] if is_bag(folder) else filter(is_bag, sorted(folder.glob("*"))))
    ]


def verify_package(package: Path) -> list[Finding]:
    """Every finding about a package: a bag, or a folder of several bags, whose sets are then looked at too."""
    bags = bags_in(package)
    findings = [finding for bag in bags or [package] for finding in _part(bag)]
    return findings if bags in ([], [package]) else [*findings, *lacking_of_sets(bags)]


def _part(folder: Path) -> Iterator[Finding]:
    yield from verify_bag(folder)
    for path in sorted((folder / "data" / "metadata").glob("records.*")):
        yield from faults_of(path)


def lacking_of_sets(bags: Sequence[Path]) -> Iterator[Finding]:
    """What is missing of each transfer: bags by their count, and one of its two parts."""
    groups: dict[str, list[dict[str, str]]] = defaultdict(list)
    for bag in bags:
        info = bag_info(bag)
        if info.get("Bag-Group-Identifier") and info.get("Transfer-Part"):
            groups[info["Bag-Group-Identifier"]].append(info)
    for ident, infos in groups.items():
        yield from _set(ident, infos)


def _set(ident: str, infos: Sequence[dict[str, str]]) -> Iterator[Finding]:
    there = {info["Transfer-Part"] for info in infos}
    for part in PARTS:
        if part not in there:
            yield _lacking(
                f"The {part} part of the transfer {ident} is not there.", "our own rule: a transfer has two parts"
            )
    counts = [match for info in infos if (match := _COUNT.fullmatch(info.get("Bag-Count", "")))]
    numbers = [int(match[1]) for match in counts]
    total = max((int(match[2]) for match in counts), default=0)
    for number in sorted(set(range(1, total + 1)) - set(numbers)):
        yield _lacking(f"Bag {number} of the {total} of the transfer {ident} is not there.", COUNTED)
    for number in sorted({number for number in numbers if numbers.count(number) > 1}):
        yield _lacking(f"Bag {number} of the transfer {ident} is there twice.", COUNTED)


def _lacking(message: str, source: str) -> Finding:
    return make_finding("package.set", Severity.ERROR, message, source)
