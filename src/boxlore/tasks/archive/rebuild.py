"""A collection rebuilt from a transfer: everything that the package's linked data holds, under the ids it had.

The bags are checked in full first. Open and closed parts are read together; what only one of them has is taken from
it. Of a transfer and its updates the newest tells everything, and its records alone are read; files come from whichever
has them, but for those that an update has withdrawn. Numbers stay; new ones go on under a series letter that no item of
the package has.
"""

from collections import defaultdict
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import date
from pathlib import Path
from urllib.parse import unquote

from boxlore.core.crosswalk.dublin_core import LENT
from boxlore.core.errors import CouldNot, WrongUse
from boxlore.core.fields.guard import checked
from boxlore.core.fields.language import language_tag
from boxlore.core.fields.originals import KEPT_WORDS, NUMBER_WORDS, Kept
from boxlore.core.fields.pictures import FILE_WORDS, LINK_WORDS, SHOWS_WORDS, FileFacts, Link, words_struck
from boxlore.core.fields.plain_values import YES_NO_WORDS
from boxlore.core.fields.sittings import RECORDING_WORDS, SHOWN_WORDS
from boxlore.core.fields.table import FIELDS
from boxlore.core.records.item_record import AS_SCANNED
from boxlore.core.records.readings import read_value
from boxlore.core.statements import Kind, Reading, Said, Source, Statement, Subject, Sure, read_source
from boxlore.disk.digests import copy_proved, sha256_of
from boxlore.disk.writing import write_whole
from boxlore.exports.bag_check import verify_bag
from boxlore.exports.rdf import source_of
from boxlore.exports.rdf_files import Thing, first_of
from boxlore.exports.rdf_terms import PREFIXES
from boxlore.tasks.archive.bags_in_time import files_now, in_time
from boxlore.tasks.archive.climate_kept import state_climate
from boxlore.tasks.archive.package_bags import check_of_one, collection_in, what_lacks
from boxlore.tasks.archive.package_things import (
    RECORDS,
    field_told,
    id_of,
    is_item,
    items_shown,
    kind_told,
    reading_text,
    recordings_kept,
    scan_file,
    shows_item,
    things_in,
)
from boxlore.tasks.archive.struck_fields import read_struck
from boxlore.tasks.archive.transfer_updates import URN, is_of_wanted
from boxlore.tasks.collection.embedded_metadata import embedded_in
from boxlore.tasks.collection.opening import Act, Collection, open_collection, start
from boxlore.tasks.collection.prompts import FILE_NAME as PROMPTS
from boxlore.tasks.collection.settings import FILE_NAME, Settings, read_settings
from boxlore.tasks.scans.package_check import bags_in
from boxlore.tasks.telling.statements import Teller
from boxlore.tasks.telling.table import read_sure

READER = "a transfer"
READ_AS = {"consent": "consent", "inside": "place"}
"""Kinds of the readings of fields that are not read as told words are."""


@dataclass(frozen=True, slots=True)
class Rebuilt:
    """How many items, scans and statements there are again, and scans that the package does not hold."""

    items: int
    scans: int
    statements: int
    missing: tuple[str, ...]
    notes: tuple[str, ...] = ()
    """Sentences on what such a package cannot hold."""


@dataclass(slots=True)
class _Rebuilding:
    things: dict[str, Thing]
    files: Mapping[str, Sequence[Path]]
    """Every file that the archive has by now, but for descriptions: by its path below `data/`."""
    homes: list[Path]
    """The folders of the descriptions that count."""
    collection: Collection
    act: Act
    containers: dict[str, str] = field(default_factory=dict)
    scans: dict[str, str] = field(default_factory=dict)
    missing: dict[str, None] = field(default_factory=dict)
    told: dict[str, list[str]] = field(default_factory=lambda: defaultdict(list))
    """Names of the annotations of each target."""
    markers: dict[str, list[str]] = field(default_factory=lambda: defaultdict(list))
    """Names of the marked parts of scans of each item."""
    marker_ids: dict[str, str] = field(default_factory=dict)
    """The new ids of markers by their names."""
    in_question: set[str] = field(default_factory=set)
    """Statements of which it was still asked what they mean."""

    def state(self, kind: Kind, ident: str, name: str, words: str) -> None:
        self.act.state(Subject(kind, ident), name, words)


def rebuild(
    folder: Path, package: Path, *, also: Sequence[Path] = (), series: str = "", on_day: date | None = None
) -> Rebuilt:
    """Make a collection in `folder` from a bag, or a folder of bags; `also` names further folders, such as those of
    updates. Raises CouldNot if a bag is not whole."""
    bags = list(dict.fromkeys(bag for place in (package, *also) for bag in bags_in(place)))
    if not any((bag / RECORDS).is_file() for bag in bags):
        raise WrongUse(f"{package} holds no transfer with linked data.", "Name the folder of a transfer of ours.")
    if findings := [finding for bag in bags for finding in verify_bag(bag)]:
        raise CouldNot(f"The package is not whole: {findings[0].message}", "Ask for it again; nothing was made.")
    check_of_one(package, bags)
    transfers = in_time(bags)
    newest = next(of_one for of_one in reversed(transfers) if any((bag / RECORDS).is_file() for bag in of_one))
    homes = [bag / "data" / "metadata" for bag in newest]
    things = things_in(newest)
    ident, about = collection_in(package, things)
    items = [name for name, described in things.items() if is_item(described)]
    numbers = [_number(things[name]) for name in items]
    start(folder, _settings(homes, about, numbers, series), on_day=on_day, ident=id_of(ident))
    with open_collection(folder, on_day=on_day) as collection:
        act = collection.act(f"rebuilt from the transfer {package.name}")
        making = _Rebuilding(things, files_now(transfers), homes, collection, act)
        _gather(making)
        for name in sorted(items, key=lambda item_name: _number(things[item_name])):
            _item(making, name)
        _relations(making, items)
        _others(making)
        for home in homes:
            state_climate(act, home, making.files)
        if is_of_wanted(newest):  # each of them went because the archive wanted it
            source = Source(Said.DOCUMENT, f"transfer {package.name}")
            for name in items:
                wanted = (Subject(Kind.ITEM, id_of(name)), "wanted", YES_NO_WORDS.write(True))
                act.state(*wanted, source=source, audience="keeper")
        making.act.statements.sort(key=lambda statement: (statement.recorded_at, statement.id))
        making.act.done()
        for home in homes:
            collection.store.take_tombstones(list(read_struck(home, making.marker_ids, collection.by)))
        _ask_again(making)
        _bring_sound(making)
        _bring_prompts(making)
        counts = len(items), len(making.scans), len(making.act.statements)
        return Rebuilt(*counts, tuple(making.missing), tuple(what_lacks(bags, newest)))


def _number(thing: Thing) -> str:
    return next(identifier for identifier in thing["dcterms:identifier"] if not identifier.startswith(URN))


def _settings(homes: Sequence[Path], about: Thing, numbers: list[str], series: str) -> Settings:
    """The settings as they were, where a closed part holds them; a series letter that no number has yet."""
    own = next((read_settings(home) for home in homes if (home / FILE_NAME).is_file()), Settings())
    starts = sorted({NUMBER_WORDS.typed(number).letters for number in numbers})
    prefix, last = (starts[-1][:-1], starts[-1][-1]) if starts else ("FAM", "@")
    if not series and last == "Z":
        raise WrongUse("Every series letter is in use.", "Give a prefix of your own to a new collection.")
    return replace(
        own,
        title=first_of(about, "dcterms:title"),
        holder=first_of(about, "bx:holder"),
        language=language_tag(first_of(about, "dcterms:language", "bx:language")) or "en",
        prefix=prefix,
        series=series or chr(ord(last) + 1),
    )


def _gather(making: _Rebuilding) -> None:
    """Which annotations there are of what, and which markers."""
    for name, thing in making.things.items():
        if PREFIXES["oa"] + "Annotation" in thing.get("rdf:type", []):
            making.told[first_of(thing, "oa:hasTarget")].append(name)
        elif "bx:area" in thing and "dcterms:isPartOf" in thing:
            making.markers[first_of(thing, "dcterms:isPartOf")].append(name)


def _item(making: _Rebuilding, name: str) -> None:
    thing, ident = making.things[name], id_of(name)
    making.state(Kind.ITEM, ident, "number", _number(thing))
    for field_name, words in (
        ("kind", first_of(thing, "dcterms:type", "bx:kind")),
        ("found_in", first_of(thing, "bx:found_in")),
        ("size", first_of(thing, "schema:size", "bx:size").removesuffix(" mm")),
    ):
        if words:
            making.state(Kind.ITEM, ident, field_name, words)
    if container := _container(making, first_of(thing, "dcterms:isPartOf")):
        position = first_of(thing, "schema:position", "bx:position")
        kept = Kept(container, int(position) if position.isdigit() else 0)
        making.state(Kind.ITEM, ident, "kept", KEPT_WORDS.write(kept))
    for scan in thing.get("dcterms:hasFormat", []):
        _scan(making, ident, scan)
    annotated = {field_told(making.things[told]) for told in making.told.get(name, [])}
    is_lent = any(words.endswith(LENT) for words in thing.get("dcterms:provenance", []))
    if is_lent and "lender" not in annotated:
        how = {"source": Source(Said.DOCUMENT, "a transfer"), "audience": FIELDS["lender"].audience}
        making.act.state(Subject(Kind.ITEM, ident), "lender", _UNNAMED, **how)
    for field_name in sorted(set(thing.get("bx:asked", [])) - annotated):
        making.act.state(Subject(Kind.ITEM, ident), field_name, "", sure=Sure.NOT_KNOWN)
    for statement_name in making.told.get(name, []):
        _statement(making, statement_name, Subject(Kind.ITEM, ident))
    for target in sorted(
        making.markers.get(name, []),
        key=lambda marker: int(first_of(making.things[marker], "schema:position", "bx:number") or 0),
    ):
        _marker(making, ident, target)


_UNNAMED = "somebody whom the transfer does not name"
"""Stands for who lent an item: a collection made again must not give it away."""


def _container(making: _Rebuilding, name: str) -> str:
    """The container's id in the new collection; none for the collection itself."""
    if "#" not in name:
        return ""
    if name not in making.containers:
        container = making.act.new(Kind.CONTAINER)
        making.containers[name] = container.id
        thing = making.things[name]
        outer = _container(making, first_of(thing, "dcterms:isPartOf"))
        kind, _, label = unquote(name.rpartition("/")[2].rpartition("#")[2]).partition("-")
        making.act.state(container, "kind", first_of(thing, "dcterms:type", "bx:kind") or kind)
        making.act.state(container, "label", first_of(thing, "dcterms:identifier", "bx:label") or label)
        if outer:
            making.act.state(container, "inside", outer)
        for told in making.told.get(name, []):
            _statement(making, told, container)
    return making.containers[name]


def _scan(making: _Rebuilding, item: str, name: str) -> None:
    thing, ident = making.things[name], id_of(name)
    if ident not in making.scans:
        facts = scan_file(thing)
        path = _bring(making, facts)
        if not path:
            making.missing[facts.path + (_OTHER_BYTES if making.files.get(facts.path) else "")] = None
            return
        making.scans[ident] = path
        making.state(Kind.SCAN, ident, "file", FILE_WORDS.write(replace(facts, path=path)))
        if (role := first_of(thing, "bx:role")) not in ("", AS_SCANNED):
            making.state(Kind.SCAN, ident, "role", role)
        struck_file = first_of(thing, "bx:struck")
        if embedded := words_struck(struck_file) if struck_file else embedded_in(making.collection.folder / path):
            making.act.state(
                Subject(Kind.SCAN, ident), "embedded", embedded, source=read_source("file"), audience="keeper"
            )
    for shows in shows_item(making.things, name, item):
        making.state(Kind.SCAN, ident, "shows", SHOWS_WORDS.write(shows))


_OTHER_BYTES = " as it is described: the file that lies there has other bytes"


def _bring(making: _Rebuilding, facts: FileFacts) -> str:
    """Copy a scan out of whichever bag holds it, and prove it by its digest. A scan that is in both parts is in each as
    it may be seen there."""
    path = facts.path
    if ".." in Path(path).parts or Path(path).is_absolute():
        return ""
    for source in making.files.get(path, ()):
        if sha256_of(source) == facts.sha256:
            copy_proved(source, making.collection.folder / path, facts.sha256)
            return path
    return ""


def _statement(making: _Rebuilding, name: str, subject: Subject) -> None:
    """One statement with the id, time, source, sureness and audience that it had."""
    thing = making.things[name]
    body = making.things[first_of(thing, "oa:hasBody")]
    field_name = field_told(thing)
    if field_name not in FIELDS:
        raise CouldNot(
            f"The package tells of a field “{field_name[:30]}” that this Boxlore does not know.", "Get a newer one."
        )
    try:
        statement = checked(
            Statement(
                id=id_of(name),
                act=making.act.id,
                subject=subject,
                field=field_name,
                words=first_of(body, "rdf:value"),
                language=language_tag(first_of(body, "dcterms:language")),  # an older log took what is no tag
                source=read_source(first_of(thing, "bx:source") or source_of(first_of(thing, "prov:wasAttributedTo"))),
                sure=read_sure(first_of(thing, "bx:sure").rpartition("/")[2]),
                audience=first_of(thing, "dcterms:accessRights", "bx:audience"),
                recorded_at=first_of(thing, "prov:generatedAtTime"),
                by=making.collection.by,
            )
        )
    except WrongUse as error:
        raise CouldNot(f"The package tells what no collection may hold. {error}", "Ask for it again.") from error
    making.act.statements.append(statement)
    if first_of(thing, "bx:asks") == "true":
        making.in_question.add(statement.id)
    if reading := reading_text(thing):
        kind = FIELDS[field_name].reads or READ_AS[field_name]
        confirmed = first_of(thing, "bx:confirmed") == "true"
        value = Reading(kind, read_value(kind, reading), READER, confirmed=confirmed)
        making.act.readings.append((statement.id, value))


def _marker(making: _Rebuilding, item: str, target: str) -> None:
    """A marker with what is told of it; of a scan that the package does not hold, what is told of the item."""
    thing = making.things[target]
    scan = id_of(first_of(thing, "oa:hasSource"))
    if scan not in making.scans:
        for statement_name in making.told[target]:
            _statement(making, statement_name, Subject(Kind.ITEM, item))
        return
    marker = making.act.new(Kind.MARKER)
    making.marker_ids[target] = marker.id
    making.act.state(marker, "scan", scan)
    making.act.state(marker, "area", first_of(thing, "bx:area"))
    for statement_name in making.told[target]:
        _statement(making, statement_name, marker)


def _relations(making: _Rebuilding, items: list[str]) -> None:
    by_number = {_number(making.things[item_name]): id_of(item_name) for item_name in items}
    for name in items:
        for words in making.things[name].get("bx:related", []):
            kind, _, number = words.rpartition(" ")
            if number in by_number:
                relation = making.act.new(Kind.RELATION)
                making.act.state(relation, "link", LINK_WORDS.write(Link(id_of(name), by_number[number], kind)))


def _others(making: _Rebuilding) -> None:
    """People, events, places, sittings and the collection itself."""
    for name, thing in making.things.items():
        if not (kind := kind_told(thing)):
            continue
        subject = Subject(Kind(kind), id_of(name))
        for statement_name in making.told.get(name, []):
            _statement(making, statement_name, subject)
        for kept in recordings_kept(making.things, thing):
            words = RECORDING_WORDS.write(kept)
            making.act.state(subject, "recording", words, sitting=subject.id, moment=kept.start or 0)
        for out in items_shown(making.things, thing):
            making.act.state(subject, "shown", SHOWN_WORDS.write(out), sitting=subject.id, moment=out.at)


def _was_open(making: _Rebuilding, statement: Statement) -> bool:
    reads = FIELDS[statement.field].reads
    return reads in ("date", "place") or (reads in ("person", "event") and statement.id in making.in_question)


TOGETHER = 500
"""Statements read in one act: enough to be quick, few enough to be looked through for each."""


def _ask_again(making: _Rebuilding) -> None:
    """Dates and places that the transfer gives no reading of were open, and so was who is meant where it says so: they
    are asked again. They are read anew, so that there is something to choose from, and left open, whatever the births
    and names that are known by now would make of them."""
    read = {ident for ident, _ in making.act.readings}
    open_ones = [
        statement
        for statement in making.act.statements
        if statement.id not in read and statement.words and _was_open(making, statement)
    ]
    teller = Teller(making.collection)
    for at in range(0, len(open_ones), TOGETHER):
        act = making.collection.act("read anew after the transfer")
        for statement in open_ones[at : at + TOGETHER]:
            teller.read_into(act, statement)
        meant = {statement.id for statement in open_ones}  # and not what is told beside it, of which the transfer says
        act.readings = [(ident, replace(reading, asks=True)) for ident, reading in act.readings if ident in meant]
        act.done()


def _bring_prompts(making: _Rebuilding) -> None:
    """The collection's own questions, where a closed part holds them, so that the next sitting asks them too."""
    for home in making.homes:
        if (source := home / PROMPTS).is_file():
            write_whole(making.collection.folder / PROMPTS, source.read_bytes())


def _bring_sound(making: _Rebuilding) -> None:
    """Recordings and papers lie where they lay."""
    for path, sources in making.files.items():
        if path.startswith(("recordings/", "papers/")):
            write_whole(making.collection.folder / path, sources[0].read_bytes())
