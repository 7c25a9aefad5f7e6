"""The record in force (rules of our own: settlement, surer, nearer the event, later in the log)."""

from dataclasses import replace
from typing import Any

import pytest

from boxlore.core.dates.edtf import parse
from boxlore.core.dates.reading import DateReading
from boxlore.core.people.person import Person
from boxlore.core.people.reference import PersonRef
from boxlore.core.places.reading import Place, PlaceReading
from boxlore.core.records.in_force import build
from boxlore.core.records.item_record import MarkerRows, Material, Record, Related, ScanFile, StatementView
from boxlore.core.records.marks import Mark
from boxlore.core.statements import KEEPER, Kind, Reading, Said, Source, Statement, Subject, Sure, Unreadable

INSCRIPTION, NARRATOR = Source(Said.INSCRIPTION, "verso"), Source(Said.NARRATOR, "leida")
LEIDA = Person(id="leida", name="Leida Rourke", sort_name="Rourke, Leida", forms=("Leida Rourke",), calls=("Leida",))


def said(ident: str, field: str, words: str, **more: Any) -> Statement:
    more.setdefault("recorded_at", f"2026-01-01T00:00:0{ident[-1]}.000Z")
    return Statement(id=ident, act="act", subject=Subject(Kind.ITEM, "item"), field=field, words=words, **more)


def dated(earliest: str, latest: str, *, asks: bool = False) -> Reading:
    return Reading("date", DateReading.from_edtf(f"{earliest}/{latest}"), "test", asks=asks)


def record(*rows: tuple[Statement, Reading | None], **more: Any) -> Record:
    material = Material(id="item", number="TRA-0001", statements=rows, **more)
    return build(material, {"leida": LEIDA}, {"leida": "Leida Rourke"})


PREFERENCES = [
    ("surer", {"sure": Sure.LIKELY}, {"sure": Sure.SURE}),
    ("nearer the event", {"source": NARRATOR}, {"source": INSCRIPTION}),
    ("narrator before keeper", {"source": KEEPER}, {"source": NARRATOR}),
    ("later in the log", {"source": KEEPER}, {"source": KEEPER}),
    ("surer before nearer", {"source": INSCRIPTION, "sure": Sure.GUESS}, {"source": KEEPER}),
    ("a guess before a file", {"source": Source(Said.FILE)}, {"source": NARRATOR, "sure": Sure.GUESS}),
]


@pytest.mark.parametrize(("why", "loser", "winner"), PREFERENCES, ids=[row[0] for row in PREFERENCES])
def test_what_is_in_force(why: str, loser: dict[str, Any], winner: dict[str, Any]) -> None:
    made = record((said("s1", "title", "one", **loser), None), (said("s2", "title", "two", **winner), None))
    assert made.words("title") == "two"
    assert [told.words for told in made.all("title")] == ["two", "one"]


def test_a_settlement_goes_before_all() -> None:
    rows = ((said("s1", "title", "settled", sure=Sure.GUESS), None), (said("s2", "title", "other"), None))
    assert record(*rows, chosen={"title": "s1"}).words("title") == "settled"


def test_stories_gather_in_the_order_told() -> None:
    made = record((said("s1", "story", "first"), None), (said("s2", "story", "second"), None))
    assert [told.words for told in made.all("story")] == ["first", "second"]


def test_asked_and_not_known_is_no_value_but_is_remembered() -> None:
    made = record((said("s1", "place", "", sure=Sure.NOT_KNOWN), None))
    assert made.first("place") is None
    assert made.not_known == {"place"}
    answered = record((said("s1", "place", "", sure=Sure.NOT_KNOWN), None), (said("s2", "place", "Reval"), None))
    assert answered.not_known == frozenset()


def test_disjoint_dates_are_a_conflict_and_meeting_ones_are_not() -> None:
    early, late = dated("1912-01-01", "1912-12-31"), dated("1913-01-01", "1914-12-31")
    apart = record((said("s1", "date", "a"), early), (said("s2", "date", "b"), late))
    assert [conflict.field for conflict in apart.conflicts] == ["date"]
    unbounded = record((said("s1", "date", "a"), early), (said("s2", "date", "b"), dated("1912-06-01", "..")))
    assert unbounded.conflicts == ()


def test_a_settled_conflict_is_closed_and_a_later_statement_opens_it_again() -> None:
    rows = [
        (said("s1", "date", "a"), dated("1912-01-01", "1912-12-31")),
        (said("s2", "date", "b"), dated("1913-01-01", "1913-12-31")),
    ]
    settled = frozenset({"s1", "s2"})
    assert record(*rows, settled=settled, chosen={"date": "s1"}).conflicts == ()
    doubtful = {"date": ""}
    assert record(*rows, settled=settled, chosen=doubtful).conflicts == ()
    rows.append((said("s3", "date", "c"), dated("1920-01-01", "1920-12-31")))
    (again,) = record(*rows, settled=settled, chosen={"date": "s1"}).conflicts
    assert {view.statement for view in again.told} == {"s1", "s3"}  # s2 was passed over, and stays so
    (undecided,) = record(*rows, settled=settled, chosen=doubtful).conflicts
    assert "s3" in {view.statement for view in undecided.told}
    rows.append((said("s4", "date", "d"), dated("1925-01-01", "1925-12-31")))
    assert record(*rows, settled=settled, chosen={"date": "s1"}).conflicts


def test_a_statement_that_agrees_with_the_chosen_one_opens_nothing() -> None:
    rows = [
        (said("s1", "date", "a"), dated("1912-01-01", "1912-12-31")),
        (said("s2", "date", "b"), dated("1913-01-01", "1913-12-31")),
        (said("s3", "date", "c"), dated("1912-05-01", "1912-05-31")),
    ]
    assert record(*rows, settled=frozenset({"s1", "s2"}), chosen={"date": "s1"}).conflicts == ()


def test_another_name_at_a_settled_marker_opens_it_again() -> None:
    names = [(said(f"s{at}", "person", name), None) for at, name in enumerate(("Leida", "Liisi"), 1)]
    marker = MarkerRows(id="m", scan="scan", number=1, area=(0.5, 0.25), statements=names)
    weighed = {"settled": frozenset({"s1", "s2"}), "chosen": {"person": "s1"}}
    assert record(markers=[marker], **weighed).conflicts == ()
    marker = replace(marker, statements=[*names, (said("s3", "person", "Helmi"), None)])
    (again,) = record(markers=[marker], **weighed).conflicts
    assert {view.statement for view in again.told} == {"s1", "s3"}


def test_a_reading_that_asks_is_not_used() -> None:
    made = record((said("s1", "date", "7/4/52"), dated("1952-04-07", "1952-07-04", asks=True)))
    first = made.first("date")
    assert first is not None and first.asks and not first.value
    assert made.date_display == "7/4/52"
    assert made.formal_date == "undated; told as “7/4/52”"  # DACS 2.4, from memory: a date is what somebody could read
    assert record().date_display == record().formal_date == "undated"
    assert record((said("s1", "date", "Undated"), None)).formal_date == "Undated"  # and it is not said twice


def test_markers_come_first_and_nobody_twice() -> None:
    known = Reading("person", PersonRef("leida"), "registry")
    marker = MarkerRows(
        id="m", scan="scan", number=1, area=(0.5, 0.25), statements=[(said("s1", "person", "Leida"), known)]
    )
    made = record(
        (said("s2", "person", "L. Rourke"), known),
        (said("s3", "person", "the tall man"), None),
        (said("s4", "photographer", "Leida"), known),
        markers=[marker],
    )
    assert [(one.role, one.name, one.number) for one in made.people] == [
        ("person", "Leida Rourke", 1),
        ("person", "the tall man", 0),
        ("photographer", "Leida Rourke", 0),
    ]
    assert made.people[0].area == (0.5, 0.25)


def test_a_name_that_is_corrected_keeps_its_row_and_position() -> None:
    rows = (
        (said("s2", "person", "Anna Tamm", replaces="s1"), None),
        (said("s3", "person", "Ruth"), None),
        (said("s4", "row", "s1 back 2"), None),
        (said("s5", "row", "s3 front 1"), None),
        (said("s6", "row", "s3"), None),  # an older log may hold what is no place
    )
    assert [(one.name, one.row, one.position) for one in record(*rows).shown()] == [
        ("Anna Tamm", "back", 2),
        ("Ruth", "front", 1),
    ]


def test_markers_that_nobody_is_named_at() -> None:
    asked = [(said("s1", "person", "", sure=Sure.NOT_KNOWN), None)]
    markers = [
        MarkerRows(id="m", scan="scan", number=1, area=(0.1, 0.1), statements=[(said("s2", "person", "Anna"), None)]),
        MarkerRows(id="n", scan="scan", number=2, area=(0.2, 0.1), statements=asked),
        MarkerRows(id="o", scan="scan", number=3, area=(0.3, 0.1)),
    ]
    assert record(markers=markers).unnamed == (("scan", 2, (0.2, 0.1)), ("scan", 3, (0.3, 0.1)))


def test_two_people_at_one_marker_are_a_conflict() -> None:
    rows = [(said("s1", "person", "Anna"), None), (said("s2", "person", "Ruth"), None)]
    made = record(markers=[MarkerRows(id="m", scan="scan", number=3, area=(0.1, 0.1), statements=rows)])
    assert [conflict.why for conflict in made.conflicts] == ["marker 3 is said to be different people"]
    assert [one.name for one in made.shown()] == ["Ruth"]


def test_the_newest_change_of_item_and_markers_is_known() -> None:
    marker = MarkerRows(id="m", scan="s", number=1, area=(0.1, 0.1), statements=[(said("s9", "person", "Anna"), None)])
    made = record((said("s1", "size", "108 x 165"), None), markers=[marker])
    assert made.changed_at == "2026-01-01T00:00:09.000Z"
    assert made.size_mm == (108.0, 165.0)


def test_everything_of_the_material_stands_in_the_record() -> None:
    picture = ScanFile(
        id="scan", path="scans/a.tif", sha256="0" * 64, bytes=9, width=3, height=2, media_type="image/tiff"
    )
    pair = Related(kind="same_picture", number="TRA-0002")
    marker = MarkerRows(
        id="m", scan="scan", number=1, area=(0.1, 0.1), statements=[(said("s1", "person", "Anna"), None)]
    )
    made = record(
        (said("s2", "kind", "negative"), None),
        (said("s3", "found_in", "Leida's tin"), None),
        (said("s4", "audience", "family"), None),
        (said("s5", "audience", "story=keeper"), None),
        scans=[picture],
        related=[pair],
        markers=[marker],
        path=[("box", "3"), ("folder", "12")],
        position=4,
    )
    assert (made.id, made.number, made.kind, made.found_in) == ("item", "TRA-0001", "negative", "Leida's tin")
    assert (made.scans, made.related, made.audiences) == ((picture,), (pair,), ("family", "story=keeper"))
    assert made.mark == Mark((("box", "3"), ("folder", "12")), 4)
    assert made.changed_at == "2026-01-01T00:00:05.000Z"


def test_a_record_of_nothing_told() -> None:
    made = record()
    assert (made.kind, made.mark, made.found_in, made.size_mm, made.changed_at) == ("print", None, "", (), "")
    assert (made.people, made.unnamed, made.nameless, made.audiences) == ((), (), (), ())


def test_a_statement_as_outputs_see_it() -> None:
    told = said(
        "s1", "story", "We hid.", source=NARRATOR, audience="family", sitting="visit", moment=1500, language="et"
    )
    (view,) = record((told, None)).all("story")
    assert view == StatementView(
        statement="s1",
        field="story",
        words="We hid.",
        language="et",
        source=NARRATOR,
        said_by="Leida Rourke",
        sure=Sure.SURE,
        audience="family",
        recorded_at="2026-01-01T00:00:01.000Z",
        sitting="visit",
        moment=1500,
        value=None,
        asks=False,
    )
    (unsourced,) = record((said("s1", "story", "We hid."), None)).all("story")
    assert (unsourced.said_by, unsourced.sitting, unsourced.moment) == ("", "", None)


def test_rows_and_positions_of_those_whom_nobody_knows() -> None:
    rows = (
        (said("s1", "person", "", sure=Sure.NOT_KNOWN), None),
        (said("s2", "person", "", sure=Sure.NOT_KNOWN), None),
        (said("s3", "person", "Ruth"), None),
        (said("s4", "place", "", sure=Sure.NOT_KNOWN), None),
        (said("s5", "row", "s1 back 2"), None),
        (said("s6", "row", "s3 back 1"), None),
        (said("s7", "row", "s4 back 3"), None),
    )
    assert record(*rows).nameless == (("back", 2),)


def test_a_person_of_the_registry_is_known_and_one_who_is_only_told_is_not() -> None:
    known = Reading("person", PersonRef("leida"), "registry")
    made = record((said("s1", "person", "L. Rourke"), known), (said("s2", "person", "the tall man"), None))
    assert [(shown.person, shown.name, shown.scan) for shown in made.people] == [
        ("leida", "Leida Rourke", ""),
        ("", "the tall man", ""),
    ]


def test_what_no_output_tells_stands_beside_what_is_told() -> None:
    rows = ((said("s1", "audience", "family"), None), (said("s2", "title", "Quay"), None))
    assert record(*rows).words("title") == "Quay"


def test_a_name_is_given_once_in_each_role() -> None:
    rows = [said(f"s{at}", role, "Ruth") for at, role in enumerate(("person", "person", "named", "named"), 1)]
    made = record(*((row, None) for row in rows))
    assert [(shown.role, shown.name, shown.row, shown.position) for shown in made.people] == [
        ("person", "Ruth", "", 0),
        ("named", "Ruth", "", 0),
    ]


def test_a_conflict_says_what_it_is_about_and_why() -> None:
    apart = record(
        (said("s1", "date", "a"), dated("1912-01-01", "1912-12-31")),
        (said("s2", "date", "b"), dated("1920-01-01", "1920-12-31")),
    )
    assert [(conflict.field, conflict.why) for conflict in apart.conflicts] == [
        ("date", "these dates cannot both be so")
    ]
    names = [(said(f"s{at}", "person", name), None) for at, name in enumerate(("Anna", "Ruth"), 1)]
    made = record(markers=[MarkerRows(id="m", scan="scan", number=3, area=(0.1, 0.1), statements=names)])
    assert [(conflict.field, conflict.why) for conflict in made.conflicts] == [
        ("person", "marker 3 is said to be different people")
    ]


def test_the_same_name_said_twice_at_a_marker_is_no_conflict() -> None:
    names = [(said(f"s{at}", "person", "Anna"), None) for at in (1, 2)]
    assert record(markers=[MarkerRows(id="m", scan="s", number=1, area=(0.1, 0.1), statements=names)]).conflicts == ()


def test_dates_that_meet_on_one_day_are_no_conflict() -> None:
    first, second = dated("1912-01-01", "1912-06-14"), dated("1912-06-14", "1912-12-31")
    assert record((said("s1", "date", "a"), first), (said("s2", "date", "b"), second)).conflicts == ()
    day_after = dated("1912-06-15", "1912-12-31")
    assert record((said("s1", "date", "a"), first), (said("s2", "date", "b"), day_after)).conflicts


def at(name: str, country: str = "EE", *more: Place, asks: bool = False) -> Reading:
    place = Place(name=name, city=name, country={"EE": "Estonia"}.get(country, country), country_code=country)
    return Reading("place", PlaceReading(name, "match", (place, *more)), "test", asks=asks)


def on(edtf: str, *alternatives: str, asks: bool = False) -> Reading:
    return Reading("date", DateReading(edtf, parse(edtf), None, alternatives), "test", asks=asks)


REGION = Reading("place", PlaceReading("Estonia", "area", (Place(name="Estonia", country_code="EE"),)), "test")
TALLINN = Place(name="Tallinn", city="Tallinn", lat=59.437, lon=24.7535)
NARVA = Place(name="Narva", city="Narva", lat=59.3772, lon=28.1903)


def test_what_nobody_settled_is_asserted_by_nothing() -> None:
    rows = (
        (said("s1", "date", "1931", source=NARRATOR, sure=Sure.LIKELY), on("1931")),
        (said("s2", "date", "1932", source=INSCRIPTION), on("1932")),
        (said("s3", "date", "about 1934"), on("1934~")),
        (said("s4", "date", "1931"), on("1931")),
    )
    made = record(*rows)
    assert made.words("date") == "1932 (written on the back) or 1931 (the keeper, Leida Rourke, likely)"
    assert (made.edtf, made.date_display, made.formal_date) == ("[1931,1932]", "1931 or 1932", "1931 or 1932")
    first = made.first("date")
    assert first is not None and first.sure is Sure.SURE
    assert [view.statement for view in made.rests_on("date")] == ["s2", "s4", "s1"]
    settled = record(*rows, settled=frozenset({"s1", "s2", "s3", "s4"}), chosen={"date": "s1"})
    assert settled.edtf == "1931" and not settled.undecided and len(settled.rests_on("date")) == 1


def test_what_the_keeper_left_open_is_asked_no_more_and_asserted_by_nothing() -> None:
    rows = ((said("s1", "date", "1931"), on("1931")), (said("s2", "date", "1940"), on("1940")))
    made = record(*rows, settled=frozenset({"s1", "s2"}), chosen={"date": ""})
    assert not made.conflicts and len(made.undecided) == 1 and made.edtf == "[1931,1940]"


def test_places_of_which_neither_lies_in_the_other_are_a_conflict() -> None:
    rows = (
        (said("s1", "place", "Reval", source=NARRATOR), at("Tallinn")),
        (said("s2", "place", "Otago"), at("O", "NZ")),
    )
    made = record(*rows)
    assert [conflict.why for conflict in made.conflicts] == ["neither of these places lies in the other"]
    assert made.words("place") == "Reval (Leida Rourke) or Otago (the keeper)" and made.place is None
    within = record(rows[0], (said("s2", "place", "Estonia"), REGION))
    assert not within.conflicts and within.place is not None and within.place.city == "Tallinn"
    cities = (replace(place, country="Estonia", country_code="EE") for place in (TALLINN, NARVA))
    readings = [Reading("place", PlaceReading("", "match", (place,)), "test") for place in cities]
    made = record(*((said(f"s{n}", "place", f"p{n}"), reading) for n, reading in enumerate(readings, 1)))
    assert made.conflicts and made.place is not None and (made.place.city, made.place.country_code) == ("", "EE")


def test_words_that_are_asked_about_are_in_conflict_if_nothing_that_they_may_mean_can_be() -> None:
    sure = (said("s1", "date", "May 1931"), on("1931-05"))
    assert not record(sure, (said("s2", "date", "3/5/31"), on("1931-03-05", "1931-05-03", asks=True))).conflicts
    made = record(sure, (said("s2", "date", "3/4/31"), on("1931-03-04", "1931-04-03", "no date", asks=True)))
    assert made.conflicts and not made.edtf and made.date_display == "3/4/31 (the keeper) or May 1931 (the keeper)"
    other = Place(name="Otago", country_code="NZ")
    told = (said("s1", "place", "Tallinn"), at("Tallinn"))
    assert not record(told, (said("s2", "place", "Reval"), at("Rewal", "PL", replace(TALLINN), asks=True))).conflicts
    assert record(told, (said("s2", "place", "Otago"), at("Otago", "AU", other, asks=True))).conflicts
    assert not record(told, (said("s2", "place", "the mill"), None)).conflicts
    assert not record(sure, (said("s2", "date", "?"), Reading("date", Unreadable("{"), "test"))).conflicts


def test_of_a_wider_and_a_narrower_answer_the_narrower_stands() -> None:
    wide, narrow = (
        (said("s2", "date", "1931", source=INSCRIPTION), on("1931")),
        (said("s1", "date", "May"), on("1931-05")),
    )
    assert record(narrow, wide).words("date") == "May"
    day = (said("s3", "date", "day", source=KEEPER), on("1931-05-03"))
    assert [view.words for view in record(narrow, wide, day).all("date")] == ["day", "1931", "May"]
    assert record(narrow, wide, chosen={"date": "s2"}, settled=frozenset({"s1", "s2"})).words("date") == "1931"
    unsure = replace(narrow[0], sure=Sure.GUESS), narrow[1]
    assert record(unsure, wide).words("date") == "1931"
    country = (said("s2", "place", "Estonia", source=INSCRIPTION), REGION)
    assert record((said("s1", "place", "Reval"), at("Tallinn")), country).words("place") == "Reval"
    assert record((said("s1", "place", "a"), None), country).words("place") == "Estonia"


def test_who_is_disputed_at_a_marker_is_perhaps_there() -> None:
    names = [(said(f"s{at}", "person", name, source=NARRATOR), None) for at, name in enumerate(("Anna", "Ruth"), 1)]
    markers = [
        MarkerRows(id="m", scan="s", number=1, area=(0.1, 0.1), statements=names),
        MarkerRows(id="n", scan="s", number=2, area=(0.2, 0.1), statements=[(said("s9", "person", "Tom"), None)]),
    ]
    made = record(markers=markers)
    assert [(shown.sure, shown.unsure) for shown in made.people] == [(Sure.GUESS, True), (Sure.SURE, False)]
    assert made.conflicts[0].words.endswith("“Anna” (Leida Rourke) or “Ruth” (Leida Rourke)")
    assert made.disputed("person") is None


SPEAKERS = [
    (Source(Said.INSCRIPTION, "recto"), "written on the front"),
    (Source(Said.INSCRIPTION), "written on the item"),
    (Source(Said.NARRATOR, "nobody"), "a narrator"),
    (Source(Said.DOCUMENT, "parish register"), "parish register"),
    (Source(Said.DOCUMENT), "a document"),
    (Source(Said.FILE), "a file"),
    (KEEPER, "the keeper"),
]


@pytest.mark.parametrize(("source", "wanted"), SPEAKERS)
def test_who_says_it_in_a_few_words(source: Source, wanted: str) -> None:
    view = record((said("s1", "date", "1931", source=source), None)).first("date")
    assert view is not None and view.speaker == wanted


FILE = Source(Said.FILE)


def test_what_a_file_says_stands_against_nobodys_word() -> None:
    told = (said("s2", "date", "1951", source=NARRATOR), dated("1951-01", "1951-12"))
    of_file = (said("s1", "date", "1932", source=FILE), dated("1932-01", "1932-12"))
    made = record(of_file, told)
    assert (made.conflicts, made.words("date"), made.somebody_told("date")) == ((), "1951", True)
    assert (record(of_file).words("date"), record(of_file).somebody_told("date")) == ("1932", False)
    assert len(record(of_file, (said("s3", "date", "1940", source=FILE), dated("1940", "1940"))).conflicts) == 1
    assert record(of_file, told, chosen={"date": "s1"}, settled=frozenset({"s1", "s2"})).words("date") == "1932"


def test_people_of_a_file_are_shown_until_somebody_says_who_it_is() -> None:
    aino, leida = (
        (said("s1", "person", "Aino", source=FILE), None),
        (said("s2", "person", "Leida", source=NARRATOR), None),
    )
    marker = MarkerRows(id="m", scan="scan", number=1, area=(0.5, 0.5), statements=[leida])
    assert [shown.name for shown in record(aino).people] == ["Aino"]
    assert [shown.name for shown in record(aino, leida).people] == ["Leida"]
    assert [shown.name for shown in record(aino, markers=[marker]).people] == ["Leida"]
    assert [view.words for view in record(aino, leida).all("person")] == ["Aino", "Leida"]
