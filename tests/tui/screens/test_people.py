"""People, places and check put right from inside (our own contract)."""

import re
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from tests.tui.conftest import hands_on

from boxlore.core.people.person import Person
from boxlore.core.records.item_record import Record
from boxlore.core.statements import Kind, Said, Subject, read_source
from boxlore.tasks.collection.opening import Collection, open_collection
from boxlore.tasks.collection.records_for_outputs import records
from boxlore.tasks.originals.housing_changes import About, note_container
from boxlore.tasks.people.registry import find_person
from boxlore.tasks.telling.statements import Teller, Telling

Run = Callable[..., None]
LEIDA = Telling(source=read_source("narrator:Leida Rourke"))


@pytest.fixture
def collection(folder: Path) -> Iterator[Collection]:
    """Anna in three items, by two sources; Ann Berg in one; two places and an occasion."""
    with open_collection(folder) as opened:
        teller = Teller(opened)
        for number, name in ((1, "Anna Berg"), (2, "Anna Berg"), (3, "Ann Berg")):
            teller.tell(item(opened, number), "person", name, LEIDA)
        teller.tell(item(opened, 4), "photographer", "Anna Berg", Telling())
        for number, place in ((1, "Revel"), (2, "revel"), (3, "Port Chalmers")):
            teller.tell(item(opened, number), "place", place, LEIDA)
        teller.tell(item(opened, 1), "occasion", "the picnick", LEIDA)
        yield opened


def item(collection: Collection, number: int) -> Subject:
    return Subject(Kind.ITEM, collection.store.item_by_number(f"TRA-{number:04d}") or "")


def read(collection: Collection) -> dict[str, Record]:
    return {record.number: record for record in records(collection)}


def names(collection: Collection) -> list[str]:
    return sorted(person.name for person in collection.people().values())


def person(collection: Collection, name: str) -> Person:
    return find_person(collection, name)


def test_a_person_shows_everything_and_is_called_something_else_everywhere(run: Run, collection: Collection) -> None:
    async def right() -> None:
        async with hands_on(collection) as hands:
            await hands.press("escape")
            await hands.choose("Put right", "People")
            assert "3 people" in hands.text
            await hands.press("«anna»", "enter")
            assert "Anna Berg · 3 pictures" in hands.text
            assert "In it TRA-0001" in hands.text and "Took it TRA-0004" in hands.text
            await hands.press("a")
            await hands.choose("Correct the name")
            await hands.fill("")
            assert "There is no name. Write the whole name, as captions shall give it." in hands.text
            await hands.fill("Anna Bergmann")
            assert "Called Anna Bergmann everywhere. Ctrl+Z takes it back." in hands.text
            assert [shown.name for shown in read(collection)["TRA-0002"].shown()] == ["Anna Bergmann"]
            await hands.press("ctrl+z")
            assert "Taken back: Anna Berg is called Anna Bergmann." in hands.text
            await hands.press("ctrl+z")
            assert "Nothing of this sitting is left to take back." in hands.text
            await hands.press("down")  # with the next key it is said no more
            assert "left to take back" not in hands.text
            await hands.press("a")
            await hands.choose("Correct the name")
            await hands.fill("Anna Bergmann")
            await hands.press("escape", "escape", "ctrl+z")  # at the photograph, of which it was not told
            assert "Taken back: Anna Berg is called Anna Bergmann." in hands.text and "1 of 8" in hands.text

    run(right())
    assert names(collection) == ["Ann Berg", "Anna Berg", "Leida Rourke"]


def test_a_new_name_is_the_tellers_at_once_and_that_of_her_kin(run: Run, collection: Collection) -> None:
    async def right() -> None:
        async with hands_on(collection, narrator="Leida Rourke") as hands:
            await hands.press("tab", "«Mum and my brother»", "enter")
            await hands.press("escape")
            await hands.choose("Put right", "People")
            await hands.press("«leida»", "enter", "a")  # before her kin in what is sought
            await hands.choose("Correct the name")
            await hands.fill("Leida Tamm")
            await hands.press("escape", "escape")
            assert "Leida Tamm tells" in hands.text and "Mum (= Leida Tamm's mother)" in hands.text
            await hands.press("escape")
            await hands.choose("Sit", "Who tells now")
            assert "Leida Tamm tells. Who tells now?" in hands.text
            await hands.press("escape", "escape", "escape", "ctrl+z")
            assert "Leida Rourke tells" in hands.text
            await hands.press("ctrl+y")

    run(right())
    assert {"Leida Tamm", "Leida Tamm's mother", "Leida Tamm's brother"} <= set(names(collection))


def test_words_typed_into_a_list_choose_nothing(run: Run, collection: Collection) -> None:
    async def typed() -> None:
        async with hands_on(collection) as hands:
            await hands.press("escape", "«The quay. 3 came at 4»", "enter")
            assert "Menu" in hands.text and "“The quay. 3 came at 4” is typed into a list" in hands.text
            await hands.press("down")
            assert "typed into a list" not in hands.text
            await hands.press("up", "z")
            assert "“z” chooses nothing here. Esc goes back." in hands.text
            await hands.press("down", "up", "enter")
            assert "Take in" in hands.text and "Menu" not in hands.text
            await hands.press("escape", "escape")
            assert "▸ Tell me about this photograph." in hands.text
        assert not read(collection)["TRA-0001"].words("story")

    run(typed())


def test_words_typed_at_once_into_a_list_choose_nothing(run: Run, collection: Collection) -> None:
    """Letters that are no key of any list come by another way than those that are; their order stays."""

    async def typed() -> None:
        async with hands_on(collection) as hands:
            await hands.press("escape")
            await hands.press("«Ä»", "enter", at_once=True)
            assert "Menu" in hands.text and "“Ä” chooses nothing here" in hands.text
            await hands.press("down")
            await hands.press("«Ä1 Quay, 3»", at_once=True)
            assert "Menu" in hands.text and "“Ä1 Quay, 3” is typed into a list" in hands.text

    run(typed())


def test_not_this_person_in_one_picture(run: Run, collection: Collection) -> None:
    async def right() -> None:
        async with hands_on(collection) as hands:
            await hands.press("escape")
            await hands.choose("Put right", "People")
            await hands.press("«anna»", "enter", "down", "enter")
            await hands.choose("Not this person here")
            await hands.fill("Anna Berg")
            assert "That is Anna Berg. Write who it is instead." in hands.text
            await hands.fill("Mari Lepik")
            assert "TRA-0001 shows Mari Lepik." in hands.text and "Anna Berg · 2 pictures" in hands.text
            await hands.press("enter")
            await hands.choose("Not this person here")
            await hands.fill("Ann Berg")
            await hands.press("enter")
            await hands.choose("Somebody else said it")
            await hands.fill("Joan Tamm")
            assert "Said by Joan Tamm." in hands.text
            await hands.press("enter")
            await hands.choose("Show TRA-0004")
            assert "TRA-0004" in hands.text and "Tell me about this photograph." in hands.text

    run(right())
    shown = {
        number: [(one.name, one.told.words) for one in record.people] for number, record in read(collection).items()
    }
    assert shown["TRA-0001"] == [("Mari Lepik", "Anna Berg")] and shown["TRA-0002"] == [("Ann Berg", "Anna Berg")]
    assert read(collection)["TRA-0004"].people[0].told.said_by == "Joan Tamm"


def test_one_of_two_and_two_of_one(run: Run, collection: Collection) -> None:
    async def right() -> None:
        async with hands_on(collection) as hands:
            await hands.press("escape")
            await hands.choose("Put right", "People")
            await hands.press("«anna»", "enter", "a")
            await hands.choose("The same person as …")
            await hands.fill("Nobody")
            assert "Nobody here is called “Nobody”. The list of people shows everyone." in hands.text
            await hands.press("ctrl+u", "«ann b»", "tab", "enter")  # a name is completed
            assert "Anna Berg, no birth told, in 3 pictures Ann Berg, no birth told, in 1 picture" in hands.text
            await hands.choose("Not sure")
            assert "Nothing was changed." in hands.text
            await hands.press("a")
            await hands.choose("The same person as …")
            await hands.fill("Ann Berg")
            await hands.choose("The same person")
            assert (
                "Ann Berg and Anna Berg are one person now, called Anna Berg." in hands.text
                and "Anna Berg · 4 pictures" in hands.text
            )
            assert "Same person as Ann Berg " in hands.text
            await hands.press("a")
            await hands.choose("Take two apart again")
            assert "They stand apart again." in hands.text and "Anna Berg · 3 pictures" in hands.text
            await hands.press("a")
            await hands.choose("Take two apart again")
            assert "Anna Berg was never made one with anybody." in hands.text
            await hands.press("a")
            await hands.choose("Not the same as …")
            await hands.fill("Ann Berg")
            assert "Ann Berg is somebody else." in hands.text

    run(right())
    assert person(collection, "Anna Berg").different == (person(collection, "Ann Berg").id,)


def test_a_birth_a_mother_and_a_consent_are_added(run: Run, collection: Collection) -> None:
    async def right() -> None:
        async with hands_on(collection) as hands:
            await hands.press("escape")
            await hands.choose("Put right", "People")
            await hands.press("«anna»", "enter")
            for label, words in (("Born", "about 1912"), ("Mother", "Mari Lepik")):
                await hands.press("a")
                await hands.choose("Add something told", label)
                await hands.fill("")
                assert "There is nothing to keep yet." in hands.text
                await hands.fill(words)
            assert "Nobody here is called “Mari Lepik”. Who is meant?" in hands.text
            await hands.press("enter", "escape")
            assert names(collection) == ["Ann Berg", "Anna Berg", "Leida Rourke"]  # nobody was made
            await hands.press("enter", "n")
            assert "Kept: mother, “Mari Lepik”." in hands.text and "about 1912" in hands.text
            await hands.press("a")
            await hands.choose("Add something told", "Died")
            await hands.fill("sometime")
            assert "Kept: died, “sometime”. It is kept as told, and not read as a date." in hands.text
            await hands.press("ctrl+z")
            await hands.press("a")
            await hands.choose("Consent")
            await hands.press("ctrl+s")
            assert "Choose what may be shown, whether it is allowed, and who says so" in hands.text
            await hands.press("f1")
            assert "You cannot break anything." in hands.text  # the guide, at any time
            await hands.press("escape", "right", "enter", "«yes»", "enter", "right", "ctrl+s")
            assert "Ctrl+Z takes it back." in hands.text
            await hands.press("a")
            await hands.choose("Who may see them")
            await hands.press("right", "ctrl+s")
            assert "Anna Berg is for the family only from now on. Ctrl+Z takes it back." in hands.text
            await hands.press("ctrl+z")
            assert "Taken back: Anna Berg: family." in hands.text
            await hands.press("enter")
            await hands.choose("History")
            assert "History: Name" in hands.text

    run(right())
    anna = person(collection, "Anna Berg")
    assert anna.born is not None and anna.born.display == "approximately 1912"
    assert anna.parents == (person(collection, "Mari Lepik").id,) and anna.consents[0].given


def test_a_name_that_somebody_has_is_asked_about(run: Run, collection: Collection) -> None:
    anna = person(collection, "Anna Berg").id

    async def right() -> None:
        async with hands_on(collection, narrator="Leida Rourke") as hands:
            await hands.press("escape")
            await hands.choose("Put right", "People")
            await hands.press("«ann»", "down", "enter", "a")  # typed at a run: the row that is shown then
            await hands.choose("Correct the name")
            await hands.fill("Ann Berg")
            assert "Somebody is called Ann Berg already. The same person?" in hands.text
            await hands.choose("Two people")
            assert "Called Ann Berg everywhere; Ann Berg is somebody else." in hands.text
            await hands.press("ctrl+z", "a")
            await hands.choose("Correct the name")
            await hands.fill("Ann Berg")
            await hands.choose("The same person")
            assert (
                "Anna Berg and Ann Berg are one person now, called Ann Berg." in hands.text
                and "Ann Berg · 4 pictures" in hands.text
            )

    run(right())
    past = [row.statement for row in collection.store.history(anna, "name")]
    assert [(said.words, said.source.said) for said in past] == [
        ("Anna Berg", Said.NARRATOR),
        ("Ann Berg", Said.KEEPER),
    ]


def test_who_is_understood_stands_beside_the_words_told(run: Run, collection: Collection) -> None:
    async def look() -> None:
        async with hands_on(collection, (80, 24), narrator="Leida Rourke") as hands:
            await hands.press("tab", "«me»", "enter")
            assert "Anna Berg · me (= Leida Rourke)" in hands.text
            await hands.press("tab", "tab", "tab", "tab")
            assert "Enter: a new line · Tab goes on." in hands.text

    run(look())


def test_nobody_knows_who_it_is(run: Run, collection: Collection) -> None:
    async def right() -> None:
        async with hands_on(collection) as hands:
            await hands.press("f4", "enter")
            await hands.choose("Somebody else, not known who")
            assert "TRA-0001: not Anna Berg; who it is, is not known." in hands.text
            await hands.press("escape", "pagedown", "f4", "enter")
            await hands.choose("Not this person here")
            await hands.fill("Mari Lepik")
            assert "TRA-0002 shows Mari Lepik." in hands.text

    run(right())
    assert "person" in read(collection)["TRA-0001"].not_known
    assert [shown.name for shown in read(collection)["TRA-0002"].shown()] == ["Mari Lepik"]


def test_own_words_are_corrected_with_their_history(run: Run, collection: Collection) -> None:
    Teller(collection).tell(Subject(Kind.PERSON, person(collection, "Anna Berg").id), "nickname", "Anni", LEIDA)

    async def right() -> None:
        async with hands_on(collection) as hands:
            await hands.press("escape")
            await hands.choose("Put right", "People")
            await hands.press("«anna»", "enter", "down", "enter")
            await hands.choose("Correct the words")
            await hands.press("«ka»", "enter")
            assert "Corrected." in hands.text and "Annika" in hands.text
            await hands.press("enter")
            await hands.choose("History")
            assert "“Anni”" in hands.text and "“Annika”" in hands.text

    run(right())


def test_pairs_that_may_be_one(run: Run, collection: Collection) -> None:
    teller = Teller(collection)
    for number in (5, 6):
        act = collection.act("a twin entry")
        twin = act.new(Kind.PERSON)
        teller.add(act, twin, "name", "Juhan Tamm", LEIDA)
        teller.add(act, twin, "born", "1890", LEIDA)
        act.done()
        assert number

    async def right() -> None:
        async with hands_on(collection) as hands:
            await hands.press("escape")
            await hands.choose("Put right", "Perhaps the same person")
            assert "Juhan Tamm / Juhan Tamm" in hands.text
            await hands.press("1")
            await hands.choose("Not sure")
            await hands.press("1")
            await hands.choose("The same person")
            assert "Juhan Tamm / Juhan Tamm" not in hands.text

    run(right())
    assert names(collection).count("Juhan Tamm") == 1


def test_a_place_is_called_something_else_everywhere(run: Run, collection: Collection) -> None:
    async def right() -> None:
        async with hands_on(collection) as hands:
            await hands.press("escape")
            await hands.choose("Put right", "Places")
            assert "2 told" in hands.text and "Revel" in hands.text and "2 pictures" in hands.text
            await hands.press("«rev»", "enter")
            await hands.choose("Call it something else everywhere")
            await hands.fill("")
            assert "There are no words." in hands.text
            await hands.fill("Reval")
            assert "2 put right. Ctrl+Z takes it back." in hands.text
            await hands.press("ctrl+z")
            assert "Taken back: Where: Revel is called Reval." in hands.text
            await hands.press("enter")
            await hands.choose("Show TRA-0002")
            assert "TRA-0002" in hands.text and "revel" in hands.text
            await hands.press("escape")
            await hands.choose("Put right", "Occasions")
            await hands.press("enter")
            await hands.choose("Call it something else everywhere")
            await hands.fill("the picnic")
            await hands.press("escape")

    run(right())
    found = read(collection)
    assert found["TRA-0001"].words("place") == "Revel" and found["TRA-0001"].words("occasion") == "the picnic"


def test_check_leads_to_the_photograph_at_its_question(run: Run, collection: Collection) -> None:
    note_container(collection, "7", About(materials="PVC"))

    async def look() -> None:
        async with hands_on(collection) as hands:
            await hands.press("escape")
            await hands.choose("Put right", "Check")
            await hands.until("Esc back")
            assert "Check · worth doing first" in hands.text
            assert "do Box 7 is PVC: house what is in it in" in hands.text  # done, not asked; and named once
            await hands.press("tab")
            while not re.search(r"▸ ask \d+ × TRA-0001 Nobody has said when", shown := hands.text):
                await hands.press("down")
                assert hands.text != shown, "the last line, and it was not among them"
            await hands.press("enter")
            assert "Check · When: nobody has said" in hands.text
            await hands.press("down", "enter")
            assert "TRA-0002" in hands.text and "▸ When was it?" in hands.text
            await hands.press("escape")
            await hands.choose("Keep safe", "Originals")
            await hands.until("Esc back")
            assert "Originals · worth doing first" in hands.text and "nobody has said" not in hands.text
            while "▸ do Box 7 is PVC" not in (shown := hands.text):
                await hands.press("down")
                assert hands.text != shown, "the last line, and it was not among them"
            await hands.press("enter")
            assert "“Keep safe”, “A box or folder” says what it is made of." in " ".join(hands.text.split())
            await hands.press("escape")
            assert "Tell me about this photograph." in hands.text

    run(look())


def test_a_marker_without_a_name_asks_until_it_has_one_or_is_not_known(run: Run, pictured: Path) -> None:
    async def sit() -> None:
        with open_collection(pictured) as collection:
            async with hands_on(collection) as hands:
                for _ in range(2):
                    await hands.press("f2", "left", "left", "enter", "pagedown", "pageup")
                await hands.press("tab")
                assert "Who is at 1?" in hands.text
                await hands.press("f5")
                assert "▌1▐" not in hands.text and "not known" in hands.text
                await hands.press("pagedown", "pageup", "tab")
                assert "Who is at 2?" in hands.text
                await hands.press("«Anna Berg»", "enter", "«Mari»", "enter")
                await hands.press("f2", "2")
                assert "Enter alone names it." in hands.text
                await hands.press("enter", "«Anne Berg»", "enter")
                assert "Who is in it?" in hands.text
            (record, _) = records(collection)
            assert [(shown.name, shown.number) for shown in record.shown()] == [("Anne Berg", 2), ("Mari", 0)]
            assert "person" not in record.not_known

    run(sit())
