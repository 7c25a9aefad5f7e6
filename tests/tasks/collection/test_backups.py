"""When backups are made, by every task that is risky, and what a keeper reads (our own rules, no outside source)."""

import logging
import os
import signal
import subprocess
import sys
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

import pytest
from PIL import Image

from boxlore.core.errors import CouldNot, WrongUse
from boxlore.core.originals.moves import move
from boxlore.core.statements import Kind, Subject
from boxlore.store.backups import listed
from boxlore.store.strike import files_holding
from boxlore.tasks.archive.offer import read_answer
from boxlore.tasks.archive.receipt import read_receipt
from boxlore.tasks.collection import backups
from boxlore.tasks.collection.backups import find_backup, has_backups, list_backups, restore, said
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import Collection, open_collection, start
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.originals.housing_changes import About, carry_out, house_of, note_container
from boxlore.tasks.people import registry
from boxlore.tasks.people.tree_import import import_tree
from boxlore.tasks.scans.file_state import Verified
from boxlore.tasks.scans.fixity import register_again
from boxlore.tasks.scans.intake import IntakeOptions, take_in
from boxlore.tasks.scans.pairing import by_suffix
from boxlore.tasks.sitting.session import Sitting
from boxlore.tasks.sitting.who_said_it import give_all
from boxlore.tasks.strike import strike_out
from boxlore.tasks.telling.statements import Teller, Telling
from boxlore.tasks.telling.table import tell_from


def tell(collection: Collection, words: str, number: str = "TRA-0001") -> str:
    return Teller(collection).tell(find_item(collection, number), "story", words, Telling()).id


def whys(folder: Path) -> list[str]:
    """The reasons, the oldest backup first."""
    return [backup.why for backup in reversed(listed(folder))]


def empty(folder: Path) -> None:
    for backup in listed(folder):
        backup.path.unlink()


def test_closing_makes_one_only_where_something_was_told(bare: Callable[[int], Path]) -> None:
    folder = bare(2)
    assert whys(folder) == ["on closing"]
    with open_collection(folder):
        pass
    with open_collection(folder, write=False):
        pass
    assert whys(folder) == ["on closing"]
    with open_collection(folder) as collection:
        tell(collection, "It rained")
        assert whys(folder) == ["on closing"]  # nothing while words are typed
    assert whys(folder) == ["on closing", "on closing"]


def test_a_new_collection_has_nothing_to_back_up(tmp_path: Path) -> None:
    start(tmp_path / "new", Settings(prefix="TR"))
    with open_collection(tmp_path / "new"):
        pass
    assert whys(tmp_path / "new") == []


def test_what_a_fault_ended_is_backed_up_and_what_ctrl_c_ended_next_time(bare: Callable[[int], Path]) -> None:
    folder = bare(2)
    for fault, count in ((WrongUse("no"), 2), (KeyboardInterrupt(), 2)):
        with pytest.raises(type(fault)), open_collection(folder) as collection:
            tell(collection, f"before {fault!r}")
            raise fault
        assert len(whys(folder)) == count
    with open_collection(folder):
        pass
    assert len(whys(folder)) == 3


KILLED = """
import sys, time
from pathlib import Path
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.telling.statements import Teller, Telling
with open_collection(Path(sys.argv[1])) as collection:
    Teller(collection).tell(find_item(collection, "TRA-0001"), "story", "It rained", Telling())
    print("told", flush=True)
    sys.stdin.read()
"""


def test_what_a_kill_ended_is_backed_up_at_the_next_closing(bare: Callable[[int], Path]) -> None:
    folder = bare(2)
    env = {**os.environ, "PYTHONPATH": os.pathsep.join(sys.path)}
    child = subprocess.Popen(
        [sys.executable, "-c", KILLED, str(folder)], stdin=subprocess.PIPE, stdout=subprocess.PIPE, env=env
    )
    assert child.stdout is not None and child.stdout.readline()
    child.send_signal(signal.SIGKILL)
    child.communicate()
    assert len(whys(folder)) == 1
    with open_collection(folder):
        pass
    assert len(whys(folder)) == 2 and len(list(files_holding(folder / "backups", ["It rained"]))) == 1


def _people(collection: Collection) -> list[str]:
    act = collection.act("people")
    made = [act.new(Kind.PERSON) for _ in range(2)]
    for person, name in zip(made, ("Leida Rourke", "Leida Tamm"), strict=True):
        act.state(person, "name", name)
    act.done()
    return [person.id for person in made]


def _merged(collection: Collection) -> None:
    one, other = _people(collection)
    registry.merge(collection, collection.people()[one], collection.people()[other])


def _unmerged(collection: Collection) -> None:
    _merged(collection)
    empty(collection.folder)
    registry.unmerge(collection, registry.find_person(collection, "Leida Rourke"))


def _split(collection: Collection) -> None:
    one, _ = _people(collection)
    (name,) = [told.id for told, _ in collection.store.statements(Subject(Kind.PERSON, one))]
    registry.split(collection, collection.people()[one], "Leida the other", statements=[name])


def _tree(collection: Collection) -> None:
    file = collection.folder / "tree.ged"
    file.write_text("0 HEAD\n1 GEDC\n2 VERS 5.5.1\n1 CHAR UTF-8\n0 @I1@ INDI\n1 NAME Mari /Tamm/\n0 TRLR\n")
    import_tree(collection, file)


def _table(collection: Collection) -> None:
    file = collection.folder / "told.csv"
    file.write_text("item,field,text\nTRA-0001,title,The harbour\n")
    tell_from(collection, file, Telling())


def _receipt(collection: Collection) -> None:
    file = collection.folder / "receipt.csv"
    file.write_text(
        "Number,Identifier,Title,Accession number,The archive's reference,Remarks\nTRA-0001,,,2026/7,MS-12,\n"
    )
    read_receipt(collection, file)


def _answer(collection: Collection) -> None:
    file = collection.folder / "offer.csv"
    file.write_text("Number,Wanted\nTRA-0001,yes\n")
    read_answer(collection, file)


def _moved(collection: Collection) -> None:
    box = note_container(collection, "1", About()).id
    house = house_of(collection)
    item = find_item(collection, "TRA-0001").id
    carry_out(collection, move(house.holding, [item], box))


def _taken_in(collection: Collection) -> None:
    picture = collection.folder / "incoming_f.png"
    Image.new("L", (8, 8)).save(picture)
    take_in(collection, by_suffix([picture]), IntakeOptions(copy=True))


def _registered(collection: Collection) -> None:
    _taken_in(collection)
    empty(collection.folder)
    ((scan, facts),) = collection.store.scans()
    register_again(collection, [Verified(facts.path, "moved", "elsewhere.png", scan)])


def _struck(collection: Collection) -> None:
    strike_out(collection, [tell(collection, "It rained")])


def _struck_in_a_sitting(collection: Collection) -> None:
    Sitting(collection, narrator="Leida").strike(tell(collection, "It rained"))


def _given(collection: Collection) -> None:
    assert give_all(collection, "Leida", "") == 1


RISKY: list[tuple[str, Callable[[Collection], None]]] = [
    ("before merging people", _merged),
    ("before parting people", _unmerged),
    ("before parting people", _split),
    ("before a tree file", _tree),
    ("before a table", _table),
    ("before a receipt", _receipt),
    ("before an answer", _answer),
    ("before moving originals", _moved),
    ("before taking scans in", _taken_in),
    ("before registering scans again", _registered),
    ("before giving answers to a teller", _given),
    ("before striking", _struck),
    ("before striking", _struck_in_a_sitting),
]


@pytest.mark.parametrize(("why", "task"), RISKY, ids=[task.__name__[1:] for _, task in RISKY])
def test_every_risky_task_makes_one_first(
    bare: Callable[[int], Path], why: str, task: Callable[[Collection], None]
) -> None:
    folder = bare(2)
    empty(folder)
    with open_collection(folder) as collection:
        tell(collection, "Told shortly before")
        task(collection)
        assert whys(folder) == [why]
        before = list_backups(folder)[0].holds
        assert before is not None
        now = collection.store.db.execute("SELECT count(*) FROM statement").fetchone()[0]
        assert before.statements < now or task in (_struck, _struck_in_a_sitting, _unmerged)
    assert b"Told shortly before" in listed(folder)[-1].path.read_bytes()


def test_a_word_struck_is_in_none_of_them_and_does_not_come_back(bare: Callable[[int], Path]) -> None:
    folder = bare(2)
    with open_collection(folder) as collection:
        secret = tell(collection, "Zanzibar")
        _table(collection)
        _merged(collection)
    escaped = next(backup.path for backup in listed(folder) if "before-a-table" in backup.path.name)
    away = escaped.read_bytes()
    assert len(list(files_holding(folder, ["Zanzibar"]))) == 4
    with open_collection(folder) as collection:
        assert strike_out(collection, [secret]).left_in == ()
    assert list(files_holding(folder, ["Zanzibar"])) == []
    escaped.write_bytes(away)
    brought = restore(folder, escaped)
    assert brought.struck == 1
    assert list(files_holding(folder, ["Zanzibar"])) == []
    chosen = next(one for one in list_backups(folder) if one.backup.path == escaped)
    assert said(brought, chosen)[2:] == ["Struck since that day, and taken out of it again: 1 statement."]


def test_the_oldest_go_where_they_take_more_room_than_they_may(bare: Callable[[int], Path]) -> None:
    """The setting counts all backups together; the newest stays even where it alone takes more."""
    folder = bare(2)
    with open_collection(folder) as collection:
        collection.settings = replace(collection.settings, backups_mb=1)
        size = listed(folder)[0].size
        for count in range(2 * 1_000_000 // size + 2):
            tell(collection, f"It rained, time {count}")
            collection.back_up("on closing")
    total = sum(backup.size for backup in listed(folder))
    assert 1_000_000 - 2 * size < total <= 1_000_000
    newest = listed(folder)[0]
    assert b"It rained, time 0" in newest.path.read_bytes()
    with open_collection(folder) as collection:
        assert backups.keep(collection.store, "on closing", collection.clock.now(), 0) == ""
        tell(collection, "It snowed")
        assert backups.keep(collection.store, "on closing", collection.clock.now(), 0) == ""
        assert len(listed(folder)) == 1


@pytest.mark.parametrize("value", ["0", "-5", "2.5", '"much"'])
def test_a_room_that_is_none_is_refused(bare: Callable[[int], Path], value: str) -> None:
    folder = bare(1)
    (folder / "boxlore.toml").write_text(f"backups_mb = {value}\n")
    with pytest.raises(WrongUse, match="backups_mb"), open_collection(folder):
        pass


def test_what_could_not_be_backed_up_is_said_once_on_closing(
    bare: Callable[[int], Path], caplog: pytest.LogCaptureFixture
) -> None:
    folder = bare(2)
    empty(folder)
    (folder / "backups").rmdir()
    (folder / "backups").write_text("")
    with caplog.at_level(logging.WARNING, "boxlore"), open_collection(folder) as collection:
        tell(collection, "It rained")
        _merged(collection)  # it goes on all the same
        assert not caplog.messages
    (words,) = caplog.messages
    assert words.startswith("No backup could be made in ") and "what is told is safe all the same" in words


def test_a_missing_collection_says_the_way_back_and_none_is_begun_over_it(bare: Callable[[int], Path]) -> None:
    folder = bare(2)
    (folder / "collection.sqlite").unlink()
    assert has_backups(folder)
    said_so = r"There is no .*collection.sqlite.*boxlore restore can bring back"
    with pytest.raises(CouldNot, match=said_so), open_collection(folder):
        pass
    with pytest.raises(WrongUse, match="holds the backups of a collection"):
        start(folder, Settings(prefix="TR"))
    restore(folder, listed(folder)[0].path)
    with open_collection(folder) as collection:
        assert len(collection.store.items()) == 2


def test_backups_are_asked_for_by_the_beginning_of_a_name(bare: Callable[[int], Path]) -> None:
    folder = bare(2)
    with open_collection(folder) as collection:
        tell(collection, "It rained")
    listed_now = list_backups(folder)
    for one in listed_now:
        assert find_backup(folder, one.name) == one == find_backup(folder, f"{one.name}.sqlite")
    assert find_backup(folder, "newest") == listed_now[0]
    with pytest.raises(WrongUse, match="2 backups are called"):
        find_backup(folder, "20")
    for text in ("", "1999"):
        with pytest.raises(WrongUse, match="No backup is called"):
            find_backup(folder, text)
    listed_now[0].backup.path.write_bytes(b"")
    with pytest.raises(WrongUse, match="cannot be read"):
        find_backup(folder, listed_now[0].name)
    assert find_backup(folder, "newest").name == listed_now[1].name
    empty(folder)
    with pytest.raises(WrongUse, match="There are no backups in"):
        find_backup(folder, "newest")
