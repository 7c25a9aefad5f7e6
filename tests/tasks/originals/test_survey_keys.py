"""The survey's keys without a screen (rules of our own, no outside source)."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from boxlore.core.errors import WrongUse
from boxlore.core.statements import Kind
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import Collection, open_collection, start
from boxlore.tasks.collection.records_for_outputs import record_of
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.originals.housing_changes import About, note_container
from boxlore.tasks.originals.housing_now import house_of
from boxlore.tasks.originals.survey_keys import CHOICES, MOVE_WORDS, SurveyRun


@pytest.fixture
def collection(tmp_path: Path) -> Iterator[Collection]:
    folder = tmp_path / "tamm_family"
    start(folder, Settings(title="Tamm and Rourke", prefix="TR"))
    with open_collection(folder) as opened:
        note_container(opened, "1", About())
        box = house_of(opened).named("1").id
        act = opened.act("intake")
        for count in range(1, 4):
            item = act.new(Kind.ITEM)
            act.state(item, "number", f"TRA-{count:04d}")
            act.state(item, "kept", f"{box} {count}")
        act.done()
        yield opened


NAMED = {"pagedown", "pageup", "enter", "escape", "backspace", "ctrl+z", "equals_sign", "space", "full_stop"}


def press(run: SurveyRun, *keys: str) -> None:
    """Names of keys, or letters each of which is a key."""
    for key in keys:
        for one in [key] if key in NAMED else list(key):
            run.press(one)


def words(collection: Collection, number: str, field: str) -> list[str]:
    return [one.words for one in record_of(collection, find_item(collection, number).id).all(field)]


def test_keys_are_each_one_thing() -> None:
    keys = [choice.key for choice in CHOICES]
    assert len(set(keys)) == len(keys)
    assert not set(keys) & {"z", "w", "j"} and len(" ".join(cap + words for cap, words in MOVE_WORDS)) < 70


def test_an_item_is_kept_on_turning_to_the_next(collection: Collection) -> None:
    run = SurveyRun(collection, "1")
    press(run, "5ctf", "t", "w", "z", "108x165", "enter", "pagedown")
    record = record_of(collection, find_item(collection, "TRA-0001").id)
    assert (record.words("enclosure"), words(collection, "TRA-0001", "attached")) == ("PVC pocket", ["paper clip"])
    assert (words(collection, "TRA-0001", "condition"), record.size_mm) == (["foxing"], (108, 165))
    assert record.all("inscription")[0].source.ref == "verso"
    assert run.position == 1 and run.standing.enclosure == ""


def test_as_before_takes_kind_enclosure_and_size(collection: Collection) -> None:
    run = SurveyRun(collection, "1")
    press(run, "equals_sign")
    assert "no photograph before" in run.said
    press(run, "1j", "z", "90", "space", "140", "pagedown", "equals_sign", "enter")
    record = record_of(collection, find_item(collection, "TRA-0002").id)
    assert (record.kind, record.words("enclosure"), record.size_mm) == ("card", "polyester sleeve", (90, 140))


def test_a_hazard_is_said_at_once_with_the_caution_first(collection: Collection) -> None:
    run = SurveyRun(collection, "1")
    assert run.cautions == []
    press(run, "m")
    assert run.cautions[0].startswith("Mould is a health hazard")
    press(run, "m", "jjj")
    assert run.standing.kind == "negative" and "nitrate" in run.cautions[0]


@pytest.mark.parametrize("typed", ["12", "12x", "1x2x3", "1..2x3", ""])
def test_a_size_that_is_none_is_asked_again(collection: Collection, typed: str) -> None:
    run = SurveyRun(collection, "1")
    press(run, "z", *typed, "enter")
    assert "wide by high" in run.said and run.typed is not None
    press(run, "escape")
    assert run.typed is None and run.standing.size == "" and not run.over


def test_taking_back_first_what_is_not_kept_then_the_last_item(collection: Collection) -> None:
    run = SurveyRun(collection, "1")
    press(run, "ctrl+z")
    assert "nothing to take back" in run.said
    press(run, "4", "pagedown", "5", "ctrl+z")
    assert run.standing.enclosure == "" and run.position == 1
    press(run, "ctrl+z")
    assert run.position == 0 and run.standing.enclosure == ""
    assert words(collection, "TRA-0001", "enclosure") == []


def test_what_was_noted_can_be_taken_off_again(collection: Collection) -> None:
    run = SurveyRun(collection, "1")
    press(run, "t", "pagedown", "pageup")
    assert run.standing.attached == ["tape"]
    press(run, "t", "pagedown", "pageup")
    assert run.standing.attached == [] and words(collection, "TRA-0001", "attached") == ["no tape"]
    press(run, "w", "pagedown", "pageup", "w")
    assert "noted already" in run.said


def test_the_ends_are_said_and_leaving_keeps_what_was_set(collection: Collection) -> None:
    run = SurveyRun(collection, "1")
    press(run, "pageup")
    assert run.said == "This is the first item."
    press(run, "pagedown", "pagedown", "pagedown")
    assert run.said.startswith("That was the last item")
    press(run, "6", "escape")
    assert run.over and words(collection, "TRA-0003", "enclosure") == ["magnetic album page"]


def test_a_box_with_nothing_in_it_is_said(collection: Collection) -> None:
    note_container(collection, "2", About())
    with pytest.raises(WrongUse, match="Nothing is noted to be in 2"):
        SurveyRun(collection, "2")
