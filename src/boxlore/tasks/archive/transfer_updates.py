"""An update to an earlier transfer: the whole description again, new and changed files, and what to withdraw.

An update holds the items against the state that was handed over before (`item_states`). What of that is no longer to
be shown stands in `metadata/withdraw.csv`, with the reason (`withdrawing`).

What always holds:

- The records and finding aids of an update are whole, so an archive puts them in the place of the earlier ones.
- A file that the archive has already, by its path and SHA-256, does not go again; `metadata/files.csv` lists it, so
  that the next update knows of it too.
- An update is of a transfer that is as it was handed over: each of its bags is verified first.
- `metadata/transfers.csv` names every earlier transfer by its identifier, its time and the digest of its manifest.
"""

import csv
import json
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import asdict, dataclass, replace
from dataclasses import field as starts
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

from boxlore.core.errors import CouldNot, WrongUse
from boxlore.core.fields.cells import read_rows
from boxlore.core.fields.table import FIELDS as FIELDS_TOLD
from boxlore.core.findings import several
from boxlore.core.statements import made_at
from boxlore.disk.digests import sha256_of
from boxlore.exports.bag_check import bag_info, payload_of, verify_bag
from boxlore.tasks.archive.item_states import FIELDS, STATE, EarlierItem, read_item
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.records_for_outputs import Selection
from boxlore.tasks.scans.package_check import lacking_of_sets

URN = "urn:uuid:"
FILES = "metadata/files.csv"
TRANSFERS = "metadata/transfers.csv"
CHANGES = ("Number", "Identifier", "What", "Fields", "Why", "Now")
FILES_HEADING = ("File", "SHA-256", "Transfer")
TRANSFERS_HEADING = ("Transfer", "Bag", "Identifier", "Made", "What", "SHA-256 of its manifest-sha512.txt", "Chosen")
_DESCRIBED = "Its folders of descriptions"
_BYTES = "Bytes"
_NONE = "-"
"""Of a transfer: no folder of descriptions that the archive would have still."""
WITHDRAW = "metadata/withdraw.csv"
_THIS = "this one: its bags name themselves in bag-info.txt"
REST = "the collection, boxes, people, events, places, sittings"
WHOLE, UPDATE = "whole", "update"
FORMS = "forms/"
DESCRIBING = ("metadata/", FORMS, "iiif/")
"""Folders of the payload whose files every update carries anew."""
OF_THE_BAG = ("../README.html", "../bag-info.txt")
"""Files beside the payload, from `data/` on, that say whose collection it is."""


@dataclass(frozen=True, slots=True)
class HeldFile:
    """A file that an archive has: its SHA-256, the identifier of the transfer that brought it, and its bytes, 0 where
    an older version did not note them."""

    sha256: str
    transfer: str
    bytes: int = 0


@dataclass(frozen=True, slots=True)
class EarlierBag:
    """One bag of an earlier transfer, as `transfers.csv` names it; `digest` is the SHA-256 of its manifest."""

    transfer: str
    name: str
    identifier: str
    made: str
    what: str
    digest: str

    @property
    def words(self) -> str:
        """`open, urn:uuid:…, made 2026-11-28T…, manifest-sha512.txt with the SHA-256 …`."""
        return f"{self.name}, {self.identifier}, made {self.made}, manifest-sha512.txt with the SHA-256 {self.digest}"


@dataclass(frozen=True, slots=True)
class Earlier:
    """What an earlier transfer had handed over of one part: items by id, files by path below `data/`, its bags and
    those before it, oldest first."""

    items: dict[str, EarlierItem] = starts(default_factory=dict)
    files: dict[str, HeldFile] = starts(default_factory=dict)
    bags: tuple[EarlierBag, ...] = ()
    described: Mapping[str, Sequence[str]] = starts(default_factory=dict)
    """The folders of DESCRIBING that a transfer has, and those OF_THE_BAG that name whose it is, by its identifier; an
    older version did not note it."""

    @property
    def has_scans(self) -> bool:
        return any(path.startswith("scans/") for path in self.files)

    @property
    def time(self) -> str:
        """When the transfer that is updated was made."""
        return self.bags[-1].made if self.bags else ""

    @property
    def revised(self) -> list[EarlierBag]:
        """The bags of the transfer that is updated."""
        return [bag for bag in self.bags if bag.transfer == self.bags[-1].transfer]

    @property
    def given_on(self) -> dict[str, str]:
        """The items, by their ids, whose originals were handed over, with the day."""
        return {ident: item.given_on for ident, item in self.items.items() if item.given_on}

    def changed(self, row: list[str]) -> tuple[str, list[str]]:
        """`new`, `changed` with the names of the fields, or `same`."""
        before = self.items.get(row[1])
        if before is None:
            return "new", []
        digests = zip(FIELDS, row[2 : 2 + len(FIELDS)], strict=True)
        fields = [name for name, digest in digests if before.digests.get(name) != digest]
        if row[0] != before.number:
            fields.insert(0, "number")
        return ("changed", fields) if fields else ("same", [])

    def holds(self, path: str, sha256: str) -> bool:
        """Whether the archive has this very file under this path."""
        held = self.files.get(path)
        return held is not None and held.sha256 == sha256


def read_earlier(collection: Collection, folder: Path, part: str) -> Earlier:
    """The state of one part (`open`, `closed`) of an earlier transfer of this collection. Raises CouldNot where there
    is none, or a bag is not as its manifests say, and WrongUse for a transfer of another collection.
    """
    bags = bags_of(folder, part)
    states = [path for bag in bags if (path := bag / "data" / STATE).is_file()]
    if not states:
        raise CouldNot(
            f"{folder} holds no earlier {part} part with its state.", "Name the folder of an earlier transfer."
        )
    infos = [bag_info(bag) for bag in bags]
    day = infos[0].get("Bagging-Date", "") if originals_before(folder) else ""
    items = {row["Identifier"]: read_item(row, day) for path in states for row in table_of(path, "Identifier")}
    _check_ours(collection, folder, infos, items)
    _check_whole(bags)
    _check_set(folder)
    own = [_bag(bag, info) for bag, info in zip(bags, infos, strict=True)]
    rows = [row for bag in bags for row in table_of(bag / "data" / TRANSFERS, *TRANSFERS_HEADING) if row["Identifier"]]
    before = [
        EarlierBag(row["Transfer"], row["Bag"], row["Identifier"], row["Made"], row["What"], row[TRANSFERS_HEADING[5]])
        for row in rows
    ]
    known = {row["Transfer"]: row[_DESCRIBED].split() for row in rows if row.get(_DESCRIBED)}
    for row in (row for bag in bags for row in table_of(bag / "data" / WITHDRAW, "File", "Transfer")):
        if row["File"] in (*DESCRIBING, *OF_THE_BAG):
            there = known.get(row["Transfer"], DESCRIBING)
            known[row["Transfer"]] = [folder for folder in there if folder != row["File"]]
    known = {transfer: [folder for folder in there if folder != _NONE] for transfer, there in known.items()}
    is_update = UPDATE if before else WHOLE
    described = [folder for folder in DESCRIBING if any((bag / "data" / folder).is_dir() for bag in bags)]
    described += OF_THE_BAG if any(info.get("Contact-Name") for info in infos) else ()
    return Earlier(
        items,
        _files(bags, own),
        (*before, *(replace(bag, what=is_update) for bag in own)),
        known | {bag.transfer: described for bag in own},
    )


def bags_of(folder: Path, *parts: str) -> list[Path]:
    """The bags of these parts of a transfer (`open`, or `open-1`, `open-2`), of both if none is named, the closed ones
    first: they say more."""
    named = {part: [path.parent for path in folder.glob(f"{part}*/bagit.txt")] for part in parts or ("closed", "open")}
    return [bag for bags in named.values() for bag in sorted(bags, key=lambda bag: (len(bag.name), bag.name))]


def table_of(path: Path, *columns: str) -> Iterator[dict[str, str]]:
    """The rows of a table of ours, if it is there. Raises CouldNot where it is not as it was written."""
    if not path.is_file():
        return
    try:
        with open(path, encoding="utf-8-sig", newline="") as file:
            for row in read_rows(file):
                if lacking := [name for name in columns if name not in row]:
                    raise KeyError(lacking[0])
                yield row
    except (UnicodeDecodeError, csv.Error, KeyError) as error:
        why = f"{path} is not as it was written: {error}."
        raise CouldNot(why, "Name another copy of that transfer, or make a whole one.") from error


def _bag(bag: Path, info: Mapping[str, str]) -> EarlierBag:
    manifest = bag / "manifest-sha512.txt"
    digest = sha256_of(manifest) if manifest.is_file() else ""
    group, own = info.get("Bag-Group-Identifier", ""), info.get("External-Identifier", "")
    made = info.get("Bagging-Time") or info.get("Bagging-Date", "")
    return EarlierBag(group or own, bag.name, own, made, WHOLE, digest)


def _files(bags: Sequence[Path], described: Sequence[EarlierBag]) -> dict[str, HeldFile]:
    """Every file of the payload that the archive has after this transfer, but for those of the description."""
    files: dict[str, HeldFile] = {}
    for bag in bags:
        for row in table_of(bag / "data" / FILES, *FILES_HEADING):
            size = row.get(_BYTES, "")
            files[row["File"]] = HeldFile(row["SHA-256"], row["Transfer"], int(size) if size.isdecimal() else 0)
    for bag, named in zip(bags, described, strict=True):
        for listed, digest in payload_of(bag / "manifest-sha256.txt").items():
            path = listed.removeprefix("data/")
            if not path.startswith(DESCRIBING):
                packed = bag / "data" / path
                files[path] = HeldFile(digest, named.transfer, packed.stat().st_size if packed.is_file() else 0)
    return files


def _check_ours(
    collection: Collection, folder: Path, infos: Iterable[Mapping[str, str]], items: Mapping[str, object]
) -> None:
    """Raises WrongUse unless every bag says that it is of this collection; where one says nothing, for somebody wrote
    its description anew, unless an item is of this collection. An older version said so in External-Identifier.
    """
    said = {info.get("Collection-Identifier") or info.get("External-Identifier", "") for info in infos}
    others = {identifier for identifier in said if identifier.startswith(URN)} - {URN + collection.id}
    is_told = URN + collection.id in said
    if others or not (is_told or not items or any(collection.store.number_of(item) for item in items)):
        raise WrongUse(
            f"{folder} is a transfer of another collection, and not of “{collection.settings.title[:60]}”.",
            "Name the folder of an earlier transfer of this one, or leave --update away for a whole transfer.",
        )


def _check_whole(bags: Iterable[Path]) -> None:
    """Raises CouldNot unless every bag is as its manifests say: by what is missing here an archive deletes."""
    for bag in bags:
        if findings := verify_bag(bag):
            more = f" (and {len(findings) - 1} more)" if len(findings) > 1 else ""
            raise CouldNot(
                f"{bag} is not as it was handed over: {findings[0].message}{more} No update was made.",
                f"boxlore verify {bag} lists each fault. Name another copy of that transfer (the archive has one), or "
                "leave --update away for a whole transfer.",
            )


def _check_set(folder: Path) -> None:
    """Raises CouldNot where a bag of the transfer is not there: what it holds would be missed, or be sent again."""
    for lacking in lacking_of_sets(bags_of(folder)):
        raise CouldNot(
            f"{lacking.message} No update was made.",
            "Put every bag of that transfer side by side, or name another copy of it (the archive has one).",
        )


_OTHERWISE = {
    "scans": "other scans of it, or another file of one",
    "mark": "its place, or what it lies in or is part of is called otherwise",
    "size": "its size",
    "kind": "its kind",
    "custody": "how it came down, or that somebody lent it",
    "access": "who may see what of it, and until when",
    "relations": "what it belongs together with",
    "rights": "its rights",
}
"""Fields of a row that change by something else than what is told of the item -> what is said of it then."""


CALLED = {
    "caption": "description",
    "mark": "where it lies",
    "scans": "files",
    "custody": "custodial history",
    "statements": "what was told",
}
"""What `changes.csv` calls those fields of a state that have no word of every day."""


def change_row(
    collection: Collection,
    row: list[str],
    what: str,
    fields: list[str],
    withdrawn: list[str],
    earlier: Earlier,
    now: str = "",
) -> list[str]:
    """One line of `changes.csv`. The why says why words of it are `withdrawn`, which of its fields are told that were
    not, or were told otherwise, and what else is not as it was: never words that were told, for some are to be
    forgotten; `now` is what the changed fields say in this part. Of all that belongs to no item, it only says what that
    is."""
    if not row[0]:
        return ["", f"{URN}{row[1]}", what, REST, "", ""]
    why = dict.fromkeys([*withdrawn, *(_why(collection, row, fields, earlier) if what == "changed" else ())])
    if what == "changed" and not (why.keys() - _OWN_REFERENCE) and set(fields) - _OF_A_REFERENCE:
        why["something else told: of a person, a place or an event that it names"] = None
    called = "; ".join(CALLED.get(name, name) for name in fields)
    return [row[0], f"{URN}{row[1]}", what, called, "; ".join(why), now]


_NEW, _CORRECTED = "new", "corrected"
_SHOWN = "told before, and may be shown now"
"""How a statement is in this part that was there before the earlier transfer, and was withheld from it."""
_WHY = CHANGES.index("Why")
_REFERENCE = FIELDS_TOLD["archive_reference"].label
_OWN_REFERENCE = {f"{_REFERENCE}: {how}" for how in (_NEW, _CORRECTED)}
_OF_A_REFERENCE = {"number", "statements"}
"""Fields of a row that change by a reference of the archive alone."""


def _why(collection: Collection, row: list[str], fields: Iterable[str], earlier: Earlier) -> Iterator[str]:
    """`Story: new; When: corrected; other scans of it …`: by the statements that this part shows of the item."""
    before, now = earlier.items[row[1]].told, row[-1].split()
    gone = {name for name, _ in collection.store.fields_of([told for told in before if told not in now]).values()}
    new = collection.store.fields_of([told for told in now if told not in before])
    told_since = {name for ident, (name, _) in new.items() if not _is_told_before(ident, earlier.time)}
    for name in dict.fromkeys(field for field, _ in new.values()):
        how = _CORRECTED if name in gone else _NEW if name in told_since else _SHOWN
        yield f"{FIELDS_TOLD[name].label}: {how}"
    yield from (words for name, words in _OTHERWISE.items() if name in fields)


def _is_told_before(statement: str, when: str) -> bool:
    """Whether a statement (id) is older than a moment of UTC (ISO 8601, or a day alone)."""
    told = made_at(statement)
    if told is None or not when:
        return False
    moment = datetime.fromisoformat(when)
    return told < (moment if moment.tzinfo else moment.replace(tzinfo=UTC))


def own_references_as_one(rows: Sequence[list[str]]) -> Iterator[list[str]]:
    """The lines of `changes.csv`, those of items of which nothing but the archive's own references has changed as one
    at the end: it knows these, and they would hide what else has."""
    own = [row for row in rows if row[0] and row[_WHY] in _OWN_REFERENCE]
    yield from (row for row in rows if row not in own)
    if own:
        yield ["", "", "changed", _REFERENCE, f"of {several(len(own), 'item')}, as a receipt has it", ""]


def gone_rows(earlier: Earlier, seen: set[str]) -> Iterator[list[str]]:
    """Lines for what was handed over before and is not in the collection, or not in this part, any more."""
    for ident, item in earlier.items.items():
        if ident not in seen and item.number:
            yield [item.number, f"{URN}{ident}", "gone", "", "no longer in this part of the collection", ""]


def held_rows(earlier: Earlier, kept: Iterable[str]) -> Iterator[Sequence[str]]:
    """The table of the files that the archive keeps of earlier transfers."""
    yield (*FILES_HEADING, _BYTES)
    for path in sorted(set(kept)):
        held = earlier.files[path]
        yield path, held.sha256, held.transfer, str(held.bytes or "")


def transfer_rows(
    earlier: Earlier | None, ident: str, made: str, chosen: Selection, *, originals: bool, is_public: bool
) -> Iterator[Sequence[str]]:
    """The table of transfers: every bag before this one, then this transfer, what was chosen for it, and whether the
    originals stay where they are."""
    yield (*TRANSFERS_HEADING, _DESCRIBED)
    for bag in earlier.bags if earlier else ():
        described = " ".join(earlier.described.get(bag.transfer, ()) or [_NONE]) if earlier else ""
        yield bag.transfer, bag.name, bag.identifier, bag.made, bag.what, bag.digest, "", described
    words = _chosen_words(chosen, originals=originals, is_public=is_public)
    yield ident, _THIS, "", made, UPDATE if earlier else WHOLE, "", words, ""


_ORIGINALS = "originals"
_MAY_NAME = ("person", "event", "words")
"""Choices whose words may name somebody: the open part says that there was one, and not which."""


def _chosen_words(chosen: Selection, *, originals: bool, is_public: bool) -> str:
    told = {name: value for name, value in asdict(chosen).items() if value}
    hidden = _MAY_NAME if is_public else ()
    words = {name: None if name in hidden else value for name, value in told.items()}
    words |= {} if originals else {_ORIGINALS: False}
    return json.dumps(words) if words else ""


def chosen_before(folder: Path) -> Selection:
    """What was chosen for the earlier transfer. Raises WrongUse where only an open part is there, which does not say
    it."""
    told = {name: value for name, value in _chosen_for(folder).items() if name != _ORIGINALS}
    try:
        if any(value is None for value in told.values()):
            raise WrongUse(
                f"Items were chosen for the transfer in {folder} by {' and '.join(told)}; its open part does not say "
                "by which.", "Put its closed part beside the open one, or choose the same again.",
            )  # fmt: skip
        return Selection(**{**told, "items": tuple(told.get("items", ()))})
    except TypeError as error:
        raise _unreadable(folder, error) from error


def originals_before(folder: Path) -> bool:
    """Whether the earlier transfer handed over the originals too. Raises CouldNot where that cannot be read."""
    return _chosen_for(folder).get(_ORIGINALS) is not False


def is_of_wanted(bags: Sequence[Path]) -> bool:
    """Whether a transfer, or what it updates, was of the items that an archive had said it wants. Raises CouldNot where
    that cannot be read."""
    return _chosen_in(bags).get("wanted") is True


def _chosen_for(folder: Path) -> dict[str, Any]:
    return _chosen_in(bags_of(folder), folder)


def _chosen_in(bags: Sequence[Path], folder: Path | None = None) -> dict[str, Any]:
    cells = (row["Chosen"] for bag in bags for row in table_of(bag / "data" / TRANSFERS, "Chosen"))
    try:
        return dict(json.loads(next(filter(None, cells), "{}")))
    except (ValueError, TypeError) as error:
        raise _unreadable(folder or bags[0], error) from error


def _unreadable(folder: Path, error: Exception) -> CouldNot:
    why = f"What was chosen for the transfer in {folder} cannot be read: {error}."
    return CouldNot(why, "Choose the same again, or make a whole transfer.")
