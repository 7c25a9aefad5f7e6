"""The log's own door: what it refuses, whoever asks. Rules of our own, no outside source."""

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest

from boxlore.core.errors import WrongUse
from boxlore.core.statements import Kind, Statement, Subject
from boxlore.store.opening import Store, create
from boxlore.store.values import Change
from boxlore.tasks.collection.clock import Clock

ITEM = Subject(Kind.ITEM, "11111111-1111-7111-8111-111111111111")


@pytest.fixture
def store(tmp_path: Path) -> Iterator[Store]:
    with create(tmp_path, clock=Clock()) as made:
        yield made


@pytest.mark.parametrize(
    ("what", "sentence"),
    [
        ({"field": "storey"}, "no field “storey”"),
        ({"audience": "nobody"}, "“nobody” is no audience"),
        ({"sure": "quite"}, "“quite” is no way of being sure"),
        ({"language": "??"}, "no language tag"),
        ({"field": "size", "words": "big"}, "is no size"),
    ],
)
def test_an_act_with_one_bad_row_leaves_nothing(store: Store, what: dict[str, str], sentence: str) -> None:
    good = Statement(id="s1", act="a", subject=ITEM, field="story", words="One.", recorded_at="2026")
    bad = replace(good, id="s2", **what)  # type: ignore[arg-type]  # attributes by name
    with pytest.raises(WrongUse, match=sentence):
        store.write(Change(act="a", what="telling", by="me", recorded_at="2026", statements=(good, bad)))
    assert store.statements(ITEM) == []
    assert store.last_acts() == []
    store.write(Change(act="a", what="telling", by="me", recorded_at="2026", statements=(good,)))
    assert [row.words for row, _ in store.statements(ITEM)] == ["One."]
