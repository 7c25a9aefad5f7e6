"""A given name told alone in a second item: the same person, or another one, which is asked (a rule of our own)."""

from pathlib import Path

from boxlore.core.statements import Kind, Subject, read_source
from boxlore.tasks.collection.opening import Collection, open_collection, start
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.sitting.session import Sitting
from boxlore.tasks.sitting.which_person import open_person, take_person
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
