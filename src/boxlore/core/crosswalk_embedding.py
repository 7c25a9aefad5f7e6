"""What a copy carries: each of our fields to its XMP property, IIM dataset and Exif tag, one row a field.

IPTC Photo Metadata Standard 2025.1, IIM 4.2, XMP Specification Part 3, and the Family History Metadata Working
Group's stage 1. EDTF stands in AOCircaDateCreated and dcterms:created (our convention); photoshop:DateCreated
is as precise as the date is known.
"""

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass

from boxlore.core import captions
from boxlore.core.edtf import parse
from boxlore.core.edtf_values import plain_iso
from boxlore.core.embedding import Alt, Bag, Embedding, Seq, Struct, Text, Value, alternative, bag
from boxlore.core.record import Record, ScanFile, Shown
from boxlore.core.statements import Sure

SOURCE_TYPES = {
    "negative": "http://cv.iptc.org/newscodes/digitalsourcetype/negativeFilm",
    "slide": "http://cv.iptc.org/newscodes/digitalsourcetype/positiveFilm",
}
PRINT_SOURCE = "http://cv.iptc.org/newscodes/digitalsourcetype/print"
"""IPTC NewsCodes, Digital Source Type."""

ROLES = {"named": "named, not shown", "photographer": "photographer"}


@dataclass(frozen=True, slots=True, kw_only=True)
class Source:
    """What the captions of one run share: the collection's facts, the language, the newest change."""

    collection: str
    holder: str = ""
    language: str = "en"
    brackets: bool = False
    drop_text: bool = False


Xmp = Callable[[Record, ScanFile, Source], Value | None]


def _words(words: str, source: Source) -> Alt | None:
    return alternative(words, source.language) if words.strip() else None


def _text(words: str) -> Text | None:
    return Text(words) if words.strip() else None


def _title(record: Record, scan: ScanFile, source: Source) -> Value | None:
    return _words(captions.title(record, brackets=source.brackets), source)


def _description(record: Record, scan: ScanFile, source: Source) -> Value | None:
    if scan.side == "verso":
        written = captions.inscription_line(record)
        return _words(" ".join(part for part in ("The back.", captions.sentence(written)) if part), source)
    return _words(captions.caption(record, "full"), source)


def _alt(record: Record, scan: ScanFile, source: Source) -> Value | None:
    side = "The back of: " if scan.side == "verso" else ""
    return _words(side + captions.alt_text(record), source)


def _people(record: Record, scan: ScanFile, source: Source) -> Value | None:
    names = [captions.name_of(one) for one in record.shown()] if scan.side == "recto" else []
    return bag(*names) if names else None


def _keywords(record: Record, scan: ScanFile, source: Source) -> Value | None:
    words = [told.words for told in record.all("keyword")] + [one.name for one in record.shown()]
    return bag(*dict.fromkeys(words)) if words else None


def _creator(record: Record, scan: ScanFile, source: Source) -> Value | None:
    names = tuple(Text(one.name) for one in record.shown("photographer"))
    return Seq(names) if names else None


def plain_date(record: Record) -> str:
    """The date as precise as known (YYYY, YYYY-MM, YYYY-MM-DD), or empty."""
    return (plain_iso(parse(record.edtf)) or "") if record.edtf else ""


def sure_day(record: Record) -> str:
    """A full and sure day of the picture, or empty."""
    first = record.first("date")
    plain = plain_date(record)
    full = len(plain) == 10 and not parse(record.edtf).qualified
    return plain if full and first is not None and first.sure is Sure.SURE else ""


def _region(one: Shown, scan: ScanFile, source: Source) -> Struct:
    area = _on_part(one.area, scan.area) if one.scan == scan.id and one.role == "person" else ()
    whole = ("0", "0", "1", "1")
    if len(area) == 4:
        box = tuple(f"{value:.5f}" for value in area)
        shape: tuple[tuple[str, Value], ...] = _boundary("rectangle", box)
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
            ("Iptc4xmpExt:PersonName", alternative(one.name, source.language)),
            *((("Iptc4xmpExt:PersonId", bag(f"urn:uuid:{one.person}")),) if one.person else ()),
        )
    )
    role = ROLES.get(one.role, "")
    return Struct(
        (
            ("Iptc4xmpExt:RegionBoundary", Struct(shape)),
            ("Iptc4xmpExt:rId", Text(one.told.statement)),
            ("Iptc4xmpExt:Name", alternative(captions.name_of(one), source.language)),
            *((("Iptc4xmpExt:rRole", Bag((Struct((("Iptc4xmpExt:Name", _name(role)),)),))),) if role else ()),
            ("Iptc4xmpExt:PersonInImageWDetails", Bag((person,))),
        )
    )


def _name(words: str) -> Alt:
    return Alt((("x-default", words), ("en", words)))


def _boundary(shape: str, box: Iterable[str]) -> tuple[tuple[str, Value], ...]:
    sides = zip(("rbX", "rbY", "rbW", "rbH"), box, strict=True)
    return (
        ("Iptc4xmpExt:rbShape", Text(shape)),
        ("Iptc4xmpExt:rbUnit", Text("relative")),
        *((f"Iptc4xmpExt:{name}", Text(value)) for name, value in sides),
    )


def _on_part(area: tuple[float, ...], part: tuple[float, ...]) -> tuple[float, ...]:
    """A marker's place on a whole scan as its place on the part that was cut out of it."""
    if len(part) != 4 or not area:
        return area
    x, y = (area[0] - part[0]) / part[2], (area[1] - part[1]) / part[3]
    return (x, y) if len(area) == 2 else (x, y, area[2] / part[2], area[3] / part[3])


def _regions(record: Record, scan: ScanFile, source: Source) -> Value | None:
    if scan.side != "recto":
        return None
    regions = tuple(_region(one, scan, source) for one in record.people)
    return Bag(regions) if regions else None


def _faces(record: Record, scan: ScanFile, source: Source) -> Value | None:
    """The older form of regions, for readers that know no other (MWG Guidelines 2.0, 5.9)."""
    placed = [
        (one, _on_part(one.area, scan.area)) for one in record.shown() if one.scan == scan.id and len(one.area) == 4
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


def _face(one: Shown, area: tuple[float, ...]) -> Struct:
    x, y, w, h = area
    where = zip(("x", "y", "w", "h"), (x + w / 2, y + h / 2, w, h), strict=True)
    sides = tuple((f"stArea:{name}", Text(f"{value:.5f}")) for name, value in where)
    return Struct(
        (
            ("mwg-rs:Name", Text(one.name)),
            ("mwg-rs:Type", Text("Face")),
            ("mwg-rs:Area", Struct((*sides, ("stArea:unit", Text("normalized"))))),
        )
    )


def place_then(record: Record) -> Mapping[str, object]:
    """The first choice of the place reading in force, or an empty mapping."""
    choices = record.place.get("choices")
    first = choices[0] if isinstance(choices, list) and choices else {}
    return first if isinstance(first, dict) else {}


def _of(place: Mapping[str, object], name: str) -> str:
    return str(place.get(name) or "")


def _location(record: Record, scan: ScanFile, source: Source) -> Value | None:
    told = record.first("place")
    if told is None:
        return None
    place = place_then(record)
    fields: list[tuple[str, Value]] = [("Iptc4xmpExt:LocationName", alternative(told.words, source.language))]
    for name, key in (
        ("Sublocation", "sublocation"),
        ("City", "city"),
        ("ProvinceState", "admin1"),
        ("CountryCode", "country_code"),
    ):
        if words := _of(place, key):
            fields.append((f"Iptc4xmpExt:{name}", Text(words)))
    if country := _of(place, "country_then") or _of(place, "country"):
        fields.append(("Iptc4xmpExt:CountryName", Text(country)))
    if place.get("geonames"):
        fields.append(("Iptc4xmpExt:LocationId", bag(f"https://sws.geonames.org/{place['geonames']}/")))
    if place.get("lat") is not None:
        fields += [
            ("exif:GPSLatitude", Text(f"{place['lat']}")),
            ("exif:GPSLongitude", Text(f"{place['lon']}")),
        ]
    return Bag((Struct(tuple(fields)),))


def inventory_number(record: Record) -> str:
    """`TRA-0042; Box 3 / Folder 12 / Item 4`: the number, and where the item is kept now."""
    return "; ".join(part for part in (record.number, record.mark.long if record.mark else "") if part)


def _artwork(record: Record, scan: ScanFile, source: Source) -> Value | None:
    """The print itself, as the object that the picture is of."""
    fields: list[tuple[str, Value]] = [
        ("Iptc4xmpExt:AOTitle", alternative(captions.title(record, brackets=source.brackets), source.language)),
        ("Iptc4xmpExt:AOSourceInvNo", Text(inventory_number(record))),
    ]
    if source.holder:
        fields.append(("Iptc4xmpExt:AOSource", Text(source.holder)))
    if record.edtf:
        fields.append(("Iptc4xmpExt:AOCircaDateCreated", Text(record.edtf)))
    if described := _physical(record):
        fields.append(("Iptc4xmpExt:AOPhysicalDescription", alternative(described, "en")))
    return Bag((Struct(tuple(fields)),))


def _physical(record: Record) -> str:
    size = " × ".join(f"{value:g}" for value in record.size_mm)
    parts = (record.words("process") or captions.NATURE.get(record.kind, record.kind), f"{size} mm" if size else "")
    return ", ".join(part for part in parts if part)


def source_words(record: Record, source: Source) -> str:
    """One line that finds the original: holder, collection, number, mark."""
    return "; ".join(part for part in (source.holder, source.collection, inventory_number(record)) if part)


def _legacy(key: str) -> Xmp:
    return lambda record, scan, source: _text(_of(place_then(record), key))


def _field(name: str) -> Xmp:
    return lambda record, scan, source: _words(record.words(name), source)


XMP_ROWS: tuple[tuple[str, Xmp], ...] = (
    ("dc:title", _title),
    ("dc:description", _description),
    ("Iptc4xmpCore:AltTextAccessibility", _alt),
    ("Iptc4xmpExt:PersonInImage", _people),
    ("Iptc4xmpExt:ImageRegion", _regions),
    ("mwg-rs:Regions", _faces),
    ("photoshop:DateCreated", lambda record, scan, source: _text(plain_date(record))),
    ("dcterms:created", lambda record, scan, source: _text(record.edtf)),
    ("Iptc4xmpExt:LocationShown", _location),
    ("Iptc4xmpCore:Location", lambda record, scan, source: _text(record.words("place"))),
    ("photoshop:City", _legacy("city")),
    ("photoshop:State", _legacy("admin1")),
    ("photoshop:Country", _legacy("country")),
    ("Iptc4xmpCore:CountryCode", _legacy("country_code")),
    ("Iptc4xmpExt:Event", _field("occasion")),
    ("dc:subject", _keywords),
    ("dc:creator", _creator),
    ("photoshop:Credit", lambda record, scan, source: _text(source.holder)),
    ("photoshop:Source", lambda record, scan, source: _text(source.collection)),
    ("dc:rights", _field("rights")),
    (
        "mwg-coll:Collections",
        lambda record, scan, source: Bag((Struct((("mwg-coll:CollectionName", Text(source.collection)),)),)),
    ),
    ("Iptc4xmpExt:ArtworkOrObject", _artwork),
    ("dc:source", lambda record, scan, source: _text(source_words(record, source))),
    ("dc:identifier", lambda record, scan, source: _text(record.number)),
    (
        "Iptc4xmpExt:DigitalSourceType",
        lambda record, scan, source: Text(SOURCE_TYPES.get(record.kind, PRINT_SOURCE)),
    ),
    ("Iptc4xmpExt:DigImageGUID", lambda record, scan, source: Text(f"urn:uuid:{scan.id}")),
    ("xmp:MetadataDate", lambda record, scan, source: _text(record.changed_at)),
)
"""Our field's property and its value; a value of None takes the property out of the copy."""

ALPHA_3: Mapping[str, str] = {
    "EE": "EST", "NZ": "NZL", "IE": "IRL", "GB": "GBR", "RU": "RUS", "DE": "DEU", "PL": "POL", "US": "USA", "CA": "CAN",
    "AU": "AUS", "FI": "FIN", "SE": "SWE", "NO": "NOR", "DK": "DNK", "LV": "LVA", "LT": "LTU", "UA": "UKR", "FR": "FRA",
    "IT": "ITA", "ES": "ESP", "AT": "AUT", "CH": "CHE", "CZ": "CZE", "SK": "SVK", "HU": "HUN", "NL": "NLD", "BE": "BEL",
}  # fmt: skip
"""ISO 3166-1 alpha-2 → alpha-3 (IIM 2:100 takes three letters); other countries leave 2:100 out."""

IIM_ROWS: tuple[tuple[tuple[int, int], Callable[[Record, Source], Iterable[str]]], ...] = (
    ((2, 5), lambda record, source: [captions.title(record, brackets=source.brackets)]),
    ((2, 25), lambda record, source: [told.words for told in record.all("keyword")]),
    ((2, 55), lambda record, source: [plain_date(record).replace("-", "").ljust(8, "0")] if plain_date(record) else []),
    ((2, 60), lambda record, source: []),
    ((2, 80), lambda record, source: [one.name for one in record.shown("photographer")[:1]]),
    ((2, 90), lambda record, source: [_of(place_then(record), "city")]),
    ((2, 92), lambda record, source: [record.words("place")]),
    ((2, 95), lambda record, source: [_of(place_then(record), "admin1")]),
    ((2, 100), lambda record, source: [ALPHA_3.get(_of(place_then(record), "country_code"), "")]),
    ((2, 101), lambda record, source: [_of(place_then(record), "country")]),
    ((2, 110), lambda record, source: [source.holder]),
    ((2, 115), lambda record, source: [source.collection]),
    ((2, 116), lambda record, source: [record.words("rights")]),
    ((2, 120), lambda record, source: [captions.caption(record, "full")]),
)


def embedding_of(record: Record, scan: ScanFile, source: Source) -> Embedding:
    """Everything the copy of one scan carries. `record` has been seen by `core.audience.visible`."""
    values = [(name, make(record, scan, source)) for name, make in XMP_ROWS]
    filled = tuple((name, value) for name, value in values if value is not None)
    empty = tuple(name for name, value in values if value is None)
    iim = tuple((key, tuple(text for text in make(record, source) if text)) for key, make in IIM_ROWS)
    described = captions.caption(record, "full")
    return Embedding(
        xmp=filled,
        remove=(*empty, "exif:GPSLatitude", "exif:GPSLongitude", "exif:DateTimeOriginal"),
        iim=iim,
        exif=((0x010E, described),) if described else (),
        original_day=sure_day(record),
        drop_text=source.drop_text,
    )
