"""The coverage of a place in DCMI Metadata Terms (DCMI Point and DCMI Box Encoding Schemes, 2006)."""

from dataclasses import replace
from datetime import date

from tests.every_row import every_row

from boxlore.core.crosswalk.dublin_core import (
    CNE,
    CollectionFacts,
    access_words,
    dcterms,
    oai_dc,
    one_date,
    other_names,
)
from boxlore.core.crosswalk.receiving_archive import NOT_SAID, Archive
from boxlore.core.dates.reading import DateReading
from boxlore.core.people.person import Person
from boxlore.core.places.reading import Place, PlaceReading
from boxlore.core.records.item_record import Conflict, PersonShown, Record, ScanFile, StatementView
from boxlore.core.statements import KEEPER, Sure

FACTS = CollectionFacts(id="c0", title="Tamm and Rourke", on_day=date(2026, 11, 25))


def record(place: Place, kind: str) -> Record:
    view = StatementView(
        statement="s", field="place", words=place.name, language="en", source=KEEPER, said_by="", sure=Sure.SURE,
        audience="anyone", recorded_at="", value=PlaceReading(place.name, kind, (place,)),
    )  # fmt: skip
    return Record(id="i", number="TRA-0042", told={"place": (view,)})


def test_an_area_is_a_box_and_a_town_a_point() -> None:
    otago = Place(name="Otago", country="New Zealand", box=(-46.7, 168.1, -44.0, 171.2))
    by_scheme = {value.scheme: value.words for _, value in dcterms(record(otago, "area"), FACTS)}
    box = "northlimit=-44.0; eastlimit=171.2; southlimit=-46.7; westlimit=168.1; name=Otago, New Zealand"
    assert by_scheme["dcterms:Box"] == box and "dcterms:Point" not in by_scheme
    town = Place(name="Tallinn", lat=59.437, lon=24.7535)
    by_scheme = {value.scheme: value.words for _, value in dcterms(record(town, "match"), FACTS)}
    assert by_scheme["dcterms:Point"] == "east=24.75; north=59.44; name=Tallinn" and "dcterms:Box" not in by_scheme


def test_an_archive_that_takes_more_takes_each_thing_once() -> None:
    archive = NOT_SAID.taking(("ead2002", "scans"))
    assert archive.wants("ead2002") and archive.takes.count("scans") == 1
    assert not Archive(takes=("scans",)).wants("rdf")


def test_what_is_disputed_is_given_whole_and_no_range_is_made_of_it() -> None:
    made = record(Place(name="Tallinn", city="Tallinn", country="Estonia", country_code="EE"), "match")
    first = made.told["place"][0]
    second = replace(first, statement="t", words="Narva")
    also = replace(first, statement="u", words="Estonia")
    dates = tuple(
        replace(first, statement=year, field="date", words=year, value=DateReading.from_edtf(year))
        for year in ("1931", "1940")
    )
    conflicts = (Conflict("place", (first, second), "they lie apart"), Conflict("date", dates, "they differ"))
    made = replace(made, told={"place": (first, second, also), "date": dates}, conflicts=conflicts)
    values = [(element, value.words) for element, value in dcterms(made, FACTS)]
    places = [words for element, words in values if element == "spatial"]
    assert places == ["Tallinn (the keeper) or Narva (the keeper)", "Estonia"]
    assert one_date(made) == "[1931,1940]"
    assert ("description", f"Sources disagree: {conflicts[1].words}; {conflicts[0].words}") in values


def told_name(words: str, sure: Sure = Sure.SURE, *, person: str = "", role: str = "person") -> PersonShown:
    view = StatementView(
        statement=words, field=role, words=words, language="en", source=KEEPER, said_by="", sure=sure,
        audience="anyone", recorded_at="",
    )  # fmt: skip
    return PersonShown(told=view, name=words, person=person, role=role)


def test_a_heading_is_a_name_without_how_sure_it_is() -> None:
    """Access points are controlled names (DACS 2.6 and part II, from memory): no phrases, no guesses, no doubt in them;
    a firm stands as it calls itself (AACR2 24.1, from memory)."""
    liisi = Person(id="l", name="Liisi Kuusk", sort_name="Tamm, Liisi", forms=(), calls=("Liisi",))
    doctor = Person(id="d", name="the doctor", sort_name="the doctor", forms=(), calls=())
    studio = Person(id="z", name="Zealandia Portraits", sort_name="Portraits, Zealandia", forms=(), calls=())
    facts = CollectionFacts(id="c", title="T", on_day=date(2026, 11, 25), people={"l": liisi, "z": studio, "d": doctor})
    record = Record(id="a", number="TRA-0001", people=(
        told_name("Liisi Kuusk", Sure.LIKELY, person="l"),
        told_name("Helmi Tamm", Sure.GUESS),
        told_name("a girl with a ribbon"),
        told_name("the doctor", person="d"),
        told_name("Zealandia Portraits", person="z", role="photographer"),
        told_name("Anna Lind", role="photographer"),
    ))  # fmt: skip
    values = [(name, value.words) for name, value in oai_dc(record, facts) if name in ("subject", "creator")]
    assert values == [("creator", "Zealandia Portraits"), ("creator", "Anna Lind"), ("subject", "Tamm, Liisi")]
    assert other_names(record, facts.people) == ["Liisi Kuusk is Tamm, Liisi."]


def test_rights_that_are_known_and_not_told_are_said_to_be_there() -> None:
    """DACS 4.4, ISO 15836 `rights` (from memory): a neutral statement alone says that nobody is known to hold them."""
    facts = CollectionFacts(id="c", title="T", on_day=date(2026, 11, 25))
    hidden = Record(id="a", number="TRA-0001", hidden=frozenset({"rights", "rights_holder", "date"}))
    kept = replace(facts, not_given=frozenset("a"))
    for named in (oai_dc, dcterms):
        values = [value.words for name, value in named(hidden, facts) if name == "rights"]
        assert values[0] == CNE and len(values) == 3 and "A rights holder is known" in values[2]
        assert not any("rights holder is known" in value.words for _, value in named(hidden, kept))


def test_an_item_without_its_scans_says_one_reason() -> None:
    """DACS 4.1: the reason of a restriction; an item that never had a scan has none."""
    facts = CollectionFacts(id="c", title="T", on_day=date(2026, 11, 25))
    scan = ScanFile(id="f", path="a.jpg", sha256="0", bytes=1, width=1, height=1, media_type="image/jpeg")
    item = Record(id="a", number="TRA-0001", closed_scans=True)
    assert access_words(item, facts) == []
    alone = replace(item, withheld=3)
    assert "Closed for the sake of people taken as living" in access_words(alone, facts)[0]
    until = replace(facts, closed_whole={"a": date(2031, 6, 30)})
    assert access_words(alone, until) == [
        "Closed until 2031-06-30 by those who gave it: only its number is in this part."
    ]
    assert "kept by the family" in access_words(alone, replace(facts, not_given=frozenset("a")))[0]
    assert "of a sheet" in access_words(replace(item, on_closed_sheet=True), facts)[0]
    assert "taken as living" in access_words(replace(item, scans=(scan,)), facts)[0]
    assert access_words(replace(item, scans=(scan,), closed_scans=False), facts) == []


ONE_DATES = [
    ("1936-02", "1936-02"),
    ("1930/1935", "1930-01-01/1935-12-31"),
    ("[1953,1954]", "[1953,1954]"),
    ("{1953,1954}", "{1953,1954}"),
    ("[1938-06-14,1938-06-15]", "[1938-06-14,1938-06-15]"),
]
"""EDTF -> what simple Dublin Core has (ISO 15836, date; EDTF level 2 sets: “one of” and “all of”)."""


@every_row(("edtf", "words"), ONE_DATES)
def test_a_choice_of_dates_is_no_range(edtf: str, words: str) -> None:
    view = StatementView(
        statement="s", field="date", words=edtf, language="en", source=KEEPER, said_by="", sure=Sure.SURE,
        audience="anyone", recorded_at="", value=DateReading.from_edtf(edtf),
    )  # fmt: skip
    assert one_date(Record(id="a", number="TRA-0001", told={"date": (view,)})) == words
