"""Places of the originals, on a real collection (rules of our own, no outside source)."""

import tempfile
from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.drawn import drawn

from boxlore.core.errors import WrongUse
from boxlore.core.originals.moves import close_up, merge, move, relabel
from boxlore.core.statements import Kind, Subject
from boxlore.tasks.collection.items_by_mark import find_item, find_items, holders, marks_of
from boxlore.tasks.collection.opening import Collection, open_collection, start
from boxlore.tasks.collection.records_for_outputs import record_of
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.originals.housing_changes import (
    About,
    carry_out,
    give_back,
    lend,
    new_location,
    note_container,
    take_off,
    undo,
)
from boxlore.tasks.originals.housing_now import everything_in, house_of, items_named, place_findings, shown

COUNT = 6


def made(folder: Path) -> None:
    """Boxes 1 and 2, six items in box 1."""
    start(folder, Settings(title="Tamm and Rourke", prefix="TR"))
    with open_collection(folder) as collection:
        for label in "12":
            note_container(collection, label, About())
        box = house_of(collection).named("1").id
        act = collection.act("intake")
        for count in range(1, COUNT + 1):
            item = act.new(Kind.ITEM)
            act.state(item, "number", f"TRA-{count:04d}")
            act.state(item, "kept", f"{box} {count}")
        act.done()


@pytest.fixture
def collection(tmp_path: Path) -> Iterator[Collection]:
    made(tmp_path / "tamm_family")
    with open_collection(tmp_path / "tamm_family") as opened:
        yield opened


def mark_of(collection: Collection, number: str) -> str:
    mark = record_of(collection, find_item(collection, number).id).mark
    return mark.short if mark else ""


def test_a_move_is_shown_done_and_taken_back(collection: Collection) -> None:
    house = house_of(collection)
    items = [one.id for one in items_named(collection, ["TRA-0002", "1/3"])]
    plan = move(house.holding, items, house.named("2").id)
    assert [shown(house, step) for step in plan.steps] == ["TRA-0002: 1/2 → 2/1", "TRA-0003: 1/3 → 2/2"]
    act = carry_out(collection, plan)
    assert (mark_of(collection, "TRA-0002"), mark_of(collection, "TRA-0003")) == ("2/1", "2/2")
    undo(collection, act)
    assert (mark_of(collection, "TRA-0002"), mark_of(collection, "TRA-0003")) == ("1/2", "1/3")


def test_an_earlier_mark_finds_its_item_with_dates(collection: Collection) -> None:
    house = house_of(collection)
    item = find_item(collection, "TRA-0002")
    carry_out(collection, move(house.holding, [item.id], house.named("2").id))
    assert find_item(collection, "1/2") == item
    assert [(one.mark.short, one.now) for one in marks_of(collection, item.id)] == [("1/2", False), ("2/1", True)]
    assert [(one.item, one.now) for one in holders(collection, "1/2")] == [(item.id, False)]


def test_a_mark_that_has_held_two_is_refused_for_writing_and_lists_both(collection: Collection) -> None:
    house = house_of(collection)
    first, second = find_item(collection, "TRA-0002"), find_item(collection, "TRA-0003")
    carry_out(collection, move(house.holding, [first.id], house.named("2").id))
    carry_out(collection, close_up(house_of(collection).holding, house.named("1").id))
    assert find_items(collection, "1/2") == [second, first]
    with pytest.raises(WrongUse, match=r"TRA-0003 \(since .*TRA-0002 \("):
        find_item(collection, "1/2")


def test_renumbering_swaps_two_boxes_and_is_undone(collection: Collection) -> None:
    house = house_of(collection)
    one, two = house.named("1").id, house.named("2").id
    act = carry_out(collection, relabel(house.labels, house.inside, {one: "2", two: "1"}))
    assert mark_of(collection, "TRA-0004") == "2/4"
    assert find_item(collection, "1/4") == find_item(collection, "2/4") == find_item(collection, "TRA-0004")
    undo(collection, act)
    assert mark_of(collection, "TRA-0004") == "1/4"
    assert find_item(collection, "2/4") == find_item(collection, "TRA-0004")


def test_a_plan_with_a_problem_is_not_carried_out(collection: Collection) -> None:
    house = house_of(collection)
    with pytest.raises(WrongUse, match="Two would be labelled 2"):
        carry_out(collection, relabel(house.labels, house.inside, {house.named("1").id: "2"}))
    for name, box in (("Attic", "1"), ("Hall", "2")):
        new_location(collection, name)
        note_container(collection, box, About(at=name))
    house = house_of(collection)
    with pytest.raises(WrongUse, match="Two would be labelled 2"):
        carry_out(collection, relabel(house.labels, house.inside, {house.named("1").id: "2"}))


def test_locations_contain_containers_and_lend_them_their_surroundings(collection: Collection) -> None:
    new_location(collection, "Port Chalmers house", kind="house")
    new_location(collection, "Attic", inside="Port Chalmers house", surroundings=["attic"])
    new_location(collection, "Shelf 2", kind="shelf", inside="Attic")
    about = About(at="Attic / Shelf 2", materials="buffered board", capacity="40", size="380 x 260 x 130")
    box = note_container(collection, "1", about)
    assert box.location == ("Port Chalmers house", "Attic", "Shelf 2")
    assert (box.surroundings, box.capacity, box.size_mm) == ({"attic"}, 40, (380, 260, 130))
    assert mark_of(collection, "TRA-0001") == "1/1"
    assert new_location(collection, "Attic", inside="Port Chalmers house") == house_of(collection).location("Attic").id


@pytest.mark.parametrize(
    ("mark", "about", "words"),
    [
        ("9/9", About(), "no box or folder 9"),
        ("1", About(capacity="many"), "no count"),
        ("1", About(size="big"), "no size"),
        ("1", About(at="Nowhere"), "no location"),
        ("1//2", About(), "no mark"),
    ],
)
def test_what_cannot_be_noted_is_said(collection: Collection, mark: str, about: About, words: str) -> None:
    with pytest.raises(WrongUse, match=words):
        note_container(collection, mark, about)


def test_gaps_doubles_and_no_place_are_found(collection: Collection) -> None:
    house = house_of(collection)
    assert place_findings(house) == []
    act = collection.act("as found")
    lost = act.new(Kind.ITEM)
    act.state(lost, "number", "TRA-0007")
    twice = act.new(Kind.ITEM)
    act.state(twice, "number", "TRA-0008")
    act.state(twice, "kept", f"{house.named('1').id} 4")
    act.done()
    carry_out(collection, move(house.holding, [find_item(collection, "TRA-0002").id], house.named("2").id, 3))
    found = {one.rule: one.message for one in place_findings(house_of(collection))}
    assert "TRA-0004 and TRA-0008" in found["kept.double"]
    assert found["kept.nowhere"].startswith("TRA-0007")
    assert "place 1, 2" in found["kept.gap"] or "place 2" in found["kept.gap"]


def test_a_note_taken_off_becomes_an_item_that_was_attached(collection: Collection) -> None:
    print_ = find_item(collection, "TRA-0003")
    number = take_off(collection, print_, "For Leida, from Mother")
    record = record_of(collection, find_item(collection, number).id)
    assert (number, record.kind, record.found_in) == ("TRA-0007", "note", "attached to TRA-0003")
    assert [(one.kind, one.number) for one in record.related] == [("attached_to", "TRA-0003")]
    assert record.words("inscription") == "For Leida, from Mother"


def test_a_loan_has_its_lender_and_its_days(collection: Collection) -> None:
    items = items_named(collection, ["2", "1"][1:])
    assert len(items) == COUNT
    lend(collection, items[:2], "Aino Tamm", date(2027, 3, 1))
    told = {one.field: one.words for one, _ in collection.store.statements(items[0])}
    assert (told["lender"], told["due_back"]) == ("Aino Tamm", "2027-03-01")
    assert record_of(collection, items[0].id).words("lender") == "Aino Tamm"
    give_back(collection, items[:2], date(2027, 2, 1))
    with pytest.raises(WrongUse, match="on loan"):
        give_back(collection, items[2:3], date(2027, 2, 1))


CHANGES = st.lists(
    st.one_of(
        st.tuples(st.just("move"), st.integers(1, COUNT), st.sampled_from("12"), st.integers(0, 4)),
        st.tuples(st.just("close"), st.sampled_from("12")),
        st.tuples(st.just("merge"), st.sampled_from([("1", "2"), ("2", "1")])),
        st.tuples(st.just("swap")),
        st.tuples(st.just("rename"), st.sampled_from("12"), st.sampled_from("789")),
        st.tuples(st.just("undo")),
    ),
    min_size=3,
    max_size=8,
)


@given(CHANGES)
@drawn(15)
def test_whatever_is_moved_nothing_is_lost_and_every_mark_that_ever_was_finds_it(
    changes: list[tuple[object, ...]],
) -> None:
    with tempfile.TemporaryDirectory() as home:
        made(Path(home) / "c")
        with open_collection(Path(home) / "c") as collection:
            boxes = {label: house_of(collection).named(label).id for label in "12"}
            items = dict(collection.store.items())
            ever = {(number, mark_of(collection, number)) for number in items}
            acts: list[str] = []
            for change in changes:
                acts += [act] if (act := _change(collection, boxes, items, acts, change)) else []
                house = house_of(collection)
                assert sorted(everything_in_all(collection)) == sorted(items.values())
                assert not [one for one in place_findings(house) if one.rule != "kept.gap"]
                ever |= {(number, mark_of(collection, number)) for number in items}
            for number, mark in ever:
                assert Subject(Kind.ITEM, items[number]) in find_items(collection, mark)


def everything_in_all(collection: Collection) -> list[str]:
    house = house_of(collection)
    return [item for one in house.containers.values() if not one.inside for item in everything_in(house, one)]


def _change(
    collection: Collection, boxes: dict[str, str], items: dict[str, str], acts: list[str], change: tuple[object, ...]
) -> str:
    house = house_of(collection)
    match change:
        case "move", int(count), str(box), int(at):
            plan = move(house.holding, [items[f"TRA-{count:04d}"]], boxes[box], at)
        case "close", str(box):
            plan = close_up(house.holding, boxes[box])
        case "merge", (str(source), str(into)):
            plan = merge(house.holding, boxes[source], boxes[into], house.inside, house.labels)
        case "rename", str(box), str(label):
            plan = relabel(house.labels, house.inside, {boxes[box]: label})
        case ("swap",):
            labels = house.labels
            wanted = {boxes["1"]: labels[boxes["2"]], boxes["2"]: labels[boxes["1"]]}
            plan = relabel(labels, house.inside, wanted)
        case _:
            if acts:
                undo(collection, acts.pop())
            return ""
    return "" if plan.problems else carry_out(collection, plan)
