"""No output takes the place of a scan that is registered, wherever it lies (our own rule: scans are never written)."""

from collections.abc import Callable
from pathlib import Path

import pytest
from PIL import Image

from boxlore.core.errors import WrongUse
from boxlore.core.records.audience import To
from boxlore.tasks.collection.opening import Collection, open_collection, start
from boxlore.tasks.collection.output_paths import Unopened, check_output, check_pdf, check_place, write_output
from boxlore.tasks.collection.registered import registered_scans
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.outputs.copies import copies
from boxlore.tasks.outputs.printed_sheets import PrintOrder
from boxlore.tasks.outputs.web_pages import pages
from boxlore.tasks.scans.intake import IntakeOptions, take_in
from boxlore.tasks.scans.pairing import Planned, ScanSide

FAMILY = PrintOrder(to=To.FAMILY)


def register(folder: Path, scans: list[Path]) -> None:
    """Take scans in where they are."""
    with open_collection(folder) as collection:
        plan = [Planned(key=scan.name, sides=(ScanSide(scan),)) for scan in scans]
        assert {taken.state for taken in take_in(collection, plan, IntakeOptions(own=True))} == {"taken"}


@pytest.fixture
def scan(tmp_path: Path) -> Path:
    """A scan in a folder of its own, registered by the collection beside it; its name ends as a document's does."""
    start(tmp_path / "tamm_family", Settings(title="Tamm and Rourke", prefix="TR"))
    pictures = tmp_path / "Pictures"
    pictures.mkdir()
    Image.radial_gradient("L").convert("RGB").save(pictures / "wharf.pdf", format="PNG")
    register(tmp_path / "tamm_family", [pictures / "wharf.pdf"])
    return pictures / "wharf.pdf"


WRITERS: list[Callable[[Collection, Path], object]] = [
    lambda collection, out: write_output(collection, out, b"a chart"),
    lambda collection, out: write_output(Unopened(collection.folder, over=True), out, b"a chart"),
    check_output,
    check_pdf,
    check_place,
]


@pytest.mark.parametrize("write", WRITERS)
@pytest.mark.parametrize("way", ["itself", "by a link", "by a linked folder", "by ..", "missing now"])
def test_nothing_is_written_over_a_registered_scan(
    scan: Path, tmp_path: Path, way: str, write: Callable[[Collection, Path], object]
) -> None:
    before = scan.read_bytes()
    (tmp_path / "link.pdf").symlink_to(scan)
    (tmp_path / "linked").symlink_to(scan.parent)
    out = {"by a link": tmp_path / "link.pdf", "by a linked folder": tmp_path / "linked" / scan.name}.get(way, scan)
    out = scan.parent / ".." / scan.parent.name / scan.name if way == "by .." else out
    if way == "missing now":
        scan.rename(tmp_path / "elsewhere")
    with open_collection(tmp_path / "tamm_family") as collection:
        collection.over = True
        with pytest.raises(WrongUse, match="is a scan of this collection"):
            write(collection, out)
    assert (tmp_path / "elsewhere" if way == "missing now" else scan).read_bytes() == before
    assert scan.exists() or way == "missing now"


def test_the_same_file_under_another_spelling_is_that_scan(tmp_path: Path) -> None:
    """As on a disk where capitals make no difference; there one file has both names, here two names are one file."""
    (tmp_path / "Wharf.png").write_bytes(b"a scan")
    (tmp_path / "WHARF.png").hardlink_to(tmp_path / "Wharf.png")
    scans = registered_scans(tmp_path, ["Wharf.png", "gone/Wharf.png"])
    assert scans.scan_at(tmp_path / "WHARF.png") == tmp_path.resolve() / "Wharf.png"
    assert scans.scan_at(tmp_path / "other.png") is None


@pytest.mark.parametrize("write", WRITERS)
@pytest.mark.parametrize("way", ["the link", "what it leads to", "a link between", "a hard link", "where it would lie"])
def test_nothing_is_written_over_what_a_registered_link_leads_to(
    tmp_path: Path, way: str, write: Callable[[Collection, Path], object]
) -> None:
    """The keeper has moved the scan elsewhere since, and put a link in its place, which leads there by another link;
    the file has a second name too."""
    folder, target, between, hard = (tmp_path / name for name in ("family", "negative.pdf", "roll.pdf", "twin.pdf"))
    start(folder, Settings(title="Tamm and Rourke", prefix="TR"))
    link = tmp_path / "Pictures" / "wharf.pdf"
    link.parent.mkdir()
    Image.radial_gradient("L").convert("RGB").save(link, format="PNG")
    register(folder, [link])
    link.rename(target)
    hard.hardlink_to(target)
    between.symlink_to(target)
    link.symlink_to(between)
    before = hard.read_bytes()
    if way == "where it would lie":
        target.unlink()
    outs = {"the link": link, "a link between": between, "a hard link": hard}
    with open_collection(folder) as collection:
        collection.over = True
        with pytest.raises(WrongUse, match="is a scan of this collection"):
            write(collection, outs.get(way, target))
        assert write_output(collection, tmp_path / "chart.pdf", b"a chart")
    assert hard.read_bytes() == before
    assert link.is_symlink() and between.is_symlink()
    assert not target.exists() if way == "where it would lie" else target.samefile(hard)


def test_copies_take_the_place_of_no_file_that_a_registered_link_leads_to(tmp_path: Path) -> None:
    folder, out, link = tmp_path / "family", tmp_path / "copies", tmp_path / "wharf.jpg"
    start(folder, Settings(title="Tamm and Rourke", prefix="TR"))
    Image.radial_gradient("L").convert("RGB").save(tmp_path / "scan.jpg")
    register(folder, [tmp_path / "scan.jpg"])
    with open_collection(folder) as collection:
        copy = out / next(copies(collection, out)).copy
    copy.unlink()
    Image.linear_gradient("L").convert("RGB").save(link)
    register(folder, [link])
    link.rename(copy)
    link.symlink_to(copy)
    before = copy.read_bytes()
    with open_collection(folder) as collection:
        collection.over = True
        made = list(copies(collection, out))
        kept = [copied for copied in made if copied.state == "refused"]
    assert "is a scan of this collection" in kept[0].why
    assert copy.read_bytes() == before


def test_what_is_no_scan_is_written(scan: Path, tmp_path: Path) -> None:
    with open_collection(tmp_path / "tamm_family") as collection:
        assert write_output(collection, scan.with_name("chart.pdf"), b"a chart")
    assert write_output(Unopened(tmp_path), tmp_path / scan.name, b"a chart")


def test_pages_whose_pictures_were_taken_in_are_left_as_they_are(scan: Path, tmp_path: Path) -> None:
    folder, out = tmp_path / "tamm_family", tmp_path / "pages"
    with open_collection(folder) as collection:
        pages(collection, out, FAMILY)
    large = next((out / "images" / "large").iterdir())
    register(folder, [large])
    before = {path: path.read_bytes() for path in out.rglob("*") if path.is_file()}
    with open_collection(folder) as collection:
        collection.over = True
        with pytest.raises(WrongUse, match="is a scan of this collection"):
            pages(collection, out, FAMILY)
    assert {path: path.read_bytes() for path in out.rglob("*") if path.is_file()} == before
