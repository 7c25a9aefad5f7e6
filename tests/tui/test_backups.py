"""The way back from the terminal: where a collection cannot be opened, and from the menu (rules of our own)."""

from collections.abc import Callable
from pathlib import Path
from typing import Any

from boxlore.core.records.item_record import Record
from boxlore.store.backups import listed

Opens = Callable[..., Any]
Read = Callable[[], dict[str, Record]]


def test_a_damaged_collection_is_brought_back_and_opened(terminal: Opens, folder: Path, told: Read) -> None:
    path = folder / "collection.sqlite"
    path.write_bytes(path.read_bytes()[:9000])
    window = terminal("-c", folder, "sit", "--narrator", "Ellen", "--no-viewing", columns=100, rows=40)
    window.wait_for_words("is damaged (it is cut short).", "can bring back the backup of", "R Bring back a backup")
    window.send("r")
    window.wait_for_words("on closing 8 items, 8 statements")
    window.send("1")
    window.wait_for_words("No, leave everything as it is", "Words struck since stay struck.")
    window.send("2")
    window.wait_for_words("is back: 8 items, 8 statements.", "Enter or Esc goes back.")
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
    window.wait_for("Open one that is there")
    window.send("o")
    window.wait_for("Open a collection")
    window.send("⟨Back⟩" * 300 + f"{folder}⟨Enter⟩")
    window.wait_for_words("There is no", "but there are backups of it.", "R Bring back a backup")
    window.send("r")
    window.wait_for_words("Bring back a backup", "8 items, 8 statements")
    window.send("12")
    window.wait_for_words("is back: 8 items, 8 statements.", "Enter or Esc goes back.")
    window.send("⟨Enter⟩")
    window.wait_for("Who tells today?")
    window.send("11")
    window.wait_for_words("TRA-0001", "Tell me about this photograph")
    window.send("⟨^Q⟩")
    assert window.wait() == 0


def test_from_the_menu_everything_typed_is_kept_first(terminal: Opens, folder: Path, told: Read) -> None:
    window = terminal("-c", folder, "sit", "--narrator", "Ellen", "--no-viewing", columns=100, rows=40)
    window.wait_for("Tell me about this photograph")
    window.send("It rained")
    window.wait_for("saved")
    window.send("⟨Esc⟩")
    window.wait_for_words("Menu", "Keep safe")
    window.send("6")
    window.wait_for_words("Keep safe", "Bring back a backup")
    window.send("2")
    window.wait_for_words("on closing 8 items, 8 statements")
    window.send("⟨Enter⟩")
    window.wait_for_words("Yes, bring it back")
    window.send("2")
    assert window.wait() == 0
    assert "isback:8items,8statements." in "".join(window.text.split())
    assert "TRA-0001" in told() and not told()["TRA-0001"].words("story")
    newest = listed(folder)[0].path
    assert b"It rained" in newest.read_bytes() and str(newest) in "".join(window.text.split())
