"""What a scan's own file says can be struck: it leaves the log and the copies, and the scan stays as it is.

The words are written into the scan and looked for by exiv2 and by a search of all bytes; rules of our own.
"""

from collections.abc import Callable
from pathlib import Path

import exiv2
import pytest
from PIL import Image

from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.telling.undoing import Done, Steps

Run = Callable[..., tuple[int, str, str]]
SAID = "Ants Saar owed us money"


@pytest.fixture
def folder(bare: Callable[[int], Path], run: Run, tmp_path: Path) -> Path:
    """A collection with a scan whose XMP and IIM say a sentence, and one whose file says nothing."""
    made = bare(0)
    (tmp_path / "in").mkdir()
    for at, name in enumerate(("a.jpg", "b.png")):
        Image.radial_gradient("L").resize((60, 40 + at)).save(tmp_path / "in" / name)
    image = exiv2.ImageFactory.open(str(tmp_path / "in" / "a.jpg"))
    image.readMetadata()
    xmp, iptc = exiv2.XmpData(), exiv2.IptcData()
    xmp["Xmp.dc.title"] = f"lang=x-default {SAID}"
    iptc["Iptc.Application2.Caption"] = SAID
    image.setXmpData(xmp)
    image.setIptcData(iptc)
    image.writeMetadata()
    assert run("-c", made, "intake", tmp_path / "in", "--copy", "--yes")[0] == 0
    return made


def holding(folder: Path) -> list[str]:
    return sorted(path.relative_to(folder).as_posix() for path in folder.rglob("*")
                  if path.is_file() and SAID.encode() in path.read_bytes())  # fmt: skip


def test_it_leaves_the_log_and_the_copies_and_is_not_taken_again(run: Run, folder: Path, tmp_path: Path) -> None:
    out = folder / "copies"
    run("-c", folder, "copies", out)
    scan = next((folder / "scans").glob("TRA-0001*"))
    before = scan.read_bytes()
    assert len(holding(folder)) >= 3  # the database, the scan, the copy
    code, _, said = run("-c", folder, "strike", "TRA-0001", "embedded", "--yes")
    assert code == 1 and "No byte of the collection's database or backups holds the words any more." in said
    assert f"The scan's own file still carries them: scans/{scan.name}. Boxlore never changes a scan." in said
    assert f"Still in copies/{scan.name}" in said or "Still in copies/" in said
    run("-c", folder, "copies", out)
    assert holding(folder) == [f"scans/{scan.name}"] and scan.read_bytes() == before
    code, listed, said = run("-c", folder, "verify", out)
    assert code == 0 and "2 copies read; all as they should be." in said + listed
    code, _, said = run("-c", folder, "intake", tmp_path / "in", "--copy", "--yes")
    assert code == 0 and "2 known already" in said and holding(folder) == [f"scans/{scan.name}"]
    assert SAID not in run("-c", folder, "check")[1] + run("-c", folder, "show", "TRA-0001")[1]
    code, _, said = run("-c", folder, "strike", "TRA-0001", "embedded", "--yes")
    assert code == 2 and "There is no such embedded to strike." in said
    copy = next(out.rglob("TRA-0001*.jpg"))
    image = exiv2.ImageFactory.open(str(copy))
    image.readMetadata()
    image.xmpData()["Xmp.xmp.Rating"] = "3"
    image.writeMetadata()
    run("-c", folder, "tell", "TRA-0001", "story", "It rained")
    _, _, said = run("-c", folder, "copies", out)
    assert "what it added may be what was struck" in said


def test_words_everywhere_are_struck_there_too(run: Run, folder: Path) -> None:
    code, _, said = run("-c", folder, "strike", "everywhere", "any", "--words", "Ants Saar", "--yes")
    assert "3 statements would be struck" in said and "still carries them" in said and code == 1
    assert [name for name in holding(folder) if not name.startswith("scans/")] == []


def test_the_last_sentence_is_what_the_search_found(run: Run, folder: Path) -> None:
    run("-c", folder, "tell", "TRA-0001", "story", "All the Marigolds")
    run("-c", folder, "tell", "TRA-0002", "note", "Marigold", "--by", "document:letter of Marigold")
    code, _, said = run("-c", folder, "strike", "everywhere", "any", "--words", "Marigold", "--yes")
    assert code == 1 and "1 statement would be struck" in said and "No byte" not in said
    assert "Struck. The words stand on elsewhere in the collection, as said below." in said
    assert "Still in “story” of TRA-0001, “All the Marigolds”: boxlore strike TRA-0001 story takes it out." in said
    code, _, said = run("-c", folder, "strike", "TRA-0001", "story", "--words", "Marigolds", "--yes")
    assert code == 0 and "No byte of the collection's database or backups holds the words any more." in said
    assert not any(b"marigold" in path.read_bytes().lower() for path in folder.rglob("*.sqlite"))
    name = next((folder / "scans").glob("TRA-0001*")).stem
    code, _, said = run("-c", folder, "strike", "everywhere", "file", "--words", name, "--yes")
    assert code == 1 and said.endswith("Nothing was struck.\n") and "Not struck: the words stand in “file”" in said


def test_a_scan_whose_picture_cannot_be_taken_apart_gets_no_copy(run: Run, folder: Path, tmp_path: Path) -> None:
    (tmp_path / "more").mkdir()
    gif = tmp_path / "more" / "c.gif"
    Image.radial_gradient("L").resize((60, 50)).save(gif, comment=b"from the scanner")
    run("-c", folder, "intake", gif, "--copy", "--yes")
    _, _, said = run("-c", folder, "strike", "TRA-0003", "embedded", "--yes")
    assert "still carries them" in said
    _, _, said = run("-c", folder, "copies", folder / "copies")
    assert "and what its file says was struck" in said


def test_what_was_struck_out_of_a_scan_leaves_in_no_part_and_does_not_come_back(
    run: Run, folder: Path, tmp_path: Path
) -> None:
    run("-c", folder, "tell", "TRA-0001", "title", "Nets")
    run("-c", folder, "strike", "TRA-0001", "embedded", "--yes")
    scan = next((folder / "scans").glob("TRA-0001*"))
    out = tmp_path / "transfer"
    code, _, said = run("-c", folder, "transfer", out)
    assert code in (0, 1) and (out / "open").is_dir() and (out / "closed").is_dir(), said
    assert holding(out) == []
    with Image.open(next(out.glob(f"*/data/scans/**/{scan.name}"))) as picture:
        assert picture.size == (60, 40)
    again = tmp_path / "again"
    assert run("new", again, "--from", out)[0] == 0 and holding(again) == []
    run("-c", again, "intake", tmp_path / "in", "--copy", "--yes")  # the words are in that very file
    assert all(name.startswith("scans/") for name in holding(again)) and holding(again)
    run("-c", again, "copies", again / "copies")
    assert all(name.startswith("scans/") for name in holding(again))
    assert SAID not in run("-c", again, "check")[1]


def test_no_undo_no_backup_and_no_new_intake_brings_them_back(run: Run, folder: Path, tmp_path: Path) -> None:
    run("-c", folder, "tell", "TRA-0002", "title", "Nets")  # a backup is made before the strike
    run("-c", folder, "strike", "TRA-0001", "embedded", "--yes")
    scan = f"scans/{next((folder / 'scans').glob('TRA-0001*')).name}"
    assert run("-c", folder, "restore", "newest", "--yes")[0] == 0
    run("-c", folder, "copies", folder / "copies")
    assert holding(folder) == [scan]
    with open_collection(folder) as collection:
        steps = Steps(collection)
        for act in collection.store.last_acts():
            steps.withdraw(Done(act.id, act.what, ""))
    run("-c", folder, "intake", tmp_path / "in", "--copy", "--yes")
    run("-c", folder, "copies", folder / "copies")
    assert all(name.startswith("scans/") for name in holding(folder)) and list((folder / "copies").rglob("*.jpg"))
