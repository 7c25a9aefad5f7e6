"""The screen of who says so: each statement whole, restricted, settled, with its history, struck (our own contract)."""

import re
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from tests.tui.conftest import hands_on

from boxlore.core.statements import Kind, Subject, read_source
from boxlore.tasks.collection.opening import Collection, open_collection
from boxlore.tasks.collection.records_for_outputs import record_of
from boxlore.tasks.telling.statements import Teller, Telling

Run = Callable[..., None]
STORY = "The regatta at Port Chalmers."


@pytest.fixture
def collection(folder: Path) -> Iterator[Collection]:
    """An item of which two narrators tell two dates, and the keeper a story."""
    with open_collection(folder) as opened:
        item = Subject(Kind.ITEM, opened.store.item_by_number("TRA-0001") or "")
        teller = Teller(opened)
        teller.tell(item, "date", "1912", Telling(source=read_source("narrator:Joan")))
        teller.tell(item, "date", "1930", Telling(source=read_source("narrator:Con")))
        teller.tell(item, "story", STORY, Telling())
        yield opened


def first_record(collection: Collection):  # type: ignore[no-untyped-def]
    return record_of(collection, collection.store.item_by_number("TRA-0001") or "")


def test_the_cursor_shows_each_statement_whole(run: Run, collection: Collection) -> None:
    async def look() -> None:
        async with hands_on(collection) as hands:
            await hands.press("f4")
            assert "TRA-0001 · who says so" in hands.text
            assert "▸ When disputed Con: “1930”" in hands.text and hands.text.count("disputed") == 2
            await hands.press("down")
            assert "▸ When disputed Joan: “1912”" in hands.text and "“1912” Joan · " in hands.text
            await hands.press("pagedown")
            assert f"▸ Story used the keeper: “{STORY}”" in hands.text and hands.text.count(STORY) == 2
            await hands.press("pageup")
            assert "“1930” Con · " in hands.text
            await hands.press("escape")
            assert "▸ Tell me about this photograph." in hands.text

    run(look())


def test_two_that_read_alike_are_told_apart_by_when_they_were_said(run: Run, collection: Collection) -> None:
    item = Subject(Kind.ITEM, collection.store.item_by_number("TRA-0001") or "")
    for _ in range(2):
        Teller(collection).tell(item, "person", "Anna Berg", Telling())

    async def look() -> None:
        async with hands_on(collection) as hands:
            await hands.press("f4")
            rows = re.findall(r"used the keeper: “Anna Berg” \((\d{4}-\d\d-\d\d \d\d:\d\d:\d\d)\)", hands.text)
            assert len(rows) == 2 and f"the keeper: “{STORY}” " in hands.text

    run(look())


def test_of_an_item_without_statements_nothing_can_be_done(run: Run, collection: Collection) -> None:
    async def look() -> None:
        async with hands_on(collection) as hands:
            await hands.press("pagedown", "f4")
            assert "Nothing is told of this photograph yet." in hands.text
            await hands.press("enter", "down")
            assert "Nothing is told of this photograph yet." in hands.text

    run(look())


def test_who_may_see_it(run: Run, collection: Collection) -> None:
    async def change() -> None:
        async with hands_on(collection) as hands:
            await hands.press("f4", "pagedown", "enter")
            await hands.choose("Who may see it")
            await hands.press("right", "right", "right", "enter", "enter")
            assert "It is not said until which day it stays closed. Write the day as 2060-01-01." in hands.text
            await hands.fill("2060")
            assert "archive:YYYY-MM-DD" in hands.text
            await hands.fill("2060-01-01")
            assert "It is closed in an archive until 2060-01-01 from now on. Ctrl+Z takes it back." in hands.text
        assert first_record(collection).first("story").audience == "archive:2060-01-01"

    run(change())


def test_which_language_it_is_in(run: Run, collection: Collection) -> None:
    async def change() -> None:
        async with hands_on(collection) as hands:
            await hands.press("f4", "pagedown", "enter")
            await hands.choose("Which language")
            await hands.fill("!")
            assert "Write its name, such as Estonian, or its letters: en, et, mi, de-AT." in hands.text
            await hands.fill("mi")
            assert "Noted as told in Māori." in hands.text
        assert first_record(collection).first("story").language == "mi"

    run(change())


SETTLED = [
    ("“1912”", ["1912", "1930"]),
    ("Keep both", ["1930", "1912"]),
    ("Cannot be said", ["1930", "1912"]),
]


@pytest.mark.parametrize(("choice", "order"), SETTLED)
def test_a_dispute_is_settled_and_all_stays_on_record(
    run: Run, collection: Collection, choice: str, order: list[str]
) -> None:
    async def settle() -> None:
        async with hands_on(collection) as hands:
            await hands.press("f4", "down", "enter")
            await hands.choose("Choose which answer is used", choice)
            assert (
                "Settled. What the others said stays on record. Ctrl+Z takes it back; a later answer opens it again."
                in hands.text
            )
            assert "disputed" not in hands.text and "left open" not in hands.text
        record = first_record(collection)
        assert not record.conflicts
        assert [view.words for view in record.all("date")] == order

    run(settle())


def test_a_dispute_is_settled_at_its_question_and_from_check(run: Run, collection: Collection) -> None:
    """Ctrl+P at the question, or Enter in Check, opens the same card; Ctrl+Z opens the dispute again."""

    async def settle() -> None:
        async with hands_on(collection) as hands:
            assert "When was it? disputed: Ctrl+P" in hands.text
            assert "What to ask ? Sources disagree, these dates cannot both be so:" in hands.text
            await hands.press("tab", "tab", "ctrl+p")
            assert "When: which answer is used?" in hands.text
            await hands.choose("“1912”")
            assert "Settled." in hands.text and "disputed" not in hands.text
            await hands.press("ctrl+z", "escape")
            await hands.choose("Put right", "Check")
            await hands.until("Esc back")
            while not re.search(r"▸ ask TRA-0001 Sources disagree", shown := hands.text):
                await hands.press("down")
                assert hands.text != shown, "the last line, and it was not among them"
            await hands.press("enter")
            await hands.choose("“1930”")
            assert "Settled." in hands.text and "▸ When was it?" in hands.text

    run(settle())


def test_who_is_at_a_marker_is_put_right_and_not_settled(run: Run, pictured: Path) -> None:
    async def look(collection: Collection) -> None:
        async with hands_on(collection) as hands:
            assert "Who is in it? disputed: F4" in hands.text
            assert "? Sources disagree, marker 1 is said to be different people: “Anna” (" in hands.text
            await hands.press("tab", "ctrl+p")
            assert "which answer is used?" not in hands.text
            await hands.press("escape", "escape")
            await hands.press("f4", "pagedown", "enter")
            await hands.choose("Correct the words")
            await hands.fill("Anna")
            await hands.press("escape")
            assert "disputed" not in hands.text

    with open_collection(pictured) as collection:
        scan, act = first_record(collection).scans[0], collection.act("a marker")
        marker = act.new(Kind.MARKER)
        act.state(marker, "scan", scan.id)
        act.state(marker, "area", "0.4 0.4")
        for name, by in (("Anna", "Joan"), ("Ruth", "Con")):
            Teller(collection).add(act, marker, "person", name, Telling(source=read_source(f"narrator:{by}")))
        act.done()
        run(look(collection))


def test_what_nobody_disputes_is_not_offered_to_be_settled(run: Run, collection: Collection) -> None:
    async def look() -> None:
        async with hands_on(collection) as hands:
            await hands.press("f4", "pagedown", "enter")
            assert "Choose which answer is used" not in hands.text and "Take this answer back" in hands.text
            await hands.choose("History")
            assert "History: Story" in hands.text and f"keeper: “{STORY}”" in hands.text
            await hands.press("down", "pagedown", "up", "pageup", "enter")
            assert "Take this answer back" in hands.text and "History: Story" not in hands.text
            await hands.press("escape")
            assert "who says so" in hands.text and "History: Story" not in hands.text

    run(look())


def test_words_are_struck_only_after_a_yes(run: Run, collection: Collection) -> None:
    async def strike() -> None:
        async with hands_on(collection) as hands:
            await hands.press("f4", "pagedown", "enter")
            await hands.choose("Strike for good", "No, leave them")
            assert first_record(collection).words("story") == STORY
            await hands.press("enter")
            await hands.choose("Strike for good")
            assert f"Strike “{STORY}” for good?" in hands.text
            assert (
                "This cannot be undone. Copies, sheets and packages made earlier may still hold the words."
                in hands.text
            )
            await hands.choose("Yes, strike them for good")
            await hands.until("Struck. No byte of the collection's database or backups")
            await hands.press("enter")
            assert STORY not in hands.text
        assert not first_record(collection).told.get("story")

    run(strike())


def test_opened_for_reading_only_nothing_is_changed(run: Run, folder: Path, collection: Collection) -> None:
    async def look() -> None:
        with open_collection(folder, write=False) as reading:
            async with hands_on(reading) as hands:
                await hands.press("f4", "enter")
                assert "Open for reading only; nothing can be changed." in hands.text

    run(look())


def test_an_answer_is_taken_back_with_what_it_corrected_and_the_history_keeps_it(
    run: Run, collection: Collection
) -> None:
    async def put_right() -> None:
        async with hands_on(collection) as hands:
            await hands.press("f4", "pagedown", "enter")
            await hands.choose("Correct the words")
            await hands.press("«!»", "enter", "enter")
            await hands.choose("Take this answer back")
            assert "Taken back: it is used no more." in hands.text and STORY not in hands.text
            assert not first_record(collection).told.get("story")
            history = collection.store.history(first_record(collection).id, "story")
            assert [(past.statement.words, past.state) for past in history] == [
                (STORY, "replaced"),
                (f"{STORY}!", "withdrawn"),
            ]
            await hands.press("ctrl+z")
            assert "Taken back: Story: taken back." in hands.text
        assert first_record(collection).words("story") == f"{STORY}!"

    run(put_right())


def test_words_are_corrected_and_given_to_who_said_them(run: Run, collection: Collection) -> None:
    """The words before stay in the history, under who was said to have said them."""

    async def put_right() -> None:
        async with hands_on(collection) as hands:
            await hands.press("f4", "pagedown", "enter")
            await hands.choose("Correct the words")
            await hands.press("«!»", "enter")
            assert "Corrected. What was there stays in the history." in hands.text and f"{STORY}!" in hands.text
            await hands.press("enter")
            await hands.choose("Correct the words")
            await hands.fill("")
            assert "There are no words. Write what it should say, or erase it." in hands.text
            await hands.press("escape", "escape")  # back at what can be done with the answer
            await hands.choose("Somebody else said it")
            await hands.fill("Ellen Rourke")
            await hands.press("enter")
            await hands.choose("Somebody else said it")
            await hands.fill("Elen Rourke")
            assert "Nobody here is called “Elen Rourke”. Who is meant?" in hands.text
            await hands.choose("Ellen Rourke")
            assert f"Ellen Rourke: “{STORY}!”" in hands.text and "Said by Ellen Rourke from now on." in hands.text
            await hands.press("enter")
            await hands.choose("History")
            assert f"keeper: “{STORY}”" in hands.text and f"keeper: “{STORY}!”" in hands.text

    run(put_right())


def test_what_a_report_only_shows_is_done_from_there_by_one_key(run: Run, collection: Collection) -> None:
    async def strike() -> None:
        async with hands_on(collection, (100, 40)) as hands:
            await hands.press("escape")
            await hands.choose("Put right", "Strike words everywhere")
            await hands.press(f"«{STORY}»", "ctrl+s")
            await hands.until("nothing is changed yet")
            assert "D does it now. Enter or Esc goes back to the photograph." in hands.text
            assert first_record(collection).words("story") == STORY
            await hands.press("d")
            await hands.until("Struck.")
            assert "D does it now." not in hands.text
            await hands.press("d", "enter")
            assert "Tell me about this photograph." in hands.text
        assert first_record(collection).words("story") == ""

    run(strike())
