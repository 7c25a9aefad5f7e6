"""A given name told alone in a second item: the same person, or another one, which is asked (a rule of our own)."""

from pathlib import Path

import pytest

from boxlore.core.statements import Kind, Subject, read_source
from boxlore.tasks.collection.opening import Collection, open_collection, start
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.sitting.session import Sitting
from boxlore.tasks.sitting.which_person import OpenPerson, open_person, take_person
from boxlore.tasks.telling.same_given_name import whose, without_whose
from boxlore.tasks.telling.statements import Teller, Telling
from boxlore.tasks.telling.table import tell_from


def _items(collection: Collection, count: int) -> list[Subject]:
    act = collection.act("items")
    for number in range(1, count + 1):
        act.state(act.new(Kind.ITEM), "number", f"TRA-{number:04d}")
    act.done()
    return [Subject(Kind.ITEM, ident) for _, ident in collection.store.items()]


def _tell(collection: Collection, item: Subject, words: str) -> None:
    how = Telling(source=read_source("narrator:Leida Rourke"))
    Teller(collection).tell(item, "person", words, how)


def test_a_given_name_alone_asks_once_whether_it_is_the_one_told_before(tmp_path: Path) -> None:
    start(tmp_path / "ours", Settings())
    with open_collection(tmp_path / "ours") as collection:
        first, second, third, fourth = _items(collection, 4)
        _tell(collection, first, "Jack")
        _tell(collection, first, "Jack")
        _tell(collection, second, "Ann Orr, Jack (in white)")
        sitting = Sitting(collection)
        sitting.begin()
        question = open_person(sitting, sitting.record(second.id))
        assert question is not None
        assert question.asks == "“Jack (in white)”: is that Jack, told before, or somebody else?"
        assert [shown.name for shown in sitting.record(second.id).shown()] == ["Ann Orr", "Jack"]
        assert question.names[1] == "Somebody new: Jack"
        take_person(sitting, sitting.record(second.id), question, 1)
        assert open_person(sitting, sitting.record(second.id)) is None
        _tell(collection, third, "Jack")
        assert open_person(sitting, sitting.record(third.id)) is None
        _tell(collection, fourth, "Aunt Mavis")
        _tell(collection, third, "Aunt Mavis")
        assert open_person(sitting, sitting.record(third.id)) is None


def test_of_one_table_too_but_not_of_one_voice_in_a_sitting(tmp_path: Path) -> None:
    start(tmp_path / "ours", Settings())
    with open_collection(tmp_path / "ours") as collection:
        items = _items(collection, 4)
        (tmp_path / "told.csv").write_text(
            "item,field,text\nTRA-0001,person,Bert\nTRA-0002,person,Bert\nTRA-0002,person,Anna Tamm\n", encoding="utf-8"
        )
        tell_from(collection, tmp_path / "told.csv", Telling())
        sitting = Sitting(collection)
        sitting.begin()
        asked = open_person(sitting, sitting.record(items[1].id))
        assert asked is not None and asked.view.words == "Bert"
        prompt = next(prompt for prompt in sitting.prompts if prompt.field == "person")
        sitting = Sitting(collection, narrator="Leida Rourke")
        sitting.begin()
        for item in items[2:]:
            sitting.keep(sitting.record(item.id), prompt, "Olive")
            assert open_person(sitting, sitting.record(item.id)) is None


def test_what_a_voice_calls_somebody_is_asked_once_and_its_answer_holds_for_all_that_wait(tmp_path: Path) -> None:
    start(tmp_path / "ours", Settings())
    with open_collection(tmp_path / "ours") as collection:
        items = _items(collection, 9)
        _tell(collection, items[0], "Jack Orr")
        sitting = Sitting(collection, narrator="Leida Rourke")
        prompt = next(prompt for prompt in sitting.prompts if prompt.field == "person")

        def asked(item: Subject, words: str = "Jack") -> OpenPerson | None:
            sitting.keep(sitting.record(item.id), prompt, words)
            return open_person(sitting, sitting.record(item.id))

        def shown() -> list[str]:
            return [person.person for item in items for person in sitting.record(item.id).shown()]

        sitting.begin()
        first, second = asked(items[1]), asked(items[2], "Jack (waving)")
        assert first is not None and not first.asked_before
        assert second is not None and second.asked_before and second.names == first.names
        sitting = Sitting(collection, narrator="Leida Rourke")
        sitting.begin()
        third = asked(items[3])
        assert third is not None and third.asked_before
        now = open_person(sitting, sitting.record(items[1].id))
        assert now is not None
        taken = take_person(sitting, sitting.record(items[1].id), now, 2)
        assert taken == "Somebody new: Jack; in 2 further pictures too"
        assert shown()[1] == shown()[2] == shown()[3] not in ("", shown()[0])
        assert asked(items[4]) is None and shown()[4] == shown()[3]  # Jack Orr has the name too, and is not asked about
        sitting.undo()
        sitting.undo()
        assert shown()[1:4] == ["", "", ""]
        assert now == open_person(sitting, sitting.record(items[1].id))
        take_person(sitting, sitting.record(items[1].id), now, 1)
        assert len(set(shown()[:4])) == 1
        _tell(collection, items[5], "Jack Moss")
        other = asked(items[6])
        assert other is None and shown()[-1] == shown()[0]  # this voice has called one of the two Jack


def test_a_voice_that_calls_two_people_by_one_name_is_asked_each_time(tmp_path: Path) -> None:
    start(tmp_path / "ours", Settings())
    with open_collection(tmp_path / "ours") as collection:
        items = _items(collection, 4)
        for item in items[:2]:
            _tell(collection, item, "Jack")
        sitting = Sitting(collection)
        question = open_person(sitting, sitting.record(items[1].id))
        assert question is not None
        take_person(sitting, sitting.record(items[1].id), question, 2)
        for item in items[2:]:
            _tell(collection, item, "Jack")
            question = open_person(sitting, sitting.record(item.id))
            assert question is not None and not question.asked_before
            assert question.asks == "“Jack” may be 2 people: who is meant?"


def test_whose_somebody_is_tells_two_of_one_name_apart(tmp_path: Path) -> None:
    start(tmp_path / "ours", Settings())
    with open_collection(tmp_path / "ours") as collection:
        items = _items(collection, 8)
        sitting = Sitting(collection, narrator="Leida Rourke")
        sitting.begin()
        prompt = next(prompt for prompt in sitting.prompts if prompt.field == "person")

        def asked(item: Subject, words: str) -> OpenPerson | None:
            sitting.keep(sitting.record(item.id), prompt, words)
            return open_person(sitting, sitting.record(item.id))

        assert asked(items[0], "Helmi Tamm") is None
        ours = asked(items[1], "Mum and Dad, our Helmi as a baby")
        assert ours is not None and ours.names == ["Helmi Tamm", "Somebody new: Helmi"]
        take_person(sitting, sitting.record(items[1].id), ours, 1)
        theirs = asked(items[2], "Aunt Salme, Uncle August, and their Helmi")
        assert theirs is not None and theirs.names == ["Helmi Tamm", "Somebody new: Helmi"]
        assert theirs.asks == "“Helmi (their)”: is that Helmi Tamm, told before, or somebody else?"
        take_person(sitting, sitting.record(items[2].id), theirs, 2)
        assert asked(items[3], "our Helmi") is None  # both are known by whose they are
        assert asked(items[4], "my Helmi (waving)") is None
        assert asked(items[5], "Tom and their Helmi") is None
        who = [sitting.record(item.id).shown()[-1].person for item in items[1:6]]
        assert who[0] == who[2] == who[3] and who[1] == who[4] != who[0]
        grandfathers = asked(items[6], "his Helmi")
        assert grandfathers is not None
        assert grandfathers.asks == "“his Helmi” may be 2 people: who is meant?"
        assert asked(items[7], "their Kristjan") is None


@pytest.mark.parametrize(
    ("told", "owner", "name"),
    [
        ("our Pauline", "our", "Pauline"),
        ("Unsere Pauline", "our", "Pauline"),
        ("Pauline (their, as a baby)", "their", "Pauline"),
        ("Pauline (Bert's)", "bert's", "Pauline"),
        ("Pauline (as a baby)", "", "Pauline"),
        ("Little Pauline", "", "Little Pauline"),
        ("Pauline", "", "Pauline"),
    ],
)
def test_whose(told: str, owner: str, name: str) -> None:
    assert (whose(told), without_whose(told)) == (owner, name)
