"""The one table from our fields to what an archive receives: simple Dublin Core and DCMI Metadata Terms.

A row gives a field's element in each and its values. Dublin Core Metadata Element Set 1.1 (ISO 15836) as the
OAI-PMH 2.0 oai_dc format carries it; DCMI Metadata Terms (2020). To add a field to the exports, add a row.
"""

from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from datetime import date

from boxlore.core import captions
from boxlore.core.crosswalk_embedding import inventory_number, place_then, plain_date
from boxlore.core.edtf import parse
from boxlore.core.edtf_values import iso_range
from boxlore.core.places_text import Place, PlaceReading, dcmi_box, dcmi_point, from_json, full_name
from boxlore.core.record import Record
from boxlore.core.statements import Said

CNE = "http://rightsstatements.org/vocab/CNE/1.0/"
"""Copyright Not Evaluated: the neutral statement that the archive replaces (rightsstatements.org)."""

AAT = "http://vocab.getty.edu/aat/"
PROCESSES: dict[str, str] = {
    "gelatin silver print": "300128695",
    "tintype": "300134759",
    "cabinet card": "300127131",
    "cabinet photograph": "300127131",
    "carte-de-visite": "300127141",
    "snapshot": "300134745",
    "negative": "300127173",
    "slide": "300128371",
    "postcard": "300026819",
    "picture postcard": "300026819",
    "stereograph": "300127197",
    "photographic print": "300127104",
}
"""Terms of the Art & Architecture Thesaurus, through library crosswalks; recheck at Getty before a release."""

STILL = ("print", "negative", "slide", "postcard", "card", "album-page")


@dataclass(frozen=True, slots=True, kw_only=True)
class CollectionFacts:
    """What every record of an export shares. `on_day` is the day the export carries."""

    id: str
    title: str
    holder: str = ""
    language: str = "en"
    rights: str = CNE
    on_day: date
    brackets: bool = False


@dataclass(frozen=True, slots=True)
class Value:
    """One value: its words with a language, or typed by an encoding scheme (`dcterms:W3CDTF`)."""

    words: str
    language: str = ""
    scheme: str = ""


Values = Callable[[Record, CollectionFacts], Iterable[Value]]


@dataclass(frozen=True, slots=True)
class Row:
    """One field: its element in oai_dc and in dcterms (empty for none), and its values for each."""

    field: str
    oai_dc: str
    dcterms: str
    values: Values
    detailed: Values | None = None
    """Values for dcterms, where they differ."""


def _title(record: Record, facts: CollectionFacts) -> Iterator[Value]:
    told = record.first("title")
    language = told.language if told else facts.language
    yield Value(captions.title(record, brackets=facts.brackets), language)


def _identifier(record: Record, facts: CollectionFacts) -> Iterator[Value]:
    yield Value(record.number)
    yield Value(f"urn:uuid:{record.id}")


def _creators(record: Record, facts: CollectionFacts) -> Iterator[Value]:
    for one in record.shown("photographer"):
        yield Value(captions.name_of(one))


def _subjects(record: Record, facts: CollectionFacts) -> Iterator[Value]:
    for one in (*record.shown(), *record.shown("named")):
        yield Value(captions.name_of(one))
    for told in record.all("keyword"):
        yield Value(told.words, told.language)


def _descriptions(record: Record, facts: CollectionFacts) -> Iterator[Value]:
    if words := captions.caption(record, "sheet"):
        yield Value(words, facts.language)
    for told in record.all("story"):
        yield Value(told.words, told.language)
    if written := captions.inscription_line(record):
        yield Value(written)
    for told in record.all("date"):
        yield Value(f"Date as told{_by(told.said_by, told.source.said)}: “{told.words}” ({told.sure})")
    if record.conflicts:
        yield Value("Sources disagree: " + "; ".join(sorted({one.why for one in record.conflicts})), "en")
    if record.found_in:
        yield Value(f"Found in: {record.found_in}", facts.language)
    if record.withheld:
        yield Value(f"{record.withheld} statements are withheld from this record.", "en")


def _by(name: str, said: Said) -> str:
    return f" by {name}" if name else f" ({said})"


def one_date(record: Record) -> str:
    """One date for simple Dublin Core: a plain date, an ISO range, else the EDTF."""
    if not record.edtf:
        return ""
    edtf = parse(record.edtf)
    return plain_date(record) or iso_range(edtf) or record.edtf


def _date(record: Record, facts: CollectionFacts) -> Iterator[Value]:
    if words := one_date(record):
        yield Value(words)


def _created(record: Record, facts: CollectionFacts) -> Iterator[Value]:
    """A plain date typed W3CDTF only if it is unqualified; everything else as EDTF, which has no type in the XSDs."""
    if record.edtf:
        plain = plain_date(record)
        exact = plain and plain == record.edtf
        yield Value(record.edtf, scheme="dcterms:W3CDTF" if exact else "")


def _reading(record: Record) -> PlaceReading | None:
    return from_json(dict(record.place)) if record.place else None


def _coverage(record: Record, facts: CollectionFacts) -> Iterator[Value]:
    for told in record.all("place"):
        yield Value(told.words, told.language)
    reading = _reading(record)
    if reading is not None and reading.choices:
        yield Value(full_name(reading.choices[0]), "en")


def _spatial(record: Record, facts: CollectionFacts) -> Iterator[Value]:
    yield from _coverage(record, facts)
    reading = _reading(record)
    place: Place | None = reading.choices[0] if reading is not None and reading.choices else None
    if place is None:
        return
    if place.called_then and place.called_then != place.city:
        then = ", ".join(part for part in (place.called_then, place.country_then) if part)
        yield Value(f"{then} (as called then)", "en")
    if point := dcmi_point(place):
        yield Value(point, scheme="dcterms:Point")
    if box := dcmi_box(place):
        yield Value(box, scheme="dcterms:Box")
    if place_then(record).get("geonames"):
        yield Value(f"https://sws.geonames.org/{place.geonames}/", scheme="dcterms:URI")


def _type(record: Record, facts: CollectionFacts) -> Iterator[Value]:
    yield from map(Value, ("Image", "StillImage") if record.kind in STILL else ("Text",))


def _dcmi_type(record: Record, facts: CollectionFacts) -> Iterator[Value]:
    for value in _type(record, facts):
        yield Value(value.words, scheme="dcterms:DCMIType")


def _format(record: Record, facts: CollectionFacts) -> Iterator[Value]:
    if process := record.words("process"):
        yield Value(process, "en")
    if size := _size(record):
        yield Value(size)


def _size(record: Record) -> str:
    return f"{' × '.join(f'{value:g}' for value in record.size_mm)} mm" if record.size_mm else ""


def _medium(record: Record, facts: CollectionFacts) -> Iterator[Value]:
    if process := record.words("process"):
        yield Value(process, "en")
        if number := PROCESSES.get(process.casefold()):
            yield Value(AAT + number, scheme="dcterms:URI")


def _extent(record: Record, facts: CollectionFacts) -> Iterator[Value]:
    if size := _size(record):
        yield Value(size)


def _source(record: Record, facts: CollectionFacts) -> Iterator[Value]:
    yield Value("; ".join(part for part in (facts.holder, facts.title, inventory_number(record)) if part))


def _part_of(record: Record, facts: CollectionFacts) -> Iterator[Value]:
    yield Value(facts.title, facts.language)


def _part_of_detailed(record: Record, facts: CollectionFacts) -> Iterator[Value]:
    yield from _part_of(record, facts)
    yield Value(f"urn:uuid:{facts.id}", scheme="dcterms:URI")
    if record.mark:
        yield Value(record.mark.long, "en")


def _relations(record: Record, facts: CollectionFacts) -> Iterator[Value]:
    for one in record.related:
        words = one.kind.replace("_", " ")
        yield Value(f"{one.number} {words} this" if one.reverse else f"{words} {one.number}", "en")


def _rights(record: Record, facts: CollectionFacts) -> Iterator[Value]:
    yield Value(record.words("rights") or facts.rights)


def _rights_detailed(record: Record, facts: CollectionFacts) -> Iterator[Value]:
    words = record.words("rights") or facts.rights
    yield Value(words, scheme="dcterms:URI" if words.startswith(("http://", "https://")) else "")


def _formats(record: Record, facts: CollectionFacts) -> Iterator[Value]:
    for scan in () if record.closed_scans else record.scans:
        yield Value(f"{scan.media_type}, {scan.side}, {scan.width} × {scan.height} pixels, SHA-256 {scan.sha256}")


def _access(record: Record, facts: CollectionFacts) -> Iterator[Value]:
    if record.closed_scans:
        yield Value("The scans are in the closed part: they show or name a person taken as living.", "en")


ROWS: tuple[Row, ...] = (
    Row("title", "title", "title", _title),
    Row("photographer", "creator", "creator", _creators),
    Row("people", "subject", "subject", _subjects),
    Row("caption", "description", "description", _descriptions),
    Row("date", "date", "created", _date, _created),
    Row("kind", "type", "type", _type, _dcmi_type),
    Row("process", "format", "", _format),
    Row("process", "", "medium", _medium),
    Row("size", "", "extent", _extent),
    Row("number", "identifier", "identifier", _identifier),
    Row("mark", "source", "source", _source),
    Row("collection", "relation", "isPartOf", _part_of, _part_of_detailed),
    Row("relations", "relation", "relation", _relations),
    Row("place", "coverage", "spatial", _coverage, _spatial),
    Row("scans", "", "hasFormat", _formats),
    Row("access", "rights", "accessRights", _access),
    Row("rights", "rights", "rights", _rights, _rights_detailed),
)
"""Our fields in the order that records are written in."""


def oai_dc(record: Record, facts: CollectionFacts) -> Iterator[tuple[str, Value]]:
    """The elements of a simple Dublin Core record."""
    for row in ROWS:
        if row.oai_dc:
            yield from ((row.oai_dc, value) for value in row.values(record, facts) if value.words.strip())


def dcterms(record: Record, facts: CollectionFacts) -> Iterator[tuple[str, Value]]:
    """The elements of the full record in DCMI Metadata Terms."""
    for row in ROWS:
        if row.dcterms:
            values = (row.detailed or row.values)(record, facts)
            yield from ((row.dcterms, value) for value in values if value.words.strip())
