"""Working copies made and joined, with their files. Rules of our own, no outside source."""

from collections.abc import Callable
from pathlib import Path

import pytest
from PIL import Image

from boxlore.core.errors import WrongUse
from boxlore.core.statements import Kind, Subject
from boxlore.store.strike import strike
from boxlore.store.values import Draft
from boxlore.tasks.collection.joining import JoinedCopies, join, make_working_copy
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.collection.progress import QUIET, Quiet
from boxlore.tasks.collection.settings import read_settings
from boxlore.tasks.scans.intake import IntakeOptions, take_in
from boxlore.tasks.scans.pairing import by_suffix


@pytest.fixture
def first(bare: Callable[[int], Path], tmp_path: Path) -> Path:
    """A collection with one scan, a paper and prompts of its own."""
    folder = bare(0)
    take(folder, tmp_path / "quay_f.jpg", 60)
    (folder / "papers" / "agreement.txt").write_text("signed", "utf-8")
    (folder / "prompts.toml").write_text("# none yet\n", "utf-8")
    return folder


def take(folder: Path, path: Path, width: int) -> None:
    Image.linear_gradient("L").resize((width, 40)).save(path)
    with open_collection(folder) as collection:
        list(take_in(collection, by_suffix([path]), IntakeOptions(copy=True)))


def tell(folder: Path, words: str) -> None:
    with open_collection(folder) as collection:
        (_, item), *_ = collection.store.items()
        act = collection.act("a telling")
        act.state(Subject(Kind.ITEM, item), "story", words)
        act.done()


def joined(folder: Path, other: Path, progress: Quiet = QUIET, *, new_numbers: bool = False) -> JoinedCopies:
    with open_collection(folder) as collection:
        return join(collection, other, progress, new_numbers=new_numbers)


def state(folder: Path) -> tuple[list[str], list[tuple[str, bytes]]]:
    """The numbers of a collection, and each scan's path with its bytes."""
    with open_collection(folder, write=False) as collection:
        numbers = [number for number, _ in collection.store.items()]
        paths = sorted(facts.path for _, facts in collection.store.scans())
        return numbers, [(path, (folder / path).read_bytes()) for path in paths]


def test_a_working_copy_has_all_and_numbers_in_a_series_of_its_own(first: Path, tmp_path: Path) -> None:
    copies = [tmp_path / "aksel", tmp_path / "eha"]
    for copy in copies:
        assert make_working_copy(copy, first, QUIET).faults == []
        assert state(copy) == state(first)
        assert (copy / "papers" / "agreement.txt").is_file() and (copy / "prompts.toml").is_file()
    assert [read_settings(folder).series for folder in (first, *copies)] == ["A", "B", "C"]


def test_what_each_took_in_is_in_both_and_once_more_adds_nothing(first: Path, tmp_path: Path) -> None:
    second = tmp_path / "aksel"
    make_working_copy(second, first, QUIET)
    take(second, tmp_path / "regatta_f.jpg", 70)
    take(first, tmp_path / "farm_f.jpg", 80)
    assert joined(first, second).files == 1
    assert joined(second, first).files == 1
    assert state(first) == state(second)
    assert len(state(first)[0]) == 3
    again = joined(first, second)
    assert (again.log.acts, again.log.statements, again.files, again.faults) == (0, 0, 0, [])


def test_a_folder_copied_by_hand_is_numbered_anew_only_when_agreed(first: Path, tmp_path: Path) -> None:
    """Its scans, which have the same names, both stay."""
    second = tmp_path / "aksel"
    make_working_copy(second, first, QUIET, series="A")
    take(first, tmp_path / "farm_f.jpg", 80)
    take(second, tmp_path / "regatta_f.jpg", 70)
    before = state(first)
    with pytest.raises(WrongUse, match=r"to different photographs: TRA-0002\. Nothing was taken in\. "):
        joined(first, second)
    assert state(first) == before
    done = joined(first, second, new_numbers=True)
    assert done.same_series and [old[-5:] + new[-5:] for old, new in done.numbered_anew] == ["-0002-0003"]
    numbers, scans = state(first)
    assert [number[-4:] for number in numbers] == ["0001", "0002", "0003"]
    assert len({data for _, data in scans}) == 3
    assert joined(second, first).numbered_anew == []
    assert state(second) == state(first)


def renumber(folder: Path, count: int) -> str:
    """Give the first item the number of that count; its id."""
    with open_collection(folder) as collection:
        (number, item), *_ = collection.store.items()
        act = collection.act("a number of its own")
        (given,) = (told for told, _ in collection.store.statements(Subject(Kind.ITEM, item)) if told.field == "number")
        act.state(given.subject, "number", number.replace("0001", f"{count:04d}"), replaces=given.id)
        act.done()
        return item


def test_of_an_item_with_two_numbers_the_one_that_another_has_is_given_anew(first: Path, tmp_path: Path) -> None:
    second = tmp_path / "aksel"
    make_working_copy(second, first, QUIET, series="A")
    take(first, tmp_path / "farm_f.jpg", 80)
    renumber(second, 2)
    item = renumber(first, 9)
    assert [old[-4:] + new[-5:] for old, new in joined(first, second, new_numbers=True).numbered_anew] == ["0002-0010"]
    with open_collection(first, write=False) as collection:
        rows = collection.store.statements(Subject(Kind.ITEM, item))
        assert sorted(told.words[-4:] for told, _ in rows if told.field == "number") == ["0009", "0010"]
    assert joined(first, second).log.twice == ()


class Stopped(Quiet):
    def stopped(self) -> bool:
        return True


def test_a_joining_that_was_stopped_goes_on_where_two_scans_have_one_name(first: Path, tmp_path: Path) -> None:
    second = tmp_path / "aksel"
    make_working_copy(second, first, QUIET, series="A")
    take(first, tmp_path / "farm_f.jpg", 80)
    take(second, tmp_path / "regatta_f.jpg", 70)
    assert joined(first, second, Stopped(), new_numbers=True).stopped
    assert joined(first, second).files == 1
    assert len({data for _, data in state(first)[1]}) == 3
    assert joined(first, second).files == 0


def test_a_joining_that_was_stopped_goes_on(first: Path, tmp_path: Path) -> None:
    second = tmp_path / "aksel"
    make_working_copy(second, first, QUIET)
    take(second, tmp_path / "regatta_f.jpg", 70)
    done = joined(first, second, Stopped())
    assert done.stopped and done.files == 0
    done = joined(first, second)
    assert (done.log.acts, done.files) == (0, 1)
    assert state(first) == state(second)


def test_what_cannot_be_copied_is_said(first: Path, tmp_path: Path) -> None:
    second = tmp_path / "aksel"
    make_working_copy(second, first, QUIET)
    (second / "papers" / "agreement.txt").write_text("another", "utf-8")
    (second / "papers" / "receipt.txt").write_text("a receipt", "utf-8")
    take(second, tmp_path / "regatta_f.jpg", 70)
    take(second, tmp_path / "farm_f.jpg", 80)
    gone, changed = sorted((second / "scans").rglob("*B-*"))
    gone.unlink()
    changed.write_bytes(changed.read_bytes()[::-1])
    done = joined(first, second)
    said = "\n".join(done.faults)
    assert (done.files, len(done.faults)) == (1, 3)
    assert "agreement.txt differ; each copy keeps its own" in said
    assert f"{gone} is not there" in said and f"The copy of {changed.name} differs" in said
    assert (first / "papers" / "agreement.txt").read_text("utf-8") == "signed"


def test_a_strike_there_is_one_here(first: Path, tmp_path: Path) -> None:
    second = tmp_path / "aksel"
    tell(first, "Ants, who owed us money")
    make_working_copy(second, first, QUIET)
    with open_collection(second) as collection:
        ids = [row[0] for row in collection.store.every_words() if row[2] == "story"]
        strike(collection.store, ids, by="aksel", now=collection.clock.now())
    done = joined(first, second)
    assert done.struck is not None and (done.struck.struck, done.struck.finished) == (1, True)
    assert all(b"owed us" not in path.read_bytes() for path in first.rglob("*.sqlite"))


def test_numbers_that_stop_a_joining_do_not_hide_that_something_was_struck(first: Path, tmp_path: Path) -> None:
    second = tmp_path / "aksel"
    tell(first, "Ants, who owed us money")
    make_working_copy(second, first, QUIET, series="A")
    take(first, tmp_path / "farm_f.jpg", 80)
    take(second, tmp_path / "regatta_f.jpg", 70)
    with open_collection(second) as collection:
        ids = [row[0] for row in collection.store.every_words() if row[2] == "story"]
        strike(collection.store, ids, by="aksel", now=collection.clock.now())
    with pytest.raises(WrongUse, match=r"taken in; what was struck there is struck here\. "):
        joined(first, second)
    assert all(b"owed us" not in path.read_bytes() for path in first.rglob("*.sqlite"))


def test_what_is_no_working_copy_is_refused(first: Path, bare: Callable[[int], Path], tmp_path: Path) -> None:
    for other, why in ((first, "this very collection"), (tmp_path, "no collection")):
        with pytest.raises(WrongUse, match=why):
            joined(first, other)


def test_after_z_no_series_letter_is_left(first: Path, tmp_path: Path) -> None:
    with open_collection(first) as collection:
        for letter in "BCDEFGHIJKLMNOPQRSTUVWXYZ":
            collection.store.give_series(collection.settings.prefix + letter)
    with pytest.raises(WrongUse, match="Every series letter"):
        make_working_copy(tmp_path / "aksel", first, QUIET)
    assert not (tmp_path / "aksel").exists()


def test_a_clock_ahead_and_answers_being_typed_are_told(first: Path, tmp_path: Path) -> None:
    second = tmp_path / "aksel"
    make_working_copy(second, first, QUIET)
    with open_collection(second) as collection:
        (_, item), *_ = collection.store.items()
        collection.store.save_draft(
            Draft(subject=Subject(Kind.ITEM, item), field="story", words="It was", updated_at=collection.clock.now())
        )
        collection.clock._last += 3_600_000  # the clock of that machine is an hour ahead
        act = collection.act("a telling")
        act.state(Subject(Kind.ITEM, item), "story", "Told an hour ahead")
        act.done()
    done = joined(first, second)
    assert done.drafts == 1 and done.ahead
