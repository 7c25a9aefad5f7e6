"""No output shows a scan that is not, to the byte, as it was taken in; each says so by name (our own rule)."""

import hashlib
import os
from collections.abc import Callable, Iterable
from datetime import date
from pathlib import Path

import pytest
from PIL import Image
from tests.made_once import CopyOf

from boxlore.core.findings import Finding
from boxlore.core.records.audience import To
from boxlore.tasks.archive.offer import offer
from boxlore.tasks.collection.opening import Collection, open_collection, start
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.outputs.copies import copies
from boxlore.tasks.outputs.printed_sheets import PrintOrder, labels, sheet, slips, worksheet
from boxlore.tasks.outputs.web_pages import pages
from boxlore.tasks.scans.intake import IntakeOptions, take_in
from boxlore.tasks.scans.pairing import Planned, ScanSide

ON = date(2026, 11, 26)
FAMILY = PrintOrder(to=To.FAMILY)


def messages(findings: Iterable[Finding]) -> list[str]:
    return [finding.message for finding in findings]


OUTPUTS: dict[str, Callable[[Collection, Path], list[str]]] = {
    "sheet": lambda collection, out: messages(sheet(collection, out / "a.pdf", FAMILY).findings),
    "slips": lambda collection, out: messages(slips(collection, out / "a.pdf", FAMILY).findings),
    "labels": lambda collection, out: messages(labels(collection, out / "a.pdf", FAMILY).findings),
    "worksheet": lambda collection, out: messages(worksheet(collection, out / "a.pdf", FAMILY)[0].findings),
    "pages": lambda collection, out: messages(pages(collection, out / "pages", FAMILY).findings),
    "offer": lambda collection, out: messages(offer(collection, out / "offer").findings),
    "copies": lambda collection, out: [copied.why for copied in copies(collection, out / "copies")],
}


def make_home(top: Path) -> Path:
    start(top / "family", Settings(prefix="TR", title="Tamm and Rourke"), on_day=ON)
    plan = []
    for name, shade in (("a", 40), ("b", 160)):
        Image.new("RGB", (90, 60), (shade, 90, 10)).save(top / f"{name}.jpg")
        plan.append(Planned(key=name, sides=(ScanSide(top / f"{name}.jpg"),)))
    with open_collection(top / "family", on_day=ON) as collection:
        take_in(collection, plan, IntakeOptions(copy=True, box="1"))
    return top / "family"


@pytest.fixture
def home(copy_of: CopyOf) -> Path:
    """Two prints in a box; a byte of the first one's scan has turned, the second is as it was."""
    return copy_of(make_home)


@pytest.mark.parametrize("output", OUTPUTS)
@pytest.mark.parametrize("change", ["a byte", "its size"])
def test_a_changed_scan_is_named(home: Path, tmp_path: Path, output: str, change: str) -> None:
    scan = next((home / "scans").glob("TRA-0001*"))
    data = bytearray(scan.read_bytes())
    data[-30] ^= 1
    scan.write_bytes(bytes(data) + (b"\0" if change == "its size" else b""))
    (tmp_path / "out").mkdir()
    with open_collection(home, on_day=ON) as collection:
        said = [words for words in OUTPUTS[output](collection, tmp_path / "out") if "at its intake" in words]
    assert len(said) == 1 and scan.name in said[0], said


@pytest.mark.parametrize("output", OUTPUTS)
def test_a_scan_that_is_as_it_was_is_not(home: Path, tmp_path: Path, output: str) -> None:
    (tmp_path / "out").mkdir()
    with open_collection(home, on_day=ON) as collection:
        assert not any("intake" in words for words in OUTPUTS[output](collection, tmp_path / "out"))


@pytest.mark.parametrize("output", ["pages", "offer", "copies", "smaller copies"])
@pytest.mark.parametrize("opening", [0, 1, 2, 3])
def test_a_scan_that_is_swapped_at_any_opening_is_shown_nowhere(
    home: Path, tmp_path: Path, output: str, opening: int, swaps: dict[str, list[bytes]]
) -> None:
    """Somebody puts another picture of the same length there and takes it away again: what goes out is what was
    checked, or it is said."""
    scan = next((home / "scans").glob("TRA-0001*"))
    right, wrong = scan.read_bytes(), next((home / "scans").glob("TRA-0002*")).read_bytes()
    swaps[os.path.realpath(scan)] = [*[right] * opening, wrong, right]
    (tmp_path / "out").mkdir()
    with open_collection(home, on_day=ON) as collection:
        if output == "smaller copies":
            said = [copied.why for copied in copies(collection, tmp_path / "out" / "copies", longest=50)]
        else:
            said = OUTPUTS[output](collection, tmp_path / "out")
    for path in (tmp_path / "out").rglob("TRA-0001*.jp*g"):
        with Image.open(path) as picture:
            assert picture.convert("RGB").getpixel((5, 5))[0] < 60, (path, said)  # type: ignore[index]


def test_pages_and_offer_hold_no_picture_of_it(home: Path, tmp_path: Path) -> None:
    scan = next((home / "scans").glob("TRA-0001*"))
    scan.write_bytes(next((home / "scans").glob("TRA-0002*")).read_bytes())
    with open_collection(home, on_day=ON) as collection:
        pages(collection, tmp_path / "pages", FAMILY)
        offer(collection, tmp_path / "offer")
    names = {path.name for folder in ("pages", "offer") for path in (tmp_path / folder).rglob("*.jpg")}
    assert names == {"TRA-0002.jpg"}


@pytest.mark.parametrize("opening", range(6))
def test_a_scan_that_is_swapped_while_it_is_taken_in_leaves_nothing_wrong(
    home: Path, tmp_path: Path, opening: int, swaps: dict[str, list[bytes]]
) -> None:
    """Either the scan is taken, and its copy and size are what its digest says, or nothing of it stays and it can be
    taken next time."""
    scan = tmp_path / "c.jpg"
    Image.new("RGB", (90, 60), (200, 90, 10)).save(scan)
    Image.new("RGB", (70, 50), (10, 90, 200)).save(tmp_path / "d.jpg")
    right, wrong = scan.read_bytes(), (tmp_path / "d.jpg").read_bytes()
    swaps[os.path.realpath(scan)] = [*[right] * opening, wrong, right]
    plan = [Planned(key="c", sides=(ScanSide(scan),))]
    with open_collection(home, on_day=ON) as collection:
        take_in(collection, plan, IntakeOptions(copy=True))
        swaps.clear()
        scan.write_bytes(right)
        assert {taken.state for taken in take_in(collection, plan, IntakeOptions(copy=True))} <= {
            "taken",
            "same",
            "known",
        }
        facts = {facts.path: facts for _, facts in collection.store.scans()}
    for path in (home / "scans").iterdir():
        known = facts[f"scans/{path.name}"]
        with Image.open(path) as picture:
            assert picture.size == (known.width, known.height)
        assert hashlib.sha256(path.read_bytes()).hexdigest() == known.sha256 and path.stat().st_size == known.bytes
