"""The first screen: starting, opening and leaving, by keys and by its menu (our own contract)."""

import shutil
from collections.abc import Callable, Iterator
from contextlib import ExitStack
from pathlib import Path

import pytest
from tests.tui.conftest import hands_on

from boxlore.tasks.archive.transfer import transfer
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.collection.parcels import ParcelOrder, make_parcel
from boxlore.tasks.collection.progress import QUIET
from boxlore.tasks.collection.records_for_outputs import records
from boxlore.tasks.demo import every_task

Run = Callable[..., None]


def test_a_collection_is_started_once_its_form_is_right(run: Run, tmp_path: Path) -> None:
    async def begin() -> None:
        async with hands_on(None, (120, 40)) as hands:
            assert "Start a collection" in hands.text and "Five keys are enough:" in hands.text
            await hands.press("«s»")
            await hands.fill("", "", "")
            assert "Name a folder for it." in hands.text
            (tmp_path / "a file").write_text("mine", "utf-8")
            await hands.refill("Our photographs", "Aotearoa", str(tmp_path / "a file" / "ours"))
            assert "Nothing can be written in" in hands.text  # said where the folder stands, before more is asked
            await hands.fill(str(tmp_path / "a file"))
            assert "a file is a file. Choose a folder." in " ".join(hands.text.split())
            await hands.refill("Our photographs", "Atlantis", str(tmp_path / "ours"))
            assert "“Atlantis” may be no country, or several." in hands.text
            assert not (tmp_path / "ours").exists()  # it was tried, and nothing is left
            await hands.fill("Aotearoa", str(tmp_path / "ours"))
            assert "7 April 1952" in hands.text and "December to February" in hands.text and " OP " in hands.text
            await hands.press("«English please»", "ctrl+s")
            assert "Write its name, such as Estonian, or its letters: en, et, mi, de-AT." in hands.text
            await hands.fill("te reo Māori")
            await hands.press("right", "enter", "enter")
            await hands.fill("lower case")
            assert "prefix is “LOWER CASE”. It must be two to seven capital letters or digits" in hands.text
            await hands.press("up", "up", "«ask»", "down", "down")
            await hands.fill("our")
            assert "Nothing is in it yet" in hands.text
            await hands.press("escape")
            await hands.choose("Scans from a table")
            assert "Folder of its files" in hands.text  # all that can be taken in is in the menu here too
            await hands.press("escape", "escape", "C")  # as it is printed, or with Caps Lock
            assert "Start a collection" in hands.text  # another one can be opened from here
            await hands.press("«o»")
            await hands.choose("Our photographs")
            assert "Nothing is in it yet" in hands.text
            await hands.press("f1")
            assert "Guide" in hands.text
            await hands.press("escape", "enter")
            assert "Folder or file with the scans" in hands.text
            hands.app.close_collections()

    run(begin())
    written = (tmp_path / "ours" / "boxlore.toml").read_text("utf-8")
    assert 'title = "Our photographs"' in written and 'prefix = "OUR"' in written
    assert 'language = "mi"' in written and 'hemisphere = "south"' in written and 'day_order = ""' in written


def test_beside_the_scans_and_with_the_places_of_its_country(run: Run, tmp_path: Path) -> None:
    (tmp_path / "scans").mkdir()
    (tmp_path / "scans" / "quay.jpg").write_bytes(b"\xff\xd8\xff")

    async def begin() -> None:
        async with hands_on(None, (120, 40)) as hands:
            await hands.press("«s»")
            await hands.fill("Our photographs", "Estonia", str(tmp_path / "scans"))
            assert "1 file lies in" in hands.text and "Where shall the collection be?" in hands.text
            await hands.press("escape")
            assert "In which country does the family live?" in hands.text  # a step back, with all that was typed
            await hands.press("ctrl+s")
            await hands.choose("In a folder beside it")
            assert "Estonian" in hands.text
            await hands.press("ctrl+s")
            hands.app.close_collections()

    run(begin())
    assert 'countries = "EE"' in (tmp_path / "scans_collection" / "boxlore.toml").read_text("utf-8")
    assert [path.name for path in (tmp_path / "scans").iterdir()] == ["quay.jpg"]


def test_a_collection_is_opened_by_its_folder(run: Run, folder: Path, tmp_path: Path) -> None:
    async def open_it() -> None:
        async with hands_on(None) as hands:
            await hands.press("«o»")
            await hands.fill(str(tmp_path / "none"))
            assert "There is no collection in " in hands.text
            await hands.fill(str(folder))
            assert "Tell me about this photograph." in hands.text and "1 of 8" in hands.text
            hands.app.close_collections()

    run(open_it())


def test_the_demonstration_is_made_and_opened(
    run: Run, tmp_path: Path, small_family: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A small family stands for it here; `test_typing` makes the whole of it, in CI."""

    def copied(folder: Path, say: Callable[[str], None], progress: object) -> Iterator[tuple[str, Path]]:
        shutil.copytree(small_family, folder)
        yield "Collection", folder

    monkeypatch.setattr(every_task, "run", copied)
    monkeypatch.setenv("HOME", str(tmp_path))

    async def see() -> None:
        async with hands_on(None, (120, 40), door=True) as hands:
            await hands.press("d", "enter")
            await hands.until("Enter or Esc goes back")
            await hands.press("enter")
            assert "Who tells today?" in hands.text
            await hands.press("i", "1")
            assert "Tell me about this photograph" in hands.text
            hands.app.close_collections()

    run(see())
    assert (tmp_path / "tamm_family" / "collection.sqlite").is_file()


@pytest.mark.parametrize(
    ("name", "shown"),
    [
        ("Start a collection", "In which country does the family live?"),
        ("Open a collection", "Open a collection Folder"),
        ("See the demonstration", "Folder for it"),
        ("Make one again from a transfer", "Folder of the transfer"),
        ("Begin with a parcel", "Folder for the working copy"),
        ("Bring back a backup", "Folder of the collection"),
    ],
)
def test_the_same_ways_stand_in_a_menu(run: Run, name: str, shown: str) -> None:
    async def look() -> None:
        async with hands_on(None) as hands:
            await hands.press("f1")
            assert "You cannot break anything." in hands.text
            await hands.press("escape", "escape")
            await hands.choose(name)
            assert shown in hands.text
            await hands.press("escape", "«Q»")

    run(look())


def test_from_another_collection_esc_goes_back_to_the_one_that_is_open(run: Run, folder: Path) -> None:
    async def look() -> None:
        with open_collection(folder) as collection:
            async with hands_on(collection, door=True) as hands:
                await hands.choose("Another collection")
                assert f"Esc Back to “{collection.settings.title}”" in hands.text
                await hands.press("escape")
                assert "Who tells today?" in hands.text

    run(look())


def test_another_collection_from_a_sitting_gives_the_first_one_back(run: Run, folder: Path, tmp_path: Path) -> None:
    second = tmp_path / "second"
    shutil.copytree(folder, second)

    async def change() -> None:
        with ExitStack() as stack:
            collection = stack.enter_context(open_collection(folder))
            async with hands_on(collection, opened=stack) as hands:
                await hands.press("escape", "C", "O")
                await hands.fill(str(second))
                await hands.until("1 of 8")
                assert hands.app.collection is not None and hands.app.collection.folder == second
                with open_collection(folder) as again:
                    assert again.store.writable

    run(change())


def test_leaving_by_the_menu(run: Run) -> None:
    async def leave() -> None:
        async with hands_on(None) as hands:
            await hands.press("escape")
            await hands.choose("Leave")
            assert hands.app.return_value == 0

    run(leave())


def test_a_collection_is_made_again_from_a_transfer(run: Run, pictured: Path, tmp_path: Path) -> None:
    with open_collection(pictured) as collection:
        transfer(collection, tmp_path / "for the archive")
    (tmp_path / "empty").mkdir()

    async def rebuild() -> None:
        async with hands_on(None) as hands:
            await hands.press("«t»")
            await hands.fill("", str(tmp_path / "again"))
            assert "Name both folders." in hands.text
            await hands.refill(str(tmp_path / "nowhere"), str(tmp_path / "again"))
            assert "There is no folder" in hands.text
            await hands.refill(str(tmp_path / "empty"), str(tmp_path / "again"))
            await hands.until("holds no transfer with linked data")
            await hands.refill(str(tmp_path / "for the archive"), str(tmp_path / "again"))
            await hands.until("2 items, 1 scan")
            await hands.press("enter")
            await hands.until("Tell me about this photograph.")
            hands.app.close_collections()

    run(rebuild())
    with open_collection(tmp_path / "again", write=False) as collection:
        assert [record.number for record in records(collection)] == ["TRA-0001", "TRA-0002"]


def test_a_working_copy_is_made_of_a_parcel_that_somebody_sent(run: Run, pictured: Path, tmp_path: Path) -> None:
    parcel = tmp_path / "parcel.zip"
    with open_collection(pictured) as collection:
        make_parcel(collection, parcel, ParcelOrder(new_copy=True), QUIET)

    async def begin() -> None:
        async with hands_on(None) as hands:
            await hands.press("«p»")
            await hands.fill(str(tmp_path / "none.zip"), str(tmp_path / "mine"), "")
            assert "There is no file " in hands.text
            await hands.refill(str(parcel))
            await hands.press("ctrl+s")
            await hands.until("It numbers in series")
            await hands.press("enter")
            await hands.until("1 of 2")
            hands.app.close_collections()

    run(begin())
    assert (tmp_path / "mine" / "collection.sqlite").is_file()
