"""The two ways of spelling a finding aid: EAD3 1.1.1 (Society of American Archivists, 2019) and EAD 2002.

Names need `part` in EAD3 and none in EAD 2002; dates and extents are structured in the one and plain in the other.
Both say the same; `Dialect` is the common spelling and EAD3, `Ead2002` what differs.
"""

from collections.abc import Iterable, Sequence
from typing import Any

from lxml import etree

from boxlore.core.crosswalk.archives import CollectionFacts, authority_form, place_of, process_term, size_words
from boxlore.core.crosswalk.captions import NATURE
from boxlore.core.crosswalk.extent import Extent, plural
from boxlore.core.dates.edtf import parse
from boxlore.core.dates.edtf_values import plain_iso
from boxlore.core.places.reading import full_name
from boxlore.core.records.in_force import PersonShown, Record
from boxlore.exports.markup import clean

RELATORS = {"person": "depicted", "named": "named, not shown", "photographer": "photographer"}
DACS = "Describing Archives: A Content Standard (DACS)"
DESCRIPTION_RIGHTS = "http://creativecommons.org/publicdomain/zero/1.0/"
"""What we say of the description itself (DACS 8.2): dedicated to the public domain, so that an archive may use it."""

SOFTWARE = "Boxlore"


class Dialect:
    """EAD3."""

    namespace = "http://ead3.archivists.org/schema/"
    name = "ead3"
    spaces: Any = {None: "http://ead3.archivists.org/schema/"}  # noqa: RUF012  # read only; lxml keys the default by None
    dsc: dict[str, str] = {}  # noqa: RUF012  # read only

    def tag(self, name: str) -> str:
        return f"{{{self.namespace}}}{name}"

    def element(self, name: str, **attributes: str) -> etree._Element:
        cleaned = {key.replace("_", ""): clean(words) for key, words in attributes.items()}
        return etree.Element(self.tag(name), cleaned, nsmap=self.spaces)

    def add(self, parent: etree._Element, name: str, words: str = "", **attributes: str) -> etree._Element:
        child = etree.SubElement(parent, self.tag(name), {key: clean(one) for key, one in attributes.items()})
        if words:
            child.text = clean(words)
        return child

    def paragraphs(self, name: str, words: Iterable[str], **attributes: str) -> etree._Element:
        made = self.element(name, **attributes)
        for one in words:
            self.add(made, "p", one)
        return made

    def label(self, words: str) -> dict[str, str]:
        return {"localtype": words}

    def container(self, did: etree._Element, kind: str, label: str) -> None:
        self.add(did, "container", label, localtype=kind)

    def unitid(self, did: etree._Element, number: str, ident: str) -> None:
        self.add(did, "unitid", number, identifier=f"urn:uuid:{ident}")

    def date(self, did: etree._Element, record: Record) -> None:
        """DACS 2.4: a structured date; a plain one has a standard date, a range its outer bounds, others words only."""
        dated(self, did, record.date_display, record.edtf)

    def date_range(self, did: etree._Element, holding: Extent) -> None:
        if holding.years == "undated":
            self.add(did, "unitdate", "undated", unitdatetype="inclusive")
            return
        made = self.add(did, "unitdatestructured", unitdatetype="inclusive")
        first, last = holding.earliest or holding.latest, holding.latest or holding.earliest
        both = self.add(made, "daterange")
        self.add(both, "fromdate", first[:4], standarddate=first)
        self.add(both, "todate", last[:4], standarddate=last)

    def extent(self, did: etree._Element, record: Record) -> None:
        kind = NATURE.get(record.kind, record.kind)
        self._counted(did, "1", plural(kind), size_words(record))

    def _counted(self, did: etree._Element, quantity: str, unit: str, size: str = "", coverage: str = "whole") -> None:
        made = self.add(did, "physdescstructured", coverage=coverage, physdescstructuredtype="materialtype")
        self.add(made, "quantity", quantity)
        self.add(made, "unittype", unit)
        if size:
            self.add(made, "dimensions", size, unit="mm")

    def origination(self, did: etree._Element, takers: Sequence[PersonShown], facts: CollectionFacts) -> None:
        for one in takers:
            made = self.add(did, "origination")
            self.person(made, authority_form(one, facts.people), "photographer")

    def person(self, parent: etree._Element, words: str, relator: str) -> None:
        self.add(self.add(parent, "persname", relator=relator), "part", words)

    def note(self, did: etree._Element, words: str) -> None:
        self.add(did, "didnote", words)

    def scans(self, did: etree._Element, scans: Sequence[tuple[str, str]]) -> None:
        """A daoset needs two; one scan stands alone."""
        parent = self.add(did, "daoset", coverage="whole") if len(scans) > 1 else did
        for path, side in scans:
            dao = self.add(
                parent, "dao", daotype="derived", href=f"../{path}", coverage="whole" if side == "recto" else "part"
            )
            self.add(self.add(dao, "descriptivenote"), "p", side)

    def access_points(self, item: etree._Element, record: Record, facts: CollectionFacts) -> None:
        made = self.element("controlaccess")
        for one in record.people:
            self.person(made, authority_form(one, facts.people), RELATORS.get(one.role, one.role))
        self._place(made, record)
        if process := record.words("process"):
            self.genre(made, process, process_term(record))
        for told in record.all("keyword"):
            self.add(self.add(made, "subject"), "part", told.words)
        if len(made):
            item.append(made)

    def _place(self, made: etree._Element, record: Record) -> None:
        told = record.first("place")
        if told is None:
            return
        place = place_of(record)
        name = self.add(made, "geogname")
        self.add(name, "part", full_name(place) if place else told.words)
        if place is not None and place.lat is not None and place.lon is not None:
            where = f"{place.lat:.2f},{place.lon:.2f}"
            self.add(name, "geographiccoordinates", where, coordinatesystem="WGS84")

    def genre(self, made: etree._Element, words: str, term: str) -> None:
        known = {"source": "aat", "identifier": term} if term else {}
        self.add(self.add(made, "genreform", **known), "part", words)

    def top(self, facts: CollectionFacts, holding: Extent) -> etree._Element:
        """Everything above the components."""
        ead = self.element("ead")
        self._control(ead, facts)
        archdesc = self.add(ead, "archdesc", level="collection")
        self._collection(archdesc, facts, holding)
        return ead

    def _control(self, ead: etree._Element, facts: CollectionFacts) -> None:
        control = self.add(ead, "control")
        self.add(control, "recordid", f"urn:uuid:{facts.id}")
        title = self.add(self.add(self.add(control, "filedesc"), "titlestmt"), "titleproper")
        title.text = clean(f"{facts.title}: a finding aid")
        self.add(control, "maintenancestatus", value="new")
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
        event = self.add(self.add(control, "maintenancehistory"), "maintenanceevent")
        self.add(event, "eventtype", value="created")
        self.add(event, "eventdatetime", facts.on_day.isoformat(), standarddatetime=facts.on_day.isoformat())
        self.add(event, "agenttype", value="machine")
        self.add(event, "agent", SOFTWARE)

    def _collection(self, archdesc: etree._Element, facts: CollectionFacts, holding: Extent) -> None:
        did = self.add(archdesc, "did")
        self.repository(did, facts)
        self.add(did, "unitid", f"urn:uuid:{facts.id}")
        self.add(did, "unittitle", facts.title)
        self.date_range(did, holding)
        self.extents(did, holding)
        for name in list(holding.creators)[:3]:
            self.person(self.add(did, "origination"), name, "photographer")
        self.languages(did, facts)
        for part in collection_notes(facts, holding):
            archdesc.append(self.paragraphs(*part))

    def repository(self, did: etree._Element, facts: CollectionFacts) -> None:
        self.add(self.add(self.add(did, "repository"), "corpname"), "part", repository_of(facts))

    def extents(self, did: etree._Element, holding: Extent) -> None:
        for kind, count in holding.kinds.most_common():
            coverage = "whole" if len(holding.kinds) == 1 else "part"
            self._counted(did, str(count), plural(kind), coverage=coverage)

    def languages(self, did: etree._Element, facts: CollectionFacts) -> None:
        made = self.add(did, "langmaterial")
        self.add(made, "language", language_name(facts.language), langcode=language_code(facts.language))


def dated(dialect: Dialect, did: etree._Element, display: str, edtf: str) -> None:
    """A date in EAD3: `standarddate` only for what it may hold, and how sure in `certainty`."""
    if not edtf:
        dialect.add(did, "unitdate", display or "undated", unitdatetype="inclusive")
        return
    parsed = parse(edtf)
    made = dialect.add(did, "unitdatestructured", unitdatetype="inclusive")
    plain, first, last = plain_iso(parsed), parsed.earliest, parsed.latest
    sure = {"certainty": "approximate"} if parsed.qualified else {}
    bounds = {
        name: str(day) for name, day in (("notbefore", first), ("notafter", last)) if day and 0 <= day.year <= 9999
    }
    if sure:
        made.set("certainty", "approximate")
    single = dialect.add(made, "datesingle", display)
    if plain and not parsed.qualified:
        single.set("standarddate", plain)
    else:
        for name, day in bounds.items():
            single.set(name, day)


class Ead2002(Dialect):
    """EAD 2002 (deprecated, still asked for)."""

    namespace = "urn:isbn:1-931666-22-9"
    name = "ead2002"
    spaces: Any = {None: "urn:isbn:1-931666-22-9"}  # noqa: RUF012  # read only
    dsc = {"type": "combined"}  # noqa: RUF012  # read only

    def label(self, words: str) -> dict[str, str]:
        return {"label": words}

    def container(self, did: etree._Element, kind: str, label: str) -> None:
        self.add(did, "container", label, type=kind)

    def unitid(self, did: etree._Element, number: str, ident: str) -> None:
        self.add(did, "unitid", number)
        self.add(did, "unitid", f"urn:uuid:{ident}", type="uuid")

    def date(self, did: etree._Element, record: Record) -> None:
        parsed = parse(record.edtf) if record.edtf else None
        first, last = (parsed.earliest, parsed.latest) if parsed else (None, None)
        known = first and last and 0 <= first.year <= 9999 and 0 <= last.year <= 9999
        normal = {"normal": f"{first}/{last}"} if known else {}
        self.add(did, "unitdate", record.date_display, type="inclusive", **normal)

    def date_range(self, did: etree._Element, holding: Extent) -> None:
        bounds = f"{holding.earliest or holding.latest}/{holding.latest or holding.earliest}"
        known = {} if holding.years == "undated" else {"normal": bounds}
        self.add(did, "unitdate", holding.years, type="inclusive", **known)

    def _counted(self, did: etree._Element, quantity: str, unit: str, size: str = "", coverage: str = "whole") -> None:
        made = self.add(did, "physdesc")
        self.add(made, "extent", f"{quantity} {unit}")
        if size:
            self.add(made, "dimensions", size)

    def person(self, parent: etree._Element, words: str, relator: str) -> None:
        self.add(parent, "persname", words, role=relator)

    def note(self, did: etree._Element, words: str) -> None:
        self.add(self.add(did, "note"), "p", words)

    def scans(self, did: etree._Element, scans: Sequence[tuple[str, str]]) -> None:
        for path, side in scans:
            dao = etree.SubElement(did, self.tag("dao"), nsmap={"xlink": XLINK})
            dao.set(f"{{{XLINK}}}href", f"../{path}")
            dao.set(f"{{{XLINK}}}title", side)

    def _place(self, made: etree._Element, record: Record) -> None:
        if (told := record.first("place")) is not None:
            place = place_of(record)
            self.add(made, "geogname", full_name(place) if place else told.words)

    def genre(self, made: etree._Element, words: str, term: str) -> None:
        known = {"source": "aat", "authfilenumber": term} if term else {}
        self.add(made, "genreform", words, **known)

    def access_points(self, item: etree._Element, record: Record, facts: CollectionFacts) -> None:
        super().access_points(item, record, facts)
        for subject in item.iter(self.tag("subject")):
            subject.text = subject[0].text
            subject.remove(subject[0])

    def _control(self, ead: etree._Element, facts: CollectionFacts) -> None:
        header = self.add(ead, "eadheader")
        self.add(header, "eadid", f"urn:uuid:{facts.id}")
        about = self.add(header, "filedesc")
        self.add(self.add(about, "titlestmt"), "titleproper", f"{facts.title}: a finding aid")
        self.add(self.add(about, "publicationstmt"), "publisher", repository_of(facts))
        profile = self.add(header, "profiledesc")
        self.add(profile, "creation", f"{SOFTWARE}, {facts.on_day.isoformat()}")
        self.add(self.add(profile, "langusage"), "language", "English", langcode="eng")
        self.add(profile, "descrules", f"{DACS}. The description may be used freely: {DESCRIPTION_RIGHTS}")

    def repository(self, did: etree._Element, facts: CollectionFacts) -> None:
        self.add(self.add(did, "repository"), "corpname", repository_of(facts))


XLINK = "http://www.w3.org/1999/xlink"

_LANGUAGES = {
    "en": ("English", "eng"), "et": ("Estonian", "est"), "mi": ("Maori", "mao"), "de": ("German", "ger"),
    "sv": ("Swedish", "swe"), "ru": ("Russian", "rus"), "fi": ("Finnish", "fin"), "lv": ("Latvian", "lav"),
    "fr": ("French", "fre"), "es": ("Spanish", "spa"), "it": ("Italian", "ita"), "he": ("Hebrew", "heb"),
    "ar": ("Arabic", "ara"), "nl": ("Dutch", "dut"), "pl": ("Polish", "pol"), "pt": ("Portuguese", "por"),
}  # fmt: skip
"""ISO 639-1 to name and ISO 639-2/B; anything else stands as `und` with its own tag as the name."""


def language_name(tag: str) -> str:
    return _LANGUAGES.get(tag.split("-")[0].lower(), (tag or "undetermined", ""))[0]


def language_code(tag: str) -> str:
    return _LANGUAGES.get(tag.split("-")[0].lower(), ("", "und"))[1]


def repository_of(facts: CollectionFacts) -> str:
    """DACS 2.2: the archive's name; before one is known, who holds the collection."""
    return facts.archive.repository or facts.holder or "Repository not yet named"


def collection_notes(facts: CollectionFacts, holding: Extent) -> list[tuple[str, list[str]]]:
    """DACS 4.1, 5.1, 5.2, 6.1, 3.1, 3.2 for the whole collection, in words: (element, paragraphs)."""
    closed = "The open part may be shown. What names people taken as living is in a closed part, by item, with dates."
    notes = [
        ("accessrestrict", [closed]),
        ("userestrict", [f"{facts.rights}: the family states facts; the archive replaces this neutral statement."]),
        (
            "custodhist",
            [*facts.custody, f"Held by {facts.holder or 'the family'} until the transfer of {facts.on_day}."],
        ),
    ]
    if facts.accession:
        notes.append(("acqinfo", [f"Accession {facts.accession}."]))
    if not facts.originals:
        notes.append(
            ("originalsloc", [f"The originals stay with {facts.holder or 'the family'}; scans were handed over."])
        )
    notes.append(
        (
            "scopecontent",
            [f"{holding.words}; {holding.years}. Each item is described with what was told of it and by whom."],
        )
    )
    arrangement = "By container: box, then folder, then the item's place."
    if holding.found_in:
        found = "; ".join(f"{place} ({count})" for place, count in holding.found_in.items())
        arrangement += f" Before rehousing they were found in: {found}."
    notes.append(("arrangement", [arrangement]))
    return notes


EAD3 = Dialect()
EAD2002 = Ead2002()
