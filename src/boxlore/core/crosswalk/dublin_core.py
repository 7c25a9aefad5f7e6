"""The table from our fields to what an archive receives: simple Dublin Core and DCMI Metadata Terms.

Each row gives the field's element in both, and the function that gives its values. Dublin Core Metadata Element Set
1.1 (ISO 15836) as in the oai_dc format of OAI-PMH 2.0; DCMI Metadata Terms (2020). To add a field to the exports, add
a row.
"""

import re
from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass
from dataclasses import field as starts
from datetime import date
from functools import lru_cache
from typing import NamedTuple

from boxlore.core.crosswalk import captions
from boxlore.core.crosswalk.receiving_archive import NOT_SAID, Archive
from boxlore.core.crosswalk.rights_statements import OF_RIGHTS, rights_address
from boxlore.core.crosswalk.scan_file_names import packed_path
from boxlore.core.crosswalk.sound import Beside
from boxlore.core.crosswalk.xmp_and_iim import inventory_number
from boxlore.core.dates.edtf_values import iso_range, plain_iso
from boxlore.core.dates.reading import DateReading
from boxlore.core.fields.table import FIELDS, OWN
from boxlore.core.findings import several
from boxlore.core.originals.physical_description import custody_lines, physical_lines
from boxlore.core.people.firms import is_firm
from boxlore.core.people.person import Person
from boxlore.core.places.reading import dcmi_box, dcmi_point, full_name
from boxlore.core.records.closing_dates import Closure
from boxlore.core.records.item_record import PersonShown, Record, is_number_alone
from boxlore.core.records.marks import ContainerPath, Mark
from boxlore.core.statements import Said, Sure, fold
from boxlore.core.wording.catalogue import ENGLISH

CNE = f"{OF_RIGHTS}CNE/1.0/"
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
"""Process -> the number of its term in the Art & Architecture Thesaurus, taken from crosswalks of libraries; to be
checked at Getty before a release."""

STILL = ("print", "negative", "slide", "postcard", "card", "album-page")


@dataclass(frozen=True, slots=True)
class Handed:
    """One transfer: the day on which it was made, and what is to be said of it besides."""

    day: str
    words: str = ""


ACCESSIONS_JOINED = "; "
"""What stands between accession numbers that are told together."""


@dataclass(frozen=True, slots=True, kw_only=True)
class CollectionFacts:
    """What all records of an export share. `on_day` is the day that the export is dated.

    `originals`: whether the originals are handed over, or scans only. `closure_of`: what the closed part says about an
    item. `moves_of`: where an item was kept before, as sentences. `people`: the registry, for authority forms.
    """

    id: str
    title: str
    holder: str = ""
    language: str = "en"
    rights: str = CNE
    on_day: date
    brackets: bool = False
    archive: Archive = NOT_SAID
    originals: bool = True
    accession: str = ""
    """The accession numbers of all that came, in their order: an accrual has its own, beside the first."""
    reference: str = ""
    """The archive's own reference of the whole collection, once it has given one."""
    of_containers: Mapping[ContainerPath, str] = starts(default_factory=dict)
    """The archive's own references of boxes, folders and other containers."""
    code: str = ""
    """What the collection is called in short: how its numbers begin."""
    family: str = ""
    history: str = ""
    contact: str = ""
    is_closed: bool = False
    """Whether it is for the closed part of a transfer."""
    transfers: tuple[Handed, ...] = ()
    """The transfers so far, the oldest first; the last is the one that is made."""
    custody: tuple[str, ...] = ()
    people: Mapping[str, Person] = starts(default_factory=dict)
    not_given: frozenset[str] = frozenset()
    """The ids of items that are kept by the family: of them is told their number, where they lie, and what an archive
    calls them."""
    lent: frozenset[str] = frozenset()
    """The ids of items that somebody lent: their scans are handed over, and not the originals."""
    given_on: Mapping[str, str] = starts(default_factory=dict)
    """Items, by their ids, whose originals an earlier transfer handed over, with its day (ISO 8601)."""
    closed_whole: Mapping[str, date] = starts(default_factory=dict)
    """Items, by their ids, that are closed as a whole until a day by those who gave them."""
    beside: tuple[Beside, ...] = ()
    """Recordings and papers of the sittings, which lie beside the items."""
    closure_of: Callable[[Record], Closure | None] = lambda record: None
    moves_of: Callable[[Record], tuple[str, ...]] = lambda record: ()

    @property
    def held_by(self) -> str:
        """Who has the originals as long as they are not handed over, as a sentence names them."""
        return self.holder or "the family"

    def gives(self, item: str) -> bool:
        """Whether the original of an item (id) is handed over."""
        return self.originals and item not in self.not_given and item not in self.lent

    def asked_back(self, item: str) -> str:
        """The day on which the original of an item (id) was handed over that the family keeps now, or that somebody
        lent; else ''."""
        is_back = item in self.not_given or item in self.lent
        return self.given_on.get(item, "") if self.originals and is_back else ""


class DcValue(NamedTuple):
    """One value: its words with a language tag, or with an encoding scheme (`dcterms:W3CDTF`); '' for neither."""

    words: str
    language: str = ""
    scheme: str = ""


Values = Callable[[Record, CollectionFacts], list[DcValue]]


@dataclass(frozen=True, slots=True)
class CrosswalkRow:
    """One field: its element in oai_dc and in dcterms ('' for none), and the function that gives its values."""

    field: str
    oai_dc: str
    dcterms: str
    values: Values
    detailed: Values | None = None
    """Gives the values for dcterms, where they differ."""


def _title(record: Record, facts: CollectionFacts) -> list[DcValue]:
    view = record.first("title")
    language = view.language if view else facts.language
    return [DcValue(captions.title(record, captions.Style(brackets=facts.brackets)), language)]


def _identifier(record: Record, facts: CollectionFacts) -> list[DcValue]:
    references = [DcValue(view.words) for view in record.all("archive_reference")]
    return [DcValue(record.number), DcValue(f"urn:uuid:{record.id}"), *references]


def access_point(shown: PersonShown, people: Mapping[str, Person]) -> str:
    """The heading under which somebody of an item can be found, without how sure it is, which the description says: of
    a person of the registry, and of a photographer or firm as it calls itself. Empty for a guess, and for whoever is
    told without a name (`a girl with a ribbon`): neither is an access point (DACS 2.6 and part II, from memory)."""
    person = people.get(shown.person)
    if shown.sure is Sure.GUESS:
        return ""
    if person is None:
        return shown.name if shown.role == "photographer" else ""
    return heading_of(person) if person.is_named or is_firm(person.name) else ""


def headings(shown: Iterable[PersonShown], people: Mapping[str, Person]) -> list[str]:
    """The access points of several, each once."""
    return list(dict.fromkeys(heading for person in shown if (heading := access_point(person, people))))


def other_names(record: Record, people: Mapping[str, Person]) -> list[str]:
    """`Liisi Kuusk is Tamm, Liisi, 1918-2004.`: for each who is told by another family name than the heading has."""
    lines = []
    for shown in record.named_people:
        heading = access_point(shown, people)
        family, comma, _ = heading.partition(",")
        if shown.person and comma and fold(family) not in fold(f"{shown.name} {shown.told.words}"):
            lines.append(f"{shown.name} is {heading}.")
    return list(dict.fromkeys(lines))


def in_question(record: Record, facts: CollectionFacts) -> list[str]:
    """`Told to be in it, and still in question: “Jory” and “the Tolley boy”.`: what stands in no list of names, since
    nobody has answered yet whom it means. The open part may not have it."""
    told = dict.fromkeys(f"“{shown.told.words}”" for shown in record.people if shown.in_question)
    return (
        [f"Told to be in it, and still in question: {ENGLISH.listed(list(told))}."] if told and facts.is_closed else []
    )


def heading_of(person: Person) -> str:
    """`Tamm, Kristjan, 1868-1941`; the name alone where no year is known, and of a firm that was taken for somebody."""
    if is_firm(person.name):
        return person.name
    return ", ".join(filter(None, (person.sort_name, years_of(person))))


def years_of(person: Person) -> str:
    """`1868-1941`, `1946-`; '' where no year is known."""
    born, died = _year(person.born), _year(person.died)
    return f"{born}-{died}" if born or died else ""


def _year(date: DateReading | None) -> str:
    return f"{date.first_year:04d}" if date and date.first_year is not None else ""


def _creators(record: Record, facts: CollectionFacts) -> list[DcValue]:
    return [DcValue(heading) for heading in headings(record.shown("photographer"), facts.people)]


def _subjects(record: Record, facts: CollectionFacts) -> list[DcValue]:
    people = [person for person in record.named_people if person.role != "photographer"]
    shown = [DcValue(heading) for heading in headings(people, facts.people)]
    return shown + [DcValue(view.words, view.language) for view in record.all("keyword")]


def _descriptions(record: Record, facts: CollectionFacts) -> list[DcValue]:
    values = [DcValue(captions.caption(record, "sheet"), facts.language)]
    values += [DcValue(view.words, view.language) for view in record.all("story")]
    values += [DcValue(captions.own_words(view), view.language) for view in captions.own_views(record)]
    if record.told.get("inscription"):
        values.append(DcValue(captions.inscription_line(record)))
    for view in record.all("date"):
        values.append(DcValue(f"Date as told{_by(view.said_by, view.source.said)}: “{view.words}” ({view.sure})"))
    values += [DcValue(words, "en") for words in (*other_names(record, facts.people), *in_question(record, facts))]
    if sayers := who_said(record):
        values.append(DcValue(f"Who said so: {sayers}", "en"))
    values += [DcValue(words, "en") for words in (*worked_out(record), *disagreements(record))]
    values += [DcValue(words, "en") for words in physical_lines(record)]
    if record.found_in:
        values.append(DcValue(f"Found in: {record.found_in}", facts.language))
    if record.withheld:
        values.append(
            DcValue(f"{several(record.withheld, 'statement is', 'statements are')} withheld from this record.", "en")
        )
    return values


def worked_out(record: Record) -> list[str]:
    """`Date worked out from what is told, …: [between 1921 and 1926], because …`, where nobody has told one."""
    dated = record.worked_out
    said = "Date worked out from what is told, as a proposal that nobody has confirmed"
    return [f"{said}: {dated.display}, because {dated.reasons}"] if dated else []


def disagreements(record: Record) -> list[str]:
    """`Sources disagree: …`: for all statements that cannot be so together, each with who says it; nothing if none."""
    words = sorted({conflict.words for conflict in (*record.conflicts, *record.undecided)})
    return [f"Sources disagree: {'; '.join(words)}"] if words else []


def _by(name: str, kind: Said) -> str:
    return f" by {name}" if name else f" ({kind})"


def who_said(record: Record) -> str:
    """`date and story by Leida Rourke (sure); person by the keeper (guess)`: who said what, and how sure."""
    fields_by_sayer: dict[str, list[str]] = {}
    for name, rows in record.told.items():
        for view in rows if name not in ("file_name", "archive_reference", "series") else ():
            fields_by_sayer.setdefault(_sayer(view.said_by, view.source.said, view.source.ref, view.sure), []).append(
                FIELDS[name].label.lower() if name.startswith(OWN) or "_" in name else name
            )
    for person in record.people:
        view = person.told
        fields_by_sayer.setdefault(_sayer(view.said_by, view.source.said, view.source.ref, view.sure), []).append(
            person.role
        )
    return "; ".join(f"{' and '.join(dict.fromkeys(names))} {sayer}" for sayer, names in fields_by_sayer.items())


@lru_cache(1024)
def _sayer(name: str, kind: Said, ref: str, sure: Sure) -> str:
    return f"{_sayer_name(name, kind, ref)} ({sure.value})"


def _sayer_name(name: str, kind: Said, ref: str) -> str:
    if kind is Said.INSCRIPTION:
        return f"written on the {ref or 'item'}"
    if kind is Said.NARRATOR:
        return f"by {name or 'a narrator'}"
    return "by the keeper" if kind is Said.KEEPER else f"in a {kind.value}" + (f", {ref}" if ref else "")


def one_date(record: Record) -> str:
    """One date for simple Dublin Core: a plain date, an ISO range, else the EDTF.

    Dates that cannot all be so are no range, nor is a choice of several (`1953 or 1954`): nobody says that it was
    between them.
    """
    taken = record.date
    if taken and (record.disputed("date") or len(taken.parts) > 1):
        return taken.text
    return plain_iso(taken) or iso_range(taken) or taken.text if taken else ""


def _date(record: Record, facts: CollectionFacts) -> list[DcValue]:
    return [DcValue(one_date(record))]


def _created(record: Record, facts: CollectionFacts) -> list[DcValue]:
    """A plain date typed W3CDTF only if it is unqualified; everything else as EDTF, which has no type in the XSDs."""
    taken = record.date
    return [DcValue(taken.text, scheme="dcterms:W3CDTF" if plain_iso(taken) == taken.text else "")] if taken else []


def _coverage(record: Record, facts: CollectionFacts) -> list[DcValue]:
    conflict, first = record.disputed("place"), record.first("place")
    sides = {view.statement for view in conflict.told} if conflict else set()
    values = [DcValue(first.words, first.language)] if conflict and first else []
    values += [DcValue(view.words, view.language) for view in record.all("place") if view.statement not in sides]
    if values and (place := record.place) is not None:
        values.append(DcValue(full_name(place), "en"))
    return list(dict.fromkeys(values))


def _spatial(record: Record, facts: CollectionFacts) -> list[DcValue]:
    values = _coverage(record, facts)
    place = record.place
    if place is None:
        return values
    if place.called_then and place.called_then != place.city:
        then = ", ".join(part for part in (place.called_then, place.country_then) if part)
        values.append(DcValue(f"{then} (as called then)", "en"))
    if point := dcmi_point(place):
        values.append(DcValue(point, scheme="dcterms:Point"))
    if box := dcmi_box(place):
        values.append(DcValue(box, scheme="dcterms:Box"))
    if place.link:
        values.append(DcValue(place.link, scheme="dcterms:URI"))
    return values


_IMAGE, _TEXT = [DcValue("Image"), DcValue("StillImage")], [DcValue("Text")]
_DCMI_IMAGE, _DCMI_TEXT = (
    [DcValue(value.words, scheme="dcterms:DCMIType") for value in values] for values in (_IMAGE, _TEXT)
)


def _type(record: Record, facts: CollectionFacts) -> list[DcValue]:
    return _IMAGE if record.kind in STILL else _TEXT


def _dcmi_type(record: Record, facts: CollectionFacts) -> list[DcValue]:
    return _DCMI_IMAGE if record.kind in STILL else _DCMI_TEXT


def _format(record: Record, facts: CollectionFacts) -> list[DcValue]:
    return [DcValue(record.words("process"), "en"), DcValue(size_words(record))]


def size_words(record: Record) -> str:
    """`90 × 60 mm`; '' if the size is not noted."""
    return f"{' × '.join(f'{value:g}' for value in record.size_mm)} mm" if record.size_mm else ""


def process_term(record: Record) -> str:
    """The process as a URI of the Art & Architecture Thesaurus; '' if it has none in PROCESSES."""
    number = PROCESSES.get(record.words("process").casefold())
    return AAT + number if number else ""


def _medium(record: Record, facts: CollectionFacts) -> list[DcValue]:
    return [DcValue(record.words("process"), "en"), DcValue(process_term(record), scheme="dcterms:URI")]


def _extent(record: Record, facts: CollectionFacts) -> list[DcValue]:
    return [DcValue(size_words(record))]


def _source(record: Record, facts: CollectionFacts) -> list[DcValue]:
    is_given = facts.gives(record.id) and facts.archive.repository  # then the original is the archive's
    holder = facts.archive.repository if is_given else facts.holder
    kept = "; ".join(part for part in (holder, facts.title, inventory_number(record)) if part)
    return [DcValue(kept), *(DcValue(f"Original file name: {view.words}", "en") for view in record.all("file_name"))]


def _part_of(record: Record, facts: CollectionFacts) -> list[DcValue]:
    return [DcValue(facts.title, facts.language)]


def _part_of_detailed(record: Record, facts: CollectionFacts) -> list[DcValue]:
    values = [DcValue(facts.title, facts.language), DcValue(f"urn:uuid:{facts.id}", scheme="dcterms:URI")]
    return [*values, DcValue(Mark(record.mark.path).long, "en")] if record.mark else values


def _series(record: Record, facts: CollectionFacts) -> list[DcValue]:
    return [DcValue(f"Series: {view.words}", view.language) for view in record.rests_on("series")]


def _relations(record: Record, facts: CollectionFacts) -> list[DcValue]:
    return [
        DcValue(f"{relation.number} {words} this" if relation.reverse else f"{words} {relation.number}", "en")
        for relation in record.related
        for words in (relation.kind.replace("_", " "),)
    ]


def provenance(record: Record, facts: CollectionFacts) -> list[str]:
    """How the item came down, as sentences: custody of the collection and the item, where it was found, its moves, its
    accession."""
    return [*facts.custody, *own_provenance(record, facts), *_accession(facts)]


def of_the_whole(facts: CollectionFacts) -> list[str]:
    """How the whole came down: its custody and its accession, which a description by levels says once (DACS 1)."""
    return [*facts.custody, *_accession(facts)]


def _accession(facts: CollectionFacts) -> list[str]:
    return [f"Accession {facts.accession}"] if facts.accession else []


def own_provenance(record: Record, facts: CollectionFacts) -> list[str]:
    """How the item came down beyond what holds of the whole: its own custody, where it was found, its moves."""
    found_in = [f"Found in: {record.found_in}"] if record.found_in else []
    return [*custody_lines(record), *_lent(record, facts), *found_in, *facts.moves_of(record)]


LENT = "it belongs to somebody who lent it."
"""How the sentence ends that says why an original is not given."""


def _lent(record: Record, facts: CollectionFacts) -> list[str]:
    if not facts.originals or record.id not in facts.lent or is_number_alone(record):
        return []
    if day := facts.asked_back(record.id):
        return [f"The original was handed over on {day} and is asked back: {LENT}"]
    return [f"The original is not handed over: {LENT}"]


def _provenance(record: Record, facts: CollectionFacts) -> list[DcValue]:
    return [DcValue(words, "en") for words in provenance(record, facts)]


def rights_of(record: Record, facts: CollectionFacts) -> str:
    """The words about rights, often a URI, also where the label of one was told; without any, the neutral statement of
    the facts."""
    return rights_address(record.words("rights") or facts.rights)


def rights_notes(record: Record, facts: CollectionFacts) -> list[str]:
    """What must be known beside the words about rights: who holds them, or that this is known and not told here. A
    neutral statement alone would let somebody publish what another holds the rights in."""
    return [f"Rights holder: {view.words}" for view in record.all("rights_holder")] + _untold_rights(record, facts)


def _untold_rights(record: Record, facts: CollectionFacts) -> list[str]:
    if record.id in facts.not_given:
        return []
    return [words for field, words in _UNTOLD.items() if field in record.hidden]


_UNTOLD = {
    "rights": "It has a statement of rights of its own, which is not told here: the closed part of a transfer may have "
    "it, and it goes before this one.",
    "rights_holder": "A rights holder is known, and is not named here: the closed part of a transfer may say who. Ask "
    "before it is used.",
}


def _rights(record: Record, facts: CollectionFacts) -> list[DcValue]:
    notes = (DcValue(words, "en") for words in rights_notes(record, facts))
    return [DcValue(rights_of(record, facts)), *notes]


_URI = re.compile(
    r"https?://[\w.~-]+(?::[0-9]+)?"
    r"(?:[/?](?:[\w.~!$&'()*+,;=:@/?-]|%[0-9A-Fa-f]{2})*)?(?:\#(?:[\w.~!$&'()*+,;=:@/?-]|%[0-9A-Fa-f]{2})*)?"
)
"""An address of the web and nothing besides (RFC 3986, and RFC 3987 for letters that are no ASCII)."""


def _rights_detailed(record: Record, facts: CollectionFacts) -> list[DcValue]:
    untold = (DcValue(note, "en") for note in _untold_rights(record, facts))
    return [typed_rights(rights_of(record, facts)), *untold]


def typed_rights(words: str) -> DcValue:
    """Words about rights, typed as an address where they are one."""
    return DcValue(words, scheme="dcterms:URI" if _URI.fullmatch(words) else "")


def _rights_holder(record: Record, facts: CollectionFacts) -> list[DcValue]:
    return [DcValue(view.words) for view in record.all("rights_holder")]


def _formats(record: Record, facts: CollectionFacts) -> list[DcValue]:
    return [
        DcValue(
            f"{packed_path(record, scan)}, {scan.media_type}, {scan.side}, {scan.width} × {scan.height} pixels, "
            f"SHA-256 {scan.sha256}" + (f", to be turned by {scan.turn}° to the right" if scan.turn else "")
        )
        for scan in record.open_scans
    ]


def access_words(record: Record, facts: CollectionFacts) -> list[str]:
    """Who may see the item, as sentences: until when it is closed and why, and whether its scans are withheld."""
    closure = facts.closure_of(record)
    return ([str(closure)] if closure else []) + list(_why_without_scans(record, facts))


def _why_without_scans(record: Record, facts: CollectionFacts) -> Iterator[str]:
    """Why the scans of an item that has any are not in this part: one reason, of what may be said of it."""
    if record.id in facts.not_given and (day := facts.asked_back(record.id)):
        yield f"The item is kept by the family: its original was handed over on {day} and is asked back. {_OF_KEPT}"
    elif record.id in facts.not_given:
        yield f"The item is kept by the family and is not handed over. {_OF_KEPT}"
    elif is_number_alone(record) and (until := facts.closed_whole.get(record.id)):
        yield f"Closed until {until} by those who gave it: only its number is in this part."
    elif is_number_alone(record):
        yield f"Closed for the sake of people taken as living: only its number is in this part. {_UNTIL_WHEN}"
    elif record.on_closed_sheet:
        yield "The scans are not in this part: they are of a sheet that shows another item too, which may not be shown."
    elif record.closed_scans and record.scans:
        why = "they show or name a person taken as living, or somebody kept back, or are closed by those who gave them"
        yield f"The scans are not in this part: {why}. {_UNTIL_WHEN}"


_OF_KEPT = "Nothing is told here but its number, where it lies and what an archive calls it."
_UNTIL_WHEN = "The closed part says until when, and why."


def _access(record: Record, facts: CollectionFacts) -> list[DcValue]:
    return [DcValue(words, "en") for words in access_words(record, facts)]


ROWS: tuple[CrosswalkRow, ...] = (
    CrosswalkRow("title", "title", "title", _title),
    CrosswalkRow("photographer", "creator", "creator", _creators),
    CrosswalkRow("people", "subject", "subject", _subjects),
    CrosswalkRow("caption", "description", "description", _descriptions),
    CrosswalkRow("date", "date", "created", _date, _created),
    CrosswalkRow("kind", "type", "type", _type, _dcmi_type),
    CrosswalkRow("process", "format", "", _format),
    CrosswalkRow("process", "", "medium", _medium),
    CrosswalkRow("size", "", "extent", _extent),
    CrosswalkRow("number", "identifier", "identifier", _identifier),
    CrosswalkRow("mark", "source", "source", _source),
    CrosswalkRow("collection", "relation", "isPartOf", _part_of, _part_of_detailed),
    CrosswalkRow("series", "relation", "isPartOf", _series),
    CrosswalkRow("relations", "relation", "relation", _relations),
    CrosswalkRow("place", "coverage", "spatial", _coverage, _spatial),
    CrosswalkRow("scans", "", "hasFormat", _formats),
    CrosswalkRow("custody", "", "provenance", _provenance),
    CrosswalkRow("access", "rights", "accessRights", _access),
    CrosswalkRow("rights", "rights", "rights", _rights, _rights_detailed),
    CrosswalkRow("rights holder", "", "rightsHolder", _rights_holder),
)
"""Our fields, in the order in which a record is written."""

_SIMPLE = tuple((row.oai_dc, row.values) for row in ROWS if row.oai_dc)
_FULL = tuple((row.dcterms, row.detailed or row.values) for row in ROWS if row.dcterms)


def oai_dc(record: Record, facts: CollectionFacts) -> Iterator[tuple[str, DcValue]]:
    """(element, value) of a simple Dublin Core record, in order; values without words are left out."""
    return _elements(_SIMPLE, record, facts)


def dcterms(record: Record, facts: CollectionFacts) -> Iterator[tuple[str, DcValue]]:
    """(term, value) of the full record in DCMI Metadata Terms, in order; values without words are left out."""
    return _elements(_FULL, record, facts)


def terms(names: Iterable[str]) -> Callable[[Record, CollectionFacts], Iterator[tuple[str, DcValue]]]:
    """A function like `dcterms` that gives only these terms, for an output that writes the others in its own way."""
    chosen = tuple(row for row in _FULL if row[0] in set(names))
    return lambda record, facts: _elements(chosen, record, facts)


def _elements(
    rows: tuple[tuple[str, Values], ...], record: Record, facts: CollectionFacts
) -> Iterator[tuple[str, DcValue]]:
    for name, values in rows:
        for value in values(record, facts):
            if value.words.strip():
                yield name, value
