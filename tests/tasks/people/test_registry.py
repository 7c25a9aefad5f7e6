"""Merging and splitting with everything kept and undone; places in a picture; consent (rules of our own)."""

import shutil
from collections.abc import Iterator
from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest

from boxlore.core.crosswalk import captions
from boxlore.core.errors import WrongUse
from boxlore.core.people.consent import make_consent
from boxlore.core.people.who_is_where.written_out import Placed
from boxlore.core.records.audience import To
from boxlore.core.statements import KEEPER, Kind, Subject
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import Collection, open_collection
from boxlore.tasks.collection.records_for_outputs import lives_of, record_of, records, seen_by
from boxlore.tasks.people import registry
from boxlore.tasks.people.names_taken_apart import names_told
from boxlore.tasks.sitting.people_corrections import listed
from boxlore.tasks.telling.statements import Teller, Telling

ON = date(2026, 11, 25)


@pytest.fixture
def collection(demo: Path, tmp_path: Path) -> Iterator[Collection]:
    shutil.copytree(demo, tmp_path / "c", ignore=shutil.ignore_patterns("copies", "print", "transfer"))
    with open_collection(tmp_path / "c", on_day=ON) as opened:
        yield opened


def person(collection: Collection, name: str) -> str:
    return registry.find_person(collection, name).id


def count(collection: Collection) -> int:
    rows = collection.store.db.execute("SELECT count(*) FROM statement").fetchone()
    return int(rows[0])


def test_finding_people(collection: Collection) -> None:
    leida = registry.find_person(collection, "Leida")
    assert leida.name == "Leida Rourke"
    assert registry.find_person(collection, leida.id) == registry.find_person(collection, leida.uri) == leida
    assert registry.find_person(collection, leida.id[-12:]) == leida
    with pytest.raises(WrongUse, match="may be"):
        registry.find_person(collection, "Rourke")
    with pytest.raises(WrongUse, match="Nobody here"):
        registry.find_person(collection, "Zebedee")


def test_lists_of_people_follow_the_alphabet_of_the_collection(collection: Collection) -> None:
    collection.settings = replace(collection.settings, language="et")
    teller, names = Teller(collection), ["Zeller, Anna", "Tamm, Anna", "Õun, Anna"]
    for name in ("Anna Õun", "Anna Tamm", "Anna Zeller"):
        teller.tell(find_item(collection, "TRA-0001"), "person", name, Telling())
    everyone = [person.sort_name for person in registry.in_list_order(collection)]
    assert [name for name in everyone if name in names] == names
    assert [person.sort_name for person in listed(collection) if person.sort_name in names] == names
    told = [name.person.sort_name for name in names_told(collection) if not name.parts.asks]
    assert [name for name in told if name in names] == names


def test_a_merging_keeps_every_statement_and_is_taken_back(collection: Collection) -> None:
    before, people = count(collection), dict(collection.people())
    tall, michael = person(collection, "the tall man"), person(collection, "Michael Rourke")
    held = {one.number for one in records(collection) if any(shown.person == tall for shown in one.people)}
    act = registry.merge(collection, collection.people()[michael], collection.people()[tall])
    assert len(collection.people()) == len(people) - 1
    assert collection.people()[tall].name == "Michael Rourke"
    now = {one.number for one in records(collection) if any(shown.person == michael for shown in one.people)}
    assert held and held <= now
    assert count(collection) == before + 1
    registry.take_back(collection, act)
    assert dict(collection.people()) == people
    registry.merge(collection, collection.people()[michael], collection.people()[tall])
    assert len(registry.unmerge(collection, collection.people()[tall])) == 1
    assert dict(collection.people()) == people


def test_parent_and_child_are_not_one(collection: Collection) -> None:
    mia, tom = registry.find_person(collection, "Mia"), registry.find_person(collection, "Tom")
    with pytest.raises(WrongUse, match="parent and child"):
        registry.merge(collection, mia, tom)


def test_splitting_moves_statements_and_items_and_is_taken_back(collection: Collection) -> None:
    con = registry.find_person(collection, "Leida")
    told = [s for s, _ in collection.store.statements(Subject(Kind.PERSON, con.id)) if s.field in ("born_at", "born")]
    item = next(one for one in records(collection) if any(shown.person == con.id for shown in one.people))
    before = dict(collection.people())
    made = registry.split(collection, con, "another Leida", statements=[one.id for one in told], items=[item.id])
    people = collection.people()
    assert people[made.id].born and not people[con.id].born
    assert people[made.id].different == (con.id,)
    shown = {one.person for one in record_of(collection, item.id).people}
    assert made.id in shown and con.id not in shown
    assert {one.state for one in collection.store.history(con.id, "born")} == {"replaced"}
    registry.take_back(collection, collection.store.last_acts(1)[0].id)
    assert dict(collection.people()) == before
    assert con.id in {one.person for one in record_of(collection, item.id).people}
    with pytest.raises(WrongUse, match="Nothing would move"):
        registry.split(collection, con, "nobody")


def test_duplicates_are_proposed_until_the_keeper_says_no(collection: Collection) -> None:
    teller = Teller(collection)
    act = collection.act("another Michael")
    made = act.new(Kind.PERSON)
    for field, words in (("given", "Mick"), ("family", "Rourke"), ("born", "1894")):
        teller.add(act, made, field, words, Telling())
    act.done()
    michael = registry.find_person(collection, "Michael Rourke")
    found = [one for one in registry.duplicates(collection) if {one.one, one.other} == {made.id, michael.id}]
    assert found and "pet form" in found[0].because
    registry.apart(collection, michael, collection.people()[made.id])
    assert all({one.one, one.other} != {made.id, michael.id} for one in registry.duplicates(collection))


def test_who_stands_where_is_kept_and_written_back(collection: Collection) -> None:
    item = find_item(collection, "TRA-0025")
    text = "front row, left to right: Leida, ?; back row, left to right: Con, Ruth (Anna's cousin)"
    placed = registry.tell_placed(Teller(collection), collection, item, text, Telling(source=KEEPER))
    assert placed[1] == Placed("", 2, "front")
    record = record_of(collection, item.id)
    assert registry.written_back(record) == (
        "front row, left to right: Leida Rourke, ?; back row, left to right: Con Rourke, Ruth (Anna's cousin)"
    )
    assert captions.who_line(record) == (
        "Back row, left to right: Con Rourke and Ruth. Front row, left to right: Leida Rourke and someone not known"
    )
    assert registry.find_person(collection, "Ruth").name == "Ruth"
    (con,) = [one for one in record.shown() if one.name == "Con Rourke"]
    assert (con.row, con.position) == ("back", 1)


def test_consent_opens_what_is_withheld_and_its_withdrawal_closes_it(collection: Collection) -> None:
    mia = registry.find_person(collection, "Mia")
    assert mia.id in seen_by(collection, To.OUTSIDE).withheld.people
    registry.consent(collection, mia, make_consent(["name", "picture"], "2026-11-25"))
    assert mia.id not in seen_by(collection, To.OUTSIDE).withheld.people
    mia = collection.people()[mia.id]
    registry.consent(collection, mia, make_consent(["name"], "2026-11-25", given=False))
    assert mia.id in seen_by(collection, To.OUTSIDE).withheld.people


def test_a_person_kept_by_the_keeper_is_in_no_family_output(collection: Collection) -> None:
    michael = registry.find_person(collection, "Michael Rourke")
    registry.set_audience(collection, Subject(Kind.PERSON, michael.id), "keeper")
    seen = seen_by(collection, To.FAMILY)
    assert seen.withheld.people == {michael.id}
    assert all(one.person != michael.id for record in seen.records() for one in record.people)
    registry.set_audience(collection, Subject(Kind.PERSON, michael.id), "anyone")
    assert not seen_by(collection, To.FAMILY).withheld.people


def test_an_item_and_a_field_kept_by_the_keeper(collection: Collection) -> None:
    item = find_item(collection, "TRA-0003")
    registry.set_audience(collection, item, "keeper", "date")
    assert record_of(collection, item.id).audiences == ("date=keeper",)
    (seen,) = [one for one in seen_by(collection, To.FAMILY).records() if one.id == item.id]
    assert not seen.all("date") and seen.people
    registry.set_audience(collection, item, "keeper")
    (seen,) = [one for one in seen_by(collection, To.FAMILY).records() if one.id == item.id]
    assert not seen.people and seen.closed_scans
    with pytest.raises(WrongUse):
        registry.set_audience(collection, item, "keeper", "nonsense")


def test_why_everyone_counts_as_living_or_dead(collection: Collection) -> None:
    lives = lives_of(collection)
    assert lives[person(collection, "Mia")].because == "said to be living"
    assert not lives[person(collection, "Kristjan Tamm")].living
    assert all(life.because for life in lives.values())


def test_kin_of_the_demo(collection: Collection) -> None:
    words = {
        one.name: found.words for one, found in registry.kin_of(collection, registry.find_person(collection, "Mia"))
    }
    assert words["Leida Rourke"] == "mother" and words["Con Rourke"] == "uncle"
    assert words["Helmi Tamm"] == "great-grandmother"
    assert words["Peeter Kuusk"] == "grandmother's husband"
    assert words["Tui Rourke"] == "niece or nephew" or words["Tui Rourke"] == "niece"
