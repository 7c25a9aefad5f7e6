"""What a captioned copy carries: tables from our fields to XMP properties, IIM datasets and Exif tags.

IPTC Photo Metadata Standard 2025.1, IIM 4.2, XMP Specification Part 3, and the Family History Metadata Working
Group's stage 1. The EDTF of a date stands in AOCircaDateCreated and dcterms:created (our convention);
photoshop:DateCreated is a plain date, as precise as the date is known.
"""

import re
from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass

from boxlore.core.crosswalk import captions
from boxlore.core.crosswalk.captions import Style
from boxlore.core.crosswalk.image_regions import faces, regions
from boxlore.core.crosswalk.metadata_values import Alt, Bag, Embedding, Seq, Struct, Text, XmpValue, alternative, bag
from boxlore.core.crosswalk.rights_statements import rights_address
from boxlore.core.dates.edtf_values import plain_iso
from boxlore.core.dates.family_display import FamilyWay
from boxlore.core.people.who_is_where.reader import tells_a_name
from boxlore.core.places.reading import Place
from boxlore.core.records.item_record import ALTERED, PersonShown, Record, ScanFile, StatementView
from boxlore.core.statements import Sure
from boxlore.core.wording.catalogue import say_in

SOURCE_TYPES = {
    "negative": "http://cv.iptc.org/newscodes/digitalsourcetype/negativeFilm",
    "slide": "http://cv.iptc.org/newscodes/digitalsourcetype/positiveFilm",
}
PRINT_SOURCE = "http://cv.iptc.org/newscodes/digitalsourcetype/print"
"""IPTC NewsCodes, Digital Source Type."""


@dataclass(frozen=True, slots=True, kw_only=True)
class CaptionContext:
    """What all captions of one run share: facts of the collection, the languages, and how titles are written.

    `holder` is who holds the originals; `drop_text` takes all other textual metadata out of the copies.
    """

    collection: str
    collection_id: str = ""
    holder: str = ""
    language: str = "en"
    """Of our own words; where there is no catalogue for it they are English."""
    told_in: str = ""
    """Of told words that have none of their own; else that of our own words."""
    brackets: bool = False
    drop_text: bool = False
    dates: FamilyWay | None = None
    """How the family writes its dates."""
    made: str = ""
    """What was done to the picture, where the copy is no copy of its bytes (smaller, cut out, of another format)."""
    turned: int = 1
    """The Exif orientation that such a copy was turned upright from."""

    @property
    def style(self) -> Style:
        """How captions are written. Dates in words alone; those for machines are no words."""
        return Style(brackets=self.brackets, dates=self.dates, say=say_in(self.language))


Xmp = Callable[[Record, ScanFile, CaptionContext], XmpValue | None]


def _words(words: str, context: CaptionContext) -> Alt | None:
    return alternative(words, context.language) if words.strip() else None


def _text(words: str) -> Text | None:
    return Text(words) if words.strip() else None


def _in_its_language(view: StatementView, context: CaptionContext) -> Alt | None:
    return alternative(view.words, view.language or context.told_in or context.language) if view.words.strip() else None


def _title(record: Record, scan: ScanFile, context: CaptionContext) -> XmpValue | None:
    if (view := record.first("title")) is not None:
        return _in_its_language(view, context)
    return _words(captions.title(record, context.style), context)


def _description(record: Record, scan: ScanFile, context: CaptionContext) -> XmpValue | None:
    back, style = scan.side == "verso", context.style
    written = captions.inscription_line(record, style)
    words = captions.sentence(written) if back else captions.caption(record, "full", style)
    altered = style.say("Altered version (coloured or retouched).") if scan.role == ALTERED else ""
    return _words(" ".join(part for part in (altered, style.say("The back.") if back else "", words) if part), context)


def _alt(record: Record, scan: ScanFile, context: CaptionContext) -> XmpValue | None:
    style, words = context.style, captions.alt_text(record, context.style)
    if scan.side == "verso":
        words = style.say("The back of: {picture}", picture=words)
    if scan.role == ALTERED:
        words = style.say("Altered version of: {picture}", picture=words)
    return _words(words, context)


def _people(record: Record, scan: ScanFile, context: CaptionContext) -> XmpValue | None:
    names = (
        [captions.name_of(person, Style(say=context.style.say)) for person in _named(record)]
        if scan.side == "recto"
        else []
    )
    return bag(*names) if names else None


def _named(record: Record) -> list[PersonShown]:
    """Who is in the picture by name: of whom no record of a person tells, those whose words name somebody, and do not
    only say what somebody is (`the curate`)."""
    return [
        person
        for person in record.named_people
        if person.role == "person" and (person.person or tells_a_name(person.told.words))
    ]


def _keywords(record: Record, scan: ScanFile, context: CaptionContext) -> XmpValue | None:
    words = [view.words for view in record.all("keyword")] + [person.name for person in _named(record)]
    return bag(*dict.fromkeys(words)) if words else None


def _creator(record: Record, scan: ScanFile, context: CaptionContext) -> XmpValue | None:
    names = tuple(Text(person.name) for person in record.shown("photographer"))
    return Seq(names) if names else None


def plain_date(record: Record) -> str:
    """The date as precise as known (YYYY, YYYY-MM, YYYY-MM-DD), or empty."""
    return (plain_iso(record.date) if record.date else None) or ""


def sure_day(record: Record) -> str:
    """A full and sure day of the picture, or empty."""
    first = record.first("date")
    plain, date = plain_date(record), record.date
    full = len(plain) == 10 and date is not None and not date.qualified
    return plain if full and first is not None and first.sure is Sure.SURE else ""


def _caption_writer(record: Record, scan: ScanFile, context: CaptionContext) -> XmpValue | None:
    """The narrators whose words the caption rests on; the keeper, who typed them, is not named."""
    rests_on = [view for name in ("date", "place", "occasion", "story") for view in record.all(name)]
    rests_on += [*captions.own_views(record), *(person.told for person in record.people)]
    return _text("; ".join(dict.fromkeys(view.said_by for view in rests_on if view.said_by)))


_LINK = re.compile(r"https?://[^\s<>\"]+[^\s<>\".,;)]")
_FREE = ("creativecommons.org/publicdomain/", "rightsstatements.org/vocab/NoC")


def _rights_link(record: Record, scan: ScanFile, context: CaptionContext) -> XmpValue | None:
    link = _LINK.search(rights_address(record.words("rights")))
    return Text(link[0]) if link else None


def _marked(record: Record, scan: ScanFile, context: CaptionContext) -> XmpValue | None:
    """Whether the picture is in copyright, if the words about rights say so (XMP Specification Part 2, 1.2.3)."""
    words = rights_address(record.words("rights"))
    if any(free in words for free in _FREE):
        return Text("False")
    held = "©" in words or "/vocab/InC" in words or "creativecommons.org/licenses/" in words
    return Text("True") if held else None


def _location(record: Record, scan: ScanFile, context: CaptionContext) -> XmpValue | None:
    view = record.first("place")
    if view is None:
        return None
    fields: list[tuple[str, XmpValue]] = [
        ("Iptc4xmpExt:LocationName", alternative(view.words, view.language or context.told_in or context.language))
    ]
    if record.place is not None:
        fields += _parts_of(record.place)
    return Bag((Struct(tuple(fields)),))


def _parts_of(place: Place) -> Iterator[tuple[str, XmpValue]]:
    """What is known of a place, as fields of the Location structure of the IPTC Photo Metadata Standard."""
    for name, words in (
        ("Sublocation", place.sublocation),
        ("City", place.city),
        ("ProvinceState", place.admin1),
        ("CountryCode", place.country_code),
        ("CountryName", place.country_then or place.country),
    ):
        if words:
            yield f"Iptc4xmpExt:{name}", Text(words)
    if place.link:
        yield "Iptc4xmpExt:LocationId", bag(place.link)
    if place.point is not None:
        yield "exif:GPSLatitude", Text(f"{place.lat}")
        yield "exif:GPSLongitude", Text(f"{place.lon}")


def inventory_number(record: Record) -> str:
    """`TRA-0042; Box 3 / Folder 12 / Item 4`: the number, and where the item is kept now."""
    return "; ".join(part for part in (record.number, record.mark.long if record.mark else "") if part)


def _artwork(record: Record, scan: ScanFile, context: CaptionContext) -> XmpValue | None:
    """The print itself, as the object that the picture is of."""
    fields: list[tuple[str, XmpValue]] = [
        ("Iptc4xmpExt:AOTitle", _title(record, scan, context) or alternative(record.number, context.language)),
        ("Iptc4xmpExt:AOSourceInvNo", Text(inventory_number(record))),
    ]
    if context.holder:
        fields.append(("Iptc4xmpExt:AOSource", Text(context.holder)))
    if record.edtf:
        fields.append(("Iptc4xmpExt:AOCircaDateCreated", Text(record.edtf)))
    fields.append(("Iptc4xmpExt:AOPhysicalDescription", alternative(_physical(record), "en")))
    if rights := record.words("rights"):
        fields.append(("Iptc4xmpExt:AOCopyrightNotice", Text(rights)))
    return Bag((Struct(tuple(fields)),))


def _physical(record: Record) -> str:
    size = " × ".join(f"{value:g}" for value in record.size_mm)
    parts = (record.words("process") or captions.nature_of(record), f"{size} mm" if size else "")
    return ", ".join(part for part in parts if part)


def source_words(record: Record, context: CaptionContext) -> str:
    """One line by which the original can be found: holder, collection, number, mark, the archive's references."""
    references = [view.words.strip() for view in record.all("archive_reference")]
    return "; ".join(
        part for part in (context.holder, context.collection, inventory_number(record), *references) if part
    )


def _legacy(part: Callable[[Place], str]) -> Xmp:
    return lambda record, scan, context: _text(part(record.place)) if record.place else None


def _field(name: str) -> Xmp:
    def make(record: Record, scan: ScanFile, context: CaptionContext) -> XmpValue | None:
        view = record.first(name)
        return _in_its_language(view, context) if view is not None else None

    return make


def _collection(record: Record, scan: ScanFile, context: CaptionContext) -> XmpValue | None:
    link = (("mwg-coll:CollectionURI", Text(f"urn:uuid:{context.collection_id}")),) if context.collection_id else ()
    return Bag((Struct((("mwg-coll:CollectionName", Text(context.collection)), *link)),))


def _history(record: Record, scan: ScanFile, context: CaptionContext) -> XmpValue | None:
    """What was done to the picture on the way to this copy, in words; nothing for a picture left as it is."""
    if not context.made:
        return None
    fields = (("stEvt:action", Text("converted")), ("stEvt:parameters", Text(context.made)))
    return Seq((Struct((*fields, ("stEvt:softwareAgent", Text(TOOL)))),))


def _source_type(record: Record, scan: ScanFile, context: CaptionContext) -> XmpValue | None:
    """The kind of original that was scanned; None for an altered version, for how it was altered is not known."""
    return None if scan.role == ALTERED else Text(SOURCE_TYPES.get(record.kind, PRINT_SOURCE))


XMP_ROWS: tuple[tuple[str, Xmp], ...] = (
    ("dc:title", _title),
    ("dc:description", _description),
    ("Iptc4xmpCore:AltTextAccessibility", _alt),
    ("Iptc4xmpExt:PersonInImage", _people),
    (
        "Iptc4xmpExt:ImageRegion",
        lambda record, scan, context: regions(
            record, scan, context.told_in or context.language, context.turned, context.style.say
        ),
    ),
    ("mwg-rs:Regions", lambda record, scan, context: faces(record, scan, context.turned)),
    ("photoshop:DateCreated", lambda record, scan, context: _text(plain_date(record))),
    ("dcterms:created", lambda record, scan, context: _text(record.edtf)),
    ("Iptc4xmpExt:LocationShown", _location),
    ("Iptc4xmpCore:Location", lambda record, scan, context: _text(record.words("place"))),
    ("photoshop:City", _legacy(lambda place: place.city)),
    ("photoshop:State", _legacy(lambda place: place.admin1)),
    ("photoshop:Country", _legacy(lambda place: place.country)),
    ("Iptc4xmpCore:CountryCode", _legacy(lambda place: place.country_code)),
    ("Iptc4xmpExt:Event", _field("occasion")),
    ("dc:subject", _keywords),
    ("dc:creator", _creator),
    ("photoshop:Credit", lambda record, scan, context: _text(context.holder)),
    ("photoshop:Source", lambda record, scan, context: _text(context.collection)),
    ("dc:rights", _field("rights")),
    ("xmpRights:UsageTerms", _field("rights")),
    ("xmpRights:WebStatement", _rights_link),
    ("xmpRights:Marked", _marked),
    ("photoshop:CaptionWriter", _caption_writer),
    ("photoshop:Instructions", lambda record, scan, context: _text(record.words("care"))),
    ("mwg-coll:Collections", _collection),
    ("Iptc4xmpExt:ArtworkOrObject", _artwork),
    ("dc:source", lambda record, scan, context: _text(source_words(record, context))),
    ("dc:identifier", lambda record, scan, context: _text(record.number)),
    ("Iptc4xmpExt:DigitalSourceType", _source_type),
    ("Iptc4xmpExt:DigImageGUID", lambda record, scan, context: Text(f"urn:uuid:{scan.id}")),
    ("xmpMM:History", _history),
    ("xmp:MetadataDate", lambda record, scan, context: _text(record.changed_at)),
)
"""Property -> the function that gives its value. None writes nothing and keeps what the scan's file says, except for
the properties of NOT_THE_PICTURES, which are then taken out."""

NOT_THE_PICTURES = frozenset(
    """photoshop:DateCreated dcterms:created Iptc4xmpExt:LocationShown Iptc4xmpCore:Location photoshop:City
    photoshop:State photoshop:Country Iptc4xmpCore:CountryCode Iptc4xmpExt:LocationCreated exif:DateTimeOriginal
    exif:GPSVersionID exif:GPSLatitude exif:GPSLongitude exif:GPSAltitude exif:GPSAltitudeRef exif:GPSTimeStamp
    exif:GPSMapDatum exif:GPSImgDirection exif:GPSImgDirectionRef exif:GPSProcessingMethod exif:GPSAreaInformation
    exif:GPSDestLatitude exif:GPSDestLongitude exif:GPSHPositioningError exif:GPSSpeed exif:GPSSpeedRef
    exif:GPSTrack exif:GPSTrackRef exif:GPSDestBearing exif:GPSDestBearingRef exif:GPSDateStamp""".split()
)
"""Properties of date and place. In a scan's file they say when and where it was scanned, which is no fact about the
picture and may be somebody's home; so they are never kept from the file."""

TOOL = "Boxlore"

ALPHA_3: Mapping[str, str] = {
    "EE": "EST", "NZ": "NZL", "IE": "IRL", "GB": "GBR", "RU": "RUS", "DE": "DEU", "PL": "POL", "US": "USA", "CA": "CAN",
    "AU": "AUS", "FI": "FIN", "SE": "SWE", "NO": "NOR", "DK": "DNK", "LV": "LVA", "LT": "LTU", "UA": "UKR", "FR": "FRA",
    "IT": "ITA", "ES": "ESP", "AT": "AUT", "CH": "CHE", "CZ": "CZE", "SK": "SVK", "HU": "HUN", "NL": "NLD", "BE": "BEL",
}  # fmt: skip
"""ISO 3166-1 alpha-2 -> alpha-3, for IIM 2:100, which takes three letters; for other countries it is left out."""

Texts = Callable[[XmpValue], Iterable[str]]


def _texts(value: XmpValue) -> tuple[str, ...]:
    """A value as plain texts: the default of an alternative, the members of an array; () for a structure."""
    if isinstance(value, Text):
        return (value.words,)
    if isinstance(value, Alt):
        return (value.words[0][1],)
    return tuple(part.words for part in value.items if isinstance(part, Text)) if isinstance(value, (Bag, Seq)) else ()


def _eight_digits(value: XmpValue) -> tuple[str, ...]:
    """A plain date as CCYYMMDD, with 00 for what is not known (IIM 4.2, 2:55)."""
    return tuple(words.replace("-", "").ljust(8, "0") for words in _texts(value) if len(words) >= 4)


IIM_ROWS: tuple[tuple[tuple[int, int], str, Texts], ...] = (
    ((2, 5), "dc:title", _texts),
    ((2, 25), "dc:subject", _texts),
    ((2, 40), "photoshop:Instructions", _texts),
    ((2, 55), "photoshop:DateCreated", _eight_digits),
    ((2, 80), "dc:creator", lambda value: _texts(value)[:1]),
    ((2, 90), "photoshop:City", _texts),
    ((2, 92), "Iptc4xmpCore:Location", _texts),
    ((2, 95), "photoshop:State", _texts),
    ((2, 100), "Iptc4xmpCore:CountryCode", lambda value: [ALPHA_3.get(code, "") for code in _texts(value)]),
    ((2, 101), "photoshop:Country", _texts),
    ((2, 110), "photoshop:Credit", _texts),
    ((2, 115), "photoshop:Source", _texts),
    ((2, 116), "dc:rights", _texts),
    ((2, 120), "dc:description", _texts),
    ((2, 122), "photoshop:CaptionWriter", _texts),
)
"""(record, dataset), the property that says the same, and how its texts are taken from that property's value; so
readers of IIM and of XMP are told the same."""

TIME_CREATED = (2, 60)
"""Taken out: a picture's time is not told to the second, and that of the scan goes with its date."""

EXIF_ROWS: tuple[tuple[int, str, str], ...] = (
    (0x010E, "dc:description", " "),
    (0x013B, "dc:creator", "; "),
    (0x8298, "dc:rights", " "),
)
"""Exif tag, the property whose texts it takes, and what stands between several of them (DC-008, 4.6.4)."""


def embedding_of(record: Record, scan: ScanFile, context: CaptionContext) -> Embedding:
    """Everything that the copy of one scan carries. `record` must come from `core.records.audience.Recipient.seen`."""
    values = {name: make(record, scan, context) for name, make in XMP_ROWS}
    filled = {name: value for name, value in values.items() if value is not None}
    empty = [name for name, value in values.items() if value is None]
    datasets = [
        (key, name, tuple(filter(None, texts(filled[name]) if name in filled else ()))) for key, name, texts in IIM_ROWS
    ]
    exif = [(tag, between.join(_texts(filled[name]))) for tag, name, between in EXIF_ROWS if name in filled]
    return Embedding(
        xmp=tuple(filled.items()),
        absent=(("xmp:CreatorTool", Text(TOOL)),),
        remove=(*(name for name in empty if name in NOT_THE_PICTURES), *sorted(NOT_THE_PICTURES - values.keys())),
        iim=(*((key, texts) for key, name, texts in datasets if texts or name in NOT_THE_PICTURES), (TIME_CREATED, ())),
        exif=tuple((tag, words) for tag, words in exif if words),
        original_day=sure_day(record),
        unfilled=tuple(name for name in empty if name not in NOT_THE_PICTURES),
        unfilled_iim=tuple(key for key, name, texts in datasets if not texts and name not in NOT_THE_PICTURES),
        drop_text=context.drop_text,
    )
