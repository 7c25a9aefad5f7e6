"""Where the XMP of a picture says that somebody is seen: a name, and a part of the stored picture, x, y, width and
height in 0..1 of it.

Regions of MWG Guidelines 2.0, 5.9 (`mwg-rs:Regions`: the middle of the part, and its size), and of the IPTC Photo
Metadata Standard 2025.1 (`ImageRegion`: the corner of a rectangle, or the middle of a circle). Programs count them on
the picture as it is stored, or as it is seen: where a file asks to be turned (Exif orientation) only the dimensions
that a region was applied to can tell, and one that is not sure is left out; the name stands elsewhere.
"""

from collections.abc import Iterator
from contextlib import suppress

from lxml import etree

from boxlore.core.crosswalk.image_regions import upright
from boxlore.formats.said_in_languages import Descriptions
from boxlore.formats.xmp_names import RDF, clark_name

Box = tuple[float, float, float, float]

WHOLE = 0.9
"""A part that is so wide and high says only that somebody is in the picture."""
_BACK = {1: 1, 2: 2, 3: 3, 4: 4, 5: 5, 6: 8, 7: 7, 8: 6}
"""The orientation that undoes another (CIPA DC-008, 4.6.4)."""

_HOLD = ("Regions", "ImageRegion", "RegionInfo")
"""What holds regions, in MWG's, IPTC's and Microsoft's namespaces."""


def has_regions(described: Descriptions) -> bool:
    """Whether a picture's XMP may say where somebody is seen."""
    return any(str(node.tag).endswith(_HOLD) for description in described for node in description)


def people_in_regions(described: Descriptions, size: tuple[int, int], orientation: int) -> list[tuple[str, Box]]:
    """Each name with the first part that it is given, of a stored picture of that size in pixels."""
    found: dict[str, Box] = {}
    further = _rectangles(described) if orientation == 1 else ()
    for name, box in (*_faces(described, size, orientation), *_persons(described, size, orientation), *further):
        x, y, wide, high = box
        right, low = min(x + wide, 1.0), min(y + high, 1.0)
        x, y = max(x, 0.0), max(y, 0.0)
        inside = 0 < right - x < WHOLE and 0 < low - y < WHOLE
        if name and inside:
            found.setdefault(name, (round(x, 5), round(y, 5), round(right - x, 5), round(low - y, 5)))
    return list(found.items())


def _faces(described: Descriptions, size: tuple[int, int], orientation: int) -> Iterator[tuple[str, Box]]:
    for regions in _elements(described, "mwg-rs:Regions"):
        applied = (_number(regions, "stDim:w"), _number(regions, "stDim:h"))
        for item in _items(regions, "mwg-rs:RegionList"):
            numbers = _numbers(item, "stArea:x", "stArea:y", "stArea:w", "stArea:h")
            unit, kind = _text(item, "stArea:unit") or "normalized", _text(item, "mwg-rs:Type") or "Face"
            if len(numbers) < 4 or unit != "normalized" or kind != "Face":
                continue
            x, y, wide, high = numbers
            if (stored := _stored((x - wide / 2, y - high / 2, wide, high), applied, size, orientation)) is not None:
                yield _text(item, "mwg-rs:Name"), stored


def _stored(
    box: Box, applied: tuple[float | None, float | None], size: tuple[int, int], orientation: int
) -> Box | None:
    """A part as it lies on the stored picture, None where nothing says on which picture it was counted."""
    if orientation == 1:
        return box
    width, height = applied
    if not width or not height or not all(size) or orientation < 5 or size[0] == size[1]:
        return None
    if (width > height) == (size[0] > size[1]):
        return box
    return upright(box, _BACK[orientation])  # type: ignore[return-value]  # four numbers give four


def _persons(described: Descriptions, size: tuple[int, int], orientation: int) -> Iterator[tuple[str, Box]]:
    for regions in _elements(described, "Iptc4xmpExt:ImageRegion") if orientation == 1 else ():
        for item in regions.iterfind(f"*/{{{RDF}}}li"):
            box = _boundary(item, size)
            people = list(_elements([item], "Iptc4xmpExt:PersonInImage", "Iptc4xmpExt:PersonInImageWDetails"))
            if box is None or len(people) != 1 or next(item.iter(clark_name("Iptc4xmpExt:rRole")), None) is not None:
                continue
            names = [_first_text(name) for name in people[0].iter(clark_name("Iptc4xmpExt:PersonName"))]
            names = names or [_first_text(name) for name in people[0].iterfind(f"*/{{{RDF}}}li")]
            if len(names) == 1:
                yield names[0], box


def _rectangles(described: Descriptions) -> Iterator[tuple[str, Box]]:
    """Regions of Microsoft, from memory: `Rectangle` is “x, y, width, height” in 0..1, beside `PersonDisplayName`."""
    for description in described:
        for item in description.iter(f"{{{RDF}}}li"):
            fields = {str(key).rpartition("}")[2]: str(value) for key, value in _fields_of(item)}
            with suppress(ValueError):
                x, y, wide, high = map(float, fields.get("Rectangle", "").split(","))
                yield " ".join(fields.get("PersonDisplayName", "").split()), (x, y, wide, high)


def _fields_of(item: etree._Element) -> Iterator[tuple[object, object]]:
    for node in (item, *item.iterfind(f"{{{RDF}}}Description")):
        yield from node.attrib.items()
        yield from ((child.tag, child.text or "") for child in node.iterchildren(etree.Element))


def _boundary(item: etree._Element, size: tuple[int, int]) -> Box | None:
    shape, unit = _text(item, "Iptc4xmpExt:rbShape"), _text(item, "Iptc4xmpExt:rbUnit")
    names = ("rbX", "rbY", "rbW", "rbH") if shape == "rectangle" else ("rbX", "rbY", "rbRx", "rbRx")
    numbers = _numbers(item, *(f"Iptc4xmpExt:{name}" for name in names))
    across, down = size if unit == "pixel" else (1, 1)
    if shape not in ("rectangle", "circle") or len(numbers) < 4 or not across or not down:
        return None
    x, y, wide, high = numbers
    if shape == "circle":  # its radius is in parts of the width
        high = wide if unit == "pixel" else wide * (size[0] / size[1] if all(size) else 1)
        x, y, wide, high = x - wide, y - high, 2 * wide, 2 * high
    return x / across, y / down, wide / across, high / down


def _elements(described: Descriptions, *names: str) -> Iterator[etree._Element]:
    for description in described:
        for name in names:
            yield from description.iter(clark_name(name))


def _items(regions: etree._Element, name: str) -> Iterator[etree._Element]:
    for array in regions.iter(clark_name(name)):
        yield from array.iterfind(f"*/{{{RDF}}}li")


def _text(item: etree._Element, name: str) -> str:
    """The first field of that name at any depth, written as an element or as an attribute."""
    tag = clark_name(name)
    for node in item.iter(etree.Element):
        if node.get(tag):
            return " ".join(str(node.get(tag)).split())
        if node.tag == tag and (text := _first_text(node)):
            return text
    return ""


def _first_text(node: etree._Element) -> str:
    return next((" ".join(str(text).split()) for text in node.itertext() if str(text).strip()), "")


def _numbers(item: etree._Element, *names: str) -> list[float]:
    """The fields of these names that are numbers."""
    return [number for number in (_number(item, name) for name in names) if number is not None]


def _number(item: etree._Element, name: str) -> float | None:
    with suppress(ValueError):
        return float(_text(item, name))
    return None
