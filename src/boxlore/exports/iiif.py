"""Pictures for viewers on the web: IIIF Presentation 3.0 manifests with Web Annotations, beside static pictures.

IIIF Presentation API 3.0 (2020): a Collection of Manifests, one an item; a Canvas for each side in the pixels of its
scan, painted with the file itself (no image service is needed); W3C Web Annotation for markers and who is shown. Their
addresses begin with the one under which the archive shows the open part. Only open scans that browsers show are in it.
"""

import json
from collections.abc import Callable, Iterable, Iterator
from typing import Any

from boxlore.core.crosswalk import captions, image_regions
from boxlore.core.crosswalk.dublin_core import CollectionFacts, oai_dc, rights_notes, rights_of
from boxlore.core.crosswalk.rights_statements import OF_RIGHTS, rights_label, rights_name
from boxlore.core.crosswalk.scan_file_names import packed_path
from boxlore.core.fields.table import FIELDS
from boxlore.core.records.item_record import REFERENCE, PersonShown, Record, ScanFile

CONTEXT = "http://iiif.io/api/presentation/3/context.json"
MEDIA = "http://www.w3.org/TR/media-frags/"
SHOWN_BY_BROWSERS = ("image/jpeg", "image/png", "image/webp", "image/gif")
_RIGHTS = (OF_RIGHTS, "http://creativecommons.org/")
"""How the addresses begin that `rights` may have (Presentation 3.0, 3.3)."""

Page = tuple[str, dict[str, Any]]
"""A file's path below the address, and what it says."""


def iiif_pages(
    records: Callable[[], Iterable[Record]], facts: CollectionFacts, goes: Callable[[str], bool]
) -> Iterator[Page]:
    """The collection, then the manifest of each item that has a picture. `goes` says whether a scan is there."""
    base = facts.archive.base_url.rstrip("/")
    members: list[dict[str, Any]] = []
    for record in records():
        scans = [scan for scan in record.open_scans if _is_shown(record, scan, goes)]
        if scans:
            page = _manifest(record, scans, facts, base)
            members.append({name: page[name] for name in ("id", "type", "label")})
            yield f"iiif/{record.number}.json", page
    if members:
        yield (
            "iiif/collection.json",
            {
                "@context": CONTEXT,
                "id": f"{base}/iiif/collection.json",
                "type": "Collection",
                "label": _in(facts.language, facts.title),
                **_provider(facts),
                "items": members,
            },
        )


def has_manifest(record: Record, goes: Callable[[str], bool]) -> bool:
    """Whether there is anything of an item that a viewer can show."""
    return any(_is_shown(record, scan, goes) for scan in record.open_scans)


def page_bytes(page: dict[str, Any]) -> bytes:
    """The page as JSON in UTF-8."""
    return json.dumps(page, ensure_ascii=False, indent=1).encode("utf-8", "replace")


def _is_shown(record: Record, scan: ScanFile, goes: Callable[[str], bool]) -> bool:
    is_sized = scan.width > 0 and scan.height > 0
    return scan.media_type in SHOWN_BY_BROWSERS and is_sized and goes(packed_path(record, scan))


def _in(language: str, *words: str) -> dict[str, list[str]]:
    """A language map; `none` for words of no language (Presentation 3.0, 4.1)."""
    return {language or "none": list(words)}


def _manifest(record: Record, scans: list[ScanFile], facts: CollectionFacts, base: str) -> dict[str, Any]:
    ident = f"{base}/iiif/{record.number}.json"
    rights, notes = rights_of(record, facts), rights_notes(record, facts)
    title, summary = record.first("title"), captions.caption(record, "sheet")
    page: dict[str, Any] = {
        "@context": CONTEXT,
        "id": ident,
        "type": "Manifest",
        "label": _in(
            title.language if title else facts.language, captions.title(record, captions.Style(brackets=facts.brackets))
        ),
        "metadata": _metadata(record, facts),
        **({"summary": _in(facts.language, summary)} if summary else {}),
        "requiredStatement": {"label": _in("en", "Rights"), "value": _in("en", _said(rights), *notes)},
        **_provider(facts),
        "items": [_canvas(record, scan, base, ident, at) for at, scan in enumerate(scans, 1)],
    }
    if rights.startswith(_RIGHTS):
        page["rights"] = rights
    return page


def _said(rights: str) -> str:
    """The rights as they are shown to readers: in words alone where `rights` has the address."""
    return rights_name(rights) if rights.startswith(_RIGHTS) else rights_label(rights)


def _provider(facts: CollectionFacts) -> dict[str, Any]:
    """Who shows it (Presentation 3.0, 3.1: it should be said): the archive by its name, and its address."""
    archive = facts.archive
    if not archive.repository:
        return {}
    label = _in(archive.language, archive.repository)
    homepage = {"id": archive.base_url, "type": "Text", "label": label, "format": "text/html"}
    return {"provider": [{"id": archive.base_url, "type": "Agent", "label": label, "homepage": [homepage]}]}


_SAID_ELSEWHERE = ("title", "rights", "type", "identifier")
"""Of simple Dublin Core, what the manifest says by properties of its own; numbers of items are said with their name."""


def _metadata(record: Record, facts: CollectionFacts) -> list[dict[str, Any]]:
    """What the archive calls it and simple Dublin Core as labels and values for readers, each in its language; nothing
    that is said elsewhere."""
    caption = captions.caption(record, "sheet")
    values: dict[str, dict[str, list[str]]] = {"number": _in("", record.number)}
    if references := [view.words for view in record.all(REFERENCE)]:
        values[FIELDS[REFERENCE].label] = _in("", *references)
    for name, value in oai_dc(record, facts):
        if name not in _SAID_ELSEWHERE and value.words != caption:
            values.setdefault(name, {}).setdefault(value.language or "none", []).append(value.words)
    return [{"label": _in("en", name.capitalize()), "value": words} for name, words in values.items()]


def _canvas(record: Record, scan: ScanFile, base: str, manifest: str, at: int) -> dict[str, Any]:
    ident = f"{manifest.removesuffix('.json')}/canvas/{at}"
    file = f"{base}/{packed_path(record, scan)}"
    x, y, across, down = _part(scan)
    wide, high = (scan.height, scan.width) if _is_sideways(scan.orientation) else (scan.width, scan.height)
    body: dict[str, Any] = {"id": file, "type": "Image", "format": scan.media_type, "width": wide, "height": high}
    if scan.area:  # a part of a sheet that shows several items
        selector = {"type": "FragmentSelector", "conformsTo": MEDIA, "value": f"xywh={x},{y},{across},{down}"}
        body = {"id": f"{ident}/part", "type": "SpecificResource", "source": body, "selector": selector}
    style: dict[str, Any] = {}
    if scan.turn:  # the file stays as it is, and the viewer turns it
        part = body if scan.area else {"id": f"{ident}/turned", "type": "SpecificResource", "source": body}
        body = {**part, "styleClass": "turned"}
        style = {"stylesheet": {"type": "CssStylesheet", "value": f".turned {{ {_TURNS[scan.turn]} }}"}}
    painting = {
        "id": f"{ident}/painting", "type": "Annotation", "motivation": "painting", **style, "body": body,
        "target": ident,
    }  # fmt: skip
    width, height = _size(scan)
    canvas: dict[str, Any] = {
        "id": ident,
        "type": "Canvas",
        "label": _in("en", "Front" if scan.side == "recto" else "Back"),
        "width": width,
        "height": height,
        "items": [{"id": f"{ident}/page", "type": "AnnotationPage", "items": [painting]}],
    }
    marked = [person for person in record.people if person.scan == scan.id and person.area]
    if marked:
        items = [_annotation(person, ident, scan, number) for number, person in enumerate(marked, 1)]
        canvas["annotations"] = [{"id": f"{ident}/people", "type": "AnnotationPage", "items": items}]
    return canvas


_TURNS = {
    90: "transform-origin: top left; transform: rotate(90deg) translateY(-100%);",
    180: "transform: rotate(180deg);",
    270: "transform-origin: top left; transform: rotate(270deg) translateX(-100%);",
}
"""How a viewer turns what the keeper turned (Web Annotation Data Model, 4.4, and CSS Transforms 1)."""


def _is_sideways(orientation: int) -> bool:
    """Whether an orientation of Exif makes width of height."""
    return orientation >= 5


def _part(scan: ScanFile) -> tuple[int, int, int, int]:
    """x, y, width and height of the item's part, or of the whole, in pixels of the picture as viewers show its file:
    upright as its orientation asks."""
    x, y, width, height = image_regions.upright(scan.area or (0.0, 0.0, 1.0, 1.0), scan.orientation)
    wide, high = (scan.height, scan.width) if _is_sideways(scan.orientation) else (scan.width, scan.height)
    return round(x * wide), round(y * high), max(round(width * wide), 1), max(round(height * high), 1)


def _size(scan: ScanFile) -> tuple[int, int]:
    """Width and height of the canvas in pixels: the part, turned as the keeper turned it."""
    _, _, across, down = _part(scan)
    return (down, across) if scan.turn in (90, 270) else (across, down)


def _annotation(person: PersonShown, canvas: str, scan: ScanFile, number: int) -> dict[str, Any]:
    """Who is shown in a marked part: `identifying` where it is sure, else `commenting` with how sure it is."""
    x, y, *size = image_regions.upright(image_regions.on_part(person.area, scan.area), scan.stands)
    wide, high = _size(scan)
    across, down = size or (0.0, 0.0)
    where = (x * wide, y * high, across * wide, down * high)
    shown = ",".join(str(max(round(value), int(at > 1))) for at, value in enumerate(where))  # a point is one pixel
    sure = "" if not person.unsure else f" ({'perhaps' if person.sure == 'guess' else 'probably'})"
    selector = {"type": "FragmentSelector", "conformsTo": MEDIA, "value": f"xywh={shown}"}
    return {
        "id": f"{canvas}/person/{number}",
        "type": "Annotation",
        "motivation": "commenting" if person.unsure else "identifying",
        "body": {"type": "TextualBody", "value": f"{person.name}{sure}", "format": "text/plain"},
        "target": {"type": "SpecificResource", "source": canvas, "selector": selector},
    }
