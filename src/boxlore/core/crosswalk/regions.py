"""Who is where in a picture, as the regions that copies carry: each person of a record, one region.

IPTC Photo Metadata Standard 2025.1, Image Region; MWG Guidelines 2.0, 5.9, for older readers. Someone whose place
in the picture is not known has the whole of it; someone who is not in it the same, with a role that says so
(Family History Metadata Working Group, stage 1). Regions are in 0..1 of the stored picture.
"""

from collections.abc import Callable, Iterable, Mapping

from boxlore.core.crosswalk import captions
from boxlore.core.crosswalk.embedding import OUR_REGION, Alt, Bag, Struct, Text, XmpValue, alternative, bag
from boxlore.core.records.in_force import PersonShown, Record, ScanFile

ROLES = {"named": "named, not shown", "photographer": "photographer"}


def _region(one: PersonShown, scan: ScanFile, language: str, turned: int) -> Struct:
    area = upright(_on_part(one.area, scan.area), turned) if one.scan == scan.id and one.role == "person" else ()
    whole = ("0", "0", "1", "1")
    if len(area) == 4:
        box = tuple(f"{value:.5f}" for value in area)
        shape: tuple[tuple[str, XmpValue], ...] = _boundary("rectangle", box)
    elif len(area) == 2:
        shape = (
            ("Iptc4xmpExt:rbShape", Text("circle")),
            ("Iptc4xmpExt:rbUnit", Text("relative")),
            ("Iptc4xmpExt:rbX", Text(f"{area[0]:.5f}")),
            ("Iptc4xmpExt:rbY", Text(f"{area[1]:.5f}")),
            ("Iptc4xmpExt:rbRx", Text("0.05000")),
        )
    else:
        shape = _boundary("rectangle", whole)
    person = Struct(
        (
            ("Iptc4xmpExt:PersonName", alternative(one.name, language)),
            *_as_told(one, language),
            *((("Iptc4xmpExt:PersonId", bag(f"urn:uuid:{one.person}")),) if one.person else ()),
        )
    )
    role = ROLES.get(one.role, "")
    return Struct(
        (
            ("Iptc4xmpExt:RegionBoundary", Struct(shape)),
            ("Iptc4xmpExt:rId", Text(OUR_REGION + one.told.statement)),
            ("Iptc4xmpExt:Name", alternative(captions.name_of(one), language)),
            *((("Iptc4xmpExt:rRole", Bag((Struct((("Iptc4xmpExt:Name", _name(role)),)),))),) if role else ()),
            ("Iptc4xmpExt:PersonInImageWDetails", Bag((person,))),
        )
    )


def _as_told(one: PersonShown, language: str) -> tuple[tuple[str, XmpValue], ...]:
    """The words of whoever named the person, where they are not the name itself (“Aunt Liisu”)."""
    if one.told.words.strip() in ("", one.name):
        return ()
    words = alternative(one.told.words, one.told.language or language)
    return (("Iptc4xmpExt:PersonDescription", words),)


def _name(words: str) -> Alt:
    return Alt((("x-default", words), ("en", words)))


def _boundary(shape: str, box: Iterable[str]) -> tuple[tuple[str, XmpValue], ...]:
    sides = zip(("rbX", "rbY", "rbW", "rbH"), box, strict=True)
    return (
        ("Iptc4xmpExt:rbShape", Text(shape)),
        ("Iptc4xmpExt:rbUnit", Text("relative")),
        *((f"Iptc4xmpExt:{name}", Text(value)) for name, value in sides),
    )


_CORNERS: Mapping[int, Callable[[float, float], tuple[float, float]]] = {
    2: lambda x, y: (1 - x, y),
    3: lambda x, y: (1 - x, 1 - y),
    4: lambda x, y: (x, 1 - y),
    5: lambda x, y: (y, x),
    6: lambda x, y: (1 - y, x),
    7: lambda x, y: (1 - y, 1 - x),
    8: lambda x, y: (y, 1 - x),
}
"""Where a point of the stored picture lies in the upright one, by Exif orientation (DC-008, 4.6.4)."""


def upright(area: tuple[float, ...], turned: int) -> tuple[float, ...]:
    """A point or box on the stored picture as it lies on the picture turned upright."""
    corner = _CORNERS.get(turned)
    if corner is None or not area:
        return area
    if len(area) == 2:
        return corner(area[0], area[1])
    (left, top), (right, low) = corner(area[0], area[1]), corner(area[0] + area[2], area[1] + area[3])
    return (min(left, right), min(top, low), abs(right - left), abs(low - top))


def _on_part(area: tuple[float, ...], part: tuple[float, ...]) -> tuple[float, ...]:
    """A marker's place on a whole scan as its place on the part that was cut out of it."""
    if len(part) != 4 or not area:
        return area
    x, y = _inside((area[0] - part[0]) / part[2]), _inside((area[1] - part[1]) / part[3])
    if len(area) == 2:
        return (x, y)
    right, low = _inside((area[0] + area[2] - part[0]) / part[2]), _inside((area[1] + area[3] - part[1]) / part[3])
    return (x, y, right - x, low - y)


def _inside(value: float) -> float:
    return min(max(value, 0.0), 1.0)


def regions(record: Record, scan: ScanFile, language: str, turned: int = 1) -> XmpValue | None:
    if scan.side != "recto":
        return None
    regions = tuple(_region(one, scan, language, turned) for one in record.people)
    return Bag(regions) if regions else None


def faces(record: Record, scan: ScanFile, turned: int = 1) -> XmpValue | None:
    """The older form of regions, for readers that know no other (MWG Guidelines 2.0, 5.9)."""
    placed = [
        (one, upright(_on_part(one.area, scan.area), turned))
        for one in record.shown()
        if one.scan == scan.id and len(one.area) == 4
    ]
    if not placed:
        return None
    faces = tuple(_face(one, area) for one, area in placed)
    size = Struct(
        (
            ("stDim:w", Text(str(scan.width))),
            ("stDim:h", Text(str(scan.height))),
            ("stDim:unit", Text("pixel")),
        )
    )
    return Struct((("mwg-rs:AppliedToDimensions", size), ("mwg-rs:RegionList", Bag(faces))))


def _face(one: PersonShown, area: tuple[float, ...]) -> Struct:
    x, y, w, h = area
    where = zip(("x", "y", "w", "h"), (x + w / 2, y + h / 2, w, h), strict=True)
    sides = tuple((f"stArea:{name}", Text(f"{value:.5f}")) for name, value in where)
    return Struct(
        (
            ("mwg-rs:Name", Text(one.name)),
            ("mwg-rs:Type", Text("Face")),
            ("mwg-rs:Area", Struct((*sides, ("stArea:unit", Text("normalized"))))),
            ("mwg-rs:Extensions", Struct((("Iptc4xmpExt:rId", Text(OUR_REGION + one.told.statement)),))),
        )
    )
