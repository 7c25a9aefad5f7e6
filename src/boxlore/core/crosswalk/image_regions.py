"""Who is where in a picture, as image regions in a copy: one region for each person of a record.

IPTC Photo Metadata Standard 2025.1, Image Region; and MWG Guidelines 2.0, 5.9, for older readers. The region of a
person whose place in the picture is not known is the whole picture. So is that of someone who is not in it, with a
role that says so (Family History Metadata Working Group, stage 1).

An area is (x, y) of a point or (x, y, width, height) of a rectangle, in 0..1 of the picture; () if it is not known.
"""

from collections.abc import Callable, Iterable, Mapping

from boxlore.core.crosswalk import captions
from boxlore.core.crosswalk.captions import Style
from boxlore.core.crosswalk.metadata_values import OUR_REGION, Alt, Bag, Struct, Text, XmpValue, alternative, bag
from boxlore.core.fields.quads import to_straight
from boxlore.core.records.item_record import PersonShown, Record, ScanFile
from boxlore.core.wording.catalogue import ENGLISH, Say

ROLES = {"named": "named, not shown", "photographer": "photographer"}
"""Role of a person in a record -> the role in the region; people who are shown have none."""


def _region(shown: PersonShown, scan: ScanFile, language: str, turned: int, say: Say) -> Struct:
    """One person's region as an ImageRegion structure. A point becomes a circle of radius 0.05."""
    area = upright(on_part(shown.area, scan.part), turned) if shown.scan == scan.id and shown.role == "person" else ()
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
            ("Iptc4xmpExt:PersonName", alternative(shown.name, language)),
            *_as_told(shown, language),
            *((("Iptc4xmpExt:PersonId", bag(f"urn:uuid:{shown.person}")),) if shown.person else ()),
        )
    )
    role = ROLES.get(shown.role, "")
    return Struct(
        (
            ("Iptc4xmpExt:RegionBoundary", Struct(shape)),
            ("Iptc4xmpExt:rId", Text(OUR_REGION + shown.told.statement)),
            ("Iptc4xmpExt:Name", alternative(captions.name_of(shown, Style(say=say)), language)),
            *((("Iptc4xmpExt:rRole", Bag((Struct((("Iptc4xmpExt:Name", _name(role)),)),))),) if role else ()),
            ("Iptc4xmpExt:PersonInImageWDetails", Bag((person,))),
        )
    )


def _as_told(shown: PersonShown, language: str) -> tuple[tuple[str, XmpValue], ...]:
    """The words by which the person was named (“Aunt Liisu”), if they are not the name itself."""
    if shown.told.words.strip() in ("", shown.name):
        return ()
    words = alternative(shown.told.words, shown.told.language or language)
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
    """An area of the stored picture, as an area of the picture turned upright; `turned` is the Exif orientation."""
    corner = _CORNERS.get(turned)
    if corner is None or not area:
        return area
    if len(area) == 2:
        return corner(area[0], area[1])
    (left, top), (right, low) = corner(area[0], area[1]), corner(area[0] + area[2], area[1] + area[3])
    return (min(left, right), min(top, low), abs(right - left), abs(low - top))


def on_part(area: tuple[float, ...], part: tuple[float, ...]) -> tuple[float, ...]:
    """An area of a whole scan, as an area of the part that was cut out of it (and straightened, where it lay aslant);
    what lies outside is cut off."""
    if len(part) < 4 or not area:
        return area
    if len(area) == 2:
        x, y = to_straight(part, area[0], area[1])
        return (_inside(x), _inside(y))
    left, top, right, low = area[0], area[1], area[0] + area[2], area[1] + area[3]
    places = [to_straight(part, x, y) for x, y in ((left, top), (right, top), (right, low), (left, low))]
    xs, ys = zip(*places, strict=True)
    first, last = (_inside(min(xs)), _inside(min(ys))), (_inside(max(xs)), _inside(max(ys)))
    return (*first, last[0] - first[0], last[1] - first[1])


def _inside(value: float) -> float:
    return min(max(value, 0.0), 1.0)


def regions(record: Record, scan: ScanFile, language: str, turned: int = 1, say: Say = ENGLISH) -> XmpValue | None:
    """The regions of all people of a record (Iptc4xmpExt:ImageRegion); None for a back, or without people.

    `turned` is the Exif orientation from which the copy was turned upright (1: it was not turned).
    """
    if scan.side != "recto":
        return None
    regions = tuple(_region(shown, scan, language, turned, say) for shown in record.people if shown.is_there)
    return Bag(regions) if regions else None


def faces(record: Record, scan: ScanFile, turned: int = 1) -> XmpValue | None:
    """The rectangles of the people shown, in the older form of regions (mwg-rs:Regions, MWG Guidelines 2.0, 5.9)."""
    placed = [
        (shown, upright(on_part(shown.area, scan.part), turned))
        for shown in record.shown()
        if shown.scan == scan.id and len(shown.area) == 4
    ]
    if not placed:
        return None
    faces = tuple(_face(shown, area) for shown, area in placed)
    size = Struct(
        (
            ("stDim:w", Text(str(scan.width))),
            ("stDim:h", Text(str(scan.height))),
            ("stDim:unit", Text("pixel")),
        )
    )
    return Struct((("mwg-rs:AppliedToDimensions", size), ("mwg-rs:RegionList", Bag(faces))))


def _face(shown: PersonShown, area: tuple[float, ...]) -> Struct:
    """One person's rectangle in the older form, which gives its middle and not its corner."""
    x, y, w, h = area
    where = zip(("x", "y", "w", "h"), (x + w / 2, y + h / 2, w, h), strict=True)
    sides = tuple((f"stArea:{name}", Text(f"{value:.5f}")) for name, value in where)
    return Struct(
        (
            ("mwg-rs:Name", Text(shown.name)),
            ("mwg-rs:Type", Text("Face")),
            ("mwg-rs:Area", Struct((*sides, ("stArea:unit", Text("normalized"))))),
            ("mwg-rs:Extensions", Struct((("Iptc4xmpExt:rId", Text(OUR_REGION + shown.told.statement)),))),
        )
    )
