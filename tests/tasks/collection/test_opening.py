"""A row is checked where it is made: rules of our own, no outside source."""

from collections.abc import Callable
from pathlib import Path

import pytest

from boxlore.core.errors import WrongUse
from boxlore.core.statements import Kind, Subject, Sure
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import Collection, open_collection, start
from boxlore.tasks.collection.records_for_outputs import record_of
from boxlore.tasks.collection.settings import FILE_NAME, Settings, read_settings

Bare = Callable[[int], Path]


@pytest.mark.parametrize(
    ("name", "words", "more", "sentence"),
    [
        ("storey", "x", {}, "There is no field “storey” for an item."),
        ("story", "x", {"audience": "nobody"}, "“nobody” is no audience."),
        ("story", "x", {"sure": "quite"}, "“quite” is no way of being sure."),
        ("story", "x", {"language": "et_EE"}, "“et_EE” is no language tag."),
        ("kept", "in the attic", {}, "Kept in: “in the attic” is no place in a container."),
    ],
)
def test_nothing_of_a_refused_statement_is_kept(
    bare: Bare, name: str, words: str, more: dict[str, str], sentence: str
) -> None:
    with open_collection(bare(1)) as collection:
        item = find_item(collection, "TRA-0001")
        act = collection.act("telling")
        act.state(item, "story", "The one that was right.")
        with pytest.raises(WrongUse, match=sentence):
            act.state(item, name, words, **more)
        act.done()
        record = record_of(collection, item.id)
        assert [view.words for view in record.all("story")] == ["The one that was right."]
        assert set(record.told) == {"story"}


def _older(collection: Collection, language: str) -> None:
    """What an older version let in, which had no guard."""
    collection.store.writer.do(lambda db: db.execute("UPDATE statement SET language = ?", (language,)))


@pytest.mark.parametrize(("older", "newer"), [("et_EE", "et-EE"), ("no tag", ""), ("et", "et")])
def test_what_is_said_again_keeps_all_but_a_language_that_is_no_tag(bare: Bare, older: str, newer: str) -> None:
    with open_collection(bare(2)) as collection:
        first, second = (find_item(collection, number) for number in ("TRA-0001", "TRA-0002"))
        act = collection.act("telling")
        act.state(first, "title", "Kuusk", language="et", sure=Sure.LIKELY, audience="family")
        act.done()
        _older(collection, older)
        (told,) = (row for row, _ in collection.store.statements(first) if row.field == "title")
        act = collection.act("moved")
        moved = act.again(told, second)
        act.done()
        assert (moved.words, moved.sure, moved.audience) == ("Kuusk", Sure.LIKELY, "family")
        assert (moved.subject, moved.replaces, moved.language) == (second, told.id, newer)
        assert [row.field for row, _ in collection.store.statements(first)] == ["number"]


def test_a_new_collection_has_a_language_that_is_one(tmp_path: Path) -> None:
    with pytest.raises(WrongUse, match="language: “not a language” is no language tag"):
        start(tmp_path / "new", Settings(language="not a language"))
    assert not (tmp_path / "new").exists()


@pytest.mark.parametrize(("written", "meant"), [("en_NZ", "en-NZ"), ("et", "et"), ("not a language", "not a language")])
def test_an_older_collections_language_is_mended_where_it_can_be(tmp_path: Path, written: str, meant: str) -> None:
    (tmp_path / FILE_NAME).write_text(f'language = "{written}"\n', encoding="utf-8")
    assert read_settings(tmp_path).language == meant


@pytest.mark.parametrize("years", [-5, 0, 1, 69, 151])
def test_nobody_is_presumed_dead_within_a_lifetime(tmp_path: Path, years: int) -> None:
    (tmp_path / FILE_NAME).write_text(f"living_years = {years}\n", encoding="utf-8")
    with pytest.raises(WrongUse, match="70 to 150 years"):
        read_settings(tmp_path)


def test_a_sitting_may_be_asked_about_later(bare: Bare) -> None:
    """The row of the field `asked` names items and sittings."""
    with open_collection(bare(1)) as collection:
        act = collection.act("to ask")
        sitting = act.new(Kind.SITTING)
        act.state(sitting, "asked", "Who is the sailor?", audience="keeper")
        act.done()
        assert [row.words for row, _ in collection.store.statements(Subject(Kind.SITTING, sitting.id))] == [
            "Who is the sailor?"
        ]
