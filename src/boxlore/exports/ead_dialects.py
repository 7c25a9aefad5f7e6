"""The elements of a finding aid in its two dialects: EAD3 1.1.1 (Society of American Archivists, 2019) and EAD 2002.

Both dialects say the same. In EAD3 a name stands in `part`, and dates and extents are structured; in EAD 2002 they
are plain text. `Dialect` writes what both share and EAD3; `Ead2002` overrides what differs.
"""

import re
from collections.abc import Iterable, Sequence
from typing import Any

from lxml import etree

from boxlore.core.crosswalk.captions import nature_of
from boxlore.core.crosswalk.dublin_core import CollectionFacts, DcValue, Handed, access_point, process_term, size_words
from boxlore.core.crosswalk.extent import Extent, counted_kind
from boxlore.core.dates.edtf_values import plain_iso
from boxlore.core.people.firms import is_firm
from boxlore.core.places.reading import full_name
from boxlore.core.records.item_record import DATE_WITHHELD, UNDATED, PersonShown, Record
from boxlore.exports.collection_description import repository_of
from boxlore.exports.escaping import clean
from boxlore.exports.language_codes_table import LANGUAGES
from boxlore.exports.language_marks import code_of, language_marks

RELATORS = {"person": "depicted", "named": "named, not shown", "photographer": "photographer"}
DACS = "Describing Archives: A Content Standard (DACS)"
DESCRIPTION_RIGHTS = "http://creativecommons.org/publicdomain/zero/1.0/"
"""The licence of the description itself (DACS 8.2): public domain, so that an archive may use and change it."""

SOFTWARE = "Boxlore"
ISO_DAY = re.compile(r"\d{4}(?:-\d\d(?:-\d\d)?)?")


def _name_element(words: str) -> str:
    """`persname`, or `corpname` for a photographer's studio or firm (EAD3 Tag Library, `corpname`)."""
    return "corpname" if is_firm(words) else "persname"


def _doubt(shown: PersonShown) -> str:
    """What is said beside the heading of somebody who is not surely the one; a guess has no heading."""
    return "probably" if shown.unsure else ""


class Dialect:
    """EAD3, and the base of EAD 2002. A method adds one element, or a group of them, to a parent."""

    namespace = "http://ead3.archivists.org/schema/"
    name = "ead3"
    nsmap: Any = {None: "http://ead3.archivists.org/schema/"}  # noqa: RUF012  # read only; lxml keys the default by None
    dsc: dict[str, str] = {}  # noqa: RUF012  # read only
    inclusive = {"unitdatetype": "inclusive"}  # noqa: RUF012  # read only

    def tag(self, name: str) -> str:
        """An element's name with its namespace, as lxml writes it."""
        return f"{{{self.namespace}}}{name}"

    def element(self, name: str, **attributes: str) -> etree._Element:
        """A new element without parent. Underlines in the names of attributes are left out."""
        cleaned = {key.replace("_", ""): clean(words) for key, words in attributes.items()}
        return etree.Element(self.tag(name), cleaned, nsmap=self.nsmap)

    def add(self, parent: etree._Element, name: str, words: str = "", **attributes: str) -> etree._Element:
        """Add a child with these words as its text; returns the child."""
        child = etree.SubElement(parent, self.tag(name), {key: clean(value) for key, value in attributes.items()})
        if words:
            child.text = clean(words)
        return child

    def paragraphs(self, name: str, words: Iterable[str | DcValue], **attributes: str) -> etree._Element:
        """A new element without parent, with a `p` for each of the words, marked by its language where it has one."""
        element = self.element(name, **attributes)
        for paragraph in words:
            value = DcValue(paragraph) if isinstance(paragraph, str) else paragraph
            self.add(element, "p", value.words, **self.marks(value.words, value.language))
        return element

    def marks(self, words: str, language: str) -> dict[str, str]:
        """The attributes that say in which language and script words are."""
        return language_marks(words, language)

    def label(self, words: str) -> dict[str, str]:
        """The attribute that says of what kind an identifier is."""
        return {"localtype": words}

    def container(self, did: etree._Element, kind: str, label: str) -> None:
        """The box or folder that holds the item."""
        self.add(did, "container", label, localtype=kind)

    def unitid(self, did: etree._Element, number: str, ident: str, facts: CollectionFacts) -> None:
        """The item's number and its UUID, with the codes of country and repository (DACS 2.1)."""
        self.add(did, "unitid", number, **codes_of(facts), identifier=f"urn:uuid:{ident}")

    def collection_id(self, did: etree._Element, code: str, facts: CollectionFacts) -> None:
        """The collection's reference code, and its UUID (DACS 2.1)."""
        self.unitid(did, code, facts.id, facts)

    def family(self, parent: etree._Element, words: str) -> None:
        """The family whose papers they are."""
        self.add(self.add(parent, "famname"), "part", words)

    def place(self, parent: etree._Element, words: str) -> None:
        """A place by its full name."""
        self.add(self.add(parent, "geogname"), "part", words)

    def date(self, did: etree._Element, record: Record) -> None:
        """The item's date (DACS 2.4)."""
        dated(self, did, record)

    def day(self, did: etree._Element, day: str) -> None:
        """A day, or a year and month, as ISO 8601 has it; other words, or none, stand as they are."""
        if not ISO_DAY.fullmatch(day):
            self.add(did, "unitdate", day or UNDATED)
            return
        self.add(self.add(did, "unitdatestructured"), "datesingle", day, standarddate=day)

    def one_extent(self, did: etree._Element, kind: str) -> None:
        """One of a kind."""
        self._counted(did, "1", kind)

    def date_range(self, did: etree._Element, extent: Extent) -> None:
        """The years of the whole collection (DACS 2.4)."""
        if extent.years in (UNDATED, DATE_WITHHELD):
            self.add(did, "unitdate", extent.years, **self.inclusive)
            return
        self._range(did, extent)
        if extent.undated:
            self.add(did, "unitdate", UNDATED, **self.inclusive)

    def _range(self, did: etree._Element, extent: Extent) -> None:
        """The dates of what is dated, from the first to the last."""
        structured = self.add(did, "unitdatestructured", **self.inclusive)
        range_element = self.add(structured, "daterange")
        first, last = extent.first, extent.last
        self.add(range_element, "fromdate", first.words, **{"notafter" if first.is_open else "standarddate": first.day})
        self.add(range_element, "todate", last.words, **{"notbefore" if last.is_open else "standarddate": last.day})

    def extent(self, did: etree._Element, record: Record) -> None:
        """What the item is, and its size (DACS 2.5)."""
        self._counted(did, "1", nature_of(record), size_words(record))

    def _counted(self, did: etree._Element, quantity: str, unit: str, size: str = "", coverage: str = "whole") -> None:
        """An extent such as `20 photographs`. `size` is in mm; `coverage` is whole, or part of several extents."""
        described = self.add(did, "physdescstructured", coverage=coverage, physdescstructuredtype="materialtype")
        self.add(described, "quantity", quantity)
        self.add(described, "unittype", unit)
        if size:
            self.add(described, "dimensions", size, unit="mm")

    def origination(self, did: etree._Element, takers: Sequence[PersonShown], facts: CollectionFacts) -> None:
        """Those who took the picture (DACS 2.6)."""
        for taker in takers:
            if heading := access_point(taker, facts.people):
                self.person(self.add(did, "origination"), heading, "photographer", _doubt(taker))

    def person(self, parent: etree._Element, words: str, relator: str, doubt: str = "") -> None:
        """A heading with what the person is to the item, such as `depicted`; `doubt` stands beside it, never in it."""
        doubted = self.label(doubt) if doubt else {}
        self.add(self.add(parent, _name_element(words), relator=relator, **doubted), "part", words)

    def note(self, did: etree._Element, words: str) -> None:
        """A note, such as the inscription."""
        self.add(did, "didnote", words)

    def scans(self, did: etree._Element, scans: Sequence[tuple[str, str]]) -> None:
        """Links to the scans, as (path, what of the item it shows). A `daoset` must hold at least two, so a single scan
        stands alone."""
        parent = self.add(did, "daoset", coverage="whole") if len(scans) > 1 else did
        for path, side in scans:
            coverage = "whole" if side.startswith("recto") else "part"
            dao = self.add(parent, "dao", daotype="derived", href=f"../{path}", coverage=coverage)
            self.add(self.add(dao, "descriptivenote"), "p", side)

    def access_points(self, item: etree._Element, record: Record, facts: CollectionFacts) -> None:
        """The people, place, process and keywords of the item, under which it can be found."""
        controlaccess = self.element("controlaccess")
        for person in record.named_people:
            if heading := access_point(person, facts.people):
                self.person(controlaccess, heading, RELATORS.get(person.role, person.role), _doubt(person))
        self._place(controlaccess, record)
        if process := record.words("process"):
            self.genre(controlaccess, process, process_term(record))
        for keyword in record.all("keyword"):
            self.add(self.add(controlaccess, "subject"), "part", keyword.words)
        if len(controlaccess):
            item.append(controlaccess)

    def _place(self, controlaccess: etree._Element, record: Record) -> None:
        told_place = record.first("place")
        if told_place is None:
            return
        place = record.place
        name = self.add(controlaccess, "geogname")
        self.add(name, "part", full_name(place) if place else told_place.words)
        if place is not None and place.lat is not None and place.lon is not None:
            coordinates = f"{place.lat:.2f},{place.lon:.2f}"
            self.add(name, "geographiccoordinates", coordinates, coordinatesystem="WGS84")

    def genre(self, controlaccess: etree._Element, words: str, term: str) -> None:
        """The photographic process; `term` is its IRI in the Art & Architecture Thesaurus, or empty."""
        authority = {"source": "aat", "identifier": term} if term else {}
        self.add(self.add(controlaccess, "genreform", **authority), "part", words)

    def document(self, facts: CollectionFacts) -> etree._Element:
        """The whole document, with what it says of itself and without `archdesc`."""
        ead = self.element("ead")
        self._control(ead, facts)
        return ead

    def _control(self, ead: etree._Element, facts: CollectionFacts) -> None:
        control = self.add(ead, "control")
        self.add(control, "recordid", record_id(facts))
        title = self.add(self.add(self.add(control, "filedesc"), "titlestmt"), "titleproper")
        title.text = clean(f"{facts.title}: a finding aid")
        self.add(control, "maintenancestatus", value="new" if len(handed(facts)) == 1 else "revised")
        agency = self.add(
            control, "maintenanceagency", **({"countrycode": facts.archive.country} if facts.archive.country else {})
        )
        if facts.archive.agency:
            self.add(agency, "agencycode", facts.archive.agency)
        self.add(agency, "agencyname", repository_of(facts))
        declared = self.add(control, "languagedeclaration")
        self.add(declared, "language", "English", langcode="eng")
        self.add(declared, "script", "Latin", scriptcode="Latn")
        self.add(self.add(control, "conventiondeclaration"), "citation", DACS)
        rights = self.add(control, "rightsdeclaration")
        self.add(rights, "citation", "CC0 1.0 Universal", href=DESCRIPTION_RIGHTS)
        self.add(self.add(rights, "descriptivenote"), "p", "The description may be used and changed freely.")
        history = self.add(control, "maintenancehistory")
        for at, transfer in enumerate(handed(facts)):
            event = self.add(history, "maintenanceevent")
            self.add(event, "eventtype", value="revised" if at else "created")
            self.add(event, "eventdatetime", transfer.day, standarddatetime=transfer.day)
            self.add(event, "agenttype", value="machine")
            self.add(event, "agent", SOFTWARE)
            if transfer.words:
                self.add(event, "eventdescription", transfer.words)

    def repository(self, did: etree._Element, facts: CollectionFacts) -> None:
        """Who holds the collection (DACS 2.2)."""
        self.add(self.add(self.add(did, "repository"), "corpname"), "part", repository_of(facts))

    def extents(self, did: etree._Element, extent: Extent) -> None:
        """How many items of each kind the collection has (DACS 2.5); where none is given, how many are kept."""
        if extent.kept and not extent.kinds:
            quantity, _, unit = extent.kept_words.partition(" ")
            self._counted(did, quantity, unit)
        if len(extent.kinds) > 1:
            self._counted(did, str(extent.given), "items")
        for kind, count in extent.kinds.most_common():
            coverage = "whole" if len(extent.kinds) == 1 else "part"
            self._counted(did, str(count), counted_kind(kind, count), coverage=coverage)

    def languages(self, did: etree._Element, tags: Iterable[str]) -> None:
        """The languages of the collection (DACS 4.5), by their tags."""
        langmaterial = self.add(did, "langmaterial")
        for tag in tags:
            self.add(langmaterial, "language", language_name(tag), langcode=language_code(tag))


def dated(dialect: Dialect, did: etree._Element, record: Record) -> None:
    """Add a date in EAD3. A plain ISO date gets `standarddate`; any other date gets its earliest and latest day.

    An uncertain or approximate date is marked by `certainty`. Words that were read as no date stand alone.
    """
    parsed = record.date
    if parsed is None:
        dialect.add(did, "unitdate", record.formal_date)
        return
    structured = dialect.add(did, "unitdatestructured")
    plain, first, last = plain_iso(parsed), parsed.earliest, parsed.latest
    bounds = {
        name: str(day) for name, day in (("notbefore", first), ("notafter", last)) if day and 0 <= day.year <= 9999
    }
    if parsed.qualified:
        structured.set("certainty", "approximate")
    single = dialect.add(structured, "datesingle", record.formal_date)
    if plain and not parsed.qualified:
        single.set("standarddate", plain)
    else:
        for name, day in bounds.items():
            single.set(name, day)


class Ead2002(Dialect):
    """EAD 2002, which is deprecated and which archives still ask for."""

    namespace = "urn:isbn:1-931666-22-9"
    name = "ead2002"
    nsmap: Any = {None: "urn:isbn:1-931666-22-9"}  # noqa: RUF012  # read only
    dsc = {"type": "combined"}  # noqa: RUF012  # read only
    inclusive = {"type": "inclusive"}  # noqa: RUF012  # read only

    def label(self, words: str) -> dict[str, str]:
        return {"label": words}

    def marks(self, words: str, language: str) -> dict[str, str]:
        return {}  # EAD 2002 has no such attributes

    def container(self, did: etree._Element, kind: str, label: str) -> None:
        self.add(did, "container", label, type=kind)

    def unitid(self, did: etree._Element, number: str, ident: str, facts: CollectionFacts) -> None:
        self.add(did, "unitid", number, **codes_of(facts))
        self.add(did, "unitid", f"urn:uuid:{ident}", type="uuid")

    def date(self, did: etree._Element, record: Record) -> None:
        parsed = record.date
        first, last = (parsed.earliest, parsed.latest) if parsed else (None, None)
        has_bounds = first and last and 0 <= first.year <= 9999 and 0 <= last.year <= 9999
        normal = {"normal": f"{first}/{last}"} if has_bounds else {}
        self.add(did, "unitdate", record.formal_date, **normal)

    def day(self, did: etree._Element, day: str) -> None:
        self.add(did, "unitdate", day or UNDATED, **({"normal": f"{day}/{day}"} if ISO_DAY.fullmatch(day) else {}))

    def _range(self, did: etree._Element, extent: Extent) -> None:
        first, last = extent.first, extent.last
        normal = {} if first.is_open or last.is_open else {"normal": f"{first.day}/{last.day}"}
        self.add(did, "unitdate", extent.range_words, **self.inclusive, **normal)

    def _counted(self, did: etree._Element, quantity: str, unit: str, size: str = "", coverage: str = "whole") -> None:
        physdesc = self.add(did, "physdesc")
        self.add(physdesc, "extent", f"{quantity} {unit}")
        if size:
            self.add(physdesc, "dimensions", size)

    def person(self, parent: etree._Element, words: str, relator: str, doubt: str = "") -> None:
        self.add(parent, _name_element(words), words, role=f"{relator}, {doubt}" if doubt else relator)

    def family(self, parent: etree._Element, words: str) -> None:
        self.add(parent, "famname", words)

    def place(self, parent: etree._Element, words: str) -> None:
        self.add(parent, "geogname", words)

    def note(self, did: etree._Element, words: str) -> None:
        self.add(self.add(did, "note"), "p", words)

    def scans(self, did: etree._Element, scans: Sequence[tuple[str, str]]) -> None:
        for path, side in scans:
            dao = etree.SubElement(did, self.tag("dao"), nsmap={"xlink": XLINK})
            dao.set(f"{{{XLINK}}}href", f"../{path}")
            dao.set(f"{{{XLINK}}}title", side)

    def _place(self, controlaccess: etree._Element, record: Record) -> None:
        if (told_place := record.first("place")) is not None:
            place = record.place
            self.add(controlaccess, "geogname", full_name(place) if place else told_place.words)

    def genre(self, controlaccess: etree._Element, words: str, term: str) -> None:
        authority = {"source": "aat", "authfilenumber": term} if term else {}
        self.add(controlaccess, "genreform", words, **authority)

    def access_points(self, item: etree._Element, record: Record, facts: CollectionFacts) -> None:
        super().access_points(item, record, facts)
        for subject in item.iter(self.tag("subject")):
            subject.text = subject[0].text
            subject.remove(subject[0])

    def _control(self, ead: etree._Element, facts: CollectionFacts) -> None:
        header = self.add(ead, "eadheader")
        codes = {"countrycode": facts.archive.country, "mainagencycode": facts.archive.agency}
        self.add(header, "eadid", record_id(facts), **{name: code for name, code in codes.items() if code})
        about = self.add(header, "filedesc")
        self.add(self.add(about, "titlestmt"), "titleproper", f"{facts.title}: a finding aid")
        self.add(self.add(about, "publicationstmt"), "publisher", repository_of(facts))
        profile = self.add(header, "profiledesc")
        self.add(profile, "creation", f"{SOFTWARE}, {facts.on_day.isoformat()}")
        self.add(self.add(profile, "langusage"), "language", "English", langcode="eng")
        self.add(profile, "descrules", f"{DACS}. The description may be used freely: {DESCRIPTION_RIGHTS}")
        if len(handed(facts)) > 1:
            revisions = self.add(header, "revisiondesc")
            for transfer in handed(facts)[1:]:
                change = self.add(revisions, "change")
                self.add(change, "date", transfer.day, normal=transfer.day)
                self.add(change, "item", transfer.words or "Revised.")

    def repository(self, did: etree._Element, facts: CollectionFacts) -> None:
        self.add(self.add(did, "repository"), "corpname", repository_of(facts))


XLINK = "http://www.w3.org/1999/xlink"


def language_name(tag: str) -> str:
    """The English name of a language; the tag itself for one that is not in the table."""
    return LANGUAGES.get(tag.split("-")[0].lower(), (tag or "undetermined", ""))[0]


def language_code(tag: str) -> str:
    """The code of a language; `und` for one that has none."""
    return code_of(tag) or "und"


def codes_of(facts: CollectionFacts) -> dict[str, str]:
    """The codes of country and repository as attributes (ISO 3166-1, ISO 15511), as far as the archive has said."""
    archive = facts.archive
    codes = {"countrycode": archive.country, "repositorycode": archive.repository_code or archive.agency}
    return {name: code for name, code in codes.items() if code}


def record_id(facts: CollectionFacts) -> str:
    """What the finding aid is known by, the same in every update; those of the two parts are two."""
    return f"urn:uuid:{facts.id}{'#closed' if facts.is_closed else ''}"


def handed(facts: CollectionFacts) -> tuple[Handed, ...]:
    """The transfers so far, the oldest first."""
    return facts.transfers or (Handed(facts.on_day.isoformat()),)


EAD3 = Dialect()
EAD2002 = Ead2002()
