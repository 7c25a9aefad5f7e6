"""The keys of the sitting's screen: what each says and what is kept (our own contract, as the guide tells it)."""

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from tests.tui.conftest import hands_on

from boxlore.cli.commands.sit import shown
from boxlore.core.errors import CouldNot
from boxlore.core.places.reading import full_name
from boxlore.core.statements import Sure
from boxlore.tasks.collection.opening import Collection, open_collection
from boxlore.tasks.collection.prompts import FILE_NAME
from boxlore.tasks.collection.records_for_outputs import record_of
from boxlore.viewing.addresses import of_this_machine

Run = Callable[..., None]


@pytest.fixture
def collection(folder: Path) -> Iterator[Collection]:
    with open_collection(folder) as opened:
        yield opened


def record(collection: Collection, count: int):  # type: ignore[no-untyped-def]
    return record_of(collection, collection.store.item_by_number(f"TRA-{count:04d}") or "")


def test_who_may_see_it_and_how_sure_go_round(run: Run, collection: Collection) -> None:
    async def sit() -> None:
        async with hands_on(collection, narrator="Ellen Rourke") as hands:
            for key in ("f6", "f7"):
                await hands.press(key)
                assert "Nothing is told here yet. Say it first; F4 shows what others said." in hands.text
            await hands.press("«The regatta.»")
            says = {"family": "for the family only", "keeper": "for the keeper only"}
            for audience, words in says.items():
                await hands.press("f6")
                assert f"“The regatta.”: {words}." in hands.text
                assert record(collection, 1).first("story").audience == audience
            await hands.press("f6")  # one key too many opens nothing
            assert "“The regatta.” is for the keeper only already. F4, “Who may see it” opens it again." in hands.text
            assert record(collection, 1).first("story").audience == "keeper"
            for words, sure in (("likely", Sure.LIKELY), ("a guess", Sure.GUESS), ("sure", Sure.SURE)):
                await hands.press("f7")
                assert f"“The regatta.”: {words}." in hands.text
                assert record(collection, 1).first("story").sure is sure

    run(sit())


def test_of_several_names_the_last_is_meant_and_long_words_are_cut(run: Run, collection: Collection) -> None:
    async def sit() -> None:
        async with hands_on(collection, narrator="Ellen Rourke") as hands:
            await hands.press("tab", "«Jaan Tamm»", "enter", "«Helmi Tamm»", "enter", "f7")
            assert "“Helmi Tamm”: likely." in hands.text
            await hands.press("shift+tab", "«Sixty letters and a few more than sixty of them are to be found»", "f7")
            assert "“Sixty letters and a few more than sixty of them are to be fo…”: likely." in hands.text
        sures = [shown.told.sure for shown in record(collection, 1).shown()]
        assert sures == [Sure.SURE, Sure.LIKELY]

    run(sit())


def test_the_arrows_go_round_the_prompts_and_within_the_lines_of_one(run: Run, collection: Collection) -> None:
    async def sit() -> None:
        async with hands_on(collection) as hands:
            await hands.press("up")
            assert "▸ Who took it?" in hands.text
            await hands.press("down")
            assert "▸ Tell me about this photograph." in hands.text
            await hands.press("«One»", "enter", "«two»", "up", "up")
            assert "▸ Who took it?" in hands.text
            await hands.press("down", "down")
            assert "▸ Who is in it?" in hands.text
            await hands.press("shift+tab", "pageup")
            assert "This is the first photograph." in hands.text

    run(sit())


def test_a_name_is_chosen_among_suggestions_by_the_arrows(run: Run, collection: Collection) -> None:
    async def sit() -> None:
        async with hands_on(collection) as hands:
            await hands.press("tab", "«Kristjan Tamm»", "enter", "«Kristiina Tamm»", "enter", "pagedown")
            await hands.press("tab", "«kris»")
            assert "Tab takes Kristiina Tamm" in hands.text
            await hands.press("down")
            assert "Tab takes Kristjan Tamm" in hands.text
            await hands.press("up", "up")
            assert "Tab takes Kristjan Tamm" in hands.text
            await hands.press("tab")
        assert [shown.name for shown in record(collection, 2).shown()] == ["Kristjan Tamm"]

    run(sit())


def test_escape_puts_the_suggestions_away_before_it_opens_the_menu(run: Run, collection: Collection) -> None:
    async def sit() -> None:
        async with hands_on(collection) as hands:
            await hands.press("tab", "«Kristjan Tamm»", "enter", "«kris»", "escape")
            assert not hands.text.startswith("╭")
            await hands.press("escape")
            assert "Menu ▸ 1 Take in" in hands.text

    run(sit())


def test_not_known_is_for_an_empty_prompt_and_undo_puts_back_what_is_half_typed(
    run: Run, collection: Collection
) -> None:
    async def sit() -> None:
        async with hands_on(collection) as hands:
            await hands.press("«A quay»", "f5")
            assert "There are words in this answer. “Not known” is for when there is nothing to say." in hands.text
            await hands.press("ctrl+s")
            assert "Saved." in hands.text
            await hands.press("«, no»", "ctrl+z")
            assert "Taken back: what was being typed." in hands.text
            await hands.press("tab", "f5")
            assert "Who is in it? Asked, not known." in hands.text
            await hands.press("ctrl+z", "ctrl+z", "ctrl+z")
            assert "Nothing of this sitting is left to take back." in hands.text
            assert not record(collection, 1).told and not record(collection, 1).not_known
            await hands.press("ctrl+y")
            assert "Done again: Story: A quay." in hands.text
            await hands.press("ctrl+y", "ctrl+y")
            assert "Nothing was taken back." in hands.text
        assert record(collection, 1).words("story") == "A quay"

    run(sit())


def test_a_name_told_twice_is_kept_once_and_a_year_is_nobody(run: Run, collection: Collection) -> None:
    async def sit() -> None:
        async with hands_on(collection) as hands:
            await hands.press("tab", "«Jaan Tamm»", "enter", "«jaan tamm»", "enter")
            told = "“jaan tamm” is told here already. Another one of that name is told apart: “jaan tamm the elder”."
            assert told in hands.text
            await hands.press("«jaan»", "tab", "«a boy»", "enter", "«a boy»", "enter", "«1968»", "enter")
            assert "Who: “1968” is nobody’s name. Write a name, or ? alone for asked, not known." in hands.text
            await hands.press("ctrl+u", "tab", "«1968»", "tab")
            assert [view.words for view in record(collection, 1).all("person")] == ["Jaan Tamm", "a boy", "a boy"]
            assert record(collection, 1).words("date") == "1968"
            await hands.press("ctrl+z", "ctrl+z")
            assert "Taken back: Who: a boy." in hands.text

    run(sit())


def test_undo_goes_back_to_the_item_that_it_was_about(run: Run, collection: Collection) -> None:
    async def sit() -> None:
        async with hands_on(collection) as hands:
            await hands.press("«One»", "pagedown", "pagedown", "ctrl+z")
            assert (
                "1 of 8" in hands.text
                and "Taken back at TRA-0001, which is on the screen again: Story: One." in hands.text
            )

    run(sit())


def test_an_answer_of_an_earlier_sitting_that_is_emptied_is_no_trap(run: Run, folder: Path) -> None:
    async def first() -> None:
        with open_collection(folder) as collection:
            async with hands_on(collection) as hands:
                await hands.press("tab", "tab", "«1912»", "tab", "shift+tab", "t")
                assert "In the place of “1912”; Ctrl+Z puts it back." in hands.text  # t takes the place of it
                await hands.press("ctrl+z")
                assert "In the place of" not in hands.text and "1912" in hands.text

    async def second() -> None:
        with open_collection(folder) as collection:
            async with hands_on(collection) as hands:
                await hands.press("tab", "tab", "ctrl+u", "pagedown")
                assert "1 of 8" in hands.text and "Ctrl+Z puts them back." in hands.text
                await hands.press("f4")
                assert "TRA-0001 · who says so" in hands.text
                await hands.press("escape", "ctrl+u", "ctrl+z")
                assert "Taken back: what was being typed." in hands.text
                await hands.press("pagedown")
                assert "2 of 8" in hands.text and "Taken back: what was being typed." not in hands.text
            assert record(collection, 1).words("date") == "1912"

    run(first())
    run(second())


def test_the_language_is_of_this_answer_and_of_what_follows(run: Run, collection: Collection) -> None:
    async def sit() -> None:
        async with hands_on(collection) as hands:
            await hands.press("«Regatt»", "ctrl+l")
            await hands.fill("no language!")
            assert "Write its name, such as Estonian, or its letters: en, et, mi, de-AT." in hands.text
            await hands.fill("et")
            assert "“Regatt”: told in Estonian, and so is what follows." in hands.text
            await hands.press("tab", "tab", "tab", "tab", "ctrl+l")
            await hands.fill("de")
            assert "From now on the words are noted as told in German." in hands.text
            await hands.press("«Hochzeit»", "ctrl+s")
        first = record(collection, 1)
        assert (first.first("story").language, first.first("occasion").language) == ("et", "de")

    run(sit())


def test_the_same_as_in_the_item_before(run: Run, collection: Collection) -> None:
    async def sit() -> None:
        async with hands_on(collection) as hands:
            await hands.press("f8")
            assert "F8 takes over from the photograph looked at before; there is none yet." in hands.text
            await hands.press("pagedown", "f8")
            assert "Nothing is told of TRA-0001 that could be the same here." in hands.text
            await hands.press("pageup", "tab", "«Jaan Tamm»", "enter", "pagedown", "f8", "enter")
            assert "As in TRA-0001" in hands.text  # Enter alone takes over nothing
            await hands.press("down", "enter", "ctrl+z", "f8", "up")
            assert "▸ 1 Same people" in hands.text
            await hands.choose("Same people")
            assert "1 taken over from TRA-0001. Ctrl+Z takes it back." in hands.text
            await hands.press("f8", "1")
            assert "TRA-0001 has no people that TRA-0002 has not." in hands.text
        assert [shown.name for shown in record(collection, 2).shown()] == ["Jaan Tamm"]

    run(sit())


def test_a_relation_to_another_item(run: Run, collection: Collection) -> None:
    async def sit() -> None:
        async with hands_on(collection, size=(120, 50)) as hands:
            await hands.press("escape")
            await hands.choose("This photograph", "Related to another", "Same day as")
            await hands.fill("TRA-9999")
            assert "There is no photograph TRA-9999 here." in hands.text
            await hands.fill("TRA-0003")
            assert "Same day as TRA-0003. Ctrl+Z takes it back." in hands.text
        (related,) = record(collection, 1).related
        assert (related.kind, related.number) == ("same_day", "TRA-0003")

    run(sit())


def test_set_aside_and_the_questions_in_a_file(run: Run, collection: Collection) -> None:
    async def sit() -> None:
        async with hands_on(collection, size=(120, 50)) as hands:
            await hands.press("escape")
            await hands.choose("This photograph", "Set aside")
            await hands.fill("too sad today")
            assert "TRA-0001 is set aside. F3 and Tab show it under “to ask”; Ctrl+Z takes it back." in hands.text
            await hands.press("escape")
            await hands.choose("Sit", "The questions asked")
            assert f"The questions are in {collection.folder / FILE_NAME}" in hands.text
            await hands.press("escape")
            await hands.choose("Sit", "Page for the teller")
            assert "There is no page: it was started with --no-viewing" in hands.text
        assert (collection.folder / FILE_NAME).is_file()

    run(sit())


def test_the_page_is_shown_here_or_on_a_tablet(run: Run, collection: Collection) -> None:
    """By the real server; where a machine has no network, that is said."""
    try:
        on_tablet = f"The teller’s page: http://{of_this_machine()}:"
    except CouldNot as error:
        on_tablet = str(error)

    async def look() -> None:
        with shown(lan=False, page=True) as showing:
            async with hands_on(collection, size=(120, 50), showing=showing) as hands:
                await hands.until("Page for the teller: http://127.0.0.1:")
                await hands.press("escape")
                await hands.choose("Sit", "Page for the teller", "In a browser on this machine")
                await hands.until("The teller’s page: http://127.0.0.1:")
                assert "nothing leaves it." in hands.text and "▀" not in hands.text
                await hands.press("escape")
                await hands.choose("On a tablet beside you")
                await hands.until(on_tablet)
                if showing.code:  # of a machine with a network
                    await hands.press("escape")
                    assert "The page is open to this network now." in hands.text
                    await hands.choose("In a browser on this machine")
                    await hands.until("The teller’s page: http://127.0.0.1:")
                    assert not showing.code

    run(look())


def test_light_and_dark(run: Run, collection: Collection) -> None:
    async def sit() -> None:
        async with hands_on(collection, size=(120, 50)) as hands:
            before = hands.app.theme
            await hands.press("escape")
            await hands.choose("Light or dark colours")
            assert {before, hands.app.theme} == {"lamp", "paper"}
            chosen = hands.app.theme
        async with hands_on(collection) as hands:
            assert hands.app.theme == chosen  # the next time too

    run(sit())


def test_opened_for_reading_only_it_says_so_at_each_key_that_would_write(run: Run, folder: Path) -> None:
    async def sit() -> None:
        with open_collection(folder, write=False) as collection:
            async with hands_on(collection, size=(120, 50)) as hands:
                for key in ("f5", "f6", "f7", "f8", "f9", "ctrl+l"):
                    await hands.press(key)
                    assert "Open for reading only; nothing can be changed." in hands.text
                    await hands.press("pagedown")
                await hands.press("ctrl+s")
                assert "Open for reading only; nothing can be kept." in hands.text
                for names in (
                    ("This photograph", "Set aside"),
                    ("This photograph", "Related to another"),
                    ("Sit", "The questions asked"),
                    ("Sit", "This sitting"),
                    ("Take in", "Scans"),
                ):
                    await hands.press("pagedown", "escape")
                    await hands.choose(*names)
                    assert "Open for reading only; nothing can be changed." in hands.text
                await hands.press("ctrl+z", "ctrl+y")

    run(sit())


def test_a_place_in_question_is_numbered_and_chosen_by_its_key(run: Run, collection: Collection) -> None:
    """“Milton” is several towns (GeoNames): the choices stand below it whenever one comes back, until one is taken."""

    async def sit() -> None:
        async with hands_on(collection) as hands:
            await hands.press("ctrl+p")
            assert "Nothing is in question here" in hands.text
            await hands.press("tab", "tab", "tab", "«Milton»", "enter")
            assert "Ctrl+P chooses: 1 Milton" in hands.text
            await hands.press("pagedown", "pageup")
            assert "Ctrl+P chooses: 1 Milton" in hands.text
            await hands.press("ctrl+p")
            assert "“Milton”: which place is meant?" in hands.text
            await hands.press("1")
            assert "Noted: Milton, " in hands.text and "Ctrl+P chooses" not in hands.text
            assert record(collection, 1).place.name == "Milton"
            await hands.press("pagedown", "tab", "tab", "tab", "«Milton»", "enter")  # the same words: said, not asked
            assert "Ctrl+P chooses" not in hands.text and "= Milton" in hands.text
            assert full_name(record(collection, 2).place) == full_name(record(collection, 1).place)
            await hands.press("ctrl+z", "ctrl+z")
            assert "Ctrl+P chooses: 1 Milton" in hands.text

    run(sit())


def test_a_place_is_somewhere_near_or_our_own(run: Run, collection: Collection) -> None:
    async def sit() -> None:
        async with hands_on(collection) as hands:
            await hands.press("tab", "tab", "tab", "«Milton»", "enter", "ctrl+p", "n")
            assert "Near which?" in hands.text
            await hands.press("1")
            assert record(collection, 1).place.radius_km == 15.0
            await hands.press("pagedown", "tab", "tab", "tab", "«Grandpa's farm»", "enter")
            assert "Ctrl+P makes it our own" in hands.text
            await hands.press("ctrl+p", "o")
            await hands.fill("", "")
            assert "A place needs a name." in hands.text
            await hands.fill("the farm", "Reval")
            assert "Noted: the farm, Tallinn, " in hands.text
            assert record(collection, 2).place.sublocation == "the farm"
            await hands.press(
                "pagedown", "tab", "tab", "tab", "«Grandpa's farm»", "enter"
            )  # the words told mean it too
            assert record(collection, 3).place.sublocation == "the farm"
            await hands.press("pagedown", "tab", "tab", "tab", "«Volhynia»", "enter", "ctrl+p")
            assert "Somewhere near" not in hands.text  # an area has nothing near it

    run(sit())


def test_a_place_that_was_read_wrongly_is_put_right(run: Run, collection: Collection) -> None:
    async def sit() -> None:
        async with hands_on(collection) as hands:
            await hands.press("tab", "tab", "tab", "«Reval»", "enter", "ctrl+p", "1")
            assert "= Tallinn" in hands.text
            await hands.press("shift+tab", "ctrl+p")
            assert "“Reval”: which place is meant?" in hands.text
            await hands.choose("None of these")
            assert "Noted: the words stand for no place on a map." in hands.text and "= Tallinn" not in hands.text
            assert record(collection, 1).place is None or record(collection, 1).place.best is None
            assert record(collection, 1).words("place") == "Reval"
            await hands.press("ctrl+z")
            assert record(collection, 1).place.name == "Tallinn"
            for words, key, shown in (("Milton", "2", "Milton"), ("Dunedin, New Zealand", "", "Dunedin")):
                await hands.press("ctrl+p")
                await hands.choose("Another place")
                await hands.fill("nowhere that is anywhere")
                assert "is not in the list of places. Write the nearest town" in hands.text
                await hands.refill(words)
                await hands.press(*key)
                assert record(collection, 1).place.name == shown and f"Noted: {shown}, " in hands.text
            assert record(collection, 1).words("place") == "Reval"  # as it was told

    run(sit())


def test_an_event_that_a_date_waits_for_is_told_by_the_key_that_answers(run: Run, collection: Collection) -> None:
    async def sit() -> None:
        async with hands_on(collection) as hands:
            await hands.press("tab", "tab", "«the summer before I started school»", "enter")
            assert "when was that? Ctrl+P: say when" in " ".join(hands.text.split())
            await hands.press("ctrl+p", "enter")
            assert "Write when it was." in hands.text
            await hands.fill("September 1931")
            assert "1 date read again. Ctrl+Z takes it back." in " ".join(hands.text.split())
            assert "= summer 1931" in hands.text
            await hands.press("ctrl+z")
            assert "when was that?" in hands.text

    run(sit())


def test_a_doubtful_name_is_asked_about_and_confirmed_by_a_key(run: Run, collection: Collection) -> None:
    async def sit() -> None:
        async with hands_on(collection) as hands:
            await hands.press("tab", "«László Péter»", "enter")
            assert "Is “László” the family name? Ctrl+P" in " ".join(hands.text.split())
            await hands.press("ctrl+p", "enter")
            assert "Noted:" not in hands.text  # Enter alone chooses nothing
            await hands.press("1")
            assert "Noted: given Péter, family László." in hands.text and "the family name?" not in hands.text
            await hands.press("ctrl+z")
            assert "the family name?" in hands.text

    run(sit())


def test_who_is_meant_is_chosen_by_its_key(run: Run, collection: Collection) -> None:
    async def sit() -> None:
        async with hands_on(collection) as hands:
            await hands.press("tab", "«Anna Tamm and Zorb»", "enter")
            asked = "“Zorb”: who is that? Ctrl+P chooses: 1 Somebody new: Zorb"
            assert asked in " ".join(hands.text.split())
            await hands.press("pagedown", "pageup", "tab", "ctrl+p")
            assert "Nobody: the words stay" in hands.text
            await hands.press("1")
            assert "Noted: Somebody new: Zorb." in hands.text and "who is that?" not in hands.text
            await hands.press("ctrl+z")
            assert "who is that?" in hands.text

    run(sit())


def test_a_date_in_question_is_a_sentence_and_chosen_by_its_key(run: Run, collection: Collection) -> None:
    async def sit() -> None:
        async with hands_on(collection) as hands:
            await hands.press("tab", "tab", "«7/4/52»", "enter")
            assert "“7/4/52”: day or month first?" in hands.text and "chooses: 1 7 April 1952" in hands.text
            await hands.press("pagedown", "pageup", "ctrl+p")
            assert "o Another date the words stay as told" in hands.text
            await hands.press("2")
            assert "Noted: 4 July 1952. Ctrl+Z takes it back." in hands.text
            assert (record(collection, 1).edtf, record(collection, 1).words("date")) == ("1952-07-04", "7/4/52")
            await hands.press("ctrl+z")
            assert "day or month first?" in hands.text

    run(sit())


def test_a_date_that_is_not_read_or_read_wrongly_is_said_in_other_words(run: Run, collection: Collection) -> None:
    async def sit() -> None:
        async with hands_on(collection) as hands:
            await hands.press("tab", "tab", "«hats and coats»", "tab")
            assert "kept as told; not read as a date; Ctrl+P: say when" in hands.text
            await hands.press("ctrl+p", "enter")
            assert "Write when it was, as near as anyone can say." in hands.text
            await hands.fill("gloves")
            assert "“gloves” is not read as a date." in hands.text
            await hands.fill("1957")
            assert "= 1957" in hands.text and "Noted: 1957. Ctrl+Z takes it back." in hands.text
            await hands.press("shift+tab", "ctrl+p")
            assert "“hats and coats” stays as it was told, and is read as 1957." in hands.text
            await hands.press("escape", "«7/4/52»", "enter", "shift+tab", "ctrl+p", "o")
            await hands.fill("May 1950")
        assert (record(collection, 1).edtf, record(collection, 1).words("date")) == ("1950-05", "7/4/52")

    run(sit())


def test_of_several_questions_it_is_asked_which(run: Run, collection: Collection) -> None:
    async def sit() -> None:
        async with hands_on(collection, size=(80, 24)) as hands:
            await hands.press("ctrl+p")
            assert "Nothing is in question here." in hands.text
            await hands.press("escape", "7", "w")
            assert "Nothing to ask follows from what is told here." in hands.text
            await hands.press("tab", "«either Dot or her sister»", "enter", "tab", "«1938»", "enter")
            await hands.press("«Milton»", "enter")
            assert "What to ask ? Is “either Dot or her sister” someone in the picture? Ctrl+P" in hands.text
            await hands.press("shift+tab", "shift+tab", "ctrl+p")
            assert "What to ask here: which first?" in hands.text
            await hands.choose("“1938” means something else")
            assert "“1938” stays as it was told, and is read as 1938." in hands.text
            await hands.press("escape", "escape", "f9")
            await hands.fill("ask Joan")
            await hands.press("escape", "7", "w")
            assert "→ ask Joan" in hands.text and "2 Where was it? “Milton”" in hands.text
            await hands.press("2")
            assert "“Milton”: which place is meant?" in hands.text
            await hands.press("escape")
            assert "→ ask Joan" in hands.text  # back at all that is worth asking
            await hands.press("escape", "escape", "escape", "shift+tab", "ctrl+p", "3")
        assert record(collection, 1).people[0].person == ""

    run(sit())
