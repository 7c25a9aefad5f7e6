"""The way back from the terminal: where a collection cannot be opened, and from the menu (rules of our own)."""

from collections.abc import Callable
from contextlib import ExitStack
from pathlib import Path
from typing import Any

from tests.tui.conftest import hands_on

from boxlore.core.records.item_record import Record
from boxlore.store.backups import listed
from boxlore.tasks.collection.opening import open_collection

Opens = Callable[..., Any]
Read = Callable[[], dict[str, Record]]


def test_a_damaged_collection_is_brought_back_and_opened(terminal: Opens, folder: Path, told: Read) -> None:
    path = folder / "collection.sqlite"
    path.write_bytes(path.read_bytes()[:9000])
    window = terminal("-c", folder, "sit", "--narrator", "Ellen", "--no-viewing", columns=100, rows=40)
    window.wait_for_words("is damaged", "R Bring back a backup")
    window.send("r")
    window.wait_for_words("on closing 8 items, 8 statements")
    window.send("1")
    window.wait_for_words("No, leave everything as it is", "stay struck.")
    window.send("2")
    window.wait_for_words("is back: 8 items, 8 statements.", "Enter or Esc goes back")
    window.send("⟨Enter⟩")
    window.wait_for_words("TRA-0001", "Tell me about this photograph")
    window.send("It rained")
    window.wait_for("saved")
    window.send("⟨^Q⟩")
    assert window.wait() == 0
    assert told()["TRA-0001"].words("story") == "It rained"
    assert [backup.why for backup in listed(folder)] == ["on closing", "damaged", "on closing"]


def test_a_missing_one_is_offered_where_it_should_be_opened(terminal: Opens, folder: Path) -> None:
    (folder / "collection.sqlite").unlink()
    window = terminal(columns=100, rows=40)
    window.wait_for("Five keys are enough")
    window.send("o")
    window.wait_for("Enter takes it.")
    window.send("⟨Back⟩" * 300 + f"{folder}⟨Enter⟩")
    window.wait_for_words("There is no", "but there are backups of it.", "R Bring back a backup")
    window.send("r")
    window.wait_for_words("Bring back a backup", "8 items, 8 statements")
    window.send("12")
    window.wait_for_words("is back: 8 items, 8 statements.", "Enter or Esc goes back")
    window.send("⟨Enter⟩")
    window.wait_for("Who tells today?")
    window.send("i1")
    window.wait_for_words("TRA-0001", "Tell me about this photograph")
    window.send("⟨^Q⟩")
    assert window.wait() == 0


def test_from_the_menu_everything_typed_is_kept_first_and_what_is_back_is_open(
    run: Callable[..., None], folder: Path, told: Read
) -> None:
    async def bring_back(opened: ExitStack) -> None:
        collection = opened.enter_context(open_collection(folder))
        async with hands_on(collection, narrator="Ellen", opened=opened) as hands:
            await hands.press("«It rained»", "escape")
            await hands.choose("Keep safe", "Bring back a backup")
            assert "on closing 8 items, 8 statements" in hands.text
            await hands.press("enter")
            await hands.choose("No, leave everything as it is")
            assert "It rained" in hands.text
            await hands.press("escape")
            await hands.choose("Keep safe", "Bring back a backup")
            await hands.press("enter")
            await hands.choose("Yes, bring it back")
            await hands.until("is back: 8 items, 8 statements.")
            await hands.press("enter")
            assert "Ellen tells · 1 of 8" in hands.text and "It rained" not in hands.text
            await hands.press("«The regatta»", "ctrl+s")

    with ExitStack() as opened:
        run(bring_back(opened))
    assert told()["TRA-0001"].words("story") == "The regatta"
    assert any(b"It rained" in backup.path.read_bytes() for backup in listed(folder))
