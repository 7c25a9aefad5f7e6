"""A collection made of a transfer knows what was struck: no older table brings it back (our own rule)."""

from collections.abc import Callable
from pathlib import Path

import pytest
from tests.drawn import some

from boxlore.tasks.archive.rebuild import rebuild
from boxlore.tasks.archive.struck_fields import read_struck, struck_rows
from boxlore.tasks.archive.transfer import TransferOrder, transfer
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import Collection, open_collection
from boxlore.tasks.collection.records_for_outputs import Selection
from boxlore.tasks.strike import meant, strike_out, targets
from boxlore.tasks.telling.statements import Teller, Telling
from boxlore.tasks.telling.table import tell_from

SECRET = "Ants Saar owed us money"


def strike_story(collection: Collection, number: str) -> None:
    found = targets(collection, meant(collection, number, "story"), "story")
    assert strike_out(collection, [target.statement for target in found]).finished


@pytest.mark.parametrize("field", some(["story", "place", "title", "own-clothes", "photographer"]))
def test_an_old_table_brings_nothing_back_that_was_struck(
    bare: Callable[[int], Path], tmp_path: Path, field: str
) -> None:
    folder = bare(2)
    table = tmp_path / "old.csv"
    table.write_text(f"item,field,text\nTRA-0001,{field},{SECRET}\nTRA-0002,title,The wharf\n", "utf-8")
    with open_collection(folder) as collection:
        prompts = "[[prompt]]\nfield = 'own-clothes'\nquestion = 'What did she wear?'\n"
        (folder / "prompts.toml").write_text(prompts, "utf-8")
        tell_from(collection, table, Telling())
        found = targets(collection, meant(collection, "TRA-0001", field), field)
        strike_out(collection, [target.statement for target in found])
        transfer(collection, tmp_path / "t", order=TransferOrder(go_on=True))
    listed = (tmp_path / "t" / "closed" / "data" / "metadata" / "struck.csv").read_text("utf-8")
    assert f",{field}," in listed and "Saar" not in listed and "owed" not in listed
    assert not (tmp_path / "t" / "open" / "data" / "metadata" / "struck.csv").exists()
    rebuild(tmp_path / "back", tmp_path / "t")
    with open_collection(tmp_path / "back") as collection:
        taken = tell_from(collection, table, Telling())
        assert [refusal.line for refusal in taken.refused] == [2] and "taken out for good" in taken.refused[0].why
        assert taken.known == 1 and not collection.store.search("Saar")
        transfer(collection, tmp_path / "again", order=TransferOrder(go_on=True))
    assert (tmp_path / "again" / "closed" / "data" / "metadata" / "struck.csv").read_text("utf-8") == listed


def test_a_part_tells_of_its_own_items_alone(bare: Callable[[int], Path], tmp_path: Path) -> None:
    with open_collection(bare(2)) as collection:
        for number in ("TRA-0001", "TRA-0002"):
            Teller(collection).tell(find_item(collection, number), "story", f"{SECRET} at {number}", Telling())
            strike_story(collection, number)
        first = find_item(collection, "TRA-0001").id
        assert [row[1] for row in struck_rows(collection, [first])][1:] == [f"urn:uuid:{first}"]
        assert len(list(struck_rows(collection))) == 3
        transfer(collection, tmp_path / "t", selection=Selection(items=("TRA-0001",)))
    assert (tmp_path / "t/closed/data/metadata/struck.csv").read_text("utf-8").count("\n") == 2


def test_where_nothing_was_struck_there_is_no_table(bare: Callable[[int], Path], tmp_path: Path) -> None:
    with open_collection(bare(1)) as collection:
        transfer(collection, tmp_path / "t")
    assert not list((tmp_path / "t").rglob("struck.csv"))
    assert list(read_struck(tmp_path, {}, "me")) == []


def test_rows_that_are_none_are_passed_over(tmp_path: Path) -> None:
    (tmp_path / "struck.csv").write_text(
        "Kind,Identifier,Field,Statement,When\nnobody,urn:uuid:1,story,s,t\nitem,,story,s,t\n"
        "marker,urn:uuid:1#marker-2,person,s,t\n",
        "utf-8",
    )
    rows = list(read_struck(tmp_path, {"urn:uuid:1#marker-2": "new"}, "me"))
    assert [(row.kind, row.subject, row.field) for row in rows] == [("marker", "new", "person")]
