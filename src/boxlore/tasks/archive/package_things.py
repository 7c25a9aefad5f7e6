"""What the linked data of a package says of each thing, in the terms of this version and of those before it.

Earlier versions had a term of their own for much that has one of a published vocabulary now, and JSON in strings for
files, parts of pictures and what was shown: each is read in both ways, so that a transfer of any age is rebuilt.
"""

import json
from collections import defaultdict
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from pathlib import Path
from typing import TypeVar

from boxlore.core.errors import CouldNot
from boxlore.core.fields.pictures import FILE_WORDS, SHOWS_WORDS, FileFacts, Shows
from boxlore.core.fields.sittings import RECORDING_WORDS, SHOWN_WORDS, RecordingFacts, ShownAt
from boxlore.core.statements import Kind
from boxlore.exports.rdf import field_of, read_triples
from boxlore.exports.rdf_files import Thing, file_of, first_of, recording_of, shown_of, usage_of
from boxlore.exports.rdf_terms import EARLIER_TERMS, PREFIXES
from boxlore.tasks.archive.transfer_updates import URN

RECORDS = "data/metadata/records.nt"

_SHORT = {namespace: prefix for prefix, namespace in PREFIXES.items()} | {EARLIER_TERMS: "bx"}
_KINDS = {
    PREFIXES["foaf"] + "Person": Kind.PERSON,
    PREFIXES["foaf"] + "Organization": Kind.PERSON,
    PREFIXES["schema"] + "Event": Kind.EVENT,
    PREFIXES["schema"] + "Place": Kind.PLACE,
    PREFIXES["prov"] + "Activity": Kind.SITTING,
    PREFIXES["dcmitype"] + "Collection": Kind.COLLECTION,
}
"""What is told of besides items, by its class."""

_Value = TypeVar("_Value")


def things_in(bags: Iterable[Path]) -> dict[str, Thing]:
    """Everything that the bags tell of, by its IRI. Raises CouldNot for linked data that cannot be read."""
    things: dict[str, dict[str, list[str]]] = defaultdict(lambda: defaultdict(list))
    for bag in bags:
        if (bag / RECORDS).is_file():
            with open(bag / RECORDS, encoding="utf-8", newline="\n") as file:
                for subject, predicate, value in _triples(file, bag):
                    if value not in (values := things[subject][_short(predicate)]):
                        values.append(value)
    return {name: {key: list(values) for key, values in described.items()} for name, described in things.items()}


def _triples(file: Iterator[str], bag: Path) -> Iterator[tuple[str, str, str]]:
    try:
        yield from read_triples(file)
    except ValueError as error:
        raise CouldNot(f"{bag / RECORDS}: {error}.", "It was not written by Boxlore, or has changed.") from error


def _short(predicate: str) -> str:
    cut = max(predicate.rfind("#"), predicate.rfind("/"), predicate.rfind(":")) + 1
    return f"{_SHORT.get(predicate[:cut], '')}:{predicate[cut:]}"


def id_of(name: str) -> str:
    """The id in the IRI of one of our things."""
    return name.removeprefix(URN)


def is_item(thing: Thing) -> bool:
    """Whether it is an item; earlier versions told items alone of rights."""
    has_class = PREFIXES["schema"] + "ArchiveComponent" in thing.get("rdf:type", ())
    return has_class or ("dcterms:rights" in thing and "schema:contentUrl" not in thing)


def kind_told(thing: Thing) -> str:
    """The kind of what is told of besides items; '' for anything else."""
    classes = (_KINDS[name] for name in thing.get("rdf:type", ()) if name in _KINDS)
    return first_of(thing, "bx:thing") or next(classes, "")


def field_told(thing: Thing) -> str:
    """What an annotation tells of; '' for what is none."""
    return first_of(thing, "bx:field") or field_of(first_of(thing, "dcterms:type"))


def reading_text(thing: Thing) -> str:
    """How an annotation's words are understood, as the log keeps it; '' for not at all."""
    meant = id_of(first_of(thing, "dcterms:references"))
    return json.dumps({"id": meant}) if meant else first_of(thing, "bx:reading")


def scan_file(thing: Thing) -> FileFacts:
    """The file of a scan. Raises CouldNot."""
    return FILE_WORDS.typed(first_of(thing, "bx:file")) if "bx:file" in thing else _read(file_of, thing)


def shows_item(things: Mapping[str, Thing], scan: str, item: str) -> Iterator[Shows]:
    """What of a scan (its IRI) shows an item (its id). Raises CouldNot."""
    if part := things.get(f"{scan}#{item}"):
        yield _read(lambda thing: shown_of(thing, item), part)
    for words in things[scan].get("bx:shows", ()):
        if (shows := SHOWS_WORDS.typed(words)).item == item:
            yield shows


def recordings_kept(things: Mapping[str, Thing], sitting: Thing) -> list[RecordingFacts]:
    """The recordings of a sitting. Raises CouldNot."""
    kept = [_read(recording_of, part) for part in _parts(things, sitting, "schema:recordedIn")]
    return kept + [RECORDING_WORDS.typed(words) for words in sitting.get("bx:recording", ())]


def items_shown(things: Mapping[str, Thing], sitting: Thing) -> list[ShownAt]:
    """What was shown in a sitting, and when. Raises CouldNot."""
    shown = [_read(usage_of, part) for part in _parts(things, sitting, "prov:qualifiedUsage")]
    return shown + [SHOWN_WORDS.typed(words) for words in sitting.get("bx:shown", ())]


def _parts(things: Mapping[str, Thing], thing: Thing, name: str) -> Sequence[Thing]:
    return [things[part] for part in thing.get(name, ()) if part in things]


def _read(read: Callable[[Thing], _Value], thing: Thing) -> _Value:
    try:
        return read(thing)
    except ValueError as error:
        raise CouldNot(f"The package tells what no collection may hold: {error}.", "Ask for it again.") from error
