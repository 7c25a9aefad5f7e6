"""Copies proved against scans and records (rules of our own; the picture by its bytes, SHA-256 by FIPS 180-4)."""

from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest
from PIL import Image
from tests.made_once import CopyOf

from boxlore.core.errors import CouldNot
from boxlore.core.records.audience import To
from boxlore.core.statements import Kind
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import Collection, open_collection, start
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.outputs.copies import copies
from boxlore.tasks.outputs.copies_contents import read_contents, write_contents
from boxlore.tasks.outputs.copies_proved import is_copies_folder, prove_copies
from boxlore.tasks.scans.fixity import finding_of, register_again, verify_scans
from boxlore.tasks.scans.intake import IntakeOptions, take_in
from boxlore.tasks.scans.pairing import Planned, ScanSide
from boxlore.tasks.telling.statements import Teller, Telling

ON = date(2026, 11, 25)
Home = tuple[Path, Path]


def make_home(top: Path) -> Home:
    folder = top / "family"
    start(folder, Settings(prefix="TR", title="Tamm and Rourke"), on_day=ON)
    plan = []
    for at, (name, kind) in enumerate((("a.jpg", "JPEG"), ("b.tif", "TIFF"), ("c.gif", "GIF"), ("d.png", "PNG"))):
        path = top / name
        Image.new("RGB", (60, 40), (at * 50, 90, 120)).save(path, kind)
        area = (0.0, 0.0, 0.5, 1.0) if kind == "PNG" else ()
        plan.append(Planned(key=name, sides=(ScanSide(path, area=area),), box="1"))
    with open_collection(folder, on_day=ON) as collection:
        take_in(collection, plan, IntakeOptions(copy=True))
        list(copies(collection, top / "copies"))
    return folder, top / "copies"


@pytest.fixture
def home(copy_of: CopyOf) -> Home:
    """A collection with a JPEG, a TIFF, a GIF and a part of a PNG, and their copies."""
    return copy_of(make_home)


@contextmanager
def opened(home: Home, *, write: bool = False) -> Iterator[Collection]:
    with open_collection(home[0], write=write, on_day=ON) as collection:
        yield collection


def found(home: Home) -> list[tuple[str, str]]:
    with opened(home) as collection:
        return [(one.line.number, f.rule) for one in prove_copies(collection, home[1]) for f in one.findings]


def tell(home: Home, number: str, name: str, words: str) -> None:
    with opened(home, write=True) as collection:
        Teller(collection).tell(find_item(collection, number), name, words, Telling())


def test_copies_as_they_were_made_are_right(home: Home) -> None:
    assert is_copies_folder(home[1]) and not is_copies_folder(home[0])
    assert found(home) == []
    with opened(home) as collection:
        assert len(list(prove_copies(collection, home[1]))) == 4
        list(copies(collection, home[1], longest=64))
        assert len(list(prove_copies(collection, home[1]))) == 8
    assert found(home) == []


@pytest.mark.parametrize("number", ["TRA-0001", "TRA-0002", "TRA-0003", "TRA-0004"])
def test_what_the_record_says_now_is_held_against_what_the_copy_says(number: str, home: Home) -> None:
    tell(home, number, "title", "Nets drying")
    assert found(home) == [(number, "copy.caption")]
    with opened(home) as collection:
        because = [f.because for one in prove_copies(collection, home[1]) for f in one.findings]
        assert "dc:title" in because[0] and "xmp:MetadataDate" not in because[0]
        list(copies(collection, home[1]))
    assert found(home) == []


def test_a_copy_is_held_against_the_language_that_it_was_made_in(home: Home) -> None:
    """Our own words are said in it; dates for machines stay ISO 8601, and EDTF."""
    for name, words in (("date", "about 1938"), ("place", "Reval"), ("person", "Helmi?")):
        tell(home, "TRA-0001", name, words)
    with opened(home) as collection:
        list(copies(collection, home[1], language="de"))
        assert {one.line.language for one in prove_copies(collection, home[1])} == {"de"}
    assert found(home) == []
    packet = (home[1] / "box-1" / "TRA-0001_f.jpg").read_bytes()
    for words in ('xml:lang="de"', "Fotografie", ">1938<", ">1938~<"):
        assert words.encode() in packet, words
    write_contents(home[1], [replace(line, language="") for line in read_contents(home[1])])
    assert ("TRA-0001", "copy.caption") in found(home)  # an older page: it was made in English


def test_a_keepers_note_changes_no_caption(home: Home) -> None:
    tell(home, "TRA-0001", "note", "for the keeper alone")
    assert found(home) == []


def test_another_picture_is_noticed(home: Home) -> None:
    path = home[1] / "box-1" / "TRA-0001_f.jpg"
    data = bytearray(path.read_bytes())
    data[-40] ^= 0x21
    path.write_bytes(data)
    assert found(home) == [("TRA-0001", "copy.changed"), ("TRA-0001", "copy.picture")]


def test_a_damaged_a_missing_and_a_superfluous_copy(home: Home) -> None:
    (home[1] / "box-1" / "TRA-0001_f.jpg").write_bytes(b"\xff\xd8\xff")
    (home[1] / "box-1" / "TRA-0002_f.tif").unlink()
    (home[1] / "box-1" / "TRA-0003_f.gif.xmp").unlink()
    page = home[1] / "contents.csv"
    page.write_text(page.read_text(encoding="utf-8").replace("TRA-0004", "TRA-0009"), encoding="utf-8")
    (home[1] / "box-1" / "TRA-0004_f.jpg").rename(home[1] / "box-1" / "TRA-0009_f.jpg")
    assert found(home) == [
        ("TRA-0001", "copy.changed"),
        ("TRA-0001", "copy.damaged"),
        ("TRA-0002", "copy.gone"),
        ("TRA-0003", "copy.gone"),
        ("TRA-0009", "copy.left-over"),
    ]


def test_a_vanished_scan_is_said(home: Home) -> None:
    (home[0] / "scans" / "TRA-0002_f.tif").unlink()
    assert found(home) == [("TRA-0002", "copy.gone")]


def test_a_move_is_noticed(home: Home) -> None:
    with opened(home, write=True) as collection:
        act = collection.act("moved")
        box = act.new(Kind.CONTAINER)
        act.state(box, "kind", "box")
        act.state(box, "label", "9")
        item = find_item(collection, "TRA-0001")
        kept = next(one for one, _ in collection.store.statements(item) if one.field == "kept")
        act.state(item, "kept", f"{box.id} 1", replaces=kept.id)
        act.done()
    assert found(home) == [("TRA-0001", "copy.caption"), ("TRA-0001", "copy.place")]


def test_copies_for_outside_are_proved_as_such(home: Home, tmp_path: Path) -> None:
    with opened(home) as collection:
        list(copies(collection, tmp_path / "outside", to=To.OUTSIDE))
        proved = list(prove_copies(collection, tmp_path / "outside"))
    assert len(proved) == 3 and not any(one.findings for one in proved)


def test_stopping_and_no_page(home: Home, tmp_path: Path) -> None:
    class Stopped:
        def begin(self, what: str, total: int) -> None: ...
        def step(self, done: int = 1) -> None: ...
        def stopped(self) -> bool:
            return True

    with opened(home) as collection:
        assert list(prove_copies(collection, home[1], Stopped())) == []
        with pytest.raises(CouldNot, match="no contents page"):
            list(prove_copies(collection, tmp_path))


def test_what_strict_readers_do_not_take_is_said(home: Home) -> None:
    """As another program may leave a copy: `about` beside `rdf:about`, which the XMP toolkit refuses."""
    path = home[1] / "box-1" / "TRA-0001_f.jpg"
    data = path.read_bytes()
    at = data.index(b'rdf:about=""')
    spare = data.index(b" " * 11 + b"\n", at)  # bytes are taken from the packet's padding, so that its length stays
    path.write_bytes(data[:at] + b'about="u" ' + data[at:spare] + data[spare + 10 :])
    assert [finding for finding in found(home) if finding[1] == "copy.unreadable"] == [("TRA-0001", "copy.unreadable")]
    beside = home[1] / "box-1" / "TRA-0003_f.gif.xmp"
    beside.write_bytes(beside.read_bytes().replace(b'rdf:about=""', b'about=""'))
    assert ("TRA-0003", "copy.unreadable") in found(home)


def test_a_vanished_copy_of_a_picture_that_is_newly_encoded_is_said(home: Home) -> None:
    (home[1] / "box-1" / "TRA-0004_f.jpg").unlink()
    assert found(home) == [("TRA-0004", "copy.gone")]


def test_a_copy_beside_a_sidecar_that_says_where_it_was_scanned_is_said(home: Home) -> None:
    """As a copy of an earlier version may: XMP behind a GIF (CIPA DC-010)."""
    path = home[1] / "box-1" / "TRA-0003_f.gif"
    packet = (
        "<x:xmpmeta xmlns:x='adobe:ns:meta/'><rdf:RDF xmlns:rdf='http://www.w3.org/1999/02/22-rdf-syntax-ns#'>"
        "<rdf:Description rdf:about='' xmlns:exif='http://ns.adobe.com/exif/1.0/' exif:GPSLatitude='45,52.47S'/>"
        "</rdf:RDF></x:xmpmeta>"
    )
    path.write_bytes(path.read_bytes() + packet.encode())
    assert ("TRA-0003", "copy.place-told") in found(home)


def test_a_scan_that_was_moved_still_has_its_copy(home: Home) -> None:
    """A copy is its scan's by the scan's bytes; one whose scan was replaced is so by its path."""
    scans = home[0] / "scans"
    [scan] = scans.rglob("TRA-0001_f.*")
    scan.rename(scans / "moved.jpg")
    with opened(home, write=True) as collection:
        gone = [verified for verified in verify_scans(collection, anew=True) if finding_of(verified)]
        assert register_again(collection, gone) == 1
    assert found(home) == []
