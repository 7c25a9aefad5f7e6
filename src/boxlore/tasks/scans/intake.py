"""Intake: takes scans in, and ties each to an item with a permanent number, in a box and folder.

A scan is read, hashed and registered, and never written to. What its file already says is kept as a fact about the
scan, and told of the item with the file as its source (`tasks.scans.what_files_say`). A file whose bytes are known
already is not taken twice; so a run that is interrupted and repeated ends in the same state as one that was not.
"""

import itertools
import os
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field, replace
from pathlib import Path

from boxlore.core.errors import BoxloreError, CouldNot, WrongUse
from boxlore.core.fields.areas import Area
from boxlore.core.fields.letters import check_typed
from boxlore.core.fields.originals import KEPT_WORDS, Kept
from boxlore.core.fields.pictures import (
    CAME_FROM_WORDS,
    FILE_WORDS,
    LINK_WORDS,
    LOOKS_WORDS,
    SHOWS_WORDS,
    FileFacts,
    Link,
    Shows,
    words_struck,
)
from boxlore.core.fields.table import FIELDS
from boxlore.core.fields.told import as_told
from boxlore.core.findings import several
from boxlore.core.originals.kinds import typed_kind
from boxlore.core.records.item_record import AS_SCANNED
from boxlore.core.records.marks import bare_label, check_label, looks_like_number, number_text
from boxlore.core.statements import KEEPER, Kind, Said, Source, Subject, Sure
from boxlore.disk.digests import copy_proved, sha256_of
from boxlore.disk.pictures import read_header
from boxlore.disk.unfinished import clear_remains
from boxlore.disk.writing import could_not
from boxlore.tasks.collection.embedded_metadata import embedded_in
from boxlore.tasks.collection.opening import Act, Collection
from boxlore.tasks.collection.progress import QUIET, Progress
from boxlore.tasks.scans.carried_markers import carry_markers
from boxlore.tasks.scans.damage import looks_words
from boxlore.tasks.scans.given_files import in_utf_8, readable
from boxlore.tasks.scans.later_scans import Sides, came_from, row_came_from
from boxlore.tasks.scans.own_outputs import OwnOutputs
from boxlore.tasks.scans.pairing import VERSO, Planned, ScanSide, split_suffix
from boxlore.tasks.scans.replaced_scans import ScansHere, Stood, part_gives_way, restate, written_over
from boxlore.tasks.scans.what_files_say import WhatFilesSay
from boxlore.tasks.telling.statements import Teller, Telling
from boxlore.tasks.telling.turned_scans import IN_WORDS

BATCH = 50
"""So many items are one act, and safe on the disk before the next ones are read."""


@dataclass(frozen=True, slots=True)
class IntakeResult:
    """One planned item after intake, with its number. `state` is taken, joined (it is another side of an item that was
    here), known (all its bytes were here), own (Boxlore made it itself), refused, or unsure; `why` says why, for all
    but the first.

    What is unsure was not taken either: it may belong to an item that is here, and `why` is the question.
    """

    key: str
    state: str
    number: str = ""
    why: str = ""


WRITE_OVER = (
    "If it shows all that the scan there shows, as a whole sheet, write it over that file; then boxlore intake FILE "
    "--replace."
)
"""What is said of a file that is to take the place of a scan, where it is not sure or not so which one."""


@dataclass(frozen=True, slots=True, kw_only=True)
class IntakeOptions:
    """Options for one intake: copy the scans into `scans/`, or register them where they are; box, folder, how the items
    were found, and their kind. What an item's own plan says goes before `box`, `folder` and `found_in`.

    `backs` says what becomes of sides that come later than the others: `ask` joins where it is sure and leaves what is
    unsure, `join` joins also what is unsure if it can be only one item, `apart` makes items of them. `answers` are the
    keeper's, key in the plan -> whether it joins. With `own` what Boxlore itself made of scans is taken too; with
    `replace` a file takes the place of the scan that it lies in the place of, or is called by the number of; `markers`
    then says what becomes of those on a picture of another shape (`carried_markers`). `if_there` is said of a file of a
    side that has a scan already: what can be done, without `replace`.
    """

    copy: bool = False
    box: str = ""
    folder: str = ""
    found_in: str = ""
    kind: str = ""
    backs: str = "ask"
    own: bool = False
    replace: bool = False
    markers: str = ""
    answers: Mapping[str, bool] = field(default_factory=dict)
    if_there: str = "If it is a better scan of it, say --replace; if it is of another original, say --backs apart."


def own_line(results: Iterable[IntakeResult]) -> str:
    """A sentence about what Boxlore made itself and was not taken, '' if nothing was."""
    names = [Path(result.key).name for result in results if result.state == "own"]
    more = f" and {len(names) - 3} more" if len(names) > 3 else ""
    ours = several(len(names), "picture is", "pictures are")
    return f"{ours} no scans, for Boxlore made them itself: {', '.join(names[:3])}{more}." if names else ""


def not_taken(collection: Collection, refused: Iterable[tuple[Path, str]]) -> list[IntakeResult]:
    """The results of files that no plan takes, each with why: own where Boxlore made it, such as an album's PDF."""
    own = OwnOutputs(collection)
    return [
        IntakeResult(readable(path), "own", why=f"{readable(path.name)} is {what} that Boxlore made itself")
        if (what := own.what_is_no_scan(path))
        else IntakeResult(readable(path), "refused", why=why)
        for path, why in refused
    ]


class Unsure(WrongUse):
    """Whether a scan belongs to an item that is here is a question to the keeper; `problem` puts it."""


@dataclass(slots=True)
class _IntakeRun:
    """What one intake remembers from item to item. `count` is that of the next number.

    `containers`: path of labels -> container id. `filled`: container id -> the last position used. `items`: the key in
    the plan -> the item made for it.
    """

    collection: Collection
    options: IntakeOptions
    teller: Teller
    act: Act
    count: int
    full: bool = False
    """Whether the disk takes no more."""
    containers: dict[tuple[str, ...], str] = field(default_factory=dict)
    filled: dict[str, int] = field(default_factory=dict)
    scans: dict[str, str] = field(default_factory=dict)
    """SHA-256 -> scan id, of the scans that this run has taken."""
    items: dict[str, Subject] = field(default_factory=dict)
    fresh: list[tuple[str, Path | None]] = field(default_factory=list)
    """(SHA-256, the copy that was made) of each scan of the item at hand."""
    said: list[tuple[ScanSide, str, str]] = field(default_factory=list)
    """(side, what its file says, its id where it has no markers) of each scan of the item at hand that is new."""
    taken: list[tuple[str, ScanSide]] = field(default_factory=list)
    """(item id, side) of all that this run has taken."""
    replaced: set[Stood] = field(default_factory=set)
    """The scans, and the parts of scans, whose place a file has taken in this run."""
    numbers: dict[str, str] = field(default_factory=dict)
    known: dict[str, Subject] = field(default_factory=dict)
    """The key in the plan -> the item that was made of that row before."""
    _struck: set[str] | None = None
    _own: OwnOutputs | None = None
    _rows: dict[str, str] | None = None
    _sides: Sides | None = None
    _here: ScansHere | None = None

    @property
    def here(self) -> ScansHere:
        """The scans that were here; read when it is first asked for."""
        if self._here is None:
            self._here = ScansHere(self.collection)
        return self._here

    @property
    def sides(self) -> Sides:
        """Which sides of which items are scanned, those of this run too; read when it is first asked for."""
        if self._sides is None:
            self._sides = Sides(self.collection)
            for item, side in self.taken:
                self._sides.add(item, side)
        return self._sides

    @property
    def own(self) -> OwnOutputs:
        """What Boxlore has made itself; read when it is first asked for."""
        if self._own is None:
            self._own = OwnOutputs(self.collection)
        return self._own

    @property
    def struck(self) -> set[str]:
        """SHA-256 of the files whose own words were struck."""
        if self._struck is None:
            self._struck = self.collection.store.struck_files()
        return self._struck

    def made_of(self, planned: Planned) -> str:
        """The id of the item that was made of this row of this table before, or that its key is the number of."""
        if self._rows is None:
            self._rows = {words: ident for ident, _, words in self.collection.store.words_of(("came_from",))}
        if looks_like_number(planned.key) and (item := self.collection.store.item_by_number(planned.key.upper())):
            return item
        return self._rows.get(CAME_FROM_WORDS.write(row_came_from(planned.table, planned.key)), "")

    @property
    def next_number(self) -> str:
        settings = self.collection.settings
        return number_text(settings.prefix, settings.series, self.count)

    def number_of(self, item: str) -> str:
        return self.numbers.get(item) or self.collection.store.number_of(item)

    def note(self, item: str, number: str, planned: Planned) -> None:
        """Remember what was taken, for the items after it."""
        self.numbers[item] = number
        for side in planned.sides:
            self.taken.append((item, side))
            if self._sides is not None:
                self._sides.add(item, side)


def take_in(
    collection: Collection, plan: Iterable[Planned], options: IntakeOptions, progress: Progress = QUIET
) -> list[IntakeResult]:
    """Carry out a plan, in batches of one act each. Items that cannot be taken are refused, and the others taken."""
    planned = list(plan)
    clear_remains(collection.folder / "scans")
    collection.back_up_before("taking scans in")
    progress.begin("Taking in", len(planned))
    settings = collection.settings
    count = collection.store.next_number_count(settings.prefix, settings.series)
    run = _IntakeRun(collection, options, Teller(collection), collection.act("intake"), count)
    run.containers = _containers(collection)
    results: list[IntakeResult] = []
    for number, item in enumerate(planned, 1):
        if progress.stopped():
            break
        results.append(_result(run, item))
        progress.step()
        if run.full:  # a smaller scan would get this one's number, and its copy would be in the way of the next run
            break
        if number % BATCH == 0:
            run.act.done()
            run.act = collection.act("intake")
    _link(run, planned)
    run.act.done()
    return results


def _result(run: _IntakeRun, item: Planned) -> IntakeResult:
    """Take one item in, or say why not. Of an item that is refused nothing is stated, and no copy is left."""
    before = len(run.act.statements)
    run.fresh.clear()
    run.said.clear()
    try:
        return _take(run, item)
    except Unsure as question:
        return IntakeResult(readable(item.key), "unsure", why=readable(question.problem))
    except BoxloreError as error:
        why = str(error)
        run.full = isinstance(error, CouldNot) and error.everywhere
    except OSError as error:  # a file that is taken away, or closed to us, just now
        why = str(could_not(error, item.sides[0].path if item.sides else Path(item.key)))
    gone = {statement.id for statement in run.act.statements[before:]}
    del run.act.statements[before:]
    run.act.readings = [(ident, reading) for ident, reading in run.act.readings if ident not in gone]
    for digest, copy in run.fresh:
        run.scans.pop(digest, None)
        if copy is not None:
            copy.unlink(missing_ok=True)
    return IntakeResult(readable(item.key), "refused", why=readable(why))


def _containers(collection: Collection) -> dict[tuple[str, ...], str]:
    """Path of labels, such as ("box 1", "folder 2") -> container id."""
    return {tuple(f"{kind} {label}" for kind, label in path): ident for ident, path in collection.store.containers()}


def _take(run: _IntakeRun, planned: Planned) -> IntakeResult:
    """Take one item in, unless its pictures are here already. Raises BoxloreError if a file cannot be taken."""
    store = run.collection.store
    _check_words(run.options, planned)
    if not run.options.copy:
        for side in planned.sides:
            _refuse_unwritable_name(side.path, run.collection.folder)
    digests = [(side, sha256_of(side.path)) for side in planned.sides]
    if not run.options.own and (ours := _own_sides(run, digests)):
        planned = replace(planned, sides=tuple(side for side in planned.sides if side not in ours))
        if not planned.sides:
            own_files = " and ".join(f"{side.path.name} is {what}" for side, what in ours.items())
            return IntakeResult(readable(planned.key), "own", why=f"{readable(own_files)} that Boxlore made itself")
        digests = [(side, digest) for side, digest in digests if side not in ours]
    known_ids = [store.scan_by_sha256(digest) or run.scans.get(digest, "") for _, digest in digests]
    if run.options.replace and (healed := _lost(run, digests, known_ids)):
        return _replaced(run, planned, digests, healed)
    if known_ids and all(known_ids) and not any(side.area for side, _ in digests):
        number = store.shown_on(known_ids[0], ())
        why = f"a picture of the same bytes is here already{f', as {number}' if number else ''}"
        if not all(map(run.here.lies_as_noted, known_ids)):
            why += f"; its file is not there, or not as it was. To bring it back: boxlore scan replace {number} FILE"
        return IntakeResult(readable(planned.key), "known", why=why)
    if in_place := _in_place_of(run, planned, known_ids):
        return _replaced(run, planned, digests, in_place)
    parts = [
        (side, store.shown_on(known_id, side.area) if known_id else "")
        for side, known_id in zip(planned.sides, known_ids, strict=True)
    ]
    if parts and all(number for _, number in parts):
        return IntakeResult(readable(planned.key), "known", parts[0][1], "this part of the picture is here already")
    item_of_row = run.made_of(planned) if planned.table else ""
    if item_of_row and not planned.sides:
        return _row_again(run, planned, Subject(Kind.ITEM, item_of_row))
    here = _item_here(run, planned, parts, item_of_row)
    number = run.number_of(here) if here else run.next_number
    shown = [
        _scan(run, side, digest, known_id, number) for (side, digest), known_id in zip(digests, known_ids, strict=True)
    ]
    item = Subject(Kind.ITEM, here) if here else _new_item(run, planned, number)
    for (side, shows_it), scan in zip(parts, shown, strict=True):
        if not (here and shows_it):
            area = Area(*side.area) if side.area else None
            shows = Shows(item.id, side.side, area, corners=side.corners)
            run.act.state(Subject(Kind.SCAN, scan), "shows", SHOWS_WORDS.write(shows))
    _tell(run, item, planned, is_new=not here)
    says = WhatFilesSay(run.collection, run.teller, run.act)
    says.tell(item, planned, run.said, is_new=not here)
    run.count += not here
    run.note(item.id, number, planned)
    if not here:
        return IntakeResult(readable(planned.key), "taken", number)
    joined = dict.fromkeys(_in_words(side) for side, shows_it in parts if not shows_it)
    return IntakeResult(readable(planned.key), "joined", number, f"the {' and '.join(joined)} of an item that was here")


def _in_words(side: ScanSide) -> str:
    return f"{'altered version of the ' if side.role != AS_SCANNED else ''}{IN_WORDS[side.side]}"


def _in_place_of(run: _IntakeRun, planned: Planned, known_ids: Sequence[str]) -> dict[ScanSide, Stood]:
    """The new sides that take the place of a scan, or of a part of one, each with that. Raises WrongUse for a file that
    lies where a scan lies and is another, unless the options say that it replaces it."""
    in_place: dict[ScanSide, Stood] = {}
    for side, known_id in zip(planned.sides, known_ids, strict=True):
        if known_id or _relative(side.path, run.collection.folder) in run.sides.damaged:
            continue
        stood = run.here.lies_there(side)
        if stood and not run.options.replace:
            raise written_over(side.path, run.here.numbers(stood))
        if run.options.replace and (stood := stood or run.here.called_so(planned, side)):
            if stood in run.replaced:
                raise WrongUse(
                    f"{side.path.name} would take the place of the scan of {run.here.numbers(stood)}, "
                    "as another file has just done.",
                    "Take in the one that is to stay alone.",
                )
            in_place[side] = stood
    new = [side for side, known_id in zip(planned.sides, known_ids, strict=True) if not known_id]
    if in_place and (others := [side.path.name for side in new if side not in in_place]):
        raise WrongUse(
            f"{others[0]} is new, and the other side takes the place of a scan.",
            "Take in what is new first, without --replace.",
        )
    return in_place


def _lost(run: _IntakeRun, digests: Iterable[tuple[ScanSide, str]], known_ids: Iterable[str]) -> dict[ScanSide, Stood]:
    """The sides whose bytes are known, and of which the file that is noted is gone, or is not as it was."""
    return {
        side: Stood(known)
        for (side, digest), known in zip(digests, known_ids, strict=True)
        if known
        and digest not in run.scans
        and run.here.lies_there(side) != Stood(known)  # for that one was read just now
        and not run.here.is_whole(known, digest)
    }


def _replaced(
    run: _IntakeRun, planned: Planned, digests: Iterable[tuple[ScanSide, str]], in_place: Mapping[ScanSide, Stood]
) -> IntakeResult:
    """Let new files take the place of scans, or of parts of them. What the files say, and how they are called, is told
    of the items; all else of these stays."""
    numbers: dict[str, str] = {}
    for side, digest in digests:
        if stood := in_place.get(side):
            numbers[run.here.numbers(stood)] = IN_WORDS[side.side]
            if stood.item:
                _instead_of_part(run, side, digest, stood)
            else:
                _instead_of_scan(run, side, digest, stood)
            says = WhatFilesSay(run.collection, run.teller, run.act)
            for item in (stood.item,) if stood.item else run.here.shown.get(stood.scan, ()):
                this_side = replace(planned, sides=(side,), fields={})
                says.tell(Subject(Kind.ITEM, item), this_side, run.said, is_new=False)
            run.said.clear()
    run.replaced.update(in_place.values())
    words = " and ".join(f"the {side} of {number}" for number, side in numbers.items())
    turned = "".join(dict.fromkeys(map(run.here.turned, in_place.values())))
    return IntakeResult(readable(planned.key), "replaced", next(iter(numbers)), f"{words} is this file now{turned}")


def _instead_of_scan(run: _IntakeRun, side: ScanSide, digest: str, stood: Stood) -> None:
    """Note of a scan that its file is another now."""
    lies_here = bool(run.here.lies_there(side))
    file, path = _file(run, side, digest, run.here.numbers(stood).partition(",")[0], lies_here=lies_here)
    run.fresh.append((digest, path if run.options.copy and not lies_here else None))
    looks = _whole_looks(run, file)
    if item := next(iter(run.here.shown_whole(stood.scan)), ""):
        carry_markers(run.act, run.collection, item, stood.scan, stood.scan, file, run.options.markers)
    embedded = words_struck(digest) if digest in run.struck else embedded_in(path)
    told = {"file": FILE_WORDS.write(file), "embedded": embedded, "looks": looks}
    restate(run.act, run.collection, stood.scan, told)
    run.scans[digest] = stood.scan
    run.said.append((side, embedded, ""))


def _whole_looks(run: _IntakeRun, file: FileFacts) -> str:
    """How a file looks that is to take the place of a scan. Raises CouldNot for one that is cut off or broken."""
    looks = looks_words(run.collection, file.path)
    if looks and LOOKS_WORDS.read(looks) is None:
        raise CouldNot(
            "This file is cut off or broken, so it takes the place of no scan.",
            "Copy it again from where it comes.",
        )
    return looks


def _instead_of_part(run: _IntakeRun, side: ScanSide, digest: str, stood: Stood) -> None:
    """Take in a scan of its own for what was a part of another, which shows that item no more."""
    number = run.here.numbers(stood)
    scan, file = _new_scan(run, side, digest, number)
    if looks := _whole_looks(run, file):
        run.act.state(Subject(Kind.SCAN, scan), "looks", looks)
    carry_markers(run.act, run.collection, stood.item, stood.scan, scan, file, run.options.markers)
    part_gives_way(run.act, run.collection, stood)
    run.said[:] = [(side, embedded, "") for side, embedded, _ in run.said]  # its markers are those of the part
    run.act.state(Subject(Kind.SCAN, scan), "shows", SHOWS_WORDS.write(Shows(stood.item, side.side)))
    run.note(stood.item, number, Planned(key=number, sides=(side,)))


def _own_sides(run: _IntakeRun, digests: Sequence[tuple[ScanSide, str]]) -> dict[ScanSide, str]:
    """The sides that are no scans but what Boxlore made of scans, each with what it is; those known here are not."""
    new = ((side, digest) for side, digest in digests if not run.collection.store.scan_by_sha256(digest))
    return {side: what for side, digest in new if (what := run.own.what(side.path, digest))}


def _row_again(run: _IntakeRun, planned: Planned, item: Subject) -> IntakeResult:
    """A row without a scan whose item is here: only what is new in it is told. Raises WrongUse where it says something
    else than it said before, for it may be another item."""
    number = run.number_of(item.id)
    for name, words in planned.fields.items():
        past = [earlier.statement.words for earlier in run.collection.store.history(item.id, name)]
        if past and _kept_as(name, words) not in past and not looks_like_number(planned.key):
            raise WrongUse(
                f"An item {planned.key} of this table is here ({number}), and its {name} was another.",
                f"If it is the same, correct it: boxlore tell {number} {name}. If not, give it another key.",
            )
    run.known[planned.key] = item
    before = len(run.act.statements)
    _tell(run, item, planned, is_new=False)
    more = "; what is new in it is told now" if len(run.act.statements) > before else ""
    return IntakeResult(readable(planned.key), "known", number, f"this row of the table is here already{more}")


def _new_item(run: _IntakeRun, planned: Planned, number: str) -> Subject:
    item = run.act.new(Kind.ITEM)
    run.items[planned.key] = item
    run.act.state(item, "number", number)
    run.act.state(item, "kind", run.options.kind or planned.kind)
    if planned.table:
        run.act.state(item, "came_from", CAME_FROM_WORDS.write(row_came_from(planned.table, planned.key)))
    _keep(run, item, planned)
    return item


def _tell(run: _IntakeRun, item: Subject, planned: Planned, *, is_new: bool) -> None:
    """Tell what the plan says of an item; of one that was here, only what nobody ever told of it in these words."""
    for name, words in planned.fields.items():
        past = [] if is_new else run.collection.store.history(item.id, name)
        if any(earlier.statement.words == _kept_as(name, words) or name == "size" for earlier in past):
            continue
        if name == "size":
            run.act.state(item, name, words)
        else:
            source = Source(Said.INSCRIPTION, "verso") if name == "inscription" else KEEPER
            run.teller.add(run.act, item, name, words, Telling(source=source))


def _kept_as(name: str, words: str) -> str:
    """The words that are kept of a cell: none of a question mark alone, which is asked, not known."""
    return as_told(FIELDS[name], words, Sure.SURE)[0]


def _refuse_number_of_another(run: _IntakeRun, planned: Planned) -> None:
    """Raises WrongUse for files that are called by a number, and by their names join no item: they would become an item
    with another number than their names say. A front alone may be called so by chance, where no item has the number."""
    for side in planned.sides:
        stem, named = split_suffix(side.path.stem)
        if not looks_like_number(stem) or side.area or side.role != AS_SCANNED:
            continue
        number, in_words = stem.upper(), IN_WORDS[side.side]
        item = run.collection.store.item_by_number(number)
        is_back_alone = named == VERSO and len(planned.sides) == 1
        is_ours = run.options.own and not is_back_alone  # a copy that we made is called by the number of its item
        if item and side.side in run.sides.sides[item] and not is_ours:
            raise WrongUse(
                f"{side.path.name} is called the {in_words} of {number}, which has another {in_words} already.",
                WRITE_OVER if run.options.replace else run.options.if_there,
            )
        if is_back_alone and not item:
            raise WrongUse(
                f"{side.path.name} is called the back of {number}, and no item here has that number.",
                "Put the number right in its name, or say --backs apart for an item of its own.",
            )


def _refuse_second_back(run: _IntakeRun, planned: Planned) -> None:
    """Raises WrongUse for a back that by its name is that of an item that has another."""
    if item := run.sides.has_a_back(planned):
        name, number = planned.sides[0].path.name, run.number_of(item)
        raise WrongUse(
            f"{name} is called the back of {number}, which has another back already.",
            "If it is of another original, say --backs apart for an item of its own.",
        )


def _item_here(run: _IntakeRun, planned: Planned, parts: Sequence[tuple[ScanSide, str]], item_of_row: str) -> str:
    """The id of the item that was here before and that the new scans are other sides of; '' for a new item.

    `parts` are (side, number of the item that is here and shown by it, '' for a new side), and `item_of_row` is the
    item that was made of the same row of a table before. Raises Unsure where the keeper must say, and WrongUse where
    nobody can join it.
    """
    new_sides = [side for side, number in parts if not number]
    if run.options.backs == "apart" or not new_sides:
        return ""
    known = [side for side, number in parts if number]
    numbers = {number for _, number in parts} - {""}
    if looks_like_number(planned.key):
        numbers = {planned.key.strip().upper()}
    elif item_of_row and not numbers:
        numbers = {run.number_of(item_of_row)}
    if len(numbers) == 1:
        (number,) = numbers
        item = run.collection.store.item_by_number(number) or ""
        there = [side for side in new_sides if side.role == AS_SCANNED and side.side in run.sides.sides[item]]
        if not there or (known and all(side.side == VERSO for side in known)):  # a bare back may be that of many
            return "" if there else item
        raise WrongUse(
            f"{number} has a {IN_WORDS[there[0].side]} already, and {there[0].path.name} is another.",
            WRITE_OVER if run.options.replace else run.options.if_there,
        )
    return "" if known else _item_of_that_name(run, planned)


def _item_of_that_name(run: _IntakeRun, planned: Planned) -> str:
    match = run.sides.match(planned)
    if match is None and not planned.table:
        _refuse_number_of_another(run, planned)
        _refuse_second_back(run, planned)
    if match is None or run.options.answers.get(planned.key) is False:
        return ""
    if match.sure:
        return match.items[0]
    side = planned.sides[0]
    numbers = [run.number_of(item) for item in match.items]
    if len(numbers) > 1:
        raise WrongUse(
            f"{side.path.name} may be the {IN_WORDS[side.side]} of {', '.join(numbers[:6])}.",
            "Name its item by the number in the column item of a table, or say --backs apart.",
        )
    if run.options.backs == "join" or run.options.answers.get(planned.key):
        return match.items[0]
    raise Unsure(f"{side.path.name} may be the {IN_WORDS[side.side]} of {numbers[0]}, whose file lies elsewhere.")


def _check_words(options: IntakeOptions, planned: Planned) -> None:
    """Raises WrongUse for words of the plan or the options that nobody can have meant, before anything is stated."""
    words = (planned.found_in, planned.box, planned.folder, planned.kind, options.found_in, options.box, options.folder)
    for written in (*words, options.kind, *planned.fields.values()):
        if written:
            check_typed(written)
    for label in (planned.box, planned.folder, options.box, options.folder):
        if label:
            check_label(label)
    for kind in filter(None, (planned.kind, options.kind)):
        typed_kind(kind)


def _scan(run: _IntakeRun, side: ScanSide, digest: str, known_id: str, number: str) -> str:
    """The scan's id: `known_id` if its bytes are known, else a new scan, registered with what its file says."""
    return known_id or _new_scan(run, side, digest, number)[0]


def _new_scan(run: _IntakeRun, side: ScanSide, digest: str, number: str) -> tuple[str, FileFacts]:
    file, path = _file(run, side, digest, number)
    scan = run.act.new(Kind.SCAN)
    if side.role != AS_SCANNED:
        run.act.state(scan, "role", side.role)
    run.act.state(scan, "file", FILE_WORDS.write(file))
    if run.options.copy:
        run.act.state(scan, "came_from", CAME_FROM_WORDS.write(came_from(side.path)))
    if embedded := words_struck(digest) if digest in run.struck else embedded_in(path):
        run.act.state(scan, "embedded", embedded, source=Source(Said.FILE))
    run.said.append((side, embedded, "" if side.area else scan.id))
    run.scans[digest] = scan.id
    run.fresh.append((digest, path if run.options.copy else None))
    return scan.id, file


def _file(
    run: _IntakeRun, side: ScanSide, digest: str, number: str, *, lies_here: bool = False
) -> tuple[FileFacts, Path]:
    """What is noted of a side's file, and where it lies now: copied into the collection, if the options say so and it
    does not lie where a scan lies."""
    if not side.path.stat().st_size:
        raise CouldNot(f"{side.path.name} is empty (0 bytes).", "Copy it again from where it comes.")
    facts, path = read_header(side.path), side.path
    if run.options.copy and not lies_here:
        path = _bring_in(run, side, digest, number)
        facts = read_header(path)  # of the copy, whose bytes are known
    file = FileFacts(
        path=_relative(path, run.collection.folder),
        sha256=digest,
        bytes=path.stat().st_size,
        width=facts.width,
        height=facts.height,
        ppi=facts.ppi,
        media_type=facts.media_type,
        orientation=facts.orientation,
    )
    return file, path


def _relative(path: Path, folder: Path) -> str:
    try:
        return Path(os.path.relpath(path.resolve(), folder.resolve())).as_posix()
    except ValueError:  # another drive on Windows has no relative path
        return path.resolve().as_posix()


def _refuse_unwritable_name(path: Path, folder: Path) -> None:
    """Raises CouldNot for a path that is not UTF-8, as on an old disk: no statement could keep it."""
    if not in_utf_8(_relative(path, folder)):
        raise CouldNot(
            f"The name of {readable(path)} is not written in UTF-8, so that the collection cannot keep it.",
            "Rename it, or take it in with --copy, which gives the scan a name by its number.",
        )


def _bring_in(run: _IntakeRun, side: ScanSide, digest: str, number: str) -> Path:
    """Copy a scan into `scans/`, named by number, side and role, and compare the copy's SHA-256. Raises CouldNot.

    A damaged file of that name, or one that is replaced, stays, and what comes in its place gets a number behind its
    name.
    """
    letter = "f" if side.side == "recto" else "b"
    role = "" if side.role == AS_SCANNED else f"_{side.role}"
    name, suffix = f"{number}_{letter}{role}", _suffix(side.path)
    target = run.collection.folder / "scans" / f"{name}{suffix}"
    for again in itertools.count(2):
        is_damaged = _relative(target, run.collection.folder) in run.sides.damaged
        if not (target.exists() and (is_damaged or (run.options.replace and sha256_of(target) != digest))):
            break
        target = target.with_name(f"{name}_{again}{suffix}")
    if target.exists():
        if sha256_of(target) == digest:
            return target
        raise CouldNot(f"{target.name} is there already with other content.", "Move it out of scans/ and go on.")
    copy_proved(side.path, target, digest)
    return target


def _suffix(path: Path) -> str:
    """The suffix for the copy of a scan: its own, or none where that is not UTF-8."""
    suffix = path.suffix.lower()
    return suffix if in_utf_8(suffix) else ""


def _keep(run: _IntakeRun, item: Subject, planned: Planned) -> None:
    """Note how the item was found, and at which position of which container it is kept now."""
    if found_in := planned.found_in or run.options.found_in:
        run.act.state(item, "found_in", found_in)
    steps = [("box", planned.box or run.options.box), ("folder", planned.folder or run.options.folder)]
    inner = _container(run, _path(run, [(kind, label) for kind, label in steps if label]))
    if inner:
        last = run.filled.get(inner)
        if last is None:
            last = run.collection.store.last_position(inner)
        position = planned.position or last + 1
        run.filled[inner] = max(last, position)
        run.act.state(item, "kept", KEPT_WORDS.write(Kept(inner, position)))


def _path(run: _IntakeRun, steps: Iterable[tuple[str, str]]) -> tuple[tuple[str, str], ...]:
    """The (kind, label) of each container, outermost first; “box 1” is the box of that label, if one was made so."""
    path: tuple[tuple[str, str], ...] = ()
    for kind, label in steps:
        as_written = (*path, (kind, label))
        known = tuple(f"{outer} {name}" for outer, name in as_written) in run.containers
        path = as_written if known else (*path, (kind, bare_label(kind, label)))
    return path


def _container(run: _IntakeRun, path: tuple[tuple[str, str], ...]) -> str:
    """The id of the container at this path of (kind, label), outermost first; new ones are made. '' for no path."""
    key = tuple(f"{kind} {label}" for kind, label in path)
    if not path or key in run.containers:
        return run.containers.get(key, "")
    outer = _container(run, path[:-1])
    container = run.act.new(Kind.CONTAINER)
    run.act.state(container, "kind", path[-1][0])
    run.act.state(container, "label", path[-1][1])
    if outer:
        run.act.state(container, "inside", outer)
    run.containers[key] = container.id
    return container.id


def _link(run: _IntakeRun, planned: Iterable[Planned]) -> None:
    """Relate the items of the plan that are linked to each other, where one was taken, and the other too or before."""
    for item in planned:
        for kind, key in item.links:
            here = {**run.known, **run.items}
            if item.key in here and key in here and (item.key in run.items or key in run.items):
                relation = run.act.new(Kind.RELATION)
                link = Link(here[item.key].id, here[key].id, kind)
                run.act.state(relation, "link", LINK_WORDS.write(link))
