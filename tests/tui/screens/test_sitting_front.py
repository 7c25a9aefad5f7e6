"""The front door: who tells, what was agreed, where to begin (our own contract)."""

import re
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from tests.tui.conftest import hands_on

from boxlore.core.records.item_record import Record
from boxlore.core.statements import Kind, Subject
from boxlore.tasks.collection.opening import Collection, open_collection
from boxlore.tasks.collection.records_for_outputs import records
from boxlore.tasks.sitting.beginning import known_tellers, note_out
from boxlore.tasks.sitting.course import ask_next_time, prepare
from boxlore.tasks.sitting.session import Sitting
from boxlore.tasks.telling.statements import Teller, Telling

Run = Callable[..., None]


@pytest.fixture
def collection(folder: Path) -> Iterator[Collection]:
    with open_collection(folder) as collection:
        yield collection


def told_before(collection: Collection, *, agreed: bool = True) -> None:
    """A sitting with Leida Rourke, closed with one thing to ask next time."""
    sitting = Sitting(collection)
    sitting.begin()
    terms = {"terms": "2", "agreed_by": "Leida Rourke"} if agreed else {}
    prepare(sitting, {"narrator": "Leida Rourke", "interviewer": "Mia", **terms})
    ask_next_time(sitting, "the crossing")


def item(collection: Collection, number: int) -> str:
    return collection.store.item_by_number(f"TRA-{number:04d}") or ""


def test_one_who_told_before_is_two_keys_away_from_her_questions(run: Run, collection: Collection) -> None:
    told_before(collection)
    note_out(collection, item(collection, 5))

    async def enter() -> None:
        async with hands_on(collection, door=True) as hands:
            assert "Who tells today?" in hands.text and "▸ 1 Leida Rourke one sitting, last on " in hands.text
            await hands.press("enter")
            assert "Still as agreed" in hands.text
            assert "Agreed last: the family, and an archive that keeps it closed for now." in hands.text
            await hands.press("enter")
            assert "Still as agreed" in hands.text  # Enter alone notes no consent
            await hands.press("a")
            assert "Where you stopped: TRA-0005 on " in hands.text
            await hands.press("enter")
            assert "Leida Rourke tells · 5 of 8" in hands.text
            await hands.press("«The regatta»", "ctrl+s")
        (last, *_) = known_tellers(collection)
        assert (last.sittings, last.terms) == (2, "the family, and an archive that keeps it closed for now")

    run(enter())


def test_somebody_new_and_the_agreement_read_out(run: Run, collection: Collection) -> None:
    async def enter() -> None:
        async with hands_on(collection, door=True) as hands:
            await hands.choose("Somebody else")
            await hands.fill("")
            assert "Write who tells." in hands.text
            await hands.fill("Ellen Rourke")
            assert "Is there an agreement with Ellen Rourke?" in hands.text
            await hands.choose("Read it out and note it")
            assert "stop at any time" in hands.text
            await hands.press("ctrl+s")  # the keys that go on agree to nothing
            assert "Choose who may read and hear it, with ←, → or a letter." in hands.text
            await hands.press("right", "enter", "«1990»", "ctrl+s")
            assert "Only an archive keeps something closed for a time." in hands.text
            await hands.press("right", "enter")
            await hands.fill("until 2060", "", "Mia", "her home")
            await hands.press("enter")
            assert "Write who gave the agreement." in hands.text
            await hands.press("down", "down", "«Ellen Rourke»", "ctrl+s")
            assert "The first: TRA-0001" in hands.text
            await hands.choose("The first")
            assert "Ellen Rourke tells · 1 of 8" in hands.text
        (_, rows) = next(iter(collection.store.subjects(Kind.SITTING)))
        words = {statement.field: statement.words for statement, _ in rows}
        terms = "the family, and an archive that keeps it closed until 2060-12-31"
        assert words["consent"] == f"Given by Ellen Rourke: {terms}." and words["place"] == "her home"

    run(enter())


@pytest.mark.parametrize(("name", "says"), [("I myself", "you tell"), ("No teller yet", "no teller yet")])
def test_nobody_else_tells(run: Run, collection: Collection, name: str, says: str) -> None:
    async def enter() -> None:
        async with hands_on(collection, door=True) as hands:
            await hands.choose(name, "Next with an answer missing")
            assert f"{says} · 1 of 8" in hands.text

    run(enter())


def test_the_same_box_on(run: Run, collection: Collection) -> None:
    act = collection.act("boxes")
    for label, numbers in (("1", (1, 2)), ("2", (3, 6, 8))):
        box = act.new(Kind.CONTAINER)
        act.state(box, "kind", "box")
        act.state(box, "label", label)
        for at, number in enumerate(numbers, 1):
            act.state(Subject(Kind.ITEM, item(collection, number)), "kept", f"{box.id} {at}")
    act.done()
    note_out(collection, item(collection, 3))

    async def enter() -> None:
        async with hands_on(collection, door=True) as hands:
            await hands.choose("I myself", "Go on in the same box")
            assert "Box 2, 1 of 3" in hands.text
            await hands.press("pagedown")
            assert "TRA-0006" in hands.text and "Box 2, 2 of 3" in hands.text
            await hands.press("pagedown", "pagedown")
            assert "That was the last in Box 2; Ctrl+N shows the next with an answer missing." in hands.text
            await hands.press("pageup", "pageup", "pageup")
            assert "This is the first in Box 2" in hands.text
            await hands.press("ctrl+n")
            assert "TRA-0004" in hands.text and "4 of 8" in hands.text

    run(enter())


def test_what_to_ask_her(run: Run, collection: Collection) -> None:
    told_before(collection)
    teller, asked = Teller(collection), Subject(Kind.ITEM, item(collection, 4))
    act = collection.act("notes")
    act.state(asked, "asked", "ask Leida who stands behind")
    act.state(Subject(Kind.ITEM, item(collection, 6)), "asked", "ask Joan")
    act.done()
    teller.tell(asked, "story", "A picnic", Telling())

    async def enter() -> None:
        async with hands_on(collection, door=True) as hands:
            await hands.choose("Leida Rourke", "Not now", "What to ask Leida")
            assert "What to ask Leida Rourke" in hands.text and "Joan" not in hands.text
            assert "note the crossing" in hands.text and "TRA-0004 ask Leida who stands behind" in hands.text
            await hands.press("enter")
            await hands.choose("It stays on the list")
            await hands.press("enter")
            await hands.choose("It was asked")
            assert "the crossing" not in hands.text
            await hands.press("down", "pagedown", "pageup", "enter")
            assert "Leida Rourke tells · 4 of 8" in hands.text
        async with hands_on(collection, narrator="Ellen") as hands:
            await hands.press("escape")
            await hands.choose("Sit", "What to ask")
            await hands.until("▸ TRA-0001 When was this taken, and what was going on?")
            assert "2 photographs have a note that does not name Ellen: F3 and Tab, “to ask”." in hands.text

    run(enter())


def test_the_list_and_the_tasks_are_one_key_away(run: Run, collection: Collection) -> None:
    async def enter() -> None:
        async with hands_on(collection, door=True) as hands:
            await hands.choose("I myself", "A list")
            assert "All photographs" in hands.text
        async with hands_on(collection, door=True) as hands:
            await hands.choose("No sitting today")
            assert "▸ 1 Take in" in hands.text and "Keep safe" in hands.text
        async with hands_on(collection, door=True) as hands:
            await hands.choose("I myself")
            await hands.press("escape")
            assert "Who tells today?" in hands.text
            await hands.press("escape", "f1")
            assert "Guide" in hands.text
            await hands.press("escape", "enter")
            await hands.choose("Another collection")
            assert "Start a collection" in hands.text

    run(enter())


def test_answers_are_given_to_the_teller_who_is_named_later(run: Run, collection: Collection) -> None:
    async def sit() -> None:
        async with hands_on(collection, door=True) as hands:
            await hands.choose("No teller yet", "The first")
            await hands.press("«The regatta»", "tab", "«Anna Berg»", "enter", "pagedown", "«The farm»", "ctrl+s")
            await hands.press("tab", "tab", "«1912»", "ctrl+s", "ctrl+z")  # what is taken back is told by nobody
            await hands.press("escape")
            await hands.choose("Sit", "Who tells now", "Somebody else")
            await hands.fill("Leida Rourke")
            await hands.choose("Not now")
            assert re.search(r"3 answers were kept before anybody was named. Who told them\?", hands.text)
            await hands.choose("Yes, all are told by Leida Rourke")
            assert "now stand under Leida Rourke. Ctrl+Z takes it back." in hands.text

    run(sit())
    by = {number: {view.said_by for views in record.told.values() for view in views if view.field != "person"}
          for number, record in read(collection).items()}  # fmt: skip
    assert by["TRA-0001"] == {"Leida Rourke"} and by["TRA-0002"] == {"Leida Rourke"}
    assert [(shown.name, shown.told.said_by) for shown in read(collection)["TRA-0001"].shown()] == [
        ("Anna Berg", "Leida Rourke")
    ]


def test_giving_them_is_taken_back_by_one_key_and_can_be_refused(run: Run, collection: Collection) -> None:
    async def sit(answer: str) -> None:
        async with hands_on(collection) as hands:
            assert "no teller yet" in hands.text
            await hands.press("«The regatta», ", "ctrl+s", "escape")
            await hands.choose("Sit", "Who tells now", "Somebody else")
            await hands.fill("Ellen")
            await hands.choose("Not now", answer)
            assert answer.startswith("No") or "1 answer now stands under Ellen. Ctrl+Z takes it back." in hands.text
            await hands.press("ctrl+z")
            await hands.press("escape")
            await hands.choose("Sit", "Who tells now", "I myself")
            assert "You tell." in hands.text and "you tell · 1 of 8" in hands.text

    run(sit("Yes, all are told by"))
    assert [view.said_by for view in read(collection)["TRA-0001"].all("story")] == [""]
    run(sit("No, they stay under the keeper"))


def read(collection: Collection) -> dict[str, Record]:
    return {record.number: record for record in records(collection)}


def test_opened_for_reading_only_nobody_is_asked_who_tells(run: Run, folder: Path) -> None:
    async def enter() -> None:
        with open_collection(folder, write=False) as collection:
            async with hands_on(collection, door=True) as hands:
                assert "Tell me about this photograph." in hands.text and "For reading only" in hands.text

    run(enter())


def test_a_name_that_two_people_have_is_said_before_the_sitting_begins(run: Run, collection: Collection) -> None:
    act = collection.act("two")
    for _ in range(2):
        act.state(act.new(Kind.PERSON), "name", "Joan Tamm")
    act.done()

    async def enter() -> None:
        async with hands_on(collection, door=True) as hands:
            await hands.choose("Somebody else")
            await hands.fill("Joan Tamm")
            await hands.choose("Not now")
            assert "“Joan Tamm” may be 2 people: Joan Tamm (" in hands.text

    run(enter())
