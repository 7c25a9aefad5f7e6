"""The sitting line by line: the whole of it from lines alone, and every order refused kindly.

Rules of our own (no outside source), as the guide tells them.
"""

import subprocess
import sys
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from boxlore.cli.plain_orders import ORDERS, sit_plain
from boxlore.core.fields.name_answers import NAMING_WORDS, NamingAnswer, NamingDecision
from boxlore.core.people.consent import Matter, allows, make_consent
from boxlore.core.places.reading import full_name
from boxlore.core.statements import Kind, Subject, Sure
from boxlore.tasks.collection.opening import Collection, open_collection
from boxlore.tasks.people.registry import consent as keep_consent
from boxlore.tasks.people.registry import find_person
from boxlore.tasks.sitting.session import Sitting
from boxlore.tasks.sitting.tellers_page import Showing
from boxlore.tasks.telling.statements import Teller, Telling


@pytest.fixture
def folder(bare: Callable[[int], Path]) -> Path:
    """Three items without scans."""
    return bare(3)


@pytest.fixture
def collection(folder: Path) -> Iterator[Collection]:
    with open_collection(folder) as opened:
        yield opened


def sit(collection: Collection, lines: str, narrator: str = "Ellen Rourke") -> tuple[Sitting, list[str]]:
    """A sitting from these lines, and what was said."""
    said: list[str] = []
    told = iter(lines.strip("\n").split("\n"))
    sitting = Sitting(collection, narrator=narrator)
    sit_plain(sitting, Showing(collection=collection), lambda: next(told, None), said.append)
    return sitting, said


def record(sitting: Sitting, count: int) -> object:
    return sitting.record(sitting.collection.store.item_by_number(f"TRA-{count:04d}") or "")


def test_three_items_are_told_line_by_line(collection: Collection) -> None:
    sitting, said = sit(
        collection,
        "The regatta at Port Chalmers.\nJaan Tamm\nHelmi Tamm\n\nabout 1938\n\n.before\n.next\n.later ask Joan\n"
        ".unknown\n.same people\n.go TRA-0003\n..dots are words too\n.quit\nnot heard",
    )
    one, two, three = (record(sitting, count) for count in (1, 2, 3))
    assert one.words("story") == "The regatta at Port Chalmers."
    assert [shown.name for shown in one.shown()] == ["Jaan Tamm", "Helmi Tamm"]
    assert one.edtf == "1938~"
    assert one.first("story").said_by == "Ellen Rourke"
    assert "Saved. Understood: about 1938." in said
    assert [shown.name for shown in two.shown()] == ["Jaan Tamm", "Helmi Tamm"]
    assert "story" in two.not_known
    assert sitting.to_ask(two.id) == ["ask Joan"]
    assert three.words("story") == ".dots are words too"
    assert said[-1] == "Everything is kept."


def test_who_tells_is_asked_where_it_is_not_said(collection: Collection) -> None:
    """By a number, a name, or nobody: then the keeper."""

    def begun(lines: str) -> tuple[Sitting, list[str]]:
        said: list[str] = []
        told = iter(lines.split("\n"))
        sitting = Sitting(collection)
        sit_plain(sitting, Showing(collection=collection), lambda: next(told, None), said.append, asks=True)
        return sitting, said

    sitting, said = begun("\n.quit")
    assert sitting.myself and "You tell, as the keeper." in said and "1. Ellen Rourke" not in said
    sitting, said = begun("7\nEllen Rourke\n.quit")
    assert sitting.narrator == "Ellen Rourke" and "There is no such number. Say a name, or an empty line." in said
    assert "Nobody here was called “Ellen Rourke”, so Ellen Rourke is a new person now." in said
    sitting, said = begun("1\n.quit")
    assert sitting.narrator == "Ellen Rourke" and "1. Ellen Rourke" in said and "Ellen Rourke tells." in said


def test_items_are_found_listed_and_turned_to(collection: Collection) -> None:
    _, said = sit(
        collection,
        "The regatta.\n.later ask Joan\n.before\n.find regatta\n.find zeppelin\n.find\n.list\n.list to ask\n"
        ".list all\n.go TRA-0003\n.next\n.aside too sad today\n.list bare\n.quit",
    )
    assert "This is the first photograph." in said
    assert "TRA-0001, story: The regatta." in said
    assert "1 found. .go and a number opens one." in said
    assert said.count("Nothing is found.") == 2
    assert "2 bare." in said and "TRA-0002, bare: nothing told" in said
    assert "TRA-0001, begun: The regatta.; to ask: ask Joan" in said
    assert "1 to ask." in said and "3 photographs." in said
    assert "That was the last photograph." in said
    assert "Set aside." in said


def test_the_questions_go_on_to_the_next_item_and_end_at_the_last(collection: Collection) -> None:
    sitting, said = sit(collection, ".go TRA-0003\n" + "\n" * 20 + ".correct\n.undo\n.redo\n.quit")
    assert "That was the last photograph. .quit leaves." in said
    assert "There are no words to put in its place. Say .correct and the words." in said
    assert "Nothing of this sitting is left to take back." in said
    assert "Nothing was taken back." in said
    assert not record(sitting, 3).told


def test_what_is_known_of_an_item_is_said_before_its_question(collection: Collection) -> None:
    item = Subject(Kind.ITEM, collection.store.item_by_number("TRA-0001") or "")
    teller = Teller(collection)
    teller.tell(item, "care", "A funeral. Ask first.", Telling())
    teller.tell(item, "place", "Reval", Telling())
    _, said = sit(collection, "A harbour.\n.read\n\n\n\n.quit")
    assert said[0] == "Nobody here was called “Ellen Rourke”, so Ellen Rourke is a new person now."
    assert said[3:6] == ["Ellen Rourke tells.", "", "TRA-0001, 1 of 3. no box yet."]
    assert "Care, before the picture: A funeral. Ask first." in said
    assert any(line.startswith("Told so far: ") and "Reval" in line for line in said)
    question = "Tell me about this photograph."
    assert f"{question} (Now: A harbour. – A new line adds to it; .correct replaces it.)" in said
    assert "Where was it? (Told: Reval)" in said


def test_a_place_is_said_as_it_was_understood(collection: Collection) -> None:
    _, said = sit(collection, ".question\n\n\n\nDorpat\n.quit")
    assert "Saved. Understood: Tartu, Estonia." in said


def test_only_what_is_disputed_can_be_settled_and_in_three_ways(collection: Collection) -> None:
    sit(collection, ".go TRA-0002\n\n\n1912\n.quit", "Joan Tamm")
    sitting, said = sit(
        collection,
        ".go TRA-0002\n.settle\n\n\n1930\n.who\n.settle 1 maybe\n.settle 1 doubtful\n.who\n.history date\n.quit",
    )
    (disputed,) = [line for line in said if line.startswith("Disputed: date, these dates cannot both be so: ")]
    assert "“1912” (Joan Tamm)" in disputed and "“1930” (" in disputed
    assert any("It can be settled as this one, both, or doubtful. Say .settle 3 both." in line for line in said)
    assert "Settled. What the others said stays on record." in said
    assert not record(sitting, 2).conflicts
    assert sum(": 1912" in line or ": 1930" in line for line in said) >= 2


def test_correcting_where_answers_gather_takes_the_place_of_the_last(collection: Collection) -> None:
    sitting, said = sit(
        collection,
        ".go TRA-0001\n\n.correct Nobody yet\nJaan Tamm; Helmi Tamm\nMari Kask\n.correct Mari Tamm\n"
        ".correct Mari Rourke; Ruth\n.quit",
    )
    assert "Nothing that this teller said is kept here. A line without .correct adds an answer." in said
    names = [shown.name for shown in record(sitting, 1).shown()]  # type: ignore[attr-defined]
    assert names == ["Jaan Tamm", "Helmi Tamm", "Mari Rourke", "Ruth"]
    history = sitting.history(record(sitting, 1).id, "person")  # type: ignore[attr-defined]
    assert {"Mari Kask", "Mari Tamm"} <= {past.statement.words for past in history}  # nothing is lost


def test_what_was_told_before_is_added_to_unless_corrected(collection: Collection) -> None:
    sit(collection, "First.\n.go TRA-0001\n.correct First, rightly.\n.quit")
    sitting, _ = sit(collection, "Second.\n.undo\n.redo\n.quit")
    assert [told.words for told in record(sitting, 1).all("story")] == ["First, rightly.", "Second."]


def test_statements_are_changed_settled_and_struck_by_their_numbers(collection: Collection) -> None:
    sit(collection, "A secret.\n\n1912\n.quit", "Joan Tamm")
    sitting, said = sit(
        collection,
        ".who\n.audience keeper 2\n\n\n1930\n.who\n.sure guess 1\n.who\n.strike 3\n.strike 3\n"
        ".history story\n.who\n.language et 1\n.who\n.settle 1 both\n.quit",
    )
    one = record(sitting, 1)
    assert not one.conflicts
    assert not one.all("story")
    assert {told.sure for told in one.all("date")} == {Sure.SURE, Sure.GUESS}
    assert any("taken out for good" in line for line in said)
    assert "Struck." in said
    assert {told.language for told in one.all("date")} == {"en", "et"}


def test_the_course_of_it(collection: Collection) -> None:
    sitting, said = sit(
        collection,
        ".agreement\n.agreement 2 Ellen Rourke\n.clap\n.rest\n.resume\n.resume\n.private 5 the war\n"
        ".story person Jaan Tamm: He kept bees.\n.relation same_day TRA-0002\n.close the farm\n.quit",
    )
    rows = collection.store.statements(Subject(Kind.SITTING, sitting.id))
    fields = {statement.field: statement.words for statement, _ in rows}
    assert "Ellen Rourke" in fields["consent"]
    assert "closed" in fields
    assert "Clap 1 noted." in said
    assert any("cannot go on" in line for line in said)
    assert record(sitting, 1).related[0].number == "TRA-0002"
    assert "Next time: the farm" in said


BAD = [
    ".",
    ".x",
    ".s",
    ".go TRA-9999",
    ".who\n.audience all 1",
    ".strike 9",
    ".settle 1",
    ".same",
    ".relation x",
    ".story x",
]
BAD += [".private", ".list colours", ".sure maybe 1", ".correct", ".agreement 2", ".history \\", ".language"]


@pytest.mark.parametrize("line", BAD)
def test_what_cannot_be_meant_is_said_and_the_question_stands(collection: Collection, line: str) -> None:
    sitting, said = sit(collection, f"{line}\nStill here.\n.quit")
    assert record(sitting, 1).words("story") == "Still here."
    assert said[-1] == "Everything is kept."


def test_every_order_is_told_and_reading_only_keeps_nothing(folder: Path) -> None:
    with open_collection(folder, write=False) as collection:
        _, said = sit(collection, ".help\nwords\n.undo\n.next\n.quit", "")
    assert all(any(line.startswith(f".{name}: ") for line in said) for name in ORDERS)
    assert "Open for reading only; nothing can be kept." in said


def test_through_a_pipe_it_ends_with_its_input(folder: Path) -> None:
    """Hostile letters are not sent to the terminal; what was said before the end is kept."""
    program = "from boxlore.cli.main import main; main()"
    command = [
        sys.executable,
        "-c",
        program,
        "-c",
        str(folder),
        "sit",
        "--plain",
        "--no-viewing",
        "--narrator",
        "Ellen",
    ]
    ran = subprocess.run(command, input="The \x1b[31mred boat\u202e.\n", capture_output=True, text=True, check=True)
    assert "\x1b" not in ran.stdout
    with open_collection(folder, write=False) as collection:
        hits = collection.store.search("boat")
    assert [hit.number for hit in hits] == ["TRA-0001"]


def test_consent_is_asked_again_at_each_sitting(collection: Collection) -> None:
    """Ongoing consent: Oral History Association, Best Practices (2018)."""
    teller = Teller(collection)
    act = collection.act("people")
    told = {"Ellen Rourke": "1950", "Joan Tamm": "1961", "Ruth Rourke": "2015", "Jaan Tamm": "1880"}
    people = {name: act.new(Kind.PERSON) for name in told}
    for name, born in told.items():
        teller.add(act, people[name], "name", name, Telling())
        teller.add(act, people[name], "born", born, Telling())
    hide = NamingDecision(NamingAnswer.HIDE, people["Ellen Rourke"].id, "story", f"{'0' * 16}:0:5")
    act.state(Subject(Kind.COLLECTION, collection.id), "naming", NAMING_WORDS.write(hide), audience="keeper")
    act.done()
    guarded = {"capacity": "guardian", "by": "Joan Tamm", "witness": "Con Rourke"}
    for name, more in (("Ellen Rourke", {}), ("Joan Tamm", {}), ("Ruth Rourke", guarded), ("Jaan Tamm", {})):
        keep_consent(collection, find_person(collection, name), make_consent(["name"], "2026-01-05", **more))

    _, said = sit(collection, ".consent\n.consent yes\n.consent yes\n.consent yes Con Rourke\n.consent later\n.consent")
    first = next(line for line in said if line.startswith("Consent to ask for again"))
    assert first == (
        "Consent to ask for again: Ellen Rourke: name; Ruth Rourke: name (ask Joan Tamm, guardian); Joan Tamm: name. "
        "Say .consent."
    ), "the teller first; the dead are not asked"
    day = collection.clock.today()
    hidden = next(
        number for number, line in enumerate(said) if line.startswith("You answered hide in 1 mention that may")
    )
    assert said[hidden - 1].startswith("Noted: Ellen Rourke"), "the same sentence as in the terminal"
    assert f"Noted: Ellen Rourke: given in person, {day}: name." in said
    assert "It stays as it was, and is asked again at the next sitting." in said
    assert any("says so before a witness" in line for line in said)
    assert f"Noted: Ruth Rourke: given by Joan Tamm, guardian, witness Con Rourke, {day}: name." in said
    assert said[-1] == "Nobody’s consent is to be asked for again."
    _, said = sit(collection, ".consent\n.consent maybe\n.consent no\n.quit")
    assert any("Ellen Rourke: name" in line for line in said), "asked again in another sitting"
    assert any("Does it stand?" in line for line in said)
    assert f"Noted: Ellen Rourke: withdrawn in person, {day}: name." in said
    assert not allows(find_person(collection, "Ellen Rourke").consents, Matter.NAME)
    assert allows(find_person(collection, "Joan Tamm").consents, Matter.NAME)
    _, said = sit(collection, ".consent\n.quit")
    assert not any("Ellen" in line for line in said if "onsent" in line or "May it" in line), "a no is not asked again"


def test_nobody_to_ask(collection: Collection) -> None:
    _, said = sit(collection, ".consent\n.quit")
    assert "Nobody’s consent is to be asked for again." in said
    assert not any(line.startswith("Consent to ask") for line in said)


@pytest.mark.parametrize("line", ["?", "help", "Quit", "q"])
def test_a_question_mark_is_not_known_and_a_forgotten_full_stop_is_no_answer(collection: Collection, line: str) -> None:
    sitting, said = sit(collection, f"The regatta.\n{line}\n")
    kept = record(sitting, 1)
    assert [one.words for one in kept.all("person")] == []  # type: ignore[attr-defined]
    assert any(words.startswith(("Asked, not known.", "Did you mean .")) for words in said)


def test_a_question_mark_takes_no_answers_place(collection: Collection) -> None:
    sitting, said = sit(collection, "The regatta.\n.read\n?\n.quit")
    assert "There is an answer here already. ? is for when there is nothing to say; .help for help." in said
    assert not record(sitting, 1).not_known


def test_an_order_right_after_a_story_means_that_story(collection: Collection) -> None:
    """What could not be meant says what to write, and changes nothing."""
    lines = "He kept bees.\n.audience\n.language klingon please\n.language et please\n.audience family\n.strike\n.quit"
    sitting, said = sit(collection, lines)
    assert record(sitting, 1).first("story").audience == "family"
    for sentence in (
        "Which audience? One of: anyone, family, keeper, archive:YYYY-MM-DD.",
        "“klingon” is no language tag. Write a BCP 47 tag, such as en, et, mi or zh-Hant.",
        "“please” is no number of a statement. Say .language et, or .language et 3.",
        "Noted: family, for “He kept bees.”.",
        "“He kept bees.” will be taken out for good. Say .strike again to do it.",
    ):
        assert sentence in said, sentence


def test_a_place_in_question_is_numbered_stays_and_is_chosen(collection: Collection) -> None:
    """“Milton” is several towns (GeoNames): they are numbered, the same on coming back, and one is taken."""
    sitting, said = sit(
        collection, ".question\n\n\n\nMilton\n.go TRA-0002\n.go TRA-0001\n\n\n\n.place 9\n.place far\n.place 2\n.quit"
    )
    numbered = [line for line in said if line.startswith(("1. ", "2. "))]
    assert len(numbered) == 4
    assert numbered[:2] == numbered[2:]
    assert any(line.startswith("There is no choice of that number.") for line in said)
    assert any(line.startswith("“far” is no choice.") for line in said)
    assert f"Noted: {numbered[1][3:]}." in said
    shown = record(sitting, 1)
    assert full_name(shown.place) == numbered[1][3:]
    assert shown.words("place") == "Milton"


def test_somewhere_near_and_a_place_of_our_own(collection: Collection) -> None:
    sitting, said = sit(
        collection,
        ".question\n\n\n\nMilton\n.place near 1\n.go TRA-0002\n\n\n\n"
        "Grandpa's farm, Otago\n.place\n.place own\n.place\n"
        ".go TRA-0003\n\n\n\nGrandpa's farm\n.undo\n.quit",
    )
    near, own = record(sitting, 1).place, record(sitting, 2).place
    assert (near.radius_km, near.lat == round(near.lat, 1)) == (15.0, True)
    assert (own.name, own.admin1) == ("Grandpa's farm", "Otago")
    assert "“Grandpa's farm” is in no list of places. .place own makes it a place of our own." not in said
    assert any(line.startswith("Saved. Understood: ") for line in said)  # told again, it is the place of our own
    assert any(line.startswith("No place is in question here.") for line in said)


def test_what_is_in_no_list_of_places_can_become_our_own(collection: Collection) -> None:
    sitting, said = sit(collection, ".question\n\n\n\nGrandpa's farm\n.place own\n.undo\n.place\n.quit")
    offered = "“Grandpa's farm” is in no list of places. .place own makes it a place of our own."
    assert said.count(offered) == 2  # when it was told, and again after the undo
    assert record(sitting, 1).place is None


def test_an_area_has_nothing_near_it(collection: Collection) -> None:
    _, said = sit(collection, ".question\n\n\n\nWestland\n.place near 1\n.quit")
    assert any("is an area: a place in it is not near it." in line for line in said)


def test_a_doubtful_name_is_asked_about_and_taken_by_its_number(collection: Collection) -> None:
    sitting, said = sit(
        collection, ".name\n.question\n\nLászló Péter\n.name\n.name 9\n.name yes\n.name 1\n.name\n.undo\n.name 2\n.quit"
    )
    question = "“László Péter”: Is “László” the family name?"
    assert said[0] != question and said.count(question) >= 2
    assert any(line.startswith("No name is in question here.") for line in said)
    assert any(line.startswith("There is no choice of that number.") for line in said)
    assert any(line.startswith("“yes” is no choice.") for line in said)
    assert "Noted: given Péter, family László." in said
    assert said.index("Noted: given László, family Péter.") > said.index("Noted: given Péter, family László.")
    person = next(person for person in sitting.collection.people().values() if person.name == "László Péter")
    assert (person.sort_name, person.name_asks) == ("Péter, László", "")


def test_who_is_meant_is_asked_and_taken_by_a_number(collection: Collection) -> None:
    sitting, said = sit(
        collection,
        ".person\n.question\n\nAnna Tamm and Zorb\n.person\n.person 9\n.person yes\n.person 1\n.person\n.quit",
    )
    question = "“Zorb”: who is that?"
    assert said.count(question) >= 2
    assert "1. Somebody new: Zorb" in said and "2. Nobody: the words stay as told" in said
    assert len([line for line in said if line.startswith("Nobody is in question here.")]) == 2
    assert any(line.startswith("There is no choice of that number.") for line in said)
    assert any(line.startswith("“yes” is no choice.") for line in said)
    assert "Noted: Somebody new: Zorb." in said
    assert [shown.name for shown in record(sitting, 1).shown()] == ["Anna Tamm", "Zorb"]
    assert {person.name for person in sitting.collection.people().values()} >= {"Anna Tamm", "Zorb"}


def test_every_question_who_is_meant_comes_up_one_after_the_other(collection: Collection) -> None:
    _, said = sit(collection, ".question\n\nAnna Tamm, Zorb and Quib\n.person 1\n.person 2\n.quit")
    assert ".person 1 takes the first; an empty line goes on. Then 1 more question who is meant." in said
    first, second = said.index("“Zorb”: who is that?"), said.index("“Quib”: who is that?")
    assert first < said.index("Noted: Somebody new: Zorb.") < second
    assert said[-2].startswith("Noted: Nobody")


def test_a_date_in_question_is_a_sentence_and_a_number_takes_it(collection: Collection) -> None:
    """“Easter ’64” says no century (Easter of 1964 was on 29 March: Nautical Almanac, from memory)."""
    sitting, said = sit(collection, ".question\n\n\nEaster ’64\n1\n.quit")
    first = said.index("“Easter ’64”: is 1964 meant?")
    assert said[first + 1 : first + 4] == [
        "1. 29 March 1964",
        "2. 27 March 1864",
        "A number takes one; an empty line goes on; other words come in its place.",
    ]
    assert "Noted: 29 March 1964." in said
    shown = record(sitting, 1)
    assert (shown.edtf, shown.words("date")) == ("1964-03-29", "Easter ’64")


PLAINLY_ASKED = [  # what is told, the question, its choices (the readings themselves: tests/core/dates)
    ("7/4/52", "“7/4/52”: day or month first?", ["7 April 1952", "4 July 1952", "7 April 1952 or 4 July 1952"]),
    ("’37", "“’37”: is 1937 meant?", ["1937"]),
    ("summer", "“summer”: in which year was that summer?", []),
    ("12 June", "“12 June”: in which year?", ["12 June"]),
    ("the year of the flood", "“the year of the flood”: when was the flood?", []),
    (
        "Mon 12 June 1938",
        "“Mon 12 June 1938”: 12 June 1938 was a Sunday, not a Monday. Which is right?",
        ["12 June 1938", "13 June 1938", "12 June 1933", "12 June 1939"],
    ),
]  # fmt: skip


@pytest.mark.parametrize(("told", "question", "choices"), PLAINLY_ASKED)
def test_what_is_in_question_is_asked(collection: Collection, told: str, question: str, choices: list[str]) -> None:
    _, said = sit(collection, f".question\n\n\n{told}\n.quit")
    at = said.index(question)
    numbered = [line.partition(". ")[2] for line in said[at + 1 :] if line[:1].isdigit() and line[1:3] == ". "]
    assert [line[: len(choice)] for line, choice in zip(numbered, choices, strict=True)] == choices


def test_a_place_in_question_is_taken_by_its_number_alone(collection: Collection) -> None:
    sitting, said = sit(collection, ".question\n\n\n\nMilton\n2\n.quit")
    (second,) = [line[3:] for line in said if line.startswith("2. ")]
    assert f"Noted: {second}." in said and full_name(record(sitting, 1).place) == second


def test_when_that_was_waits_for_its_answer_and_keeps_the_words_told(collection: Collection) -> None:
    sitting, said = sit(collection, ".question\n\n\nbefore we left the mill\nFebruary 1926\nDunedin\n.quit")
    kept = record(sitting, 1)
    assert kept.words("date") == "before we left the mill" and kept.edtf == "1926-02"
    assert said[said.index("Say when; an empty line goes on.") + 1] == "Noted: February 1926."
    assert kept.words("place") == "Dunedin"


def test_other_words_than_a_date_where_it_is_asked_when_that_was_are_told_in_its_place(collection: Collection) -> None:
    sitting, _said = sit(collection, ".question\n\n\nbefore we left the mill\nthe pump was still there\n.quit")
    assert record(sitting, 1).words("date") == "the pump was still there"


def test_one_digit_that_no_choice_has_is_no_answer(collection: Collection) -> None:
    sitting, said = sit(collection, ".question\n\n\nEaster '64\n9\n1\n.quit")
    assert "There are 2 choices. 1 to 2 take one; or say it in other words." in said
    assert "Noted: 29 March 1964." in said and record(sitting, 1).words("date") == "Easter '64"
    sitting, said = sit(collection, ".question\n\n\nRuth's friend, 1931\n9\n.quit", narrator="")
    assert "There is one choice. 1 takes it; or say it in other words." in said
