"""A whole day without the shell, in a real terminal of three sizes: start, take in, sit, put right, print, hand on.

Thirty photographs in the smallest one, where a key too many or a line that has no room shows; six in each other. By
hand it is the smallest one alone, with twelve.

Our own contract: no command but bare `boxlore`, and the keys of the sitting counted against the fewest possible.
"""

import re
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pikepdf
import pytest
from PIL import Image
from tests.drawn import IN_CI, some

from boxlore.core.records.item_record import Record
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.collection.records_for_outputs import records

Opens = Callable[..., Any]


class Day:
    """A window, and the keys that were pressed in it."""

    def __init__(self, window: Any) -> None:
        self.window = window
        self.pressed = 0

    def press(self, keys: str, *then: str) -> str:
        """Press keys, and wait until these words are shown."""
        self.window.send(keys)
        self.pressed += len(re.findall("⟨.+?⟩|.", keys, re.S))
        return str(self.window.wait_for_words(*then)) if then else ""


def scanned(folder: Path, count: int) -> Path:
    """So many small pictures, the first with a back."""
    folder.mkdir(parents=True)
    for at in range(1, count + 1):
        Image.new("RGB", (60, 40), (at * 8, 90, 255 - at * 8)).save(folder / f"p{at:02d}_f.jpg")
    Image.new("RGB", (60, 40), (230, 220, 200)).save(folder / "p01_b.jpg")
    return folder


@pytest.mark.parametrize(("size", "count"), some([((80, 24), 30 if IN_CI else 12), ((120, 38), 6), ((200, 60), 6)]))
def test_a_whole_day_without_the_shell(terminal: Opens, tmp_path: Path, size: tuple[int, int], count: int) -> None:
    home = tmp_path / "home"
    scans = scanned(home / "scans", count)
    day = Day(terminal(HOME=str(home), columns=size[0], rows=size[1], cold=True))
    day.window.wait_for("Start a collection")

    # start: the title, the country, and the folder as it is proposed; then what is usual there
    day.press("s", "What is it called?")
    day.press("Tamm and Rourke⟨Enter⟩New Z⟨Enter⟩⟨Enter⟩", "Language, dates and seasons", "December to February")
    day.press("⟨^S⟩", "Nothing is in it yet")

    # take in
    day.press("t", "Folder or file with the scans")
    day.press(f"{scans}⟨Enter⟩1⟨Enter⟩⟨^S⟩", f"{count} photographs taken in, 1 of them with a back.")
    day.press("⟨Enter⟩", "Who tells today?")

    # sit: who tells, the agreement, the first photograph, all of them
    day.press("s", "Who tells?")
    day.press("Leida Rourke⟨Enter⟩", "Is there an agreement with Leida Rourke?")
    day.press("r", "Who may read and hear it?")
    day.press("⟨^S⟩", "Where do we begin?")
    day.press("1", f"Leida Rourke tells · 1 of {count}")
    before = day.pressed
    told = "".join(f"Story {n}⟨Tab⟩Jaan Tamm⟨Enter⟩⟨Tab⟩19{n + 10}⟨PgDn⟩" for n in range(1, count))
    day.press(told, f"{count} of {count}")
    words = sum(len(f"Story {n}") + len("Jaan Tamm") + 4 for n in range(1, count))
    least = words + 4 * (count - 1)  # of each: to the names, to the date, the name kept, the next photograph
    assert day.pressed - before <= 1.3 * least
    day.press("⟨PgUp⟩⟨PgUp⟩", f"{count - 2} of {count}")

    # put right: called something else everywhere
    day.press("⟨Esc⟩", "Put right")
    day.press("3", "People")
    day.press("2", "2 people")
    day.press("jaan⟨Enter⟩", f"Jaan Tamm · {count - 1} pictures")
    day.press("a", "Correct the name")
    day.press("1", "The whole name, as captions give it")
    day.press("Jaan Tamm the elder⟨Enter⟩", "Called Jaan Tamm the elder everywhere.")
    day.press("⟨Esc⟩⟨Esc⟩", "Tell me about this photograph.")

    # print, and hand on
    day.press("⟨Esc⟩", "Print")
    day.press("4", "Caption slips")
    day.press("1", "Name of the PDF")
    day.press("⟨^S⟩", f"{count} photographs", "Enter or Esc goes back.")
    day.press("⟨Enter⟩⟨Esc⟩", "Hand on")
    day.press("5", "Captioned copies")
    day.press("1", "Into which folder?")
    day.press("⟨^S⟩", f"{count + 1} written", "Enter or Esc goes back.")
    day.press("⟨Enter⟩⟨^Q⟩")
    assert day.window.wait() == 0

    collection = home / "photographs"
    with open_collection(collection, write=False) as opened:
        found: list[Record] = list(records(opened))
    assert len(found) == count and found[0].number == "TRA-0001" and found[0].mark is not None
    assert [shown.name for shown in found[0].shown()] == ["Jaan Tamm the elder"]
    assert [view.said_by for view in found[4].all("story")] == ["Leida Rourke"]
    with pikepdf.open(collection / "print" / "album.pdf") as pdf:
        assert len(pdf.pages) >= count // 6
    assert len(list((collection / "copies").rglob("*.jpg"))) == count + 1

    # the next day: three keys to where it stopped
    again = Day(terminal("-c", str(collection), HOME=str(home), columns=size[0], rows=size[1]))
    again.window.wait_for_words("Who tells today?", "Leida Rourke")
    again.press("⟨Enter⟩", "Still as agreed")
    again.press("⟨Enter⟩", f"Where you stopped: TRA-{count - 2:04d}")
    again.press("⟨Enter⟩", f"Leida Rourke tells · {count - 2} of {count}")
    assert again.pressed == 3
    again.press("⟨^Q⟩")
    assert again.window.wait() == 0
