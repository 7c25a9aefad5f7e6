"""What a record still asks for (rules of our own: common practice, no source)."""

from dataclasses import replace

import pytest

from boxlore.core.dates.reading import DateReading
from boxlore.core.findings import Finding, Severity
from boxlore.core.people.person import Person
from boxlore.core.places.reading import Place, PlaceReading
from boxlore.core.records.item_record import Conflict, PersonShown, Record, ScanFile, StatementView
from boxlore.core.records.marks import Mark
from boxlore.core.rules.one_item import look_over
from boxlore.core.statements import KEEPER, Said, Source, Sure


def view(field: str, words: str, **more: object) -> StatementView:
    facts = {"source": KEEPER, "said_by": "", "sure": Sure.SURE, "audience": "anyone", "recorded_at": ""}
    return StatementView(statement=words, field=field, words=words, language="en", **{**facts, **more})  # type: ignore[arg-type]


def shown(name: str, **more: object) -> PersonShown:
    return PersonShown(told=view("person", name, **more), name=name)


WHOLE = Record(
    id="i",
    number="TRA-0042",
    mark=Mark((("box", "3"),), 4),
    told={field: (view(field, field),) for field in ("date", "place", "story")},
    people=(shown("Leida"),),
)


def rules(record: Record) -> list[tuple[str, Severity]]:
    return [(finding.rule, finding.severity) for finding in look_over(record, {})]


def without(*fields: str) -> Record:
    told = {field: rows for field, rows in WHOLE.told.items() if field not in fields}
    return replace(WHOLE, told=told, people=() if "person" in fields else WHOLE.people)


def test_a_whole_caption_asks_nothing() -> None:
    assert look_over(WHOLE, {}) == []


MISSING = [
    ("person", Severity.ASK, "Nobody has said who is in it."),
    ("date", Severity.ASK, "Nobody has said when it was taken."),
    ("place", Severity.ASK, "Nobody has said where it was taken."),
    ("story", Severity.NOTE, "No story or occasion is told."),
]


@pytest.mark.parametrize(("field", "severity", "message"), MISSING)
def test_what_is_missing_is_asked_for_unless_nobody_knows_it(field: str, severity: Severity, message: str) -> None:
    (finding,) = look_over(without(field), {})
    assert (finding.rule, finding.severity, finding.message) == (f"{field}.missing", severity, message)
    assert finding.source == "caption minimum (who, when, where, occasion): common practice, no source"
    assert look_over(replace(without(field), not_known=frozenset({field})), {}) == []


def test_an_occasion_does_for_a_story() -> None:
    occasion = {**without("story").told, "occasion": (view("occasion", "A wedding"),)}
    assert look_over(replace(WHOLE, told=occasion), {}) == []
    assert look_over(replace(without("story"), not_known=frozenset({"occasion"})), {}) == []


def test_someone_named_but_not_in_it_is_nobody_in_it() -> None:
    named = PersonShown(told=view("named", "Leida"), name="Leida", role="named")
    assert rules(replace(WHOLE, people=(named,))) == [("person.missing", Severity.ASK)]


def test_an_item_that_is_kept_nowhere() -> None:
    (finding,) = look_over(replace(WHOLE, mark=None), {})
    assert (finding.rule, finding.message) == ("kept.missing", "It has no box and folder yet.")


@pytest.mark.parametrize("field", ["date", "place"])
def test_words_that_can_be_read_in_two_ways(field: str) -> None:
    told = {**WHOLE.told, field: (view(field, "Easter  ’64", asks=True),)}
    (finding,) = look_over(replace(WHOLE, told=told), {})
    assert finding == Finding(
        rule=f"{field}.asks",
        severity=Severity.ASK,
        message=f"Which {field} is meant by “Easter ’64”?",
        because=("“Easter ’64” can be read in more than one way, or not at all",),
        source="common practice, no source",
    )


def test_a_name_that_two_people_have() -> None:
    (finding,) = look_over(replace(WHOLE, people=(shown("Leida", asks=True),)), {})
    assert (finding.rule, finding.severity, finding.message) == (
        "person.asks",
        Severity.ASK,
        "Which “Leida” is meant?",
    )


def test_sources_that_disagree_are_named_with_their_words() -> None:
    sides = view("date", "1931", said_by="Leida"), view("date", "1932")
    conflict = Conflict("date", sides, "these dates cannot both be so")
    (finding,) = look_over(replace(WHOLE, conflicts=(conflict,)), {})
    sentence, settle = finding.message.split(". ", 1)
    assert (finding.rule, sentence) == (
        "date.conflict",
        "Sources disagree, these dates cannot both be so: “1931” (Leida) or “1932” (the keeper)",
    )
    assert settle.startswith("To settle it: Ctrl+P")
    at_marker = Conflict("person", sides, "marker 3 is said to be different people")
    (finding,) = look_over(replace(WHOLE, conflicts=(at_marker,)), {})
    assert "To settle it: in a sitting F4" in finding.message


def test_long_words_are_cut_at_sixty_letters() -> None:
    told = {**WHOLE.told, "date": (view("date", 61 * "x", asks=True),)}
    (finding,) = look_over(replace(WHOLE, told=told), {})
    assert finding.message == f"Which date is meant by “{59 * 'x'}…”?"
    whole = {**WHOLE.told, "date": (view("date", 60 * "x", asks=True),)}
    assert f"“{60 * 'x'}”" in look_over(replace(WHOLE, told=whole), {})[0].message


@pytest.mark.parametrize(("side", "words", "name"), [("recto", "front", "TRA-0042_f"), ("verso", "back", "TRA-0042_b")])
def test_a_damaged_scan_is_named_with_what_to_do(side: str, words: str, name: str) -> None:
    scan = ScanFile(
        id="s", path="scans/a.jpg", sha256="0", bytes=1, width=3, height=2, media_type="image/jpeg", side=side
    )
    assert rules(replace(WHOLE, scans=(scan,))) == []
    (finding,) = look_over(replace(WHOLE, scans=(replace(scan, damaged=True),)), {})
    assert (finding.rule, finding.severity) == ("scan.damaged", Severity.ERROR)
    assert finding.message.startswith(f"The scan of the {words} is cut off or broken: scans/a.jpg.")
    assert f"scan the {words} again, name the file {name}, and take it in" in finding.message


def test_a_file_of_several_pages_of_which_one_is_seen_is_named() -> None:
    embedded = "pages: 3\nalso: scanned at home"
    scan = ScanFile(
        id="s", path="scans/a.tif", sha256="0", bytes=1, width=3, height=2, media_type="image/tiff", embedded=embedded
    )
    (finding,) = look_over(replace(WHOLE, scans=(scan,)), {})
    assert (finding.rule, finding.severity) == ("scan.pages", Severity.ASK)
    assert "The file scans/a.tif has 3 pages, and only the first is seen." in finding.message


def test_what_a_file_says_of_itself_is_only_asked_about() -> None:
    lines = "caption: Harbour\nDate: 1999\ndate: 2004-01-02\ntitle:\nkeywords: sea"
    scan = ScanFile(
        id="s",
        path="a.jpg",
        sha256="0",
        bytes=1,
        width=3,
        height=2,
        media_type="image/jpeg",
        side="verso",
        embedded=lines,
    )
    findings = look_over(replace(WHOLE, scans=(scan,)), {})
    assert [(finding.rule, finding.severity, finding.message) for finding in findings] == [
        ("scan.caption", Severity.ASK, "The verso scan's file says (caption): “Harbour”. Is that so of the picture?"),
        ("scan.date", Severity.ASK, "The verso scan's file says (date): “2004-01-02”. Is that so of the picture?"),
    ]
    assert {finding.source for finding in findings} == {
        "the scan's own facts are not the picture's: common practice, no source"
    }


def test_what_the_reading_of_a_place_asks_is_asked_of_the_item() -> None:
    asks = Finding(rule="place.country", severity=Severity.ASK, message="Estonia was no state in 1912.", source="atlas")
    place = PlaceReading("Reval", "match", (Place(name="Tallinn"),), (asks,))
    told = {**WHOLE.told, "place": (view("place", "Reval", value=place),)}
    (finding,) = look_over(replace(WHOLE, told=told), {})
    assert (finding.rule, finding.severity, finding.source) == ("place.country", Severity.NOTE, "atlas")


@pytest.mark.parametrize(
    ("life", "rule"),
    [
        ({"born": DateReading.from_edtf("1940")}, "date.before-birth"),
        ({"died": DateReading.from_edtf("1920")}, "date.after-death"),
    ],
)
def test_a_picture_from_outside_a_life_is_asked_about(life: dict[str, DateReading], rule: str) -> None:
    leida = Person(id="leida", name="Leida", sort_name="Leida", forms=("Leida",), calls=("Leida",), **life)
    told = {**WHOLE.told, "date": (view("date", "1931", value=DateReading.from_edtf("1931")),)}
    record = replace(WHOLE, told=told, people=(replace(shown("Leida"), person="leida"),))
    (finding,) = look_over(record, {"leida": leida})
    assert finding.rule == rule and finding.because == ("picture 1931",)


def test_what_an_archive_remarked_is_asked_about_with_who_wrote_it() -> None:
    remarked = view(
        "archive_remark", "Mould found;\nquarantined", source=Source(Said.DOCUMENT, "receipt of Port Sorell")
    )
    (finding,) = look_over(replace(WHOLE, told={**WHOLE.told, "archive_remark": (remarked,)}), {})
    assert (finding.rule, finding.severity, finding.source) == (
        "archive.remark",
        Severity.ASK,
        "what the archive wrote",
    )
    assert finding.message == (
        "The archive remarks: “Mould found; quarantined” (receipt of Port Sorell). An answer goes with the next "
        "update: boxlore tell TRA-0042 archive_answer TEXT."
    )
    asked, answered = (replace(remarked, recorded_at=when) for when in ("2026-11-25T10:00", "2026-11-27T10:00"))
    answer = view("archive_answer", "Aired and dried.", recorded_at="2026-11-26T10:00")
    told = {**WHOLE.told, "archive_remark": (asked, answered), "archive_answer": (answer,)}
    assert len(look_over(replace(WHOLE, told=told), {})) == 1, "what was remarked after the answer waits for one"


def test_what_only_a_file_says_is_asked_about_still() -> None:
    of_file = {"source": Source(Said.FILE)}
    told = {**WHOLE.told, "date": (view("date", "1932", **of_file),)}
    asked = rules(replace(WHOLE, told=told, people=(shown("Aino", **of_file),)))
    assert asked == [("person.missing", Severity.ASK), ("date.missing", Severity.ASK)]
