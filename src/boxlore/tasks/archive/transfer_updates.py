"""An update to an earlier transfer: only what is new or changed, with a note of what changed and why.

Every part carries `metadata/state.csv`: for each item a short digest of each of its fields as that part shows them.
An update holds the items against the state that was handed over before; the why is what was done to them since.
"""

import csv
import hashlib
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from dataclasses import field as starts
from pathlib import Path

from boxlore.core.crosswalk.dublin_core import ROWS, CollectionFacts
from boxlore.core.errors import CouldNot, WrongUse
from boxlore.core.fields.cells import read_rows
from boxlore.core.records.item_record import Record, every_told
from boxlore.tasks.collection.opening import Collection

URN = "urn:uuid:"
STATE = "metadata/state.csv"
FIELDS = (*dict.fromkeys(row.field for row in ROWS), "statements")
HEADING = ("Number", "Identifier", *FIELDS)
CHANGES = ("Number", "Identifier", "What", "Fields", "Why")


def state_row(record: Record, facts: CollectionFacts) -> list[str]:
    """The item's number, id, and a digest of each field."""
    digests = dict.fromkeys(FIELDS, "")
    for row in ROWS:
        values = [*row.values(record, facts), *(row.detailed(record, facts) if row.detailed else ())]
        digests[row.field] = _digest(digests[row.field], *(f"{value.words}\0{value.language}" for value in values))
    digests["statements"] = _digest(
        "", *(f"{view.statement} {view.sure} {view.audience}" for view in every_told(record))
    )
    return [record.number, record.id, *digests.values()]


def _digest(*words: str) -> str:
    return hashlib.sha256("\x1f".join(words).encode("utf-8", "replace")).hexdigest()[:12]


@dataclass(frozen=True, slots=True)
class Earlier:
    """What an earlier part held, by item id: its number and its digests by field; and the time it was bagged."""

    items: dict[str, tuple[str, dict[str, str]]] = starts(default_factory=dict)
    time: str = ""

    def changed(self, row: list[str]) -> tuple[str, list[str]]:
        """`new`, `changed` with the names of the fields, or `same`."""
        if row[1] not in self.items:
            return "new", []
        before = self.items[row[1]][1]
        fields = [name for name, digest in zip(FIELDS, row[2:], strict=True) if before.get(name) != digest]
        if row[0] != self.items[row[1]][0]:
            fields.insert(0, "number")
        return ("changed", fields) if fields else ("same", [])


def read_earlier(collection: Collection, folder: Path, part: str) -> Earlier:
    """The state of one part (`open`, `closed`) of an earlier transfer of this collection. Raises CouldNot where there
    is none, and WrongUse for a transfer of another collection.
    """
    states = sorted(path for path in folder.glob(f"{part}*/data/{STATE}"))
    if not states:
        raise CouldNot(
            f"{folder} holds no earlier {part} part with its state.", "Name the folder of an earlier transfer."
        )
    items: dict[str, tuple[str, dict[str, str]]] = {}
    for path in states:
        try:
            with open(path, encoding="utf-8", newline="") as file:
                for row in read_rows(file):
                    items[row["Identifier"]] = (row["Number"], {name: row.get(name, "") for name in FIELDS})
        except (UnicodeDecodeError, csv.Error, KeyError) as error:
            why = f"{path} is not as it was written: {error}."
            raise CouldNot(why, "Name another copy of that transfer, or make a whole one.") from error
    infos = [_bag_info(path.parents[2] / "bag-info.txt") for path in states]
    _check_ours(collection, folder, infos, items)
    return Earlier(items, infos[0].get("Bagging-Time", ""))


def _bag_info(path: Path) -> dict[str, str]:
    """The lines of `bag-info.txt` by their names (RFC 8493, 2.2.2); none where it is not there."""
    lines = path.read_text(encoding="utf-8", errors="replace").splitlines() if path.is_file() else []
    parted = (line.partition(":") for line in lines if not line[:1].isspace())
    return {name.strip(): value.strip() for name, _, value in parted}


def _check_ours(
    collection: Collection, folder: Path, infos: Iterable[Mapping[str, str]], items: Mapping[str, object]
) -> None:
    """Raises WrongUse unless every bag says that it is of this collection; where one says nothing, for somebody wrote
    its description anew, unless an item is of this collection.
    """
    said = {info.get("External-Identifier", "") for info in infos}
    others = {identifier for identifier in said if identifier.startswith(URN)} - {URN + collection.id}
    is_told = URN + collection.id in said
    if others or not (is_told or not items or any(collection.store.number_of(item) for item in items)):
        raise WrongUse(
            f"{folder} is a transfer of another collection, and not of “{collection.settings.title[:60]}”.",
            "Name the folder of an earlier transfer of this one, or leave --update away for a whole transfer.",
        )


def change_row(collection: Collection, row: list[str], what: str, fields: list[str], since: str) -> list[str]:
    """One line of `changes.csv`. The why names what was done, never the words told."""
    acts = collection.store.acts_about(row[1], since) if what == "changed" else []
    kinds = dict.fromkeys(act.partition(":")[0][:60] for act in acts)
    return [row[0], row[1], what, "; ".join(fields), "; ".join(kinds)]


def gone_rows(earlier: Earlier, seen: set[str]) -> Iterator[list[str]]:
    """Lines for what was handed over before and is not in the collection, or not in this part, any more."""
    for ident, (number, _) in earlier.items.items():
        if ident not in seen:
            yield [number, ident, "gone", "", "no longer in this part of the collection"]
