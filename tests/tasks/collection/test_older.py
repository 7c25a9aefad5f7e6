"""A collection made by an earlier version opens and comes to what it came to then.

`older/` holds one that the version of revision 1d8e6e4 made (`older/make.py` says how), with what that version read
out of it (`came_to.json`). The rules are our own, no outside source.
"""

import json
import shutil
import sqlite3
from collections.abc import Iterator
from dataclasses import asdict
from pathlib import Path
from typing import Any

import pytest
from tests.exports.earlier_linked_data import as_once

from boxlore.core.fields.areas import AREA_WORDS
from boxlore.core.fields.codec import Codec
from boxlore.core.fields.originals import SIZE_WORDS
from boxlore.core.fields.pictures import FILE_WORDS, LOOKS_WORDS, SHOWS_WORDS
from boxlore.core.fields.sittings import RECORDING_WORDS, SHOWN_WORDS
from boxlore.core.fields.table import FIELDS
from boxlore.core.originals.moves import close_up
from boxlore.core.records.audience import To
from boxlore.core.records.item_record import Record
from boxlore.core.records.terms import ANYONE, consent_words
from boxlore.core.statements import Kind, Said, Subject
from boxlore.exports.rdf import read_triples, record_triples
from boxlore.store import schema
from boxlore.tasks.archive.transfer_context import facts_of, thing_lines
from boxlore.tasks.check import check
from boxlore.tasks.collection.items_by_mark import holders, marks_of
from boxlore.tasks.collection.opening import DATABASE, Collection, open_collection
from boxlore.tasks.collection.records_for_outputs import record_of, seen_by
from boxlore.tasks.originals import climate, housing_now, survey
from boxlore.tasks.scans import fixity
from boxlore.tasks.scans.fixity_events import events
from boxlore.tasks.sitting import course, item_list, recordings, time_log
from boxlore.tasks.telling.places import own_places
from boxlore.tasks.telling.statements import Teller, Telling

OLDER = Path(__file__).parent / "older"
THEN: dict[str, Any] = json.loads((OLDER / "came_to.json").read_text(encoding="utf-8"))

READ_NOW = {("records", "TRA-0001", "size"): [150.0, 110.0]}
"""`150x110 mm` was a size for a survey and for a box then, and none for a record; there is one grammar now."""

FOR_FAMILY = "Given by Leida Rourke: the family only."
"""What the teller of its sitting agreed to. That version noted it and narrowed nothing by it; it is held now."""


@pytest.fixture
def older(tmp_path: Path) -> Iterator[Collection]:
    folder = tmp_path / "tamm_family"
    shutil.copytree(OLDER, folder, ignore=shutil.ignore_patterns("*.py", "came_to.json"))
    with open_collection(folder) as collection:
        yield collection


def plain(value: object) -> Any:
    """Values as JSON has them, sets as sorted lists."""
    return json.loads(json.dumps(value, default=sorted))


def then(*path: str) -> Any:
    """What an older version read, with what is read better now in its place."""
    value = THEN
    for name in path:
        value = value[name]
    for (*where, name), now in READ_NOW.items():
        if tuple(where) == path:
            value = {**value, name: now}
    return value


def as_agreed(record: dict[str, Any]) -> dict[str, Any]:
    """What an older version read of a record, with what the teller said for the family only, as she agreed."""
    told = {
        name: [[*rest, source, by, sure, "family" if source.startswith("narrator:") else audience]
               for *rest, source, by, sure, audience in rows]
        for name, rows in record["told"].items()
    }  # fmt: skip
    return {**record, "told": told}


def seen(record: Record) -> dict[str, object]:
    return {
        "kind": record.kind,
        "mark": record.mark.long if record.mark else "",
        "found_in": record.found_in,
        "size": record.size_mm,
        "scans": [
            (scan.id, scan.path, scan.sha256, scan.bytes, scan.width, scan.height, scan.media_type, scan.side,
             scan.role, scan.ppi, scan.area, scan.embedded)
            for scan in record.scans
        ],
        "told": {
            name: [
                (view.words, view.language, str(view.source), view.said_by, view.sure, view.audience) for view in views
            ]
            for name, views in record.told.items()
        },
        "edtf": record.edtf,
        "people": [
            (shown.name, shown.role, shown.person, shown.scan, shown.area, shown.number, shown.row, shown.position)
            for shown in record.people
        ],
        "related": [(relation.kind, relation.number, relation.reverse) for relation in record.related],
        "conflicts": [(conflict.field, [view.words for view in conflict.told]) for conflict in record.conflicts],
        "not known": sorted(record.not_known),
        "unnamed": record.unnamed,
        "nameless": record.nameless,
        "audiences": record.audiences,
        "changed": record.changed_at,
    }  # fmt: skip


@pytest.mark.parametrize("number", THEN["records"])
def test_each_record(older: Collection, number: str) -> None:
    item = older.store.item_by_number(number)
    assert item
    assert plain(seen(record_of(older, item))) == as_agreed(then("records", number))
    history = {
        f"{number} {name}": [(past.statement.words, past.state) for past in older.store.history(item, name)]
        for name in ("kept", "size", "story", "condition", "attached", "audience", "due_back", "row")
    }
    assert plain(history) == {key: rows for key, rows in THEN["history"].items() if key.startswith(f"{number} ")}
    marks = [(past.mark.short, past.mark.long, past.since, past.until) for past in marks_of(older, item)]
    assert plain(marks) == THEN["marks"][number]
    rows = [statement for statement, _ in older.store.statements(Subject(Kind.ITEM, item))]
    assert item_list.still_to_ask(rows) == THEN["to ask"][number]


def test_every_item_is_there(older: Collection) -> None:
    assert [number for number, _ in older.store.items()] == sorted(THEN["records"])
    assert {mark: [past.item for past in holders(older, mark)] for mark in THEN["holders"]} == THEN["holders"]


def test_where_things_are(older: Collection) -> None:
    now = housing_now.house_of(older)
    assert plain({ident: asdict(one) for ident, one in now.containers.items()}) == THEN["containers"]
    assert plain({ident: asdict(one) for ident, one in now.locations.items()}) == THEN["locations"]
    assert plain({item: (kept.container, kept.position) for item, kept in now.holding.items()}) == THEN["holding"]
    assert [housing_now.shown(now, step) for step in close_up(now.holding, now.named("3/2").id).steps] == THEN["plans"]
    counts = [older.store.next_number_count("TR", "A"), older.store.next_number_count("TR", "B")]
    assert [*counts, older.store.last_position(now.named("2").id)] == THEN["next"]
    hits = [(hit.number, hit.mark, hit.field, hit.words) for hit in older.store.search("told")]
    assert plain(hits) == THEN["found"]


def test_the_survey_and_the_climate(older: Collection) -> None:
    surveyed = [
        [one.number, one.mark, one.kind, one.size_mm, one.enclosure, sorted(one.sides), one.writing]
        for one in survey.surveyed(older)
    ]
    sizes = {number: then("records", number)["size"] for number in THEN["records"]}
    assert plain(surveyed) == [[*row[:3], sizes[row[0]], *row[4:]] for row in THEN["surveyed"]]
    judged = [
        (one.where, len(one.readings), [(str(when), t, rh) for when, t, rh in one.readings[-2:]], list(one.notes))
        for one in climate.judge_locations(older)
    ]
    assert plain(judged) == THEN["climate"]


def test_the_sittings(older: Collection) -> None:
    idents = [ident for ident, _ in recordings.sittings(older)]
    assert sorted(idents) == sorted(THEN["time log"])
    for ident in idents:
        log = time_log.read_log(older, ident)
        assert (
            plain(
                {
                    "recordings": [(one.path, one.start, one.length) for one in log.recordings],
                    "outs": [(one.item, one.start, one.end) for one in log.outs],
                    "closed": [(one.start, one.end, one.why) for one in log.closed],
                    "end": log.end,
                }
            )
            == THEN["time log"][ident]
        )
        assert plain(course.steps(older, ident)) == THEN["course"][ident]
    kept = [(facts.path, facts.sha256, facts.bytes) for facts in recordings.files(older)]
    assert plain(kept) == THEN["kept files"]


def test_scans_and_their_fixity(older: Collection) -> None:
    files = {ident: plain(json.loads(FILE_WORDS.write(facts))) for ident, facts in older.store.scans()}
    assert files == THEN["scans"]
    looks = {
        ident: [LOOKS_WORDS.write(LOOKS_WORDS.read(row.words)) for row, _ in rows if row.field == "looks"]
        for ident, rows in older.store.subjects(Kind.SCAN)
    }
    assert looks == THEN["looks"]
    of_pictures = [dict(event) for event in events(older) if not event["sound"]]  # recordings had no event then
    assert [{name: told for name, told in event.items() if name != "sound"} for event in of_pictures] == THEN["fixity"]
    last = fixity.last_run(older)
    assert last and [str(value) for value in asdict(last).values()] == THEN["last run"]
    assert {one.state for one in fixity.verify_scans(older)} == {"same"}


def test_people_places_and_the_archive(older: Collection) -> None:
    people = {
        ident: (one.name, one.also, one.different, one.audience, [consent.words for consent in one.consents])
        for ident, one in older.people().items()
    }
    assert plain(people) == THEN["people"]
    assert plain([(one.names, one.inside_words, one.point) for one in own_places(older)]) == THEN["places"]
    assert older.store.wanted() == THEN["wanted"]
    assert plain([(one.subject.id, one.field, one.words) for one in older.store.drafts()]) == THEN["drafts"]


LINKED: dict[str, Codec[Any]] = {
    "file": FILE_WORDS,
    "shows": SHOWS_WORDS,
    "size": SIZE_WORDS,
    "area": AREA_WORDS,
    "shown": SHOWN_WORDS,
    "recording": RECORDING_WORDS,
}
"""What of the linked data is words of the log; the other terms of THEN are compared as they stand."""


def linked_data(older: Collection) -> dict[str, list[str]]:
    """What an archive gets, by subject and predicate."""
    view = seen_by(older, To.ARCHIVE)
    facts = facts_of(older, view)
    lines = [line for record in view.records() for line in record_triples(record, facts, [], set())]
    sittings = {ident for ident, _ in older.store.subjects(Kind.SITTING)}
    lines += thing_lines(older, view, None, sittings)
    now: dict[str, list[str]] = {}
    for subject, predicate, value in read_triples(as_once("\n".join(lines)).split("\n")):
        now.setdefault(f"{subject} {predicate.removeprefix('urn:boxlore:terms:')}", []).append(value)
    return now


def stories(linked: dict[str, list[str]]) -> set[str]:
    """What the teller told, of the linked data."""
    return {value for values in linked.values() for value in values if value.startswith("Told of ")}


def test_what_was_told_for_the_family_alone_is_in_no_linked_data(older: Collection) -> None:
    """No story of the teller, and neither of the two people whom she pointed out; all else that was there is there."""
    (sitting,) = (
        rows for _, rows in older.store.subjects(Kind.SITTING) if any(row.field == "consent" for row, _ in rows)
    )
    assert [row.words for row, _ in sitting if row.field == "consent"] == [FOR_FAMILY]
    markers = [row for _, rows in older.store.subjects(Kind.MARKER) for row, _ in rows if row.field == "person"]
    pointed_out = {row.id for row in markers if row.source.said is Said.NARRATOR}
    assert len(pointed_out) == 2
    targets = {f"urn:uuid:{ident}#target {name}" for ident in pointed_out for name in ("area", "number")}
    now = linked_data(older)
    assert THEN["linked data"].keys() - now.keys() == targets
    assert not {key for key in now if any(ident in key for ident in pointed_out)}
    assert not stories(now)


def test_linked_data_says_the_same(older: Collection) -> None:
    """Once the teller agrees that anyone may see it, and by what the words mean: shown was an object in an object then,
    and a size had blanks alone between."""
    (sitting,) = older.store.subjects_told(Kind.SITTING, "consent")
    Teller(older).tell(Subject(Kind.SITTING, sitting), "consent", consent_words("Leida Rourke", ANYONE), Telling())
    now = linked_data(older)
    assert stories(now) == {"Told of the wedding.", "Told of the lawn."}  # the keeper keeps that of TRA-0001
    sizes = {f"urn:uuid:{ident} size": number for number, ident in older.store.items()}
    for key, values in THEN["linked data"].items():
        codec = LINKED.get(key.rpartition(" ")[2])
        if codec is None:
            assert now[key] == values
        elif codec is RECORDING_WORDS:
            read = [codec.read(words) for words in now[key]]
            assert [(one.path, one.sha256) for one in read] == [
                (one.path, one.sha256) for one in map(codec.read, values)
            ]
            assert all(one.start is not None for one in read)
        else:
            assert list(map(codec.read, now[key])) == list(map(codec.read, values)), key
    assert {key.rpartition(" ")[2] for key in THEN["linked data"]} >= set(LINKED)
    assert {sizes[key] for key in now if key in sizes} == {n for n in THEN["records"] if then("records", n)["size"]}


def test_what_an_older_version_let_in_is_named_by_the_check(older: Collection) -> None:
    found = {(one.number, one.finding.message) for one in check(older) if one.finding.rule == "words.unreadable"}
    assert found == {
        ("TRA-0003", "Due back: “next week” is no day."),
        ("TRA-0003", "Row and place: “somewhere” is no position in a row."),
        ("TRA-0004", "Kept in: “in the attic” is no place in a container."),
        ("TRA-0006", "Size in mm: “about a hand” is no size."),
    }


NEWER = {"came_from", "naming"}
"""Fields with a codec that no version wrote before the one that gave them theirs."""


def test_every_field_with_a_codec_is_in_it() -> None:
    """So that a new codec is tried on a collection as old as it is."""
    db = sqlite3.connect(OLDER / DATABASE)
    fields = {name for (name,) in db.execute("SELECT DISTINCT field FROM statement")}
    db.close()
    assert {name for name, field in FIELDS.items() if field.codec is not FIELDS["story"].codec} <= fields | NEWER
    assert not fields & NEWER


def test_the_tables_are_made_by_the_same_words() -> None:
    """A script of the migrations is never changed: the tables and indexes of then are those of a new collection."""
    made = sqlite3.connect(":memory:")
    schema.migrate(made, schema.MIGRATIONS[:2])
    stood = sqlite3.connect(OLDER / DATABASE)
    query = "SELECT type, name, sql FROM sqlite_schema ORDER BY name"
    assert stood.execute(query).fetchall() == made.execute(query).fetchall()
    stood.close()
