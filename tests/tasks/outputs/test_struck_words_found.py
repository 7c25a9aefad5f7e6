"""Struck words that somebody had put into a file of the folder are named until they are gone (rules of our own); the
other program is pyexiv2 (on libexiv2)."""

from pathlib import Path

import pytest
from tests.tasks.outputs.test_additions import edit, read
from tests.tasks.outputs.test_copies import ON, SETTINGS, scan, take, tell

from boxlore.tasks.collection.opening import open_collection, start
from boxlore.tasks.outputs.copies import Copied, copies
from boxlore.tasks.outputs.struck_words_found import struck_findings
from boxlore.tasks.scans.pairing import Planned, ScanSide
from boxlore.tasks.strike import strike_out, targets_everywhere

WORDS = "Ants Saar, who owed us money"


@pytest.fixture
def home(tmp_path: Path) -> Path:
    """Two prints with their copies in the collection's folder; what is told of the first was put into the copy of the
    second, and into a text that the keeper wrote."""
    folder = tmp_path / "family"
    start(folder, SETTINGS, on_day=ON)
    for name, shade in (("nets", 90), ("poles", 10)):
        front = scan(tmp_path / f"{name}_f.jpg")
        front.write_bytes(front.read_bytes() + bytes([shade]))
        take(folder, Planned(key=name, sides=(ScanSide(front),)))
    tell(folder, "story", WORDS)
    copied(folder)
    edit(second(folder), xmp={"Xmp.photoshop.Instructions": WORDS})
    (folder / "notes.txt").write_text(WORDS, encoding="utf-8")
    with open_collection(folder, on_day=ON) as collection:
        strike_out(collection, [target.statement for target in targets_everywhere(collection, WORDS)[0]])
    return folder


def copied(folder: Path, *, over: bool = False) -> list[Copied]:
    with open_collection(folder, on_day=ON) as collection:
        collection.over = over
        return list(copies(collection, folder / "copies"))


def second(folder: Path) -> Path:
    return next((folder / "copies").rglob("TRA-0002*"))


def said(folder: Path) -> list[str]:
    with open_collection(folder, on_day=ON) as collection:
        return sorted(finding.message for finding in struck_findings(collection))


def test_struck_words_in_the_copy_of_another_item_are_named_until_they_are_gone(home: Path) -> None:
    still = [words for words in said(home) if "holds words that were struck" in words]
    assert len(still) == 3 and any("TRA-0002" in words for words in still) and any("notes" in words for words in still)
    made = {each.number: each for each in copied(home)}
    assert made["TRA-0001"].state == "written"
    assert made["TRA-0002"].state == "refused" and "may be what was struck" in made["TRA-0002"].why
    (home / "notes.txt").write_text("Nothing.", encoding="utf-8")
    assert len(said(home)) == 1
    edit(second(home), xmp={"Xmp.photoshop.Headline": "changed once more"})
    assert "may hold them still" in " ".join(said(home))
    assert {each.number: each.state for each in copied(home)}["TRA-0002"] == "refused"
    assert {each.state for each in copied(home, over=True)} == {"same", "written"}
    assert WORDS not in str(read(second(home))) and said(home) == []


def test_a_file_that_is_gone_is_forgotten(home: Path) -> None:
    (home / "notes.txt").unlink()
    for path in (home / "copies").rglob("*.jpg"):
        path.unlink()
    assert said(home) == []
