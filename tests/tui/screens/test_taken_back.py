"""An intake from inside is one step of the sitting: Ctrl+Z takes all of it back, Ctrl+Y does it again (our own
contract: the form promises it)."""

from collections.abc import Callable
from pathlib import Path

import pytest
from PIL import Image
from tests.drawn import some
from tests.tui.conftest import Hands, hands_on

from boxlore.core.fields.originals import KEPT_WORDS, Kept
from boxlore.core.fields.pictures import SHOWS_WORDS, Shows
from boxlore.core.statements import Kind, Subject
from boxlore.tasks.collection.opening import Collection, open_collection, start
from boxlore.tasks.collection.progress import QUIET
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.scans import intake
from boxlore.tui.menu_tasks.table import TASKS

Run = Callable[..., None]


@pytest.fixture
def scans(tmp_path: Path) -> Path:
    """Three fronts, each of another picture."""
    made = tmp_path / "from the scanner"
    made.mkdir()
    for at in range(3):
        Image.new("RGB", (30, 20), (60 * at, 70, 50)).save(made / f"quay{at}_f.jpg")
    return made


async def take_in(hands: Hands, scans: Path) -> None:
    """Take the scans into box 9 by the menu; the report stands then."""
    await hands.press("escape")
    await hands.choose("Take in", "Scans")
    await hands.fill(str(scans), "9")
    await hands.press("ctrl+s")
    await hands.until("3 photographs taken in")


def in_order(collection: Collection) -> list[str]:
    return [number for number, _ in collection.store.items()]


def test_scans_taken_in_by_mistake_are_taken_back_whole(
    run: Run, folder: Path, scans: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(intake, "BATCH", 2)  # so that one intake is several acts

    async def sit(collection: Collection) -> None:
        before, files = in_order(collection), {path: path.read_bytes() for path in scans.iterdir()}
        async with hands_on(collection) as hands:
            await take_in(hands, scans)
            assert "Ctrl+Z, back at the photograph, takes it back" in hands.text
            await hands.press("enter")
            assert len(in_order(collection)) == 11
            await hands.press("f3", "«11»", "enter")
            assert "TRA-0011" in hands.text and "11 of 11" in hands.text
            await hands.press("ctrl+z")
            assert "Taken back: 3 photographs taken in." in hands.text
            assert "TRA-0008" in hands.text and "8 of 8" in hands.text
            assert in_order(collection) == before
            assert not list(collection.store.scans()) and not collection.store.containers()
            assert {path: path.read_bytes() for path in scans.iterdir()} == files
            await hands.press("ctrl+y")
            assert "Done again: 3 photographs taken in." in hands.text and "8 of 11" in hands.text
            assert all((collection.folder / facts.path).is_file() for _, facts in collection.store.scans())
            await hands.press("ctrl+z", "ctrl+z")
            assert "Nothing of this sitting is left to take back." in hands.text
        again = TASKS["intake"].job(
            collection,
            {blank.name: blank.text for blank in TASKS["intake"].blanks(collection)} | {"path": str(scans)},
            QUIET,
        )
        assert again[0] == "3 photographs taken in."
        assert in_order(collection)[8:] == ["TRA-0012", "TRA-0013", "TRA-0014"]  # no number is given twice

    with open_collection(folder) as collection:
        run(sit(collection))


def test_a_collection_that_is_emptied_so_offers_to_take_scans_in(run: Run, tmp_path: Path, scans: Path) -> None:
    start(tmp_path / "empty", Settings(title="Tamm and Rourke", prefix="TRA"))

    async def sit(collection: Collection) -> None:
        async with hands_on(collection) as hands:
            await hands.press("ctrl+y")
            assert "Nothing was taken back." in hands.text
            await hands.press("t")
            await hands.fill(str(scans))
            await hands.press("ctrl+s")
            await hands.until("3 photographs taken in")
            await hands.press("enter")
            assert "1 of 3" in hands.text
            await hands.press("ctrl+z")
            assert "Nothing is in it yet." in hands.text and "Taken back. Ctrl+Y takes it in again" in hands.text
            await hands.press("ctrl+y")
            assert "1 of 3" in hands.text and len(in_order(collection)) == 3

    with open_collection(tmp_path / "empty") as collection:
        run(sit(collection))


def told(collection: Collection, made: dict[str, str]) -> None:
    act = collection.act("told elsewhere")
    act.state(Subject(Kind.ITEM, made["item"]), "story", "The quay")
    act.done()


def kept(collection: Collection, made: dict[str, str]) -> None:
    act = collection.act("moved")
    act.state(Subject(Kind.ITEM, made["first"]), "kept", KEPT_WORDS.write(Kept(made["box"], 7)))
    act.done()


def inside(collection: Collection, made: dict[str, str]) -> None:
    act = collection.act("a folder more")
    act.state(act.new(Kind.CONTAINER), "inside", made["box"])
    act.done()


def shown(collection: Collection, made: dict[str, str]) -> None:
    act = collection.act("a second print on it")
    act.state(Subject(Kind.SCAN, made["scan"]), "shows", SHOWS_WORDS.write(Shows(made["first"], "verso")))
    act.done()


@pytest.mark.parametrize(
    ("later", "number"), some([(told, "TRA-0009"), (kept, "TRA-0001"), (inside, ""), (shown, "TRA-0001")])
)
def test_what_stands_on_an_intake_is_taken_back_first(
    run: Run, folder: Path, scans: Path, later: Callable[[Collection, dict[str, str]], None], number: str
) -> None:
    async def sit(collection: Collection) -> None:
        async with hands_on(collection) as hands:
            await take_in(hands, scans)
            await hands.press("enter")
            items = dict(collection.store.items())
            box = collection.store.containers()[0][0]
            scan = next(ident for ident, _ in collection.store.scans())
            later(collection, {"item": items["TRA-0009"], "first": items["TRA-0001"], "box": box, "scan": scan})
            await hands.press("ctrl+z")
            assert "Not taken back: 3 photographs taken in." in hands.text and number in hands.text
            assert len(in_order(collection)) == 11
            await hands.press("escape")
            await hands.choose("Put right", "What happened when")
            await hands.press("ctrl+z")  # said where it was asked
            assert "Not taken back: 3 photographs taken in." in hands.text and "What happened when" in hands.text

    with open_collection(folder) as collection:
        run(sit(collection))
