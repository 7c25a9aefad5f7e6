"""Doubtful names asked about in a sitting: the ways offered, and what is kept. The names are invented."""

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from boxlore.core.errors import WrongUse
from boxlore.core.statements import Kind, Subject
from boxlore.tasks.collection.opening import Collection, open_collection
from boxlore.tasks.sitting.session import Sitting
from boxlore.tasks.sitting.which_name import open_name, take_name
from boxlore.tasks.telling.understanding import person_reading

CASES = [
    ("László Péter", ["given Péter, family László", "given László, family Péter", "given Péter László"]),
    ("Te Rangi Hiroa", ["given Te Rangi, family Hiroa", "given Hiroa, family Te Rangi", "given Te Rangi Hiroa"]),
]


@pytest.fixture
def collection(bare: Callable[[int], Path]) -> Iterator[Collection]:
    """One item without a scan."""
    with open_collection(bare(1)) as opened:
        yield opened


@pytest.mark.parametrize(("name", "choices"), CASES, ids=["hungarian", "maori"])
def test_the_proposal_comes_first_and_the_choice_is_kept(collection: Collection, name: str, choices: list[str]) -> None:
    sitting = Sitting(collection)
    sitting.begin()
    item = next(ident for _, ident in collection.store.items())
    prompt = next(prompt for prompt in sitting.prompts if prompt.field == "person")
    assert open_name(sitting, sitting.record(item)) is None
    sitting.keep(sitting.record(item), prompt, f"{name}, Ruth Rourke")
    record = sitting.record(item)
    question = open_name(sitting, record)
    assert question is not None and question.choices == choices
    with pytest.raises(WrongUse):
        take_name(sitting, record, question, 4)
    assert take_name(sitting, record, question, 3) == choices[2]
    assert open_name(sitting, sitting.record(item)) is None
    person = next(person for person in collection.people().values() if person.name == name)
    assert [row.words for row, _ in collection.store.statements(Subject(Kind.PERSON, person.id))] == [name]


def test_what_stands_in_brackets_is_a_name_at_birth_or_a_nickname(collection: Collection) -> None:
    sitting = Sitting(collection)
    sitting.begin()
    item = next(ident for _, ident in collection.store.items())
    act = collection.act("a name")
    person = act.new(Kind.PERSON)
    sitting.teller.add(act, person, "name", "Anna Tamm (Kask)", sitting.telling)
    act.done()
    act = collection.act("a person")
    row = act.state(Subject(Kind.ITEM, item), "person", "Anna")
    act.readings.append((row.id, person_reading(person)))
    act.done()
    question = open_name(sitting, sitting.record(item))
    assert question is not None
    assert question.question == "“Anna Tamm (Kask)”: Is “Kask” the name at birth?"
    ways = [(parts.born_as, parts.married_as, parts.nickname) for parts in question.ways]
    assert ways == [("Kask", "", ""), ("", "Kask", ""), ("", "", "Kask"), ("", "", "")]
