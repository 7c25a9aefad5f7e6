"""A box of twenty surveyed in one go, in a real terminal (rules of our own, no outside source)."""

import json
import signal
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from boxlore.core.records.item_record import Record
from boxlore.core.statements import Kind
from boxlore.tasks.collection.opening import open_collection, start
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.originals.housing_changes import About, note_container
from boxlore.tasks.originals.housing_now import house_of

Opens = Callable[..., Any]
COUNT = 20


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """Box 7 with twenty items, TRA-0001 to TRA-0020."""
    made = tmp_path / "tamm_family"
    start(made, Settings(title="Tamm and Rourke", prefix="TR"))
    with open_collection(made) as collection:
        note_container(collection, "7", About())
        box = house_of(collection).named("7").id
        act = collection.act("intake")
        for count in range(1, COUNT + 1):
            item = act.new(Kind.ITEM)
            act.state(item, "number", f"TRA-{count:04d}")
            act.state(item, "kept", f"{box} {count}")
        act.done()
    return made


def test_a_box_of_twenty_is_surveyed_in_one_go(
    terminal: Opens, folder: Path, told: Callable[[], dict[str, Record]]
) -> None:
    window = terminal("-c", folder, "survey", "7", columns=100, rows=34)
    window.wait_for(
        lambda text: all(words in text for words in ("1 of 20", "TRA-0001", "Box 7 / Item 1", "PVC pocket"))
    )
    keys = []
    for n in range(1, COUNT + 1):
        size = f"z{100 + n}x150⟨Enter⟩" if n % 2 else "="
        keys.append(f"{n % 9}{'t' if n % 3 == 0 else 'c'}{'m' if n == 5 else 'f'}{'w' if n == 7 else ''}{size}")
    window.send("⟨PgDn⟩".join(keys))
    window.wait_for("20 of 20")
    window.send("⟨Esc⟩")
    assert window.wait() == 0
    found = told()
    for n in range(1, COUNT + 1):
        record = found[f"TRA-{n:04d}"]
        assert [one.words for one in record.all("attached")] == ["tape" if n % 3 == 0 else "paper clip"], n
        assert [one.words for one in record.all("condition")] == ["mould" if n == 5 else "foxing"], n
        assert record.size_mm == (100 + (n if n % 2 else n - 1), 150), n
        assert bool(record.all("inscription")) is (n == 7), n
    assert found["TRA-0001"].words("enclosure") == "polyester sleeve"
    assert found["TRA-0005"].words("enclosure") == "PVC pocket"
    ran = subprocess.run(
        [sys.executable, "-c", "from boxlore.cli.main import main; main()", "-c", str(folder), "survey", "7", "--json"],
        capture_output=True,
        check=True,
    )
    lines = {row["what"]: row["items"] for row in map(json.loads, ran.stdout.splitlines()) if row["list"] == "do"}
    assert lines["Leave it, keep it apart, and call"] == ["TRA-0005"]
    assert len(lines["Take fasteners off"]) == COUNT - COUNT // 3


@pytest.mark.parametrize("size", [(100, 34), (80, 24), (40, 30)])
def test_the_caution_is_on_the_screen_at_once_and_whole(terminal: Opens, folder: Path, size: tuple[int, int]) -> None:
    """However it is broken into lines; what comes before local codes is at its end."""
    window = terminal("-c", folder, "survey", "7", columns=size[0], rows=size[1])
    window.wait_for("1 of 20")
    window.send("m")
    window.wait_for_words("Mould is a health hazard", "Call a photograph conservator", "before anything said here.")


@pytest.mark.parametrize("way", ["Ctrl+Q", "signal", "window closed"])
def test_however_one_leaves_what_was_set_is_kept(
    terminal: Opens, folder: Path, told: Callable[[], dict[str, Record]], way: str
) -> None:
    window = terminal("-c", folder, "survey", "7", columns=100, rows=34)
    window.wait_for("1 of 20")
    window.send("3⟨PgDn⟩5tz55x80⟨Enter⟩")
    window.wait_for("55 x 80 mm")
    if way == "Ctrl+Q":
        window.send("⟨^Q⟩")
    elif way == "signal":
        window.signal(signal.SIGTERM)
    else:
        window.hang_up()
    window.wait()
    found = told()
    assert found["TRA-0001"].words("enclosure") == "paper envelope"
    assert found["TRA-0002"].words("enclosure") == "PVC pocket" and found["TRA-0002"].size_mm == (55, 80)


def test_a_survey_is_opened_from_the_menu_of_a_sitting(
    terminal: Opens, folder: Path, told: Callable[[], dict[str, Record]]
) -> None:
    window = terminal("-c", folder, "sit", "--narrator", "Ellen Rourke", columns=100, rows=40)
    window.wait_for("Tell me about this photograph")
    window.send("⟨Esc⟩")
    window.wait_for_words("Take in", "Keep safe", "Leave")
    window.send("6")
    window.wait_for("Survey a box")
    window.send("6")
    window.wait_for("Which box?")
    window.send("7⟨Enter⟩")
    window.wait_for("PVC pocket")
    window.send("5⟨PgDn⟩4⟨Esc⟩")
    window.wait_for("Tell me about this photograph")
    window.send("⟨^Q⟩")
    assert window.wait() == 0
    found = told()
    assert [found[f"TRA-000{n}"].words("enclosure") for n in (1, 2)] == ["PVC pocket", "glassine envelope"]
