"""Scans and recordings in linked data, written and read back: the file itself, and what of it shows an item.

A file has its path in the package (schema:contentUrl), digest (schema:sha256), bytes (premis:size), pixels (exif:). A
scan may show several items: each is a part of it (`oa:SpecificResource`), with its side and its place on the picture. A
sitting names its recordings (schema:recordedIn), and each item that was out as something that it used (PROV-O).
"""

from collections.abc import Iterable, Iterator, Mapping, Sequence

from boxlore.core.fields.areas import AREA_WORDS, Area
from boxlore.core.fields.pictures import EMBEDDED_WORDS, SHOWS_WORDS, FileFacts, Shows
from boxlore.core.fields.sittings import RecordingFacts, ShownAt
from boxlore.core.records.item_record import AS_SCANNED, ScanFile
from boxlore.exports.escaping import literal
from boxlore.exports.rdf_terms import RDF_TYPE, number_literal, prefixed, text_literal, urn

MEDIA_FRAGMENTS = "http://www.w3.org/TR/media-frags/"

Thing = Mapping[str, Sequence[str]]
"""Values of one subject by prefixed name of the predicate."""


def _triples(node: str, values: Iterable[tuple[str, str]]) -> list[str]:
    return [f"{node} {prefixed(name)} {value} ." for name, value in values if value]


def scan_triples(item: str, scan: ScanFile, path: str, title: str) -> list[str]:
    """The triples of one scan, and of what of it shows the item (an id). `path` is where it lies in the package."""
    node, shown = urn(scan.id), f"<urn:uuid:{scan.id}#{item}>"
    struck = EMBEDDED_WORDS.read(scan.embedded).struck_file
    return [
        f"{urn(item)} {prefixed('dcterms:hasFormat')} {node} .",
        f"{node} {RDF_TYPE} {prefixed('dcmitype:StillImage')} .",
        *_triples(
            node,
            (
                ("dcterms:title", text_literal(title, "en")),
                ("dcterms:format", literal(scan.media_type)),
                ("dcterms:identifier", literal(f"sha256:{scan.sha256}")),
                ("schema:contentUrl", literal(path)),
                ("schema:sha256", literal(scan.sha256)),
                ("premis:size", number_literal(scan.bytes)),
                ("exif:imageWidth", number_literal(scan.width)),
                ("exif:imageLength", number_literal(scan.height)),
                ("exif:xResolution", number_literal(scan.ppi) if scan.ppi else ""),
                ("exif:orientation", number_literal(scan.orientation) if scan.orientation != 1 else ""),
                ("bx:role", literal(scan.role) if scan.role != AS_SCANNED and not scan.area else ""),
                ("bx:struck", literal(struck) if struck else ""),
            ),
        ),
        f"{shown} {RDF_TYPE} {prefixed('oa:SpecificResource')} .",
        f"{shown} {prefixed('oa:hasSource')} {node} .",
        f"{shown} {prefixed('dcterms:isFormatOf')} {urn(item)} .",
        f"{shown} {prefixed('bx:side')} {literal(scan.side)} .",
        *([f"{shown} {prefixed('bx:role')} {literal(scan.role)} ."] if scan.role != AS_SCANNED and scan.area else ()),
        *([f"{shown} {prefixed('bx:turn')} {number_literal(scan.turn)} ."] if scan.turn else ()),
        *([f"{shown} {prefixed('bx:corners')} {literal(_in_words(scan.corners))} ."] if scan.corners else ()),
        *(part_triples(shown, Area(*scan.area), (scan.width, scan.height)) if scan.area else ()),
    ]


def fragment(area: Area, size: tuple[int, int]) -> str:
    """A part of a picture as Media Fragments have it (1.0, 4.2.2): whole pixels of the picture as it is stored, a point
    as one of them; in whole parts of a hundred where its width and height are not known."""
    width, height = size if all(size) else (100, 100)
    unit = "" if all(size) else "percent:"
    x, y = min(int(area.x * width), width - 1), min(int(area.y * height), height - 1)
    wide, high = max(1, round(area.width * width)), max(1, round(area.height * height))
    return f"xywh={unit}{max(x, 0)},{max(y, 0)},{wide},{high}"


def part_triples(node: str, area: Area, size: tuple[int, int]) -> list[str]:
    """Which part of a picture of that size in pixels a node is: as the standard writes it, and in our exact numbers."""
    selector = f"{node[:-1]}-selector>"
    selected = fragment(area, size)
    return [
        f"{node} {prefixed('oa:hasSelector')} {selector} .",
        f"{selector} {RDF_TYPE} {prefixed('oa:FragmentSelector')} .",
        f"{selector} {prefixed('dcterms:conformsTo')} <{MEDIA_FRAGMENTS}> .",
        f"{selector} {prefixed('rdf:value')} {literal(selected)} .",
        f"{node} {prefixed('bx:area')} {literal(AREA_WORDS.write(area))} .",
    ]


def sitting_triples(sitting: str, recordings: Iterable[RecordingFacts], shown: Iterable[ShownAt]) -> Iterator[str]:
    """The triples of a sitting's recordings, and of what was out at which moment of it (milliseconds)."""
    node = urn(sitting)
    for at, kept in enumerate(recordings, 1):
        inner = f"{node[:-1]}#recording-{at}>"
        yield f"{node} {prefixed('schema:recordedIn')} {inner} ."
        yield f"{inner} {RDF_TYPE} {prefixed('schema:AudioObject')} ."
        yield from _triples(
            inner,
            (
                ("schema:contentUrl", literal(kept.path)),
                ("schema:sha256", literal(kept.sha256)),
                ("premis:size", number_literal(kept.bytes)),
                ("premis:originalName", literal(kept.name) if kept.name else ""),
                ("bx:start", number_literal(kept.start) if kept.start is not None else ""),
                ("bx:length", number_literal(kept.length) if kept.length else ""),
                ("bx:because", literal(kept.because) if kept.because else ""),
            ),
        )
    for at, out in enumerate(shown, 1):
        inner = f"{node[:-1]}#shown-{at}>"
        yield f"{node} {prefixed('prov:qualifiedUsage')} {inner} ."
        yield f"{inner} {RDF_TYPE} {prefixed('prov:Usage')} ."
        yield f"{inner} {prefixed('prov:entity')} {urn(out.item)} ."
        yield f"{inner} {prefixed('bx:at')} {number_literal(out.at or 0)} ."


def first_of(thing: Thing, *names: str) -> str:
    """The first value of the first of these names that the thing has; '' if it has none of them."""
    return next((values[0] for name in names if (values := thing.get(name))), "")


def file_of(thing: Thing) -> FileFacts:
    """The file of a scan's node. Raises ValueError for what is no file."""
    ppi = first_of(thing, "exif:xResolution")
    return FileFacts(
        path=first_of(thing, "schema:contentUrl"),
        sha256=first_of(thing, "schema:sha256"),
        bytes=int(first_of(thing, "premis:size")),
        width=int(first_of(thing, "exif:imageWidth")),
        height=int(first_of(thing, "exif:imageLength")),
        ppi=float(ppi) if ppi else 0,
        media_type=first_of(thing, "dcterms:format"),
        orientation=int(first_of(thing, "exif:orientation") or 1),
    )


def shown_of(thing: Thing, item: str) -> Shows:
    """What of a scan shows an item. Raises ValueError for what is no part of a picture."""
    words = first_of(thing, "bx:area")
    turn = int(first_of(thing, "bx:turn") or 0)
    corners = tuple(map(float, first_of(thing, "bx:corners").split()))
    area = AREA_WORDS.read(words) if words else None
    shows = Shows(item, first_of(thing, "bx:side"), area, turn, corners, first_of(thing, "bx:role"))
    return SHOWS_WORDS.parse(SHOWS_WORDS.write(shows))


def _in_words(numbers: Sequence[float]) -> str:
    return " ".join(map(repr, numbers))


def recording_of(thing: Thing) -> RecordingFacts:
    """A recording of a sitting. Raises ValueError for what is none."""
    start = first_of(thing, "bx:start")
    return RecordingFacts(
        path=first_of(thing, "schema:contentUrl"),
        sha256=first_of(thing, "schema:sha256"),
        bytes=int(first_of(thing, "premis:size")),
        name=first_of(thing, "premis:originalName"),
        start=int(start) if start else None,
        length=int(first_of(thing, "bx:length") or 0),
        because=first_of(thing, "bx:because"),
    )


def usage_of(thing: Thing) -> ShownAt:
    """What was out at a moment of a sitting. Raises ValueError for what is no moment."""
    return ShownAt(first_of(thing, "prov:entity").removeprefix("urn:uuid:"), int(first_of(thing, "bx:at")))
