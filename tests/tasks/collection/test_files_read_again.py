"""What the files of scans say is read again where an earlier reader has read it (a rule of our own).

An earlier reader is one that kept nothing of what `PersonInImage` says (IPTC Photo Metadata Standard, Person Shown).
"""

from pathlib import Path

from tests.formats.conftest import picture

from boxlore.core.records.audience import To
from boxlore.core.statements import Kind, Said, Source, Subject
from boxlore.tasks.collection.files_read_again import read_files_again
from boxlore.tasks.collection.opening import READ_BY, READER, Collection, open_collection, start
from boxlore.tasks.collection.records_for_outputs import seen_by
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.scans.intake import IntakeOptions, take_in
from boxlore.tasks.scans.pairing import Planned, ScanSide

SHOWN = (
    b'<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">'
    b'<rdf:Description xmlns:e="http://iptc.org/std/Iptc4xmpExt/2008-02-29/"><e:PersonInImage><rdf:Bag>'
    b"<rdf:li>Oswin Quill</rdf:li></rdf:Bag></e:PersonInImage></rdf:Description></rdf:RDF></x:xmpmeta>"
)


def with_xmp(jpeg: bytes) -> bytes:
    segment = b"http://ns.adobe.com/xap/1.0/\x00" + SHOWN
    return jpeg[:2] + b"\xff\xe1" + (len(segment) + 2).to_bytes(2, "big") + segment + jpeg[2:]


def taken_in_by_an_earlier_one(home: Path, embedded: str = "also: Oswin Quill") -> Path:
    """Two scans, of which the first shows Oswin Quill and the second nobody."""
    start(home / "c", Settings(prefix="OLD", title="Old"))
    for name, data in (("a", with_xmp(picture("JPEG"))), ("b", picture("JPEG", comment=b"b"))):
        (home / f"{name}.jpg").write_bytes(data)
    with open_collection(home / "c") as collection:
        assert collection.store.meta(READ_BY) == READER, "a new collection's files are read by this reader"
        plan = [Planned(key=name, sides=(ScanSide(home / f"{name}.jpg"),)) for name in "ab"]
        take_in(collection, plan, IntakeOptions(copy=False))
        scan, told = next(
            (ident, words) for ident, _, words in collection.store.words_of(["embedded"]) if "Quill" in words
        )
        assert "people: Oswin Quill" in told
        act = collection.act("as an earlier reader had it")
        (before,) = [
            one.id for one, _ in collection.store.statements(Subject(Kind.SCAN, scan)) if one.field == "embedded"
        ]
        act.state(Subject(Kind.SCAN, scan), "embedded", embedded, source=Source(Said.FILE), replaces=before)
        act.done()
        collection.store.set_meta(READ_BY, "")
    return home / "c"


def closed(collection: Collection) -> list[bool]:
    return [record.closed_scans for record in seen_by(collection, To.OUTSIDE).records()]


def words(collection: Collection) -> list[str]:
    return [told for _, _, told in collection.store.words_of(["embedded"])]


def test_whom_a_file_shows_is_known_of_scans_taken_in_earlier_and_said_once(tmp_path: Path) -> None:
    with open_collection(taken_in_by_an_earlier_one(tmp_path)) as collection:
        assert closed(collection) == [True, False]
        assert any("people: Oswin Quill" in told for told in words(collection))
        (sentence,) = collection.unsaid
        assert sentence.startswith("What the files of 1 scan say was read again")
        acts = len(collection.store.last_acts())
        assert closed(collection) == [True, False]
        assert (len(collection.store.last_acts()), collection.store.meta(READ_BY)) == (acts, READER)


def test_where_nothing_can_be_written_it_holds_for_the_run(tmp_path: Path) -> None:
    with open_collection(taken_in_by_an_earlier_one(tmp_path), write=False) as collection:
        assert closed(collection) == closed(collection) == [True, False]
        assert not any("people:" in told for told in words(collection))


def test_a_file_that_is_not_there_is_read_when_it_is_there_again(tmp_path: Path) -> None:
    home = taken_in_by_an_earlier_one(tmp_path)
    scan = (tmp_path / "a.jpg").read_bytes()
    for there in (None, scan[:-1]):
        (tmp_path / "a.jpg").unlink(missing_ok=True)
        if there is not None:
            (tmp_path / "a.jpg").write_bytes(there)
        with open_collection(home) as collection:
            read_files_again(collection)
            assert collection.store.meta(READ_BY).startswith(f"{READER} ") and not collection.unsaid
    (tmp_path / "a.jpg").write_bytes(scan)
    with open_collection(home) as collection:
        assert closed(collection) == [True, False]
        assert collection.store.meta(READ_BY) == READER


def test_struck_words_of_a_file_do_not_come_back(tmp_path: Path) -> None:
    with open_collection(taken_in_by_an_earlier_one(tmp_path, "struck: " + "0" * 64)) as collection:
        read_files_again(collection)
        assert set(words(collection)) == {"also: b", "struck: " + "0" * 64} and not collection.unsaid
