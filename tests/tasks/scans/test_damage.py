"""Files that are cut off or broken are taken in and named, at intake, in check and in verify, until a whole one comes.

A file is cut at six tenths of its length, as a copy that stopped; its rest is zeros, as where a card was rescued; its
last page is missing. Outside truths: a JPEG ends with EOI (ITU-T T.81, B.2.1); the rest is what Pillow cannot decode.
"""

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PIL import Image

from boxlore.core.errors import CouldNot
from boxlore.disk.decoding import Damaged, opened
from boxlore.formats.jpeg_end import has_end
from boxlore.tasks.check import check
from boxlore.tasks.collection.opening import Collection, open_collection
from boxlore.tasks.collection.progress import QUIET
from boxlore.tasks.collection.records_for_outputs import record_of
from boxlore.tasks.scans.damage import damage_findings, intake_findings, look_closer
from boxlore.tasks.scans.fixity import verify_scans
from boxlore.tasks.scans.intake import IntakeOptions, IntakeResult, take_in
from boxlore.tasks.scans.pairing import by_suffix
from boxlore.tui.menu_tasks.keeping_scans import TASKS


def quay(turn: int = 0) -> Image.Image:
    """A picture with so much in it that no decoder reads six tenths of it as the whole."""
    return Image.effect_noise((240, 180), 60).convert("RGB").rotate(turn)


def cut(data: bytes) -> bytes:
    return data[: len(data) * 6 // 10]


def zeros(data: bytes) -> bytes:
    return cut(data) + bytes(len(data) - len(cut(data)))


def pages(path: Path) -> None:
    quay().save(path, save_all=True, append_images=[quay(2)])


DAMAGED: dict[str, tuple[Callable[[Path], None], Callable[[bytes], bytes]]] = {
    "cut.jpg": (lambda path: quay().save(path), cut),
    "progressive.jpg": (lambda path: quay().save(path, progressive=True), cut),
    "padded.jpg": (lambda path: quay().save(path), zeros),
    "cut.png": (lambda path: quay().save(path), cut),
    "padded.png": (lambda path: quay().save(path), zeros),
    "cut.tif": (lambda path: quay().save(path), cut),
    "second page.tif": (pages, lambda data: data[:-9_000]),
}


@pytest.fixture
def home(bare: Callable[[int], Path]) -> Iterator[Collection]:
    with open_collection(bare(0)) as collection:
        yield collection


def taken(collection: Collection, folder: Path, *, copy: bool = True) -> list[IntakeResult]:
    results = take_in(collection, by_suffix(sorted(folder.iterdir())), IntakeOptions(copy=copy))
    look_closer(collection)
    return results


def test_each_damaged_file_is_taken_in_and_named(home: Collection, tmp_path: Path) -> None:
    scans = tmp_path / "scans"
    scans.mkdir()
    for name, (draw, spoil) in DAMAGED.items():
        draw(scans / name)
        whole = (scans / name).read_bytes()
        (scans / f"whole {name}").write_bytes(whole)
        (scans / name).write_bytes(spoil(whole))
    results = taken(home, scans)
    assert {result.state for result in results} == {"taken"}
    spoilt = {result.number for result in results if not Path(result.key).name.startswith("whole")}
    assert {number for number, _ in damage_findings(home)} == spoilt
    assert {found.number for found in check(home) if found.finding.rule == "scan.damaged"} == spoilt
    assert {verified.state for verified in verify_scans(home)} == {"same"}
    assert damage_findings(home, []) == []
    assert [found.rule for _, found in intake_findings(home, ["TRA-0014"])] == ["scan.pages"]  # “whole second page.tif”


def test_a_whole_file_stands_in_the_place_of_a_damaged_one(home: Collection, tmp_path: Path) -> None:
    """By the item's number, and by the name and folder that the damaged one came from; both files are kept."""
    scans, again = tmp_path / "scans", tmp_path / "again"
    scans.mkdir()
    again.mkdir()
    for at, name in enumerate(("harbour.jpg", "harbour_b.jpg", "nets.jpg")):
        quay(at).save(scans / name)
    whole = {path.name: path.read_bytes() for path in scans.iterdir()}
    for name in ("harbour_b.jpg", "nets.jpg"):
        (scans / name).write_bytes(cut(whole[name]))
    assert [result.number for result in taken(home, scans)] == ["TRA-0001", "TRA-0002"]
    (again / "TRA-0002_f.jpg").write_bytes(whole["nets.jpg"])
    assert [(result.state, result.number) for result in taken(home, again)] == [("joined", "TRA-0002")]
    (scans / "harbour_b.jpg").write_bytes(whole["harbour_b.jpg"])
    assert [result.number for result in taken(home, scans) if result.state == "joined"] == ["TRA-0001"]
    assert damage_findings(home) == []
    item = home.store.item_by_number("TRA-0001") or ""
    assert [(scan.side, scan.path) for scan in record_of(home, item).scans] == [
        ("recto", "scans/TRA-0001_f.jpg"),
        ("verso", "scans/TRA-0001_b_2.jpg"),
    ]
    assert (home.folder / "scans/TRA-0001_b.jpg").read_bytes() == cut(whole["harbour_b.jpg"])


def test_a_whole_file_may_take_the_very_place_of_one_that_lies_outside(home: Collection, tmp_path: Path) -> None:
    scans = tmp_path / "scans"
    scans.mkdir()
    quay().save(scans / "harbour.png")
    whole = (scans / "harbour.png").read_bytes()
    (scans / "harbour.png").write_bytes(cut(whole))
    taken(home, scans, copy=False)
    (scans / "harbour.png").write_bytes(whole)
    assert [result.state for result in taken(home, scans, copy=False)] == ["joined"]
    assert [verified.state for verified in verify_scans(home)] == ["same", "same"]
    assert not [found for found in check(home) if found.finding.rule in ("scan.damaged", "scan.changed")]


def test_what_the_machine_cannot_read_is_not_called_damaged(home: Collection, tmp_path: Path) -> None:
    scans = tmp_path / "scans"
    scans.mkdir()
    quay().save(scans / "harbour.png")
    take_in(home, by_suffix(scans.iterdir()), IntakeOptions())
    (scans / "harbour.png").rename(scans / "elsewhere.png")
    assert look_closer(home) == 1
    assert damage_findings(home) == []
    (scans / "elsewhere.png").rename(scans / "harbour.png")
    assert look_closer(home) == 1
    assert look_closer(home) == 0
    with pytest.raises(CouldNot) as raised, opened(tmp_path / "none.png"):
        pass
    assert not isinstance(raised.value, Damaged)


def test_only_a_jpeg_must_have_its_end(tmp_path: Path) -> None:
    path = tmp_path / "note.txt"
    path.write_text("no picture")
    with open(path, "rb") as file:
        assert has_end(file)


def test_verify_looks_at_what_nobody_has_looked_at(home: Collection, tmp_path: Path) -> None:
    """An intake that was stopped before it had looked at all of them, or a HEIC before its reader was installed."""
    quay().save(tmp_path / "harbour.png")
    (tmp_path / "harbour.png").write_bytes(cut((tmp_path / "harbour.png").read_bytes()))
    take_in(home, by_suffix([tmp_path / "harbour.png"]), IntakeOptions())
    assert damage_findings(home) == []
    lines = TASKS["verify"].job(home, {"look_in": "", "mend": "no"}, QUIET)
    assert "TRA-0001: The scan of the front is cut off or broken" in " ".join(lines)
