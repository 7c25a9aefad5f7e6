"""Our linked data as versions before 2026-11-28 wrote it, made of what is written now: from git history, by hand.

Then one term of ours (`urn:boxlore:terms:`) stood for each of what has a term of a published vocabulary now, and the
facts of a file, what it shows, and what was shown in a sitting were JSON in strings.
"""

import json
from collections import defaultdict
from collections.abc import Callable, Iterable, Iterator
from urllib.parse import unquote

from boxlore.exports.escaping import literal
from boxlore.exports.rdf import read_triples
from boxlore.exports.rdf_terms import PREFIXES, TERMS

THEN = "urn:boxlore:terms:"
_OA, _DC, _SCHEMA, _PROV = (PREFIXES[name] for name in ("oa", "dcterms", "schema", "prov"))
_TYPE = PREFIXES["rdf"] + "type"
_THINGS = {
    _SCHEMA + "Event": "event", _SCHEMA + "Place": "place", _PROV + "Activity": "sitting",
    PREFIXES["foaf"] + "Person": "person", PREFIXES["foaf"] + "Organization": "person",
    PREFIXES["dcmitype"] + "Collection": "collection",
}  # fmt: skip

Things = dict[str, dict[str, list[str]]]


def as_once(text: str) -> str:
    """The same N-Triples in the terms of then."""
    lines = text.split("\n")
    things: Things = defaultdict(lambda: defaultdict(list))
    for subject, predicate, value in read_triples(lines):
        things[subject][predicate].append(value)
    told = {_first(thing, _OA + "hasTarget") for thing in list(things.values())}
    written: list[str] = []
    for line in lines:
        for subject, predicate, value in read_triples([line] if line.strip() else []):
            written += _then(things, line, subject, predicate, value)
    for subject, thing in things.items():
        kinds = [kind for each, kind in _THINGS.items() if each in thing.get(_TYPE, ())]
        if kinds and subject in told:
            written.append(_own(subject, "thing", kinds[0]))
    return "\n".join([*written, ""])


def _first(thing: dict[str, list[str]], name: str) -> str:
    return thing[name][0] if thing.get(name) else ""


def _own(subject: str, name: str, words: str) -> str:
    return f"<{subject}> <{THEN}{name}> {literal(words)} ."


def _then(things: Things, line: str, subject: str, predicate: str, value: str) -> Iterable[str]:
    thing = things[subject]
    is_annotation = _OA + "Annotation" in thing.get(_TYPE, ())
    is_scan = _SCHEMA + "contentUrl" in thing and _DC + "format" in thing
    if (change := _CHANGES.get(predicate)) and not (is_annotation and predicate == _DC + "identifier"):
        return list(change(things, subject, value, is_annotation, is_scan)) or [line.replace(TERMS, THEN)]
    if predicate == _TYPE and value == _SCHEMA + "ArchiveComponent":
        return []
    if is_scan and predicate in (_DC + "rights", _DC + "title"):
        return []
    if predicate.startswith((_SCHEMA, PREFIXES["premis"], PREFIXES["exif"])):
        return []
    return [line.replace(TERMS, THEN).replace(f"^^<{PREFIXES['rdf']}JSON>", "")]


def _kind(things: Things, subject: str, value: str, is_annotation: bool, is_scan: bool) -> Iterator[str]:
    if is_annotation:
        yield _own(subject, "field", unquote(value.removeprefix(f"{TERMS}field/")))
    else:
        yield _own(subject, "kind", value)


def _access(things: Things, subject: str, value: str, is_annotation: bool, is_scan: bool) -> Iterator[str]:
    if is_annotation:
        yield _own(subject, "audience", value)


def _agent(things: Things, subject: str, value: str, is_annotation: bool, is_scan: bool) -> Iterator[str]:
    ours = value.removeprefix(f"{TERMS}source/")
    said = unquote(ours) if ours != value else f"narrator:{value.removeprefix('urn:uuid:')}"
    yield f"<{subject}> <{_PROV}wasAttributedTo> <{value.replace(TERMS, THEN)}> ."
    yield _own(subject, "source", said)


def _meant(things: Things, subject: str, value: str, is_annotation: bool, is_scan: bool) -> Iterator[str]:
    yield _own(subject, "reading", json.dumps({"id": value.removeprefix("urn:uuid:")}))


def _label(things: Things, subject: str, value: str, is_annotation: bool, is_scan: bool) -> Iterator[str]:
    if _DC + "type" in things[subject] and _DC + "rights" not in things[subject]:
        yield _own(subject, "label", value)


def _position(things: Things, subject: str, value: str, is_annotation: bool, is_scan: bool) -> Iterator[str]:
    name = "number" if _OA + "hasSource" in things[subject] else "position"
    yield _own(subject, name, value)


def _size(things: Things, subject: str, value: str, is_annotation: bool, is_scan: bool) -> Iterator[str]:
    yield _own(subject, "size", value.removesuffix(" mm"))


def _file(things: Things, subject: str, value: str, is_annotation: bool, is_scan: bool) -> Iterator[str]:
    thing = things[subject]
    facts: dict[str, object] = {"path": value, "sha256": _first(thing, _SCHEMA + "sha256")}
    facts["bytes"] = int(_first(thing, PREFIXES["premis"] + "size"))
    if is_scan:
        facts["width"] = int(_first(thing, PREFIXES["exif"] + "imageWidth"))
        facts["height"] = int(_first(thing, PREFIXES["exif"] + "imageLength"))
        facts["ppi"] = float(_first(thing, PREFIXES["exif"] + "xResolution") or 0)
        facts["media_type"] = _first(thing, _DC + "format")
        yield _own(subject, "file", json.dumps(facts))
    else:
        facts["name"] = _first(thing, PREFIXES["premis"] + "originalName")
        facts["start"] = int(_first(thing, TERMS + "start") or 0)
        facts["length"] = int(_first(thing, TERMS + "length") or 0)
        facts["because"] = _first(thing, TERMS + "because")
        yield _own(subject.partition("#")[0], "recording", json.dumps(facts))


def _shows(things: Things, subject: str, value: str, is_annotation: bool, is_scan: bool) -> Iterator[str]:
    scan, _, item = subject.partition("#")
    area = [float(part) for part in _first(things[subject], TERMS + "area").split()] or None
    words = json.dumps({"item": item, "side": value, "area": area})
    yield _own(scan, "shows", words)


def _shown(things: Things, subject: str, value: str, is_annotation: bool, is_scan: bool) -> Iterator[str]:
    item = _first(things[subject], _PROV + "entity").removeprefix("urn:uuid:")
    yield _own(subject.partition("#")[0], "shown", json.dumps({"item": item, "at": int(value)}))


def _nothing(things: Things, subject: str, value: str, is_annotation: bool, is_scan: bool) -> Iterator[str]:
    yield ""


_CHANGES: dict[str, Callable[..., Iterator[str]]] = {
    _DC + "type": _kind, _DC + "accessRights": _access, _PROV + "wasAttributedTo": _agent, _DC + "references": _meant,
    _DC + "identifier": _label, _SCHEMA + "position": _position, _SCHEMA + "size": _size,
    _SCHEMA + "contentUrl": _file, TERMS + "side": _shows, TERMS + "at": _shown,
    **dict.fromkeys(
        (_DC + "date", _DC + "isFormatOf", _SCHEMA + "recordedIn", _PROV + "qualifiedUsage", _PROV + "entity",
         TERMS + "start", TERMS + "length", TERMS + "because"), _nothing,
    ),
}  # fmt: skip
