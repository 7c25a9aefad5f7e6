"""Scans leave in the open part with their pictures alone (CIPA DC-008, 4.6.6; read back by Pillow,
exiv2 and bagit); the closed part and the keeper's own are as they were."""

import csv
import hashlib
import signal
from datetime import date
from pathlib import Path

import bagit
import exiv2
import pytest
from PIL import Image
from tests.drawn import some
from tests.made_once import CopyOf

from boxlore.core.crosswalk.receiving_archive import Archive
from boxlore.core.errors import CouldNot
from boxlore.core.records.audience import To
from boxlore.core.statements import Kind, Subject
from boxlore.tasks.archive.rebuild import rebuild
from boxlore.tasks.archive.scans_as_handed import CLEANED, HandedScans
from boxlore.tasks.archive.transfer import TransferOrder, Transferred, transfer
from boxlore.tasks.collection.opening import open_collection, start
from boxlore.tasks.collection.records_for_outputs import Selection, seen_by
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.scans.fixity_events import events
from boxlore.tasks.scans.intake import IntakeOptions, take_in
from boxlore.tasks.scans.pairing import Planned, ScanSide

ON = date(2026, 11, 26)
RECORDS = Archive(takes=("dublin-core", "rdf", "scans"))


def scan(path: Path, shade: int, *, place: bool) -> Path:
    picture = Image.radial_gradient("L").resize((120, 80)).convert("RGB")
    picture.putpixel((0, 0), (shade, 0, 0))
    made = Image.Exif()
    made[0x010E] = "from the scanner"
    if place:
        made.get_ifd(0x8825)[1], made.get_ifd(0x8825)[2] = "S", (45.0, 52.0, 28.0)
    picture.save(path, exif=made.tobytes())
    return path


def make_home(top: Path) -> Path:
    folder = top / "family"
    start(folder, Settings(prefix="TR", title="Tamm and Rourke"), on_day=ON)
    files = [scan(top / name, at * 40, place=at != 1) for at, name in enumerate(("a.jpg", "b.jpg", "c.png"))]
    sheet = scan(top / "sheet.jpg", 200, place=True)
    plan = [Planned(key=path.name, sides=(ScanSide(path),)) for path in files]
    for at in (0.0, 0.5):
        plan.append(Planned(key=f"sheet {at}", sides=(ScanSide(sheet, area=(at, 0.0, 0.5, 1.0)),)))
    with open_collection(folder, on_day=ON) as collection:
        assert {taken.state for taken in take_in(collection, plan, IntakeOptions(copy=True))} == {"taken"}
    return folder


@pytest.fixture
def home(copy_of: CopyOf) -> Path:
    """A collection of three prints, of which two were scanned with a telephone that wrote where, and a sheet of two."""
    return copy_of(make_home)


def handed_over(home: Path, out: Path, archive: Archive = RECORDS) -> Transferred:
    with open_collection(home, on_day=ON) as collection:
        return transfer(collection, out, order=TransferOrder(archive=archive))


def gps(path: Path) -> list[str]:
    image = exiv2.ImageFactory.open(str(path))
    image.readMetadata()
    return [datum.key() for datum in image.exifData() if "GPS" in datum.key()]


def sha256(path: Path) -> str:
    return hashlib.sha256(path.read_bytes()).hexdigest()


def test_no_scan_of_the_open_part_holds_more_than_its_picture(home: Path, tmp_path: Path) -> None:
    before = {path.name: sha256(path) for path in (home / "scans").iterdir()}
    made = handed_over(home, tmp_path / "t")
    opened, closed = (sorted((tmp_path / "t" / part / "data" / "scans").iterdir()) for part in ("open", "closed"))
    assert len(opened) == len(closed) == 4
    assert [path.name for path in opened if gps(path)] == []
    assert len([path for path in closed if gps(path)]) == 3
    assert {path.name: sha256(path) for path in (home / "scans").iterdir()} == before
    assert {sha256(path) for path in closed} == set(before.values())
    for path in opened:
        own = home / "scans" / path.name
        if own.is_file():
            with Image.open(path) as handed, Image.open(own) as kept:
                assert handed.tobytes() == kept.tobytes()
                assert 0x010E not in handed.getexif() and kept.getexif()[0x010E] == "from the scanner"
    notes = [finding.message for finding in made.findings if finding.rule == "scan.bare"]
    assert len(notes) == 4 and all("is left out of the open part" in note for note in notes)


def test_the_records_tell_what_is_handed_over(home: Path, tmp_path: Path) -> None:
    handed_over(home, tmp_path / "t")
    data = tmp_path / "t" / "open" / "data"
    assert bagit.Bag(str(tmp_path / "t" / "open")).is_valid()
    digests = {f"scans/{path.name}": sha256(path) for path in (data / "scans").iterdir()}
    lines = (data / "metadata" / "records.nt").read_text(encoding="utf-8")
    dublin_core = (data / "metadata" / "dcterms.xml").read_text(encoding="utf-8")
    for path in (home / "scans").iterdir():
        told = sha256(path) in lines
        assert told is (sha256(path) in digests.values()) and told is (sha256(path) in dublin_core)
    assert all(digest in lines and digest in dublin_core for digest in digests.values())
    assert all(name in lines for name in digests)
    with open(data / "metadata" / "fixity.csv", encoding="utf-8-sig", newline="") as file:
        every = list(csv.DictReader(file))
    in_the_bag = [row for row in every if row["File"] in digests and row["SHA-256"]]
    assert in_the_bag and all(row["SHA-256"] == digests[row["File"]] for row in in_the_bag), "PREMIS 3.0, derivation"
    assert sum(row["File"].startswith("the keeper's own file of scans/") for row in every) == 4
    rows = [row for row in every if row["Event"] == CLEANED]
    assert len(rows) == 4
    for row in rows:
        assert row["SHA-256"] == digests[row["File"]]
        assert row["Outcome"].startswith("all but its picture was left out; the keeper's own has SHA-256 ")
        assert row["Outcome"][-64:] in {sha256(path) for path in (home / "scans").iterdir()}
    with open_collection(home, write=False, on_day=ON) as collection:
        assert any(
            "what 4 scans hold beside the picture was left out" in event["Outcome"] for event in events(collection)
        )


@pytest.mark.parametrize("audience", ["keeper", "family"])
@pytest.mark.parametrize("chosen", [(), ("TRA-0004",)])
def test_a_sheet_goes_only_where_all_that_is_on_it_may_go(
    home: Path, tmp_path: Path, audience: str, chosen: tuple[str, ...]
) -> None:
    """Be the other item on it chosen or not; and no file of the package tells of a sheet that is not there (a rule of
    our own)."""
    with open_collection(home, on_day=ON) as collection:
        ids = {number: collection.store.item_by_number(number) for number in ("TRA-0004", "TRA-0005")}
        act = collection.act("the other half of the sheet is kept")
        act.state(Subject(Kind.ITEM, ids["TRA-0005"] or ""), "audience", audience)
        act.done()
        archive = Archive(takes=(*RECORDS.takes, "ead3", "inventory", "dc-csv", "mets"))
        transfer(collection, tmp_path / "t", order=TransferOrder(archive=archive, selection=Selection(items=chosen)))
        (sheet,) = {
            scan.path for record in seen_by(collection, To.KEEPER).records() for scan in record.scans if scan.area
        }
    for part in ("open", "closed"):
        data = tmp_path / "t" / part / "data"
        held = [path for path in data.rglob("*") if path.is_file()]
        assert Path(sheet).name not in {path.name for path in held}
        assert not [path for path in held if Path(sheet).name.encode() in path.read_bytes()]
        assert b"The scans are not in this part" in (data / "metadata" / "inventory.csv").read_bytes()


def test_a_collection_is_rebuilt_from_the_open_part_with_the_scans_that_it_holds(home: Path, tmp_path: Path) -> None:
    handed_over(home, tmp_path / "t")
    rebuilt = rebuild(tmp_path / "again", tmp_path / "t" / "open", on_day=ON)
    assert rebuilt.missing == () and rebuilt.scans == 4


def test_a_scan_that_cannot_be_cleaned_stays_out_of_the_open_part(home: Path, tmp_path: Path) -> None:
    """A HEIC whose item says the place in words, which no patch takes out (rules of our own)."""
    odd = tmp_path / "odd.heic"
    extent = b"\x00\x00\x00\x14ispe" + bytes(4) + (64).to_bytes(4, "big") + (48).to_bytes(4, "big")
    odd.write_bytes(b"\x00\x00\x00\x18ftypheic\x00\x00\x00\x00mif1heic" + extent + b"mdat GPSLatitude 45.87 S")
    with open_collection(home, on_day=ON) as collection:
        take_in(collection, [Planned(key="odd", sides=(ScanSide(odd),))], IntakeOptions(copy=True))
    made = handed_over(home, tmp_path / "t")
    assert not list((tmp_path / "t" / "open").rglob("*.heic")) and list((tmp_path / "t" / "closed").rglob("*.heic"))
    said = [finding.message for finding in made.findings if finding.message.endswith("cannot be cleaned.")]
    assert len(said) == 1 and "is left out of the open part" in said[0]
    assert sha256(odd) not in (tmp_path / "t" / "open" / "data" / "metadata" / "records.nt").read_text(encoding="utf-8")


def test_a_vanished_scan_is_said_once(home: Path, tmp_path: Path) -> None:
    next((home / "scans").glob("TRA-0001*")).unlink()
    made = handed_over(home, tmp_path / "t")
    assert [finding.rule for finding in made.findings].count("scan.missing") == 1  # for both parts


def test_a_scan_that_was_changed_is_no_scan_to_vouch_for(home: Path, tmp_path: Path) -> None:
    scan = next((home / "scans").glob("TRA-0001*"))
    data = bytearray(scan.read_bytes())
    data[-20] ^= 1
    scan.write_bytes(data)
    made = handed_over(home, tmp_path / "t")
    said = [finding.message for finding in made.findings if finding.rule == "scan.changed"]
    assert len(said) == 1 and all(scan.name in words and "not as it was at its intake" in words for words in said)
    assert all("--changed-scans" in words for words in said)
    for part in ("open", "closed"):
        assert not list((tmp_path / "t" / part).rglob(scan.name))
        assert scan.name not in (tmp_path / "t" / part / "data/metadata/fixity.csv").read_text("utf-8")
    rebuild(tmp_path / "back", tmp_path / "t")  # the package speaks of no file that it lacks


@pytest.mark.parametrize("update", [False, True])
@pytest.mark.parametrize("opening", some(range(4)))
@pytest.mark.parametrize("number", ["TRA-0001", "TRA-0002"])  # the first holds more than its picture
def test_a_scan_that_is_swapped_while_it_is_packed_stays_out(
    home: Path, tmp_path: Path, number: str, opening: int, update: bool, swaps: dict[str, list[bytes]]
) -> None:
    """What is in a package is what was checked; the pictures are read by Pillow, the bags by bagit."""
    no_scans = Archive(takes=("dublin-core", "rdf"))
    earlier = handed_over(home, tmp_path / "earlier", no_scans).parts[0].path.parent if update else None
    scan, another = (next((home / "scans").glob(f"{name}*")) for name in (number, "TRA-0004"))
    with Image.open(scan) as picture:
        pixels = picture.convert("RGB").tobytes()
    with open_collection(home, on_day=ON) as collection:
        act = collection.act("told since")
        act.state(Subject(Kind.ITEM, collection.store.item_by_number(number) or ""), "title", "The wharf")
        act.done()
        swaps[str(scan.resolve())] = [*[scan.read_bytes()] * opening, another.read_bytes(), scan.read_bytes()]
        made = transfer(collection, tmp_path / "t", order=TransferOrder(archive=RECORDS, earlier=earlier))
    said = [finding.message for finding in made.findings if finding.rule == "scan.changed"]
    assert all(scan.name in words for words in said)
    packed = list((tmp_path / "t").rglob(scan.name))
    for path in packed:
        with Image.open(path) as picture:
            assert picture.convert("RGB").tobytes() == pixels
    assert len(packed) + len(said) == 2
    assert all(bagit.Bag(str(tmp_path / "t" / part)).is_valid() for part in ("open", "closed"))
    for part in ("open", "closed"):
        records = (tmp_path / "t" / part / "data/metadata/records.nt").read_text("utf-8")
        assert (scan.name in records) is any(path.is_relative_to(tmp_path / "t" / part) for path in packed)


def swap(one: Path, two: Path) -> None:
    first = one.read_bytes()
    one.write_bytes(two.read_bytes())
    two.write_bytes(first)


@pytest.mark.parametrize("staged", [True, False])
def test_a_changed_scan_goes_at_the_keepers_word_and_every_record_has_its_own_digest(
    home: Path, tmp_path: Path, staged: bool
) -> None:
    """Manifests (RFC 8493) and the table of fixity events say the same of each file."""
    one, two = (next((home / "scans").glob(f"TRA-000{number}*")) for number in (1, 2))
    earlier = tmp_path / "earlier"
    if not staged:
        handed_over(home, earlier)
    swap(one, two)
    with open_collection(home, on_day=ON) as collection:
        act = collection.act("told since")
        for number in ("TRA-0001", "TRA-0002"):
            act.state(Subject(Kind.ITEM, collection.store.item_by_number(number) or ""), "title", "The wharf")
        act.done()
        order = TransferOrder(archive=RECORDS, take_changed=True, earlier=None if staged else earlier)
        made = transfer(collection, tmp_path / "t", order=order)
    assert sum("is handed over as it is now" in finding.message for finding in made.findings) == 2
    for part in ("open", "closed"):
        folder = tmp_path / "t" / part
        assert bagit.Bag(str(folder)).is_valid()
        with open(folder / "data/metadata/fixity.csv", encoding="utf-8-sig", newline="") as table:
            last = {row["File"]: row["SHA-256"] for row in csv.DictReader(table) if row["SHA-256"]}
        for path in (one.name, two.name):
            packed = next((folder / "data/scans").rglob(path))
            assert last[packed.relative_to(folder / "data").as_posix()] == sha256(packed)
    assert sha256(next((tmp_path / "t/closed").rglob(one.name))) == sha256(one)


def test_a_scan_that_cannot_be_taken_apart_since_it_was_changed_is_called_changed(home: Path, tmp_path: Path) -> None:
    scan = next((home / "scans").glob("TRA-0001*"))
    scan.write_bytes(scan.read_bytes()[:300])
    said = [finding.message for finding in handed_over(home, tmp_path / "t").findings]
    assert sum("not as it was at its intake" in words for words in said) == 1
    assert not any("cannot be cleaned" in words for words in said)


@pytest.mark.skipif(not Path("/proc/self/mem").is_file(), reason="needs a file that is there and cannot be read")
@pytest.mark.parametrize("staged", [True, False])
def test_one_unreadable_scan_stops_nothing(home: Path, tmp_path: Path, staged: bool) -> None:
    """As on a bad disk: reading address 0 of a process fails with EIO (proc(5), /proc/pid/mem)."""
    scan = next((home / "scans").glob("TRA-0002*"))  # one that has its picture alone
    earlier = None if staged else handed_over(home, tmp_path / "earlier").parts[0].path.parent
    scan.unlink()
    scan.symlink_to("/proc/self/mem")
    with open_collection(home, on_day=ON) as collection:
        act = collection.act("told since")
        act.state(Subject(Kind.ITEM, collection.store.item_by_number("TRA-0002") or ""), "title", "The wharf")
        act.done()
        made = transfer(collection, tmp_path / "t", order=TransferOrder(archive=RECORDS, earlier=earlier))
    said = [finding.message for finding in made.findings if finding.rule == "scan.unreadable"]
    assert len(said) == 1 and all(scan.name in words and "is left out" in words for words in said)


def test_a_full_disk_is_no_fault_of_the_scan(home: Path, tmp_path: Path) -> None:
    """A limit on the size of files is met while a scan is copied: EFBIG (setrlimit(2), RLIMIT_FSIZE)."""
    resource = pytest.importorskip("resource")
    big = next((home / "scans").glob("TRA-0002*"))
    before = resource.getrlimit(resource.RLIMIT_FSIZE)
    work = tmp_path / "work"
    work.mkdir()
    scans = HandedScans(home, work, is_open=False)
    with open_collection(home, write=False, on_day=ON) as collection:
        record = next(iter(seen_by(collection, To.ARCHIVE).records(Selection(items=("TRA-0002",)))))
    previous = signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
    resource.setrlimit(resource.RLIMIT_FSIZE, (big.stat().st_size // 2, before[1]))
    try:
        with pytest.raises(CouldNot, match="larger than this disk takes"):
            scans.record(record)
    finally:
        resource.setrlimit(resource.RLIMIT_FSIZE, before)
        signal.signal(signal.SIGXFSZ, previous)
