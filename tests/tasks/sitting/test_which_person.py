"""Who is meant, asked about in a sitting: the choices, and what is kept (our own contract). The names are invented."""

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from boxlore.core.errors import WrongUse
from boxlore.core.records.item_record import Record
from boxlore.core.statements import Kind, Subject
from boxlore.tasks.check import check
from boxlore.tasks.collection.opening import Collection, open_collection
from boxlore.tasks.sitting.session import Sitting
from boxlore.tasks.sitting.which_person import open_people, open_person, take_person

NOBODY = "Nobody: the words stay as told"
NOT_KNOWN = "Not known: the words stay as told"


@pytest.fixture
def collection(bare: Callable[[int], Path]) -> Iterator[Collection]:
    """Two items without a scan."""
    with open_collection(bare(2)) as opened:
        yield opened


def told(collection: Collection, words: str, at: int = 0) -> tuple[Sitting, Record]:
    sitting = Sitting(collection)
    sitting.begin()
    item = [ident for _, ident in collection.store.items()][at]
    prompt = next(prompt for prompt in sitting.prompts if prompt.field == "person")
    sitting.keep(sitting.record(item), prompt, words)
    return sitting, sitting.record(item)


def _listed(collection: Collection) -> list[str]:
    """The questions about people that `check` lists."""
    return [row.finding.message for row in check(collection) if row.finding.rule == "person.in-question"]


DOUBTFUL = [
    ("Anna Tamm, Zorb", ["Somebody new: Zorb", NOBODY]),
    ("Batsman Cyril Dawes", ["Somebody new: Cyril Dawes", "Somebody new: Batsman Cyril Dawes", NOBODY]),
    (
        "Either Ruth or Edna on the left",
        ["Somebody new: Ruth", "Somebody new: Edna", "Somebody new: Either Ruth or Edna", NOBODY],
    ),
    ("Anna Tamm, aged 4, Mum's hand", ["Somebody new: Mum", "Somebody new: Mum's hand", NOBODY]),
    (
        "Left to right Fred Moss Nell Moss",
        [
            "All of them: Fred Moss, Nell Moss",
            "Somebody new: Fred Moss",
            "Somebody new: Nell Moss",
            "Somebody new: Fred Moss Nell Moss",
            NOBODY,
        ],
    ),
    ("Вера Лосева с Ниной", ["Somebody new: Нина", "Somebody new: Ниной", NOBODY]),
    ("Супруги Зуевы", ["Somebody new: Зуев", "Somebody new: Зуева", NOBODY]),
    ("Looks like Ruth but it's her cousin Edna", ["Somebody new: Ruth", NOBODY]),
    ("i døra står Zorb Lien", ["Somebody new: Zorb Lien", "Somebody new: i døra står Zorb Lien", NOBODY]),
    (
        "smallest is old Mr Sugden",
        ["Somebody new: Mr Sugden", "Somebody new: smallest is old Mr Sugden", NOBODY],
    ),
    ("Ivy Pratt, or Olive Moss", ["Somebody new: Olive Moss", NOBODY]),
]


@pytest.mark.parametrize(("words", "choices"), DOUBTFUL, ids=str)
def test_words_of_nobody_known_become_somebody_new(collection: Collection, words: str, choices: list[str]) -> None:
    sitting, record = told(collection, words)
    question = open_person(sitting, record)
    assert question is not None and question.names == choices
    assert question.asks in _listed(collection)
    with pytest.raises(WrongUse):
        take_person(sitting, record, question, len(choices) + 1)
    assert take_person(sitting, record, question, 1) == choices[0]
    record = sitting.record(record.id)
    assert question.asks not in _listed(collection)
    assert open_person(sitting, record) is None and sitting.to_ask(record.id) == []
    name = choices[0].partition(": ")[2].partition(", ")[0]
    assert name in [person.name for person in collection.people().values()]
    assert [shown.name for shown in record.shown() if shown.told.words == question.view.words] == [name]
    sitting.undo()
    again = open_person(sitting, sitting.record(record.id))
    assert again is not None and again.names == choices


def test_nobody_takes_only_the_question_away(collection: Collection) -> None:
    sitting, record = told(collection, "Anna Tamm and Rex")
    question = open_person(sitting, record)
    assert question is not None
    assert take_person(sitting, record, question, len(question.choices)) == NOBODY
    record = sitting.record(record.id)
    assert open_person(sitting, record) is None and sitting.to_ask(record.id) == []
    assert [view.words for view in record.all("person")] == ["Anna Tamm", "Rex"]
    assert [person.name for person in collection.people().values()] == ["Anna Tamm"]


def test_whoever_is_named_in_a_remark_is_asked_about(collection: Collection) -> None:
    told(collection, "Dot")
    sitting, record = told(collection, "Anna Tamm leaning on Bob, Ruth Tamm leaning on Dot", 1)
    everyone = ["Anna Tamm (leaning on Bob)", "Ruth Tamm (leaning on Dot)"]
    assert [view.words for view in record.all("person")] == everyone
    question = open_person(sitting, record)
    assert question is not None and question.names == ["Somebody new: Bob", NOBODY]
    assert question.asks in _listed(collection)
    assert question.asks == "Is “Bob” in the picture too, where “leaning on Bob” is told of Anna Tamm?"
    take_person(sitting, record, question, 2)
    question = open_person(sitting, sitting.record(record.id))
    assert question is not None and question.names == ["Dot", "Somebody new: Dot", NOBODY]
    take_person(sitting, record, question, 1)
    record = sitting.record(record.id)
    assert open_person(sitting, record) is None and sitting.to_ask(record.id) == []
    assert [shown.name for shown in record.shown()] == ["Anna Tamm", "Ruth Tamm", "Dot"]
    assert [view.words for view in record.all("person")] == [*everyone, "Dot"]
    sitting.undo()
    assert open_person(sitting, sitting.record(record.id)) is not None


def test_nobody_stands_first_for_whom_it_was_said_to_be_before(collection: Collection) -> None:
    sitting, record = told(collection, "We always said it was Vera but it's actually Hettie")
    question = open_person(sitting, record)
    assert question is not None and question.names == [NOBODY, "Somebody new: Vera"]


def test_another_who_may_be_meant_is_a_guess_like_the_first(collection: Collection) -> None:
    sitting, record = told(collection, "I think it's Sid Orr, but it could be his brother Len")
    assert [str(view.sure) for view in record.all("person")] == ["guess", "guess"]
    question = open_person(sitting, record)
    assert question is not None and question.names == ["Somebody new: Len", NOBODY]


def test_somebody_of_the_registry_whose_name_ends_the_words(collection: Collection) -> None:
    told(collection, "Cyril Dawes")
    sitting, record = told(collection, "Batsman Cyril Dawes", 1)
    question = open_person(sitting, record)
    assert question is not None
    ident = next(iter(collection.people()))
    assert question.choices[0].person == ident and question.names[0] == "Cyril Dawes"
    take_person(sitting, record, question, 1)
    assert [shown.person for shown in sitting.record(record.id).shown()] == [ident]


def test_of_several_of_one_name_one_is_chosen(collection: Collection) -> None:
    act = collection.act("two of one name")
    for _ in range(2):
        act.state(act.new(Kind.PERSON), "name", "Anna Tamm")
    act.done()
    sitting, record = told(collection, "Anna Tamm")
    question = open_person(sitting, record)
    assert question is not None and question.asks == "“Anna Tamm” may be 2 people: who is meant?"
    assert [name.partition(" (")[0] for name in question.names] == ["Anna Tamm", "Anna Tamm", "Somebody new: Anna Tamm"]
    ids = [choice.person for choice in question.choices[:2]]
    assert question.names[:2] == [f"Anna Tamm ({ident[-12:]})" for ident in ids]
    second = ids[1]
    take_person(sitting, record, question, 2)
    assert [shown.person for shown in sitting.record(record.id).shown()] == [second]
    assert open_person(sitting, sitting.record(record.id)) is None
    rows = collection.store.statements(Subject(Kind.PERSON, second))
    assert [said.words for said, _ in rows] == ["Anna Tamm"]


def by_ida(collection: Collection, words: str) -> tuple[Sitting, Record]:
    """What Ida Marlow tells of the first item."""
    sitting = Sitting(collection, narrator="Ida Marlow")
    sitting.begin()
    item = next(ident for _, ident in collection.store.items())
    prompt = next(prompt for prompt in sitting.prompts if prompt.field == "person")
    sitting.keep(sitting.record(item), prompt, words)
    return sitting, sitting.record(item)


OF_THE_TELLER = [
    ("thats me an our Derek", "Ida Marlow, who tells", "Ida Marlow"),
    ("Mutter mit mir auf dem Arm", "Ida Marlow, who tells", "Ida Marlow"),
    ("Aunt Hetty and half of Grandma", "Ida Marlow's grandmother", "Ida Marlow's grandmother"),
    ("Tom and Nan", "Ida Marlow's grandmother", "Ida Marlow's grandmother"),
    ("Коля на руках у мамы", "Ida Marlow's mother", "Ida Marlow's mother"),
]


@pytest.mark.parametrize(("words", "offered", "name"), OF_THE_TELLER, ids=str)
def test_the_teller_and_the_tellers_kin_are_offered(
    collection: Collection, words: str, offered: str, name: str
) -> None:
    sitting, record = by_ida(collection, words)
    questions = list(open_people(sitting, record))
    question = next(question for question in questions if offered in question.names)
    take_person(sitting, record, question, question.names.index(offered) + 1)
    record = sitting.record(record.id)
    assert name in [shown.name for shown in record.shown()]
    assert len(list(open_people(sitting, record))) == len(questions) - 1
    assert [person.name for person in collection.people().values()].count(name) == 1


def test_nobody_is_called_me_where_no_teller_is_named_yet(collection: Collection) -> None:
    """It waits for the teller, who can be named afterwards; only the question can be taken away."""
    sitting, record = told(collection, "me")
    question = open_person(sitting, record)
    assert question is not None and "me" not in " ".join(question.names).split()


RULED_OUT = [
    ("Missing: Mary Ann Gower", [NOBODY, "Somebody new: Mary Ann Gower"]),
    ("the kids", [NOBODY]),
    ("Nobody, just the house", [NOBODY, "Somebody new: Nobody, just the house"]),
    ("half cut off", [NOBODY, "Somebody new: half cut off"]),
    ("no Peter here", [NOBODY, "Somebody new: Peter", "Somebody new: no Peter here"]),
    ("everyone except Peter", [NOBODY, "Somebody new: Peter", "Somebody new: everyone except Peter"]),
]


@pytest.mark.parametrize(("words", "choices"), RULED_OUT, ids=str)
def test_nobody_stands_first_where_somebody_is_ruled_out(
    collection: Collection, words: str, choices: list[str]
) -> None:
    sitting, record = told(collection, words)
    question = open_person(sitting, record)
    assert question is not None and list(question.names) == choices


def test_all_of_several_names_become_people(collection: Collection) -> None:
    sitting, record = told(collection, "back row Ethel Ada Winnie; front row Tom")
    question = open_person(sitting, record)
    assert question is not None and question.choices[0].several == ("Ethel", "Ada", "Winnie")
    take_person(sitting, record, question, 1)
    shown = [person.name for person in sitting.record(record.id).people]
    assert sorted(shown) == ["Ada", "Ethel", "Tom", "Winnie"]
    assert open_person(sitting, sitting.record(record.id)) is None


SHOWN_TOO = [
    ("Ida Pell with their three children", [NOBODY], ""),
    ("Ida, Tom on her left", ["The own side", "The side of the picture", NOT_KNOWN], "the own side"),
    ("Dot, Flo in front", ["Of both", "Of the last one alone", NOT_KNOWN], "of both"),
]
"""What is asked about somebody who is known, or several told in a remark."""


@pytest.mark.parametrize(("words", "choices", "noted"), SHOWN_TOO, ids=str)
def test_every_question_noted_is_shown_in_the_sitting(
    collection: Collection, words: str, choices: list[str], noted: str
) -> None:
    sitting, record = told(collection, words)
    question = open_person(sitting, record)
    assert question is not None and question.names == choices
    take_person(sitting, record, question, 1)
    record = sitting.record(record.id)
    assert open_person(sitting, record) is None
    notes = [view.words for view in record.all("note")]
    assert [note for note in notes if noted and note.endswith(noted)] == ([f"{question.asks} {noted}"] if noted else [])
